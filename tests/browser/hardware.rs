//! The fuel system: does it hold, what gives first, and what is printed of it.

use std::f64::consts::PI;

use crate::app::{self, pick, start_own_car, to_car, to_hardware};
use crate::harness::{Key, Page, Paper, browse};

/// Engine speed in rpm and torque in newton metres: the most torque at 3000 rpm, the
/// most power at 6000 rpm.
const RUN: &str =
    "Run 4, second gear\nrpm;Torque (Nm)\n1000;150\n3000;400\n4000;n/a\n6000;300\n6900;200\n";

/// Fuel for the work done, in g/kWh.
const CONSUMPTION: f64 = 300.0;

/// Density of petrol without ethanol, in g/cm3 (the trade's round figure).
const PETROL: f64 = 0.745;

/// What the engine takes at a torque in N m and a speed in rpm, in g/s.
fn fuel(torque: f64, rpm: f64) -> f64 {
    let kilowatts = torque * rpm * PI / 30.0 / 1000.0;
    CONSUMPTION * kilowatts / 3600.0
}

/// Opens a part of the form by its title: what is in it in short follows that.
async fn open(page: &Page, title: &str) {
    let openers = page.all(app::OPENER).await;
    let opener = openers.iter().find(|it| it.name.starts_with(title));
    let name = opener.unwrap_or_else(|| panic!("no {title} in {openers:?}")).name.clone();
    page.click(app::OPENER, &name).await;
}

/// Waits until the page shows a text, wherever its lines break.
async fn shows(page: &Page, text: &str) {
    page.until(text, async || {
        let shown = page.visible_text().await;
        shown.split_whitespace().collect::<Vec<_>>().join(" ").contains(text)
    })
    .await;
}

/// Adds a part and fills in its fields.
async fn add_part(page: &Page, kind: &str, fields: &[(&str, &str)]) {
    page.click("button", kind).await;
    let part = page.within("group", kind);
    for (label, text) in fields {
        part.type_in(label, text).await;
    }
    page.press(Key::Tab).await;
}

/// A car with the curve taken in from a file, and nothing else of its workshop.
async fn with_curve(page: &Page) {
    start_own_car(page).await;
    page.click("link", "Hardware").await;
    page.click("button", "Add a curve").await;
    page.give_file(RUN.as_bytes()).await;
    page.click("button", "Use this table").await;
}

/// The same with an engine on petrol, a high-pressure pump and direct injectors.
async fn with_parts(page: &Page) {
    with_curve(page).await;
    pick(page, "What I type").await;
    page.type_in("Blend", "E0").await;
    open(page, "Engine").await;
    page.type_in("Fuel per work at full load (BSFC)", "300").await;
    page.type_in("Mixture at full load", "0.82").await;
    page.type_in("Boost at full load", "1").await;
    open(page, "Parts").await;
    let pump = [
        ("Plunger diameter", "8"),
        ("Stroke", "5"),
        ("Lobes", "3"),
        ("Rail pressure at full load", "200"),
        ("Filling and leakage leave", "90"),
        ("Dead volume", "0"),
    ];
    add_part(page, "High-pressure pump", &pump).await;
    let injectors = [
        ("How many", "4"),
        ("Rated across", "100"),
        ("Density of the test fluid", "745"),
        ("Rail pressure at full load", "200"),
        ("From command to flow", "0"),
    ];
    page.click("button", "Direct injectors").await;
    page.click("checkbox", "Rated by mass").await;
    let part = page.within("group", "Direct injectors");
    for (label, text) in injectors {
        part.type_in(label, text).await;
    }
    part.type_in("Rated flow of one", "15").await;
    page.press(Key::Tab).await;
    page.sees("First to give").await;
}

/// The cells of a row of the table of parts.
async fn row(page: &Page, name: &str) -> Vec<String> {
    const CELLS: &str = "
        const rows = [...document.querySelectorAll('[aria-label^=\"The parts\"] tbody tr')];
        const row = rows.find(row => row.cells[0].innerText.startsWith(arguments[0]));
        return row ? [...row.cells].map(cell => cell.innerText) : [];";
    let cells = page.script(CELLS, vec![name.into()]).await;
    let cells = cells.as_array().expect("cells").clone();
    let text = |cell: &serde_json::Value| cell.as_str().expect("text").to_owned();
    cells.iter().map(text).map(|it| it.split_whitespace().collect::<Vec<_>>().join(" ")).collect()
}

#[test]
fn a_run_from_a_file_is_looked_at_before_it_counts() {
    browse(async |page| {
        start_own_car(page).await;
        page.click("link", "Hardware").await;
        page.sees("Does the fuel system hold?").await;
        page.click("button", "Add a curve").await;
        page.give_file(RUN.as_bytes()).await;
        page.sees("4 rows read, 1000 rpm to 6900 rpm.").await;
        page.sees("Column 2, “Torque (Nm)”: torque in N·m").await;
        page.sees("Above the table, not read: line 1.").await;
        page.sees("Not read, line 5: “n/a” in column torque is not a number.").await;
        assert_eq!(page.value("The curve").await, "");
        page.click("button", "Use this table").await;
        page.becomes(RUN.to_owned(), async || page.value("The curve").await).await;
        page.sees("Not read, line 5").await;
        // 400 N m at 3000 rpm and 300 N m at 6000 rpm.
        shows(page, "400 N·m at 3000 rpm").await;
        shows(page, &format!("{:.0} kW at 6000 rpm", 300.0 * 200.0 * PI / 1000.0)).await;
        app::undo(page, "Table imported").await;
        page.becomes(String::new(), async || page.value("The curve").await).await;
    });
}

#[test]
fn a_table_that_does_not_tell_its_unit_is_asked_about() {
    browse(async |page| {
        start_own_car(page).await;
        page.click("link", "Hardware").await;
        page.click("button", "Add a curve").await;
        page.type_in("The curve", "2000 180\n4000 300\n6000 250").await;
        page.sees("The table does not say whether it is torque or power").await;
        page.choose("It is", "Torque in lb·ft").await;
        // 1 lb ft is 1.3558 N m (NIST SP 811, appendix B.8).
        shows(page, &format!("{:.0} N·m at 4000 rpm", 300.0 * 1.355_818)).await;
    });
}

#[test]
fn a_heading_that_names_another_place_is_pointed_out() {
    browse(async |page| {
        start_own_car(page).await;
        page.click("link", "Hardware").await;
        page.click("button", "Add a curve").await;
        page.type_in("The curve", "rpm, wheel power kW\n2000, 50\n6000, 180").await;
        page.sees("The heading says that it was measured at the wheels").await;
        pick(page, "At the wheels").await;
        // Without the loss there is no figure at the crank.
        page.sees("Give the loss between crank and wheels").await;
        open(page, "Engine").await;
        page.type_in("Driveline loss, of crank power", "10").await;
        page.press(Key::Tab).await;
        shows(page, "180 kW measured there").await;
        shows(page, "200 kW at 6000 rpm").await;
        // 10 % of crank power is a ninth of wheel power.
        page.sees("11.1 % added to wheel power").await;
        assert!(!page.visible_text().await.contains("The heading says"));
    });
}

#[test]
fn the_pump_gives_first_at_peak_torque_and_the_injectors_at_peak_power() {
    browse(async |page| {
        with_parts(page).await;
        // Plunger area times lift, three strokes a turn of the cam, half the crank's
        // speed, filled to 90 %.
        let stroke = PI / 4.0 * 0.8_f64.powi(2) * 0.5;
        let delivery = PETROL * stroke * 3.0 * (3000.0 / 60.0 / 2.0) * 0.9;
        let of_pump = fuel(400.0, 3000.0) / delivery;
        // 210 degrees in which four injectors pass a cycle's fuel; 200 bar in the rail
        // against 10 in the cylinder, rated at 100.
        let flow = 15.0 * f64::sqrt((200.0 - 10.0) / 100.0);
        let per_cycle = fuel(300.0, 6000.0) * 2.0 * 60.0 / 6000.0 / 4.0;
        let window = 210.0 / 360.0 * 60.0 / 6000.0;
        let of_injectors = per_cycle / flow / window;

        let percent = |part: f64| format!("{:.0} %", part * 100.0);
        let pump = row(page, "High-pressure pump").await;
        assert_eq!(pump[1], format!("{} of 85 % at 3000 rpm", percent(of_pump)), "{pump:?}");
        let reserve = percent(0.85 / of_pump - 1.0);
        assert!(pump[2].starts_with(&reserve), "{pump:?}");
        let injectors = row(page, "Direct injectors").await;
        let expected = format!("{} of 85 % at 6000 rpm", percent(of_injectors));
        assert_eq!(injectors[1], expected, "{injectors:?}");
        assert!(of_pump < 0.85 && of_injectors < of_pump);

        page.sees("Holds, but barely").await;
        page.sees(&format!(
            "First to give: High-pressure pump, at 3000 rpm, where {} of 85 % is in use.",
            percent(of_pump)
        ))
        .await;
        // The chart rests where the first one gives.
        page.tab_to("slider", "Read Use of each part").await;
        let reading = page
            .script("return document.activeElement.getAttribute('aria-valuetext')", vec![])
            .await;
        let reading = reading.as_str().expect("a reading").replace('\u{202f}', " ");
        for part in ["3000 rpm".to_owned(), percent(of_pump)] {
            assert!(reading.contains(&part), "{part} is not in {reading:?}");
        }
    });
}

/// What the verdict, and the bar at the foot, say and which colour they have.
async fn verdicts(page: &Page) -> [(String, String); 2] {
    const VERDICTS: &str = "
        return ['#judgement .judgement', '.short'].map(query => {
            const it = document.querySelector(query);
            const words = it.querySelector('.word, .said').textContent;
            return [words.replace(/\\s+/g, ' ').trim(), it.className];
        });";
    let verdicts = page.script(VERDICTS, vec![]).await;
    serde_json::from_value(verdicts).expect("words and classes")
}

#[test]
fn nothing_holds_alone_above_a_crossed_limit() {
    browse(async |page| {
        with_parts(page).await;
        // A fourth lobe, and the pump has plenty to spare.
        page.within("group", "High-pressure pump").type_in("Lobes", "4").await;
        page.within("group", "Direct injectors").type_in("Rated flow of one", "20").await;
        page.press(Key::Tab).await;
        page.becomes("Holds".to_owned(), async || verdicts(page).await[0].0.clone()).await;
        let [(_, card), (words, bar)] = verdicts(page).await;
        assert_eq!(words, "Holds");
        assert!(card.contains("good") && bar.contains("good"), "{card}, {bar}");

        open(page, "Limits").await;
        page.click("button", "Torque limit").await;
        let limit = page.within("group", "Torque limit");
        limit.type_in("Torque at the crank, at most", "390").await;
        limit.type_in(app::NAME, "Gearbox").await;
        page.press(Key::Tab).await;
        // From 150 N m at 1000 to 400 at 3000 rpm: 390 are passed at 2920; of 300 at 6000
        // it falls through them at 3300.
        let said = "Fuel holds. Gearbox limit crossed from 2920 rpm";
        page.becomes(said.to_owned(), async || verdicts(page).await[0].0.clone()).await;
        let [(_, card), (words, bar)] = verdicts(page).await;
        assert_eq!(words, "Gearbox limit crossed from 2920 rpm");
        assert!(card.contains("bad") && bar.contains("bad"), "{card}, {bar}");
        shows(page, "Above the Gearbox limit from 2920 rpm to 3300 rpm").await;

        page.within("group", "Gearbox").click("checkbox", "Set aside, for comparison").await;
        page.becomes("Holds".to_owned(), async || verdicts(page).await[1].0.clone()).await;
    });
}

#[test]
fn what_is_set_aside_no_longer_counts() {
    browse(async |page| {
        with_parts(page).await;
        let part = page.within("group", "High-pressure pump");
        part.click("checkbox", "Set aside, for comparison").await;
        page.sees("First to give: Direct injectors, at 6000 rpm").await;
        page.sees("High-pressure pump (set aside)").await;
    });
}

#[test]
fn other_units_and_back_leave_what_was_typed() {
    browse(async |page| {
        with_parts(page).await;
        to_car(page).await;
        pick(page, app::US_GALLONS).await;
        to_hardware(page).await;
        open(page, "Engine").await;
        // 300 g/kWh, by 453.592 g to the pound and 0.7457 kW to the horsepower.
        let pounds = 300.0 / 453.592_37 * 0.745_699_9;
        let shown = page.value("Fuel per work at full load (BSFC)").await;
        let shown: f64 = shown.parse().expect("a number");
        assert!((shown - pounds).abs() < 0.001, "{shown} for {pounds}");
        let horsepower = 300.0 * 200.0 * PI / 745.699_87;
        page.sees(&format!("{horsepower:.0} hp at the crank")).await;
        to_car(page).await;
        pick(page, app::LITRES).await;
        to_hardware(page).await;
        open(page, "Engine").await;
        assert_eq!(page.value("Fuel per work at full load (BSFC)").await, "300");
        open(page, "Curves").await;
        open(page, "Curve 1").await;
        assert_eq!(page.value("The curve").await, RUN);
    });
}

#[test]
fn injection_fluid_is_mixed_by_what_it_holds() {
    browse(async |page| {
        start_own_car(page).await;
        page.click("link", "Hardware").await;
        open(page, "Mix injection fluid").await;
        pick(page, "By mass").await;
        page.type_in("Amount wanted", "10").await;
        page.type_in("Methanol wanted in it", "50").await;
        page.type_in("Methanol in the concentrate", "80").await;
        // 5 kg of methanol are in 6.25 kg of it.
        page.sees("6.25 kg").await;
        page.sees("3.75 kg").await;
        page.sees("Methanol is toxic").await;
    });
}

#[test]
fn the_sheet_is_printed_without_what_belongs_to_the_screen() {
    browse(async |page| {
        with_parts(page).await;
        to_car(page).await;
        page.type_in("Name of the car", "Track car").await;
        page.press(Key::Tab).await;
        to_hardware(page).await;
        page.sees("First to give").await;
        for paper in [Paper::A4, Paper::Letter] {
            let printed = page.print(paper).await;
            let (pages, text) = (printed.pages.len(), printed.text());
            assert!((2..=6).contains(&pages), "{pages} pages on {paper:?}");
            for words in [
                "Fuel system: Track car",
                "Holds, but barely",
                "Curve 1",
                "Plunger diameter",
                "assumed",
                "The parts, each where it is tightest",
                "What would be enough",
                "Demand over engine speed",
                "Use of each part",
                "Power that each part supports",
                "destroys pistons and valves",
                "Sources",
            ] {
                assert!(text.contains(words), "{words:?} is not on {paper:?}:\n{text}");
            }
            for words in
                ["Print", "Import a CSV file", "Add a curve", "Remove", "As a table", "Car Fill"]
            {
                assert!(!text.contains(words), "{words:?} is on {paper:?}:\n{text}");
            }
        }
        // Nothing of it stays on the screen.
        assert!(!page.visible_text().await.contains("Fuel system: Track car"));
    });
}
