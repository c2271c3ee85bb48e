//! A car to work on, and its parts.

use fillwright::answers::hardware::{HardwareAnswer, HardwareReading, PartAnswer};
use fillwright::document::{
    BlendForm, CurveForm, Document, Fields, HardwareField, Id, Mark, PartForm, PartKind,
};
use fillwright::hardware::PartOf;
use fillwright::quantity::notation::{DecimalMark, Entry};

/// A curve at the crank whose torque peaks at 3000 rpm and whose power peaks at 6000:
/// 400 N m there are 125.66 kW, 330 N m are 207.35 kW.
pub(crate) const CURVE: &str = "2000 350\n3000 400\n4000 390\n5000 365\n6000 330\n6500 290";

/// A car with that curve on a stated blend, and an engine, but no part.
pub(crate) fn car() -> Document {
    let mut document = Document::empty(Id::new("car").unwrap());
    let hardware = &mut document.here.hardware;
    hardware.curves.push(CurveForm {
        id: 1,
        table: Entry::metric(&format!("rpm torque\n{CURVE}")),
        ..CurveForm::default()
    });
    hardware.target = 1;
    hardware.blend = BlendForm::Typed;
    hardware.engine = Fields::from([
        (HardwareField::SpecificConsumption, "330"),
        (HardwareField::ConsumptionError, "0"),
        (HardwareField::Lambda, "0.80"),
        (HardwareField::Boost, "1.5"),
        (HardwareField::Cylinders, "4"),
        (HardwareField::BlendShare, "E0"),
    ]);
    document
}

pub(crate) fn set(document: &mut Document, slot: HardwareField, text: &str) {
    document.here.hardware.engine.entry(slot).text = text.into();
}

/// Adds a part and gives it the next number.
pub(crate) fn add<const N: usize>(
    document: &mut Document,
    kind: PartKind,
    marks: &[Mark],
    fields: [(HardwareField, &str); N],
) -> u32 {
    let id = document.here.next_id() + 10;
    let mut part = PartForm::new(id, kind);
    part.marks.extend(marks);
    part.fields = Fields::from(fields);
    document.here.hardware.parts.push(part);
    id
}

/// Four port injectors of 1000 cc/min n-heptane at 3 bar, on 4 bar.
pub(crate) fn port(document: &mut Document) -> u32 {
    let fields = [
        (HardwareField::Count, "4"),
        (HardwareField::RatedFlow, "1000"),
        (HardwareField::RatedPressure, "3"),
        (HardwareField::TestDensity, "683.8"),
        (HardwareField::RailPressure, "4"),
        (HardwareField::DeadTime, "1"),
    ];
    add(document, PartKind::PortInjectors, &[], fields)
}

/// Direct injectors and a high-pressure pump, each with a little to spare on petrol.
pub(crate) fn high_pressure(document: &mut Document) -> [u32; 2] {
    let injectors = [
        (HardwareField::RatedMassFlow, "15"),
        (HardwareField::RatedPressure, "100"),
        (HardwareField::TestDensity, "745"),
        (HardwareField::RailPressure, "200"),
        (HardwareField::Window, "240"),
    ];
    let pump = [
        (HardwareField::Bore, "8"),
        (HardwareField::Lift, "4"),
        (HardwareField::Lobes, "4"),
        (HardwareField::RailPressure, "200"),
    ];
    [
        add(document, PartKind::DirectInjectors, &[Mark::ByMass], injectors),
        add(document, PartKind::PlungerPump, &[], pump),
    ]
}

/// A supply with one pump, whose table is that of the worked example.
pub(crate) fn supply(document: &mut Document) -> [u32; 2] {
    let table = "12 13.5\n3 285 340\n4 255 310\n5 225 280\n6 195 250\n7 165 220";
    let pump = [(HardwareField::FlowTable, table), (HardwareField::Voltage, "13")];
    let line = [(HardwareField::RailPressure, "4"), (HardwareField::OtherLosses, "0.15")];
    [add(document, PartKind::SupplyPump, &[], pump), add(document, PartKind::SupplyLine, &[], line)]
}

pub(crate) fn read(document: &Document) -> HardwareReading {
    let printer = document.settings.printer(DecimalMark::Point);
    HardwareReading::of(document, None, &printer)
}

/// The answer, where nothing is wrong with the texts.
pub(crate) fn answer(document: &Document) -> HardwareAnswer {
    let reading = read(document);
    assert_eq!(reading.field_errors, vec![]);
    HardwareAnswer::of(&reading).unwrap()
}

pub(crate) fn part(answer: &HardwareAnswer, part: PartOf) -> &PartAnswer {
    answer.parts.iter().find(|it| it.part == part).unwrap()
}

/// The least reserve of a part, as expected.
pub(crate) fn reserve(answer: &HardwareAnswer, of: PartOf) -> f64 {
    part(answer, of).over_speed.tightest.unwrap().reserve.expected()
}
