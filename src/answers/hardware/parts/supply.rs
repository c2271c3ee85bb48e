//! The low-pressure supply: pumps, line and regulator.

use uom::si::length::micrometer;

use super::MOST;
use crate::answers::hardware::tables;
use crate::answers::hardware::texts::{Texts, WorkshopReader};
use crate::document::{Field, Mark, PartForm, Slot};
use crate::hardware::constants::SUPPLY_LIMIT;
use crate::hardware::{Arrangement, FuelLine, PumpCurve, Supply};
use crate::quantity::notation::hardware::{LENGTH, LINE_LENGTH, PRESSURE, VOLTAGE};
use crate::quantity::{Length, Pressure};

impl WorkshopReader<'_> {
    /// Equal supply pumps, as many as there are, at the voltage they get.
    pub(super) fn supply_pump(&mut self, form: &PartForm) -> Option<Vec<PumpCurve>> {
        let field = |slot| Field::Part(form.id, slot);
        let texts = Texts { fields: &form.fields, field: &field };
        let count = self.count(&texts, Slot::Count, MOST);
        let count = self.usual(&texts, Slot::Count, count, 1, "1");
        let voltage = self.quantity(&texts, Slot::Voltage, &VOLTAGE);
        let curve = self.text(&texts, Slot::FlowTable, |text, system| {
            tables::pump_curve(text, voltage.flatten(), system)
        });
        let curve = self.needed(
            &texts,
            Slot::FlowTable,
            curve,
            "Give the pump's measured flow: a pressure and a flow in each line.",
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
        let other = self.quantity(&texts, Slot::OtherLosses, &PRESSURE);
        let length = self.quantity(&texts, Slot::LineLength, &LINE_LENGTH);
        let bore = self.quantity(&texts, Slot::LineBore, &LENGTH);
        let roughness = self.quantity(&texts, Slot::LineRoughness, &LENGTH);
        let rise = self.quantity(&texts, Slot::LineRise, &LINE_LENGTH);
        let limit = self.limit(&texts, &SUPPLY_LIMIT);
        let (length, bore) = (length?, bore?);
        let line = match length {
            None => None,
            Some(length) => {
                let missing = "Give the line's inner diameter, or clear its length.";
                let Some(bore) = bore.filter(|bore| *bore > Length::default()) else {
                    self.reader.ask_for(field(Slot::LineBore), missing);
                    return None;
                };
                let drawn = Length::new::<micrometer>(1.5);
                let roughness =
                    self.usual(&texts, Slot::LineRoughness, roughness, drawn, "1.5 µm, drawn tube");
                Some(FuelLine {
                    length,
                    bore,
                    roughness: roughness?,
                    head: rise?.unwrap_or_default(),
                })
            }
        };
        let other =
            self.usual(&texts, Slot::OtherLosses, other, Pressure::default(), "none measured");
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
