//! From typed texts to the answer: whatever is typed, nothing breaks and every
//! number that is shown is one.

use fillwright::answers::fill::{FillAnswer, interpret};
use fillwright::answers::tank::{History, LogReading};
use fillwright::calibration::FluidState;
use fillwright::document::{AimForm, Document, FuelForm, StartForm, StopRuleForm};
use fillwright::quantity::Volume;
use fillwright::quantity::notation::{DecimalMark, Entry, Measure};
use fillwright::tank::{HowSure, LevelReading};
use fillwright::words::problems::problem;
use proptest::prelude::*;
use proptest::sample::select;
use uom::si::volume::liter;

use crate::people::units;

fn typed(usual: &'static [&'static str]) -> impl Strategy<Value = String> {
    prop_oneof![8 => select(usual).prop_map(str::to_owned), 1 => ".{0,12}", 1 => Just(String::new())]
}

fn volume() -> impl Strategy<Value = Entry> {
    const USUAL: &[&str] =
        &["0", "5", "12,5", "58", "1/4", "1/2", "full", "25 %", "3 gal", "90 km", "200", "0.01"];
    (typed(USUAL), units()).prop_map(|(text, typed_in)| Entry { text, typed_in })
}

fn share() -> impl Strategy<Value = String> {
    typed(&["0", "E0", "10", "E30", "85", "99,5", "100", "E100", "0.5 %", "70-85", "30 ±3"])
}

fn range() -> impl Strategy<Value = String> {
    typed(&["", "", "0-10", "70-85", "0-100", "29–31", "95-96"])
}

fn octane() -> impl Strategy<Value = Entry> {
    let text = typed(&["", "95", "98 RON", "93 AKI", "104", "88,5"]);
    (text, units()).prop_map(|(text, typed_in)| Entry { text, typed_in })
}

fn how_sure() -> impl Strategy<Value = HowSure> {
    select(vec![HowSure::Sure, HowSure::Roughly, HowSure::Unknown])
}

fn motor() -> impl Strategy<Value = String> {
    typed(&["", "85", "88,5", "98 RON"])
}

prop_compose! {
    fn fuel()(
        share in share(), share_range in range(), octane in octane(), mon in motor(),
        price in typed(&["", "1.2", "17,29", "0", "3.5/gal"]), price_in in units(),
        limit in volume(), limited in any::<bool>(), use_all in any::<bool>(),
        amount in volume(), poured in prop::bool::weighted(0.3), how_sure in how_sure(),
    ) -> FuelForm {
        FuelForm {
            name: "fuel".into(), share, share_range, how_sure, octane, mon,
            price: Entry { text: price, typed_in: price_in },
            limit: if limited { limit } else { Entry::default() },
            use_all,
            poured: if poured { amount } else { Entry::default() },
            ..FuelForm::default()
        }
    }
}

prop_compose! {
    fn document()(
        units in units(), mark in select(vec![None, Some(DecimalMark::Comma)]),
        capacity in volume(), consumption in typed(&["8", "7,5", "", "30 mpg"]),
        start in select(vec![StartForm::Typed, StartForm::Log]),
        level in volume(), level_error in volume(), known in any::<bool>(),
        reading in select(vec![LevelReading::Gauge, LevelReading::Counted, LevelReading::Brimmed]),
        shares in (share(), range(), octane(), motor()),
        offers in prop::collection::vec(fuel(), 0..5),
        aim in select(vec![
            AimForm::Share, AimForm::Calibration(1), AimForm::Calibration(2), AimForm::AsPoured,
        ]),
        aim_share in share(),
        stop in select(vec![
            StopRuleForm::Brim, StopRuleForm::Level, StopRuleForm::AtMost, StopRuleForm::Budget, StopRuleForm::Least,
        ]),
        stops in (volume(), volume(), typed(&["100", "20,50", ""])),
        fluid in select(vec![FluidState::Ready, FluidState::Unknown, FluidState::Absent]),
        usual_tank in prop::bool::weighted(0.7),
    ) -> Document {
        let mut document = Document::demo();
        document.settings.units = units;
        document.settings.decimal = mark;
        if !usual_tank {
            document.here.car.capacity = capacity;
        }
        document.here.car.consumption = Entry { text: consumption, typed_in: units };
        document.here.car.fluid = fluid;
        let fill = &mut document.here.fill;
        fill.start = start;
        fill.contents.level.level = level;
        fill.contents.level.error = if known { level_error } else { Entry::default() };
        fill.contents.level.reading = reading;
        (fill.contents.share, fill.contents.share_range, fill.contents.octane, fill.contents.mon) = shares;
        fill.offers = offers;
        for (id, offer) in (100..).zip(&mut fill.offers) {
            offer.id = id;
        }
        fill.aim = aim;
        fill.aim_share = aim_share;
        fill.stop = stop;
        (fill.stop_level, fill.stop_volume, fill.stop_money) = stops;
        document
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(3000))]

    #[test]
    fn whatever_is_typed_there_is_an_answer_or_a_complaint(document in document()) {
        let printer = document.settings.printer(DecimalMark::Point);
        let history = History::of(&LogReading::of(&document.here, &printer));
        let reading = interpret(&document, history.estimator.as_ref(), &printer);
        for field_error in &reading.field_errors {
            let words = problem(&field_error.problem, &printer);
            let first = words.chars().next();
            prop_assert!(first.is_some_and(|c| !c.is_lowercase()), "{field_error:?}");
            prop_assert!(words.split(' ').count() > 3, "{field_error:?}");
        }
        let Some(asked) = reading.asked else {
            prop_assert!(!reading.field_errors.is_empty(), "neither an answer nor a complaint");
            return Ok(());
        };
        let answer = FillAnswer::of(asked);
        let capacity = answer.asked.problem.tank.capacity;
        let slack = Volume::new::<liter>(1e-6);
        prop_assert!(answer.plan.level <= capacity + slack);
        for step in &answer.steps {
            // To the click there may be nothing to pour as expected, yet some in fact.
            prop_assert!(step.volume > Volume::default() || step.to_click, "an empty step");
        }
        if let Some(blend) = &answer.blend {
            let share = blend.share;
            prop_assert!(share.low() <= share.expected() && share.expected() <= share.high());
            for band in [blend.ron, blend.mon, blend.stoichiometric_afr, blend.volume_multiplier] {
                prop_assert!(band.is_none_or(|it| it.low().is_finite() && it.high().is_finite()));
            }
            prop_assert!(blend.stoichiometric_afr.is_some() && blend.volume_multiplier.is_some());
        }
        for line in answer.workings() {
            prop_assert!(line.value.is_finite(), "{:?}: {}", line.name, line.numbers);
        }
    }

    /// A document is stored and read without loss, and its texts read in the
    /// units of the day come back unchanged in their own.
    #[test]
    fn nothing_typed_is_lost(document in document()) {
        let text = document.to_json().unwrap();
        prop_assert_eq!(&Document::from_json(&text).unwrap(), &document);
        for entry in [&document.here.fill.contents.level.level, &document.here.car.capacity, &document.here.fill.stop_volume] {
            let mut settings = document.settings.clone();
            settings.units = entry.typed_in;
            let printer = settings.printer(DecimalMark::Point);
            prop_assert_eq!(&printer.shown(entry, Measure::Volume), &entry.text);
        }
    }

    #[test]
    fn no_stored_text_does_harm(text in ".{0,200}") {
        prop_assert!(Document::from_json(&text).is_err());
    }
}
