//! What must hold for every case: nothing is cleared with anything missing, a change lapses exactly
//! those who answer for it, the order of arrival changes nothing, and no value makes the judge fall over.

use std::{collections::BTreeSet, sync::LazyLock};

use gagwright_mechanics::{Facet, InputValue};
use jiff::Timestamp;
use proptest::prelude::*;
use serde_json::{Value, json};

use super::*;
use crate::{
    Case,
    case::{Agreement, ReadingKind, RoleState},
    facets::{Band, CameraPosition, Rung},
    plan::{Facets, Hazard},
    policy::Role,
    scene::{Scene, find, person_of},
};

/// A gag with every hazard and a marginal check, so that all fifteen roles are asked.
fn everyone() -> Scene {
    let mut scene = Scene::new();
    scene.height(11.0);
    scene.revise(|facets| facets.action.hazards = Hazard::ALL.into());
    scene
        .rehearsed("bag")
        .rehearsed("bag")
        .rehearsed("half")
        .everyone_signs();
    scene
}

/// A small change in one facet that no other rule reads.
fn touch(facets: &mut Facets, facet: Facet) {
    let more = || "more".to_owned();
    match facet {
        Facet::Setting => facets.setting.light = more(),
        Facet::Action => facets.action.steps.push(more()),
        Facet::Rigging => {
            let load = InputValue::Number {
                value: 2000.0,
                tolerance: None,
            };
            facets
                .rigging
                .parameters
                .insert("anchor_load".to_owned(), load);
        }
        Facet::Effects => facets.effects.suppression = more(),
        Facet::Vehicles => facets.vehicles.method = more(),
        Facet::Cast => facets.cast.slots[0].kit_mass += 2.0,
        Facet::Medical => facets.medical.ambulance = more(),
        Facet::Camera => {
            facets.camera.positions.push(CameraPosition {
                name: "B".to_owned(),
                place: more(),
                lens: String::new(),
            });
        }
        Facet::Conditions => facets.conditions.stop_on.push(more()),
        Facet::Rehearsals => {
            facets.rehearsals.rungs[1].what = more();
        }
    }
}

#[test]
fn a_change_in_a_facet_lapses_exactly_the_roles_that_cover_it() {
    let scene = everyone();
    assert_eq!(scene.judged().blocks, vec![]);
    assert_eq!(scene.judged().roles.len(), 15);
    for facet in Facet::ALL {
        let mut changed = scene.clone();
        changed.revise(|facets| touch(facets, facet));
        for standing in changed.judged().roles {
            let covers = changed
                .case
                .policy
                .role(standing.role)
                .unwrap()
                .covers
                .contains(&facet);
            let expected = if covers {
                RoleState::Lapsed
            } else {
                RoleState::Standing
            };
            let about = format!("{} on {}", standing.role.name(), facet.name());
            assert_eq!(standing.state, expected, "{about}");
            assert_eq!(
                standing.changed,
                if covers { vec![facet] } else { vec![] },
                "{about}"
            );
        }
        assert_ne!(
            changed.judged().state,
            ClearanceState::Cleared,
            "{}",
            facet.name()
        );
        // Signing again, by exactly those, clears it; runs are made again where they were rehearsed.
        changed
            .rehearsed("bag")
            .rehearsed("bag")
            .rehearsed("half")
            .everyone_signs();
        assert_eq!(changed.judged().blocks, vec![], "{}", facet.name());
    }
}

#[test]
fn with_any_one_mark_missing_nothing_is_cleared() {
    let scene = everyone();
    for left_out in 0..scene.case.signoffs.len() {
        let mut case = scene.case.clone();
        case.signoffs.remove(left_out);
        let clearance = clearance_with(&case, scene.now, find);
        assert_eq!(clearance.state, ClearanceState::Waiting);
        assert_eq!(clearance.blocks.len(), 1, "{:#?}", clearance.blocks);
        assert_eq!(clearance.blocks[0].kind, BlockKind::Unsigned);
    }
    for left_out in 0..scene.case.devices.len() {
        let mut case = scene.case.clone();
        case.devices.remove(left_out);
        let clearance = clearance_with(&case, scene.now, find);
        assert_eq!(clearance.state, ClearanceState::Waiting);
        let reason = &clearance.blocks[0].reason;
        assert!(
            reason.contains("does not verify; it counts for nothing"),
            "{reason}"
        );
    }
}

/// Something that happens to a gag.
#[derive(Clone, Debug)]
enum Event {
    Change(Facet),
    Height(f64),
    Sign(Role),
    Decline(Role),
    Condition(Role),
    Hold(Option<Hazard>),
    Agree(Role, Role),
    Reading(f64),
    Run(&'static str, bool),
    LoseRole(Role),
    Revoke(Role),
}

fn role() -> impl Strategy<Value = Role> {
    prop::sample::select(vec![
        Role::Coordinator,
        Role::Performer,
        Role::Rigging,
        Role::Medic,
        Role::FirstAd,
        Role::Production,
        Role::Engineer,
    ])
}

fn event() -> impl Strategy<Value = Event> {
    prop_oneof![
        2 => prop::sample::select(Facet::ALL.to_vec()).prop_map(Event::Change),
        1 => prop::sample::select(vec![8.0, 11.0, 13.0]).prop_map(Event::Height),
        6 => role().prop_map(Event::Sign),
        1 => role().prop_map(Event::Decline),
        1 => role().prop_map(Event::Condition),
        1 => prop::option::of(prop::sample::select(Hazard::ALL.to_vec())).prop_map(Event::Hold),
        2 => (role(), role()).prop_map(|(role, person)| Event::Agree(role, person)),
        1 => (0.0..12.0).prop_map(Event::Reading),
        3 => (prop::sample::select(vec!["bag", "half"]), any::<bool>())
            .prop_map(|(rung, good)| Event::Run(rung, good)),
        1 => role().prop_map(Event::LoseRole),
        1 => role().prop_map(Event::Revoke),
    ]
}

fn happen(scene: &mut Scene, event: Event) {
    let agree = |scene: &mut Scene, role, person| {
        let at = scene.now;
        if let Some(hold) = scene.case.holds.last_mut() {
            let cause = "seen to".to_owned();
            hold.agreements.push(Agreement {
                role,
                person: person_of(person),
                at,
                cause,
            });
        }
    };
    match event {
        Event::Change(facet) => drop(scene.revise(|facets| touch(facets, facet))),
        Event::Height(metres) => drop(scene.height(metres)),
        Event::Sign(role) => {
            let statement = scene.statement(role);
            drop(scene.hand_in(&statement)); // the door may refuse; then nothing happened
        }
        Event::Decline(role) => {
            let mut statement = scene.statement(role);
            statement.decision = crate::Decision::Decline;
            statement.reason = Some("no".to_owned());
            drop(scene.hand_in(&statement));
        }
        Event::Condition(role) => {
            let mut statement = scene.statement(role);
            statement.decision = crate::Decision::ApproveWithConditions;
            statement.conditions = vec!["a spotter".to_owned()];
            drop(scene.hand_in(&statement));
        }
        Event::Hold(hazard) => drop(scene.hold(hazard)),
        Event::Agree(role, person) => agree(scene, role, person),
        Event::Reading(value) => drop(scene.reading(ReadingKind::Wind, value)),
        Event::Run(rung, good) => drop(scene.run(rung, good)),
        Event::LoseRole(role) => scene.member(role).roles.clear(),
        Event::Revoke(role) => {
            let (now, person) = (scene.now, person_of(role));
            for device in scene
                .case
                .devices
                .iter_mut()
                .filter(|one| one.person == person)
            {
                device.revoked_at = Some(now);
            }
        }
    }
}

fn story(events: Vec<Event>) -> Scene {
    let mut scene = START.clone();
    for event in events {
        happen(&mut scene, event);
    }
    scene
}

/// A cleared gag with a wind band, where every story starts; made once, because signing takes time.
static START: LazyLock<Scene> = LazyLock::new(|| {
    let mut scene = Scene::new();
    scene.revise(|facets| {
        facets.conditions.bands = vec![Band {
            reading: ReadingKind::Wind,
            min: None,
            max: Some(6.0),
            max_age_minutes: 600,
        }];
        facets.rehearsals.rungs.push(Rung {
            name: "full".to_owned(),
            what: "full height".to_owned(),
            good_runs: 0,
        });
    });
    scene.everyone_signs();
    assert_eq!(scene.judged().state, ClearanceState::Cleared);
    scene
});

/// What cleared must mean, worked out from the answer and the case without the judge's own rules.
fn nothing_is_missing(scene: &Scene, clearance: &Clearance) {
    let always = [
        Role::Coordinator,
        Role::Performer,
        Role::Rigging,
        Role::Medic,
        Role::FirstAd,
        Role::Production,
    ];
    let standing: BTreeSet<Role> = clearance
        .roles
        .iter()
        .filter(|one| one.state == RoleState::Standing)
        .map(|one| one.role)
        .collect();
    for role in always {
        assert!(standing.contains(&role), "cleared without {}", role.name());
        let holds_it = scene
            .case
            .members
            .iter()
            .any(|member| member.person == person_of(role) && member.roles.contains(&role));
        assert!(
            holds_it || role == Role::Performer,
            "cleared by a former {}",
            role.name()
        );
    }
    for hold in &scene.case.holds {
        assert!(
            hold.agreements
                .iter()
                .any(|one| one.role == Role::Coordinator)
        );
    }
    let height = match scene.case.plan.facets.action.parameters.get("height") {
        Some(InputValue::Number { value, .. }) => *value,
        _ => panic!("cleared with no height"),
    };
    assert!(height <= 12.0, "cleared at {height} m");
    assert!(height <= 10.0 || standing.contains(&Role::Engineer));
    let latest = scene.case.readings.iter().max_by_key(|reading| reading.at);
    assert!(
        latest.is_none_or(|reading| reading.value <= 6.0),
        "cleared in wind"
    );
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn whatever_happens_cleared_means_that_nothing_is_missing(
        events in prop::collection::vec(event(), 0..14),
    ) {
        let scene = story(events);
        let clearance = scene.judged();
        prop_assert_eq!(clearance.state == ClearanceState::Cleared, clearance.blocks.is_empty());
        for block in &clearance.blocks {
            prop_assert!(!block.reason.is_empty() && !block.remedy.is_empty());
        }
        if clearance.state == ClearanceState::Cleared {
            nothing_is_missing(&scene, &clearance);
        }
        // A case travels to a phone as JSON and is judged there the same.
        let text = serde_json::to_string(&scene.case).unwrap();
        let case: Case = serde_json::from_str(&text).unwrap();
        prop_assert_eq!(clearance_with(&case, scene.now, find), clearance);
    }

    #[test]
    fn the_order_of_arrival_changes_nothing(
        events in prop::collection::vec(event(), 0..14), seed in any::<u64>(),
    ) {
        let scene = story(events);
        let mut shuffled = scene.case.clone();
        let mut state = seed | 1;
        let mut next = |below: usize| {
            state = state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
            (state >> 33) as usize % below
        };
        macro_rules! shuffle {
            ($($list:expr),*) => {$(
                for at in (1..$list.len()).rev() {
                    let other = next(at + 1);
                    $list.swap(at, other);
                }
            )*};
        }
        shuffle!(
            shuffled.signoffs, shuffled.holds, shuffled.readings, shuffled.runs,
            shuffled.members, shuffled.devices, shuffled.people
        );
        for hold in &mut shuffled.holds {
            shuffle!(hold.agreements);
        }
        prop_assert_eq!(clearance_with(&shuffled, scene.now, find), scene.judged());
    }

    #[test]
    fn no_value_in_a_case_makes_the_judge_fall_over(
        places in prop::collection::vec((any::<prop::sample::Index>(), 0usize..16), 1..4),
    ) {
        let mut scene = Scene::cleared();
        scene.hold(Some(Hazard::Height)).reading(ReadingKind::Wind, 3.0);
        let mut value = serde_json::to_value(&scene.case).unwrap();
        for (place, with) in places {
            let mut leaves = Vec::new();
            pointers(&value, String::new(), &mut leaves);
            let pointer = &leaves[place.index(leaves.len())];
            *value.pointer_mut(pointer).unwrap() = odd_value(with);
        }
        if let Ok(case) = serde_json::from_value::<Case>(value) {
            for now in [scene.now, Timestamp::MIN, Timestamp::MAX] {
                let clearance = clearance_with(&case, now, find);
                prop_assert_eq!(clearance.state == ClearanceState::Cleared, clearance.blocks.is_empty());
                let _ = crate::judge::clearance(&case, now);
                let first = case.signoffs.first().map(|signoff| signoff.jws.clone());
                let _ = crate::signoff::accept(&first.unwrap_or_default(), &[], &case, now);
                let _ = crate::validate::validate_with(&case.plan.facets, &crate::scene::TestFall);
            }
        }
    }
}

fn pointers(value: &Value, at: String, found: &mut Vec<String>) {
    match value {
        Value::Object(fields) => {
            for (name, field) in fields {
                let name = name.replace('~', "~0").replace('/', "~1");
                pointers(field, format!("{at}/{name}"), found);
            }
        }
        Value::Array(items) => {
            for (place, item) in items.iter().enumerate() {
                pointers(item, format!("{at}/{place}"), found);
            }
        }
        _ => found.push(at),
    }
}

fn odd_value(which: usize) -> Value {
    let values = [
        json!(null),
        json!(""),
        json!("\u{0}\u{202e}x"),
        json!("x".repeat(20_000)),
        json!(0),
        json!(-1),
        json!(u32::MAX),
        json!(u64::MAX),
        json!(1e308),
        json!(-1e308),
        json!(5e-324),
        json!("9999-12-31"),
        json!("-009999-01-01"),
        json!("9999-12-30T22:00:00.999999999Z"),
        json!("-009999-01-02T01:59:59Z"),
        json!("00000000-0000-0000-0000-000000000000"),
    ];
    values[which % values.len()].clone()
}
