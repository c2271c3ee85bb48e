//! The figures of each curve, and what the served one gives more than the other.

use fillwright::answers::hardware::HardwareReading;
use fillwright::message::keys::hardware as keys;
use fillwright::power::compare;
use fillwright::quantity::notation::Printer;
use fillwright::words::hardware::{self, Fact};
use leptos::prelude::*;

use crate::app::hardware_memos::HardwareMemos;
use crate::app::session::Session;
use crate::app::widgets::{Drawn, facts};

/// The figures of each curve, and what the served one gives more than the other.
#[component]
pub(super) fn Gains() -> impl IntoView {
    let session = Session::here();
    let hardware_memos = HardwareMemos::here();
    let drawn = Callback::new(move |()| {
        let groups =
            hardware_memos.reading.with(|it| session.printer.with(|printer| groups(it, printer)));
        let group = |(title, list): (String, Vec<Fact>)| {
            view! {
                <h3>{title}</h3>
                <dl class="facts">{facts(list)}</dl>
            }
            .into_any()
        };
        groups.into_iter().map(group).collect()
    });
    view! { <Drawn what=drawn /> }
}

/// The figures of the curves, each group with its title.
pub(super) fn groups(reading: &HardwareReading, printer: &Printer) -> Vec<(String, Vec<Fact>)> {
    let mut groups = Vec::new();
    for curve in &reading.curves {
        let Some(at_crank) = &curve.at_crank else { continue };
        let mut list = hardware::curve_facts(curve, at_crank, printer);
        list.extend(hardware::corrected(curve, at_crank, printer));
        groups.push((hardware::curve(&curve.name), list));
    }
    let served = reading.asked.as_ref().map_or(0, |it| it.target);
    let pair = reading.compared_with.filter(|before| *before != served);
    let curves =
        pair.and_then(|before| Some((reading.curves.get(before)?, reading.curves.get(served)?)));
    if let Some((before, after)) = curves
        && let (Some(old), Some(new)) = (&before.at_crank, &after.at_crank)
    {
        let (curve, other) = (hardware::curve(&after.name), hardware::curve(&before.name));
        let title = keys::Gain { curve, other }.say();
        match compare(old, new) {
            Some(gain) => groups.push((title, hardware::compared(&gain, printer))),
            None => {
                groups.push((keys::NoSpeedInCommon { gain: title }.say(), Vec::new()));
            }
        }
    }
    groups
}
