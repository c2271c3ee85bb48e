//! High-pressure pumps.

use crate::message::Message;
use crate::message::keys::hardware_problems;
use uom::si::pressure::{bar, megapascal};

use super::MOST;
use crate::answers::hardware::texts::{HardwareReader, Texts};
use crate::document::{Field, HardwareField, PartForm};
use crate::hardware::PlungerPump;
use crate::hardware::constants::PLUNGER_LIMIT;
use crate::quantity::notation::quantities::{BULK_MODULUS, LENGTH, PRESSURE};
use crate::quantity::{Band, GaugePressure, Length, Pressure};

impl HardwareReader<'_> {
    /// Equal high-pressure pumps, as many as there are.
    pub(super) fn plunger_pump(&mut self, form: &PartForm) -> Option<Vec<PlungerPump>> {
        let field = |slot| Field::Part(form.id, slot);
        let texts = Texts { fields: &form.fields, field: &field };
        let count = self.count(&texts, HardwareField::Count, MOST);
        let count = self.usual(&texts, HardwareField::Count, count, 1, "1");
        let bore =
            self.length(&texts, HardwareField::Bore, hardware_problems::GIVE_PLUNGER_S_DIAMETER);
        let lift = self.length(&texts, HardwareField::Lift, hardware_problems::GIVE_PLUNGER_S_WAY);
        let lobes = self.count(&texts, HardwareField::Lobes, 12);
        let lobes = self.needed(
            &texts,
            HardwareField::Lobes,
            lobes,
            hardware_problems::GIVE_STROKES_PER_TURN_CAM,
        );
        let drive = self.factor(&texts, HardwareField::DriveRatio, 0.1..=3.0);
        let drive = self.usual(
            &texts,
            HardwareField::DriveRatio,
            drive,
            0.5,
            hardware_problems::TAKEN_CAMSHAFT,
        );
        let dead = self.factor(&texts, HardwareField::DeadVolume, 0.0..=5.0);
        let dead = self.usual(
            &texts,
            HardwareField::DeadVolume,
            dead,
            1.0,
            hardware_problems::TAKEN_STROKE,
        );
        let stiff = self.quantity(&texts, HardwareField::BulkModulus, &BULK_MODULUS);
        let usual = PlungerPump::usual_bulk_modulus();
        let shown = format!("{:.0} MPa", usual.get::<megapascal>());
        let stiff = self.usual(&texts, HardwareField::BulkModulus, stiff, usual, shown);
        let efficiency = self.efficiency(&texts);
        let rail = self.rail(&texts);
        let inlet = self.quantity(&texts, HardwareField::InletPressure, &PRESSURE);
        let usual = Pressure::new::<bar>(5.0);
        let shown = self.reader.printer.figure(&PRESSURE, usual);
        let inlet = self.usual(&texts, HardwareField::InletPressure, inlet, usual, shown);
        let limit = self.limit(&texts, &PLUNGER_LIMIT);
        let pump = PlungerPump {
            bore: bore?,
            lift: lift?,
            lobes: lobes?,
            drive_ratio: drive?,
            dead_volume_ratio: dead?,
            bulk_modulus: stiff?,
            efficiency: efficiency?,
            rail: rail?,
            inlet: GaugePressure::new(inlet?),
            limit: limit?,
        };
        Some((0..count?).map(|_| pump).collect())
    }

    fn length(
        &mut self,
        texts: &Texts<'_>,
        slot: HardwareField,
        missing: Message,
    ) -> Option<Length> {
        let value = self.quantity(texts, slot, &LENGTH);
        let value = self.needed(texts, slot, value, missing)?;
        if value <= Length::default() {
            self.reader.report((texts.field)(slot), missing);
            return None;
        }
        Some(value)
    }

    /// Filling and leakage of a high-pressure pump, with what they may be.
    fn efficiency(&mut self, texts: &Texts<'_>) -> Option<Band<f64>> {
        let given = self.fraction(texts, HardwareField::Efficiency, 0.1..=1.0);
        let range = self.fraction_range(texts, HardwareField::EfficiencyRange, 0.1, 1.0);
        let (given, range) = (given?, range?);
        let usual = PlungerPump::usual_efficiency();
        match (given, range) {
            (None, None) => {
                let [expected, low, high] = [usual.expected(), usual.low(), usual.high()]
                    .map(|it| format!("{:.0}", it * 100.0));
                let shown = hardware_problems::TakenWithEnds { expected, low, high }.sentence();
                self.usual(texts, HardwareField::Efficiency, Some(None), usual, shown)
            }
            (Some(given), None) => Some(Band::exact(given)),
            (given, Some((low, high))) => {
                let expected = given.unwrap_or(f64::midpoint(low, high));
                let band = Band::new(low, expected, high);
                if band.is_err() {
                    self.reader.report(
                        (texts.field)(HardwareField::EfficiencyRange),
                        hardware_problems::EFFICIENCY_LIES_OUTSIDE_WHAT_MAY,
                    );
                }
                band.ok()
            }
        }
    }
}
