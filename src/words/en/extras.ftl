### What a fuel holds beside petrol and ethanol.

## Expected, with the ends where it is not exact: $amount is “4.8 %” or “4.8 % (3.4 to 6.1 %)”

water = water { $amount }
methanol = methanol { $amount }
ethers = ethers { $amount }
amount-between = { $expected } % ({ $low } to { $high } %)

## As typed

oxygen = oxygen { $amount }
by-mass = { $number } % by mass
