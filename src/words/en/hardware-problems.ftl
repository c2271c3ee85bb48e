### What is missing in a field of the hardware or wrong with it.

## hardware

give-curve-engine-speed-torque = Give the curve: engine speed and torque or power in each line.
no-column-says-engine-speed = No column says that it is engine speed: choose one.
table-does-not-say-whether = The table does not say whether it is torque or power: choose which, and the unit.
give-temperature-air-engine-drew = Give the temperature of the air that the engine drew in.
give-pressure-air-around-barometer = Give the pressure of the air around, as a barometer shows it there.
give-relative-humidity-50-say = Give the relative humidity: 50 %, say.
give-fuel-unit-work-takes = Give the fuel that a unit of work takes at full load: 330 g/kWh, say.
give-lambda-full-load-0 = Give lambda at full load: 0.82, say.
give-share-fuel-goes-through = Give the share of the fuel that goes through the port injectors.
give-loss-between-crank-wheels = Give the loss between crank and wheels as a share of crank power: a curve is measured at the wheels.
loss-lies-outside-what-may = The loss lies outside what it may be. Correct one of them.
log-does-not-say-what = The log does not say what is in the tank: record it under Tank, or type the blend here.
give-blend-reckon-e30-or = Give the blend to reckon with: E30, or a range.
give-limit-or-set-aside = Give the limit, or set it aside.
range-ends-before-begins-give = The range ends before it begins: give the lower speed first.
give-how-many-are = Give how many there are.
give-dead-time-from-injector = Give the dead time from the injector's own data: 0.95 ms, say, or a table.
give-degrees-between-earliest-start = Give the degrees between the earliest start and the latest end, above zero.
give-pump-s-pressure = Give its pump's pressure.
give-methanol-fluid-50-volume = Give the methanol in the fluid: 50 %, and by volume or by mass.
give-pressure-which-was-rated = Give the pressure at which it was rated: 3 bar, say.
give-density-fluid-was-rated = Give the density of the fluid it was rated with: 684 kg/m3 for n-heptane, about 770 for mineral spirits, about 745 for petrol.
give-flow-one = Give the flow of one.
pump-needs-line-feeds-add = A pump needs the line that it feeds: add it, with the pressure to hold.
give-pressure-regulator-holds = Give the pressure that the regulator holds.
give-rail-pressure-full-load = Give the rail pressure at full load.
give-plunger-s-diameter = Give the plunger's diameter.
give-plunger-s-way = Give the plunger's way.
give-strokes-per-turn-cam = Give the strokes per turn of its cam.
efficiency-lies-outside-what-may = The efficiency lies outside what it may be. Correct one of them.
give-pump-s-measured-flow = Give the pump's measured flow: a pressure and a flow in each line.
give-line-s-inner-diameter = Give the line's inner diameter, or clear its length.
give-boost-full-load-or = Give the boost at full load, or a curve with a column of boost: what injectors and pumps give depends on it.
give-how-much-wanted = Give how much is wanted.
give-methanol-wanted-50-say = Give the methanol that is wanted: 50 %, say.

air-temperature = { $given } degrees Celsius is no temperature of the air around: give -40 to 60
air-pressure = { $given } kPa is no pressure of the air around: give 50 to 110 kPa, as a barometer at the place shows and not reduced to sea level
air-humidity = { $given } % is no relative humidity: give 0 to 100 %

curve-too-few = a curve needs at least two different engine speeds: { $given } were given
curve-not-positive = engine speed and torque must be above zero: point { $point } is not

driveline-loss = { $given } % of the crank's power is no driveline loss: give 0 to 40 %

pump-table-too-small = { $pressures } pressures and { $voltages } voltages make no table: give two pressures or more, and a voltage
pump-table-shape = row { $row } holds { $given } flows: give one for each of the { $allowed } pressures
pump-table-rows = there are { $given } rows of flows: give one for each of the { $allowed } voltages
pump-table-pressures = { $after } bar follows { $before } bar: give each pressure once, from low to high
pump-table-voltages = { $after } V follows { $before } V: give each voltage once, from low to high
pump-table-flow = a pump does not give { $given } L/min: give zero or more
pump-table-rising = { $after } L/min follows { $before } L/min at a higher pressure: a pump gives less against more pressure

dead-time-empty = a table without values says nothing: give a voltage and its dead time
dead-time-not-ascending = { $after } V follows { $before } V: give each voltage once, from low to high
dead-time-time = { $given } ms is no dead time: give zero or more

fluid = { $given } % is no share of methanol: give 0 to 100 %

outside = { $given } { $unit } is outside the table of { $what }, which goes from { $low } to { $high } { $unit }: stay inside it, or add measured values

nozzle-flow = a rated flow of { $given } g/s is no flow: give more than zero
nozzle-difference = a flow rated at a pressure difference of { $given } bar says nothing: give the difference, above zero, that it was measured at
nozzle-density = { $given } kg/m3 is the density of no test fluid: give { $lightest } to { $heaviest } kg/m3

mix-amount = { $given } kg is nothing to mix: give more than zero
mix-too-weak = a concentrate of { $allowed } % methanol by mass gives no fluid of { $given } %: take a stronger one, or want less

table-cell = line { $line }: { $reason }
table-width = line { $line } has { $found } numbers; { $wanted } are needed there
table-too-long = these are more than { $most_rows } lines: leave some out
table-word = line { $line }: “{ $word }” says nothing here: figures are in { $units }, unless they name another unit, as in 43psi
table-no-voltage = the table is for several voltages: give the voltage at the part
table-no-header = begin with a line of voltages, such as 12 13.5, or give only pressure and flow in each line

curve-table-too-long = the text is { $given } KiB long: at most { $largest } KiB are read, so leave out what is no part of the run
curve-table-too-many-rows = the table has { $given } rows: at most { $most_rows } are read, so take every other one
curve-table-too-many-columns = the table has { $given } columns: at most { $most_columns } are read
curve-table-no-rows = no line holds two numbers: give a line for each engine speed, such as 2000 350
curve-table-no-such-column = there is no column { $given }: the table has { $columns }
curve-table-column-chosen-twice = column { $given } was chosen for two things: choose another one for one of them

## With something typed in them

not-whole = “{ $given }” is not a whole number
not-a-range = “{ $given }” is not a range: type it as 10-15
backwards = “{ $given }” runs backwards: type the smaller one first
one-set-of-direct = An engine has one set of direct injectors: set one of them aside, or remove it.
one-line = All pumps feed one line: set one of them aside, or remove it.
one-set-of-nozzles = One set of nozzles is reckoned with: set one of them aside, or remove it.

## A cell of a curve's table: $column is the name of the column, $given what stands in the cell

row-line = line { $line }: { $reason }
cell-empty = there is nothing in column { $column }
cell-ambiguous = “{ $given }” in column { $column } may mean { $decimal } or { $grouped }
cell-out-of-range = “{ $given }” in column { $column } is out of range: { $low } to { $high }{ $unit } is read
cell-other-unit = “{ $given }” in column { $column } has another unit than { $known }
cell-not-a-unit = “{ $given }” in column { $column } { $advice }
cell-not-a-number = “{ $given }” in column { $column } is not a number

## What is taken where nothing is typed

taken-petrol = petrol, E0
taken-no-gain = no gain
taken-between = { $low } to { $high } %
taken-with-ends = { $expected } %, { $low } to { $high } %
taken-one-per-cylinder = one per cylinder
taken-water = water
taken-camshaft = camshaft speed, 0.5
taken-stroke = 1 times the stroke
taken-drawn-tube = 1.5 µm, drawn tube
taken-none-measured = none measured
taken-neat = neat methanol

## What a table is of, inside a sentence

dead-times = dead times
pump-flow = pump flow
pump-pressures = pump pressures
pump-voltages = pump voltages

## What a column holds, inside a sentence

engine-speed = engine speed
torque = torque
power = power
boost = boost
not-used = not used
