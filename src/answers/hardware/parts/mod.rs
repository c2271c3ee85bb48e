//! The fuel system that the forms of its parts describe.

mod injectors;
mod plungers;
mod supply;

use super::texts::{HardwareReader, Texts};
use crate::answers::problem::FieldProblem;
use crate::answers::reading::Optional;
use crate::document::{Field, HardwareField, HardwareForm, Mark, PartForm, PartKind};
use crate::fuel::Constant;
use crate::hardware::{FluidNozzle, FuelSystem, PartOf, PlungerPump, PumpCurve, Regulator, Supply};
use crate::message::Message;
use crate::message::keys::hardware_problems;
use crate::quantity::GaugePressure;
use crate::quantity::notation::parse_fraction;
use crate::quantity::notation::quantities::PRESSURE;

/// More injectors or pumps than any car has.
const MOST: u32 = 24;

/// The fuel system, and which form each of its parts came from.
#[derive(Clone, Debug, PartialEq)]
pub struct Parts {
    /// The system.
    pub system: FuelSystem,
    /// The forms with the part that each describes.
    pub forms: Vec<(PartOf, u32)>,
    /// Nozzles for injection fluid, with their form.
    pub fluid: Option<(u32, FluidNozzle)>,
}

impl Parts {
    /// The forms that describe a part.
    pub(super) fn forms_of(&self, part: PartOf) -> Vec<u32> {
        self.forms.iter().filter(|(of, _)| *of == part).map(|(_, form)| *form).collect()
    }
}

impl HardwareReader<'_> {
    /// Reads the parts that are not set aside. `None` where one of them cannot be
    /// understood: a system without it would be another one.
    pub(super) fn parts(
        &mut self,
        hardware: &HardwareForm,
        cylinders: Option<u32>,
        port_share: f64,
    ) -> Option<Parts> {
        let of = |kind: PartKind| {
            hardware.parts.iter().filter(move |part| part.kind == kind && !part.is(Mark::SetAside))
        };
        let mut whole = true;
        let mut port = Vec::new();
        for form in of(PartKind::PortInjectors) {
            port.push((form.id, self.port_injectors(form)));
        }
        let mut direct = None;
        for form in of(PartKind::DirectInjectors) {
            if direct.is_some() {
                self.only_one(form, hardware_problems::ONE_SET_OF_DIRECT);
                whole = false;
            } else {
                direct = Some((form.id, self.direct_injectors(form, cylinders)));
            }
        }
        let mut plungers = Vec::new();
        for form in of(PartKind::PlungerPump) {
            let pump = self.plunger_pump(form);
            plungers.push((form.id, pump));
        }
        let mut pumps = Vec::new();
        for form in of(PartKind::SupplyPump) {
            pumps.push((form.id, self.supply_pump(form)));
        }
        let mut line = None;
        for form in of(PartKind::SupplyLine) {
            if line.is_some() {
                self.only_one(form, hardware_problems::ONE_LINE);
                whole = false;
            } else {
                line = Some((form.id, self.supply_line(form)));
            }
        }
        let mut fluid = None;
        for form in of(PartKind::FluidNozzle) {
            if fluid.is_some() {
                self.only_one(form, hardware_problems::ONE_SET_OF_NOZZLES);
                whole = false;
            } else {
                fluid = Some((form.id, self.fluid_nozzle(form)));
            }
        }
        if let (Some((id, _)), None) = (pumps.first(), &line) {
            self.reader.report(
                Field::Part(*id, HardwareField::FlowTable),
                hardware_problems::PUMP_NEEDS_LINE_FEEDS_ADD,
            );
            whole = false;
        }
        let of_supply = pumps.iter().map(|it| it.0).chain(line.iter().map(|it| it.0));
        let forms = port.iter().enumerate().map(|(set, it)| (PartOf::Port(set), it.0));
        let forms = forms.chain(direct.iter().map(|it| (PartOf::Direct, it.0)));
        let forms = forms.chain(plungers.iter().map(|it| (PartOf::Plungers, it.0)));
        let forms = forms.chain(of_supply.map(|form| (PartOf::Supply, form))).collect();
        let line = match line {
            Some((_, read)) => Some(read?),
            None => None,
        };
        let pumps: Option<Vec<Vec<PumpCurve>>> =
            pumps.into_iter().map(|(_, pumps)| pumps).collect();
        let pumps = pumps?.concat();
        let supply = line.filter(|_| !pumps.is_empty()).map(|line| Supply { pumps, ..line });
        let plungers: Option<Vec<Vec<PlungerPump>>> =
            plungers.into_iter().map(|(_, pumps)| pumps).collect();
        let system = FuelSystem {
            port: port.into_iter().map(|(_, set)| set).collect::<Option<_>>()?,
            direct: match direct {
                Some((_, read)) => Some(read?),
                None => None,
            },
            port_share,
            plungers: plungers?.concat(),
            supply,
        };
        let fluid = match fluid {
            Some((id, read)) => Some((id, read?)),
            None => None,
        };
        whole.then_some(Parts { system, forms, fluid })
    }

    fn only_one(&mut self, form: &PartForm, why: Message) {
        self.reader.report(Field::PartName(form.id), why);
    }

    /// How a rail's pressure is held.
    fn regulator(&mut self, texts: &Texts<'_>, fixed: bool) -> Option<Regulator> {
        let pressure = self.quantity(texts, HardwareField::RailPressure, &PRESSURE);
        let pressure = self.needed(
            texts,
            HardwareField::RailPressure,
            pressure,
            hardware_problems::GIVE_PRESSURE_REGULATOR_HOLDS,
        )?;
        Some(if fixed {
            Regulator::Fixed(GaugePressure::new(pressure))
        } else {
            Regulator::Referenced(pressure)
        })
    }

    /// The use beyond which nobody should plan.
    fn limit(&mut self, texts: &Texts<'_>, usual: &Constant) -> Option<f64> {
        let limit = self.fraction(texts, HardwareField::UseLimit, 0.2..=1.0);
        let shown = format!("{:.0} %", usual.value * 100.0);
        self.usual(texts, HardwareField::UseLimit, limit, usual.value, shown)
    }

    fn rail(&mut self, texts: &Texts<'_>) -> Option<GaugePressure> {
        let rail = self.quantity(texts, HardwareField::RailPressure, &PRESSURE);
        let rail = self.needed(
            texts,
            HardwareField::RailPressure,
            rail,
            hardware_problems::GIVE_RAIL_PRESSURE_FULL_LOAD,
        );
        rail.map(GaugePressure::new)
    }

    /// Two percentages with a dash or `to` between them.
    pub(super) fn fraction_range(
        &mut self,
        texts: &Texts<'_>,
        slot: HardwareField,
        low: f64,
        high: f64,
    ) -> Optional<(f64, f64)> {
        self.text(texts, slot, |text, _| {
            let ends = text.split_once(['-', '–']).or_else(|| text.split_once("to"));
            let Some((from, to)) = ends else {
                let not_a_range = hardware_problems::NotARange { given: text.trim() };
                return Err(not_a_range.sentence().into());
            };
            let read = |text: &str| parse_fraction(text.trim(), low..=high);
            let (from, to) = (read(from)?, read(to)?);
            if from <= to {
                Ok::<_, FieldProblem>((from, to))
            } else {
                Err(hardware_problems::Backwards { given: text.trim() }.sentence().into())
            }
        })
    }
}
