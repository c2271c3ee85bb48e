//! The route: what to buy where, what is lost when a stop has no E85, and on to Fill.

use fillwright::document::Document;
use fillwright::document::TripStopForm;
use fillwright::quantity::notation::Entry;

use crate::app::{self, EXAMPLE, OPENER, PRICE, SHARE, start_own_car, texts, to_car};
use crate::harness::{Key, Page, Paper, browse};
use crate::storage::REPLACE;

pub(crate) const SETTLED: &str = "The plan is settled.";

/// What to buy next.
async fn next(page: &Page) -> String {
    texts(page, "#trip-next .outcome").await.join(" ")
}

/// A figure of the plan.
async fn figure(page: &Page, what: &str) -> String {
    let names = texts(page, "#trip-answer dt").await;
    let values = texts(page, "#trip-answer dd").await;
    let found = names.iter().zip(values).find(|(name, _)| *name == what);
    found.unwrap_or_else(|| panic!("no {what} among {names:?}")).1
}

/// The cells of the row of a stop.
async fn passage(page: &Page, stop: &str) -> Vec<String> {
    const CELLS: &str = "
        const rows = [...document.querySelectorAll('#passages tbody tr')];
        const row = rows.find(row => row.cells[0].innerText === arguments[0]);
        return row ? [...row.cells].map(cell => cell.innerText.replace(/\\s+/g, ' ')) : [];";
    let cells = page.script(CELLS, vec![stop.into()]).await;
    let cells = cells.as_array().expect("cells");
    cells.iter().map(|cell| cell.as_str().expect("text").to_owned()).collect()
}

/// Opens the card of a stop.
async fn open_stop(page: &Page, place: &str) {
    let openers = page.all(OPENER).await;
    let opener = openers.iter().find(|it| it.name.starts_with(place));
    let name = opener.unwrap_or_else(|| panic!("no {place} in {openers:?}")).name.clone();
    page.click(OPENER, &name).await;
}

/// The route of the example, planned.
pub(crate) async fn example(page: &Page) {
    page.open("").await;
    page.click("button", EXAMPLE).await;
    page.click("link", "Trip").await;
    page.sees(SETTLED).await;
}

/// Adds a stop with one fuel of E10, and the way after it.
async fn stop(page: &Page, button: &str, title: &str, place: &str, price: &str, way: &str) {
    page.click("button", button).await;
    let stop = page.within("group", title);
    stop.type_in("Place", place).await;
    let stop = page.within("group", place);
    stop.click("button", "Add").await;
    let fuel = page.within("group", "Fuel 1");
    fuel.type_in(SHARE, "10").await;
    fuel.type_in(PRICE, price).await;
    fuel.click(OPENER, app::MORE_OF_FUEL).await;
    fuel.type_in(app::NAME, &format!("Petrol of {place}")).await;
    page.within("group", place).type_in("Distance", way).await;
    page.press(Key::Tab).await;
}

#[test]
fn a_route_is_built_and_planned() {
    browse(async |page| {
        start_own_car(page).await;
        to_car(page).await;
        page.type_in(app::CAPACITY, "60").await;
        page.type_in(app::RESERVE, "5").await;
        page.type_in(app::CONSUMPTION, "10").await;
        page.type_in(app::CURRENCY, "kr").await;
        page.press(Key::Tab).await;
        page.click("link", "Trip").await;
        stop(page, "Add the start", "Home", "Home", "20", "400").await;
        page.sees(app::SOMETHING_MISSING).await;
        page.type_in("Level", "20").await;
        page.type_in("Ethanol in it", "10").await;
        page.press(Key::Tab).await;
        stop(page, "Add a stop", "Stop 2", "Hill", "10", "200").await;
        page.sees(SETTLED).await;
        // All of it is E10 and the car takes 10 L for 100 km: 40 L and the reserve of
        // 5 from 20 leave 25 to buy where it is dear, and 20 where it is cheap.
        page.becomes("At Home: 25.0 L of Petrol of Home".to_owned(), async || next(page).await)
            .await;
        page.sees("Then at Hill: 20.0 L of Petrol of Hill.").await;
        assert_eq!(figure(page, "Cost").await, "700.00 kr");
        assert_eq!(figure(page, "Stops to buy at").await, "2");
        page.sees("above the best possible").await;
        let hill = passage(page, "Hill").await;
        assert!(hill.iter().any(|cell| cell.starts_with("25.0 L")), "{hill:?}");

        // Half the price at home: as much as the whole way needs.
        page.within("group", "Petrol of Home").type_in(PRICE, "5").await;
        page.press(Key::Tab).await;
        page.becomes("At Home: 40.0 L of Petrol of Home".to_owned(), async || next(page).await)
            .await;
        // Nothing that was typed is lost.
        page.reload().await;
        page.sees(SETTLED).await;
        assert_eq!(next(page).await, "At Home: 40.0 L of Petrol of Home");
    });
}

/// 55 L, no reserve typed, and E10 alone at three stations 350, 400 and 300 km apart: at
/// 8 L for 100 km the longest leg takes 32 L, so it can be driven. 84 L less the 20 L in the
/// tank are to be bought.
#[test]
fn a_plain_route_without_a_reserve_is_not_called_impossible() {
    browse(async |page| {
        start_own_car(page).await;
        to_car(page).await;
        page.type_in(app::CAPACITY, "55").await;
        page.type_in(app::CONSUMPTION, "8").await;
        page.press(Key::Tab).await;
        page.click("link", "Trip").await;
        stop(page, "Add the start", "Home", "Home", "2", "350").await;
        page.type_in("Level", "20").await;
        page.type_in("Ethanol in it", "10").await;
        page.press(Key::Tab).await;
        stop(page, "Add a stop", "Stop 2", "Hill", "2", "400").await;
        stop(page, "Add a stop", "Stop 3", "Lake", "2", "300").await;
        page.sees(SETTLED).await;
        let cost = app::number(&figure(page, "Cost").await);
        assert!((cost - 2.0 * (84.0 - 20.0)).abs() <= 1.0, "{cost}");
        assert!(!page.visible_text().await.contains("Impossible"));
    });
}

#[test]
fn without_e85_the_plan_is_another_or_the_stop_and_the_rule_are_named() {
    browse(async |page| {
        example(page).await;
        assert!(next(page).await.contains("of E85"));
        page.click("button", "Hold this plan").await;
        open_stop(page, "Lüneburg Heath").await;
        let of_e85 = page.nth("checkbox", "Not to be had", 0).await;
        of_e85.click().await.expect("a box to tick");
        page.sees("There is no plan, and that is proved.").await;
        assert_eq!(next(page).await, "Impossible");
        let why = texts(page, "#trip-impossible li").await;
        assert!(why[0].starts_with("Within these rules nothing gets from "), "{why:?}");
        assert!(why.iter().any(|line| line.contains("window")), "{why:?}");
        page.sees("No plan is possible now.").await;

        // Without the mid blend on the last two ways there is a plan again.
        for place in ["Lüneburg Heath", "Harz"] {
            if place == "Harz" {
                open_stop(page, place).await;
            }
            page.within("group", place).click("checkbox", "Mid blend").await;
        }
        page.sees(SETTLED).await;
        let held = texts(page, "#held tbody tr").await;
        let cost = held.iter().find(|row| row.starts_with("Cost")).expect("the costs");
        let figures: Vec<&str> = cost.split(" kr").collect();
        assert_ne!(figures[0].trim_start_matches("Cost").trim(), figures[1].trim(), "{cost}");
        let turns = texts(page, "#held li").await;
        assert!(turns.iter().any(|it| it.contains("Mid blend is lost")), "{turns:?}");

        page.click("button", "Let it go").await;
        page.until("the held plan to go", async || texts(page, "#held").await.is_empty()).await;
    });
}

#[test]
fn from_a_stop_the_fill_goes_on_with_its_fuels_and_the_plan_with_what_was_put_in() {
    browse(async |page| {
        example(page).await;
        let planned = passage(page, "Home").await[2].clone();
        let share = planned.split(' ').next().and_then(|it| it.strip_prefix('E'));
        let share: f64 = share.and_then(|it| it.parse().ok()).expect("a share");
        open_stop(page, "Home").await;
        page.click("button", "I am here: Home").await;
        page.sees("Makes E").await;
        // The pump's step of half a litre moves it by less than a point.
        let makes = app::outcome(page).await;
        let makes = app::number(makes.strip_prefix("Makes E").expect("a blend"));
        assert!((makes - share).abs() <= 1.0, "{makes} for {share}");
        let steps = app::steps(page).await.join(" ");
        assert!(steps.contains("E85") && steps.contains("95 E10"), "{steps}");
        page.click("button", app::RECORD_AS_PLANNED).await;
        page.sees("See Tank.").await;

        page.click("link", "Trip").await;
        page.sees("You are here, and filled up").await;
        page.sees(SETTLED).await;
        // What was to be bought here is in the tank now.
        page.becomes(true, async || next(page).await.starts_with("At North Jutland")).await;
        page.click("button", "From the start again").await;
        page.until("the start", async || !page.visible_text().await.contains("You are here")).await;
    });
}

/// A route that takes long to settle: twelve stops with fees and three fuels, to hold
/// whatever is true, with nothing to choose between the stops.
pub(crate) fn long_route() -> String {
    let mut document = Document::demo();
    let car = &mut document.here;
    let like = car.route.stops[3].clone();
    car.route.stops.clear();
    for number in 0..12_u32 {
        let id = car.next_id();
        let mut fuels = like.fuels.clone();
        for fuel in &mut fuels {
            fuel.id = car.next_id();
        }
        fuels[0].price = Entry::metric(&format!("14.{}", 90 - 7 * (number % 5)));
        fuels[1].price = Entry::metric(&format!("18.{}", 90 - 11 * (number % 4)));
        car.route.stops.push(TripStopForm {
            id,
            place: format!("Place {number}"),
            fuels,
            fee: "25".into(),
            distance: Entry::metric(&format!("{}", 120 + 37 * (number % 3))),
            ..like.clone()
        });
    }
    document.to_json().expect("a document")
}

#[test]
fn a_run_is_cancelled_and_a_newer_edit_takes_its_place() {
    browse(async |page| {
        page.open("").await;
        page.click("button", EXAMPLE).await;
        to_car(page).await;
        page.give_file(long_route().as_bytes()).await;
        page.click("button", REPLACE).await;
        page.click("link", "Trip").await;
        page.sees("The search for a better one goes on.").await;
        page.click("button", "Cancel").await;
        page.sees("Stopped.").await;
        assert!(next(page).await.starts_with("At Place"), "{}", next(page).await);
        // An edit starts anew, and the plan is one for what was typed last.
        for level in ["31", "32", "33"] {
            page.type_in("Level at the end", level).await;
        }
        page.press(Key::Tab).await;
        page.sees("A plan is found.").await;
        let last = passage(page, "Place 11").await;
        let end = last.last().expect("a level").split(' ').next().expect("a number").to_owned();
        let end: f64 = end.parse().expect("a number");
        assert!(end > 32.9, "{end} L at the end, though 33 are asked for");
        page.click("button", "Cancel").await;
        page.sees("Stopped.").await;
        page.click("button", "Plan again").await;
        page.sees("The search for a better one goes on.").await;
    });
}

/// The short answer in the bar at the foot, which a wide window hides.
async fn bar(page: &Page) -> String {
    let text = page.script("return document.querySelector('.short').textContent", vec![]).await;
    text.as_str().expect("text").split_whitespace().collect::<Vec<_>>().join(" ")
}

/// Keeps a record of what stands on the page whenever something changes: how the search
/// stands, the bar, what to buy, and the first stop of the plan.
async fn record(page: &Page) {
    const RECORD: &str = "
        const text = query => document.querySelector(query)?.textContent.trim() ?? '';
        const look = () => {
            const now = ['#trip-standing', '.short', '#trip-next .outcome',
                '#passages tbody tr th'].map(text);
            const last = window.seen[window.seen.length - 1];
            if (now[0] && JSON.stringify(last) !== JSON.stringify(now)) window.seen.push(now);
        };
        window.seen = [];
        window.watch?.disconnect();
        window.watch = new MutationObserver(look);
        window.watch.observe(document.body,
            { childList: true, characterData: true, subtree: true });
        look();";
    page.script(RECORD, vec![]).await;
}

/// The record so far.
async fn recorded(page: &Page) -> Vec<[String; 4]> {
    let seen = page.script("return window.seen", vec![]).await;
    serde_json::from_value(seen).expect("four texts each")
}

#[test]
fn from_here_on_the_plan_is_another_and_the_old_one_is_never_settled() {
    browse(async |page| {
        example(page).await;
        let places = texts(page, "#passages tbody th").await;
        let third = places[2].clone();
        open_stop(page, &third).await;
        page.click("button", &format!("I am here: {third}")).await;
        page.until("the fill", async || page.hash().await.starts_with("#/fill")).await;
        record(page).await;
        page.click("link", "Trip").await;
        // By the log there is too little ethanol in the tank for the mid blend from there on,
        // and no E85 is sold: that is the answer, and not the plan of before.
        page.sees("There is no plan, and that is proved.").await;
        let seen = recorded(page).await;
        for [standing, bar, next, first] in &seen {
            if *first == places[0] {
                assert_eq!(
                    standing,
                    "This plan is for the route before your change. Planning anew…"
                );
                assert!(bar.starts_with("Plan before your change. Planning anew…"), "{bar}");
            } else if standing == SETTLED {
                assert!(bar.starts_with(next.as_str()), "{bar} for {next}");
            }
        }
        assert!(seen.iter().any(|it| it[0].contains("Planning anew")), "{seen:?}");
    });
}

#[test]
fn a_search_that_was_left_goes_on_and_an_edit_is_told_at_once() {
    browse(async |page| {
        page.open("").await;
        page.click("button", EXAMPLE).await;
        to_car(page).await;
        page.give_file(long_route().as_bytes()).await;
        page.click("button", REPLACE).await;
        page.click("link", "Trip").await;
        page.sees("The search for a better one goes on.").await;
        page.click("link", "Fill").await;
        page.until("the fill", async || page.hash().await.starts_with("#/fill")).await;
        record(page).await;
        page.click("link", "Trip").await;
        page.sees("The search for a better one goes on.").await;
        let seen = recorded(page).await;
        assert!(seen.iter().all(|it| !it[0].starts_with("Stopped")), "{seen:?}");

        // The first word on an edit is that the plan is not one for it.
        record(page).await;
        page.type_in("Level at the end", "31").await;
        page.press(Key::Tab).await;
        page.until("the edit to be told", async || {
            recorded(page).await.iter().any(|it| it[0].contains("Planning anew"))
        })
        .await;
        let seen = recorded(page).await;
        let at = seen.iter().position(|it| it[0].contains("Planning anew")).expect("an edit");
        assert!(seen[at][1].contains("Planning anew"), "{seen:?}");
        page.sees("The search for a better one goes on.").await;

        // Who stops it finds it stopped.
        page.click("button", "Cancel").await;
        page.sees("Stopped.").await;
        page.click("link", "Fill").await;
        page.until("the fill", async || page.hash().await.starts_with("#/fill")).await;
        page.click("link", "Trip").await;
        page.sees("Stopped.").await;
        page.sees("Plan again").await;
    });
}

#[test]
fn a_route_that_cannot_be_read_leaves_its_plan_marked_as_not_updated() {
    browse(async |page| {
        example(page).await;
        let planned = next(page).await;
        assert!(bar(page).await.starts_with(&planned), "{}", bar(page).await);
        page.type_in("Level at the end", "much").await;
        page.press(Key::Tab).await;
        page.sees("Not updated: this plan is for the route before your change.").await;
        assert!(bar(page).await.starts_with("Not updated"), "{}", bar(page).await);
        assert!(!page.visible_text().await.contains(SETTLED));
        page.type_in("Level at the end", "").await;
        page.press(Key::Tab).await;
        page.sees(SETTLED).await;
        page.becomes(planned.clone(), async || next(page).await).await;
        assert!(bar(page).await.starts_with(&planned), "{}", bar(page).await);
    });
}

#[test]
fn the_plan_is_printed() {
    browse(async |page| {
        example(page).await;
        for paper in [Paper::A4, Paper::Letter] {
            let printed = page.print(paper).await;
            let (pages, text) = (printed.pages.len(), printed.text());
            assert!((1..=4).contains(&pages), "{pages} pages on {paper:?}");
            for words in [
                "Trip: ",
                "Invented example",
                "Stop by stop",
                "North Jutland",
                "Lüneburg Heath",
                "of E85",
                "Mid blend",
                "above the best possible",
                "What the bands leave open",
                "What was reckoned with",
                "Ethanol share",
                "share before you select",
            ] {
                assert!(text.contains(words), "{words:?} is not on {paper:?}:\n{text}");
            }
            for words in ["Hold this plan", "Add a stop", "I am here", "Car Fill"] {
                assert!(!text.contains(words), "{words:?} is on {paper:?}:\n{text}");
            }
        }
    });
}
