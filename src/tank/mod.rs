//! The tank: what readings of it are worth, and what it then holds.

mod estimate;
mod figure;
mod figures;
mod range_display;
mod sensor;
mod standing;
mod tube_test;
mod usual_doubt;

use serde::{Deserialize, Serialize};
use uom::si::volume::liter;

use crate::message::keys::practice as words;
use crate::quantity::{Band, Volume};
use crate::source::{Citation, Confidence, Source, SourceKind, Sourced};

pub use estimate::{
    Doubt, Estimate, Estimator, Evidence, Pour, ShareReading, ShareReadingKind, Vehicle,
};
pub use figure::Figure;
pub use figures::figures;
pub use range_display::{RANGE_ERROR, RANGE_STEP_L, RangeDisplay, USUAL_RESERVE};
pub(crate) use sensor::sensor_share;
pub use sensor::{
    SENSOR_ERROR, SENSOR_FAULT_HZ, SENSOR_ZERO_HZ, SensorError, SensorScale, share_of_frequency,
    temperature_of_pulse,
};
pub use standing::Tank;
pub use tube_test::{BOUNDARY_ERROR, CONTRACTION, TubeTest, TubeTestError, TubeTestMethod};
pub use usual_doubt::{
    DOUBT_GROWS, HowSure, PETROL_DOUBT, POSSIBLE_IN_PETROL, POSSIBLE_IN_STRONG, STRONG_DOUBT,
    SURE_DOUBT,
};

/// How the level was read.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum LevelReading {
    /// On the dashboard's gauge.
    #[default]
    Gauge,
    /// Counted back from a full tank by the trip computer.
    Counted,
    /// Filled until the nozzle clicked off, just now.
    Brimmed,
}

/// A gauge's error, as a fraction of the tank.
pub const GAUGE_ERROR: Sourced<f64> = Sourced {
    value: 0.05,
    source: Source {
        kind: SourceKind::FromMemory,
        citation: Citation::Words(words::GAUGE_ERROR_SOURCE),
        confidence: Confidence::Weak,
    },
};

/// A trip computer's error, as a fraction of what it counted.
pub const COUNTING_ERROR: Sourced<f64> = Sourced {
    value: 0.06,
    source: Source {
        kind: SourceKind::FromMemory,
        citation: Citation::Words(words::COUNTING_ERROR_SOURCE),
        confidence: Confidence::Weak,
    },
};

/// How far two clicks of the nozzle lie apart, in litres.
pub const CLICK_ERROR_L: Sourced<f64> = Sourced {
    value: 0.5,
    source: Source {
        kind: SourceKind::CommonPractice,
        citation: Citation::Words(words::CLICK_ERROR_L_SOURCE),
        confidence: Confidence::Weak,
    },
};

/// The largest error of a dispenser of accuracy class 0.5, as a fraction of what
/// it shows, from 2 litres upwards.
pub const DISPENSER_ERROR: Sourced<f64> = Sourced {
    value: 0.005,
    source: Source {
        kind: SourceKind::Law,
        citation: Citation::Published(
            "Directive 2014/32/EU, Annex VII (MI-005), Table 2, class 0.5",
        ),
        confidence: Confidence::Checked,
    },
};

impl LevelReading {
    /// The error of this reading, to either side.
    pub fn error(self, level: Volume, capacity: Volume) -> Volume {
        let click = Volume::new::<liter>(CLICK_ERROR_L.value);
        match self {
            Self::Gauge => capacity * GAUGE_ERROR.value,
            Self::Counted => (capacity - level) * COUNTING_ERROR.value + click,
            Self::Brimmed => click,
        }
    }

    /// The level with the error of this reading, inside the tank.
    ///
    /// ```
    /// use fillwright::{quantity::Volume, tank::LevelReading};
    /// use uom::si::volume::liter;
    /// let litres = |value| Volume::new::<liter>(value);
    /// let level = LevelReading::Gauge.band(litres(15.0), litres(60.0), None);
    /// assert!((level.low().get::<liter>() - 12.0).abs() < 1e-9);
    /// assert!((level.high().get::<liter>() - 18.0).abs() < 1e-9);
    /// ```
    pub fn band(
        self,
        level: Volume,
        capacity: Volume,
        known_error: Option<Volume>,
    ) -> Band<Volume> {
        let error = known_error.unwrap_or_else(|| self.error(level, capacity));
        let nothing = Volume::new::<liter>(0.0);
        let low = if level - error > nothing { level - error } else { nothing };
        let high = if level + error < capacity { level + error } else { capacity };
        // A level above the brim is refused where it is typed.
        Band::new(low, level, high).unwrap_or(Band::exact(level))
    }
}
