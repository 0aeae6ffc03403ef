//! How long it takes to judge a gag that twelve roles must sign, on its day, with signatures that were
//! verified before and with signatures to verify.

#![allow(missing_docs, clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "../src/tests/test_fall.rs"]
mod test_fall;

use std::{collections::BTreeSet, hint::black_box};

use criterion::{Criterion, criterion_group, criterion_main};
use gagwright_casting::{
    Certificate, CertificateId, EvidenceCheck, GagId, Person, PersonId, ProductionId, Requirement,
    Slot, SlotId,
};
use gagwright_clearance::{
    Case, DeviceId, JudgeMemory, Plan, Policy, Role, SignOff, SignOffId,
    case::{DayLog, DaySignOff},
    clearance_remembering, clearance_with, day_mark, draft,
    plan::Hazard,
    policy::TechniquePolicy,
    signoff::{self, Device, Member},
};
use gagwright_mechanics::InputValue;
use jiff::{Timestamp, civil::date};
use p256::ecdsa::SigningKey;
use uuid::Uuid;

/// Each with what the policy asks them to hold.
const SIGNERS: [(Role, &str); 12] = [
    (Role::Coordinator, ""),
    (Role::Performer, ""),
    (Role::Rigging, "rope_access_3"),
    (Role::Effects, "pyrotechnician_film"),
    (Role::Fire, "fire_safety_officer"),
    (Role::Medic, "paramedic"),
    (Role::FirstAd, ""),
    (Role::Vehicles, ""),
    (Role::Marine, "diving_supervisor"),
    (Role::Animals, "animal_handler"),
    (Role::Camera, ""),
    (Role::Production, ""),
];

fn id(kind: u128, number: usize) -> Uuid {
    Uuid::from_u128(kind << 64 | number as u128)
}

fn key(number: usize) -> SigningKey {
    let mut seed = [7u8; 32];
    seed[31] = number as u8 + 1;
    SigningKey::from_slice(&seed).unwrap()
}

fn time(text: &str) -> Timestamp {
    text.parse().unwrap()
}

fn certificate(kind: &str) -> Certificate {
    Certificate {
        id: CertificateId(id(9, kind.len())),
        kind: kind.to_owned(),
        category: None,
        number: None,
        issuer: None,
        issued: date(2025, 6, 1),
        expires: Some(date(2027, 5, 31)),
        last_used: Some(date(2026, 2, 20)),
        checked: Some(EvidenceCheck {
            by: "Radmila Ilić".to_owned(),
            on: date(2026, 2, 1),
            method: "register".to_owned(),
        }),
        withdrawn: None,
    }
}

fn unsigned() -> Case {
    let mut policy = Policy::built_in().clone();
    let technique = TechniquePolicy {
        hazards: BTreeSet::from([Hazard::Height]),
        ..Default::default()
    };
    policy.techniques.insert("test-fall".to_owned(), technique);
    let mut facets = gagwright_clearance::Facets::default();
    facets.setting.scene = "12".to_owned();
    facets.setting.location = "Silo yard".to_owned();
    facets.setting.day = Some(date(2026, 3, 14));
    facets.action.summary = "She falls from the lip of the silo into the catcher. ".repeat(8);
    facets.action.hazards = [
        Hazard::Fire,
        Hazard::Vehicle,
        Hazard::Water,
        Hazard::Animal,
        Hazard::LockOff,
    ]
    .into();
    let height = InputValue::Number {
        value: 10.0,
        tolerance: None,
    };
    facets.action.parameters.insert("height".to_owned(), height);
    facets.cast.slots = vec![Slot {
        id: SlotId(id(5, 1)),
        name: "Double for Ines".to_owned(),
        requirements: vec![Requirement::MedicalClearance, Requirement::Consent],
        person: Some(PersonId(id(1, 1))),
        kit_mass: 3.0,
    }];
    let everyone = SIGNERS.iter().enumerate();
    Case {
        production: ProductionId(id(4, 1)),
        plan: Plan {
            gag: GagId(id(3, 1)),
            revision: 1,
            technique: "test-fall".to_owned(),
            facets,
            policy: policy.version.clone(),
            author: PersonId(id(1, 0)),
            written_at: time("2026-03-01T08:00:00Z"),
            note: String::new(),
        },
        signoffs: Vec::new(),
        holds: Vec::new(),
        readings: Vec::new(),
        runs: Vec::new(),
        people: vec![Person {
            born: Some(date(1996, 4, 2)),
            medically_clear_until: Some(date(2026, 12, 31)),
            ..Person::named(PersonId(id(1, 1)), "P01", "Thandeka Ngubo")
        }],
        members: everyone
            .clone()
            .map(|(number, (role, kind))| Member {
                person: PersonId(id(1, number)),
                name: format!("Person {number}"),
                roles: BTreeSet::from([*role]),
                certificates: (!kind.is_empty())
                    .then(|| certificate(kind))
                    .into_iter()
                    .collect(),
            })
            .collect(),
        devices: everyone
            .map(|(number, _)| Device {
                id: DeviceId(id(2, number)),
                person: PersonId(id(1, number)),
                name: "phone".to_owned(),
                key: key(number).verifying_key().into(),
                registered_at: time("2026-02-01T08:00:00Z"),
                revoked_at: None,
            })
            .collect(),
        policy,
        day: DayLog::default(),
        earlier: Vec::new(),
        delegations: Vec::new(),
        resolutions: Vec::new(),
    }
}

/// Everyone has signed the plan and, where they do, the day.
fn signed(now: Timestamp) -> Case {
    let mut case = unsigned();
    for (number, (role, _)) in SIGNERS.iter().enumerate() {
        let slot = (*role == Role::Performer).then(|| SlotId(id(5, 1)));
        let signer = PersonId(id(1, number));
        let mut statement = draft::draft(&case, *role, slot, signer, now).unwrap();
        statement.id = SignOffId(id(6, number));
        statement.device = DeviceId(id(2, number));
        case.signoffs.push(SignOff {
            jws: signoff::sign(&statement, &key(number)).unwrap(),
            received_at: now,
            leaf: number as u64,
            met: Vec::new(),
            openings: Vec::new(),
        });
        let mark = SignOffId(id(7, number));
        if let Ok(prepared) = day_mark::prepare(&case, *role, slot, signer, mark, now) {
            let statement = day_mark::DayStatement {
                device: DeviceId(id(2, number)),
                ..prepared.statement
            };
            case.day.signoffs.push(DaySignOff {
                jws: day_mark::sign(&statement, &key(number)).unwrap(),
                received_at: now,
                leaf: 100 + number as u64,
            });
        }
    }
    case
}

fn judge(criterion: &mut Criterion) {
    let now = time("2026-03-14T08:00:00Z");
    let case = signed(now);
    let memory = JudgeMemory::default();
    let judged = clearance_remembering(&case, now, test_fall::find, &memory);
    assert_eq!(judged.roles.len(), 12);
    assert!(judged.blocks.is_empty(), "{:?}", judged.blocks);
    assert_eq!(memory.marks(), 22);
    let mut group = criterion.benchmark_group("judge_12_roles");
    group.bench_function("signatures verified before", |bencher| {
        bencher.iter(|| clearance_remembering(black_box(&case), now, test_fall::find, &memory));
    });
    group.sample_size(20);
    group.bench_function("22 signatures to verify", |bencher| {
        bencher.iter(|| clearance_with(black_box(&case), now, test_fall::find));
    });
    group.finish();
}

criterion_group!(benches, judge);
criterion_main!(benches);
