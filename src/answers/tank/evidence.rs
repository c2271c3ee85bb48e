//! From an entry of the log, as typed, to what it tells of the tank.

use crate::message::keys::problems;
use uom::si::volume::milliliter;

use crate::answers::reading::{Known, Reader};
use crate::document::{
    BeforeForm, ContentsForm, ContentsOf, ContentsPart, DriveForm, EntryPart, Field, FillEntry,
    FuelForm, LevelForm, SensorForm, TubeTestForm, What,
};
use crate::quantity::notation::quantities::{CONSUMPTION, DISTANCE};
use crate::quantity::notation::{
    Entry, SensorFigure, parse_millilitres, parse_pulse_width, parse_sensor,
};
use crate::quantity::{Length, Share, Volume};
use crate::tank::{
    Evidence, Pour, SENSOR_ERROR, SensorScale, ShareReading, ShareReadingKind, TubeTest,
    TubeTestMethod, share_of_frequency, temperature_of_pulse,
};

/// The step of a tube's marks where none was given.
const USUAL_STEP_ML: f64 = 1.0;

/// What an entry tells.
#[derive(Default)]
pub(crate) struct ReadEvidence {
    /// What it tells of the tank, in order; what happened itself comes last.
    pub(crate) evidence: Vec<Evidence>,
    /// How far the car was driven.
    pub(crate) driven: Length,
}

impl ReadEvidence {
    fn only(evidence: Evidence) -> Self {
        Self { evidence: vec![evidence], ..Self::default() }
    }
}

impl Reader<'_> {
    /// What an entry tells; `None` where it cannot be read, and the field errors
    /// say why.
    pub(crate) fn told(
        &mut self,
        what: &What,
        known: &Known,
        scale: SensorScale,
    ) -> Option<ReadEvidence> {
        match what {
            What::Fill(fill) => self.fill_told(fill, known),
            What::Level(form) => self.level_told(form, known).map(ReadEvidence::only),
            What::Sensor(form) => self.sensor_told(form, scale),
            What::TubeTest(form) => self.tube_test_told(form).map(ReadEvidence::only),
            What::Drive(distance) => {
                let driven = self.distance(distance)?;
                Some(ReadEvidence { evidence: vec![Evidence::Drive { distance: driven }], driven })
            }
            What::Trip(form) => self.trip_told(form),
            What::Drain(entry) => {
                let field = Field::Entry(EntryPart::Drained);
                let volume = self.volume(field, entry, known.capacity)?;
                Some(ReadEvidence::only(Evidence::Drain { volume }))
            }
            What::Correction(form) => self.correction_told(form, known).map(ReadEvidence::only),
            What::Note => Some(ReadEvidence::default()),
        }
    }

    fn fill_told(&mut self, fill: &FillEntry, known: &Known) -> Option<ReadEvidence> {
        let before = match &fill.before {
            BeforeForm::Nothing => Some(None),
            BeforeForm::Level(form) => self.level_told(form, known).map(Some),
            BeforeForm::Contents(form) => self.correction_told(form, known).map(Some),
        };
        let read =
            |form: &FuelForm| self.fuel(form, |part| Field::Poured(form.id, part), known.capacity);
        let fuels: Vec<_> = fill.fuels.iter().filter_map(read).collect();
        let before = before?;
        if fuels.len() < fill.fuels.len() {
            return None;
        }
        let pours: Vec<Pour> = fuels
            .into_iter()
            .map(|(offer, fuel)| Pour {
                volume: offer.poured,
                share: offer.share,
                extras: fuel.content.extras,
                ron: offer.ron,
                mon: fuel.mon,
            })
            .filter(|pour| pour.volume > Volume::default())
            .collect();
        if pours.is_empty() {
            let message = problems::NOTHING_WENT_GIVE_VOLUME_LEAST;
            self.ask_for(Field::Entry(EntryPart::Fuels), message);
            return None;
        }
        let fill = Evidence::Fill { pours, clicked: fill.clicked };
        Some(ReadEvidence {
            evidence: before.into_iter().chain([fill]).collect(),
            ..ReadEvidence::default()
        })
    }

    fn level_told(&mut self, form: &LevelForm, known: &Known) -> Option<Evidence> {
        let level = self.level(form, ContentsOf::Entry, known);
        self.required(
            Field::Contents(ContentsOf::Entry, ContentsPart::Level),
            level,
            problems::SAY_WHAT_LEVEL_WAS_VOLUME,
        )
    }

    fn correction_told(&mut self, form: &ContentsForm, known: &Known) -> Option<Evidence> {
        let stated = self.contents(form, ContentsOf::Entry, known)?;
        Some(Evidence::State {
            level: stated.level,
            share: stated.share,
            extras: stated.extras,
            ron: stated.ron,
            mon: stated.mon,
        })
    }

    fn sensor_told(&mut self, form: &SensorForm, scale: SensorScale) -> Option<ReadEvidence> {
        let field = Field::Entry(EntryPart::Sensor);
        let figure = self.optional(field, &form.reading, parse_sensor);
        let figure = self.required(field, figure, problems::GIVE_WHAT_SENSOR_SHOWS_31);
        let pulse_field = Field::Entry(EntryPart::Pulse);
        let pulse = self.optional(pulse_field, &form.pulse, parse_pulse_width)?;
        if let Some(width) = pulse {
            self.take(pulse_field, temperature_of_pulse(width, scale))?;
        }
        let share = match figure? {
            SensorFigure::Share(share) => share,
            SensorFigure::Frequency(frequency) => {
                self.take(field, share_of_frequency(frequency))?
            }
        };
        if form.old_fuel {
            return Some(ReadEvidence::default());
        }
        let standard_error = Share::clamped(SENSOR_ERROR.value);
        Some(ReadEvidence::only(Evidence::Share(ShareReading {
            share,
            standard_error,
            kind: ShareReadingKind::Sensor,
        })))
    }

    fn tube_test_told(&mut self, form: &TubeTestForm) -> Option<Evidence> {
        let field = Field::Entry(EntryPart::Boundary);
        let boundary = self.optional(field, &form.boundary, parse_millilitres);
        let boundary = self.required(field, boundary, problems::GIVE_TWO_PARTS_MEET_ML);
        let step_field = Field::Entry(EntryPart::TubeStep);
        let step = self.optional(step_field, &form.step, parse_millilitres)?;
        let test = match form.method {
            TubeTestMethod::SaltWater => TubeTest::with_salt_water(boundary?),
            TubeTestMethod::PlainWater => {
                let fuel_field = Field::Entry(EntryPart::TubeFuel);
                let fuel = self.optional(fuel_field, &form.fuel, parse_millilitres);
                let fuel = self.required(fuel_field, fuel, problems::GIVE_HOW_MUCH_FUEL_WAS);
                let water_field = Field::Entry(EntryPart::TubeWater);
                let water = self.optional(water_field, &form.water, parse_millilitres);
                let water = self.required(water_field, water, problems::GIVE_HOW_MUCH_WATER_WAS);
                TubeTest::with_water(fuel?, water?, boundary?)
            }
        };
        let test = self.take(field, test)?;
        let usual = Volume::new::<milliliter>(USUAL_STEP_ML);
        Some(Evidence::Share(test.reading(step.unwrap_or(usual))))
    }

    fn distance(&mut self, entry: &Entry) -> Option<Length> {
        let field = Field::Entry(EntryPart::Distance);
        let units = entry.typed_in;
        let distance = self.optional(field, &entry.text, |text| DISTANCE.parse(text, units));
        self.required(field, distance, problems::GIVE_DISTANCE_DRIVEN)
    }

    fn trip_told(&mut self, form: &DriveForm) -> Option<ReadEvidence> {
        let driven = self.distance(&form.distance);
        let field = Field::Entry(EntryPart::Consumption);
        let units = form.consumption.typed_in;
        let consumption =
            self.optional(field, &form.consumption.text, |text| CONSUMPTION.parse(text, units));
        let consumption = self.required(field, consumption, problems::GIVE_MEAN_CONSUMPTION_SHOWED);
        let (driven, consumption) = (driven?, consumption?);
        let volume = consumption.over(driven);
        Some(ReadEvidence { evidence: vec![Evidence::Burned { volume }], driven })
    }
}
