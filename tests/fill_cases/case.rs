//! A case read from its JSON input.

use fillwright::fill::{Aim, CheckedProblem, FillObjective, Offer, Problem, StopRule};
use fillwright::fuel::MolarDensity;
use fillwright::quantity::{Band, Money, Share, UnitPrice, Volume};
use fillwright::tank::Tank;
use serde_json::{Map, Value};
use uom::si::f64::MolarConcentration;
use uom::si::molar_concentration::mole_per_liter;
use uom::si::volume::liter;

pub(crate) type Checked<T> = Result<T, String>;

pub(crate) struct Case {
    pub(crate) mode: String,
    pub(crate) ids: Vec<String>,
    pub(crate) problem: CheckedProblem,
    /// Bands of level, present share and pump shares, where the case has them.
    pub(crate) boxed: CheckedProblem,
    pub(crate) plan: Option<Vec<Volume>>,
    pub(crate) step: Option<Volume>,
}

/// Every input field that a case may have.
const KNOWN: &[&str] = &[
    "tank_capacity_l",
    "tank_capacity_us_gal",
    "tank_capacity_imp_gal",
    "present_volume_l",
    "present_volume_us_gal",
    "present_volume_imp_gal",
    "present_level_fraction",
    "present_ethanol_share_vol",
    "target_ethanol_share_vol",
    "ethanol_window",
    "fuels",
    "mode",
    "real_content_intervals",
    "present_volume_interval_l",
    "present_share_interval",
    "max_added_l",
    "max_cost_eur",
    "litres_per_us_gal",
    "litres_per_imp_gal",
    "ron_min",
    "present_ron",
    "mol_per_l_gasoline",
    "mol_per_l_ethanol",
    "step_l",
    "reserve_l",
    "plan_litres",
];

const KNOWN_OF_FUEL: &[&str] =
    &["id", "ethanol_share_vol", "price_eur_per_l", "ron", "max_l", "use_all"];

pub(crate) fn litres(value: f64) -> Volume {
    Volume::new::<liter>(value)
}

/// A number, or the exact fraction `p/q` as text.
pub(crate) fn number(value: &Value) -> Checked<f64> {
    if let Some(number) = value.as_f64() {
        return Ok(number);
    }
    let text = value.as_str().ok_or_else(|| format!("{value} is not a number"))?;
    fraction(text)
}

pub(crate) fn fraction(text: &str) -> Checked<f64> {
    let part =
        |text: &str| text.trim().parse::<f64>().map_err(|_| format!("{text} is not a number"));
    match text.split_once('/') {
        Some((above, below)) => Ok(part(above)? / part(below)?),
        None => part(text),
    }
}

fn share(fraction: f64) -> Checked<Share> {
    Share::new(fraction).map_err(|error| error.to_string())
}

pub(crate) fn interval(value: &Value) -> Checked<(f64, f64)> {
    match value.as_array().map(Vec::as_slice) {
        Some([low, high]) => Ok((number(low)?, number(high)?)),
        _ => Err(format!("{value} is not an interval")),
    }
}

/// A band around an expected value, which may lie outside the interval of what
/// is really possible (a label that promises more): the interval then has the
/// last word.
fn band(low: f64, expected: f64, high: f64) -> Checked<Band<Share>> {
    Band::new(share(low)?, share(expected.clamp(low, high))?, share(high)?)
        .map_err(|error| error.to_string())
}

fn only_known(map: &Map<String, Value>, known: &[&str]) -> Checked<()> {
    match map.keys().find(|key| !known.contains(&key.as_str())) {
        Some(key) => Err(format!("unknown input {key}")),
        None => Ok(()),
    }
}

impl Case {
    #[expect(clippy::too_many_lines, reason = "one field after the other")]
    pub(crate) fn read(input: &Value) -> Checked<Self> {
        let map = input.as_object().ok_or("the input is not an object")?;
        only_known(map, KNOWN)?;
        let optional = |key: &str| match map.get(key) {
            None | Some(Value::Null) => Ok(None),
            Some(value) => number(value).map(Some),
        };
        let mode = map.get("mode").and_then(Value::as_str).ok_or("no mode")?.to_owned();
        let us = optional("litres_per_us_gal")?;
        let imperial = optional("litres_per_imp_gal")?;
        let volume = |stem: &str| -> Checked<Option<f64>> {
            for (suffix, factor) in [("l", Some(1.0)), ("us_gal", us), ("imp_gal", imperial)] {
                if let Some(value) = optional(&format!("{stem}_{suffix}"))? {
                    let factor = factor.ok_or_else(|| format!("no litres per {suffix}"))?;
                    return Ok(Some(value * factor));
                }
            }
            Ok(None)
        };
        let capacity = volume("tank_capacity")?.ok_or("no capacity")?;
        let level = match volume("present_volume")? {
            Some(level) => level,
            None => optional("present_level_fraction")?.ok_or("no level")? * capacity,
        };
        let present = optional("present_ethanol_share_vol")?.unwrap_or(0.0);
        let defaults = MolarDensity::default();
        let molar_density = MolarDensity {
            hydrocarbon: optional("mol_per_l_gasoline")?
                .map_or(defaults.hydrocarbon, MolarConcentration::new::<mole_per_liter>),
            ethanol: optional("mol_per_l_ethanol")?
                .map_or(defaults.ethanol, MolarConcentration::new::<mole_per_liter>),
        };
        let mut ids = Vec::new();
        let mut offers = Vec::new();
        for fuel in map.get("fuels").and_then(Value::as_array).ok_or("no fuels")? {
            let fuel = fuel.as_object().ok_or("a fuel is not an object")?;
            only_known(fuel, KNOWN_OF_FUEL)?;
            let number_of = |key: &str| fuel.get(key).map(number).transpose();
            ids.push(fuel.get("id").and_then(Value::as_str).ok_or("a fuel has no id")?.to_owned());
            let of_fuel = share(number_of("ethanol_share_vol")?.ok_or("a fuel has no share")?)?;
            let mut offer = Offer::new(Band::exact(of_fuel));
            offer.price = number_of("price_eur_per_l")?
                .map(|price| Money::new(price).map(|money| UnitPrice::new(money, litres(1.0))))
                .transpose()
                .map_err(|error| error.to_string())?;
            offer.ron = number_of("ron")?;
            offer.limit = number_of("max_l")?.map(litres);
            offer.use_all = fuel.get("use_all").and_then(Value::as_bool).unwrap_or(false);
            offers.push(offer);
        }
        let (stop, objective) = Self::rule(
            &mode,
            level,
            capacity,
            optional("max_added_l")?,
            optional("max_cost_eur")?,
        )?;
        let aim = match (optional("target_ethanol_share_vol")?, map.get("ethanol_window")) {
            (Some(target), None) => Aim::share(share(target)?),
            (None, Some(window)) => {
                let (low, high) = interval(window)?;
                Aim::window(share(low)?, share(high)?).map_err(|error| error.to_string())?
            }
            // Only where a given plan is judged.
            (None, None) if mode == "evaluate_robust" => Aim::share(Share::ZERO),
            _ => return Err("either a target or a window".into()),
        };
        let problem = Problem {
            tank: Tank {
                capacity: litres(capacity),
                level: Band::exact(litres(level)),
                share: Band::exact(share(present)?),
                ron: optional("present_ron")?,
                reserve: litres(optional("reserve_l")?.unwrap_or(0.0)),
            },
            offers,
            aim,
            ron_min: optional("ron_min")?,
            stop,
            objective,
            molar_density,
            meter_error: 0.0,
        };
        let mut boxed = problem.clone();
        if let Some(value) = map.get("present_volume_interval_l") {
            let (low, high) = interval(value)?;
            boxed.tank.level = Band::new(litres(low), litres(level), litres(high))
                .map_err(|error| error.to_string())?;
        }
        if let Some(value) = map.get("present_share_interval") {
            let (low, high) = interval(value)?;
            boxed.tank.share = band(low, present, high)?;
        }
        if let Some(value) = map.get("real_content_intervals") {
            for (id, value) in value.as_object().ok_or("contents are not an object")? {
                let index = ids.iter().position(|known| known == id).ok_or("no such fuel")?;
                let (low, high) = interval(value)?;
                let expected = boxed.offers[index].share.expected().fraction();
                boxed.offers[index].share = band(low, expected, high)?;
            }
        }
        let plan = match map.get("plan_litres").map(|value| value.as_object().ok_or("no plan")) {
            Some(plan) => {
                let plan = plan?;
                let of = |id: &String| plan.get(id).map_or(Ok(0.0), number).map(litres);
                Some(ids.iter().map(of).collect::<Checked<Vec<_>>>()?)
            }
            None => None,
        };
        let step = optional("step_l")?.map(litres);
        let checked = |problem: Problem| problem.checked().map_err(|error| error.to_string());
        Ok(Self { mode, ids, problem: checked(problem)?, boxed: checked(boxed)?, plan, step })
    }

    /// The stop rule and the objective that a mode names.
    fn rule(
        mode: &str,
        level: f64,
        capacity: f64,
        most_added: Option<f64>,
        most_cost: Option<f64>,
    ) -> Checked<(StopRule, FillObjective)> {
        let budget = most_cost
            .map(|cost| Money::new(cost).map(StopRule::Budget).map_err(|error| error.to_string()))
            .transpose()?;
        let limit = match (most_added.map(|most| StopRule::AtMost(litres(most))), budget) {
            (Some(_), Some(_)) => return Err("a limit of litres and one of money together".into()),
            (limit, budget) => limit.or(budget),
        };
        let to_full = || match (most_added, budget) {
            (Some(most), None) => Ok(StopRule::Level(litres((level + most).min(capacity)))),
            (None, None) => Ok(StopRule::Brim),
            _ => Err("a limit of money when filling up".to_owned()),
        };
        Ok(match mode {
            "fill_full" | "fill_full_least_cost" | "fill_full_rounded" | "dose_then_top_up" => {
                (to_full()?, FillObjective::LeastCost)
            }
            "least_litres" | "closest" | "robust_window_least_litres" => {
                (limit.unwrap_or(StopRule::Least), FillObjective::LeastVolume)
            }
            "exact_most_litres" => (limit.unwrap_or(StopRule::Least), FillObjective::MostVolume),
            "exact_least_cost" => (limit.unwrap_or(StopRule::Least), FillObjective::LeastCost),
            "cycles" | "evaluate_robust" => (StopRule::Brim, FillObjective::LeastCost),
            other => return Err(format!("unknown mode {other}")),
        })
    }
}
