### Methods of the fill and the blend: titles, what to know, names of lines, what symbols mean.

## symbols

volume-tank-before = volume in the tank before
ethanol-share-volume = its ethanol share by volume
volume-fuel-put = volume of fuel a that is put in
volume-fuel-b-put = volume of fuel b that is put in
ethanol-share-fuel = ethanol share of fuel a
ethanol-share-fuel-b = ethanol share of fuel b

## mixing

title-mixing = Mixing, and what to put in
mixing-1 = Pouring adds litres of petrol and litres of ethanol, and burning takes both in the share in which they are there. So the share after a fill is a quotient of two sums.
mixing-2 = With several fuels, limits, octane and prices, all of it is linear in the litres: a linear programme finds the cheapest fill, or the proof that there is none. With two fuels and a full tank it comes to the formulas below.
volume-second-two-fuels-before = Volume of the second of two fuels, before rounding
level-burn-down-tank-too = Level to burn down to, where the tank is too full
capacity-tank = capacity of the tank
ethanol-share-wanted = ethanol share wanted

## worst

title-worst = Worst case of a fill, and the order of pouring
worst-1 = The share grows with every uncertain strength, and between the levels at which a pour overflows it is monotone in the level. So the worst cases lie at the ends of the bands, and all of those are tried.
worst-2 = What is poured to the click takes up the error of the gauge: the closer its share is to that of the tank, the less of the error is left in the blend. Every order is worked out, and the one with the narrowest worst case is proposed.
volume-tank-before-blend-gets = volume in the tank before, where the blend gets weakest
volume-tank-before-blend-gets-strongest = volume in the tank before, where the blend gets strongest
least-ethanol-share-tank-before = least ethanol share in the tank before
largest-ethanol-share-tank-before = largest ethanol share in the tank before
least-ethanol-share-fuel = least ethanol share of fuel a
largest-ethanol-share-fuel = largest ethanol share of fuel a
least-ethanol-share-fuel-b = least ethanol share of fuel b
largest-ethanol-share-fuel-b = largest ethanol share of fuel b
volume-fuel-goes-then = volume of fuel a that goes in then
volume-fuel-b-goes-then = volume of fuel b that goes in then

## air-fuel-ratio

title-air-fuel-ratio = Air-fuel ratio, by mass
air-fuel-ratio-1 = A fuel takes the air that its carbon and hydrogen burn with, less the oxygen that it brings along. That is a matter of masses: averaged by volume, the ratio of a blend comes out wrong.
air-fuel-ratio-2 = The ratio of ethanol depends on the air that is reckoned with; texts that give 8.95 or 9.00 take another one.
air-fuel-ratio-3 = Water takes no air, methanol less than half of what petrol takes, and the ethers of petrol a sixth to a fifth less: each makes an engine leaner that is not corrected, and so the ends of all bands together are the worst cases. Which ether a petrol holds is not told: at one end it is ETBE, at the other MTBE, and half of each is expected. An oxygen content is turned into ethers by mass, after what ethanol and methanol bring.
air-fuel-ratio-4 = Metered open loop, injectors pass volume with the square root of density. How far lambda is off then follows from the two ratios and densities.
lambda-over-intended-calibration-open = Lambda over that intended by a calibration, open loop
ethanol-share-blend-volume = ethanol share of the blend by volume
air-fuel-ratio-blend-calibration = air-fuel ratio of the blend that the calibration is written for
density-blend = density of that blend

## energy

title-energy = Energy, range and money, by volume
energy-1 = Tanks and pumps count litres, so heating values are taken by volume: each part's density times its heating value by mass. A car is taken to need equal energy for equal distance, whatever the blend.
range-what-tank-then = Range with what is in the tank then
cost-fill = Cost of a fill
price-below-which-stronger-two = Price below which the stronger of two fuels pays
volume-tank = volume in the tank
heating-value-fuel-consumption-stated = heating value of the fuel that the consumption is stated for
consumption-on-fuel = consumption on that fuel
volume-was-put = volume that was put in
heating-value-what-was-put = heating value of what was put in
heating-value-fuel-stronger = heating value of fuel a, the stronger
heating-value-fuel-b-weaker = heating value of fuel b, the weaker
price-fuel = price of fuel a
price-fuel-b = price of fuel b

## octane

title-octane = Octane by moles, a lower bound
octane-1 = Ethanol is a small molecule: a tenth of the volume is far more than a tenth of the molecules. Averaged by moles, neat octane numbers come close to what engines measure on blends; averaged by volume they fall short.
octane-2 = Of a fuel of which only the AKI is given, RON and MON are set apart by a sensitivity that goes by moles from 8 for petrol to 19 for neat ethanol: 93 AKI of an E10 is RON 98, 97 AKI of an E85 is RON 106. By the same rule no E85 has more than 100.4 AKI, and neat ethanol has 99.5.
octane-3 = Measured blends lie somewhat above the molar rule, so the result counts as a floor. It can speak against a calibration, never for one. The high blending numbers that are quoted for ethanol belong to another rule and are not used.
moles-litre-petrol-base = moles in a litre of the petrol base
moles-litre-ethanol = moles in a litre of ethanol
ron-what-tank-before = RON of what is in the tank before
ron-fuel = RON of fuel a
ron-fuel-b = RON of fuel b
mon-what-tank-before = MON of what is in the tank before
mon-fuel = MON of fuel a
mon-fuel-b = MON of fuel b
