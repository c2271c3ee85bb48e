//! What is missing in a field of the hardware, or wrong with it, as a value.

use super::{BadRow, CurveTableError, FieldProblem, TableError};
use crate::hardware::{FluidError, MixError, NozzleError};
use crate::power::{AmbientAirError, DrivelineLossError, PowerCurveError};

/// Why a field of the hardware does not say what it has to.
#[derive(Clone, Debug, PartialEq)]
pub enum HardwareProblem {
    /// Nothing is so cold, so thin or so humid.
    Air(AmbientAirError),
    /// The points make no curve.
    Curve(PowerCurveError),
    /// So much is not lost.
    Driveline(DrivelineLossError),
    /// There is no such fluid.
    Fluid(FluidError),
    /// Nothing is rated like that.
    Nozzle(NozzleError),
    /// It cannot be mixed.
    Mix(MixError),
    /// The text is no small table.
    Table(TableError),
    /// The text is no table of a curve.
    CurveTable(CurveTableError),
    /// A row of the table cannot be read.
    Row(BadRow),
}

/// Makes a problem of each of these.
macro_rules! from {
    ($($variant:ident: $cause:ty),* $(,)?) => {
        $(impl From<$cause> for FieldProblem {
            fn from(cause: $cause) -> Self {
                Self::Hardware(Box::new(HardwareProblem::$variant(cause)))
            }
        })*
    };
}

from! {
    Air: AmbientAirError,
    Curve: PowerCurveError,
    Driveline: DrivelineLossError,
    Fluid: FluidError,
    Nozzle: NozzleError,
    Mix: MixError,
    Table: TableError,
    CurveTable: CurveTableError,
    Row: BadRow,
}
