//! Skills: a level, and whether it was used or assessed lately enough. Grade and recency are
//! separate facts; a check-ride mends recency and never the grade.

use jiff::civil::Date;

use super::{
    answer::Answer,
    days::{between, count, plus},
};
use crate::{
    catalogue::Catalogue,
    person::{Person, Skill},
    requirement::Context,
};

/// Levels run from 0 to this.
const HIGHEST_LEVEL: u8 = 5;

pub(super) fn skill(
    name: &str,
    level: u8,
    within_days: Option<u32>,
    person: &Person,
    context: &Context,
    catalogue: &Catalogue,
) -> Answer {
    let title = catalogue.skill_title(name);
    person
        .skills
        .iter()
        .filter(|held| held.name == name)
        .map(|held| one(title, held, level, within_days, context))
        .min_by_key(|answer| answer.standing)
        .unwrap_or_else(|| {
            Answer::not_met(format!(
                "No grade for {title} on record, level {level} is needed"
            ))
            .ranked(&[0.0, 0.0])
        })
}

fn one(
    title: &str,
    held: &Skill,
    level: u8,
    within_days: Option<u32>,
    context: &Context,
) -> Answer {
    if held.level > HIGHEST_LEVEL {
        return Answer::not_met(format!(
            "Level {} for {title} is off the scale of 0 to {HIGHEST_LEVEL}, so it proves nothing",
            held.level
        ))
        .ranked(&[0.0, 0.0]);
    }
    if held.level < level {
        return Answer::not_met(format!(
            "Level {} for {title} where {level} is needed, {} short",
            held.level,
            level - held.level
        ))
        .ranked(&[0.0, 0.0]);
    }
    let grade = format!("Level {} for {title} where {level} is needed", held.level);
    let answer = match within_days {
        None => Answer::met(grade),
        Some(limit) => recency(grade, held, limit, context),
    };
    let recent = match (within_days, last_seen(held, context.day)) {
        (None, _) => 1.0,
        (Some(limit), Some((seen, _))) => {
            1.0 - share(between(seen, context.day), i64::from(limit.max(1)))
        }
        (Some(_), None) => 0.0,
    };
    let beyond = if level >= HIGHEST_LEVEL {
        1.0
    } else {
        f64::from(held.level - level) / f64::from(HIGHEST_LEVEL - level)
    };
    answer.ranked(&[beyond, recent])
}

fn recency(grade: String, held: &Skill, limit: u32, context: &Context) -> Answer {
    let gap = last_seen(held, context.day).map(|(seen, how)| (between(seen, context.day), how));
    match gap {
        Some((days, how)) if days <= i64::from(limit) => Answer::met(format!(
            "{grade}, {how} {} before the shooting day (at most {limit})",
            count(days)
        )),
        Some((days, how)) => check_ride(
            format!(
                "{grade}, but {how} {} before the shooting day, {} past the limit of {limit}",
                count(days),
                count(days - i64::from(limit))
            ),
            context,
        ),
        None => check_ride(
            format!(
                "{grade}, but no use or assessment before the shooting day is on record \
                 (at most {})",
                count(i64::from(limit))
            ),
            context,
        ),
    }
}

fn check_ride(reason: String, context: &Context) -> Answer {
    let by = plus(context.day, -1);
    Answer::curable(
        reason,
        "a check-ride before the shooting day".into(),
        by,
        context,
    )
}

/// The later of last use and assessment, and which it was. What happens after the shooting day says
/// nothing about that day.
fn last_seen(held: &Skill, day: Date) -> Option<(Date, &'static str)> {
    let used = held
        .last_used
        .filter(|used| *used <= day)
        .map(|used| (used, "last used"));
    let assessed = held
        .assessed_on
        .filter(|assessed| *assessed <= day)
        .map(|on| (on, "assessed"));
    // On the same day, use is the stronger word.
    match (used, assessed) {
        (Some(used), Some(assessed)) if assessed.0 > used.0 => Some(assessed),
        (Some(used), _) => Some(used),
        (None, assessed) => assessed,
    }
}

#[expect(
    clippy::cast_precision_loss,
    reason = "days in a calendar are far below 2^52"
)]
fn share(part: i64, whole: i64) -> f64 {
    part as f64 / whole as f64
}
