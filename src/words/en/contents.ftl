## How full the tank is

level = Level
level-by-gauge = Level by the gauge
empty = Empty
quarter = ¼
half = ½
three-quarters = ¾
full = Full
how-read = How it was read
level-error = Error of the level, plus or minus
level-error-hint = Leave empty for the usual error of that reading
by-gauge = By the gauge
counted = Counted since full
brimmed = Just brimmed
level-hint = 20, 1/4, 25 %, or a distance to empty: 90 km, 55 mi
octane-hint = Or with its scale: 98 RON, 93 AKI

## What is in it

ethanol = Ethanol in it
ethanol-hint = What you expect
may-be = May be
may-be-hint = From–to: 8–12
octane-and-error = Octane and gauge error
octane = Octane, at least
mon = MON, at least

## What else it holds, by volume

water = Water
water-hint = Hydrous ethanol: 4.8
methanol = Methanol
methanol-hint = Expected (from–to): 1 (0–3)
ethers = Ethers
ethers-hint = MTBE, ETBE
oxygen = Or oxygen, by mass
oxygen-hint = In place of the ethers

## How sure a share is that was typed without a range

how-sure = How sure is that
sure = Sure
roughly = Roughly
unknown = Don't know
taken-as = Taken as { $shares }.
