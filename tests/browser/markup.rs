//! The markup is right, as it is built and as it stands in every view.

use std::collections::BTreeMap;
use std::fs;

use crate::harness::{Server, browse, fresh_path, wrong_markup};
use crate::states::State;

#[test]
fn the_markup_of_every_state_is_valid() {
    browse(async |page| {
        let directory = fresh_path("markup");
        fs::create_dir_all(&directory).expect("a directory for the pages");
        let keep = |name: &str, page: &str| {
            fs::write(directory.join(format!("{name}.html")), page).expect("a page to check");
        };
        let built = fs::read_to_string(Server::build().join("index.html")).expect("the built page");
        keep("as-built", &built);
        for state in State::ALL {
            state.reach(page).await;
            keep(&state.name(), &page.markup().await);
        }
        // What is wrong with all of them is told once.
        let mut wrong: BTreeMap<String, Vec<String>> = BTreeMap::new();
        for message in wrong_markup(&directory) {
            let (name, what) = message.split_once(": ").expect("a page and what is wrong with it");
            wrong.entry(what.to_owned()).or_default().push(name.to_owned());
        }
        assert!(wrong.is_empty(), "{} things are wrong: {wrong:#?}", wrong.len());
    });
}

#[test]
fn wrong_markup_is_noticed() {
    let directory = fresh_path("wrong-markup");
    fs::create_dir_all(&directory).expect("a directory for the page");
    let page = "<!DOCTYPE html><html lang=en><title>Wrong</title><p><img src=x></p></html>";
    fs::write(directory.join("wrong.html"), page).expect("a page to check");
    let wrong = wrong_markup(&directory);
    // The text that an image needs beside it: HTML, section 4.8.3.
    assert!(wrong.iter().any(|it| it.contains("alt")), "{wrong:?}");
}
