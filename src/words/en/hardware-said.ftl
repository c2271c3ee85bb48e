### What is said of the fuel system and of power curves.

## Cautions

lean = Under boost a lean mixture destroys pistons and valves within seconds.
rail-pressure = A rail pressure that falls is a lean mixture, whatever the injectors are told.
beyond-limit = Opening an injector beyond its limit gives no more fuel to rely on.
no-calibration = A calculation is no calibration: verify it with a wideband sensor, the rail pressure and a knock log.
no-figure-says = No figure here says that an engine survives this power.
rules-first = The word of whoever built the engine comes first, and so do the rules where you drive or race.
fluid-toxic = Methanol is toxic, through the skin and as vapour too, and burns with a flame that is hard to see: gloves, goggles, fresh air, nothing that can ignite it.
fluid-container = Keep it in a closed container that says what is in it, out of reach of children.
fluid-fail-safe = No calibration should depend on the spray without a fail-safe that acts by itself when the flow stops.

## Kinds of parts and limits

port-injectors = Port injectors
direct-injectors = Direct injectors
plunger-pump = High-pressure pump
supply-pump = Supply pump
supply-line = Supply line
fluid-nozzle = Injection-fluid nozzle
power-limit = Power limit
torque-limit = Torque limit
air-limit = Air limit
# The end of a name that already says that it is of a limit.
limit-word = limit
limit-of = { $name } limit
a-limit = A limit
removed-part = A part that was removed

## Figures of a part

used-of = { $used } of { $limit }
none = none
at-worst = { $share } at worst
# $flow has the pressure that it is rated across.
each = { $flow } each
each-or-rail = { $flow } each, or { $pressure } in the rail
per-stroke = { $volume } per stroke, all pumps together
flow-at = { $flow } at { $pressure }
short-mixture = { $mixture }, pressure at { $pressure }
no-fuel = no fuel

## How a part stands

part-holds = holds
part-likely = likely holds
part-barely = holds, but barely
part-short = does not hold
part-no-figure = cannot be judged

## The verdict on the fuel system; in the middle of a sentence where $within is true

no-part = { $within ->
    [true] no part to judge
   *[false] No part to judge
}
no-part-means = Add the injectors and the pumps under Parts: until then only the demand is shown.
cannot-be-judged = { $within ->
    [true] cannot be judged
   *[false] Cannot be judged
}
holds = { $within ->
    [true] holds
   *[false] Holds
}
holds-barely = { $within ->
    [true] holds, but barely
   *[false] Holds, but barely
}
likely-holds = { $within ->
    [true] likely holds
   *[false] Likely holds
}
does-not-hold = { $within ->
    [true] does not hold
   *[false] Does not hold
}
to-spare-band = with { $reserve } to spare, { $reserves } from worst to best
to-spare-less = with { $reserve } to spare, less than the { $wanted } you want
to-spare-less-short = with { $reserve } to spare, less than the { $wanted } you want; at worst { $short } % short
to-spare-short = with { $reserve } to spare, but at worst { $short } % short
short-of = { $short } short of what the curve asks for
# $why is a sentence without its full stop.
why-not = { $part }: { $why }.

## A limit that the curve crosses

limit-crossed = { $limit } crossed from { $speed }
limit-may-be-crossed = { $limit } may be crossed from { $speed }
# $verdict is that on the fuel system, $crossed one of those above.
fuel-and-limit = Fuel { $verdict }. { $crossed }
fuel = Fuel: { $what }
crossing = Above the { $limit } from { $from } to { $to }, by up to { $most } at { $speed }.

## What gives first, and how much ethanol it takes

first-to-give = First to give: { $part }, at { $speed }, where { $used } is in use.
largest-share = Largest ethanol share on this curve: { $expected } as expected, { $worst } at worst.
largest-share-none-at-worst = Largest ethanol share on this curve: { $expected } as expected, at worst not even petrol without ethanol.
too-much = This curve is too much even for petrol without ethanol.

## The compressor's air

the-limit = the limit
air-beyond = Air: { $air } at { $speed }; that is beyond { $limit }, { $rated }.
air-beyond-at-worst = Air: { $air } at { $speed }; at worst that is beyond { $limit }, { $rated }.
air-within = Air: { $air } at { $speed }; that is within { $limit }, { $rated }.

## What is asked

load = { $curve }, { $power } on { $blend }, reserve { $reserve }

## Injection fluid

beside-fuel = beside { $flow } of fuel
no-fuel-at-all = no fuel at all
fluid-flow = Fluid at peak power
mixture-with = Mixture with it
mixture-with-means = with the fuel left as it was
heat-share = Share of the heat
heat-share-means = that the methanol gives
cooling = Cooling, at most
cooling-means = if all of it evaporates into the charge
stands-for = Fuel that it stands for
stands-for-means = if lambda is held
spray-stops = If the spray then stops
spray-stops-means = lean, and without its cooling
concentrate = Methanol concentrate
water = Water
shrinks = It shrinks by
shrinks-means = so the two volumes come to more than it
recipe = { $concentrate } of concentrate, { $water } of water

## Power curves

nameless-curve = Curve without a name
add-on = { $loss } of crank power is the same as { $added } added to wheel power, { $range }. The add-on is never meant here.
# What a column holds, in what unit, and where it was measured.
column = Column { $number }: { $what }
column-named = Column { $number }, “{ $header }”: { $what }
not-used = not used
known-not-used = { $what }, not used
in-unit = { $what } in { $unit }
in-unit-assumed = { $what } in { $unit }, as the table names no unit
at-wheels = { $what }, at the wheels
at-crank = { $what }, at the crank
heading-says-wheels = The heading says that it was measured at the wheels, but below it is marked as at the crank. Correct one of them.
heading-says-crank = The heading says that it was measured at the crank, but below it is marked as at the wheels. Correct one of them.
rows-read = { $count ->
    [one] { $count } row read.
   *[other] { $count } rows read.
}
rows-read-between = { $count ->
    [one] { $count } row read, { $from } to { $to }.
   *[other] { $count } rows read, { $from } to { $to }.
}
unread = Above the table, not read: line { $lines }.
correction-unusual = { $curve }: the correction to { $rule } is × { $factor }, beyond the 0.93 to 1.07 for which such rules are meant. Repeat the run in other weather.
as-measured = As measured
corrected-to = Corrected to { $rule }

## Figures of a curve

power-at-crank = Power at the crank
power-at-wheels = Power at the wheels
torque-at-crank = Torque at the crank
at-speed = at { $speed }
at-speed-measured = at { $speed }, measured there
at-speed-from-wheels = at { $speed }, from the wheels
at-speed-between-measured = at { $speed }, { $low } to { $high }, measured there
at-speed-between-from-wheels = at { $speed }, { $low } to { $high }, from the wheels
measured-there = measured there
taken-off = Taken off: { $rule }
taken-off-means = so all figures here are as measured
power-by = Power by { $rule }
power-by-means = at the crank, × { $factor }; a boost that is held absolute makes it too much
most-power = Most power at the crank
most-torque = Most torque at the crank
power-on-average = Power, on average, { $from } to { $to }
torque-on-average = Torque, on average, { $from } to { $to }
before-after = { $before } before, { $after } after
value-at = { $value } at { $speed }
mean-most-least = { $mean }; most { $most }, least { $least }
