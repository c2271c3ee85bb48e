## The answer

# There is no plan that holds what is asked for.
impossible = Impossible
not-planned = Not planned yet
what-to-buy = What to buy
cautions = Cautions
plan = Plan
cancel = Cancel
plan-again = Plan again
hold = Hold this plan
left-open = What the bands leave open

## The plan that is held, beside a new one

none-possible = No plan is possible now.
none-yet = There is no new plan yet.
held-plan = The plan that you hold
let-go = Let it go
of-plan = Plan
held = Held
new = New
held-and-new = Held and new plan
none-changes = No calibration is lost or won on any way.
# $place is the stop after which it changes, $after the verdict with the new plan, $before with the one held.
calibration-won = After { $place }, { $calibration } is won: { $after }; it was { $before }.
calibration-lost = After { $place }, { $calibration } is lost: { $after }; it was { $before }.
calibration-surer = After { $place }, { $calibration } is surer: { $after }; it was { $before }.
calibration-less-sure = After { $place }, { $calibration } is less sure: { $after }; it was { $before }.

## The stops

stops = Stops
from-the-start = From the start again
add-stop = Add a stop
# The place that a new route starts from.
home = Home
here-and-filled = You are here, and filled up
here = You are here
passed = Passed
place = Place
fuels-there = Fuels there
fee = What stopping costs, fuel apart
way-after = The way after it
arrive = I am here
earlier = Earlier
later = Later
copy = Copy
remove = Remove
# What a button does, and to which stop: read aloud in place of the label.
button-of = { $what }: { $stop }
arrive-means = “I am here” opens Fill with these fuels and what the plan wants here, and plans on from this stop with what the log knows: note the gauge or the drive under Tank first, and the fill afterwards.

## The way from a stop to the next

distance = Distance
distance-hint = To the next stop, or to the end
factor = Takes more by a factor of
factor-hint = Above 1 for motorway, hills, a circuit; blank for 1
octane-min = Octane of the blend, at least
octane-min-hint = Blank for no such rule
calibration-gone = One that is gone
keep-usable = Keep usable on it, one of
fee-hint = A detour, a toll; blank for nothing

## The plan stop by stop

stop-by-stop = Stop by stop
stop = Stop
ethanol = Ethanol
buy = Buy
buy-nothing = nothing
ron-at-least = RON, at least
level-then = Level then
level-at-next = Level at the next
stop-by-stop-caption = What to buy at every stop, and what comes of it

## The empty view

empty = Which fills, and where?
empty-means = Give the stops of a journey with their fuels and the ways between them: this view says what to buy at each, so that the calibrations that you want to keep stay usable. With the plan comes a proof of how far it can be from the best one.
add-start = Add the start

## What is in the tank at the start

from-log = The log
typed = What I type
from-the-log = From the log
as-typed = As typed
start = In the tank at the start
start-from = Start from
# $level is a sentence about the tank.
as-of = { $level } As of { $date }.

## The charts along the route

along-the-route = Along the route
level = Level
reserve = Reserve
# $plan is what to buy next.
level-chart = Level in the tank over the distance, with what is put in. { $plan }.
share-chart = Ethanol share
share = Share
share-chart-words = Ethanol share over the distance, before the windows of the calibrations.
share-chart-between = Ethanol share over the distance, before the windows of the calibrations. Between { $low } and { $high }.
# What is put in at a stop, as “12 L E85”.
portion = { $volume } { $fuel }

## What the plan should have

wish = The plan should have
# $wish is what is wanted above all.
wish-careful = { $wish }, whatever is true
above-all = Above all
hold-whatever = Hold whatever is true within the bands
hold-whatever-means = Without that, it holds if everything is as expected; the table shows what may be.
budget = At most to spend
budget-hint = Fuel and stops; blank for no limit
margin = Stay inside the windows by
margin-hint = Points of ethanol; blank for 2
final-level = Level at the end
final-level-hint = At least; blank for the reserve

## The sheet for the printer

trip = Trip
in-all = { $distance } in all.
at-start = In the tank at the start: { $level } ({ $levels }) of { $share } ({ $shares }).
holds-whatever = It holds whatever is true within the bands given.
holds-as-expected = It holds if everything is as expected.
given = What was reckoned with
fuel = Fuel
price = Price
way-after-heading = Way after it
given-caption = Fuels and ways as given
way = { $distance }, factor { $factor }
fuel-closed = { $fuel }, not to be had
