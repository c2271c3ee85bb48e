//! Currencies beside the own one: what each is worth, and what was typed in it.

use super::file::{Document, Settings};
use super::rate::RateForm;
use crate::quantity::UnitPrice;
use crate::quantity::notation::{Currency, Entry, Rate, parse_money, parse_number, parse_price};

/// Rates that are taken. They stay below 1000, so that none has a second reading.
pub(crate) const RATES: std::ops::RangeInclusive<f64> = 1e-6..=999.999;

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
    pub(crate) fn is_own(&self, currency: Currency) -> bool {
        self.currency.trim().is_empty()
            || Currency::named(&self.currency).is_some_and(|own| currency.stands_for(own))
    }

    /// A currency by its name, where it is another than the own one. While none was
    /// chosen, none is the own one.
    pub(crate) fn other_than_own(&self, name: &str) -> Option<Currency> {
        let none = self.currency.trim().is_empty();
        Currency::named(name).filter(|it| none || !self.is_own(*it))
    }

    /// The rate of what was typed, where it is in another currency and the rate is known.
    pub(crate) fn known_rate(&self, currency: Option<Currency>) -> Option<Rate> {
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

/// Names the currency of a price that was typed without one.
pub(crate) fn name_price(entry: &mut Entry, currency: Currency) {
    if parse_price(&entry.text, entry.typed_in).is_ok_and(|it| it.currency.is_none()) {
        entry.text = format!("{currency} {}", entry.text.trim());
    }
}

/// Names the currency of a sum that was typed without one.
pub(crate) fn name_sum(text: &mut String, currency: Currency) {
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
