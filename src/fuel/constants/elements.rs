//! Elements and air.

use crate::message::keys::constants as words;
use crate::source::{Citation, Confidence, Source, SourceKind};

use super::{Constant, source};

const ATOMIC_MASSES: Source =
    source(SourceKind::Library, Confidence::Checked, Citation::Words(words::ATOMIC_MASSES));

const ENGINE_AIR: Source =
    source(SourceKind::FromMemory, Confidence::Weak, Citation::WithCaveat(words::ENGINE_AIR));

/// Atomic mass of carbon.
pub static CARBON_MASS: Constant = Constant {
    id: "carbon-mass",
    name: words::CARBON_MASS,
    symbol: "A_C",
    unit: "g/mol",
    value: 12.011,
    source: ATOMIC_MASSES,
};

/// Atomic mass of hydrogen.
pub static HYDROGEN_MASS: Constant = Constant {
    id: "hydrogen-mass",
    name: words::HYDROGEN_MASS,
    symbol: "A_H",
    unit: "g/mol",
    value: 1.008,
    source: ATOMIC_MASSES,
};

/// Atomic mass of oxygen.
pub static OXYGEN_MASS: Constant = Constant {
    id: "oxygen-mass",
    name: words::OXYGEN_MASS,
    symbol: "A_O",
    unit: "g/mol",
    value: 15.999,
    source: ATOMIC_MASSES,
};

/// Moles of atmospheric nitrogen (with argon and the traces) for each mole of
/// oxygen in air.
pub static NITROGEN_PER_OXYGEN: Constant = Constant {
    id: "nitrogen-per-oxygen",
    name: words::NITROGEN_PER_OXYGEN,
    symbol: "psi",
    unit: "mol/mol",
    value: 3.773,
    source: ENGINE_AIR,
};

/// Molar mass of atmospheric nitrogen, argon and traces included.
pub static NITROGEN_MOLAR_MASS: Constant = Constant {
    id: "nitrogen-molar-mass",
    name: words::NITROGEN_MOLAR_MASS,
    symbol: "M_N2a",
    unit: "g/mol",
    value: 28.16,
    source: ENGINE_AIR,
};
