//! Without a mouse.

use serde_json::json;

use crate::app;
use crate::harness::{Key, Page, browse};

#[test]
fn the_keyboard_alone_leads_from_the_first_start_to_a_plan() {
    browse(async |page| {
        page.open("").await;
        page.tab_to("button", app::OWN_CAR).await;
        seen(page).await;
        page.press(Key::Enter).await;
        page.sees(app::SOMETHING_MISSING).await;

        page.tab_to("link", "Car").await;
        seen(page).await;
        page.press(Key::Enter).await;
        page.tab_to("textbox", app::CAPACITY).await;
        seen(page).await;
        page.press("60").await;
        page.tab_back_to("link", "Fill").await;
        page.press(Key::Enter).await;

        page.tab_to("textbox", app::LEVEL).await;
        page.press("1/4").await;
        page.tab_to("radio", "By the gauge").await;
        seen(page).await;
        page.press(Key::Down).await;
        page.becomes("Counted since full".to_owned(), async || page.focused().await.name).await;
        page.press(Key::Up).await;
        page.tab_to("textbox", app::TANK_SHARE).await;
        page.press("10").await;
        for (number, fuel) in [app::E85, app::PETROL].into_iter().enumerate() {
            page.tab_to("button", app::ADD_FUEL).await;
            seen(page).await;
            page.press(" ").await;
            let new = format!("Fuel {}", number + 1);
            page.within("group", &new).field(app::SHARE).await;
            // The new fuel's first field has the focus.
            page.becomes(app::SHARE.to_owned(), async || page.focused().await.name).await;
            page.press(fuel.share).await;
        }
        page.tab_to("textbox", app::AIM).await;
        page.press("E30").await;
        page.becomes(vec!["Fuel 1: 16.0 L".to_owned(), "Fuel 2: 29.0 L".to_owned()], async || {
            app::steps(page).await
        })
        .await;

        page.tab_to("button", &format!("{}: Fuel 1", app::AS_PLANNED)).await;
        seen(page).await;
        page.press(Key::Enter).await;
        app::done(page, 1).await;
        page.tab_to(app::OPENER, app::WORKINGS).await;
        seen(page).await;
        page.press(Key::Enter).await;
        page.sees("Orders of pouring").await;
    });
}

#[test]
fn on_a_phone_no_bar_hides_what_has_the_focus() {
    browse(async |page| {
        page.open("").await;
        page.click("button", app::EXAMPLE).await;
        page.sees("Makes E30").await;
        page.viewport(360, 740).await;
        page.tab_to("link", "Car").await;
        let mut stops = 0;
        while page.focused().await.name != app::WORKINGS {
            page.press(Key::Tab).await;
            seen(page).await;
            stops += 1;
            assert!(stops < 100, "Tab does not lead to the end of the page");
        }
    });
}

/// Fails unless what has the focus shows it and can be seen.
async fn seen(page: &Page) {
    const LOOK: &str = "
        const focused = document.activeElement;
        const shown = [focused, focused.parentElement, focused.closest('label')]
            .filter(element => element)
            .find(element => {
                const { outlineStyle, outlineWidth } = getComputedStyle(element);
                return outlineStyle !== 'none' && parseFloat(outlineWidth) >= 2;
            });
        if (!shown) return 'no outline: ' + focused.outerHTML;
        const { left, top, right, bottom } = shown.getBoundingClientRect();
        const there = document.elementFromPoint((left + right) / 2, (top + bottom) / 2);
        if (!there || !(shown.contains(there) || there.contains(shown)))
            return 'hidden by ' + (there?.outerHTML ?? 'the edge') + ': ' + shown.outerHTML;
        return 'seen';";
    assert_eq!(page.script(LOOK, vec![]).await, json!("seen"));
}
