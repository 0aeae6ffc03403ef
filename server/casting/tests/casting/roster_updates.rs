//! What an import does to the record: new people, updates, blanks that keep, and every shape of
//! file that a spreadsheet writes.

use gagwright_casting::{
    Applied, Availability, Measurement, Person, RosterTable as Table,
    roster::{export, import, parse},
};
use jiff::civil::{Date, date};
use uuid::Uuid;

use crate::builders::{measured, person};

const TODAY: Date = date(2026, 11, 25);

fn run(table: Table, text: &str, existing: &[Person]) -> Applied {
    let mut next = 100_u128;
    let mut mint = || {
        next += 1;
        Uuid::from_u128(next)
    };
    import(table, text.as_bytes(), existing, TODAY, &mut mint)
        .unwrap_or_else(|errors| panic!("{text}\n{errors}"))
}

fn counts(applied: &Applied) -> (usize, usize, usize, usize) {
    (
        applied.created,
        applied.updated,
        applied.unchanged,
        applied.removed,
    )
}

#[test]
fn people_are_made_and_then_updated_by_their_code() {
    let text = "code,name,occupation,performs,email,mass,height,measured_on,measured_by\n\
                P01,Trịnh Vy,performer,yes,vy@salt-meridian.example,58.5 kg,5 ft 6 in,2026-10-01,Ada\n";
    let applied = run(Table::People, text, &[]);
    assert_eq!(counts(&applied), (1, 0, 0, 0));
    let vy = applied.people[0].clone();
    assert_eq!(vy.id.0, Uuid::from_u128(101));
    assert_eq!(vy.measurements[&Measurement::Mass].value, 58.5);
    assert_eq!(
        vy.measurements[&Measurement::Mass].by.as_deref(),
        Some("Ada")
    );
    assert!((vy.measurements[&Measurement::Height].value - 1.6764).abs() < 1e-12);

    let text = "code,name,mass,measured_on,email\np01,,60 kg,2026-11-01,\n";
    let applied = run(Table::People, text, std::slice::from_ref(&vy));
    assert_eq!(counts(&applied), (0, 1, 0, 0));
    let after = &applied.people[0];
    assert_eq!((after.id, after.code.as_str()), (vy.id, "P01"));
    assert_eq!(after.name, "Trịnh Vy", "a blank keeps the name");
    assert_eq!(after.email, vy.email, "a blank keeps the address");
    let mass = &after.measurements[&Measurement::Mass];
    assert_eq!(
        (mass.value, mass.on, mass.by.as_deref()),
        (60.0, date(2026, 11, 1), None)
    );
    assert_eq!(
        after.measurements[&Measurement::Height],
        vy.measurements[&Measurement::Height]
    );
}

#[test]
fn the_same_value_needs_no_new_day() {
    let text = "code,name,occupation,performs,mass\n\
                P01,Ada,performer,yes,58.5 kg on 2026-10-01 by Bo\n";
    let ada = run(Table::People, text, &[]).people.remove(0);
    let again = run(
        Table::People,
        "code,mass\nP01,58.5 kg\n",
        std::slice::from_ref(&ada),
    );
    assert_eq!(counts(&again), (0, 0, 1, 0));
    // Weighed again on another day, by nobody named: the old witness saw the old scale.
    let text = "code,mass,measured_on\nP01,58.5 kg,2026-11-01\n";
    let later = run(Table::People, text, &[ada]).people.remove(0);
    let mass = &later.measurements[&Measurement::Mass];
    assert_eq!((mass.on, mass.by.as_deref()), (date(2026, 11, 1), None));
}

#[test]
fn spreadsheets_write_many_shapes_of_the_same_table() {
    let plain = "code,name,occupation,performs\nP01,Zoë,\"rider, fighter\",yes\n";
    let expected = parse(Table::People, plain.as_bytes()).unwrap();
    let utf16 = |little: bool| {
        let mark: &[u8] = if little { &[0xFF, 0xFE] } else { &[0xFE, 0xFF] };
        let units = plain.encode_utf16().flat_map(move |unit| {
            if little {
                unit.to_le_bytes()
            } else {
                unit.to_be_bytes()
            }
        });
        mark.iter().copied().chain(units).collect::<Vec<u8>>()
    };
    let shapes: Vec<(&str, Vec<u8>)> = vec![
        ("CRLF", plain.replace('\n', "\r\n").into()),
        ("CR", plain.replace('\n', "\r").into()),
        ("mark", [b"\xEF\xBB\xBF", plain.as_bytes()].concat()),
        ("UTF-16 little", utf16(true)),
        ("UTF-16 big", utf16(false)),
        (
            "semicolons",
            "code;name;occupation;performs\nP01;Zoë;rider, fighter;yes\n".into(),
        ),
        (
            "tabs",
            "code\tname\toccupation\tperforms\nP01\tZoë\trider, fighter\tyes\n".into(),
        ),
        ("no last line end", plain.trim_end().into()),
        ("decomposed", plain.replace('ë', "e\u{308}").into()),
        (
            "spaces",
            "Code , NAME,Occupation,performs\n P01 , Zoë ,\"rider, fighter\", YES \n".into(),
        ),
        ("blank tail", format!("{plain},,,\n,,,\n").into()),
        (
            "spare separators",
            "code,name,occupation,performs,,\nP01,Zoë,\"rider, fighter\",y,,\n".into(),
        ),
    ];
    for (shape, bytes) in shapes {
        let rows =
            parse(Table::People, &bytes).unwrap_or_else(|errors| panic!("{shape}: {errors}"));
        assert_eq!(rows, expected, "{shape}");
    }
}

#[test]
fn a_certificate_is_updated_and_a_renewal_is_another() {
    let people = [person("P01")];
    let text = "person,kind,number,issued,expires\nP01,paramedic,7,2024-01-01,2025-12-31\n";
    let first = run(Table::Certificates, text, &people);
    assert_eq!(counts(&first), (1, 0, 0, 0));
    let id = first.people[0].certificates[0].id;
    let text = "person,kind,number,issued,expires,checked_by,checked_on,checked_how\n\
                P01,paramedic,7,2024-01-01,,Ada,2026-01-05,register\n\
                P01,paramedic,7,2026-01-01,2027-12-31,Ada,2026-01-05,register\n";
    let second = run(Table::Certificates, text, &first.people);
    assert_eq!(counts(&second), (1, 1, 0, 0));
    let held = &second.people[0].certificates;
    assert_eq!(held.len(), 2);
    assert_eq!(held[0].id, id);
    assert_eq!(
        held[0].expires,
        Some(date(2025, 12, 31)),
        "a blank keeps the date"
    );
    assert_eq!(held[0].checked.as_ref().unwrap().method, "register");
}

#[test]
fn a_skill_is_updated_in_place() {
    let people = [person("P01")];
    let text = "person,skill,level,assessed_by,last_used\nP01,high_fall,2,Ada,2026-05-01\n";
    let first = run(Table::Skills, text, &people);
    let text = "person,skill,level,last_used\nP01,high_fall,3,\nP01,fight,3,2026-06-01\n";
    let second = run(Table::Skills, text, &first.people);
    assert_eq!(counts(&second), (1, 1, 0, 0));
    let fall = &second.people[0].skills[0];
    assert_eq!((fall.level, fall.last_used), (3, Some(date(2026, 5, 1))));
    assert_eq!(fall.assessed_by.as_deref(), Some("Ada"));
}

#[test]
fn days_are_replaced_for_those_the_table_lists() {
    let run_of = |from, to, available| Availability {
        from,
        to,
        available,
    };
    let old = run_of(date(2027, 3, 1), date(2027, 3, 5), false);
    let kept = run_of(date(2027, 3, 8), date(2027, 3, 9), true);
    let listed = Person {
        availability: vec![old.clone(), kept],
        ..person("P01")
    };
    let other = Person {
        availability: vec![old],
        ..person("P02")
    };
    let text = "person,from,to,available\n\
                P01,2027-03-10,2027-03-12,yes\n\
                P01,2027-03-08,2027-03-09,no\n";
    let applied = run(Table::Availability, text, &[listed, other]);
    assert_eq!(counts(&applied), (1, 1, 0, 1));
    assert_eq!(applied.people.len(), 1, "those not listed keep their days");
    assert_eq!(
        applied.people[0].availability,
        [
            run_of(date(2027, 3, 8), date(2027, 3, 9), false),
            run_of(date(2027, 3, 10), date(2027, 3, 12), true),
        ]
    );
}

#[test]
fn an_export_never_begins_a_cell_like_a_formula() {
    let risky = Person {
        name: "=HYPERLINK(1)".into(),
        occupation: "@performer, \"quoted\"".into(),
        ..person("P01")
    };
    let text = export(Table::People, std::slice::from_ref(&risky));
    assert!(
        text.contains("\r\nP01,'=HYPERLINK(1),\"'@performer, \"\"quoted\"\"\",yes,"),
        "{text}"
    );
    let again = run(Table::People, &text, &[risky]);
    assert_eq!(counts(&again), (0, 0, 1, 0));
}

#[test]
fn certificates_differ_by_number_and_are_withdrawn_by_import() {
    let text = "person,kind,number,issued\n\
                P01,paramedic,7,2026-01-01\n\
                P01,paramedic,8,2026-01-01\n";
    let first = run(Table::Certificates, text, &[person("P01")]);
    assert_eq!(counts(&first), (2, 0, 0, 0));
    let text = "person,kind,number,issued,withdrawn\nP01,paramedic,8,2026-01-01,2026-06-01\n";
    let second = run(Table::Certificates, text, &first.people);
    assert_eq!(counts(&second), (0, 1, 0, 0));
    let withdrawn: Vec<_> = second.people[0]
        .certificates
        .iter()
        .map(|held| held.withdrawn)
        .collect();
    assert_eq!(withdrawn, [None, Some(date(2026, 6, 1))]);
}

#[test]
fn an_export_is_in_code_order_and_says_once_what_most_measurements_share() {
    let mut second = person("P02");
    for (of, value) in [(Measurement::Height, 1.72), (Measurement::Chest, 0.9)] {
        second
            .measurements
            .insert(of, measured(value, date(2026, 10, 1)));
    }
    second
        .measurements
        .insert(Measurement::Mass, measured(60.0, date(2026, 11, 1)));
    let text = export(Table::People, &[second, person("P01")]);
    let rows: Vec<&str> = text.lines().collect();
    assert!(rows[1].starts_with("P01,"), "{text}");
    assert!(
        rows[2].starts_with("P02,Name of P02,performer,yes,,,172 cm,60 kg on 2026-11-01,90 cm,"),
        "{text}"
    );
    assert!(rows[2].contains(",2026-10-01,"), "{text}");
}
