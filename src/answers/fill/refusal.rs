//! What a refusal of the fill says, and beside which field.

use crate::document::FuelForm;
use crate::document::{ContentsOf, ContentsPart, Field, FuelPart};
use crate::fill::FillError;
use crate::quantity::notation::{LITRE, Printer};

/// Where a refusal of the fill belongs, in the person's own units.
pub(crate) fn say(error: &FillError, offers: &[FuelForm], printer: &Printer) -> (Field, String) {
    let volume = |litres: f64| printer.volume(LITRE.quantity(litres));
    let fuel = |index: &usize, part| {
        let id = offers.get(*index).map_or(0, |form| form.id);
        Field::Fuel(id, part)
    };
    match error {
        FillError::NoCapacity => (Field::Capacity, "Give the size of the tank.".into()),
        FillError::NoOffer => (Field::Offers, "Add the fuels on offer here.".into()),
        FillError::Overfull { level_l, capacity_l } => (
            Field::Contents(ContentsOf::Fill, ContentsPart::Level),
            format!(
                "{} cannot be in a tank of {}. Correct the level, or the tank's size under Car.",
                volume(*level_l),
                volume(*capacity_l)
            ),
        ),
        FillError::Overpoured { poured_l, free_l } => {
            let last = offers.iter().rposition(|form| !form.poured.is_blank());
            (
                fuel(&last.unwrap_or(0), FuelPart::Poured),
                format!(
                    "{} cannot have gone in: even at the lowest level given, {} were free. \
                     Correct what was put in, or the level.",
                    volume(*poured_l),
                    volume(*free_l)
                ),
            )
        }
        FillError::AboveLevel { level_l, wanted_l } => (
            Field::StopLevel,
            format!(
                "The tank already holds {}, more than {}. Choose a higher level.",
                volume(*level_l),
                volume(*wanted_l)
            ),
        ),
        FillError::LevelAboveBrim { wanted_l, capacity_l } => (
            Field::StopLevel,
            format!(
                "{} do not fit a tank of {}. Choose a lower level.",
                volume(*wanted_l),
                volume(*capacity_l)
            ),
        ),
        FillError::WindowReversed { .. } => (Field::AimCalibration, error.to_string()),
        FillError::PriceMissing { index } => (
            fuel(index, FuelPart::Price),
            "A sum of money needs the price of every fuel: give this one's.".into(),
        ),
        FillError::OctaneMissing { index } => (
            fuel(index, FuelPart::Octane),
            "The calibration asks for an octane number: give this fuel's.".into(),
        ),
        FillError::TankOctaneMissing => (
            Field::Contents(ContentsOf::Fill, ContentsPart::Octane),
            "The calibration asks for an octane number: give that of what is in the tank.".into(),
        ),
        FillError::AmountMissing { index } => {
            (fuel(index, FuelPart::Limit), "All of it is to go in: say how much there is.".into())
        }
    }
}
