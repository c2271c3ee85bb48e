## What is in the tank now

in-tank = In the tank
cautions = Cautions
which = Which calibration may be selected
as-of-now = As of { $date }
nothing-yet = The log tells nothing yet. Record a fill under Fill, or say below what is in the tank.
# Before the blend.
about = about{" "}
lean = Under boost a lean mixture destroys an engine: no full load on a stronger calibration before the new blend has arrived and been confirmed.
last-word = This is an estimate from what was logged. The author of your calibration has the last word.
does-it-fit = Does this fit?

## The charts

since-first = Since the first entry
when = When
ethanol-share = Ethanol share
level = Level
expected = Expected
# $what is the quantity, $now a sentence on the tank.
over-time = { $what } over time. { $now }
# An entry in short: its kind, and what it says.
entry = { $kind }: { $detail }

## Adding to the log

add-to-log = Add to the log
fills-under-fill = Fills are recorded under Fill; those of the past can be added here.
change-kind = Change: { $kind }
add-kind = Add: { $kind }
place = Place
note = Note
save = Save
save-anyway = Save anyway
change-it = Change it
cancel = Cancel

## A fill

what-went-in = What went in
was-full = The nozzle clicked off: the tank was full
known-before = Known just before it
only-the-log = Only the log
the-level = The level
level-and-blend = Level and blend
put-in = Put in
put-in-hint = Leave empty if none
price = Price
ethanol-octane-name = Ethanol, octane, name
ethanol = Ethanol
may-be = May be
octane = Octane, at least
mon = MON, at least
name = Name

## A drain

how-much-drained = How much was drained
all-drained = Drained completely
part-drained = A part of it
drained = Drained
drain-caution = Draining fuel is work for somebody equipped for it: vapour burns, static ignites it.

## A drive

distance = Distance
distance-hint = Since the entry before
mean-consumption = Mean consumption over it

## A reading of the sensor

sensor = It shows
sensor-hint = A share like 31 %, or its frequency: 81 Hz
not-reached = The new fuel had not reached it yet: keep the reading, do not count it
fuel-temperature = Fuel temperature by the pulse
pulse = Width of the pulse
sensor-scale = Scale of this sensor: both are published
to-125 = 5 ms is 125 °C
to-95 = 5 ms is 95 °C
fuel-is-at = The fuel is at { $temperature }.

## A test in a tube

how-done = How it was done
salt-water = 50 mL, salt water to 100
plain-water = Any amounts, plain water
fuel-poured = Fuel poured in
water-poured = Water poured in
boundary = Boundary afterwards
boundary-hint = Volume of the lower, watery part
step = Step of the marks
step-hint = 1 mL if left empty
tube-caution = Fuel vapour burns: test outdoors, away from flames and sparks, with gloves, in glass or fuel-proof plastic; hand the mixture in as hazardous waste, never pour it back or away.

## The log

log = Log
no-entries = No entries yet.
show-earlier = Show earlier entries
change = Change
remove = Remove
bring-back = Bring back
# $entry names the entry by its kind and time.
change-entry = Change: { $entry }
remove-entry = Remove: { $entry }
bring-back-entry = Bring back: { $entry }
removed-entries = Removed entries ({ $count })
# $why is a sentence.
not-used = Not used: { $why }

## Workings

workings-mean = What the last fill and the last readings say, each by itself. The estimate weighs them by their errors, as Kalman filters do, beside what the entries before told of the gauge, the pump, the sensor and the consumption. How wide it believes those to stray was chosen in simulation: common practice, no source.

## The sheet for the printer

as-of = As of { $date }.
about-blend = About { $blend } { $between }
what = What
where = Where, and notes
tank-after = In the tank after it
latest-entries = The latest { $shown } of { $all } entries
all-entries = All entries, the latest first
