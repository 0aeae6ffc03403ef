//! Leaves of the trail in plain words: "Žofie Králíčková signed as rigging on revision 3 of G07". Reads
//! only what a leaf says in the clear, plus names that the roster still has.

use std::collections::BTreeMap;

use gagwright_casting::PersonId;
use gagwright_trail::Entry;
use serde_json::Value;

/// What a leaf says happened, and who brought word of it when its author's own phone did not.
pub fn sentence(entry: &Entry, names: &BTreeMap<PersonId, String>) -> String {
    let told = happened(entry, names);
    let fact = |key: &str| entry.facts.get(key).and_then(Value::as_str);
    // A sign-off proves who signed it, and its leaf says who sent it in.
    let carrier = match entry.kind.as_str() {
        "signoff.made" => entry
            .actor
            .as_deref()
            .filter(|id| Some(*id) != fact("signer")),
        _ => fact("carried_by"),
    };
    match carrier {
        Some(carrier) => format!("{told}; carried here by {}", name_of(Some(carrier), names)),
        None => told,
    }
}

fn name_of(id: Option<&str>, names: &BTreeMap<PersonId, String>) -> String {
    match id {
        None => "Somebody with no account".to_owned(),
        Some(id) => id
            .parse()
            .ok()
            .and_then(|id: PersonId| names.get(&id).cloned())
            .unwrap_or_else(|| "Somebody no longer on the roster".to_owned()),
    }
}

fn happened(entry: &Entry, names: &BTreeMap<PersonId, String>) -> String {
    let name = |id| name_of(id, names);
    let fact = |key: &str| entry.facts.get(key);
    let text = |key: &str| fact(key).map(plain).unwrap_or_default();
    let who = name(entry.actor.as_deref());
    let code = text("code");
    let revision = text("revision");
    match entry.kind.as_str() {
        "production.created" => format!(
            "The production was started, with {} as {}",
            name(fact("founder").and_then(Value::as_str)),
            roles(fact("roles"))
        ),
        "person.put" => {
            let verb = if fact("created") == Some(&Value::Bool(true)) {
                "added"
            } else {
                "changed"
            };
            let person = name(fact("person").and_then(Value::as_str));
            format!("{who} {verb} {person} on the roster")
        }
        "person.erased" => format!("{who} erased what was kept about a person"),
        "roster.imported" => format!(
            "{who} imported the roster table {}: {} new, {} changed, {} as before",
            text("table"),
            text("created"),
            text("updated"),
            text("unchanged")
        ),
        "gag.created" => format!("{who} added {code}"),
        "plan.revised" => format!("{who} wrote revision {revision} of {code}"),
        "signoff.made" => {
            let signer = name(fact("signer").and_then(Value::as_str));
            let role = spaced(&text("role"));
            match text("decision").as_str() {
                "decline" => {
                    format!("{signer} declined as {role} on revision {revision} of {code}")
                }
                "approve_with_conditions" => format!(
                    "{signer} signed as {role} on revision {revision} of {code}, with conditions"
                ),
                _ if fact("witness").is_some_and(Value::is_string) => {
                    format!("{signer} signed as {role} on revision {revision} of {code}, in ink")
                }
                _ => format!("{signer} signed as {role} on revision {revision} of {code}"),
            }
        }
        "condition.met" => {
            format!(
                "{who} said that a condition of {} on {code} is met",
                spaced(&text("role"))
            )
        }
        "policy.changed" => format!(
            "{who} put version {} of the policy in force",
            text("version")
        ),
        "delegation.made" => format!(
            "{who} let {} sign as {}",
            name(fact("to").and_then(Value::as_str)),
            spaced(&text("role"))
        ),
        "delegation.ended" => {
            format!("{who} ended a delegation of {}", spaced(&text("role")))
        }
        "witness.added" => format!("{who} added {} as a witness of the trail", text("name")),
        "witness.removed" => format!("{who} removed {} as a witness of the trail", text("name")),
        "decline.resolved" => format!("{who} resolved a decline on {code} in writing"),
        "photograph.kept" => format!("{who} handed in the photograph of a sign-off on paper"),
        "hold.raised" => match code.as_str() {
            "" => format!("{who} held the whole production"),
            code => format!("{who} held {code}"),
        },
        "hold.agreed" => {
            let role = spaced(&text("role"));
            let about = if code.is_empty() {
                "the production".to_owned()
            } else {
                code
            };
            if fact("released") == Some(&Value::Bool(true)) {
                format!("{who} agreed as {role}, and the hold on {about} was released")
            } else {
                format!("{who} agreed as {role} to release the hold on {about}")
            }
        }
        "reading.logged" => format!(
            "{who} logged a {} reading for {code}",
            spaced(&text("kind"))
        ),
        "run.logged" => {
            let how = if fact("good") == Some(&Value::Bool(true)) {
                "good"
            } else {
                "bad"
            };
            format!(
                "{who} logged a {how} run of rung {} on {code}",
                text("rung")
            )
        }
        "test_shot.logged" => {
            let load = match text("load").as_str() {
                "bag" => "a weight bag",
                _ => "a person",
            };
            format!("{who} logged a test shot with {load} on {code}")
        }
        "device.registered" => {
            format!(
                "{} registered a device to sign with",
                name(fact("person").and_then(Value::as_str))
            )
        }
        "device.revoked" => {
            let owner = name(fact("person").and_then(Value::as_str));
            format!("{who} revoked a device of {owner}")
        }
        "member.changed" => {
            let person = name(fact("person").and_then(Value::as_str));
            format!("{who} gave {person} the roles: {}", roles(fact("roles")))
        }
        "invitation.made" => {
            format!(
                "{who} invited {}",
                name(fact("person").and_then(Value::as_str))
            )
        }
        "invitation.withdrawn" => {
            format!(
                "{who} withdrew the invitation of {}",
                name(fact("person").and_then(Value::as_str))
            )
        }
        "equipment.put" => {
            let verb = if fact("created") == Some(&Value::Bool(true)) {
                "entered"
            } else {
                "changed"
            };
            format!(
                "{who} {verb} {} on the register of equipment",
                text("serial")
            )
        }
        "equipment.quarantined" => format!("{who} set {} aside", text("serial")),
        "equipment.released" => format!("{who} took {} back into use", text("serial")),
        "equipment.shock_loaded" => format!("{who} recorded a shock load on {}", text("serial")),
        "briefing.held" => format!("{who} briefed {code} for {}", text("day")),
        "gag.debriefed" => format!("{who} debriefed {code} for {}", text("day")),
        "day.signed" => {
            let signer = name(fact("signer").and_then(Value::as_str));
            let role = spaced(&text("role"));
            let verb = match text("decision").as_str() {
                "decline" => "declined",
                _ => "signed",
            };
            let ink = match fact("witness").is_some_and(Value::is_string) {
                true => ", in ink",
                false => "",
            };
            format!("{signer} {verb} {} as {role} on {code}{ink}", text("day"))
        }
        "go.called" => {
            let number = text("number");
            if fact("stood") == Some(&Value::Bool(true)) {
                format!("{who} called the go for take {number} of {code}")
            } else {
                format!("{who} called a go for take {number} of {code} that did not stand")
            }
        }
        "take.ended" => format!(
            "{who} recorded take {} of {code} as {}",
            text("number"),
            spaced(&text("result"))
        ),
        "look.recorded" => {
            let person = name(fact("person").and_then(Value::as_str));
            format!("{who} looked at {person} on {code}")
        }
        "person.stood_down" => {
            let person = name(fact("person").and_then(Value::as_str));
            format!("{who} stood {person} down")
        }
        "person.returned" => {
            let person = name(fact("person").and_then(Value::as_str));
            format!("{who} brought {person} back")
        }
        "incident.reported" => {
            let kind = match text("kind").as_str() {
                "near_miss" => "a near miss",
                _ => "an incident",
            };
            match code.as_str() {
                "" => format!("{who} reported {kind}, which freezes the whole production"),
                code => format!("{who} reported {kind} on {code}"),
            }
        }
        "incident.told" => match text("who").as_str() {
            "" | "null" => format!("{who} told somebody of the incident on {code}"),
            told => format!("{who} told {} of the incident on {code}", spaced(told)),
        },
        "incident.closed_by" => format!(
            "{who} said as {} what was done about the incident on {code}",
            spaced(&text("role"))
        ),
        "invitation.accepted" => format!("{who} accepted their invitation"),
        other => format!("{who}: {other}"),
    }
}

fn plain(value: &Value) -> String {
    match value {
        Value::String(text) => text.clone(),
        other => other.to_string(),
    }
}

fn spaced(name: &str) -> String {
    match name {
        "first_ad" => "first assistant director".into(),
        other => other.replace('_', " "),
    }
}

fn roles(value: Option<&Value>) -> String {
    let names: Vec<String> = value
        .and_then(Value::as_array)
        .into_iter()
        .flatten()
        .map(|role| spaced(&plain(role)))
        .collect();
    if names.is_empty() {
        "none".to_owned()
    } else {
        names.join(", ")
    }
}

#[cfg(test)]
mod tests {
    use serde_json::json;

    use super::*;

    #[test]
    fn a_sign_off_reads_as_people_would_say_it() {
        let id: PersonId = "01890000-0000-7000-8000-000000000001".parse().unwrap();
        let names = BTreeMap::from([(id, "Žofie Králíčková".to_owned())]);
        let mut entry = Entry {
            index: 4,
            at: "2027-03-08T07:00:00Z".into(),
            kind: "signoff.made".into(),
            production: "p".into(),
            gag: None,
            actor: Some(id.to_string()),
            facts: serde_json::Map::new(),
            commitments: BTreeMap::new(),
        };
        for (key, value) in [
            ("signer", json!(id)),
            ("role", json!("rigging")),
            ("revision", json!(3)),
            ("code", json!("G07")),
            ("decision", json!("approve")),
        ] {
            entry.facts.insert(key.into(), value);
        }
        assert_eq!(
            sentence(&entry, &names),
            "Žofie Králíčková signed as rigging on revision 3 of G07"
        );
        entry.actor = Some("01890000-0000-7000-8000-000000000002".to_owned());
        assert_eq!(
            sentence(&entry, &names),
            "Žofie Králíčková signed as rigging on revision 3 of G07; carried here by Somebody no longer on \
             the roster"
        );
        entry.kind = "hold.raised".into();
        entry.actor = None;
        assert_eq!(
            sentence(&entry, &names),
            "Somebody with no account held G07"
        );
    }
}
