### What is said of a fill, a car or a trip that somebody shares.

## What a link holds

fill-holds = The link holds what is in the tank, the fuels on offer with their prices, the aim, when to stop and the size of the tank. Neither the log nor the car's name nor the place goes with it.
car-holds = The link holds the car with its name, tank, calibrations, own fuels, power curves and parts. The log, the fill and the trip stay here.
trip-holds = The link holds the stops with their places, fuels and prices, the ways between them, what is in the tank and what is asked for. Neither the log nor the car's name goes with it.
a-fill = A fill, shared with you
a-car = A car, shared with you
a-trip = A trip, shared with you

## Facts of what was shared: what each is, and its parts in a list

not-given = not given
in-the-tank = In the tank
tank-size = Size of the tank
give-or-take = give or take { $volume }
ethanol = ethanol { $share }
may-be = which may be { $shares }
octane = octane at least { $octane }
# $money has the unit that the price is for.
at-price = at { $money }
per = { $currency } per { $unit }
all-of-it = all of it, { $volume }
at-most = at most { $volume }
already-put-in = already put in { $volume }
window = { $low } to { $high }
written-for = written for { $blend }
counts-on-fluid = counts on injection fluid
fuel = Fuel { $number }
aim = Aim
aim-as-poured = none: what has been put in is all
aim-of = { $calibration }: { $what }
a-calibration = a calibration
calibration-not-in-link = a calibration that is not in the link
fill = Fill
to-the-click = full, to the click
to-a-level = to a level of { $level }
for-at-most = for at most { $money }
as-soon-as = as soon as the aim is reached
wanted = Wanted
cheapest = least money
fewest-stops = fewest stops
most-ethanol = most ethanol
level-at-end = at the end { $level }
whatever-is-true = whatever is true within the bands
keeping = keeping { $calibrations }
name = Name
tank = Tank
of-which-reserve = of which reserve { $volume }
consumption = Consumption
measured-on = measured on { $blend }
nameless-calibration = A calibration
own-fuels = Own fuels
nameless-fuel = a fuel without a name
power-curves = Power curves
parts-and-limits = Parts and limits

## What taking it does

invented = It is an invented example.
beside = It is put beside your own cars and taken into use. Nothing of yours is changed.
size-comes-along = Nothing has been entered for your car yet, so the size of the tank comes along.
place-of-fill = It takes the place of the fill of { $car }, which can be brought back.
place-of-trip = It takes the place of the trip of { $car }, which can be brought back.
other-tank = It was made for a tank of { $theirs }; that of { $car } holds { $ours }.
other-currency = Its prices stay in { $currency }: give under Car what that is worth.
# $calibration is its name, $what its window and needs.
lacking-way = { $car } has no calibration like “{ $calibration }” ({ $what }), so no way keeps it.
lacking-aim-typed = { $car } has no calibration like “{ $calibration }” ({ $what }), so the aim becomes the blend typed there.
lacking-aim = { $car } has no calibration like “{ $calibration }” ({ $what }), so the aim becomes { $blend }.
