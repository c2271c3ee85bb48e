//! What is made of texts that have two meanings, or say less than they seem to.

use fillwright::answers::FieldError;
use fillwright::answers::fill::{FillAnswer, FillAsked, interpret};
use fillwright::answers::trip::TripReading;
use fillwright::document::{
    BeforeForm, ContentsForm, ContentsOf, ContentsPart, Document, Field, FuelPart, LevelForm,
    StartForm, StopRuleForm, TripPart, TripStopPart, What,
};
use fillwright::quantity::notation::{Currency, Entry, Measure};
use fillwright::quantity::{Band, Share};
use fillwright::share::Shared;
use fillwright::tank::{HowSure, RangeDisplay};
use fillwright::words::problems::problem;

use crate::support::{car, event, fuel, history, level, litres, near, now, printer, write};

/// A quarter of E10 in a tank of 60 litres, and E85 and E10 at the pump.
fn at_the_pump() -> Document {
    let mut document = car();
    let fill = &mut document.here.fill;
    fill.contents.level.level = Entry::metric("1/4");
    fill.contents.share = "10".into();
    fill.contents.share_range = "8-12".into();
    fill.offers = vec![fuel(1, "85", ""), fuel(2, "10", "")];
    fill.aim_share = "E30".into();
    document
}

fn read(document: &Document) -> (Option<FillAsked>, Vec<FieldError>) {
    let history = history(document);
    let reading = interpret(document, history.estimator.as_ref(), &printer(document));
    (reading.asked, reading.field_errors)
}

fn asked(document: &Document) -> FillAsked {
    let (asked, field_errors) = read(document);
    assert_eq!(field_errors, []);
    asked.unwrap()
}

/// What is said beside a field; nothing is answered then.
#[track_caller]
fn refused(document: &Document, field: Field) -> String {
    let (asked, field_errors) = read(document);
    assert!(asked.is_none(), "answered all the same");
    let found = field_errors.iter().find(|it| it.field == field);
    let found = found.unwrap_or_else(|| panic!("{field_errors:?}"));
    problem(&found.problem, &printer(document))
}

/// The low end, the expected share and the high end in percent.
fn percents(band: Band<Share>) -> String {
    let ends = [band.low(), band.expected(), band.high()];
    let [low, expected, high] = ends.map(|it| (it.percent() * 1e6).round() / 1e6);
    format!("{low} {expected} {high}")
}

#[test]
fn level_below_one_is_a_question_wherever_a_part_of_the_tank_is_usual() {
    for text in ["0.75", ",75", "0,75"] {
        let mut document = at_the_pump();
        document.here.fill.contents.level.level = Entry::metric(text);
        let question = refused(&document, Field::Contents(ContentsOf::Fill, ContentsPart::Level));
        assert!(question.contains(" L or 3/4"), "{question}");
        // What was typed is kept through storage, and so is the question.
        let kept = Document::from_json(&document.to_json().unwrap()).unwrap();
        assert_eq!(kept.here.fill.contents.level.level.text, text);
        assert_eq!(
            refused(&kept, Field::Contents(ContentsOf::Fill, ContentsPart::Level)),
            question
        );
    }
    let mut document = at_the_pump();
    document.here.fill.stop = StopRuleForm::Level;
    document.here.fill.stop_level = Entry::metric(".5");
    assert!(refused(&document, Field::StopLevel).ends_with("Type 0.5 L or 1/2"));

    // Of 60 litres, three quarters are 45: not 0.75.
    let mut document = at_the_pump();
    document.here.fill.contents.level.level = Entry::metric("3/4");
    near(litres(asked(&document).problem.tank.level.expected()), 45.0, 1e-9);
    document.here.fill.contents.level.level = Entry::metric("0.75 L");
    near(litres(asked(&document).problem.tank.level.expected()), 0.75, 1e-9);
}

#[test]
fn volumes_that_are_poured_are_no_question() {
    let mut document = at_the_pump();
    document.here.fill.offers[0].limit = Entry::metric("0.75");
    document.here.fill.offers[1].poured = Entry::metric("0.5");
    document.here.fill.contents.level.error = Entry::metric("0.5");
    document.here.car.reserve = Entry::metric("0.9");
    let asked = asked(&document);
    near(litres(asked.problem.offers[0].limit.unwrap()), 0.75, 1e-9);
    near(litres(asked.problem.offers[1].poured), 0.5, 1e-9);
}

#[test]
fn question_stays_as_typed_in_other_units() {
    let mut document = at_the_pump();
    document.here.fill.contents.level.level = Entry::metric("0.75");
    document.settings.units = fillwright::quantity::notation::Units::US;
    let printer = printer(&document);
    let shown = printer.shown(
        &document.here.fill.contents.level.level,
        fillwright::quantity::notation::Measure::Level,
    );
    assert_eq!(shown, "0.75");
    // 3 L are 0.79 US gallons, which without their unit would be a question.
    let three = Entry::metric("3");
    let shown = printer.shown(&three, fillwright::quantity::notation::Measure::Level);
    assert_eq!(shown, "0.7925\u{202f}gal");
}

#[test]
fn log_asks_too() {
    let mut document = car();
    document.here.log.write(event("a", "2026-05-01T08:00", What::Level(level("0.25"))));
    let replays = history(&document).replays;
    let unused = replays.last().unwrap().unused.as_ref().unwrap();
    let said = problem(unused, &printer(&document));
    assert!(said.contains("Type 0.25 L or 1/4"), "{said}");
}

#[test]
fn reserve_above_the_tank_is_refused_with_what_to_do() {
    let mut document = at_the_pump();
    document.here.car.reserve = Entry::metric("70");
    assert_eq!(
        refused(&document, Field::Reserve),
        "A reserve of 70.0\u{202f}L does not fit into a tank of 60.0\u{202f}L. Correct the \
         reserve, or the tank's size."
    );
    document.here.car.reserve = Entry::metric("60");
    near(litres(asked(&document).problem.tank.reserve), 60.0, 1e-9);
}

#[test]
fn ranges_are_read_in_every_spelling() {
    let share = |range: &str| {
        let mut document = at_the_pump();
        document.here.fill.contents.share_range = range.into();
        percents(asked(&document).problem.tank.share)
    };
    for range in ["5-15", "15-5", "5..15", "5…15", "5 to 15", "±5", "+-5", "±5 %"] {
        assert_eq!(share(range), "5 10 15", "{range}");
    }
    assert_eq!(share("±2"), "8 10 12");
    // As far as shares go, and no further.
    assert_eq!(share("±20"), "0 10 30");
    let mut document = at_the_pump();
    document.here.fill.contents.share.clear();
    document.here.fill.contents.share_range = "±2".into();
    let said = refused(&document, Field::Contents(ContentsOf::Fill, ContentsPart::ShareRange));
    assert!(said.contains("type that share beside it"), "{said}");
    // A fuel is read by the same rule.
    let mut document = at_the_pump();
    document.here.fill.offers[0].share_range = "±2".into();
    assert_eq!(percents(asked(&document).problem.offers[0].share), "83 85 87");
    document.here.fill.offers[0].share_range = "85-70".into();
    assert_eq!(percents(asked(&document).problem.offers[0].share), "70 85 85");
    document.here.fill.offers[0].share_range = "84-70".into();
    let field = Field::Fuel(1, FuelPart::ShareRange);
    assert!(refused(&document, field).contains("lies outside the E70 to E84"));
}

/// A share that nobody gives a range for is no exact one. The doubts are common
/// practice, no source: a point about petrol, five about E85, half a point where
/// somebody is sure.
#[test]
fn share_without_a_range_has_the_usual_doubt() {
    let mut document = at_the_pump();
    document.here.fill.contents.share_range.clear();
    let bands = |document: &Document| {
        let problem = asked(document).problem;
        [problem.tank.share, problem.offers[0].share, problem.offers[1].share].map(percents)
    };
    let roughly = ["9 10 11", "80 85 90", "9 10 11"];
    assert_eq!(bands(&document), roughly);
    document.here.fill.contents.how_sure = HowSure::Sure;
    document.here.fill.offers[0].how_sure = HowSure::Sure;
    document.here.fill.offers[1].how_sure = HowSure::Unknown;
    assert_eq!(bands(&document), ["9.5 10 10.5", "84.5 85 85.5", "0 10 15"]);
    document.here.fill.contents.how_sure = HowSure::Unknown;
    document.here.fill.offers[0].how_sure = HowSure::Unknown;
    assert_eq!(bands(&document)[..2], ["0 10 100", "50 85 100"]);
    // What is said below the field is what is taken.
    let said = document.here.fill.contents.share_assumed().map(percents);
    assert_eq!(said.as_deref(), Some("0 10 100"));
    // A range says more than the choice, and nothing is assumed then.
    document.here.fill.contents.share_range = "10-10".into();
    assert_eq!(bands(&document)[0], "10 10 10");
    assert_eq!(document.here.fill.contents.share_assumed(), None);
}

#[test]
fn only_a_definition_is_exact() {
    let mut document = at_the_pump();
    let neat = fillwright::fuel::grades::catalogue()
        .find(|it| it.ethanol().low() == Share::ONE)
        .expect("neat ethanol is on the list");
    document.here.fill.offers[0].grade = Some(neat.id.into());
    document.here.fill.offers[0].share = "100".into();
    assert_eq!(percents(asked(&document).problem.offers[0].share), "100 100 100");
    // Without the grade it is what somebody says of a pump.
    document.here.fill.offers[0].grade = None;
    assert_eq!(percents(asked(&document).problem.offers[0].share), "95 100 100");
    // An aim is no share of a fuel.
    let aim = asked(&document).problem.aim;
    assert_eq!((aim.low(), aim.high()), (aim.high(), aim.low()));
}

#[test]
fn no_band_of_a_level_is_nothing_and_empty_and_full_still_work() {
    for (text, expected) in [("0", 0.0), ("empty", 0.0), ("full", 60.0), ("1/2", 30.0)] {
        let mut document = at_the_pump();
        document.here.fill.contents.level.level = Entry::metric(text);
        let (asked, field_errors) = read(&document);
        assert_eq!(field_errors, [], "{text}");
        let asked = asked.unwrap();
        let level = asked.problem.tank.level;
        near(litres(level.expected()), expected, 1e-9);
        assert!(litres(level.high()) - litres(level.low()) > 0.4, "{text}: {level:?}");
        let answer = FillAnswer::of(asked);
        assert!(answer.blend.is_some(), "{text}");
    }
}

/// The log's own statement of the contents has the same doubt, and its choice is
/// stored with it.
#[test]
fn contents_stated_in_the_log_are_as_doubtful() {
    let width = |how_sure| {
        let mut document = car();
        let form = ContentsForm {
            level: level("30"),
            share: "85".into(),
            how_sure,
            ..ContentsForm::default()
        };
        write(&mut document.here, [event("a", "2026-05-01T08:00", What::Correction(form))]);
        let kept = Document::from_json(&document.to_json().unwrap()).unwrap();
        assert_eq!(kept, document);
        let share = now(&document).possible_share;
        share.high().percent() - share.low().percent()
    };
    let widths = [HowSure::Sure, HowSure::Roughly, HowSure::Unknown].map(width);
    assert!(
        widths[0] >= 1.0 - 1e-9 && widths[0] < widths[1] && widths[1] < widths[2],
        "{widths:?}"
    );
}

/// 100 km at 8 L/100 km take 8 L. With 7 L in reserve: 8 ± 2.2 L until dry, 15 ± 2.2 L
/// down to the reserve, and both of them while nobody knows. The gauge's error, a
/// twentieth of 60 L, would be 3 L each time.
#[test]
fn distance_to_empty_counts_as_the_display_does() {
    let band = |display| {
        let mut document = at_the_pump();
        document.here.car.reserve = Entry::metric("7");
        document.here.car.range_display = display;
        document.here.fill.contents.level.level = Entry::metric("100 km");
        let kept = Document::from_json(&document.to_json().unwrap()).unwrap();
        assert_eq!(kept, document);
        let level = asked(&document).problem.tank.level;
        [level.low(), level.expected(), level.high()].map(litres)
    };
    for (display, by_hand) in [
        (RangeDisplay::ToDry, [5.8, 8.0, 10.2]),
        (RangeDisplay::ToReserve, [12.8, 15.0, 17.2]),
        (RangeDisplay::Unknown, [5.8, 11.5, 17.2]),
    ] {
        for (value, expected) in band(display).into_iter().zip(by_hand) {
            near(value, expected, 1e-9);
        }
    }
    let mut document = at_the_pump();
    document.here.car.range_display = RangeDisplay::ToReserve;
    document.here.fill.contents.level.level = Entry::metric("100 km");
    assert!(
        refused(&document, Field::Contents(ContentsOf::Fill, ContentsPart::Level))
            .contains("give the reserve under Car")
    );
    // A level to stop at is where the display shows that distance.
    document.here.car.reserve = Entry::metric("7");
    document.here.fill.stop = StopRuleForm::Level;
    document.here.fill.stop_level = Entry::metric("200 km");
    let stop = asked(&document).problem.stop;
    assert!(
        matches!(stop, fillwright::fill::StopRule::Level(it) if (litres(it) - 23.0).abs() < 1e-9)
    );
}

fn price(document: &mut Document, index: usize, text: &str) {
    document.here.fill.offers[index].price = Entry::metric(text);
}

fn per_litre(asked: &FillAsked, index: usize) -> f64 {
    let litre = fillwright::quantity::notation::LITRE.quantity(1.0);
    asked.problem.offers[index].price.unwrap().of(litre).amount()
}

/// At 0.134 € for a Danish crown, 12.90 DKK are 1.7286 €. The classic mistake is to take
/// them as 12.90 €.
#[test]
fn price_in_another_currency_is_never_taken_as_the_own_one() {
    let mut document = at_the_pump();
    document.settings.currency = "€".into();
    price(&mut document, 0, "1.20");
    price(&mut document, 1, "12.90 DKK");
    let said = refused(&document, Field::Fuel(2, FuelPart::Price));
    assert_eq!(
        said,
        "This is in DKK, and you count in €. Give under Car what 1 DKK is in €, or type it in €."
    );
    let crowns = Currency::named("DKK").unwrap();
    assert_eq!(refused(&document, Field::Rate(crowns)), "Give what 1 DKK is in €.");
    assert_eq!(document.other_currencies(), [crowns]);

    document.settings.set_rate(crowns, "0.134".into(), "2026-05-03".into());
    let asked_now = asked(&document);
    near(per_litre(&asked_now, 0), 1.20, 1e-12);
    near(per_litre(&asked_now, 1), 1.7286, 1e-12);
    assert!(per_litre(&asked_now, 1) < 12.0);
    // Both amounts can be told, with the day of the rate.
    let exchanged = document.settings.exchanged(&document.here.fill.offers[1].price).unwrap();
    assert_eq!(exchanged.typed_on, "2026-05-03");
    let printer = printer(&document);
    assert_eq!(
        printer.price_both(exchanged.price, asked_now.fuels[1].rate),
        "1.729\u{202f}€/L (12.900\u{202f}DKK/L)"
    );
    let kept = Document::from_json(&document.to_json().unwrap()).unwrap();
    assert_eq!(kept, document);
    // The rate is kept for the own currency that it was typed for.
    document.settings.currency = "EUR".into();
    near(per_litre(&asked(&document), 1), 1.7286, 1e-12);
    document.settings.currency = "CHF".into();
    assert!(refused(&document, Field::Fuel(2, FuelPart::Price)).contains("you count in CHF"));
    // A rate that cannot be read changes nothing either.
    document.settings.set_rate(crowns, "about 7".into(), "2026-05-03".into());
    assert!(refused(&document, Field::Fuel(2, FuelPart::Price)).contains("cannot be read"));
}

#[test]
fn names_of_the_own_currency_are_the_own_currency() {
    for (own, text) in [
        ("€", "1.70 EUR"),
        ("eur", "1,70 €"),
        ("kr.", "1.70 kr"),
        ("SEK", "1.70 kr"),
        ("$", "1.70 USD"),
        ("£", "1.70 GBP/L"),
        ("€", "1.70"),
    ] {
        let mut document = at_the_pump();
        document.settings.currency = own.into();
        price(&mut document, 0, text);
        near(per_litre(&asked(&document), 0), 1.70, 1e-12);
    }
    // Whose own currency is "kr" has not said which.
    let mut document = at_the_pump();
    document.settings.currency = "kr".into();
    price(&mut document, 0, "12.90 DKK");
    assert!(refused(&document, Field::Fuel(1, FuelPart::Price)).contains("you count in kr"));
}

#[test]
fn without_an_own_currency_prices_are_held_against_each_other() {
    let mut document = at_the_pump();
    price(&mut document, 0, "12.90 DKK");
    price(&mut document, 1, "14.10 kr");
    near(per_litre(&asked(&document), 1), 14.10, 1e-12);
    price(&mut document, 1, "1.80 €");
    let said = refused(&document, Field::Fuel(2, FuelPart::Price));
    assert!(said.starts_with("This is in €, other money is in DKK."), "{said}");
}

/// 200 DKK at 0.134 € are 26.80 €.
#[test]
fn money_to_stop_after_is_changed_too() {
    let mut document = at_the_pump();
    document.settings.currency = "€".into();
    price(&mut document, 0, "1.20");
    price(&mut document, 1, "1.70");
    document.here.fill.stop = StopRuleForm::Budget;
    document.here.fill.stop_money = "200 DKK".into();
    assert!(refused(&document, Field::StopMoney).contains("This is in DKK"));
    let crowns = Currency::named("DKK").unwrap();
    document.settings.set_rate(crowns, "0,134".into(), "2026-05-03".into());
    let fillwright::fill::StopRule::Budget(money) = asked(&document).problem.stop else {
        panic!("not for money")
    };
    near(money.amount(), 26.80, 1e-9);
}

/// A price in the log buys nothing now: it is kept as it was typed, and the fill counts.
#[test]
fn fill_in_the_log_counts_whatever_its_price_is_in() {
    let mut document = car();
    document.settings.currency = "€".into();
    let mut poured = fuel(1, "10", "20");
    poured.price = Entry::metric("12.90 DKK");
    let fill = crate::support::fill(BeforeForm::default(), vec![poured], false);
    write(&mut document.here, [event("a", "2026-05-01T08:00", fill)]);
    assert_eq!(history(&document).replays.last().unwrap().unused, None);
    assert_eq!(document.here.log.all().len(), 1);
}

/// In other units the price is printed anew, and its currency stays beside it: 12.90 DKK
/// for a litre are 48.83 DKK for a US gallon of 3.785 411 784 L.
#[test]
fn currency_stays_beside_a_price_in_other_units() {
    let mut document = car();
    document.settings.units = fillwright::quantity::notation::Units::US;
    let shown = printer(&document).shown(&Entry::metric("12.90 DKK"), Measure::Price);
    assert_eq!(shown, "48.83\u{202f}DKK");
}

/// The trip reads its prices, fees and budget by the same rule.
#[test]
fn trip_changes_prices_fees_and_budget() {
    let mut document = Document::demo();
    document.settings.currency = "€".into();
    document.here.route.start = fillwright::document::StartForm::Typed;
    document.here.route.contents.level = level("1/2");
    document.here.route.contents.share = "30".into();
    document.here.route.contents.octane = Entry::metric("98");
    document.here.route.budget = "900 DKK".into();
    document.here.route.stops[1].fee = "50 DKK".into();
    document.here.route.stops[1].fuels[0].price = Entry::metric("12.90 DKK");
    let read = |document: &Document| {
        let reading = TripReading::of(document, None, &printer(document));
        (reading.asked, reading.field_errors)
    };
    let (asked, field_errors) = read(&document);
    assert!(asked.is_none());
    let wrong: Vec<Field> = field_errors.iter().map(|it| it.field).collect();
    let (stop, fuel) = (document.here.route.stops[1].id, document.here.route.stops[1].fuels[0].id);
    for field in [
        Field::Trip(TripPart::Budget),
        Field::TripStop(stop, TripStopPart::Fee),
        Field::Fuel(fuel, FuelPart::Price),
    ] {
        assert!(wrong.contains(&field), "{field:?} in {field_errors:?}");
    }
    let crowns = Currency::named("DKK").unwrap();
    document.settings.set_rate(crowns, "0.134".into(), "2026-05-03".into());
    let (asked, field_errors) = read(&document);
    assert_eq!(field_errors, []);
    let asked = asked.unwrap();
    near(asked.wish.budget.unwrap().amount(), 120.6, 1e-9);
    let stop = &asked.route.stops[1];
    near(stop.fixed_cost.amount(), 6.7, 1e-9);
    let litre = fillwright::quantity::notation::LITRE.quantity(1.0);
    near(stop.pumps[0].price.of(litre).amount(), 1.7286, 1e-12);
    // What is left of a level below one is asked about there too.
    document.here.route.contents.level = level("0.5");
    document.here.route.final_level = Entry::metric(".25");
    let (asked, field_errors) = read(&document);
    assert!(asked.is_none());
    let level = Field::Contents(ContentsOf::Trip, ContentsPart::Level);
    for field in [level, Field::Trip(TripPart::FinalLevel)] {
        let found = field_errors.iter().find(|it| it.field == field);
        assert!(
            found
                .is_some_and(|it| problem(&it.problem, &printer(&document)).contains("which one?")),
            "{field_errors:?}"
        );
    }
}

/// A bare price in a link is in the sharer's currency, not in that of who takes it.
#[test]
fn money_in_a_link_stays_in_the_currency_of_who_shared_it() {
    let mut theirs = at_the_pump();
    theirs.settings.currency = "€".into();
    price(&mut theirs, 0, "1.20/L");
    price(&mut theirs, 1, "1.70");
    theirs.here.fill.stop_money = "50".into();
    let shared = Shared::fill_of(&theirs, None, &printer(&theirs)).unwrap();
    let shared = Shared::from_link(&shared.to_link().unwrap()).unwrap();
    let taken_by = |currency: &str| {
        let mut mine = at_the_pump();
        mine.settings.currency = currency.into();
        mine.take_shared(&shared, fillwright::document::Id::new("taken").unwrap());
        let prices = mine.here.fill.offers.iter().map(|it| it.price.text.clone());
        (prices.collect::<Vec<_>>(), mine.here.fill.stop_money.clone())
    };
    let own = (vec!["1.20/L".to_owned(), "1.70".to_owned()], "50".to_owned());
    assert_eq!(taken_by("EUR"), own);
    let named = (vec!["€ 1.20/L".to_owned(), "€ 1.70".to_owned()], "€ 50".to_owned());
    assert_eq!(taken_by("kr"), named);
    assert_eq!(taken_by(""), named);
}

/// Two thirds of a litre left by the log go out with their unit, or they would be asked
/// about where they arrive.
#[test]
fn level_below_one_goes_into_a_link_with_its_unit() {
    let mut document = at_the_pump();
    let form = ContentsForm {
        level: LevelForm { error: Entry::metric("0.1"), ..level("0.7 L") },
        share: "10".into(),
        octane: Entry::metric("95"),
        ..ContentsForm::default()
    };
    write(&mut document.here, [event("a", "2026-05-01T08:00", What::Correction(form))]);
    document.here.fill.start = StartForm::Log;
    document.here.fill.contents.level.level = Entry::default();
    let shared = Shared::fill_of(&document, Some(&asked(&document)), &printer(&document)).unwrap();
    let text = &shared.fill().contents.level.level.text;
    assert!(text.starts_with("0.") && text.ends_with(" L"), "{text}");
    let mut taken = car();
    taken.take_shared(&shared, fillwright::document::Id::new("taken").unwrap());
    assert_eq!(read(&taken).1, []);
}
