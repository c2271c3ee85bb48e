//! How people may have set up their units.

use fillwright::quantity::notation::{Choosable, UnitSystem, Units};
use proptest::prelude::*;
use proptest::sample::{Index, select};

/// A system, and in half of the cases units chosen apart from it.
pub(crate) fn units() -> impl Strategy<Value = Units> {
    let chosen = proptest::collection::vec(any::<(Index, Index)>(), 1..6);
    let chosen = prop_oneof![Just(Vec::new()), chosen];
    (select(UnitSystem::ALL.to_vec()), chosen).prop_map(|(system, chosen)| {
        chosen.into_iter().fold(Units::of(system), |units, (quantity, choice)| {
            let quantity = Choosable::ALL[quantity.index(Choosable::ALL.len())];
            let choices: Vec<_> = quantity.choices().collect();
            units.with(quantity, choices[choice.index(choices.len())].word).unwrap()
        })
    })
}
