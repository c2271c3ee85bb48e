//! Vapour pressure tables.

use super::support::{near, percent};
use fillwright::fuel::{FLEX_FUEL_CLASSES, ethanol_waiver};
use uom::si::pressure::kilopascal;

/// Directive 98/70/EC as amended by 2009/30/EC, Annex III, read in the transposition of
/// Cyprus (K.D.P. 106/2022), in kPa at whole percents; between them a straight line.
#[test]
fn waiver_of_the_european_union() {
    let waiver = |ethanol| ethanol_waiver(percent(ethanol)).unwrap().get::<kilopascal>();
    let published = [
        (0.0, 0.0),
        (1.0, 3.7),
        (2.0, 6.0),
        (3.0, 7.2),
        (4.0, 7.8),
        (5.0, 8.0),
        (6.0, 8.0),
        (7.0, 7.9),
        (8.0, 7.9),
        (9.0, 7.8),
        (10.0, 7.8),
        (1.5, 4.85),
        (2.5, 6.6),
    ];
    for (ethanol, kilopascals) in published {
        near(waiver(ethanol), kilopascals, 1e-9);
    }
    assert_eq!(ethanol_waiver(percent(10.5)), None);
}

/// ASTM D5798, the SI text (from memory): 38-62, 48-65, 59-83 and 66-103 kPa for the classes
/// 1 to 4. 1 psi is 6.894757 kPa; 0.6 for their rounding.
#[test]
fn classes_of_flex_fuel() {
    let published = [(38.0, 62.0), (48.0, 65.0), (59.0, 83.0), (66.0, 103.0)];
    for ((low, high), (low_kilopascal, high_kilopascal)) in
        FLEX_FUEL_CLASSES.value.into_iter().zip(published)
    {
        near(low * 6.894_757, low_kilopascal, 0.6);
        near(high * 6.894_757, high_kilopascal, 0.6);
    }
}
