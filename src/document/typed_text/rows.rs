//! The table of all text fields: where the text of each stands, and its unit.

use crate::document::car::CalibrationPart;
use crate::document::contents::{ContentsForm, ContentsPart};
use crate::document::event::{EntryPart, What};
use crate::document::field::Field;
use crate::document::field_unit::FieldUnit::{self, Bare, Lines, Money};
use crate::document::field_unit::{
    CONSUMPTION, DISTANCE, KILOGRAMS, LEVEL, MILLILITRES, MILLISECONDS, OCTANE, PERCENT, PRICE,
    VOLUME,
};
use crate::document::file::Document;
use crate::document::fuel::{ExtraPart, ExtrasForm, FuelForm, FuelPart};
use crate::document::hardware::CurvePart;
use crate::document::hardware_field::HardwareField;
use crate::document::trip::{TripPart, TripStopPart};
use crate::quantity::notation::Entry;

/// Where a text stands, read or written.
pub(super) enum Place<T, E> {
    /// A text that means the same in all units.
    Text(T),
    /// A text that is kept with the units in which it was typed.
    Entry(E),
}

/// A row: where the text stands, and its unit.
pub(super) type Row<T, E> = (Place<T, E>, FieldUnit);

fn text<T, E>(text: T, unit: FieldUnit) -> Row<T, E> {
    (Place::Text(text), unit)
}

fn entry<T, E>(entry: E, unit: FieldUnit) -> Row<T, E> {
    (Place::Entry(entry), unit)
}

/// All rows, made twice: once to read by, and once with `mut` to write by. The names are
/// those of what is made, and then of what finds each form in the document.
macro_rules! rows {
    (
        [$($mut:tt)?] $row:ident, $of_contents:ident, $of_fuel:ident, $of_extra:ident;
        $contents:ident, $level:ident, $fuel:ident, $poured:ident, $calibration:ident, $stop:ident,
        $curve:ident, $part:ident, $slot:ident
    ) => {
        pub(super) fn $row(
            it: &$($mut)? Document,
            field: Field,
        ) -> Option<Row<&$($mut)? String, &$($mut)? Entry>> {
            Some(match field {
                Field::Capacity => entry(&$($mut)? it.here.car.capacity, VOLUME),
                Field::Reserve => entry(&$($mut)? it.here.car.reserve, VOLUME),
                Field::Consumption => entry(&$($mut)? it.here.car.consumption, CONSUMPTION),
                Field::Reference => text(&$($mut)? it.here.car.reference, Bare),
                Field::CarName => text(&$($mut)? it.here.car.name, Bare),
                Field::Line => entry(&$($mut)? it.here.car.line, VOLUME),
                Field::PumpStep => entry(&$($mut)? it.settings.pump_step, VOLUME),
                Field::Currency => text(&$($mut)? it.settings.currency, Bare),
                Field::Contents(of, ContentsPart::Level) => {
                    entry(&$($mut)? it.$level(of)?.level, LEVEL)
                }
                Field::Contents(of, ContentsPart::LevelError) => {
                    entry(&$($mut)? it.$level(of)?.error, VOLUME)
                }
                Field::Contents(of, part) => $of_contents(it.$contents(of)?, part)?,
                Field::AimShare => text(&$($mut)? it.here.fill.aim_share, Bare),
                Field::Place => text(&$($mut)? it.here.fill.place, Bare),
                Field::StopLevel => entry(&$($mut)? it.here.fill.stop_level, LEVEL),
                Field::StopVolume => entry(&$($mut)? it.here.fill.stop_volume, VOLUME),
                Field::StopMoney => text(&$($mut)? it.here.fill.stop_money, Money),
                Field::Fuel(id, part) => $of_fuel(it.$fuel(id)?, part),
                Field::Poured(id, part) => $of_fuel(it.$poured(id)?, part),
                Field::Calibration(id, part) => {
                    let form = it.here.car.$calibration(id)?;
                    match part {
                        CalibrationPart::Name => text(&$($mut)? form.name, Bare),
                        CalibrationPart::Low => text(&$($mut)? form.low, Bare),
                        CalibrationPart::High => text(&$($mut)? form.high, Bare),
                        CalibrationPart::WrittenFor => text(&$($mut)? form.written_for, Bare),
                        CalibrationPart::RonMin => entry(&$($mut)? form.ron_min, OCTANE),
                    }
                }
                Field::Entry(part) => {
                    let Some(draft) = &$($mut)? it.here.draft else { return None };
                    match (part, &$($mut)? draft.what) {
                        (EntryPart::Time, _) => text(&$($mut)? draft.time, Bare),
                        (EntryPart::Place, _) => text(&$($mut)? draft.place, Bare),
                        (EntryPart::Note, _) => text(&$($mut)? draft.note, Bare),
                        (EntryPart::Sensor, What::Sensor(form)) => {
                            text(&$($mut)? form.reading, Bare)
                        }
                        (EntryPart::Pulse, What::Sensor(form)) => {
                            text(&$($mut)? form.pulse, MILLISECONDS)
                        }
                        (part, What::TubeTest(form)) => match part {
                            EntryPart::TubeFuel => text(&$($mut)? form.fuel, MILLILITRES),
                            EntryPart::TubeWater => text(&$($mut)? form.water, MILLILITRES),
                            EntryPart::Boundary => text(&$($mut)? form.boundary, MILLILITRES),
                            EntryPart::TubeStep => text(&$($mut)? form.step, MILLILITRES),
                            _ => return None,
                        },
                        (EntryPart::Distance, What::Drive(way)) => entry(way, DISTANCE),
                        (EntryPart::Distance, What::Trip(form)) => {
                            entry(&$($mut)? form.distance, DISTANCE)
                        }
                        (EntryPart::Consumption, What::Trip(form)) => {
                            entry(&$($mut)? form.consumption, CONSUMPTION)
                        }
                        (EntryPart::Drained, What::Drain(volume)) => entry(volume, VOLUME),
                        _ => return None,
                    }
                }
                Field::Engine(slot) => entry(it.here.hardware.engine.$slot(slot), slot.unit()),
                Field::Part(id, slot) => entry(it.here.hardware.$part(id)?.fields.$slot(slot), slot.unit()),
                Field::PartName(id) => text(&$($mut)? it.here.hardware.$part(id)?.name, Bare),
                Field::Curve(id, part) => {
                    let form = it.here.hardware.$curve(id)?;
                    match part {
                        CurvePart::Name => text(&$($mut)? form.name, Bare),
                        CurvePart::Table => entry(&$($mut)? form.table, Lines),
                        CurvePart::Blend => text(&$($mut)? form.blend, PERCENT),
                        CurvePart::Air(slot) => entry(form.air.$slot(slot), slot.unit()),
                        CurvePart::SpeedColumn | CurvePart::ValueColumn => return None,
                    }
                }
                // A mass means the same in all units.
                Field::Mix(slot @ HardwareField::MixAmount) if it.here.hardware.mix_by_mass => {
                    entry(it.here.hardware.mix.$slot(slot), KILOGRAMS)
                }
                Field::Mix(slot) => entry(it.here.hardware.mix.$slot(slot), slot.unit()),
                Field::Trip(part) => match part {
                    TripPart::Budget => text(&$($mut)? it.here.route.budget, Money),
                    TripPart::Margin => text(&$($mut)? it.here.route.margin, PERCENT),
                    TripPart::FinalLevel => entry(&$($mut)? it.here.route.final_level, LEVEL),
                    TripPart::Start | TripPart::Stops => return None,
                },
                Field::TripStop(id, part) => {
                    let form = it.here.route.$stop(id)?;
                    match part {
                        TripStopPart::Place => text(&$($mut)? form.place, Bare),
                        TripStopPart::Fee => text(&$($mut)? form.fee, Money),
                        TripStopPart::Distance => entry(&$($mut)? form.distance, DISTANCE),
                        TripStopPart::Factor => text(&$($mut)? form.factor, Bare),
                        TripStopPart::RonMin => entry(&$($mut)? form.ron_min, OCTANE),
                        TripStopPart::Calibrations => return None,
                    }
                }
                // A rate may not be there yet, and is noted with its day.
                Field::Rate(_) => return None,
                Field::Start | Field::Offers | Field::AimCalibration | Field::Stop => return None,
            })
        }

        fn $of_contents(
            form: &$($mut)? ContentsForm,
            part: ContentsPart,
        ) -> Option<Row<&$($mut)? String, &$($mut)? Entry>> {
            Some(match part {
                ContentsPart::Share => text(&$($mut)? form.share, PERCENT),
                ContentsPart::ShareRange => text(&$($mut)? form.share_range, PERCENT),
                ContentsPart::Extra(part) => text($of_extra(&$($mut)? form.extras, part), PERCENT),
                ContentsPart::Octane => entry(&$($mut)? form.octane, OCTANE),
                ContentsPart::Mon => text(&$($mut)? form.mon, Bare),
                ContentsPart::Level | ContentsPart::LevelError => return None,
            })
        }

        fn $of_fuel(
            form: &$($mut)? FuelForm,
            part: FuelPart,
        ) -> Row<&$($mut)? String, &$($mut)? Entry> {
            match part {
                FuelPart::Name => text(&$($mut)? form.name, Bare),
                FuelPart::Share => text(&$($mut)? form.share, PERCENT),
                FuelPart::ShareRange => text(&$($mut)? form.share_range, PERCENT),
                FuelPart::Extra(part) => text($of_extra(&$($mut)? form.extras, part), PERCENT),
                FuelPart::Octane => entry(&$($mut)? form.octane, OCTANE),
                FuelPart::Mon => text(&$($mut)? form.mon, Bare),
                FuelPart::Price => entry(&$($mut)? form.price, PRICE),
                FuelPart::Limit => entry(&$($mut)? form.limit, VOLUME),
                FuelPart::Poured => entry(&$($mut)? form.poured, VOLUME),
            }
        }

        fn $of_extra(form: &$($mut)? ExtrasForm, part: ExtraPart) -> &$($mut)? String {
            match part {
                ExtraPart::Water => &$($mut)? form.water,
                ExtraPart::Methanol => &$($mut)? form.methanol,
                ExtraPart::Ethers => &$($mut)? form.ethers,
                ExtraPart::Oxygen => &$($mut)? form.oxygen,
            }
        }
    };
}

rows! {
    [] row, of_contents, of_fuel, of_extra;
    contents, level, fuel, poured, calibration, stop, curve, part, at
}

rows! {
    [mut] row_mut, of_contents_mut, of_fuel_mut, of_extra_mut;
    contents_mut, level_mut, fuel_mut, poured_mut, calibration_mut, stop_mut, curve_mut, part_mut,
    entry
}
