//! Figures in tables and lists, and what they are made of.

use fillwright::answers::hardware::{HardwareAnswer, PartAnswer};
use fillwright::document::HardwareForm;
use fillwright::message::keys::hardware as keys;
use fillwright::message::keys::notation;
use fillwright::quantity::notation::Printer;
use fillwright::quantity::{CrankPower, WheelPower};
use fillwright::words::hardware;
use leptos::prelude::*;

use crate::app::hardware_memos::Judged;
use crate::app::widgets::wide_table;

/// A cell: a figure, and what belongs to it in small.
pub(super) type Cell = (String, String);

/// A figure alone.
fn alone(figure: String) -> Cell {
    (figure, String::new())
}

/// No figure.
fn none() -> Cell {
    alone("—".to_owned())
}

/// A figure with its ends, where they print differently.
fn banded([low, expected, high]: [String; 3]) -> Cell {
    let ends = if low == high { String::new() } else { notation::Band { low, high }.say() };
    (expected, ends)
}

/// A table of figures. One that is wider than the page is moved by keys too.
pub(super) fn table(caption: &str, headings: &[String], rows: Vec<Vec<Cell>>) -> AnyView {
    let row = |cells: Vec<Cell>| {
        let mut cells = cells.into_iter();
        let (name, aside) = cells.next().unwrap_or_default();
        let cells: Vec<AnyView> = cells.map(cell).collect();
        view! {
            <tr>
                <th scope="row">{name} <small>{aside}</small></th>
                {cells}
            </tr>
        }
        .into_any()
    };
    let rows = rows.into_iter().map(row).collect();
    wide_table("readings", caption.to_owned(), headings.to_vec(), rows)
}

fn cell((figure, aside): Cell) -> AnyView {
    if figure.is_empty() {
        // What is said without a figure may break.
        return view! { <td class="sentence">{aside}</td> }.into_any();
    }
    view! {
        <td>
            <span class="number">{figure}</span>
            <small>{aside}</small>
        </td>
    }
    .into_any()
}

/// Every part with its figures.
pub(super) fn parts(
    answer: &HardwareAnswer,
    hardware: &HardwareForm,
    printer: &Printer,
) -> AnyView {
    let headings = [
        keys::PART.say(),
        keys::USE.say(),
        keys::RESERVE.say(),
        keys::SUPPORTS.say(),
        keys::LARGEST_SHARE.say(),
    ];
    let wanted = answer.asked.engine.reserve;
    let row = |part: &PartAnswer| {
        let tightest = hardware::tightest(part, answer, printer);
        let reserve = part.over_speed.tightest.map(|it| hardware::reserve(it.reserve, printer));
        vec![
            (hardware::part_answer(part, hardware), hardware::standing(part, wanted).to_owned()),
            tightest.map_or_else(none, |(used, speed)| (used, keys::AtSpeed { speed }.say())),
            reserve.unwrap_or_else(none),
            hardware::supported(part, printer),
            hardware::largest_share(part.largest_share, printer),
        ]
    };
    let rows = answer.parts.iter().map(row).collect();
    table(keys::PARTS_CAPTION.say(), &headings.map(str::to_owned), rows)
}

/// What each part would have to be, and what happens if it is left as it is.
pub(super) fn enough(
    answer: &HardwareAnswer,
    hardware: &HardwareForm,
    printer: &Printer,
) -> AnyView {
    let headings =
        [keys::PART.say(), keys::AS_EXPECTED.say(), keys::AT_WORST.say(), keys::IF_SHORT.say()];
    let row = |part: &PartAnswer| {
        let by_mass = hardware::is_rated_by_mass(part, hardware);
        let enough = |at: usize| {
            let requirement = part.enough.as_ref().and_then(|it| it.get(at));
            requirement
                .map_or_else(none, |it| (String::new(), hardware::enough(it, by_mass, printer)))
        };
        vec![
            alone(hardware::part_answer(part, hardware)),
            enough(0),
            enough(1),
            (String::new(), hardware::shortage(part, answer, printer)),
        ]
    };
    let rows = answer.parts.iter().map(row).collect();
    let wanted = printer.fraction(answer.asked.engine.reserve);
    let caption = keys::EnoughCaption { reserve: wanted }.say();
    table(&caption, &headings.map(str::to_owned), rows)
}

/// What the engine takes, over engine speed.
pub(super) fn speeds(judged: &Judged, printer: &Printer) -> AnyView {
    let answer = &judged.answer;
    let Some(curve) = judged.reading.curves.get(answer.asked.target) else {
        return ().into_any();
    };
    let rows = answer.rows(curve);
    let has_wheel = rows.iter().any(|row| row.wheel.is_some());
    let has_air_route = rows.iter().any(|row| row.by_air.is_some());
    let mut headings = vec![keys::ENGINE_SPEED.say(), keys::POWER_AT_CRANK.say()];
    if has_wheel {
        headings.push(keys::POWER_AT_WHEELS.say());
    }
    headings.extend([keys::FUEL_BY_MASS.say(), keys::FUEL_BY_VOLUME.say()]);
    if has_air_route {
        headings.push(keys::FUEL_BY_AIR.say());
    }
    headings.push(keys::AIR.say());
    let headings: Vec<String> = headings.into_iter().map(str::to_owned).collect();
    let rows = rows.iter().map(|row| {
        let mut cells = vec![
            alone(printer.engine_speed(row.speed)),
            banded(printer.power_ends(row.power.map(CrankPower::get))),
        ];
        if has_wheel {
            let power = row.wheel.map(|it| banded(printer.power_ends(it.map(WheelPower::get))));
            cells.push(power.unwrap_or_default());
        }
        cells.push(banded(printer.mass_flow_ends(row.fuel)));
        cells.push(banded(printer.pump_flow_ends(row.volume)));
        if has_air_route {
            cells.push(row.by_air.map_or_else(Cell::default, |it| {
                (printer.mass_flow(it.fuel), printer.change(it.off))
            }));
        }
        cells.push(alone(printer.air_flow(row.air.expected())));
        cells
    });
    table(keys::DEMAND_CAPTION.say(), &headings, rows.collect())
}

/// Every part without injection fluid, which decides, and with it.
pub(super) fn with_fluid(
    answer: &HardwareAnswer,
    hardware: &HardwareForm,
    printer: &Printer,
) -> AnyView {
    let headings = [keys::PART.say(), keys::RESERVE_WITHOUT.say(), keys::RESERVE_WITH.say()];
    let row = |part: &PartAnswer| {
        let reserve = |it: Option<&fillwright::hardware::PartOverSpeed>| {
            let reserve = it.and_then(|it| it.tightest).map(|it| it.reserve);
            reserve.map_or_else(none, |it| hardware::reserve(it, printer))
        };
        vec![
            alone(hardware::part_answer(part, hardware)),
            reserve(Some(&part.over_speed)),
            reserve(part.with_fluid.as_ref()),
        ]
    };
    let rows = answer.parts.iter().map(row).collect();
    table(keys::FLUID_CAPTION.say(), &headings.map(str::to_owned), rows)
}
