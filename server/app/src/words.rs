//! The words people read for states, quantities, times and requirements: one place, so that the
//! terminal and the printed packet say the same. Values in, text out.

use gagwright_casting::{FindingStanding, Measurement, Outcome, Requirement};
use gagwright_clearance::{BlockKind, ClearanceState, Decision, Load, ReadingKind, RoleState};
use gagwright_mechanics::{Bound, Check, Figure, Quantity, Source, Standing, Status, units};
use jiff::{Timestamp, civil::Date, tz::TimeZone};
use serde::Serialize;

/// A clearance in a word.
pub fn clearance(state: ClearanceState) -> &'static str {
    match state {
        ClearanceState::Cleared => "Cleared",
        ClearanceState::NotAsked => "Not asked yet",
        ClearanceState::Waiting => "Waiting",
        ClearanceState::Lapsed => "Lapsed",
        ClearanceState::Blocked => "Blocked",
        ClearanceState::Held => "Held",
    }
}

/// How a role stands, in a word.
pub fn role_state(state: RoleState) -> &'static str {
    match state {
        RoleState::Standing => "Stands",
        RoleState::Conditional => "Conditions open",
        RoleState::Missing => "Not signed",
        RoleState::Lapsed => "Lapsed",
        RoleState::Declined => "Declined",
    }
}

/// A verdict in a word.
pub fn outcome(outcome: Outcome) -> &'static str {
    match outcome {
        Outcome::Qualified => "Qualified",
        Outcome::Conditional => "Conditional",
        Outcome::NotQualified => "Not qualified",
    }
}

/// A finding in a word.
pub fn finding(standing: FindingStanding) -> &'static str {
    match standing {
        FindingStanding::Met => "Met",
        FindingStanding::Curable => "Curable",
        FindingStanding::NotMet => "Not met",
    }
}

/// A check's outcome in a word.
pub fn status(status: Status) -> &'static str {
    match status {
        Status::Within => "Within",
        Status::Marginal => "Marginal",
        Status::Unknown => "Unknown",
        Status::Exceeded => "Exceeded",
    }
}

/// A decision in words.
pub fn decision(decision: Decision) -> &'static str {
    match decision {
        Decision::Approve => "Approved",
        Decision::ApproveWithConditions => "Approved with conditions",
        Decision::Decline => "Declined",
    }
}

/// What a test shot was shot with.
pub fn load(load: Load) -> &'static str {
    match load {
        Load::Bag => "Weight bag",
        Load::Person => "Person",
    }
}

/// What kind of thing stops a gag.
pub fn block(kind: BlockKind) -> &'static str {
    match kind {
        BlockKind::Hold => "Hold",
        BlockKind::Incident => "Frozen",
        BlockKind::Check => "Check",
        BlockKind::Inputs => "Inputs",
        BlockKind::Performer => "Performer",
        BlockKind::Condition => "Condition",
        BlockKind::Equipment => "Equipment",
        BlockKind::Decline => "Declined",
        BlockKind::Separation => "Two hats",
        BlockKind::Lapsed => "Lapsed",
        BlockKind::Unsigned => "Not signed",
        BlockKind::OpenCondition => "Open condition",
        BlockKind::Uncast => "Nobody cast",
        BlockKind::Undated => "No shooting day",
        BlockKind::Rehearsal => "Rehearsal",
    }
}

/// The machine name of any of the enums that serialise as one, with spaces.
pub fn named<T: Serialize>(value: &T) -> String {
    match serde_json::to_value(value) {
        Ok(serde_json::Value::String(name)) => name.replace('_', " "),
        _ => String::new(),
    }
}

/// What a reading measures, as a quantity.
pub fn reading_quantity(kind: ReadingKind) -> Option<Quantity> {
    kind.quantity()
}

/// A reading's value in both unit systems.
pub fn reading(kind: ReadingKind, value: f64) -> String {
    kind.say(value)
}

fn joined((number, unit): (String, &'static str)) -> String {
    match unit {
        "" => number,
        "°" => format!("{number}°"),
        _ => format!("{number} {unit}"),
    }
}

/// A value in metric.
pub fn metric(quantity: Quantity, si: f64) -> String {
    joined(units::format_metric(quantity, si))
}

/// A value in imperial.
pub fn imperial(quantity: Quantity, si: f64) -> String {
    joined(units::format_imperial(quantity, si))
}

/// A value in metric with imperial in brackets; once where both read the same.
pub fn both(quantity: Quantity, si: f64) -> String {
    let (metric, imperial) = (metric(quantity, si), imperial(quantity, si));
    if metric == imperial {
        metric
    } else {
        format!("{metric} ({imperial})")
    }
}

/// An interval with one way of writing values; empty when it has no width.
pub fn interval(low: f64, high: f64, say: impl Fn(f64) -> String) -> String {
    let (low, high) = (say(low), say(high));
    if low == high {
        String::new()
    } else {
        format!("{low} to {high}")
    }
}

/// A figure's interval in metric.
pub fn figure_interval(figure: &Figure) -> String {
    interval(figure.low, figure.high, |si| metric(figure.quantity, si))
}

/// A limit: "at most 8 m/s (17.9 mph)".
pub fn limit(check: &Check) -> String {
    let side = match check.limit.bound {
        Bound::AtMost => "at most",
        Bound::AtLeast => "at least",
    };
    format!("{side} {}", both(check.limit.quantity, check.limit.value))
}

/// Where a limit comes from and how far it can be leaned on: "EN 13411-3, table 1; published".
pub fn source_and_standing(source: &Source) -> String {
    let (text, leaning) = (self::source(source), standing(source.standing));
    if text.eq_ignore_ascii_case(leaning) {
        text
    } else {
        format!("{text}; {leaning}")
    }
}

/// Where a limit comes from.
pub fn source(source: &Source) -> String {
    let mut text = source.document.clone();
    for part in [&source.clause, &source.jurisdiction].into_iter().flatten() {
        text.push_str(", ");
        text.push_str(part);
    }
    text
}

/// How far a limit can be leaned on.
pub fn standing(standing: Standing) -> &'static str {
    match standing {
        Standing::Published => "published",
        Standing::FromMemory => "published, quoted from memory",
        Standing::CommonPractice => "common practice",
        Standing::Production => "set by the production",
        Standing::Plan => "stated in the plan",
    }
}

/// A day: "Mon 8 March 2027".
pub fn day(day: Date) -> String {
    day.strftime("%a %-d %B %Y").to_string()
}

/// A moment in the production's time zone: "Mon 8 March 2027, 07:30 (WET)".
pub fn moment(at: Timestamp, zone: &TimeZone) -> String {
    at.to_zoned(zone.clone())
        .strftime("%a %-d %B %Y, %H:%M (%Z)")
        .to_string()
}

/// A short moment for tables: "8 Mar 07:30".
pub fn short_moment(at: Timestamp, zone: &TimeZone) -> String {
    at.to_zoned(zone.clone())
        .strftime("%-d %b %H:%M")
        .to_string()
}

/// A production's time zone; UTC when this machine does not know it.
pub fn zone(name: &str) -> TimeZone {
    TimeZone::get(name).unwrap_or(TimeZone::UTC)
}

/// A body measurement's value.
pub fn measurement(of: Measurement, value: f64) -> String {
    match of {
        Measurement::Mass => both(Quantity::Mass, value),
        Measurement::Shoe => format!("EU {value}"),
        _ => both(Quantity::Length, value),
    }
}

/// A requirement in words.
pub fn requirement(requirement: &Requirement) -> String {
    match requirement {
        Requirement::Skill {
            name,
            level,
            within_days,
        } => {
            let skill = name.replace('_', " ");
            match within_days {
                Some(1) => format!("{skill}, level {level} or above, used within 1 day"),
                Some(days) => format!("{skill}, level {level} or above, used within {days} days"),
                None => format!("{skill}, level {level} or above"),
            }
        }
        Requirement::Certificate {
            any_of,
            category,
            cover_days,
        } => {
            let kinds: Vec<String> = any_of.iter().map(|kind| kind.replace('_', " ")).collect();
            let mut text = format!("certificate: {}", kinds.join(" or "));
            if let Some(category) = category {
                text.push_str(&format!(", category {category}"));
            }
            match cover_days {
                0 => {}
                1 => text.push_str(", valid 1 day past the shooting day"),
                days => text.push_str(&format!(", valid {days} days past the shooting day")),
            }
            text
        }
        Requirement::Measurement {
            of,
            target,
            tolerance,
        } => format!(
            "{} {} ± {}",
            named(of),
            measurement(*of, *target),
            measurement(*of, *tolerance)
        ),
        Requirement::KittedMass { min, max } => format!(
            "mass with kit {} to {}",
            both(Quantity::Mass, *min),
            both(Quantity::Mass, *max)
        ),
        Requirement::Age {
            min: Some(min),
            max: Some(max),
        } => format!("age {min} to {max}"),
        Requirement::Age {
            min: Some(min),
            max: None,
        } => format!("age {min} or over"),
        Requirement::Age {
            min: None,
            max: Some(max),
        } => format!("age {max} or under"),
        Requirement::Age {
            min: None,
            max: None,
        } => "any age".into(),
        Requirement::MedicalClearance => "fit, as the medic says".into(),
        Requirement::Availability => "available on the day".into(),
        Requirement::Rest { hours } => format!("{hours} h of rest before call"),
        Requirement::DailyExposure {
            exposure,
            adds,
            max,
        } => format!(
            "{} at most {max} a day, this gag adds {adds}",
            exposure.replace('_', " ")
        ),
        Requirement::Consent => "consent to this revision".into(),
    }
}
