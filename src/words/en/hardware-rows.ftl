### The fields of the engine, of each kind of part, of limits, of the air of a curve, of fluid

## Fields of several parts

count = How many
count-hint = Equal ones; 1 where blank
rated-pressure = Rated across
rated-pressure-hint = A pressure difference
test-density = Density of the test fluid
test-density-hint = n-heptane 684, mineral spirits about 770 kg/m³
use-limit = Use at most
use-limit-hint = 85 % where blank
rated-flow = Rated flow of one
rated-flow-hint = Static
rated-mass-flow = Rated flow of one
rated-mass-flow-hint = Static, by mass

## Port injectors

rail-pressure = Rail pressure
rail-pressure-hint = Above the manifold, unless fixed
voltage = Voltage at the injector
voltage-hint = Loaded, for a table of dead times
dead-time = Dead time
dead-time-hint = One time, or lines of voltage and time

## Direct injectors

count-direct-injectors-hint = One per cylinder where blank
rail-pressure-direct-injectors = Rail pressure at full load
back-pressure = Pressure in the cylinder
back-pressure-hint = During injection; 10 bar where blank
window = Window to inject in
window-hint = Of crank angle; 210° where blank
opening-offset = From command to flow
opening-offset-hint = 0.3 ms where blank

## The high-pressure pump

bore = Plunger diameter
lift = Stroke
lift-hint = The cam's lift
lobes = Lobes
lobes-hint = Strokes per turn of its cam
rail-pressure-plunger-pump = Rail pressure at full load
drive-ratio = Cam turns per crank turn
drive-ratio-hint = 0.5, a camshaft, where blank
inlet-pressure = Pressure at its inlet
inlet-pressure-hint = 5 bar where blank
efficiency = Filling and leakage leave
efficiency-hint = 85 % where blank
efficiency-range = They may leave
efficiency-range-hint = From–to: 80–90
dead-volume = Dead volume
dead-volume-hint = Times the stroke's; 1 where blank
bulk-modulus = Bulk modulus of the fuel
bulk-modulus-hint = Usual for fuel where blank

## The supply pump

voltage-supply-pump = Voltage at the pump
voltage-supply-pump-hint = Under load, not at rest
flow-table = Measured flow
flow-table-hint = Pressure and flow in each line; for several voltages, begin with a line of them

## The supply line

rail-pressure-supply-line = Pressure to hold
other-losses = Lost in filter and fittings
other-losses-hint = None where blank
line-length = Length of the line
line-bore = Its inner diameter
line-roughness = Roughness
line-roughness-hint = Drawn tube where blank
line-rise = Rise from pump to rail
line-rise-hint = None where blank

## The nozzle of injection fluid

test-density-fluid-nozzle-hint = Water where blank
fluid-pressure = Pressure of its pump
strength = Methanol in the fluid
strength-hint = By volume, unless ticked below

## Limits

from-speed = From
from-speed-hint = Any speed where blank
to-speed = To
to-speed-hint = Any speed where blank
limit-power = Power at the crank, at most
limit-torque = Torque at the crank, at most
limit-air = Air of the compressor, at most
limit-air-hint = From its map, at the pressure ratio that is run

## How much fuel the engine takes

specific-consumption = Fuel per work at full load (BSFC)
specific-consumption-hint = 330 g/kWh or 0.54 lb/hph, say
consumption-error = Its doubt, either way
consumption-error-hint = 8 % where blank
consumption-fuel = It is given for
consumption-fuel-hint = The blend; E0 where blank
efficiency-gain = Gain in efficiency at E85
efficiency-gain-hint = Against that blend; none where blank
lambda = Mixture at full load
lambda-hint = λ 0.82, say

## The engine and what surrounds it

displacement = Displacement
displacement-hint = For the check by air
cylinders = Cylinders
boost = Boost at full load
boost-hint = Where a curve has no column of it
ambient-pressure = Pressure of the air around
ambient-pressure-hint = Standard where blank

## What a check by the air needs

volumetric-efficiency = Volumetric efficiency
volumetric-efficiency-hint = Referred to the manifold
manifold-temperature = Temperature in the manifold

## What is lost between crank and wheels

driveline-loss = Driveline loss, of crank power
driveline-loss-hint = 10 %, say
driveline-loss-range = Loss may be
driveline-loss-range-hint = From–to; ± 3 where blank

## Which way the fuel goes

port-share = Fuel through the port injectors
port-share-hint = Of all fuel, at full load

## The blend

blend-share = Blend
blend-share-hint = E30, say
blend-range = Blend may be
blend-range-hint = From–to: 26–34

## What is wanted

reserve = Reserve wanted
reserve-hint = Flow above what the engine takes, before the limit; 10 % where blank

## Injection fluid to be mixed

mix-strength = Methanol wanted in it
mix-strength-hint = 50 %, say
mix-concentrate = Methanol in the concentrate
mix-concentrate-hint = Neat where blank

## The air in which a curve was measured

air-temperature = Temperature
air-temperature-hint = Of the air drawn in
air-pressure = Pressure
air-pressure-hint = As a barometer shows it there
humidity = Relative humidity
humidity-hint = 50 %, say
