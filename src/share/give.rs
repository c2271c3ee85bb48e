//! What of the car in use is shared.

use super::link::LinkError;
use super::{Kind, Shared};
use crate::answers::fill::FillAsked;
use crate::answers::reading::Stated;
use crate::answers::trip::TripAsked;
use crate::document::{ContentsForm, Document, ExtrasForm, LevelForm, StartForm};
use crate::fuel::Extras;
use crate::quantity::notation::{Entry, Printer, print_number_short, round_down, round_up};
use crate::quantity::{Band, Share, Volume};
use crate::tank::{HowSure, LevelReading};

impl Shared {
    /// The car in use, with its calibrations, its own fuels and its hardware. The log
    /// stays behind.
    pub fn car_of(document: &Document) -> Self {
        Self::of(Kind::Car, document)
    }

    /// The fill at hand. What the log tells of the tank is written out, since the log
    /// stays behind: `asked` is the fill as it is read now.
    ///
    /// # Errors
    /// When the fill starts from the log and is not understood.
    pub fn fill_of(
        document: &Document,
        asked: Option<&FillAsked>,
        printer: &Printer,
    ) -> Result<Self, LinkError> {
        let mut shared = Self::of(Kind::Fill, document);
        let fill = &mut shared.document.here.fill;
        if fill.start == StartForm::Log {
            let asked = asked.ok_or(LinkError::UnknownContents)?;
            let tank = &asked.problem.tank;
            let stated = Stated {
                level: tank.level,
                share: tank.share,
                extras: asked.tank_extras,
                ron: tank.ron,
                mon: asked.tank_mon,
            };
            let told = told(&stated, printer);
            fill.start = StartForm::Typed;
            fill.contents.level.level = told.level.level;
            fill.contents.level.reading = told.level.reading;
            fill.contents.level.error = told.level.error;
            fill.contents.share = told.share;
            fill.contents.share_range = told.share_range;
            fill.contents.extras = told.extras;
            fill.contents.octane = told.octane;
            fill.contents.mon = told.mon;
        }
        Ok(shared)
    }

    /// The route, likewise.
    ///
    /// # Errors
    /// When the route starts from the log and is not understood.
    pub fn trip_of(
        document: &Document,
        asked: Option<&TripAsked>,
        printer: &Printer,
    ) -> Result<Self, LinkError> {
        let mut shared = Self::of(Kind::Trip, document);
        let route = &mut shared.document.here.route;
        if route.start == StartForm::Log {
            let asked = asked.ok_or(LinkError::UnknownContents)?;
            let tank = &asked.route.tank;
            let stated = Stated {
                level: tank.level,
                share: tank.share,
                extras: asked.route.extras,
                ron: tank.ron,
                mon: None,
            };
            route.start = StartForm::Typed;
            route.contents = told(&stated, printer);
        }
        Ok(shared)
    }
}

/// What is in the tank in words that say no more than is known: ranges are rounded
/// outwards and octane numbers down.
fn told(stated: &Stated, printer: &Printer) -> ContentsForm {
    let text = |value: f64| print_number_short(value, 1, printer.style);
    let (down, up) = (|value: f64| round_down(value, 1), |value: f64| round_up(value, 1));
    let unit = printer.units.volume();
    let litres = |volume: Volume| unit.value_of(volume);
    // Not above the brim.
    let level = down(litres(stated.level.expected()));
    let error = f64::max(litres(stated.level.high()) - level, level - litres(stated.level.low()));
    let entry = |text: String| Entry { text, typed_in: printer.units };
    // Without its unit a level below one could be a part of the tank.
    let level_text = if 0.0 < level && level < 1.0 {
        format!("{} {}", text(level), unit.symbol())
    } else {
        text(level)
    };
    let percent = |share: Share| share.percent();
    ContentsForm {
        level: LevelForm {
            level: entry(level_text),
            reading: LevelReading::Gauge,
            error: entry(text(up(error.max(0.0)))),
        },
        share: text(percent(stated.share.expected())),
        how_sure: HowSure::default(),
        share_range: format!(
            "{}-{}",
            text(down(percent(stated.share.low()))),
            text(up(percent(stated.share.high())))
        ),
        extras: extras_told(&stated.extras, printer),
        octane: stated.ron.map(|ron| Entry::metric(&text(down(ron)))).unwrap_or_default(),
        mon: stated.mon.map(|mon| text(down(mon))).unwrap_or_default(),
    }
}

/// What there is beside petrol and ethanol, in hundredths of a percent, the ends rounded
/// outwards.
fn extras_told(extras: &Extras, printer: &Printer) -> ExtrasForm {
    let hundredths = |share: Share, round: fn(f64) -> f64| {
        Share::clamped(round(share.percent() * 100.0) / 10_000.0)
    };
    let outwards = |band: Band<Share>| {
        let low = hundredths(band.low(), |value| (value + 1e-6).floor());
        let high = hundredths(band.high(), |value| (value - 1e-6).ceil());
        let expected = hundredths(band.expected(), f64::round);
        Band::enclosing(expected, [low, high]).unwrap_or(band)
    };
    let rounded = Extras::each(|of| outwards(of(extras)));
    ExtrasForm::of(&rounded, |percent| print_number_short(percent, 2, printer.style))
}
