//! What is missing or wrong is counted in one place of each view, with a way to each field.

use serde_json::{Value, json};

use crate::app;
use crate::harness::{Key, Page, browse};
use crate::states::State;

/// What the summary in sight says and names: its heading, and of each link the text and
/// the id that it leads to.
const READ: &str = "
    const summary = [...document.querySelectorAll('[role=group]')]
        .filter(it => it.checkVisibility())
        .find(it => /(is|are) wrong|[Ss]till to fill in/.test(it.querySelector(':scope > h3')?.innerText ?? ''));
    return summary && {
        title: summary.querySelector('h3').innerText,
        links: [...summary.querySelectorAll('a')]
            .map(it => [it.innerText, it.hash.split('/').slice(2).join('/')]),
        has_focus: summary === document.activeElement,
    };";

/// Presses one of its links by key, if it is there.
const PRESS: &str = "
    const link = document.querySelectorAll('[id$=to-mend] a')[arguments[0]];
    link?.focus();
    link?.click();
    return !!link;";

#[test]
fn each_view_counts_what_is_wrong_and_leads_to_it() {
    use State::{CarWrong, FillWrong, TankContentsWrong, TripWrong};
    browse(async |page| {
        for (state, lead) in [
            (FillWrong, "Not updated: "),
            (TankContentsWrong, "Not kept yet: "),
            (TripWrong, "Not updated: "),
            (CarWrong, ""),
        ] {
            state.reach(page).await;
            let wrong = wrong_fields(page).await;
            let links = summary(page, &title(lead, wrong.len())).await;
            // What is wrong comes first; what is still to be filled in is no fault.
            let named = links.iter().take(wrong.len());
            let mut named: Vec<String> = named.map(|(_, id)| id.clone()).collect();
            named.sort();
            assert_eq!(named, wrong, "{state:?}");
        }
    });
}

#[test]
fn each_link_leads_to_what_it_names() {
    use State::{
        CarEmpty, CarWrong, FillMissing, FillWrong, HardwareBegun, HardwareWrong,
        TankContentsWrong, TankFillWrong, TankTubeTestWrong, TripBegun, TripWrong,
    };
    browse(async |page| {
        for state in [
            FillMissing,
            FillWrong,
            TankFillWrong,
            TankTubeTestWrong,
            TankContentsWrong,
            HardwareBegun,
            HardwareWrong,
            TripBegun,
            TripWrong,
            CarEmpty,
            CarWrong,
        ] {
            state.reach(page).await;
            let view = page.hash().await;
            page.until("a summary", async || page.script(READ, vec![]).await != Value::Null).await;
            let links = links(&page.script(READ, vec![]).await);
            for (at, (words, id)) in links.iter().enumerate() {
                // Those before it may have led to another view.
                page.script("location.hash = arguments[0]", vec![json!(view)]).await;
                page.until("the link", async || page.script(PRESS, vec![json!(at)]).await == true)
                    .await;
                leads_to(page, id, words).await;
            }
        }
    });
}

#[test]
fn the_first_of_many_are_named_and_the_rest_come_up() {
    browse(async |page| {
        State::HardwareWrong.reach(page).await;
        let read = page.script(READ, vec![]).await;
        let heading = read["title"].as_str().expect("a heading");
        let all = heading.strip_prefix("Not updated: ").expect("that the answer is an old one");
        let all = app::number(all);
        assert!(links(&read).len() < 9, "{read}");
        page.type_in("Driveline loss, of crank power", "12").await;
        page.becomes(json!(all - 1.0), async || {
            let title = page.script(READ, vec![]).await["title"].clone();
            let title = title.as_str().and_then(|it| it.strip_prefix("Not updated: "));
            json!(app::number(title.unwrap_or_default()))
        })
        .await;
    });
}

#[test]
fn an_entry_that_cannot_be_kept_says_so_at_once_and_lets_go_when_mended() {
    browse(async |page| {
        State::Tank.reach(page).await;
        app::add(page, "Sensor reading").await;
        page.type_in("It shows", "170 Hz").await;
        assert_eq!(page.script(READ, vec![]).await, Value::Null, "nobody tried to keep it");
        app::keep(page).await;
        // The summary has the focus, so it is read, and Tab leads to what it names.
        page.until("the summary to have the focus", async || {
            page.script(READ, vec![]).await["has_focus"] == true
        })
        .await;
        page.tab().await;
        page.press(Key::Enter).await;
        page.until("the field to have the focus", async || page.focused().await.name == "It shows")
            .await;
        page.press(Key::Control + "a").await;
        page.press("62 Hz").await;
        page.becomes(Value::Null, async || page.script(READ, vec![]).await).await;
    });
}

/// "Not updated: 2 entries are wrong"
fn title(lead: &str, wrong: usize) -> String {
    match wrong {
        0 => format!("{lead}Still to fill in"),
        1 => format!("{lead}1 entry is wrong"),
        _ => format!("{lead}{wrong} entries are wrong"),
    }
}

/// Waits for a summary whose heading begins so; its links, each with where it leads.
async fn summary(page: &Page, title: &str) -> Vec<(String, String)> {
    page.until(title, async || {
        let heading = page.script(READ, vec![]).await["title"].clone();
        heading.as_str().is_some_and(|it| it.starts_with(title))
    })
    .await;
    links(&page.script(READ, vec![]).await)
}

fn links(read: &Value) -> Vec<(String, String)> {
    let text = |it: &Value| it.as_str().expect("a text").to_owned();
    let links = read["links"].as_array().expect("links");
    links.iter().map(|it| (text(&it[0]), text(&it[1]))).collect()
}

/// The ids of the fields that say that they are wrong, sorted.
async fn wrong_fields(page: &Page) -> Vec<String> {
    const WRONG: &str =
        "return [...document.querySelectorAll('[aria-invalid=true]')].map(it => it.id).sort()";
    let found = page.script(WRONG, vec![]).await;
    let found = found.as_array().expect("ids");
    found.iter().map(|it| it.as_str().expect("an id").to_owned()).collect()
}

/// Waits until what has this id has the focus, begins in sight, and says the same.
async fn leads_to(page: &Page, id: &str, words: &str) {
    const LOOK: &str = "
        const field = document.activeElement;
        const { top } = field.getBoundingClientRect();
        const below = document.getElementById(field.getAttribute('aria-describedby'));
        const said = (below ?? field).innerText;
        return [field.id, top >= 0 && top < innerHeight, said.includes(arguments[0]) || said];";
    let look = async || page.script(LOOK, vec![json!(words)]).await;
    page.becomes(json!([id, true, true]), look).await;
}
