### What is said of the tank between fills.

## The estimate

at-least-aki = at least AKI { $octane }
at-least-ron = at least RON { $octane }
octane-unknown = octane not known
# $expected is a level, $octane says of what octane it is, $extras what else is in it.
level = { $expected }, between { $low } and { $high }; { $octane }
level-with = { $expected }, between { $low } and { $high }; { $octane }; { $extras }
# $level is the sentence above.
about = About { $blend }; { $level }.
about-between = About { $blend }, { $between }; { $level }.
possible = Possible at all: { $shares }, { $levels }. The likely range holds in 95 of 100 cases in simulation, not in road tests.

## What would make a calibration usable

pour = { $volume } of { $fuel }
# Volumes of fuels, one of which is enough.
pours = { $pours } would make it usable.
also = Also: { $need }
sensor-clears = A sensor reading that shows { $share } would clear it.
tube-test-clears = A tube test that shows { $share } would clear it.
drive-down = Drive down to { $level }, then { $volume } of { $fuel } would make it usable.
drain = Have the tank drained by a workshop: filled with { $fuel } it is usable.
drain-and-plan = Have the tank drained by a workshop, then plan a blend for it under Fill.
other-fuel = None of the fuels under Fill makes it usable: it needs another fuel.
give-octane = Give the octane of what is in the tank: change the entry that lacks it, or set the contents by hand.
check-fluid = Check the injection fluid and say so under Car.
fill-fluid = Fill the injection fluid, check that it flows, and say so under Car.

## No calibration may be selected: what can be done first, and the rule until then

first-sensor = Measure first: a sensor reading can clear { $calibration }.
first-tube-test = Measure first: a tube test can clear { $calibration }.
first-octane = First give the octane of what is in the tank: that can clear { $calibration }.
first-check-fluid = First check the injection fluid: that can clear { $calibration }.
first-fill-fluid = First fill the injection fluid: that can clear { $calibration }.
none-usable = No calibration may be selected on what is known.
until-then = Until one is usable: no full load. Drive gently on { $calibration }, which is nearest to this blend, only as its author allows. If nothing below helps, have the blend measured or the tank drained by a workshop.

## The old blend in the lines

old-blend = The old blend still feeds the engine: about { $distance } from the fill on, { $left } of it left by the distances in the log. A sensor shows the old blend until then.

## What does not fit in the log, as questions

unlogged-fill = The tank held about { $volume } more than the log allows. Was there a fill that is not in the log? Then add it; if the reading was wrong, correct it. Until you decide, both stay possible.
unlogged-use = The tank held about { $volume } less than the log allows. Was the car driven, or fuel drained, without an entry? Add it, or correct the reading.
share-contradicts = { $read } was read, but the log allows { $expected }. Was there a fill that is not in the log, or had the new fuel not reached the sensor? Correct one of them. Until you decide, both stay possible.
overfull = About { $volume } more went in than there was room for. Correct the litres, the level before, or the tank's size under Car.

## What is odd about an entry before it is kept

odd-distance = { $distance } is further than the fuel in the tank can have taken the car: { $most } at most. Is a fill missing from the log?
odd-burned = That makes { $volume } burned, more than the tank can have held: { $most } at most. Is a fill missing from the log?
odd-future = { $time } has not come yet.
odd-drained = { $volume } is more than the tank can have held: { $most } at most. Is a fill missing from the log?
odd-overfull = About { $volume } more went in than there was room for. Is the level before it right, and the size of the tank?

## Kinds of entries

fill = Fill
kind-level = Level
sensor = Sensor reading
tube-test = Tube test
drive = Distance driven
trip-computer = Trip computer
drained = Drained
correction = Set contents by hand
note = Note

## Entries in short

boundary-at = boundary at { $volume }
distance-at = { $distance } at { $consumption }
all-of-it = all of it
level-ethanol = { $level }, ethanol { $share }
to-the-click = to the click
onto = onto { $level }
# What an entry made of the estimate.
then = then { $blend } { $between }, { $level }
