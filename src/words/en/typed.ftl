### Why a typed text is not what its field asks for. $given is what was typed.

number-empty = nothing was typed: type a number, such as 13.5
number-too-long = the text is too long: at most { $max_chars } characters are read, so type a shorter one
number-not-a-number = “{ $given }” is not a number: type the digits 0 to 9, with a point or a comma before the decimals, such as 13.5
number-separators = “{ $given }” does not read as one number: type a single point or comma before the decimals and nothing between the other digits, such as 1234.5
number-ambiguous = “{ $given }” may mean { $decimal } or { $grouped }: which one? Type { $given }0 for the first, { $grouped } for the second
number-out-of-range = { $given } is out of range: type a number from { $low } to { $high }

share = { $given } is not a volume share: a share lies between 0 and 1 (0 % and 100 %)

share-text-not-a-share = “{ $given }” is not a share of ethanol: type it such as 30, 30 % or E30
share-text-not-a-part = “{ $given }” is not a percentage: type it such as 4.8 or 0.2 (0-0.4)
share-text-percent-or-fraction = “{ $given }” may mean { $given } % or { $percent } %: which one? Type { $given } % for the first, { $percent } % for the second
share-text-expected-outside = “{ $given }” expects a share outside its own range: type the expected one, then a range around it, as 82 (70-85)
share-text-spread-alone = “{ $given }” says how far a share may be off, but not which one: type that share beside it, or a range such as 8-12
share-text-no-range = “{ $given }” has no range in its brackets: type it as 82 (70-85)

volume-unknown-unit = “{ $given }” does not end in a unit that is known here: type L, gal, US gal, imp gal, %, km or mi after the number, or a part of the tank such as 1/4
volume-not-a-part = “{ $given }” is not a part of the tank: type two whole numbers of at most three digits, the first no larger than the second, such as 3/8
volume-needs-tank = “{ $given }” is a part of the tank, but what the tank holds is not known: give the tank's size first, or type a volume such as 13 L
volume-needs-consumption = “{ $given }” is a distance, but what the car uses is not known: give the consumption first, or type a volume such as 13 L
volume-volume-or-part = “{ $given }” may mean { $as_volume } or { $as_part } of the tank: which one? Type { $as_volume } or { $as_part }
volume-out-of-range = “{ $given }” is out of range: type from 0 to { $high } { $unit }

figure-unknown-unit = “{ $given }” does not end in a unit that is known here: type { $known } after the number
figure-out-of-range = “{ $given }” is out of range: type from { $low } to { $high }{ $unit }
figure-not-a-unit = “{ $given }” { $advice }
figure-perhaps-fraction = “{ $given }” may mean { $percent } % or { $fraction } %: which one? Type a percent sign after the number

octane-motor = “{ $given }” is a motor octane number, which is not used here: type the RON or the AKI that the pump shows, such as 98 RON
octane-unknown-scale = “{ $given }” is not an octane number: type it such as 98, 98 RON or 93 AKI

signal-unknown-unit = “{ $given }” does not end in a unit that is known here: type { $known } after the number

money-amount = { $given } is not an amount of money: give zero or more

money-not-an-amount = “{ $given }” is not an amount of money: type a number, with one currency sign or a word of at most three letters before or after it, such as 12.50 €
money-hundredths = “{ $given }” is in hundredths of a currency: type whole ones, such as 1.459 for 145.9 p
money-unknown-unit = “{ $given }” is not a price per volume: end it in /L, /gal, /US gal or /imp gal

moment = “{ $given }” is not a date with a time: give both, as year-month-day and hour:minute, such as 2026-05-03 and 17:40

## What a word after a number says instead of a unit: it stands after what was typed

advice-air-fuel-ratio = is an air-fuel ratio, and the same one is rich or lean with different fuels: type lambda, such as 0.85, or choose AFR of petrol under Units if it was read from a gauge set to petrol
advice-where-measured = names where the power was measured, which is no unit: type hp, kW or PS after the number, and say with the switch whether it is at the wheels or at the crank

consumption = { $given } L/100 km is not a consumption: it must lie between a millionth and a million L/100 km, so give what the car uses, such as 7.5 L/100 km or 31 mpg
