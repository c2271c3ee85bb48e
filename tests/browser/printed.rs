//! The sheets of Fill and Tank: what has to be on paper is, on A4 and on Letter, and
//! nothing of what belongs to the screen.

use crate::app::{EXAMPLE, steps, to_tank};
use crate::harness::{Page, Paper, browse};

async fn is_printed(page: &Page, present: &[String], absent: &[&str], most: usize) {
    for paper in [Paper::A4, Paper::Letter] {
        let printed = page.print(paper).await;
        let (pages, text) = (printed.pages.len(), printed.text());
        assert!((1..=most).contains(&pages), "{pages} pages on {paper:?}");
        for words in present {
            assert!(text.contains(words), "{words:?} is not on {paper:?}:\n{text}");
        }
        for words in absent {
            assert!(!text.contains(words), "{words:?} is on {paper:?}:\n{text}");
        }
    }
}

#[test]
fn the_fill_is_printed() {
    browse(async |page| {
        page.open("").await;
        page.click("button", EXAMPLE).await;
        page.sees("Makes E").await;
        let words = [
            "Fill: ",
            "Invented example",
            "nozzle clicks off",
            "Which calibration may be selected then",
            "confirm first",
            "Stoichiometric AFR",
            "Fuels on offer as given",
            "Fuel vapour burns",
            "rated for it",
            "The author of your calibration",
            "Sources",
        ];
        let mut words: Vec<String> = words.map(str::to_owned).into();
        // Each step as on the screen.
        for step in steps(page).await {
            let (fuel, volume) = step.split_once(": ").expect("a fuel and its volume");
            words.push(format!("{volume} {fuel}").replace('\u{202f}', " "));
        }
        is_printed(page, &words, &["Enter what went in", "Record as planned", "On offer here"], 2)
            .await;
    });
}

#[test]
fn the_tank_and_its_log_are_printed() {
    browse(async |page| {
        page.open("").await;
        page.click("button", EXAMPLE).await;
        to_tank(page).await;
        let words = [
            "In the tank: ",
            "Invented example",
            "As of ",
            "About E16",
            "Possible at all",
            "do not select",
            "All entries, the latest first",
            "Tube test",
            "Jutland",
            "no full load on a stronger calibration",
            "Sources",
        ];
        let words = words.map(str::to_owned);
        is_printed(page, &words, &["Change", "Add to the log", "As a table"], 3).await;
    });
}
