//! Things to put in a store, each valid by itself and made from a number.

use std::collections::{BTreeMap, BTreeSet};

use gagwright_casting::{GagId, Person, PersonId, ProductionId};
use gagwright_clearance::{
    Decision, Device, DeviceId, Facets, Hold, HoldId, Load, Plan, Policy, Reading, ReadingKind,
    RecordId, RehearsalRun, Role, SignOff, SignOffId, Statement, TestShot, plan::FacetHashes,
    signoff::PublicKey,
};
use gagwright_mechanics::{Facet, InputValue, Inputs};
use gagwright_store::{
    Connection, Store, StoreError, gags, gags::GagRow, people, people::StoredPerson, productions,
    productions::Production, trail::NewEntry,
};
use jiff::Timestamp;
use serde_json::{Map, Value, json};
use uuid::Uuid;

/// An id made from a number.
pub fn id(number: u128) -> Uuid {
    Uuid::from_u128(0x0197_0000_0000_7000_8000_0000_0000_0000 + number)
}

/// A moment on the first shooting day, so many seconds after the call.
pub fn at(seconds: i64) -> Timestamp {
    let call: Timestamp = "2026-06-01T05:30:00Z".parse().expect("a time");
    call + jiff::SignedDuration::from_secs(seconds)
}

pub fn policy() -> Policy {
    Policy {
        version: "test.1".to_owned(),
        roles: Vec::new(),
        techniques: BTreeMap::new(),
        separate: vec![[Role::Coordinator, Role::Medic]],
        owners: BTreeMap::new(),
        final_say: BTreeSet::from([Role::Medic]),
        ..Policy::built_in().clone()
    }
}

pub fn production(number: u128) -> Production {
    Production {
        id: ProductionId(id(number)),
        name: "Salt Meridian".to_owned(),
        demo: true,
        time_zone: "Atlantic/Azores".to_owned(),
        policy: policy(),
        hold_code: format!("tide-{number}"),
        created_at: at(0),
    }
}

pub fn person(number: u128, code: &str, name: &str) -> Person {
    serde_json::from_value(json!({
        "id": id(number), "code": code, "name": name, "occupation": "performer", "performs": true,
        "measurements": {"height": {"value": 1.71, "on": "2026-05-02", "by": "wardrobe"}},
        "certificates": [{"id": id(number + 5000), "kind": "rope_access_3", "issued": "2025-01-31"}],
    }))
    .expect("a person")
}

pub fn plan(gag: GagId, revision: u32, author: PersonId) -> Plan {
    let mut facets = Facets::default();
    facets.setting.scene = "41".to_owned();
    facets.setting.location = format!("Breakwater, mark {revision}");
    Plan {
        gag,
        revision,
        technique: "high_fall".to_owned(),
        facets,
        policy: "test.1".to_owned(),
        author,
        written_at: at(i64::from(revision)),
        note: format!("Revision {revision}: höhere Kante, κρημνός, 高い"),
    }
}

/// Stand-ins of the right shape: what a hash is made of is not the store's business.
pub fn facet_hashes(revision: u32) -> FacetHashes {
    Facet::ALL
        .into_iter()
        .map(|facet| (facet, format!("{:064x}", revision)))
        .collect()
}

pub fn device(number: u128, person: PersonId) -> Device {
    Device {
        id: DeviceId(id(number)),
        person,
        name: "Blue phone".to_owned(),
        key: PublicKey {
            kty: "EC".to_owned(),
            crv: "P-256".to_owned(),
            x: "f83OJ3D2xF1Bg8vub9tLe1gHMzV76e8Tus9uPHvRVEU".to_owned(),
            y: "x_FEzRu9m36HLN_tue659LNpXW6pCyStikYjKIWI5a0".to_owned(),
        },
        registered_at: at(1),
        revoked_at: None,
    }
}

pub fn statement(
    number: u128,
    production: ProductionId,
    gag: GagId,
    signer: PersonId,
    device: DeviceId,
) -> Statement {
    Statement {
        kind: Statement::KIND.to_owned(),
        id: SignOffId(id(number)),
        production,
        gag,
        revision: 1,
        plan_digest: format!("{:064x}", 1),
        technique: "high-fall".to_owned(),
        facets: facet_hashes(1),
        role: Role::FirstAd,
        slot: None,
        decision: Decision::ApproveWithConditions,
        conditions: vec!["Second spotter on the rail".to_owned()],
        reason: None,
        attestation: "first_ad/1".to_owned(),
        signer,
        device,
        signed_at: at(20),
        good_until: None,
        mark: None,
        language: None,
        delegation: None,
        ink: None,
    }
}

pub fn signoff(leaf: u64) -> SignOff {
    SignOff {
        jws: format!("eyJ.{leaf}.sig"),
        received_at: at(30),
        leaf,
        met: Vec::new(),
        openings: Vec::new(),
    }
}

pub fn hold(number: u128, gag: Option<GagId>) -> Hold {
    Hold {
        id: HoldId(id(number)),
        gag,
        raised_at: at(40),
        raised_by: None,
        reason: "Swell over the mats".to_owned(),
        hazard: None,
        agreements: Vec::new(),
        released_at: None,
    }
}

pub fn reading(number: u128, by: PersonId) -> Reading {
    Reading {
        id: RecordId(id(number)),
        kind: ReadingKind::Gust,
        value: 0.1 + 0.2,
        at: at(50),
        by,
        place: "Tower, 12 m".to_owned(),
    }
}

pub fn run(number: u128, by: PersonId) -> RehearsalRun {
    RehearsalRun {
        id: RecordId(id(number)),
        rung: "half_height".to_owned(),
        facets: facet_hashes(1),
        good: true,
        note: String::new(),
        at: at(60),
        by,
    }
}

pub fn test_shot(number: u128, gag: GagId, by: PersonId) -> TestShot {
    TestShot {
        id: RecordId(id(number)),
        gag,
        technique: "ratchet-pull".to_owned(),
        inputs: Inputs(BTreeMap::from([(
            "reservoir_pressure".to_owned(),
            InputValue::Number {
                value: 6.3e5,
                tolerance: Some(0.1 + 0.2),
            },
        )])),
        measured: BTreeMap::from([("total_distance".to_owned(), 0.1 + 0.2)]),
        load: Load::Bag,
        note: "Bag turned once".to_owned(),
        shot_at: at(61),
        recorded_by: by,
        recorded_at: at(62),
    }
}

pub fn entry(production: ProductionId, kind: &str) -> NewEntry {
    NewEntry {
        at: at(70),
        kind: kind.to_owned(),
        production,
        gag: None,
        actor: None,
        facts: Map::from_iter([("revision".to_owned(), Value::from(3))]),
        parts: Default::default(),
    }
}

/// A production with two people and one gag without a plan: production 1, people 11 and 12, gag 21.
pub fn stage(store: &Store) -> Stage {
    store
        .write(|conn: &mut Connection| {
            let production = production(1);
            productions::insert(conn, &production)?;
            for (number, code, name) in [(11, "P01", "Iluka Märtson"), (12, "P02", "Thandeka 森")]
            {
                let person = person(number, code, name);
                people::insert(
                    conn,
                    &StoredPerson {
                        person,
                        production: production.id,
                        version: 1,
                    },
                )?;
            }
            gags::insert(conn, &gag(21, production.id, "G07"))?;
            Ok::<_, StoreError>(Stage {
                production: production.id,
                one: PersonId(id(11)),
                two: PersonId(id(12)),
                gag: GagId(id(21)),
            })
        })
        .expect("a staged production")
}

pub fn gag(number: u128, production: ProductionId, code: &str) -> GagRow {
    GagRow {
        id: GagId(id(number)),
        production,
        code: code.to_owned(),
        title: "Off the light tower".to_owned(),
        current_revision: 0,
        created_at: at(2),
    }
}

/// Ids of what [`stage`] made.
#[derive(Clone, Copy)]
pub struct Stage {
    pub production: ProductionId,
    pub one: PersonId,
    pub two: PersonId,
    pub gag: GagId,
}
