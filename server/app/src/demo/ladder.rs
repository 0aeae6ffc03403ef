//! The invented ladder of test shots: what an invented rig did at rising pressure. Made from the demo's
//! script; logs nothing.

use std::collections::BTreeMap;

use gagwright_clearance::Load;
use gagwright_mechanics::{
    Inputs,
    tools::{CalibrateRequest, TestShot},
};

use super::script::{Script, ScriptError, Step, model, set_over};

/// One shot of the script, as it would be logged.
pub(crate) struct Shot {
    pub(crate) load: Load,
    pub(crate) inputs: Inputs,
    pub(crate) measured: BTreeMap<String, f64>,
    pub(crate) note: String,
}

/// A gag's ladder and the shot that comes after it.
pub(crate) struct Ladder {
    pub(crate) gag: String,
    pub(crate) technique: String,
    /// The inputs of the gag's plan.
    pub(crate) stated: Inputs,
    pub(crate) shots: Vec<Shot>,
    /// The settings of the next shot.
    pub(crate) next: Inputs,
    /// What the invented rig truly is, which nobody on the production knows.
    pub(crate) rig: BTreeMap<String, String>,
}

/// What a step logs; none when it is no test shot.
pub(crate) fn shot(
    technique: &str,
    stated: &Inputs,
    step: &Step,
) -> Result<Option<Shot>, ScriptError> {
    let Step::TestShot {
        load,
        set,
        rig,
        measured,
        note,
        ..
    } = step
    else {
        return Ok(None);
    };
    let inputs = set_over(stated, technique, set)?;
    let truth = set_over(&inputs, technique, rig)?;
    let given = model(technique)?
        .assess(&truth)
        .map_err(|error| ScriptError(error.to_string()))?;
    let mut read = BTreeMap::new();
    for (name, off) in measured {
        let figure = given.figures.iter().find(|one| one.name == *name);
        let figure =
            figure.ok_or_else(|| ScriptError(format!("{technique} gives no {name} for a shot")))?;
        // As finely as a tape or an instrument is read.
        read.insert(name.clone(), ((figure.value + off) * 100.0).round() / 100.0);
    }
    Ok(Some(Shot {
        load: *load,
        inputs,
        measured: read,
        note: note.clone(),
    }))
}

/// The first gag's ladder that the script has.
pub(crate) fn of(script: &Script) -> Result<Ladder, ScriptError> {
    let gag = script
        .gags
        .iter()
        .find(|gag| {
            gag.then
                .iter()
                .any(|step| matches!(step, Step::TestShot { .. }))
        })
        .ok_or_else(|| ScriptError("no gag has a test shot".into()))?;
    let stated = set_over(&Inputs::default(), &gag.technique, &gag.inputs)?;
    let mut ladder = Ladder {
        gag: gag.code.clone(),
        technique: gag.technique.clone(),
        next: stated.clone(),
        stated,
        shots: Vec::new(),
        rig: BTreeMap::new(),
    };
    for step in &gag.then {
        match step {
            Step::TestShot { rig, .. } => ladder.rig.clone_from(rig),
            Step::Revise { inputs, .. } => {
                ladder.next = set_over(&ladder.stated, &gag.technique, inputs)?;
            }
            _ => {}
        }
        ladder
            .shots
            .extend(shot(&gag.technique, &ladder.stated, step)?);
    }
    Ok(ladder)
}

impl Ladder {
    /// What is asked of the calibration.
    pub(crate) fn request(&self, coefficients: Option<&[&str]>) -> CalibrateRequest {
        CalibrateRequest {
            inputs: self.next.clone(),
            shots: self
                .shots
                .iter()
                .map(|shot| TestShot {
                    inputs: shot.inputs.clone(),
                    measured: shot.measured.clone(),
                })
                .collect(),
            coefficients: coefficients
                .map(|names| names.iter().map(|one| (*one).to_owned()).collect()),
            confidence: 0.9,
        }
    }
}
