## Before anything is entered

empty = Does the fuel system hold?
empty-means = Give a power curve and the parts that feed the engine: this view says which part gives first, at which engine speed, and up to which ethanol share. It also says what would be enough, and what reserve is left on the blend in the tank.
add-a-curve = Add a curve

## What it has to serve

load = Load
curve-to-serve = The curve to serve
blend = Blend
what-is-in-the-tank = What is in the tank
what-i-type = What I type

## The curves

curves = Curves
# The name of one that is added.
curve = Curve { $number }
compare-with = Compare with
none = None
name = Name
measured = Measured
at-crank = At the crank
at-wheels = At the wheels
not-said = Not said
calibration = Calibration
blend-then = Blend in the tank then
air-and-correction = Air and correction
corrections-mean = All corrections take power to follow the air around. An engine that holds its boost absolute follows it hardly at all and is then over-corrected; figures as measured come first.
figures-are = The figures are
show-them = Show them
remove = Remove
# $what is the name of a curve or a part.
remove-it = Remove { $what }
the-curves = The curves
at-crank-as-measured = At the crank, as measured
power = Power
torque = Torque
torque-at-crank = Torque at the crank
# $what is the quantity.
curves-chart = { $count ->
    [one] { $what } over engine speed, { $count } curve.
   *[other] { $what } over engine speed, { $count } curves.
}
power-at-crank = Power at the crank

## The table of a curve

as-the-table-says = As the table says
torque-nm = Torque in N·m
torque-lbft = Torque in lb·ft
power-kw = Power in kW
power-hp = Power in hp
power-ps = Power in PS
table = The curve
table-hint = Engine speed and torque or power in each line, boost if you have it; a heading tells which
# $why is what is wrong with it.
no-table = This is no table: { $why }.
# $read says how many rows were read.
some-not-read = { $read } { $count ->
    [one] { $count } row
   *[other] { $count } rows
} not read.
row-not-read = Not read, { $row }.
more-not-read = And { $count } more that cannot be read.
understood = What was understood
import-csv = Import a CSV file
use-this-table = Use this table
cancel = Cancel
columns-and-unit = Columns and unit
speed-column = Engine speed is in
value-column = Torque or power is in
value-unit = It is

## The engine

engine = Engine
crank-and-wheels = Between crank and wheels
check-by-air = For a check by the air

## The parts, and limits

parts = Parts
limits = Limits
limits-mean = What gearbox, clutch, rods or compressor stand, by whoever built them, or what a rule allows.
# Which of several of a kind.
numbered = { $part } { $number }
set-aside-short = { $part } (set aside)
add = Add
set-aside = Set aside
set-aside-box = Set aside, for comparison
rated-by-mass = Rated by mass
pressure-is-fixed = The pressure is fixed, whatever the boost
in-series = Pumps feed one another, in series
methanol-by-mass = Methanol by mass
# Units of the columns of a table.
bare-numbers = Bare numbers are { $first } and { $second }.

## Injection fluid

mix = Mix injection fluid
nothing-wanted = Nothing wanted
amount-and-strengths = Amount and strengths
by-volume = By volume
by-mass = By mass
amount-wanted = Amount wanted
weighed = At 20 °C. Weighed, it comes out right at any temperature.
fluid-cautions = Cautions on injection fluid
injection-fluid = Injection fluid
never-counted-on = Never counted on: a spray that stops takes its fuel and its cooling with it at once. Without it decides.

## The verdict

holds = Does it hold?
not-judged = Not judged yet
why = Why

## The figures

what-gives-first = What gives first
how-much-ethanol = How much ethanol it takes
what-engine-takes = What the engine takes
part = Part
use = Use
reserve = Reserve
supports = Supports at the crank
largest-share = Largest share
at-speed = at { $speed }
parts-caption = The parts, each where it is tightest
as-expected = As expected
at-worst = At worst
if-short = If short
enough-caption = What would be enough for a reserve of { $reserve }
engine-speed = Engine speed
power-at-wheels = Power at the wheels
fuel-by-mass = Fuel by mass
fuel-by-volume = Fuel by volume
fuel-by-air = Fuel by the air
air = Air
demand-caption = Demand over engine speed
reserve-without = Reserve without it: decides
reserve-with = Reserve with it
fluid-caption = Without and with injection fluid
# The part that gives first.
first = First: { $part }
use-chart = Use of each part
# $first is a sentence on the part that gives first.
use-chart-words = Use of each part over engine speed, in percent. { $first }
limit = Limit
limit-of = Limit: { $parts }
in-the-tank = In the tank
share-chart = Power that each part supports
# $limits is a sentence on the largest shares.
share-chart-words = Power at the crank that each part supports over the ethanol share. { $limits }
ethanol-share = Ethanol share
wanted = Wanted

## What one curve gives more than another

# Two curves.
gain = { $curve } against { $other }
no-speed-in-common = { $gain }: they have no engine speed in common

## Workings

assumptions = Assumptions
assumptions-mean = What was taken where nothing was typed.
# $owner has the field, $taken is what was taken.
assumption = { $owner }. { $field }: { $taken }

## The sheet for the printer

fuel-system = Fuel system
cautions = Cautions
yes = yes
assumed = assumed
results = Results
loss-added = The same, added to wheel power
part-set-aside = { $part }: set aside, not judged
limit-of-part = Limit: { $part }
limit-set-aside = Limit: { $part }: set aside, not judged
