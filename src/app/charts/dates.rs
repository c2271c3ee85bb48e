//! Which dates to write under an axis.

/// Minutes of a day.
const DAY: i64 = 24 * 60;

/// 1970 began on a Thursday; the first Monday was the fifth.
const MONDAY: i64 = 4 * DAY;

/// The distance of two ticks. They are on round times: a full hour, midnight, a
/// Monday, the first of a month, of a quarter, of a year.
#[derive(Clone, Copy)]
enum Step {
    Minutes(i64),
    Months(i64),
}

const STEPS: [Step; 22] = [
    Step::Minutes(1),
    Step::Minutes(5),
    Step::Minutes(15),
    Step::Minutes(30),
    Step::Minutes(60),
    Step::Minutes(2 * 60),
    Step::Minutes(3 * 60),
    Step::Minutes(6 * 60),
    Step::Minutes(12 * 60),
    Step::Minutes(DAY),
    Step::Minutes(2 * DAY),
    Step::Minutes(3 * DAY),
    Step::Minutes(7 * DAY),
    Step::Minutes(14 * DAY),
    Step::Months(1),
    Step::Months(2),
    Step::Months(3),
    Step::Months(6),
    Step::Months(12),
    Step::Months(24),
    Step::Months(60),
    Step::Months(120),
];

/// Ticks of an axis of time.
#[derive(Debug, PartialEq)]
pub(super) struct DateTicks {
    /// Where they are, in minutes since 1970.
    pub(super) minutes: Vec<i64>,
    /// Whether they need the time of day.
    pub(super) with_time: bool,
}

/// More ticks than these say no more.
const MOST: usize = 6;

/// The densest round times between two that are as many minutes apart as their
/// labels need, which is more with the time of day. Where no two are, the ends
/// themselves.
pub(super) fn date_ticks(from: i64, to: i64, apart: impl Fn(bool) -> i64) -> DateTicks {
    for step in STEPS {
        let with_time = matches!(step, Step::Minutes(minutes) if minutes < DAY);
        let apart = apart(with_time);
        let mut minutes = vec![step.first_from(from)];
        while let Some(last) = minutes.last().copied().filter(|_| minutes.len() <= MOST) {
            let next = step.first_from(last + 1);
            if next > to || next - last < apart {
                break;
            }
            minutes.push(next);
        }
        let all = minutes.last().is_some_and(|last| step.first_from(last + 1) > to);
        if all && (2..=MOST).contains(&minutes.len()) {
            return DateTicks { minutes, with_time };
        }
    }
    let minutes = if from < to { vec![from, to] } else { vec![from] };
    DateTicks { minutes, with_time: to - from < 2 * DAY }
}

impl Step {
    /// The first round time that is not before another.
    fn first_from(self, minute: i64) -> i64 {
        match self {
            Self::Minutes(step) => minute + (MONDAY - minute).rem_euclid(step),
            Self::Months(step) => {
                let before = month_of(minute.div_euclid(DAY)).div_euclid(step) * step;
                let start = first_of(before) * DAY;
                if start < minute { first_of(before + step) * DAY } else { start }
            }
        }
    }
}

/// The first day of a month, in days since 1970; months count from January of the
/// year 0. With years that begin in March the leap day comes last, and the lengths
/// of the months repeat every five: 31, 30, 31, 30, 31.
fn first_of(month: i64) -> i64 {
    let since_march = month - 2;
    let (year, month) = (since_march.div_euclid(12), since_march.rem_euclid(12));
    let leap_days = year.div_euclid(4) - year.div_euclid(100) + year.div_euclid(400);
    365 * year + leap_days + (153 * month + 2) / 5 - 719_468
}

/// The month of a day.
fn month_of(day: i64) -> i64 {
    // 400 years have 4,800 months in 146,097 days; the guess is at most one off.
    let guess = 1970 * 12 + (day * 4800).div_euclid(146_097);
    if first_of(guess + 1) <= day {
        guess + 1
    } else if first_of(guess) > day {
        guess - 1
    } else {
        guess
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Days since 1970 as `date -u -d DATE +%s` gives them, divided by 86,400.
    const KNOWN: [(i64, i64, i64); 7] = [
        (1970, 1, 0),
        (1969, 12, -31),
        (2000, 2, 10_988),
        (2000, 3, 11_017),
        (2024, 3, 19_783),
        (2025, 3, 20_148),
        (2100, 3, 47_541),
    ];

    fn month(year: i64, month: i64) -> i64 {
        year * 12 + month - 1
    }

    fn minute(day: i64, hour: i64) -> i64 {
        day * DAY + hour * 60
    }

    #[test]
    fn months_begin_when_the_calendar_says() {
        for (year, number, day) in KNOWN {
            assert_eq!(first_of(month(year, number)), day, "{year}-{number}");
            assert_eq!(month_of(day), month(year, number), "{year}-{number}");
            assert_eq!(month_of(day - 1), month(year, number) - 1, "before {year}-{number}");
        }
    }

    #[test]
    fn every_day_lies_in_its_month() {
        for day in -40_000..80_000 {
            let month = month_of(day);
            assert!(first_of(month) <= day && day < first_of(month + 1), "day {day}");
        }
    }

    #[test]
    fn a_day_gets_round_hours() {
        let ticks = date_ticks(minute(20_000, 7) + 12, minute(20_000, 21), |_| 150);
        assert_eq!(ticks.minutes, [9, 12, 15, 18, 21].map(|hour| minute(20_000, hour)));
        assert!(ticks.with_time);
    }

    #[test]
    fn weeks_begin_on_mondays() {
        // 2024-10-01 was a Tuesday, 19,997 days after 1970 began.
        let ticks = date_ticks(minute(19_997, 0), minute(20_020, 0), |_| 5 * DAY);
        assert_eq!(ticks.minutes, [20_003, 20_010, 20_017].map(|day| minute(day, 0)));
        assert!(!ticks.with_time);
    }

    #[test]
    fn years_begin_in_january() {
        let ticks = date_ticks(minute(19_000, 0), minute(20_148, 0), |_| 200 * DAY);
        let starts = [2023, 2024, 2025].map(|year| first_of(month(year, 1)) * DAY);
        assert_eq!(ticks.minutes, starts);
    }

    #[test]
    fn there_are_two_ticks_or_more_with_room_between() {
        for span in (0..26).map(|power| (1_i64 << power) + 3 * power) {
            for parts in 2..9 {
                let from = 28_800_017;
                let (to, apart) = (from + span, span / parts);
                let DateTicks { minutes, .. } = date_ticks(from, to, |_| apart);
                assert!((2..=MOST).contains(&minutes.len()), "{span} minutes, {parts}");
                assert!(minutes.windows(2).all(|pair| pair[1] - pair[0] >= apart.max(1)));
                assert!(minutes.iter().all(|it| (from..=to).contains(it)));
            }
        }
    }

    #[test]
    fn the_time_of_day_is_left_out_where_it_has_no_room() {
        let needs = |with_time| if with_time { 2 * DAY } else { DAY };
        let ticks = date_ticks(minute(20_000, 7), minute(20_003, 21), needs);
        assert_eq!(ticks.minutes, [20_001, 20_002, 20_003].map(|day| minute(day, 0)));
        assert!(!ticks.with_time);
    }

    #[test]
    fn one_time_gets_one_tick() {
        let ticks = date_ticks(17, 17, |_| 0);
        assert_eq!(ticks, DateTicks { minutes: vec![17], with_time: true });
    }
}
