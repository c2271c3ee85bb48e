//! Elements and air.

use crate::source::{Confidence, Source, SourceKind};

use super::{Constant, source};

const ATOMIC_MASSES: Source = source(
    SourceKind::Library,
    Confidence::Checked,
    "cantera 3.2.0, Element.weight (abridged standard atomic weights)",
);

const ENGINE_AIR: Source = source(
    SourceKind::FromMemory,
    Confidence::Weak,
    "from memory: air as engine textbooks reckon it, 3.773 mol of atmospheric nitrogen of \
     28.16 g/mol for each mole of oxygen; measured dry air (20.946 % O2) needs 0.04 % more",
);

/// Atomic mass of carbon.
pub static CARBON_MASS: Constant = Constant {
    id: "carbon-mass",
    name: "atomic mass of carbon",
    symbol: "A_C",
    unit: "g/mol",
    value: 12.011,
    source: ATOMIC_MASSES,
};

/// Atomic mass of hydrogen.
pub static HYDROGEN_MASS: Constant = Constant {
    id: "hydrogen-mass",
    name: "atomic mass of hydrogen",
    symbol: "A_H",
    unit: "g/mol",
    value: 1.008,
    source: ATOMIC_MASSES,
};

/// Atomic mass of oxygen.
pub static OXYGEN_MASS: Constant = Constant {
    id: "oxygen-mass",
    name: "atomic mass of oxygen",
    symbol: "A_O",
    unit: "g/mol",
    value: 15.999,
    source: ATOMIC_MASSES,
};

/// Moles of atmospheric nitrogen (with argon and the traces) for each mole of
/// oxygen in air.
pub static NITROGEN_PER_OXYGEN: Constant = Constant {
    id: "nitrogen-per-oxygen",
    name: "atmospheric nitrogen for each mole of oxygen in air",
    symbol: "psi",
    unit: "mol/mol",
    value: 3.773,
    source: ENGINE_AIR,
};

/// Molar mass of atmospheric nitrogen, argon and traces included.
pub static NITROGEN_MOLAR_MASS: Constant = Constant {
    id: "nitrogen-molar-mass",
    name: "molar mass of atmospheric nitrogen",
    symbol: "M_N2a",
    unit: "g/mol",
    value: 28.16,
    source: ENGINE_AIR,
};
