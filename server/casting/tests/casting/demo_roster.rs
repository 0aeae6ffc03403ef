//! The demo production's roster: it imports whole, and makes the verdicts a first look should show.

use gagwright_casting::{
    Catalogue, Context, FindingStanding, Outcome, Person, Requirement, RosterTable, Slot, find,
    judge, lapsing, rank,
    roster::{apply, import, parse},
};
use jiff::civil::{Date, date};
use uuid::Uuid;

use crate::builders::{GAG, slot};

const TABLES: [(RosterTable, &str); 4] = [
    (
        RosterTable::People,
        include_str!("../../../../seed-data/demo/people.csv"),
    ),
    (
        RosterTable::Certificates,
        include_str!("../../../../seed-data/demo/certificates.csv"),
    ),
    (
        RosterTable::Skills,
        include_str!("../../../../seed-data/demo/skills.csv"),
    ),
    (
        RosterTable::Availability,
        include_str!("../../../../seed-data/demo/availability.csv"),
    ),
];

fn demo(today: Date) -> Vec<Person> {
    let mut people: Vec<Person> = Vec::new();
    let mut next = 0_u128;
    for (table, text) in TABLES {
        let mut mint = || {
            next += 1;
            Uuid::from_u128(next)
        };
        let applied = import(table, text.as_bytes(), &people, today, &mut mint)
            .unwrap_or_else(|errors| panic!("{table}: {errors}"));
        assert_eq!(
            (applied.updated, applied.unchanged),
            (0, 0),
            "{table} repeats itself"
        );
        for person in applied.people {
            people.retain(|before| before.id != person.id);
            people.push(person);
        }
    }
    people
}

fn on(day: Date) -> Context {
    let call = format!("{day}T07:00:00Z").parse().unwrap();
    Context {
        gag: GAG,
        revision: 1,
        day,
        call: Some(call),
        today: Some(date(2026, 11, 25)),
    }
}

fn skill(name: &str) -> Requirement {
    Requirement::Skill {
        name: name.into(),
        level: 3,
        within_days: Some(180),
    }
}

fn certificate(kind: &str, category: Option<&str>) -> Requirement {
    Requirement::Certificate {
        any_of: vec![kind.into()],
        category: category.map(Into::into),
        cover_days: 2,
    }
}

/// What any of the four gags could ask, beside the consent that only a plan can bring.
fn asks(technique: &str) -> Slot {
    let grade = match technique {
        "high_fall" => certificate("high_fall_grade", None),
        "full_burn" => certificate("burn_grade", Some("full")),
        "wire_flight" => certificate("wire_grade", None),
        _ => certificate("stunt_grade_3", None),
    };
    let mut slot = slot(vec![
        skill(technique),
        grade,
        certificate("stunt_grade_2", None),
        certificate("concussion_baseline", None),
        Requirement::KittedMass {
            min: 45.0,
            max: 95.0,
        },
        Requirement::Age {
            min: Some(18),
            max: None,
        },
        Requirement::MedicalClearance,
        Requirement::Availability,
        Requirement::Rest { hours: 11.0 },
        Requirement::DailyExposure {
            exposure: technique.into(),
            adds: 2,
            max: 3,
        },
    ]);
    slot.kit_mass = 6.0;
    slot
}

fn qualified(people: &[Person], technique: &str, day: Date) -> Vec<String> {
    rank(&asks(technique), people, &on(day), Catalogue::built_in())
        .into_iter()
        .filter(|verdict| verdict.outcome == Outcome::Qualified)
        .map(|verdict| {
            people
                .iter()
                .find(|p| p.id == verdict.person)
                .unwrap()
                .code
                .clone()
        })
        .collect()
}

#[test]
fn it_imports_whole_whenever_the_demo_is_first_started() {
    let people = demo(date(2026, 11, 25));
    assert_eq!(people.len(), 26);
    assert_eq!(people.iter().filter(|person| person.performs).count(), 15);
    assert_eq!(demo(date(2026, 11, 1)), people);
    assert_eq!(demo(date(2027, 7, 31)), people);
    for (table, text) in TABLES {
        let rows = parse(table, text.as_bytes()).unwrap();
        let again = apply(&rows, &people, date(2026, 11, 25), &mut Uuid::nil).unwrap();
        assert_eq!(
            (again.created, again.updated, again.removed),
            (0, 0, 0),
            "{table}"
        );
        assert_eq!(again.people, [], "{table}");
    }
}

#[test]
fn every_technique_has_qualified_people_through_the_shoot() {
    let people = demo(date(2026, 11, 25));
    for day in [date(2027, 3, 8), date(2027, 3, 12), date(2027, 3, 19)] {
        for (technique, expected) in [
            ("high_fall", ["P01", "P03", "P10", "P13"].as_slice()),
            ("ratchet_pull", ["P01", "P02", "P03", "P10"].as_slice()),
            ("wire_flight", ["P01", "P03", "P04"].as_slice()),
            ("full_burn", ["P02", "P08", "P10", "P13"].as_slice()),
        ] {
            let found = qualified(&people, technique, day);
            for code in expected {
                assert!(
                    found.iter().any(|c| c == code),
                    "{code} for {technique} on {day}: {found:?}"
                );
            }
        }
    }
}

#[test]
#[rustfmt::skip] // one case a line
fn the_others_fall_short_each_in_their_own_way() {
    let people = demo(date(2026, 11, 25));
    let first = date(2027, 3, 8);
    let cases = [
        ("P05", "high_fall", first, Outcome::Qualified, ""),
        ("P05", "high_fall", date(2027, 3, 11), Outcome::Conditional, "expires on 2027-03-12"),
        ("P06", "high_fall", first, Outcome::Conditional, "past the limit of 180"),
        ("P07", "high_fall", first, Outcome::NotQualified, "over the rig's most"),
        ("P09", "high_fall", first, Outcome::NotQualified, "Not available"),
        ("P11", "ratchet_pull", first, Outcome::NotQualified, "No grade for ratchet pull"),
        ("P12", "full_burn", first, Outcome::NotQualified, "1 short"),
        ("P12", "ratchet_pull", first, Outcome::Conditional, "weighed 282 days before"),
        ("P12", "ratchet_pull", date(2027, 3, 12), Outcome::Conditional, "only through 2027-03-11"),
        ("P14", "ratchet_pull", first, Outcome::Conditional, "not been checked by anyone"),
        ("P15", "high_fall", first, Outcome::NotQualified, "17 years old"),
        ("P08", "full_burn", date(2027, 3, 17), Outcome::NotQualified, "Not available"),
    ];
    for (code, technique, day, outcome, reason) in cases {
        let person = people.iter().find(|person| person.code == code).unwrap();
        let verdict = judge(&asks(technique), person, &on(day), Catalogue::built_in());
        assert_eq!(
            verdict.outcome, outcome,
            "{code} {technique} {day}: {verdict:#?}"
        );
        assert!(
            verdict
                .findings
                .iter()
                .any(|finding| finding.reason.contains(reason)),
            "{code} {technique} {day}: {verdict:#?}"
        );
    }
}

#[test]
#[rustfmt::skip] // one case a line
fn crew_hold_what_their_hats_ask() {
    let people = demo(date(2026, 11, 25));
    for (code, kind) in [
        ("C01", "coordinator_record"),
        ("C01", "height_coordinator"),
        ("C02", "rope_access_3"),
        ("C02", "rigger_theatre"),
        ("C03", "pyrotechnician"),
        ("C04", "fire_safety_officer"),
        ("C05", "first_aid_at_work"),
        ("C05", "paramedic"),
        ("C06", "production_safety"),
        ("C08", "engineer_registration"),
        ("C09", "vehicle_grade"),
    ] {
        let person = people.iter().find(|person| person.code == code).unwrap();
        for day in [date(2026, 11, 25), date(2027, 3, 19)] {
            let finding = find(
                &certificate(kind, None),
                person,
                0.0,
                &on(day),
                Catalogue::built_in(),
            );
            assert_eq!(
                finding.standing,
                FindingStanding::Met,
                "{code} {kind}: {finding:?}"
            );
        }
    }
}

#[test]
fn some_certificates_lapse_during_the_shoot() {
    let people = demo(date(2026, 11, 25));
    let days: Vec<Date> = (8..=19).map(|day| date(2027, 3, day)).collect();
    let lapses = lapsing(&people, &days, Catalogue::built_in());
    let inside: Vec<_> = lapses
        .iter()
        .filter(|lapse| lapse.last_day >= date(2027, 3, 8))
        .map(|lapse| (lapse.code.as_str(), lapse.kind.as_str()))
        .collect();
    assert!(inside.contains(&("P05", "high_fall_grade")), "{inside:?}");
    assert!(inside.contains(&("P14", "diver_medical")), "{inside:?}");
}
