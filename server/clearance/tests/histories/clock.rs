//! Time in whole minutes since the evening before, so that the reference counts on its fingers.

use jiff::{Timestamp, civil};

/// Minutes in a day; day 0 is 12 March 2026 and begins at minute 0, UTC.
pub const DAY: i64 = 24 * 60;
/// The day the plan is for.
pub const SHOOT: i64 = 2;
/// When every history starts: seven in the morning of that day.
pub const MORNING: i64 = SHOOT * DAY + 7 * 60;

const FIRST: civil::Date = civil::date(2026, 3, 12);
const FIRST_SECOND: i64 = 1_773_273_600; // 2026-03-12T00:00:00Z, by `date -d`

pub fn moment(minute: i64) -> Timestamp {
    Timestamp::from_second(FIRST_SECOND + minute * 60).unwrap()
}

pub fn date(day: i64) -> civil::Date {
    FIRST
        .checked_add(jiff::Span::new().try_days(day).unwrap())
        .unwrap()
}

/// The day of a minute.
pub fn day_of(minute: i64) -> i64 {
    minute.div_euclid(DAY)
}

#[test]
fn minutes_are_what_they_say() {
    assert_eq!(moment(0), "2026-03-12T00:00:00Z".parse().unwrap());
    assert_eq!(moment(MORNING), "2026-03-14T07:00:00Z".parse().unwrap());
    assert_eq!(date(SHOOT), civil::date(2026, 3, 14));
}
