//! The moment of an entry: a minute, as the clock showed it where it happened.

use serde::{Deserialize, Serialize};
use time::format_description::well_known::Rfc3339;
use time::{OffsetDateTime, UtcOffset};

/// Why a text is not a moment.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("{self:?}")]
pub struct MomentError {
    /// What was given.
    pub given: String,
}

/// When something happened: a minute, as the clock showed it where it happened,
/// with that clock's distance from UTC (RFC 3339).
///
/// ```
/// use fillwright::document::Moment;
/// let home = Moment::new("2026-05-03T17:40", 120)?;
/// let abroad = Moment::new("2026-05-03T17:00", 60)?;
/// assert!(home < abroad); // 15:40 and 16:00 UTC
/// assert_eq!(home.local(), "2026-05-03T17:40");
/// # Ok::<(), fillwright::document::MomentError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub struct Moment(OffsetDateTime);

impl Moment {
    /// From what the clock showed, `2026-05-03T17:40`, and how many minutes it
    /// was ahead of UTC.
    ///
    /// # Errors
    /// When the text is no date with a time between the years 0 and 9999, or the
    /// offset is a day or more.
    pub fn new(local: &str, minutes_ahead: i32) -> Result<Self, MomentError> {
        let error = || MomentError { given: local.chars().take(40).collect() };
        let utc = Self::parse(&format!("{local}:00Z")).ok_or_else(error)?;
        let offset =
            minutes_ahead.checked_mul(60).and_then(|s| UtcOffset::from_whole_seconds(s).ok());
        Ok(Self(utc.replace_offset(offset.ok_or_else(error)?)))
    }

    fn parse(text: &str) -> Option<OffsetDateTime> {
        OffsetDateTime::parse(text, &Rfc3339).ok()
    }

    /// What the clock showed: `2026-05-03T17:40`.
    pub fn local(self) -> String {
        let mut text = String::from(self);
        text.truncate("2026-05-03T17:40".len());
        text
    }

    /// How many minutes that clock was ahead of UTC.
    pub fn minutes_ahead(self) -> i32 {
        self.0.offset().whole_seconds() / 60
    }

    /// Minutes since the beginning of 1970, in UTC.
    pub fn minutes(self) -> i64 {
        self.0.unix_timestamp().div_euclid(60)
    }

    /// Minutes since the beginning of 1970, as the clock showed them.
    pub fn local_minutes(self) -> i64 {
        (self.0.unix_timestamp() + i64::from(self.0.offset().whole_seconds())).div_euclid(60)
    }
}

impl TryFrom<String> for Moment {
    type Error = MomentError;

    fn try_from(text: String) -> Result<Self, MomentError> {
        Self::parse(&text).map(Self).ok_or(MomentError { given: text })
    }
}

impl From<Moment> for String {
    fn from(moment: Moment) -> Self {
        // A moment that was read can be written: its year has four digits.
        moment.0.format(&Rfc3339).unwrap_or_default()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// RFC 3339, section 5.8: these two are the same instant.
    #[test]
    fn the_examples_of_the_standard() {
        let read = |text: &str| Moment::try_from(text.to_owned()).unwrap();
        assert!(read("1996-12-19T16:39:57-08:00") <= read("1996-12-20T00:39:57Z"));
        assert!(read("1996-12-19T16:39:57-08:00") >= read("1996-12-20T00:39:57Z"));
        assert_eq!(read("1996-12-19T16:39:57-08:00").local(), "1996-12-19T16:39");
        assert_eq!(String::from(read("1937-01-01T12:00:27+00:20")), "1937-01-01T12:00:27+00:20");
    }

    /// 2001-09-09T01:46:40Z is 1,000,000,000 seconds after 1970 began.
    #[test]
    fn minutes_are_counted_as_the_clock_showed_them() {
        let here = Moment::new("2001-09-09T03:46", 120).unwrap();
        assert_eq!(here.local_minutes(), 1_000_000_000 / 60 + 120);
        let before_1970 = Moment::new("1969-12-31T23:59", 0).unwrap();
        assert_eq!(before_1970.local_minutes(), -1);
    }

    #[test]
    fn what_is_no_moment_is_refused() {
        for text in ["", "2026-05-03", "17:40", "2026-02-30T10:00", "2026-05-03T25:00", "E30"] {
            assert!(Moment::new(text, 0).is_err(), "{text}");
        }
        assert!(Moment::new("2026-05-03T17:40", 24 * 60 * 2).is_err());
        assert!(Moment::new("2026-05-03T17:40", i32::MAX).is_err());
    }
}
