//! The aim is the promise, and a full tank is a wish.

use crate::app::{self, Fuel, PETROL, quarter_full, start_own_car, to_car, to_fill};
use crate::hand_arithmetic;
use crate::harness::{Key, Page, browse};

/// E85 that holds just that, and nothing else on offer.
async fn only_e85(page: &Page, system: &str, capacity: &str, level: &str) {
    start_own_car(page).await;
    to_car(page).await;
    app::pick(page, system).await;
    page.type_in(app::CAPACITY, capacity).await;
    to_fill(page).await;
    page.type_in(app::LEVEL, level).await;
    page.type_in(app::TANK_SHARE, "10").await;
    app::offer(page, Fuel { may_be: "80-86", ron: "97", price: "", ..app::E85 }).await;
    page.type_in(app::AIM, "E30").await;
    page.press(Key::Tab).await;
}

/// The foot of a phone, once its words begin so.
async fn foot_begins(page: &Page, words: &str) -> (String, String) {
    page.until(words, async || app::foot(page).await.0.starts_with(words)).await;
    app::foot(page).await
}

/// 15 L of E10 in 60 L, and only E85 to be had: full would be E66, so the first sentence
/// says to stop at what makes E30. Who follows it gets that.
#[test]
fn a_full_tank_gives_way_to_the_aim() {
    let dose = 15.0 * (30.0 - 10.0) / (85.0 - 30.0);
    let shown = (dose * 2.0_f64).round() / 2.0;
    let full = hand_arithmetic::share(&[(15.0, 10.0), (45.0, 85.0)]);
    browse(async |page| {
        page.viewport(360, 740).await;
        only_e85(page, app::LITRES, "60", "15").await;
        page.sees("and stop").await;
        let said =
            format!("Put in {shown:.1} L of E85 and stop: E30. Full it would be E{full:.0}.");
        assert_eq!(app::instead(page).await, said);
        assert_eq!(app::plight(page).await, "");
        assert_eq!(app::steps(page).await, [format!("E85: {shown:.1} L")]);
        let (foot, look) = foot_begins(page, &format!("{shown:.1} L E85, then stop")).await;
        assert!(foot.ends_with("E30") && !look.contains("bad"), "{foot} {look}");
        // Followed to the letter, it is what was promised.
        let makes = hand_arithmetic::share(&[(15.0, 10.0), (shown, 85.0)]);
        assert!((makes - 30.0).abs() < 0.5);

        // Who wants to be full all the same is told what that is, first of all.
        page.click("button", "Fill up anyway").await;
        let (foot, look) = foot_begins(page, "Misses E30: 45.0 L E85").await;
        assert!(foot.ends_with(&format!("E{full:.0}")) && look.contains("bad"), "{foot} {look}");
        let plight = app::plight(page).await;
        let first = format!("Filled to 60.0 L it becomes E{full:.0}. For E30 stop at ");
        assert!(plight.starts_with(&first), "{plight}");
        assert!(app::outcome(page).await.starts_with("Closest: "));
        page.click("button", "Keep to the aim").await;
        foot_begins(page, &format!("{shown:.1} L E85, then stop")).await;
    });
}

/// The same in US gallons: 4 gal of E10 in 16.
#[test]
fn a_full_tank_gives_way_in_gallons_too() {
    let dose = 4.0 * (30.0 - 10.0) / (85.0 - 30.0);
    browse(async |page| {
        only_e85(page, app::US_GALLONS, "16", "4").await;
        page.sees("and stop").await;
        let said = app::instead(page).await;
        // The pump's step is half a litre, so the gallons may be off by half of that.
        let gallons = app::number(said.strip_prefix("Put in ").expect("what to put in"));
        assert!((gallons - dose).abs() <= 0.25 / hand_arithmetic::US_GALLON + 0.05, "{said}");
        assert!(said.contains(" gal of E85 and stop: E30. Full it would be E66."), "{said}");
    });
}

/// A can of 10 L of E85, and petrol: 15 L of E10 become E30 with all of it and 12.5 L of
/// petrol; full, the can is too small for E30.
#[test]
fn a_can_that_is_too_small_for_a_full_tank_still_makes_the_aim() {
    // (1.5 + 8.5 + 0.1 x) / (25 + x) = 0.3
    let petrol = (10.0 - 7.5) / (0.3 - 0.1);
    let full = hand_arithmetic::share(&[(50.0, 10.0), (10.0, 85.0)]);
    browse(async |page| {
        quarter_full(page).await;
        page.within("group", app::E85.name).type_in("At most", "10").await;
        page.press(Key::Tab).await;
        page.sees("and stop").await;
        assert_eq!(
            app::instead(page).await,
            format!(
                "Put in 10.0 L of E85, then {petrol:.1} L of Petrol and stop: E30. Full it would be E{full:.0}."
            )
        );
        assert_eq!(app::asides(page).await[1], "Then stop.");
        // All of the can is a wish as well: of 20 L, 16 make E30.
        let can = page.within("group", app::E85.name);
        can.type_in("At most", "20").await;
        can.click("checkbox", "Use all of that").await;
        page.sees("Use all of it anyway").await;
        let said = app::instead(page).await;
        assert!(said.starts_with("Put in 16.0 L of E85, then 29.0 L of Petrol"), "{said}");
        assert!(said.contains("With all 20.0 L of E85 it would be E"), "{said}");
    });
}

const CLICKED: &str = "The nozzle clicked off: the tank is full";

/// One step after the other: the next one alone can be confirmed, each is taken back where
/// it stands, and with what went in goes the tick that the nozzle clicked off.
#[test]
fn one_step_at_a_time_and_each_taken_back_in_place() {
    browse(async |page| {
        quarter_full(page).await;
        let confirms = async || {
            let buttons = page.all("button").await;
            buttons
                .into_iter()
                .map(|it| it.name)
                .filter(|it| it.starts_with(app::AS_PLANNED))
                .collect::<Vec<_>>()
        };
        page.becomes(vec!["Poured as planned: E85".to_owned()], confirms).await;
        app::as_planned(page, 0).await;
        page.becomes(vec!["Poured as planned: Petrol".to_owned()], confirms).await;
        app::as_planned(page, 1).await;
        app::done(page, 2).await;
        assert_eq!(ticked(page).await, Some(true));

        // A wrong tap: the petrol is not in yet, and the tank is not full.
        page.click("button", "Not poured: Petrol").await;
        app::done(page, 1).await;
        assert_eq!(ticked(page).await, Some(false));
        assert_eq!(app::steps(page).await, ["E85: 16.0 L", "Petrol: 29.0 L"]);
        page.click("button", "Not poured: E85").await;
        app::done(page, 0).await;
        page.until("the tick to be gone", async || !page.has("checkbox", CLICKED).await).await;

        // The same by emptying the field.
        app::as_planned(page, 0).await;
        app::done(page, 1).await;
        app::as_planned(page, 1).await;
        app::done(page, 2).await;
        page.click(app::OPENER, "Enter what went in for E85").await;
        page.click(app::OPENER, "Enter what went in for Petrol").await;
        for at in [1, 0] {
            let field = page.nth("textbox", app::PUT_IN, at).await;
            field.clear().await.expect("a field to empty");
            page.press(Key::Tab).await;
        }
        app::done(page, 0).await;
        // Nothing of the tick is left behind for what goes in next.
        app::as_planned(page, 0).await;
        app::done(page, 1).await;
        assert_eq!(ticked(page).await, Some(false));
    });
}

/// Whether the tick is set, if it is there.
async fn ticked(page: &Page) -> Option<bool> {
    const LOOK: &str = "return [...document.querySelectorAll('#put-in input[type=checkbox]')]
        .map(it => it.checked)[0] ?? null";
    page.script(LOOK, vec![]).await.as_bool()
}

/// After a fill that went to plan there is one line and the way back, and nothing to mend.
#[test]
fn a_recorded_fill_says_so_where_the_finger_is_and_no_more() {
    browse(async |page| {
        page.viewport(360, 740).await;
        quarter_full(page).await;
        page.click("button", app::RECORD_AS_PLANNED).await;
        page.sees("Fill recorded.").await;
        page.sees("About E30, full.").await;
        assert!(in_sight(page, "recorded").await, "the line is off the screen");
        assert_eq!(app::plight(page).await, "");
        assert!(app::steps(page).await.is_empty());
        let text = page.visible_text().await;
        for regret in ["drain", " 0.0", "cannot be reached", "Misses"] {
            assert!(!text.contains(regret), "{regret} in {text}");
        }
        let (foot, look) = app::foot(page).await;
        assert!(foot.contains("Recorded") && foot.ends_with("E30"), "{foot}");
        assert!(!look.contains("bad") && !look.contains("stale"), "{look}");

        page.click("button", "Undo: Fill recorded").await;
        page.sees("Makes E30").await;
        assert_eq!(page.value(app::LEVEL).await, "1/4");
    });
}

async fn in_sight(page: &Page, id: &str) -> bool {
    const LOOK: &str = "
        const { top, bottom } = document.getElementById(arguments[0]).getBoundingClientRect();
        return top >= 0 && bottom <= innerHeight;";
    page.script(LOOK, vec![id.into()]).await == true
}

/// The first field of the view.
const FIRST: &str = "return document.querySelector('main input[type=text]').id";

/// A stranger's first look: what is empty is still to be filled in and no fault, the tank's
/// size comes first, and a slip is none until the field is left.
#[test]
fn nothing_is_wrong_before_its_time() {
    browse(async |page| {
        page.viewport(360, 740).await;
        start_own_car(page).await;
        let (foot, look) = app::foot(page).await;
        assert!(foot.starts_with("Still to fill in: tank size, level, fuels, blend"), "{foot}");
        assert!(look.contains("open") && !look.contains("stale"), "{look}");
        assert_eq!(faults(page).await, 0);
        assert_eq!(page.script(FIRST, vec![]).await, "capacity");

        page.type_in("Tank size", "60").await;
        page.type_in(app::LEVEL, "x").await;
        assert_eq!(faults(page).await, 0, "it is still being typed");
        page.press(Key::Tab).await;
        page.until("the slip to be told", async || faults(page).await > 0).await;
        page.type_in(app::LEVEL, "1/4").await;
        page.until("all to be well", async || faults(page).await == 0).await;
        assert_eq!(page.value("Tank size").await, "60", "what was typed stays in sight");
    });
}

/// How many things in sight bear the colour of a fault.
async fn faults(page: &Page) -> u64 {
    const LOOK: &str = "
        return [...document.querySelectorAll('.wrong, .to-mend.caution, .short.stale, [aria-invalid=true]')]
            .filter(it => it.checkVisibility()).length";
    page.script(LOOK, vec![]).await.as_u64().expect("a number")
}

/// Nobody has to know the octane of what is in the tank: the plan leaves it out, says so,
/// and leads to where it can be given.
#[test]
fn an_octane_that_nobody_knows_is_asked_for_and_not_demanded() {
    browse(async |page| {
        start_own_car(page).await;
        to_car(page).await;
        page.type_in(app::CAPACITY, "60").await;
        let middle =
            app::Calibration { name: "Middle", weakest: "E24", strongest: "E40", ron: "98" };
        app::calibrate(page, 1, middle).await;
        to_fill(page).await;
        page.click("button", "¼").await;
        page.type_in(app::TANK_SHARE, "10").await;
        app::offer(page, app::E85).await;
        app::offer(page, PETROL).await;
        app::pick(page, "Middle").await;
        page.sees("The plan leaves octane out").await;
        let verdict = app::verdict(page, "Middle").await;
        assert!(verdict.starts_with("Middle: confirm first"), "{verdict}");
        page.click("link", "what is in the tank").await;
        page.until("the field", async || page.focused().await.name == app::RON).await;
        page.press("95").await;
        page.press(Key::Tab).await;
        page.until("octane to count", async || {
            !page.visible_text().await.contains("leaves octane out")
        })
        .await;
    });
}
