//! Curves: from the table to power at the crank.

use approx::assert_relative_eq;
use fillwright::document::{
    CurveForm, CurvePart, Document, Field, HardwareField, Mark, MeasuredAt, PartKind, ValueUnit,
};
use fillwright::power::AirCorrection;
use fillwright::quantity::notation::Entry;
use uom::si::angular_velocity::revolution_per_minute;
use uom::si::power::{horsepower, kilowatt};

use super::support::{add, car, read, set};

fn curve(document: &mut Document) -> &mut CurveForm {
    &mut document.here.hardware.curves[0]
}

/// The highest power at the crank, in horsepower of 550 ft lbf/s.
fn peak(document: &Document) -> f64 {
    let reading = read(document);
    assert_eq!(reading.field_errors, vec![]);
    let curve = reading.curves[0].at_crank.as_ref().unwrap();
    curve.peak_power().value.get().get::<horsepower>()
}

/// A curve at the wheels that peaks at 600 hp.
fn at_the_wheels() -> Document {
    let mut document = car();
    *curve(&mut document) = CurveForm {
        id: 1,
        table: Entry::metric("rpm,whp\n4000,420\n5000,540\n6000,600\n6500,560"),
        place: MeasuredAt::Wheel,
        ..CurveForm::default()
    };
    document
}

/// Common practice, no source: 600 at the wheels are said to be 660 at the crank.
#[test]
fn a_loss_is_a_share_of_the_crank() {
    let mut document = at_the_wheels();
    set(&mut document, HardwareField::DrivelineLoss, "9.0909");
    assert_relative_eq!(peak(&document), 660.0, max_relative = 1e-5);
    // 10 % of the crank, which is not 10 % added to the wheels.
    set(&mut document, HardwareField::DrivelineLoss, "10");
    assert_relative_eq!(peak(&document), 600.0 / 0.9, max_relative = 1e-5);
    assert!((peak(&document) - 660.0).abs() > 5.0);
    // A band where none was given, and it is said.
    let reading = read(&document);
    let loss = reading.curves[0].loss.unwrap();
    assert_relative_eq!(loss.add_on().expected(), 0.1111, max_relative = 1e-3);
    assert!(loss.share_of_crank().low() < 0.10 && loss.share_of_crank().high() > 0.10);
    let field = Field::Engine(HardwareField::DrivelineLossRange);
    assert!(reading.assumptions.iter().any(|it| it.field == field));
    // What was measured stays exact.
    let at_crank = reading.curves[0].at_crank.as_ref().unwrap().peak_power().value;
    let wheel = reading.curves[0].wheel(at_crank).unwrap();
    assert_relative_eq!(wheel.expected().get().get::<horsepower>(), 600.0, max_relative = 1e-6);
    assert_relative_eq!(wheel.low().get().get::<horsepower>(), 600.0, max_relative = 1e-6);
    let crank = reading.curves[0].crank(at_crank);
    assert!(crank.low() < crank.expected() && crank.expected() < crank.high());
}

#[test]
fn a_curve_at_the_wheels_needs_a_loss() {
    let document = at_the_wheels();
    let reading = read(&document);
    let fields: Vec<_> = reading.field_errors.iter().map(|it| it.field).collect();
    assert!(fields.contains(&Field::Engine(HardwareField::DrivelineLoss)), "{fields:?}");
    assert_eq!(reading.curves[0].at_crank, None);
    assert!(!reading.curves[0].table.rows.is_empty(), "the table is still there to look at");
}

/// 30 degC, 98.0 kPa, 50 %: SAE J1349 (June 1990 form) 1.0486, STD 1.0829, with the
/// vapour pressure of 40 CFR 1065.645 (computed with `CoolProp` 8.0.0).
#[test]
fn figures_that_carry_a_correction_are_freed_of_it() {
    let mut document = car();
    let plain = peak(&document);
    for (slot, text) in [
        (HardwareField::AirTemperature, "30"),
        (HardwareField::AirPressure, "980"),
        (HardwareField::Humidity, "50"),
    ] {
        curve(&mut document).air.entry(slot).text = text.into();
    }
    curve(&mut document).given = AirCorrection::StandardJ607;
    assert_relative_eq!(peak(&document), plain / 1.0829, max_relative = 2e-4);
    // A correction that is only shown changes nothing that is reckoned with.
    curve(&mut document).given = AirCorrection::None;
    curve(&mut document).correction = AirCorrection::SaeJ1349;
    assert_relative_eq!(peak(&document), plain, max_relative = 1e-12);
    let corrected = read(&document).curves[0].corrected.unwrap();
    assert_relative_eq!(corrected.factor, 1.0486, max_relative = 2e-4);
    assert!(corrected.is_usual());
    curve(&mut document).correction = AirCorrection::StandardJ607;
    assert!(!read(&document).curves[0].corrected.unwrap().is_usual(), "1.083 is beyond 1.07");
    // Without the air there is no correction.
    curve(&mut document).air.entry(HardwareField::Humidity).text.clear();
    let field_errors = read(&document).field_errors;
    let field = Field::Curve(1, CurvePart::Air(HardwareField::Humidity));
    assert!(field_errors.iter().any(|it| it.field == field), "{field_errors:?}");
}

#[test]
fn bad_rows_are_named_and_the_rest_is_used() {
    let mut document = car();
    curve(&mut document).table = Entry::metric("rpm;kW\n3000;120,5\nrun aborted;\n6000;190,0");
    let reading = read(&document);
    assert_eq!(reading.field_errors, vec![]);
    let table = &reading.curves[0].table;
    assert_eq!((table.rows.len(), table.bad.len()), (2, 1));
    assert_eq!(table.bad[0].line, 3, "{:?}", table.bad[0]);
    let power = reading.curves[0].at_crank.as_ref().unwrap().peak_power();
    assert_relative_eq!(power.value.get().get::<kilowatt>(), 190.0, max_relative = 1e-9);
    assert_relative_eq!(power.speed.get::<revolution_per_minute>(), 6000.0, max_relative = 1e-9);
}

#[test]
fn a_column_without_a_name_is_chosen() {
    let mut document = car();
    curve(&mut document).table = Entry::metric("3000 160\n6000 250");
    let field = Field::Curve(1, CurvePart::ValueColumn);
    assert!(read(&document).field_errors.iter().any(|it| it.field == field));
    // 250 metric horsepower are 183.87 kW (75 kgf m/s, by definition).
    curve(&mut document).columns.unit = Some(ValueUnit::MetricHorsepower);
    let kilowatts = 250.0 * 0.735_498_75;
    assert_relative_eq!(peak(&document) * 0.745_699_87, kilowatts, max_relative = 1e-6);
    curve(&mut document).columns.value = Some(9);
    assert!(!read(&document).field_errors.is_empty());
}

#[test]
fn limits_are_named_where_they_are_crossed() {
    let mut document = car();
    let gearbox = add(
        &mut document,
        PartKind::TorqueLimit,
        &[],
        [(HardwareField::LimitTorque, "380"), (HardwareField::ToSpeed, "3500")],
    );
    let builder =
        add(&mut document, PartKind::PowerLimit, &[], [(HardwareField::LimitPower, "250")]);
    let reading = read(&document);
    let crossings = &reading.curves[0].crossings;
    assert_eq!(crossings.len(), 1, "207 kW stay below the {builder}th limit");
    assert_eq!(crossings[0].0, gearbox);
    // From 350 N m at 2000 to 400 at 3000 rpm: 380 are reached at 2600.
    let from = crossings[0].1.from.get::<revolution_per_minute>();
    let to = crossings[0].1.to.get::<revolution_per_minute>();
    assert_relative_eq!(from, 2600.0, max_relative = 1e-9);
    assert_relative_eq!(to, 3500.0, max_relative = 1e-9);
    document.here.hardware.parts[0].mark(Mark::SetAside, true);
    assert!(read(&document).curves[0].crossings.is_empty());
}
