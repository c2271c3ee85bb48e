use fillwright::calibration::Verdict;
use fillwright::logbook::{
    BeforeForm, CalibrationForm, Document, Entry, Remedy, SensorForm, TankAnswer, TankQuestion,
    What,
};
use uom::si::volume::liter;

use crate::support::{car, event, fill, fuel, history, printer, stated, write};

/// E10 filled with an E85 of which little is known: E30, give or take.
fn unsure() -> Document {
    let mut document = car();
    let mut strong = fuel(1, "85", "16");
    strong.share_range = "55-90".into();
    write(
        &mut document.here,
        [
            event("a", "2026-05-01T10:00", stated("15", "10")),
            event(
                "b",
                "2026-05-01T10:10",
                fill(BeforeForm::Nothing, vec![strong, fuel(2, "10", "4")], false),
            ),
        ],
    );
    document.here.fill.offers = vec![fuel(1, "85", ""), fuel(2, "10", "")];
    document.here.car.calibrations = vec![CalibrationForm {
        id: 9,
        name: "Mid blend".into(),
        low: "E33".into(),
        high: "E60".into(),
        ron_min: Entry::metric("95"),
        ..CalibrationForm::default()
    }];
    document
}

fn answer(document: &Document) -> TankAnswer {
    TankAnswer::of(&TankQuestion::of(document, &printer(document)), &history(document)).unwrap()
}

/// What is said to settle it does, when it is entered; and a little less does not.
#[test]
fn what_would_make_it_usable_does() {
    let document = unsure();
    let answer = answer(&document);
    let verdict = &answer.verdicts[0];
    assert_eq!(verdict.judgement.verdict, Verdict::ConfirmFirst, "{:?}", answer.estimate);
    let after = |what| {
        let mut next = document.clone();
        write(&mut next.here, [event("c", "2026-05-02T10:00", what)]);
        self::answer(&next).verdicts[0].judgement.verdict
    };
    let mut kinds = 0;
    for remedy in &verdict.remedies {
        match remedy {
            Remedy::Reading { from, to } => {
                kinds |= 1;
                // A tube test with marks a millilitre apart reads odd percents:
                // 50 mL and half of what is beyond the 1.
                let test = |percent: f64| {
                    What::TubeTest(fillwright::logbook::TubeTestForm {
                        boundary: format!("{:.2}", 50.0 + (percent - 1.0) / 2.0),
                        ..Default::default()
                    })
                };
                assert_eq!(after(test(from.percent())), Verdict::Usable);
                assert_eq!(after(test(to.percent())), Verdict::Usable);
                assert_ne!(after(test(from.percent() - 1.0)), Verdict::Usable);
                assert_ne!(after(test(to.percent() + 1.0)), Verdict::Usable);
            }
            Remedy::Pour { fuel: index, volume } => {
                kinds |= 2;
                let share = ["85", "10"][*index];
                let volume = volume.get::<liter>();
                let pour = |volume: f64| {
                    let fuels = vec![fuel(1, share, &volume.to_string())];
                    fill(BeforeForm::Nothing, fuels, false)
                };
                assert_eq!(after(pour(volume)), Verdict::Usable);
                assert_ne!(after(pour(volume - 0.5)), Verdict::Usable);
            }
        }
    }
    assert_eq!(kinds, 3, "{:?}", verdict.remedies);
}

/// A car whose sensor is in the log is told of sensor readings, others of tube
/// tests.
#[test]
fn the_instrument_is_the_one_that_there_is() {
    let mut document = unsure();
    assert_eq!(answer(&document).reading, fillwright::tank::ShareReadingKind::TubeTest);
    let sensor = SensorForm { reading: "E33".into(), old_fuel: true, ..SensorForm::default() };
    write(&mut document.here, [event("c", "2026-05-02T10:00", What::Sensor(sensor))]);
    assert_eq!(answer(&document).reading, fillwright::tank::ShareReadingKind::Sensor);
}

/// A usable calibration needs nothing; one that lacks octane is not helped by a
/// reading.
#[test]
fn no_remedy_where_none_is_needed_or_none_helps() {
    let mut document = unsure();
    document.here.car.calibrations[0].low = "E0".into();
    document.here.car.calibrations[0].high = "E85".into();
    let usable = &answer(&document).verdicts[0];
    assert_eq!((usable.judgement.verdict, usable.remedies.len()), (Verdict::Usable, 0));
    document.here.car.calibrations[0].ron_min = Entry::metric("109");
    let short = &answer(&document).verdicts[0];
    assert_eq!((short.judgement.verdict, short.remedies.len()), (Verdict::DoNotSelect, 0));
}
