//! A desk's window of 1280 by 1024 enlarged fourfold: 320 by 256 is left, and all has to
//! be there (WCAG 2.2, 1.4.10 and 2.4.11).

use serde_json::{Value, json};

use crate::harness::{Page, browse};
use crate::states::{State, open_everything};

const ENLARGED: (u32, u32) = (320, 256);

/// What is cut off at a side or lies beyond the edge of its box, of what is in sight. What
/// can be scrolled to by keys is there.
const CUT_OFF: &str = "
    const width = document.documentElement.clientWidth;
    const scrolls = element => {
        for (let at = element; at && at !== document.body; at = at.parentElement)
            if (/auto|scroll/.test(getComputedStyle(at).overflowX)) return at;
    };
    const seen = element => element.checkVisibility({ visibilityProperty: true, opacityProperty: true })
        && !element.closest('.visually-hidden, .skip');
    const wrong = [];
    const tell = (what, element) =>
        wrong.push(`${what}: ${(element.textContent || element.outerHTML).trim().slice(0, 80)}`);

    const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (texts.nextNode()) {
        const text = texts.currentNode;
        const element = text.parentElement;
        if (!text.data.trim() || !seen(element)) continue;
        const range = document.createRange();
        range.selectNodeContents(text);
        const beyond = [...range.getClientRects()]
            .some(({ left, right }) => left < -0.5 || right > width + 0.5);
        const box = beyond && scrolls(element);
        if (beyond && !(box && box.tabIndex >= 0)) tell('beyond the edge', element);
    }
    for (const element of document.querySelectorAll('main *, nav *, header *, footer *')) {
        if (!seen(element)) continue;
        const { overflowX, overflowY, textOverflow } = getComputedStyle(element);
        const cuts = [overflowX, overflowY].some(it => /hidden|clip/.test(it));
        const { scrollWidth, clientWidth, scrollHeight, clientHeight } = element;
        // A text that is longer than any field is moved in it by keys.
        if (element.readOnly) continue;
        const is_larger = scrollWidth > clientWidth + 1 || scrollHeight > clientHeight + 1;
        if (cuts && is_larger && !(element instanceof SVGElement)) tell('cut off', element);
        if (textOverflow === 'ellipsis') tell('shortened', element);
        const is_box = element.matches('button, summary, select, label, .control, .note, .card');
        if (is_box && clientWidth && scrollWidth > clientWidth + 1 && overflowX === 'visible')
            tell('sticks out of its box', element);
    }
    for (const text of document.querySelectorAll('svg text')) {
        if (!seen(text) || !text.textContent.trim()) continue;
        const inner = text.getBoundingClientRect();
        const outer = text.ownerSVGElement.getBoundingClientRect();
        if (inner.left < outer.left - 1 || inner.right > outer.right + 1)
            tell('beyond its picture', text);
    }
    return wrong;";

/// How much of the window what does not scroll with the page covers, at its beginning, in
/// its middle and at its end.
const COVERED: &str = "
    const root = document.documentElement;
    const fixed = [...document.querySelectorAll('body *')].filter(element =>
        /fixed|sticky/.test(getComputedStyle(element).position)
        && element.checkVisibility({ visibilityProperty: true }));
    return [0, 0.5, 1].map(at => {
        scrollTo({ top: at * (root.scrollHeight - innerHeight), behavior: 'instant' });
        const heights = fixed.map(element => {
            const { top, bottom } = element.getBoundingClientRect();
            return Math.max(0, Math.min(bottom, innerHeight) - Math.max(top, 0));
        });
        return heights.reduce((sum, height) => sum + height, 0) / innerHeight;
    });";

#[test]
fn enlarged_fourfold_the_first_start_is_all_there() {
    use State::{
        CarEmpty, FillMissing, HardwareBegun, HardwareEmpty, TankEmpty, TripBegun, TripEmpty,
        Welcome,
    };
    all_there(&[
        Welcome,
        FillMissing,
        TankEmpty,
        HardwareEmpty,
        HardwareBegun,
        TripEmpty,
        TripBegun,
        CarEmpty,
    ]);
}

#[test]
fn enlarged_fourfold_the_fill_and_the_tank_are_all_there() {
    use State::{
        FillImpossible, FillOpen, FillRecorded, FillWrong, TankContentsWrong, TankFillWrong,
        TankOpen, TankTubeTestWrong,
    };
    all_there(&[
        FillOpen,
        FillImpossible,
        FillWrong,
        FillRecorded,
        TankOpen,
        TankFillWrong,
        TankTubeTestWrong,
        TankContentsWrong,
    ]);
}

#[test]
fn enlarged_fourfold_the_hardware_and_the_trip_are_all_there() {
    use State::{HardwareOpen, HardwareWrong, TripOpen, TripWrong};
    all_there(&[HardwareOpen, HardwareWrong, TripOpen, TripWrong]);
}

#[test]
fn enlarged_fourfold_the_car_and_the_methods_are_all_there() {
    use State::{Car, CarImport, CarWrong, Methods, MethodsOpen};
    all_there(&[Car, CarWrong, CarImport, Methods, MethodsOpen]);
}

/// Another language takes more room. Two fifths are what is reckoned with for short texts
/// in English (W3C, "Text size in translation").
#[test]
fn in_a_longer_language_all_is_there() {
    const VIEWS: [State; 8] = [
        State::Welcome,
        State::FillMissing,
        State::Fill,
        State::Tank,
        State::Hardware,
        State::Trip,
        State::Car,
        State::Methods,
    ];
    browse(async |page| {
        let mut wrong = Vec::new();
        for state in VIEWS {
            page.speak("en-US").await;
            state.reach(page).await;
            page.speak("en-XA").await;
            page.reload().await;
            page.becomes(json!("en-XA"), async || page.script(SPOKEN, vec![]).await).await;
            open_everything(page).await;
            for size in [ENLARGED, (360, 740), (1280, 800)] {
                page.viewport(size.0, size.1).await;
                page.screenshot(&format!("{}-longer-{}", state.name(), size.0)).await;
                for found in [page.sticking_out().await, page.script(CUT_OFF, vec![]).await] {
                    let found = found.as_array().expect("a list");
                    wrong.extend(found.iter().map(|it| format!("{state:?} at {}: {it}", size.0)));
                }
            }
        }
        assert!(wrong.is_empty(), "not all is there:\n{}", wrong.join("\n"));
    });
}

/// The language of the page, once something is said in it.
const SPOKEN: &str = "return document.querySelector('main h2')?.innerText.includes('~') && document.documentElement.lang";

#[test]
fn what_is_cut_off_or_covered_is_noticed() {
    browse(async |page| {
        State::Fill.reach(page).await;
        page.viewport(ENLARGED.0, ENLARGED.1).await;
        assert_eq!(page.script(CUT_OFF, vec![]).await, json!([]));
        for (style, what) in [
            ("width: 2rem; overflow: hidden; white-space: nowrap", "cut off: "),
            ("margin-left: 20rem; width: 9rem", "beyond the edge: "),
        ] {
            let spoil = "document.querySelector('#put-in-title').style = arguments[0]";
            page.script(spoil, vec![json!(style)]).await;
            let found = page.script(CUT_OFF, vec![]).await;
            assert!(found.to_string().contains(what), "{found}");
        }
        let spoil = "document.querySelector('.tabs').style = 'position: fixed; height: 200px'";
        page.script(spoil, vec![]).await;
        assert!(covered(page).await > 0.5);
    });
}

fn all_there(states: &[State]) {
    browse(async |page| {
        let mut wrong = Vec::new();
        for state in states {
            state.reach(page).await;
            page.viewport(ENLARGED.0, ENLARGED.1).await;
            page.no_horizontal_scroll().await;
            page.screenshot(&format!("{}-enlarged", state.name())).await;
            let cut_off = page.script(CUT_OFF, vec![]).await;
            let cut_off = cut_off.as_array().expect("what is cut off");
            wrong.extend(cut_off.iter().map(|it| format!("{state:?}: {it}")));
            let covered = covered(page).await;
            // The answer in short, and no more than that.
            if covered > 0.25 {
                wrong.push(format!("{state:?}: bars cover {covered:.2} of the window"));
            }
        }
        assert!(wrong.is_empty(), "not all is there:\n{}", wrong.join("\n"));
    });
}

/// The largest part of the window that bars cover.
async fn covered(page: &Page) -> f64 {
    let parts = page.script(COVERED, vec![]).await;
    let parts = parts.as_array().expect("parts of the window");
    parts.iter().filter_map(Value::as_f64).fold(0.0, f64::max)
}
