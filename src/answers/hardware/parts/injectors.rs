//! Injectors, and nozzles for injection fluid.

use crate::message::keys::hardware_problems;
use uom::si::angle::degree;
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::pressure::bar;
use uom::si::time::millisecond;

use super::MOST;
use crate::answers::hardware::tables;
use crate::answers::hardware::texts::{HardwareReader, Texts};
use crate::document::{Field, HardwareField, Mark, PartForm};
use crate::hardware::constants::{PORT_DUTY_LIMIT, WINDOW_LIMIT};
use crate::hardware::{DirectInjectors, FluidNozzle, MethanolWater, PortInjectors, RatedFlow};
use crate::quantity::notation::quantities::{
    ANGLE, DENSITY, INJECTOR_FLOW, MASS_FLOW, PRESSURE, TIME, VOLTAGE,
};
use crate::quantity::{Angle, GaugePressure, MassDensity, Pressure, Time};

impl HardwareReader<'_> {
    pub(super) fn port_injectors(&mut self, form: &PartForm) -> Option<PortInjectors> {
        let field = |slot| Field::Part(form.id, slot);
        let texts = Texts { fields: &form.fields, field: &field };
        let count = self.count(&texts, HardwareField::Count, MOST);
        let count =
            self.needed(&texts, HardwareField::Count, count, hardware_problems::GIVE_HOW_MANY_ARE);
        let rated = self.rated(&texts, form.is(Mark::ByMass), None);
        let regulator = self.regulator(&texts, form.is(Mark::FixedRail));
        let voltage = self.quantity(&texts, HardwareField::Voltage, &VOLTAGE);
        let dead_time = self.text(&texts, HardwareField::DeadTime, |text, system| {
            tables::dead_time(text, voltage.flatten(), system)
        });
        let dead_time = self.needed(
            &texts,
            HardwareField::DeadTime,
            dead_time,
            hardware_problems::GIVE_DEAD_TIME_FROM_INJECTOR,
        );
        let limit = self.limit(&texts, &PORT_DUTY_LIMIT);
        voltage?;
        Some(PortInjectors {
            count: count?,
            rated: rated?,
            regulator: regulator?,
            dead_time: dead_time?,
            limit: limit?,
        })
    }

    pub(super) fn direct_injectors(
        &mut self,
        form: &PartForm,
        cylinders: Option<u32>,
    ) -> Option<DirectInjectors> {
        let field = |slot| Field::Part(form.id, slot);
        let texts = Texts { fields: &form.fields, field: &field };
        let count = self.count(&texts, HardwareField::Count, MOST);
        let count = match cylinders {
            Some(cylinders) => self.usual(
                &texts,
                HardwareField::Count,
                count,
                cylinders,
                hardware_problems::TAKEN_ONE_PER_CYLINDER,
            ),
            None => self.needed(
                &texts,
                HardwareField::Count,
                count,
                hardware_problems::GIVE_HOW_MANY_ARE,
            ),
        };
        let rated = self.rated(&texts, form.is(Mark::ByMass), None);
        let rail = self.rail(&texts);
        let back = self.quantity(&texts, HardwareField::BackPressure, &PRESSURE);
        let ten = Pressure::new::<bar>(10.0);
        let shown = self.reader.printer.figure(&PRESSURE, ten);
        let back = self.usual(&texts, HardwareField::BackPressure, back, ten, shown);
        let window = self.quantity(&texts, HardwareField::Window, &ANGLE);
        let usual = Angle::new::<degree>(210.0);
        let window = self.usual(&texts, HardwareField::Window, window, usual, "210°");
        let offset = self.quantity(&texts, HardwareField::OpeningOffset, &TIME);
        let usual = Time::new::<millisecond>(0.3);
        let shown = self.reader.printer.figure(&TIME, usual);
        let offset = self.usual(&texts, HardwareField::OpeningOffset, offset, usual, shown);
        let limit = self.limit(&texts, &WINDOW_LIMIT);
        if window.is_some_and(|window| window <= Angle::new::<degree>(0.0)) {
            self.reader.report(
                field(HardwareField::Window),
                hardware_problems::GIVE_DEGREES_BETWEEN_EARLIEST_START,
            );
            return None;
        }
        Some(DirectInjectors {
            count: count?,
            rated: rated?,
            rail: rail?,
            back_pressure: GaugePressure::new(back?),
            window: window?,
            opening_offset: offset?,
            limit: limit?,
        })
    }

    pub(super) fn fluid_nozzle(&mut self, form: &PartForm) -> Option<FluidNozzle> {
        let field = |slot| Field::Part(form.id, slot);
        let texts = Texts { fields: &form.fields, field: &field };
        let count = self.count(&texts, HardwareField::Count, MOST);
        let count = self.usual(&texts, HardwareField::Count, count, 1, "1");
        let water = crate::fuel::constants::WATER_DENSITY.value;
        let rated = self.rated(&texts, false, Some(water));
        let pump = self.quantity(&texts, HardwareField::FluidPressure, &PRESSURE);
        let pump = self.needed(
            &texts,
            HardwareField::FluidPressure,
            pump,
            hardware_problems::GIVE_PUMP_S_PRESSURE,
        );
        let strength = self.fraction(&texts, HardwareField::Strength, 0.0..=1.0);
        let strength = self.needed(
            &texts,
            HardwareField::Strength,
            strength,
            hardware_problems::GIVE_METHANOL_FLUID_50_VOLUME,
        );
        let fluid = strength.and_then(|share| {
            let fluid = if form.is(Mark::ByMass) {
                MethanolWater::of_mass_share(share)
            } else {
                MethanolWater::of_volume_share(share)
            };
            self.reader.take(field(HardwareField::Strength), fluid)
        });
        Some(FluidNozzle {
            count: count?,
            rated: rated?,
            pump: GaugePressure::new(pump?),
            fluid: fluid?,
        })
    }
    /// What a nozzle passes, as rated.
    fn rated(&mut self, texts: &Texts<'_>, by_mass: bool, fluid: Option<f64>) -> Option<RatedFlow> {
        let pressure = self.quantity(texts, HardwareField::RatedPressure, &PRESSURE);
        let pressure = self.needed(
            texts,
            HardwareField::RatedPressure,
            pressure,
            hardware_problems::GIVE_PRESSURE_WHICH_WAS_RATED,
        );
        let density = self.quantity(texts, HardwareField::TestDensity, &DENSITY);
        let density = match fluid {
            Some(usual) => self.usual(
                texts,
                HardwareField::TestDensity,
                density,
                MassDensity::new::<kilogram_per_cubic_meter>(usual),
                hardware_problems::TAKEN_WATER,
            ),
            None => self.needed(
                texts,
                HardwareField::TestDensity,
                density,
                hardware_problems::GIVE_DENSITY_FLUID_WAS_RATED,
            ),
        };
        if by_mass {
            let flow = self.quantity(texts, HardwareField::RatedMassFlow, &MASS_FLOW);
            let flow = self.needed(
                texts,
                HardwareField::RatedMassFlow,
                flow,
                hardware_problems::GIVE_FLOW_ONE,
            );
            let rated = RatedFlow::of_mass(flow?, pressure?, density?);
            self.reader.take((texts.field)(HardwareField::RatedMassFlow), rated)
        } else {
            let flow = self.quantity(texts, HardwareField::RatedFlow, &INJECTOR_FLOW);
            let flow = self.needed(
                texts,
                HardwareField::RatedFlow,
                flow,
                hardware_problems::GIVE_FLOW_ONE,
            );
            let rated = RatedFlow::of_volume(flow?, pressure?, density?);
            self.reader.take((texts.field)(HardwareField::RatedFlow), rated)
        }
    }
}
