//! The hardware that is timed: the invented example with three sets of port
//! injectors added, so that six parts are judged at 60 engine speeds and on 101
//! ethanol shares.

use fillwright::answers::hardware::{HardwareAnswer, HardwareAsked, HardwareReading};
use fillwright::document::{BlendForm, Document, Fields, HardwareField, PartForm, PartKind};
use fillwright::hardware::AtShare;
use fillwright::quantity::Share;
use fillwright::quantity::notation::{DecimalMark, Printer};

/// The document, and how it is printed.
pub(crate) fn hardware() -> (Document, Printer) {
    let mut document = Document::demo();
    let car = &mut document.here;
    for flow in ["250", "300", "350"] {
        let fields = Fields::from([
            (HardwareField::Count, "4"),
            (HardwareField::RatedFlow, flow),
            (HardwareField::RatedPressure, "3"),
            (HardwareField::TestDensity, "684"),
            (HardwareField::RailPressure, "4"),
            (HardwareField::DeadTime, "0.95"),
        ]);
        let id = car.next_id();
        let part = PartForm::new(id, PartKind::PortInjectors);
        car.hardware.parts.push(PartForm { fields, ..part });
    }
    // From 2,000 to 7,900 rpm in steps of 100.
    car.hardware.curves[0].table.text.push_str("\n7900, 240, 1.0");
    car.hardware.engine.entry(HardwareField::PortShare).text = "40".into();
    car.hardware.engine.entry(HardwareField::BlendShare).text = "E30".into();
    car.hardware.blend = BlendForm::Typed;
    let printer = document.settings.printer(DecimalMark::Point);
    (document, printer)
}

/// What is asked of those parts, if there are six of them.
pub(crate) fn asked(document: &Document, printer: &Printer) -> Option<HardwareAsked> {
    let asked = HardwareReading::of(document, None, printer).asked?;
    let is_as_said = asked.parts.system.parts().len() == 6 && asked.load.points.len() == 60;
    is_as_said.then_some(asked)
}

/// The shares over which the parts are judged.
pub(crate) fn shares() -> Vec<Share> {
    (0..=100).filter_map(|percent| Share::from_percent(f64::from(percent)).ok()).collect()
}

/// Every part at every speed and share. Returns a number that depends on all of it.
pub(crate) fn sweep(asked: &HardwareAsked, shares: &[Share]) -> f64 {
    let least = |at: &AtShare| at.least().map_or(f64::NAN, |reserve| reserve.low());
    asked.parts.system.over_share(&asked.load, shares).iter().map(least).sum()
}

/// All that a change of one figure sets off: the texts read, and the whole answer.
pub(crate) fn answer(document: &Document, printer: &Printer) -> f64 {
    let answer = HardwareAnswer::of(&HardwareReading::of(document, None, printer));
    let share = answer.and_then(|answer| answer.largest_share.expected);
    share.map_or(f64::NAN, Share::fraction)
}
