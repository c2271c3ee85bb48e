//! The low-pressure supply: pumps, line and regulator.

use crate::message::keys::hardware_problems;
use uom::si::length::micrometer;

use super::MOST;
use crate::answers::hardware::tables;
use crate::answers::hardware::texts::{HardwareReader, Texts};
use crate::document::{Field, HardwareField, Mark, PartForm};
use crate::hardware::constants::SUPPLY_LIMIT;
use crate::hardware::{Arrangement, FuelLine, PumpCurve, Supply};
use crate::quantity::notation::quantities::{LENGTH, LINE_LENGTH, PRESSURE, VOLTAGE};
use crate::quantity::{Length, Pressure};

impl HardwareReader<'_> {
    /// Equal supply pumps, as many as there are, at the voltage they get.
    pub(super) fn supply_pump(&mut self, form: &PartForm) -> Option<Vec<PumpCurve>> {
        let field = |slot| Field::Part(form.id, slot);
        let texts = Texts { fields: &form.fields, field: &field };
        let count = self.count(&texts, HardwareField::Count, MOST);
        let count = self.usual(&texts, HardwareField::Count, count, 1, "1");
        let voltage = self.quantity(&texts, HardwareField::Voltage, &VOLTAGE);
        let curve = self.text(&texts, HardwareField::FlowTable, |text, system| {
            tables::pump_curve(text, voltage.flatten(), system)
        });
        let curve = self.needed(
            &texts,
            HardwareField::FlowTable,
            curve,
            hardware_problems::GIVE_PUMP_S_MEASURED_FLOW,
        );
        voltage?;
        let curve = curve?;
        Some((0..count?).map(|_| curve.clone()).collect())
    }

    /// The supply without its pumps.
    pub(super) fn supply_line(&mut self, form: &PartForm) -> Option<Supply> {
        let field = |slot| Field::Part(form.id, slot);
        let texts = Texts { fields: &form.fields, field: &field };
        let regulator = self.regulator(&texts, form.is(Mark::FixedRail));
        let other = self.quantity(&texts, HardwareField::OtherLosses, &PRESSURE);
        let length = self.quantity(&texts, HardwareField::LineLength, &LINE_LENGTH);
        let bore = self.quantity(&texts, HardwareField::LineBore, &LENGTH);
        let roughness = self.quantity(&texts, HardwareField::LineRoughness, &LENGTH);
        let rise = self.quantity(&texts, HardwareField::LineRise, &LINE_LENGTH);
        let limit = self.limit(&texts, &SUPPLY_LIMIT);
        let (length, bore) = (length?, bore?);
        let line = match length {
            None => None,
            Some(length) => {
                let missing = hardware_problems::GIVE_LINE_S_INNER_DIAMETER;
                let Some(bore) = bore.filter(|bore| *bore > Length::default()) else {
                    self.reader.ask_for(field(HardwareField::LineBore), missing);
                    return None;
                };
                let drawn = Length::new::<micrometer>(1.5);
                let roughness = self.usual(
                    &texts,
                    HardwareField::LineRoughness,
                    roughness,
                    drawn,
                    hardware_problems::TAKEN_DRAWN_TUBE,
                );
                Some(FuelLine {
                    length,
                    bore,
                    roughness: roughness?,
                    head: rise?.unwrap_or_default(),
                })
            }
        };
        let other = self.usual(
            &texts,
            HardwareField::OtherLosses,
            other,
            Pressure::default(),
            hardware_problems::TAKEN_NONE_MEASURED,
        );
        Some(Supply {
            pumps: Vec::new(),
            arrangement: if form.is(Mark::InSeries) {
                Arrangement::Series
            } else {
                Arrangement::Parallel
            },
            regulator: regulator?,
            lines: line.into_iter().collect(),
            other_losses: other?,
            limit: limit?,
        })
    }
}
