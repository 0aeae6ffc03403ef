//! `policy`: writes the policy that comes with the program, to begin one's own from, and says everything
//! that is wrong with a policy in a file. Needs no database; coming into force is for the app and the API.

use std::fs;

use gagwright_clearance::{FieldProblem, Policy};

use super::{arguments::PolicyArguments, fault::Fault, say};

pub(crate) fn run(arguments: &PolicyArguments) -> Result<(), Fault> {
    let Some(file) = &arguments.file else {
        return say(pretty(Policy::built_in())?);
    };
    let text = fs::read_to_string(file)
        .map_err(|error| Fault::failed(format!("cannot read {}: {error}", file.display())))?;
    let policy: Policy = serde_json::from_str(&text).map_err(|error| {
        Fault::failed(format!(
            "{} is not a policy: {error}. Start from what `gagwright policy` prints",
            file.display()
        ))
    })?;
    let found = policy.findings();
    if arguments.json {
        say(pretty(&found)?)?;
    }
    if found.is_empty() {
        return match arguments.json {
            true => Ok(()),
            false => say(format!(
                "Version {} holds together: {} roles, {} techniques",
                policy.version,
                policy.roles.len(),
                policy.techniques.len()
            )),
        };
    }
    let lines: Vec<String> = found.iter().map(line).collect();
    Err(Fault::failed(format!(
        "{} cannot come into force:\n{}",
        file.display(),
        lines.join("\n")
    )))
}

fn line(one: &FieldProblem) -> String {
    let pointer = match one.pointer.as_str() {
        "" => "/",
        pointer => pointer,
    };
    format!("{pointer}: {}; {}", one.problem, one.fix)
}

fn pretty(value: &impl serde::Serialize) -> Result<String, Fault> {
    serde_json::to_string_pretty(value).map_err(|error| Fault::failed(error.to_string()))
}
