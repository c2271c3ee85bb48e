//! Money in other currencies than the person's own. What was typed in another one is
//! never taken as if it were in the own one: it is changed at a rate that the person
//! gives, or asked about.


use super::complaint::Field;
use super::document::{Document, Settings};
use super::forms::Entry;
use super::rate::RateForm;
use super::reader::{Optional, Reader};
use crate::quantity::notation::{
    Currency, InCurrency, Rate, Units, parse_money, parse_number, parse_price,
};
use crate::quantity::{Money, UnitPrice};

/// Rates that are taken. They stay below 1000, so that none has a second reading.
const RATES: std::ops::RangeInclusive<f64> = 1e-6..=999.999;

impl Settings {
    /// The rate of a currency, as it was typed for the own currency of today.
    pub fn rate_of(&self, currency: Currency) -> Option<&RateForm> {
        self.rates.iter().find(|form| self.is_for(form, currency))
    }

    fn is_for(&self, form: &RateForm, currency: Currency) -> bool {
        let (to, own) = (Currency::named(&form.to), Currency::named(&self.currency));
        Currency::named(&form.from) == Some(currency)
            && (form.to.trim() == self.currency.trim() || (own.is_some() && to == own))
    }

    /// Notes a rate and the day on which it was typed.
    pub fn set_rate(&mut self, currency: Currency, rate: String, typed_on: String) {
        let at = self.rates.iter().position(|form| self.is_for(form, currency));
        let to = self.currency.clone();
        let form = RateForm { from: currency.to_string(), to, rate, typed_on };
        match at {
            Some(at) => self.rates[at] = form,
            None => self.rates.push(form),
        }
    }

    /// Whether a currency is the own one; so is any while none was chosen.
    fn is_own(&self, currency: Currency) -> bool {
        self.currency.trim().is_empty()
            || Currency::named(&self.currency).is_some_and(|own| currency.stands_for(own))
    }

    /// A currency by its name, where it is another than the own one. While none was
    /// chosen, none is the own one.
    pub(super) fn other_than_own(&self, name: &str) -> Option<Currency> {
        let none = self.currency.trim().is_empty();
        Currency::named(name).filter(|it| none || !self.is_own(*it))
    }

    /// The rate of what was typed, where it is in another currency and the rate is known.
    fn known_rate(&self, currency: Option<Currency>) -> Option<Rate> {
        let currency = currency.filter(|it| !self.is_own(*it))?;
        let factor = parse_number(&self.rate_of(currency)?.rate, RATES).ok()?;
        Some(Rate { currency, factor })
    }
}

impl Document {
    /// The other currencies in which something was typed for the fill or the route at
    /// hand, in the order of their names.
    pub fn other_currencies(&self) -> Vec<Currency> {
        let (fill, route) = (&self.here.fill, &self.here.route);
        let of_price = |entry: &Entry| {
            parse_price(&entry.text, entry.typed_in).ok().and_then(|it| it.currency)
        };
        let of_money = |text: &String| parse_money(text).ok().and_then(|it| it.currency);
        let along = route.stops.iter().flat_map(|stop| &stop.fuels);
        let prices = fill.offers.iter().chain(along).filter_map(|fuel| of_price(&fuel.price));
        let fees = route.stops.iter().map(|stop| &stop.fee);
        let sums = fees.chain([&fill.stop_money, &route.budget]).filter_map(of_money);
        let mut all: Vec<Currency> =
            prices.chain(sums).filter(|it| !self.settings.is_own(*it)).collect();
        all.sort_by_key(Currency::to_string);
        all.dedup();
        all
    }
}

/// How a reader changes money.
pub(super) struct Exchange<'a> {
    settings: &'a Settings,
    /// The first currency that was met while the person has none.
    first: Option<Currency>,
}

impl<'a> Exchange<'a> {
    pub(super) fn of(settings: &'a Settings) -> Self {
        Self { settings, first: None }
    }

    /// The rate for what stands in this currency; none where it is the own one.
    fn rate(&mut self, currency: Option<Currency>) -> Result<Option<Rate>, Refusal> {
        let Some(currency) = currency else { return Ok(None) };
        if self.settings.currency.trim().is_empty() {
            let first = *self.first.get_or_insert(currency);
            return if currency.stands_for(first) || first.stands_for(currency) {
                Ok(None)
            } else {
                Err(Refusal::NoOwn { currency, first })
            };
        }
        if self.settings.is_own(currency) {
            return Ok(None);
        }
        let typed = self.settings.rate_of(currency).filter(|form| !form.rate.trim().is_empty());
        let Some(typed) = typed else { return Err(Refusal::NoRate { currency }) };
        match parse_number(&typed.rate, RATES) {
            Ok(factor) => Ok(Some(Rate { currency, factor })),
            Err(error) => Err(Refusal::Unreadable { currency, error: error.to_string() }),
        }
    }
}

/// Why money cannot be changed.
enum Refusal {
    NoOwn { currency: Currency, first: Currency },
    NoRate { currency: Currency },
    Unreadable { currency: Currency, error: String },
}

impl Reader<'_> {
    /// The rate at which to change what stands in this currency: none where it is the
    /// own one.
    fn rate(&mut self, field: Field, currency: Option<Currency>) -> Optional<Rate> {
        // Without settings nothing is compared.
        let Some(exchange) = &mut self.exchange else { return Some(None) };
        let own = exchange.settings.currency.trim();
        match exchange.rate(currency) {
            Ok(rate) => Some(rate),
            Err(Refusal::NoOwn { currency, first }) => {
                let message = format!(
                    "This is in {currency}, other money is in {first}. Give your own currency \
                     under Car, and what the other one is worth in it."
                );
                self.complain(field, message);
                None
            }
            Err(Refusal::NoRate { currency }) => {
                let message = format!(
                    "This is in {currency}, and you count in {own}. Give under Car what 1 \
                     {currency} is in {own}, or type it in {own}."
                );
                let missing = format!("Give what 1 {currency} is in {own}.");
                self.complain(field, message);
                self.complain_once(Field::Rate(currency), missing);
                None
            }
            Err(Refusal::Unreadable { currency, error }) => {
                let message =
                    format!("The rate of {currency} cannot be read. Correct it under Car.");
                self.complain(field, message);
                self.complain_once(Field::Rate(currency), error);
                None
            }
        }
    }

    fn complain_once(&mut self, field: Field, message: String) {
        if self.complaints.iter().all(|it| it.field != field) {
            self.complain(field, message);
        }
    }

    /// A sum of money in the own currency.
    pub(super) fn money(&mut self, field: Field, text: &str) -> Optional<Money> {
        let Some(InCurrency { value, currency }) = self.optional(field, text, parse_money)? else {
            return Some(None);
        };
        let rate = self.rate(field, currency)?;
        self.take(field, Money::new(value.amount() * rate.map_or(1.0, |it| it.factor))).map(Some)
    }

    /// A price in the own currency, and the rate at which it was changed, if it was.
    pub(super) fn price(
        &mut self,
        field: Field,
        text: &str,
        units: Units,
    ) -> Optional<(UnitPrice, Option<Rate>)> {
        let read = self.optional(field, text, |text| parse_price(text, units))?;
        let Some(InCurrency { value, currency }) = read else { return Some(None) };
        let rate = self.rate(field, currency)?;
        Some(Some((rate.map_or(value, |rate| rate.to_own(value)), rate)))
    }
}

/// Names the currency of a price that was typed without one.
pub(super) fn name_price(entry: &mut Entry, currency: Currency) {
    if parse_price(&entry.text, entry.typed_in).is_ok_and(|it| it.currency.is_none()) {
        entry.text = format!("{currency} {}", entry.text.trim());
    }
}

/// Names the currency of a sum that was typed without one.
pub(super) fn name_sum(text: &mut String, currency: Currency) {
    if parse_money(text).is_ok_and(|it| it.currency.is_none()) {
        *text = format!("{currency} {}", text.trim());
    }
}

/// A price that was typed in another currency, in the own one.
#[derive(Clone, Debug, PartialEq)]
pub struct Exchanged {
    /// The price in the own currency.
    pub price: UnitPrice,
    /// The rate.
    pub rate: Rate,
    /// The day on which the rate was typed.
    pub typed_on: String,
}

impl Settings {
    /// A typed price in the own currency, where it is in another one whose rate is known.
    pub fn exchanged(&self, price: &Entry) -> Option<Exchanged> {
        let read = parse_price(&price.text, price.typed_in).ok()?;
        let rate = self.known_rate(read.currency)?;
        let typed_on = self.rate_of(rate.currency)?.typed_on.clone();
        Some(Exchanged { price: rate.to_own(read.value), rate, typed_on })
    }
}
