//! The route that the texts describe.

use crate::answers::field_error::FieldError;
use crate::answers::reading::{Known, Reader};
use crate::calibration::Calibration;
use crate::document::{
    ContentsOf, Document, Field, FuelPart, PreferForm, StartForm, TripForm, TripPart, TripStopForm,
    TripStopPart,
};
use crate::fuel::{Content, Corner, EnergyDensity, Extras, HydrocarbonBase};
use crate::message::keys::problems;
use crate::quantity::notation::quantities::DISTANCE;
use crate::quantity::notation::{Printer, Rate, parse_factor, parse_fraction};
use crate::quantity::{Consumption, Share, Volume};
use crate::tank::Estimate;
use crate::tank::Tank;
use crate::trip::{
    BlendModel, Burn, CheckedRoute, Leg, PlanWanted, Pump, Route, Stop, TripObjective,
};

/// How far inside the windows the blend stays where nothing else is typed: about what
/// a sensor of the share may be off (common practice, no source).
const USUAL_MARGIN: f64 = 0.02;
/// A fuel with less than a fifth of the energy of petrol and ethanol is none: neat methanol
/// has half.
const LARGEST_LACK: f64 = 5.0;
/// The most that may be asked for.
const LARGEST_MARGIN: f64 = 0.2;

/// A fuel on the route, with what a plan does not need to know of it.
#[derive(Clone, Debug, PartialEq)]
pub struct TripFuel {
    /// Its number in the document.
    pub id: u32,
    /// Its name.
    pub name: String,
    /// The rate of its price, where that was typed in another currency.
    pub rate: Option<Rate>,
}

/// A stop on the route, with what a plan does not need to know of it.
#[derive(Clone, Debug, PartialEq)]
pub struct TripStop {
    /// Its number in the document.
    pub id: u32,
    /// Where it is.
    pub place: String,
    /// Its fuels, in the order of the plan's pumps.
    pub fuels: Vec<TripFuel>,
}

/// What is to be planned.
#[derive(Clone, Debug, PartialEq)]
pub struct TripAsked {
    /// The route from where the car is.
    pub route: CheckedRoute,
    /// What is wanted.
    pub wish: PlanWanted,
    /// Its stops.
    pub stops: Vec<TripStop>,
    /// The numbers of the calibrations, in the order of the route's.
    pub calibrations: Vec<u32>,
}

/// What the texts mean, and what is wrong with them.
#[derive(Clone, Debug, PartialEq)]
pub struct TripReading {
    /// What is to be planned, when enough of it is understood.
    pub asked: Option<TripAsked>,
    /// What is wrong.
    pub field_errors: Vec<FieldError>,
}

impl TripReading {
    /// Reads the route of the car in use. `estimate` is what the log tells of its tank.
    pub fn of(document: &Document, estimate: Option<&Estimate>, printer: &Printer) -> Self {
        let mut reader = Reader::of_money(printer, &document.settings);
        // As long as there is no stop, nothing is missing.
        let asked = if document.here.route.stops.is_empty() {
            None
        } else {
            reader.trip(document, estimate)
        };
        Self { asked, field_errors: reader.field_errors }
    }
}

impl Reader<'_> {
    fn trip(&mut self, document: &Document, estimate: Option<&Estimate>) -> Option<TripAsked> {
        let (car, form) = (&document.here.car, &document.here.route);
        let known = self.car(car);
        if known.consumption.is_none() && car.consumption.is_blank() {
            self.ask_for(Field::Consumption, problems::GIVE_WHAT_CAR_BURNS_ROUTE);
        }
        let step = &document.settings.pump_step;
        let step = self.volume(Field::PumpStep, step, None).flatten();
        let calibrations = self.calibrations(&car.calibrations);
        let tank = self.trip_start(form, &known, estimate);
        let passed = form.here.and_then(|here| form.stops.iter().position(|it| it.id == here));
        let ahead = form.stops.get(passed.unwrap_or(0)..).unwrap_or_default();
        let mut read: Vec<_> =
            ahead.iter().map(|stop| self.trip_stop(stop, &known, &calibrations)).collect();
        if form.filled
            && passed.is_some()
            && let Some(Some((_, stop, _))) = read.first_mut()
        {
            // What was bought here is in the tank.
            stop.pumps.iter_mut().for_each(|pump| pump.closed = true);
        }
        let budget = self.money(Field::Trip(TripPart::Budget), &form.budget);
        let margin = self.optional(Field::Trip(TripPart::Margin), &form.margin, |text| {
            parse_fraction(text, 0.0..=LARGEST_MARGIN)
        });
        let final_level =
            self.level_wanted(Field::Trip(TripPart::FinalLevel), &form.final_level, &known);
        let wish = PlanWanted {
            objective: match form.prefer {
                PreferForm::Cheapest => TripObjective::Cheapest,
                PreferForm::FewestStops => TripObjective::FewestStops,
                PreferForm::MostEthanol => TripObjective::MostEthanol,
            },
            budget: budget?,
            is_robust: form.careful,
            margin: Share::clamped(margin?.unwrap_or(USUAL_MARGIN)),
            step,
            ..PlanWanted::default()
        };
        let (tank, extras) = tank?;
        let corner = if form.careful { Corner::High } else { Corner::Expected };
        let at_start = Content { ethanol: tank.share, extras };
        let consumption = self.with_least_energy(known.consumption?, corner, at_start, &read)?;
        let mut route = Route {
            tank,
            extras,
            blend: BlendModel::default(),
            burn: Burn::Energy { consumption, on: known.reference },
            calibrations: calibrations.iter().map(|(_, it)| it.clone()).collect(),
            injection_fluid: car.fluid,
            stops: Vec::new(),
            legs: Vec::new(),
            final_level: final_level?,
        };
        let mut stops = Vec::new();
        for read in read {
            let (known, stop, leg) = read?;
            stops.push(known);
            route.stops.push(stop);
            route.legs.push(leg);
        }
        let route = self.take(Field::Trip(TripPart::Stops), route.checked())?;
        let calibrations = calibrations.into_iter().map(|(id, _)| id).collect();
        Some(TripAsked { route, wish, stops, calibrations })
    }

    /// The consumption with which no fuel of the route goes less far than is planned.
    ///
    /// A plan counts each litre with the energy of its petrol and ethanol. Water, methanol
    /// and ethers hold less, so all legs take more by the factor of the fuel that lacks
    /// most. Where all fuels are alike that is exact, and else on the safe side.
    fn with_least_energy(
        &mut self,
        consumption: Consumption,
        corner: Corner,
        at_start: Content,
        read: &[Option<(TripStop, Stop, Leg)>],
    ) -> Option<Consumption> {
        let pumps = read.iter().flatten().flat_map(|(_, stop, _)| &stop.pumps);
        let contents = pumps.map(|pump| Content { ethanol: pump.share, extras: pump.extras });
        let base = HydrocarbonBase::default();
        let factor = |content: Content| {
            let of = |content: Content| {
                let litre = content.litre(corner, &base).energy_density();
                litre.map(EnergyDensity::megajoules_per_liter)
            };
            Some(of(Content::splash(content.ethanol))? / of(content)?)
        };
        let mut most = 1.0_f64;
        for factor in contents.chain([at_start]).filter_map(factor) {
            if !(0.0..=LARGEST_LACK).contains(&factor) {
                let message = problems::FUEL_ROUTE_HARDLY_BURNS_CORRECT;
                self.report(Field::Trip(TripPart::Stops), message);
                return None;
            }
            most = most.max(factor);
        }
        if most <= 1.0 {
            return Some(consumption);
        }
        let more = Consumption::from_litres_per_100_km(consumption.litres_per_100_km() * most);
        self.take(Field::Consumption, more)
    }

    /// What is in the tank where the route begins.
    fn trip_start(
        &mut self,
        form: &TripForm,
        known: &Known,
        estimate: Option<&Estimate>,
    ) -> Option<(Tank, Extras)> {
        let reserve = known.reserve?;
        match form.start {
            StartForm::Log => {
                let Some(estimate) = estimate else {
                    self.ask_for(
                        Field::Trip(TripPart::Start),
                        problems::LOG_TELLS_NOTHING_TANK_YET_TYPE,
                    );
                    return None;
                };
                let tank = Tank {
                    capacity: known.capacity?,
                    level: estimate.level,
                    share: estimate.share,
                    ron: estimate.ron.map(|ron| ron.low()),
                    reserve,
                };
                Some((tank, estimate.extras))
            }
            StartForm::Typed => {
                let stated = self.contents(&form.contents, ContentsOf::Trip, known)?;
                let tank = Tank {
                    capacity: known.capacity?,
                    level: stated.level,
                    share: stated.share,
                    ron: stated.ron,
                    reserve,
                };
                Some((tank, stated.extras))
            }
        }
    }

    fn trip_stop(
        &mut self,
        form: &TripStopForm,
        known: &Known,
        calibrations: &[(u32, Calibration)],
    ) -> Option<(TripStop, Stop, Leg)> {
        let field = |part| Field::TripStop(form.id, part);
        let fee = self.money(field(TripStopPart::Fee), &form.fee);
        let units = form.distance.typed_in;
        let distance = self.optional(field(TripStopPart::Distance), &form.distance.text, |text| {
            DISTANCE.parse(text, units)
        });
        let distance = self.required(
            field(TripStopPart::Distance),
            distance,
            problems::GIVE_HOW_FAR_FROM_HERE,
        );
        let factor = self.optional(field(TripStopPart::Factor), &form.factor, |text| {
            parse_factor(text, 0.1..=10.0)
        });
        let mut wanted = Vec::new();
        for id in &form.calibrations {
            let Some(place) = calibrations.iter().position(|(it, _)| it == id) else {
                self.report(
                    field(TripStopPart::Calibrations),
                    problems::CALIBRATION_KEEP_INCOMPLETE_OR_GONE,
                );
                return None;
            };
            wanted.push(place);
        }
        // A least AKI is asked of the blend that is kept; of petrol where none is.
        let kept = wanted.iter().map(|&place: &usize| calibrations[place].1.written_for);
        let blend = kept.fold(Share::ZERO, |most, it| if it > most { it } else { most });
        let ron_min = self.octane(field(TripStopPart::RonMin), &form.ron_min, Some(blend));
        let (mut pumps, mut fuels) = (Vec::new(), Vec::new());
        let mut whole = true;
        for fuel in &form.fuels {
            let part = |part| Field::Fuel(fuel.id, part);
            let read = self.pump(fuel, &part, known.capacity, form.closed.contains(&fuel.id));
            whole &= read.is_some();
            let (pump, rate) = read.unzip();
            pumps.extend(pump);
            let rate = rate.flatten();
            fuels.push(TripFuel { id: fuel.id, name: fuel.name.clone(), rate });
        }
        let stop = Stop { pumps, fixed_cost: fee?.unwrap_or_default() };
        let leg = Leg {
            distance: distance?,
            factor: factor?.unwrap_or(1.0),
            calibrations: wanted,
            ron_min: ron_min?.map(|(ron, _)| ron),
        };
        let known = TripStop { id: form.id, place: form.place.clone(), fuels };
        whole.then_some((known, stop, leg))
    }

    fn pump(
        &mut self,
        form: &crate::document::FuelForm,
        field: &dyn Fn(FuelPart) -> Field,
        capacity: Option<Volume>,
        closed: bool,
    ) -> Option<(Pump, Option<Rate>)> {
        let (offer, fuel) = self.fuel(form, field, capacity)?;
        let Some(price) = offer.price else {
            self.ask_for(field(FuelPart::Price), problems::GIVE_PRICE_PLAN_WEIGHS);
            return None;
        };
        let pump = Pump {
            share: offer.share,
            extras: fuel.content.extras,
            price,
            ron: offer.ron,
            limit: offer.limit,
            closed,
        };
        Some((pump, fuel.rate))
    }
}
