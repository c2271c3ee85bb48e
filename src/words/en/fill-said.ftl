### What is said of a fill. $aim is the blend aimed at, or the window.

## The plan in one line

you-have = You have
# One of several steps, with the volume that is still to be poured.
step = { $volume } { $fuel }
step-of = { $volume } of { $fuel }
then = { $first }, then { $rest }
then-stop = { $steps }, then stop
# In the middle of a sentence where $within is true.
nothing-left = { $within ->
    [true] nothing left to pour
   *[false] Nothing left to pour
}
nothing-to-pour = { $within ->
    [true] nothing to pour
   *[false] Nothing to pour
}
misses = Misses { $aim }: { $plan }
octane-too-low = Too little octane: { $plan }

## What gave way for the aim: what to do, and what the tank would be with what was wished

put-in-and-stop = Put in { $steps } and stop: { $blend }.
stop-here = Stop here: { $blend }.
put-in-nothing = Put in nothing: the tank holds { $blend }.
# The wishes begin a sentence: only of the first is $leads true.
wish-level = { $leads ->
    [true] At { $level }
   *[false] at { $level }
}
wish-full = { $leads ->
    [true] Full
   *[false] full
}
wish-all = { $leads ->
    [true] With all { $volume } of { $fuel }
   *[false] with all { $volume } of { $fuel }
}
otherwise = { $act } { $wishes } it would be { $blend }.

## Right after a fill was recorded

recorded-full = About { $blend }, full.
recorded = About { $blend }, { $level }.

## What is promised of the plan

safe = Poured in this order, the blend lies inside { $aim } as long as your ranges are right.
too-little = There is too little in the tank to be sure of { $aim } with litres that a pump can give. Measure afterwards.
not-safe = No plan stays inside { $aim } whatever the true level and strengths are: { $rules } cannot all hold in every case. This one strays least. Narrow what you gave as possible, or measure afterwards.

## Rules, as parts of a sentence

the-rules = the rules
blend-wanted = the blend wanted
weakest-blend = the weakest blend allowed
strongest-blend = the strongest blend allowed
space = the space in the tank
filling-to-brim = filling to the brim
level-to-stop = the level to stop at
volume-to-stop = the volume to stop after
money-to-stop = the money to stop after
octane-needed = the octane number needed
how-much-there-is = how much there is of { $fuel }
using-all = using all of { $fuel }
already-in = the { $fuel } already put in
a-limit = a limit

## What stands in the way

too-weak = { $aim } cannot be reached with these fuels: the strongest is { $blend }. A stronger fuel is needed.
too-strong = { $aim } cannot be reached with these fuels: the weakest is { $blend }. A weaker fuel is needed.
because-of = { $aim } cannot be reached any more, because of { $rules }.
too-full = { $aim } cannot be reached now: the tank is too full.
with-so-little = { $aim } cannot be reached with so little: { $rules }.
not-allowed = { $aim } cannot be reached: { $rules } does not allow it.
becomes = Filled to { $level } it becomes { $blend }.
becomes-stop-at = Filled to { $level } it becomes { $blend }. For { $aim } stop at { $stop }.
not-with-octane = { $aim } can be reached, but not with the octane number needed.

## What helps

within-reach-one = Within reach: only { $blend }.
within-reach = Within reach: { $low } to { $high }.
highest-ron = The highest RON inside the window is { $ron }.
without-limit = Without that limit it takes { $volume }.
works-up-to = { $aim } works up to { $level } in the tank.
# $then is what is put in afterwards.
drive-down = Drive the tank down to { $level }; then { $then } makes { $aim }.
drive-down-about = Drive the tank down to { $level } (about { $distance }); then { $then } makes { $aim }.
drive-or-drain = Drive the tank down to { $level }, or have { $volume } drained by a workshop; then { $then } makes { $aim }.
drive-about-or-drain = Drive the tank down to { $level } (about { $distance }), or have { $volume } drained by a workshop; then { $then } makes { $aim }.
nothing-more = nothing more
below-reserve = That is below the reserve.
refills = { $count ->
    [one] Without going below the reserve: burn down to it and fill up with { $fuel }, { $count } time. The blend after each fill: { $blends }.
   *[other] Without going below the reserve: burn down to it and fill up with { $fuel }, { $count } times. The blend after each fill: { $blends }.
}
