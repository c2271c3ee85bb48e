//! The invented example that a first start offers. Every figure of it is made
//! up: an estate car with a 1.9-litre turbo four, at home on the Swedish west
//! coast.

use super::document::Document;
use super::forms::{CalibrationForm, Car, Entry, FuelForm};
use super::id::Id;
use crate::calibration::FluidState;

impl Document {
    /// The invented example.
    pub fn demo() -> Self {
        let mut document = Self::empty(Id::of_content("the invented example"));
        document.here.demo = true;
        document.settings.currency = "kr".into();
        document.here.car = Car {
            name: "Estate car, 1.9-litre turbo".into(),
            capacity: Entry::metric("58"),
            reserve: Entry::metric("7"),
            consumption: Entry::metric("8.2"),
            reference: "E10".into(),
            fluid: FluidState::Unknown,
            line: Entry::metric("0.6"),
            ..Car::default()
        };
        let mut calibration =
            |name: &str, window: (&str, &str), written_for: &str, ron: &str, fluid| {
                let id = document.here.next_id();
                document.here.car.calibrations.push(CalibrationForm {
                    id,
                    name: name.into(),
                    low: window.0.into(),
                    high: window.1.into(),
                    written_for: written_for.into(),
                    ron_min: ron.into(),
                    needs_fluid: fluid,
                });
            };
        calibration("Petrol", ("E0", "E12"), "E10", "95", false);
        calibration("Mid blend", ("E24", "E40"), "E30", "98", false);
        calibration("Mid blend with fluid", ("E26", "E40"), "E32", "98", true);
        let fuels = [
            ("en15293-e85-summer", "E85", "82", "70-85", ("104", "88"), "15.94"),
            ("en228-95-e10", "95 E10", "9.5", "5-10", ("95", "85"), "17.29"),
        ];
        for (grade, name, share, range, (ron, mon), price) in fuels {
            let id = document.here.next_id();
            document.here.fill.offers.push(FuelForm {
                id,
                grade: Some(grade.into()),
                name: name.into(),
                share: share.into(),
                share_range: range.into(),
                octane: ron.into(),
                mon: mon.into(),
                price: Entry::metric(price),
                ..FuelForm::default()
            });
        }
        document.here.fill.level = Entry::metric("1/4");
        document.here.fill.share = "12".into();
        document.here.fill.share_range = "10-15".into();
        document.here.fill.octane = "95".into();
        document.here.fill.mon = "85".into();
        document.here.fill.aim_share = "E30".into();
        document
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_example_survives_storage_unchanged() {
        let demo = Document::demo();
        let text = demo.to_json().unwrap();
        assert_eq!(Document::from_json(&text).unwrap(), demo);
    }
}
