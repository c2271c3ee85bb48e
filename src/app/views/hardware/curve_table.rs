//! The table of a curve: typed, pasted or from a file, and what was understood.

use fillwright::answers::hardware::curve_table::{ColumnChoice, CurveTable, LONGEST_TABLE};
use fillwright::answers::problem::CurveTableError;
use fillwright::document::{CurveForm, CurvePart, Field, ValueUnit};
use fillwright::message::Message;
use fillwright::message::keys::data;
use fillwright::message::keys::hardware as keys;
use fillwright::quantity::notation::{Entry, Printer};
use fillwright::words::deeds::Deed;
use fillwright::words::{hardware, problems};
use leptos::prelude::*;

use super::curve_form::{read, set};
use crate::app::field_errors::FieldErrors;
use crate::app::session::Session;
use crate::app::transfer::FileError;
use crate::app::undo::{Act, Spot};
use crate::app::widgets::{
    Button, Choices, Drawn, FileButton, Spoken, TextArea, UndoLine, When, holds, key_of, said,
    value_of,
};

const FOUND: &str = "found";

const UNITS: [(Option<ValueUnit>, &str, Message); 6] = [
    (None, FOUND, keys::AS_THE_TABLE_SAYS),
    (Some(ValueUnit::NewtonMetres), "nm", keys::TORQUE_NM),
    (Some(ValueUnit::PoundFeet), "lbft", keys::TORQUE_LBFT),
    (Some(ValueUnit::Kilowatts), "kw", keys::POWER_KW),
    (Some(ValueUnit::Horsepower), "hp", keys::POWER_HP),
    (Some(ValueUnit::MetricHorsepower), "ps", keys::POWER_PS),
];

/// So many bad rows are named.
const NAMED: usize = 8;

type Read = Result<CurveTable, CurveTableError>;

/// The table, and beside it what was understood.
#[component]
pub(super) fn TableField(id: u32) -> impl IntoView {
    let session = Session::here();
    // A table is read anew only when it changed, not with every other field.
    let form = Memo::new(move |_| {
        session.document.with(|it| {
            let form = it.here.hardware.curve(id)?;
            let (table, columns) = (form.table.clone(), form.columns);
            Some(CurveForm { table, columns, ..CurveForm::default() })
        })
    });
    let table = Memo::new(move |_| -> Option<Read> {
        form.with(|it| {
            let form = it.as_ref().filter(|form| !form.table.is_blank());
            form.map(CurveForm::understood)
        })
    });
    let understood = Callback::new(move |()| {
        table.with(|it| it.as_ref().map_or_else(Vec::new, |it| preview(it, session)))
    });
    let spoken = said(move || {
        table.with(|it| match it {
            Some(Ok(table)) => session.printer.with(|it| in_short(table, it)),
            Some(Err(error)) => no_table(error),
            None => String::new(),
        })
    });
    let some = holds(move || table.with(|it| matches!(it, Some(Ok(_)))));
    let said_in_table = Memo::new(move |_| {
        table.with(|it| it.as_ref()?.as_ref().ok().and_then(CurveTable::measured_at))
    });
    let contradiction = said(move || {
        let marked = session.document.with(|it| it.here.hardware.curve(id).map(|form| form.place));
        let both = said_in_table.get().zip(marked).filter(|(said, marked)| said != marked);
        both.map_or_else(String::new, |(said, _)| hardware::other_place(said))
    });
    view! {
        <TextArea
            field=Field::Curve(id, CurvePart::Table)
            label=keys::TABLE.say()
            hint=keys::TABLE_HINT.say()
        />
        <Import id=id />
        <UndoLine spot=Spot::Table(id) />
        <Spoken words=spoken />
        <When condition=some>
            <div class="understood">
                <Drawn what=understood />
            </div>
            <When condition=holds(move || contradiction.with(|it| !it.is_empty()))>
                <p class="note caution">{contradiction}</p>
            </When>
            <Columns id=id table=table />
        </When>
    }
}

fn no_table(error: &CurveTableError) -> String {
    keys::NoTable { why: problems::no_curve_table(error) }.say()
}

/// How much was understood of a table.
fn in_short(table: &CurveTable, printer: &Printer) -> String {
    let rows = hardware::rows_read(table, printer);
    match table.bad.len() {
        0 => rows,
        bad => keys::SomeNotRead { read: rows, count: bad }.say(),
    }
}

/// What was understood of a table.
fn preview(read: &Read, session: Session) -> Vec<AnyView> {
    let table = match read {
        Ok(table) => table,
        Err(error) => {
            return vec![view! { <p class="error">{no_table(error)}</p> }.into_any()];
        }
    };
    let mut lines: Vec<AnyView> = Vec::new();
    let mut say = |class: &'static str, words: String| {
        lines.push(view! { <li class=class>{words}</li> }.into_any());
    };
    session.printer.with(|printer| say("", hardware::rows_read(table, printer)));
    for (at, column) in table.columns.iter().enumerate() {
        say("", hardware::column(at, column));
    }
    if let Some(words) = hardware::unread(table) {
        say("", words);
    }
    for bad in table.bad.iter().take(NAMED) {
        let row = session.printer.with(|printer| problems::bad_row(bad, printer));
        say("bad", keys::RowNotRead { row }.say());
    }
    if let more @ 1.. = table.bad.len().saturating_sub(NAMED) {
        say("bad", keys::MoreNotRead { count: more }.say());
    }
    vec![view! { <ul class="plain" aria-label=keys::UNDERSTOOD.say()>{lines}</ul> }.into_any()]
}

/// Takes in a file: first a look at what was understood of it.
#[component]
fn Import(id: u32) -> impl IntoView {
    let session = Session::here();
    let chosen = RwSignal::<Option<Result<String, String>>>::new(None);
    let choose = Callback::new(move |text: Option<Result<String, FileError>>| {
        chosen.set(text.map(|text| text.map_err(FileError::say)));
    });
    let wrong = said(move || {
        chosen.with(|it| match it {
            Some(Err(error)) => data::NothingTaken { why: error }.say(),
            _ => String::new(),
        })
    });
    let table = Memo::new(move |_| -> Option<Read> {
        let units = session.document.with(|it| it.settings.units);
        chosen.with(|it| match it {
            Some(Ok(text)) => Some(CurveTable::read(text, &ColumnChoice::default(), units)),
            _ => None,
        })
    });
    let understood = Callback::new(move |()| {
        table.with(|it| it.as_ref().map_or_else(Vec::new, |it| preview(it, session)))
    });
    let take = Callback::new(move |()| {
        let Some(Ok(text)) = chosen.get_untracked() else { return };
        chosen.set(None);
        session.change_undoably(Act::at(Spot::Table(id), Deed::TableImported), |it| {
            let typed_in = it.settings.units;
            if let Some(form) = it.here.hardware.curve_mut(id) {
                form.take_table(Entry { text, typed_in });
            }
        });
    });
    let leave = Callback::new(move |()| chosen.set(None));
    view! {
        <FileButton
            label=keys::IMPORT_CSV.say()
            accept=".csv,.txt,.tsv,text/csv,text/plain"
            largest=LONGEST_TABLE
            on_text=choose
        />
        <div role="status" class="import">
            <When condition=holds(move || wrong.with(|it| !it.is_empty()))>
                <p class="note caution">{wrong}</p>
            </When>
            <When condition=holds(move || table.with(Option::is_some))>
                <div class="note">
                    <Drawn what=understood />
                </div>
                <div class="buttons">
                    <When condition=holds(move || table.with(|it| matches!(it, Some(Ok(_)))))>
                        <Button label=keys::USE_THIS_TABLE.say() look="strong" on_press=take />
                    </When>
                    <Button label=keys::CANCEL.say() on_press=leave />
                </div>
            </When>
        </div>
    }
}

/// Which column holds what, where the table does not tell it.
#[component]
fn Columns(id: u32, table: Memo<Option<Read>>) -> impl IntoView {
    let session = Session::here();
    let columns = Memo::new(move |_| {
        let found = (FOUND.to_owned(), keys::AS_THE_TABLE_SAYS.say().to_owned());
        let names = table.with(|it| match it {
            Some(Ok(table)) => table
                .columns
                .iter()
                .enumerate()
                .map(|(at, column)| {
                    let number = (at + 1).to_string();
                    let label = format!("{number} {}", column.header.trim());
                    (number, label.trim_end().to_owned())
                })
                .collect(),
            _ => Vec::new(),
        });
        std::iter::once(found).chain(names).collect::<Vec<_>>()
    });
    let key = |column: Option<u32>| column.map_or_else(|| FOUND.to_owned(), |it| it.to_string());
    let errors = FieldErrors::here();
    let missing = move |part| {
        let words = said(move || errors.message(Field::Curve(id, part)));
        let some = holds(move || words.with(|it| !it.is_empty()));
        view! {
            <When condition=some>
                <p class="error" id=Field::Curve(id, part).id() tabindex="-1">
                    {words}
                </p>
            </When>
        }
        .into_any()
    };
    let asks = holds(move || {
        [CurvePart::SpeedColumn, CurvePart::ValueColumn]
            .iter()
            .any(|part| errors.of(Field::Curve(id, *part)).is_some())
    });
    view! {
        <details open=asks>
            <summary>{keys::COLUMNS_AND_UNIT.say()}</summary>
            <div class="inside">
                {missing(CurvePart::SpeedColumn)} {missing(CurvePart::ValueColumn)}
                <Choices
                    id=format!("curve-{id}-speed-column")
                    label=keys::SPEED_COLUMN.say()
                    choices=columns.into()
                    chosen=said(move || session.document.with(|it| {
                        key(it.here.hardware.curve(id).and_then(|form| form.columns.speed))
                    }))
                    on_choice=set(id, |form, key| form.columns.speed = key.parse().ok())
                />
                <Choices
                    id=format!("curve-{id}-value-column")
                    label=keys::VALUE_COLUMN.say()
                    choices=columns.into()
                    chosen=said(move || session.document.with(|it| {
                        key(it.here.hardware.curve(id).and_then(|form| form.columns.value))
                    }))
                    on_choice=set(id, |form, key| form.columns.value = key.parse().ok())
                />
                <Choices
                    id=format!("curve-{id}-value-unit")
                    label=keys::VALUE_UNIT.say()
                    choices=crate::app::widgets::options(&UNITS)
                    chosen=read(id, |form| key_of(&UNITS, &form.columns.unit))
                    on_choice=set(id, |form, key| {
                        if let Some(unit) = value_of(&UNITS, &key) {
                            form.columns.unit = unit;
                        }
                    })
                />
            </div>
        </details>
    }
}
