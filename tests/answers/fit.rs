//! What is odd about an entry: found before it is kept, and nothing that happens in life.

use fillwright::answers::tank::Oddity;
use fillwright::document::{BeforeForm, Document, Draft, DriveForm, Event, Id, Moment, What};
use fillwright::quantity::notation::Entry;
use uom::si::length::kilometer;

use crate::support::{car, drive, event, fill, fuel, level, litres, near, printer, stated, write};

const NOW: &str = "2026-05-03T12:00";

/// A tank of 55 L, and a log.
fn with(consumption: &str, log: impl IntoIterator<Item = Event>) -> Document {
    let mut document = car();
    document.here.car.capacity = Entry::metric("55");
    document.here.car.consumption = Entry::metric(consumption);
    write(&mut document.here, log);
    document
}

fn odd_at(document: &Document, time: &str, what: What) -> Vec<Oddity> {
    let mut document = document.clone();
    document.here.draft = Some(Draft::new(Id::new("new").unwrap(), what, time.to_owned(), 120));
    let now = Moment::new(NOW, 120).unwrap();
    let odd = document.here.draft_oddities(&printer(&document), now);
    // It can be kept all the same.
    assert!(document.here.keep_draft(&printer(&document)));
    odd
}

fn odd(document: &Document, what: What) -> Vec<Oddity> {
    odd_at(document, NOW, what)
}

fn full() -> Event {
    event("a", "2026-05-01T10:00", stated("55", "0"))
}

/// 55 L take the car 55 / 4.8 hundred kilometres at the least that a leg burns, 0.6 times 8
/// L/100 km: 1146 km. At 8 L/100 km they would be 688.
#[test]
fn a_distance_that_no_tank_covers_is_asked_about() {
    let document = with("8", [full()]);
    let found = odd(&document, drive("1800"));
    let [Oddity::Distance { driven, farthest }] = found[..] else { panic!("{found:?}") };
    near(driven.get::<kilometer>(), 1800.0, 1e-9);
    near(farthest.get::<kilometer>(), 5500.0 / 4.8, 12.0);
    for usual in ["5", "400", "690", "900"] {
        assert_eq!(odd(&document, drive(usual)), [], "{usual} km");
    }
    // Nothing is known of the tank, or of the consumption: it is no longer for that.
    assert_eq!(odd(&with("8", []), drive("1800")).len(), 1);
    assert_eq!(odd(&with("", [full()]), drive("1800")).len(), 1);
    assert_eq!(odd(&with("", [full()]), drive("900")), []);
}

/// A thrifty car that takes 4.5 L/100 km was driven 1200 km on one tank: 4.6 L/100 km.
#[test]
fn a_long_way_of_a_thrifty_car_is_not() {
    assert_eq!(odd(&with("4.5", [full()]), drive("1200")), []);
    assert_eq!(odd(&with("4.5", [full()]), drive("1800")).len(), 1);
}

/// From 15 L, 400 km take 3.75 L/100 km of a car that takes 8; 180 km take what it does.
#[test]
fn what_was_in_the_tank_then_counts() {
    let low = event("a", "2026-05-01T10:00", stated("15", "0"));
    let document = with("8", [low, event("c", "2026-05-02T20:00", stated("55", "0"))]);
    let at = |time, distance| odd_at(&document, time, drive(distance)).len();
    assert_eq!(at("2026-05-02T10:00", "400"), 1);
    assert_eq!(at("2026-05-02T10:00", "180"), 0);
    // After the tank was full it is another matter.
    assert_eq!(at("2026-05-03T10:00", "400"), 0);
}

/// 900 km were written down, 950 km were meant: what is left after the first is no measure.
#[test]
fn an_entry_that_is_changed_is_not_held_against_itself() {
    let mut document = with("8", [full(), event("b", "2026-05-02T10:00", drive("900"))]);
    let mut draft = Draft::of(&document.here.log.all()[1]);
    draft.what = drive("950");
    document.here.draft = Some(draft);
    let now = Moment::new(NOW, 120).unwrap();
    assert_eq!(document.here.draft_oddities(&printer(&document), now), []);
    // As another entry it would be too far: 55 L less 0.6 of 72 L leave 11.8 L.
    assert_eq!(odd(&document, drive("950")).len(), 1);
}

/// 1800 km at 3 L/100 km by the trip computer are 54 L, yet too far for the car; 900 km at 9
/// L/100 km are 81 L, of which 55 L are at most 55 / 0.75.
#[test]
fn a_trip_computer_is_held_against_the_tank_too() {
    let document = with("8", [full()]);
    let trip = |distance, consumption| {
        let (distance, consumption) = (Entry::metric(distance), Entry::metric(consumption));
        odd(&document, What::Trip(DriveForm { distance, consumption }))
    };
    assert!(matches!(trip("1800", "3")[..], [Oddity::Distance { .. }]));
    let found = trip("900", "9");
    let [Oddity::Burned { counted, most }] = found[..] else { panic!("{found:?}") };
    near(litres(counted), 81.0, 1e-9);
    near(litres(most), 55.0 / 0.75, 0.8);
    assert_eq!(trip("650", "8.2"), []);
}

/// At 12:00 by a clock two hours ahead of UTC it is 24:00 on the Line Islands, the furthest
/// ahead of all (IANA time zone database, Pacific/Kiritimati, UTC+14): that day has come
/// somewhere. To compare clocks as they show would refuse 12:01, a minute from now there.
#[test]
fn only_what_is_nowhere_yet_is_in_the_future() {
    let document = with("8", [full()]);
    for time in [NOW, "2026-05-03T12:01", "2026-05-04T00:00", "2026-05-01T09:00"] {
        assert_eq!(odd_at(&document, time, What::Note), [], "{time}");
    }
    for time in ["2026-05-04T00:01", "2026-05-04T12:00", "2027-05-03T12:00"] {
        assert!(
            matches!(odd_at(&document, time, What::Note)[..], [Oddity::Future { .. }]),
            "{time}"
        );
    }
}

/// Of 15 L, known to half a litre, 40 L cannot be drained.
#[test]
fn more_than_there_is_cannot_be_drained() {
    let document = with("8", [event("a", "2026-05-01T10:00", stated("15", "0"))]);
    let found = odd(&document, What::Drain(Entry::metric("40")));
    let [Oddity::Drained { most, .. }] = found[..] else { panic!("{found:?}") };
    near(litres(most), 15.5, 1e-6);
    assert_eq!(odd(&document, What::Drain(Entry::metric("10"))), []);
}

/// Onto 40 L in a tank of 55 L go 15 L, not 35; and never 70. A car that was full when it was
/// last looked at may have been driven since.
#[test]
fn more_than_there_is_room_for_is_asked_about() {
    let document = with("8", [full()]);
    let onto = |before, volume| {
        let found = odd(&document, fill(before, vec![fuel(1, "10", volume)], false));
        assert!(found.iter().all(|it| matches!(it, Oddity::Overfull { .. })), "{found:?}");
        found.len()
    };
    assert_eq!(onto(BeforeForm::Level(level("40")), "35"), 1);
    assert_eq!(onto(BeforeForm::Level(level("40")), "15"), 0);
    assert_eq!(onto(BeforeForm::Nothing, "70"), 1);
    assert_eq!(onto(BeforeForm::Nothing, "45"), 0);
}
