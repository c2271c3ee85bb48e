//! The entry that is being written, checked before it is kept.

use crate::answers::field_error::FieldError;
use crate::answers::reading::Reader;
use crate::document::{CarFile, EntryPart, Event, Field, Moment, What};
use crate::message::keys::problems;
use crate::quantity::ThermodynamicTemperature;
use crate::quantity::notation::{Entry, Printer, parse_pulse_width};
use crate::tank::temperature_of_pulse;

impl CarFile {
    /// What is wrong with the entry being written.
    pub fn draft_errors(&self, printer: &Printer) -> Vec<FieldError> {
        self.checked_draft(printer).err().unwrap_or_default()
    }

    /// The entry being written, or what is wrong with it.
    pub(crate) fn checked_draft(
        &self,
        printer: &Printer,
    ) -> Result<Option<Event>, Vec<FieldError>> {
        let Some(draft) = &self.draft else { return Ok(None) };
        let mut reader = Reader::new(printer);
        let known = reader.car(&self.car);
        // What is wrong with the car is said there.
        reader.field_errors.clear();
        let time = Moment::new(&draft.time, draft.minutes_ahead);
        let time = reader.take(Field::Entry(EntryPart::Time), time);
        let mut what = draft.what.clone();
        if let What::Fill(fill) = &mut what {
            fill.fuels.retain(|fuel| !fuel.poured.is_blank());
        }
        if let What::Drain(volume) = &mut what {
            if draft.drained_completely {
                *volume = Entry::default();
            } else if volume.is_blank() {
                let message = problems::SAY_HOW_MUCH_WAS_DRAINED;
                reader.report(Field::Entry(EntryPart::Drained), message);
            }
        }
        let told = reader.told(&what, &known, self.car.sensor_scale);
        match (time, told) {
            (Some(time), Some(_)) if reader.field_errors.is_empty() => Ok(Some(Event {
                id: draft.id.clone(),
                revision: 1,
                sequence: 0,
                removed: false,
                time,
                place: draft.place.clone(),
                note: draft.note.clone(),
                what,
            })),
            _ => Err(reader.field_errors),
        }
    }

    /// The fuel temperature that the pulse of the sensor reading being written
    /// tells, on this car's scale.
    pub fn draft_temperature(&self) -> Option<ThermodynamicTemperature> {
        let What::Sensor(form) = &self.draft.as_ref()?.what else { return None };
        temperature_of_pulse(parse_pulse_width(&form.pulse).ok()?, self.car.sensor_scale).ok()
    }

    /// Writes the entry into the log, if nothing is wrong with it. Returns
    /// whether it did.
    pub fn keep_draft(&mut self, printer: &Printer) -> bool {
        let Ok(Some(event)) = self.checked_draft(printer) else { return false };
        self.log.write(event);
        self.draft = None;
        true
    }
}
