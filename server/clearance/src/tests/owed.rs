//! What one person may sign now.

use std::collections::BTreeSet;

use super::*;
use crate::scene::{Scene, person_of, slot};

fn of(scene: &Scene, role: Role, hats: &[Role]) -> Vec<(Role, RoleState, bool)> {
    let judged = scene.judged();
    let hats: BTreeSet<Role> = hats.iter().copied().collect();
    owed(&judged.roles, &judged.cast(), person_of(role), &hats)
        .into_iter()
        .map(|one| (one.role, one.state, one.asked))
        .collect()
}

#[test]
fn a_mark_is_owed_by_who_holds_the_hat_until_it_stands() {
    let mut scene = Scene::new();
    let medic = |scene: &Scene| of(scene, Role::Medic, &[Role::Medic]);
    assert_eq!(medic(&scene), [(Role::Medic, RoleState::Missing, true)]);
    assert_eq!(of(&scene, Role::Medic, &[]), []);
    assert_eq!(of(&scene, Role::Medic, &[Role::Observer]), []);
    let two = of(&scene, Role::Medic, &[Role::Medic, Role::Coordinator]);
    assert_eq!(
        two.iter().map(|one| one.0).collect::<BTreeSet<_>>(),
        BTreeSet::from([Role::Coordinator, Role::Medic])
    );
    scene.signs(Role::Medic);
    assert_eq!(medic(&scene), []);
    scene.revise(|facets| facets.medical.hospital = "Another".to_owned());
    assert_eq!(medic(&scene), [(Role::Medic, RoleState::Lapsed, true)]);
}

#[test]
fn what_was_answered_may_be_answered_again_and_is_not_asked_for() {
    let mut scene = Scene::new();
    scene.signs_on_condition(Role::Medic, "A second ambulance");
    let medic = |scene: &Scene| of(scene, Role::Medic, &[Role::Medic]);
    assert_eq!(
        medic(&scene),
        [(Role::Medic, RoleState::Conditional, false)]
    );
    scene.declines(Role::Medic, "No cover");
    assert_eq!(medic(&scene), [(Role::Medic, RoleState::Declined, false)]);
}

#[test]
fn consent_is_owed_by_who_is_cast_with_or_without_the_hat_and_by_nobody_else() {
    let mut scene = Scene::new();
    let missing = [(Role::Performer, RoleState::Missing, true)];
    assert_eq!(of(&scene, Role::Performer, &[]), missing);
    assert_eq!(of(&scene, Role::Performer, &[Role::Performer]), missing);
    assert_eq!(of(&scene, Role::Medic, &[Role::Performer]), []);
    let judged = scene.judged();
    let own = owed(
        &judged.roles,
        &judged.cast(),
        person_of(Role::Performer),
        &BTreeSet::new(),
    );
    assert_eq!(own[0].slot, Some(slot()));
    assert_eq!(own[0].why, "Thandeka Ngubo has not consented.");
    scene.signs(Role::Performer);
    assert_eq!(of(&scene, Role::Performer, &[Role::Performer]), []);
}

#[test]
fn a_mark_that_fell_says_what_changed() {
    let mut scene = Scene::cleared();
    scene.height(9.0);
    let judged = scene.judged();
    let rigger = person_of(Role::Rigging);
    let owed = owed(
        &judged.roles,
        &judged.cast(),
        rigger,
        &[Role::Rigging].into(),
    );
    assert_eq!(
        owed[0].why,
        "Action has changed since Žofie Marková signed revision 1. Height fell 1 m, from 10 m to 9 m; \
         Key rigger answers for it."
    );
}
