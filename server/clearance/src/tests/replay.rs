//! Replaying: in order, from the leaves alone, and honest about what was erased.

use gagwright_trail::commitment;
use serde_json::{Map, json};

use super::*;
use crate::{
    Facets,
    case::ClearanceState,
    judge::clearance_with,
    scene::{Scene, find, person_of},
};

/// A trail being written by hand.
struct Trail {
    scene: Scene,
    leaves: Vec<(Entry, BTreeMap<String, Value>)>,
}

impl Trail {
    fn leaf(&mut self, kind: &str, about_gag: bool, facts: Value, said: &[(&str, Value)]) {
        let index = self.leaves.len() as u64;
        let said: BTreeMap<String, Value> = said
            .iter()
            .map(|(name, said)| ((*name).to_owned(), said.clone()))
            .collect();
        let at = self.scene.now;
        let entry = Entry {
            index,
            at: at.to_string(),
            kind: kind.to_owned(),
            production: self.scene.case.production.to_string(),
            gag: about_gag.then(|| self.scene.case.plan.gag.to_string()),
            actor: Some(person_of(Role::Coordinator).to_string()),
            facts: facts.as_object().cloned().unwrap_or_else(Map::new),
            commitments: said
                .iter()
                .map(|(name, said)| (name.clone(), commitment(&[1; 32], said).unwrap()))
                .collect(),
        };
        self.leaves.push((entry, said));
    }

    /// The scene's production, its people and their hats, and the gag at its first revision.
    fn of_scene() -> Trail {
        let scene = Scene::cleared();
        let case = scene.case.clone();
        let founder = case.members[0].person;
        let mut trail = Trail {
            scene,
            leaves: Vec::new(),
        };
        let mut person = case.people[0].clone();
        person.id = founder;
        let facts = json!({"founder": founder, "roles": case.members[0].roles});
        let name = person_part(founder);
        let parts = [
            ("policy", json!(case.policy)),
            (name.as_str(), json!(person)),
        ];
        trail.leaf("production.created", false, facts, &parts);
        for one in &case.people {
            let facts = json!({"person": one.id});
            trail.leaf(
                "person.put",
                false,
                facts,
                &[(&person_part(one.id), json!(one))],
            );
        }
        let facts = json!({
            "code": "G07", "revision": 1, "technique": case.plan.technique, "policy": case.policy.version,
        });
        let plan = json!({"title": "The fall", "facets": case.plan.facets});
        let parts = [("plan", plan), ("said", json!({"note": ""}))];
        trail.leaf("gag.created", true, facts, &parts);
        trail
    }

    fn replayed(&self) -> Result<Replay, ReplayError> {
        let mut replay = Replay::new();
        for (entry, said) in &self.leaves {
            replay.add(entry, said)?;
        }
        Ok(replay)
    }

    fn rebuilt(&self) -> Rebuilt {
        let replay = self.replayed().unwrap();
        replay.case(self.scene.case.plan.gag).unwrap()
    }
}

#[test]
fn a_case_is_rebuilt_from_the_leaves_and_judged() {
    let trail = Trail::of_scene();
    let rebuilt = trail.rebuilt();
    assert_eq!((rebuilt.certain, rebuilt.unknown), (true, vec![]));
    let case = rebuilt.case.unwrap();
    assert_eq!(case.people, trail.scene.case.people);
    assert_eq!(case.plan.facets, trail.scene.case.plan.facets);
    let judged = clearance_with(&case, trail.scene.now, find);
    assert_eq!(judged.state, ClearanceState::NotAsked);
    let replay = trail.replayed().unwrap();
    assert_eq!(replay.by_code("G07"), Some(case.plan.gag));
    assert_eq!(
        (replay.by_code("G08"), replay.at()),
        (None, Some(trail.scene.now))
    );
}

#[test]
fn what_was_erased_is_said_and_not_guessed() {
    let mut trail = Trail::of_scene();
    trail.leaf(
        "hold.raised",
        true,
        json!({"hold": uuid::Uuid::from_u128(5)}),
        &[("said", json!({"reason": "ice"}))],
    );
    let rebuilt = trail.rebuilt();
    assert_eq!(rebuilt.case.unwrap().holds[0].reason, "ice");
    // The words of a hold change nothing about what it does.
    trail.leaves.last_mut().unwrap().1.clear();
    let rebuilt = trail.rebuilt();
    assert!(rebuilt.certain, "{:?}", rebuilt.unknown);
    assert!(
        rebuilt.unknown[0].contains("why the hold was raised"),
        "{:?}",
        rebuilt.unknown
    );
    assert_eq!(rebuilt.case.unwrap().holds[0].reason, "");
    // Somebody who is cast: the verdict on them was of that day.
    let cast = trail.scene.case.people[0].id;
    for (_, said) in &mut trail.leaves {
        said.remove(&person_part(cast));
    }
    let rebuilt = trail.rebuilt();
    assert!(!rebuilt.certain);
    assert!(
        rebuilt
            .unknown
            .iter()
            .any(|one| one.contains(&cast.to_string()) && one.contains("were cast for")),
        "{:?}",
        rebuilt.unknown
    );
    // The plan itself: there is no case at all.
    for (_, said) in &mut trail.leaves {
        said.remove("plan");
    }
    let rebuilt = trail.rebuilt();
    assert_eq!((rebuilt.case, rebuilt.certain), (None, false));
    assert!(
        rebuilt
            .unknown
            .iter()
            .any(|one| one.contains("only its hashes are known"))
    );
}

#[test]
fn a_leaf_of_an_unknown_kind_makes_the_answer_uncertain() {
    let mut trail = Trail::of_scene();
    trail.leaf("moon.turned", false, json!({}), &[]);
    let rebuilt = trail.rebuilt();
    assert!(
        !rebuilt.certain && rebuilt.unknown[0].contains("moon.turned"),
        "{:?}",
        rebuilt.unknown
    );
    assert_eq!(
        trail.replayed().unwrap().strange().collect::<Vec<_>>(),
        ["moon.turned"]
    );
}

#[test]
fn leaves_out_of_order_or_that_lack_what_their_kind_has_are_refused() {
    let refused = |change: &dyn Fn(&mut Trail)| {
        let mut trail = Trail::of_scene();
        change(&mut trail);
        trail.replayed().unwrap_err().to_string()
    };
    let said = refused(&|trail| trail.leaves.swap(0, 1));
    assert!(said.contains("leaf 0 was expected here"), "{said}");
    let said = refused(&|trail| drop(trail.leaves[0].0.facts.remove("founder")));
    assert!(
        said.starts_with("leaf 0, production.created: the fact founder"),
        "{said}"
    );
    let said = refused(&|trail| trail.leaves[0].0.production.replace_range(0..1, "f"));
    assert!(said.contains("another production"), "{said}");
    let said = refused(&|trail| {
        let last = trail.leaves.last_mut().unwrap();
        last.1
            .insert("plan".to_owned(), json!({"title": "x", "facets": 7}));
    });
    assert!(said.contains("/facets"), "{said}");
    let said = refused(&|trail| {
        let facts = json!({"code": "G07", "revision": 3, "technique": "x", "policy": "1"});
        let parts = [
            ("plan", json!({"facets": Facets::default()})),
            ("said", json!({"note": ""})),
        ];
        trail.leaf("plan.revised", true, facts, &parts);
    });
    assert!(said.contains("revision 3"), "{said}");
    let said = refused(&|trail| {
        trail.leaf(
            "device.revoked",
            false,
            json!({"device": uuid::Uuid::nil()}),
            &[],
        )
    });
    assert!(said.contains("no leaf registered the device"), "{said}");
}
