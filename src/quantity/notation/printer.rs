//! Quantities as the person wants to read them.

use super::distance::{parse_consumption, parse_distance};
use super::entry::Entry;
pub(super) use super::measure::Measure;
use crate::quantity::notation::hardware::parse_lambda;
use crate::quantity::notation::{
    Choosable, Consumption, Decimals, DistanceUnit, MixtureScale, OctaneFigure, Rate, Style, Units,
    VolumeField, hardware, outwards, parse_number, parse_octane, parse_price, parse_volume,
    print_anew, print_consumption, print_distance, print_money, print_number, print_number_short,
    print_percent, print_price, print_share, print_volume, round_down, round_up,
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
        print_volume(volume, self.units.volume(), 1, self.style)
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
        format!("{} to {}", self.edge(low), self.edge(high))
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
        format!("{low} to {high}")
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
        if low == high { format!("{low}{THIN}%") } else { format!("{low} to {high}{THIN}%") }
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
        format!("{low} to {high}{THIN}{}", unit.symbol())
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
        match unit {
            DistanceUnit::Kilometre => (format!("100{THIN}km"), 100.0),
            DistanceUnit::Mile => ("mile".into(), unit.kilometres()),
        }
    }

    /// A distance, whole.
    pub fn distance(&self, distance: Length) -> String {
        print_distance(distance, self.units.distance(), 0, self.style)
    }

    /// A temperature, whole degrees.
    pub fn temperature(&self, temperature: ThermodynamicTemperature) -> String {
        hardware::TEMPERATURE.print(temperature, self.units, self.style)
    }

    /// A consumption.
    pub fn consumption(&self, consumption: Consumption) -> String {
        print_consumption(consumption, self.units.consumption(), 1, self.style)
    }

    /// What to show in an entry's field: the text as typed, or, when it was typed
    /// in other units and means something else in these, its value in these.
    /// A text that cannot be read is shown as it is.
    pub fn shown(&self, entry: &Entry, measure: Measure) -> String {
        if entry.typed_in == self.units {
            return entry.text.clone();
        }
        let (then, now) = (entry.typed_in, self.units);
        let text = entry.text.as_str();
        let reprinted = match measure {
            Measure::Volume => {
                let read = |units| parse_volume(text, &VolumeField::anywhere(units)).ok();
                anew(read(then), read(now))
                    .map(|meant| print_anew(now.volume().value_of(meant), 2, self.style))
            }
            Measure::Level => {
                let field =
                    |units| VolumeField { part_is_usual: true, ..VolumeField::anywhere(units) };
                let read = |units| parse_volume(text, &field(units)).ok();
                anew(read(then), read(now)).map(|meant| {
                    let value = now.volume().value_of(meant);
                    let number = print_anew(value, 2, self.style);
                    // Without its unit this could be a part of the tank.
                    let needs_unit = 0.0 < value && value < 1.0;
                    if needs_unit {
                        format!("{number}{THIN}{}", now.volume().symbol())
                    } else {
                        number
                    }
                })
            }
            Measure::Price => {
                let read = |units| parse_price(text, units).ok();
                anew(read(then), read(now)).map(|meant| {
                    let amount = meant.value.of(now.volume().quantity(1.0)).amount();
                    let number = print_anew(amount, 2, self.style);
                    // The currency that was typed stays beside it.
                    match meant.currency {
                        Some(currency) => format!("{number}{THIN}{currency}"),
                        None => number,
                    }
                })
            }
            Measure::Consumption => {
                let read = |units| parse_consumption(text, units).ok();
                anew(read(then), read(now))
                    .map(|meant| print_anew(now.consumption().value_of(meant), 2, self.style))
            }
            Measure::Distance => {
                let read = |unit| parse_distance(text, unit).ok();
                anew(read(then.distance()), read(now.distance()))
                    .map(|meant| print_anew(now.distance().value_of(meant), 1, self.style))
            }
            Measure::Pressure => hardware::PRESSURE.reprint(text, then, now, self.style),
            Measure::AirPressure => hardware::AIR_PRESSURE.reprint(text, then, now, self.style),
            Measure::Boost => hardware::BOOST.reprint(text, then, now, self.style),
            Measure::Power => hardware::POWER.reprint(text, then, now, self.style),
            Measure::Torque => hardware::TORQUE.reprint(text, then, now, self.style),
            Measure::EngineSpeed => hardware::ENGINE_SPEED.reprint(text, then, now, self.style),
            Measure::InjectorFlow => hardware::INJECTOR_FLOW.reprint(text, then, now, self.style),
            Measure::PumpFlow => hardware::PUMP_FLOW.reprint(text, then, now, self.style),
            Measure::MassFlow => hardware::MASS_FLOW.reprint(text, then, now, self.style),
            Measure::AirFlow => hardware::AIR_FLOW.reprint(text, then, now, self.style),
            Measure::Density => hardware::DENSITY.reprint(text, then, now, self.style),
            Measure::Length => hardware::LENGTH.reprint(text, then, now, self.style),
            Measure::LineLength => hardware::LINE_LENGTH.reprint(text, then, now, self.style),
            Measure::Time => hardware::TIME.reprint(text, then, now, self.style),
            Measure::Voltage => hardware::VOLTAGE.reprint(text, then, now, self.style),
            Measure::Temperature => hardware::TEMPERATURE.reprint(text, then, now, self.style),
            Measure::Angle => hardware::ANGLE.reprint(text, then, now, self.style),
            Measure::BulkModulus => hardware::BULK_MODULUS.reprint(text, then, now, self.style),
            Measure::EngineVolume => hardware::LITRES.reprint(text, then, now, self.style),
            Measure::Octane => octane_anew(text, then, now),
            Measure::Mixture => {
                mixture_anew(text, then, now).map(|number| print_anew(number, 2, self.style))
            }
            Measure::SpecificConsumption => {
                hardware::SPECIFIC_CONSUMPTION.reprint(text, then, now, self.style)
            }
        };
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

/// What was meant, when it has to be printed anew: not where the text cannot be
/// read (a fraction of the tank, a slip), nor where it means the same in the
/// units of today.
fn anew<T: PartialEq>(meant: Option<T>, as_read_today: Option<T>) -> Option<T> {
    match (meant, as_read_today) {
        (Some(meant), Some(today)) if meant == today => None,
        (meant, _) => meant,
    }
}

/// A bare number for lambda as a gauge set to petrol shows it, or the other way.
fn mixture_anew(text: &str, then: Units, now: Units) -> Option<f64> {
    let one = |units: Units| match units.mixture() {
        MixtureScale::AfrOfPetrol => hardware::PETROL_GAUGE_RATIO,
        MixtureScale::Lambda | MixtureScale::AfrOfTheBlend => 1.0,
    };
    let differs = one(then).total_cmp(&one(now)).is_ne() && !text.contains(char::is_alphabetic);
    parse_lambda(text, then).ok().filter(|_| differs).map(|lambda| lambda * one(now))
}

/// An octane number under another scale: the same number with the scale that it is
/// on, as none turns into the other without knowing the fuel.
fn octane_anew(text: &str, then: Units, now: Units) -> Option<String> {
    let bare = matches!(parse_octane(text), Ok(OctaneFigure::Unmarked(_)));
    let symbol = then.choice(Choosable::Octane).symbol;
    (bare && then.octane() != now.octane()).then(|| format!("{}{THIN}{symbol}", text.trim()))
}
