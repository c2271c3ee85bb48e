use fillwright::answers::fill::{FillAnswer, interpret};
use fillwright::document::{AimForm, BeforeForm, Document, Id, Moment, StartForm, What};
use fillwright::quantity::notation::Entry;

use fillwright::tank::Doubt;

use crate::support::{car, drive, event, fuel, history, litres, near, now, printer, write};

fn at_the_pump() -> Document {
    let mut document = car();
    let fill = &mut document.here.fill;
    fill.contents.level.level = Entry::metric("1/4");
    fill.contents.share = "10".into();
    fill.contents.octane = Entry::metric("95");
    fill.offers = vec![fuel(1, "85", ""), fuel(2, "10", "")];
    fill.offers[0].limit = Entry::metric("40");
    fill.aim_share = "E30".into();
    document
}

fn answer(document: &Document) -> FillAnswer {
    let printer = printer(document);
    let history = history(document);
    let reading = interpret(document, history.estimator.as_ref(), &printer);
    assert_eq!(reading.field_errors, []);
    FillAnswer::of(reading.asked.unwrap())
}

fn record(document: &mut Document, id: &str) -> bool {
    let time = Moment::new("2026-05-03T17:40", 120).unwrap();
    document.here.record(Id::new(id).unwrap(), time)
}

#[test]
fn nothing_put_in_is_nothing_to_record() {
    let mut document = at_the_pump();
    let before = document.clone();
    assert!(!record(&mut document, "a"));
    assert_eq!(document, before);
}

/// 15 L of E10, 16 L of E85, 29 L of E10: 30 %, and the tank is full.
#[test]
fn the_next_fill_starts_from_what_was_recorded() {
    let mut document = at_the_pump();
    let (plan, printer) = (answer(&document), printer(&document));
    document.here.pour_as_planned(&plan, &printer);
    assert!(document.here.fill.clicked);
    document.here.fill.place = "The harbour".into();
    assert!(record(&mut document, "a"));

    let event = &document.here.log.all()[0];
    assert_eq!(event.place, "The harbour");
    let What::Fill(entry) = &event.what else { panic!("{event:?}") };
    let BeforeForm::Contents(before) = &entry.before else { panic!("{entry:?}") };
    assert_eq!((before.level.level.text.as_str(), before.share.as_str()), ("1/4", "10"));
    let volumes: Vec<_> = entry.fuels.iter().map(|it| it.poured.text.as_str()).collect();
    assert_eq!(volumes, ["16.0", "29.0"]);
    assert!(entry.clicked && entry.fuels[0].limit.is_blank());

    near(now(&document).share.expected().percent(), 30.0, 0.5);
    near(litres(now(&document).level.expected()), 60.0, 0.5);

    let fill = &document.here.fill;
    assert_eq!(fill.start, StartForm::Log);
    assert!(
        fill.contents.level.level.is_blank()
            && fill.contents.share.is_empty()
            && fill.place.is_empty()
    );
    assert!(fill.offers.iter().all(|it| it.poured.is_blank()) && !fill.clicked);
    assert_eq!(fill.offers[0].limit, Entry::metric("40"), "what is on offer stays");
    let next = answer(&document).asked.problem.tank.clone();
    let estimate = now(&document);
    assert_eq!((next.level, next.share), (estimate.level, estimate.share));
}

/// A level read at the pump sharpens what the log tells, and is recorded with the
/// fill: the estimate under Fill and that of the log then agree.
#[test]
fn a_level_read_at_the_pump_counts() {
    let mut document = at_the_pump();
    let (plan, printer) = (answer(&document), printer(&document));
    document.here.pour_as_planned(&plan, &printer);
    record(&mut document, "a");
    document.here.fill.contents.level.level = Entry::metric("1/2");
    let start = answer(&document).asked.problem.tank.clone();
    near(litres(start.level.expected()), 30.0, 3.0);
    near(start.share.expected().percent(), 30.0, 0.5);
    document.here.fill.offers[1].poured = Entry::metric("10");
    record(&mut document, "b");
    let replays = history(&document).replays;
    let before = replays[1].before().unwrap();
    assert_eq!((before.level, before.share), (start.level, start.share));
    // 30 L of E30 and 10 L of E10.
    near(now(&document).share.expected().percent(), 25.0, 0.6);
}

/// 500 km on 8 L/100 km leave some 15 L of 60: a gauge at three quarters does not
/// fit, and the question stands where the fill is planned.
#[test]
fn a_level_that_does_not_fit_is_asked_about_at_the_pump() {
    let mut document = at_the_pump();
    let (plan, printer) = (answer(&document), printer(&document));
    document.here.pour_as_planned(&plan, &printer);
    record(&mut document, "a");
    write(&mut document.here, [event("b", "2026-05-06T18:00", drive("500"))]);
    document.here.fill.contents.level.level = Entry::metric("1/4");
    assert_eq!(answer(&document).asked.doubt, None);
    document.here.fill.contents.level.level = Entry::metric("3/4");
    document.here.fill.aim = AimForm::AsPoured;
    let doubt = answer(&document).asked.doubt;
    assert!(matches!(doubt, Some(Doubt::UnloggedFill { .. })), "{doubt:?}");
}
