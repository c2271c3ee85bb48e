### What is still to be filled in, or wrong.

## What fields are called in a list

tank-size = tank size
consumption = consumption
level = level
ethanol-in-the-tank = ethanol in the tank
what-is-in-the-tank = what is in the tank
fuels = fuels
ethanol-of-each-fuel = ethanol of each fuel
prices = prices
amount-available = amount available
blend = blend
how-far-to-fill = how far to fill
calibration = calibration
stops = stops
distances = distances

## The list

to-fill-in = Still to fill in: { $fields }
are-wrong = { $count ->
    [one] { $count } entry is wrong
   *[other] { $count } entries are wrong
}
# $wrong says how many are wrong.
wrong-and-missing = { $wrong }, { $missing } still to fill in
more = { $count } more
