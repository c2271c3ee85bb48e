use fillwright::document::{BeforeForm, Event, Id, What};
use fillwright::quantity::notation::Entry;
use fillwright::tank::Doubt;
use fillwright::words::problems::problem;
use uom::si::length::kilometer;

use crate::support::{
    car, drive, event, fill, fuel, history, level, litres, near, now, printer, sensor, stated,
    write,
};

/// 15 L of E10, 16 L of E85 and 29 L of E10 to the click: (15 + 29) 0.10 + 16 0.85
/// over 60 is 30 %.
fn filled() -> [Event; 2] {
    let fuels = vec![fuel(1, "85", "16"), fuel(2, "10", "29")];
    [
        event("a", "2026-05-01T10:00", stated("15", "10")),
        event("b", "2026-05-01T10:10", fill(BeforeForm::Nothing, fuels, true)),
    ]
}

#[test]
fn a_fill_is_a_balance_and_driving_keeps_the_blend() {
    let mut document = car();
    write(&mut document.here, filled());
    let after = now(&document);
    near(after.share.expected().percent(), 30.0, 0.3);
    near(litres(after.level.expected()), 60.0, 0.5);
    // 400 km at 8 L/100 km of petrol are 32 L of it. A litre of E30 has the energy
    // of 1 - 0.3 (1 - 21.2/32.2) L, with 21.2 and 32.2 MJ/L (from memory): 35.7 L.
    write(&mut document.here, [event("c", "2026-05-04T18:00", drive("400"))]);
    let driven = now(&document);
    near(litres(driven.level.expected()), 60.0 - 35.7, 1.0);
    near(driven.share.expected().percent(), 30.0, 0.3);
    assert!(driven.level.high() - driven.level.low() > after.level.high() - after.level.low());
}

/// Written late, changed or removed, an entry counts as if the log had always
/// been so.
#[test]
fn whatever_is_done_to_an_entry_all_after_it_is_worked_out_anew() {
    let mut in_order = car();
    write(&mut in_order.here, filled());
    let last = event("d", "2026-05-06T08:00", What::Level(level("1/4")));
    let between = event("c", "2026-05-05T18:00", drive("500"));
    write(&mut in_order.here, [between.clone(), last.clone()]);

    let mut late = car();
    write(&mut late.here, filled());
    write(&mut late.here, [last, between.clone()]);
    assert_eq!(now(&late), now(&in_order));

    let mut changed = late.clone();
    write(&mut changed.here, [Event { what: drive("20"), ..between.clone() }]);
    assert_ne!(now(&changed), now(&in_order));
    write(&mut changed.here, [between]);
    assert_eq!(now(&changed), now(&in_order));

    let id = Id::new("c").unwrap();
    late.here.log.set_removed(&id, true);
    assert_ne!(now(&late), now(&in_order));
    assert_eq!(history(&late).replays.len(), 3);
    late.here.log.set_removed(&id, false);
    assert_eq!(now(&late), now(&in_order));
}

/// A sensor that reports a fault tells nothing, and the entry says why.
#[test]
fn a_fault_is_no_share() {
    let mut document = car();
    write(&mut document.here, filled());
    let before = now(&document);
    write(&mut document.here, [event("c", "2026-05-02T10:00", sensor("170 Hz"))]);
    assert_eq!(now(&document), before);
    let history = history(&document);
    let why = history.replays.last().unwrap().unused.as_ref().unwrap();
    let why = problem(why, &printer(&document));
    assert!(why.starts_with("170 Hz is the sensor's sign of a fault"), "{why}");
}

/// A reading sharpens the estimate; one of the old fuel in the line does not.
#[test]
fn a_reading_counts_once_the_new_fuel_has_reached_the_sensor() {
    let mut document = car();
    let mut events = filled();
    let What::Fill(fill) = &mut events[1].what else { unreachable!() };
    fill.fuels[0].share_range = "70-85".into();
    write(&mut document.here, events);
    let width = |document: &_| {
        let share = now(document).share;
        share.high().percent() - share.low().percent()
    };
    let before = width(&document);
    let mut reading = event("c", "2026-05-02T10:00", sensor("79 Hz"));
    write(&mut document.here, [reading.clone()]);
    assert!(width(&document) < before - 0.5, "{} after {before}", width(&document));
    let What::Sensor(form) = &mut reading.what else { unreachable!() };
    form.old_fuel = true;
    write(&mut document.here, [reading]);
    near(width(&document), before, 1e-9);
}

/// A gauge that shows far more than the log allows: it asks, and allows for both.
#[test]
fn a_fill_that_is_not_in_the_log_is_asked_about() {
    let mut document = car();
    write(&mut document.here, filled());
    write(
        &mut document.here,
        [
            event("c", "2026-05-05T18:00", drive("500")),
            event("d", "2026-05-06T08:00", What::Level(level("3/4"))),
        ],
    );
    let before = history(&document).replays[2].after().unwrap();
    let doubts = &history(&document).replays[3].doubts;
    // 500 km are 44.6 L, so 15.4 L were left; three quarters are 45 L.
    let [Doubt::UnloggedFill { volume }] = doubts.as_slice() else { panic!("{doubts:?}") };
    near(litres(*volume), 45.0 - 15.4, 3.0);
    let after = now(&document);
    let width =
        |it: &fillwright::tank::Estimate| it.share.high().percent() - it.share.low().percent();
    assert!(width(&after) > 3.0 * width(&before));
    // The answer, given late, settles it: 30 L of E10 onto 15.4 L of E30.
    let fuels = vec![fuel(1, "10", "30")];
    let answer = event("e", "2026-05-05T19:00", fill(BeforeForm::Nothing, fuels, false));
    write(&mut document.here, [answer]);
    assert!(history(&document).replays.iter().all(|it| it.doubts.is_empty()));
    near(now(&document).share.expected().percent(), (15.4 * 30.0 + 30.0 * 10.0) / 45.4, 1.0);
}

/// Half a litre in pump, lines and rail, at 8 L/100 km, reaches 6.25 km on petrol,
/// less on what was in there: E10 has the energy of 1 - 0.1 (1 - 21.2/32.2) L.
#[test]
fn the_old_blend_feeds_the_engine_for_as_long_as_the_line_holds() {
    let mut document = car();
    write(&mut document.here, filled());
    assert_eq!(history(&document).old_blend, None, "the line's volume is not known");
    document.here.car.line = Entry::metric("0.5");
    let old = history(&document).old_blend.unwrap();
    near(old.reach.get::<kilometer>(), 6.25 * (1.0 - 0.1 * (1.0 - 21.2 / 32.2)), 0.03);
    assert_eq!(old.left, old.reach);
    write(&mut document.here, [event("c", "2026-05-02T10:00", drive("4"))]);
    let driven = history(&document).old_blend.unwrap();
    near((old.left - driven.left).get::<kilometer>(), 4.0, 1e-9);
    write(&mut document.here, [event("d", "2026-05-02T11:00", drive("40"))]);
    near(history(&document).old_blend.unwrap().left.get::<kilometer>(), 0.0, 0.0);
}

#[test]
fn a_log_without_a_tank_says_so() {
    let mut document = car();
    document.here.car.capacity = Entry::default();
    write(&mut document.here, filled());
    let history = history(&document);
    assert!(history.estimator.is_none());
    assert!(history.replays.iter().all(|it| {
        it.unused.as_ref().is_some_and(|why| problem(why, &printer(&document)).contains("tank"))
    }));
}
