//! Contents that cannot be accepted, each with the field it names; and policies that do not hold together.

use gagwright_casting::Requirement;
use gagwright_mechanics::InputValue;

use super::*;
use crate::{
    Plan, Policy,
    case::ReadingKind,
    facets::{Band, CameraPosition, Equipment, GivenCharge},
    plan::Hazard,
    policy::Role,
    scene::{Scene, TestFall, slot},
};

fn problems(change: impl FnOnce(&mut Facets)) -> Vec<FieldProblem> {
    let mut facets = Scene::new().case.plan.facets;
    change(&mut facets);
    validate_with(&facets, &TestFall)
}

#[test]
fn good_contents_have_no_problem() {
    assert_eq!(problems(|_| {}), vec![]);
}

#[test]
fn each_bad_field_is_named_with_a_fix() {
    type Change = Box<dyn FnOnce(&mut Facets)>;
    let number = |value| InputValue::Number {
        value,
        tolerance: None,
    };
    let requirement = |requirement| -> Change {
        Box::new(move |facets| facets.cast.slots[0].requirements = vec![requirement])
    };
    let piece = |serial: &str, load| Equipment {
        name: "winch".to_owned(),
        serial: serial.to_owned(),
        working_load: Some(load),
        inspected_until: None,
    };
    let band = |min, max, minutes| Band {
        reading: ReadingKind::Wind,
        min,
        max,
        max_age_minutes: minutes,
    };
    let charge = |count, stand_off: f64| GivenCharge {
        name: "dust hit".to_owned(),
        count,
        lead_seconds: 0.3,
        stand_off,
        given_by: "Anaïs Rochette".to_owned(),
    };
    let cases: Vec<(&str, Change)> = vec![
        (
            "/facets/setting/scene",
            Box::new(|f| f.setting.scene = "x".repeat(SHORT + 1)),
        ),
        (
            "/facets/setting/location",
            Box::new(|f| f.setting.location = "a\u{7}b".to_owned()),
        ),
        (
            "/facets/action/summary",
            Box::new(|f| f.action.summary = "é".repeat(LONG + 1)),
        ),
        (
            "/facets/action/steps/1",
            Box::new(|f| {
                f.action.steps = vec!["run".to_owned(), " ".to_owned()];
            }),
        ),
        (
            "/facets/action/steps",
            Box::new(|f| f.action.steps = vec!["go".to_owned(); MOST + 1]),
        ),
        (
            "/facets/camera/parameters/height",
            Box::new(move |f| {
                f.action.parameters.clear();
                f.camera.parameters.insert("height".to_owned(), number(3.0));
            }),
        ),
        (
            "/facets/camera/parameters/hi~1ght",
            Box::new(move |f| {
                f.camera.parameters.insert("hi/ght".to_owned(), number(3.0));
            }),
        ),
        (
            "/facets/action/parameters/height",
            Box::new(move |f| {
                f.action
                    .parameters
                    .insert("height".to_owned(), number(f64::NAN));
            }),
        ),
        (
            "/facets/action/parameters/height",
            Box::new(move |f| {
                f.action.parameters.insert("height".to_owned(), number(1e9));
            }),
        ),
        (
            "/facets/action/parameters/height",
            Box::new(|f| {
                let choice = InputValue::Choice("tall".to_owned());
                f.action.parameters.insert("height".to_owned(), choice);
            }),
        ),
        (
            "/facets/cast/slots/0/name",
            Box::new(|f| f.cast.slots[0].name.clear()),
        ),
        (
            "/facets/cast/slots/0/kit_mass",
            Box::new(|f| f.cast.slots[0].kit_mass = -1.0),
        ),
        (
            "/facets/cast/slots/0/kit_mass",
            Box::new(|f| f.cast.slots[0].kit_mass = f64::NAN),
        ),
        (
            "/facets/cast/slots/1/id",
            Box::new(|f| {
                let mut again = f.cast.slots[0].clone();
                again.person = None;
                f.cast.slots.push(again);
            }),
        ),
        (
            "/facets/cast/slots/1/person",
            Box::new(|f| {
                let mut again = f.cast.slots[0].clone();
                again.id = crate::SlotId(uuid::Uuid::from_u128(9));
                f.cast.slots.push(again);
            }),
        ),
        (
            "/facets/cast/slots/0/requirements/0/name",
            requirement(Requirement::Skill {
                name: "hihg_fall".to_owned(),
                level: 3,
                within_days: None,
            }),
        ),
        (
            "/facets/cast/slots/0/requirements/0/level",
            requirement(Requirement::Skill {
                name: "high_fall".to_owned(),
                level: 6,
                within_days: None,
            }),
        ),
        (
            "/facets/cast/slots/0/requirements/0/min",
            requirement(Requirement::KittedMass {
                min: 90.0,
                max: 60.0,
            }),
        ),
        (
            "/facets/cast/slots/0/requirements/0/hours",
            requirement(Requirement::Rest {
                hours: f64::INFINITY,
            }),
        ),
        (
            "/facets/cast/slots/0/requirements/0/adds",
            requirement(Requirement::DailyExposure {
                exposure: "full_burn".to_owned(),
                adds: 2,
                max: 1,
            }),
        ),
        (
            "/facets/rigging/equipment/0/serial",
            Box::new(move |f| {
                f.rigging.equipment = vec![piece("", 1e4)];
            }),
        ),
        (
            "/facets/rigging/equipment/1/serial",
            Box::new(move |f| {
                f.rigging.equipment = vec![piece("W1", 1e4), piece("W1", 1e4)];
            }),
        ),
        (
            "/facets/rigging/equipment/0/working_load",
            Box::new(move |f| {
                f.rigging.equipment = vec![piece("W1", 1e12)];
            }),
        ),
        (
            "/facets/rigging/rescue/limit_seconds",
            Box::new(|f| {
                f.rigging.rescue.limit_seconds = Some(-5.0);
            }),
        ),
        (
            "/facets/effects/charges/0/count",
            Box::new(move |f| {
                f.effects.charges = vec![charge(0, 5.0)];
            }),
        ),
        (
            "/facets/effects/charges/0/stand_off",
            Box::new(move |f| {
                f.effects.charges = vec![charge(1, -5.0)];
            }),
        ),
        (
            "/facets/conditions/bands/0/max",
            Box::new(move |f| {
                f.conditions.bands = vec![band(None, None, 30)];
            }),
        ),
        (
            "/facets/conditions/bands/0/min",
            Box::new(move |f| {
                f.conditions.bands = vec![band(Some(6.0), Some(3.0), 30)];
            }),
        ),
        (
            "/facets/conditions/bands/0/max_age_minutes",
            Box::new(move |f| {
                f.conditions.bands = vec![band(None, Some(3.0), 0)];
            }),
        ),
        (
            "/facets/conditions/bands/1/reading",
            Box::new(move |f| {
                f.conditions.bands = vec![band(None, Some(3.0), 30), band(None, Some(9.0), 30)];
            }),
        ),
        (
            "/facets/camera/positions/0/name",
            Box::new(|f| {
                let (name, place, lens) = Default::default();
                f.camera.positions = vec![CameraPosition { name, place, lens }];
            }),
        ),
        (
            "/facets/rehearsals/rungs/1/name",
            Box::new(|f| {
                f.rehearsals.rungs[1].name = "bag".to_owned();
            }),
        ),
        (
            "/facets/rehearsals/rungs/0/good_runs",
            Box::new(|f| {
                f.rehearsals.rungs[0].good_runs = 0;
            }),
        ),
    ];
    for (pointer, change) in cases {
        let found = problems(change);
        let pointers: Vec<&str> = found.iter().map(|one| one.pointer.as_str()).collect();
        assert_eq!(pointers, [pointer], "{found:#?}");
        assert!(!found[0].problem.is_empty() && !found[0].fix.is_empty());
    }
}

#[test]
fn an_unknown_technique_is_named_with_those_there_are() {
    let found = validate(&Facets::default(), "levitation");
    assert_eq!(found[0].pointer, "/technique");
    assert!(found[0].fix.contains("high-fall"), "{}", found[0].fix);
}

#[test]
fn what_a_technique_starts_from_can_be_accepted() {
    for technique in gagwright_mechanics::techniques() {
        let facets = Plan::starting(technique.name(), Policy::built_in(), slot());
        assert_eq!(
            validate(&facets, technique.name()),
            vec![],
            "{}",
            technique.name()
        );
        assert!(!facets.rehearsals.rungs.is_empty());
        assert!(!facets.cast.slots[0].requirements.is_empty());
    }
}

#[test]
fn the_built_in_policy_holds_together_and_describes_every_role_that_signs() {
    let policy = Policy::built_in();
    assert_eq!(policy.problems(), Vec::<String>::new());
    for role in Role::ALL {
        assert_eq!(
            policy.role(role).is_some(),
            role != Role::Observer,
            "{}",
            role.name()
        );
    }
    let again = Policy::from_json(&serde_json::to_string(policy).unwrap()).unwrap();
    assert_eq!(again, *policy);
    // The armourer holds that role only (trade practice: screensafety.com.au).
    let armourer = policy
        .separate
        .iter()
        .filter(|pair| pair.contains(&Role::Armourer));
    assert_eq!(armourer.count(), Role::ALL.len() - 2);
}

#[test]
fn a_policy_with_a_gap_is_refused_with_the_gap() {
    type Change = Box<dyn Fn(&mut Policy)>;
    fn role(policy: &mut Policy, role: Role) -> &mut crate::RolePolicy {
        policy
            .roles
            .iter_mut()
            .find(|one| one.role == role)
            .unwrap()
    }
    let cases: Vec<(&str, Change)> = vec![
        ("no version", Box::new(|p| p.version.clear())),
        (
            "coordinator need not sign",
            Box::new(|p| {
                role(p, Role::Coordinator).required.always = false;
            }),
        ),
        (
            "does not answer for every facet",
            Box::new(|p| {
                role(p, Role::Coordinator)
                    .covers
                    .remove(&crate::Facet::Camera);
            }),
        ),
        (
            "performers need not consent",
            Box::new(|p| {
                p.roles.retain(|one| one.role != Role::Performer);
            }),
        ),
        (
            "is in it twice",
            Box::new(|p| {
                let again = p.roles[3].clone();
                p.roles.push(again);
            }),
        ),
        (
            "share the attestation",
            Box::new(|p| {
                role(p, Role::Fire).attestation.id = "medic/1".to_owned();
            }),
        ),
        (
            "answers for nothing",
            Box::new(|p| role(p, Role::Fire).covers.clear()),
        ),
        (
            "has no title",
            Box::new(|p| role(p, Role::Fire).title.clear()),
        ),
        (
            "no attestation to sign",
            Box::new(|p| role(p, Role::Fire).attestation.text.clear()),
        ),
        (
            "good for no time",
            Box::new(|p| role(p, Role::Fire).good_for_hours = Some(0)),
        ),
        (
            "unknown certificate",
            Box::new(|p| {
                role(p, Role::Fire).certificates = vec![vec!["fire_eater".to_owned()]];
            }),
        ),
        (
            "names none",
            Box::new(|p| role(p, Role::Fire).certificates = vec![vec![]]),
        ),
        (
            "does not describe it",
            Box::new(|p| p.roles.retain(|one| one.role != Role::Camera)),
        ),
        (
            "from itself",
            Box::new(|p| p.separate.push([Role::Medic, Role::Medic])),
        ),
        (
            "nobody owns the hazard of water",
            Box::new(|p| {
                p.owners.remove(&Hazard::Water);
            }),
        ),
        (
            "need not sign for it",
            Box::new(|p| {
                p.owners.insert(Hazard::Water, Role::Camera);
            }),
        ),
        (
            "there is no skill",
            Box::new(|p| {
                let burn = p.techniques.get_mut("full-burn").unwrap();
                burn.requirements.push(Requirement::Skill {
                    name: "full_bern".to_owned(),
                    level: 1,
                    within_days: None,
                });
            }),
        ),
        (
            "two rungs named",
            Box::new(|p| {
                let burn = p.techniques.get_mut("full-burn").unwrap();
                burn.rungs.push(burn.rungs[0].clone());
            }),
        ),
        (
            "an empty rung",
            Box::new(|p| {
                p.techniques.get_mut("full-burn").unwrap().rungs[0].good_runs = 0;
            }),
        ),
        (
            "signs nothing",
            Box::new(|p| role(p, Role::Fire).role = Role::Observer),
        ),
    ];
    for (says, change) in cases {
        let mut policy = Policy::built_in().clone();
        change(&mut policy);
        let problems = policy.problems().join("; ");
        assert!(
            problems.contains(says),
            "expected \"{says}\", got \"{problems}\""
        );
        assert!(
            Policy::from_json(&serde_json::to_string(&policy).unwrap()).is_err(),
            "{says}"
        );
    }
    assert!(Policy::from_json("{}").is_err());
}

#[test]
fn who_answers_for_a_doubtful_check_covers_everything_a_check_is_worked_out_from() {
    let policy = Policy::built_in();
    let asked: Vec<_> = policy
        .roles
        .iter()
        .filter(|role| role.required.doubtful_check)
        .collect();
    assert!(!asked.is_empty());
    for role in asked {
        for technique in gagwright_mechanics::techniques() {
            for parameter in technique.parameters() {
                assert!(
                    role.covers.contains(&parameter.facet),
                    "{} does not cover {} of {}, in {}",
                    role.title,
                    parameter.name,
                    technique.name(),
                    parameter.facet.name()
                );
            }
        }
    }
}

#[test]
fn hats_that_answer_to_each_other_are_on_two_heads() {
    let policy = Policy::built_in();
    let apart = |one: Role, other: Role| {
        let pairs = &policy.separate;
        pairs.contains(&[one, other]) || pairs.contains(&[other, one])
    };
    for (one, other) in [
        (Role::Coordinator, Role::Medic),
        (Role::Coordinator, Role::Performer),
        (Role::Coordinator, Role::Engineer),
        (Role::Rigging, Role::Engineer),
        (Role::Effects, Role::Fire),
        (Role::Performer, Role::Rigging),
        (Role::Performer, Role::Medic),
    ] {
        assert!(apart(one, other), "{} and {}", one.name(), other.name());
    }
    for role in policy.roles.iter().map(|policy| policy.role) {
        assert!(
            role == Role::Armourer || apart(Role::Armourer, role),
            "the armourer does no other job, and may sign as {}",
            role.name()
        );
    }
}
