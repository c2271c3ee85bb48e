//! The closed formulas of a fill, each once for its value and for its workings.

use super::problem::Problem;
use crate::fuel::Mean;
use crate::quantity::Share;
use crate::workings::{Arithmetic, letter};

/// The ethanol share of what was in a tank and of what was added, litres and share of
/// each: `(V0 e0 + sum of x e) / (V0 + sum of x)`; none of an empty tank. `end` is what
/// the symbols of that end in which is not the same in every case.
pub(crate) fn mean_share<A: Arithmetic>(
    end: &str,
    (level, present): (f64, Share),
    added: impl Iterator<Item = (f64, Share)>,
) -> Option<A> {
    let present = Mean::of(
        A::number(format_args!("V0{end}"), level),
        Some(A::number(format_args!("e0{end}"), present.fraction())),
    );
    let added = added.enumerate().filter(|(_, (litres, _))| *litres > 0.0);
    let added = added.map(|(fuel, (litres, share))| {
        let letter = letter(fuel);
        let e = A::number(format_args!("e_{letter}{end}"), share.fraction());
        Mean::of(A::number(format_args!("x_{letter}"), litres), Some(e))
    });
    std::iter::once(present).chain(added).sum::<Mean<A>>().value()
}

impl Problem {
    /// The ethanol share of so many litres of the tank's contents with these of each fuel;
    /// none of an empty tank.
    pub(super) fn share_of(&self, level: f64, added: &[f64]) -> Option<Share> {
        let parts = self.offers.iter().zip(added);
        let parts = parts.map(|(offer, litres)| (*litres, offer.share.expected()));
        mean_share("", (level, self.tank.share.expected()), parts).map(Share::clamped)
    }

    /// The octane number of the tank's contents with these litres of each fuel.
    pub(super) fn ron_of(&self, added: &[f64]) -> Option<f64> {
        self.octane("RON", added, self.tank.ron, |fuel| self.offers[fuel].ron)
    }

    /// An octane number of the contents after a fill, at least: the mean by moles of
    /// those of the tank and of each fuel. None of an empty tank, or where a part has no
    /// number.
    pub(crate) fn octane<A: Arithmetic>(
        &self,
        symbol: &str,
        added: &[f64],
        of_tank: Option<f64>,
        of_offers: impl Fn(usize) -> Option<f64>,
    ) -> Option<A> {
        let part = |litres: A, e: A, number: Option<A>| {
            Mean::of(litres * self.molar_density.per_litre(e), number)
        };
        let level = self.level();
        let present = (level > 0.0).then(|| {
            part(
                A::number("V0", level),
                A::number("e0", self.tank.share.expected().fraction()),
                of_tank.map(|number| A::number(format_args!("{symbol}_0"), number)),
            )
        });
        let added = added.iter().enumerate().filter(|(_, litres)| **litres > 0.0);
        let added = added.map(|(fuel, litres)| {
            let letter = letter(fuel);
            part(
                A::number(format_args!("x_{letter}"), *litres),
                A::number(
                    format_args!("e_{letter}"),
                    self.offers[fuel].share.expected().fraction(),
                ),
                of_offers(fuel).map(|number| A::number(format_args!("{symbol}_{letter}"), number)),
            )
        });
        present.into_iter().chain(added).sum::<Mean<A>>().value()
    }
}
