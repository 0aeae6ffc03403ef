//! Declines, conditions, lapsing and holds, told as scenes.

use gagwright_mechanics::Facet;
use jiff::{SignedDuration, civil::date};

use super::tests::{after, kinds, one_block};
use crate::{
    case::{Agreement, BlockKind, ClearanceState, RoleState},
    plan::Hazard,
    policy::Role,
    scene::{Scene, certificate, person_of},
};

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
            "The policy now has Key rigger answer for camera too, which Žofie Marková did not sign.",
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
fn a_hold_once_released_stays_so_when_those_who_released_it_are_replaced() {
    let mut scene = Scene::cleared();
    scene.hold(None);
    let at = scene.now;
    scene.case.holds[0].agreements.push(Agreement {
        role: Role::Coordinator,
        person: person_of(Role::Coordinator),
        at,
        cause: "loose edge; fixed".to_owned(),
    });
    let hold = scene.case.holds[0].clone();
    let (policy, members) = (&scene.case.policy, &scene.case.members);
    assert_eq!(super::agreements_needed(&hold, policy), [Role::Coordinator]);
    assert_eq!(super::missing_agreements(&hold, policy, members), []);
    let open = |scene: &Scene| kinds(&scene.judged()).contains(&BlockKind::Hold);
    let hats = &mut scene.member(Role::Coordinator).roles;
    hats.clear();
    assert!(open(&scene), "nothing says yet that it was released");
    scene.case.holds[0].released_at = Some(at);
    assert!(!open(&scene));
    // A hold kept before releases were dated is read as one that is not.
    let mut old = serde_json::to_value(&scene.case.holds[0]).unwrap();
    old.as_object_mut().unwrap().remove("released_at");
    let old: crate::Hold = serde_json::from_value(old).unwrap();
    assert_eq!(old.released_at, None);
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

#[test]
fn a_later_word_that_cannot_be_checked_is_not_passed_over() {
    let mut scene = Scene::cleared();
    let mut statement = scene.statement(Role::Medic);
    statement.decision = crate::Decision::Decline;
    statement.reason = Some("no cover".to_owned());
    // Signed with another key than the device's.
    let key = crate::scene::key_of(person_of(Role::Camera));
    scene.record(crate::signoff::sign(&statement, &key).unwrap());
    one_block(
        &scene.judged(),
        BlockKind::Lapsed,
        "whose signature does not verify, so what it says is unknown",
        "Ask Oluwaseun Adebisi to read and sign",
    );
    scene.signs(Role::Medic);
    assert_eq!(scene.judged().state, ClearanceState::Cleared);
}
