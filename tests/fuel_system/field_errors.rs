//! What is missing or wrong is said beside its field, and nothing is guessed.

use fillwright::answers::hardware::HardwareAnswer;
use fillwright::document::{
    BlendForm, Document, Field, HardwareField, Id, Mark, PartForm, PartKind,
};

use super::support::{add, answer, car, high_pressure, port, read, set, supply};

fn fields(document: &Document) -> Vec<Field> {
    read(document).field_errors.into_iter().map(|it| it.field).collect()
}

#[test]
fn an_empty_workshop_lacks_nothing() {
    let document = Document::empty(Id::new("car").unwrap());
    let reading = read(&document);
    assert_eq!(reading.field_errors, vec![]);
    assert_eq!(reading.asked, None);
}

#[test]
fn every_part_says_what_it_needs() {
    use PartKind::{
        AirLimit, DirectInjectors, FluidNozzle, PlungerPump, PortInjectors, PowerLimit, SupplyLine,
        SupplyPump, TorqueLimit,
    };
    let needs: [(PartKind, &[HardwareField]); 9] = [
        (
            PortInjectors,
            &[
                HardwareField::Count,
                HardwareField::RatedFlow,
                HardwareField::RatedPressure,
                HardwareField::TestDensity,
                HardwareField::RailPressure,
                HardwareField::DeadTime,
            ],
        ),
        (
            DirectInjectors,
            &[
                HardwareField::RatedFlow,
                HardwareField::RatedPressure,
                HardwareField::TestDensity,
                HardwareField::RailPressure,
            ],
        ),
        (
            PlungerPump,
            &[
                HardwareField::Bore,
                HardwareField::Lift,
                HardwareField::Lobes,
                HardwareField::RailPressure,
            ],
        ),
        (SupplyPump, &[HardwareField::FlowTable]),
        (SupplyLine, &[HardwareField::RailPressure]),
        (
            FluidNozzle,
            &[
                HardwareField::RatedFlow,
                HardwareField::RatedPressure,
                HardwareField::FluidPressure,
                HardwareField::Strength,
            ],
        ),
        (PowerLimit, &[HardwareField::LimitPower]),
        (TorqueLimit, &[HardwareField::LimitTorque]),
        (AirLimit, &[HardwareField::LimitAir]),
    ];
    for (kind, slots) in needs {
        let mut document = car();
        document.here.hardware.parts.push(PartForm::new(7, kind));
        let said = fields(&document);
        for slot in slots {
            assert!(said.contains(&Field::Part(7, *slot)), "{kind:?} {slot:?}: {said:?}");
        }
        // A part that is not understood makes the answer another one, not a smaller one.
        let is_limit = matches!(kind, PowerLimit | TorqueLimit | AirLimit);
        assert_eq!(HardwareAnswer::of(&read(&document)).is_some(), is_limit, "{kind:?}");
        document.here.hardware.parts[0].mark(Mark::SetAside, true);
        assert_eq!(fields(&document), vec![], "{kind:?} was set aside");
    }
}

#[test]
fn every_slip_is_said_beside_its_field() {
    let mut document = car();
    port(&mut document);
    high_pressure(&mut document);
    supply(&mut document);
    set(&mut document, HardwareField::PortShare, "30");
    answer(&document);
    let slips = [
        (0, HardwareField::Count, "four"),
        (0, HardwareField::Count, "2.5"),
        (0, HardwareField::RatedFlow, "1000 bar"),
        (0, HardwareField::RailPressure, "-4"),
        (0, HardwareField::DeadTime, "1 s"),
        (0, HardwareField::UseLimit, "120"),
        (1, HardwareField::Window, "0"),
        (1, HardwareField::BackPressure, "x"),
        (2, HardwareField::Bore, "0"),
        (2, HardwareField::Lobes, "40"),
        (2, HardwareField::Efficiency, "150 %"),
        (2, HardwareField::EfficiencyRange, "90-80"),
        (2, HardwareField::EfficiencyRange, "10-20"),
        (3, HardwareField::Voltage, "9"),
        (3, HardwareField::FlowTable, "3 285 340"),
        (4, HardwareField::LineLength, "4 kg"),
        (4, HardwareField::LineBore, "wide"),
    ];
    for (at, slot, text) in slips {
        let mut wrong = document.clone();
        let part = &mut wrong.here.hardware.parts[at];
        // The efficiency lies outside a range that is otherwise right.
        if text == "10-20" {
            part.fields.entry(HardwareField::Efficiency).text = "85".into();
        }
        part.fields.entry(slot).text = text.into();
        let id = part.id;
        let said = read(&wrong).field_errors;
        let about = |field: Field| match field {
            // A table is read at a voltage: what is wrong shows where the table is.
            Field::Part(it, HardwareField::FlowTable) => {
                it == id && slot == HardwareField::Voltage || field == Field::Part(id, slot)
            }
            field => field == Field::Part(id, slot),
        };
        assert!(said.iter().any(|it| about(it.field)), "{slot:?} {text:?}: {said:?}");
        assert!(HardwareAnswer::of(&read(&wrong)).is_none(), "{slot:?} {text:?}");
    }
    let engine = [
        (HardwareField::SpecificConsumption, ""),
        (HardwareField::SpecificConsumption, "5"),
        (HardwareField::Lambda, "11.7"),
        (HardwareField::Lambda, ""),
        (HardwareField::Boost, ""),
        (HardwareField::BlendShare, "E120"),
        (HardwareField::PortShare, ""),
        (HardwareField::EfficiencyGain, "50"),
        (HardwareField::Reserve, "-5"),
        (HardwareField::AmbientPressure, "10"),
    ];
    for (slot, text) in engine {
        let mut wrong = document.clone();
        set(&mut wrong, slot, text);
        let said = fields(&wrong);
        assert!(said.contains(&Field::Engine(slot)), "{slot:?} {text:?}: {said:?}");
        assert!(HardwareAnswer::of(&read(&wrong)).is_none(), "{slot:?} {text:?}");
    }
}

#[test]
fn the_tanks_blend_is_asked_for_where_the_log_is_silent() {
    let mut document = car();
    port(&mut document);
    document.here.hardware.blend = BlendForm::Tank;
    assert_eq!(fields(&document), vec![Field::Engine(HardwareField::BlendShare)]);
}

#[test]
fn there_is_one_line_and_one_set_of_direct_injectors() {
    let mut document = car();
    let [direct, _] = high_pressure(&mut document);
    let mut again = document.here.hardware.parts[0].clone();
    again.id = direct + 50;
    document.here.hardware.parts.push(again);
    assert_eq!(fields(&document), vec![Field::PartName(direct + 50)]);
    let mut document = car();
    let table = [(HardwareField::FlowTable, "3 285\n7 165")];
    let pump = add(&mut document, PartKind::SupplyPump, &[], table);
    assert_eq!(fields(&document), vec![Field::Part(pump, HardwareField::FlowTable)]);
}
