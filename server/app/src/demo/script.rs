//! What the invented production's gags are written in: inputs as people write quantities, people by
//! code, and the steps that bring each gag to where it stands. Reads `seed-data/demo/gags.json`; does
//! nothing with it.

use std::collections::{BTreeMap, BTreeSet};

use gagwright_casting::{PersonId, Requirement, Slot, SlotId};
use gagwright_clearance::{
    ClearanceState, Decision, Facets, Load, Policy, ReadingKind, Role, facets::Rung, plan::Hazard,
};
use gagwright_mechanics::{InputValue, Inputs, Parameter, ParameterKind, Technique, units};
use serde::Deserialize;
use serde_json::Value;

use super::day::DayStep;

/// The whole invented production.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Script {
    /// Its name and time zone.
    pub(crate) production: Named,
    /// Hats by the code of who wears them.
    pub(crate) crew: BTreeMap<String, BTreeSet<Role>>,
    /// Its gags.
    pub(crate) gags: Vec<GagScript>,
}

/// A production by name.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Named {
    pub(crate) name: String,
    pub(crate) time_zone: String,
}

/// One gag.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct GagScript {
    pub(crate) code: String,
    pub(crate) title: String,
    pub(crate) technique: String,
    #[serde(default)]
    pub(crate) note: String,
    /// The technique's inputs, as people write them.
    #[serde(default)]
    pub(crate) inputs: BTreeMap<String, String>,
    /// Everything but inputs, slots and the ladder.
    #[serde(default)]
    pub(crate) facets: Facets,
    /// Who performs.
    #[serde(default)]
    pub(crate) slots: Vec<SlotScript>,
    /// The ladder; the policy's for the technique when left out.
    #[serde(default)]
    pub(crate) rungs: Option<Vec<Rung>>,
    /// What happens to it, in order.
    #[serde(default)]
    pub(crate) then: Vec<Step>,
    /// Performed on the day the demo is made, whenever that is, and what happens on that day, in order.
    #[serde(default)]
    pub(crate) today: Vec<DayStep>,
    /// How it must stand at the end; the seeding's test holds it to this.
    #[cfg_attr(
        not(test),
        expect(dead_code, reason = "only the test of the seeding reads it")
    )]
    pub(crate) ends: ClearanceState,
}

/// One performer's place.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct SlotScript {
    pub(crate) name: String,
    /// Code of who is cast; none: nobody yet.
    #[serde(default)]
    pub(crate) person: Option<String>,
    #[serde(default)]
    pub(crate) kit_mass: f64,
    /// What it needs beyond what the technique needs anyway.
    #[serde(default)]
    pub(crate) also: Vec<Requirement>,
}

/// One thing that happens.
#[derive(Clone, Debug, Deserialize)]
#[serde(tag = "do", rename_all = "snake_case", deny_unknown_fields)]
pub(crate) enum Step {
    /// Logs good runs: all that the ladder asks for, or those of the rungs named.
    Rehearse {
        by: String,
        #[serde(default)]
        rungs: Option<Vec<String>>,
    },
    /// Has everyone sign who must and has not.
    SignAll {
        #[serde(default)]
        except: BTreeSet<Role>,
    },
    /// Has one person sign.
    Sign {
        role: Role,
        by: String,
        #[serde(default = "approve")]
        decision: Decision,
        #[serde(default)]
        conditions: Vec<String>,
        #[serde(default)]
        reason: Option<String>,
    },
    /// Writes a new revision.
    Revise {
        by: String,
        note: String,
        #[serde(default)]
        inputs: BTreeMap<String, String>,
        /// Merged over the facets (RFC 7396).
        #[serde(default)]
        facets: Value,
    },
    /// Raises a hold; with nobody, by the code on the brief.
    Hold {
        #[serde(default)]
        by: Option<String>,
        #[serde(default)]
        reason: String,
        #[serde(default)]
        hazard: Option<Hazard>,
    },
    /// Agrees to release the gag's hold.
    Agree {
        by: String,
        role: Role,
        cause: String,
    },
    /// Logs a test shot. The rig is invented, so what was measured is too: it is what the model gives
    /// with the coefficients of `rig`, which the plan does not know, and a fixed deviation on top as any
    /// tape or instrument has one.
    TestShot {
        by: String,
        load: Load,
        /// Over the plan's own inputs, as people write them.
        set: BTreeMap<String, String>,
        /// The invented rig's true coefficients.
        rig: BTreeMap<String, String>,
        /// What was measured, by figure, and how far off the measurement was, SI.
        measured: BTreeMap<String, f64>,
        #[serde(default)]
        note: String,
    },
    /// Logs a reading.
    Read {
        by: String,
        kind: ReadingKind,
        value: f64,
        place: String,
    },
}

fn approve() -> Decision {
    Decision::Approve
}

/// What is wrong with a script; the script is compiled in, so a test finds it first.
#[derive(Debug, thiserror::Error)]
#[error("the demo's script: {0}")]
pub(crate) struct ScriptError(pub(crate) String);

/// The script that comes with the program.
pub(crate) fn built_in() -> Result<Script, ScriptError> {
    serde_json::from_str(include_str!("../../../../seed-data/demo/gags.json"))
        .map_err(|error| ScriptError(error.to_string()))
}

impl GagScript {
    /// The facets of revision 1.
    pub(crate) fn facets(
        &self,
        policy: &Policy,
        people: &BTreeMap<String, PersonId>,
        mint: &mut dyn FnMut() -> uuid::Uuid,
    ) -> Result<Facets, ScriptError> {
        let mut facets = self.facets.clone();
        let brings = policy
            .techniques
            .get(&self.technique)
            .cloned()
            .unwrap_or_default();
        facets.rehearsals.rungs = self.rungs.clone().unwrap_or(brings.rungs);
        for slot in &self.slots {
            let person = match &slot.person {
                Some(code) => Some(*people.get(code).ok_or_else(|| {
                    ScriptError(format!("{}: nobody has the code {code}", self.code))
                })?),
                None => None,
            };
            facets.cast.slots.push(Slot {
                id: SlotId(mint()),
                name: slot.name.clone(),
                requirements: brings
                    .requirements
                    .iter()
                    .chain(&slot.also)
                    .cloned()
                    .collect(),
                person,
                kit_mass: slot.kit_mass,
            });
        }
        put_inputs(&mut facets, &self.technique, &self.inputs)?;
        Ok(facets)
    }
}

/// Puts inputs, as people write them, into the facets their technique keeps them in.
pub(crate) fn put_inputs(
    facets: &mut Facets,
    technique: &str,
    inputs: &BTreeMap<String, String>,
) -> Result<(), ScriptError> {
    let model = model(technique)?;
    for (name, text) in inputs {
        let (parameter, value) = input(model, name, text)?;
        if let Some(parameters) = facets.parameters_mut(parameter.facet) {
            parameters.insert(name.clone(), value);
        }
    }
    Ok(())
}

/// Inputs with others, as people write them, set over them.
pub(crate) fn set_over(
    inputs: &Inputs,
    technique: &str,
    others: &BTreeMap<String, String>,
) -> Result<Inputs, ScriptError> {
    let model = model(technique)?;
    let mut set = inputs.clone();
    for (name, text) in others {
        set.0.insert(name.clone(), input(model, name, text)?.1);
    }
    Ok(set)
}

/// The technique of that name.
pub(crate) fn model(technique: &str) -> Result<&'static dyn Technique, ScriptError> {
    gagwright_mechanics::find(technique)
        .ok_or_else(|| ScriptError(format!("there is no technique {technique}")))
}

fn input(
    model: &'static dyn Technique,
    name: &str,
    text: &str,
) -> Result<(&'static Parameter, InputValue), ScriptError> {
    let technique = model.name();
    let parameter = model
        .parameters()
        .iter()
        .find(|one| one.name == name)
        .ok_or_else(|| ScriptError(format!("{technique} has no input {name}")))?;
    let value = match &parameter.kind {
        ParameterKind::Number { quantity, .. } => {
            let measured = units::parse(*quantity, text)
                .map_err(|error| ScriptError(format!("{technique}, {name}: {error}")))?;
            InputValue::Number {
                value: measured.value,
                tolerance: measured.tolerance,
            }
        }
        ParameterKind::Choice { .. } => InputValue::Choice(text.to_owned()),
    };
    Ok((parameter, value))
}

/// Merges a patch over facets (RFC 7396).
pub(crate) fn merged(facets: &Facets, patch: &Value) -> Result<Facets, ScriptError> {
    let broken = |error: serde_json::Error| ScriptError(error.to_string());
    let mut whole = serde_json::to_value(facets).map_err(broken)?;
    merge(&mut whole, patch);
    serde_json::from_value(whole).map_err(broken)
}

fn merge(target: &mut Value, patch: &Value) {
    match (target, patch) {
        (_, Value::Null) => {}
        (Value::Object(target), Value::Object(patch)) => {
            for (name, value) in patch {
                match value {
                    Value::Null => {
                        target.remove(name);
                    }
                    value => merge(target.entry(name.clone()).or_insert(Value::Null), value),
                }
            }
        }
        (target, patch) => *target = patch.clone(),
    }
}
