//! What every part of a fuel system answers.

use super::operating_point::OperatingPoint;
use super::part_of::PartOf;
use super::part_workings::PartWorkings;
use super::requirement::Requirement;
use super::table::OutsideTable;
use crate::quantity::{Band, MassRate};
use crate::workings::Expression;

/// A part of a fuel system that can be the first to give.
///
/// Flows are those through all parts of its kind together: what the ports share among
/// their sets of injectors is the whole fuel of the ports.
pub trait FuelSystemPart: std::fmt::Debug {
    /// Which part it is.
    fn id(&self) -> PartOf;

    /// The use beyond which nobody should plan, 0 to 1: of the duty, of the injection
    /// window, or of what a pump gives.
    fn limit(&self) -> f64;

    /// The flow at which it comes to a use.
    ///
    /// # Errors
    /// When a pump's table does not reach the pressure at which it would work.
    fn capacity(&self, used: f64, at: &OperatingPoint<'_>) -> Result<Band<MassRate>, OutsideTable>;

    /// The use to which a flow brings it; above 1 it cannot be done.
    ///
    /// # Errors
    /// As [`capacity`](Self::capacity).
    fn used(&self, flow: MassRate, at: &OperatingPoint<'_>) -> Result<Band<f64>, OutsideTable>;

    /// What would be enough, all else as it is: `larger` is the factor by which it has
    /// to grow, `flow` what it is then to give.
    fn enough(&self, larger: f64, flow: MassRate, at: &OperatingPoint<'_>) -> Requirement;

    /// Whether what it gives goes with the speed of the engine; else it is the same at
    /// every speed of equal boost.
    fn goes_with_speed(&self) -> bool {
        true
    }

    /// Whether the pressure across the injectors falls when it gives too little.
    fn holds_pressure(&self) -> bool {
        false
    }

    /// How its use comes about, line by line, and its reserve before the limit as a
    /// formula. `flow` is that of the whole engine, `share` the part of it that runs
    /// through here. Nothing where it has no figure.
    fn derive(
        &self,
        workings: &mut PartWorkings<'_>,
        flow: Expression,
        share: f64,
    ) -> Option<Expression>;
}

/// A part as it is fitted: with the share of the engine's fuel that runs through it.
///
/// Its flows are those of the whole engine, so that what one part supports can be
/// compared with the engine's demand and with that of every other part.
#[derive(Debug)]
pub struct FittedPart<'a> {
    pub(super) part: Box<dyn FuelSystemPart + 'a>,
    pub(super) share: f64,
}

impl FittedPart<'_> {
    /// Which part it is.
    pub fn id(&self) -> PartOf {
        self.part.id()
    }

    /// The use beyond which nobody should plan, 0 to 1.
    pub fn limit(&self) -> f64 {
        self.part.limit()
    }

    /// The fuel of the whole engine at which it comes to a use.
    ///
    /// # Errors
    /// When a pump's table does not reach the pressure at which it would work.
    pub fn capacity(
        &self,
        used: f64,
        at: &OperatingPoint<'_>,
    ) -> Result<Band<MassRate>, OutsideTable> {
        Ok(self.part.capacity(used, at)?.map(|flow| flow / self.share))
    }

    /// The use to which a fuel flow of the whole engine brings it; above 1 it cannot be
    /// done.
    ///
    /// # Errors
    /// As [`capacity`](Self::capacity).
    pub fn used(&self, flow: MassRate, at: &OperatingPoint<'_>) -> Result<Band<f64>, OutsideTable> {
        self.part.used(flow * self.share, at)
    }

    /// What would be enough, all else as it is: `larger` is the factor by which it has
    /// to grow, `flow` what it is then to give, as the fuel of the whole engine.
    pub fn enough(&self, larger: f64, flow: MassRate, at: &OperatingPoint<'_>) -> Requirement {
        self.part.enough(larger, flow * self.share, at)
    }

    /// Whether what it gives goes with the speed of the engine.
    pub(super) fn goes_with_speed(&self) -> bool {
        self.part.goes_with_speed()
    }

    /// Whether the pressure across the injectors falls when it gives too little.
    pub fn holds_pressure(&self) -> bool {
        self.part.holds_pressure()
    }

    /// How its use comes about for a flow of the whole engine, and its reserve before
    /// the limit as a formula; nothing where it has no figure.
    pub fn derive(&self, workings: &mut PartWorkings<'_>, flow: Expression) -> Option<Expression> {
        self.part.derive(workings, flow, self.share)
    }
}
