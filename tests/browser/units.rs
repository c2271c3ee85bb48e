//! The same fill in other units and with another decimal mark.

use crate::app::{self, pick, quarter_full, to_car, to_fill};
use crate::hand_arithmetic::{self, US_GALLON};
use crate::harness::{Key, browse};

/// Half a litre, the step in which the pump can be stopped.
const STEP: f64 = 0.5;

#[test]
fn gallons_show_the_same_fill_and_litres_come_back_as_they_were_typed() {
    let strong = hand_arithmetic::dose(60.0, (15.0, 10.0), (85.0, 10.0), 30.0);
    let expected = [strong / US_GALLON, (45.0 - strong) / US_GALLON];

    browse(async |page| {
        quarter_full(page).await;
        to_car(page).await;
        page.type_in(app::CAPACITY, " 60,0 l").await;
        page.type_in(app::RESERVE, "1/10").await;
        page.type_in(app::CONSUMPTION, "8.2").await;
        pick(page, app::US_GALLONS).await;
        let capacity = format!("{:.2}", 60.0 / US_GALLON);
        assert_eq!(capacity, "15.85");
        // What says its own unit means the same in any and stays.
        page.becomes(" 60,0 l".to_owned(), async || page.value(app::CAPACITY).await).await;
        assert_eq!(page.value(app::RESERVE).await, "1/10");
        pick(page, app::LITRES).await;
        page.type_in(app::CAPACITY, "60").await;
        pick(page, app::US_GALLONS).await;
        page.becomes(capacity, async || page.value(app::CAPACITY).await).await;
        assert_eq!(page.value(app::PUMP_STEP).await, format!("{:.4}", STEP / US_GALLON));

        to_fill(page).await;
        let steps = app::steps(page).await;
        assert_eq!(steps.len(), 2, "{steps:?}");
        for ((step, name), gallons) in steps.iter().zip(["E85: ", "Petrol: "]).zip(expected) {
            let volume = step.strip_prefix(name).unwrap_or_else(|| panic!("{steps:?}"));
            assert!(volume.ends_with(" gal"), "{steps:?}");
            let off = app::number(volume) - gallons;
            assert!(off.abs() <= STEP / US_GALLON, "{volume} is not {gallons}");
        }
        assert!(app::outcome(page).await.starts_with("Makes E30"));
        let price = page.within("group", "E85").value(app::PRICE).await;
        assert_eq!(price, format!("{:.2}", 12.5 * US_GALLON));

        to_car(page).await;
        pick(page, app::LITRES).await;
        page.becomes("60".to_owned(), async || page.value(app::CAPACITY).await).await;
        assert_eq!(page.value(app::CONSUMPTION).await, "8.2");
        assert_eq!(page.value(app::PUMP_STEP).await, "0.5");
        to_fill(page).await;
        assert_eq!(page.within("group", "E85").value(app::PRICE).await, "12.50");
        assert_eq!(app::steps(page).await, ["E85: 16.0 L", "Petrol: 29.0 L"]);
    });
}

#[test]
fn a_gallon_typed_is_a_gallon() {
    browse(async |page| {
        quarter_full(page).await;
        to_car(page).await;
        pick(page, app::US_GALLONS).await;
        page.type_in(app::CAPACITY, "16").await;
        pick(page, app::LITRES).await;
        let litres = format!("{:.2}", 16.0 * US_GALLON);
        page.becomes(litres, async || page.value(app::CAPACITY).await).await;
        pick(page, app::US_GALLONS).await;
        page.becomes("16".to_owned(), async || page.value(app::CAPACITY).await).await;
    });
}

#[test]
fn a_decimal_comma_is_read_at_once_and_printed_once_chosen() {
    // 60.5 L, a quarter full: 16.13 L of E85, of which the pump gives 16.0.
    let brim = 60.5;
    let exact = hand_arithmetic::dose(brim, (brim / 4.0, 10.0), (85.0, 10.0), 30.0);
    let strong = (exact / STEP).round() * STEP;
    let weak = brim * 0.75 - strong;
    let comma = |value: f64| format!("{value:.1}").replace('.', ",");

    browse(async |page| {
        quarter_full(page).await;
        to_car(page).await;
        page.type_in(app::CAPACITY, "60,5").await;
        page.press(Key::Tab).await;
        to_fill(page).await;
        page.becomes(
            vec![format!("E85: {strong:.1} L"), format!("Petrol: {weak:.1} L")],
            async || app::steps(page).await,
        )
        .await;
        to_car(page).await;
        pick(page, app::COMMA).await;
        assert_eq!(page.value(app::CAPACITY).await, "60,5");
        to_fill(page).await;
        page.becomes(
            vec![format!("E85: {} L", comma(strong)), format!("Petrol: {} L", comma(weak))],
            async || app::steps(page).await,
        )
        .await;
        assert_eq!(app::fact(page, "In the tank then").await, "60,5 L");
        let afr = app::fact(page, "Stoichiometric AFR").await;
        assert!(afr.starts_with("12,8") && !afr.contains('.'), "{afr}");
        // What was typed with a point still means what it meant.
        assert_eq!(page.within("group", "E85").value(app::PRICE).await, "12.50");
        let cost = format!("{:.2} kr", strong * 12.5 + weak * 17.0).replace('.', ",");
        assert_eq!(app::fact(page, "Cost").await, cost);
    });
}
