//! What must hold for any roster and any bytes.

use std::collections::BTreeMap;

use gagwright_casting::{
    Availability, Catalogue, Certificate, CertificateId, EvidenceCheck, Measured, Measurement,
    Person, PersonId, RosterTable, Skill,
    roster::{export, import, parse},
};
use jiff::{
    Span, Timestamp,
    civil::{Date, date},
};
use proptest::{
    collection::{btree_map, vec},
    option,
    prelude::*,
    sample::select,
};
use unicode_normalization::UnicodeNormalization;
use uuid::Uuid;

use crate::builders::person;

const TODAY: Date = date(2026, 11, 25);

fn past() -> impl Strategy<Value = Date> {
    (0_i64..20_000).prop_map(|days| TODAY.saturating_sub(Span::new().days(days)))
}

fn future() -> impl Strategy<Value = Date> {
    (0_i64..3_000).prop_map(|days| TODAY.saturating_add(Span::new().days(days)))
}

/// Text in many scripts, with everything that CSV and spreadsheets trip over, as a careful person
/// would have it: composed, with no space at its ends.
fn text() -> impl Strategy<Value = String> {
    let piece = select(vec![
        "=",
        "+",
        "-",
        "@",
        "'",
        "\"",
        ",",
        ";",
        "a",
        "Ada",
        "7",
        ".",
        "  ",
        "Þór",
        "ễ",
        "Зоря",
        "ليلى",
        "شب\u{200C}خیز",
        "क्\u{200D}ष",
        "榎並",
        "맹",
        "＝",
        "o\u{308}",
        "👩\u{200D}🚒",
        "\\",
        "|",
        "on",
        " by ",
    ]);
    vec(piece, 1..6)
        .prop_map(|pieces| pieces.concat().trim().nfc().collect::<String>())
        .prop_filter("something is left", |text| !text.is_empty())
}

fn wording() -> impl Strategy<Value = String> {
    text().prop_filter("has a letter", |text| text.chars().any(char::is_alphabetic))
}

fn measurements() -> impl Strategy<Value = BTreeMap<Measurement, Measured>> {
    let taken = || (past(), option::of(text()));
    let one = prop_oneof![
        (select(vec![Measurement::Height]), 0.6..2.5),
        (select(vec![Measurement::Mass]), 6.0..290.0),
        (
            select(vec![
                Measurement::Chest,
                Measurement::Waist,
                Measurement::Hip
            ]),
            0.4..2.0
        ),
        (
            select(vec![Measurement::Inseam, Measurement::Sleeve]),
            0.3..1.2
        ),
        (select(vec![Measurement::Neck, Measurement::Head]), 0.3..0.8),
        (select(vec![Measurement::Shoe]), 15.0..59.0),
    ];
    // Half of the values are round, as a tape gives them.
    let value = (one, any::<bool>()).prop_map(|((of, value), round): ((_, f64), _)| {
        (
            of,
            if round {
                (value * 100.0).round() / 100.0
            } else {
                value
            },
        )
    });
    (
        vec((value, taken()), 0..8),
        vec(taken(), 1..3),
        any::<bool>(),
    )
        .prop_map(|(values, shared, share)| {
            values
                .into_iter()
                .enumerate()
                .map(|(place, ((of, value), own))| {
                    let (on, by) = if share {
                        shared[place % shared.len()].clone()
                    } else {
                        own
                    };
                    (of, Measured { value, on, by })
                })
                .collect()
        })
}

/// What tells certificates of one person apart: kind, number, issue.
fn certificates() -> impl Strategy<Value = Vec<Certificate>> {
    let kinds: Vec<String> = Catalogue::built_in()
        .certificates()
        .filter(|kind| kind.categories.is_empty())
        .map(|kind| kind.kind.clone())
        .collect();
    let facts = (
        option::of(text()),
        option::of(text()),
        option::of(future()),
        option::of(past()),
        option::of((text(), past(), text())),
        option::of(future()),
    );
    btree_map((select(kinds), option::of(text()), past()), facts, 0..4).prop_map(|held| {
        held.into_iter()
            .enumerate()
            .map(|(place, ((kind, number, issued), facts))| {
                let (category, issuer, expires, last_used, checked, withdrawn) = facts;
                Certificate {
                    id: CertificateId(Uuid::from_u128(place as u128)),
                    kind,
                    category,
                    number,
                    issuer,
                    issued,
                    expires,
                    last_used,
                    checked: checked.map(|(by, on, method)| EvidenceCheck { by, on, method }),
                    withdrawn,
                }
            })
            .collect()
    })
}

fn skills() -> impl Strategy<Value = Vec<Skill>> {
    let names: Vec<String> = Catalogue::built_in()
        .skills()
        .map(|skill| skill.name.clone())
        .collect();
    let facts = (
        0_u8..=5,
        option::of(text()),
        option::of(past()),
        option::of(past()),
    );
    btree_map(select(names), facts, 0..4).prop_map(|held| {
        held.into_iter()
            .map(
                |(name, (level, assessed_by, assessed_on, last_used))| Skill {
                    name,
                    level,
                    assessed_by,
                    assessed_on,
                    last_used,
                },
            )
            .collect()
    })
}

fn availability() -> impl Strategy<Value = Vec<Availability>> {
    btree_map((future(), 0_i64..30), any::<bool>(), 0..4).prop_map(|runs| {
        let mut runs: Vec<_> = runs
            .into_iter()
            .map(|((from, days), available)| Availability {
                from,
                to: from.saturating_add(Span::new().days(days)),
                available,
            })
            .collect();
        runs.sort_by_key(|run| (run.from, run.to));
        runs
    })
}

prop_compose! {
    fn anyone()(
        name in wording(),
        occupation in wording(),
        performs in any::<bool>(),
        email in any::<bool>(),
        born in option::of(past()),
        measurements in measurements(),
        certificates in certificates(),
        skills in skills(),
        availability in availability(),
        medically_clear_until in option::of(future()),
        wrap in option::of(0_i64..1_700_000_000_000),
    ) -> Person {
        Person {
            name,
            occupation,
            performs,
            email: email.then(|| "here@salt-meridian.example".into()),
            born,
            measurements,
            certificates,
            skills,
            availability,
            medically_clear_until,
            last_wrap: wrap.map(|at| Timestamp::from_millisecond(at).unwrap()),
            ..person("P01")
        }
    }
}

fn roster() -> impl Strategy<Value = Vec<Person>> {
    vec(anyone(), 1..5).prop_map(|people| {
        people
            .into_iter()
            .enumerate()
            .map(|(place, someone)| Person {
                id: PersonId(Uuid::from_u128(1_000 + place as u128)),
                code: format!("P{place:02}"),
                email: someone.email.map(|email| format!("p{place}.{email}")),
                ..someone
            })
            .collect()
    })
}

/// The same people with identifiers that only say their place, for comparing rosters made apart.
fn nameless(people: &[Person]) -> Vec<Person> {
    let mut people = people.to_vec();
    for (place, person) in people.iter_mut().enumerate() {
        person.id = PersonId(Uuid::from_u128(place as u128));
        for (place, held) in person.certificates.iter_mut().enumerate() {
            held.id = CertificateId(Uuid::from_u128(place as u128));
        }
    }
    people
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 200, failure_persistence: None, ..ProptestConfig::default() })]

    /// Exporting and importing over the same record changes nothing, and doing it to an empty
    /// record makes the same people.
    #[test]
    fn export_and_import_give_the_same_people(people in roster()) {
        let mut made: Vec<Person> = Vec::new();
        let mut next = 0_u128;
        for table in RosterTable::ALL {
            let text = export(table, &people);
            let again = import(table, text.as_bytes(), &people, TODAY, &mut Uuid::nil)
                .map_err(|errors| TestCaseError::fail(format!("{text}\n{errors}")))?;
            prop_assert_eq!(&again.people, &vec![], "{}", &text);
            prop_assert_eq!((again.created, again.updated, again.removed), (0, 0, 0));
            prop_assert_eq!(again.unchanged, parse(table, text.as_bytes()).unwrap().len());

            let mut mint = || { next += 1; Uuid::from_u128(next) };
            let fresh = import(table, text.as_bytes(), &made, TODAY, &mut mint).unwrap();
            prop_assert_eq!((fresh.updated, fresh.unchanged, fresh.removed), (0, 0, 0));
            for person in fresh.people {
                made.retain(|before| before.id != person.id);
                made.push(person);
            }
        }
        made.sort_by(|a, b| a.code.cmp(&b.code));
        prop_assert_eq!(nameless(&made), nameless(&people));
    }

    /// No exported cell begins like a formula unless it is a plain number.
    #[test]
    fn exported_cells_never_run(people in roster()) {
        for table in RosterTable::ALL {
            let text = export(table, &people);
            let mut reader = csv::Reader::from_reader(text.as_bytes());
            for record in reader.records() {
                for cell in record.unwrap().iter() {
                    let risky = cell.starts_with(['=', '+', '-', '@', '＝', '\t', '\r']);
                    prop_assert!(!risky || cell.parse::<f64>().is_ok(), "{}", cell);
                }
            }
        }
    }

    /// Whatever bytes arrive, the answer is rows or errors that say where and how to mend them.
    #[test]
    fn any_bytes_get_an_answer(bytes in vec(any::<u8>(), 0..400), table in select(RosterTable::ALL.to_vec())) {
        check_any(table, &bytes)?;
    }

    /// So does text that is nearly a table.
    #[test]
    fn nearly_a_table_gets_an_answer(
        pieces in vec(select(vec![
            "code", "person", "name", "kind", "skill", "level", "from", "to", "available", "issued", "mass",
            ",", ";", "\t", "\n", "\r\n", "\"", "P01", "2027-03-08", "=1", "62 kg", "yes", "3", "\u{FEFF}", "é",
            " ", "paramedic", "high_fall", "occupation", "performs", "\0", "'", "on", "measured_on",
        ]), 0..60),
        table in select(RosterTable::ALL.to_vec()),
    ) {
        check_any(table, pieces.concat().as_bytes())?;
    }

    /// A spoiled cell anywhere leaves the record as it was, and is the only thing reported.
    #[test]
    fn one_bad_cell_refuses_the_table(people in roster(), place in any::<proptest::sample::Index>()) {
        let text = export(RosterTable::People, &people);
        let rows: Vec<&str> = text.trim_end().split("\r\n").collect();
        let row = 1 + place.index(rows.len() - 1);
        let spoiled: Vec<String> = rows
            .iter()
            .enumerate()
            .map(|(at, line)| if at == row { line.replace(",yes,", ",si,").replace(",no,", ",si,") } else { (*line).into() })
            .collect();
        let errors = import(RosterTable::People, spoiled.join("\n").as_bytes(), &people, TODAY, &mut Uuid::nil)
            .unwrap_err();
        prop_assert_eq!(errors.errors.len(), 1, "{}", errors);
        prop_assert_eq!((errors.errors[0].row, errors.errors[0].column.as_str()), (row + 1, "performs"));
    }
}

fn check_any(table: RosterTable, bytes: &[u8]) -> Result<(), TestCaseError> {
    let people = [person("P01")];
    match import(table, bytes, &people, TODAY, &mut Uuid::nil) {
        Ok(applied) => {
            prop_assert_eq!(
                applied.created + applied.updated + applied.unchanged,
                parse(table, bytes).unwrap().len()
            );
        }
        Err(errors) => {
            prop_assert!(!errors.errors.is_empty());
            for error in &errors.errors {
                prop_assert!(error.row >= 1);
                prop_assert!(
                    !error.problem.is_empty() && !error.fix.is_empty(),
                    "{:?}",
                    error
                );
            }
        }
    }
    Ok(())
}
