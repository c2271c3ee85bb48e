### Methods of the car: its tank and its fuel system: titles, what to know, names of lines, what symbols mean.

## symbols

part-fuel-passes-here = part of the fuel that passes here
engine-speed = engine speed
density-blend = density of the blend
largest-use-allowed = largest use that is allowed
lambda-full-load = lambda at full load
stoichiometric-air-fuel-ratio-blend = stoichiometric air-fuel ratio of the blend
fuel-whole-engine-takes = fuel that the whole engine takes there

## tank

title-tank = What is in the tank, between fills
tank-1 = Level, share, consumption, what the gauge, the pump and the sensor always read high or low: all of it is followed together by four Kalman filters side by side, each of which believes another spread of what strong fuels hold. Readings shift the weight between them. Below is what the balance and each reading say by itself; the estimate weighs them by their errors.
tank-2 = The 95 % band is what the readings make likely. Beside it stands what cannot be ruled out, by interval arithmetic; it cuts the band.
tank-3 = The bands were tested in simulation: invented lives of cars whose truth is known, with errors drawn as people make them. They hold nine times in ten where the true spread of the fuels is twice the typed one, and 99 times in 100 where the typed one is honest. Four thousand particles in place of the filters did no better. They were not tested in the field.
what-fuel-holds-on-average = What a fuel holds on average, of its band
share-sensor-s-frequency = Share by a sensor's frequency
share-tube-test-salt-water = Share by a tube test with salt water
least-share-fuel-may-hold = least share that the fuel may hold
share-likeliest = share that is likeliest
largest-share-may-hold = largest share that it may hold
volume-tank-before = volume in the tank before
ethanol-share-volume = its ethanol share by volume
volume-fuel-was-put = volume of fuel a that was put in
what-fuel-a-holds-on-average = what fuel a holds on average
frequency-sensor = frequency of the sensor
frequency-without-ethanol = its frequency without ethanol
boundary-stands-tube = where the boundary stands in the tube
volume-pump-lines-rail = volume of pump, lines and rail
heating-value-old-blend = heating value of the old blend
heating-value-fuel-consumption-stated = heating value of the fuel that the consumption is stated for
consumption-on-fuel = consumption on that fuel

## air-correction

title-air-correction = Air correction of a power curve
air-correction-1 = A measured power is multiplied by a factor that takes it to the air of a standard day. The correction says so of engines whose power follows the air around. One that holds an absolute boost pressure is over-corrected: so as measured comes first, and a factor beyond 0.93 to 1.07 is pointed out.
air-correction-2 = Example: 35 °C, 98 kPa, 40 % relative humidity.
pressure-air-without-vapour = pressure of the air without its vapour
pressure-air = pressure of the air
temperature-air = temperature of the air

## driveline

title-driveline = Driveline loss, from wheels to crank
driveline-1 = The loss is a share of the power at the crank. The other convention adds a share of the power at the wheels; it is shown and never read as this one.
power-wheels = power at the wheels
driveline-loss-share-crank-power = driveline loss as a share of crank power

## demand

title-demand = What the engine takes
demand-1 = Fuel follows from power and brake specific fuel consumption, brought to the blend by heating value. The air that the engine breathes gives a second, independent figure to compare with.
power-crank = power at the crank
brake-specific-fuel-consumption = brake specific fuel consumption
heating-value-fuel-stated = heating value of the fuel that it is stated for
heating-value-blend = heating value of the blend
gain-efficiency-ethanol = gain in efficiency with ethanol
volumetric-efficiency = volumetric efficiency
absolute-pressure-manifold = absolute pressure in the manifold
displacement = displacement
temperature-manifold = temperature in the manifold

## injectors

title-injectors = Injectors, port and direct
injectors-1 = A rated flow holds for one fluid at one pressure. By mass it goes with the square root of pressure and of density; a flow in cc of test fluid is none of petrol.
injectors-2 = Port injectors may open over the whole cycle but for their dead time; direct ones over their window. Both have least room where time per cycle is short, so the tightest speed of the whole curve is shown.
duty-port-injectors-commanded = Duty of port injectors, as commanded
reserve-port-injectors-before-limit = Reserve of port injectors before the limit
time-direct-injection = Time for direct injection
reserve-direct-injectors-before-limit = Reserve of direct injectors before the limit
rated-flow-mass = rated flow by mass
pressure-across-injector = pressure across the injector
pressure-rated = pressure that it is rated at
density-fluid-rated = density of the fluid that it is rated with
number-injectors = number of injectors
dead-time = dead time
window-injection-crank = window for injection, of the crank
offset-opening = offset for opening
flow-one-direct-injector-held = flow of one direct injector held open
highest-power-curve-crank = highest power of the curve, at the crank

## pumps

title-pumps = Pumps and lines
pumps-1 = A high-pressure pump gives so much for each turn of the crank, less what stays compressed in its bore. It is tightest at peak torque; injectors are at peak power.
pumps-2 = A supply pump is read from its own table of flow over pressure and voltage, at the pressure that regulator and line ask of it. Outside the table there is no figure, and the part cannot be judged.
reserve-high-pressure-pump-before = Reserve of the high-pressure pump before the limit
fuel-engine-takes-volume = Fuel that the engine takes, by volume
reserve-supply-before-limit = Reserve of the supply before the limit
ratio-circumference-diameter = ratio of circumference to diameter
bore = bore
lift = lift
lobes-cam = lobes of the cam
turns-cam-each-turn-crank = turns of the cam for each turn of the crank
rise-pressure-pump = rise of pressure in the pump
bulk-modulus-fuel-inlet = bulk modulus of the fuel at the inlet
dead-volume-over-volume-stroke = dead volume over the volume of a stroke
share-filling-leakage-leave = share that filling and leakage leave
pressure-regulator = pressure at the regulator
loss-line-friction = loss in the line by its friction
other-losses = other losses
what-pumps-give-from-their = what the pumps give there, from their tables
what-pumps-give-limit = what the pumps give at the limit

## fluid

title-fluid = Injection fluid
fluid-1 = Injection fluid counts for nothing in a verdict: a fuel map leaned for a spray runs lean the moment the spray stops. What it would do stands beside.
flow-fluid = flow of the fluid
air-burns-mass = air that it burns with, by mass

## charge-cooling

title-charge-cooling = Charge cooling
charge-cooling-1 = The most by which a fuel can cool the charge, if all of it evaporates there and takes all the heat from it; and what engines with direct injection show of that.
charge-cooling-2 = Example: E30 at lambda 0.84.
heat-vaporisation-blend = heat of vaporisation of the blend
heat-capacity-liquid = heat capacity of the liquid
