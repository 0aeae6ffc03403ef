//! What has changed in a plan, in sentences: numbers with their units and which way they went, choices by
//! name, and everything else by the part of the plan it is in.

use gagwright_casting::Slot;
use gagwright_mechanics::{Facet, ParameterKind, Quantity, Technique, units};
use serde_json::Value;

use crate::{
    accepted::difference,
    diff::{FacetChange, FieldChange},
    words,
};

/// A lapse is read on a phone: more than this many sentences hide the first.
const MOST: usize = 4;

/// A sentence for each change, the numbers first; `title` is the role that answers for them.
pub(crate) fn sentences(
    technique: Option<&dyn Technique>,
    slots: &[Slot],
    changes: &[FacetChange],
    title: &str,
) -> Vec<String> {
    let mut said = Vec::new();
    let mut rest = Vec::new();
    for change in changes {
        let mut parts: Vec<String> = Vec::new();
        for field in &change.fields {
            let number = technique.and_then(|technique| parameter(technique, field));
            match number.or_else(|| casting(slots, change.facet, field)) {
                Some(sentence) => said.push(format!("{sentence}; {title} answers for it.")),
                None => {
                    let part = part(&field.pointer);
                    if !parts.contains(&part) {
                        parts.push(part);
                    }
                }
            }
        }
        if !parts.is_empty() {
            rest.push(format!(
                "Changed in the {}: {}.",
                change.facet.name(),
                words::list(&parts)
            ));
        }
    }
    said.extend(rest);
    let more = said.len().saturating_sub(MOST);
    if more > 1 {
        said.truncate(MOST);
        said.push(format!("{more} more changes are on the page."));
    }
    said
}

fn parameter(technique: &dyn Technique, field: &FieldChange) -> Option<String> {
    let path = field.pointer.strip_prefix("/parameters/")?;
    let name = path.split('/').next()?;
    let parameter = technique.parameters().iter().find(|one| one.name == name)?;
    let title = words::capital(parameter.title);
    let ParameterKind::Number { quantity, .. } = parameter.kind else {
        let choice = |value: &Option<Value>| {
            value
                .as_ref()
                .and_then(Value::as_str)
                .map_or_else(|| "nothing".to_owned(), |one| one.replace('_', " "))
        };
        return Some(format!(
            "{title} is {} and was {}",
            choice(&field.after),
            choice(&field.before)
        ));
    };
    if path.ends_with("/tolerance") {
        return Some(format!("The tolerance of {} changed", parameter.title));
    }
    let value = |value: &Option<Value>| {
        let value = value.as_ref()?;
        value.as_f64().or_else(|| value.get("value")?.as_f64())
    };
    match (value(&field.before), value(&field.after)) {
        (Some(before), Some(after)) => Some(moved(&title, quantity, before, after)),
        (None, Some(after)) => Some(format!("{title} is new: {}", units::say(quantity, after))),
        (Some(before), None) => Some(format!(
            "{title}, {} before, was taken out",
            units::say(quantity, before)
        )),
        (None, None) => None,
    }
}

/// Who is cast, and what they wear: both change what a rig carries.
fn casting(slots: &[Slot], facet: Facet, field: &FieldChange) -> Option<String> {
    let mut path = field.pointer.strip_prefix("/slots/")?.splitn(2, '/');
    let slot: usize = path.next()?.parse().ok()?;
    let name = &slots.get(slot).filter(|_| facet == Facet::Cast)?.name;
    match path.next()? {
        "person" => Some(format!("Somebody else is cast as {name}")),
        "kit_mass" => {
            let before = field.before.as_ref()?.as_f64()?;
            let after = field.after.as_ref()?.as_f64()?;
            let title = format!("The kit of {name}");
            Some(moved(&title, Quantity::Mass, before, after))
        }
        _ => None,
    }
}

fn moved(title: &str, quantity: Quantity, before: f64, after: f64) -> String {
    let way = if after > before { "rose" } else { "fell" };
    format!(
        "{title} {way} {}, from {} to {}",
        difference(quantity, (after - before).abs()),
        units::say(quantity, before),
        units::say(quantity, after)
    )
}

/// The field of the facet in which a change lies, in running text.
fn part(pointer: &str) -> String {
    pointer
        .split('/')
        .nth(1)
        .filter(|part| !part.is_empty())
        .unwrap_or("all of it")
        .replace('_', " ")
}
