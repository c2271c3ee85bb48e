//! The quantities of the workshop: reading undoes printing in every unit, a text that
//! is shown in other units means the same, and no text does harm.

use std::fmt::Write;

use fillwright::answers::hardware::curve_table::{ColumnChoice, CurveTable, ValueIs};
use fillwright::quantity::notation::{DecimalMark, Decimals, Printer, Style, Units, quantities};
use fillwright::quantity::notation::{InSi, QuantityField, parse_fraction, parse_lambda};
use fillwright::words::problems::problem;
use proptest::prelude::*;
use proptest::sample::select;

use crate::notation::style;
use crate::people::units;

/// A check of one field, for whatever it measures.
trait Check {
    fn of<Q: InSi>(&self, field: &QuantityField<Q>) -> Result<(), TestCaseError>;
}

fn every_field(check: &impl Check) -> Result<(), TestCaseError> {
    check.of(&quantities::PRESSURE)?;
    check.of(&quantities::AIR_PRESSURE)?;
    check.of(&quantities::BOOST)?;
    check.of(&quantities::POWER)?;
    check.of(&quantities::TORQUE)?;
    check.of(&quantities::ENGINE_SPEED)?;
    check.of(&quantities::INJECTOR_FLOW)?;
    check.of(&quantities::PUMP_FLOW)?;
    check.of(&quantities::MASS_FLOW)?;
    check.of(&quantities::AIR_FLOW)?;
    check.of(&quantities::DENSITY)?;
    check.of(&quantities::LENGTH)?;
    check.of(&quantities::LINE_LENGTH)?;
    check.of(&quantities::TIME)?;
    check.of(&quantities::VOLTAGE)?;
    check.of(&quantities::TEMPERATURE)?;
    check.of(&quantities::ANGLE)?;
    check.of(&quantities::SPECIFIC_CONSUMPTION)?;
    check.of(&quantities::BULK_MODULUS)?;
    check.of(&quantities::LITRES)
}

/// A quantity so far up the field's range.
fn at<Q: InSi>(field: &QuantityField<Q>, part: f64) -> Q {
    let unit = field.own(Units::METRIC);
    let (low, high) = field.range(unit);
    unit.quantity(low + (high - low) * part)
}

/// What is printed exactly in any unit reads back as the same quantity.
struct Returns {
    part: f64,
    units: Units,
    style: Style,
}

impl Check for Returns {
    fn of<Q: InSi>(&self, field: &QuantityField<Q>) -> Result<(), TestCaseError> {
        let quantity = at(field, self.part);
        for unit in field.units() {
            // A gallon's symbol without a country is the person's own.
            if field.named(unit.symbol(), self.units) != Some(unit) {
                continue;
            }
            let text = unit.print(quantity, Decimals::Exact, self.style);
            let read = field.parse(&text, self.units);
            let read = read.map_err(|error| TestCaseError::fail(format!("{text}: {error}")))?;
            let (read, meant) = (unit.value_of(read), unit.value_of(quantity));
            prop_assert!(
                (read - meant).abs() <= 1e-9 * meant.abs().max(1e-3),
                "{}: {}",
                text,
                read
            );
        }
        Ok(())
    }
}

/// What is shown in other units is what was typed, to the decimals that are shown.
struct IsShown {
    part: f64,
    systems: [Units; 2],
    style: Style,
}

impl Check for IsShown {
    fn of<Q: InSi>(&self, field: &QuantityField<Q>) -> Result<(), TestCaseError> {
        let [typed_in, shown_in] = self.systems;
        let (then, now) = (field.own(typed_in), field.own(shown_in));
        let typed = then.print(at(field, self.part), Decimals::Exact, self.style);
        let (bare, _) = typed.split_at(typed.find('\u{202f}').unwrap_or(typed.len()));
        // With its unit it means the same everywhere, but for a gallon, and stays as typed.
        if field.named(then.symbol(), shown_in) == Some(then) {
            prop_assert_eq!(field.reprint(&typed, typed_in, shown_in, self.style), None);
        }
        let bare = bare.trim_end_matches('°');
        let meant =
            field.parse(bare, typed_in).map_err(|error| TestCaseError::fail(error.to_string()))?;
        let Some(shown) = field.reprint(bare, typed_in, shown_in, self.style) else {
            prop_assert_eq!(then, now);
            return Ok(());
        };
        let read = field.parse(&shown, shown_in);
        let read = read.map_err(|error| TestCaseError::fail(format!("{shown}: {error}")))?;
        let step = 0.1_f64.powi(i32::try_from(now.decimals()).unwrap() + 1);
        let (read, meant) = (now.value_of(read), now.value_of(meant));
        prop_assert!((read - meant).abs() <= 0.5001 * step, "{bare} became {shown}");
        Ok(())
    }
}

/// What is accepted lies in the range.
struct DoesNoHarm<'a> {
    text: &'a str,
    units: Units,
}

impl Check for DoesNoHarm<'_> {
    fn of<Q: InSi>(&self, field: &QuantityField<Q>) -> Result<(), TestCaseError> {
        match field.parse(self.text, self.units) {
            Ok(quantity) => {
                let unit = field.own(self.units);
                let (low, high) = field.range(unit);
                let value = unit.value_of(quantity);
                // Another unit's limits are rounded outwards on their own.
                let slack = 0.011 * (low.abs() + high.abs());
                prop_assert!(low - slack <= value && value <= high + slack, "{:?}", self.text);
            }
            Err(error) => {
                let style = Style { decimal: DecimalMark::Point };
                let printer = Printer { units: self.units, style, currency: String::new() };
                let words = problem(&error.into(), &printer);
                prop_assert!(words.contains("ype"), "{}", words);
            }
        }
        Ok(())
    }
}

/// The pieces of real texts in any order.
fn near_miss() -> impl Strategy<Value = String> {
    let pieces = vec![
        "0",
        "1",
        "2",
        "5",
        "12",
        "123",
        "000",
        "6500",
        ".",
        ",",
        " ",
        "\u{202f}",
        "-",
        "−",
        "–",
        "/",
        "%",
        "(",
        ")",
        "bar",
        "psi",
        "kPa",
        "inHg",
        "\"",
        "kW",
        "hp",
        "PS",
        "whp",
        "Nm",
        "N·m",
        "lb",
        "ft",
        "lb-ft",
        "rpm",
        "1/min",
        "min⁻¹",
        "cc/min",
        "L/h",
        "gal/h",
        "imp ",
        "g/s",
        "kg/m³",
        "µm",
        "ms",
        "V",
        "°",
        "C",
        "°F",
        "g/kWh",
        "lb/(hp·h)",
        "AFR",
        "λ",
        "lambda",
        ":1",
        " to ",
        "nan",
        "１",
        "İ",
        "ß",
    ];
    proptest::collection::vec(select(pieces), 0..8).prop_map(|pieces| pieces.concat())
}

fn any_text() -> impl Strategy<Value = String> {
    prop_oneof![1 => ".*", 1 => "[0-9.,' −-]{0,12}", 4 => near_miss()]
}

/// Texts that are almost a table.
fn near_table() -> impl Strategy<Value = String> {
    let pieces = vec![
        "2000",
        "2500",
        "6500",
        "350",
        "350,5",
        "380.25",
        "1.234",
        "n/a",
        "-",
        "",
        "\"",
        "\"\"",
        ";",
        ",",
        "\t",
        " ",
        "  ",
        "\n",
        "\r\n",
        "\r",
        "rpm",
        "RPM",
        "Torque",
        "(Nm)",
        "[kW]",
        "Power",
        "whp",
        "Boost",
        "psi",
        "Engine speed",
        "1/min",
        "sep=",
        "#",
        "\u{feff}",
        "é",
        "°",
        "0",
        "(",
        "]",
        "1e5",
        "\u{202f}",
    ];
    proptest::collection::vec(select(pieces), 0..60).prop_map(|pieces| pieces.concat())
}

fn choice() -> impl Strategy<Value = ColumnChoice> {
    let column = || proptest::option::of(0..4_usize);
    let torque = ValueIs::Torque(quantities::TORQUE.own(Units::US));
    let power = ValueIs::Power(quantities::POWER.own(Units::METRIC));
    (column(), column(), column(), select(vec![None, Some(torque), Some(power)]))
        .prop_map(|(speed, value, boost, value_is)| ColumnChoice { speed, value, boost, value_is })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(500))]

    #[test]
    fn quantities_return(
        part in 0.001..=0.999_f64,
        units in units(),
        style in style(),
    ) {
        every_field(&Returns { part, units, style })?;
    }

    #[test]
    fn what_was_typed_is_shown_in_other_units(
        part in 0.01..=0.99_f64,
        typed_in in units(),
        shown_in in units(),
        style in style(),
    ) {
        every_field(&IsShown { part, systems: [typed_in, shown_in], style })?;
    }

    #[test]
    fn no_text_does_harm(text in any_text(), units in units()) {
        every_field(&DoesNoHarm { text: &text, units })?;
        if let Ok(lambda) = parse_lambda(&text, units) {
            prop_assert!((0.5..=2.0).contains(&lambda));
        }
        if let Ok(fraction) = parse_fraction(&text, 0.0..=0.4) {
            prop_assert!((0.0..=0.4).contains(&fraction));
        }
    }

    #[test]
    fn no_table_does_harm(
        text in prop_oneof![1 => "(?s).{0,200}", 4 => near_table()],
        choice in choice(),
        units in units(),
    ) {
        let Ok(table) = CurveTable::read(&text, &choice, units) else { return Ok(()) };
        prop_assert!(table.columns.len() >= 2);
        for row in &table.rows {
            prop_assert!(row.speed.si() > 0.0 && row.value.power(row.speed).si() > 0.0);
        }
        // Every line that holds something is a row, a bad row, unread or the header.
        let lines = text.trim_start_matches('\u{feff}').replace("\r\n", "\n");
        let lines = lines.split(['\n', '\r']).filter(|line| !line.trim().is_empty()).count();
        let told = table.rows.len() + table.bad.len() + table.unread.len();
        if table.speed.is_some() && table.value.is_some() {
            prop_assert!((lines.saturating_sub(2)..=lines).contains(&told), "{} of {}", told, lines);
        }
    }

    #[test]
    fn tables_are_read_as_they_were_written(
        rows in proptest::collection::vec((1000..9000_u32, 10..9000_u32), 1..40),
        layout in select(vec![
            (",", DecimalMark::Point), (";", DecimalMark::Comma), (";", DecimalMark::Point),
            ("\t", DecimalMark::Comma), (" ", DecimalMark::Point), (" ", DecimalMark::Comma),
        ]),
        header in any::<bool>(),
    ) {
        let (separator, mark) = layout;
        let mut text = if header { format!("rpm{separator}Torque_Nm\n") } else { String::new() };
        for (speed, tenths) in &rows {
            let (whole, tenth) = (tenths / 10, tenths % 10);
            writeln!(text, "{speed}{separator}{whole}{}{tenth}", mark.char()).unwrap();
        }
        let torque = quantities::TORQUE.own(Units::METRIC);
        let choice = ColumnChoice { value_is: Some(ValueIs::Torque(torque)), ..ColumnChoice::default() };
        let table = CurveTable::read(&text, &choice, Units::US).unwrap();
        prop_assert_eq!(table.bad.len(), 0, "{:?}", table.bad);
        prop_assert_eq!(table.decimal, Some(mark));
        let speed_unit = quantities::ENGINE_SPEED.own(Units::METRIC);
        for (row, (speed, tenths)) in table.rows.iter().zip(&rows) {
            prop_assert!((speed_unit.value_of(row.speed) - f64::from(*speed)).abs() < 1e-6);
            let read = row.value.torque(row.speed).si();
            prop_assert!((read - f64::from(*tenths) / 10.0).abs() < 1e-9, "{}", text);
        }
        prop_assert_eq!(table.rows.len(), rows.len());
    }
}
