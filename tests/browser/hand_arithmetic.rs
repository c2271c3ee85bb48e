//! What has to come out, reckoned here from the definitions alone: nothing in this
//! file comes from the app or from its core.

/// Litres of a US gallon, by definition 231 cubic inches.
pub(crate) const US_GALLON: f64 = 231.0 * 0.254 * 0.254 * 0.254;

/// How far off the pump's meter may be.
const METER: f64 = 0.005;

// Densities at 15 degrees Celsius in g/L and molar masses in g/mol. The petrol
// base is CH1.85 of 100 g/mol on average.
const ETHANOL_DENSITY: f64 = 793.7;
const PETROL_DENSITY: f64 = 745.0;
const PETROL_MOLAR_MASS: f64 = 100.0;
const CARBON: f64 = 12.011;
const HYDROGEN: f64 = 1.008;
const OXYGEN: f64 = 15.999;
const HYDROGEN_PER_CARBON: f64 = 1.85;
/// Grams of air that bring a mole of oxygen.
const AIR: f64 = 2.0 * OXYGEN + 3.773 * 28.16;

/// Litres of the stronger of two fuels that, with the weaker one to the brim, make
/// the share aimed at. From `level present + x strong + (brim - level - x) weak =
/// brim aim`; all shares in percent.
pub(crate) fn dose(brim: f64, (level, present): (f64, f64), fuels: (f64, f64), aim: f64) -> f64 {
    let (strong, weak) = fuels;
    (brim * aim - level * present - (brim - level) * weak) / (strong - weak)
}

/// The share in percent of what is poured together: litres and percent of each.
pub(crate) fn share(parts: &[(f64, f64)]) -> f64 {
    let litres: f64 = parts.iter().map(|(litres, _)| litres).sum();
    parts.iter().map(|(litres, percent)| litres * percent).sum::<f64>() / litres
}

/// The weakest and the strongest blend when a dose is poured first and the tank is
/// then filled to the brim with what is in it already, so that the level plays no
/// part: the dose may be as weak and as strong as given, its meter may be off.
pub(crate) fn worst(brim: f64, dose: f64, (low, high): (f64, f64), rest: f64) -> (f64, f64) {
    let with = |dose: f64, percent| share(&[(dose, percent), (brim - dose, rest)]);
    (with(dose * (1.0 - METER), low), with(dose * (1.0 + METER), high))
}

/// An octane number by moles, of litres, percent and octane number of each part.
pub(crate) fn octane(parts: &[(f64, f64, f64)]) -> f64 {
    let ethanol_molar_mass = 2.0 * CARBON + 6.0 * HYDROGEN + OXYGEN;
    let moles = |(litres, percent, _): &(f64, f64, f64)| {
        let share = percent / 100.0;
        let of_ethanol = share * ETHANOL_DENSITY / ethanol_molar_mass;
        let of_petrol = (1.0 - share) * PETROL_DENSITY / PETROL_MOLAR_MASS;
        litres * (of_ethanol + of_petrol)
    };
    let all: f64 = parts.iter().map(moles).sum();
    parts.iter().map(|part| moles(part) * part.2).sum::<f64>() / all
}

/// Grams of fuel and of the air that burns it, in a litre of a blend.
fn fuel_and_air(percent: f64) -> (f64, f64) {
    let share = percent / 100.0;
    let ethanol = share * ETHANOL_DENSITY;
    let petrol = (1.0 - share) * PETROL_DENSITY;
    // C2H6O takes 3 O2; CHy takes 1 + y/4.
    let ethanol_air = 3.0 * AIR / (2.0 * CARBON + 6.0 * HYDROGEN + OXYGEN);
    let petrol_air =
        (1.0 + HYDROGEN_PER_CARBON / 4.0) * AIR / (CARBON + HYDROGEN_PER_CARBON * HYDROGEN);
    (ethanol + petrol, ethanol * ethanol_air + petrol * petrol_air)
}

/// The stoichiometric air-fuel ratio of a blend.
pub(crate) fn afr(percent: f64) -> f64 {
    let (fuel, air) = fuel_and_air(percent);
    air / fuel
}

/// The volume of a blend that burns with the air of a litre of another.
pub(crate) fn volume_multiplier(percent: f64, reference: f64) -> f64 {
    fuel_and_air(reference).1 / fuel_and_air(percent).1
}

/// The level at which a tank that holds more can be brought to the aim by filling
/// up with the strong fuel: from `level present + (brim - level) strong = brim aim`.
pub(crate) fn burn_down(brim: f64, present: f64, strong: f64, aim: f64) -> f64 {
    brim * (strong - aim) / (strong - present)
}

#[test]
fn the_reckoning_agrees_with_sums_on_paper() {
    let near = |a: f64, b: f64| assert!((a - b).abs() < 5e-4, "{a} is not {b}");
    near(US_GALLON, 3.785_411_784);
    near(dose(60.0, (15.0, 10.0), (85.0, 10.0), 30.0), 16.0);
    near(share(&[(44.0, 10.0), (16.0, 85.0)]), 30.0);
    near(share(&[(42.0, 10.0), (18.0, 85.0)]), 32.5);
    near(worst(60.0, 16.0, (70.0, 85.0), 10.0).0, 25.92);
    near(worst(60.0, 16.0, (70.0, 85.0), 10.0).1, 30.1);
    near(afr(100.0), 9.0025);
    near(afr(30.0), 12.8256);
    near(afr(10.0), 13.9817);
    near(burn_down(60.0, 10.0, 85.0, 60.0), 20.0);
}
