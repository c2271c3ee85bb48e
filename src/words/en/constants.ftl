### Names of constants and where they come from: `…-source` is what stands after “Source:”.
### Titles of publications stay as they were published.

## Elements and air

carbon-mass = atomic mass of carbon
hydrogen-mass = atomic mass of hydrogen
oxygen-mass = atomic mass of oxygen
nitrogen-per-oxygen = atmospheric nitrogen for each mole of oxygen in air
nitrogen-molar-mass = molar mass of atmospheric nitrogen
atomic-masses = cantera 3.2.0, Element.weight (abridged standard atomic weights)
engine-air = from memory: air as engine textbooks reckon it, 3.773 mol of atmospheric nitrogen of 28.16 g/mol for each mole of oxygen; measured dry air (20.946 % O2) needs 0.04 % more

## The petrol base

petrol-density = density of the petrol base at 15 degC
petrol-molar-mass = mean molar mass of the petrol base
petrol-hydrogen = hydrogen to carbon ratio of the petrol base
petrol-heating-value = lower heating value of the petrol base
petrol-vaporisation = heat of vaporisation of the petrol base (about 150 Btu/lb)
petrol-sensitivity = octane sensitivity (RON - MON) of a petrol base known by its AKI only
typical-petrol = a middling summer petrol without oxygenates: common practice, no source
petrol-sensitivity-source = usual for petrol without ethanol: common practice, no source

## Ethanol, methanol, ethers and water

ethanol-density = density of ethanol at 15 degC
ethanol-heating-value = lower heating value of ethanol
ethanol-vaporisation = heat of vaporisation of ethanol (396 Btu/lb)
ethanol-ron = RON of neat ethanol (not a blending number)
ethanol-mon = MON of neat ethanol (not a blending number)
methanol-density = density of methanol at 15 degC
methanol-heating-value = lower heating value of methanol
methanol-vaporisation = heat of vaporisation of methanol at 25 degC
methanol-ron = RON of neat methanol
methanol-mon = MON of neat methanol
mtbe-density = density of MTBE at 15 degC
mtbe-heating-value = lower heating value of MTBE
mtbe-vaporisation = heat of vaporisation of MTBE at 25 degC
mtbe-ron = RON of neat MTBE
mtbe-mon = MON of neat MTBE
etbe-density = density of ETBE at 15 degC
etbe-heating-value = lower heating value of ETBE
etbe-vaporisation = heat of vaporisation of ETBE at 25 degC
etbe-ron = RON of neat ETBE
etbe-mon = MON of neat ETBE
toluene-ron = RON of neat toluene, more than any petrol base has
toluene-mon = MON of neat toluene, more than any petrol base has
water-density = density of water at 15 degC
water-vaporisation = heat of vaporisation of water at 25 degC
equation-of-state = CoolProp 8.0.0, reference equation of state at 101.325 kPa
formation-enthalpies = chemicals 1.5.2, LHV of the liquid at 25 degC from standard enthalpies of formation
neat-octane = Compilation of pure-component octane numbers (Kubic 2017, Abdul Jameel 2018, NREL), file DCN_MON_RON_joined_all_shuffled.csv of the repository graph_neural_network_for_fuel_ignition_quality_simplest, commit 1ff9983
ether-from-memory = from memory: as handbooks of petrol's oxygenates state it, to about 1 %
mtbe-from-memory = from memory: as handbooks of petrol's oxygenates state it; chemicals 1.5.2 (Perry, 8th edition) has 740.8 at 20 degC and 745.8 at 15 degC, 0.7 % more
ether-vaporisation = chemicals 1.5.2, difference of the standard enthalpies of formation of gas and liquid

## Thermal expansion of petrol

expansion-k0 = first coefficient of the thermal expansion of petrol
expansion-k1 = second coefficient of the thermal expansion of petrol
expansion-second-order = weight of the second-order term of the volume correction factor
expansion-density-min = lowest density at 15 degC for the thermal expansion of petrol
expansion-density-max = highest density at 15 degC for the thermal expansion of petrol
expansion-temperature-min = lowest temperature for the thermal expansion of petrol
expansion-temperature-max = highest temperature for the thermal expansion of petrol
generalised-gasoline = ASTM D1250-80 / API 2540, Table 54B, gasolines 653 to 770 kg/m3 (read in published code)
expansion-range = from memory: Table 54B of ASTM D1250-80 runs from 0 to 200 degF (-18 to 93 degC) at these densities; here the range of the other constituents' tables

## Sources of several constants

us-fuel-properties = US DOE Alternative Fuels Data Center, Fuel Property Comparison for Ethanol, Gasoline and No. 2 Diesel, Table 2 (read in a copy)

## Fuel system

air-gas-constant = specific gas constant of dry air
air-heat-capacity = heat capacity of air at constant pressure
petrol-heat-capacity = heat capacity of liquid petrol
ethanol-heat-capacity = heat capacity of liquid ethanol
cooling-realised = share of the greatest possible charge cooling that direct injection shows
n-heptane-density = density of n-heptane at 20 degC
mineral-spirits-density = density of mineral spirits at 20 degC
test-petrol-density = density of petrol that a flow was measured with
petrol-viscosity = dynamic viscosity of petrol (upper end of 0.37 to 0.44 cP at 60 degF)
ethanol-viscosity = dynamic viscosity of ethanol at 20 degC
fuel-bulk-modulus = isentropic bulk modulus of fuel at 60 degC and 0.6 MPa
murnaghan-exponent = growth of the bulk modulus with pressure, dK/dp
plunger-efficiency = share of the swept volume that filling and leakage leave
plunger-efficiency-doubt = how far that share may be off either way
port-duty-limit = largest commanded duty of port injectors
window-limit = largest use of the injection window
plunger-limit = largest use of a high-pressure pump's delivery
supply-limit = largest use of the low-pressure supply at the voltage under load
equation-of-state-20 = CoolProp 8.0.0, reference equation of state at 20 degC and 101.325 kPa
usual-reserve = usual reserve when fuel systems are sized: common practice, no source
air-gas-constant-source = from memory: ISO 2533:1975, standard atmosphere, 287.05287 J/(kg K)
petrol-heat-capacity-source = from memory: 2.0 to 2.2 kJ/(kg K) at room temperature
cooling-realised-source = SAE 2012-01-1275, Charge Cooling Effects on Knock Limits in SI DI Engines Using Gasoline/Ethanol Blends: Part 1 (abstract: about 70 % for all blends)
mineral-spirits-density-source = from memory: about 760 to 790 kg/m3, by maker
test-petrol-density-source = a middling petrol, of 720 to 775 kg/m3: common practice, no source
viscosity-rule = from memory: Arrhenius, ln mu = v ln mu_e + (1 - v) ln mu_g over volume shares; real blends may lie 10 % off
fuel-bulk-modulus-source = CoolProp 8.0.0, rho c^2 of ethanol; n-heptane 638, toluene 1118, and petrol between them
murnaghan-exponent-source = chosen against CoolProp 8.0.0: densities of ethanol, n-heptane and toluene along isentropes from 20 and 60 degC within 0.05 % up to 20 MPa and 0.13 % up to 35 MPa
plunger-efficiency-source = from memory: 0.80 to 0.90 at middling speed and 150 to 200 bar; no published map is known
port-duty-limit-source = Motor magazine, Go With the Flow, July 2007: 80 to 85 % in original equipment; how it was found is not said there
