### What each line of the workings works out.

## fill

air-brings-mole-oxygen = Air that brings a mole of oxygen
stoichiometric-afr-petrol-base = Stoichiometric AFR of the petrol base
stoichiometric-afr-ethanol = Stoichiometric AFR of ethanol
density-15-c = Density at 15 °C
stoichiometric-afr-mean-mass = Stoichiometric AFR, mean by mass
density-reference-fuel = Density of the reference fuel
stoichiometric-afr-reference-fuel = Stoichiometric AFR of the reference fuel
fuel-volume-equal-air-against-reference = Fuel volume at equal air, against the reference fuel
lower-heating-value = Lower heating value
aki-least = AKI, at least
range-then = Range then
cost-on-road = Cost on the road
cost = Cost
space-tank = Space in the tank
mean-share-what-be-added = Mean share of what is to be added
level-burn-down = Level to burn down to
ethanol-share-afterwards-expected = Ethanol share afterwards, as expected

## hardware

highest-power-crank-from-wheels = Highest power at the crank, from that at the wheels
same-loss-share-wheel-power = The same loss as a share of wheel power
same-volume = The same by volume
air-goes = Air that goes with it
air-engine-breathes = Air that the engine breathes there
fuel-air = Fuel by that air
share-fuel-injection-fluid-could-stand = Share of the fuel that the injection fluid could stand in for
lambda-fluid-nothing-else-changed = Lambda with the fluid, nothing else changed
lambda-if-fuel-were-cut-spray = Lambda if that fuel were cut and the spray stopped
reserve-before-limit = Reserve before the limit
power-whole-curve-supports-crank = Power of the whole curve that it supports, at the crank
lambda-if-nothing-changed = Lambda there if nothing is changed
pressure-across-injectors-then-what-should = Pressure across the injectors then, of what it should be
time-injection = Time for injection
fuel-each-injection = Fuel for each injection
use-time = Use of that time
flow-one-injector-held-open-on = Flow of one injector held open, on this blend
volume-stroke = Volume of a stroke
volume-swept-second = Volume swept in a second
what-high-pressure-pump-gives = What a high-pressure pump gives
use-what-pumps-give = Use of what the pumps give
density-rail-over-inlet = Density in the rail over that at the inlet
duty-commanded = Duty as commanded
pressure-pumps = Pressure at the pumps
use-what-pumps-give-read-from = Use of what the pumps give there, read from their tables

## tank

how-far-old-blend-feeds-engine = How far the old blend feeds the engine after the last fill
share-after-last-fill-balance-alone = Share after the last fill, by the balance alone
share-last-sensor-reading = Share by the last sensor reading
share-last-tube-test = Share by the last tube test

## methods

largest-cooling-charge = Largest cooling of the charge
cooling-direct-injection-shows = Cooling that direct injection shows
least-ethanol-one-planes = Least ethanol by one of the planes
most-which-plan-can-be-above = Most by which the plan can be above the best

## Names with a fuel, a calibration or a place in them

pays-below = { $fuel } pays below
afr-of-methanol = Stoichiometric AFR of methanol
afr-of-mtbe = Stoichiometric AFR of MTBE
afr-of-etbe = Stoichiometric AFR of ETBE
octane-by-moles = { $scale } by moles, at least
lambda-of-calibration = { $calibration }: lambda over that intended, open loop
second-fuel = { $fuel }, before rounding and what was poured differently
weakest = Ethanol share at the weakest
strongest = Ethanol share at the strongest
fuel-at-highest-power = Fuel at the highest power, by mass
fuel-at-speed = Fuel at { $speed } rpm, by mass
holds-on-average = What { $fuel } holds on average
correction = correction to { $standard }
