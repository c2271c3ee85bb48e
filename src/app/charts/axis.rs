//! An axis: what it spans, and how its values are placed and printed.

use fillwright::quantity::notation::{Style, print_number, round_down, round_up};

use super::dates::date_ticks;
use super::path::whole;
use super::point::Figure;
use super::svg::width_of;
use super::ticks::ticks;

/// A tick of the lower axis takes so much more than its number, or than its date.
const BETWEEN: (f64, f64) = (24.0, 10.0);

/// An axis. What lies beyond its ends is not drawn, but said.
#[derive(Clone, Debug, Default, PartialEq)]
pub(crate) struct Axis {
    pub(crate) name: String,
    /// The symbol of the unit; empty where there is none.
    pub(crate) unit: String,
    pub(crate) from: f64,
    /// More than `from`, or the same where there is only one place.
    pub(crate) to: f64,
    /// How many decimals its values are printed with.
    pub(crate) decimals: usize,
    /// How numbers are printed.
    pub(crate) style: Style,
    /// What prints its values where they are times, in minutes since 1970, local time.
    pub(crate) date: Option<PrintDate>,
}

/// What prints a time, with the time of day or without.
#[derive(Clone, Copy, Debug)]
pub(crate) struct PrintDate(pub(crate) fn(i64, bool) -> String);

impl PartialEq for PrintDate {
    fn eq(&self, other: &Self) -> bool {
        // One that is taken for another is only drawn anew.
        std::ptr::fn_addr_eq(self.0, other.0)
    }
}

impl Axis {
    /// Whether a value lies between its ends.
    pub(super) fn spans(&self, value: f64) -> bool {
        (self.from..=self.to).contains(&value)
    }

    /// The nearest place on the axis.
    pub(super) fn within(&self, value: f64) -> f64 {
        value.min(self.to).max(self.from)
    }

    /// So little apart, two places are one.
    pub(super) fn near(&self) -> f64 {
        1e-9 * (self.to - self.from)
    }

    /// A value without its unit.
    pub(super) fn number(&self, value: f64) -> String {
        match self.date {
            Some(PrintDate(date)) => date(whole(value), true),
            None => print_number(value, self.decimals, self.style),
        }
    }

    /// The ends of a figure, rounded outwards.
    pub(super) fn ends(&self, figure: Figure) -> (String, String) {
        let (low, high) =
            (round_down(figure.low, self.decimals), round_up(figure.high, self.decimals));
        (self.number(low), self.number(high))
    }

    /// A value with its unit.
    pub(crate) fn print(&self, value: f64) -> String {
        self.with_unit(self.number(value))
    }

    pub(super) fn with_unit(&self, number: String) -> String {
        if self.unit.is_empty() { number } else { format!("{number}\u{202f}{}", self.unit) }
    }

    /// What it measures, with its unit.
    pub(super) fn title(&self) -> String {
        if self.unit.is_empty() {
            self.name.clone()
        } else {
            format!("{}, {}", self.name, self.unit)
        }
    }

    /// Values to write along it with at most so many steps between them, each in words.
    pub(super) fn ticks(&self, most: usize) -> Vec<(f64, String)> {
        let ticks = ticks(self.from, self.to, most, self.decimals);
        let words = |it: f64| print_number(it, ticks.decimals, self.style);
        ticks.values.into_iter().map(|it| (it, words(it))).collect()
    }

    /// Values to write along it where it is so long, each in words.
    pub(super) fn ticks_along(&self, length: f64) -> Vec<(f64, String)> {
        if let Some(PrintDate(date)) = self.date {
            return self.dates_along(length, date);
        }
        let widest = [self.from, self.to].map(|it| width_of(&self.number(it)));
        let room = BETWEEN.0 + widest[0].max(widest[1]);
        let most = (2..=6_u16).rev().find(|it| f64::from(*it) * room <= length).unwrap_or(1);
        self.ticks(usize::from(most))
    }

    fn dates_along(&self, length: f64, date: fn(i64, bool) -> String) -> Vec<(f64, String)> {
        let (from, to) = (whole(self.from), whole(self.to));
        let apart = |with_time| {
            let ends = [from, to].map(|minute| width_of(&date(minute, with_time)));
            let width = ends[0].max(ends[1]) + BETWEEN.1;
            whole(width / length * (self.to - self.from))
        };
        let ticks = date_ticks(from, to, apart);
        let tick = |minute: i64| (minutes(minute), date(minute, ticks.with_time));
        ticks.minutes.iter().map(|it| tick(*it)).collect()
    }
}

/// A time as a place on an axis of dates.
#[expect(clippy::cast_precision_loss, reason = "any calendar's minutes are far below 2^53")]
pub(crate) fn minutes(minutes: i64) -> f64 {
    minutes as f64
}
