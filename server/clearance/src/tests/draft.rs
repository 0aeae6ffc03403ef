//! Statements made ready on a phone or a server: the same, and for nobody who may not sign them.

use super::*;
use crate::scene::{Scene, person_of, slot};

fn made(scene: &Scene, role: Role, place: Option<SlotId>, by: Role) -> Result<Prepared, String> {
    let id = SignOffId(Uuid::from_u128(77));
    prepare(&scene.case, role, place, person_of(by), id, scene.now)
        .map_err(|error| error.to_string())
}

#[test]
fn what_is_prepared_passes_the_door_once_its_device_is_named() {
    let mut scene = Scene::new();
    let mut expected = scene.statement(Role::Medic);
    let prepared = made(&scene, Role::Medic, None, Role::Medic).unwrap();
    let mut statement = prepared.statement.clone();
    statement.device = expected.device;
    expected.id = statement.id;
    assert_eq!(statement, expected);
    assert_eq!(prepared.attestation.id, statement.attestation);
    let covered: Vec<Facet> = statement.facets.keys().copied().collect();
    assert_eq!(prepared.covers, covered);
    assert_eq!(prepared.previous, None);
    scene.hand_in(&statement).unwrap();

    let again = made(&scene, Role::Medic, None, Role::Medic).unwrap();
    let previous = again.previous.unwrap();
    assert_eq!((previous.signoff, previous.revision), (statement.id, 1));
    assert_eq!(
        made(&scene, Role::Fire, None, Role::Fire).unwrap().previous,
        None
    );
}

#[test]
fn a_performer_signs_for_their_own_slot_and_finds_it() {
    let scene = Scene::new();
    for named in [None, Some(slot())] {
        let prepared = made(&scene, Role::Performer, named, Role::Performer).unwrap();
        assert_eq!(prepared.statement.slot, Some(slot()));
    }
    let told = made(&scene, Role::Performer, None, Role::Medic).unwrap_err();
    assert!(told.contains("not cast"), "{told}");
}

#[test]
fn nothing_is_prepared_for_who_may_not_sign_it() {
    let scene = Scene::new();
    let told = |role, place, by| made(&scene, role, place, by).unwrap_err();
    assert!(
        told(Role::Coordinator, None, Role::Medic).contains("do not hold the role coordinator")
    );
    assert!(told(Role::Medic, Some(slot()), Role::Medic).contains("leave slot out"));
}
