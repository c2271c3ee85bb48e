//! What is said of the fuel system and of power curves.

mod cautions;
mod curves;
mod parts;
mod verdict;

pub use cautions::{CAUTIONS, FLUID_CAUTIONS, RULES_FIRST};
pub use curves::{
    add_on, add_on_figures, column, compared, corrected, correction, correction_warning, crossing,
    curve, curve_facts, other_place, rows_read, unread,
};
pub use parts::{
    enough, is_rated_by_mass, kind, largest_share, limit, part, part_answer, reserve, shortage,
    supported, tightest,
};
pub use verdict::{
    air, first_to_give, fluid_facts, judgement, limits_of_share, load_in_short, standing,
};

use crate::answers::hardware::Taken;
use crate::hardware::Recipe;
use crate::message::keys::hardware_said as keys;
use crate::quantity::notation::Printer;

pub use super::tank::with_unit;

/// One figure: what, how much, and what to know about it.
#[derive(Clone, Debug, PartialEq)]
pub struct Fact {
    /// What it is.
    pub what: String,
    /// What it comes to.
    pub value: String,
    /// What is said beside that; may be empty.
    pub aside: String,
}

impl Fact {
    /// A fact with what is said beside it.
    pub fn new(what: impl Into<String>, value: String, aside: String) -> Self {
        Self { what: what.into(), value, aside }
    }
}

/// What was taken where nothing was typed.
pub fn taken(taken: &Taken) -> String {
    match taken {
        Taken::Figure(figure) => figure.clone(),
        Taken::Said(sentence) => sentence.say(),
    }
}

/// What to pour for injection fluid.
pub fn recipe(recipe: &Recipe, printer: &Printer) -> Vec<Fact> {
    let pour = |volume, mass| (printer.mixed_volume(volume), printer.mixed_mass(mass));
    let (concentrate, of_concentrate) = pour(recipe.concentrate, recipe.concentrate_mass);
    let (water, of_water) = pour(recipe.water, recipe.water_mass);
    let shrinks = printer.mixed_volume(recipe.contraction);
    vec![
        Fact::new(keys::CONCENTRATE.say(), concentrate, of_concentrate),
        Fact::new(keys::WATER.say(), water, of_water),
        Fact::new(keys::SHRINKS.say(), shrinks, keys::SHRINKS_MEANS.say().into()),
    ]
}

/// The same in one line.
pub fn recipe_in_short(recipe: &Recipe, printer: &Printer) -> String {
    keys::Recipe {
        concentrate: printer.mixed_volume(recipe.concentrate),
        water: printer.mixed_volume(recipe.water),
    }
    .say()
}
