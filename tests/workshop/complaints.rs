//! What is missing or wrong is said beside its field, and nothing is guessed.

use fillwright::answers::hardware::HardwareAnswer;
use fillwright::document::{BlendForm, Document, Field, Id, Mark, PartForm, PartKind, Slot};

use super::support::{add, answer, car, high_pressure, port, read, set, supply};

fn fields(document: &Document) -> Vec<Field> {
    read(document).complaints.into_iter().map(|it| it.field).collect()
}

#[test]
fn an_empty_workshop_lacks_nothing() {
    let document = Document::empty(Id::new("car").unwrap());
    let reading = read(&document);
    assert_eq!(reading.complaints, vec![]);
    assert_eq!(reading.asked, None);
}

#[test]
fn every_part_says_what_it_needs() {
    use PartKind::{
        AirLimit, DirectInjectors, FluidNozzle, PlungerPump, PortInjectors, PowerLimit, SupplyLine,
        SupplyPump, TorqueLimit,
    };
    let needs: [(PartKind, &[Slot]); 9] = [
        (
            PortInjectors,
            &[
                Slot::Count,
                Slot::RatedFlow,
                Slot::RatedPressure,
                Slot::TestDensity,
                Slot::RailPressure,
                Slot::DeadTime,
            ],
        ),
        (
            DirectInjectors,
            &[Slot::RatedFlow, Slot::RatedPressure, Slot::TestDensity, Slot::RailPressure],
        ),
        (PlungerPump, &[Slot::Bore, Slot::Lift, Slot::Lobes, Slot::RailPressure]),
        (SupplyPump, &[Slot::FlowTable]),
        (SupplyLine, &[Slot::RailPressure]),
        (FluidNozzle, &[Slot::RatedFlow, Slot::RatedPressure, Slot::FluidPressure, Slot::Strength]),
        (PowerLimit, &[Slot::LimitPower]),
        (TorqueLimit, &[Slot::LimitTorque]),
        (AirLimit, &[Slot::LimitAir]),
    ];
    for (kind, slots) in needs {
        let mut document = car();
        document.here.workshop.parts.push(PartForm::new(7, kind));
        let said = fields(&document);
        for slot in slots {
            assert!(said.contains(&Field::Part(7, *slot)), "{kind:?} {slot:?}: {said:?}");
        }
        // A part that is not understood makes the answer another one, not a smaller one.
        let is_limit = matches!(kind, PowerLimit | TorqueLimit | AirLimit);
        assert_eq!(HardwareAnswer::of(&read(&document)).is_some(), is_limit, "{kind:?}");
        document.here.workshop.parts[0].mark(Mark::SetAside, true);
        assert_eq!(fields(&document), vec![], "{kind:?} was set aside");
    }
}

#[test]
fn every_slip_is_said_beside_its_field() {
    let mut document = car();
    port(&mut document);
    high_pressure(&mut document);
    supply(&mut document);
    set(&mut document, Slot::PortShare, "30");
    answer(&document);
    let slips = [
        (0, Slot::Count, "four"),
        (0, Slot::Count, "2.5"),
        (0, Slot::RatedFlow, "1000 bar"),
        (0, Slot::RailPressure, "-4"),
        (0, Slot::DeadTime, "1 s"),
        (0, Slot::UseLimit, "120"),
        (1, Slot::Window, "0"),
        (1, Slot::BackPressure, "x"),
        (2, Slot::Bore, "0"),
        (2, Slot::Lobes, "40"),
        (2, Slot::Efficiency, "150 %"),
        (2, Slot::EfficiencyRange, "90-80"),
        (2, Slot::EfficiencyRange, "10-20"),
        (3, Slot::Voltage, "9"),
        (3, Slot::FlowTable, "3 285 340"),
        (4, Slot::LineLength, "4 kg"),
        (4, Slot::LineBore, "wide"),
    ];
    for (at, slot, text) in slips {
        let mut wrong = document.clone();
        let part = &mut wrong.here.workshop.parts[at];
        // The efficiency lies outside a range that is otherwise right.
        if text == "10-20" {
            part.fields.entry(Slot::Efficiency).text = "85".into();
        }
        part.fields.entry(slot).text = text.into();
        let id = part.id;
        let said = read(&wrong).complaints;
        let about = |field: Field| match field {
            // A table is read at a voltage: what is wrong shows where the table is.
            Field::Part(it, Slot::FlowTable) => {
                it == id && slot == Slot::Voltage || field == Field::Part(id, slot)
            }
            field => field == Field::Part(id, slot),
        };
        assert!(said.iter().any(|it| about(it.field)), "{slot:?} {text:?}: {said:?}");
        assert!(HardwareAnswer::of(&read(&wrong)).is_none(), "{slot:?} {text:?}");
    }
    let engine = [
        (Slot::SpecificConsumption, ""),
        (Slot::SpecificConsumption, "5"),
        (Slot::Lambda, "11.7"),
        (Slot::Lambda, ""),
        (Slot::Boost, ""),
        (Slot::BlendShare, "E120"),
        (Slot::PortShare, ""),
        (Slot::EfficiencyGain, "50"),
        (Slot::Reserve, "-5"),
        (Slot::AmbientPressure, "10"),
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
    document.here.workshop.blend = BlendForm::Tank;
    assert_eq!(fields(&document), vec![Field::Engine(Slot::BlendShare)]);
}

#[test]
fn there_is_one_line_and_one_set_of_direct_injectors() {
    let mut document = car();
    let [direct, _] = high_pressure(&mut document);
    let mut again = document.here.workshop.parts[0].clone();
    again.id = direct + 50;
    document.here.workshop.parts.push(again);
    assert_eq!(fields(&document), vec![Field::PartName(direct + 50)]);
    let mut document = car();
    let table = [(Slot::FlowTable, "3 285\n7 165")];
    let pump = add(&mut document, PartKind::SupplyPump, &[], table);
    assert_eq!(fields(&document), vec![Field::Part(pump, Slot::FlowTable)]);
}
