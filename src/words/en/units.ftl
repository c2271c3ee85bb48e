### What a person chooses a unit for, and what tells units of one symbol apart.

volume = Fuel
distance = Distance
consumption = Consumption
pressure = Fuel pressure, boost
air-pressure = Air pressure
power = Power
torque = Torque
temperature = Temperature
injector-flow = Injector flow
pump-flow = Pump and engine flow
mass-flow = Fuel flow by mass
air-flow = Air flow
octane = Octane number
mixture = Mixture

us-gallon = US gal
miles-per-us-gallon = mpg (US)
miles-per-imperial-gallon = mpg (imperial)
us-gallons-per-hour = US gal/h
aki = AKI, (R+M)/2
afr-of-petrol = AFR, petrol scale (λ 1 is 14.7)
afr-of-the-blend = AFR of the blend at hand
