//! Risks, row by row: the words, the order of the controls, and that nothing becomes less of a risk
//! without a reason.

use gagwright_mechanics::models::risk::Probability;

use super::{LONG, MOST, Problems, SHORT};
use crate::{
    policy::Role,
    risk::{ControlKind, Rating, Risk},
};

pub(super) fn risks(risks: &[Risk], problems: &mut Problems) {
    problems.length("/facets/action/risks", risks.len());
    for (at, risk) in risks.iter().enumerate().take(MOST) {
        row(&format!("/facets/action/risks/{at}"), risk, problems);
    }
}

fn row(pointer: &str, risk: &Risk, problems: &mut Problems) {
    problems.required(&format!("{pointer}/event"), &risk.event, SHORT);
    controls(pointer, risk, problems);
    if risk.owner == Role::Observer {
        let pointer = format!("{pointer}/owner");
        problems.add(
            pointer,
            "answers for nothing",
            "name a role that signs for gags",
        );
    }
    if risk.before.probability == Probability::Eliminated {
        let fix = "say how likely it would be with nothing done, or leave the row out";
        problems.add(
            format!("{pointer}/before/probability"),
            "is eliminated before anything was done",
            fix,
        );
        return;
    }
    worse(pointer, risk, problems);
    less(pointer, risk, problems);
}

fn controls(pointer: &str, risk: &Risk, problems: &mut Problems) {
    problems.length(&format!("{pointer}/controls"), risk.controls.len());
    let mut weakest = ControlKind::Remove;
    for (at, control) in risk.controls.iter().enumerate().take(MOST) {
        let pointer = format!("{pointer}/controls/{at}");
        problems.required(&format!("{pointer}/what"), &control.what, LONG);
        if control.kind < weakest {
            let problem = format!(
                "\"{}\" comes after \"{}\", which is weaker",
                control.kind.words(),
                weakest.words()
            );
            let order: Vec<&str> = ControlKind::ALL.iter().map(|kind| kind.words()).collect();
            let fix = format!("put the controls in this order: {}", order.join(", "));
            problems.add(format!("{pointer}/kind"), problem, fix);
        }
        weakest = weakest.max(control.kind);
    }
}

/// A control makes nothing worse. One that brings a hazard of its own has a row of its own.
fn worse(pointer: &str, risk: &Risk, problems: &mut Problems) {
    let Rating {
        severity,
        probability,
    } = risk.after;
    let fix = "rate it no higher than before, or give what the control brings a row of its own";
    if severity < risk.before.severity {
        let problem = "is worse than before the controls";
        problems.add(format!("{pointer}/after/severity"), problem, fix);
    }
    if probability < risk.before.probability {
        let problem = "is likelier than before the controls";
        problems.add(format!("{pointer}/after/probability"), problem, fix);
    }
}

fn less(pointer: &str, risk: &Risk, problems: &mut Problems) {
    if risk.controls.is_empty() && risk.after != risk.before {
        let fix = "name what is done, or rate it as before";
        problems.add(
            format!("{pointer}/controls"),
            "is empty, and yet the rating changes",
            fix,
        );
    }
    // MIL-STD-882E, 4.3.3: no doctrine, training, warning or protective equipment moves a risk to F.
    let removed = risk
        .controls
        .iter()
        .any(|control| control.kind == ControlKind::Remove);
    if risk.after.probability == Probability::Eliminated && !removed {
        let fix = "name how the hazard is removed, or rate it improbable";
        problems.add(
            format!("{pointer}/after/probability"),
            "is eliminated, and no control removes the hazard",
            fix,
        );
    }
}
