//! The commands on a real SQLite database: one leaf each, nothing kept of what is refused, nothing
//! personal in the clear, and no way from one production into another.

#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use std::collections::BTreeSet;

use gagwright_casting::{PersonId, ProductionId, roster::RosterTable};
use gagwright_clearance::{
    ClearanceState, Decision, Facet, GagId, HoldId, ReadingKind, RecordId, Role, RoleState,
    SignOffError, plan::Hazard,
};
use gagwright_store::{Connection, Store};
use jiff::{SignedDuration, Timestamp};
use tempfile::TempDir;
use uuid::Uuid;

use super::*;
use crate::{
    demo::{
        self, script,
        stage::{Stage, Word},
    },
    views,
};

mod erasing;
mod past_day;
mod replay;

/// Bytes that are different each time, and the same in every run of the tests.
fn counting() -> impl FnMut(&mut [u8]) + Send {
    let mut count = 0u64;
    move |bytes: &mut [u8]| {
        for chunk in bytes.chunks_mut(8) {
            count += 1;
            let mixed = count.wrapping_mul(0x9e37_79b9_7f4a_7c15).rotate_left(17) ^ count;
            chunk.copy_from_slice(&mixed.to_le_bytes()[..chunk.len()]);
        }
    }
}

struct Scene {
    store: Store,
    stage: Stage,
    gag: GagId,
    _folder: TempDir,
}

fn morning() -> Timestamp {
    "2026-11-25T09:00:00Z".parse().unwrap()
}

impl Scene {
    /// The invented production with its roster and the gag of that code, as revision 1, nothing done.
    fn with(code: &str) -> Scene {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("scene.db");
        let store = Store::open(&format!("sqlite:{}", path.display())).unwrap();
        store.migrate().unwrap();
        let script = script::built_in().unwrap();
        let gag = script
            .gags
            .iter()
            .find(|gag| gag.code == code)
            .unwrap()
            .clone();
        let (stage, gag) = store
            .write(move |conn| {
                let mut stage =
                    demo::open(conn, &script, morning(), Box::new(counting()), |_| None)?;
                let plan = stage.create(conn, "C01", &gag)?;
                Ok::<_, CommandError>((stage, plan.gag))
            })
            .unwrap();
        Scene {
            store,
            stage,
            gag,
            _folder: folder,
        }
    }

    fn actor(&self, code: &str) -> Actor {
        self.store
            .read(|conn| self.stage.by_code(conn, code))
            .unwrap()
    }

    fn size(&self) -> u64 {
        self.store
            .read(|conn| gagwright_store::trail::size(conn, self.stage.production))
            .unwrap_or_else(|error: StoreError| panic!("{error}"))
    }

    /// Runs a command as its own transaction.
    fn run<T: Send + 'static>(
        &self,
        command: impl FnOnce(&mut Connection) -> Result<T, CommandError> + Send + 'static,
    ) -> Result<T, CommandError> {
        self.store.write(command)
    }

    /// Runs a command that must be refused, and sees that nothing of it was kept.
    fn refused<T: Send + std::fmt::Debug + 'static>(
        &self,
        command: impl FnOnce(&mut Connection) -> Result<T, CommandError> + Send + 'static,
    ) -> CommandError {
        let before = self.size();
        let error = self.run(command).expect_err("it should have been refused");
        assert_eq!(
            self.size(),
            before,
            "a refused command left a leaf: {error}"
        );
        error
    }

    /// Plays on with the stage.
    fn play<T: Send + 'static>(
        mut self,
        part: impl FnOnce(&mut Connection, &mut Stage) -> Result<T, CommandError> + Send + 'static,
    ) -> (T, Scene) {
        let Scene {
            store,
            mut stage,
            gag,
            _folder,
        } = self;
        let (found, stage) = store
            .write(move |conn| {
                let found = part(conn, &mut stage)?;
                Ok::<_, CommandError>((found, stage))
            })
            .unwrap();
        self = Scene {
            store,
            stage,
            gag,
            _folder,
        };
        (found, self)
    }

    fn plan(&self) -> Plan {
        let gag = self.gag;
        self.store
            .read(|conn| gagwright_store::plans::current(conn, gag))
            .unwrap_or_else(|error: StoreError| panic!("{error}"))
    }
}

fn later() -> Timestamp {
    morning() + SignedDuration::from_hours(3)
}

fn no_entropy(bytes: &mut [u8]) {
    bytes.fill(9);
}

#[test]
fn a_stale_revision_shows_both_sides_by_facet_and_keeps_nothing() {
    let scene = Scene::with("G02");
    let actor = scene.actor("C01");
    let gag = scene.gag;
    let plan = scene.plan();
    let mut theirs = plan.clone();
    theirs.facets.camera.notes = "wider".into();
    let mut yours = plan.clone();
    yours.facets.medical.cover = "Two medics".into();
    let revision = |plan: Plan| NewRevision {
        technique: plan.technique,
        facets: plan.facets,
        note: "because".into(),
    };
    let (first, second) = (revision(theirs), revision(yours));
    let by = actor.clone();
    scene
        .run(move |conn| plans::revise(conn, &by, later(), gag, 1, first, &mut no_entropy))
        .unwrap();
    let error = scene
        .refused(move |conn| plans::revise(conn, &actor, later(), gag, 1, second, &mut no_entropy));
    let CommandError::StalePlan(stale) = error else {
        panic!("{error}")
    };
    assert_eq!((stale.expected, stale.current.revision), (1, 2));
    assert_eq!(stale.changed_theirs, [Facet::Camera]);
    assert_eq!(stale.changed_yours, [Facet::Medical]);
    assert_eq!(stale.yours.medical.cover, "Two medics");
    assert_eq!(scene.plan().facets.medical.cover, plan.facets.medical.cover);
}

#[test]
fn bad_contents_are_refused_whole_with_a_pointer_and_a_fix_each() {
    let scene = Scene::with("G02");
    let actor = scene.actor("C01");
    let gag = scene.gag;
    let mut plan = scene.plan();
    plan.facets.rigging.equipment[0].working_load = Some(f64::NAN);
    plan.facets.cast.slots[0].person = Some(PersonId(Uuid::from_u128(4)));
    plan.facets.setting.scene = "x".repeat(300);
    let revision = NewRevision {
        technique: plan.technique,
        facets: plan.facets,
        note: String::new(),
    };
    let error = scene.refused(move |conn| {
        plans::revise(conn, &actor, later(), gag, 1, revision, &mut no_entropy)
    });
    let CommandError::Invalid { problems } = error else {
        panic!("{error}")
    };
    let pointers: Vec<&str> = problems.iter().map(|one| one.pointer.as_str()).collect();
    for wanted in [
        "/facets/rigging/equipment/0/working_load",
        "/facets/cast/slots/0/person",
        "/facets/setting/scene",
    ] {
        assert!(
            pointers.contains(&wanted),
            "{wanted} is not among {pointers:?}"
        );
    }
    assert!(
        problems
            .iter()
            .all(|one| !one.problem.is_empty() && !one.fix.is_empty())
    );
    let same = scene.plan();
    let actor = scene.actor("C01");
    let revision = NewRevision {
        technique: same.technique,
        facets: same.facets,
        note: String::new(),
    };
    let error = scene.refused(move |conn| {
        plans::revise(conn, &actor, later(), gag, 1, revision, &mut no_entropy)
    });
    assert!(
        error.to_string().contains("exactly what revision 1 says"),
        "{error}"
    );
}

#[test]
fn hats_decide_who_may_do_what() {
    let scene = Scene::with("G02");
    let gag = scene.gag;
    for (code, allowed) in [
        ("P03", false),
        ("C05", false),
        ("C11", false),
        ("C10", false),
    ] {
        let actor = scene.actor(code);
        let plan = scene.plan();
        let mut facets = plan.facets;
        facets.camera.notes = "mine".into();
        let revision = NewRevision {
            technique: plan.technique,
            facets,
            note: String::new(),
        };
        let done = scene.store.write(move |conn| {
            plans::revise(conn, &actor, later(), gag, 1, revision, &mut no_entropy)
        });
        assert_eq!(done.is_ok(), allowed, "{code}");
        assert!(matches!(
            done,
            Err(CommandError::Forbidden {
                permission: Permission::EditPlans,
                ..
            })
        ));
    }
    let observer = scene.actor("C11");
    let error = scene
        .store
        .read(|conn| signoffs::draft(conn, &observer, later(), gag, Role::Medic, None, None))
        .unwrap_err();
    assert!(matches!(error, CommandError::Forbidden { .. }), "{error}");
    // Stopping work must be open to everyone, the observer too.
    let new = NewHold {
        id: HoldId(Uuid::from_u128(1)),
        gag: Some(gag),
        reason: String::new(),
        hazard: None,
    };
    let production = scene.stage.production;
    scene
        .run(move |conn| {
            holds::raise(
                conn,
                Some(&observer),
                production,
                later(),
                new,
                &mut no_entropy,
            )
        })
        .unwrap();
}

#[test]
fn one_production_cannot_be_reached_from_another() {
    let scene = Scene::with("G02");
    let gag = scene.gag;
    let other = ProductionId(Uuid::from_u128(77));
    let stranger = PersonId(Uuid::from_u128(78));
    let founder = Founder {
        person: stranger,
        code: "X01".into(),
        name: "Somebody Else".into(),
        occupation: "coordinator".into(),
        account: None,
        email: None,
        roles: BTreeSet::from([Role::Coordinator, Role::Rigging]),
    };
    let new = NewProduction {
        id: other,
        name: "Another".into(),
        time_zone: "UTC".into(),
        demo: false,
        founder,
    };
    let policy = gagwright_clearance::Policy::built_in().clone();
    scene
        .run(move |conn| productions::create(conn, later(), new, policy, &mut no_entropy))
        .unwrap();
    let outsider = Actor {
        account: None,
        production: other,
        person: stranger,
        roles: BTreeSet::from([Role::Coordinator, Role::Rigging, Role::Medic]),
        carried_by: None,
    };
    let not_found = |error: CommandError| {
        assert!(matches!(error, CommandError::NotFound { .. }), "{error}");
    };
    let plan = scene.plan();
    let by = outsider.clone();
    let revision = NewRevision {
        technique: plan.technique,
        facets: plan.facets,
        note: String::new(),
    };
    not_found(
        scene.refused(move |conn| {
            plans::revise(conn, &by, later(), gag, 1, revision, &mut no_entropy)
        }),
    );
    not_found(
        scene
            .store
            .read(|conn| views::gag_page(conn, &outsider, later(), gag))
            .unwrap_err(),
    );
    not_found(
        scene
            .store
            .read(|conn| signoffs::draft(conn, &outsider, later(), gag, Role::Rigging, None, None))
            .unwrap_err(),
    );
    let by = outsider.clone();
    not_found(scene.refused(move |conn| {
        let run = NewRun {
            id: RecordId(Uuid::from_u128(5)),
            rung: "bag".into(),
            good: true,
            note: String::new(),
            revision: 1,
            at: later(),
        };
        day::log_run(conn, &by, later(), gag, run, &mut no_entropy)
    }));
    let by = outsider.clone();
    not_found(scene.refused(move |conn| {
        let hold = NewHold {
            id: HoldId(Uuid::from_u128(6)),
            gag: Some(gag),
            reason: String::new(),
            hazard: None,
        };
        holds::raise(conn, Some(&by), other, later(), hold, &mut no_entropy)
    }));
    let performer = scene.stage.person("P03").unwrap();
    not_found(
        scene
            .store
            .read(|conn| views::person(conn, &outsider, performer))
            .unwrap_err(),
    );
    let (_, scene) = scene.play(move |conn, stage| {
        stage.sign(
            conn,
            gag,
            Role::Rigging,
            stage.person("C02")?,
            Word {
                decision: Decision::ApproveWithConditions,
                conditions: vec!["Load test witnessed".into()],
                reason: None,
            },
        )
    });
    let case = scene
        .store
        .read(|conn| views::case(conn, scene.stage.production, gag))
        .unwrap();
    let made = gagwright_clearance::signoff::read_unverified(&case.signoffs[0].jws).unwrap();
    not_found(scene.refused(move |conn| {
        signoffs::meet_condition(
            conn,
            &outsider,
            later(),
            made.id,
            "Load test witnessed".into(),
        )
    }));
}

#[test]
fn nothing_personal_stands_in_the_clear_in_any_leaf() {
    let scene = Scene::with("G02");
    let gag = scene.gag;
    let production = scene.stage.production;
    let founder = scene.actor("C01");
    let medic = scene.stage.person("C05").unwrap();
    let by = founder.clone();
    scene
        .run(move |conn| {
            let new = members::NewInvitation {
                id: Uuid::from_u128(40),
                person: medic,
                roles: BTreeSet::from([Role::Medic]),
                token_hash: vec![3; 32],
                expires_at: later() + SignedDuration::from_hours(10),
            };
            members::invite(conn, &by, later(), new, &mut no_entropy)?;
            let hold = NewHold {
                id: HoldId(Uuid::from_u128(41)),
                gag: Some(gag),
                reason: "Zoriana hurt her wrist".into(),
                hazard: Some(Hazard::Height),
            };
            holds::raise(conn, Some(&by), production, later(), hold, &mut no_entropy)?;
            let mut person = record::person(conn, production, medic)?;
            person.person.born = Some(jiff::civil::date(1979, 4, 1));
            let expected = Some(person.version);
            people::put(conn, &by, later(), person.person, expected, &mut no_entropy)
        })
        .unwrap();
    let (leaves, people) = scene
        .store
        .read(|conn| {
            Ok::<_, StoreError>((
                gagwright_store::trail::entries(conn, production, 0, 10_000)?,
                gagwright_store::people::list(conn, production)?,
            ))
        })
        .unwrap();
    assert!(
        leaves
            .iter()
            .filter(|leaf| !leaf.entry.commitments.is_empty())
            .count()
            >= 8
    );
    let clear: String = leaves
        .iter()
        .map(|leaf| String::from_utf8_lossy(&leaf.bytes))
        .collect();
    for person in people {
        assert!(
            !clear.contains(&person.person.name),
            "{} is in a leaf",
            person.person.name
        );
        if let Some(email) = person.person.email {
            assert!(!clear.contains(&email), "{email} is in a leaf");
        }
        for certificate in person.person.certificates {
            let number = certificate.number.unwrap_or_default();
            assert!(
                number.is_empty() || !clear.contains(&number),
                "{number} is in a leaf"
            );
        }
    }
    assert!(!clear.contains("wrist"));
    assert!(!clear.contains("1979"));
    // And yet each committed part can be shown to be what was entered.
    for leaf in leaves
        .iter()
        .filter(|leaf| !leaf.entry.commitments.is_empty())
    {
        let shown: std::collections::BTreeMap<String, String> = leaf
            .parts
            .iter()
            .map(|(name, part)| {
                let shown = gagwright_trail::commitment(&part.salt, &part.said);
                (name.clone(), shown.unwrap())
            })
            .collect();
        assert_eq!(shown, leaf.entry.commitments);
    }
}

#[test]
fn a_condition_called_met_is_named_by_its_place_and_not_in_its_words() {
    let scene = Scene::with("G02");
    let gag = scene.gag;
    let production = scene.stage.production;
    let before = scene.size();
    let words = "Zoriana's wrist is taped";
    let (_, scene) = scene.play(move |conn, stage| {
        stage.sign(
            conn,
            gag,
            Role::Rigging,
            stage.person("C02")?,
            Word {
                decision: Decision::ApproveWithConditions,
                conditions: vec!["Load test witnessed".into(), words.into()],
                reason: None,
            },
        )
    });
    let rigger = scene.actor("C02");
    scene
        .run(move |conn| {
            let case = views::case(conn, production, gag)?;
            let made = gagwright_clearance::signoff::read_unverified(&case.signoffs[0].jws)?;
            signoffs::meet_condition(conn, &rigger, later(), made.id, words.into())
        })
        .unwrap();
    let leaves = scene
        .store
        .read(|conn| gagwright_store::trail::entries(conn, production, before, 10))
        .unwrap_or_else(|error: StoreError| panic!("{error}"));
    let met = leaves
        .iter()
        .find(|leaf| leaf.entry.kind == "condition.met")
        .unwrap();
    assert_eq!(met.entry.facts["condition"], 1);
    assert!(!String::from_utf8_lossy(&met.bytes).contains("wrist"));
}

#[test]
fn the_roster_refuses_an_old_version_and_someone_elses_code() {
    let scene = Scene::with("G02");
    let founder = scene.actor("C01");
    let production = scene.stage.production;
    let id = scene.stage.person("P03").unwrap();
    let stored = scene
        .store
        .read(|conn| record::person(conn, production, id))
        .unwrap();
    let version = stored.version;
    let mut person = stored.person;
    person.occupation = "performer, lines".into();
    let (by, changed) = (founder.clone(), person.clone());
    let put = scene
        .run(move |conn| people::put(conn, &by, later(), changed, Some(version), &mut no_entropy))
        .unwrap();
    assert_eq!(
        put,
        people::PersonPut {
            version: version + 1,
            created: false
        }
    );
    let (by, changed) = (founder.clone(), person.clone());
    let error = scene.refused(move |conn| {
        people::put(conn, &by, later(), changed, Some(version), &mut no_entropy)
    });
    assert!(
        matches!(error, CommandError::Conflict { what: "person", .. }),
        "{error}"
    );
    person.code = "P01".into();
    let error = scene.refused(move |conn| {
        people::put(
            conn,
            &founder,
            later(),
            person,
            Some(version + 1),
            &mut no_entropy,
        )
    });
    assert!(
        matches!(error, CommandError::Conflict { what: "code", .. }),
        "{error}"
    );
}

#[test]
fn an_import_is_all_or_nothing_and_a_second_one_changes_nothing() {
    let scene = Scene::with("G02");
    let founder = scene.actor("C01");
    let by = founder.clone();
    let again = scene
        .run(move |conn| {
            let (table, text) = demo::ROSTER[0];
            people::import(conn, &by, later(), table, text.as_bytes(), &mut no_entropy)
        })
        .unwrap();
    assert_eq!((again.created, again.updated, again.unchanged), (0, 0, 26));
    let text = "code,name,occupation,performs\nP90,Good Row,performer,yes\nP91,Bad Row,performer,perhaps\n";
    let error = scene.refused(move |conn| {
        people::import(
            conn,
            &founder,
            later(),
            RosterTable::People,
            text.as_bytes(),
            &mut no_entropy,
        )
    });
    let CommandError::Roster { problems } = error else {
        panic!("{error}")
    };
    assert_eq!(
        (problems[0].row, problems[0].column.as_str()),
        (3, "performs")
    );
    let production = scene.stage.production;
    let kept = scene
        .store
        .read(|conn| gagwright_store::people::by_code(conn, production, "P90"))
        .unwrap_or_else(|error: StoreError| panic!("{error}"));
    assert_eq!(kept, None, "the good row of a bad table must not be kept");
}

#[test]
fn a_hold_is_released_by_the_coordinator_with_the_owner_of_the_hazard() {
    let scene = Scene::with("G02");
    let gag = scene.gag;
    let production = scene.stage.production;
    let id = HoldId(Uuid::from_u128(9));
    scene
        .run(move |conn| {
            let new = NewHold {
                id,
                gag: Some(gag),
                reason: "A stitch is loose".into(),
                hazard: Some(Hazard::Line),
            };
            holds::raise(conn, None, production, later(), new, &mut no_entropy)
        })
        .unwrap();
    let held = |scene: &Scene| {
        let case = scene
            .store
            .read(|conn| views::case(conn, production, gag))
            .unwrap();
        gagwright_clearance::clearance(&case, later()).state == ClearanceState::Held
    };
    assert!(held(&scene));
    let agree = |scene: &Scene, code: &str, role: Role, cause: &'static str| {
        let actor = scene.actor(code);
        scene.run(move |conn| {
            holds::agree(
                conn,
                &actor,
                later(),
                id,
                role,
                cause.into(),
                &mut no_entropy,
            )
        })
    };
    let medic = agree(&scene, "C05", Role::Medic, "looked").unwrap_err();
    assert!(matches!(medic, CommandError::Invalid { .. }), "{medic}");
    let lent = agree(&scene, "C05", Role::Rigging, "looked").unwrap_err();
    assert!(matches!(lent, CommandError::Forbidden { .. }), "{lent}");
    let silent = agree(&scene, "C02", Role::Rigging, "  ").unwrap_err();
    assert!(silent.to_string().contains("/cause"), "{silent}");
    let one = agree(&scene, "C02", Role::Rigging, "Stitch sewn, harness loaded").unwrap();
    assert_eq!(one.released_at, None);
    assert!(held(&scene), "one agreement is not enough");
    let twice = agree(&scene, "C02", Role::Rigging, "Again").unwrap_err();
    assert!(matches!(twice, CommandError::Conflict { .. }), "{twice}");
    let both = agree(&scene, "C01", Role::Coordinator, "Seen the loaded harness").unwrap();
    assert_eq!(both.released_at, Some(later()));
    assert!(!held(&scene));
}

#[test]
fn readings_and_runs_that_cannot_be_are_refused() {
    let scene = Scene::with("G02");
    let gag = scene.gag;
    for (value, at, pointer) in [
        (f64::NAN, later(), "/value"),
        (f64::INFINITY, later(), "/value"),
        (500.0, later(), "/value"),
        (3.0, later() + SignedDuration::from_hours(2), "/at"),
    ] {
        let actor = scene.actor("C02");
        let error = scene.refused(move |conn| {
            let new = NewReading {
                id: RecordId(Uuid::from_u128(3)),
                kind: ReadingKind::Wind,
                value,
                at,
                place: String::new(),
            };
            day::log_reading(conn, &actor, later(), gag, new, &mut no_entropy)
        });
        let CommandError::Invalid { problems } = error else {
            panic!("{error}")
        };
        assert_eq!(problems[0].pointer, pointer);
    }
    let actor = scene.actor("C02");
    let error = scene.refused(move |conn| {
        let new = NewRun {
            id: RecordId(Uuid::from_u128(4)),
            rung: "moon".into(),
            good: true,
            note: String::new(),
            revision: 1,
            at: later(),
        };
        day::log_run(conn, &actor, later(), gag, new, &mut no_entropy)
    });
    assert!(
        error
            .to_string()
            .contains("bag, third, half, three_quarters"),
        "{error}"
    );
}

#[test]
fn every_accepted_command_is_one_leaf_and_a_sign_off_counts_once() {
    let scene = Scene::with("G01");
    let gag = scene.gag;
    let before = scene.size();
    let (receipt, scene) = scene.play(move |conn, stage| {
        let medic = stage.person("C05")?;
        stage.register_device(conn, medic, "Phone")?;
        stage.sign(conn, gag, Role::Medic, medic, Word::yes())
    });
    assert_eq!(
        scene.size(),
        before + 2,
        "one leaf for the device, one for the sign-off"
    );
    assert_eq!(receipt.leaf, before + 1);
    assert_eq!(receipt.standing.state, RoleState::Standing);
    assert_eq!(receipt.clearance, ClearanceState::Waiting);

    let case = scene
        .store
        .read(|conn| views::case(conn, scene.stage.production, gag))
        .unwrap();
    let jws = case.signoffs[0].jws.clone();
    // Somebody else may carry a sign-off here, but it counts once however often it comes.
    let carrier = scene.actor("C06");
    let again = jws;
    let size = scene.size();
    let (repeat, scene) = scene.play(move |conn, _| {
        signoffs::submit(
            conn,
            &carrier,
            later(),
            gag,
            &again,
            Vec::new(),
            &mut no_entropy,
        )
    });
    let signoffs::Taken::Before(repeat) = repeat else {
        panic!("recorded twice: {repeat:?}");
    };
    assert_eq!((repeat.id, repeat.leaf), (receipt.id, receipt.leaf));
    assert_eq!(repeat.standing.state, RoleState::Standing);
    assert_eq!(scene.size(), size);
    let carrier = scene.actor("C06");
    let mut other = gagwright_clearance::signoff::read_unverified(&case.signoffs[0].jws).unwrap();
    other.id = gagwright_clearance::SignOffId(Uuid::from_u128(12));
    let forged = gagwright_clearance::signoff::sign(
        &other,
        &p256::ecdsa::SigningKey::from_slice(&[5; 32]).unwrap(),
    )
    .unwrap();
    let error = scene.refused(move |conn| {
        signoffs::submit(
            conn,
            &carrier,
            later(),
            gag,
            &forged,
            Vec::new(),
            &mut no_entropy,
        )
    });
    assert!(
        matches!(error, CommandError::SignOff(SignOffError::BadSignature)),
        "{error}"
    );
}

#[test]
fn the_last_who_may_give_roles_with_an_account_keeps_them() {
    let folder = tempfile::tempdir().unwrap();
    let store = Store::open(&format!(
        "sqlite:{}",
        folder.path().join("one.db").display()
    ))
    .unwrap();
    store.migrate().unwrap();
    let production = ProductionId(Uuid::from_u128(1));
    let person = PersonId(Uuid::from_u128(2));
    let account = Uuid::from_u128(3);
    let error = store
        .write(move |conn| {
            gagwright_store::accounts::insert(
                conn,
                &gagwright_store::accounts::Account {
                    id: account,
                    email: "only@one.example".into(),
                    name: "Only One".into(),
                    password_hash: "none".into(),
                    created_at: later(),
                },
            )?;
            let new = NewProduction {
                id: production,
                name: "One".into(),
                time_zone: "UTC".into(),
                demo: false,
                founder: Founder {
                    person,
                    code: "P01".into(),
                    name: "Only One".into(),
                    occupation: "coordinator".into(),
                    account: Some(account),
                    email: Some("only@one.example".into()),
                    roles: BTreeSet::from([Role::Coordinator]),
                },
            };
            let policy = gagwright_clearance::Policy::built_in().clone();
            productions::create(conn, later(), new, policy, &mut no_entropy)?;
            let actor = Actor {
                account: Some(account),
                production,
                person,
                roles: BTreeSet::from([Role::Coordinator]),
                carried_by: None,
            };
            members::set_roles(conn, &actor, later(), person, BTreeSet::new())
        })
        .unwrap_err();
    assert!(
        matches!(error, CommandError::Conflict { what: "roles", .. }),
        "{error}"
    );
}
