"""The fuel system's worked chains from general-purpose libraries.

Nothing here knows the core. pint carries the units, CoolProp the liquids and their
compression, fluids the friction in lines, scipy the interpolation and the roots. The
inputs of each chain stand here and, once more, in hardware.rs.

The column `tolerance` (relative) is what the core may differ by, and why:
  1e-5  the same formula, and inputs given to both; n-heptane is rounded to 0.01 kg/m3,
        the turbulent friction factor solved to 1e-9
  3e-4  the core reads densities of methanol in water every 5 % with straight lines
  5e-4  chain I: as above, and the core's stoichiometry uses the air of engine textbooks
  6e-4  isentropic density ratios up to 20 MPa: Murnaghan's equation with one exponent
        for all liquids; 1.3e-3 at 35 MPa
"""

import math

import CoolProp
import fluids
import numpy
import pint
import scipy
from CoolProp.CoolProp import PropsSI
from scipy.interpolate import RegularGridInterpolator
from scipy.optimize import brentq

u = pint.UnitRegistry()
Q = u.Quantity

COOLPROP = f"CoolProp {CoolProp.__version__}"
FLUIDS = f"fluids {fluids.__version__}"
PINT = f"pint {pint.__version__}"
SCIPY = f"scipy {scipy.__version__}"

HEPTANE = Q(PropsSI("D", "T", 293.15, "P", 101325, "n-Heptane"), "kg/m^3")
TIGHT = 1e-5


class Fuel:
    """A blend of the reference set: density by volume, the rest by mass."""

    def __init__(self, percent):
        share = percent / 100
        petrol, ethanol = (1 - share) * 745.0, share * 789.4
        weights = numpy.array([petrol, ethanol])
        self.density = Q(petrol + ethanol, "kg/m^3")
        self.air = float(numpy.average([14.60, 9.005], weights=weights))
        self.heat = Q(float(numpy.average([43.0, 26.82], weights=weights)), "MJ/kg")

    def flow(self, power, pounds):
        """Fuel for a power at so many lb/(hp h) on E0."""
        on_petrol = power * Q(pounds, "lb/hour") / Q(550, "foot * force_pound / second")
        return on_petrol * Fuel(0).heat / self.heat


def horsepower(number):
    return (number * Q(550, "foot * force_pound / second")).to("W")


def cycle(rpm):
    return (2 / (Q(rpm) / u.minute)).to("s")


def orifice(volume, rated_at, fluid, difference, fuel):
    """Mass flow through the area that passed the rated volume."""
    area = volume * (fluid / (2 * rated_at)) ** 0.5
    return (area * (2 * fuel.density * difference) ** 0.5).to("g/s")


def port():
    """Chains A, B and C."""
    fuel, power = Fuel(50), horsepower(550) / (1 - 0.12)
    flow = fuel.flow(power, 0.58)
    each = orifice(Q(1000, "cm^3/minute"), Q(3.0, "bar"), HEPTANE, Q(3.5, "bar"), fuel)
    open_time = flow / 6 * cycle(6800) / each
    yield "A", "crank power", power.to("kW"), TIGHT
    yield "A", "fuel flow", flow.to("g/s"), TIGHT
    yield "A", "volume flow", (flow / fuel.density).to("L/hour"), TIGHT
    yield "A", "static flow", each, TIGHT
    yield "A", "effective duty", (open_time / cycle(6800)).to(""), TIGHT
    yield "A", "commanded duty", ((open_time + Q(0.95, "ms")) / cycle(6800)).to(""), TIGHT

    for percent in (0, 85):
        fuel = Fuel(percent)
        flow = fuel.flow(horsepower(600), 0.60) / 6 / 0.85
        needed = flow / orifice(Q(1, "cm^3/minute"), Q(3, "bar"), HEPTANE, Q(3, "bar"), fuel)
        yield "B", f"rating E{percent}", needed.to("") * Q(1, "cm^3/minute"), TIGHT

    fuel = Fuel(85)
    flow = fuel.flow(horsepower(450), 0.60)
    for difference in (3, 4):
        each = orifice(
            Q(1000, "cm^3/minute"), Q(3, "bar"), HEPTANE, Q(difference, "bar"), fuel
        )
        duty = (flow / 4 / each).to("")
        yield "C", f"effective duty {difference} bar", duty, TIGHT
        commanded = (duty + Q(1.0, "ms") / cycle(7000)).to("")
        yield "C", f"commanded duty {difference} bar", commanded, TIGHT


def direct():
    """Chains D, E and F."""
    rated = Q(15.0, "g/s") / Q(745.0, "kg/m^3")
    window, offset = Q(240, "degree"), Q(0.30, "ms")

    def window_time(rpm):
        return (window / (Q(rpm, "revolution/minute"))).to("ms")

    def each(fuel, rail):
        return orifice(rated, Q(100, "bar"), Q(745.0, "kg/m^3"), Q(rail, "bar"), fuel)

    for percent in (0, 30, 50, 85):
        fuel = Fuel(percent)
        mass = each(fuel, 200) * (window_time(6500) - offset)
        power = 4 * mass / cycle(6500) * fuel.heat * 0.30
        yield "D", f"power E{percent}", power.to("kW"), TIGHT

        injected = Q(250, "kW") / (0.30 * fuel.heat) * cycle(6500) / 4

        def spare(rail):
            missing = each(fuel, rail) * (window_time(6500) - offset) - injected
            return missing.to("mg").magnitude

        yield "E", f"rail E{percent}", Q(brentq(spare, 1, 1000, xtol=1e-10), "bar"), TIGHT

        injected = Q(1300.3, "mg") / (0.80 * fuel.air)
        taken = injected / each(fuel, 200) + offset
        use = (taken / window_time(6500)).to("")
        yield "F", f"window use E{percent}", use, TIGHT


def plunger():
    """Chain G, with a dead volume of one stroke and CoolProp's compression."""
    swept = math.pi * (Q(10.0, "mm") / 2) ** 2 * Q(5.0, "mm") * 4 / cycle(6500)
    yield "G", "geometric flow", swept.to("L/hour"), TIGHT
    kept = 1 - 1.0 * (isentrope("Ethanol", 20e6)[0] - 1)
    yield "G", "delivery E0", (swept * Fuel(0).density * kept * 0.85).to("g/s"), 6e-4
    gap, seal = Q(4, "um"), Q(15, "mm")
    leak = math.pi * Q(10, "mm") * gap**3 * Q(20, "MPa") / (12 * Q(0.45, "mPa*s") * seal)
    yield "G", "leakage", leak.to("cm^3/s"), TIGHT


def isentrope(fluid, pressure):
    """Density ratio from 60 degC and 0.6 MPa, and the bulk modulus there in Pa."""
    entropy, before, sound = (PropsSI(p, "T", 333.15, "P", 0.6e6, fluid) for p in "SDA")
    return PropsSI("D", "P", pressure, "S", entropy, fluid) / before, before * sound**2


def friction(flow, bore, density, viscosity):
    """Loss in bar over 4 m with a wall of 1.5 um; flow in L/min, bore in mm."""
    bore, flow = bore / 1000, flow / 60000
    speed = flow / (math.pi * bore**2 / 4)
    reynolds = fluids.Reynolds(V=speed, D=bore, rho=density, mu=viscosity)
    factor = fluids.friction_factor(Re=reynolds, eD=1.5e-6 / bore)
    loss = fluids.K_from_f(fd=factor, L=4.0, D=bore)
    return reynolds, fluids.dP_from_K(K=loss, rho=density, V=speed) / 1e5


def pumps():
    """Chain H: an invented pump in L/h over bar and V."""
    table = RegularGridInterpolator(
        ([12.0, 13.5], [3.0, 4.0, 5.0, 6.0, 7.0]),
        numpy.array([[285.0, 255, 225, 195, 165], [340.0, 310, 280, 250, 220]]),
    )
    for volts in (12.8, 13.5):
        given = float(table((volts, 6.15)))
        yield "H", f"available {volts} V", Q(given, "L/hour"), TIGHT

        # Through the line of `friction` with E85, at 4.0 bar over 1.5 bar of boost.
        def excess(flow):
            _, loss = friction(flow / 60, 8.0, Fuel(85).density.magnitude, 1.016e-3)
            return flow - 0.85 * float(table((volts, 5.5 + loss)))

        flow = Q(brentq(excess, 1, 300, xtol=1e-9), "L/hour")
        yield "H", f"capacity {volts} V", (flow * Fuel(85).density).to("g/s"), TIGHT


def methanol_water(share):
    return PropsSI("D", "T", 293.15, "P", 101325, f"INCOMP::MMA[{share:g}]")


def spray():
    """Chain I: half and half by volume beside petrol at lambda 0.80."""
    methanol, water = (PropsSI("D", "T", 293.15, "P", 101325, f) for f in ("Methanol", "Water"))
    share = methanol / (methanol + water)

    def vaporisation(fluid):
        vapour, liquid = (PropsSI("H", "T", 298.15, "Q", q, fluid) for q in (1, 0))
        return Q(vapour - liquid, "J/kg")

    # Reacting with measured dry air: 1.5 O2 for each molecule.
    air_for_methanol = 1.5 * 28.9647 / 0.20946 / 32.042
    fuel, petrol = Fuel(0), Q(45.359, "g/s")
    air = petrol * 0.80 * fuel.air
    for cc in (250, 500, 1000):
        flow = Q(cc, "cm^3/minute") * Q(methanol_water(share), "kg/m^3")
        burning = flow * share
        lambda_with = air / (petrol * fuel.air + burning * air_for_methanol)
        yield "I", f"lambda {cc}", lambda_with.to(""), 5e-4
        heat = burning * Q(19.933, "MJ/kg")
        yield "I", f"energy share {cc}", (heat / (heat + petrol * fuel.heat)).to(""), 5e-4
        taken = burning * vaporisation("Methanol") + (flow - burning) * vaporisation("Water")
        cooling = taken / (air * Q(1006, "J/(kg*K)"))
        yield "I", f"cooling {cc}", cooling.to("K"), 5e-4


def rows():
    sources = {"G": f"{PINT}; {COOLPROP}", "H": f"{SCIPY}; {FLUIDS}", "I": f"{PINT}; {COOLPROP}"}
    for chain in (port, direct, plunger, pumps, spray):
        for name, step, value, tolerance in chain():
            unit = f"{value.units:~}".replace(" ", "") or "1"
            source = sources.get(name, f"{PINT}; {COOLPROP}" if name in "ABC" else PINT)
            yield "chain", name, step, value.magnitude, unit, tolerance, source

    for fluid in ("Ethanol", "n-Heptane", "Toluene"):
        for megapascals, tolerance in ((10, 6e-4), (20, 6e-4), (35, 1.3e-3)):
            ratio, modulus = isentrope(fluid, megapascals * 1e6)
            condition = f"{modulus / 1e6:.6g} MPa to {megapascals} MPa"
            yield "density_ratio", fluid.lower(), condition, ratio, "1", tolerance, COOLPROP

    for step in range(2, 49):
        share = step / 80
        value = methanol_water(share)
        source = f"{COOLPROP}, INCOMP::MMA"
        yield "fluid_density", "methanol water", share, value, "kg/m3", 3e-4, source

    for density, viscosity in ((745.0, 0.44), (782.74, 1.016), (789.4, 1.194)):
        for bore in (6.0, 8.0, 10.0):
            for flow in (0.1, 2.0, 5.0, 8.0):
                reynolds, loss = friction(flow, bore, density, viscosity / 1000)
                # Between the regimes there are as many rules as books.
                if not 2000 < reynolds < 4000:
                    name = f"{density:g} kg/m3 {viscosity:g} mPa s"
                    condition = f"{bore:g} mm {flow:g} L/min"
                    yield "line_loss", name, condition, loss, "bar", TIGHT, FLUIDS
