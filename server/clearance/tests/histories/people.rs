//! A small company: who they are, what they hold at the start, and their devices.

use std::collections::{BTreeMap, BTreeSet};

use gagwright_casting::{Certificate, CertificateId, EvidenceCheck, Person, PersonId};
use gagwright_clearance::{DeviceId, Role, signoff::Device, signoff::Member};
use jiff::civil::{Date, date};
use p256::ecdsa::SigningKey;
use uuid::Uuid;

use crate::clock;

/// Somebody of the company, by number.
pub type Who = usize;

/// Name, hat at the start, certificate, year of birth.
pub const COMPANY: [(&str, Option<Role>, &str, i16); 13] = [
    ("Māra Ozola", Some(Role::Coordinator), "", 1979),
    ("Thandeka Ngubo", Some(Role::Performer), "", 1996),
    ("Žofie Marková", Some(Role::Rigging), "rope_access_3", 1984),
    ("Oluwaseun Adebisi", Some(Role::Medic), "paramedic", 1980),
    ("Radmila Ilić", Some(Role::FirstAd), "", 1977),
    ("Kwabena Sarpong", Some(Role::Production), "", 1974),
    (
        "Þórunn Egilsdóttir",
        Some(Role::Engineer),
        "engineer_registration",
        1970,
    ),
    ("Ngaio Tamihana", Some(Role::Performer), "", 1999),
    ("Iker Etxeberria", None, "rope_access_3", 1988),
    (
        "Anaïs Rochette",
        Some(Role::Effects),
        "pyrotechnician_film",
        1985,
    ),
    ("Linh Trần", Some(Role::Performer), "", 2012),
    ("Farah Daneshvar", Some(Role::Guardian), "", 1982),
    (
        "Keoni Palakiko",
        Some(Role::Fire),
        "fire_safety_officer",
        1981,
    ),
];

pub const PERFORMERS: [Who; 3] = [1, 7, 10];
/// Holds no hat and a rigger's certificate: a deputy, or somebody who has no business signing.
pub const SPARE: Who = 8;

pub fn holder(role: Role) -> Who {
    COMPANY
        .iter()
        .position(|one| one.1 == Some(role))
        .unwrap_or(SPARE)
}

pub fn id(kind: u128, number: u128) -> Uuid {
    Uuid::from_u128(kind << 64 | number)
}

pub fn person(who: Who) -> PersonId {
    PersonId(id(1, who as u128))
}

pub fn device(who: Who) -> DeviceId {
    DeviceId(id(2, who as u128))
}

pub fn key(who: Who) -> SigningKey {
    let mut seed = [7u8; 32];
    seed[31] = who as u8 + 1;
    SigningKey::from_slice(&seed).unwrap()
}

/// How somebody's certificate stands on paper.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Paper {
    Good,
    /// Its last day.
    Until(i64),
    /// The day it was withdrawn on.
    Withdrawn(i64),
    Lost,
}

pub fn certificates(kind: &str, paper: Paper) -> Vec<Certificate> {
    if kind.is_empty() || paper == Paper::Lost {
        return Vec::new();
    }
    vec![Certificate {
        id: CertificateId(id(9, kind.len() as u128)),
        kind: kind.to_owned(),
        category: None,
        number: None,
        issuer: None,
        issued: date(2025, 6, 1),
        expires: Some(match paper {
            Paper::Until(day) => clock::date(day),
            _ => date(2027, 5, 31),
        }),
        last_used: Some(date(2026, 2, 20)),
        checked: Some(EvidenceCheck {
            by: "Radmila Ilić".to_owned(),
            on: date(2026, 2, 1),
            method: "register".to_owned(),
        }),
        withdrawn: match paper {
            Paper::Withdrawn(day) => Some(clock::date(day)),
            _ => None,
        },
    }]
}

pub fn members() -> Vec<Member> {
    let one = |(who, (name, role, kind, _)): (Who, &(&str, Option<Role>, &str, i16))| Member {
        person: person(who),
        name: (*name).to_owned(),
        roles: BTreeSet::from_iter(*role),
        certificates: certificates(kind, Paper::Good),
    };
    COMPANY.iter().enumerate().map(one).collect()
}

pub fn devices() -> Vec<Device> {
    (0..COMPANY.len())
        .map(|who| Device {
            id: device(who),
            person: person(who),
            name: "phone".to_owned(),
            key: key(who).verifying_key().into(),
            registered_at: clock::moment(-20_000),
            revoked_at: None,
        })
        .collect()
}

pub fn roster(clear_until: Date) -> Vec<Person> {
    PERFORMERS
        .iter()
        .map(|who| Person {
            id: person(*who),
            code: format!("P{who:02}"),
            name: COMPANY[*who].0.to_owned(),
            occupation: "performer".to_owned(),
            performs: true,
            email: None,
            born: Some(date(COMPANY[*who].3, 4, 2)),
            measurements: BTreeMap::new(),
            certificates: Vec::new(),
            skills: Vec::new(),
            availability: Vec::new(),
            medically_clear_until: Some(clear_until),
            last_wrap: None,
            exposures: Vec::new(),
            consents: Vec::new(),
        })
        .collect()
}
