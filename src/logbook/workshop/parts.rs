//! The fuel system that the forms of its parts describe.

use uom::si::angle::degree;
use uom::si::length::micrometer;
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::pressure::{bar, megapascal};
use uom::si::time::millisecond;

use super::forms::{Mark, PartForm, PartKind, Workshop};
use super::slot::Slot;
use super::tables;
use super::texts::{Texts, WorkshopReader};
use crate::fuel::Constant;
use crate::hardware::constants::{PLUNGER_LIMIT, PORT_DUTY_LIMIT, SUPPLY_LIMIT, WINDOW_LIMIT};
use crate::hardware::{
    Arrangement, DirectInjectors, FluidNozzle, FuelLine, FuelSystem, MethanolWater, PlungerPump,
    PortInjectors, PumpCurve, RatedFlow, Regulator, Supply,
};
use crate::logbook::complaint::Field;
use crate::logbook::reader::Optional;
use crate::quantity::notation::workshop::{
    ANGLE, BULK_MODULUS, DENSITY, INJECTOR_FLOW, LENGTH, LINE_LENGTH, MASS_FLOW, PRESSURE, TIME,
    VOLTAGE, parse_fraction,
};
use crate::quantity::{Angle, Band, GaugePressure, Length, MassDensity, Pressure, Time};

/// More injectors or pumps than any car has.
const MOST: u32 = 24;

/// The fuel system, and which form each of its parts came from.
#[derive(Clone, Debug, PartialEq)]
pub struct Parts {
    /// The system.
    pub system: FuelSystem,
    /// The forms of the sets of port injectors, in the order of the system's.
    pub port: Vec<u32>,
    /// The form of the direct injectors.
    pub direct: Option<u32>,
    /// The forms of the high-pressure pumps.
    pub plungers: Vec<u32>,
    /// The forms of the supply: its pumps, and the line.
    pub supply: Vec<u32>,
    /// Nozzles for injection fluid, with their form.
    pub fluid: Option<(u32, FluidNozzle)>,
}

impl WorkshopReader<'_> {
    /// Reads the parts that are not set aside. `None` where one of them cannot be
    /// understood: a system without it would be another one.
    pub(super) fn parts(
        &mut self,
        workshop: &Workshop,
        cylinders: Option<u32>,
        port_share: f64,
    ) -> Option<Parts> {
        let of = |kind: PartKind| {
            workshop.parts.iter().filter(move |part| part.kind == kind && !part.is(Mark::SetAside))
        };
        let mut whole = true;
        let mut port = Vec::new();
        for form in of(PartKind::PortInjectors) {
            port.push((form.id, self.port_injectors(form)));
        }
        let mut direct = None;
        for form in of(PartKind::DirectInjectors) {
            if direct.is_some() {
                self.only_one(form, "An engine has one set of direct injectors");
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
                self.only_one(form, "All pumps feed one line");
                whole = false;
            } else {
                line = Some((form.id, self.supply_line(form)));
            }
        }
        let mut fluid = None;
        for form in of(PartKind::FluidNozzle) {
            if fluid.is_some() {
                self.only_one(form, "One set of nozzles is reckoned with");
                whole = false;
            } else {
                fluid = Some((form.id, self.fluid_nozzle(form)));
            }
        }
        if let (Some((id, _)), None) = (pumps.first(), &line) {
            self.reader.complain(
                Field::Part(*id, Slot::FlowTable),
                "A pump needs the line that it feeds: add it, with the pressure to hold.",
            );
            whole = false;
        }
        let supply_forms: Vec<u32> =
            pumps.iter().map(|it| it.0).chain(line.iter().map(|it| it.0)).collect();
        let supply = match line {
            Some((_, line)) if !pumps.is_empty() => {
                let pumps: Option<Vec<Vec<PumpCurve>>> =
                    pumps.into_iter().map(|(_, pumps)| pumps).collect();
                Some(Supply { pumps: pumps?.concat(), ..line? })
            }
            _ => None,
        };
        let (port_forms, port): (Vec<_>, Vec<_>) = port.into_iter().unzip();
        let (plunger_forms, plungers): (Vec<_>, Vec<_>) = plungers.into_iter().unzip();
        let plungers: Option<Vec<Vec<PlungerPump>>> = plungers.into_iter().collect();
        let system = FuelSystem {
            port: port.into_iter().collect::<Option<_>>()?,
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
        whole.then_some(Parts {
            system,
            port: port_forms,
            direct: direct.map(|it| it.0),
            plungers: plunger_forms,
            supply: supply_forms,
            fluid,
        })
    }

    fn only_one(&mut self, form: &PartForm, why: &str) {
        let message = format!("{why}: set one of them aside, or remove it.");
        self.reader.complain(Field::PartName(form.id), message);
    }

    /// What a nozzle passes, as rated.
    fn rated(&mut self, texts: &Texts<'_>, by_mass: bool, fluid: Option<f64>) -> Option<RatedFlow> {
        let pressure = self.quantity(texts, Slot::RatedPressure, &PRESSURE);
        let pressure = self.needed(
            texts,
            Slot::RatedPressure,
            pressure,
            "Give the pressure at which it was rated: 3 bar, say.",
        );
        let density = self.quantity(texts, Slot::TestDensity, &DENSITY);
        let density = match fluid {
            Some(usual) => self.usual(
                texts,
                Slot::TestDensity,
                density,
                MassDensity::new::<kilogram_per_cubic_meter>(usual),
                "water",
            ),
            None => self.needed(
                texts,
                Slot::TestDensity,
                density,
                "Give the density of the fluid it was rated with: 684 kg/m3 for n-heptane, about \
                 770 for mineral spirits, about 745 for petrol.",
            ),
        };
        if by_mass {
            let flow = self.quantity(texts, Slot::RatedMassFlow, &MASS_FLOW);
            let flow = self.needed(texts, Slot::RatedMassFlow, flow, "Give the flow of one.");
            let rated = RatedFlow::of_mass(flow?, pressure?, density?);
            self.reader.take((texts.field)(Slot::RatedMassFlow), rated)
        } else {
            let flow = self.quantity(texts, Slot::RatedFlow, &INJECTOR_FLOW);
            let flow = self.needed(texts, Slot::RatedFlow, flow, "Give the flow of one.");
            let rated = RatedFlow::of_volume(flow?, pressure?, density?);
            self.reader.take((texts.field)(Slot::RatedFlow), rated)
        }
    }

    /// How a rail's pressure is held.
    fn regulator(&mut self, texts: &Texts<'_>, fixed: bool) -> Option<Regulator> {
        let pressure = self.quantity(texts, Slot::RailPressure, &PRESSURE);
        let pressure = self.needed(
            texts,
            Slot::RailPressure,
            pressure,
            "Give the pressure that the regulator holds.",
        )?;
        Some(if fixed {
            Regulator::Fixed(GaugePressure::new(pressure))
        } else {
            Regulator::Referenced(pressure)
        })
    }

    /// The use beyond which nobody should plan.
    fn limit(&mut self, texts: &Texts<'_>, usual: &Constant) -> Option<f64> {
        let limit = self.fraction(texts, Slot::UseLimit, 0.2..=1.0);
        let shown = format!("{:.0} %", usual.value * 100.0);
        self.usual(texts, Slot::UseLimit, limit, usual.value, shown)
    }

    fn rail(&mut self, texts: &Texts<'_>) -> Option<GaugePressure> {
        let rail = self.quantity(texts, Slot::RailPressure, &PRESSURE);
        let rail =
            self.needed(texts, Slot::RailPressure, rail, "Give the rail pressure at full load.");
        rail.map(GaugePressure::new)
    }

    fn port_injectors(&mut self, form: &PartForm) -> Option<PortInjectors> {
        let field = |slot| Field::Part(form.id, slot);
        let texts = Texts { fields: &form.fields, field: &field };
        let count = self.count(&texts, Slot::Count, MOST);
        let count = self.needed(&texts, Slot::Count, count, "Give how many there are.");
        let rated = self.rated(&texts, form.is(Mark::ByMass), None);
        let regulator = self.regulator(&texts, form.is(Mark::FixedRail));
        let voltage = self.quantity(&texts, Slot::Voltage, &VOLTAGE);
        let dead_time = self.text(&texts, Slot::DeadTime, |text, system| {
            tables::dead_time(text, voltage.flatten(), system)
        });
        let dead_time = self.needed(
            &texts,
            Slot::DeadTime,
            dead_time,
            "Give the dead time from the injector's own data: 0.95 ms, say, or a table.",
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

    fn direct_injectors(
        &mut self,
        form: &PartForm,
        cylinders: Option<u32>,
    ) -> Option<DirectInjectors> {
        let field = |slot| Field::Part(form.id, slot);
        let texts = Texts { fields: &form.fields, field: &field };
        let count = self.count(&texts, Slot::Count, MOST);
        let count = match cylinders {
            Some(cylinders) => {
                self.usual(&texts, Slot::Count, count, cylinders, "one per cylinder")
            }
            None => self.needed(&texts, Slot::Count, count, "Give how many there are."),
        };
        let rated = self.rated(&texts, form.is(Mark::ByMass), None);
        let rail = self.rail(&texts);
        let back = self.quantity(&texts, Slot::BackPressure, &PRESSURE);
        let ten = Pressure::new::<bar>(10.0);
        let shown = self.reader.printer.figure(&PRESSURE, ten);
        let back = self.usual(&texts, Slot::BackPressure, back, ten, shown);
        let window = self.quantity(&texts, Slot::Window, &ANGLE);
        let usual = Angle::new::<degree>(210.0);
        let window = self.usual(&texts, Slot::Window, window, usual, "210°");
        let offset = self.quantity(&texts, Slot::OpeningOffset, &TIME);
        let usual = Time::new::<millisecond>(0.3);
        let shown = self.reader.printer.figure(&TIME, usual);
        let offset = self.usual(&texts, Slot::OpeningOffset, offset, usual, shown);
        let limit = self.limit(&texts, &WINDOW_LIMIT);
        if window.is_some_and(|window| window <= Angle::new::<degree>(0.0)) {
            self.reader.complain(
                field(Slot::Window),
                "Give the degrees between the earliest start and the latest end, above zero.",
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

    /// Equal high-pressure pumps, as many as there are.
    fn plunger_pump(&mut self, form: &PartForm) -> Option<Vec<PlungerPump>> {
        let field = |slot| Field::Part(form.id, slot);
        let texts = Texts { fields: &form.fields, field: &field };
        let count = self.count(&texts, Slot::Count, MOST);
        let count = self.usual(&texts, Slot::Count, count, 1, "1");
        let bore = self.length(&texts, Slot::Bore, "Give the plunger's diameter.");
        let lift = self.length(&texts, Slot::Lift, "Give the plunger's way.");
        let lobes = self.count(&texts, Slot::Lobes, 12);
        let lobes =
            self.needed(&texts, Slot::Lobes, lobes, "Give the strokes per turn of its cam.");
        let drive = self.factor(&texts, Slot::DriveRatio, 0.1..=3.0);
        let drive = self.usual(&texts, Slot::DriveRatio, drive, 0.5, "camshaft speed, 0.5");
        let dead = self.factor(&texts, Slot::DeadVolume, 0.0..=5.0);
        let dead = self.usual(&texts, Slot::DeadVolume, dead, 1.0, "1 times the stroke");
        let stiff = self.quantity(&texts, Slot::BulkModulus, &BULK_MODULUS);
        let usual = PlungerPump::usual_bulk_modulus();
        let shown = format!("{:.0} MPa", usual.get::<megapascal>());
        let stiff = self.usual(&texts, Slot::BulkModulus, stiff, usual, shown);
        let efficiency = self.efficiency(&texts);
        let rail = self.rail(&texts);
        let inlet = self.quantity(&texts, Slot::InletPressure, &PRESSURE);
        let usual = Pressure::new::<bar>(5.0);
        let shown = self.reader.printer.figure(&PRESSURE, usual);
        let inlet = self.usual(&texts, Slot::InletPressure, inlet, usual, shown);
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

    fn length(&mut self, texts: &Texts<'_>, slot: Slot, missing: &str) -> Option<Length> {
        let value = self.quantity(texts, slot, &LENGTH);
        let value = self.needed(texts, slot, value, missing)?;
        if value <= Length::default() {
            self.reader.complain((texts.field)(slot), missing);
            return None;
        }
        Some(value)
    }

    /// Filling and leakage of a high-pressure pump, with what they may be.
    fn efficiency(&mut self, texts: &Texts<'_>) -> Option<Band<f64>> {
        let given = self.fraction(texts, Slot::Efficiency, 0.1..=1.0);
        let range = self.fraction_range(texts, Slot::EfficiencyRange, 0.1, 1.0);
        let (given, range) = (given?, range?);
        let usual = PlungerPump::usual_efficiency();
        match (given, range) {
            (None, None) => {
                let shown = format!(
                    "{:.0} %, {:.0} to {:.0} %",
                    usual.expected() * 100.0,
                    usual.low() * 100.0,
                    usual.high() * 100.0
                );
                self.usual(texts, Slot::Efficiency, Some(None), usual, shown)
            }
            (Some(given), None) => Some(Band::exact(given)),
            (given, Some((low, high))) => {
                let expected = given.unwrap_or(f64::midpoint(low, high));
                let band = Band::new(low, expected, high);
                if band.is_err() {
                    self.reader.complain(
                        (texts.field)(Slot::EfficiencyRange),
                        "The efficiency lies outside what it may be. Correct one of them.",
                    );
                }
                band.ok()
            }
        }
    }

    /// Two percentages with a dash or `to` between them.
    pub(super) fn fraction_range(
        &mut self,
        texts: &Texts<'_>,
        slot: Slot,
        low: f64,
        high: f64,
    ) -> Optional<(f64, f64)> {
        self.text(texts, slot, |text, _| {
            let ends = text.split_once(['-', '–']).or_else(|| text.split_once("to"));
            let Some((from, to)) = ends else {
                return Err(format!("“{}” is not a range: type it as 10-15", text.trim()));
            };
            let read = |text: &str| {
                parse_fraction(text.trim(), low..=high).map_err(|error| error.to_string())
            };
            let (from, to) = (read(from)?, read(to)?);
            if from <= to {
                Ok((from, to))
            } else {
                Err(format!("“{}” runs backwards: type the smaller one first", text.trim()))
            }
        })
    }

    /// Equal supply pumps, as many as there are, at the voltage they get.
    fn supply_pump(&mut self, form: &PartForm) -> Option<Vec<PumpCurve>> {
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
    fn supply_line(&mut self, form: &PartForm) -> Option<Supply> {
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
                    self.reader.complain(field(Slot::LineBore), missing);
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

    fn fluid_nozzle(&mut self, form: &PartForm) -> Option<FluidNozzle> {
        let field = |slot| Field::Part(form.id, slot);
        let texts = Texts { fields: &form.fields, field: &field };
        let count = self.count(&texts, Slot::Count, MOST);
        let count = self.usual(&texts, Slot::Count, count, 1, "1");
        let water = crate::fuel::constants::WATER_DENSITY.value;
        let rated = self.rated(&texts, false, Some(water));
        let pump = self.quantity(&texts, Slot::FluidPressure, &PRESSURE);
        let pump = self.needed(&texts, Slot::FluidPressure, pump, "Give its pump's pressure.");
        let strength = self.fraction(&texts, Slot::Strength, 0.0..=1.0);
        let strength = self.needed(
            &texts,
            Slot::Strength,
            strength,
            "Give the methanol in the fluid: 50 %, and by volume or by mass.",
        );
        let fluid = strength.and_then(|share| {
            let fluid = if form.is(Mark::ByMass) {
                MethanolWater::of_mass_share(share)
            } else {
                MethanolWater::of_volume_share(share)
            };
            self.reader.take(field(Slot::Strength), fluid)
        });
        Some(FluidNozzle {
            count: count?,
            rated: rated?,
            pump: GaugePressure::new(pump?),
            fluid: fluid?,
        })
    }
}
