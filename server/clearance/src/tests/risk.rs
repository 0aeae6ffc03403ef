//! Risks in a plan: what is refused, what the judge says of them, and that no score permits anything.

use gagwright_mechanics::models::risk::{
    Probability::{self, *},
    RiskLevel,
    Severity::{self, *},
};

use super::*;
use crate::{
    ClearanceState, Policy, RoleState,
    canonical::facet_hashes,
    plan::{Facets, diff},
    scene::{Scene, TestFall},
    validate::validate_with,
};

fn rated(severity: Severity, probability: Probability) -> Rating {
    Rating {
        severity,
        probability,
    }
}

fn control(kind: ControlKind, what: &str) -> Control {
    Control {
        kind,
        what: what.to_owned(),
    }
}

fn miss() -> Risk {
    Risk {
        hazard: Hazard::Height,
        event: "She misses the bag".to_owned(),
        before: rated(Catastrophic, Occasional),
        controls: vec![
            control(ControlKind::Engineer, "a bag twice as wide as the spread"),
            control(ControlKind::Organise, "no go above 4 m/s of wind"),
        ],
        after: rated(Catastrophic, Improbable),
        owner: Role::Rigging,
    }
}

fn with(risks: Vec<Risk>) -> Scene {
    let mut scene = Scene::new();
    scene.case.plan.facets.action.risks = risks;
    scene
}

fn problems(change: impl FnOnce(&mut Risk)) -> Vec<(String, String)> {
    let mut row = miss();
    change(&mut row);
    let facets = with(vec![row]).case.plan.facets;
    validate_with(&facets, &TestFall)
        .into_iter()
        .map(|one| {
            assert!(!one.fix.is_empty());
            (one.pointer, one.problem)
        })
        .collect()
}

/// Hashes made before risks were known still hold.
#[test]
fn a_plan_without_risks_hashes_as_it_did() {
    let facets = Facets::default();
    let text = serde_json::to_string(&facets.action).unwrap();
    assert!(!text.contains("risks"), "{text}");
    let with = with(vec![miss()]).case.plan.facets;
    let without = Scene::new().case.plan.facets;
    let (one, other) = (
        facet_hashes(&with).unwrap(),
        facet_hashes(&without).unwrap(),
    );
    for (facet, hash) in &one {
        let same = other.get(facet) == Some(hash);
        assert_eq!(same, *facet != gagwright_mechanics::Facet::Action);
    }
}

#[test]
fn each_bad_row_is_named_with_a_fix() {
    assert_eq!(problems(|_| {}), vec![]);
    type Change = fn(&mut Risk);
    let cases: [(&str, Change); 9] = [
        ("event", |row| row.event = " ".to_owned()),
        ("controls/1/what", |row| row.controls[1].what.clear()),
        // The hierarchy of controls: engineering comes before organising.
        ("controls/1/kind", |row| row.controls.reverse()),
        ("owner", |row| row.owner = Role::Observer),
        ("before/probability", |row| {
            row.before.probability = Eliminated;
        }),
        ("after/severity", |row| {
            row.before.severity = Critical;
        }),
        ("after/probability", |row| {
            row.after.probability = Frequent;
        }),
        ("controls", |row| row.controls.clear()),
        // MIL-STD-882E, 4.3.3: only a hazard that is gone is eliminated.
        ("after/probability", |row| {
            row.after.probability = Eliminated;
        }),
    ];
    for (field, change) in cases {
        let found = problems(change);
        let pointers: Vec<&str> = found.iter().map(|one| one.0.as_str()).collect();
        assert_eq!(pointers, [format!("/facets/action/risks/0/{field}")]);
    }
    let removed = problems(|row| {
        let gone = control(ControlKind::Remove, "the fall is done by a dummy");
        row.controls.insert(0, gone);
        row.after.probability = Eliminated;
    });
    assert_eq!(removed, vec![]);
}

#[test]
fn two_rows_of_one_event_cannot_be_told_apart() {
    let facets = with(vec![miss(), miss()]).case.plan.facets;
    let found = validate_with(&facets, &TestFall);
    assert_eq!(found.len(), 1);
    assert_eq!(found[0].pointer, "/facets/action/risks/1/event");
}

#[test]
fn a_row_put_in_front_does_not_read_as_a_change_of_the_rest() {
    let before = with(vec![miss()]).case.plan.facets;
    let mut after = before.clone();
    let other = Risk {
        event: "The bag bursts".to_owned(),
        ..miss()
    };
    after.action.risks.insert(0, other);
    let changes = diff(&before, &after);
    assert_eq!(changes.len(), 1);
    assert_eq!(changes[0].fields.len(), 1);
    assert_eq!(changes[0].fields[0].pointer, "/risks/0");
}

#[test]
fn the_judge_gives_the_levels() {
    // MIL-STD-882E, table III: 1C is high, 1E is medium.
    let judged = with(vec![miss()]).judged();
    assert_eq!(judged.risks.len(), 1);
    assert_eq!(judged.risks[0].before, RiskLevel::High);
    assert_eq!(judged.risks[0].after, RiskLevel::Medium);
    assert_eq!(judged.risks[0].caution, None);
}

/// A hazard that is weighed is one the gag has: whoever answers for it must sign.
#[test]
fn a_hazard_that_is_weighed_asks_those_who_answer_for_it() {
    let asked = |scene: &Scene| scene.states().contains_key(&Role::Fire);
    assert!(!asked(&Scene::new()));
    let fire = Risk {
        hazard: Hazard::Fire,
        ..miss()
    };
    assert!(asked(&with(vec![fire])));
}

#[test]
fn a_risk_that_stays_high_is_said_aloud_and_asks_for_productions_mark() {
    let mut high = miss();
    high.after = rated(Catastrophic, Occasional);
    let mut scene = with(vec![miss(), high]);
    scene.case.plan.facets.action.risks[1].event = "The bag bursts".to_owned();
    let judged = scene.judged();
    let caution = judged.risks[1].caution.as_deref().unwrap();
    assert!(caution.contains("The bag bursts"), "{caution}");
    assert!(caution.ends_with(PROMPT), "{caution}");
    let because = scene.standing(Role::Production).because;
    assert_eq!(
        because,
        "a risk stays high after its controls: The bag bursts"
    );
    // Also on a production whose policy does not ask production of every gag.
    for role in &mut scene.case.policy.roles {
        role.required.always &= role.role != Role::Production;
    }
    assert_eq!(scene.states()[&Role::Production], RoleState::Missing);
    scene.case.plan.facets.action.risks.pop();
    assert!(!scene.states().contains_key(&Role::Production));
}

/// A low score clears nothing, and a high one blocks nothing by itself: signatures decide.
#[test]
fn a_score_is_never_a_permit() {
    let mut low = miss();
    low.before = rated(Negligible, Improbable);
    low.after = low.before;
    let scene = with(vec![low]);
    assert_eq!(scene.judged().state, ClearanceState::NotAsked);
    let mut high = miss();
    high.after = high.before;
    let mut scene = with(vec![high]);
    // Runs of the plan before the row count no longer.
    scene.rehearsed("bag").rehearsed("bag").rehearsed("half");
    scene.everyone_signs();
    assert_eq!(scene.judged().state, ClearanceState::Cleared);
}

#[test]
fn the_built_in_policy_asks_production_for_high_risks() {
    let production = Policy::built_in().role(Role::Production).unwrap();
    assert_eq!(production.required.risk_from, Some(RiskLevel::High));
}
