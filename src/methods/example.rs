//! The example that the formulas are shown with: the invented car, with what else
//! its answers need to hold every formula once.

use uom::si::pressure::kilopascal;
use uom::si::thermodynamic_temperature::degree_celsius;

use crate::answers::fill::{FillAnswer, interpret};
use crate::answers::hardware::{HardwareAnswer, HardwareReading};
use crate::answers::tank::{History, LogReading};
use crate::document::{BlendForm, Document, Fields, HardwareField, MeasuredAt, PartForm, PartKind};
use crate::power::{AirCorrection, AmbientAir};
use crate::quantity::notation::{DecimalMark, Entry, Printer};
use crate::quantity::{AbsolutePressure, Pressure, ThermodynamicTemperature};
use crate::workings::Working;

/// The workings of the example, by what answers them.
pub(super) struct Example {
    /// The fill as it is, then one that has to be burned down for.
    pub(super) fill: Vec<Working>,
    pub(super) tank: Vec<Working>,
    /// The fuel system with both kinds of injectors, on a curve from the rollers.
    pub(super) hardware: Vec<Working>,
    /// The corrections of a warm day.
    pub(super) corrections: Vec<Working>,
}

impl Example {
    pub(super) fn new() -> Self {
        // No formula shows a name.
        let document = Document::invented(|_| "");
        let printer = document.settings.printer(DecimalMark::Point);
        let course = LogReading::of(&document.here, &printer);
        let history = History::of(&course);
        let mut fill = fill(&document, &history, &printer);
        fill.extend(fill_of_too_full(document.clone(), &history, &printer));
        Self {
            fill,
            tank: history.workings(&course),
            hardware: hardware(document, &printer),
            corrections: corrections(),
        }
    }
}

fn fill(document: &Document, history: &History, printer: &Printer) -> Vec<Working> {
    let reading = interpret(document, history.estimator.as_ref(), printer);
    reading.asked.map(|asked| FillAnswer::of(asked).workings()).unwrap_or_default()
}

/// The same with a blend that the tank is too full for.
fn fill_of_too_full(
    mut document: Document,
    history: &History,
    printer: &Printer,
) -> Option<Working> {
    document.here.fill.contents.level.level = Entry::metric("3/4");
    document.here.fill.aim_share = "E60".into();
    fill(&document, history, printer).into_iter().find(|line| line.symbol == "X")
}

fn hardware(mut document: Document, printer: &Printer) -> Vec<Working> {
    let id = document.here.next_id();
    let hardware = &mut document.here.hardware;
    if let Some(curve) = hardware.curves.iter_mut().find(|it| it.id == hardware.target) {
        curve.place = MeasuredAt::Wheel;
    }
    let fields = Fields::from([
        (HardwareField::Count, "4"),
        (HardwareField::RatedFlow, "300"),
        (HardwareField::RatedPressure, "3"),
        (HardwareField::TestDensity, "684"),
        (HardwareField::RailPressure, "4"),
        (HardwareField::DeadTime, "0.95"),
    ]);
    let part = PartForm::new(id, PartKind::PortInjectors);
    hardware.parts.insert(0, PartForm { fields, ..part });
    hardware.engine.entry(HardwareField::PortShare).text = "40".into();
    hardware.engine.entry(HardwareField::BlendShare).text = "E30".into();
    hardware.blend = BlendForm::Typed;
    let reading = HardwareReading::of(&document, None, printer);
    HardwareAnswer::of(&reading).map(|answer| answer.workings(&reading)).unwrap_or_default()
}

/// 35 degrees Celsius, 98 kPa, 40 % humidity.
fn corrections() -> Vec<Working> {
    let air = AmbientAir::new(
        ThermodynamicTemperature::new::<degree_celsius>(35.0),
        AbsolutePressure::new(Pressure::new::<kilopascal>(98.0)),
        0.4,
    );
    let Ok(air) = air else { return Vec::new() };
    AirCorrection::ALL.into_iter().filter_map(|it| it.working(&air)).collect()
}
