### Where rules and figures come from, in words of our own. Figures of the tank have a name and
### a `…-source`.

## What stands before a source where nothing was looked up

common-practice = common practice, no source
from-memory = from memory
# $caveat is one of the two above, $citation what is said of the source.
cited = { $caveat }: { $citation }

## Fuel

ethanol-waiver = Directive 98/70/EC as amended by 2009/30/EC, Annex III (numbers read in the transposition of Cyprus, K.D.P. 106/2022)
flex-fuel-classes = ASTM D5798-15 as tabulated by the US DOE Alternative Fuels Data Center

## Fuel system

murnaghan = F. D. Murnaghan, The Compressibility of Media under Extreme Pressures, 1944 (from memory)
darcy = Darcy and Weisbach, friction factor by Colebrook and White
four-strokes = four strokes: two turns of the crank for each cycle
orifice = Bernoulli's equation for a nozzle with a constant discharge coefficient
fuel-and-air = balance of fuel and air
reserve-of-capacity = capacity at the limit over demand, less one
trapped-mass = mass trapped in the bore less what stays there compressed
methanol-water-densities = CoolProp 8.0.0, INCOMP::MMA, up to 60 % by mass, and its equations of state for the neat liquids; at 70, 80 and 90 % a handbook's table, from memory
heat-balance = balance of heat: all of the fuel evaporates, and all heat comes from the charge
driveline-loss = loss as a share of crank power
equal-efficiency = equal brake efficiency on both fuels, but for the gain given

## Power and air

sae-j1349 = SAE J1349 (June 1990 form; read in several texts that quote it alike)
iso-1585 = ISO 1585 and UN Regulation No. 85, spark-ignition engines: from memory
din-70020 = DIN 70020 (read in a text that quotes it)
sae-j607 = SAE J607 (read in a text that quotes it)
vapour-pressure-source = 40 CFR 1065.645(a), saturation vapour pressure of water (the Goff-Gratch form; read in a program that implements the clause, whose worked example it meets)

## Trip

planes-around-a-product = planes around a product over a box: McCormick 1976, Al-Khayyal and Falk 1983, from memory
relative-gap = relative gap between a solution and a bound

## Workings of a fill

conservation = conservation of volume and of ethanol, volumes taken as additive
anti-knock-index = anti-knock index (RON + MON) / 2, as posted under ASTM D4814
molar-rule = linear rule by moles: SAE 2012-01-1274 (abstract), which finds measured blends somewhat greater
mass-balance = mean by mass; complete combustion of C, H and O with air
equal-air = equal air and equal lambda, fuel metered by volume
energy-by-volume = mean by volume of density times lower heating value
injector = Bernoulli: at given pressure and time an injector's mass flow goes with the square root of density
equal-energy = equal energy per distance, whatever the blend
price-times-litres = litres times price per litre
corners = the share is monotone in each uncertain value as long as the same pour overflows, so its extremes lie at the ends of the bands or where a pour begins to overflow

## Workings of the tank

burned-first = what is in pump, lines and rail is burned first
triangle = mean of the triangle over the least, the likeliest and the greatest share
energy-per-distance = equal energy per distance; energy per volume of each blend
over-fuel = what the watery part gained, over the fuel

## Readings of the tank

gauge-error = error of a gauge, of the tank
gauge-error-source = dashboard gauges err by 5 to 10 % of full scale; no standard is known
counting-error = error of a trip computer, of what it counted
counting-error-source = trip computers err by some 6 % of the fuel they count
click-error-l = how far two clicks of the nozzle lie apart
click-error-l-source = the level at which a nozzle clicks off repeats within half a litre
dispenser-error = largest error of a dispenser, of what it shows
sensor-zero-hz = frequency of a flex-fuel sensor without ethanol
sensor-zero-hz-source = a car maker's service text of 2004 gives 50 to 150 Hz as normal and a pulse of 1 to 5 ms; another's paper of 1993: linear, 50 Hz at 0 and 150 Hz at 100 %
sensor-fault-hz = frequencies beyond which it reports a fault
sensor-fault-hz-source = a car maker's service text of 2004: a fault code above 155 Hz, 170 Hz for contaminated fuel; the lower end mirrors it: common practice, no source
sensor-error = standard error of its reading, as a share
sensor-error-source = sensors are said to read within 5 points; no standard is known
contraction = what water and fuel lose in a tube test by contraction, and how far that may be off
contraction-source = with as much water as fuel a rise alone reads E10 as 9.3 and E30 as 27.3 %, worked out from densities of ethanol and water; less with less water
boundary-error = standard error of a tube test, as a share
boundary-error-source = a careful tube test repeats within some two points
range-error = error of a display of the distance left, of its fuel
range-error-source = a display goes by the consumption of the last way, which the next may miss by 15 %
range-step-l = what the steps of such a display leave open
range-step-l-source = a display counts in steps of some 10 km, which take about a litre
usual-reserve = usual reserve where none is given, of the tank
usual-reserve-source = the lamp comes on with some eighth of the tank left

## Shares and their doubt

sure-doubt = doubt about a share that is sure, as a share
sure-doubt-source = a share that is sure is told in whole per cent, so it is within half a point
petrol-doubt = usual doubt about a petrol's share, as a share
petrol-doubt-source = what a petrol holds is usually known to within a point
strong-doubt = usual doubt about a strong fuel's share, as a share
strong-doubt-source = what E85 holds without a test is usually known to within some 5 points
doubt-grows = shares between which the usual doubt grows evenly
doubt-grows-source = the strongest petrol sold widely is E15, the usual flex fuel E85
possible-in-petrol = shares that are possible in petrol
possible-in-petrol-source = petrol grades hold from none to 15 % ethanol
possible-in-strong = shares that are possible in a strong fuel
possible-in-strong-source = flex fuels hold half ethanol or more

## Estimate of the tank

gain-sd = spread of real against stated consumption
gain-sd-source = what a car uses lies within some 15 % of what its driver says it uses
leg-sd = spread from leg to leg, of what was burned
leg-sd-source = consumption differs by some 6 % from one journey to the next
counted-leg-sd = the same where a trip computer counted
counted-leg-sd-source = a trip computer repeats within some 2 % of what it counts
leg-variance = variance that every leg adds
leg-variance-source = a start and a short way that nobody logs take some 0.2 litres
gauge-sd = spread of a gauge's reading, of the tank
gauge-sd-source = slope and slosh move a gauge by some 2 % of full scale
gauge-step = between two marks of a gauge, of the tank
gauge-step-source = gauges are read in eighths
gauge-bias-sd = spread of what a gauge always reads off, of the tank
gauge-bias-sd-source = gauges read some 2.5 % of full scale high or low throughout
sensor-bias-sd = spread of what a sensor always reads off, as a share
sensor-bias-sd-source = flex-fuel sensors read some 2 points high or low throughout
strong-from = share from which a fuel is a strong one
strong-from-source = flex fuels hold half ethanol or more, petrol far less
lasting-part = part of a strong fuel's variance that is the pump's
lasting-part-source = one pump's fuel differs less from fill to fill than pumps do
lasting-to-next = what of a pump's offset is left at the next fill
lasting-to-next-source = a pump's offset outlives a season, but not for good
weak-spread = spread of weak fuels, in times of their bands
weak-spread-source = petrol keeps to its label, but seldom lies in the middle of what that allows
spreads = spreads that strong fuels may have, in times of their bands
spreads-source = nobody knows how far to trust a typed range: up to twice is likely, thrice is not excluded
spread-probabilities = the probabilities of those spreads
misread = probability that a reading that does not fit is misread
misread-source = people misread a gauge about half as often as they forget to log a fill
stood = probability that a car stood where no leg is logged
stood-source = a second look at the gauge is as likely as a journey that nobody logged
driven = least and most that a leg burns, in times of what is stated
driven-source = a leg takes from 0.6 to 1.5 times the stated consumption
counted = the same in times of what a trip computer counted
counted-source = a trip computer counts from 0.75 to 1.3 times what was burned
beside-l = what any leg may burn beside that
beside-l-source = a start and a short way take less than 0.7 litres
sold = least and largest ethanol share that pumps sell
sold-source = pumps sell anything from petrol without ethanol to E85
thriftiest-l = petrol that no car takes less of over 100 km
thriftiest-l-source = no turbocharged petrol car takes less than 3.5 L/100 km over a whole tank
filled-at = level at which people fill up, of the tank: from, to
filled-at-source = people fill up with a thirtieth to a third of the tank left
