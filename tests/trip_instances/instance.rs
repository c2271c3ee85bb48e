//! An instance as it stands in its file, and as a route.

use std::collections::BTreeMap;

use fillwright::calibration::{Calibration, FluidState};
use fillwright::fuel::{EnergyDensity, Extras, HydrocarbonBase, MolarDensity};
use fillwright::tank::Tank;

use fillwright::quantity::Consumption;
use fillwright::quantity::{Band, Energy, Length, Money, Share, UnitPrice, Volume};
use fillwright::trip::{
    BlendModel, Bought, Burn, CheckedRoute, Leg, PlanWanted, Pump, Route, Stop, TripObjective,
};
use serde::Deserialize;
use serde_json::Value;
use uom::si::energy::megajoule;
use uom::si::f64::MolarConcentration;
use uom::si::length::kilometer;
use uom::si::molar_concentration::mole_per_liter;
use uom::si::volume::liter;

pub(crate) type Checked<T> = Result<T, String>;

/// Litres by the names of stop and fuel.
pub(crate) type Litres = BTreeMap<String, BTreeMap<String, f64>>;

#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Instance {
    pub(crate) schema: String,
    #[serde(rename = "id")]
    _id: String,
    #[serde(rename = "title")]
    _title: Option<String>,
    #[serde(rename = "notes")]
    _notes: Option<String>,
    pub(crate) consumption_model: Model,
    pub(crate) fluid: Fluid,
    pub(crate) car: Car,
    pub(crate) calibrations: Vec<Window>,
    pub(crate) stops: Vec<Place>,
    pub(crate) legs: Vec<Stretch>,
    pub(crate) objective: Goal,
    pub(crate) end: Option<End>,
    pub(crate) uncertainty: Option<Uncertainty>,
    /// What is known of the answer; it may say more than is read here.
    #[serde(default)]
    pub(crate) reference: Value,
}

#[derive(Clone, Copy, Debug, Deserialize, PartialEq)]
#[serde(rename_all = "snake_case")]
pub(crate) enum Model {
    Energy,
    Volume,
}

#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Fluid {
    pub(crate) lhv_gasoline_mj_per_l: f64,
    pub(crate) lhv_ethanol_mj_per_l: f64,
    pub(crate) mol_per_l_gasoline: f64,
    pub(crate) mol_per_l_ethanol: f64,
}

#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Car {
    pub(crate) tank_capacity_l: f64,
    pub(crate) min_arrival_l: f64,
    pub(crate) start_volume_l: f64,
    pub(crate) start_ethanol_share_vol: f64,
    pub(crate) start_ron: f64,
}

#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Window {
    pub(crate) id: String,
    pub(crate) ethanol_min_share_vol: f64,
    pub(crate) ethanol_max_share_vol: f64,
    pub(crate) ron_min: f64,
}

#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Place {
    pub(crate) id: String,
    pub(crate) fuels: Vec<Fuel>,
    pub(crate) fixed_cost_eur: f64,
}

#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Fuel {
    pub(crate) id: String,
    pub(crate) ethanol_share_vol: f64,
    pub(crate) ron: f64,
    pub(crate) price_eur_per_l: f64,
    pub(crate) max_l: Option<f64>,
    #[serde(default)]
    pub(crate) ethanol_share_halfwidth: f64,
}

#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Stretch {
    #[serde(rename = "id")]
    _id: String,
    pub(crate) distance_km: f64,
    pub(crate) energy_mj_per_km: Option<f64>,
    pub(crate) litres_per_100km: Option<f64>,
    pub(crate) allowed_calibrations: Vec<String>,
}

#[derive(Clone, Copy, Debug, Deserialize)]
#[serde(tag = "type", rename_all = "snake_case", deny_unknown_fields)]
pub(crate) enum Goal {
    MinCost { max_cost_eur: Option<f64> },
    MinStopsThenCost { max_cost_eur: Option<f64> },
    MaxEthanolEnergyShare { max_cost_eur: Option<f64> },
}

#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct End {
    pub(crate) min_volume_l: Option<f64>,
}

#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Uncertainty {
    #[serde(default)]
    pub(crate) start_volume_halfwidth_l: f64,
    #[serde(default)]
    pub(crate) start_ethanol_share_halfwidth: f64,
    #[serde(rename = "scenarios")]
    _scenarios: Option<String>,
}

impl Goal {
    pub(crate) fn budget(self) -> Option<f64> {
        match self {
            Self::MinCost { max_cost_eur }
            | Self::MinStopsThenCost { max_cost_eur }
            | Self::MaxEthanolEnergyShare { max_cost_eur } => max_cost_eur,
        }
    }
}

#[expect(clippy::needless_pass_by_value, reason = "as map_err hands it over")]
fn text(error: impl ToString) -> String {
    error.to_string()
}

fn litres(value: f64) -> Volume {
    Volume::new::<liter>(value)
}

fn share(fraction: f64) -> Checked<Share> {
    Share::new(fraction).map_err(text)
}

/// The values around a middle; shares cannot leave 0 to 1.
fn shares(middle: f64, half: f64) -> Checked<Band<Share>> {
    Band::new(share((middle - half).max(0.0))?, share(middle)?, share((middle + half).min(1.0))?)
        .map_err(text)
}

impl Instance {
    /// What a leg takes: megajoules, or litres.
    pub(crate) fn takes(&self, leg: &Stretch) -> Checked<f64> {
        match (self.consumption_model, leg.energy_mj_per_km, leg.litres_per_100km) {
            (Model::Energy, Some(energy), None) => Ok(energy * leg.distance_km),
            (Model::Volume, None, Some(litres)) => Ok(litres * leg.distance_km / 100.0),
            _ => Err("a leg's consumption does not go with the model".into()),
        }
    }

    pub(crate) fn wish(&self, gap: f64) -> Checked<PlanWanted> {
        let objective = match self.objective {
            Goal::MinCost { .. } => TripObjective::Cheapest,
            Goal::MinStopsThenCost { .. } => TripObjective::FewestStops,
            // By volume the part of ethanol in the energy is another number.
            Goal::MaxEthanolEnergyShare { .. } if self.consumption_model == Model::Volume => {
                return Err("an energy share where consumption goes by volume".into());
            }
            Goal::MaxEthanolEnergyShare { .. } => TripObjective::MostEthanol,
        };
        let budget = self.objective.budget().map(Money::new).transpose().map_err(text)?;
        let is_robust = self.uncertainty.is_some();
        Ok(PlanWanted { objective, budget, is_robust, gap, ..PlanWanted::default() })
    }

    pub(crate) fn route(&self) -> Checked<CheckedRoute> {
        if self.schema != "trip-blend/1" {
            return Err(format!("unknown schema {}", self.schema));
        }
        let base = HydrocarbonBase::default();
        let litre = litres(1.0);
        let per_litre = |value| EnergyDensity::new(Energy::new::<megajoule>(value), litre);
        let moles = |value| MolarConcentration::new::<mole_per_liter>(value);
        let blend = BlendModel {
            petrol_energy: per_litre(self.fluid.lhv_gasoline_mj_per_l),
            ethanol_energy: per_litre(self.fluid.lhv_ethanol_mj_per_l),
            moles: MolarDensity {
                hydrocarbon: moles(self.fluid.mol_per_l_gasoline),
                ethanol: moles(self.fluid.mol_per_l_ethanol),
            },
            base,
        };
        // Each leg's own consumption stands in its factor, over that of the first.
        let first = self.legs.first().ok_or("no leg")?;
        let first_per_km = self.takes(first)? / first.distance_km;
        let per_100_km = match self.consumption_model {
            Model::Energy => first_per_km * 100.0 / self.fluid.lhv_gasoline_mj_per_l,
            Model::Volume => first_per_km * 100.0,
        };
        let consumption = Consumption::from_litres_per_100_km(per_100_km).map_err(text)?;
        let burn = match self.consumption_model {
            Model::Energy => Burn::Energy { consumption, on: Share::ZERO },
            Model::Volume => Burn::Litres(consumption),
        };
        let legs = self.legs.iter().map(|leg| self.leg(leg, first_per_km));
        let unsure = self.uncertainty.as_ref();
        let car = &self.car;
        let level_half = unsure.map_or(0.0, |unsure| unsure.start_volume_halfwidth_l);
        let share_half = unsure.map_or(0.0, |unsure| unsure.start_ethanol_share_halfwidth);
        let level =
            [car.start_volume_l - level_half, car.start_volume_l, car.start_volume_l + level_half];
        let [low, expected, high] = level.map(litres);
        let route = Route {
            tank: Tank {
                capacity: litres(car.tank_capacity_l),
                level: Band::new(low, expected, high).map_err(text)?,
                share: shares(car.start_ethanol_share_vol, share_half)?,
                ron: Some(car.start_ron),
                reserve: litres(car.min_arrival_l),
            },
            extras: Extras::default(),
            blend,
            burn,
            calibrations: self.calibrations.iter().map(calibration).collect::<Checked<_>>()?,
            injection_fluid: FluidState::Unknown,
            stops: self.stops.iter().map(|stop| self.stop(stop)).collect::<Checked<_>>()?,
            legs: legs.collect::<Checked<_>>()?,
            final_level: self.end.as_ref().and_then(|end| end.min_volume_l).map(litres),
        };
        route.checked().map_err(text)
    }

    fn leg(&self, leg: &Stretch, first_per_km: f64) -> Checked<Leg> {
        let place = |id: &String| {
            let found = self.calibrations.iter().position(|calibration| calibration.id == *id);
            found.ok_or_else(|| format!("no calibration {id}"))
        };
        Ok(Leg {
            distance: Length::new::<kilometer>(leg.distance_km),
            factor: self.takes(leg)? / leg.distance_km / first_per_km,
            calibrations: leg.allowed_calibrations.iter().map(place).collect::<Checked<_>>()?,
            ron_min: None,
        })
    }

    fn stop(&self, stop: &Place) -> Checked<Stop> {
        let pump = |fuel: &Fuel| {
            let half = if self.uncertainty.is_some() { fuel.ethanol_share_halfwidth } else { 0.0 };
            Ok(Pump {
                share: shares(fuel.ethanol_share_vol, half)?,
                extras: Extras::default(),
                price: UnitPrice::new(Money::new(fuel.price_eur_per_l).map_err(text)?, litres(1.0)),
                ron: Some(fuel.ron),
                limit: fuel.max_l.map(litres),
                closed: false,
            })
        };
        Ok(Stop {
            pumps: stop.fuels.iter().map(pump).collect::<Checked<_>>()?,
            fixed_cost: Money::new(stop.fixed_cost_eur).map_err(text)?,
        })
    }

    /// A plan under the names of the file.
    pub(crate) fn named(&self, bought: &Bought) -> Litres {
        let volumes = |(stop, volumes): (&Place, &Vec<Volume>)| {
            let fuels = stop.fuels.iter().zip(volumes);
            let named = fuels.map(|(fuel, volume)| (fuel.id.clone(), volume.get::<liter>()));
            (stop.id.clone(), named.collect())
        };
        self.stops.iter().zip(bought).map(volumes).collect()
    }
}

fn calibration(window: &Window) -> Checked<Calibration> {
    let low = share(window.ethanol_min_share_vol)?;
    Ok(Calibration {
        name: window.id.clone(),
        low,
        high: share(window.ethanol_max_share_vol)?,
        written_for: low,
        ron_min: Some(window.ron_min),
        needs_fluid: false,
    })
}
