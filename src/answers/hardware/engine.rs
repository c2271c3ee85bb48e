//! The engine and what is asked of it, from the texts.

use crate::message::keys::hardware_problems;
use uom::si::angular_velocity::revolution_per_minute;

use super::texts::{HardwareReader, Texts};
use crate::answers::reading::{Optional, ShareOf};
use crate::document::{
    BlendForm, Field, HardwareField, HardwareForm, Mark, MeasuredAt, PartForm, PartKind,
};
use crate::fuel::Content;
use crate::hardware::{AirRoute, BrakeSpecificFuelConsumption, Demand, FuelProperties, PowerRoute};
use crate::power::{DrivelineLoss, Limit, LimitOf};
use crate::quantity::notation::quantities::{
    AIR_FLOW, AIR_PRESSURE, BOOST, ENGINE_SPEED, LITRES, POWER, SPECIFIC_CONSUMPTION, TEMPERATURE,
    TORQUE,
};
use crate::quantity::notation::{parse_lambda, parse_share};
use crate::quantity::{
    AbsolutePressure, AngularVelocity, Band, CrankPower, GaugePressure, MassRate, Pressure, Share,
    ThermodynamicTemperature, Volume,
};

/// How far a specific consumption may be off where nothing was typed (common
/// practice, no source).
const USUAL_DOUBT: f64 = 0.08;

/// How far a driveline loss may be off, either way, where nothing was typed:
/// published wheel and crank figures of one car scatter from about 9 to 15 %.
const LOSS_DOUBT: f64 = 0.03;

/// The reserve that is wanted where nothing was typed.
const USUAL_RESERVE: f64 = 0.10;

/// The most that an engine turns E85 into work better than petrol.
const LARGEST_GAIN: f64 = 0.20;

/// Beyond any engine's speed, in revolutions per minute: the end of a limit that has
/// none.
const FASTEST_RPM: f64 = 25_000.0;

/// What the air route needs beyond engine speed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Breathing {
    /// Swept volume of all cylinders.
    pub displacement: Volume,
    /// Volumetric efficiency, referred to the manifold.
    pub volumetric_efficiency: f64,
    /// The temperature of the charge.
    pub temperature: ThermodynamicTemperature,
}

impl Breathing {
    /// The air route at a boost.
    pub fn route(&self, boost: GaugePressure, ambient: AbsolutePressure) -> AirRoute {
        AirRoute {
            displacement: self.displacement,
            volumetric_efficiency: self.volumetric_efficiency,
            manifold: boost.absolute(ambient),
            manifold_temperature: self.temperature,
            vapour: Pressure::default(),
        }
    }
}

/// The engine, as typed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Engine {
    /// How much fuel it takes.
    pub demand: Demand,
    /// What the air route needs, if all of it was given.
    pub breathing: Option<Breathing>,
    /// Boost where a curve does not say it.
    pub boost: Option<GaugePressure>,
    /// The pressure of the air around.
    pub ambient: AbsolutePressure,
    /// The reserve that is wanted.
    pub reserve: f64,
    /// How many cylinders.
    pub cylinders: Option<u32>,
    /// The share of fuel that goes through the port injectors, where there are both.
    pub port_share: f64,
}

/// A limit that somebody set.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum SetLimit {
    /// Of power or torque, over all speeds or some.
    Curve(Limit),
    /// Of the air that the compressor is rated for.
    Air(MassRate),
}

impl HardwareReader<'_> {
    pub(super) fn engine(&mut self, hardware: &HardwareForm) -> Option<Engine> {
        let texts = Texts { fields: &hardware.engine, field: &Field::Engine };
        let consumption =
            self.quantity(&texts, HardwareField::SpecificConsumption, &SPECIFIC_CONSUMPTION);
        let consumption = self.needed(
            &texts,
            HardwareField::SpecificConsumption,
            consumption,
            hardware_problems::GIVE_FUEL_UNIT_WORK_TAKES,
        );
        let doubt = self.fraction(&texts, HardwareField::ConsumptionError, 0.0..=0.5);
        let doubt =
            self.usual(&texts, HardwareField::ConsumptionError, doubt, USUAL_DOUBT, "± 8 %");
        let reference =
            self.text(&texts, HardwareField::ConsumptionFuel, |text, _| parse_share(text));
        let reference = self.usual(
            &texts,
            HardwareField::ConsumptionFuel,
            reference,
            Share::ZERO,
            hardware_problems::TAKEN_PETROL,
        );
        let gain = self.fraction(&texts, HardwareField::EfficiencyGain, 0.0..=LARGEST_GAIN);
        let gain = self.usual(
            &texts,
            HardwareField::EfficiencyGain,
            gain,
            0.0,
            hardware_problems::TAKEN_NO_GAIN,
        );
        let lambda = self.text(&texts, HardwareField::Lambda, parse_lambda);
        let lambda = self.needed(
            &texts,
            HardwareField::Lambda,
            lambda,
            hardware_problems::GIVE_LAMBDA_FULL_LOAD_0,
        );
        let boost = self.quantity(&texts, HardwareField::Boost, &BOOST);
        let ambient = self.quantity(&texts, HardwareField::AmbientPressure, &AIR_PRESSURE);
        let standard = AbsolutePressure::standard_atmosphere();
        let shown = self.reader.printer.air_pressure(standard);
        let ambient = self.usual(&texts, HardwareField::AmbientPressure, ambient, standard, shown);
        let displacement = self.quantity(&texts, HardwareField::Displacement, &LITRES);
        let cylinders = self.count(&texts, HardwareField::Cylinders, 16);
        let efficiency = self.fraction(&texts, HardwareField::VolumetricEfficiency, 0.3..=1.5);
        let temperature = self.quantity(&texts, HardwareField::ManifoldTemperature, &TEMPERATURE);
        let port_share = self.fraction(&texts, HardwareField::PortShare, 0.0..=1.0);
        let port_share = self.port_share(&texts, hardware, port_share);
        let reserve = self.fraction(&texts, HardwareField::Reserve, 0.0..=1.0);
        let reserve = self.usual(&texts, HardwareField::Reserve, reserve, USUAL_RESERVE, "10 %");
        let reference = reference?;
        let breathing = match (displacement?, efficiency?, temperature?) {
            (Some(displacement), Some(volumetric_efficiency), Some(temperature)) => {
                Some(Breathing { displacement, volumetric_efficiency, temperature })
            }
            _ => None,
        };
        let demand = Demand {
            route: PowerRoute {
                consumption: BrakeSpecificFuelConsumption::of_grams_per_kilowatt_hour(
                    consumption?.grams_per_kilowatt_hour(),
                ),
                reference: FuelProperties::of_share(reference),
            },
            reference,
            doubt: doubt?,
            gain_at_e85: gain?,
            lambda: lambda?,
        };
        Some(Engine {
            demand,
            breathing,
            boost: boost?,
            ambient: ambient?,
            reserve: reserve?,
            cylinders: cylinders?,
            port_share: port_share?,
        })
    }

    /// The share of fuel through the ports has to be given only where there are both
    /// kinds of injectors.
    fn port_share(
        &mut self,
        texts: &Texts<'_>,
        hardware: &HardwareForm,
        given: Optional<f64>,
    ) -> Option<f64> {
        let has = |kinds: &[PartKind]| {
            let mut parts = hardware.parts.iter();
            parts.any(|part| kinds.contains(&part.kind) && !part.is(Mark::SetAside))
        };
        let has_port = has(&[PartKind::PortInjectors]);
        let has_direct = has(&[PartKind::DirectInjectors, PartKind::PlungerPump]);
        if has_port && has_direct {
            self.needed(
                texts,
                HardwareField::PortShare,
                given,
                hardware_problems::GIVE_SHARE_FUEL_GOES_THROUGH,
            )
        } else {
            given.map(Option::unwrap_or_default)
        }
    }

    /// The loss between crank and wheels. It has to be given where a curve was
    /// measured at the wheels.
    pub(super) fn driveline_loss(&mut self, hardware: &HardwareForm) -> Option<DrivelineLoss> {
        let texts = Texts { fields: &hardware.engine, field: &Field::Engine };
        let given = self.fraction(&texts, HardwareField::DrivelineLoss, 0.0..=0.4);
        let range = self.fraction_range(&texts, HardwareField::DrivelineLossRange, 0.0, 0.4);
        let (given, range) = (given?, range?);
        let band = match (given, range) {
            (None, None) => {
                if hardware.curves.iter().any(|curve| curve.place == MeasuredAt::Wheel) {
                    self.reader.ask_for(
                        Field::Engine(HardwareField::DrivelineLoss),
                        hardware_problems::GIVE_LOSS_BETWEEN_CRANK_WHEELS,
                    );
                }
                return None;
            }
            (Some(given), None) => {
                let (low, high) = ((given - LOSS_DOUBT).max(0.0), (given + LOSS_DOUBT).min(0.4));
                let [low_shown, high_shown] = [low, high].map(|it| format!("{:.0}", it * 100.0));
                let shown =
                    hardware_problems::TakenBetween { low: low_shown, high: high_shown }.sentence();
                let slot = HardwareField::DrivelineLossRange;
                return self
                    .usual(&texts, slot, Some(None), Band::new(low, given, high), shown)?
                    .ok()
                    .and_then(|band| DrivelineLoss::of_crank(band).ok());
            }
            (given, Some((low, high))) => {
                Band::new(low, given.unwrap_or(f64::midpoint(low, high)), high)
            }
        };
        let Ok(band) = band else {
            self.reader.report(
                Field::Engine(HardwareField::DrivelineLossRange),
                hardware_problems::LOSS_LIES_OUTSIDE_WHAT_MAY,
            );
            return None;
        };
        self.reader.take(Field::Engine(HardwareField::DrivelineLoss), DrivelineLoss::of_crank(band))
    }

    /// The blend that is judged. `tank` is what the log says is in there.
    pub(super) fn blend(
        &mut self,
        hardware: &HardwareForm,
        tank: Option<Content>,
    ) -> Option<Content> {
        match hardware.blend {
            BlendForm::Tank => {
                if tank.is_none() {
                    self.reader.ask_for(
                        Field::Engine(HardwareField::BlendShare),
                        hardware_problems::LOG_DOES_NOT_SAY_WHAT,
                    );
                }
                tank
            }
            BlendForm::Typed => {
                let text = |slot| hardware.engine.get(slot).map_or("", |entry| &entry.text);
                let share = self.reader.share(
                    (Field::Engine(HardwareField::BlendShare), text(HardwareField::BlendShare)),
                    (Field::Engine(HardwareField::BlendRange), text(HardwareField::BlendRange)),
                    ShareOf::Supposed,
                    hardware_problems::GIVE_BLEND_RECKON_E30_OR,
                );
                share.map(Content::splash)
            }
        }
    }

    /// The limits that people set, each with its form.
    pub(super) fn limits(&mut self, hardware: &HardwareForm) -> Vec<(u32, SetLimit)> {
        let parts = hardware.parts.iter().filter(|part| !part.is(Mark::SetAside));
        parts.filter_map(|form| Some((form.id, self.limit_of(form)?))).collect()
    }

    fn limit_of(&mut self, form: &PartForm) -> Option<SetLimit> {
        let field = |slot| Field::Part(form.id, slot);
        let texts = Texts { fields: &form.fields, field: &field };
        let missing = hardware_problems::GIVE_LIMIT_OR_SET_ASIDE;
        let of = match form.kind {
            PartKind::PowerLimit => {
                let most = self.quantity(&texts, HardwareField::LimitPower, &POWER);
                let most = self.needed(&texts, HardwareField::LimitPower, most, missing)?;
                LimitOf::Power(CrankPower::new(most))
            }
            PartKind::TorqueLimit => {
                let most = self.quantity(&texts, HardwareField::LimitTorque, &TORQUE);
                LimitOf::Torque(self.needed(&texts, HardwareField::LimitTorque, most, missing)?)
            }
            PartKind::AirLimit => {
                let most = self.quantity(&texts, HardwareField::LimitAir, &AIR_FLOW);
                return Some(SetLimit::Air(self.needed(
                    &texts,
                    HardwareField::LimitAir,
                    most,
                    missing,
                )?));
            }
            _ => return None,
        };
        let from = self.quantity(&texts, HardwareField::FromSpeed, &ENGINE_SPEED)?;
        let to = self.quantity(&texts, HardwareField::ToSpeed, &ENGINE_SPEED)?;
        let speeds = (from.is_some() || to.is_some()).then(|| {
            let fastest = AngularVelocity::new::<revolution_per_minute>(FASTEST_RPM);
            (from.unwrap_or_default(), to.unwrap_or(fastest))
        });
        if speeds.is_some_and(|(from, to)| from >= to) {
            self.reader.report(
                field(HardwareField::ToSpeed),
                hardware_problems::RANGE_ENDS_BEFORE_BEGINS_GIVE,
            );
            return None;
        }
        Some(SetLimit::Curve(Limit { of, speeds }))
    }
}
