//! What is read of a band holds all of the band, whatever it is printed with.

use fillwright::calibration::{Calibration, Contents, FluidState, Verdict};
use fillwright::document::Document;
use fillwright::fuel::Extras;
use fillwright::quantity::notation::{DecimalMark, Printer, Units};
use fillwright::quantity::{Band, Share, Volume};
use proptest::prelude::*;
use proptest::sample::select;
use uom::si::volume::liter;

/// So much of the last digits is arithmetic.
const ARITHMETIC: f64 = 2e-9;

fn printer(units: Units, mark: DecimalMark) -> Printer {
    let mut settings = Document::demo().settings;
    settings.units = units;
    settings.printer(mark)
}

fn share(percent: f64) -> Share {
    Share::from_percent(percent).unwrap()
}

/// The number in a printed text.
fn number(text: &str) -> f64 {
    let digits = text.trim_start_matches('E').replace(',', ".").replace('\u{2212}', "-");
    let end = digits.find(['\u{202f}', ' ']).unwrap_or(digits.len());
    digits[..end].parse().unwrap()
}

fn band() -> impl Strategy<Value = Band<f64>> {
    let whole = (0..=100_u32).prop_map(f64::from);
    let tenths = (0..=1000_u32).prop_map(|it| f64::from(it) / 10.0);
    let one = prop_oneof![0.0..=100.0_f64, whole, tenths];
    let noise = select(vec![0.0, 1e-13, -1e-13, 1e-11]);
    (prop::array::uniform3(one), any::<bool>(), noise).prop_map(|(mut values, exact, noise)| {
        values.sort_by(f64::total_cmp);
        let [low, expected, high] = values.map(|it| (it + noise).clamp(0.0, 100.0));
        if exact { Band::exact(expected) } else { Band::new(low, expected, high).unwrap() }
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(3000))]

    #[test]
    fn printed_ends_hold_the_band(
        band in band(), decimals in 0..4_usize,
        units in select(vec![Units::METRIC, Units::US, Units::IMPERIAL]),
        mark in select(vec![DecimalMark::Point, DecimalMark::Comma]),
    ) {
        let printer = printer(units, mark);
        let holds = |[low, expected, high]: [String; 3], band: Band<f64>, decimals: usize| {
            let [low, expected, high] = [low, expected, high].map(|it| number(&it));
            let arithmetic = ARITHMETIC * band.high().abs().max(1.0) + 1e-7;
            prop_assert!(low <= band.low() + arithmetic, "{low} for {}", band.low());
            prop_assert!(high >= band.high() - arithmetic, "{high} for {}", band.high());
            // No further out than the last decimal.
            let step = 10_f64.powi(-i32::try_from(decimals).unwrap()) + arithmetic;
            prop_assert!(band.low() - low < step && high - band.high() < step);
            prop_assert!(low <= expected && expected <= high, "{low} {expected} {high}");
            Ok(())
        };
        holds(printer.number_ends(band, decimals), band, decimals)?;
        let shares = band.map(share);
        holds(printer.grade_ends(shares), band, 0)?;
        let volume = band.map(Volume::new::<liter>);
        let told = volume.map(|it| units.volume().value_of(it));
        holds(printer.volume_ends(volume), told, 1)?;
    }

    /// A blend that is told to be between E24 and E33 is neither below E24 nor above E33
    /// in any verdict, and one that is told to reach beyond an edge may do so.
    #[test]
    fn verdict_at_an_edge_agrees_with_the_printed_band(
        band in band(), edges in (0..100_u32, 1..60_u32),
    ) {
        let printer = printer(Units::METRIC, DecimalMark::Point);
        // Without the noise of arithmetic, which alone can put a blend beside an edge.
        let blend = band.map(|percent| share((percent * 1e7).round() / 1e7));
        let percent = |value: u32| share(f64::from(value.min(100)));
        let (low, high) = (percent(edges.0), percent(edges.0 + edges.1));
        let calibration = Calibration {
            name: String::new(), low, high, written_for: low, ron_min: None, needs_fluid: false,
        };
        let contents = Contents { share: blend, extras: Extras::default(), ron: None };
        let verdict = calibration.judge(&contents, FluidState::Ready).verdict;
        let [from, _, to] = printer.grade_ends(blend).map(|it| number(&it));
        let [begins, ends] = [low, high].map(|it| number(&printer.edge(it)));
        if from >= begins && to <= ends {
            prop_assert_eq!(verdict, Verdict::Usable, "E{} to E{} in E{} to E{}", from, to, begins, ends);
        }
        // A band that is told to end inside the window is not said to lie outside of it.
        if from >= begins && from < ends || to <= ends && to > begins {
            prop_assert_ne!(verdict, Verdict::DoNotSelect);
        }
    }
}

/// The figures of a test drive: 0.2360 is told as E23 and 0.3247 as E33. Rounding to the
/// nearest, the mistake, tells E24 and E32.
#[test]
fn ends_are_not_rounded_to_the_nearest() {
    let printer = printer(Units::METRIC, DecimalMark::Point);
    let [low, expected, high] = [23.60, 28.20, 32.47].map(share);
    let band = Band::new(low, expected, high).unwrap();
    assert_eq!(printer.grade_ends(band), ["E23", "E28", "E33"]);
    assert_ne!(printer.grade_band(band), "E24 to E32");
    let level = Band::new(12.06, 15.0, 18.04).unwrap().map(Volume::new::<liter>);
    assert_eq!(printer.volume_band(level), "12.0 to 18.1\u{202f}L");
    assert_eq!(printer.at_least(94.98, 1), "94.9");
    assert_eq!(printer.at_least(95.0 - 1e-12, 1), "95.0");
    // What is exact is told as it is.
    let thirty = Band::exact(share((0.1 + 0.2) * 100.0));
    assert_eq!(printer.grade_band(thirty), "E30 to E30");
}
