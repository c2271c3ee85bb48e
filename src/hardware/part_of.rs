//! Which part of a fuel system is meant.

/// A part of a [`FuelSystem`](super::FuelSystem) that can be the first to give.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum PartOf {
    /// The set of port injectors with this place in the system.
    Port(usize),
    /// The direct injectors.
    Direct,
    /// The high-pressure pumps together.
    Plungers,
    /// The low-pressure supply.
    Supply,
}
