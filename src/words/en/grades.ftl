### Fuels of the catalogue: names where pumps print none, where they are sold, `…-note` why a
### share is expected, `…-source` what stands after “Source:”. Titles of publications stay as
### they were published.

## Where a fuel is sold

europe = Europe
great-britain = Great Britain
sweden = Sweden
france = France
australia = Australia
united-states = United States
brazil = Brazil
japan = Japan
anywhere = anywhere

## Standards that need a word

en228-98-is-a-market-grade = EN 228 (98 is a market grade)
gb-regulations = GB regulations 2021, EN 228
french-decree = Decree of 28 December 2006
brazilian-law = Brazilian law, ANP
jis-k2202-100-is-a-market-grade = JIS K 2202 (100 is a market grade)
au-98-is-a-market-grade = Fuel Standard (Petrol) Determination 2001 (98 is a market grade)
by-definition = by definition

## Petrol of Europe

en228-95-e10-note = The standard sets no minimum, but up to 5 % it could be sold as E5. E10 is sold near its maximum: common practice, no source. So much ethanol brings all the oxygen that is allowed, 3.7 %: ethers or methanol only stand in for some of it, which leans an engine less than 1 % more.
en228-95-e5-note = The standard sets no minimum. 95 E5 is sold near its maximum: common practice, no source. Beside that the 2.7 % of oxygen leave room for 4.5 % of ethers, of which none is expected: no source says how much there is.
en228-98-e5-note = The standard sets no minimum, and some sellers make it with ethers and no ethanol: the middle of the range is taken. Beside the most ethanol the 2.7 % of oxygen leave room for 4.5 % of ethers; about half of that is expected, beside the middle of ethanol. RON 98 is what the seller states; the MON is the minimum of the standard, 88 is usual: common practice, no source.
en228-91 = 91 regular
en228-91-note = Allowed as an option and sold in few countries, with either label: read the circle on the pump. The middle of the range is taken.
cen-ts-18227-e20-note = 3.7 % m/m oxygen is 10 % v/v of ethanol, hence the minimum. Expected near its maximum, as E10 is: common practice, no source. 8.0 % of oxygen leave room for some ether beside that; none is expected. Octane limits were not read.
gb-95-e10-note = By law at least 5.5 % since September 2021. Sold near its maximum: common practice, no source.
gb-97-e5-note = No minimum, and sellers differ: the middle of the range is taken. A higher RON on the pump is the seller's own statement. Of the 4.5 % of ethers that the 2.7 % of oxygen leave room for beside the most ethanol, about half is expected.
en-228-source = Directive 98/70/EC, Annex I (RON 95, MON 85; option RON 91, MON 81) and Article 3(3) (5 % v/v, 2.7 % m/m oxygen); E10: EN 228:2012+A1:2017 (10 % v/v, 3.7 % m/m oxygen) as stated in Fuels 2021, 2(4), 501; methanol at most 3.0 and ethers at most 22.0 % v/v: Swedish decree SFS 2014:536, 4 §, 9 a and f
great-britain-source = Motor Fuel (Composition and Content) and the Biofuel (Labelling) (Amendment) Regulations 2021, as summarised
cen-ts-18227-e20-source = CEN/TS 18227, scope: 3.7 to 8.0 % m/m oxygen, up to 20 % v/v ethanol

## Flex fuels

en15293-e85-summer = E85, summer
en15293-e85-summer-note = 85 % is the name and the most that is allowed, so what pumps give lies below it. Expected: two thirds of the way from the least to the most, common practice, no source. The minimum of the class is from memory. Of the water that is allowed, half is expected: no source says how much there is.
en15293-e85-transition = E85, spring and autumn
en15293-e85-transition-note = Half way between what is expected in summer and in winter; a pump may still hold either. The minimum of the class is from memory. Of the water that is allowed, half is expected.
en15293-e85-winter = E85, winter
en15293-e85-winter-note = Half way between the 75 % of Swedish and the 65 % of French winter fuel. Summer fuel may still be in the pump. Of the water that is allowed, half is expected.
se-e85-winter = E85, Swedish winter
se-e85-winter-note = About 75 % is stated. Summer fuel of 85 % may still be in the pump. Water is taken as in EN 15293.
fr-e85 = E85, France
fr-e85-note = The middle of the range is taken: expect 65 % in winter, 85 % in summer. Water is taken as in EN 15293.
au-e85 = E85, Australia
au-e85-note = The middle of the legal range is taken: nothing published says where in it the pumps are.
astm-d5798-class-1 = Flex fuel (E85), class 1: summer
astm-d5798-class-2 = Flex fuel (E85), class 2
astm-d5798-class-3 = Flex fuel (E85), class 3
astm-d5798-class-4 = Flex fuel (E85), class 4: winter
# Why the mean of a year stands for every class.
planning-mean = All classes allow the same range of ethanol; they differ in vapour pressure. Expected: 74 %, the mean of a year that the US Annual Energy Outlook 2011 plans with. Winter fuel tends to less, summer fuel to more. Older pumps say E85. The ethanol in it, by ASTM D4806, holds at most 1 % of water, so at most 0.8 % are in the fuel, and half of that is expected; of methanol, a contamination, none is.
en-15293-source = CEN/TR 15993:2018 (nominal 85 % v/v, seasonal grades at least 50 %); class limits from memory; RON 104, MON 88 and 0.4 % water from a secondary text on CEN/TS 15293:2018
d5798-source = ASTM D5798-15 as tabulated by the US DOE Alternative Fuels Data Center: 51 to 83 % v/v in all classes, methanol at most 0.5 %
se-e85-winter-source = SS 15 54 80, winter quality of about 75 % v/v, as described by the Swedish fuel trade association; the minimum is from memory
fr-e85-source = French decree of 28 December 2006 on superethanol: 65 % v/v in winter to 85 % in summer, as summarised
au-e85-source = Fuel Standard (Ethanol E85) Determination 2012: 70 to 85 % v/v, RON 100, MON 87

## Fuels of the United States and Brazil

us-87-e0 = 87 regular without ethanol
us-87-e0-note = Sold as ethanol-free: by definition none.
us-88-e15-note = More than 10 and at most 15 %. Sold near its maximum, less the denaturant of the ethanol: common practice, no source. AKI 88 is what pumps state: from memory.
astm-d4806-denatured = Denatured fuel ethanol
astm-d4806-denatured-note = Expected: what is left by today's 2 to 2.5 % of denaturant (petrol) with between no and all of the water and methanol that is allowed, 96.0 to 98.0 %, in the middle.
br-gasoline-c = Gasoline C, E30
br-gasoline-c-note = The law sets the share itself, so it is expected. Before August 2025 it was 27 %.
br-gasoline-c-e27 = Gasoline C, E27
br-gasoline-c-e27-note = What common petrol was until August 2025, when it became E30: the law set the share itself, so it is expected.
br-gasoline-premium = Premium gasoline, E25
br-gasoline-premium-note = The law sets the share itself, so it is expected. Octane limits were not read.
br-hydrous-ethanol = Hydrous ethanol
br-hydrous-ethanol-note = The limits are by mass. By volume that is 95.1 to 96.5 % as an alcoholometer counts, and 94.0 to 95.7 % where the volumes of ethanol and water are added up, as here: the two shrink on mixing. The range spans both, and its middle is taken; the rest is water.
us-e10-note = Nearly all petrol of the country is E10, sold near its maximum: common practice, no source. The denaturant of fuel ethanol, 2 to 5 % of it, is petrol, so less than 10 % is expected.
d4814-source = ASTM D4814; grades by (R+M)/2, of which 87 was read in a secondary text and 88 to 93 are from memory; 10 % and 15 % v/v are what fueleconomy.gov states for E10 and E15
astm-d4806-denatured-source = ASTM D4806-98 as tabulated by a distiller: ethanol at least 92.1, water at most 1.0, methanol at most 0.5, denaturant 1.96 to 4.76 % v/v; today's 1.96 to 2.50 % is from memory
gasoline-c-source = Decision in force since 1 August 2025 as reported in the trade press: 30 % v/v anhydrous ethanol in common petrol, 25 % in premium; the margin of 1 point and RON 94 are from memory
br-gasoline-c-e27-source = from memory: 27 % v/v anhydrous ethanol in common petrol from 2015 to July 2025, with a margin of 1 point, and RON 93 since 2022 (ANP 807/2020)
br-hydrous-ethanol-source = from memory: ANP 907/2022, 92.5 to 94.6 % m/m ethanol, 805.2 to 811.2 kg/m3 at 20 degC

## Petrol of Japan and Australia

japanese-note = Ethanol is blended as an ether, if at all, so none is expected: from memory.
jis-k2202-regular = Regular, 89
jis-k2202-premium = Premium, 96
jp-premium-100 = Premium, 100
australian-note = None is expected where the pump does not say E10: common practice, no source. Where it does, take 9.5 %.
jis-k-2202-source = JIS K 2202 as described by a secondary text: regular at least RON 89, premium at least 96, most sellers state 100; at most 3 % v/v ethanol is from memory
australian-petrol-source = Fuel Standard (Petrol) Determination 2001: RON 91 and 95; at most 10 % v/v ethanol is from memory, and 98 is a market grade

## Any country

neat-ethanol = Neat ethanol
neat-ethanol-note = What is sold as anhydrous still holds some water, and often a denaturant: enter it as a fuel of its own when that matters.
neat-ethanol-source = ethanol and nothing else
