//! The hardware as its texts describe it.

use crate::message::keys::hardware_problems;
use uom::si::angular_velocity::revolution_per_minute;
use uom::si::mass::kilogram;

use super::curves::CurveRead;
use super::engine::{Engine, SetLimit};
use super::parts::Parts;
use super::texts::{Assumption, HardwareReader, Texts};
use crate::answers::field_error::FieldError;
use crate::answers::reading::{Optional, Reader};
use crate::document::{Document, Field, HardwareField, HardwareForm, Mark, PartKind};
use crate::fuel::{Content, Extras};
use crate::hardware::{Blend, Load, LoadPoint, MethanolWater, Recipe, Wanted, recipe};
use crate::power::{CurvePoint, PowerCurve};
use crate::quantity::notation::{LITRE, Printer, VolumeField, parse_factor, parse_volume};
use crate::quantity::{AngularVelocity, Band, Mass, Share};

/// A curve is worked out in at most so many steps: finer than a chart shows.
const MOST_STEPS: f64 = 60.0;

/// Steps of engine speed that people count in, in revolutions per minute.
const STEPS_RPM: [f64; 6] = [10.0, 20.0, 50.0, 100.0, 200.0, 500.0];

/// More injection fluid than anybody mixes at a time, in litres.
const LARGEST_MIX_L: f64 = 200.0;

/// What is to be judged: a load on a fuel system, with a blend.
#[derive(Clone, Debug, PartialEq)]
pub struct HardwareAsked {
    /// The curve that the system has to serve, by its place among the curves read.
    pub target: usize,
    /// The engine.
    pub engine: Engine,
    /// What is asked of the fuel system. Injection fluid is not in it.
    pub load: Load,
    /// The blend.
    pub blend: Band<Share>,
    /// What it holds beside petrol and ethanol.
    pub extras: Extras,
    /// The fuel system.
    pub parts: Parts,
}

impl HardwareAsked {
    /// The blends at the ends of what there may be, and the one that is expected.
    pub fn blends(&self) -> Band<Blend> {
        Blend::over(&Content { ethanol: self.blend, extras: self.extras })
    }
}

/// The hardware as its texts describe it, and what is wrong with them.
#[derive(Clone, Debug, PartialEq)]
pub struct HardwareReading {
    /// The curves that can be read.
    pub curves: Vec<CurveRead>,
    /// The curve to compare with, by its place among those.
    pub compared_with: Option<usize>,
    /// The limits that people set, each with its form.
    pub limits: Vec<(u32, SetLimit)>,
    /// What is to be judged, when enough of it is understood.
    pub asked: Option<HardwareAsked>,
    /// What to pour for the injection fluid that is wanted.
    pub mix: Option<Recipe>,
    /// What is wrong.
    pub field_errors: Vec<FieldError>,
    /// What was taken where nothing was typed.
    pub assumptions: Vec<Assumption>,
}

impl HardwareReading {
    /// Reads the hardware of the car in use. `tank` is what the log says of the blend
    /// in its tank.
    pub fn of(document: &Document, tank: Option<Content>, printer: &Printer) -> Self {
        let hardware = &document.here.hardware;
        let reader = Reader::new(printer);
        let mut reader = HardwareReader { reader, assumptions: Vec::new() };
        let limits = reader.limits(hardware);
        let loss = reader.driveline_loss(hardware);
        let curves = reader.curves(hardware, loss, &limits);
        let place = |id: u32| curves.iter().position(|curve| curve.id == id);
        let compared_with = hardware.compared_with.and_then(place);
        let has_parts = hardware.parts.iter().any(|part| {
            let is_limit = matches!(
                part.kind,
                PartKind::PowerLimit | PartKind::TorqueLimit | PartKind::AirLimit
            );
            !is_limit && !part.is(Mark::SetAside)
        });
        // As long as there is neither curve nor part, nothing is missing.
        let asked = if hardware.curves.is_empty() && !has_parts {
            None
        } else {
            reader.asked(hardware, &curves, tank, has_parts)
        };
        let mix = reader.mix(hardware);
        Self {
            curves,
            compared_with,
            limits,
            asked,
            mix,
            field_errors: reader.reader.field_errors,
            assumptions: reader.assumptions,
        }
    }
}

impl HardwareReader<'_> {
    fn asked(
        &mut self,
        hardware: &HardwareForm,
        curves: &[CurveRead],
        tank: Option<Content>,
        has_parts: bool,
    ) -> Option<HardwareAsked> {
        let engine = self.engine(hardware);
        let blend = self.blend(hardware, tank);
        let cylinders = engine.as_ref().and_then(|engine| engine.cylinders);
        let port_share = engine.as_ref().map_or(0.0, |engine| engine.port_share);
        let parts = self.parts(hardware, cylinders, port_share);
        let target = curves.iter().position(|curve| curve.id == hardware.target).unwrap_or(0);
        let curve = curves.get(target)?;
        let (engine, blend, parts) = (engine?, blend?, parts?);
        let points = at_round_speeds(curve.at_crank.as_ref()?);
        let knows_boost = points.iter().all(|point| point.boost.is_some());
        if has_parts && engine.boost.is_none() && !knows_boost {
            self.reader.ask_for(
                Field::Engine(HardwareField::Boost),
                hardware_problems::GIVE_BOOST_FULL_LOAD_OR,
            );
            return None;
        }
        let load_point = |point: &CurvePoint| LoadPoint {
            speed: point.speed,
            power: curve.crank(point.power()),
            manifold: point.boost.or(engine.boost).unwrap_or_default(),
        };
        let load = Load {
            points: points.iter().map(load_point).collect(),
            demand: engine.demand,
            fluid: None,
        };
        let Content { ethanol: blend, extras } = blend;
        Some(HardwareAsked { target, engine, load, blend, extras, parts })
    }

    /// What to pour for the injection fluid that is wanted; nothing while none is.
    fn mix(&mut self, hardware: &HardwareForm) -> Option<Recipe> {
        let texts = Texts { fields: &hardware.mix, field: &Field::Mix };
        if hardware.mix.all_blank() {
            return None;
        }
        let by_mass = hardware.mix_by_mass;
        let wanted = if by_mass {
            self.text(&texts, HardwareField::MixAmount, |text, _| {
                let text = text.trim().trim_end_matches("kg");
                parse_factor(text, 0.01..=999.0).map(|it| Wanted::Mass(Mass::new::<kilogram>(it)))
            })
        } else {
            self.text(&texts, HardwareField::MixAmount, |text, units| {
                let field = VolumeField {
                    units,
                    tank: None,
                    consumption: None,
                    largest: LITRE.quantity(LARGEST_MIX_L),
                    part_is_usual: false,
                };
                parse_volume(text, &field).map(Wanted::Volume)
            })
        };
        let wanted = self.needed(
            &texts,
            HardwareField::MixAmount,
            wanted,
            hardware_problems::GIVE_HOW_MUCH_WANTED,
        );
        let strength = self.strength(&texts, HardwareField::MixStrength, by_mass);
        let strength = self.needed(
            &texts,
            HardwareField::MixStrength,
            strength,
            hardware_problems::GIVE_METHANOL_WANTED_50_SAY,
        );
        let concentrate = self.strength(&texts, HardwareField::MixConcentrate, by_mass);
        let neat = MethanolWater::of_mass_share(1.0).ok()?;
        let concentrate = self.usual(
            &texts,
            HardwareField::MixConcentrate,
            concentrate,
            neat,
            hardware_problems::TAKEN_NEAT,
        );
        let made = recipe(wanted?, strength?, concentrate?);
        self.reader.take(Field::Mix(HardwareField::MixStrength), made)
    }

    fn strength(
        &mut self,
        texts: &Texts<'_>,
        slot: HardwareField,
        by_mass: bool,
    ) -> Optional<MethanolWater> {
        match self.fraction(texts, slot, 0.0..=1.0)? {
            None => Some(None),
            Some(share) => {
                let fluid = if by_mass {
                    MethanolWater::of_mass_share(share)
                } else {
                    MethanolWater::of_volume_share(share)
                };
                self.reader.take((texts.field)(slot), fluid).map(Some)
            }
        }
    }
}

/// A curve at round engine speeds, at both its ends and at its peaks.
fn at_round_speeds(curve: &PowerCurve) -> Vec<CurvePoint> {
    let rpm = |speed: AngularVelocity| speed.get::<revolution_per_minute>();
    let (low, high) = curve.speeds();
    let (first, last) = (rpm(low), rpm(high));
    let step = STEPS_RPM.into_iter().find(|step| (last - first) / step <= MOST_STEPS);
    let step = step.unwrap_or((last - first) / MOST_STEPS);
    let mut speeds = vec![low, high, curve.peak_torque().speed, curve.peak_power().speed];
    let mut next = (first / step).floor() * step + step;
    while next < last {
        speeds.push(AngularVelocity::new::<revolution_per_minute>(next));
        next += step;
    }
    speeds.sort_by(|a, b| rpm(*a).total_cmp(&rpm(*b)));
    // What conversion adds in the last digits makes no speed of its own.
    speeds.dedup_by(|a, b| (rpm(*a) - rpm(*b)).abs() < 1e-6);
    let at = |speed: AngularVelocity| {
        Some(CurvePoint { speed, torque: curve.torque_at(speed)?, boost: curve.boost_at(speed) })
    };
    speeds.into_iter().filter_map(at).collect()
}
