//! Quantities as the person wants to read them. The few words in a figure are said here:
//! a figure is a text only once it is printed.

mod technical;

use crate::message::keys::notation as keys;
use crate::quantity::Consumption;
use crate::quantity::notation::entry::Entry;
pub(super) use crate::quantity::notation::measure::Measure;
use crate::quantity::notation::{
    Decimals, KILOMETRE, Rate, Style, Units, outwards, parse_number, print_money, print_number,
    print_number_short, print_percent, print_price, print_share, quantities, round_down, round_up,
};
use crate::quantity::{Band, Length, Money, Share, ThermodynamicTemperature, UnitPrice, Volume};

/// Narrow no-break space: joins a number to its unit.
const THIN: char = '\u{202f}';

/// Prints quantities in the units, the decimal mark and the currency chosen.
#[derive(Clone, Debug, PartialEq)]
pub struct Printer {
    /// The units.
    pub units: Units,
    /// The decimal mark.
    pub style: Style,
    /// The currency's sign or name.
    pub currency: String,
}

impl Printer {
    /// A number with so many decimals.
    pub fn number(&self, value: f64, decimals: usize) -> String {
        print_number(value, decimals, self.style)
    }

    /// A volume: tenths, which is finer than a person can pump.
    pub fn volume(&self, volume: Volume) -> String {
        self.figure(&quantities::VOLUME, volume)
    }

    /// The number of a volume without its unit.
    pub fn volume_number(&self, volume: Volume) -> String {
        self.number(self.units.volume().value_of(volume), 1)
    }

    /// A share in percent, whole.
    pub fn percent(&self, share: Share) -> String {
        print_percent(steady(share), 0, self.style)
    }

    /// A share as a grade: `E30`.
    pub fn grade(&self, share: Share) -> String {
        print_share(steady(share), 0, self.style)
    }

    /// An edge of a window as a grade, as finely as it was typed: a blend is told to be
    /// on one side of it.
    pub fn edge(&self, share: Share) -> String {
        print_share(steady(share), Decimals::UpTo(2), self.style)
    }

    /// A window of shares as grades.
    pub fn window(&self, low: Share, high: Share) -> String {
        keys::Band { low: self.edge(low), high: self.edge(high) }.say()
    }

    /// The low end, the expected value and the high end of a band with so many decimals.
    /// Ends are rounded outwards: nothing that is possible lies outside of what is told.
    pub fn number_ends(&self, band: Band<f64>, decimals: usize) -> [String; 3] {
        let told = outwards(band, decimals);
        [told.low(), told.expected(), told.high()].map(|it| self.number(it, decimals))
    }

    /// A number that is at least so much.
    pub fn at_least(&self, value: f64, decimals: usize) -> String {
        self.number(round_down(value, decimals), decimals)
    }

    /// A number that is at most so much.
    pub fn at_most(&self, value: f64, decimals: usize) -> String {
        self.number(round_up(value, decimals), decimals)
    }

    /// The low end, the expected share and the high end as grades.
    pub fn grade_ends(&self, band: Band<Share>) -> [String; 3] {
        let percent = band.map(|share| steady(share).percent());
        self.number_ends(percent, 0).map(|it| format!("E{it}"))
    }

    /// A band of shares as grades.
    pub fn grade_band(&self, band: Band<Share>) -> String {
        let [low, _, high] = self.grade_ends(band);
        keys::Band { low, high }.say()
    }

    /// A share that is possible at least, as a grade.
    pub fn grade_at_least(&self, share: Share) -> String {
        format!("E{}", self.at_least(steady(share).percent(), 0))
    }

    /// A share that is possible at most, as a grade.
    pub fn grade_at_most(&self, share: Share) -> String {
        format!("E{}", self.at_most(steady(share).percent(), 0))
    }

    /// A band of shares in percent, with a decimal where the ends have one.
    pub fn percent_band(&self, band: Band<Share>) -> String {
        let told = outwards(band.map(|share| steady(share).percent()), 1);
        let [low, high] = [told.low(), told.high()].map(|it| print_number_short(it, 1, self.style));
        if low == high { format!("{low}{THIN}%") } else { keys::BandPercent { low, high }.say() }
    }

    /// The low end, the expected volume and the high end, each with its unit.
    pub fn volume_ends(&self, band: Band<Volume>) -> [String; 3] {
        let unit = self.units.volume();
        let numbers = self.number_ends(band.map(|it| unit.value_of(it)), 1);
        numbers.map(|it| format!("{it}{THIN}{}", unit.symbol()))
    }

    /// A band of volumes: `12.0 to 18.0 L`.
    pub fn volume_band(&self, band: Band<Volume>) -> String {
        let unit = self.units.volume();
        let [low, _, high] = self.number_ends(band.map(|it| unit.value_of(it)), 1);
        keys::BandUnit { low, high, unit: unit.symbol() }.say()
    }

    /// A price in the own currency, and what it is in the one that it was typed in.
    pub fn price_both(&self, price: UnitPrice, rate: Option<Rate>) -> String {
        let own = self.price(price);
        rate.map_or_else(|| own.clone(), |rate| format!("{own} ({})", self.price_in(price, rate)))
    }

    /// A price of the own currency in another one.
    pub fn price_in(&self, price: UnitPrice, rate: Rate) -> String {
        let there = rate.from_own(price);
        let name = rate.currency.to_string();
        print_price(there, self.units.volume(), &name, 3, self.style)
    }

    /// A sum of the own currency in another one.
    pub fn money_in(&self, money: Money, rate: Rate) -> String {
        let amount = self.number(money.amount() / rate.factor, 2);
        format!("{amount}{THIN}{}", rate.currency)
    }

    /// A price below which something holds.
    pub fn price_below(&self, price: UnitPrice) -> String {
        let unit = self.units.volume();
        let amount = self.at_least(price.of(unit.quantity(1.0)).amount(), 3);
        let currency = if self.currency.is_empty() {
            String::new()
        } else {
            format!("{THIN}{}", self.currency)
        };
        format!("{amount}{currency}/{}", unit.symbol())
    }

    /// A sum of money.
    pub fn money(&self, money: Money) -> String {
        print_money(money, &self.currency, 2, self.style)
    }

    /// A price per volume.
    pub fn price(&self, price: UnitPrice) -> String {
        print_price(price, self.units.volume(), &self.currency, 3, self.style)
    }

    /// The distance over which running costs are told: its name, and how many
    /// kilometres it is.
    pub fn cost_distance(&self) -> (String, f64) {
        let unit = self.units.distance();
        if unit == KILOMETRE {
            (format!("100{THIN}km"), 100.0)
        } else {
            (keys::MILE.say().into(), KILOMETRE.value_of(unit.quantity(1.0)))
        }
    }

    /// A distance, whole.
    pub fn distance(&self, distance: Length) -> String {
        self.figure(&quantities::DISTANCE, distance)
    }

    /// A temperature, whole degrees.
    pub fn temperature(&self, temperature: ThermodynamicTemperature) -> String {
        quantities::TEMPERATURE.print(temperature, self.units, self.style)
    }

    /// A consumption.
    pub fn consumption(&self, consumption: Consumption) -> String {
        self.figure(&quantities::CONSUMPTION, consumption)
    }

    /// What to show in an entry's field: the text as typed, or, when it was typed
    /// in other units and means something else in these, its value in these.
    /// A text that cannot be read is shown as it is.
    pub fn shown(&self, entry: &Entry, measure: Measure) -> String {
        if entry.typed_in == self.units {
            return entry.text.clone();
        }
        let reprinted =
            measure.field().reprint(&entry.text, entry.typed_in, self.units, self.style);
        reprinted.unwrap_or_else(|| entry.text.clone())
    }

    /// An entry in a sentence: the text as typed, or its value in other units with two
    /// decimals at most, which is what is read off a pump or an odometer.
    pub fn told(&self, entry: &Entry, measure: Measure) -> String {
        let shown = self.shown(entry, measure);
        if shown == entry.text {
            return shown;
        }
        match parse_number(&shown, f64::MIN..=f64::MAX) {
            Ok(value) => print_number_short(value, 2, self.style),
            Err(_) => shown,
        }
    }
}

/// A share whose last digits of arithmetic do not decide how it is rounded.
fn steady(share: Share) -> Share {
    Share::clamped((share.fraction() * 1e9).round() / 1e9)
}
