//! A car's log as a table for spreadsheets: RFC 4180, in UTF-8.

use super::contents::{ContentsForm, LevelForm};
use super::event::{BeforeForm, Event, What};
use super::file::CarFile;
use super::fuel::ExtrasForm;
use crate::quantity::notation::{Choosable, Entry, Units};
use crate::tank::{LevelReading, TubeTestMethod};

const COLUMNS: [&str; 29] = [
    "time",
    "kind",
    "place",
    "fuel",
    "volume",
    "volume unit",
    "price",
    "price per",
    "ethanol %",
    "ethanol % range",
    "water %",
    "methanol %",
    "ethers %",
    "oxygen % by mass",
    "octane",
    "octane scale",
    "MON",
    "full",
    "level",
    "level unit",
    "reading",
    "sensor",
    "pulse",
    "tube: fuel, water, boundary",
    "distance",
    "distance unit",
    "consumption",
    "consumption unit",
    "note",
];

#[derive(Default)]
struct Row([String; COLUMNS.len()]);

impl Row {
    fn of(event: &Event, kind: &str) -> Self {
        let mut row = Self::default();
        row.set("time", &String::from(event.time));
        row.set("kind", kind);
        row.set("place", &event.place);
        row.set("note", &event.note);
        row
    }

    fn set(&mut self, column: &str, text: &str) {
        if let Some(at) = COLUMNS.iter().position(|it| *it == column) {
            text.clone_into(&mut self.0[at]);
        }
    }

    /// A text as it was typed, and the unit that holds where none was typed.
    fn measure(
        &mut self,
        column: &str,
        unit: &str,
        entry: &Entry,
        symbol: fn(Units) -> &'static str,
    ) {
        if !entry.is_blank() {
            self.set(column, &entry.text);
            self.set(unit, symbol(entry.typed_in));
        }
    }

    fn volume(&mut self, entry: &Entry) {
        self.measure("volume", "volume unit", entry, |it| it.volume().symbol());
    }

    fn distance(&mut self, entry: &Entry) {
        self.measure("distance", "distance unit", entry, |it| it.distance().symbol());
    }

    fn level(&mut self, form: &LevelForm) {
        self.measure("level", "level unit", &form.level, |it| it.volume().symbol());
        let reading = match form.reading {
            LevelReading::Gauge => "gauge",
            LevelReading::Counted => "counted",
            LevelReading::Brimmed => "brimmed",
        };
        self.set("reading", reading);
    }

    fn contents(&mut self, form: &ContentsForm) {
        self.level(&form.level);
        self.blend(&form.share, &form.share_range, &form.octane, &form.mon);
        self.extras(&form.extras);
    }

    fn extras(&mut self, form: &ExtrasForm) {
        self.set("water %", &form.water);
        self.set("methanol %", &form.methanol);
        self.set("ethers %", &form.ethers);
        self.set("oxygen % by mass", &form.oxygen);
    }

    fn blend(&mut self, share: &str, range: &str, octane: &Entry, mon: &str) {
        self.set("ethanol %", share);
        self.set("ethanol % range", range);
        let scale = |units: Units| units.choice(Choosable::Octane).symbol;
        self.measure("octane", "octane scale", octane, scale);
        self.set("MON", mon);
    }
}

/// The log of a car: a row for each fuel of a fill, and one for each other entry.
/// Texts are as they were typed; a unit beside them holds where none was typed.
pub fn csv(car: &CarFile) -> String {
    let mut text = String::new();
    write(&mut text, COLUMNS.iter().copied());
    for row in car.log.events().flat_map(rows) {
        write(&mut text, row.0.iter().map(String::as_str));
    }
    text
}

fn rows(event: &Event) -> Vec<Row> {
    let row = |kind: &str, fill: &dyn Fn(&mut Row)| {
        let mut row = Row::of(event, kind);
        fill(&mut row);
        vec![row]
    };
    match &event.what {
        What::Fill(fill) => {
            let before = match &fill.before {
                BeforeForm::Nothing => Vec::new(),
                BeforeForm::Level(form) => row("before the fill", &|row| row.level(form)),
                BeforeForm::Contents(form) => row("before the fill", &|row| row.contents(form)),
            };
            let fuels = fill.fuels.iter().map(|fuel| {
                let mut row = Row::of(event, "fill");
                row.set("fuel", &fuel.name);
                row.volume(&fuel.poured);
                row.measure("price", "price per", &fuel.price, |it| it.volume().symbol());
                row.blend(&fuel.share, &fuel.share_range, &fuel.octane, &fuel.mon);
                row.extras(&fuel.extras);
                row.set("full", if fill.clicked { "yes" } else { "" });
                row
            });
            let mut rows: Vec<Row> = before.into_iter().chain(fuels).collect();
            if fill.fuels.is_empty() {
                rows.push(Row::of(event, "fill"));
            }
            rows
        }
        What::Level(form) => row("level", &|row| row.level(form)),
        What::Sensor(form) => row("sensor", &|row| {
            row.set("sensor", &form.reading);
            row.set("pulse", &form.pulse);
            row.set("reading", if form.old_fuel { "fuel not yet there" } else { "" });
        }),
        What::TubeTest(form) => row("tube test", &|row| {
            let parts = [&form.fuel, &form.water, &form.boundary].map(String::as_str);
            row.set("tube: fuel, water, boundary", &parts.join("; "));
            let method = match form.method {
                TubeTestMethod::SaltWater => "salt water",
                TubeTestMethod::PlainWater => "plain water",
            };
            row.set("reading", method);
        }),
        What::Drive(entry) => row("drive", &|row| row.distance(entry)),
        What::Trip(form) => row("trip computer", &|row| {
            row.distance(&form.distance);
            row.measure("consumption", "consumption unit", &form.consumption, |it| {
                it.consumption().symbol()
            });
        }),
        What::Drain(entry) => row("drain", &|row| row.volume(entry)),
        What::Correction(form) => row("contents", &|row| row.contents(form)),
        What::Note => row("note", &|_| ()),
    }
}

fn write<'a>(text: &mut String, cells: impl Iterator<Item = &'a str>) {
    for (number, cell) in cells.enumerate() {
        if number > 0 {
            text.push(',');
        }
        // A spreadsheet would take these for a formula.
        let formula = cell.starts_with(['=', '+', '-', '@', '\t', '\r']);
        let quoted = formula || cell.contains([',', '"', '\r', '\n']);
        if quoted {
            text.push('"');
            text.push_str(if formula { "'" } else { "" });
            text.push_str(&cell.replace('"', "\"\""));
            text.push('"');
        } else {
            text.push_str(cell);
        }
    }
    text.push_str("\r\n");
}
