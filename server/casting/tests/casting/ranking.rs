//! Who comes first.

use gagwright_casting::{Catalogue, Measurement, Outcome, Person, Requirement, judge, rank};
use jiff::civil::date;

use crate::builders::{DAY, context, measured, person, skill, slot};

fn faller(code: &str, name: &str, level: u8, used: jiff::civil::Date) -> Person {
    let mut person = person(code);
    person.name = name.into();
    person
        .skills
        .push(skill("high_fall", level, None, Some(used)));
    person
}

#[test]
fn outcome_then_fit_then_name_then_code() {
    let slot = slot(vec![Requirement::Skill {
        name: "high_fall".into(),
        level: 3,
        within_days: Some(180),
    }]);
    let mut crew = faller("C01", "Aaa", 5, DAY);
    crew.performs = false;
    let people = [
        faller("P07", "Zed", 3, DAY),
        faller("P06", "Moe", 3, DAY),
        faller("P05", "Moe", 3, DAY),
        faller("P04", "Abe", 2, DAY),
        faller("P03", "Abe", 5, date(2026, 1, 1)),
        faller("P02", "Zoe", 5, DAY),
        crew,
    ];
    let ranked = rank(&slot, &people, &context(), Catalogue::built_in());
    let codes: Vec<&str> = ranked
        .iter()
        .map(|v| {
            people
                .iter()
                .find(|p| p.id == v.person)
                .unwrap()
                .code
                .as_str()
        })
        .collect();
    assert_eq!(codes, ["P02", "P05", "P06", "P07", "P03", "P04"]);
    assert_eq!(ranked[4].outcome, Outcome::Conditional);
    assert_eq!(ranked[5].outcome, Outcome::NotQualified);
    let mut turned = people.to_vec();
    turned.reverse();
    assert_eq!(
        rank(&slot, &turned, &context(), Catalogue::built_in()),
        ranked
    );
}

#[test]
fn a_verdict_lists_every_requirement_in_order() {
    let requirements = vec![
        Requirement::Consent,
        Requirement::KittedMass {
            min: 50.0,
            max: 80.0,
        },
        Requirement::Availability,
    ];
    let mut slot = slot(requirements.clone());
    slot.kit_mass = 5.0;
    let mut person = person("P01");
    person
        .measurements
        .insert(Measurement::Mass, measured(60.0, DAY));
    let verdict = judge(&slot, &person, &context(), Catalogue::built_in());
    let listed: Vec<_> = verdict
        .findings
        .iter()
        .map(|f| f.requirement.clone())
        .collect();
    assert_eq!(listed, requirements);
    assert_eq!(verdict.outcome, Outcome::Conditional);
    // 65 kg is in the middle of 50 to 80; the yes-or-no requirements do not rank.
    assert_eq!(verdict.fit, 1.0);
}

#[test]
fn a_slot_that_asks_nothing_qualifies_anyone() {
    let verdict = judge(
        &slot(vec![]),
        &person("P01"),
        &context(),
        Catalogue::built_in(),
    );
    assert_eq!(verdict.outcome, Outcome::Qualified);
    assert_eq!(verdict.fit, 1.0);
}
