//! What is believed before anything is read, as a list to show.

use super::envelope::{BESIDE_L, COUNTED, DRIVEN, SOLD};
use super::prior as p;
use super::reach::THRIFTIEST_L;
use super::unlogged::FILLED_AT;
use crate::message::keys::practice as words;
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
        Figure::one(words::GAIN_SD, "", p::GAIN_SD),
        Figure::one(words::LEG_SD, "", p::LEG_SD),
        Figure::one(words::COUNTED_LEG_SD, "", p::COUNTED_LEG_SD),
        Figure::one(words::LEG_VARIANCE, "L²", p::LEG_VARIANCE),
        Figure::one(words::GAUGE_SD, "", p::GAUGE_SD),
        Figure::one(words::GAUGE_STEP, "", p::GAUGE_STEP),
        Figure::one(words::GAUGE_BIAS_SD, "", p::GAUGE_BIAS_SD),
        Figure::one(words::SENSOR_BIAS_SD, "", p::SENSOR_BIAS_SD),
        Figure::one(words::STRONG_FROM, "", p::STRONG_FROM),
        Figure::one(words::LASTING_PART, "", p::LASTING_PART),
        Figure::one(words::LASTING_TO_NEXT, "", p::LASTING_TO_NEXT),
        Figure::one(words::WEAK_SPREAD, "", p::WEAK_SPREAD),
        spreads(words::SPREADS, |it| it.0),
        spreads(words::SPREAD_PROBABILITIES, |it| it.1),
        Figure::one(words::MISREAD, "", p::MISREAD),
        Figure::one(words::STOOD, "", p::STOOD),
        Figure::ends(words::DRIVEN, "", DRIVEN),
        Figure::ends(words::COUNTED, "", COUNTED),
        Figure::one(words::BESIDE_L, "L", BESIDE_L),
        Figure::one(words::THRIFTIEST_L, "L", THRIFTIEST_L),
        Figure { name: words::SOLD, values: SOLD.value.to_vec(), unit: "", source: SOLD.source },
        Figure::ends(words::FILLED_AT, "", FILLED_AT),
    ]
}
