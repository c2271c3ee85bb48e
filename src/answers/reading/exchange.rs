//! Money in other currencies than the person's own. What was typed in another one is
//! never taken as if it were in the own one: it is changed at a rate that the person
//! gives, or asked about.

use super::{Optional, Reader};
use crate::answers::problem::FieldProblem;
use crate::document::{Field, RATES, Settings};
use crate::message::keys::problems;
use crate::quantity::notation::{
    Currency, InCurrency, NumberError, Rate, Units, parse_money, parse_number, parse_price,
};
use crate::quantity::{Money, UnitPrice};

/// How a reader changes money.
pub(crate) struct Exchange<'a> {
    settings: &'a Settings,
    /// The first currency that was met while the person has none.
    first: Option<Currency>,
}

impl<'a> Exchange<'a> {
    pub(crate) fn of(settings: &'a Settings) -> Self {
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
            Err(error) => Err(Refusal::Unreadable { currency, error }),
        }
    }
}

/// Why money cannot be changed.
enum Refusal {
    NoOwn { currency: Currency, first: Currency },
    NoRate { currency: Currency },
    Unreadable { currency: Currency, error: NumberError },
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
                let no_own = problems::CurrencyNoOwn {
                    currency: currency.to_string(),
                    other: first.to_string(),
                };
                self.report(field, no_own.sentence());
                None
            }
            Err(Refusal::NoRate { currency }) => {
                let currency_name = currency.to_string();
                let no_rate = problems::CurrencyNoRate { currency: &currency_name, own };
                let missing = problems::RateMissing { currency: &currency_name, own };
                self.report(field, no_rate.sentence());
                self.report_once(Field::Rate(currency), missing.sentence());
                None
            }
            Err(Refusal::Unreadable { currency, error }) => {
                let unreadable = problems::RateUnreadable { currency: currency.to_string() };
                self.report(field, unreadable.sentence());
                self.report_once(Field::Rate(currency), error);
                None
            }
        }
    }

    fn report_once(&mut self, field: Field, problem: impl Into<FieldProblem>) {
        if self.field_errors.iter().all(|it| it.field != field) {
            self.report(field, problem);
        }
    }

    /// A sum of money in the own currency.
    pub(crate) fn money(&mut self, field: Field, text: &str) -> Optional<Money> {
        let Some(InCurrency { value, currency }) = self.optional(field, text, parse_money)? else {
            return Some(None);
        };
        let rate = self.rate(field, currency)?;
        self.take(field, Money::new(value.amount() * rate.map_or(1.0, |it| it.factor))).map(Some)
    }

    /// A price in the own currency, and the rate at which it was changed, if it was.
    pub(crate) fn price(
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
