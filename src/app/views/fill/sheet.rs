//! What is printed.

use fillwright::answers::fill::FillAnswer;
use fillwright::document::CarFile;
use fillwright::message::keys::fill as keys;
use fillwright::quantity::Volume;
use fillwright::quantity::notation::Printer;
use fillwright::words::fill;
use leptos::prelude::*;

use super::poured::{ABOVE_TEN, LAST_WORD, VAPOUR, may_be_above_ten};
use super::results::{figures, verdicts};
use super::steps::{step_ids, step_shown};
use crate::app::fill_memos::FillMemos;
use crate::app::session::Session;
use crate::app::widgets::{Drawn, facts, sheet_head, sheet_sources, table};

/// The sheet.
#[component]
pub(super) fn Paper() -> impl IntoView {
    let session = Session::here();
    let fill_memos = FillMemos::here();
    let content = Callback::new(move |()| {
        let Some(answer) = fill_memos.answer() else { return Vec::new() };
        let draw = |printer: &Printer| {
            session.document.with(|document| drawn(&answer, &document.here, printer))
        };
        session.printer.with(draw)
    });
    view! { <Drawn what=content /> }
}

fn drawn(answer: &FillAnswer, car: &CarFile, printer: &Printer) -> Vec<AnyView> {
    let tank = &answer.asked.problem.tank;
    let before = keys::Before {
        capacity: printer.volume(tank.capacity),
        level: printer.volume(tank.level.expected()),
        levels: printer.volume_band(tank.level),
        share: printer.grade(tank.share.expected()),
        shares: printer.grade_band(tank.share),
    }
    .say();
    let outcome = fill::outcome(answer, printer)
        .map_or_else(String::new, |(blend, between)| format!("{blend} {between}"));
    let given_up = answer.given_up.iter().map(|it| fill::given_up(it, answer, printer));
    let infeasible = answer.infeasible.iter().flat_map(|it| fill::infeasible(it, answer, printer));
    let said: Vec<_> = given_up
        .chain(infeasible)
        .chain(fill::promise(answer, printer))
        .map(|it| view! { <p>{it}</p> })
        .collect();
    let unit = printer.units.volume().symbol();
    let steps: Vec<_> = step_ids(answer)
        .into_iter()
        .filter_map(|id| step_shown(answer, printer, id))
        .map(|step| {
            let pour = format!("{}\u{202f}{unit} {}", step.number, step.name);
            view! {
                <li>
                    <strong>{pour}</strong>
                    " "
                    {step.aside}
                </li>
            }
        })
        .collect();
    let strong = may_be_above_ten(answer).then_some(ABOVE_TEN).into_iter().flatten();
    let cautions: Vec<_> = std::iter::once(VAPOUR)
        .chain(strong)
        .chain(std::iter::once(LAST_WORD))
        .map(|it| view! { <li>{it.say()}</li> })
        .collect();
    vec![
        sheet_head(keys::FILL.say(), car, &before),
        view! {
            <section>
                <h2>{outcome}</h2>
                {said}
                <ol>{steps}</ol>
            </section>
            <section>
                <h2>{keys::WHICH_THEN.say()}</h2>
                <ul class="plain">{verdicts(answer, printer)}</ul>
            </section>
            <section>
                <h2>{keys::THE_BLEND.say()}</h2>
                <dl>{facts(figures(answer, printer))}</dl>
            </section>
            <section>
                <h2>{keys::GIVEN.say()}</h2>
                {fuels(answer, printer)}
            </section>
            <section>
                <h2>{keys::CAUTIONS.say()}</h2>
                <ul>{cautions}</ul>
            </section>
        }
        .into_any(),
        sheet_sources(&answer.workings()),
    ]
}

/// The fuels on offer as they were given.
fn fuels(answer: &FillAnswer, printer: &Printer) -> AnyView {
    let headings = [
        keys::FUEL.say(),
        keys::ETHANOL.say(),
        "RON",
        "MON",
        keys::PRICE.say(),
        keys::PUT_IN.say(),
    ];
    let headings = headings.map(str::to_owned).into();
    let octane = |it: Option<f64>| it.map_or_else(|| "—".into(), |it| printer.number(it, 1));
    let offers = answer.asked.fuels.iter().zip(&answer.asked.problem.offers);
    let rows = offers
        .map(|(fuel, offer)| {
            let share = printer.grade(offer.share.expected());
            let share = format!("{share} ({})", printer.grade_band(offer.share));
            let price =
                offer.price.map_or_else(|| "—".into(), |it| printer.price_both(it, fuel.rate));
            let poured = offer.poured > Volume::default();
            let poured = if poured { printer.volume(offer.poured) } else { "—".into() };
            view! {
                <tr>
                    <th scope="row">{fuel.name.clone()}</th>
                    <td>{share}</td>
                    <td>{octane(offer.ron)}</td>
                    <td>{octane(fuel.mon)}</td>
                    <td>{price}</td>
                    <td>{poured}</td>
                </tr>
            }
            .into_any()
        })
        .collect();
    table("readings", keys::GIVEN_CAPTION.say().to_owned(), headings, rows)
}
