//! The judge, told as scenes: one thing is changed in a cleared gag, and what is said is checked.

use gagwright_mechanics::{Facet, InputValue};

use super::*;
use crate::{
    case::RoleState,
    policy::Role,
    scene::{Scene, slot},
};

pub(super) fn kinds(clearance: &Clearance) -> Vec<BlockKind> {
    clearance.blocks.iter().map(|block| block.kind).collect()
}

/// Judges a cleared gag after one change.
pub(super) fn after(change: impl FnOnce(&mut Scene)) -> Clearance {
    let mut scene = Scene::cleared();
    change(&mut scene);
    scene.judged()
}

/// Asserts that a change gives exactly one block, and what it says.
#[track_caller]
pub(super) fn one_block(clearance: &Clearance, kind: BlockKind, reason: &str, remedy: &str) {
    assert_eq!(kinds(clearance), [kind], "{:#?}", clearance.blocks);
    let block = &clearance.blocks[0];
    assert!(block.reason.contains(reason), "{}", block.reason);
    assert!(block.remedy.contains(remedy), "{}", block.remedy);
    assert_ne!(clearance.state, ClearanceState::Cleared);
}

#[test]
fn a_gag_that_everyone_signed_is_cleared() {
    let clearance = Scene::cleared().judged();
    assert_eq!(clearance.blocks, vec![]);
    assert_eq!(clearance.state, ClearanceState::Cleared);
    let asked: Vec<(Role, &str)> = clearance
        .roles
        .iter()
        .map(|one| (one.role, one.because.as_str()))
        .collect();
    assert_eq!(
        asked,
        [
            (Role::Coordinator, "every gag"),
            (Role::Performer, "cast as Double for Ines"),
            (Role::Rigging, "height"),
            (Role::Medic, "every gag"),
            (Role::FirstAd, "every gag"),
            (Role::Production, "every gag"),
        ]
    );
}

#[test]
fn nobody_asked_yet_is_told_from_someone_missing() {
    let mut scene = Scene::new();
    assert_eq!(scene.judged().state, ClearanceState::NotAsked);
    scene.signs(Role::Medic);
    let clearance = scene.judged();
    assert_eq!(clearance.state, ClearanceState::Waiting);
    assert_eq!(kinds(&clearance), [BlockKind::Unsigned; 5]);
    let performer = clearance
        .blocks
        .iter()
        .find(|block| block.about == slot().to_string());
    assert_eq!(
        performer.unwrap().reason,
        "Thandeka Ngubo has not consented."
    );
    assert_eq!(
        performer.unwrap().remedy,
        "Ask Thandeka Ngubo to read and sign revision 1."
    );
}

#[test]
fn a_role_nobody_holds_says_so() {
    let clearance = after(|scene| {
        scene.case.signoffs.pop();
        scene.member(Role::Production).roles.clear();
    });
    one_block(
        &clearance,
        BlockKind::Unsigned,
        "Nobody has signed as Production manager.",
        "Give someone the role Production manager",
    );
}

#[test]
fn a_camera_change_does_not_make_the_medic_sign_again_and_a_mass_change_makes_rigging() {
    let mut scene = Scene::cleared();
    scene.revise(|facets| facets.camera.notes = "wider".to_owned());
    let states = scene.states();
    assert_eq!(states[&Role::Medic], RoleState::Standing);
    assert_eq!(states[&Role::Rigging], RoleState::Standing);
    assert_eq!(states[&Role::FirstAd], RoleState::Lapsed);
    assert_eq!(states[&Role::Coordinator], RoleState::Lapsed);

    let mut scene = Scene::cleared();
    scene.revise(|facets| facets.cast.slots[0].kit_mass = 6.0);
    let standing = scene.standing(Role::Rigging);
    assert_eq!(standing.state, RoleState::Lapsed);
    assert_eq!(standing.changed, [Facet::Cast]);
    assert_eq!(
        standing.reasons,
        [
            "Cast has changed since Žofie Marková signed revision 1.",
            "The kit of Double for Ines rose 3 kg, from 3 kg to 6 kg; Key rigger answers for it."
        ]
    );
    assert_eq!(scene.states()[&Role::Medic], RoleState::Lapsed);
    assert_eq!(scene.judged().state, ClearanceState::Lapsed);
}

#[test]
fn a_change_taken_back_stands_again_without_a_signature() {
    let mut scene = Scene::cleared();
    scene.revise(|facets| facets.camera.notes = "wider".to_owned());
    assert_ne!(scene.judged().state, ClearanceState::Cleared);
    scene.revise(|facets| facets.camera.notes = String::new());
    assert_eq!(scene.judged().state, ClearanceState::Cleared);
}

#[test]
fn checks_block_and_a_doubtful_one_asks_the_engineer() {
    let exceeded = after(|scene| {
        scene.height(13.0);
    });
    assert_eq!(exceeded.state, ClearanceState::Blocked);
    assert_eq!(exceeded.blocks[0].kind, BlockKind::Check);
    assert_eq!(
        exceeded.blocks[0].reason,
        "Height: the catcher is rated to 12 m"
    );

    let unknown = after(|scene| {
        scene.revise(|facets| facets.action.parameters.clear());
    });
    assert_eq!(unknown.blocks[0].kind, BlockKind::Check);
    assert_eq!(unknown.blocks[0].remedy, "Enter what the check needs.");

    let mut scene = Scene::cleared();
    scene.height(11.0);
    let engineer = scene.standing(Role::Engineer);
    assert_eq!(engineer.because, "a check is marginal: Height");
    assert_eq!(engineer.state, RoleState::Missing);
    scene
        .everyone_signs()
        .rehearsed("bag")
        .rehearsed("bag")
        .rehearsed("half");
    assert_eq!(scene.judged().blocks, vec![]);
}

#[test]
fn inputs_that_cannot_be_judged_block() {
    let value = |value| InputValue::Number {
        value,
        tolerance: None,
    };
    for (says, change) in [
        (
            "\"height\" is in the camera; it belongs in the action",
            Box::new(|scene: &mut Scene| {
                let parameters = &mut scene.case.plan.facets;
                let height = parameters.action.parameters.remove("height").unwrap();
                parameters
                    .camera
                    .parameters
                    .insert("height".to_owned(), height);
            }) as Box<dyn Fn(&mut Scene)>,
        ),
        (
            "height is in both the action and the camera",
            Box::new(move |scene| {
                let camera = &mut scene.case.plan.facets.camera;
                camera.parameters.insert("height".to_owned(), value(9.0));
            }),
        ),
        (
            "no such parameter",
            Box::new(move |scene| {
                let camera = &mut scene.case.plan.facets.camera;
                camera.parameters.insert("hight".to_owned(), value(9.0));
            }),
        ),
        (
            "give metres from 0 to 100",
            Box::new(move |scene| {
                let action = &mut scene.case.plan.facets.action;
                action.parameters.insert("height".to_owned(), value(900.0));
            }),
        ),
        (
            "not finite",
            Box::new(move |scene| {
                let action = &mut scene.case.plan.facets.action;
                action
                    .parameters
                    .insert("height".to_owned(), value(f64::NAN));
            }),
        ),
        (
            "no technique",
            Box::new(|scene| scene.case.plan.technique = "levitation".to_owned()),
        ),
        (
            "says nothing of the technique",
            Box::new(|scene| {
                scene.case.policy.techniques.clear();
            }),
        ),
        (
            "nobody owns the hazard",
            Box::new(|scene| scene.case.policy.owners.clear()),
        ),
        (
            "need not sign every gag",
            Box::new(|scene| scene.case.policy.roles.clear()),
        ),
        (
            "used by an earlier entry",
            Box::new(|scene| {
                let again = scene.case.plan.facets.cast.slots[0].clone();
                scene.case.plan.facets.cast.slots.push(again);
            }),
        ),
    ] {
        let clearance = after(change);
        let inputs: Vec<&str> = clearance
            .blocks
            .iter()
            .filter(|block| block.kind == BlockKind::Inputs)
            .map(|block| block.reason.as_str())
            .collect();
        assert!(
            inputs.iter().any(|reason| reason.contains(says)),
            "{says}: {inputs:#?}"
        );
        assert_eq!(clearance.state, ClearanceState::Blocked, "{says}");
    }
}

/// The same words and numbers mean something else when the gag is done another way, so nobody who signed
/// for the one has signed for the other, whatever they cover.
#[test]
fn another_technique_lapses_every_signature() {
    let mut scene = Scene::cleared();
    let signed = scene.states();
    scene.case.plan.technique = "high-fall".to_owned();
    scene.case.plan.revision = 2;
    for (role, state) in scene.states() {
        if signed.contains_key(&role) {
            assert_eq!(state, RoleState::Lapsed, "{}", role.name());
            let reasons = scene.standing(role).reasons;
            assert!(
                reasons
                    .iter()
                    .any(|one| one.starts_with("The technique has changed")),
                "{reasons:?}"
            );
        }
    }
}
