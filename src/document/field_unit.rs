//! The unit in which a field is typed.

use crate::quantity::notation::{Measure, Printer};

/// The unit of what is typed into a field.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FieldUnit {
    /// None: words, or a bare number.
    Bare,
    /// One that it always has, by its symbol.
    Symbol(&'static str),
    /// The own currency.
    Money,
    /// The one that the person chose for this.
    Measured(Measure),
    /// Those of each line of a table. Bare numbers are in the units in which the table was
    /// begun.
    Lines,
}

pub(super) const PERCENT: FieldUnit = FieldUnit::Symbol("%");
pub(super) const KILOGRAMS: FieldUnit = FieldUnit::Symbol("kg");
pub(super) const MILLILITRES: FieldUnit = FieldUnit::Symbol("mL");
pub(super) const MILLISECONDS: FieldUnit = FieldUnit::Symbol("ms");
pub(super) const VOLUME: FieldUnit = FieldUnit::Measured(Measure::Volume);
pub(super) const LEVEL: FieldUnit = FieldUnit::Measured(Measure::Level);
pub(super) const PRICE: FieldUnit = FieldUnit::Measured(Measure::Price);
pub(super) const OCTANE: FieldUnit = FieldUnit::Measured(Measure::Octane);
pub(super) const DISTANCE: FieldUnit = FieldUnit::Measured(Measure::Distance);
pub(super) const CONSUMPTION: FieldUnit = FieldUnit::Measured(Measure::Consumption);

impl FieldUnit {
    /// Its symbol; empty where there is none to show.
    pub fn symbol(self, printer: &Printer) -> String {
        match self {
            Self::Bare | Self::Lines => String::new(),
            Self::Symbol(symbol) => symbol.to_owned(),
            Self::Money => printer.currency.clone(),
            Self::Measured(Measure::Price) => {
                format!("{}/{}", printer.currency, printer.units.volume().symbol())
            }
            Self::Measured(measure) => printer.unit(measure).to_owned(),
        }
    }
}
