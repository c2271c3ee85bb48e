//! After the fill: what the tank holds becomes what is in the tank.

use super::answer::{Answer, Blend};
use super::document::{AimForm, Document, Entry};
use super::printer::Printer;
use crate::quantity::Share;
use crate::tank::LevelReading;

/// Tenths, rounded so that a band does not shrink.
fn tenths(value: f64, round: fn(f64) -> f64) -> f64 {
    // The last digits of arithmetic must not push a whole tenth over the edge.
    round((value * 1e10).round() / 1e9) / 10.0
}

impl Document {
    /// Takes the blend of this answer for what is in the tank and clears what was
    /// put in, ready for the next fill.
    ///
    /// The bands are written in tenths, rounded outwards, octane numbers
    /// downwards: nothing is made to look surer than it was.
    pub fn take_as_contents(&mut self, answer: &Answer, blend: &Blend, printer: &Printer) {
        let typed_in = self.settings.system;
        let fill = &mut self.fill;
        let entry = |text: String| Entry { text, typed_in };
        fill.level = entry(printer.volume_number(blend.level.expected()));
        let capacity = answer.asked.problem.tank.capacity;
        let error = blend.level.high() - blend.level.low();
        if fill.clicked || blend.level.low() >= capacity {
            fill.reading = LevelReading::Brimmed;
            fill.level_error = Entry::default();
        } else if error > error * 0.0 {
            let half = printer.system.volume().value_of(error) / 2.0;
            fill.level_error = entry(printer.number(tenths(half, f64::ceil), 1));
        }
        let share = blend.share.map(Share::percent);
        let percent = |value: f64, round| printer.number(tenths(value, round), 1);
        fill.share = percent(share.expected(), f64::round);
        fill.share_range =
            format!("{}-{}", percent(share.low(), f64::floor), percent(share.high(), f64::ceil));
        let at_least = |band: Option<crate::quantity::Band<f64>>| {
            band.map(|band| percent(band.low(), f64::floor)).unwrap_or_default()
        };
        fill.octane = at_least(blend.ron);
        fill.mon = at_least(blend.mon);
        fill.clicked = false;
        if fill.aim == AimForm::AsPoured {
            fill.aim = AimForm::Share;
        }
        for offer in &mut fill.offers {
            offer.put_in = Entry::default();
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::logbook::{Answer, Document, Entry, Printer, interpret};
    use crate::quantity::notation::DecimalMark;

    fn answer_to(document: &Document) -> Answer {
        let printer = Printer::new(&document.settings, DecimalMark::Comma);
        let reading = interpret(document, &printer);
        assert_eq!(reading.complaints, []);
        Answer::of(reading.asked.unwrap())
    }

    /// The next fill knows no more, and hardly less, than this one did.
    #[test]
    fn the_band_is_carried_over_and_never_shrinks() {
        let mut document = Document::demo();
        document.fill.offers[0].put_in = Entry::metric("16");
        document.fill.offers[1].put_in = Entry::metric("27,5");
        document.fill.clicked = true;
        let before = answer_to(&document);
        let blend = before.blend.clone().unwrap();
        let printer = Printer::new(&document.settings, DecimalMark::Comma);
        document.take_as_contents(&before, &blend, &printer);
        let after = answer_to(&document);
        let tank = &after.asked.problem.tank;
        assert!(tank.share.low() <= blend.share.low() && blend.share.high() <= tank.share.high());
        assert!(tank.share.high().percent() - blend.share.high().percent() < 0.1 + 1e-9);
        assert!(tank.level.high() >= blend.level.high());
        assert!(tank.ron.unwrap() <= blend.ron.unwrap().low() + 1e-9);
        assert!(document.fill.offers.iter().all(|offer| offer.put_in.is_blank()));
    }

    /// A tank that was clicked full is known to within half a litre, whatever the
    /// gauge said before.
    #[test]
    fn a_click_tells_the_level() {
        let mut document = Document::demo();
        document.fill.offers[0].put_in = Entry::metric("16");
        document.fill.offers[1].put_in = Entry::metric("27,5");
        let unsure = answer_to(&document).asked.problem.tank.level;
        document.fill.clicked = true;
        let sure = answer_to(&document).asked.problem.tank.level;
        let litres = |volume: crate::quantity::Volume| volume.get::<uom::si::volume::liter>();
        assert!(litres(unsure.high() - unsure.low()) > 2.0);
        assert!((litres(sure.high()) - (58.0 - 43.5)).abs() < 1e-9);
        assert!((litres(sure.high() - sure.low()) - 0.5).abs() < 1e-9);
    }
}
