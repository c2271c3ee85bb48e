//! What a case expects, field by field.

use crate::case::{Case, Checked, fraction, interval, litres, number};
use fillwright::fill::{
    BurnDown, CheckedProblem, FillImpossible, FillPlan, FillRule, Obstacle, Order, PlannedPour,
    Solution,
};
use fillwright::quantity::{Band, Share, Volume};
use serde_json::{Map, Value};
use uom::si::volume::liter;

/// The cases are exact; this is what floating point may cost.
const EXACT: f64 = 1e-9;
/// Fields named `..._decimal` carry six digits.
const DECIMAL: f64 = 1e-6;

/// Everything that the solver says about a case.
struct Found {
    status: &'static str,
    plan: Option<FillPlan>,
    unrounded: Option<FillPlan>,
    impossible: Option<Box<FillImpossible>>,
    order: Option<Order>,
    worst: Option<Band<Share>>,
    fits: Option<bool>,
}

pub(crate) fn check(case: &Case, expected: &Map<String, Value>) -> Checked<()> {
    let found = find(case)?;
    expected.iter().try_for_each(|(key, value)| {
        let (exact_key, tolerance) = match key.as_str() {
            "worst_case_decimal" => ("worst_case_share_interval", DECIMAL),
            "highest_ron_decimal" => ("highest_ron_in_window", DECIMAL),
            key => key.strip_suffix("_decimal").map_or((key, EXACT), |stem| (stem, DECIMAL)),
        };
        let against = Against { case, found: &found, tolerance };
        against.field(exact_key, value).map_err(|problem| format!("{key}: {problem}"))
    })
}

fn find(case: &Case) -> Checked<Found> {
    let mut found = Found {
        status: "ok",
        plan: None,
        unrounded: None,
        impossible: None,
        order: None,
        worst: None,
        fits: None,
    };
    match case.mode.as_str() {
        "evaluate_robust" => {
            let volumes = case.plan.as_ref().ok_or("no plan to judge")?;
            let worst = case.boxed.worst(&fixed(volumes));
            found.plan = Some(case.problem.after(volumes));
            found.worst = Some(worst.share);
            found.fits = Some(worst.fits);
        }
        "robust_window_least_litres" => match case.boxed.robust() {
            Ok(robust) => {
                found.worst = Some(robust.order.worst.share);
                found.plan = Some(robust.plan);
                found.order = Some(robust.order);
            }
            Err(proofs) => {
                assert!(!proofs.is_empty() && proofs.iter().all(|proof| !proof.proof.is_empty()));
                found.status = "impossible_robustly";
            }
        },
        "cycles" => {
            case.problem.cycles().ok_or("no cycles lead there")?;
        }
        _ => match case.problem.solve() {
            Solution::Plan(plan) => {
                if plan.is_nothing() {
                    found.status = "already";
                }
                found.order = case.boxed.orders(&plan).into_iter().next();
                found.plan = Some(match (case.step, &found.order) {
                    (Some(step), Some(order)) if case.mode == "fill_full_rounded" => {
                        found.unrounded = Some(plan.clone());
                        case.problem.rounded(&plan, order, step, |_| true).unwrap_or(plan)
                    }
                    _ => plan.clone(),
                });
                let poured = found.plan.as_ref().map(|plan| fixed(&plan.volumes));
                found.worst = poured.map(|pours| case.boxed.worst(&pours).share);
            }
            Solution::Impossible(impossible) => {
                found.status = match impossible.obstacle {
                    Obstacle::TooWeakEver(_) | Obstacle::TooStrongEver(_) => "impossible_ever",
                    Obstacle::TooFull | Obstacle::FuelLimit => "impossible_now",
                    Obstacle::StopRule => "impossible_with_limit",
                    Obstacle::Overshoots | Obstacle::Octane => "impossible",
                };
                found.impossible = Some(impossible);
            }
        },
    }
    Ok(found)
}

fn fixed(volumes: &[Volume]) -> Vec<PlannedPour> {
    let pour = |(fuel, &volume)| PlannedPour { fuel, volume, to_click: false };
    volumes.iter().enumerate().map(pour).collect()
}

fn close(got: f64, wanted: f64, tolerance: f64) -> Checked<()> {
    if (got - wanted).abs() <= tolerance * wanted.abs().max(1.0) {
        Ok(())
    } else {
        Err(format!("{got} instead of {wanted}"))
    }
}

fn same(got: bool, wanted: &Value) -> Checked<()> {
    if Some(got) == wanted.as_bool() { Ok(()) } else { Err(format!("{got} instead of {wanted}")) }
}

/// The share when a burn-down has been followed by its refill.
fn share_after(problem: &CheckedProblem, burn_down: &BurnDown) -> f64 {
    let mut from = problem.clone().into_inner();
    from.tank.level = Band::exact(burn_down.level);
    from.after(&burn_down.then).share.map_or(f64::NAN, Share::fraction)
}

/// What was found, to be compared field by field.
struct Against<'a> {
    case: &'a Case,
    found: &'a Found,
    tolerance: f64,
}

impl Against<'_> {
    fn is(&self, got: f64, wanted: &Value) -> Checked<()> {
        close(got, number(wanted)?, self.tolerance)
    }

    fn is_interval(&self, got: (Share, Share), wanted: &Value) -> Checked<()> {
        let (low, high) = interval(wanted)?;
        close(got.0.fraction(), low, self.tolerance)?;
        close(got.1.fraction(), high, self.tolerance)
    }

    /// Litres by fuel; a fuel that is not named must not be poured.
    fn volumes(&self, got: &[Volume], wanted: &Value) -> Checked<()> {
        let ids = &self.case.ids;
        let wanted = wanted.as_object().ok_or("litres are not an object")?;
        if let Some(id) = wanted.keys().find(|id| !ids.contains(id)) {
            return Err(format!("no fuel {id}"));
        }
        ids.iter().zip(got).try_for_each(|(id, got)| {
            self.is(got.get::<liter>(), wanted.get(id).unwrap_or(&Value::from(0.0)))
                .map_err(|problem| format!("{id} {problem}"))
        })
    }

    #[expect(clippy::too_many_lines, reason = "a flat table of fields")]
    fn field(&self, key: &str, wanted: &Value) -> Checked<()> {
        let Self { case, found, .. } = *self;
        let problem = &case.problem;
        let plan = || found.plan.as_ref().ok_or_else(|| "there is no plan".to_owned());
        let unrounded = || found.unrounded.as_ref().ok_or_else(|| "nothing was rounded".to_owned());
        let impossible = || found.impossible.as_ref().ok_or_else(|| "it is possible".to_owned());
        let burn_down =
            || impossible()?.burn_down.as_ref().ok_or_else(|| "no burning down".to_owned());
        let order = || found.order.as_ref().ok_or_else(|| "no order".to_owned());
        let plan_share = || plan()?.share.map(Share::fraction).ok_or_else(|| "no share".to_owned());
        match key {
            "status" => {
                if wanted.as_str() == Some(found.status) {
                    Ok(())
                } else {
                    Err(format!("{} instead of {wanted} ({:?})", found.status, found.impossible))
                }
            }
            "litres" => self.volumes(&plan()?.volumes, wanted),
            "unrounded_litres" => self.volumes(&unrounded()?.volumes, wanted),
            "added_l" => self.is(plan()?.added.get::<liter>(), wanted),
            "final_volume_l" => self.is(plan()?.level.get::<liter>(), wanted),
            "final_ethanol_share_vol" | "nominal_share" => match found.impossible {
                Some(_) => self.is(share_after(problem, burn_down()?), wanted),
                None => self.is(plan_share()?, wanted),
            },
            "share_error" => {
                let exact = unrounded()?.share.map_or(f64::NAN, Share::fraction);
                self.is((plan_share()? - exact).abs(), wanted)
            }
            "cost_eur" => self.is(plan()?.cost.ok_or("no cost")?.amount(), wanted),
            "cost_eur_decimal" => {
                close(plan()?.cost.ok_or("no cost")?.amount(), number(wanted)?, DECIMAL)
            }
            "final_ron" => self.is(plan()?.ron.ok_or("no octane")?, wanted),
            "unique_optimum" => same(is_unique(problem, plan()?), wanted),
            "needed_added_share" => {
                let level = problem.tank.level.expected();
                let total = plan()?.level.get::<liter>() * plan_share()?;
                let before = level.get::<liter>() * problem.tank.share.expected().fraction();
                self.is((total - before) / plan()?.added.get::<liter>(), wanted)
            }
            "us_gal" => {
                let factor = 3.785_411_784; // 231 cubic inches of 25.4 mm each, exactly
                let gallons: Vec<Volume> =
                    plan()?.volumes.iter().map(|v| litres(v.get::<liter>() / factor)).collect();
                self.volumes(&gallons, wanted)
            }
            "reachable_share_interval" | "reachable_share_interval_at_full" => {
                let reachable = match &found.impossible {
                    Some(impossible) => impossible.reachable,
                    None => problem.reachable(),
                };
                self.is_interval(reachable.ok_or("nothing is reachable")?, wanted)
            }
            "burn_down_to_l" => self.is(burn_down()?.level.get::<liter>(), wanted),
            "burn_l" | "drain_l" => self.is(burn_down()?.away.get::<liter>(), wanted),
            "then_litres" => self.volumes(&burn_down()?.then, wanted),
            "closest" => self.closest(impossible()?, wanted),
            "zero_add_keeps_target" => {
                same(problem.aim.admits(problem.tank.share.expected()), wanted)
            }
            "supremum_share" => match impossible()?.obstacle {
                Obstacle::TooWeakEver(share) => self.is(share.fraction(), wanted),
                other => Err(format!("{other:?}")),
            },
            "infimum_share" => match impossible()?.obstacle {
                Obstacle::TooStrongEver(share) => self.is(share.fraction(), wanted),
                other => Err(format!("{other:?}")),
            },
            "litres_needed_without_limit" => self.is(
                impossible()?.without_limit.as_ref().ok_or("never")?.added.get::<liter>(),
                wanted,
            ),
            "largest_final_volume_at_target_l" => self.is(
                impossible()?.fullest_at_aim.as_ref().ok_or("never")?.level.get::<liter>(),
                wanted,
            ),
            "binding" => {
                let named: Vec<String> = impossible()?
                    .binding
                    .iter()
                    .filter_map(|rule| match rule {
                        FillRule::FuelLimit(fuel) => Some(format!("limit of {}", case.ids[*fuel])),
                        _ => None,
                    })
                    .collect();
                if named.iter().any(|name| wanted == name) {
                    Ok(())
                } else {
                    Err(format!("{named:?}"))
                }
            }
            "highest_ron_in_window" => self.is(
                impossible()?.highest_ron.as_ref().ok_or("octane is not what fails")?.0,
                wanted,
            ),
            "at_litres" => {
                let highest =
                    impossible()?.highest_ron.as_ref().ok_or("octane is not what fails")?;
                self.volumes(&highest.1.volumes, wanted)
            }
            "cycles" | "share_after_each" => cycles(problem, wanted),
            "single_cycle_burn_down_to_l" => {
                self.is(problem.level_to_burn_to().ok_or("never")?.level.get::<liter>(), wanted)
            }
            "below_reserve" => {
                same(problem.level_to_burn_to().ok_or("never")?.below_reserve, wanted)
            }
            "worst_case_share_interval" => {
                let worst = found.worst.ok_or("no worst case")?;
                self.is_interval((worst.low(), worst.high()), wanted)
            }
            "fits_tank_for_sure" => same(found.fits.ok_or("not judged")?, wanted),
            "real_share_at_corner" => corners_of_contents(case, plan()?, wanted),
            "corners" => corners_of_box(case, plan()?, wanted),
            "dose_litres" => {
                let mut doses = vec![litres(0.0); case.ids.len()];
                for pour in order()?.pours.iter().filter(|pour| !pour.to_click) {
                    doses[pour.fuel] = pour.volume;
                }
                self.volumes(&doses, wanted)
            }
            "top_up_litres_if_level_is" => by_level(wanted, |level| {
                let from = case.boxed.changed(|it| it.tank.level = Band::exact(level)).ok();
                let range = order().ok().and_then(|order| from?.top_up_volumes(order));
                range.map_or(f64::NAN, |(least, _)| least.get::<liter>())
            }),
            "final_ethanol_share_vol_if_level_is" => {
                let order = order()?;
                by_level(wanted, |level| case.boxed.share_from(&order.pours, level).fraction())
            }
            "compare_fixed_litres_plan_share_if_level_is" => {
                // Without regard to the brim, which a higher level would overflow.
                let plan = plan()?;
                by_level(wanted, |level| {
                    let mut from = case.boxed.clone().into_inner();
                    from.tank.level = Band::exact(level);
                    from.after(&plan.volumes).share.map_or(f64::NAN, Share::fraction)
                })
            }
            "ratio_eur_per_lift" => {
                let target = problem.aim.low().fraction();
                let wanted = wanted.as_object().ok_or("not an object")?;
                wanted.iter().try_for_each(|(id, value)| {
                    let index =
                        case.ids.iter().position(|known| known == id).ok_or("no such fuel")?;
                    let offer = &problem.offers[index];
                    let price = offer.price.ok_or("no price")?.of(litres(1.0)).amount();
                    self.is(price / (offer.share.expected().fraction() - target), value)
                })
            }
            "worst_case_at_most" => {
                let most = robust_most(case)?;
                let worst = case.boxed.worst(&fixed(&most.volumes)).share;
                self.is_interval((worst.low(), worst.high()), wanted)
            }
            "nominal_possible" => same(matches!(problem.solve(), Solution::Plan(_)), wanted),
            // Words for people; the weights of our own proof are checked where they
            // are made.
            "certificate" => wanted.as_str().map(|_| ()).ok_or_else(|| "not a text".into()),
            _ => match key.strip_prefix("most_").and_then(|rest| rest.strip_suffix("_alone")) {
                Some(id) if case.ids.iter().any(|known| known == id) => {
                    self.is(robust_most(case)?.added.get::<liter>(), wanted)
                }
                _ => Err("unknown field".into()),
            },
        }
    }

    fn closest(&self, impossible: &FillImpossible, wanted: &Value) -> Checked<()> {
        let plan = impossible.closest.as_ref().ok_or("nothing comes close")?;
        let wanted = wanted.as_object().ok_or("closest is not an object")?;
        wanted.iter().try_for_each(|(key, value)| match key.as_str() {
            "litres" => self.volumes(&plan.volumes, value),
            "final_ethanol_share_vol" => {
                self.is(plan.share.map_or(f64::NAN, Share::fraction), value)
            }
            _ => Err(format!("unknown field {key}")),
        })
    }
}

/// The robust plan with as much as possible of the strongest fuel alone.
fn robust_most(case: &Case) -> Checked<FillPlan> {
    let strongest = (0..case.ids.len())
        .max_by(|&a, &b| {
            let share = |fuel: usize| case.boxed.offers[fuel].share.expected().fraction();
            share(a).total_cmp(&share(b))
        })
        .ok_or("no fuel")?;
    case.boxed.robust_most_of(strongest).ok_or_else(|| "no robust plan of one fuel".into())
}

/// A unique optimum does not depend on the order in which fuels are listed.
fn is_unique(problem: &CheckedProblem, plan: &FillPlan) -> bool {
    let Ok(reversed) = problem.changed(|it| it.offers.reverse()) else { return false };
    match reversed.solve() {
        Solution::Plan(other) => plan
            .volumes
            .iter()
            .zip(other.volumes.iter().rev())
            .all(|(a, b)| (a.get::<liter>() - b.get::<liter>()).abs() < EXACT * 60.0),
        Solution::Impossible(_) => false,
    }
}

fn cycles(problem: &CheckedProblem, wanted: &Value) -> Checked<()> {
    let shares = problem.cycles().ok_or("no cycles lead there")?.shares;
    match wanted.as_array() {
        Some(wanted) if wanted.len() == shares.len() => shares
            .iter()
            .zip(wanted)
            .try_for_each(|(got, wanted)| close(got.fraction(), number(wanted)?, EXACT)),
        Some(wanted) => Err(format!("{} instead of {} cycles", shares.len(), wanted.len())),
        None => {
            let count = u32::try_from(shares.len()).map_err(|error| error.to_string())?;
            close(f64::from(count), number(wanted)?, EXACT)
        }
    }
}

fn by_level(wanted: &Value, got: impl Fn(Volume) -> f64) -> Checked<()> {
    let wanted = wanted.as_object().ok_or("not an object")?;
    wanted
        .iter()
        .try_for_each(|(level, value)| close(got(litres(fraction(level)?)), number(value)?, EXACT))
}

/// Corners named like `A=0 B=70`, contents in percent.
fn corners_of_contents(case: &Case, plan: &FillPlan, wanted: &Value) -> Checked<()> {
    let wanted = wanted.as_object().ok_or("not an object")?;
    wanted.iter().try_for_each(|(corner, value)| {
        let mut really = case.problem.clone().into_inner();
        for part in corner.split(' ') {
            let (id, percent) = part.split_once('=').ok_or("no corner")?;
            let index = case.ids.iter().position(|known| known == id).ok_or("no such fuel")?;
            let share = Share::from_percent(fraction(percent)?).map_err(|e| e.to_string())?;
            really.offers[index].share = Band::exact(share);
        }
        close(
            really.after(&plan.volumes).share.map_or(f64::NAN, Share::fraction),
            number(value)?,
            EXACT,
        )
    })
}

/// Corners named like `V0=12 low`: that level, all shares at one end.
fn corners_of_box(case: &Case, plan: &FillPlan, wanted: &Value) -> Checked<()> {
    let wanted = wanted.as_object().ok_or("not an object")?;
    wanted.iter().try_for_each(|(corner, value)| {
        let (level, end) = corner.split_once(' ').ok_or("no corner")?;
        let level = fraction(level.strip_prefix("V0=").ok_or("no level")?)?;
        let pick = |band: &Band<Share>| match end {
            "low" => Ok(Band::exact(band.low())),
            "high" => Ok(Band::exact(band.high())),
            other => Err(format!("no end {other}")),
        };
        let mut really = case.boxed.clone().into_inner();
        really.tank.level = Band::exact(litres(level));
        really.tank.share = pick(&really.tank.share)?;
        for offer in &mut really.offers {
            offer.share = pick(&offer.share)?;
        }
        close(
            really.after(&plan.volumes).share.map_or(f64::NAN, Share::fraction),
            number(value)?,
            EXACT,
        )
    })
}
