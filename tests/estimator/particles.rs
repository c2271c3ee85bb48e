//! A bootstrap particle filter: slow and drawn by chance, but free of linearisation
//! and of normal distributions. It knows the true spreads, so it shows how well one
//! could do at best.

use super::chance::Chance;
use super::truth::{CAPACITY, EIGHTH, ETHANOL_LACKS, SENSOR_SD, STATED, Stop, tube_sd};

const PARTICLES: usize = 4000;
const GAUGE_NOISE: f64 = 1.2;

/// One life that the car may have had.
#[derive(Clone, Copy)]
struct Particle {
    level: f64,
    share: f64,
    gain: f64,
    gauge_bias: f64,
    station: f64,
    sensor_bias: f64,
}

pub(crate) struct Particles {
    all: Vec<Particle>,
    chance: Chance,
}

fn density(residual: f64, sd: f64) -> f64 {
    (-0.5 * (residual / sd).powi(2)).exp()
}

/// The triangle that the driver typed for the weak fuel, by its inverse.
fn typed_weak(chance: &mut Chance) -> f64 {
    let part = chance.unit();
    let (low, expected, high) = (0.045, 0.095, 0.10);
    let below = (expected - low) / (high - low);
    if part < below {
        low + (part * (high - low) * (expected - low)).sqrt()
    } else {
        high - ((1.0 - part) * (high - low) * (high - expected)).sqrt()
    }
}

impl Particles {
    pub(crate) fn new(seed: u64) -> Self {
        let mut chance = Chance::new(seed);
        let all = (0..PARTICLES)
            .map(|_| Particle {
                level: chance.between(0.0, CAPACITY),
                share: chance.unit(),
                gain: 1.0 + chance.normal(0.07),
                gauge_bias: chance.normal(1.5),
                station: chance.normal(0.025),
                sensor_bias: chance.normal(0.015),
            })
            .collect();
        Self { all, chance }
    }

    /// Draws anew by weight, evenly spaced, and shakes what does not move by
    /// itself, or copies of one particle would be all that is left.
    fn resample(&mut self, weight: impl Fn(&Particle) -> f64) {
        let weights: Vec<f64> = self.all.iter().map(weight).collect();
        let total: f64 = weights.iter().sum();
        if total <= 0.0 {
            return;
        }
        let step = total / f64::from(u32::try_from(PARTICLES).unwrap());
        let mut at = step * self.chance.unit();
        let mut sum = 0.0;
        let mut drawn = Vec::with_capacity(PARTICLES);
        for (particle, weight) in self.all.iter().zip(weights) {
            sum += weight;
            while at < sum && drawn.len() < PARTICLES {
                drawn.push(*particle);
                at += step;
            }
        }
        for particle in &mut drawn {
            particle.gain += self.chance.normal(0.004);
            particle.gauge_bias += self.chance.normal(0.08);
            particle.station += self.chance.normal(0.0015);
            particle.sensor_bias += self.chance.normal(0.001);
        }
        self.all = drawn;
    }

    pub(crate) fn take(&mut self, stop: &Stop) {
        for particle in &mut self.all {
            let energy = 1.0 - ETHANOL_LACKS * particle.share;
            let leg = particle.gain * (1.0 + self.chance.normal(0.06));
            particle.level -= STATED / 100.0 * stop.kilometres * leg / energy;
            particle.level = particle.level.max(0.0);
        }
        // The gauge lies within half a mark, or was misread by one mark.
        self.resample(|particle| {
            let near = |mark: f64| {
                let residual = mark - particle.level - particle.gauge_bias;
                [-3.0, -1.0, 1.0, 3.0]
                    .map(|part| density(residual + part * EIGHTH / 8.0, GAUGE_NOISE))
                    .iter()
                    .sum::<f64>()
            };
            0.98 * near(stop.gauge)
                + 0.01 * (near(stop.gauge - EIGHTH) + near(stop.gauge + EIGHTH))
                + 1e-9
        });
        let poured = stop.weak + stop.strong;
        if stop.clicked {
            self.resample(|particle| density(CAPACITY - poured - particle.level, 0.5) + 1e-12);
        } else {
            self.resample(|particle| {
                density((particle.level + poured - CAPACITY).max(0.0), 0.5) + 1e-12
            });
        }
        for particle in &mut self.all {
            let weak = typed_weak(&mut self.chance);
            let strong = stop.season + particle.station + self.chance.normal(0.015);
            let total = particle.level + poured;
            if total > 0.0 {
                particle.share =
                    (particle.level * particle.share + stop.weak * weak + stop.strong * strong)
                        / total;
            }
            particle.level = total.min(CAPACITY);
        }
        if let Some(read) = stop.sensor {
            self.resample(|particle| {
                density(read - particle.share - particle.sensor_bias, SENSOR_SD) + 1e-12
            });
        }
        if let Some(read) = stop.tube {
            self.resample(|particle| density(read - particle.share, tube_sd()) + 1e-12);
        }
    }

    pub(crate) fn share(&self) -> f64 {
        let sum: f64 = self.all.iter().map(|particle| particle.share).sum();
        sum / f64::from(u32::try_from(PARTICLES).unwrap())
    }
}
