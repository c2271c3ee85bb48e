### Where each number comes from.

## The view

title = Where does each number come from?
title-means = Every constant and every formula that is reckoned with, with its source and how far that can be relied on. What is printed is what is open.
constants = Constants
constants-short = Values, with their sources
formulas = Formulas
formulas-short = How things are worked out, each with an example
grades = Fuels at the pump
grades-short = What each grade may really hold
limits = Limits
limits-short = What no figure here covers
cautions = Cautions
cautions-short = What has to come first
cautions-fuel = Fuel and calibration
cautions-hardware = Fuel system
cautions-fluid = Injection fluid

## Tables

constant = Constant
symbol = Symbol
value = Value
source = Source
how-sure = How sure
figure = Figure
fuels-and-air = Fuels and air
fuel-system = Fuel system
tank-and-readings = Tank and its readings
grades-mean = A standard often sets only the most ethanol. What is expected is reckoned with, the ends bound the worst case; the circle on a European pump names the most, not what is in it.
grades-caption = Grades by published standard
fuel = Fuel
ethanol = Ethanol
octane = Octane, at least
standard = Standard
note = Note

## A formula

example = Example:
# $how is how sure it is.
source-of-formula = Source: { $source } ({ $how })
sources-of-number = Source: { $sources }

## How sure a source is

published = published
published-checked = published, read or computed there
published-weak = published, not read there: use with care
by-definition = by definition
by-arithmetic = follows by arithmetic
common-practice = common practice
from-memory = from memory
# $how is one of those above.
reported = { $how }, read in a text that reports it

## What a grade may hold

exactly = { $expected } %
between = { $low } to { $high } %, expected { $expected } %
octane-not-stated = not stated

## What no figure here covers

limit-volumes-add = Volumes are taken as additive. Petrol and ethanol expand by a few tenths of a per cent on mixing, less than a gauge can tell.
limit-temperature = Volumes are meant at 15 °C, as standards state them; the tank's own temperature is not asked for.
limit-petrol = Water, methanol and ethers count where they are given. The petrol itself is a middling one: a real one differs by a few per cent in density and heating value, and more so by season.
limit-octane = Octane by moles is a floor, worked out from the octane of the finished petrol. How an engine answers to octane, and to the cooling by ethanol, is not in it.
limit-e85 = E85 is no fixed fuel: by season and country it holds from half to 85 % ethanol, and after a change of season the pump may still hold the other.
limit-fuel = How a fuel starts in the cold, how it ages, and what water does in it are not modelled.
limit-tank = The bands of the tank were tuned and tested in simulation, not in the field. They are only as good as what is entered as possible.
limit-parts = Parts are reckoned as steady: pulses in rail and lines, hot fuel, wear, a tired pump and a clogged filter are not.
limit-trip = A trip knows no road, no traffic and no pump but those that were typed, and takes consumption to follow distance and energy alone. Where a fuel on it holds water, methanol or ethers, all of it is planned with the energy of the fuel that lacks most.

## What has to be said of fuel and calibrations

caution-estimates = It estimates; it does not certify. The author of your calibration has the last word.
caution-lean = A lean mixture under boost destroys an engine. Select a calibration on what was measured, not on what was hoped.
caution-vapour = Fuel vapour burns, and static ignites it: no flame, no spark, earth the can, and leave the pump's nozzle on metal.
caution-above-ten = Ethanol above 10 % belongs only in a fuel system whose every part is rated for it.
caution-draining = Draining a tank is work for somebody equipped for it.
caution-local-law = Local law on fuel, duty, emissions and road approval comes first.
