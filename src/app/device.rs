//! What only the device knows: chance, the clock, and how it writes numbers.

use fillwright::logbook::Id;
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
