//! The server's one look at the clock. Everything further in is handed the time as an argument.

use jiff::{RoundMode, Timestamp, TimestampRound, Unit};

/// The present moment in whole milliseconds, which every store and every JavaScript clock can hold
/// without losing digits.
#[allow(clippy::disallowed_methods)] // this is the edge that asks
pub fn now() -> Timestamp {
    let now = Timestamp::now();
    now.round(
        TimestampRound::new()
            .smallest(Unit::Millisecond)
            .mode(RoundMode::Trunc),
    )
    .unwrap_or(now)
}
