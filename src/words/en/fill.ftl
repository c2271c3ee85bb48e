## What is in the tank before

# What is reckoned from: what the log says is in the tank, or what is typed.
from-log = The log
typed = What I type
in-tank = In the tank
tank-size = Tank size
# $level is a sentence about the tank.
as-of = { $level } As of { $date }.
start-from = Start from
gauge-sharpens = What the gauge shows now sharpens that; leave it empty if nothing was driven since.

## What is on offer

on-offer = On offer here

## What is wanted

aim = Aim
aim-for = Aim for
a-blend = A blend
as-poured = I have already poured: what is it?
blend-wanted = Blend wanted
blend-wanted-hint = E30, 30 or 30 %
how-far = How far to fill
to-the-click = Full, to the click
at-a-level = At a level
after-a-volume = After a volume, at most
after-a-sum = After a sum of money, at most
as-soon-as = As soon as the aim is reached
stop-level = Level to stop at
stop-level-hint = 3/4, 75 % or a volume
stop-volume = Volume to stop after
stop-money = Money to stop after

## The answer

put-in = Put in
cautions = Cautions
# Before the blend: the nearest that is possible, what is in the tank, what it makes.
closest = Closest:{" "}
you-have = You have{" "}
makes = Makes{" "}
octane-left-out = The plan leaves octane out, since it is not known of everything. Give that of:
fill-anyway = Fill up anyway
use-all-anyway = Use all of it anyway
keep-to-aim = Keep to the aim
vapour = Fuel vapour burns and static ignites it: engine off, no flame, touch bare metal first.
above-ten = More than 10 % ethanol belongs only in a fuel system whose every part is rated for it, and local law decides whether it may.
old-blend = The old blend still feeds the engine for a while. Under boost a lean mixture destroys it: no full load on a stronger calibration before the new blend has arrived and been confirmed.
last-word = This is an estimate. The author of your calibration has the last word.
recorded = Recorded
# Of what octane is asked for.
what-is-in-the-tank = what is in the tank

## What goes on at the pump

step-put-in = Put in.
step-done = Done.
more-on-top = More, on top of the { $volume } in it.
to-click = Fill until the nozzle clicks off.
to-click-expect = Fill until the nozzle clicks off: expect { $volume }, depending on what was really in the tank.
then-stop = Then stop.
# The second is for those who hear the page, and names the fuel.
enter-put-in = Enter what went in
enter-for = { " " }for { $fuel }
poured-as-planned = Poured as planned
poured-as-planned-of = Poured as planned: { $fuel }
not-poured = Not poured
not-poured-of = Not poured: { $fuel }
put-in-all = Actually put in, in all
put-in-all-hint = The rest of the plan follows
see-tank = See Tank.
nothing-left = Nothing left to pour.
clicked-off = The nozzle clicked off: the tank is full
place = Place, for the log
record = Record
record-as-planned = Record as planned

## What it makes

in-tank-then = In the tank then
at-worst = { $octane } at worst
not-known = not known
octane-missing = give it of the tank and of each fuel
beside = Beside petrol and ethanol
stoichiometric-afr = Stoichiometric AFR
fuel-volume = Fuel volume at equal air
against = against { $blend }
between-against = { $between }, against { $blend }
cost = Cost
price-missing = a price is missing
cost-on-road = Cost on the road
per-distance = per { $unit }, of what is added
range-then = Range then
range-on = { $distance } on { $blend }
# $strong and $weak are fuels.
worth-below = { $strong } is worth it below
worth-below-means = below that, { $strong } costs less per distance than { $weak }
judge-octane = To judge octane, give that of:
octane-means = Octane is given as at least: measured values lie up to about 6 RON higher with paraffinic petrol.
which-then = Which calibration may be selected then
the-blend = The blend

## Workings

orders = Orders of pouring
orders-mean = Topping up to the click with the right fuel takes the gauge's error out of the blend; with the wrong one it makes it worse. The first row is the one proposed.
last-to-click = Last, to the click
worst-case = Worst case
by-gauge-alone = By the gauge alone
fixed-volumes = none: fixed volumes
shares = { $low } to { $high } %

## The sheet for the printer

fill = Fill
before = In a tank of { $capacity } were { $level } ({ $levels }) of { $share } ({ $shares }).
given = What was reckoned with
fuel = Fuel
ethanol = Ethanol
price = Price
given-caption = Fuels on offer as given
