### Names in the invented example, as somebody would have typed them.

## The car

car = Estate car, 1.9-litre turbo

## Calibrations and curves

on-petrol = Petrol
on-mid-blend = Mid blend
on-mid-blend-with-fluid = Mid blend with fluid
curve-on-petrol = Petrol, on the rollers

## Parts, and those who set limits

tank-pump = Tank pump
engine-builder = Engine builder
gearbox = Gearbox
compressor = Compressor

## Places between the Swedish west coast and the Harz

home = Home
jutland = Jutland
north-jutland = North Jutland
south-jutland = South Jutland
lueneburg-heath = Lüneburg Heath
harz = Harz
