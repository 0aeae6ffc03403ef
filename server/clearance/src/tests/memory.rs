//! What is remembered changes no answer, and nothing that did not verify stands by being remembered.

use super::*;
use crate::{
    judge::clearance_remembering,
    policy::Role,
    scene::{Scene, device_of, find, key_of, person_of},
    signoff::sign,
};

#[test]
fn remembered_marks_are_judged_as_fresh_ones_are() {
    let memory = JudgeMemory::default();
    let mut scene = Scene::ready();
    for _ in 0..2 {
        let judged = clearance_remembering(&scene.case, scene.now, find, &memory);
        assert_eq!(judged, scene.judged());
        assert!(judged.go.may, "{:?}", judged.go.why_not);
        assert_eq!(memory.marks(), 11); // six on the plan, five on the day
    }
    scene.height(11.0);
    scene.later(jiff::SignedDuration::from_hours(1));
    let judged = clearance_remembering(&scene.case, scene.now, find, &memory);
    assert_eq!(judged, scene.judged());
}

#[test]
fn a_mark_stands_only_under_the_key_it_verified_with() {
    let memory = JudgeMemory::default();
    let mut scene = Scene::ready();
    let before = clearance_remembering(&scene.case, scene.now, find, &memory);
    assert!(before.go.may);
    // The same marks, and devices that now hold each other's keys.
    let other = key_of(person_of(Role::Camera));
    for device in &mut scene.case.devices {
        device.key = other.verifying_key().into();
    }
    let after = clearance_remembering(&scene.case, scene.now, find, &memory);
    assert_eq!(after, scene.judged());
    assert!(!after.go.may);
}

#[test]
fn what_does_not_verify_is_never_kept() {
    let memory = JudgeMemory::default();
    let mut scene = Scene::new();
    let statement = scene.statement(Role::Medic);
    let forged = sign(&statement, &key_of(person_of(Role::Camera))).unwrap();
    let medic: PublicKey = key_of(person_of(Role::Medic)).verifying_key().into();
    assert!(memory.verified(&forged, &medic).is_none());
    assert!(memory.verified(&forged, &medic).is_none());
    assert_eq!(memory.marks(), 0);
    // Another signature over the very same words is another text.
    let genuine = sign(&statement, &key_of(person_of(Role::Medic))).unwrap();
    assert!(memory.verified(&genuine, &medic).is_some());
    assert!(memory.verified(&forged, &medic).is_none());
    assert_eq!(memory.marks(), 1);
    assert_eq!(
        memory.claimed(&forged).unwrap().device,
        device_of(person_of(Role::Medic))
    );
}

#[test]
fn what_is_full_begins_anew_and_answers_the_same() {
    let memory = JudgeMemory::holding(2_000);
    let scene = Scene::ready();
    for _ in 0..2 {
        let judged = clearance_remembering(&scene.case, scene.now, find, &memory);
        assert_eq!(judged, scene.judged());
        assert!(memory.marks() <= 4);
    }
}
