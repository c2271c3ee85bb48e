//! Water, methanol and ethers, and AKI, from typed texts to the answer.
//!
//! Inputs of the arithmetic: petrol 745 kg/m3, AFR 14.571, 43.2 MJ/kg; ethanol 793.7, 9.0025,
//! 26.816; water 999.1 kg/m3, 2.4417 MJ/kg of vaporisation. Hydrous ethanol of 95.2 and 4.8 % v/v:
//! 803.56 kg/m3, AFR 8.465, 20.145 MJ/L. E27: 758.15 kg/m3, AFR 12.997, 29.241 MJ/L.

use fillwright::answers::FieldError;
use fillwright::answers::fill::{FillAnswer, interpret};
use fillwright::answers::hardware::{HardwareAnswer, HardwareReading};
use fillwright::answers::trip::TripReading;
use fillwright::calibration::FluidState;
use fillwright::document::{
    AimForm, BeforeForm, CalibrationForm, CalibrationPart, ContentsForm, Document, ExtraPart,
    ExtrasForm, Field, FuelForm, FuelPart, Id, Moment, TripStopForm, What, csv,
};
use fillwright::fuel::{Content, Extras, grades};
use fillwright::quantity::notation::{Entry, Units};
use fillwright::quantity::{Band, Share, Volume};
use fillwright::share::Shared;
use fillwright::words::problems::problem as said;
use uom::si::mass_rate::gram_per_second;

use crate::support::{car, event, fill, fuel, history, level, litres, near, now, printer};

fn water(text: &str) -> ExtrasForm {
    ExtrasForm { water: text.into(), ..ExtrasForm::default() }
}

fn hydrous(id: u32, poured: &str) -> FuelForm {
    FuelForm {
        name: "Hydrous".into(),
        extras: water("4.8"),
        price: Entry::metric("0.60"),
        ..fuel(id, "95.2", poured)
    }
}

/// 15 L of hydrous ethanol in the tank, 30 L put in; E27 beside it; a calibration written for
/// E85; consumption stated for E27.
fn in_brazil() -> Document {
    let mut document = car();
    document.here.car.reference = "E27".into();
    document.here.car.calibrations = vec![CalibrationForm {
        id: 9,
        name: "alcohol".into(),
        low: "80".into(),
        high: "100".into(),
        written_for: "E85".into(),
        ..CalibrationForm::default()
    }];
    let fill = &mut document.here.fill;
    fill.contents.level.level = Entry::metric("15");
    fill.contents.share = "95.2".into();
    fill.contents.extras = water("4.8");
    let e27 = FuelForm { price: Entry::metric("1.000"), ..fuel(2, "27", "") };
    fill.offers = vec![hydrous(1, "30"), e27];
    fill.aim = AimForm::AsPoured;
    document
}

fn read(document: &Document) -> (Option<FillAnswer>, Vec<FieldError>) {
    let printer = printer(document);
    let history = history(document);
    let reading = interpret(document, history.estimator.as_ref(), &printer);
    (reading.asked.map(FillAnswer::of), reading.field_errors)
}

fn answer(document: &Document) -> FillAnswer {
    let (answer, field_errors) = read(document);
    assert_eq!(field_errors, []);
    answer.unwrap()
}

#[track_caller]
fn refused(document: &Document, field: Field, words: &str) {
    let (answer, field_errors) = read(document);
    assert!(answer.is_none());
    let field_error = field_errors.iter().find(|it| it.field == field);
    let problem = &field_error.unwrap_or_else(|| panic!("{field_errors:?}")).problem;
    let message = said(problem, &printer(document));
    assert!(message.contains(words), "{message}");
}

fn percent(value: f64) -> Share {
    Share::from_percent(value).unwrap()
}

/// Stoichiometric AFR 8.465, volume against E27 x 1.449, lambda of a calibration for E85 x
/// 1.1445, price parity 0.689 (tests/published/oxygenates.rs). Taken for petrol, the water
/// gives 9.254, 1.346, 1.0550 and 0.746.
#[test]
fn hydrous_ethanol_is_not_petrol() {
    let figures = |answer: &FillAnswer| {
        let blend = answer.blend.as_ref().unwrap();
        let (_, _, price) = answer.break_even.unwrap();
        let litre = Volume::new::<uom::si::volume::liter>(1.0);
        [
            blend.stoichiometric_afr.unwrap().expected(),
            blend.volume_multiplier.unwrap().expected(),
            answer.verdicts[0].1.open_loop_lambda.unwrap().expected(),
            price.of(litre).amount(),
        ]
    };
    let mut document = in_brazil();
    let right = figures(&answer(&document));
    for (is, by_hand) in right.into_iter().zip([8.465, 1.449, 1.1445, 0.689]) {
        near(is, by_hand, 0.0006);
    }
    document.here.fill.contents.extras = ExtrasForm::default();
    document.here.fill.offers[0].extras = ExtrasForm::default();
    let mistaken = figures(&answer(&document));
    for (is, (wrong, right)) in mistaken.into_iter().zip([
        (9.254, 8.465),
        (1.3455, 1.449),
        (1.0550, 1.1445),
        (0.746, 0.689),
    ]) {
        near(is, wrong, 0.001);
        assert!((wrong - right).abs() > 0.05);
    }
}

/// Water within a band: 15 L of 95.2 % with 0 to 4.8 % and 30 L of the fuel with 3.4 to 6.1 % come
/// to 2.27 to 5.67 % (15 * 0 + 30 * 3.4 over 45; 15 * 4.8 + 30 * 6.1 over 45), give or take what
/// the dispenser and the gauge do. The ends of lambda are those with least and with most water.
#[test]
fn a_band_of_water_makes_a_band_of_lambda() {
    let mut document = in_brazil();
    document.here.fill.contents.level.error = Entry::metric("0.01");
    document.here.fill.contents.extras = water("2.4 (0-4.8)");
    document.here.fill.offers[0].extras = water("4.8 (3.4-6.1)");
    let answer = answer(&document);
    let blend = answer.blend.unwrap();
    let band = blend.extras.water;
    near(band.low().percent(), 2.27, 0.02);
    near(band.expected().percent(), 4.0, 0.001);
    near(band.high().percent(), 5.67, 0.02);
    let lambda = answer.verdicts[0].1.open_loop_lambda.unwrap();
    assert!(lambda.low() < lambda.expected() - 0.01 && lambda.expected() + 0.01 < lambda.high());
}

/// What was poured is in the log with its water, and dilutes it: 45 L with 4.8 % are driven
/// down to 15 L, then 30 L of petrol make 15 * 4.8 / 45 = 1.6 %.
#[test]
fn the_log_knows_of_the_water() {
    let mut document = in_brazil();
    let time = Moment::new("2026-05-03T17:40", 0).unwrap();
    assert!(document.here.record(Id::new("a").unwrap(), time));
    assert!(document.here.fill.contents.extras.is_untouched(), "the next fill starts from the log");
    let What::Fill(entry) = &document.here.log.all()[0].what else { panic!() };
    let BeforeForm::Contents(before) = &entry.before else { panic!("{entry:?}") };
    assert_eq!(
        (before.extras.water.as_str(), entry.fuels[0].extras.water.as_str()),
        ("4.8", "4.8")
    );
    near(now(&document).extras.water.expected().percent(), 4.8, 1e-9);

    let table = csv(&document.here);
    let mut lines = table.lines();
    let column = lines.next().unwrap().split(',').position(|it| it == "water %").unwrap();
    let rows: Vec<_> = lines.map(|line| line.split(',').nth(column).unwrap()).collect();
    assert_eq!(rows, ["4.8", "4.8"]);

    // The next fill starts from the log, with the water in it, and can be shared so.
    document.here.fill.aim = AimForm::AsPoured;
    document.here.fill.offers[0].poured = Entry::metric("1");
    let printer = printer(&document);
    let history = history(&document);
    let asked = interpret(&document, history.estimator.as_ref(), &printer).asked.unwrap();
    near(asked.tank_extras.water.expected().percent(), 4.8, 1e-9);
    let shared = Shared::fill_of(&document, Some(&asked), &printer).unwrap();
    assert_eq!(shared.document().here.fill.contents.extras.water, "4.8");
    document.here.fill.offers[0].poured = Entry::default();

    let before = BeforeForm::Level(level("15"));
    let petrol = fill(before, vec![fuel(3, "0", "30")], false);
    document.here.log.write(event("b", "2026-05-20T10:00", petrol));
    let estimate = now(&document);
    near(estimate.extras.water.expected().percent(), 1.6, 0.1);
    assert!(
        estimate.extras.water.low() < percent(1.6) && percent(1.6) < estimate.extras.water.high()
    );
    assert!(estimate.extras.water.high() < percent(2.5));
}

/// The grade of the catalogue carries its water into the form and out of it again.
#[test]
fn a_grade_carries_its_water() {
    let grade = grades::find("br-hydrous-ethanol").unwrap();
    let form = FuelForm { id: 1, poured: Entry::metric("30"), ..FuelForm::of_grade(grade) };
    assert_eq!(form.extras.water, "4.8 (3.4-6.1)");
    let mut document = in_brazil();
    document.here.fill.offers = vec![form];
    let content = answer(&document).asked.fuels[0].content;
    for (is, meant) in
        [(content.extras.water, grade.extras().water), (content.ethanol, grade.ethanol())]
    {
        near(is.low().percent(), meant.low().percent(), 1e-9);
        near(is.expected().percent(), meant.expected().percent(), 1e-9);
        near(is.high().percent(), meant.high().percent(), 1e-9);
    }
}

/// 2.7 % m/m in petrol without ethanol are 14.95 % v/v of MTBE or 17.2 % of ETBE (mass balance):
/// AFR 14.15 either way, where petrol has 14.571.
#[test]
fn oxygen_is_turned_into_ethers() {
    let mut document = in_brazil();
    let with_oxygen = |oxygen: &str| ExtrasForm { oxygen: oxygen.into(), ..ExtrasForm::default() };
    let offer = FuelForm { extras: with_oxygen("2.7"), ..fuel(1, "0", "30") };
    document.here.fill.contents.level.level = Entry::metric("0");
    document.here.fill.contents.level.error = Entry::metric("0");
    document.here.fill.contents.extras = ExtrasForm::default();
    document.here.fill.contents.share = "0".into();
    document.here.fill.offers = vec![offer.clone()];
    let blend = answer(&document).blend.unwrap();
    let ethers = blend.extras.ethers.expected().percent();
    assert!((14.95..17.2).contains(&ethers), "{ethers}");
    near(blend.stoichiometric_afr.unwrap().expected(), 14.15, 0.01);

    let field = |part| Field::Fuel(1, FuelPart::Extra(part));
    let put = |document: &mut Document, share: &str, extras: ExtrasForm| {
        let offer = FuelForm { share: share.into(), extras, ..offer.clone() };
        document.here.fill.offers = vec![offer];
    };
    put(&mut document, "0", ExtrasForm { ethers: "15".into(), ..with_oxygen("2.7") });
    refused(&document, field(ExtraPart::Oxygen), "leave the other one empty");
    // E10 brings 3.676 % (arithmetic).
    put(&mut document, "10", with_oxygen("2.7"));
    refused(&document, field(ExtraPart::Oxygen), "less than the 3.68 %");
    put(&mut document, "10", with_oxygen("3.7"));
    assert!(answer(&document).blend.unwrap().extras.ethers.expected() < percent(0.3));
    put(&mut document, "98", water("4"));
    refused(&document, field(ExtraPart::Water), "come to 102.0 %");
    put(&mut document, "95", water("a little"));
    refused(&document, field(ExtraPart::Water), "is not a percentage");
    // A number below 1 is a percentage here: water is little.
    put(&mut document, "85", water("0.4"));
    near(answer(&document).blend.unwrap().extras.water.expected().percent(), 0.4, 1e-9);
}

/// 93 AKI of an E10 is RON 98.1, 97 AKI of an E85 RON 106.1, and 105 AKI is none of an E85
/// (tests/published/octane.rs). The mistake to take a sensitivity of 8 gives 97.0 and 101.0.
#[test]
fn an_aki_goes_by_the_ethanol() {
    let mut document = in_brazil();
    let offer = |share: &str, octane: Entry| FuelForm { octane, ..fuel(1, share, "30") };
    let ron = |document: &mut Document, share: &str, octane: Entry| {
        document.here.fill.offers = vec![offer(share, octane)];
        let answer = answer(document);
        (answer.asked.problem.offers[0].ron.unwrap(), answer.asked.fuels[0].mon.unwrap())
    };
    let american = Entry { text: "93".into(), typed_in: Units::US };
    for (share, octane, by_hand, mistake) in [
        ("10", Entry::metric("93 AKI"), (98.1, 87.9), 97.0),
        ("10", american, (98.1, 87.9), 97.0),
        ("85", Entry::metric("97 AKI"), (106.1, 87.9), 101.0),
    ] {
        let split = ron(&mut document, share, octane);
        near(split.0, by_hand.0, 0.05);
        near(split.1, by_hand.1, 0.05);
        assert!((split.0 - mistake).abs() > 1.0);
    }
    document.here.fill.offers = vec![offer("85", Entry::metric("105 AKI"))];
    refused(&document, Field::Fuel(1, FuelPart::Octane), "No E85 has 105 AKI");

    document.here.fill.offers = vec![offer("85", Entry::metric("104 RON"))];
    document.here.car.calibrations[0].ron_min = Entry::metric("97 AKI");
    near(answer(&document).asked.calibrations[0].1.ron_min.unwrap(), 106.1, 0.05);
    document.here.car.calibrations[0].ron_min = Entry::metric("105 AKI");
    let (_, field_errors) = read(&document);
    let field = Field::Calibration(9, CalibrationPart::RonMin);
    assert!(field_errors.iter().any(|it| it.field == field), "{field_errors:?}");
}

/// 8 L/100 km of E27 are 233.93 MJ: of hydrous ethanol 11.61 L, so that of 40 L 28.39 are left
/// after 100 km. With its water taken for petrol (21.808 MJ/L) it would be 10.73 L. The calibration
/// written for E85 runs 14.5 % lean on the way.
#[test]
fn a_trip_goes_by_the_energy_that_is_there() {
    let mut document = in_brazil();
    let route = &mut document.here.route;
    route.contents = ContentsForm {
        level: level("40"),
        share: "95.2".into(),
        extras: water("4.8"),
        ..ContentsForm::default()
    };
    route.stops = vec![TripStopForm {
        id: 5,
        fuels: vec![hydrous(6, "")],
        distance: Entry::metric("100"),
        ..TripStopForm::default()
    }];
    let reading = TripReading::of(&document, None, &printer(&document));
    assert_eq!(reading.field_errors, []);
    let asked = reading.asked.unwrap();
    let course = asked.route.simulate(&asked.route.nothing_bought());
    let arrival = litres(course.legs[0].arrival.expected());
    near(arrival, 28.39, 0.01);
    assert!((arrival - (40.0 - 10.73)).abs() > 0.5);
    let departure = &course.legs[0].departure;
    near(departure.air_fuel_ratio.unwrap().expected(), 8.465, 0.001);
    let lambda = course.legs[0].verdicts[0].open_loop_lambda.unwrap();
    near(lambda.expected(), 1.1445, 0.0006);

    // 20 % of ethanol and 70 % of water: 5.8 MJ/L in place of 30.0.
    let fuel = &mut document.here.route.stops[0].fuels[0];
    fuel.share = "20".into();
    fuel.extras = water("70");
    let reading = TripReading::of(&document, None, &printer(&document));
    assert!(reading.asked.is_none());
    assert!(
        said(&reading.field_errors[0].problem, &printer(&document)).contains("hardly burns"),
        "{:?}",
        reading.field_errors
    );
}

/// At equal efficiency fuel goes with 1 / LHV: 25.070 MJ/kg of hydrous ethanol, where petrol in
/// place of the water makes 27.557: 1.0992 times the mass.
#[test]
fn the_fuel_system_has_to_pass_the_water_too() {
    let document = Document::demo();
    let ethanol = Band::exact(percent(95.2));
    let extras = Extras { water: Band::exact(percent(4.8)), ..Extras::default() };
    let flow = |content: Content| {
        let reading = HardwareReading::of(&document, Some(content), &printer(&document));
        let answer = HardwareAnswer::of(&reading).unwrap();
        let at = answer.peak().unwrap();
        answer.headroom.flows[at].expected().get::<gram_per_second>()
    };
    near(flow(Content { ethanol, extras }) / flow(Content::splash(ethanol)), 1.0992, 0.0005);
}

/// The verdict of the log goes by what is in the tank, water and all.
#[test]
fn the_tank_is_judged_with_its_water() {
    let mut document = in_brazil();
    let time = Moment::new("2026-05-03T17:40", 0).unwrap();
    document.here.record(Id::new("a").unwrap(), time);
    let estimate = now(&document);
    let contents = fillwright::calibration::Contents {
        share: Band::exact(percent(95.2)),
        extras: estimate.extras,
        ron: None,
    };
    let printer = printer(&document);
    document.here.fill.aim = AimForm::AsPoured;
    document.here.fill.offers[0].poured = Entry::metric("1");
    let asked =
        interpret(&document, history(&document).estimator.as_ref(), &printer).asked.unwrap();
    let judged = asked.calibrations[0].1.judge(&contents, FluidState::Ready);
    near(judged.open_loop_lambda.unwrap().expected(), 1.1445, 0.0006);
}
