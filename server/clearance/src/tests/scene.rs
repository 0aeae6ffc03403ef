//! A gag told in a few words, for tests: who is on it, what they signed, what changed. The technique is
//! the tests' own, so that what is judged here is clearance and not physics.

use std::collections::{BTreeMap, BTreeSet};

use gagwright_casting::{
    Certificate, CertificateId, EvidenceCheck, GagId, Person, PersonId, ProductionId, Requirement,
    Slot, SlotId,
};
use gagwright_mechanics::InputValue;
use jiff::{SignedDuration, Timestamp, civil::date};
use p256::ecdsa::SigningKey;
use uuid::Uuid;

pub use crate::test_fall::{TestFall, find};
use crate::{
    canonical::facet_hashes,
    case::{
        Case, Clearance, DayLog, Hold, Reading, ReadingKind, RehearsalRun, RoleStanding, RoleState,
    },
    earlier,
    facets::Rung,
    ids::{DeviceId, HoldId, RecordId, SignOffId},
    judge::{REHEARSED, clearance_with},
    opening::Opening,
    plan::{Facets, Hazard, Plan},
    policy::{Policy, Role, RolePolicy, TechniquePolicy},
    signoff::{
        ConditionMet, Decision, Device, Member, SignOff, SignOffError, Statement, accept, draft,
        sign,
    },
};

/// One person for each role, by the role's place in the list; the performer is 1.
const CREW: [(Role, &str, &str); 15] = [
    (Role::Coordinator, "Māra Ozola", ""),
    (Role::Performer, "Thandeka Ngubo", ""),
    (Role::Rigging, "Žofie Marková", "rope_access_3"),
    (Role::Effects, "Anaïs Rochette", "pyrotechnician_film"),
    (Role::Fire, "Keoni Palakiko", "fire_safety_officer"),
    (Role::Medic, "Oluwaseun Adebisi", "paramedic"),
    (Role::FirstAd, "Radmila Ilić", ""),
    (Role::Vehicles, "Baltazar Quispe", ""),
    (Role::Armourer, "Sorcha Ní Bhriain", "armourer"),
    (Role::Marine, "Hinemoa Parata", "diving_supervisor"),
    (Role::Animals, "Temür Saparov", "animal_handler"),
    (Role::Camera, "Eun-ji Baek", ""),
    (
        Role::Engineer,
        "Þórunn Egilsdóttir",
        "engineer_registration",
    ),
    (Role::Guardian, "Farah Daneshvar", ""),
    (Role::Production, "Kwabena Sarpong", ""),
];

pub fn time(text: &str) -> Timestamp {
    text.parse().unwrap()
}

fn id(kind: u128, number: u128) -> Uuid {
    Uuid::from_u128(kind << 64 | number)
}

pub fn person_of(role: Role) -> PersonId {
    let place = CREW.iter().position(|(one, ..)| *one == role).unwrap();
    PersonId(id(1, place as u128))
}

pub fn slot() -> SlotId {
    SlotId(id(5, 1))
}

pub fn key_of(person: PersonId) -> SigningKey {
    let mut seed = [7u8; 32];
    seed[16..].copy_from_slice(person.0.as_bytes());
    SigningKey::from_slice(&seed).unwrap()
}

pub fn device_of(person: PersonId) -> DeviceId {
    DeviceId(id(2, person.0.as_u128() & 0xffff))
}

pub fn certificate(kind: &str) -> Certificate {
    Certificate {
        id: CertificateId(id(9, kind.len() as u128)),
        kind: kind.to_owned(),
        category: None,
        number: Some("1".to_owned()),
        issuer: Some("The issuer".to_owned()),
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

/// A gag, its people and what has happened so far.
#[derive(Clone)]
pub struct Scene {
    pub case: Case,
    pub now: Timestamp,
    next: u128,
    /// The revisions before this one.
    past: Vec<Plan>,
}

impl Scene {
    /// A ten-metre fall, cast, dated and rehearsed; nobody has signed.
    pub fn new() -> Scene {
        let gag = GagId(id(3, 1));
        let mut policy = Policy::built_in().clone();
        policy.techniques.insert(
            "test-fall".to_owned(),
            TechniquePolicy {
                hazards: BTreeSet::from([Hazard::Height]),
                ..Default::default()
            },
        );
        let mut facets = Facets::default();
        facets.setting.scene = "12".to_owned();
        facets.setting.day = Some(date(2026, 3, 14));
        facets.action.parameters.insert(
            "height".to_owned(),
            InputValue::Number {
                value: 10.0,
                tolerance: None,
            },
        );
        facets.cast.slots = vec![Slot {
            id: slot(),
            name: "Double for Ines".to_owned(),
            requirements: vec![Requirement::MedicalClearance, Requirement::Consent],
            person: Some(person_of(Role::Performer)),
            kit_mass: 3.0,
        }];
        facets.rehearsals.rungs = vec![
            Rung {
                name: "bag".to_owned(),
                what: "weight bag".to_owned(),
                good_runs: 2,
            },
            Rung {
                name: "half".to_owned(),
                what: "half height".to_owned(),
                good_runs: 1,
            },
        ];
        let case = Case {
            production: ProductionId(id(4, 1)),
            plan: Plan {
                gag,
                revision: 1,
                technique: "test-fall".to_owned(),
                facets,
                policy: policy.version.clone(),
                author: person_of(Role::Coordinator),
                written_at: time("2026-03-01T08:00:00Z"),
                note: String::new(),
            },
            signoffs: Vec::new(),
            holds: Vec::new(),
            readings: Vec::new(),
            runs: Vec::new(),
            people: vec![performer()],
            members: CREW
                .iter()
                .map(|(role, name, kind)| member(*role, name, kind))
                .collect(),
            devices: CREW
                .iter()
                .map(|(role, ..)| device(person_of(*role)))
                .collect(),
            policy,
            day: DayLog::default(),
            earlier: Vec::new(),
            delegations: Vec::new(),
            resolutions: Vec::new(),
        };
        let mut scene = Scene {
            case,
            now: time("2026-03-02T09:00:00Z"),
            next: 100,
            past: Vec::new(),
        };
        scene.rehearsed("bag").rehearsed("bag").rehearsed("half");
        scene
    }

    /// As [`Scene::new`], and everyone needed has signed.
    pub fn cleared() -> Scene {
        let mut scene = Scene::new();
        scene.everyone_signs();
        scene
    }

    pub fn mint(&mut self) -> u128 {
        self.next += 1;
        self.now = self.now.checked_add(SignedDuration::from_mins(1)).unwrap();
        self.next
    }

    pub fn judged(&self) -> Clearance {
        clearance_with(&self.case, self.now, find)
    }

    pub fn standing(&self, role: Role) -> RoleStanding {
        let found = self
            .judged()
            .roles
            .into_iter()
            .find(|standing| standing.role == role);
        found.unwrap_or_else(|| panic!("{} is not asked", role.name()))
    }

    /// The state of every role asked.
    pub fn states(&self) -> BTreeMap<Role, RoleState> {
        self.judged()
            .roles
            .iter()
            .map(|standing| (standing.role, standing.state))
            .collect()
    }

    pub fn statement(&mut self, role: Role) -> Statement {
        let signer = person_of(role);
        let place = (role == Role::Performer).then(slot);
        let number = self.mint();
        let mut statement = draft(&self.case, role, place, signer, self.now).unwrap();
        statement.id = SignOffId(id(6, number));
        statement.device = device_of(signer);
        statement
    }

    /// Signs with the signer's own key, past the door, and records it. Texts are written in the clear by
    /// whoever calls, and committed to here.
    pub fn hand_in(&mut self, statement: &Statement) -> Result<SignOffId, SignOffError> {
        let (statement, openings) = sealed(statement);
        let jws = sign(&statement, &key_of(statement.hand()))?;
        accept(&jws, &openings, &self.case, self.now)?;
        self.record_with(jws, openings);
        Ok(statement.id)
    }

    /// Records without asking the door.
    pub fn record(&mut self, jws: String) {
        self.record_with(jws, Vec::new());
    }

    fn record_with(&mut self, jws: String, openings: Vec<Opening>) {
        let leaf = self.mint() as u64;
        let received_at = self.now;
        self.case.signoffs.push(SignOff {
            jws,
            received_at,
            leaf,
            met: Vec::new(),
            openings,
        });
    }

    pub fn signs(&mut self, role: Role) -> &mut Scene {
        let statement = self.statement(role);
        self.hand_in(&statement).unwrap();
        self
    }

    pub fn declines(&mut self, role: Role, reason: &str) -> &mut Scene {
        let mut statement = self.statement(role);
        statement.decision = Decision::Decline;
        statement.reason = Some(reason.to_owned());
        self.hand_in(&statement).unwrap();
        self
    }

    pub fn signs_on_condition(&mut self, role: Role, condition: &str) -> &mut Scene {
        let mut statement = self.statement(role);
        statement.decision = Decision::ApproveWithConditions;
        statement.conditions = vec![condition.to_owned()];
        self.hand_in(&statement).unwrap();
        self
    }

    pub fn meets(&mut self, condition: &str, by: PersonId) -> &mut Scene {
        let at = self.now;
        let signoff = self.case.signoffs.last_mut().unwrap();
        let opening = signoff.openings.iter().find(|one| one.text == condition);
        let condition = opening.and_then(Opening::commitment);
        signoff.met.push(ConditionMet {
            condition: condition.unwrap_or_else(|| "00".repeat(32)),
            by,
            at,
        });
        self
    }

    /// Everyone asked who does not stand signs.
    pub fn everyone_signs(&mut self) -> &mut Scene {
        for standing in self.judged().roles {
            if standing.state != RoleState::Standing {
                self.signs(standing.role);
            }
        }
        self
    }

    pub fn revise(&mut self, change: impl FnOnce(&mut Facets)) -> &mut Scene {
        self.mint();
        self.past.push(self.case.plan.clone());
        change(&mut self.case.plan.facets);
        self.case.plan.revision += 1;
        self.case.plan.written_at = self.now;
        self.carry()
    }

    /// Puts into the case what a server would of earlier revisions.
    pub fn carry(&mut self) -> &mut Scene {
        let wanted = earlier::revisions(&self.case.signoffs, self.case.plan.revision);
        let past = self.past.iter();
        let past = past.filter(|plan| wanted.contains(&plan.revision)).cloned();
        self.case.earlier = earlier::carried(&self.case.plan, past);
        self
    }

    /// One role's policy, to change.
    pub fn role(&mut self, role: Role) -> &mut RolePolicy {
        let mut roles = self.case.policy.roles.iter_mut();
        roles.find(|one| one.role == role).unwrap()
    }

    pub fn height(&mut self, metres: f64) -> &mut Scene {
        self.revise(|facets| {
            let value = InputValue::Number {
                value: metres,
                tolerance: None,
            };
            facets.action.parameters.insert("height".to_owned(), value);
        })
    }

    pub fn rehearsed(&mut self, rung: &str) -> &mut Scene {
        self.run(rung, true)
    }

    pub fn run(&mut self, rung: &str, good: bool) -> &mut Scene {
        let number = self.mint();
        let mut facets = facet_hashes(&self.case.plan.facets).unwrap();
        facets.retain(|facet, _| REHEARSED.contains(facet));
        self.case.runs.push(RehearsalRun {
            id: RecordId(id(7, number)),
            rung: rung.to_owned(),
            facets,
            good,
            note: String::new(),
            at: self.now,
            by: person_of(Role::Coordinator),
        });
        self
    }

    pub fn reading(&mut self, kind: ReadingKind, value: f64) -> &mut Scene {
        let number = self.mint();
        self.case.readings.push(Reading {
            id: RecordId(id(7, number)),
            kind,
            value,
            at: self.now,
            by: person_of(Role::Rigging),
            place: "the lip".to_owned(),
        });
        self
    }

    pub fn hold(&mut self, hazard: Option<Hazard>) -> &mut Scene {
        let number = self.mint();
        self.case.holds.push(Hold {
            id: HoldId(id(8, number)),
            gag: Some(self.case.plan.gag),
            raised_at: self.now,
            raised_by: None,
            reason: String::new(),
            hazard,
            agreements: Vec::new(),
            released_at: None,
        });
        self
    }

    pub fn member(&mut self, role: Role) -> &mut Member {
        let person = person_of(role);
        self.case
            .members
            .iter_mut()
            .find(|member| member.person == person)
            .unwrap()
    }

    pub fn later(&mut self, time: SignedDuration) -> &mut Scene {
        self.now = self.now.checked_add(time).unwrap();
        self
    }
}

fn performer() -> Person {
    Person {
        id: person_of(Role::Performer),
        code: "P01".to_owned(),
        name: "Thandeka Ngubo".to_owned(),
        occupation: "performer".to_owned(),
        performs: true,
        email: None,
        born: Some(date(1996, 4, 2)),
        measurements: BTreeMap::new(),
        certificates: Vec::new(),
        skills: Vec::new(),
        availability: Vec::new(),
        medically_clear_until: Some(date(2026, 12, 31)),
        last_wrap: None,
        exposures: Vec::new(),
        consents: Vec::new(),
    }
}

fn member(role: Role, name: &str, kind: &str) -> Member {
    Member {
        person: person_of(role),
        name: name.to_owned(),
        roles: BTreeSet::from([role]),
        certificates: if kind.is_empty() {
            Vec::new()
        } else {
            vec![certificate(kind)]
        },
    }
}

pub fn device(person: PersonId) -> Device {
    Device {
        id: device_of(person),
        person,
        name: "phone".to_owned(),
        key: key_of(person).verifying_key().into(),
        registered_at: time("2026-02-01T08:00:00Z"),
        revoked_at: None,
    }
}

/// A statement with commitments in place of the texts written in it, and what opens them.
pub fn sealed(statement: &Statement) -> (Statement, Vec<Opening>) {
    let mut statement = statement.clone();
    let mut openings = Vec::new();
    let texts = statement.conditions.iter_mut().chain(&mut statement.reason);
    for (at, text) in texts.enumerate() {
        let opening = Opening::new(&[at as u8; 32], text.as_str());
        *text = opening.commitment().unwrap();
        openings.push(opening);
    }
    (statement, openings)
}
