//! The words for the verdict on a fuel system.

use crate::answers::hardware::{
    AirAnswer, CrossedLimit, FluidAnswer, HardwareAnswer, HardwareReading, PartAnswer, PartStanding,
};
use crate::document::HardwareForm;
use crate::message::keys::hardware_said as keys;
use crate::quantity::MassRate;
use crate::quantity::notation::Printer;

use super::Fact;
use super::curves::curve;
use super::parts::{limit, part, part_answer, tightest};
use crate::words::problems::outside_table;

/// The verdict: a word or two, and what belongs to it.
#[derive(Clone, Debug, PartialEq)]
pub struct Judgement {
    pub word: String,
    pub more: String,
    /// What alone would do, where there is no room for more.
    pub short: String,
}

/// The word for how a part stands, of whose reserve so much is wanted.
pub fn standing(part: &PartAnswer, wanted: f64) -> &'static str {
    match (part.standing, part.over_speed.tightest) {
        (PartStanding::Enough, _) => keys::PART_HOLDS,
        (PartStanding::Tight, Some(it)) if it.reserve.expected() >= wanted => keys::PART_LIKELY,
        (PartStanding::Tight, _) => keys::PART_BARELY,
        (PartStanding::Short, _) => keys::PART_SHORT,
        (PartStanding::NoFigure, _) => keys::PART_NO_FIGURE,
    }
    .say()
}

/// How it all stands. Where a limit is crossed the fuel system is no more than a part of
/// it, and the first such limit is named.
pub fn judgement(answer: &HardwareAnswer, hardware: &HardwareForm, printer: &Printer) -> Judgement {
    let Some(first) = answer.crossed.first() else {
        let fuel = fuel_system(answer, hardware, printer);
        let word = fuel.word(false);
        return Judgement { word: word.clone(), more: fuel.more, short: word };
    };
    let fuel = fuel_system(answer, hardware, printer);
    let crossed = crossed(first, hardware, printer);
    if answer.standing.is_none() {
        return Judgement { word: crossed.clone(), more: fuel.more, short: crossed };
    }
    let verdict = fuel.word(true);
    let more = match answer.standing {
        Some(PartStanding::NoFigure) => fuel.more,
        _ => keys::Fuel { what: fuel.more }.say(),
    };
    let word = keys::FuelAndLimit { verdict, crossed: &crossed }.say();
    Judgement { word, more, short: crossed }
}

/// "Gearbox limit crossed from 2935 rpm".
fn crossed(first: &CrossedLimit, hardware: &HardwareForm, printer: &Printer) -> String {
    let form = hardware.parts.iter().find(|form| form.id == first.form);
    let limit = form.map_or_else(|| keys::A_LIMIT.say().into(), limit);
    let speed = printer.engine_speed(first.from);
    if first.is_expected {
        keys::LimitCrossed { limit, speed }.say()
    } else {
        keys::LimitMayBeCrossed { limit, speed }.say()
    }
}

/// The word for a fuel system, and what belongs to it.
struct FuelSystem {
    verdict: Verdict,
    more: String,
}

enum Verdict {
    NoPart,
    Unjudged,
    Holds,
    Barely,
    Likely,
    Short,
}

impl FuelSystem {
    /// The word, or the same in the middle of a sentence.
    fn word(&self, within: bool) -> String {
        match self.verdict {
            Verdict::NoPart => keys::NoPart { within }.say(),
            Verdict::Unjudged => keys::CannotBeJudged { within }.say(),
            Verdict::Holds => keys::Holds { within }.say(),
            Verdict::Barely => keys::HoldsBarely { within }.say(),
            Verdict::Likely => keys::LikelyHolds { within }.say(),
            Verdict::Short => keys::DoesNotHold { within }.say(),
        }
    }
}

/// How the fuel system stands.
fn fuel_system(answer: &HardwareAnswer, hardware: &HardwareForm, printer: &Printer) -> FuelSystem {
    let first = answer.first.and_then(|at| answer.parts.get(at));
    let reserve = first.and_then(|part| part.over_speed.tightest).map(|it| it.reserve);
    let said = |verdict, more: String| FuelSystem { verdict, more };
    match (answer.standing, reserve) {
        (None, _) => said(Verdict::NoPart, keys::NO_PART_MEANS.say().into()),
        (Some(PartStanding::NoFigure), _) | (Some(_), None) => {
            said(Verdict::Unjudged, why_not(answer, hardware, printer))
        }
        (Some(PartStanding::Enough), Some(reserve)) => {
            let (expected, reserves) = (reserve.expected(), printer.fractions(reserve));
            let reserve = printer.fraction(expected);
            said(Verdict::Holds, keys::ToSpareBand { reserve, reserves }.say())
        }
        (Some(PartStanding::Tight), Some(band)) => {
            let is_less = band.expected() < answer.asked.engine.reserve;
            let wanted = printer.fraction(answer.asked.engine.reserve);
            let reserve = printer.fraction(band.expected());
            let short = printer.at_most(-band.low() * 100.0, 0);
            match (is_less, band.low() < 0.0) {
                (true, true) => {
                    said(Verdict::Barely, keys::ToSpareLessShort { reserve, wanted, short }.say())
                }
                (true, false) => said(Verdict::Barely, keys::ToSpareLess { reserve, wanted }.say()),
                (false, _) => said(Verdict::Likely, keys::ToSpareShort { reserve, short }.say()),
            }
        }
        (Some(PartStanding::Short), Some(reserve)) => {
            let short = printer.fraction(-reserve.expected());
            said(Verdict::Short, keys::ShortOf { short }.say())
        }
    }
}

/// Which part has no figure, and why.
fn why_not(answer: &HardwareAnswer, hardware: &HardwareForm, printer: &Printer) -> String {
    let without = answer.parts.iter().filter(|it| it.standing == PartStanding::NoFigure);
    let reasons = without.map(|it| {
        let why =
            it.over_speed.no_figure().map(|it| outside_table(it, printer)).unwrap_or_default();
        keys::WhyNot { part: part_answer(it, hardware), why }.say()
    });
    reasons.collect::<Vec<_>>().join(" ")
}

/// "High-pressure pump gives first, at 3950 rpm: 82 % of 85 % is in use there."
pub fn first_to_give(
    answer: &HardwareAnswer,
    hardware: &HardwareForm,
    printer: &Printer,
) -> Option<String> {
    let first: &PartAnswer = answer.parts.get(answer.first?)?;
    let (used, speed) = tightest(first, answer, printer)?;
    let part = part_answer(first, hardware);
    Some(keys::FirstToGive { part, speed, used }.say())
}

/// The largest ethanol share for the curve.
pub fn limits_of_share(answer: &HardwareAnswer, printer: &Printer) -> Option<String> {
    answer.standing?;
    let largest = answer.largest_share;
    let Some(expected) = largest.expected else {
        let is_judged = answer.standing != Some(PartStanding::NoFigure);
        return is_judged.then(|| keys::TOO_MUCH.say().to_owned());
    };
    let expected = printer.grade(expected);
    Some(match largest.at_worst {
        Some(share) => keys::LargestShare { expected, worst: printer.grade_at_least(share) }.say(),
        None => keys::LargestShareNoneAtWorst { expected }.say(),
    })
}

/// The compressor's air against what it is rated for.
pub fn air(answer: &AirAnswer, hardware: &HardwareForm, printer: &Printer) -> (bool, String) {
    let (speed, most) = answer.most;
    let beyond = |flow: MassRate| flow > answer.rated;
    let name = hardware.parts.iter().find(|form| form.id == answer.form).map(part);
    let limit = name.unwrap_or_else(|| keys::THE_LIMIT.say().into());
    let air = printer.compressor_air(most.expected());
    let rated = printer.compressor_air(answer.rated);
    let speed = printer.engine_speed(speed);
    let words = if beyond(most.expected()) {
        keys::AirBeyond { air, speed, limit, rated }.say()
    } else if beyond(most.high()) {
        keys::AirBeyondAtWorst { air, speed, limit, rated }.say()
    } else {
        keys::AirWithin { air, speed, limit, rated }.say()
    };
    (beyond(most.high()), words)
}

/// What is asked, in one line.
pub fn load_in_short(reading: &HardwareReading, printer: &Printer) -> String {
    let Some(asked) = &reading.asked else { return String::new() };
    keys::Load {
        curve: reading.curves.get(asked.target).map_or_else(String::new, |it| curve(&it.name)),
        power: printer.crank_power(asked.load.peak_power()),
        blend: printer.grade(asked.blend.expected()),
        reserve: printer.fraction(asked.engine.reserve),
    }
    .say()
}

/// What injection fluid does at the highest power.
pub fn fluid_facts(fluid: &FluidAnswer, answer: &HardwareAnswer, printer: &Printer) -> Vec<Fact> {
    let effect = &fluid.effect;
    let mixture = |lambda| printer.mixture(lambda, answer.stoichiometric_ratio());
    let flow = answer.peak().and_then(|at| answer.headroom.flows.get(at));
    let fuel = flow.map_or_else(String::new, |flow| {
        keys::BesideFuel { flow: printer.mass_flow(flow.expected()) }.say()
    });
    let stops = if effect.lambda_if_spray_stops.is_finite() {
        mixture(effect.lambda_if_spray_stops)
    } else {
        keys::NO_FUEL_AT_ALL.say().to_owned()
    };
    vec![
        Fact::new(keys::FLUID_FLOW.say(), printer.mass_flow(fluid.flow), fuel),
        Fact::new(
            keys::MIXTURE_WITH.say(),
            mixture(effect.lambda_with),
            keys::MIXTURE_WITH_MEANS.say().into(),
        ),
        Fact::new(
            keys::HEAT_SHARE.say(),
            printer.fraction(effect.energy_share),
            keys::HEAT_SHARE_MEANS.say().into(),
        ),
        Fact::new(
            keys::COOLING.say(),
            printer.temperature_difference(effect.largest_cooling),
            keys::COOLING_MEANS.say().into(),
        ),
        Fact::new(
            keys::STANDS_FOR.say(),
            printer.fraction(effect.petrol_cut),
            keys::STANDS_FOR_MEANS.say().into(),
        ),
        Fact::new(keys::SPRAY_STOPS.say(), stops, keys::SPRAY_STOPS_MEANS.say().into()),
    ]
}

#[cfg(test)]
mod tests {
    use crate::document::{Document, HardwareField, PartForm, PartKind};
    use crate::fuel::Content;
    use crate::quantity::notation::{DecimalMark, Entry};
    use crate::quantity::{Band, Share};

    use super::*;

    /// The example on a blend, with so much reserve wanted: its least reserve, and
    /// what is said of its fuel system. It also crosses a limit.
    fn demo(percent: f64, wanted: &str) -> (Band<f64>, FuelSystem) {
        let mut document = Document::demo();
        *document.here.hardware.engine.entry(HardwareField::Reserve) = Entry::metric(wanted);
        let printer = document.settings.printer(DecimalMark::Point);
        let blend = Band::exact(Share::from_percent(percent).expect("a share"));
        let reading = HardwareReading::of(&document, Some(Content::splash(blend)), &printer);
        let answer = HardwareAnswer::of(&reading).expect("an answer");
        let first = &answer.parts[answer.first.expect("a first one")];
        let reserve = first.over_speed.tightest.expect("figures").reserve;
        (reserve, fuel_system(&answer, &document.here.hardware, &printer))
    }

    #[test]
    fn the_word_follows_the_reserve_and_what_is_wanted_of_it() {
        let (reserve, said) = demo(0.0, "1 %");
        assert!(reserve.low() > 0.01);
        assert_eq!(said.word(false), "Holds");

        let (reserve, said) = demo(0.0, "90");
        assert!(reserve.low() > 0.0 && reserve.expected() < 0.9);
        assert_eq!(said.word(false), "Holds, but barely");
        assert!(said.more.ends_with("less than the 90\u{202f}% you want"), "{}", said.more);

        let (reserve, said) = demo(100.0, "10");
        assert!(reserve.expected() < 0.0);
        assert_eq!(said.word(false), "Does not hold");
        assert!(said.more.contains("short of what the curve asks for"));
    }

    #[test]
    fn nothing_is_said_to_hold_alone_where_a_limit_is_crossed() {
        let mut document = Document::demo();
        let id = document.here.next_id();
        let mut gearbox = PartForm::new(id, PartKind::TorqueLimit);
        *gearbox.fields.entry(HardwareField::LimitTorque) = Entry::metric("100");
        document.here.hardware.parts.push(gearbox);
        let printer = document.settings.printer(DecimalMark::Point);
        let mut said = |name: &str| {
            if let Some(limit) = document.here.hardware.parts.last_mut() {
                limit.name = name.into();
            }
            let blend = Some(Content::splash(Band::exact(Share::ZERO)));
            let reading = HardwareReading::of(&document, blend, &printer);
            let answer = HardwareAnswer::of(&reading).expect("an answer");
            assert_eq!(answer.overall(), Some(PartStanding::Short));
            judgement(&answer, &document.here.hardware, &printer).word
        };
        let word = said("Gearbox");
        assert!(word.starts_with("Fuel holds"), "{word}");
        assert!(word.contains(". Gearbox limit crossed from "), "{word}");
        assert!(said("").contains(". Torque limit crossed from "));
        assert!(said("Rod limit").contains(". Rod limit crossed from "));
    }

    #[test]
    fn what_holds_as_expected_but_not_at_worst_is_only_likely() {
        // More ethanol takes the reserve down step by step, so some share has it.
        let between = (30..70).map(f64::from).map(|percent| demo(percent, "0"));
        let mut likely = between.filter(|(it, _)| it.low() < 0.0 && it.expected() > 0.0);
        let (_, said) = likely.next().expect("a share between");
        assert_eq!(said.word(false), "Likely holds");
        assert!(said.more.contains("at worst"), "{}", said.more);
    }
}
