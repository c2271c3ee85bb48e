//! What it costs and how far it goes.

use crate::message::keys::workings;
use uom::si::volume::liter;

use super::{Derivation, letter, litres};
use crate::answers::fill::answer::FillAnswer;
use crate::fill::economics;
use crate::fuel::{EnergyDensity, HydrocarbonBase, Mixture};
use crate::message::keys::practice as words;
use crate::quantity::{Consumption, Volume};

use crate::source::Source;
use crate::workings::{Expression, literal, number, sum};

const EQUAL_ENERGY: Source = Source::derived(words::EQUAL_ENERGY);

impl Derivation<'_> {
    /// Range, running cost and the price at which the stronger fuel pays.
    pub(crate) fn trip(&mut self, answer: &FillAnswer) {
        let heat = |fuel: &Mixture| {
            fuel.energy_density().map_or(f64::NAN, EnergyDensity::megajoules_per_liter)
        };
        let litre = Volume::new::<liter>(1.0);
        let base = HydrocarbonBase::default();
        let reference = Mixture::splash(litre, self.asked.reference, &base);
        let per_100_km = self.asked.consumption.map(Consumption::litres_per_100_km);
        let distance = |volume: Expression, heat_of: Expression| {
            let consumption = number("q_ref", per_100_km.unwrap_or(f64::NAN));
            economics::distance(volume, heat_of, number("LHV_ref", heat(&reference)), consumption)
        };
        if let (Some(_), Some(blend)) = (answer.range, &answer.blend) {
            let volume = number("V", litres(blend.mixture.volume()));
            let range = distance(volume, number("LHV_V", heat(&blend.mixture)));
            self.lines.add(workings::RANGE_THEN, "s", &range, (0, "km"), &[EQUAL_ENERGY]);
        }
        if let (Some(_), Some(cost)) = (answer.cost_per_kilometre, answer.cost) {
            let added = self.asked.mixture_of(&self.plan.volumes);
            let volume = number("V_add", litres(added.volume()));
            let range = distance(volume, number("LHV_add", heat(&added)));
            let per_100_km = number("cost", cost.amount()) / range * literal(100.0);
            self.lines.add(
                workings::COST_ON_ROAD,
                "k",
                &per_100_km,
                (2, "per 100 km"),
                &[EQUAL_ENERGY],
            );
        }
        if let Some((strong, weak, _)) = answer.break_even
            && let Some(price) = self.asked.problem.offers[weak].price
        {
            let [of_strong, of_weak] = [strong, weak].map(|fuel| {
                number(format!("LHV_{}", letter(fuel)), heat(&self.asked.fuels[fuel].litre))
            });
            let price = number(format!("p_{}", letter(weak)), price.of(litre).amount());
            let even = economics::even_price(price, of_strong, of_weak);
            let name = workings::PaysBelow { fuel: self.name(strong) }.sentence();
            self.lines.add(name, "p_even", &even, (3, "per L"), &[EQUAL_ENERGY]);
        }
    }

    pub(crate) fn money(&mut self) {
        if self.plan.cost.is_none() {
            return;
        }
        let litre = Volume::new::<liter>(1.0);
        let parts: Vec<_> = self
            .taken()
            .into_iter()
            .filter_map(|fuel| {
                let price = self.asked.problem.offers[fuel].price?.of(litre).amount();
                Some(self.poured(fuel).0 * number(format!("p_{}", letter(fuel)), price))
            })
            .collect();
        if !parts.is_empty() {
            let source = Source::derived(words::PRICE_TIMES_LITRES);
            self.lines.add(workings::COST, "cost", &sum(parts), (2, ""), &[source]);
        }
    }
}
