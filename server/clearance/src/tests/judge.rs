//! The judge, told as scenes: one thing is changed in a cleared gag, and what is said is checked.

use gagwright_mechanics::{Facet, InputValue};
use jiff::{SignedDuration, civil::date};

use super::*;
use crate::{
    case::{Agreement, RoleState},
    plan::Hazard,
    policy::Role,
    scene::{Scene, certificate, person_of, slot},
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
        ["Cast has changed since Žofie Marková signed revision 1."]
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

#[test]
fn a_decline_stands_until_the_same_role_signs_otherwise() {
    let mut scene = Scene::cleared();
    scene.declines(Role::FirstAd, "no time for the dry run");
    one_block(
        &scene.judged(),
        BlockKind::Decline,
        "First assistant director: Radmila Ilić declined revision 1: no time for the dry run",
        "Resolve it in writing and ask First assistant director",
    );
    scene.revise(|facets| facets.rehearsals.rungs.truncate(1));
    assert_eq!(scene.states()[&Role::FirstAd], RoleState::Declined);
    scene.everyone_signs();
    assert_eq!(scene.judged().state, ClearanceState::Cleared);
}

#[test]
fn a_decline_with_the_final_say_cannot_be_lifted_by_another_holder() {
    let mut scene = Scene::cleared();
    scene.declines(Role::Medic, "the route is closed");
    // The production manager is given the medic's hat as well, with the certificate for it.
    let production = scene.member(Role::Production);
    production.roles.insert(Role::Medic);
    production.certificates.push(certificate("paramedic"));
    let mut other = scene.statement(Role::Medic);
    other.signer = person_of(Role::Production);
    other.device = crate::scene::device_of(other.signer);
    scene.hand_in(&other).unwrap();
    let standing = scene.standing(Role::Medic);
    assert_eq!(standing.state, RoleState::Declined);
    assert_eq!(standing.signer, Some(person_of(Role::Medic)));
    // Once the one who declined no longer holds the role, the other's word counts.
    scene.member(Role::Medic).roles.clear();
    assert_eq!(scene.states()[&Role::Medic], RoleState::Standing);
}

#[test]
fn a_role_that_was_not_asked_and_declines_is_heard() {
    let mut scene = Scene::cleared();
    scene.declines(Role::Camera, "crew inside the drop zone");
    let standing = scene.standing(Role::Camera);
    assert_eq!(
        (standing.because.as_str(), standing.state),
        ("it declined", RoleState::Declined)
    );
    scene.signs(Role::Camera);
    assert_eq!(scene.judged().state, ClearanceState::Cleared);
}

#[test]
fn conditions_stay_open_until_a_holder_of_the_role_says_they_are_met() {
    let mut scene = Scene::cleared();
    scene.signs_on_condition(Role::Medic, "second ambulance on site");
    one_block(
        &scene.judged(),
        BlockKind::OpenCondition,
        "Oluwaseun Adebisi approved on conditions that are not met yet: second ambulance on site",
        "Meet them",
    );
    scene.meets("second ambulance on site", person_of(Role::Coordinator));
    assert_eq!(scene.states()[&Role::Medic], RoleState::Conditional);
    scene.meets("another condition", person_of(Role::Medic));
    assert_eq!(scene.states()[&Role::Medic], RoleState::Conditional);
    scene.meets("second ambulance on site", person_of(Role::Medic));
    assert_eq!(scene.judged().state, ClearanceState::Cleared);
}

#[test]
fn a_sign_off_lapses_with_its_signers_role_certificate_device_time_and_words() {
    for (says, change) in [
        (
            "no longer holds the role Key rigger",
            Box::new(|scene: &mut Scene| scene.member(Role::Rigging).roles.clear())
                as Box<dyn Fn(&mut Scene)>,
        ),
        (
            "needs a certificate to sign as Key rigger",
            Box::new(|scene| scene.member(Role::Rigging).certificates.clear()),
        ),
        (
            "needs a certificate to sign as Key rigger",
            // In date today, and not on the shooting day.
            Box::new(|scene| {
                scene.member(Role::Rigging).certificates[0].expires = Some(date(2026, 3, 10));
            }),
        ),
        (
            "needs a certificate to sign as Key rigger",
            Box::new(|scene| {
                scene.member(Role::Rigging).certificates[0].withdrawn = Some(date(2026, 3, 1));
            }),
        ),
        (
            "The device \"phone\" was revoked on 2026-03-01 00:00 UTC",
            Box::new(|scene| {
                let person = person_of(Role::Rigging);
                let device = scene
                    .case
                    .devices
                    .iter_mut()
                    .find(|one| one.person == person);
                device.unwrap().revoked_at = Some(crate::scene::time("2026-03-01T00:00:00Z"));
            }),
        ),
        (
            "signed the words \"rigging/1\"; the policy now asks for \"rigging/2\"",
            Box::new(|scene| {
                let rigging = scene
                    .case
                    .policy
                    .roles
                    .iter_mut()
                    .find(|one| one.role == Role::Rigging);
                rigging.unwrap().attestation.id = "rigging/2".to_owned();
            }),
        ),
        (
            "was good until",
            Box::new(|scene| {
                let rigging = scene
                    .case
                    .policy
                    .roles
                    .iter_mut()
                    .find(|one| one.role == Role::Rigging);
                rigging.unwrap().good_for_hours = Some(2);
                scene.later(SignedDuration::from_hours(3));
            }),
        ),
        (
            "Camera has changed",
            // The policy now makes rigging answer for more than was signed.
            Box::new(|scene| {
                let rigging = scene
                    .case
                    .policy
                    .roles
                    .iter_mut()
                    .find(|one| one.role == Role::Rigging);
                rigging.unwrap().covers.insert(Facet::Camera);
            }),
        ),
    ] {
        let clearance = after(change);
        one_block(&clearance, BlockKind::Lapsed, says, "sign revision 1");
        assert_eq!(clearance.state, ClearanceState::Lapsed);
    }
}

#[test]
fn a_device_revoked_after_it_signed_leaves_the_sign_off_standing() {
    let clearance = after(|scene| {
        scene.later(SignedDuration::from_mins(5));
        for device in &mut scene.case.devices {
            device.revoked_at = Some(scene.now);
        }
    });
    assert_eq!(clearance.state, ClearanceState::Cleared);
}

#[test]
fn a_clock_set_ahead_gains_no_time() {
    let mut scene = Scene::cleared();
    let rigging = scene
        .case
        .policy
        .roles
        .iter_mut()
        .find(|one| one.role == Role::Rigging);
    rigging.unwrap().good_for_hours = Some(2);
    let mut statement = scene.statement(Role::Rigging);
    statement.signed_at = scene
        .now
        .checked_add(SignedDuration::from_hours(20))
        .unwrap();
    statement.good_until = Some(
        scene
            .now
            .checked_add(SignedDuration::from_hours(22))
            .unwrap(),
    );
    scene
        .record(crate::signoff::sign(&statement, &crate::scene::key_of(statement.signer)).unwrap());
    scene.later(SignedDuration::from_hours(3));
    assert_eq!(scene.states()[&Role::Rigging], RoleState::Lapsed);
}

#[test]
fn holds_are_released_by_coordinator_and_owner_together_and_by_nobody_else() {
    let agree = |scene: &mut Scene, role: Role, person: Role, cause: &str| {
        let at = scene.now;
        let person = person_of(person);
        let cause = cause.to_owned();
        scene.case.holds[0].agreements.push(Agreement {
            role,
            person,
            at,
            cause,
        });
    };
    let mut scene = Scene::cleared();
    scene.hold(Some(Hazard::Height));
    one_block(
        &scene.judged(),
        BlockKind::Hold,
        "A hold on this gag was raised by the code on the day's brief",
        "Stunt coordinator (Māra Ozola) and Key rigger (Žofie Marková), two different people,",
    );
    assert_eq!(scene.judged().state, ClearanceState::Held);
    agree(
        &mut scene,
        Role::Coordinator,
        Role::Coordinator,
        "loose edge; fixed",
    );
    assert_eq!(scene.judged().state, ClearanceState::Held);
    // Someone without the hat, the hat without a cause, and one person under both hats: none counts.
    agree(&mut scene, Role::Rigging, Role::Medic, "looks fine");
    assert_eq!(scene.judged().state, ClearanceState::Held);
    agree(&mut scene, Role::Rigging, Role::Rigging, "  ");
    assert_eq!(scene.judged().state, ClearanceState::Held);
    scene.member(Role::Coordinator).roles.insert(Role::Rigging);
    agree(
        &mut scene,
        Role::Rigging,
        Role::Coordinator,
        "I say so twice",
    );
    assert_eq!(scene.judged().state, ClearanceState::Held);
    agree(
        &mut scene,
        Role::Rigging,
        Role::Rigging,
        "edge padded and taped",
    );
    assert_eq!(scene.judged().state, ClearanceState::Cleared);
}

#[test]
fn a_hold_on_everything_holds_this_gag_and_one_on_another_does_not() {
    let held = after(|scene| {
        scene.hold(None);
        scene.case.holds[0].gag = None;
    });
    assert!(
        held.blocks[0].reason.contains("the whole production"),
        "{}",
        held.blocks[0].reason
    );
    let other = after(|scene| {
        scene.hold(None);
        scene.case.holds[0].gag = Some(crate::GagId(uuid::Uuid::from_u128(99)));
    });
    assert_eq!(other.state, ClearanceState::Cleared);
}
