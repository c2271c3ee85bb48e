use fillwright::answers::tank::{Clearing, Need, Remedy, TankAnswer, TankQuestion};
use fillwright::calibration::{FluidState, Verdict};
use fillwright::document::{
    BeforeForm, CalibrationForm, ContentsForm, Document, DriveForm, SensorForm, What,
};
use fillwright::quantity::notation::Entry;
use uom::si::volume::liter;

use crate::support::{car, event, fill, fuel, history, level, litres, now, printer, stated, write};

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
                    What::TubeTest(fillwright::document::TubeTestForm {
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
            other => panic!("{other:?}"),
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

/// A usable calibration needs nothing; one that needs more octane than any fuel on offer has
/// is helped by another fuel alone.
#[test]
fn no_remedy_where_none_is_needed_or_none_helps() {
    let mut document = unsure();
    document.here.car.calibrations[0].low = "E0".into();
    document.here.car.calibrations[0].high = "E85".into();
    let usable = &answer(&document).verdicts[0];
    assert_eq!((usable.judgement.verdict, usable.remedies.len()), (Verdict::Usable, 0));
    document.here.car.calibrations[0].ron_min = Entry::metric("109");
    let short = &answer(&document).verdicts[0];
    assert_eq!(short.judgement.verdict, Verdict::DoNotSelect);
    assert_eq!(short.remedies, [Remedy::OtherFuel]);
}

fn calibration(id: u32, name: &str, low: &str, high: &str) -> CalibrationForm {
    let (name, low, high) = (name.into(), low.into(), high.into());
    let ron_min = Entry::metric("95");
    CalibrationForm { id, name, low, high, ron_min, ..CalibrationForm::default() }
}

/// A tank of 60 L with this in it, these fuels on offer, and a calibration for petrol.
fn with(contents: What, offers: &[&str]) -> Document {
    let mut document = car();
    document.here.car.reserve = Entry::metric("8");
    document.here.car.calibrations = vec![calibration(9, "Petrol", "E0", "E12")];
    write(&mut document.here, [event("a", "2026-05-01T10:00", contents)]);
    document.here.fill.offers =
        offers.iter().zip(1..).map(|(share, id)| fuel(id, share, "")).collect();
    document
}

/// 58 L of E30 leave room for 2 L. Filled up with petrol without ethanol, 24 L of E30 in 60 L
/// are E12: the level to drive down to lies below that, and above the reserve. Whoever does
/// what is said may select the calibration.
#[test]
fn too_strong_and_full_is_driven_down() {
    let document = with(stated("58", "30"), &["0", "10"]);
    let found = answer(&document);
    let verdict = &found.verdicts[0];
    assert_eq!(verdict.judgement.verdict, Verdict::DoNotSelect);
    let [Remedy::DriveDown { level: down, fuel: 0, volume }] = verdict.remedies[..] else {
        panic!("{:?}", verdict.remedies)
    };
    assert!((8.0..24.0).contains(&litres(down)), "{down:?}");
    let burned = litres(now(&document).level.expected()) - litres(down);
    let trip = DriveForm {
        distance: Entry::metric("100"),
        consumption: Entry::metric(&format!("{burned:.3}")),
    };
    let after = |volume: f64| {
        let mut next = document.clone();
        let pour = vec![fuel(1, "0", &volume.to_string())];
        write(
            &mut next.here,
            [
                event("b", "2026-05-02T10:00", What::Trip(trip.clone())),
                event("c", "2026-05-02T10:10", What::Level(level(&litres(down).to_string()))),
                event("d", "2026-05-02T10:20", fill(BeforeForm::Nothing, pour, false)),
            ],
        );
        answer(&next).verdicts[0].judgement.verdict
    };
    assert_eq!(after(litres(volume)), Verdict::Usable);
    assert_ne!(after(litres(volume) - 3.0), Verdict::Usable);
}

/// At the reserve of 8 L, E85 filled up with petrol is still E11; E3 it is only after the
/// tank was drained. With E85 alone on offer it never is.
#[test]
fn where_driving_does_not_help_a_workshop_or_another_fuel_does() {
    let mut document = with(stated("30", "85"), &["85", "0"]);
    document.here.car.calibrations = vec![calibration(9, "Petrol", "E0", "E3")];
    assert_eq!(answer(&document).verdicts[0].remedies, [Remedy::Drain { fuel: Some(1) }]);
    document.here.fill.offers.pop();
    assert_eq!(answer(&document).verdicts[0].remedies, [Remedy::OtherFuel]);
    document.here.fill.offers.clear();
    assert_eq!(answer(&document).verdicts[0].remedies, [Remedy::OtherFuel]);
    // Neither fuel lies in this window, but a blend of them does.
    let mut document = with(stated("30", "60"), &["85", "0"]);
    document.here.car.calibrations = vec![calibration(9, "Narrow", "E29.9", "E30.1")];
    assert_eq!(answer(&document).verdicts[0].remedies, [Remedy::Drain { fuel: None }]);
}

/// What nobody has looked at is looked at; then the calibration is usable.
#[test]
fn what_is_not_known_is_to_be_looked_up() {
    let without = ContentsForm {
        level: level("30"),
        share: "10".into(),
        octane: Entry::default(),
        ..ContentsForm::default()
    };
    let mut document = with(What::Correction(without), &["10"]);
    let found = answer(&document);
    assert_eq!(found.verdicts[0].needs, [Need::Octane]);
    assert_eq!(found.verdicts[0].remedies, []);
    let left = found.none_usable.unwrap();
    assert_eq!((left.nearest, left.clears), (0, Some((0, Clearing::Need(Need::Octane)))));
    write(&mut document.here, [event("a", "2026-05-01T10:00", stated("30", "10"))]);
    assert_eq!(answer(&document).verdicts[0].judgement.verdict, Verdict::Usable);
    assert_eq!(answer(&document).none_usable, None);

    document.here.car.calibrations[0].needs_fluid = true;
    for (fluid, needs) in [
        (FluidState::Unknown, vec![Need::CheckFluid]),
        (FluidState::Absent, vec![Need::FillFluid]),
        (FluidState::Ready, vec![]),
    ] {
        document.here.car.fluid = fluid;
        let found = answer(&document);
        assert_eq!((&found.verdicts[0].needs, found.verdicts[0].remedies.len()), (&needs, 0));
        assert_eq!(found.none_usable.is_none(), needs.is_empty());
    }
}

/// Octane that falls short is made up by so much of a fuel that has more, where the window
/// allows it: 91 in the tank, 104 poured.
#[test]
fn octane_is_made_up_by_a_fuel_that_has_more() {
    let contents = ContentsForm {
        level: level("30"),
        share: "10".into(),
        octane: Entry::metric("91"),
        ..ContentsForm::default()
    };
    let mut document = with(What::Correction(contents), &["10", "85"]);
    document.here.car.calibrations = vec![calibration(9, "Wide", "E0", "E60")];
    let found = answer(&document);
    assert_eq!(found.verdicts[0].judgement.verdict, Verdict::DoNotSelect);
    let pours: Vec<usize> = found.verdicts[0]
        .remedies
        .iter()
        .map(|it| match it {
            Remedy::Pour { fuel, .. } => *fuel,
            other => panic!("{other:?}"),
        })
        .collect();
    // The petrol on offer has 95 itself, and never brings 91 up to that.
    assert_eq!(pours, [1]);
}

/// The blend is likely inside the window in the middle, but not surely: that one is nearest,
/// and a reading can clear it. No remedy is less than a person can pump.
#[test]
fn where_none_is_usable_the_nearest_and_the_first_step_are_named() {
    let mut document = unsure();
    document.here.car.calibrations = vec![
        calibration(1, "Petrol", "E0", "E12"),
        calibration(2, "Mid blend", "E33", "E60"),
        calibration(3, "Strong", "E70", "E85"),
    ];
    let found = answer(&document);
    assert!(found.verdicts.iter().all(|it| it.judgement.verdict != Verdict::Usable));
    let left = found.none_usable.unwrap();
    assert_eq!(left.nearest, 1);
    assert_eq!(left.clears, Some((1, Clearing::Reading)));
    for verdict in &found.verdicts {
        assert!(!verdict.remedies.is_empty(), "{}", verdict.calibration.name);
        for remedy in &verdict.remedies {
            let volume = match remedy {
                Remedy::Pour { volume, .. } | Remedy::DriveDown { volume, .. } => *volume,
                _ => continue,
            };
            assert!(litres(volume) >= 0.5, "{remedy:?}");
        }
    }
}
