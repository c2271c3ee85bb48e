## Which car

car = Car
in-use = In use
name = Name of the car
add-a-car = Add a car
remove-car = Remove this car
removed = { $car } (removed)
bring-back = Bring back
bring-back-car = Bring back { $car }

## The tank and what the engine takes

# At the foot of a phone: leads to what is missing.
which = Which
tank = Tank
capacity = Holds, to the brim
reserve = Reserve
reserve-hint = No plan goes below it without saying so
consumption = Consumption
range-display = The distance to empty on the dashboard counts
to-reserve = Down to the reserve
to-dry = Until dry
unknown = Don't know
reference = Measured on
reference-hint = E10, say: also what blends are compared with
fuel-line = Fuel in pump, lines and rail
fuel-line-hint = Tells how far the old blend feeds the engine; often 0.3 to 1 L (0.1 to 0.25 gal)

## Injection fluid

fluid = Injection fluid
fluid-aboard = Water-methanol aboard
fluid-ready = Checked and ready
fluid-unchecked = Not checked
fluid-none = None
fluid-caution = Water-methanol is toxic and flammable, and no calibration should depend on it without a fail-safe that cuts boost when it does not flow.

## Fuels that the person keeps

my-fuels = My fuels
my-fuels-hint = A fuel on offer can be kept under Fill; it then waits in the list there.
remove = Remove
remove-fuel = Remove { $fuel }

## Calibrations

calibrations = Calibrations
calibrations-hint = Take the window and the octane from the calibration's author; do not guess them.
# The name of one that is added.
calibration = Calibration { $number }
add-a-calibration = Add a calibration
calibration-name = Name
weakest = Weakest blend
weakest-hint = E24, say
strongest = Strongest blend
strongest-hint = E40, say
written-for = Written for
written-for-hint = Else the middle
octane-needed = Octane needed
counts-on-fluid = Counts on injection fluid

## Units

units = Units
all-at-once = All at once
metric = Litre, km, bar, kW
us = US gallon, mile, psi, hp
imperial = Imperial gallon, mile, psi, hp
one-by-one = One by one
one-by-one-hint = What was typed stays as typed; it is only shown in the units of today.
decimals = Decimals
as-device = As this device
decimal-point = 1.5
decimal-comma = 1,5
currency = Currency
currency-hint = A sign or name, such as € or SEK
pump-step = Step of the pump
pump-step-hint = Volumes are rounded to what you can stop at
# The label of a field: what one of another currency is worth.
rate = 1 { $currency } is
rate-typed = Rate of { $currency } typed on { $day }.
