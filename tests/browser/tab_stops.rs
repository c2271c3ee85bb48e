//! Every stop of the Tab key in every state: it can be seen, shows that it has the focus,
//! has a name, and comes in the order of the page.

use serde_json::{Value, json};

use crate::harness::{Page, browse};
use crate::states::State;

/// More stops than any view has.
const TOO_MANY: usize = 600;

#[test]
fn on_a_phone_each_stop_is_in_sight() {
    use State::{
        Car, CarWrong, Fill, FillMissing, FillRecorded, FillWrong, Hardware, HardwareBegun,
        Methods, Tank, TankFillWrong, Trip, TripBegun, Welcome,
    };
    let states = [
        Welcome,
        FillMissing,
        Fill,
        FillWrong,
        FillRecorded,
        Tank,
        TankFillWrong,
        HardwareBegun,
        Hardware,
        TripBegun,
        Trip,
        Car,
        CarWrong,
        Methods,
    ];
    walk_through(&states, (360, 740));
}

#[test]
fn at_a_desk_each_stop_is_in_sight() {
    use State::{CarImport, FillOpen, FillWrong, HardwareOpen, Tank, TripWrong, Welcome};
    walk_through(
        &[Welcome, FillOpen, FillWrong, Tank, HardwareOpen, TripWrong, CarImport],
        (1280, 800),
    );
}

/// A desk's window of 1280 by 1024, enlarged fourfold.
#[test]
fn enlarged_fourfold_each_stop_is_in_sight() {
    use State::{CarWrong, FillWrong, HardwareWrong, TankFillWrong, TripWrong};
    walk_through(&[FillWrong, TankFillWrong, HardwareWrong, TripWrong, CarWrong], (320, 256));
}

#[test]
fn a_stop_without_outline_or_under_a_bar_is_noticed() {
    browse(async |page| {
        State::Welcome.reach(page).await;
        let bare = "document.querySelector('.button').style.outline = 'none'";
        page.script(bare, vec![]).await;
        assert!(walk(page).await.iter().any(|it| it.contains("no outline")));
        let bar = "
            const bar = document.body.appendChild(document.createElement('p'));
            bar.style = 'position: fixed; inset: 0; z-index: 9; background: Canvas; margin: 0';";
        page.script(bar, vec![]).await;
        assert!(walk(page).await.iter().any(|it| it.contains("hidden by <p")));
        page.script("document.querySelector('.button').textContent = ''", vec![]).await;
        assert!(walk(page).await.iter().any(|it| it.contains("no name")));
    });
}

fn walk_through(states: &[State], (width, height): (u32, u32)) {
    browse(async |page| {
        let mut wrong = Vec::new();
        for state in states {
            state.reach(page).await;
            page.viewport(width, height).await;
            let of_state = walk(page).await;
            wrong.extend(of_state.into_iter().map(|it| format!("{state:?}: {it}")));
        }
        assert!(wrong.is_empty(), "{} stops are not right:\n{}", wrong.len(), wrong.join("\n"));
    });
}

/// Goes by Tab from the beginning of the page to its end, and tells what is wrong.
async fn walk(page: &Page) -> Vec<String> {
    const BEGIN: &str = "
        document.body.tabIndex = -1;
        document.body.focus();
        document.body.removeAttribute('tabindex');
        window.passed = [];";
    const MISSED: &str = "
        const passed = new Set(window.passed);
        const groups = new Set(window.passed.filter(it => it.type === 'radio').map(it => it.name));
        delete window.passed;
        const stops = 'a[href], button, input, select, textarea, summary, [tabindex=\"0\"]';
        return [...document.querySelectorAll(stops)]
            .filter(it => it.checkVisibility({ visibilityProperty: true }))
            .filter(it => !passed.has(it) && !(it.type === 'radio' && groups.has(it.name)))
            .map(it => 'not reached: ' + it.outerHTML.slice(0, 160));";
    page.script(BEGIN, vec![]).await;
    let mut wrong = Vec::new();
    for stop in 0.. {
        page.tab().await;
        let found = look(page).await;
        if found == json!("end") {
            break;
        }
        assert!(stop < TOO_MANY, "Tab does not lead to the end of the page");
        wrong.extend(texts(&found));
        if page.focused().await.name.is_empty() {
            let which = "return document.activeElement.outerHTML.slice(0, 160)";
            wrong.push(format!("no name: {}", page.script(which, vec![]).await));
        }
    }
    wrong.extend(texts(&page.script(MISSED, vec![]).await));
    wrong
}

/// What is wrong with the stop, or that the page has come to its end.
async fn look(page: &Page) -> Value {
    const LOOK: &str = "
        const focused = document.activeElement;
        const before = window.passed.at(-1);
        if (!focused || focused === document.body || focused === window.passed[0]) return 'end';
        // The parts of a date are stops of one field.
        if (focused === before) return [];
        const wrong = [];
        const text = element => element.outerHTML.slice(0, 160);
        const { DOCUMENT_POSITION_FOLLOWING } = Node;
        if (before && !(before.compareDocumentPosition(focused) & DOCUMENT_POSITION_FOLLOWING))
            wrong.push('out of order: ' + text(focused));
        window.passed.push(focused);

        const shown = [focused, focused.parentElement, focused.closest('label')]
            .filter(element => element)
            .find(element => {
                const { outlineStyle, outlineWidth } = getComputedStyle(element);
                return outlineStyle !== 'none' && parseFloat(outlineWidth) >= 2;
            });
        if (!shown) wrong.push('no outline: ' + text(focused));

        const seen = shown ?? focused;
        const { left, top, right, bottom } = seen.getBoundingClientRect();
        const middle = (left + right) / 2;
        // Of a high one, such as a table to type or a list to scroll, the line that is
        // worked on is in sight, not all of it.
        const inset = Math.min(4, (bottom - top) / 2);
        const at = bottom - top < Math.min(160, innerHeight / 3)
            ? [top + inset, (top + bottom) / 2, bottom - inset]
            : [Math.max(top, 0) / 2 + Math.min(bottom, innerHeight) / 2];
        for (const y of at) {
            const there = document.elementFromPoint(Math.min(Math.max(middle, 0), innerWidth - 1), y);
            if (!there) wrong.push(`beyond the edge, at ${y}: ` + text(seen));
            else if (!seen.contains(there) && !there.contains(seen))
                wrong.push(`hidden by ${text(there)}, at ${y}: ` + text(seen));
        }
        return wrong;";
    page.script(LOOK, vec![]).await
}

fn texts(found: &Value) -> Vec<String> {
    let found = found.as_array().expect("what is wrong");
    found.iter().map(|it| it.as_str().expect("a text").to_owned()).collect()
}
