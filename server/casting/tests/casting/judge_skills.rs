//! Skills: level and recency at their boundaries.

use gagwright_casting::{Catalogue, FindingStanding, Requirement, judge};
use jiff::civil::{Date, date};

use crate::builders::{DAY, assert_finding, context, judge_one, person, skill, slot};

use FindingStanding::{Curable, Met, NotMet};

/// 180 days before 2027-03-08, by the calendar: 2026-09-09.
const LIMIT: Date = date(2026, 9, 9);

#[test]
#[rustfmt::skip] // one case a line
fn level_and_recency_decide() {
    let ride = Some(date(2027, 3, 7));
    let cases: [(
        &str,
        u8,
        Option<Date>,
        Option<Date>,
        FindingStanding,
        &str,
        Option<Date>,
    ); 14] = [
        ("at the limit", 3, None, Some(LIMIT), Met, "180 days before", None),
        ("a day past it", 3, None, Some(date(2026, 9, 8)), Curable, "1 day past the limit", ride),
        ("a day inside", 3, None, Some(date(2026, 9, 10)), Met, "179 days before", None),
        ("on the day", 3, None, Some(DAY), Met, "last used 0 days before", None),
        ("assessed later than used", 3, Some(LIMIT), Some(date(2026, 1, 1)), Met, "assessed", None),
        ("used later than assessed", 3, Some(date(2026, 1, 1)), Some(LIMIT), Met, "last used", None),
        ("neither", 3, None, None, Curable, "no use or assessment", ride),
        ("used after the day only", 3, None, Some(date(2027, 3, 9)), Curable, "no use", ride),
        ("above the need", 5, None, Some(LIMIT), Met, "Level 5", None),
        ("one short", 2, None, Some(DAY), NotMet, "1 short", None),
        ("one short and stale", 2, None, None, NotMet, "1 short", None),
        ("untested", 0, None, Some(DAY), NotMet, "3 short", None),
        ("off the scale", 6, None, Some(DAY), NotMet, "off the scale", None),
        ("far off the scale", 255, None, Some(DAY), NotMet, "off the scale", None),
    ];
    let requirement = Requirement::Skill {
        name: "high_fall".into(),
        level: 3,
        within_days: Some(180),
    };
    for (case, level, assessed, used, standing, reason, by) in cases {
        let mut person = person("P01");
        person
            .skills
            .push(skill("high_fall", level, assessed, used));
        assert_finding(
            case,
            &judge_one(&requirement, &person, &context()),
            standing,
            reason,
            by,
        );
    }
}

#[test]
fn a_skill_not_on_record_is_not_met() {
    let requirement = Requirement::Skill {
        name: "high_fall".into(),
        level: 0,
        within_days: None,
    };
    let mut person = person("P01");
    person
        .skills
        .push(skill("wire_flight", 5, Some(DAY), Some(DAY)));
    let finding = judge_one(&requirement, &person, &context());
    assert_finding(
        "another skill",
        &finding,
        NotMet,
        "No grade for high fall",
        None,
    );
}

#[test]
fn recency_is_asked_only_where_the_slot_asks() {
    let requirement = Requirement::Skill {
        name: "high_fall".into(),
        level: 3,
        within_days: None,
    };
    let mut person = person("P01");
    person
        .skills
        .push(skill("high_fall", 3, None, Some(date(2001, 1, 1))));
    assert_finding(
        "old",
        &judge_one(&requirement, &person, &context()),
        Met,
        "Level 3",
        None,
    );
}

#[test]
fn the_best_of_several_grades_counts() {
    let requirement = Requirement::Skill {
        name: "high_fall".into(),
        level: 3,
        within_days: Some(180),
    };
    let mut person = person("P01");
    person.skills.push(skill("high_fall", 2, None, Some(DAY)));
    person.skills.push(skill("high_fall", 4, None, Some(DAY)));
    assert_finding(
        "two",
        &judge_one(&requirement, &person, &context()),
        Met,
        "Level 4",
        None,
    );
}

#[test]
fn a_check_ride_on_the_day_itself_is_too_late() {
    let requirement = Requirement::Skill {
        name: "high_fall".into(),
        level: 3,
        within_days: Some(180),
    };
    let mut person = person("P01");
    person
        .skills
        .push(skill("high_fall", 4, None, Some(date(2026, 1, 1))));
    let mut context = context();
    context.today = Some(date(2027, 3, 7));
    let finding = judge_one(&requirement, &person, &context);
    assert_finding(
        "the day before",
        &finding,
        Curable,
        "past the limit",
        Some(date(2027, 3, 7)),
    );
    context.today = Some(DAY);
    let finding = judge_one(&requirement, &person, &context);
    assert_finding(
        "on the day",
        &finding,
        NotMet,
        "too late for a check-ride",
        None,
    );
}

#[test]
fn fit_is_levels_beyond_the_need_and_recency() {
    let fit = |level, within_days, held, used| {
        let mut person = person("P01");
        person
            .skills
            .push(skill("high_fall", held, None, Some(used)));
        let requirement = Requirement::Skill {
            name: "high_fall".into(),
            level,
            within_days,
        };
        judge(
            &slot(vec![requirement]),
            &person,
            &context(),
            Catalogue::built_in(),
        )
        .fit
    };
    // By hand from the rule: level 4 over need 3 of 5 is half; 45 of 180 days is three quarters.
    assert_eq!(fit(3, Some(180), 4, date(2027, 1, 22)), (0.5 + 0.75) / 2.0);
    assert_eq!(fit(5, Some(180), 5, DAY), 1.0);
    assert_eq!(fit(3, None, 3, DAY), 0.5);
    assert_eq!(fit(3, Some(180), 2, DAY), 0.0);
    assert_eq!(fit(3, Some(0), 3, DAY), 0.5);
}
