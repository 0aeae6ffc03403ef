//! Time and will: the medic's word, availability, rest, what the body has taken that day, and
//! consent.

use jiff::{SignedDuration, Timestamp};

use super::{
    answer::Answer,
    days::{between, count},
};
use crate::{person::Person, requirement::Context};

/// More rest than any rule asks: an hour figure beyond it is a slip, and is never met.
const MOST_REST_HOURS: f64 = 10_000.0;

pub(super) fn medical_clearance(person: &Person, context: &Context) -> Answer {
    let ask = |reason: String| {
        Answer::curable(
            reason,
            "the medic's word that they are fit".into(),
            context.day,
            context,
        )
    };
    match person.medically_clear_until {
        Some(until) if until >= context.day => Answer::met(format!(
            "Medically clear through {until}, {} past the shooting day",
            count(between(context.day, until))
        )),
        Some(until) => ask(format!(
            "Medically clear only through {until}, {} short of the shooting day",
            count(between(until, context.day))
        )),
        None => ask("No medical clearance on record".into()),
    }
}

pub(super) fn availability(person: &Person, context: &Context) -> Answer {
    let day = context.day;
    let mut covering = person
        .availability
        .iter()
        .filter(|run| run.from <= day && day <= run.to)
        .peekable();
    if covering.peek().is_none() {
        return Answer::curable(
            format!("Nothing on record says whether they can work on {day}"),
            "asking them".into(),
            day,
            context,
        );
    }
    // Where two runs disagree, the refusal stands until somebody clears it up.
    match covering.find(|run| !run.available) {
        Some(run) => Answer::not_met(format!(
            "Not available from {} through {}",
            run.from, run.to
        )),
        None => Answer::met(format!("Available on {day}")),
    }
}

pub(super) fn rest(hours: f64, person: &Person, context: &Context) -> Answer {
    if !(0.0..=MOST_REST_HOURS).contains(&hours) {
        return Answer::not_met(format!("A rest of {hours} h is not a figure to judge by"));
    }
    let Some(wrap) = person.last_wrap else {
        return Answer::curable(
            "No last wrap on record, so rest is unknown".into(),
            "asking when they last wrapped".into(),
            context.day,
            context,
        );
    };
    let Some(call) = context.call else {
        return Answer::curable(
            format!(
                "The call is not set, so rest since the wrap at {} is unknown",
                minute(wrap)
            ),
            "setting the call".into(),
            context.day,
            context,
        );
    };
    let rested = call.duration_since(wrap);
    if rested.is_negative() {
        return Answer::not_met(format!(
            "Still working until {}, after the call",
            minute(wrap)
        ));
    }
    let needed = SignedDuration::from_secs_f64(hours * 3600.0);
    if rested >= needed {
        Answer::met(format!(
            "{} of rest where {} is needed",
            clock(rested),
            clock(needed)
        ))
    } else {
        let earliest = wrap.checked_add(needed).map_or_else(
            |_| String::new(),
            |at| format!("; a call at {} would do", minute(at)),
        );
        Answer::not_met(format!(
            "{} of rest where {} is needed, {} short{earliest}",
            clock(rested),
            clock(needed),
            clock(needed - rested)
        ))
    }
}

pub(super) fn daily_exposure(
    exposure: &str,
    adds: u32,
    max: u32,
    person: &Person,
    context: &Context,
) -> Answer {
    let so_far = person
        .exposures
        .iter()
        .filter(|taken| taken.kind == exposure && taken.on == context.day)
        .fold(0_u32, |sum, taken| sum.saturating_add(taken.count));
    let total = so_far.saturating_add(adds);
    let what = exposure.replace('_', " ");
    let sum = format!("{so_far} taken that day and {adds} here make {total} for {what}");
    if total <= max {
        Answer::met(format!(
            "{sum} where {max} is the most, {} to spare",
            max - total
        ))
    } else {
        Answer::not_met(format!(
            "{sum} where {max} is the most, {} over",
            total - max
        ))
    }
}

pub(super) fn consent(person: &Person, context: &Context) -> Answer {
    let revision = context.revision;
    let of_gag = || {
        person
            .consents
            .iter()
            .filter(|consent| consent.gag == context.gag)
    };
    // Consent can be withdrawn and given again: the last word on this revision counts.
    match of_gag().rfind(|consent| consent.revision == revision) {
        Some(consent) => match consent.withdrawn {
            None => Answer::met(format!("Consents to revision {revision}")),
            Some(at) => Answer::not_met(format!(
                "Withdrew consent to revision {revision} at {}",
                minute(at)
            )),
        },
        None => {
            let reason = match of_gag().map(|consent| consent.revision).max() {
                Some(other) => format!("Consented to revision {other}, not to revision {revision}"),
                None => format!("Has not consented to revision {revision}"),
            };
            Answer::curable(
                reason,
                "their own consent to this revision".into(),
                context.day,
                context,
            )
        }
    }
}

/// "11 h" or "10 h 45 min".
fn clock(duration: SignedDuration) -> String {
    let minutes = duration.as_mins();
    match minutes % 60 {
        0 => format!("{} h", minutes / 60),
        rest => format!("{} h {rest} min", minutes / 60),
    }
}

/// A moment to the minute, UTC.
fn minute(at: Timestamp) -> String {
    at.strftime("%Y-%m-%d %H:%M UTC").to_string()
}
