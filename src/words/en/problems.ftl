### What is missing in a field or wrong with it.

## fill

add-fuels-on-offer-here = Add the fuels on offer here.
empty-tank-has-no-blend = An empty tank has no blend to change: choose how much to fill.
log-tells-nothing-tank-yet = The log tells nothing of the tank yet: type what is in it, and record the fill.
give-blend-you-want-such = Give the blend you want, such as E30.
this-calibration-incomplete-or-gone = This calibration is incomplete or gone: see Car, or choose another aim.
give-level-stop-such-3 = Give the level to stop at, such as 3/4.
give-volume-stop-after = Give the volume to stop after.
give-sum-money-stop-after = Give the sum of money to stop after.
give-size-tank = Give the size of the tank.
sum-money-needs-price-every = A sum of money needs the price of every fuel: give this one's.
calibration-asks-octane-number-give = The calibration asks for an octane number: give this fuel's.
calibration-asks-octane-number-give-what = The calibration asks for an octane number: give that of what is in the tank.
all-go-say-how-much = All of it is to go in: say how much there is.

## reading

display-counts-down-reserve-give = The display counts down to the reserve: give the reserve under Car, or type a volume such as 13 L.
say-what-tank-volume-fraction = Say what is in the tank: a volume, a fraction like 1/4, or a distance to empty.
give-ethanol-share-what-tank = Give the ethanol share of what is in the tank, or what it may be.
give-ethanol-share-or-what = Give its ethanol share, or what that may be.
give-weakest-blend-author-allows = Give the weakest blend that its author allows.
give-strongest-blend-author-allows = Give the strongest blend that its author allows.
give-ethers-or-oxygen-leave = Give the ethers or the oxygen, and leave the other one empty.

## tank

say-how-much-was-drained = Say how much was drained, or that the tank was drained completely.
nothing-went-give-volume-least = Nothing went in: give the volume of at least one fuel.
say-what-level-was-volume = Say what the level was: a volume, a fraction like 1/4, or a distance to empty.
give-what-sensor-shows-31 = Give what the sensor shows: 31 % or 81 Hz.
give-two-parts-meet-ml = Give where the two parts meet, in mL from the bottom.
give-how-much-fuel-was = Give how much fuel was poured in.
give-how-much-water-was = Give how much water was poured in.
give-distance-driven = Give the distance driven.
give-mean-consumption-showed = Give the mean consumption that it showed.
size-tank-not-known-see = The size of the tank is not known: see Car.

## trip

give-what-car-burns-route = Give what the car burns: a route needs it.
fuel-route-hardly-burns-correct = A fuel of the route hardly burns: correct the water in it.
log-tells-nothing-tank-yet-type = The log tells nothing of the tank yet: type what is in it.
give-how-far-from-here = Give how far it is from here.
calibration-keep-incomplete-or-gone = A calibration to keep is incomplete or gone: see Car, or choose anew.
give-price-plan-weighs = Give its price: a plan weighs it.

oxygen-less = { $given } % of oxygen is less than the { $least } % that its ethanol and methanol bring: correct one of them
oxygen-more = no ether brings { $given } % of oxygen: give at most { $most } %

aki = no E{ $share } has { $given } AKI: neat ethanol has { $neat }, and with it an E{ $share } has at most { $most }. Give the number on the pump, or correct the ethanol share

sensor-fault = { $given } Hz is the sensor's sign of a fault, not a share: contaminated fuel, water or wiring. From { $low } to { $high } Hz tells a share; have the sensor and the fuel checked
sensor-pulse = a pulse of { $given } ms tells no temperature: it lies between 1 and 5 ms

tube-test-no-fuel = a test needs fuel: give how much of it was poured in, before the water
tube-test-fell = the boundary cannot fall: after the test the watery part is at least the { $water } mL of water poured in, not { $boundary } mL. Read the volume of the lower part
tube-test-too-high = the watery part cannot be more than the { $all } mL poured in altogether, yet { $boundary } mL were read. Read where the two parts meet, from the bottom

fill-no-capacity = the tank holds nothing: give its size
fill-overfull = { $level } L cannot be in a tank of { $capacity } L: correct the level or the tank's size
fill-overpoured = { $poured } L cannot have gone in: at the lowest level given, { $free } L were free; correct the litres or the level
fill-no-offer = no fuel is on offer: add one
fill-above-level = the tank already holds { $level } L, more than the { $wanted } L wanted: choose a higher level
fill-level-above-brim = { $wanted } L do not fit a tank of { $capacity } L: choose a lower level
fill-window-reversed = the window from E{ $low } to E{ $high } is the wrong way round: give the lower share first
fill-price-missing = a sum of money needs the price of every fuel: fuel { $index } has none
fill-octane-missing = a least octane number needs that of every fuel: fuel { $index } has none
fill-tank-octane-missing = a least octane number needs that of what is in the tank: give it
fill-amount-missing = all of fuel { $index } is to go in: say how much there is

route-no-capacity = the tank holds nothing: give its size
route-overfull = { $level } L cannot be in a tank of { $capacity } L: correct the level or the size
route-reserve-above-brim = { $level } L cannot be left in a tank of { $capacity } L: ask for less
route-blend = the heating values or moles per litre are impossible: ethanol must hold less energy than petrol
route-no-leg = the route has no leg: add one
route-stops-and-legs = { $stops } stops and { $legs } legs do not alternate: give one stop before each leg
route-distance = leg { $leg } has an impossible distance: give zero or more kilometres
route-factor = leg { $leg } has a factor of { $given }: give one from 0.1 to 10
route-unknown-calibration = leg { $leg } asks for a calibration that the car does not have: choose another
route-fluid-needed = leg { $leg } allows only calibrations that need injection fluid: make sure of the fluid, or allow another
route-window-reversed = the window of calibration { $calibration } is the wrong way round: give the lower share first
route-octane = { $given } is no octane number: give one from 40 to 160
route-tank-octane-missing = leg { $leg } needs an octane number: give that of what is in the tank
route-pump-octane-missing = a leg needs an octane number: give that of fuel { $pump } at stop { $stop }
route-limit = the limit of fuel { $pump } at stop { $stop } is no volume: give zero or more litres
route-price = fuel { $pump } at stop { $stop } has no usable price: give zero or more

## With figures in them

outside-possible = { $share } lies outside the { $shares } given as possible. Correct one of them.
come-to = Ethanol, water, methanol and ethers come to { $percent } %. Correct one of them.
reserve-too-large = A reserve of { $reserve } does not fit into a tank of { $tank }. Correct the reserve, or the tank's size.
level-above-tank = { $level } cannot be in a tank of { $tank }. Correct the level, or the tank's size under Car.
not-brimmed = { $level } is not a brimmed tank. Say full, or how the level was read.
not-a-mon = “{ $given }” is not a MON: give the number alone
currency-no-own = This is in { $currency }, other money is in { $other }. Give your own currency under Car, and what the other one is worth in it.
currency-no-rate = This is in { $currency }, and you count in { $own }. Give under Car what 1 { $currency } is in { $own }, or type it in { $own }.
rate-missing = Give what 1 { $currency } is in { $own }.
rate-unreadable = The rate of { $currency } cannot be read. Correct it under Car.
cannot-have-gone-in = { $poured } cannot have gone in: even at the lowest level given, { $free } were free. Correct what was put in, or the level.
already-holds = The tank already holds { $level }, more than { $wanted }. Choose a higher level.
do-not-fit = { $wanted } do not fit a tank of { $tank }. Choose a lower level.
