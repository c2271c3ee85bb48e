//! What a refusal of the fill says, and beside which field.

use crate::answers::problem::FieldProblem;
use crate::document::FuelForm;
use crate::document::{ContentsOf, ContentsPart, Field, FuelPart};
use crate::fill::FillError;
use crate::message::keys::problems;
use crate::quantity::notation::{LITRE, Printer};

/// Where a refusal of the fill belongs, in the person's own units.
pub(crate) fn say(
    error: &FillError,
    offers: &[FuelForm],
    printer: &Printer,
) -> (Field, FieldProblem) {
    let volume = |litres: f64| printer.volume(LITRE.quantity(litres));
    let fuel = |index: &usize, part| {
        let id = offers.get(*index).map_or(0, |form| form.id);
        Field::Fuel(id, part)
    };
    match error {
        FillError::NoCapacity => (Field::Capacity, problems::GIVE_SIZE_TANK.into()),
        FillError::NoOffer => (Field::Offers, problems::ADD_FUELS_ON_OFFER_HERE.into()),
        FillError::Overfull { level_l, capacity_l } => (
            Field::Contents(ContentsOf::Fill, ContentsPart::Level),
            problems::LevelAboveTank { level: volume(*level_l), tank: volume(*capacity_l) }
                .sentence()
                .into(),
        ),
        FillError::Overpoured { poured_l, free_l } => {
            let last = offers.iter().rposition(|form| !form.poured.is_blank());
            (
                fuel(&last.unwrap_or(0), FuelPart::Poured),
                problems::CannotHaveGoneIn { poured: volume(*poured_l), free: volume(*free_l) }
                    .sentence()
                    .into(),
            )
        }
        FillError::AboveLevel { level_l, wanted_l } => (
            Field::StopLevel,
            problems::AlreadyHolds { level: volume(*level_l), wanted: volume(*wanted_l) }
                .sentence()
                .into(),
        ),
        FillError::LevelAboveBrim { wanted_l, capacity_l } => (
            Field::StopLevel,
            problems::DoNotFit { wanted: volume(*wanted_l), tank: volume(*capacity_l) }
                .sentence()
                .into(),
        ),
        FillError::WindowReversed { .. } => (Field::AimCalibration, error.clone().into()),
        FillError::PriceMissing { index } => {
            (fuel(index, FuelPart::Price), problems::SUM_MONEY_NEEDS_PRICE_EVERY.into())
        }
        FillError::OctaneMissing { index } => {
            (fuel(index, FuelPart::Octane), problems::CALIBRATION_ASKS_OCTANE_NUMBER_GIVE.into())
        }
        FillError::TankOctaneMissing => (
            Field::Contents(ContentsOf::Fill, ContentsPart::Octane),
            problems::CALIBRATION_ASKS_OCTANE_NUMBER_GIVE_WHAT.into(),
        ),
        FillError::AmountMissing { index } => {
            (fuel(index, FuelPart::Limit), problems::ALL_GO_SAY_HOW_MUCH.into())
        }
    }
}
