//! The words for the verdict on a fuel system.

use crate::answers::hardware::{
    AirAnswer, CrossedLimit, FluidAnswer, HardwareAnswer, HardwareReading, PartAnswer, PartStanding,
};
use crate::document::HardwareForm;
use crate::quantity::MassRate;
use crate::quantity::notation::Printer;

use super::Fact;
use super::curves::curve;
use super::parts::{limit, part, part_answer, tightest};

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
        (PartStanding::Enough, _) => "holds",
        (PartStanding::Tight, Some(it)) if it.reserve.expected() >= wanted => "likely holds",
        (PartStanding::Tight, _) => "holds, but barely",
        (PartStanding::Short, _) => "does not hold",
        (PartStanding::NoFigure, _) => "cannot be judged",
    }
}

/// How it all stands. Where a limit is crossed the fuel system is no more than a part of
/// it, and the first such limit is named.
pub fn judgement(answer: &HardwareAnswer, hardware: &HardwareForm, printer: &Printer) -> Judgement {
    let fuel = fuel_system(answer, hardware, printer);
    let Some(first) = answer.crossed.first() else { return fuel };
    let crossed = crossed(first, hardware, printer);
    if answer.standing.is_none() {
        return Judgement { word: crossed.clone(), more: fuel.more, short: crossed };
    }
    let lower = |text: &str| {
        let mut letters = text.chars();
        letters
            .next()
            .map_or_else(String::new, |first| first.to_lowercase().chain(letters).collect())
    };
    let more = match answer.standing {
        Some(PartStanding::NoFigure) => fuel.more,
        _ => format!("Fuel: {}", fuel.more),
    };
    Judgement { word: format!("Fuel {}. {crossed}", lower(&fuel.word)), more, short: crossed }
}

/// "Gearbox limit crossed from 2935 rpm".
fn crossed(first: &CrossedLimit, hardware: &HardwareForm, printer: &Printer) -> String {
    let form = hardware.parts.iter().find(|form| form.id == first.form);
    format!(
        "{} {} from {}",
        form.map_or_else(|| "A limit".into(), limit),
        if first.is_expected { "crossed" } else { "may be crossed" },
        printer.engine_speed(first.from)
    )
}

/// How the fuel system stands.
fn fuel_system(answer: &HardwareAnswer, hardware: &HardwareForm, printer: &Printer) -> Judgement {
    let first = answer.first.and_then(|at| answer.parts.get(at));
    let reserve = first.and_then(|part| part.over_speed.tightest).map(|it| it.reserve);
    let said = |word: &str, more: String| Judgement {
        word: word.to_owned(),
        more,
        short: word.to_owned(),
    };
    match (answer.standing, reserve) {
        (None, _) => said(
            "No part to judge",
            "Add the injectors and the pumps under Parts: until then only the demand is shown."
                .into(),
        ),
        (Some(PartStanding::NoFigure), _) | (Some(_), None) => {
            said("Cannot be judged", why_not(answer, hardware))
        }
        (Some(PartStanding::Enough), Some(reserve)) => said(
            "Holds",
            format!(
                "with {} to spare, {} from worst to best",
                printer.fraction(reserve.expected()),
                printer.fractions(reserve)
            ),
        ),
        (Some(PartStanding::Tight), Some(reserve)) => {
            let (expected, wanted) = (reserve.expected(), answer.asked.engine.reserve);
            let spare = format!("with {} to spare", printer.fraction(expected));
            let less = format!("{spare}, less than the {} you want", printer.fraction(wanted));
            let short =
                format!("at worst {}\u{202f}% short", printer.at_most(-reserve.low() * 100.0, 0));
            match (expected < wanted, reserve.low() < 0.0) {
                (true, true) => said("Holds, but barely", format!("{less}; {short}")),
                (true, false) => said("Holds, but barely", less),
                (false, _) => said("Likely holds", format!("{spare}, but {short}")),
            }
        }
        (Some(PartStanding::Short), Some(reserve)) => said(
            "Does not hold",
            format!("{} short of what the curve asks for", printer.fraction(-reserve.expected())),
        ),
    }
}

/// Which part has no figure, and why.
fn why_not(answer: &HardwareAnswer, hardware: &HardwareForm) -> String {
    let without = answer.parts.iter().filter(|it| it.standing == PartStanding::NoFigure);
    let reasons = without.map(|it| {
        let why = it.over_speed.no_figure().map(ToString::to_string).unwrap_or_default();
        format!("{}: {why}.", part_answer(it, hardware))
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
    let name = part_answer(first, hardware);
    Some(format!("First to give: {name}, at {speed}, where {used} is in use."))
}

/// The largest ethanol share for the curve.
pub fn limits_of_share(answer: &HardwareAnswer, printer: &Printer) -> Option<String> {
    answer.standing?;
    let largest = answer.largest_share;
    let at_worst = match largest.at_worst {
        Some(share) => format!("{} at worst", printer.grade_at_least(share)),
        None => "at worst not even petrol without ethanol".into(),
    };
    Some(match largest.expected {
        Some(share) => format!(
            "Largest ethanol share on this curve: {} as expected, {at_worst}.",
            printer.grade(share)
        ),
        None if answer.standing == Some(PartStanding::NoFigure) => return None,
        None => "This curve is too much even for petrol without ethanol.".into(),
    })
}

/// The compressor's air against what it is rated for.
pub fn air(answer: &AirAnswer, hardware: &HardwareForm, printer: &Printer) -> (bool, String) {
    let (speed, most) = answer.most;
    let beyond = |flow: MassRate| flow > answer.rated;
    let name = hardware.parts.iter().find(|form| form.id == answer.form).map(part);
    let stands = if beyond(most.expected()) {
        "that is beyond"
    } else if beyond(most.high()) {
        "at worst that is beyond"
    } else {
        "that is within"
    };
    let words = format!(
        "Air: {} at {}; {stands} {}, {}.",
        printer.compressor_air(most.expected()),
        printer.engine_speed(speed),
        name.unwrap_or_else(|| "the limit".into()),
        printer.compressor_air(answer.rated)
    );
    (beyond(most.high()), words)
}

/// What is asked, in one line.
pub fn load_in_short(reading: &HardwareReading, printer: &Printer) -> String {
    let Some(asked) = &reading.asked else { return String::new() };
    let name = reading.curves.get(asked.target).map_or_else(String::new, |it| curve(&it.name));
    format!(
        "{name}, {} on {}, reserve {}",
        printer.crank_power(asked.load.peak_power()),
        printer.grade(asked.blend.expected()),
        printer.fraction(asked.engine.reserve)
    )
}

/// What injection fluid does at the highest power.
pub fn fluid_facts(fluid: &FluidAnswer, answer: &HardwareAnswer, printer: &Printer) -> Vec<Fact> {
    let effect = &fluid.effect;
    let mixture = |lambda| printer.mixture(lambda, answer.stoichiometric_ratio());
    let flow = answer.peak().and_then(|at| answer.headroom.flows.get(at));
    let fuel = flow.map_or_else(String::new, |flow| {
        format!("beside {} of fuel", printer.mass_flow(flow.expected()))
    });
    let stops = if effect.lambda_if_spray_stops.is_finite() {
        mixture(effect.lambda_if_spray_stops)
    } else {
        "no fuel at all".to_owned()
    };
    vec![
        Fact::new("Fluid at peak power", printer.mass_flow(fluid.flow), fuel),
        Fact::new(
            "Mixture with it",
            mixture(effect.lambda_with),
            "with the fuel left as it was".into(),
        ),
        Fact::new(
            "Share of the heat",
            printer.fraction(effect.energy_share),
            "that the methanol gives".into(),
        ),
        Fact::new(
            "Cooling, at most",
            printer.temperature_difference(effect.largest_cooling),
            "if all of it evaporates into the charge".into(),
        ),
        Fact::new(
            "Fuel that it stands for",
            printer.fraction(effect.petrol_cut),
            "if lambda is held".into(),
        ),
        Fact::new("If the spray then stops", stops, "lean, and without its cooling".into()),
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
    fn demo(percent: f64, wanted: &str) -> (Band<f64>, Judgement) {
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
        assert_eq!(said.word, "Holds");

        let (reserve, said) = demo(0.0, "90");
        assert!(reserve.low() > 0.0 && reserve.expected() < 0.9);
        assert_eq!(said.word, "Holds, but barely");
        assert!(said.more.ends_with("less than the 90\u{202f}% you want"), "{}", said.more);

        let (reserve, said) = demo(100.0, "10");
        assert!(reserve.expected() < 0.0);
        assert_eq!(said.word, "Does not hold");
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
        assert_eq!(said.word, "Likely holds");
        assert!(said.more.contains("at worst"), "{}", said.more);
    }
}
