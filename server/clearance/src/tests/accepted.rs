//! Bands, told as scenes: what a role accepts in advance and what it does not, and what a lapse says.

use gagwright_mechanics::{Facet, InputValue, Quantity};
use serde_json::json;

use super::AcceptedBand;
use crate::{
    case::RoleState,
    policy::Role,
    scene::{Scene, find},
};

fn band(role: Role, relative: Option<f64>, absolute: Option<f64>) -> AcceptedBand {
    AcceptedBand {
        because: String::new(),
        role,
        parameter: Some("height".to_owned()),
        quantity: None,
        relative,
        absolute,
    }
}

/// Everyone signed at 10 m; rigging accepts two per cent.
fn scene() -> Scene {
    let mut scene = Scene::new();
    scene.case.policy.bands = vec![band(Role::Rigging, Some(0.02), None)];
    scene.everyone_signs();
    scene
}

#[test]
fn a_change_inside_the_band_leaves_that_role_standing_and_says_so() {
    let mut scene = scene();
    scene.height(10.12);
    let rigging = scene.standing(Role::Rigging);
    assert_eq!(rigging.state, RoleState::Standing);
    assert_eq!(
        rigging.notes,
        ["Height moved 1.2 %, inside the 2 % that Key rigger accepts."]
    );
    assert_eq!(rigging.changed, []);
    // Nobody else accepted anything.
    assert_eq!(scene.states()[&Role::Coordinator], RoleState::Lapsed);
}

#[test]
fn steps_add_up_against_what_was_signed() {
    let mut scene = scene();
    scene.height(10.15).height(10.3);
    let rigging = scene.standing(Role::Rigging);
    assert_eq!(rigging.state, RoleState::Lapsed);
    assert_eq!(
        rigging.reasons,
        [
            "Action has changed since Žofie Marková signed revision 1.",
            "Height rose 0.3 m, from 10 m to 10.3 m; Key rigger answers for it."
        ]
    );
    // Back inside the band of what was signed, it stands again; 2 % itself is inside.
    scene.height(9.8);
    assert_eq!(scene.states()[&Role::Rigging], RoleState::Standing);
    scene.height(9.79);
    assert_eq!(scene.states()[&Role::Rigging], RoleState::Lapsed);
}

#[test]
fn anything_else_in_the_same_facet_is_not_accepted_with_it() {
    let mut scene = scene();
    scene
        .height(10.1)
        .revise(|facets| facets.action.steps = vec!["Run".to_owned()]);
    let rigging = scene.standing(Role::Rigging);
    assert_eq!(rigging.state, RoleState::Lapsed);
    assert!(
        rigging
            .reasons
            .contains(&"Changed in the action: steps.".to_owned()),
        "{:?}",
        rigging.reasons
    );
}

#[test]
fn a_quantity_and_an_absolute_width_do_as_well() {
    let mut scene = Scene::new();
    scene.case.policy.bands = vec![AcceptedBand {
        because: String::new(),
        parameter: None,
        quantity: Some(Quantity::Length),
        ..band(Role::Engineer, None, Some(0.5))
    }];
    // Marginal at 11 m, so that the engineer is asked.
    scene.height(11.0);
    scene.everyone_signs();
    scene.height(11.4);
    let engineer = scene.standing(Role::Engineer);
    assert_eq!(engineer.state, RoleState::Standing);
    assert_eq!(
        engineer.notes,
        ["Height moved 0.4 m, inside the 0.5 m that Engineer accepts."]
    );
    scene.height(11.6);
    assert_eq!(scene.states()[&Role::Engineer], RoleState::Lapsed);
}

#[test]
fn contents_that_are_not_what_was_signed_accept_nothing() {
    let mut scene = scene();
    scene.height(10.1);
    assert_eq!(scene.states()[&Role::Rigging], RoleState::Standing);
    // Somebody lies about what was signed, so that a large change looks small.
    let lie = json!({ "value": 10.09 });
    let action = scene.case.earlier[0]
        .facets
        .get_mut(&Facet::Action)
        .unwrap();
    action["parameters"]["height"] = lie;
    assert_eq!(scene.states()[&Role::Rigging], RoleState::Lapsed);
    // Without them nothing can be compared, and a change is a change.
    scene.case.earlier.clear();
    assert_eq!(scene.states()[&Role::Rigging], RoleState::Lapsed);
}

#[test]
fn a_tolerance_that_widens_is_no_small_change_of_the_number() {
    let mut scene = scene();
    scene.revise(|facets| {
        let value = InputValue::Number {
            value: 10.0,
            tolerance: Some(0.3),
        };
        facets.action.parameters.insert("height".to_owned(), value);
    });
    assert_eq!(scene.states()[&Role::Rigging], RoleState::Lapsed);
}

#[test]
fn bands_that_make_no_sense_are_found() {
    let mut policy = crate::Policy::built_in().clone();
    for (band, says) in [
        (
            band(Role::Performer, Some(0.02), None),
            "accepts no changes in advance",
        ),
        (band(Role::Rigging, Some(0.5), None), "no sensible width"),
        (
            band(Role::Rigging, Some(0.01), Some(1.0)),
            "no sensible width",
        ),
        (
            AcceptedBand {
                because: String::new(),
                parameter: Some("levitation".to_owned()),
                ..band(Role::Rigging, Some(0.01), None)
            },
            "a number that no technique has",
        ),
        (
            AcceptedBand {
                because: String::new(),
                parameter: None,
                quantity: Some(Quantity::Temperature),
                ..band(Role::Rigging, Some(0.01), None)
            },
            "depends on the scale",
        ),
    ] {
        policy.bands = vec![band];
        let found = policy.findings();
        assert!(
            found
                .iter()
                .any(|one| one.problem.contains(says) && one.pointer.starts_with("/bands/0")),
            "{says}: {found:?}"
        );
    }
    assert!(find("test-fall").is_some());
}
