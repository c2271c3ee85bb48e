//! The route of the invented example: from the Swedish west coast by way of Denmark
//! to a hill-climb in the Harz. Every figure of it is made up.

use crate::document::file::CarFile;
use crate::document::fill::StartForm;
use crate::document::fuel::FuelForm;
use crate::document::trip::{TripForm, TripStopForm};
use crate::message::Message;
use crate::message::keys::demo as words;
use crate::quantity::notation::Entry;

/// A fuel of the example: grade, name, share, range, RON, MON.
type Grade = (&'static str, &'static str, &'static str, &'static str, &'static str, &'static str);

const E85: Grade = ("en15293-e85-summer", "E85", "82", "70-85", "104", "88");
const E10: Grade = ("en228-95-e10", "95 E10", "9.5", "5-10", "95", "85");
const E5: Grade = ("en228-98-e5", "98 E5", "4", "0-5", "98", "87");

/// A stop of the example: the place, its fuels with their prices, and how far the
/// next is, with the factor of that way.
type Halt = (Message, &'static [(Grade, &'static str)], &'static str, &'static str);

const STOPS: [Halt; 5] = [
    (words::HOME, &[(E85, "15.94"), (E10, "17.29")], "130", ""),
    (words::NORTH_JUTLAND, &[(E10, "20.40"), (E5, "21.90")], "290", ""),
    (words::SOUTH_JUTLAND, &[(E10, "19.80"), (E5, "21.30")], "220", ""),
    (words::LUENEBURG_HEATH, &[(E85, "14.90"), (E10, "18.90"), (E5, "20.80")], "180", "1.1"),
    (words::HARZ, &[(E10, "19.40"), (E5, "21.10")], "90", "1.5"),
];

impl TripForm {
    /// The route of the invented example, on which the calibration `keep` has to stay
    /// usable.
    pub(super) fn invented(car: &mut CarFile, keep: u32, say: fn(Message) -> &'static str) -> Self {
        let mut stop = |(place, fuels, distance, factor): Halt| {
            let id = car.next_id();
            let mut fuel =
                |&((grade, name, share, range, ron, mon), price): &(Grade, &str)| FuelForm {
                    id: car.next_id(),
                    grade: Some(grade.into()),
                    name: name.into(),
                    share: share.into(),
                    share_range: range.into(),
                    octane: Entry::metric(ron),
                    mon: mon.into(),
                    price: Entry::metric(price),
                    ..FuelForm::default()
                };
            TripStopForm {
                id,
                place: say(place).into(),
                fuels: fuels.iter().map(&mut fuel).collect(),
                distance: Entry::metric(distance),
                factor: factor.into(),
                calibrations: vec![keep],
                ..TripStopForm::default()
            }
        };
        Self { stops: STOPS.map(&mut stop).into(), start: StartForm::Log, ..Self::default() }
    }
}
