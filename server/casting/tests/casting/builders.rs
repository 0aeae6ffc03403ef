//! People, slots and days to judge, written as prose.

use gagwright_casting::{
    Catalogue, Certificate, CertificateId, Context, EvidenceCheck, Finding, FindingStanding, GagId,
    Measured, Measurement, Person, PersonId, Requirement, Skill, Slot, SlotId, find,
};
use jiff::civil::{Date, date};
use uuid::Uuid;

/// The shooting day of every table here unless it says otherwise.
pub const DAY: Date = date(2027, 3, 8);

pub const GAG: GagId = GagId(Uuid::from_u128(0x6A6));

pub fn person(code: &str) -> Person {
    let id = Uuid::from_u128(code.bytes().fold(1, |sum, b| sum * 256 + u128::from(b)));
    Person {
        occupation: "performer".into(),
        performs: true,
        ..Person::named(PersonId(id), code, format!("Name of {code}"))
    }
}

pub fn context() -> Context {
    Context {
        gag: GAG,
        revision: 3,
        day: DAY,
        call: None,
        today: None,
    }
}

pub fn slot(requirements: Vec<Requirement>) -> Slot {
    Slot {
        id: SlotId(Uuid::from_u128(7)),
        name: "Double for the pilot".into(),
        requirements,
        person: None,
        kit_mass: 0.0,
    }
}

/// A certificate in good order through 2028, sight of the original taken.
pub fn certificate(kind: &str) -> Certificate {
    Certificate {
        id: CertificateId(Uuid::from_u128(1)),
        kind: kind.into(),
        category: None,
        number: None,
        issuer: None,
        issued: date(2026, 1, 10),
        expires: Some(date(2028, 12, 31)),
        last_used: Some(date(2027, 2, 1)),
        checked: Some(EvidenceCheck {
            by: "the office".into(),
            on: date(2026, 2, 1),
            method: "sight of original".into(),
        }),
        withdrawn: None,
    }
}

pub fn skill(name: &str, level: u8, assessed: Option<Date>, used: Option<Date>) -> Skill {
    Skill {
        name: name.into(),
        level,
        assessed_by: Some("the coordinator".into()),
        assessed_on: assessed,
        last_used: used,
    }
}

pub fn measured(value: f64, on: Date) -> Measured {
    Measured {
        value,
        on,
        by: None,
    }
}

pub fn with_measurement(of: Measurement, value: f64, on: Date) -> Person {
    let mut person = person("P01");
    person.measurements.insert(of, measured(value, on));
    person
}

pub fn judge_one(requirement: &Requirement, person: &Person, context: &Context) -> Finding {
    find(requirement, person, 0.0, context, Catalogue::built_in())
}

/// Asserts a standing, a piece of the reason, and the cure's day. The whole finding is shown on
/// failure.
pub fn assert_finding(
    case: &str,
    finding: &Finding,
    standing: FindingStanding,
    reason: &str,
    cure_by: Option<Date>,
) {
    assert_eq!(finding.standing, standing, "{case}: {finding:?}");
    assert!(
        finding.reason.contains(reason),
        "{case}: no {reason:?} in {finding:?}"
    );
    assert_eq!(
        finding.cure.as_ref().map(|cure| cure.by),
        cure_by,
        "{case}: {finding:?}"
    );
}
