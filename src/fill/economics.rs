//! What a blend costs on the road. Fuel is paid by volume and burned by energy.

use uom::si::length::kilometer;
use uom::si::volume::liter;

use crate::fuel::Mixture;

use crate::quantity::Consumption;
use crate::quantity::{Length, Money, UnitPrice, Volume};

/// The energy of a fuel in units of that of one litre of the reference.
fn litres_of_reference(fuel: &Mixture, reference: &Mixture) -> Option<f64> {
    let of_a_litre = reference.energy() / reference.volume().get::<liter>();
    let litres: f64 = (fuel.energy() / of_a_litre).into();
    litres.is_finite().then_some(litres)
}

/// How far a fuel goes, at equal energy per distance.
///
/// `consumption` is that on the reference fuel.
pub fn range(fuel: &Mixture, consumption: Consumption, reference: &Mixture) -> Option<Length> {
    let litres = litres_of_reference(fuel, reference)?;
    Some(consumption.reach(Volume::new::<liter>(litres)))
}

/// What a kilometre costs on what was bought: `cost / range`.
pub fn cost_per_kilometre(
    cost: Money,
    bought: &Mixture,
    consumption: Consumption,
    reference: &Mixture,
) -> Option<f64> {
    let distance = range(bought, consumption, reference)?.get::<kilometer>();
    (distance > 0.0).then(|| cost.amount() / distance)
}

/// The price at which `other` costs as much per distance as `petrol` does at its
/// price: `p = p_petrol LHV_other / LHV_petrol`, by volume.
pub fn break_even(price: UnitPrice, petrol: &Mixture, other: &Mixture) -> Option<UnitPrice> {
    let per_litre = |mixture: &Mixture| Some(mixture.energy_density()?.megajoules_per_liter());
    let ratio = per_litre(other)? / per_litre(petrol)?;
    let litre = Volume::new::<liter>(1.0);
    let money = Money::new(price.of(litre).amount() * ratio).ok()?;
    Some(UnitPrice::new(money, litre))
}
