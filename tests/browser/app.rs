//! The app as the scenarios know it: its words and places, kept here alone, and
//! the things that every scenario does with it.

use serde_json::Value;

use crate::harness::{Key, Page};

// --- What it says ------------------------------------------------------------------

pub(crate) const OWN_CAR: &str = "Enter my own car";
pub(crate) const EXAMPLE: &str = "Look at an invented example";
pub(crate) const IS_INVENTED: &str = "Invented example.";
/// How every button that takes something back begins; it goes on with what was done.
const UNDO: &str = "Undo: ";
pub(crate) const SOMETHING_MISSING: &str = "Still to fill in";
pub(crate) const NOT_UPDATED: &str = "Not updated";

pub(crate) const CAPACITY: &str = "Holds, to the brim";
pub(crate) const RESERVE: &str = "Reserve";
pub(crate) const CONSUMPTION: &str = "Consumption";
pub(crate) const CURRENCY: &str = "Currency";
pub(crate) const PUMP_STEP: &str = "Step of the pump";
pub(crate) const LITRES: &str = "Litre, km, bar, kW";
pub(crate) const US_GALLONS: &str = "US gallon, mile, psi, hp";
pub(crate) const IMPERIAL_GALLONS: &str = "Imperial gallon, mile, psi, hp";
pub(crate) const COMMA: &str = "1,5";
pub(crate) const ADD_CALIBRATION: &str = "Add a calibration";

pub(crate) const IN_TANK: &str = "In the tank";
pub(crate) const LEVEL: &str = "Level";
pub(crate) const TANK_SHARE: &str = "Ethanol in it";
pub(crate) const TANK_OCTANE: &str = "Octane and gauge error";
pub(crate) const ADD_FUEL: &str = "Add";
pub(crate) const SHARE: &str = "Ethanol";
pub(crate) const MAY_BE: &str = "May be";
pub(crate) const RON: &str = "Octane, at least";
pub(crate) const MON: &str = "MON, at least";
pub(crate) const PRICE: &str = "Price";
pub(crate) const MORE_OF_FUEL: &str = "Name, how much there is, MON";
pub(crate) const NAME: &str = "Name";
pub(crate) const REMOVE: &str = "Remove";
pub(crate) const AIM: &str = "Blend wanted";
pub(crate) const AIM_BLEND: &str = "A blend";

pub(crate) const NO_AIM: &str = "I have already poured: what is it?";

pub(crate) const AS_PLANNED: &str = "Poured as planned";
pub(crate) const WHAT_WENT_IN: &str = "Enter what went in";
pub(crate) const PUT_IN: &str = "Actually put in, in all";
pub(crate) const WORKINGS: &str = "Workings and sources";
pub(crate) const RECORD: &str = "Record";
pub(crate) const RECORD_AS_PLANNED: &str = "Record as planned";
pub(crate) const START_FROM_TYPED: &str = "What I type";
pub(crate) const NOTHING_TO_POUR: &str = "Nothing left to pour";

/// The role of what opens and closes a part of the page.
pub(crate) const OPENER: &str = "DisclosureTriangle";

// --- What is given --------------------------------------------------------------------

/// A fuel on offer, as texts to type.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Fuel {
    pub(crate) name: &'static str,
    pub(crate) share: &'static str,
    pub(crate) may_be: &'static str,
    pub(crate) ron: &'static str,
    pub(crate) mon: &'static str,
    pub(crate) price: &'static str,
}

/// A calibration, as texts to type.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Calibration {
    pub(crate) name: &'static str,
    pub(crate) weakest: &'static str,
    pub(crate) strongest: &'static str,
    pub(crate) ron: &'static str,
}

pub(crate) const E85: Fuel =
    Fuel { name: "E85", share: "85", may_be: "70-85", ron: "104", mon: "88", price: "12.50" };

pub(crate) const PETROL: Fuel =
    Fuel { name: "Petrol", share: "10", may_be: "10-10", ron: "95", mon: "85", price: "17" };

/// Starts with an own car, empty as it is.
pub(crate) async fn start_own_car(page: &Page) {
    page.open("").await;
    page.click("button", OWN_CAR).await;
    page.sees(SOMETHING_MISSING).await;
}

/// Waits until the device keeps the app, and the page is served from there.
pub(crate) async fn kept(page: &Page) {
    const LOOK: &str = "return navigator.serviceWorker.controller?.state === 'activated'";
    page.until("the app to be kept", async || page.script(LOOK, vec![]).await == true).await;
}

/// The car of most scenarios: a tank of 60 litres a quarter full of E10 by the
/// gauge, E85 and petrol on offer, E30 wanted to the brim.
pub(crate) async fn quarter_full(page: &Page) {
    start_own_car(page).await;
    to_car(page).await;
    page.type_in(CAPACITY, "60").await;
    page.type_in(CURRENCY, "kr").await;
    to_fill(page).await;
    page.click("button", "¼").await;
    page.type_in(TANK_SHARE, "10").await;
    let tank = page.within("region", IN_TANK);
    // Without a range it would be taken as roughly that.
    tank.type_in(MAY_BE, "10-10").await;
    tank.click(OPENER, TANK_OCTANE).await;
    tank.type_in(RON, "95").await;
    tank.type_in(MON, "85").await;
    offer(page, E85).await;
    offer(page, PETROL).await;
    page.type_in(AIM, "E30").await;
    page.sees("Makes E30").await;
}

/// Adds a fuel to those on offer.
pub(crate) async fn offer(page: &Page, fuel: Fuel) {
    let before = page.all("group").await.iter().filter(|it| it.name.starts_with("Fuel ")).count();
    assert_eq!(before, 0, "a fuel without a name of its own");
    page.click("button", ADD_FUEL).await;
    let mut number = 1;
    while !page.has("group", &format!("Fuel {number}")).await {
        number += 1;
        assert!(number < 9, "no new fuel");
    }
    let new = page.within("group", &format!("Fuel {number}"));
    new.click(OPENER, MORE_OF_FUEL).await;
    new.type_in(NAME, fuel.name).await;
    let form = page.within("group", fuel.name);
    form.type_in(SHARE, fuel.share).await;
    if !fuel.may_be.is_empty() {
        form.type_in(MAY_BE, fuel.may_be).await;
    }
    form.type_in(RON, fuel.ron).await;
    form.type_in(MON, fuel.mon).await;
    form.type_in(PRICE, fuel.price).await;
    page.press(Key::Tab).await;
}

/// Adds a calibration under Car; the Car view must be the one in sight.
pub(crate) async fn calibrate(page: &Page, number: usize, calibration: Calibration) {
    page.click("button", ADD_CALIBRATION).await;
    page.within("group", &format!("Calibration {number}")).type_in(NAME, calibration.name).await;
    let form = page.within("group", calibration.name);
    form.type_in("Weakest blend", calibration.weakest).await;
    form.type_in("Strongest blend", calibration.strongest).await;
    form.type_in("Octane needed", calibration.ron).await;
    page.press(Key::Tab).await;
}

/// Presses one of a few radio buttons.
pub(crate) async fn pick(page: &Page, name: &str) {
    page.click("radio", name).await;
}

/// Says of a step that it went as planned; steps still to do are counted from 0.
pub(crate) async fn as_planned(page: &Page, step: usize) {
    let name = format!("{AS_PLANNED}: {}", fuel_of_step(page, step).await);
    page.click("button", &name).await;
}

/// Says what went in at a step, counted from 0. The steps before it must have been
/// told in this way, so that their fields are open too.
pub(crate) async fn put_in(page: &Page, step: usize, volume: &str) {
    let name = format!("{WHAT_WENT_IN} for {}", fuel_of_step(page, step).await);
    page.click(OPENER, &name).await;
    let field = page.nth("textbox", PUT_IN, step).await;
    field.send_keys(volume).await.expect("a field to type in");
    page.press(Key::Tab).await;
}

/// Waits until this many steps are done.
pub(crate) async fn done(page: &Page, steps: usize) {
    page.becomes(steps, async || {
        asides(page).await.iter().filter(|aside| *aside == "Done.").count()
    })
    .await;
}

pub(crate) async fn to_car(page: &Page) {
    page.click("link", "Car").await;
    page.field(CAPACITY).await;
}

pub(crate) async fn to_fill(page: &Page) {
    page.click("link", "Fill").await;
    page.field(LEVEL).await;
}

pub(crate) async fn to_tank(page: &Page) {
    page.click("link", "Tank").await;
    page.sees("Log").await;
}

pub(crate) async fn to_hardware(page: &Page) {
    page.click("link", "Hardware").await;
    page.sees("hold?").await;
}

/// Begins an entry of the log.
pub(crate) async fn add(page: &Page, kind: &str) {
    page.within("region", "Add to the log").click("button", kind).await;
    page.sees(&format!("Add: {kind}")).await;
}

/// Keeps the entry that is being written, if it can be.
pub(crate) async fn keep(page: &Page) {
    page.click("button", "Save").await;
}

/// Takes back what was done last.
pub(crate) async fn undo(page: &Page, done: &str) {
    page.click("button", &format!("{UNDO}{done}")).await;
    page.until("the undoing", async || !can_undo(page).await).await;
}

/// Whether anything can be taken back.
pub(crate) async fn can_undo(page: &Page) -> bool {
    page.all("button").await.iter().any(|button| button.name.starts_with(UNDO))
}

/// The name of the button that begins so; it goes on with a date.
pub(crate) async fn button_of(page: &Page, beginning: &str) -> String {
    let all = page.all("button").await;
    let found = all.into_iter().find(|button| button.name.starts_with(beginning));
    found.unwrap_or_else(|| panic!("no button {beginning:?}")).name
}

// --- What comes out -------------------------------------------------------------------

/// The texts in sight of all that a selector finds, each on one line.
pub(crate) async fn texts(page: &Page, selector: &str) -> Vec<String> {
    const READ: &str = "
        return [...document.querySelectorAll(arguments[0])]
            .filter(element => element.checkVisibility())
            .map(element => element.innerText.replace(/\\s+/g, ' ').trim());";
    match page.script(READ, vec![selector.into()]).await {
        Value::Array(texts) => {
            texts.iter().filter_map(|text| text.as_str().map(str::to_owned)).collect()
        }
        other => panic!("expected texts, not {other}"),
    }
}

async fn text(page: &Page, selector: &str) -> String {
    texts(page, selector).await.join(" | ")
}

/// What the fill makes, with its worst case.
pub(crate) async fn outcome(page: &Page) -> String {
    text(page, "#outcome").await
}

/// What is promised of the plan.
pub(crate) async fn promise(page: &Page) -> String {
    text(page, "#promise").await
}

/// Why the aim is out of reach, and what helps.
pub(crate) async fn plight(page: &Page) -> String {
    text(page, "#plight").await
}

/// What gave way to the aim, with the plan that keeps it.
pub(crate) async fn instead(page: &Page) -> String {
    text(page, "#instead p").await
}

/// The line at the foot of a phone, with the class of its look.
pub(crate) async fn foot(page: &Page) -> (String, String) {
    const LOOK: &str = "
        const foot = document.querySelector('a.short');
        return foot && [foot.innerText.replace(/\\s+/g, ' ').trim(), foot.className];";
    let read = page.script(LOOK, vec![]).await;
    let text = |at: usize| read[at].as_str().unwrap_or_default().to_owned();
    (text(0), text(1))
}

/// The fuel that a step pours.
async fn fuel_of_step(page: &Page, step: usize) -> String {
    texts(page, "#put-in ol .what").await.swap_remove(step)
}

/// The steps at the pump: the fuel and how much of it.
pub(crate) async fn steps(page: &Page) -> Vec<String> {
    let names = texts(page, "#put-in ol .what").await;
    let volumes = texts(page, "#put-in ol .volume").await;
    names.into_iter().zip(volumes).map(|(name, volume)| format!("{name}: {volume}")).collect()
}

/// What is said below each step.
pub(crate) async fn asides(page: &Page) -> Vec<String> {
    texts(page, "#put-in ol .aside").await
}

/// A figure of the blend and what is said of it.
pub(crate) async fn fact(page: &Page, what: &str) -> String {
    let names = texts(page, "#facts dt").await;
    let values = texts(page, "#facts dd").await;
    let found = names.iter().zip(values).find(|(name, _)| *name == what);
    found.map_or_else(|| panic!("no {what:?} among {names:?}"), |(_, value)| value)
}

/// The verdict on a calibration with its reasons.
pub(crate) async fn verdict(page: &Page, calibration: &str) -> String {
    let all = texts(page, "#verdicts li").await;
    let found = all.iter().find(|verdict| verdict.starts_with(&format!("{calibration}: ")));
    found.unwrap_or_else(|| panic!("no verdict on {calibration:?} among {all:?}")).clone()
}

/// What is in the tank, by the log.
pub(crate) async fn estimate(page: &Page) -> String {
    text(page, "#estimate").await
}

/// The entries of the log, the latest first.
pub(crate) async fn log(page: &Page) -> Vec<String> {
    texts(page, "#log ol > li:not(.gone)").await
}

/// The number at the beginning of a text such as `4.2 gal`.
pub(crate) fn number(text: &str) -> f64 {
    let first = text.split(' ').next().unwrap_or_default();
    first.parse().unwrap_or_else(|_| panic!("{text:?} does not begin with a number"))
}
