//! What is said of a fill, a car or a trip that somebody shares.

use crate::document::{
    AimForm, CalibrationForm, Car, CarFile, Document, ExtrasForm, FillForm, FuelForm, PartForm,
    StopRuleForm,
};
use crate::document::{TripForm, TripStopForm};
use crate::quantity::notation::{Entry, Measure, Printer};
use crate::share::{Kind, Shared};

use super::extras::typed;
use super::hardware::{self, Fact, with_unit};
use super::tank::level;
use super::{name_or_unnamed, trip};

/// What a link of this kind holds, before anything is shared.
pub fn what_is_in_it(kind: Kind) -> &'static str {
    match kind {
        Kind::Fill => {
            "The link holds what is in the tank, the fuels on offer with their prices, the aim, when to stop and the size of the tank. Neither the log nor the car's name nor the place goes with it."
        }
        Kind::Car => {
            "The link holds the car with its name, tank, calibrations, own fuels, power curves and parts. The log, the fill and the trip stay here."
        }
        Kind::Trip => {
            "The link holds the stops with their places, fuels and prices, the ways between them, what is in the tank and what is asked for. Neither the log nor the car's name goes with it."
        }
    }
}

/// What is offered.
pub fn title(kind: Kind) -> &'static str {
    match kind {
        Kind::Fill => "A fill, shared with you",
        Kind::Car => "A car, shared with you",
        Kind::Trip => "A trip, shared with you",
    }
}

/// What was shared, in short.
pub fn facts(shared: &Shared, printer: &Printer) -> Vec<Fact> {
    // Prices are the sharer's, and so is the currency.
    let printer = &Printer { currency: shared.currency().to_owned(), ..printer.clone() };
    match shared.kind() {
        Kind::Fill => of_fill(shared.fill(), shared.car(), printer),
        Kind::Car => of_car(shared, printer),
        Kind::Trip => of_trip(shared.route(), shared.car(), printer),
    }
}

fn fact(what: impl Into<String>, value: String) -> Fact {
    Fact::new(what, value, String::new())
}

fn volume(entry: &Entry, printer: &Printer) -> String {
    with_unit(&printer.told(entry, Measure::Volume), printer.units.volume().symbol())
}

fn octane(entry: &Entry, printer: &Printer) -> String {
    with_unit(&printer.shown(entry, Measure::Octane), printer.unit(Measure::Octane))
}

fn percent(text: &str) -> String {
    with_unit(text, "%")
}

/// A text after a word, where there is one.
fn after(word: &str, text: &str) -> Option<String> {
    (!text.trim().is_empty()).then(|| format!("{word}{}", text.trim()))
}

/// A sum of money that was typed.
fn money(text: &str, printer: &Printer) -> String {
    with_unit(text, &printer.currency).trim().to_owned()
}

fn joined(parts: impl IntoIterator<Item = Option<String>>) -> String {
    let parts: Vec<String> = parts.into_iter().flatten().filter(|it| !it.is_empty()).collect();
    if parts.is_empty() { "not given".into() } else { parts.join(", ") }
}

/// What is in a tank.
fn contents(
    level: &Entry,
    error: &Entry,
    [share, range, octane]: [&str; 3],
    extras: &ExtrasForm,
    printer: &Printer,
) -> Fact {
    let value = joined([
        Some(self::level(level, printer)),
        after("give or take ", &volume(error, printer)),
        after("ethanol ", &percent(share)),
        after("which may be ", &percent(range)),
        Some(typed(extras)),
        after("octane at least ", octane),
    ]);
    fact("In the tank", value)
}

fn fuel(fuel: &FuelForm, printer: &Printer) -> String {
    let price = printer.shown(&fuel.price, Measure::Price);
    let unit = format!("{} per {}", printer.currency, printer.units.volume().symbol());
    let all = if fuel.use_all { "all of it, " } else { "at most " };
    joined([
        after("ethanol ", &percent(&fuel.share)),
        after("which may be ", &percent(&fuel.share_range)),
        Some(typed(&fuel.extras)),
        after("octane at least ", &octane(&fuel.octane, printer)),
        after("at ", &with_unit(&price, unit.trim())),
        after(all, &volume(&fuel.limit, printer)),
        after("already put in ", &volume(&fuel.poured, printer)),
    ])
}

fn calibration(form: &CalibrationForm, printer: &Printer) -> String {
    let fluid = form.needs_fluid.then(|| "counts on injection fluid".to_owned());
    joined([
        Some(format!("{} to {}", form.low.trim(), form.high.trim())),
        after("written for ", &form.written_for),
        after("octane at least ", &octane(&form.ron_min, printer)),
        fluid,
    ])
}

/// A name, or what stands for one.
fn named(name: &str, otherwise: impl FnOnce() -> String) -> String {
    let name = name.trim();
    if name.is_empty() { otherwise() } else { name.to_owned() }
}

fn of_fill(fill: &FillForm, car: &Car, printer: &Printer) -> Vec<Fact> {
    let octane = octane(&fill.contents.octane, printer);
    let texts = [&fill.contents.share, &fill.contents.share_range, &octane].map(String::as_str);
    let mut facts = vec![
        contents(
            &fill.contents.level.level,
            &fill.contents.level.error,
            texts,
            &fill.contents.extras,
            printer,
        ),
        fact("Size of the tank", joined([Some(volume(&car.capacity, printer))])),
    ];
    facts.extend(
        fill.offers.iter().enumerate().map(|(at, it)| {
            fact(named(&it.name, || format!("Fuel {}", at + 1)), fuel(it, printer))
        }),
    );
    facts.push(fact("Aim", aim(fill, car, printer)));
    if fill.aim != AimForm::AsPoured {
        facts.push(fact("Fill", stop(fill, printer)));
    }
    facts
}

fn aim(fill: &FillForm, car: &Car, printer: &Printer) -> String {
    match fill.aim {
        AimForm::Share => joined([Some(percent(&fill.aim_share))]),
        AimForm::AsPoured => "none: what has been put in is all".into(),
        AimForm::Calibration(id) => {
            let found = car.calibrations.iter().find(|it| it.id == id);
            let words = |it: &CalibrationForm| {
                format!(
                    "{}: {}",
                    named(&it.name, || "a calibration".into()),
                    calibration(it, printer)
                )
            };
            found.map_or_else(|| "a calibration that is not in the link".into(), words)
        }
    }
}

fn stop(fill: &FillForm, printer: &Printer) -> String {
    let given = |word: &str, text: String| after(word, &text).unwrap_or_else(|| joined([]));
    match fill.stop {
        StopRuleForm::Brim => "full, to the click".into(),
        StopRuleForm::Level => given("to a level of ", level(&fill.stop_level, printer)),
        StopRuleForm::AtMost => given("at most ", volume(&fill.stop_volume, printer)),
        StopRuleForm::Budget => given("for at most ", money(&fill.stop_money, printer)),
        StopRuleForm::Least => "as soon as the aim is reached".into(),
    }
}

fn of_trip(route: &TripForm, car: &Car, printer: &Printer) -> Vec<Fact> {
    let form = &route.contents;
    let octane = octane(&form.octane, printer);
    let texts = [&form.share, &form.share_range, &octane].map(String::as_str);
    let mut facts = vec![
        contents(&form.level.level, &form.level.error, texts, &form.extras, printer),
        fact("Size of the tank", joined([Some(volume(&car.capacity, printer))])),
    ];
    facts.extend(route.stops.iter().enumerate().map(|(at, it)| {
        Fact::new(
            trip::stop_name(&it.place, at),
            trip::stop_in_short(it, printer),
            kept(it, car, printer),
        )
    }));
    let wanted = joined([
        Some(trip::preference(route.prefer).to_lowercase()),
        after("for at most ", &money(&route.budget, printer)),
        after("at the end ", &level(&route.final_level, printer)),
        route.careful.then(|| "whatever is true within the bands".to_owned()),
    ]);
    facts.push(fact("Wanted", wanted));
    facts
}

/// Which calibrations stay usable on the way after a stop.
fn kept(stop: &TripStopForm, car: &Car, printer: &Printer) -> String {
    let kept = car.calibrations.iter().filter(|it| stop.calibrations.contains(&it.id));
    let names: Vec<String> = kept.map(|it| named(&it.name, || calibration(it, printer))).collect();
    if names.is_empty() { String::new() } else { format!("keeping {}", names.join(" or ")) }
}

fn of_car(shared: &Shared, printer: &Printer) -> Vec<Fact> {
    let (car, hardware) = (shared.car(), shared.hardware());
    let unit = printer.units.consumption().symbol();
    let burns = with_unit(&printer.told(&car.consumption, Measure::Consumption), unit);
    let tank = joined([
        Some(volume(&car.capacity, printer)),
        after("of which reserve ", &volume(&car.reserve, printer)),
    ]);
    let consumption = joined([Some(burns), after("measured on ", &car.reference)]);
    let mut facts = vec![
        fact("Name", name_or_unnamed(&car.name)),
        fact("Tank", tank),
        fact("Consumption", consumption),
    ];
    facts.extend(
        car.calibrations
            .iter()
            .map(|it| fact(named(&it.name, || "A calibration".into()), calibration(it, printer))),
    );
    let mut list = |what: &str, names: Vec<String>| {
        if !names.is_empty() {
            facts.push(fact(what, names.join(", ")));
        }
    };
    let fuel = |it: &FuelForm| named(&it.name, || "a fuel without a name".into());
    let part = |it: &PartForm| hardware::part(it);
    list("Own fuels", car.own_fuels.iter().map(fuel).collect());
    list("Power curves", hardware.curves.iter().map(|it| hardware::curve(&it.name)).collect());
    list("Parts and limits", hardware.parts.iter().map(part).collect());
    facts
}

/// What taking it does to the document, and what does not fit.
pub fn consequences(shared: &Shared, document: &Document, printer: &Printer) -> Vec<String> {
    let here = &document.here;
    let kind = shared.kind();
    if kind == Kind::Car {
        let demo = shared.is_invented().then(|| "It is an invented example.".to_owned());
        let beside =
            "It is put beside your own cars and taken into use. Nothing of yours is changed.";
        return demo.into_iter().chain([beside.to_owned()]).collect();
    }
    if document.here.is_untouched() {
        return vec![
            "Nothing has been entered for your car yet, so the size of the tank comes along."
                .into(),
        ];
    }
    let name = super::car(here);
    let mut lines = vec![format!(
        "It takes the place of the {} of {name}, which can be brought back.",
        kind.name()
    )];
    let size = |it: &Car| volume(&it.capacity, printer);
    let (theirs, ours) = (size(shared.car()), size(&here.car));
    if theirs != ours && !theirs.is_empty() && !ours.is_empty() {
        lines.push(format!("It was made for a tank of {theirs}; that of {name} holds {ours}."));
    }
    let (theirs, ours) = (shared.currency().trim(), document.settings.currency.trim());
    if theirs != ours && !theirs.is_empty() {
        lines.push(format!("Its prices stay in {theirs}: give under Car what that is worth."));
    }
    lines.extend(
        shared.unknown_calibrations(&here.car).map(|it| lacking(it, shared, here, printer)),
    );
    lines
}

/// That a calibration is another car's, and what becomes of what relied on it.
fn lacking(it: &CalibrationForm, shared: &Shared, here: &CarFile, printer: &Printer) -> String {
    let name = named(&it.name, || calibration(it, printer));
    let car = super::car(here);
    let then = match (shared.kind(), it.written_for.trim()) {
        (Kind::Trip, _) => "no way keeps it".to_owned(),
        (_, "") => "the aim becomes the blend typed there".to_owned(),
        (_, blend) => format!("the aim becomes {blend}"),
    };
    format!("{car} has no calibration like “{name}” ({}), so {then}.", calibration(it, printer))
}
