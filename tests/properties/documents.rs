//! Documents of every kind: any number of cars, and entries of all kinds.

use fillwright::document::{
    BeforeForm, BlendForm, Car, CarFile, ColumnForm, ContentsForm, CurveForm, Document, Draft,
    DriveForm, Event, ExtrasForm, Fields, FillEntry, FuelForm, HardwareField, HardwareForm, Id,
    LevelForm, Log, Mark, MeasuredAt, Moment, PartForm, PartKind, SensorForm, StartForm,
    TubeTestForm, ValueUnit, What,
};
use fillwright::document::{PreferForm, TripForm, TripStopForm};
use fillwright::power::AirCorrection;
use fillwright::quantity::notation::Entry;
use fillwright::tank::{HowSure, LevelReading, TubeTestMethod};
use proptest::prelude::*;
use proptest::sample::select;

use crate::people::units;

fn words() -> impl Strategy<Value = String> {
    prop_oneof![
        3 => Just(String::new()),
        3 => select(vec!["12,5", "E85", "=1+1", "say \"so\"", "a, b;\r\nc", "½ Ö 汉"]).prop_map(str::to_owned),
        1 => ".{0,8}",
    ]
}

pub(crate) fn entry() -> impl Strategy<Value = Entry> {
    (words(), units()).prop_map(|(text, typed_in)| Entry { text, typed_in })
}

fn how_sure() -> impl Strategy<Value = HowSure> {
    select(vec![HowSure::Sure, HowSure::Roughly, HowSure::Unknown])
}

fn level() -> impl Strategy<Value = LevelForm> {
    let reading = select(vec![LevelReading::Gauge, LevelReading::Counted, LevelReading::Brimmed]);
    (entry(), reading, entry()).prop_map(|(level, reading, error)| LevelForm {
        level,
        reading,
        error,
    })
}

fn extras() -> impl Strategy<Value = ExtrasForm> {
    prop::array::uniform4(words()).prop_map(|[water, methanol, ethers, oxygen]| ExtrasForm {
        water,
        methanol,
        ethers,
        oxygen,
    })
}

prop_compose! {
    fn contents()(
        level in level(), texts in prop::array::uniform3(words()), extras in extras(),
        octane in entry(), how_sure in how_sure(),
    ) -> ContentsForm {
        let [share, share_range, mon] = texts;
        ContentsForm { level, share, share_range, how_sure, extras, octane, mon }
    }
}

prop_compose! {
    fn fuel()(
        id in 0_u32..9, grade in prop::option::of(words()), texts in prop::array::uniform4(words()),
        entries in prop::array::uniform4(entry()), use_all in any::<bool>(), extras in extras(),
        how_sure in how_sure(),
    ) -> FuelForm {
        let [name, share, share_range, mon] = texts;
        let [octane, price, limit, poured] = entries;
        FuelForm {
            id, grade, name, share, share_range, how_sure, extras, octane, mon, price, limit, use_all,
            poured,
        }
    }
}

fn fields() -> impl Strategy<Value = Fields> {
    let slots = vec![
        HardwareField::Boost,
        HardwareField::RatedFlow,
        HardwareField::FlowTable,
        HardwareField::MixStrength,
    ];
    prop::collection::vec((select(slots), entry()), 0..4).prop_map(|texts| {
        let mut fields = Fields::default();
        for (slot, entry) in texts {
            *fields.entry(slot) = entry;
        }
        fields
    })
}

prop_compose! {
    fn curve()(
        id in 0_u32..9, name in words(), blend in words(), table in entry(), air in fields(),
        columns in prop::array::uniform2(prop::option::of(1_u32..4)),
        unit in prop::option::of(select(vec![ValueUnit::PoundFeet, ValueUnit::Kilowatts])),
        place in select(vec![MeasuredAt::Crank, MeasuredAt::Wheel]), calibration in prop::option::of(0_u32..9),
        corrections in prop::array::uniform2(select(AirCorrection::ALL.to_vec())),
    ) -> CurveForm {
        let ([speed, value], [given, correction]) = (columns, corrections);
        let columns = ColumnForm { speed, value, unit };
        CurveForm { id, name, table, columns, place, calibration, blend, given, correction, air }
    }
}

prop_compose! {
    fn part()(
        id in 0_u32..9, name in words(), marks in prop::collection::btree_set(select(vec![Mark::SetAside, Mark::ByMass, Mark::FixedRail, Mark::InSeries]), 0..3),
        kind in select(vec![
            PartKind::PortInjectors, PartKind::DirectInjectors, PartKind::PlungerPump,
            PartKind::SupplyPump, PartKind::SupplyLine, PartKind::FluidNozzle,
            PartKind::PowerLimit, PartKind::TorqueLimit, PartKind::AirLimit,
        ]),
        fields in fields(),
    ) -> PartForm {
        PartForm { id, kind, name, marks, fields }
    }
}

prop_compose! {
    fn hardware()(
        curves in prop::collection::vec(curve().boxed(), 0..3),
        parts in prop::collection::vec(part().boxed(), 0..3),
        target in 0_u32..9, compared_with in prop::option::of(0_u32..9),
        blend in select(vec![BlendForm::Tank, BlendForm::Typed]),
        tables in prop::array::uniform2(fields()), mix_by_mass in any::<bool>(),
    ) -> HardwareForm {
        let [engine, mix] = tables;
        HardwareForm { curves, target, compared_with, engine, blend, parts, mix, mix_by_mass }
    }
}

prop_compose! {
    fn stop()(
        id in 0_u32..9, texts in prop::array::uniform3(words()),
        entries in prop::array::uniform2(entry()),
        fuels in prop::collection::vec(fuel().boxed(), 0..3),
        numbers in prop::array::uniform2(prop::collection::vec(0_u32..9, 0..3)),
    ) -> TripStopForm {
        let ([place, fee, factor], [distance, ron_min]) = (texts, entries);
        let [closed, calibrations] = numbers;
        TripStopForm { id, place, fuels, closed, fee, distance, factor, calibrations, ron_min }
    }
}

prop_compose! {
    fn route()(
        stops in prop::collection::vec(stop().boxed(), 0..4), here in prop::option::of(0_u32..9),
        start in select(vec![StartForm::Log, StartForm::Typed]), contents in contents().boxed(),
        prefer in select(vec![PreferForm::Cheapest, PreferForm::FewestStops, PreferForm::MostEthanol]),
        texts in prop::array::uniform2(words()), flags in any::<(bool, bool)>(), final_level in entry(),
    ) -> TripForm {
        let ([budget, margin], (careful, filled)) = (texts, flags);
        TripForm { filled, stops, here, start, contents, prefer, budget, careful, margin, final_level }
    }
}

fn what() -> BoxedStrategy<What> {
    let before = prop_oneof![
        Just(BeforeForm::Nothing),
        level().prop_map(BeforeForm::Level),
        contents().prop_map(BeforeForm::Contents),
    ];
    prop_oneof![
        (before.boxed(), prop::collection::vec(fuel().boxed(), 0..3), any::<bool>())
            .prop_map(|(before, fuels, clicked)| What::Fill(FillEntry { before, fuels, clicked })),
        level().prop_map(What::Level),
        (words(), words(), any::<bool>()).prop_map(|(reading, pulse, old_fuel)| What::Sensor(
            SensorForm { reading, pulse, old_fuel }
        )),
        (prop::array::uniform4(words()), any::<bool>()).prop_map(|(texts, plain)| {
            let [fuel, water, boundary, step] = texts;
            let method = if plain { TubeTestMethod::PlainWater } else { TubeTestMethod::SaltWater };
            What::TubeTest(TubeTestForm { method, fuel, water, boundary, step })
        }),
        entry().prop_map(What::Drive),
        (entry(), entry())
            .prop_map(|(distance, consumption)| What::Trip(DriveForm { distance, consumption })),
        entry().prop_map(What::Drain),
        contents().prop_map(What::Correction),
        Just(What::Note),
    ]
    .boxed()
}

fn moment() -> impl Strategy<Value = Moment> {
    (1..=12, 1..=28, 0..24, -12..=14).prop_map(|(month, day, hour, ahead)| {
        Moment::new(&format!("2026-{month:02}-{day:02}T{hour:02}:30"), ahead * 60).unwrap()
    })
}

prop_compose! {
    /// An entry, one of a hundred, so that two documents share some.
    pub(crate) fn event()(
        number in 0..100, revision in 1_u32..4, sequence in 0_u32..3, removed in prop::bool::weighted(0.2),
        time in moment(), place in words(), note in words(), what in what(),
    ) -> Event {
        let id = Id::new(&format!("entry-{number}")).unwrap();
        Event { id, revision, sequence, removed, time, place, note, what }
    }
}

fn log() -> impl Strategy<Value = Log> {
    prop::collection::vec(event().boxed(), 0..8).prop_map(|events| events.into_iter().collect())
}

prop_compose! {
    fn car(number: usize)(
        flags in any::<(bool, bool)>(), last_id in 0_u32..9, name in words(), capacity in entry(),
        own_fuels in prop::collection::vec(fuel().boxed(), 0..2), offers in prop::collection::vec(fuel().boxed(), 0..2),
        level in entry(), log in log().boxed(),
        draft in prop::option::of((event().boxed(), any::<bool>())),
        hardware in hardware().boxed(), route in route().boxed(),
    ) -> CarFile {
        let mut file = CarFile::new(Id::new(&format!("car-{number}")).unwrap());
        (file.demo, file.removed) = (flags.0, flags.1 && number > 0);
        file.last_id = last_id;
        file.car = Car { name, capacity, own_fuels, ..file.car };
        file.fill.offers = offers;
        file.fill.contents.level.level = level;
        file.log = log;
        file.hardware = hardware;
        file.route = route;
        file.draft = draft.map(|(event, changes)| Draft {
            id: event.id, changes, time: event.time.local(), minutes_ahead: 120,
            place: event.place, note: event.note, drained_completely: changes, what: event.what,
        });
        file
    }
}

/// A document with one to three cars, of three that there are.
pub(crate) fn document() -> impl Strategy<Value = Document> {
    (car(0).boxed(), prop::option::of(car(1).boxed()), prop::option::of(car(2).boxed()), words())
        .prop_map(|(here, second, third, currency)| {
            let mut document = Document::empty(here.id.clone());
            document.here = here;
            document.others.extend(second);
            document.others.extend(third);
            document.settings.currency = currency;
            document
        })
}
