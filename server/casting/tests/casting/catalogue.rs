//! The catalogue that comes with Gagwright, and what a catalogue is refused for.

use gagwright_casting::{Catalogue, CatalogueError, Requirement, catalogue::Validity};

use crate::builders::slot;

#[test]
fn the_built_in_catalogue_has_what_the_trade_asks_for() {
    let catalogue = Catalogue::built_in();
    assert!(!catalogue.version().is_empty());
    assert!(
        catalogue.certificates().count() >= 40,
        "the trade's table lists over forty"
    );
    // IRATA: three years (from memory), a refresher after more than six unused months (IRATA
    // International's public page on refresher training).
    let rope = catalogue.certificate("rope_access_3").unwrap();
    assert_eq!(rope.validity, Validity::Months(36));
    assert_eq!(rope.use_clock.as_ref().unwrap().unused_months, 6);
    // UK HSE, first aid at work: three years. HSE diver medical: at most twelve months.
    let months = |kind: &str| catalogue.certificate(kind).unwrap().validity;
    assert_eq!(months("first_aid_at_work"), Validity::Months(36));
    assert_eq!(months("diver_medical"), Validity::Months(12));
    // IPAF card and ETCP rigger: five years. RLSS NPLQ: two. California minor's permit: six months.
    assert_eq!(months("powered_access"), Validity::Months(60));
    assert_eq!(months("rigger_theatre"), Validity::Months(60));
    assert_eq!(months("pool_lifeguard"), Validity::Months(24));
    assert_eq!(months("minor_work_permit"), Validity::Months(6));
    // England: a child's performance licence is asked for at least 21 days ahead.
    assert_eq!(
        catalogue
            .certificate("child_performance_licence")
            .unwrap()
            .renewal_lead_days,
        Some(21)
    );
}

#[test]
fn recency_is_half_a_year_where_a_mistake_is_grave() {
    // Common practice: six months for high-consequence skills, twelve otherwise.
    for skill in Catalogue::built_in().skills() {
        let expected = if skill.high_consequence { 180 } else { 365 };
        assert_eq!(skill.recency_days, expected, "{}", skill.name);
    }
    assert!(
        Catalogue::built_in()
            .skill("high_fall")
            .unwrap()
            .high_consequence
    );
    assert!(
        !Catalogue::built_in()
            .skill("stair_fall")
            .unwrap()
            .high_consequence
    );
}

#[test]
#[rustfmt::skip] // one case a line
fn a_higher_class_stands_in_for_a_lower_at_any_remove() {
    let catalogue = Catalogue::built_in();
    for (held, wanted, expected) in [
        ("rope_access_3", "rope_access_3", true),
        ("rope_access_3", "rope_access_2", true),
        ("rope_access_3", "rope_access_1", true),
        ("rope_access_1", "rope_access_2", false),
        ("pyrotechnician_first_class", "pyrotechnician", true),
        ("pyrotechnician", "pyrotechnician_first_class", false),
        ("paramedic", "emergency_first_aid", true),
        ("stunt_grade_5", "stunt_grade_1", true),
        ("rope_technician_3", "rope_access_1", false),
        ("not_a_kind", "not_a_kind", false),
    ] {
        assert_eq!(
            catalogue.satisfies(held, wanted),
            expected,
            "{held} for {wanted}"
        );
    }
}

#[test]
fn names_a_slot_uses_are_checked() {
    let certificate = |kinds: &[&str], category: Option<&str>| Requirement::Certificate {
        any_of: kinds.iter().map(|kind| (*kind).into()).collect(),
        category: category.map(Into::into),
        cover_days: 0,
    };
    let unknown = Catalogue::built_in().unknown_names(&slot(vec![
        Requirement::Skill {
            name: "high_fall".into(),
            level: 3,
            within_days: None,
        },
        Requirement::Skill {
            name: "hihg_fall".into(),
            level: 3,
            within_days: None,
        },
        certificate(&["rope_access_1", "rope_acess_2"], None),
        certificate(&["powered_access"], Some("3B")),
        certificate(&["powered_access"], Some("9z")),
        certificate(&["first_aid_at_work"], Some("anything")),
        certificate(&[], None),
    ]));
    let seen: Vec<_> = unknown
        .iter()
        .map(|u| (u.requirement, u.field.as_str()))
        .collect();
    assert_eq!(
        seen,
        [(1, "name"), (2, "any_of/1"), (4, "category"), (6, "any_of")]
    );
    assert!(unknown[0].fix.contains("high_fall"), "{}", unknown[0]);
    assert!(unknown[1].fix.contains("rope_access_2"), "{}", unknown[1]);
}

#[test]
fn a_catalogue_that_contradicts_itself_is_refused() {
    let skills = r#"{"version":"1","about":"","mass_good_for_days":1,"mass_note":"","skills":[]}"#;
    let kind = |kind: &str, satisfies: &str| {
        format!(
            r#"{{"kind":"{kind}","title":"t","scheme":"s","validity":{{"months":1}},
            "renewal_lead_days":1,"satisfies":[{satisfies}],"standing":"common_practice",
            "source":"common practice"}}"#
        )
    };
    let read = |kinds: &[String]| {
        let text = format!(
            r#"{{"version":"1","about":"","kinds":[{}]}}"#,
            kinds.join(",")
        );
        Catalogue::read(&text, skills)
    };
    assert!(read(&[kind("a", ""), kind("b", "\"a\"")]).is_ok());
    assert!(matches!(
        read(&[kind("a", ""), kind("a", "")]),
        Err(CatalogueError::Twice {
            file: "certificates",
            ..
        })
    ));
    assert!(matches!(
        read(&[kind("a", "\"b\"")]),
        Err(CatalogueError::Satisfies { .. })
    ));
    assert!(matches!(
        read(&[kind("a", "\"b\""), kind("b", "\"a\"")]),
        Err(CatalogueError::Satisfies { .. })
    ));
    let endless = kind("a", "").replace("\"months\":1", "\"months\":0");
    assert!(matches!(
        read(&[endless]),
        Err(CatalogueError::Figure { .. })
    ));
    assert!(matches!(
        read(&["{}".into()]),
        Err(CatalogueError::Malformed { .. })
    ));
}
