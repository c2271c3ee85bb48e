//! The table of a log, read back with the crate `csv`.

use fillwright::document::{Event, What, csv};
use proptest::prelude::*;

use crate::documents::document;

proptest! {
    #![proptest_config(ProptestConfig::with_cases(500))]

    #[test]
    fn every_text_of_the_log_is_in_the_table(document in document()) {
        let car = &document.here;
        let text = csv(car);
        let mut reader = ::csv::Reader::from_reader(text.as_bytes());
        let columns = reader.headers().unwrap().clone();
        let rows: Vec<::csv::StringRecord> = reader.records().map(Result::unwrap).collect();
        let of = |row: &::csv::StringRecord, column: &str| {
            let at = columns.iter().position(|it| it == column).unwrap();
            row[at].to_owned()
        };
        for cell in rows.iter().flat_map(::csv::StringRecord::iter) {
            prop_assert!(!cell.starts_with(['=', '+', '-', '@', '\t', '\r']), "a formula: {cell:?}");
        }
        let plain = |cell: &str| cell.strip_prefix('\'').unwrap_or(cell).to_owned();
        let mut rest = rows.as_slice();
        for event in car.log.events() {
            let expected = expected(event);
            let (these, others) = rest.split_at(expected.len());
            rest = others;
            for (row, (fuel, amount)) in these.iter().zip(expected) {
                prop_assert_eq!(of(row, "time"), String::from(event.time));
                prop_assert_eq!(plain(&of(row, "note")), plain(&event.note));
                prop_assert_eq!(plain(&of(row, "place")), plain(&event.place));
                prop_assert_eq!(plain(&of(row, "fuel")), plain(&fuel));
                prop_assert_eq!(plain(&of(row, "volume")), plain(&amount));
            }
        }
        prop_assert!(rest.is_empty());
    }
}

/// The fuel and the volume in each row of an entry.
fn expected(event: &Event) -> Vec<(String, String)> {
    let shown = |text: &str| if text.trim().is_empty() { String::new() } else { text.to_owned() };
    let nothing = || (String::new(), String::new());
    match &event.what {
        What::Fill(fill) => {
            let mut rows = Vec::new();
            if fill.before != fillwright::document::BeforeForm::Nothing {
                rows.push(nothing());
            }
            rows.extend(fill.fuels.iter().map(|it| (it.name.clone(), shown(&it.poured.text))));
            if fill.fuels.is_empty() {
                rows.push(nothing());
            }
            rows
        }
        What::Drain(entry) => vec![(String::new(), shown(&entry.text))],
        _ => vec![nothing()],
    }
}
