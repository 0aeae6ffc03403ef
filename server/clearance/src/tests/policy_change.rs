//! Another policy, told as scenes: what may follow, and what would lapse.

use gagwright_mechanics::{Facet, Standing};

use super::{PolicyEffect, effects, succession};
use crate::{
    case::RoleState,
    own_limits::{OwnLimit, set},
    policy::{Policy, Role},
    scene::{Scene, find, person_of},
};

fn would(scene: &Scene, change: impl FnOnce(&mut Scene)) -> Vec<PolicyEffect> {
    let mut other = scene.clone();
    change(&mut other);
    effects(&scene.case, &other.case.policy, scene.now, find).roles
}

fn of(effects: &[PolicyEffect]) -> Vec<(Role, Option<RoleState>, Option<RoleState>)> {
    effects
        .iter()
        .map(|one| (one.role, one.before, one.after))
        .collect()
}

#[test]
fn a_change_lapses_only_the_role_it_is_about() {
    let scene = Scene::cleared();
    let (stands, lapses) = (Some(RoleState::Standing), Some(RoleState::Lapsed));
    let more = would(&scene, |scene| {
        scene.role(Role::Rigging).covers.insert(Facet::Camera);
    });
    assert_eq!(of(&more), [(Role::Rigging, stands, lapses)]);
    let fewer = would(&scene, |scene| {
        scene.role(Role::Rigging).covers.remove(&Facet::Conditions);
    });
    assert_eq!(of(&fewer), []);
    let words = would(&scene, |scene| {
        scene.role(Role::Medic).attestation.id = "medic/2".to_owned();
    });
    assert_eq!(of(&words), [(Role::Medic, stands, lapses)]);
    let unasked = would(&scene, |scene| {
        scene.role(Role::Rigging).required.hazards.clear();
    });
    assert_eq!(of(&unasked), [(Role::Rigging, stands, None)]);
    let asked = would(&scene, |scene| {
        scene.role(Role::Camera).required.always = true;
    });
    assert_eq!(of(&asked), [(Role::Camera, None, Some(RoleState::Missing))]);
}

#[test]
fn words_that_were_signed_keep_their_id_for_ever() {
    let before = Policy::built_in().clone();
    let mut after = before.clone();
    after.version = "ours-1".to_owned();
    assert_eq!(succession(&before, &[], &after), []);
    // Another language may be added to the same words.
    let texts = &mut after.roles[2].attestation.texts;
    texts.insert("es".to_owned(), "Este montaje es el mío.".to_owned());
    assert_eq!(succession(&before, &[], &after), []);
    let earlier = after.clone();
    after.version = "ours-2".to_owned();
    after.roles[2]
        .attestation
        .texts
        .insert("es".to_owned(), "Otro texto.".to_owned());
    let found = succession(&earlier, &[], &after);
    assert_eq!(found.len(), 1, "{found:?}");
    assert_eq!(found[0].pointer, "/roles/2/attestation/id");
    after.roles[2].attestation.id = "rigging/2".to_owned();
    assert_eq!(succession(&earlier, &[], &after), []);
    after.version = earlier.version.clone();
    assert_eq!(succession(&earlier, &[], &after)[0].pointer, "/version");
}

#[test]
fn a_production_sets_its_own_limit_and_the_check_says_who_and_why() {
    let mut policy = Policy::built_in().clone();
    let technique = "high-fall";
    let habits = gagwright_mechanics::Limits::built_in().of(technique);
    let (check, habit) = habits.first_key_value().unwrap();
    let own = OwnLimit {
        value: habit.value * 0.9,
        because: "Our bag is older.".to_owned(),
        by: Some(person_of(Role::Coordinator)),
    };
    policy
        .limits
        .entry(technique.to_owned())
        .or_default()
        .insert(check.clone(), own);
    assert_eq!(policy.findings(), []);
    let own = set(&policy, technique, |_| "Māra Ozola".to_owned());
    let limits = gagwright_mechanics::Limits::set(technique, &own);
    let set = &limits.of(technique)[check];
    assert_eq!(set.value, habit.value * 0.9);
    assert_eq!(set.source.document, "Our bag is older (Māra Ozola)");
    assert_eq!(set.source.standing, Standing::Production);
    // A limit that no technique has, and one without a reason.
    let limit = policy.limits.get_mut(technique).unwrap();
    limit.get_mut(check).unwrap().because = " ".to_owned();
    let unknown = OwnLimit {
        value: 1.0,
        because: "so".to_owned(),
        by: None,
    };
    limit.insert("levitation".to_owned(), unknown);
    let pointers: Vec<String> = policy
        .findings()
        .into_iter()
        .map(|one| one.pointer)
        .collect();
    assert_eq!(
        pointers,
        [
            format!("/limits/{technique}/{check}/because"),
            format!("/limits/{technique}/levitation")
        ]
    );
}
