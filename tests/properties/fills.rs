//! Fills as people type them.

use std::fmt;

use fillwright::document::{
    AimForm, CalibrationForm, CarFile, Document, FuelForm, Id, StopRuleForm,
};
use fillwright::quantity::notation::{Entry, Units};
use proptest::prelude::*;
use proptest::sample::select;

/// A document with a fill, shown by what was typed.
#[derive(Clone)]
pub(crate) struct Typed(pub(crate) Document);

impl fmt::Debug for Typed {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let CarFile { car, fill, .. } = &self.0.here;
        write!(
            f,
            "tank {}, {} of {} ({}); ",
            car.capacity.text,
            fill.contents.level.level.text,
            fill.contents.share,
            fill.contents.share_range
        )?;
        match (fill.aim, car.calibrations.first()) {
            (AimForm::Calibration(_), Some(it)) => write!(f, "aim {} to {}; ", it.low, it.high)?,
            _ => write!(f, "aim {}; ", fill.aim_share)?,
        }
        write!(
            f,
            "{:?}, level {}, at most {}, money {}, step {:?}, anyway {}",
            fill.stop,
            fill.stop_level.text,
            fill.stop_volume.text,
            fill.stop_money,
            self.0.settings.pump_step.text,
            fill.anyway
        )?;
        for it in &fill.offers {
            let all = if it.use_all { "all of " } else { "" };
            write!(
                f,
                "; {} ({}) {all}{:?} at {}",
                it.share, it.share_range, it.limit.text, it.price.text
            )?;
        }
        Ok(())
    }
}

prop_compose! {
    fn fuel(range: std::ops::RangeInclusive<u32>)(
        low in range,
        width in 0_u32..=15,
        expected in 0.0..=1.0_f64,
        limit in prop_oneof![4 => Just(None), 1 => (5_u32..40).prop_map(Some)],
        use_all in any::<bool>(),
        price in 10_u32..20,
    ) -> FuelForm {
        let high = (low + width).min(100);
        let expected = f64::from(low) + f64::from(high - low) * expected;
        FuelForm {
            name: format!("E{expected:.0}"),
            share: format!("{expected:.1}"),
            share_range: format!("{low}-{high}"),
            octane: Entry::metric("95"),
            price: Entry::metric(&price.to_string()),
            limit: limit.map_or_else(Entry::default, |it| Entry::metric(&it.to_string())),
            use_all: use_all && limit.is_some(),
            ..FuelForm::default()
        }
    }
}

prop_compose! {
    /// A fill at a pump with a strong and one or two weak fuels.
    pub(crate) fn fill()(
        capacity in 35_u32..90,
        level in 0.02..0.95_f64,
        share in 0.0..90.0_f64,
        doubt in 0.5..8.0_f64,
        weak in fuel(0..=10),
        other in fuel(0..=60),
        strong in fuel(50..=85),
        count in 1_usize..=3,
        aim in 0_u32..=90,
        window in prop::option::weighted(0.3, (0_u32..60, 5_u32..30)),
        stop in select(vec![
            StopRuleForm::Brim, StopRuleForm::Brim, StopRuleForm::Level, StopRuleForm::AtMost, StopRuleForm::Budget,
            StopRuleForm::Least,
        ]),
        stop_at in 0.3..1.0_f64,
        step in select(vec!["", "0.1", "0.5", "1"]),
        anyway in prop::bool::weighted(0.2),
    ) -> Typed {
        let mut document = Document::empty(Id::new("car").unwrap());
        document.settings.pump_step = Entry::metric(step);
        document.settings.units = Units::METRIC;
        let CarFile { car, fill, .. } = &mut document.here;
        car.capacity = Entry::metric(&capacity.to_string());
        let full = f64::from(capacity);
        fill.contents.level.level = Entry::metric(&format!("{:.1} L", full * level));
        fill.contents.share = format!("{share:.1} %");
        fill.contents.share_range = format!("{:.1}-{:.1} %", (share - doubt).max(0.0), share + doubt);
        fill.contents.octane = Entry::metric("95");
        fill.offers = vec![strong, weak, other];
        fill.offers.truncate(count);
        for (id, offer) in (1..).zip(&mut fill.offers) {
            offer.id = id;
        }
        fill.aim_share = format!("E{aim}");
        if let Some((low, width)) = window {
            car.calibrations = vec![CalibrationForm {
                id: 9,
                name: "calibration".into(),
                low: format!("E{low}"),
                high: format!("E{}", low + width),
                ..CalibrationForm::default()
            }];
            fill.aim = AimForm::Calibration(9);
        }
        fill.stop = stop;
        fill.stop_level = Entry::metric(&format!("{:.1} L", full * stop_at));
        fill.stop_volume = Entry::metric(&format!("{:.1} L", full * stop_at * 0.5));
        fill.stop_money = format!("{:.0}", full * stop_at * 8.0);
        fill.anyway = anyway;
        Typed(document)
    }
}
