//! What fields are called where they are only named: in a list of what is still to be
//! filled in.

use crate::answers::FieldError;
use crate::document::{ContentsPart, EntryPart, Field, FuelPart, TripPart, TripStopPart};
use crate::message::keys::{fields as keys, shared};

/// So many are named in one line.
const NAMED: usize = 5;

/// The name of a field in a sentence, where it has one.
fn name(field: Field) -> Option<&'static str> {
    let name = match field {
        Field::Capacity => keys::TANK_SIZE,
        Field::Consumption => keys::CONSUMPTION,
        Field::Contents(_, ContentsPart::Level) => keys::LEVEL,
        Field::Contents(_, ContentsPart::Share) => keys::ETHANOL_IN_THE_TANK,
        Field::Start | Field::Trip(TripPart::Start) => keys::WHAT_IS_IN_THE_TANK,
        Field::Offers | Field::Entry(EntryPart::Fuels) => keys::FUELS,
        Field::Fuel(_, FuelPart::Share) | Field::Poured(_, FuelPart::Share) => {
            keys::ETHANOL_OF_EACH_FUEL
        }
        Field::Fuel(_, FuelPart::Price) => keys::PRICES,
        Field::Fuel(_, FuelPart::Limit) => keys::AMOUNT_AVAILABLE,
        Field::AimShare => keys::BLEND,
        Field::StopLevel | Field::StopVolume | Field::StopMoney => keys::HOW_FAR_TO_FILL,
        Field::AimCalibration | Field::Calibration(..) => keys::CALIBRATION,
        Field::Trip(TripPart::Stops) => keys::STOPS,
        Field::TripStop(_, TripStopPart::Distance) => keys::DISTANCES,
        _ => return None,
    };
    Some(name.say())
}

/// What a list of field errors comes to: `Still to fill in: tank size, level`, or
/// `2 entries are wrong`, or both. What is wrong comes first.
pub fn summary(field_errors: &[FieldError]) -> String {
    let (missing, wrong): (Vec<&FieldError>, Vec<&FieldError>) =
        field_errors.iter().partition(|it| it.is_missing);
    match (wrong.len(), missing.len()) {
        (0, 0) => String::new(),
        (0, _) => keys::ToFillIn { fields: listed(&missing) }.say(),
        (wrong, 0) => keys::AreWrong { count: wrong }.say(),
        (wrong, missing) => {
            keys::WrongAndMissing { wrong: keys::AreWrong { count: wrong }.say(), missing }.say()
        }
    }
}

/// The names, each once; those without one, and those after the first few, as a number.
fn listed(missing: &[&FieldError]) -> String {
    let mut names: Vec<&str> = Vec::new();
    let mut more = 0_usize;
    for field_error in missing {
        match name(field_error.field) {
            Some(name) if names.contains(&name) => {}
            Some(name) if names.len() < NAMED => names.push(name),
            _ => more += 1,
        }
    }
    let more = match (more, names.is_empty()) {
        (0, _) => None,
        (more, true) => Some(shared::Entries { count: more }.say()),
        (more, false) => Some(keys::More { count: more }.say()),
    };
    let names = names.into_iter().map(str::to_owned);
    names.chain(more).collect::<Vec<_>>().join(", ")
}

#[cfg(test)]
mod tests {
    use crate::document::ContentsOf;
    use crate::quantity::notation::NumberError;

    use super::*;

    fn field_error(field: Field, is_missing: bool) -> FieldError {
        FieldError { field, problem: NumberError::Empty.into(), is_missing }
    }

    #[test]
    fn what_is_missing_is_named_and_what_is_wrong_is_counted() {
        let missing = [
            Field::Capacity,
            Field::Contents(ContentsOf::Fill, ContentsPart::Level),
            Field::Contents(ContentsOf::Fill, ContentsPart::Share),
            Field::Offers,
        ];
        let missing: Vec<_> = missing.map(|it| field_error(it, true)).into();
        assert_eq!(
            summary(&missing),
            "Still to fill in: tank size, level, ethanol in the tank, fuels"
        );
        let wrong = field_error(Field::Contents(ContentsOf::Fill, ContentsPart::Level), false);
        assert_eq!(summary(std::slice::from_ref(&wrong)), "1 entry is wrong");
        let both = [wrong.clone(), wrong, field_error(Field::Offers, true)];
        assert_eq!(summary(&both), "2 entries are wrong, 1 still to fill in");
        assert_eq!(summary(&[]), "");
    }

    #[test]
    fn a_name_stands_once_and_what_has_none_is_counted() {
        let two = [Field::Fuel(1, FuelPart::Share), Field::Fuel(2, FuelPart::Share)];
        let two: Vec<_> = two.map(|it| field_error(it, true)).into();
        assert_eq!(summary(&two), "Still to fill in: ethanol of each fuel");
        let nameless = [field_error(Field::Line, true), field_error(Field::Line, true)];
        assert_eq!(summary(&nameless), "Still to fill in: 2 entries");
    }
}
