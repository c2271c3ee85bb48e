"""Fuel properties from general-purpose libraries, to hold the core against.

    python compute.py            writes values.csv beside this file
    python compute.py --check    computes again and compares with values.csv

Nothing here knows the core. CoolProp gives densities and heats of vaporisation,
chemicals gives enthalpies of formation and the density of isooctane, cantera
gives molar masses, fractions and the stoichiometry. The fuel system's chains are in
hardware.py.

The column `tolerance` (relative) is what the core may differ by, and why:
  1e-4  densities: the core rounds its table to 0.01 kg/m3 and reads it with
        straight lines over 5 K; fractions: the core rounds densities at 15 degC
        to 0.1 kg/m3
  5e-4  stoichiometry: cantera is given measured dry air, the core the air of
        engine textbooks, which differ by 0.036 %
  2e-3  heat of vaporisation of ethanol: two libraries differ by 0.1 %
  1e-2  heat of vaporisation of methanol: two libraries differ by 0.65 %
"""

import csv
import pathlib
import sys

import cantera as ct
import CoolProp
import chemicals
from CoolProp.CoolProp import PropsSI
from chemicals.combustion import LHV_from_HHV, HHV_stoichiometry, combustion_stoichiometry
from chemicals.dippr import EQ105
from chemicals.reaction import Hfg, Hfl
from chemicals.volume import rho_data_Perry_8E_105_l

import hardware

FILE = pathlib.Path(__file__).with_name("values.csv")
COLUMNS = ["quantity", "fuel", "condition", "value", "unit", "tolerance", "source"]

COOLPROP = f"CoolProp {CoolProp.__version__}, 101.325 kPa"
CANTERA = f"cantera {ct.__version__}"
CHEMICALS = f"chemicals {chemicals.__version__}"

ATMOSPHERE = 101325.0
# A middling petrol of fractional formula: the input of the core's default base.
PETROL_MOLAR_MASS, PETROL_HYDROGEN, PETROL_DENSITY = 100.0, 1.85, 745.0
PETROL_CARBON = PETROL_MOLAR_MASS / (12.011 + PETROL_HYDROGEN * 1.008)

ATOMS = {
    "ethanol": {"C": 2, "H": 6, "O": 1},
    "methanol": {"C": 1, "H": 4, "O": 1},
    "water": {"H": 2, "O": 1},
    "MTBE": {"C": 5, "H": 12, "O": 1},
    "ETBE": {"C": 6, "H": 14, "O": 1},
    "isooctane": {"C": 8, "H": 18},
    "n-heptane": {"C": 7, "H": 16},
    "toluene": {"C": 7, "H": 8},
    "petrol": {"C": PETROL_CARBON, "H": PETROL_CARBON * PETROL_HYDROGEN},
}
CAS = {
    "ethanol": "64-17-5",
    "methanol": "67-56-1",
    "MTBE": "1634-04-4",
    "ETBE": "637-92-3",
    "isooctane": "540-84-1",
    "n-heptane": "142-82-5",
    "toluene": "108-88-3",
}
EOS = {
    "ethanol": "Ethanol",
    "methanol": "Methanol",
    "water": "Water",
    "n-heptane": "n-Heptane",
    "toluene": "Toluene",
}
ETHERS = ["MTBE", "ETBE"]
BASES = ["petrol", "isooctane", "n-heptane", "toluene"]
# Dry air by moles.
AIR = {"O2": 0.20946, "N2": 0.78084, "AR": 0.00934, "CO2": 0.0004}

# Parts by volume at 15 degC, the base first.
BLENDS = [
    {base: 100 - share, "ethanol": share}
    for base in BASES
    for share in (0, 5, 10, 20, 30, 50, 85)
] + [
    {"ethanol": 100},
    {"methanol": 100},
    {"isooctane": 44, "methanol": 56},
    {"isooctane": 29.5, "ethanol": 42.5, "methanol": 28},
    {"petrol": 24, "ethanol": 74.7, "methanol": 0.5, "water": 0.8},
    {"ethanol": 94, "water": 6},
    {"methanol": 50, "water": 50},
    {"MTBE": 100},
    {"ETBE": 100},
]


def gas():
    """An ideal gas of the fuels and of air: only its stoichiometry is used."""
    composition = ATOMS | {"O2": {"O": 2}, "N2": {"N": 2}, "AR": {"Ar": 1}, "CO2": {"C": 1, "O": 2}}
    species = []
    for name, atoms in composition.items():
        one = ct.Species(name, atoms)
        one.thermo = ct.ConstantCp(200, 3000, ct.one_atm, (298.15, 0, 0, 0))
        species.append(one)
    return ct.Solution(thermo="ideal-gas", kinetics="none", species=species)


def density(fuel, celsius):
    if fuel == "petrol":
        assert celsius == 15
        return PETROL_DENSITY
    if fuel in ETHERS:
        # Only ever neat here, where it drops out: CoolProp has neither.
        return 1.0
    if fuel == "isooctane":
        _, *coefficients, _, _ = rho_data_Perry_8E_105_l.loc[CAS[fuel]].values.tolist()
        moles = EQ105(273.15 + celsius, *coefficients[:4])
        return moles * 114.232 / 1000
    return PropsSI("D", "T", 273.15 + celsius, "P", ATMOSPHERE, EOS[fuel])


def lower_heating_value(fuel):
    """MJ/kg of the liquid at 25 degC, water leaving as vapour."""
    stoichiometry = combustion_stoichiometry(ATOMS[fuel])
    molar_mass = sum({"C": 12.011, "H": 1.008, "O": 15.999}[a] * n for a, n in ATOMS[fuel].items())
    higher = HHV_stoichiometry(stoichiometry, Hf=Hfl(CAS[fuel]))
    return -LHV_from_HHV(higher, stoichiometry["H2O"]) / molar_mass / 1000


def vaporisation_eos(fuel):
    vapour, liquid = (PropsSI("H", "T", 298.15, "Q", q, EOS[fuel]) for q in (1, 0))
    return (vapour - liquid) / 1000


def air_fuel_ratio(model):
    """Mass of air for each mass of the fuel in the model, at lambda 1."""
    fuel = {name: part for name, part in zip(model.species_names, model.X) if part > 0}
    return model.stoich_air_fuel_ratio(fuel, AIR, basis="mole")


def rows():
    for fuel, first in (("ethanol", -20), ("methanol", -20), ("water", 2.5)):
        celsius = first
        while celsius <= 60:
            yield "density", fuel, celsius, density(fuel, celsius), "kg/m3", 1e-4, COOLPROP
            celsius += 2.5

    model = gas()
    for fuel in ("ethanol", "methanol", "water", *ETHERS):
        mass = model.molecular_weights[model.species_index(fuel)]
        yield "molar_mass", fuel, "", mass, "g/mol", 1e-6, CANTERA
    for fuel, tolerance in (("ethanol", 2e-3), ("methanol", 1e-2), ("water", 2e-3)):
        value = vaporisation_eos(fuel)
        yield "heat_of_vaporisation", fuel, "25 degC", value, "kJ/kg", tolerance, COOLPROP
        if fuel in CAS:
            molar_mass = model.molecular_weights[model.species_index(fuel)]
            value = (Hfg(CAS[fuel]) - Hfl(CAS[fuel])) / molar_mass
            source = f"{CHEMICALS}, enthalpies of formation"
            yield "heat_of_vaporisation", fuel, "formation", value, "kJ/kg", tolerance, source
    for fuel in ETHERS:
        molar_mass = model.molecular_weights[model.species_index(fuel)]
        value = (Hfg(CAS[fuel]) - Hfl(CAS[fuel])) / molar_mass
        source = f"{CHEMICALS}, enthalpies of formation"
        yield "heat_of_vaporisation", fuel, "formation", value, "kJ/kg", 1e-3, source
    for fuel in ("ethanol", "methanol", *ETHERS):
        source = f"{CHEMICALS}, enthalpies of formation"
        yield "lower_heating_value", fuel, "", lower_heating_value(fuel), "MJ/kg", 1e-4, source

    for base in BASES:
        source = {
            "petrol": "chosen input",
            "isooctane": f"{CHEMICALS}, DIPPR 105 of Perry 8E",
        }.get(base, COOLPROP)
        yield "base_density", base, "15 degC", density(base, 15), "kg/m3", 0, source
        molar_mass = model.molecular_weights[model.species_index(base)]
        yield "base_molar_mass", base, "", molar_mass, "g/mol", 0, CANTERA
        ratio = ATOMS[base]["H"] / ATOMS[base]["C"]
        yield "base_hydrogen_to_carbon", base, "", ratio, "mol/mol", 0, "formula"

    for blend in BLENDS:
        name = " ".join(f"{fuel}:{parts:g}" for fuel, parts in blend.items())
        weights = {fuel: parts * density(fuel, 15) for fuel, parts in blend.items()}
        model.TPY = 298.15, ct.one_atm, weights
        for fuel in blend:
            index = model.species_index(fuel)
            for quantity, value in (
                ("mass_fraction", model.Y[index]),
                ("mole_fraction", model.X[index]),
            ):
                yield quantity, name, fuel, value, "1", 1e-4, CANTERA
        oxygen = model.elemental_mass_fraction("O")
        if oxygen > 0:
            yield "oxygen_mass_fraction", name, "", oxygen, "1", 1e-4, CANTERA
        ratio = model.elemental_mole_fraction("H") / model.elemental_mole_fraction("C")
        yield "hydrogen_to_carbon", name, "", ratio, "mol/mol", 1e-4, CANTERA
        afr = air_fuel_ratio(model)
        source = f"{CANTERA}, dry air 20.946 % O2"
        yield "stoichiometric_afr", name, "", afr, "kg/kg", 5e-4, source

    yield from hardware.rows()


def formatted():
    for quantity, fuel, condition, value, unit, tolerance, source in rows():
        yield [quantity, fuel, str(condition), f"{value:.7g}", unit, f"{tolerance:g}", source]


def check():
    with FILE.open(newline="") as file:
        committed = list(csv.reader(file))[1:]
    computed = list(formatted())
    if [row[:3] for row in committed] != [row[:3] for row in computed]:
        sys.exit("values.csv has other rows than this script computes: run it without --check")
    worst = 0.0
    for old, new in zip(committed, computed):
        difference = abs(float(old[3]) - float(new[3])) / max(abs(float(new[3])), 1e-12)
        worst = max(worst, difference)
        if difference > 1e-5:
            sys.exit(f"{old[:3]}: committed {old[3]}, computed {new[3]}")
    print(f"{len(computed)} values agree; largest relative difference {worst:.1e}")


if __name__ == "__main__":
    if "--check" in sys.argv:
        check()
    else:
        with FILE.open("w", newline="") as file:
            writer = csv.writer(file, lineterminator="\n")
            writer.writerow(COLUMNS)
            writer.writerows(formatted())
