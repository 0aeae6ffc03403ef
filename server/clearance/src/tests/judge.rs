//! The judge, told as scenes: one thing is changed in a cleared gag, and what is said is checked.

use super::*;
use crate::{
    case::{ReadingKind, RoleState},
    facets::{Band, Equipment},
    policy::Role,
    scene::{Scene, person_of, time},
};
use jiff::{SignedDuration, civil::date};

fn kinds(clearance: &Clearance) -> Vec<BlockKind> {
    clearance.blocks.iter().map(|block| block.kind).collect()
}

/// Judges a cleared gag after one change.
fn after(change: impl FnOnce(&mut Scene)) -> Clearance {
    let mut scene = Scene::cleared();
    change(&mut scene);
    scene.judged()
}

/// Asserts that a change gives exactly one block, and what it says.
fn one_block(clearance: &Clearance, kind: BlockKind, reason: &str, remedy: &str) {
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
    let roles: Vec<Role> = clearance
        .roles
        .iter()
        .map(|standing| standing.role)
        .collect();
    assert_eq!(
        roles,
        [
            Role::Coordinator,
            Role::Performer,
            Role::Rigging,
            Role::Medic,
            Role::FirstAd,
            Role::Production
        ]
    );
    let because: Vec<&str> = clearance
        .roles
        .iter()
        .map(|standing| standing.because.as_str())
        .collect();
    assert_eq!(
        because,
        [
            "every gag",
            "cast as Double for Ines",
            "height",
            "every gag",
            "every gag",
            "every gag"
        ]
    );
}
