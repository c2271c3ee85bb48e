//! What is believed before anything is read, as a list to show.

use super::envelope::{BESIDE_L, COUNTED, DRIVEN, SOLD};
use super::prior as p;
use super::reach::THRIFTIEST_L;
use super::unlogged::FILLED_AT;
use crate::tank::Figure;

/// Every figure of the estimate.
pub(in crate::tank) fn figures() -> Vec<Figure> {
    let spreads = |name, of: fn((f64, f64)) -> f64| Figure {
        name,
        values: p::SPREADS.value.map(of).to_vec(),
        unit: "",
        source: p::SPREADS.source,
    };
    vec![
        Figure::one("spread of real against stated consumption", "", p::GAIN_SD),
        Figure::one("spread from leg to leg, of what was burned", "", p::LEG_SD),
        Figure::one("the same where a trip computer counted", "", p::COUNTED_LEG_SD),
        Figure::one("variance that every leg adds", "L²", p::LEG_VARIANCE),
        Figure::one("spread of a gauge's reading, of the tank", "", p::GAUGE_SD),
        Figure::one("between two marks of a gauge, of the tank", "", p::GAUGE_STEP),
        Figure::one("spread of what a gauge always reads off, of the tank", "", p::GAUGE_BIAS_SD),
        Figure::one("spread of what a sensor always reads off, as a share", "", p::SENSOR_BIAS_SD),
        Figure::one("share from which a fuel is a strong one", "", p::STRONG_FROM),
        Figure::one("part of a strong fuel's variance that is the pump's", "", p::LASTING_PART),
        Figure::one("what of a pump's offset is left at the next fill", "", p::LASTING_TO_NEXT),
        Figure::one("spread of weak fuels, in times of their bands", "", p::WEAK_SPREAD),
        spreads("spreads that strong fuels may have, in times of their bands", |it| it.0),
        spreads("the probabilities of those spreads", |it| it.1),
        Figure::one("probability that a reading that does not fit is misread", "", p::MISREAD),
        Figure::one("probability that a car stood where no leg is logged", "", p::STOOD),
        Figure::ends("least and most that a leg burns, in times of what is stated", "", DRIVEN),
        Figure::ends("the same in times of what a trip computer counted", "", COUNTED),
        Figure::one("what any leg may burn beside that", "L", BESIDE_L),
        Figure::one("petrol that no car takes less of over 100 km", "L", THRIFTIEST_L),
        Figure {
            name: "least and largest ethanol share that pumps sell",
            values: SOLD.value.to_vec(),
            unit: "",
            source: SOLD.source,
        },
        Figure::ends("level at which people fill up, of the tank: from, to", "", FILLED_AT),
    ]
}
