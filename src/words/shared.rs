//! What is said of a fill, a car or a trip that somebody shares.

use crate::document::{
    AimForm, CalibrationForm, Car, CarFile, Document, ExtrasForm, FillForm, FuelForm, PartForm,
    StopRuleForm,
};
use crate::document::{PreferForm, TripForm, TripStopForm};
use crate::message::Message;
use crate::message::keys::shared_said as keys;
use crate::quantity::notation::{Entry, Measure, Printer};
use crate::share::{Kind, Shared};

use super::extras::typed;
use super::hardware::{self, Fact, with_unit};
use super::tank::level;
use super::{name_or_unnamed, or, trip};

/// What a link of this kind holds, before anything is shared.
pub fn what_is_in_it(kind: Kind) -> &'static str {
    match kind {
        Kind::Fill => keys::FILL_HOLDS,
        Kind::Car => keys::CAR_HOLDS,
        Kind::Trip => keys::TRIP_HOLDS,
    }
    .say()
}

/// What is offered.
pub fn title(kind: Kind) -> &'static str {
    match kind {
        Kind::Fill => keys::A_FILL,
        Kind::Car => keys::A_CAR,
        Kind::Trip => keys::A_TRIP,
    }
    .say()
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

/// What is said with a text, where there is one.
fn given(text: &str, say: impl FnOnce(&str) -> String) -> Option<String> {
    let text = text.trim();
    (!text.is_empty()).then(|| say(text))
}

/// A sum of money that was typed.
fn money(text: &str, printer: &Printer) -> String {
    with_unit(text, &printer.currency).trim().to_owned()
}

fn joined(parts: impl IntoIterator<Item = Option<String>>) -> String {
    let parts: Vec<String> = parts.into_iter().flatten().filter(|it| !it.is_empty()).collect();
    if parts.is_empty() { keys::NOT_GIVEN.say().into() } else { parts.join(", ") }
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
        given(&volume(error, printer), |volume| keys::GiveOrTake { volume }.say()),
        given(&percent(share), |share| keys::Ethanol { share }.say()),
        given(&percent(range), |shares| keys::MayBe { shares }.say()),
        Some(typed(extras)),
        given(octane, |octane| keys::Octane { octane }.say()),
    ]);
    fact(keys::IN_THE_TANK.say(), value)
}

fn fuel(fuel: &FuelForm, printer: &Printer) -> String {
    let price = printer.shown(&fuel.price, Measure::Price);
    let unit =
        keys::Per { currency: &printer.currency, unit: printer.units.volume().symbol() }.say();
    let limit = |volume: &str| {
        if fuel.use_all { keys::AllOfIt { volume }.say() } else { keys::AtMost { volume }.say() }
    };
    joined([
        given(&percent(&fuel.share), |share| keys::Ethanol { share }.say()),
        given(&percent(&fuel.share_range), |shares| keys::MayBe { shares }.say()),
        Some(typed(&fuel.extras)),
        given(&octane(&fuel.octane, printer), |octane| keys::Octane { octane }.say()),
        given(&with_unit(&price, unit.trim()), |money| keys::AtPrice { money }.say()),
        given(&volume(&fuel.limit, printer), limit),
        given(&volume(&fuel.poured, printer), |volume| keys::AlreadyPutIn { volume }.say()),
    ])
}

fn calibration(form: &CalibrationForm, printer: &Printer) -> String {
    let fluid = form.needs_fluid.then(|| keys::COUNTS_ON_FLUID.say().to_owned());
    joined([
        Some(keys::Window { low: form.low.trim(), high: form.high.trim() }.say()),
        given(&form.written_for, |blend| keys::WrittenFor { blend }.say()),
        given(&octane(&form.ron_min, printer), |octane| keys::Octane { octane }.say()),
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
        fact(keys::TANK_SIZE.say(), joined([Some(volume(&car.capacity, printer))])),
    ];
    facts.extend(fill.offers.iter().enumerate().map(|(at, it)| {
        fact(
            named(&it.name, || keys::Fuel { number: (at + 1).to_string() }.say()),
            fuel(it, printer),
        )
    }));
    facts.push(fact(keys::AIM.say(), aim(fill, car, printer)));
    if fill.aim != AimForm::AsPoured {
        facts.push(fact(keys::FILL.say(), stop(fill, printer)));
    }
    facts
}

fn aim(fill: &FillForm, car: &Car, printer: &Printer) -> String {
    match fill.aim {
        AimForm::Share => joined([Some(percent(&fill.aim_share))]),
        AimForm::AsPoured => keys::AIM_AS_POURED.say().into(),
        AimForm::Calibration(id) => {
            let found = car.calibrations.iter().find(|it| it.id == id);
            let words = |it: &CalibrationForm| {
                keys::AimOf {
                    calibration: named(&it.name, || keys::A_CALIBRATION.say().into()),
                    what: calibration(it, printer),
                }
                .say()
            };
            found.map_or_else(|| keys::CALIBRATION_NOT_IN_LINK.say().into(), words)
        }
    }
}

fn stop(fill: &FillForm, printer: &Printer) -> String {
    let stop = match fill.stop {
        StopRuleForm::Brim => Some(keys::TO_THE_CLICK.say().into()),
        StopRuleForm::Level => {
            given(&level(&fill.stop_level, printer), |level| keys::ToALevel { level }.say())
        }
        StopRuleForm::AtMost => {
            given(&volume(&fill.stop_volume, printer), |volume| keys::AtMost { volume }.say())
        }
        StopRuleForm::Budget => {
            given(&money(&fill.stop_money, printer), |money| keys::ForAtMost { money }.say())
        }
        StopRuleForm::Least => Some(keys::AS_SOON_AS.say().into()),
    };
    joined([stop])
}

fn of_trip(route: &TripForm, car: &Car, printer: &Printer) -> Vec<Fact> {
    let form = &route.contents;
    let octane = octane(&form.octane, printer);
    let texts = [&form.share, &form.share_range, &octane].map(String::as_str);
    let mut facts = vec![
        contents(&form.level.level, &form.level.error, texts, &form.extras, printer),
        fact(keys::TANK_SIZE.say(), joined([Some(volume(&car.capacity, printer))])),
    ];
    facts.extend(route.stops.iter().enumerate().map(|(at, it)| {
        Fact::new(
            trip::stop_name(&it.place, at),
            trip::stop_in_short(it, printer),
            kept(it, car, printer),
        )
    }));
    let wanted = joined([
        Some(preference(route.prefer).say().to_owned()),
        given(&money(&route.budget, printer), |money| keys::ForAtMost { money }.say()),
        given(&level(&route.final_level, printer), |level| keys::LevelAtEnd { level }.say()),
        route.careful.then(|| keys::WHATEVER_IS_TRUE.say().to_owned()),
    ]);
    facts.push(fact(keys::WANTED.say(), wanted));
    facts
}

/// What is wanted above all, in a list.
fn preference(prefer: PreferForm) -> Message {
    match prefer {
        PreferForm::Cheapest => keys::CHEAPEST,
        PreferForm::FewestStops => keys::FEWEST_STOPS,
        PreferForm::MostEthanol => keys::MOST_ETHANOL,
    }
}

/// Which calibrations stay usable on the way after a stop.
fn kept(stop: &TripStopForm, car: &Car, printer: &Printer) -> String {
    let kept = car.calibrations.iter().filter(|it| stop.calibrations.contains(&it.id));
    let names: Vec<String> = kept.map(|it| named(&it.name, || calibration(it, printer))).collect();
    if names.is_empty() {
        return String::new();
    }
    keys::Keeping { calibrations: or(&names) }.say()
}

fn of_car(shared: &Shared, printer: &Printer) -> Vec<Fact> {
    let (car, hardware) = (shared.car(), shared.hardware());
    let unit = printer.units.consumption().symbol();
    let burns = with_unit(&printer.told(&car.consumption, Measure::Consumption), unit);
    let tank = joined([
        Some(volume(&car.capacity, printer)),
        given(&volume(&car.reserve, printer), |volume| keys::OfWhichReserve { volume }.say()),
    ]);
    let consumption =
        joined([Some(burns), given(&car.reference, |blend| keys::MeasuredOn { blend }.say())]);
    let mut facts = vec![
        fact(keys::NAME.say(), name_or_unnamed(&car.name)),
        fact(keys::TANK.say(), tank),
        fact(keys::CONSUMPTION.say(), consumption),
    ];
    facts.extend(car.calibrations.iter().map(|it| {
        fact(named(&it.name, || keys::NAMELESS_CALIBRATION.say().into()), calibration(it, printer))
    }));
    let mut list = |what: Message, names: Vec<String>| {
        if !names.is_empty() {
            facts.push(fact(what.say(), names.join(", ")));
        }
    };
    let fuel = |it: &FuelForm| named(&it.name, || keys::NAMELESS_FUEL.say().into());
    let part = |it: &PartForm| hardware::part(it);
    list(keys::OWN_FUELS, car.own_fuels.iter().map(fuel).collect());
    list(keys::POWER_CURVES, hardware.curves.iter().map(|it| hardware::curve(&it.name)).collect());
    list(keys::PARTS_AND_LIMITS, hardware.parts.iter().map(part).collect());
    facts
}

/// What taking it does to the document, and what does not fit.
pub fn consequences(shared: &Shared, document: &Document, printer: &Printer) -> Vec<String> {
    let here = &document.here;
    let kind = shared.kind();
    if kind == Kind::Car {
        let demo = shared.is_invented().then(|| keys::INVENTED.say().to_owned());
        return demo.into_iter().chain([keys::BESIDE.say().to_owned()]).collect();
    }
    if document.here.is_untouched() {
        return vec![keys::SIZE_COMES_ALONG.say().into()];
    }
    let name = &super::car(here);
    let place = match kind {
        Kind::Trip => keys::PlaceOfTrip { car: name }.say(),
        Kind::Fill | Kind::Car => keys::PlaceOfFill { car: name }.say(),
    };
    let mut lines = vec![place];
    let size = |it: &Car| volume(&it.capacity, printer);
    let (theirs, ours) = (size(shared.car()), size(&here.car));
    if theirs != ours && !theirs.is_empty() && !ours.is_empty() {
        lines.push(keys::OtherTank { theirs, car: name, ours }.say());
    }
    let (theirs, ours) = (shared.currency().trim(), document.settings.currency.trim());
    if theirs != ours && !theirs.is_empty() {
        lines.push(keys::OtherCurrency { currency: theirs }.say());
    }
    lines.extend(
        shared.unknown_calibrations(&here.car).map(|it| lacking(it, shared, here, printer)),
    );
    lines
}

/// That a calibration is another car's, and what becomes of what relied on it.
fn lacking(it: &CalibrationForm, shared: &Shared, here: &CarFile, printer: &Printer) -> String {
    let what = calibration(it, printer);
    let calibration = named(&it.name, || what.clone());
    let car = super::car(here);
    match (shared.kind(), it.written_for.trim()) {
        (Kind::Trip, _) => keys::LackingWay { car, calibration, what }.say(),
        (_, "") => keys::LackingAimTyped { car, calibration, what }.say(),
        (_, blend) => keys::LackingAim { car, calibration, what, blend }.say(),
    }
}
