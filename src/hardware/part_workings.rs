//! The workings of a part, as they are put together.

use uom::si::angular_velocity::revolution_per_minute;
use uom::si::mass_density::kilogram_per_cubic_meter;

use super::operating_point::OperatingPoint;
use crate::message::Message;
use crate::source::Source;
use crate::workings::{Expression, Lines, number};

/// The workings of a part at an operating point.
#[derive(Debug)]
pub struct PartWorkings<'a> {
    /// The lines so far.
    pub lines: &'a mut Lines,
    /// What the symbols of the part end in.
    pub suffix: &'a str,
    /// Where the part is looked at.
    pub at: &'a OperatingPoint<'a>,
}

impl PartWorkings<'_> {
    /// Adds a line whose symbol ends in the part's own suffix.
    pub(super) fn add(
        &mut self,
        name: Message,
        symbol: &str,
        formula: &Expression,
        shown: (usize, &'static str),
        sources: &[Source],
    ) -> Expression {
        self.lines.add(name, format!("{symbol}{}", self.suffix), formula, shown, sources)
    }

    /// Density of the fuel.
    pub(super) fn density(&self) -> Expression {
        number("rho", self.at.fuel.density.get::<kilogram_per_cubic_meter>())
    }

    /// Speed of the crankshaft.
    pub(super) fn speed(&self) -> Expression {
        number("N", self.at.speed.get::<revolution_per_minute>())
    }
}
