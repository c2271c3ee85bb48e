//! Every view under US and under imperial units: no figure is left in units that were
//! not chosen, and back in metric units all that was typed reads as before.

use std::collections::BTreeSet;

use crate::app::{self, pick};
use crate::harness::{Page, browse};
use crate::states::{State, open_everything};
use crate::storage::export;

/// What stands after a narrow space is a unit, wherever a figure is printed.
fn units_in(text: &str) -> BTreeSet<String> {
    let mut found = BTreeSet::new();
    for part in text.split('\u{202f}').skip(1) {
        let end = |c: char| c.is_whitespace() || matches!(c, ',' | ';' | ':' | '.' | ')' | '(');
        found.insert(part.split(end).next().unwrap_or_default().to_owned());
    }
    found
}

/// That of the example's car.
const ENGINE_SIZE: &str = "1.9\u{202f}L";

const CLOSE_WORKINGS: &str = "for (const it of document.querySelectorAll('details'))
    if (it.querySelector('summary')?.textContent.includes('Workings')) it.open = false";

/// What is read out aloud depends on what was said before, and on when a plan settled: it
/// is no part of what stands on the page.
const SILENCE: &str =
    "for (const it of document.querySelectorAll('p.visually-hidden[role=status]'))
    it.hidden = true";

async fn every_view(page: &Page) -> Vec<(&'static str, String)> {
    let mut texts = Vec::new();
    for view in ["Fill", "Tank", "Hardware", "Trip"] {
        page.click("link", view).await;
        page.sees(if view == "Trip" { crate::trip::SETTLED } else { view }).await;
        open_everything(page).await;
        // Workings keep the units in which their formulas are written.
        page.script(CLOSE_WORKINGS, vec![]).await;
        page.script(SILENCE, vec![]).await;
        texts.push((view, page.visible_text().await));
    }
    texts
}

async fn stays_in(page: &Page, system: &str, own: &[&str], foreign: &[&str]) {
    app::to_car(page).await;
    pick(page, system).await;
    let texts = every_view(page).await;
    let everything: BTreeSet<String> = texts.iter().flat_map(|(_, it)| units_in(it)).collect();
    for unit in own {
        assert!(everything.contains(*unit), "{system}: no {unit} among {everything:?}");
    }
    for (view, text) in &texts {
        // An engine's size is in litres everywhere.
        let text = text.replace(ENGINE_SIZE, "");
        let found = units_in(&text);
        let left: Vec<_> = foreign.iter().filter(|it| found.contains(**it)).collect();
        let lines: Vec<_> = text
            .lines()
            .filter(|line| left.iter().any(|it| line.contains(&format!("\u{202f}{it}"))))
            .collect();
        assert!(left.is_empty(), "{view} under {system} has {left:?}: {lines:?}");
    }
}

#[test]
fn every_view_follows_us_and_imperial_units_and_comes_back() {
    const METRIC: &[&str] = &["L", "L/h", "km", "bar", "kW", "N·m", "g/s", "L/100"];
    browse(async |page| {
        State::Fill.reach(page).await;
        app::to_car(page).await;
        let before = export(page).await;
        let metric = every_view(page).await;
        stays_in(page, app::US_GALLONS, &["gal", "mi", "psi", "hp", "lb/h"], METRIC).await;
        let imperial = &["imp", "mi", "psi", "hp", "lb/h"];
        stays_in(page, app::IMPERIAL_GALLONS, imperial, METRIC).await;
        app::to_car(page).await;
        pick(page, app::LITRES).await;
        assert_eq!(export(page).await, before);
        assert_eq!(every_view(page).await, metric);
    });
}

#[test]
fn a_unit_of_its_own_is_used_everywhere() {
    browse(async |page| {
        State::Fill.reach(page).await;
        app::to_car(page).await;
        open_everything(page).await;
        page.choose("Power", "PS").await;
        page.choose("Fuel pressure, boost", "psi").await;
        page.choose("Mixture", "AFR, petrol scale (λ 1 is 14.7)").await;
        let texts = every_view(page).await;
        let (_, hardware) = texts.iter().find(|(view, _)| *view == "Hardware").expect("the view");
        let found = units_in(hardware);
        assert!(found.contains("PS") && found.contains("psi") && !found.contains("kW"));
        page.click("link", "Hardware").await;
        open_everything(page).await;
        // λ 0.84 on the scale of a gauge that shows 14.7 at λ 1.
        assert_eq!(page.value("Mixture at full load").await, format!("{:.2}", 0.84 * 14.7));
        let (_, fill) = &texts[0];
        assert!(units_in(fill).contains("L"), "only what was chosen changes");
    });
}
