//! Invented tables in the layouts that people have. The numbers are arithmetic on
//! what stands in the text.

use uom::si::angular_velocity::revolution_per_minute;
use uom::si::power::kilowatt;
use uom::si::pressure::bar;
use uom::si::torque::newton_meter;

use super::*;
use crate::quantity::notation::{Printer, Style};
use crate::words::problems::bad_row;

fn read(text: &str) -> CurveTable {
    CurveTable::read(text, &ColumnChoice::default(), Units::METRIC).unwrap()
}

fn with(text: &str, choice: ColumnChoice) -> Result<CurveTable, CurveTableError> {
    CurveTable::read(text, &choice, Units::METRIC)
}

fn torque(symbol: &str) -> ValueIs {
    ValueIs::Torque(quantities::TORQUE.named(symbol, Units::METRIC).unwrap())
}

/// Speeds in rpm with torques in newton metres or powers in kilowatts.
fn numbers(table: &CurveTable) -> Vec<(f64, f64)> {
    let round = |value: f64| (value * 1e6).round() / 1e6;
    let value = |value| match value {
        CurveValue::Torque(torque) => torque.get::<newton_meter>(),
        CurveValue::Power(power) => power.get::<kilowatt>(),
    };
    let rpm = |speed: AngularVelocity| speed.get::<revolution_per_minute>();
    table.rows.iter().map(|row| (round(rpm(row.speed)), round(value(row.value)))).collect()
}

fn meanings(table: &CurveTable) -> Vec<Meaning> {
    table.columns.iter().map(|column| column.meaning).collect()
}

fn reasons(table: &CurveTable) -> Vec<String> {
    let printer = Printer {
        units: Units::METRIC,
        style: Style { decimal: DecimalMark::Point },
        currency: String::new(),
    };
    table.bad.iter().map(|it| bad_row(it, &printer)).collect()
}

const TWO: [(f64, f64); 2] = [(2000.0, 350.5), (2500.0, 380.25)];

#[test]
fn layouts_of_programs_and_spreadsheets() {
    for text in [
        "RPM,Torque (Nm)\n2000,350.5\n2500,380.25",
        "RPM;Torque (Nm)\r\n2000;350,5\r\n2500;380,25\r\n",
        "RPM\tTorque (Nm)\n2.000,0\t350,5\n2.500,0\t380,25",
        "\u{feff}\"Engine speed\",\"Torque, Nm\"\n\"2000\",\"350,5\"\n\"2500\",\"380,25\"",
        "sep=;\nrpm;Torque [N·m]\n2000;350.5\n2500;380.25",
        "# n (1/min)   T (N m)\n2000   350.5\n2500   380.25",
        "Engine speed (rpm) Engine torque (Nm)\n2000 350.5\n2500 380.25",
        "n;T\n1/min;Nm\n2000;350,5\n2500;380,25",
        "Run 7\nthird gear, cold\n\nRPM , Torque\nrpm , Nm\n2000 , 350.5\n2500 , 380.25\n",
        "Torque_Nm;RPM\n350,5;2000\n380,25;2500",
        "2000 rpm 350.5 Nm\n2500 rpm 380.25 Nm\nrpm Nm",
    ] {
        let choice = ColumnChoice { value_is: Some(torque("Nm")), ..ColumnChoice::default() };
        let table = with(text, choice).unwrap();
        assert_eq!(numbers(&table), TWO, "{text}");
    }
}

#[test]
fn figures_typed_by_hand_need_only_be_told_what_they_are() {
    let table = read("2000 350\n2500 380");
    assert_eq!((table.speed, table.value, table.rows.len()), (Some(0), None, 0));
    assert!(table.bad.is_empty() && table.columns.iter().all(|column| !column.is_read));
    let choice = ColumnChoice { value_is: Some(torque("lb ft")), ..ColumnChoice::default() };
    let table = with("2000 350\n2500 380", choice).unwrap();
    // 1 lb ft is 1.355 817 948 331 N m (0.3048 m x 4.448 221 615 N).
    assert_eq!(numbers(&table), [(2000.0, 474.536_282), (2500.0, 515.210_82)]);
    assert_eq!(table.columns[1].unit, Some("lb·ft"));
    assert!(table.columns.iter().all(|column| column.is_read && column.unit_is_assumed));
}

#[test]
fn power_is_taken_before_torque_unless_chosen() {
    let text = "Speed;Engine speed rpm;Wheel power (hp);Wheel torque (lb-ft);Boost (psi)\n\
                55;3000;200;350,1;14,5\n70;4000;300;393,9;20,3\n";
    let table = read(text);
    assert_eq!(
        meanings(&table),
        [Meaning::Unknown, Meaning::EngineSpeed, Meaning::Power, Meaning::Torque, Meaning::Boost]
    );
    // 1 hp is 0.745 699 872 kW.
    assert_eq!(numbers(&table), [(3000.0, 149.139_974), (4000.0, 223.709_961)]);
    assert_eq!(table.columns[2].place, Some(MeasuredAt::Wheel));
    let boost = table.rows[1].boost.unwrap().get().get::<bar>();
    // 20.3 psi x 0.068 947 57 bar.
    approx::assert_relative_eq!(boost, 1.399_636, max_relative = 1e-6);
    let choice = ColumnChoice { value: Some(3), ..ColumnChoice::default() };
    let table = with(text, choice).unwrap();
    assert_eq!(table.value, Some((3, torque("lb ft"))));
    // P = T n / 5252.1131: 350.1 lb ft at 3000 rpm are 199.98 hp.
    let power = table.rows[0].value.power(table.rows[0].speed).get::<kilowatt>();
    approx::assert_relative_eq!(power / 0.745_699_872, 199.977, max_relative = 1e-5);
    let chosen = ColumnChoice { value_is: Some(torque("Nm")), ..ColumnChoice::default() };
    assert_eq!(with(text, chosen).unwrap().value, Some((3, torque("Nm"))));
}

#[test]
fn units_that_are_not_named_are_the_systems() {
    let text = "rpm;torque;boost\n3000;300;1,2";
    for (units, unit, pressure) in [(Units::METRIC, "N·m", "bar"), (Units::US, "lb·ft", "psi")] {
        let table = CurveTable::read(text, &ColumnChoice::default(), units).unwrap();
        assert_eq!((table.columns[1].unit, table.columns[2].unit), (Some(unit), Some(pressure)));
        assert!(table.columns[1].unit_is_assumed && !table.columns[0].unit_is_assumed);
    }
}

#[test]
fn rows_that_cannot_be_read_are_named() {
    let text = "n;Torque;boost\n2000;350;0,5\n2500;n/a;0,6\n;380;0,7\n3000;\n3500;9000;1\n\
                4000;420 kW;1\n4500;440;high\n5000;450;-\ntotal\n";
    let table = read(text);
    assert_eq!(numbers(&table), [(2000.0, 350.0), (5000.0, 450.0)]);
    assert_eq!(table.rows[1].boost, None);
    assert_eq!(
        reasons(&table),
        [
            "line 3: “n/a” in column torque is not a number",
            "line 4: there is nothing in column engine speed",
            "line 5: there is nothing in column torque",
            "line 6: “9000” in column torque is out of range: 1 to 5000 N·m is read",
            "line 7: “420 kW” in column torque has another unit than N·m, lb·ft or kgf·m",
            "line 8: “high” in column boost is not a number",
            "line 10: “total” in column engine speed is not a number",
        ]
    );
    assert_eq!(table.bad[0].text, "2500;n/a;0,6");
}

// A line that begins with a number is a row, also above the first good one.
#[test]
fn a_first_row_that_went_wrong_is_no_header() {
    let choice = ColumnChoice { value_is: Some(torque("Nm")), ..ColumnChoice::default() };
    let table = with("1500;fault\n2000;350\n2500;380", choice).unwrap();
    assert_eq!(reasons(&table), ["line 1: “fault” in column torque is not a number"]);
    assert!(table.unread.is_empty());
}

#[test]
fn the_rest_of_a_table_settles_what_one_number_does_not() {
    let points = read("rpm\tPower (kW)\n1000\t2.125\n3000\t90.5");
    assert_eq!(numbers(&points), [(1000.0, 2.125), (3000.0, 90.5)]);
    assert_eq!(points.decimal, Some(DecimalMark::Point));
    let commas = read("rpm\tPower (kW)\n1000\t2.125\n3000\t90,5");
    assert_eq!(numbers(&commas), [(1000.0, 2125.0), (3000.0, 90.5)]);
    // With nothing to tell, it is asked about.
    let silent = read("rpm\tPower (kW)\n1000\t2.125\n3000\t90");
    assert_eq!(reasons(&silent), ["line 2: “2.125” in column power may mean 2.125 or 2125"]);
    // Speeds in thousands are settled by what engines reach.
    assert_eq!(numbers(&read("rpm\tTorque (Nm)\n2.500\t350\n3.000\t351")).len(), 2);
}

#[test]
fn columns_that_do_not_say_what_they_are_are_asked_about() {
    let table = read("time;load\n0,1;20\n0,2;30");
    assert_eq!((table.speed, table.value), (None, None));
    let choice =
        ColumnChoice { speed: Some(0), value: Some(1), value_is: Some(torque("Nm")), boost: None };
    let table = with("time;load\n0,1;20\n0,2;30", choice).unwrap();
    assert_eq!(
        reasons(&table)[0],
        "line 2: “0,1” in column engine speed is out of range: 100 to 25000 rpm is read"
    );
}

#[test]
fn lines_above_the_table_are_named_as_unread() {
    let table = read("Report\nWeather: 20 °C\nrpm;hp\n2000;150\n2500;200");
    assert_eq!(table.unread, [1, 2]);
    assert_eq!(table.columns[1].header, "hp");
    // A title with a date is no row, nor is what follows it.
    let table = read("Run of 12 05 2031\nrpm hp\n2000 150\n2500 200");
    assert_eq!(
        (table.unread.as_slice(), table.rows.len(), table.bad.len()),
        ([1].as_slice(), 2, 0)
    );
    // A row with a cell too few is one that went wrong.
    let table = read("rpm;hp;boost\n2000;150\n2500;;1,1\n3000;200;1,2\n3500;250;1,3");
    assert_eq!((table.rows.len(), table.bad.len(), table.unread.len()), (3, 1, 0));
}

#[test]
fn what_is_no_table_is_refused() {
    use CurveTableError as Error;
    for text in ["", "\n\n", "rpm;Nm", "hello", "2000", "2000\n350"] {
        assert_eq!(with(text, ColumnChoice::default()), Err(Error::NoRows), "{text}");
    }
    let long = "2000 350\n".repeat(LONGEST_TABLE / 9 + 1);
    let given = long.len();
    assert_eq!(with(&long, ColumnChoice::default()), Err(Error::TooLong { given }));
    let many = "2000 350\n".repeat(MOST_ROWS + 1);
    assert_eq!(with(&many, ColumnChoice::default()), Err(Error::TooManyRows { given: 5001 }));
    assert!(with(&"2000 350\n".repeat(MOST_ROWS), ColumnChoice::default()).is_ok());
    let wide = "1;".repeat(MOST_COLUMNS + 1) + "1";
    assert_eq!(with(&wide, ColumnChoice::default()), Err(Error::TooManyColumns { given: 102 }));
    let nowhere = ColumnChoice { value: Some(2), ..ColumnChoice::default() };
    assert_eq!(with("1 2", nowhere), Err(Error::NoSuchColumn { given: 3, columns: 2 }));
    let twice = ColumnChoice { value: Some(1), speed: Some(1), ..ColumnChoice::default() };
    assert_eq!(with("1 2", twice), Err(Error::ColumnChosenTwice { given: 2 }));
}
