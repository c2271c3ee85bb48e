//! What is missing in a field, or wrong with it, as a value: `words` says it in the units
//! and the language of whoever reads.

mod curve_table;
mod hardware;
mod small_table;

pub use curve_table::{BadCell, BadRow, CurveTableError};
pub use hardware::HardwareProblem;
pub use small_table::TableError;

use crate::document::MomentError;
use crate::fill::FillError;
use crate::fuel::{AkiError, OxygenError};
use crate::message::{Message, Sentence};
use crate::quantity::notation::{
    FigureTextError, MoneyTextError, NumberError, OctaneTextError, ShareTextError, SignalTextError,
    VolumeTextError,
};
use crate::quantity::{ConsumptionError, MoneyError};
use crate::tank::{SensorError, TubeTestError};
use crate::trip::RouteError;

/// Why a field does not say what it has to.
#[derive(Clone, Debug, PartialEq)]
pub enum FieldProblem {
    /// What the reader of the field says itself.
    Said(Sentence),
    /// The text is no number.
    Number(NumberError),
    /// The text is no share.
    Share(ShareTextError),
    /// The text is no volume.
    Volume(VolumeTextError),
    /// The text is no quantity of its field.
    Figure(FigureTextError),
    /// The text is no octane number.
    Octane(OctaneTextError),
    /// The text is nothing that a sensor shows.
    Signal(SignalTextError),
    /// The text is no money.
    MoneyText(MoneyTextError),
    /// The number is no amount of money.
    Money(MoneyError),
    /// Nothing uses so little or so much.
    Consumption(ConsumptionError),
    /// The text is no date with a time.
    Moment(MomentError),
    /// There cannot be so much oxygen.
    Oxygen(OxygenError),
    /// The fuel cannot have that anti-knock index.
    Aki(AkiError),
    /// The fill makes no sense.
    Fill(FillError),
    /// The route makes no sense.
    Route(RouteError),
    /// The sensor does not tell that.
    Sensor(SensorError),
    /// The test does not tell that.
    TubeTest(TubeTestError),
    /// Something is wrong with the hardware.
    Hardware(Box<HardwareProblem>),
}

impl From<Message> for FieldProblem {
    fn from(message: Message) -> Self {
        Self::Said(message.into())
    }
}

/// Makes a problem of each of these.
macro_rules! from {
    ($($variant:ident: $cause:ty),* $(,)?) => {
        $(impl From<$cause> for FieldProblem {
            fn from(cause: $cause) -> Self {
                Self::$variant(cause)
            }
        })*
    };
}

from! {
    Said: Sentence,
    Number: NumberError,
    Share: ShareTextError,
    Volume: VolumeTextError,
    Figure: FigureTextError,
    Octane: OctaneTextError,
    Signal: SignalTextError,
    MoneyText: MoneyTextError,
    Money: MoneyError,
    Consumption: ConsumptionError,
    Moment: MomentError,
    Oxygen: OxygenError,
    Aki: AkiError,
    Fill: FillError,
    Route: RouteError,
    Sensor: SensorError,
    TubeTest: TubeTestError,
}
