//! Declines resolved in writing and conditions met by others, told as scenes.

use uuid::Uuid;

use super::{Resolution, Settling};
use crate::{
    case::RoleState,
    ids::RecordId,
    policy::Role,
    scene::{Scene, certificate, device_of, person_of},
};

/// Rigging declined, and the production manager, who is given the hat as well, would sign instead.
fn another_would_sign() -> Scene {
    let mut scene = Scene::cleared();
    scene.declines(Role::Rigging, "the bag is too small");
    let other = scene.member(Role::Production);
    other.roles.insert(Role::Rigging);
    other.certificates.push(certificate("rope_access_3"));
    let mut statement = scene.statement(Role::Rigging);
    statement.signer = person_of(Role::Production);
    statement.device = device_of(statement.signer);
    scene.hand_in(&statement).unwrap();
    scene
}

fn resolve(scene: &mut Scene, role: Role) {
    let declined =
        crate::jws::read_unverified(&scene.case.signoffs.iter().rev().nth(1).unwrap().jws);
    scene.case.resolutions.push(Resolution {
        id: RecordId(Uuid::from_u128(4)),
        signoff: declined.unwrap().id,
        by: person_of(role),
        role,
        text: "A larger bag is hired".to_owned(),
        at: scene.now,
    });
}

#[test]
fn another_holder_signs_over_a_decline_only_once_it_is_resolved_in_writing() {
    let mut scene = another_would_sign();
    let declined = scene.standing(Role::Rigging);
    assert_eq!(declined.state, RoleState::Declined);
    assert_eq!(declined.signer, Some(person_of(Role::Rigging)));
    // Not by somebody whom the policy does not name.
    resolve(&mut scene, Role::Medic);
    assert_eq!(scene.states()[&Role::Rigging], RoleState::Declined);
    scene.case.resolutions.clear();
    resolve(&mut scene, Role::Coordinator);
    let standing = scene.standing(Role::Rigging);
    assert_eq!(standing.state, RoleState::Standing);
    assert_eq!(standing.signer, Some(person_of(Role::Production)));
    // The dissent stays on the record.
    assert_eq!(standing.notes.len(), 1);
    let note = &standing.notes[0];
    assert!(
        note.starts_with(
            "Žofie Marková declined revision 1: the bag is too small. Māra Ozola resolved"
        ),
        "{note}"
    );
    assert!(note.ends_with("A larger bag is hired."), "{note}");
}

#[test]
fn whoever_declined_may_say_otherwise_themselves() {
    let mut scene = Scene::cleared();
    scene.declines(Role::Rigging, "the bag is too small");
    scene.signs(Role::Rigging);
    assert_eq!(scene.states()[&Role::Rigging], RoleState::Standing);
}

#[test]
fn a_policy_that_asks_for_nothing_in_writing_takes_the_latest_word() {
    let mut scene = another_would_sign();
    scene.case.policy.settling.clear();
    assert_eq!(scene.states()[&Role::Rigging], RoleState::Standing);
}

#[test]
fn a_condition_is_called_met_by_the_role_that_set_it_or_whom_the_policy_names() {
    let mut scene = Scene::cleared();
    scene.signs_on_condition(Role::Medic, "second ambulance");
    scene.meets("second ambulance", person_of(Role::FirstAd));
    assert_eq!(scene.states()[&Role::Medic], RoleState::Conditional);
    let settling = Settling {
        conditions: [Role::FirstAd].into(),
        ..Settling::default()
    };
    scene.case.policy.settling.insert(Role::Medic, settling);
    assert_eq!(scene.states()[&Role::Medic], RoleState::Standing);
}

#[test]
fn nobody_is_named_who_could_resolve_a_final_say() {
    let mut policy = crate::Policy::built_in().clone();
    let settling = Settling {
        declines: [Role::Coordinator].into(),
        ..Settling::default()
    };
    policy.settling.insert(Role::Medic, settling);
    let found = policy.findings();
    assert_eq!(found.len(), 1, "{found:?}");
    assert_eq!(found[0].pointer, "/settling/medic/declines");
}
