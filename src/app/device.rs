//! What only the device knows: chance, the clock, and how it writes numbers.

use fillwright::document::{Id, Moment, MomentError};
use fillwright::quantity::notation::DecimalMark;
use js_sys::{Date, Math, Number};
use leptos::prelude::window;

/// A new identity.
pub(crate) fn new_id() -> Id {
    let mut bytes = [0_u8; 10];
    let drawn = window().crypto().map(|it| it.get_random_values_with_u8_array(&mut bytes));
    if !matches!(drawn, Ok(Ok(_))) {
        // Telling things apart takes chance, not secrecy.
        #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "0 to 255")]
        bytes.fill_with(|| (Math::random() * 256.0) as u8);
    }
    Id::of_chance(bytes)
}

/// What the clock shows now: `2026-05-03T17:40`.
pub(crate) fn now() -> String {
    let now = Date::new_0();
    // The clock as it shows is UTC moved by the offset.
    let shown = now.get_time() - now.get_timezone_offset() * 60_000.0;
    let text = String::from(Date::new(&shown.into()).to_iso_string());
    text.chars().take("2026-05-03T17:40".len()).collect()
}

/// This moment.
pub(crate) fn this_moment() -> Result<Moment, MomentError> {
    let now = now();
    Moment::new(&now, minutes_ahead(&now))
}

/// How many minutes the clock here is ahead of UTC at a moment that it shows.
pub(crate) fn minutes_ahead(local: &str) -> i32 {
    let offset = Date::new(&local.into()).get_timezone_offset();
    // A text that is no moment is refused where it is read; any offset will do.
    if offset.is_nan() {
        return 0;
    }
    #[expect(clippy::cast_possible_truncation, reason = "less than a day of minutes")]
    let ahead = -offset as i32;
    ahead
}

/// The decimal mark that this device writes numbers with.
pub(crate) fn decimal_mark() -> DecimalMark {
    let sample = Number::from(0.5).to_locale_string("default");
    let sample = sample.as_string().unwrap_or_default();
    if sample.contains(',') { DecimalMark::Comma } else { DecimalMark::Point }
}

/// A moment, given in minutes since 1970 as the clock showed them, in the words
/// of this device: the date, and the time of day where that is wanted.
pub(crate) fn date(minute: i64, with_time: bool) -> String {
    #[expect(clippy::cast_precision_loss, reason = "minutes of any year are exact")]
    let date = Date::new(&(minute as f64 * 60_000.0).into());
    let options = js_sys::Object::new();
    let set = |key: &str, value: &str| {
        // Setting a property of a plain object cannot fail.
        let _ = js_sys::Reflect::set(&options, &key.into(), &value.into());
    };
    set("timeZone", "UTC");
    set("day", "numeric");
    set("month", "short");
    if with_time {
        set("year", "numeric");
        set("hour", "2-digit");
        set("minute", "2-digit");
    }
    String::from(date.to_locale_string("default", &options))
}
