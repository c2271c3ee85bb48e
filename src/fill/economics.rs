//! What a blend costs on the road. Fuel is paid by volume and burned by energy.

use uom::si::length::kilometer;
use uom::si::volume::liter;

use crate::fuel::Mixture;

use crate::quantity::Consumption;
use crate::quantity::{Length, Money, UnitPrice, Volume};
use crate::workings::Arithmetic;

/// The distance in kilometres that a volume goes, in litres, from its heating value and
/// from that of the reference, in MJ/L, and the consumption on that, in L/100 km:
/// `V LHV / LHV_ref / q_ref * 100`.
pub(crate) fn distance<A: Arithmetic>(volume: A, heat: A, reference: A, consumption: A) -> A {
    volume * heat / reference / consumption * A::literal(100.0)
}

/// The price at which a fuel costs as much per distance as another at its price, from
/// the heating value of the fuel and of the other: `p LHV / LHV_other`.
pub(crate) fn even_price<A: Arithmetic>(price: A, heat: A, of_other: A) -> A {
    price * heat / of_other
}

fn per_litre(fuel: &Mixture) -> Option<f64> {
    Some(fuel.energy_density()?.megajoules_per_liter())
}

/// How far a fuel goes, at equal energy per distance.
///
/// `consumption` is that on the reference fuel.
pub fn range(fuel: &Mixture, consumption: Consumption, reference: &Mixture) -> Option<Length> {
    let volume = fuel.volume().get::<liter>();
    let consumption = consumption.litres_per_100_km();
    // Nothing goes nowhere.
    let heat = per_litre(fuel).unwrap_or_default();
    let kilometres = distance(volume, heat, per_litre(reference)?, consumption);
    kilometres.is_finite().then(|| Length::new::<kilometer>(kilometres))
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
    let litre = Volume::new::<liter>(1.0);
    let even = even_price(price.of(litre).amount(), per_litre(other)?, per_litre(petrol)?);
    let money = Money::new(even).ok()?;
    Some(UnitPrice::new(money, litre))
}
