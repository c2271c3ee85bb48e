### What is said of a route and its plan. $place is a stop, $places several.

## Cautions

confirm-share = The fuel that a pump gives may differ from its name: confirm the share before you select a calibration.
no-permission = A plan is no permission: the author of a calibration has the last word, and so does the builder of the fuel system on ethanol above E10.
vapour = Fuel vapour burns and static ignites it: touch bare metal before the nozzle, and carry fuel in approved cans only.
keep-margin = Keep a margin: a closed pump or a detour takes more than any plan knows.
local-law = Local law on fuel, on carrying it and on what may be driven comes first, in every country on the way.

## What is wanted above all

cheapest = Least money
fewest-stops = Fewest stops
most-ethanol = Most ethanol

## Stops

start = Start
stop = Stop { $number }
not-to-be-had = { $fuel } (not to be had)
no-fuel = no fuel
# A stop in short: its fuels, and how far the next one is.
then-distance = { $fuels }; then { $distance }

## What to buy

portion = { $volume } of { $fuel }
at = At { $place }: { $what }
then-at = Then at { $place }: { $what }.
nothing-to-buy = Nothing to buy
to-the-end = What is in the tank takes you to the end.
nothing-more = After that nothing more is needed.

## How good the plan is

above-best = At most { $percent } above the best possible.
stops-needed = { $count ->
    [one] { $count } stop is needed
   *[other] { $count } stops are needed
}
# $needed says how many stops are needed.
needed-and-cost = { $needed }; with no more, at most { $percent } above the least cost.
less-ethanol = At most { $percent } less ethanol than the best possible.
less-ethanol-unrounded = Before it was rounded, at most { $percent } less ethanol than the best possible.
at-least-working = { $count ->
    [one] At least { $count } stop is needed; the cost is looked at after that.
   *[other] At least { $count } stops are needed; the cost is looked at after that.
}
at-least-unsettled = { $count ->
    [one] At least { $count } stop is needed; whether so few are enough is not settled.
   *[other] At least { $count } stops are needed; whether so few are enough is not settled.
}
on-the-edge = No plan stays { $percent } % inside the windows, so this one goes to their edge: measure the share at every stop.

## How the search stands

looking = Looking for a plan.
found = A plan is found. The search for a better one goes on.
settled = The plan is settled.
no-plan-proved = There is no plan, and that is proved.
over-with-plan = The search is over: the plan holds, but a better one is not ruled out further.
over-without = The search is over without a plan, and without a proof that there is none.
stopped-with-plan = Stopped. The plan holds, but may not be the best.
stopped-before = Stopped before a plan was found.
nothing-planned = Nothing is planned.
incomplete = Nothing is planned until the route is complete.
incomplete-with-plan = Not updated: this plan is for the route before your change. A new one is planned when the route is complete.
planning-anew = This plan is for the route before your change. Planning anew…
stopped-before-new = This plan is for the route before your change. Stopped before a new one was found.
bar-planning-anew = Plan before your change. Planning anew…
bar-not-updated = Not updated

## Why there is no plan

nothing-gets-to = Within these rules nothing gets from { $place } to { $next }.
nothing-gets-to-end = Within these rules nothing gets from { $place } to the end.
several-rules = No single rule stands in the way: several together do. Make the way shorter, add a stop or a fuel before it, or keep fewer calibrations.
way-brim = What the tank holds stands in the way at { $place }: add a stop, or make the way after it shorter.
way-limit = What may be bought at { $place } stands in the way: raise “At most” of a fuel, or take one that is marked as not to be had.
way-reserve = The reserve would be used after { $place }: add a stop, a fuel before it, or a smaller reserve under Car.
way-final-level = The level at the end stands in the way: ask for less, or add a stop before the end.
way-calibration = No calibration to keep stays usable after { $place }, for its window and its octane number together: tick another one, or add a fuel.
way-window = The blend after { $place } cannot be inside the window of a calibration to keep: add a stronger or a weaker fuel there or before, or do not keep it on this way.
way-octane = The octane number after { $place } is out of reach: add a fuel of a higher one, or ask for less.
way-budget = The money to spend stands in the way: allow more.

## What the bands leave open

open-brim = The tank may be full before all of it is in at { $places }.
open-window = The blend after { $places } may be outside the window of the calibration to keep: measure the share there first.
open-octane = The octane number after { $places } may be too low.
open-reserve = The reserve may be used on the way after { $places }: watch the gauge.

## The plan in figures

cost = Cost
# $money is in one or several other currencies.
abroad = of which { $money } abroad
stops-to-buy = Stops to buy at
weakest = Weakest blend driven
strongest = Strongest blend driven
least-ron = Least RON driven
