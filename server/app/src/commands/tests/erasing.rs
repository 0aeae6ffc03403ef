//! Erasing somebody: nothing of theirs is left to read, and nothing that was proven stops being so.

use gagwright_clearance::replay::Replay;
use gagwright_trail::export::{read_leaves, verify_export_against};

use super::*;
use crate::trail_file::{self, Parts};

const WORDS: &str = "Zoriana's wrist is taped";

/// The demo's roster with one gag, on which the rigger has approved on a condition and raised a hold.
fn signed() -> (Scene, PersonId) {
    let scene = Scene::with("G02");
    let gag = scene.gag;
    let production = scene.stage.production;
    let (rigger, scene) = scene.play(move |conn, stage| {
        let rigger = stage.person("C02")?;
        let word = Word {
            decision: Decision::ApproveWithConditions,
            conditions: vec![WORDS.into()],
            reason: None,
        };
        stage.sign(conn, gag, Role::Rigging, rigger, word)?;
        let actor = stage.actor(conn, rigger)?;
        let hold = NewHold {
            id: HoldId(Uuid::from_u128(77)),
            gag: Some(gag),
            reason: WORDS.into(),
            hazard: None,
        };
        holds::raise(
            conn,
            Some(&actor),
            production,
            later(),
            hold,
            &mut no_entropy,
        )?;
        Ok(rigger)
    });
    (scene, rigger)
}

fn export(scene: &Scene) -> (String, gagwright_trail::VerifyingKey) {
    let production = scene.stage.production;
    scene
        .store
        .read(|conn| {
            Ok::<_, CommandError>((
                trail_file::export(conn, production, Parts::Taken)?,
                trail_file::verifying_key(conn, production)?,
            ))
        })
        .unwrap()
}

/// Somebody with the role production; the demo has one.
fn producer(scene: &Scene) -> Actor {
    let members = scene
        .store
        .read(|conn| gagwright_store::members::list(conn, scene.stage.production))
        .unwrap();
    let member = members
        .into_iter()
        .find(|one| one.roles.contains(&Role::Production))
        .unwrap();
    scene
        .store
        .read(|conn| scene.stage.actor(conn, member.person))
        .unwrap()
}

#[test]
fn nothing_of_an_erased_person_is_left_and_every_proof_stays_valid() {
    let (scene, rigger) = signed();
    let production = scene.stage.production;
    let gag = scene.gag;
    let size = scene.size();
    let name = scene
        .store
        .read(|conn| record::person(conn, production, rigger))
        .unwrap()
        .person
        .name;
    let (before, key) = export(&scene);
    assert!(before.contains(WORDS) && before.contains(&name));
    let root = |text: &str| {
        let lines: Vec<&str> = text.lines().collect();
        lines[..=usize::try_from(size).unwrap()]
            .iter()
            .skip(1)
            .map(|line| {
                serde_json::from_str::<serde_json::Value>(line).unwrap()["entry"].to_string()
            })
            .collect::<Vec<_>>()
    };
    let actor = producer(&scene);
    let erased = scene
        .run(move |conn| erasure::erase(conn, &actor, later(), rigger))
        .unwrap();
    assert_eq!((erased.leaf, erased.openings), (size, 1));
    assert!(erased.parts >= 4, "{erased:?}");

    let (after, _) = export(&scene);
    assert!(!after.contains(WORDS), "their words are still in the file");
    assert!(!after.contains(&name), "their name is still in the file");
    // Not one leaf is another than it was.
    assert_eq!(root(&before), root(&after));
    let verified = verify_export_against(&after, &key).unwrap();
    assert_eq!(verified.size, size + 1);
    assert!(verified.personal_erased >= u64::from(erased.parts));
    // The sign-off verifies and still holds the gag back, without its words.
    let case = scene
        .store
        .read(|conn| views::case(conn, production, gag))
        .unwrap();
    let told = serde_json::to_string(&case).unwrap();
    assert!(!told.contains(WORDS) && !told.contains(&name), "{told}");
    let judged = gagwright_clearance::clearance(&case, later());
    let rigging = judged
        .roles
        .iter()
        .find(|one| one.role == Role::Rigging)
        .unwrap();
    assert!(
        rigging.open_conditions[0].contains("its commitment stands"),
        "{rigging:?}"
    );
    // Before the erasure the trail says what it cannot tell any more; after it, nothing is missing.
    let mut replay = Replay::new();
    for leaf in read_leaves(&after).unwrap() {
        if leaf.entry.index == size {
            let then = replay.case(gag).unwrap();
            assert!(
                then.unknown
                    .iter()
                    .any(|one| one.contains("cannot be read any more")),
                "{:?}",
                then.unknown
            );
        }
        replay.add(&leaf.entry, &leaf.said()).unwrap();
    }
    assert_eq!(replay.case(gag).unwrap().case, Some(case));
}

#[test]
fn only_somebody_else_with_the_role_production_erases_and_only_once() {
    let (scene, rigger) = signed();
    let coordinator = scene.actor("C01");
    let error = scene.refused(move |conn| erasure::erase(conn, &coordinator, later(), rigger));
    assert!(matches!(error, CommandError::Forbidden { .. }), "{error}");
    let own = producer(&scene);
    let error = scene.refused(move |conn| {
        let own_person = own.person;
        erasure::erase(conn, &own, later(), own_person)
    });
    assert!(
        error.to_string().contains("nobody erases themselves"),
        "{error}"
    );
    let actor = producer(&scene);
    let again = actor.clone();
    scene
        .run(move |conn| erasure::erase(conn, &actor, later(), rigger))
        .unwrap();
    let error = scene.refused(move |conn| erasure::erase(conn, &again, later(), rigger));
    assert!(error.to_string().contains("erased before"), "{error}");
}
