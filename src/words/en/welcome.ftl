what-to-put-in = What to put in the tank
welcome = Fillwright works out how many litres of each fuel make the ethanol blend that your calibration needs, and how far off that can be. Everything stays on this device.
own-car = Enter my own car
example = Look at an invented example
estimates = It estimates; it does not certify. The author of your calibration has the last word, and local law comes first.
