//! Days counted and moved without ever leaving the calendar: figures from outside can be absurdly
//! large, and a date that would fall off the end stays at the end.

use jiff::{Span, civil::Date};

/// Days from one date to another; negative when `to` is earlier.
pub(crate) fn between(from: Date, to: Date) -> i64 {
    from.until(to).map_or(0, |span| i64::from(span.get_days()))
}

/// A date moved by days.
pub(crate) fn plus(date: Date, days: i64) -> Date {
    Span::new()
        .try_days(days)
        .map_or(if days < 0 { Date::MIN } else { Date::MAX }, |span| {
            date.saturating_add(span)
        })
}

/// A date moved by calendar months; the day of the month is pulled back where the month is shorter.
pub(crate) fn plus_months(date: Date, months: u32) -> Date {
    Span::new()
        .try_months(months)
        .map_or(Date::MAX, |span| date.saturating_add(span))
}

/// "1 day", "12 days".
pub(crate) fn count(days: i64) -> String {
    if days == 1 {
        "1 day".into()
    } else {
        format!("{days} days")
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use jiff::civil::date;

    #[test]
    fn days_never_leave_the_calendar() {
        assert_eq!(between(date(2027, 3, 8), date(2027, 3, 19)), 11);
        assert_eq!(between(date(2027, 3, 8), date(2027, 2, 28)), -8);
        assert_eq!(between(Date::MIN, Date::MAX), 7_304_483);
        assert_eq!(plus(date(2028, 2, 28), 1), date(2028, 2, 29));
        assert_eq!(plus(date(2027, 3, 1), -1), date(2027, 2, 28));
        assert_eq!(plus(date(2027, 3, 1), i64::from(u32::MAX)), Date::MAX);
        assert_eq!(plus(date(2027, 3, 1), i64::MIN), Date::MIN);
        assert_eq!(plus_months(date(2026, 8, 31), 6), date(2027, 2, 28));
        assert_eq!(plus_months(date(2027, 3, 1), u32::MAX), Date::MAX);
    }
}
