//! A trip as an accountant would follow it: every batch of fuel that was ever poured
//! stays a batch of its own, of which a part is still in the tank. Nothing here
//! knows the planner.

use crate::instance::{Checked, Fuel, Goal, Instance, Litres, Model};

/// What came of a plan.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Outcome {
    pub(crate) cost: f64,
    pub(crate) stops: usize,
    pub(crate) ethanol_energy_share: f64,
    /// How far the worst rule is missed, in litres.
    pub(crate) violation: f64,
}

struct Batch {
    litres: f64,
    share: f64,
    ron: f64,
}

/// Follows a plan through every scenario of the instance.
pub(crate) fn follow(instance: &Instance, plan: &Litres) -> Checked<Outcome> {
    let mut worst: Option<Outcome> = None;
    let signs: &[f64] = if instance.uncertainty.is_some() { &[-1.0, 1.0] } else { &[0.0] };
    for level in signs {
        for share in signs {
            let outcome = follow_one(instance, plan, *level, *share)?;
            let violation = worst.map_or(0.0, |worst| worst.violation).max(outcome.violation);
            worst = Some(Outcome { violation, ..outcome });
        }
    }
    worst.ok_or_else(|| "no scenario".into())
}

fn follow_one(instance: &Instance, plan: &Litres, level: f64, share: f64) -> Checked<Outcome> {
    let unsure = instance.uncertainty.as_ref();
    let car = &instance.car;
    let content = |fuel: &Fuel| {
        let half = if unsure.is_some() { fuel.ethanol_share_halfwidth } else { 0.0 };
        (fuel.ethanol_share_vol + share * half).clamp(0.0, 1.0)
    };
    let mut tank = vec![Batch {
        litres: car.start_volume_l + level * unsure.map_or(0.0, |u| u.start_volume_halfwidth_l),
        share: (car.start_ethanol_share_vol
            + share * unsure.map_or(0.0, |u| u.start_ethanol_share_halfwidth))
        .clamp(0.0, 1.0),
        ron: car.start_ron,
    }];
    let (mut cost, mut stops, mut violation) = (0.0, 0, 0.0_f64);
    let (mut energy_burnt, mut ethanol_energy) = (0.0, 0.0);
    let fluid = &instance.fluid;
    let heat = |e: f64| fluid.lhv_gasoline_mj_per_l * (1.0 - e) + fluid.lhv_ethanol_mj_per_l * e;
    let moles = |e: f64| fluid.mol_per_l_gasoline * (1.0 - e) + fluid.mol_per_l_ethanol * e;
    for (index, (stop, leg)) in instance.stops.iter().zip(&instance.legs).enumerate() {
        let mut bought = 0.0;
        for fuel in &stop.fuels {
            let litres = plan.get(&stop.id).and_then(|s| s.get(&fuel.id)).copied().unwrap_or(0.0);
            violation = violation.max(-litres).max(litres - fuel.max_l.unwrap_or(f64::INFINITY));
            tank.push(Batch { litres, share: content(fuel), ron: fuel.ron });
            cost += litres * fuel.price_eur_per_l;
            bought += litres;
        }
        if bought > 1e-6 {
            cost += stop.fixed_cost_eur;
            stops += 1;
        }
        let volume: f64 = tank.iter().map(|batch| batch.litres).sum();
        let ethanol: f64 = tank.iter().map(|batch| batch.litres * batch.share).sum();
        let energy: f64 = tank.iter().map(|batch| batch.litres * heat(batch.share)).sum();
        let amount: f64 = tank.iter().map(|batch| batch.litres * moles(batch.share)).sum();
        let octane: f64 =
            tank.iter().map(|batch| batch.litres * moles(batch.share) * batch.ron).sum();
        violation = violation.max(volume - car.tank_capacity_l);
        let missed = leg.allowed_calibrations.iter().map(|id| {
            let found = instance.calibrations.iter().find(|calibration| calibration.id == *id);
            found.map_or(f64::INFINITY, |window| {
                let weak = window.ethanol_min_share_vol * volume - ethanol;
                let strong = ethanol - window.ethanol_max_share_vol * volume;
                // As litres: an octane number short over the tank's volume, a tenth of it.
                let octane = (window.ron_min - octane / amount) * volume * 0.1;
                weak.max(strong).max(octane)
            })
        });
        violation = violation.max(missed.fold(f64::INFINITY, f64::min));
        let takes = instance.takes(leg)?;
        let left = match instance.consumption_model {
            Model::Energy => 1.0 - takes / energy,
            Model::Volume => 1.0 - takes / volume,
        };
        let burnt = energy * (1.0 - left);
        energy_burnt += burnt;
        ethanol_energy += burnt * ethanol * fluid.lhv_ethanol_mj_per_l / energy;
        for batch in &mut tank {
            batch.litres *= left;
        }
        let is_last = index + 1 == instance.legs.len();
        let least = match instance.end.as_ref().and_then(|end| end.min_volume_l) {
            Some(end) if is_last => end.max(car.min_arrival_l),
            _ => car.min_arrival_l,
        };
        violation = violation.max(least - volume * left);
    }
    if let Some(budget) = instance.objective.budget() {
        // Money in litres of a fuel at one a litre.
        violation = violation.max(cost - budget);
    }
    Ok(Outcome { cost, stops, ethanol_energy_share: ethanol_energy / energy_burnt, violation })
}

impl Outcome {
    /// The objective as the file reckons it.
    pub(crate) fn objective(&self, goal: Goal) -> f64 {
        match goal {
            Goal::MinCost { .. } => self.cost,
            Goal::MinStopsThenCost { .. } => {
                1000.0 * f64::from(u32::try_from(self.stops).unwrap_or(u32::MAX)) + self.cost
            }
            Goal::MaxEthanolEnergyShare { .. } => self.ethanol_energy_share,
        }
    }
}
