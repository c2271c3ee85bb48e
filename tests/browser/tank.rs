//! Between fills: what was recorded, what was read since, and what may be selected.

use fillwright::answers::tank::{History, LogReading, TankAnswer, TankQuestion};
use fillwright::calibration::Verdict;
use fillwright::document::Document;
use fillwright::quantity::notation::DecimalMark;

use crate::app::{self, Calibration, calibrate, pick, quarter_full, to_car, to_tank};
use crate::hand_arithmetic;
use crate::harness::{Key, Page, browse};
use crate::storage::export;

/// The fill of most scenarios, recorded as planned: 16 L of E85 and 29 L of petrol
/// onto 15 L.
async fn recorded(page: &Page) {
    quarter_full(page).await;
    page.click("button", app::RECORD_AS_PLANNED).await;
    page.sees("Fill recorded.").await;
    page.sees("About E").await;
}

#[test]
fn a_fill_is_recorded_with_one_tap_and_the_next_starts_from_it() {
    browse(async |page| {
        recorded(page).await;
        let blend = hand_arithmetic::share(&[(16.0, 85.0), (44.0, 10.0)]);
        page.sees(&format!("About E{blend:.0}, between")).await;
        page.sees("The log").await;
        assert_eq!(page.value(app::LEVEL).await, "");
        to_tank(page).await;
        let estimate = app::estimate(page).await;
        assert!(estimate.starts_with(&format!("about E{blend:.0} between E")), "{estimate}");
        assert!(estimate.contains("at least RON 98"), "{estimate}");
        assert_eq!(app::log(page).await.len(), 1);

        // Taken back, the fill is as it was before. That is offered at the entry too.
        assert!(app::button_of(page, "Undo: Fill recorded, Fill, ").await.len() > 20);
        app::undo(page, "Fill recorded").await;
        page.sees("Fill taken back.").await;
        page.sees("The log tells nothing yet").await;
        app::to_fill(page).await;
        page.becomes("1/4".to_owned(), async || page.value(app::LEVEL).await).await;
        assert_eq!(app::steps(page).await, ["E85: 16.0 L", "Petrol: 29.0 L"]);
    });
}

#[test]
fn what_is_read_later_sharpens_the_estimate_and_the_verdict() {
    browse(async |page| {
        recorded(page).await;
        to_car(page).await;
        let middle = Calibration { name: "Middle", weakest: "E26", strongest: "E40", ron: "95" };
        calibrate(page, 1, middle).await;
        page.type_in(app::CONSUMPTION, "8").await;
        page.press(Key::Tab).await;
        to_tank(page).await;
        page.sees("Middle: confirm first").await;
        // Nothing is usable yet: what that means, and what comes first.
        page.sees("No calibration may be selected on what is known.").await;
        page.sees("Measure first: a tube test can clear Middle.").await;
        page.sees("no full load. Drive gently on Middle").await;
        page.sees("A tube test that shows ").await;
        page.sees(" would clear it.").await;

        app::add(page, "Distance driven").await;
        page.type_in("Distance", "250").await;
        app::keep(page).await;
        page.becomes(2, async || app::log(page).await.len()).await;
        app::add(page, "Sensor reading").await;
        page.type_in("It shows", "83 Hz").await;
        app::keep(page).await;
        page.sees("Middle: usable").await;
        assert!(!page.visible_text().await.contains("No calibration may be selected"));
        let log = app::log(page).await;
        assert!(log[0].contains("Sensor reading 83 Hz"), "{log:?}");

        // What is removed no longer counts, and can come back.
        page.click("button", &app::button_of(page, "Remove: Sensor reading").await).await;
        page.sees("Middle: confirm first").await;
        page.click(app::OPENER, "Removed entries (1)").await;
        page.click("button", &app::button_of(page, "Bring back: Sensor reading").await).await;
        page.sees("Middle: usable").await;

        // And what is changed counts as changed.
        page.click("button", &app::button_of(page, "Change: Sensor reading").await).await;
        page.becomes("83 Hz".to_owned(), async || page.value("It shows").await).await;
        page.type_in("It shows", "62 Hz").await;
        app::keep(page).await;
        page.sees("Does this fit?").await;
        page.sees("E12 was read").await;
    });
}

#[test]
fn a_wrong_entry_says_what_is_wrong_and_keeps_what_was_typed() {
    browse(async |page| {
        recorded(page).await;
        to_tank(page).await;
        app::add(page, "Sensor reading").await;
        page.type_in("It shows", "170 Hz").await;
        app::keep(page).await;
        page.sees("170 Hz is the sensor's sign of a fault").await;
        page.reload().await;
        page.becomes("170 Hz".to_owned(), async || page.value("It shows").await).await;
        page.type_in("It shows", "31").await;
        app::keep(page).await;
        page.becomes(2, async || app::log(page).await.len()).await;

        app::add(page, "Tube test").await;
        pick(page, "Any amounts, plain water").await;
        page.type_in("Fuel poured in", "90").await;
        page.type_in("Water poured in", "10").await;
        page.type_in("Boundary afterwards", "9").await;
        app::keep(page).await;
        page.sees("The boundary cannot fall").await;
        page.type_in("Boundary afterwards", "38").await;
        app::keep(page).await;
        page.becomes(3, async || app::log(page).await.len()).await;
    });
}

#[test]
fn a_fill_that_is_missing_is_asked_about() {
    browse(async |page| {
        recorded(page).await;
        to_car(page).await;
        page.type_in(app::CONSUMPTION, "8").await;
        page.press(Key::Tab).await;
        to_tank(page).await;
        app::add(page, "Distance driven").await;
        page.type_in("Distance", "500").await;
        app::keep(page).await;
        app::add(page, "Level").await;
        page.type_in("Level", "3/4").await;
        app::keep(page).await;
        page.sees("Does this fit?").await;
        page.sees("Was there a fill that is not in the log?").await;
    });
}

#[test]
fn other_units_show_the_log_in_them() {
    browse(async |page| {
        recorded(page).await;
        to_car(page).await;
        pick(page, app::US_GALLONS).await;
        to_tank(page).await;
        let log = app::log(page).await;
        assert!(log[0].contains("4.23 gal E85, 7.66 gal Petrol"), "{log:?}");
        assert!(app::estimate(page).await.contains("15.8 gal"), "{:?}", app::estimate(page).await);
    });
}

#[test]
fn the_chart_reads_values_by_arrow_keys_and_as_a_table() {
    browse(async |page| {
        page.open("").await;
        page.click("button", app::EXAMPLE).await;
        to_tank(page).await;
        page.tab_to("slider", "Read Ethanol share").await;
        let last = page
            .script("return document.activeElement.getAttribute('aria-valuetext')", vec![])
            .await;
        page.press(Key::Home).await;
        page.until("the first value", async || {
            let now = page
                .script("return document.activeElement.getAttribute('aria-valuetext')", vec![])
                .await;
            now != last && now.to_string().contains("Apr")
        })
        .await;
        page.tab_to(app::OPENER, "As a table").await;
        page.press(Key::Enter).await;
        page.until("a table", async || page.has("columnheader", "Expected").await).await;
    });
}

/// What the core makes of a document: the estimate and the verdicts in words.
struct Core {
    estimate: String,
    verdict: &'static str,
}

impl Core {
    fn of(text: &str) -> Self {
        let document = Document::from_json(text).expect("a document");
        let printer = document.settings.printer(DecimalMark::Point);
        let history = History::of(&LogReading::of(&document.here, &printer));
        let question = TankQuestion::of(&document, &printer);
        let answer = TankAnswer::of(&question, &history).expect("an estimate");
        let [low, expected, high] = printer.grade_ends(answer.estimate.share);
        let verdict = match answer.verdicts[0].judgement.verdict {
            Verdict::Usable => "usable",
            Verdict::ConfirmFirst => "confirm first",
            Verdict::DoNotSelect => "do not select",
        };
        Self { estimate: format!("about {expected} between {low} and {high}"), verdict }
    }

    /// Whether the page shows the same.
    async fn is_on(&self, page: &Page) {
        page.becomes(true, async || app::estimate(page).await.starts_with(&self.estimate)).await;
        page.sees(&format!("Middle: {}", self.verdict)).await;
    }
}

#[test]
fn from_the_plan_to_the_import_the_page_says_what_the_core_says() {
    browse(async |page| {
        quarter_full(page).await;
        to_car(page).await;
        let middle = Calibration { name: "Middle", weakest: "E26", strongest: "E40", ron: "95" };
        calibrate(page, 1, middle).await;
        page.type_in(app::CONSUMPTION, "8").await;
        page.press(Key::Tab).await;
        app::to_fill(page).await;
        page.click("button", app::RECORD_AS_PLANNED).await;
        page.sees("Fill recorded.").await;
        page.sees("About E").await;

        let mut seen = Vec::new();
        for (kind, field, text) in [
            ("", "", ""),
            ("Distance driven", "Distance", "250"),
            ("Sensor reading", "It shows", "83 Hz"),
        ] {
            to_tank(page).await;
            if !kind.is_empty() {
                app::add(page, kind).await;
                page.type_in(field, text).await;
                app::keep(page).await;
                page.sees("Add to the log").await;
            }
            to_car(page).await;
            let core = Core::of(&export(page).await);
            to_tank(page).await;
            core.is_on(page).await;
            seen.push((core.estimate, core.verdict));
        }
        let verdicts: Vec<&str> = seen.iter().map(|it| it.1).collect();
        assert_eq!(verdicts, ["confirm first", "confirm first", "usable"]);
        assert_ne!(seen[1].0, seen[2].0);

        to_car(page).await;
        let text = export(page).await;
        page.script("localStorage.clear()", vec![]).await;
        page.reload().await;
        page.give_file(text.as_bytes()).await;
        page.click("button", "Use it").await;
        to_tank(page).await;
        Core::of(&text).is_on(page).await;
        to_car(page).await;
        assert_eq!(export(page).await, text);
    });
}
