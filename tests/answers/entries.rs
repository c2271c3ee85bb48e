use fillwright::answers::FieldError;
use fillwright::document::{
    BeforeForm, ContentsOf, ContentsPart, Document, Draft, DriveForm, EntryPart, Field, FuelPart,
    Id, SensorForm, TubeTestForm, What,
};
use fillwright::quantity::notation::Entry;
use fillwright::tank::TubeTestMethod;
use fillwright::words::problems::problem;
use uom::si::thermodynamic_temperature::degree_celsius;

use crate::support::{
    car, drive, event, fill, fuel, level, litres, near, now, printer, stated, write,
};

fn writing(document: &mut Document, what: What) {
    let time = "2026-05-03T17:40".to_owned();
    document.here.draft = Some(Draft::new(Id::new("new").unwrap(), what, time, 120));
}

/// What is wrong with an entry, and where.
fn wrong(what: What) -> Vec<(Field, String)> {
    let mut document = car();
    writing(&mut document, what);
    let kept = document.here.keep_draft(&printer(&document));
    let field_errors = document.here.draft_errors(&printer(&document));
    assert_eq!(kept, field_errors.is_empty());
    assert_eq!(document.here.log.all().len(), usize::from(kept));
    assert_eq!(document.here.draft.is_none(), kept, "what was typed stays until it is kept");
    let said = |it: FieldError| (it.field, problem(&it.problem, &printer(&document)));
    field_errors.into_iter().map(said).collect()
}

#[test]
fn a_good_entry_of_every_kind_is_kept() {
    let plain = TubeTestForm {
        method: TubeTestMethod::PlainWater,
        fuel: "90".into(),
        water: "10 mL".into(),
        boundary: "53".into(),
        step: "0.5".into(),
    };
    let trip = DriveForm { distance: Entry::metric("100 mi"), consumption: Entry::metric("9.1") };
    let salt = TubeTestForm { boundary: "64".into(), ..TubeTestForm::default() };
    let sensor = SensorForm { reading: "E31".into(), pulse: "3.1".into(), old_fuel: false };
    let one = vec![fuel(1, "85", "16"), fuel(2, "10", "")];
    for what in [
        What::Level(level("25 %")),
        What::Sensor(sensor),
        What::TubeTest(salt),
        What::TubeTest(plain),
        drive("120"),
        What::Trip(trip),
        What::Drain(Entry::metric("5")),
        stated("1/2", "30"),
        fill(BeforeForm::Level(level("1/4")), one, false),
        What::Note,
    ] {
        assert_eq!(wrong(what.clone()), [], "{what:?}");
    }
}

#[test]
fn what_is_missing_or_wrong_is_said_at_its_field() {
    let at = |part| Field::Entry(part);
    let of_tank = |part| Field::Contents(ContentsOf::Entry, part);
    let tube = |form: TubeTestForm| What::TubeTest(form);
    let falls = TubeTestForm { boundary: "49".into(), ..TubeTestForm::default() };
    let no_fuel = TubeTestForm {
        method: TubeTestMethod::PlainWater,
        water: "10".into(),
        boundary: "12".into(),
        ..TubeTestForm::default()
    };
    let fault = SensorForm { reading: "170 Hz".into(), ..SensorForm::default() };
    let pulse = SensorForm { reading: "31".into(), pulse: "9".into(), ..SensorForm::default() };
    let mut too_strong = fuel(1, "185", "16");
    too_strong.octane.text.clear();
    let cases = [
        (What::Level(level("")), of_tank(ContentsPart::Level)),
        (What::Level(level("70")), of_tank(ContentsPart::Level)),
        (What::Sensor(SensorForm::default()), at(EntryPart::Sensor)),
        (What::Sensor(fault), at(EntryPart::Sensor)),
        (What::Sensor(pulse), at(EntryPart::Pulse)),
        (tube(TubeTestForm::default()), at(EntryPart::Boundary)),
        (tube(falls), at(EntryPart::Boundary)),
        (tube(no_fuel), at(EntryPart::TubeFuel)),
        (drive(""), at(EntryPart::Distance)),
        (What::Trip(DriveForm::default()), at(EntryPart::Distance)),
        (What::Drain(Entry::metric("all of it")), at(EntryPart::Drained)),
        (What::Drain(Entry::default()), at(EntryPart::Drained)),
        (stated("", "30"), of_tank(ContentsPart::Level)),
        (stated("1/2", ""), of_tank(ContentsPart::Share)),
        (fill(BeforeForm::Nothing, vec![fuel(1, "85", "")], true), at(EntryPart::Fuels)),
        (fill(BeforeForm::Nothing, vec![too_strong], true), Field::Poured(1, FuelPart::Share)),
    ];
    for (what, field) in cases {
        let wrong = wrong(what.clone());
        assert_eq!(wrong.first().map(|it| it.0), Some(field), "{what:?}: {wrong:?}");
        assert!(wrong[0].1.split(' ').count() > 3, "{wrong:?}");
    }
}

/// A blank may have been forgotten, so it has to be said that nothing was left. In the log a
/// blank goes on meaning that, as it did when it was stored.
#[test]
fn drained_completely_is_said_and_stays_so() {
    let mut document = car();
    write(&mut document.here, [event("a", "2026-05-01T10:00", stated("30", "10"))]);
    writing(&mut document, What::Drain(Entry::default()));
    assert!(!document.here.keep_draft(&printer(&document)));
    document.here.draft.as_mut().unwrap().drained_completely = true;
    assert!(document.here.keep_draft(&printer(&document)));
    assert!(litres(now(&document).level.expected()) < 1.5);
    let stored = document.here.log.find(&Id::new("new").unwrap()).unwrap().clone();
    assert_eq!(stored.what, What::Drain(Entry::default()));

    // Opened for changing, it still says so; a part of it is another thing.
    document.here.draft = Some(Draft::of(&stored));
    assert!(document.here.keep_draft(&printer(&document)));
    let mut part = Draft::of(&stored);
    part.drained_completely = false;
    document.here.draft = Some(part.clone());
    assert!(!document.here.keep_draft(&printer(&document)));
    part.what = What::Drain(Entry::metric("10"));
    document.here.draft = Some(part);
    assert!(document.here.keep_draft(&printer(&document)));
    near(litres(now(&document).level.expected()), 20.0, 1.0);
}

#[test]
fn without_a_time_it_cannot_be_kept() {
    let mut document = car();
    writing(&mut document, What::Note);
    document.here.draft.as_mut().unwrap().time = "2026-05-03".into();
    assert!(!document.here.keep_draft(&printer(&document)));
    let field_errors = document.here.draft_errors(&printer(&document));
    assert_eq!(field_errors[0].field, Field::Entry(EntryPart::Time));
}

#[test]
fn changing_an_entry_keeps_its_identity_and_its_clock() {
    let mut document = car();
    write(&mut document.here, [event("a", "2026-05-01T10:00", stated("15", "10"))]);
    let before = document.here.log.all()[0].clone();
    document.here.draft = Some(Draft::of(&before));
    assert!(document.here.keep_draft(&printer(&document)));
    let after = &document.here.log.all()[0];
    assert_eq!((&after.id, after.time, &after.what), (&before.id, before.time, &before.what));
    assert_eq!(after.revision, 2);
}

/// 100 km at 9.1 L/100 km by the trip computer are 9.1 L.
#[test]
fn a_trip_computer_counts_litres() {
    let mut document = car();
    let trip = DriveForm { distance: Entry::metric("100"), consumption: Entry::metric("9.1") };
    write(
        &mut document.here,
        [
            event("a", "2026-05-01T10:00", stated("30", "10")),
            event("b", "2026-05-01T12:00", What::Trip(trip)),
        ],
    );
    near(litres(now(&document).level.expected()), 30.0 - 9.1, 0.1);
}

/// The trade's scale: 41.25 ms - 81.25 at 3.1 ms is 46.6 degrees.
#[test]
fn the_pulse_tells_the_temperature_while_typing() {
    let mut document = car();
    let sensor = SensorForm { pulse: "3,1 ms".into(), ..SensorForm::default() };
    writing(&mut document, What::Sensor(sensor));
    let celsius = document.here.draft_temperature().unwrap().get::<degree_celsius>();
    near(celsius, 41.25 * 3.1 - 81.25, 1e-9);
}
