//! What must hold for any person, slot and day.

use std::collections::BTreeMap;

use gagwright_casting::{
    Availability, Catalogue, Certificate, CertificateId, Consent, Context, EvidenceCheck, Exposure,
    FindingStanding, Measured, Measurement, Outcome, Person, PersonId, Requirement, Skill, judge,
    lapsing, rank,
};
use jiff::{Span, Timestamp, civil::Date};
use proptest::{collection::vec, option, prelude::*, sample::select};
use uuid::Uuid;

use crate::builders::{DAY, GAG, person, slot};

const KINDS: [&str; 8] = [
    "rope_access_1",
    "rope_access_2",
    "rope_access_3",
    "first_aid_at_work",
    "paramedic",
    "powered_access",
    "pyrotechnician",
    "equipment_examiner",
];

fn day() -> impl Strategy<Value = Date> {
    (-900_i64..900).prop_map(|days| DAY.saturating_add(Span::new().days(days)))
}

fn any_day() -> impl Strategy<Value = Date> {
    prop_oneof![
        8 => day(),
        1 => Just(Date::MIN),
        1 => Just(Date::MAX),
    ]
}

fn figure() -> impl Strategy<Value = f64> {
    prop_oneof![
        6 => 0.0..200.0,
        1 => -10.0..0.0,
        1 => select(vec![f64::NAN, f64::INFINITY, f64::NEG_INFINITY, f64::MAX, -0.0, 1e-300]),
    ]
}

fn requirement() -> impl Strategy<Value = Requirement> {
    let skill = (
        select(vec!["high_fall", "fight", "juggling"]),
        0_u8..8,
        option::of(0_u32..400),
    );
    let certificate = (
        vec(select(KINDS.to_vec()), 0..3),
        option::of(select(vec!["3a", "3b"])),
        prop_oneof![4 => 0_u32..30, 1 => Just(u32::MAX)],
    );
    prop_oneof![
        skill.prop_map(|(name, level, within_days)| Requirement::Skill {
            name: name.into(),
            level,
            within_days
        }),
        certificate.prop_map(|(any_of, category, cover_days)| Requirement::Certificate {
            any_of: any_of.into_iter().map(Into::into).collect(),
            category: category.map(Into::into),
            cover_days,
        }),
        (figure(), figure()).prop_map(|(target, tolerance)| Requirement::Measurement {
            of: Measurement::Height,
            target,
            tolerance
        }),
        (figure(), figure()).prop_map(|(min, max)| Requirement::KittedMass { min, max }),
        (any::<Option<u8>>(), any::<Option<u8>>())
            .prop_map(|(min, max)| Requirement::Age { min, max }),
        Just(Requirement::MedicalClearance),
        Just(Requirement::Availability),
        figure().prop_map(|hours| Requirement::Rest { hours }),
        (0_u32..4, 0_u32..4).prop_map(|(adds, max)| Requirement::DailyExposure {
            exposure: "full_burn".into(),
            adds,
            max
        }),
        Just(Requirement::Consent),
    ]
}

fn certificate() -> impl Strategy<Value = Certificate> {
    let dates = (
        any_day(),
        option::of(any_day()),
        option::of(any_day()),
        option::of(any_day()),
    );
    (
        select(KINDS.to_vec()),
        option::of(select(vec!["3a", "3b"])),
        dates,
        option::of(any_day()),
    )
        .prop_map(
            |(kind, category, (issued, expires, last_used, withdrawn), checked)| Certificate {
                id: CertificateId(Uuid::from_u128(1)),
                kind: kind.into(),
                category: category.map(Into::into),
                number: None,
                issuer: None,
                issued,
                expires,
                last_used,
                checked: checked.map(|on| EvidenceCheck {
                    by: "the office".into(),
                    on,
                    method: "register".into(),
                }),
                withdrawn,
            },
        )
}

fn moment() -> impl Strategy<Value = Timestamp> {
    prop_oneof![
        8 => (-100_000_i64..100_000).prop_map(|minutes| {
            Timestamp::from_second(1_804_500_000 + minutes * 60).unwrap()
        }),
        1 => Just(Timestamp::MIN),
        1 => Just(Timestamp::MAX),
    ]
}

prop_compose! {
    fn anyone()(
        born in option::of(any_day()),
        mass in option::of((figure(), any_day())),
        height in option::of((figure(), any_day())),
        certificates in vec(certificate(), 0..4),
        skills in vec((select(vec!["high_fall", "fight"]), 0_u8..8, option::of(any_day()), option::of(any_day())), 0..3),
        availability in vec((any_day(), any_day(), any::<bool>()), 0..3),
        clear in option::of(any_day()),
        last_wrap in option::of(moment()),
        burns in vec((any_day(), any::<u32>()), 0..3),
        consents in vec((0_u32..4, option::of(moment())), 0..3),
    ) -> Person {
        let measured = |(value, on)| Measured { value, on, by: None };
        Person {
            born,
            measurements: BTreeMap::from_iter(
                mass.map(|m| (Measurement::Mass, measured(m)))
                    .into_iter()
                    .chain(height.map(|h| (Measurement::Height, measured(h)))),
            ),
            certificates,
            skills: skills
                .into_iter()
                .map(|(name, level, assessed_on, last_used)| Skill {
                    name: name.into(),
                    level,
                    assessed_by: None,
                    assessed_on,
                    last_used,
                })
                .collect(),
            availability: availability
                .into_iter()
                .map(|(from, to, available)| Availability { from, to, available })
                .collect(),
            medically_clear_until: clear,
            last_wrap,
            exposures: burns
                .into_iter()
                .map(|(on, count)| Exposure { kind: "full_burn".into(), on, count })
                .collect(),
            consents: consents
                .into_iter()
                .map(|(revision, withdrawn)| Consent { gag: GAG, revision, withdrawn })
                .collect(),
            ..person("P01")
        }
    }
}

prop_compose! {
    fn anytime()(
        day in any_day(),
        call in option::of(moment()),
        today in option::of(any_day()),
        revision in 0_u32..4,
    ) -> Context {
        Context { gag: GAG, revision, day, call, today }
    }
}

fn catalogue() -> &'static Catalogue {
    Catalogue::built_in()
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 500, failure_persistence: None, ..ProptestConfig::default() })]

    /// Whatever is asked of whomever, the verdict lists every requirement once, agrees with itself,
    /// and ranks by a plain number.
    #[test]
    fn a_verdict_agrees_with_itself(
        requirements in vec(requirement(), 0..6),
        person in anyone(),
        context in anytime(),
        kit in figure(),
    ) {
        let mut slot = slot(requirements.clone());
        slot.kit_mass = kit;
        let verdict = judge(&slot, &person, &context, catalogue());
        prop_assert_eq!(verdict.findings.len(), requirements.len());
        prop_assert!((0.0..=1.0).contains(&verdict.fit), "{}", verdict.fit);
        for finding in &verdict.findings {
            prop_assert!(!finding.reason.is_empty());
            prop_assert_eq!(finding.cure.is_some(), finding.standing == FindingStanding::Curable);
            if let (Some(cure), Some(today)) = (&finding.cure, context.today) {
                prop_assert!(cure.by >= today, "{:?}", finding);
            }
        }
        let met = verdict.findings.iter().all(|f| f.standing == FindingStanding::Met);
        prop_assert_eq!(verdict.outcome == Outcome::Qualified, met);
        // Compared as text, for what is not a number does not equal itself.
        let again = judge(&slot, &person, &context, catalogue());
        prop_assert_eq!(format!("{again:?}"), format!("{verdict:?}"));
    }

    /// Asking for more never makes anyone more qualified.
    #[test]
    fn an_extra_requirement_never_improves_the_outcome(
        requirements in vec(requirement(), 0..5),
        extra in requirement(),
        place in any::<proptest::sample::Index>(),
        person in anyone(),
        context in anytime(),
    ) {
        let before = judge(&slot(requirements.clone()), &person, &context, catalogue());
        let mut more = requirements;
        more.insert(place.index(more.len() + 1), extra);
        let after = judge(&slot(more), &person, &context, catalogue());
        prop_assert!(after.outcome >= before.outcome);
    }

    /// One more certificate never makes anyone less qualified, whatever its own state.
    #[test]
    fn another_certificate_never_worsens_the_outcome(
        requirements in vec(requirement(), 1..5),
        extra in certificate(),
        place in any::<proptest::sample::Index>(),
        person in anyone(),
        context in anytime(),
    ) {
        let before = judge(&slot(requirements.clone()), &person, &context, catalogue());
        let mut more = person;
        more.certificates.insert(place.index(more.certificates.len() + 1), extra);
        let after = judge(&slot(requirements), &more, &context, catalogue());
        prop_assert!(after.outcome <= before.outcome);
    }

    /// A certificate in date, looked at and of the kind asked for always meets the requirement.
    #[test]
    fn an_unexpired_certificate_meets_what_it_is_for(
        kind in select(KINDS.to_vec()),
        cover in 0_u32..60,
        person in anyone(),
        issued_before in 0_i64..150,
        left in 0_i64..900,
    ) {
        let issued = DAY.saturating_sub(Span::new().days(issued_before));
        let last = DAY.saturating_add(Span::new().days(i64::from(cover)));
        let mut person = person;
        // Use on the day itself keeps any clock that runs on use going for six months more.
        person.certificates.push(Certificate {
            id: CertificateId(Uuid::from_u128(2)),
            kind: kind.into(),
            category: None,
            number: None,
            issuer: None,
            issued,
            expires: Some(last.saturating_add(Span::new().days(left))),
            last_used: Some(DAY),
            checked: Some(EvidenceCheck { by: "a".into(), on: issued, method: "register".into() }),
            withdrawn: None,
        });
        let asked = Requirement::Certificate { any_of: vec![kind.into()], category: None, cover_days: cover };
        let context = Context { gag: GAG, revision: 1, day: DAY, call: None, today: None };
        let verdict = judge(&slot(vec![asked]), &person, &context, catalogue());
        prop_assert_eq!(verdict.outcome, Outcome::Qualified);
    }

    /// Taking away anything a person has on record never makes them more qualified, but for what
    /// speaks against them: a refusal, an exposure, a withdrawal.
    #[test]
    fn missing_evidence_is_never_better(
        requirements in vec(requirement(), 1..5),
        person in anyone(),
        context in anytime(),
    ) {
        let empty = Person { certificates: vec![], skills: vec![], ..person.clone() };
        let before = judge(&slot(requirements.clone()), &person, &context, catalogue());
        let after = judge(&slot(requirements.clone()), &empty, &context, catalogue());
        prop_assert!(after.outcome >= before.outcome);
        let nobody = Person { availability: vec![], exposures: vec![], ..crate::builders::person("P01") };
        let bare = judge(&slot(requirements), &nobody, &context, catalogue());
        for finding in &bare.findings {
            let free = matches!(finding.requirement, Requirement::DailyExposure { .. });
            prop_assert!(free || finding.standing != FindingStanding::Met, "{:?}", finding);
        }
    }

    /// Later questions have fewer cures: as the day of asking moves on, no outcome gets better.
    #[test]
    fn waiting_never_helps(
        requirements in vec(requirement(), 1..5),
        person in anyone(),
        context in anytime(),
        earlier in any_day(),
        later in any_day(),
    ) {
        prop_assume!(earlier <= later);
        let ask = |today| {
            let context = Context { today, ..context.clone() };
            judge(&slot(requirements.clone()), &person, &context, catalogue()).outcome
        };
        prop_assert!(ask(None) <= ask(Some(earlier)));
        prop_assert!(ask(Some(earlier)) <= ask(Some(later)));
    }

    /// The order people come in does not matter to the ranking, and the ranking is in order.
    #[test]
    fn ranking_is_in_order(
        requirements in vec(requirement(), 0..4),
        people in vec(anyone(), 0..8),
        context in anytime(),
    ) {
        let people: Vec<Person> = people
            .into_iter()
            .enumerate()
            .map(|(place, someone)| Person {
                id: PersonId(Uuid::from_u128(place as u128)),
                code: format!("P{place}"),
                ..someone
            })
            .collect();
        let slot = slot(requirements);
        let ranked = rank(&slot, &people, &context, catalogue());
        prop_assert_eq!(ranked.len(), people.len());
        for pair in ranked.windows(2) {
            let better = pair[0].outcome < pair[1].outcome
                || pair[0].outcome == pair[1].outcome && pair[0].fit >= pair[1].fit;
            prop_assert!(better);
        }
        let turned: Vec<&Person> = people.iter().rev().collect();
        let again = rank(&slot, turned, &context, catalogue());
        prop_assert_eq!(format!("{again:?}"), format!("{ranked:?}"));
    }

    /// A certificate said to lapse before a day does not meet a requirement on that day by its
    /// dates, and one that met it the day before is said to lapse.
    #[test]
    fn lapsing_and_judging_agree(held in certificate(), day in day()) {
        let held = Certificate {
            withdrawn: None,
            category: None,
            last_used: held.last_used.filter(|used| *used <= day),
            ..held
        };
        let person = Person { certificates: vec![held.clone()], ..person("P01") };
        let asked = Requirement::Certificate { any_of: vec![held.kind.clone()], category: None, cover_days: 0 };
        let context = Context { gag: GAG, revision: 1, day, call: None, today: None };
        let met = judge(&slot(vec![asked]), &person, &context, catalogue()).outcome == Outcome::Qualified;
        let lapsed = !lapsing([&person], &[day], catalogue()).is_empty();
        prop_assert!(!(met && lapsed), "{:?}", held);
        let sound = held.issued <= day
            && held.checked.as_ref().is_some_and(|check| (held.issued..=day).contains(&check.on))
            && (held.expires.is_some() || held.kind != "pyrotechnician" && held.kind != "equipment_examiner");
        if sound {
            prop_assert_eq!(met, !lapsed, "{:?}", held);
        }
    }
}

#[test]
fn the_end_of_the_calendar_is_no_trap() {
    let context = Context {
        gag: GAG,
        revision: 1,
        day: Date::MAX,
        call: None,
        today: None,
    };
    let mut person = person("P01");
    person.certificates.push(Certificate {
        issued: Date::MIN,
        expires: None,
        ..crate::builders::certificate("rope_access_1")
    });
    let asked = Requirement::Certificate {
        any_of: vec!["rope_access_1".into()],
        category: None,
        cover_days: u32::MAX,
    };
    let verdict = judge(&slot(vec![asked]), &person, &context, catalogue());
    assert_eq!(verdict.outcome, Outcome::Conditional);
}
