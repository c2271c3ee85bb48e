//! The workings of the tank's estimate: what the last fill and the last readings
//! say, each by itself.

use crate::message::keys::workings;
use uom::si::frequency::hertz;

use super::history::{History, LogReading, Replayed};
use crate::answers::reading::Reader;
use crate::answers::working::{CONSERVATION, letter, litres};
use crate::document::{FillEntry, SensorForm, TubeTestForm, What};
use crate::fuel::{Content, Corner, Extras, HydrocarbonBase, Mean};
use crate::message::keys::practice as words;
use crate::quantity::notation::{SensorFigure, parse_millilitres, parse_sensor};
use crate::quantity::{Band, Share};
use crate::source::{Citation, Confidence, Source, SourceKind};
use crate::tank::{
    CONTRACTION, Evidence, Pour, SENSOR_ZERO_HZ, TubeTest, TubeTestMethod, sensor_share,
};
use crate::workings::{Working, literal, number, sum};

const TRIANGLE: Source = Source::derived(words::TRIANGLE);
const ENERGY: Source = Source::derived(words::ENERGY_PER_DISTANCE);
const LINE: Source = Source {
    kind: SourceKind::CommonPractice,
    citation: Citation::Words(words::BURNED_FIRST),
    confidence: Confidence::Weak,
};
const NBR_13992: Source = Source {
    kind: SourceKind::Standard,
    citation: Citation::Published("ABNT NBR 13992:1997"),
    confidence: Confidence::Secondary,
};
const OVER_FUEL: Source = Source::derived(words::OVER_FUEL);

impl History {
    /// How the estimate came about: the balance of the last fill, the last
    /// readings, and the way of the old blend. Weighing them against
    /// each other is the estimator's part.
    pub fn workings(&self, course: &LogReading) -> Vec<Working> {
        let events = || course.log().events().rev();
        let last = |wanted: fn(&What) -> bool| {
            events().find(|event| wanted(&event.what)).and_then(|event| {
                Some((&event.what, self.replayed(&event.id).filter(|it| it.unused.is_none())?))
            })
        };
        let mut lines = Vec::new();
        if let Some((what @ What::Fill(fill), replayed)) = last(|it| matches!(it, What::Fill(_))) {
            lines.extend(balance(what, fill, replayed, course));
        }
        if let Some((What::Sensor(form), _)) = last(|it| matches!(it, What::Sensor(_))) {
            lines.extend(sensor(form));
        }
        if let Some((What::TubeTest(form), _)) = last(|it| matches!(it, What::TubeTest(_))) {
            lines.extend(tube_test(form));
        }
        lines.extend(self.way_of_old_blend(course));
        lines
    }

    fn way_of_old_blend(&self, course: &LogReading) -> Option<Working> {
        let old = self.old_blend?;
        let mut reader = Reader::new(course.printer());
        let known = reader.car(course.car());
        let per_litre = |share: Share, extras: Extras| {
            let content = Content { ethanol: Band::exact(share), extras };
            let blend = content.litre(Corner::Expected, &HydrocarbonBase::default());
            Some(blend.energy_density()?.megajoules_per_liter())
        };
        let line = number("L", litres(known.line?));
        let old_energy = number("H_old", per_litre(old.share, old.extras)?);
        let reference = number("H_ref", per_litre(known.reference, Extras::default())?);
        let consumption = number("k", known.consumption?.litres_per_100_km());
        let way = literal(100.0) * line * old_energy / (reference * consumption);
        let name = workings::HOW_FAR_OLD_BLEND_FEEDS_ENGINE;
        Some(Working::new(name, "d", &way, 1, "km", &[LINE, ENERGY]))
    }
}

/// The share after a fill: `(V0 e0 + sum x c) / (V0 + sum x)`.
fn balance(
    what: &What,
    fill: &FillEntry,
    replayed: &Replayed,
    course: &LogReading,
) -> Vec<Working> {
    let mut reader = Reader::new(course.printer());
    let known = reader.car(course.car());
    let told = reader.told(what, &known, course.car().sensor_scale);
    let pours: Vec<Pour> = told
        .and_then(|told| match told.evidence.into_iter().next_back() {
            Some(Evidence::Fill { pours, .. }) => Some(pours),
            _ => None,
        })
        .unwrap_or_default();
    let (Some(before), Some(after)) = (replayed.before(), replayed.after()) else {
        return Vec::new();
    };
    let mut lines = Vec::new();
    let poured: f64 = pours.iter().map(|pour| litres(pour.volume)).sum();
    let level = number("V0", litres(after.level.expected()) - poured);
    let names = fill.fuels.iter().filter(|fuel| !fuel.poured.is_blank()).map(|fuel| &fuel.name);
    let present = number("e0", before.share.expected().fraction());
    let mut balance = Mean::of(level, Some(present));
    for (index, (pour, name)) in pours.iter().zip(names).enumerate() {
        let (x, c) = (format!("x_{}", letter(index)), format!("c_{}", letter(index)));
        let [low, likeliest, high] =
            [pour.share.low(), pour.share.expected(), pour.share.high()].map(Share::fraction);
        let ends = [("least", low), ("likeliest", likeliest), ("most", high)];
        let content = sum(ends.map(|(name, share)| number(name, share))) / literal(3.0);
        let name = workings::HoldsOnAverage { fuel: name }.sentence();
        lines.push(Working::new(name, c.clone(), &content, 4, "", &[TRIANGLE]));
        let poured = number(x, litres(pour.volume));
        balance = balance.plus(Mean::of(poured, Some(number(c, content.value()))));
    }
    let Some(share) = balance.value() else { return lines };
    let name = workings::SHARE_AFTER_LAST_FILL_BALANCE_ALONE;
    lines.push(Working::new(name, "e1", &share, 3, "", &[CONSERVATION]));
    lines
}

fn sensor(form: &SensorForm) -> Option<Working> {
    let SensorFigure::Frequency(frequency) = parse_sensor(&form.reading).ok()? else { return None };
    let share = sensor_share(frequency.get::<hertz>());
    let name = workings::SHARE_LAST_SENSOR_READING;
    Some(Working::new(name, "z_s", &share, 3, "", &[SENSOR_ZERO_HZ.source]))
}

fn tube_test(form: &TubeTestForm) -> Option<Working> {
    let ml = |text: &str| parse_millilitres(text).ok();
    let boundary = ml(&form.boundary)?;
    let name = workings::SHARE_LAST_TUBE_TEST;
    match form.method {
        TubeTestMethod::SaltWater => {
            let share = TubeTest::with_salt_water(boundary).ok()?.formula();
            Some(Working::new(name, "z_t", &share, 3, "", &[NBR_13992]))
        }
        TubeTestMethod::PlainWater => {
            let test = TubeTest::with_water(ml(&form.fuel)?, ml(&form.water)?, boundary).ok()?;
            let sources = [OVER_FUEL, CONTRACTION.source];
            Some(Working::new(name, "z_t", &test.formula(), 3, "", &sources))
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::document::Document;
    use crate::quantity::notation::DecimalMark;
    use uom::si::length::kilometer;

    /// Every line, evaluated by exmex 0.21, a general-purpose expression evaluator,
    /// comes to the value that is shown; and what the estimate says is near what
    /// the balance says.
    #[test]
    fn every_line_can_be_checked_by_hand() {
        let demo = Document::demo();
        let course = LogReading::of(&demo.here, &demo.settings.printer(DecimalMark::Point));
        let history = History::of(&course);
        let lines = history.workings(&course);
        for line in &lines {
            let evaluated: f64 = exmex::eval_str(&line.numbers).unwrap();
            let shown = 0.5 * 10_f64.powi(-i32::try_from(line.decimals).unwrap());
            assert!((evaluated - line.value).abs() < shown, "{:?}: {}", line.name, line.numbers);
        }
        let value = |symbol: &str| lines.iter().find(|it| it.symbol == symbol).unwrap().value;
        // 84 Hz is 34 %; the boundary at 57.5 mL is 2 * 7.5 + 1 = 16 %.
        approx::assert_abs_diff_eq!(value("z_s"), 0.34, epsilon = 1e-12);
        approx::assert_abs_diff_eq!(value("z_t"), 0.16, epsilon = 1e-12);
        let fill = &history.replays[5];
        let after = fill.after().unwrap().share.expected().fraction();
        approx::assert_abs_diff_eq!(value("e1"), after, epsilon = 0.01);
        let reach = history.old_blend.unwrap().reach.get::<kilometer>();
        approx::assert_abs_diff_eq!(value("d"), reach, epsilon = 1e-6);
    }
}
