//! Invented drivers, cars and pumps. What they do differs on purpose from what the
//! filters assume: pump contents are not normal, the gauge is rounded to eighths and
//! now and then misread, and some fills are not logged.

use fillwright::fuel::Extras;
use fillwright::quantity::Consumption;
use fillwright::quantity::notation::KILOMETRE;
use fillwright::quantity::{Band, Share, Volume};
use fillwright::tank::{Evidence, LevelReading, Pour, ShareReading, ShareReadingKind, Vehicle};
use uom::si::volume::liter;

use super::chance::Chance;

pub(crate) const CAPACITY: f64 = 60.0;
/// What the driver believes that the car uses, in litres of E0 per 100 km.
pub(crate) const STATED: f64 = 8.0;
/// What a litre of ethanol lacks in energy, of the heating values in MJ/L that
/// handbooks give: 1 - 21.2 / 32.
pub(crate) const ETHANOL_LACKS: f64 = 1.0 - 21.2 / 32.0;
pub(crate) const EIGHTH: f64 = CAPACITY / 8.0;
const STOPS: usize = 30;
const DAYS_BETWEEN: f64 = 12.0;

/// What the driver has aboard and what goes wrong.
#[derive(Clone, Copy)]
pub(crate) struct Scenario {
    pub(crate) sensor: bool,
    pub(crate) tube_every_fifth: bool,
    /// How often a fill is not logged.
    pub(crate) forgets: f64,
    /// How many times wider than typed the strong fuel spreads.
    pub(crate) spread: f64,
}

pub(crate) const GAUGE_ONLY: Scenario =
    Scenario { sensor: false, tube_every_fifth: false, forgets: 0.0, spread: 1.0 };
pub(crate) const SENSOR: Scenario = Scenario { sensor: true, ..GAUGE_ONLY };
pub(crate) const SENSOR_AND_TUBE: Scenario = Scenario { tube_every_fifth: true, ..SENSOR };

/// A logged stop: what was read and poured, and what then really was in the tank.
pub(crate) struct Stop {
    /// Driven since the last logged stop.
    pub(crate) kilometres: f64,
    /// What the gauge showed, in litres.
    pub(crate) gauge: f64,
    /// Litres by the dispenser.
    pub(crate) weak: f64,
    pub(crate) strong: f64,
    /// What the strong fuel holds at this time of year, as anybody can look it up.
    pub(crate) season: f64,
    pub(crate) clicked: bool,
    pub(crate) sensor: Option<f64>,
    pub(crate) tube: Option<f64>,
    pub(crate) true_level: f64,
    pub(crate) true_share: f64,
}

/// The spread of one reading of each instrument, as the driver states it.
pub(crate) const SENSOR_SD: f64 = 0.02;
pub(crate) const TUBE_STEP: f64 = 0.02;

pub(crate) fn tube_sd() -> f64 {
    (0.02_f64.powi(2) + TUBE_STEP.powi(2) / 12.0).sqrt()
}

fn rounded(value: f64, step: f64) -> f64 {
    (value / step).round() * step
}

/// What a weak fuel really holds.
pub(crate) fn weak_content(chance: &mut Chance) -> f64 {
    if chance.happens(0.7) { 0.095 + chance.normal(0.003) } else { chance.between(0.045, 0.09) }
}

/// The life of one driver.
pub(crate) fn life(seed: u64, scenario: &Scenario) -> Vec<Stop> {
    let mut chance = Chance::new(seed);
    let gain = 1.0 + chance.normal(0.07);
    let gauge_bias = chance.normal(1.5);
    let station = chance.normal(0.025 * scenario.spread);
    let sensor_bias = chance.normal(0.015);
    let first_day = chance.between(0.0, 365.0);
    let likes_strong = chance.between(0.3, 0.95);
    let mut level = chance.between(25.0, 55.0);
    let mut share = chance.between(0.1, 0.7);
    let mut kilometres = 0.0;
    let mut stops = Vec::with_capacity(STOPS);
    let mut fills = 0.0;
    while stops.len() < STOPS {
        fills += 1.0;
        let season = 0.77
            + 0.055 * ((first_day + fills * DAYS_BETWEEN) / 365.0 * std::f64::consts::TAU).sin();
        let burned = (level - chance.between(4.0, 22.0)).max(1.0).min(level);
        let leg = gain * (1.0 + chance.normal(0.06)).max(0.5);
        kilometres += burned * (1.0 - ETHANOL_LACKS * share) / (STATED / 100.0 * leg);
        level -= burned;

        let shown = rounded(level + gauge_bias + chance.normal(1.2), EIGHTH).clamp(0.0, CAPACITY);
        let marks_off = if chance.happens(0.5) { 1.0 } else { -1.0 };
        let misread = (shown + marks_off * EIGHTH).clamp(0.0, CAPACITY);
        let gauge = if chance.happens(0.02) { misread } else { shown };

        let clicked = chance.happens(0.55);
        let to = if clicked {
            CAPACITY + chance.normal(0.5)
        } else {
            level + (CAPACITY - 2.0 - level) * chance.between(0.3, 0.9)
        };
        let part = (likes_strong + chance.normal(0.5)).clamp(0.0, 1.0);
        let (weak, strong) = ((to - level) * (1.0 - part), (to - level) * part);
        let weak_share = weak_content(&mut chance);
        let strong_share =
            (season + station + chance.normal(0.015 * scenario.spread)).clamp(0.0, 1.0);
        let total = level + weak + strong;
        share = (level * share + weak * weak_share + strong * strong_share) / total;
        level = total;

        let mut dispenser = || 1.0 + chance.between(-0.005, 0.005);
        let (weak, strong) = (weak * dispenser(), strong * dispenser());
        let sensor_read = (share + sensor_bias + chance.normal(SENSOR_SD)).clamp(0.0, 1.0);
        let tube_read = rounded(share + chance.normal(0.02), TUBE_STEP).clamp(0.0, 1.0);
        // Drawn in every scenario, so that all of them meet the same drivers.
        if chance.happens(scenario.forgets) {
            continue;
        }
        let fifth = stops.len() % 5 == 4;
        stops.push(Stop {
            kilometres,
            gauge,
            weak,
            strong,
            season,
            clicked,
            sensor: scenario.sensor.then_some(sensor_read),
            tube: (scenario.tube_every_fifth && fifth).then_some(tube_read),
            // Above the click counts as full.
            true_level: level.min(CAPACITY),
            true_share: share,
        });
        kilometres = 0.0;
    }
    stops
}

pub(crate) fn litres(value: f64) -> Volume {
    Volume::new::<liter>(value)
}

pub(crate) fn share(fraction: f64) -> Share {
    Share::new(fraction.clamp(0.0, 1.0)).unwrap()
}

pub(crate) fn vehicle() -> Vehicle {
    Vehicle {
        capacity: litres(CAPACITY),
        consumption: Some(Consumption::from_litres_per_100_km(STATED).unwrap()),
        reference: Share::ZERO,
    }
}

impl Stop {
    /// The evidence that the driver logs, in order.
    pub(crate) fn evidence(&self) -> Vec<Evidence> {
        let pour = |volume, low, expected, high| Pour {
            volume: litres(volume),
            share: Band::new(share(low), share(expected), share(high)).unwrap(),
            extras: Extras::default(),
            ron: None,
            mon: None,
        };
        let reading = |read, sd, kind| {
            Evidence::Share(ShareReading { share: share(read), standard_error: share(sd), kind })
        };
        let mut evidence = vec![
            Evidence::Drive { distance: KILOMETRE.quantity(self.kilometres) },
            Evidence::Level {
                level: litres(self.gauge),
                reading: LevelReading::Gauge,
                error: None,
            },
            Evidence::Fill {
                pours: vec![
                    pour(self.weak, 0.045, 0.095, 0.10),
                    pour(self.strong, self.season - 0.07, self.season, self.season + 0.07),
                ],
                clicked: self.clicked,
            },
        ];
        evidence.extend(self.sensor.map(|read| reading(read, SENSOR_SD, ShareReadingKind::Sensor)));
        evidence.extend(self.tube.map(|read| reading(read, tube_sd(), ShareReadingKind::TubeTest)));
        evidence
    }
}
