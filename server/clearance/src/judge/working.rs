//! Whether the plan can be computed at all, and what its checks say. The physics is mechanics'; this
//! module decides only what stops a gag.

use gagwright_mechanics::{Assessment, Status};

use super::{FindTechnique, bench::Bench};
use crate::{
    case::{Block, BlockKind},
    own_limits, validate,
};

/// A plan whose contents cannot be judged.
pub(crate) fn refused(reason: String) -> Block {
    Block {
        kind: BlockKind::Inputs,
        about: "plan".to_owned(),
        reason,
        remedy: "Correct it in a new revision.".to_owned(),
    }
}

/// The assessment of the plan's technique, and everything that stands in its way.
pub(crate) fn assess(bench: &Bench<'_>, find: FindTechnique) -> (Option<Assessment>, Vec<Block>) {
    let case = bench.case;
    let mut blocks: Vec<Block> = Vec::new();
    for problem in bench.policy_problems().iter() {
        blocks.push(Block {
            kind: BlockKind::Inputs,
            about: "policy".to_owned(),
            reason: format!("The production's policy cannot be judged by: {problem}."),
            remedy: "Correct the policy.".to_owned(),
        });
    }
    let name = &case.plan.technique;
    if !case.policy.techniques.contains_key(name) {
        blocks.push(Block {
            kind: BlockKind::Inputs,
            about: "policy".to_owned(),
            reason: format!(
                "The policy says nothing of the technique \"{name}\", so who must sign is unknown."
            ),
            remedy: "Add the technique with its hazards to the policy.".to_owned(),
        });
    }
    blocks.extend(
        validate::repeated_names(&case.plan.facets)
            .into_iter()
            .map(|problem| Block {
                kind: BlockKind::Inputs,
                about: problem.pointer.clone(),
                reason: format!("{}: {}.", problem.pointer, problem.problem),
                remedy: format!("{}.", crate::words::capital(&problem.fix)),
            }),
    );
    let Some(technique) = find(name) else {
        blocks.push(refused(format!("There is no technique \"{name}\".")));
        return (None, blocks);
    };
    // A parameter in the wrong facet could change without those who answer for it signing again.
    for misplaced in case.plan.facets.misplaced(technique) {
        let belongs = misplaced.belongs.map_or_else(
            || format!("{} has no such parameter", technique.title()),
            |facet| format!("it belongs in the {}", facet.name()),
        );
        blocks.push(refused(format!(
            "The parameter \"{}\" is in the {}; {belongs}.",
            misplaced.name,
            misplaced.found.name()
        )));
    }
    let inputs = match case.plan.inputs() {
        Ok(inputs) => inputs,
        Err(error) => {
            blocks.push(refused(format!("{error}.")));
            return (None, blocks);
        }
    };
    let own = own_limits::set(&case.policy, name, |person| bench.name(person));
    match technique.assess_set(&inputs, &own) {
        Ok(assessment) => (Some(assessment), blocks),
        Err(error) => {
            blocks.push(refused(format!("{error}.")));
            (None, blocks)
        }
    }
}

/// Checks that stop the gag: a blocking limit that is exceeded, or that cannot be checked. Missing
/// evidence is never good evidence.
pub(crate) fn checks(assessment: &Assessment) -> Vec<Block> {
    assessment
        .checks
        .iter()
        .filter(|check| check.blocking)
        .filter_map(|check| {
            let remedy = match check.status {
                Status::Within | Status::Marginal => return None,
                Status::Exceeded => "Change the plan until the check is inside its limit.",
                Status::Unknown => "Enter what the check needs.",
            };
            Some(Block {
                kind: BlockKind::Check,
                about: check.name.clone(),
                reason: format!("{}: {}", check.title, check.detail),
                remedy: remedy.to_owned(),
            })
        })
        .collect()
}
