//! The hardware of the invented example. Every figure of it is made up.

use crate::document::file::CarFile;
use crate::document::hardware::{
    CurveForm, Fields, HardwareForm, Mark, MeasuredAt, PartForm, PartKind,
};
use crate::document::hardware_field::HardwareField;
use crate::message::Message;
use crate::message::keys::demo as words;
use crate::quantity::notation::Entry;

const ON_MID_BLEND: &str = "rpm, torque Nm, boost bar
2000, 262, 0.9
2500, 338, 1.3
3000, 392, 1.45
3500, 396, 1.45
4000, 392, 1.45
4500, 384, 1.4
5000, 372, 1.35
5500, 356, 1.3
6000, 334, 1.25
6500, 298, 1.15";

const ON_PETROL: &str = "rpm, power kW
2000, 45
2500, 68
3000, 92
3500, 109
4000, 122
4500, 134
5000, 143
5500, 149
6000, 148
6500, 136";

const PUMP_TABLE: &str = "V 12 13.5
3 150 185
4 138 172
5 126 158
6 113 145
7 100 131";

impl HardwareForm {
    /// The hardware of the example, whose calibrations have these numbers.
    pub(super) fn invented(
        car: &mut CarFile,
        petrol: u32,
        mid_blend: u32,
        say: fn(Message) -> &'static str,
    ) -> Self {
        let table = Entry::metric;
        let target = car.next_id();
        let before = car.next_id();
        let curves = vec![
            CurveForm {
                id: target,
                name: say(words::ON_MID_BLEND).into(),
                table: table(ON_MID_BLEND),
                calibration: Some(mid_blend),
                blend: "E30".into(),
                ..CurveForm::default()
            },
            CurveForm {
                id: before,
                name: say(words::CURVE_ON_PETROL).into(),
                table: table(ON_PETROL),
                place: MeasuredAt::Wheel,
                calibration: Some(petrol),
                blend: "E10".into(),
                ..CurveForm::default()
            },
        ];
        let parts = parts(car, say);
        Self {
            curves,
            target,
            compared_with: Some(before),
            engine: Fields::from([
                (HardwareField::Displacement, "1.9"),
                (HardwareField::Cylinders, "4"),
                (HardwareField::SpecificConsumption, "325"),
                (HardwareField::Lambda, "0.84"),
                (HardwareField::VolumetricEfficiency, "93"),
                (HardwareField::ManifoldTemperature, "42"),
                (HardwareField::DrivelineLoss, "12"),
                (HardwareField::DrivelineLossRange, "10-14"),
            ]),
            parts,
            ..Self::default()
        }
    }
}

/// The parts of the example's fuel system, and the limits that people set.
fn parts(car: &mut CarFile, say: fn(Message) -> &'static str) -> Vec<PartForm> {
    let mut part = |kind, name: &str, marks: &[Mark], fields| PartForm {
        name: name.into(),
        marks: marks.iter().copied().collect(),
        fields,
        ..PartForm::new(car.next_id(), kind)
    };
    vec![
        part(
            PartKind::DirectInjectors,
            "",
            &[Mark::ByMass],
            Fields::from([
                (HardwareField::RatedMassFlow, "15.6"),
                (HardwareField::RatedPressure, "100"),
                (HardwareField::TestDensity, "745"),
                (HardwareField::RailPressure, "200"),
                (HardwareField::Window, "240"),
            ]),
        ),
        part(
            PartKind::PlungerPump,
            "",
            &[],
            Fields::from([
                (HardwareField::Bore, "9"),
                (HardwareField::Lift, "4.2"),
                (HardwareField::Lobes, "4"),
                (HardwareField::RailPressure, "200"),
            ]),
        ),
        part(
            PartKind::SupplyPump,
            say(words::TANK_PUMP),
            &[],
            Fields::from([(HardwareField::FlowTable, PUMP_TABLE), (HardwareField::Voltage, "13")]),
        ),
        part(
            PartKind::SupplyLine,
            "",
            &[Mark::FixedRail],
            Fields::from([
                (HardwareField::RailPressure, "5"),
                (HardwareField::LineLength, "4"),
                (HardwareField::LineBore, "8"),
                (HardwareField::OtherLosses, "0.15"),
            ]),
        ),
        part(
            PartKind::FluidNozzle,
            "",
            &[],
            Fields::from([
                (HardwareField::RatedFlow, "250"),
                (HardwareField::RatedPressure, "7"),
                (HardwareField::FluidPressure, "10"),
                (HardwareField::Strength, "50"),
            ]),
        ),
        part(
            PartKind::PowerLimit,
            say(words::ENGINE_BUILDER),
            &[],
            Fields::from([(HardwareField::LimitPower, "230")]),
        ),
        part(
            PartKind::TorqueLimit,
            say(words::GEARBOX),
            &[],
            Fields::from([(HardwareField::LimitTorque, "385"), (HardwareField::ToSpeed, "4000")]),
        ),
        part(
            PartKind::AirLimit,
            say(words::COMPRESSOR),
            &[],
            Fields::from([(HardwareField::LimitAir, "0.26")]),
        ),
    ]
}
