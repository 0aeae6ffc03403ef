//! What differs between two contents of a plan, field by field, so that a signer reads what is new to
//! them. Items of a list are matched by what names them, so that adding one does not read as a change
//! of all that follow.

use gagwright_mechanics::Facet;
use serde::{Deserialize, Serialize};
use serde_json::Value;

use crate::plan::Facets;

/// What differs in one facet.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct FacetChange {
    /// The facet.
    pub facet: Facet,
    /// What differs in it; never empty.
    pub fields: Vec<FieldChange>,
}

/// One value before and after.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct FieldChange {
    /// JSON pointer inside the facet: in the new contents, or in the old for what was removed.
    pub pointer: String,
    /// What it was; none: it is new.
    #[cfg_attr(feature = "openapi", schema(value_type = Option<Value>))]
    pub before: Option<Value>,
    /// What it is; none: it was removed.
    #[cfg_attr(feature = "openapi", schema(value_type = Option<Value>))]
    pub after: Option<Value>,
}

/// One facet as JSON.
pub fn facet_value(facets: &Facets, facet: Facet) -> Value {
    let value = match facet {
        Facet::Setting => serde_json::to_value(&facets.setting),
        Facet::Action => serde_json::to_value(&facets.action),
        Facet::Rigging => serde_json::to_value(&facets.rigging),
        Facet::Effects => serde_json::to_value(&facets.effects),
        Facet::Vehicles => serde_json::to_value(&facets.vehicles),
        Facet::Cast => serde_json::to_value(&facets.cast),
        Facet::Medical => serde_json::to_value(&facets.medical),
        Facet::Camera => serde_json::to_value(&facets.camera),
        Facet::Conditions => serde_json::to_value(&facets.conditions),
        Facet::Rehearsals => serde_json::to_value(&facets.rehearsals),
    };
    // Only maps whose keys are not strings fail to serialise, and facets have none.
    value.unwrap_or(Value::Null)
}

/// Everything that differs, by facet in table order.
pub fn diff(before: &Facets, after: &Facets) -> Vec<FacetChange> {
    Facet::ALL
        .into_iter()
        .filter_map(|facet| {
            let mut fields = Vec::new();
            let (old, new) = (facet_value(before, facet), facet_value(after, facet));
            compare(String::new(), Some(&old), Some(&new), &mut fields);
            (!fields.is_empty()).then_some(FacetChange { facet, fields })
        })
        .collect()
}

/// Everything that differs between two contents of one facet.
pub fn diff_values(before: &Value, after: &Value) -> Vec<FieldChange> {
    let mut fields = Vec::new();
    compare(String::new(), Some(before), Some(after), &mut fields);
    fields
}

fn compare(
    pointer: String,
    before: Option<&Value>,
    after: Option<&Value>,
    found: &mut Vec<FieldChange>,
) {
    match (before, after) {
        (Some(Value::Object(old)), Some(Value::Object(new))) => {
            for (name, value) in old {
                compare(child(&pointer, name), Some(value), new.get(name), found);
            }
            for (name, value) in new.iter().filter(|(name, _)| !old.contains_key(*name)) {
                compare(child(&pointer, name), None, Some(value), found);
            }
        }
        (Some(Value::Array(old)), Some(Value::Array(new))) => lists(&pointer, old, new, found),
        (before, after) if before == after => {}
        (before, after) => found.push(FieldChange {
            pointer,
            before: before.cloned(),
            after: after.cloned(),
        }),
    }
}

fn lists(pointer: &str, old: &[Value], new: &[Value], found: &mut Vec<FieldChange>) {
    let Some(key) = naming_field(old, new) else {
        for at in 0..old.len().max(new.len()) {
            compare(
                child(pointer, &at.to_string()),
                old.get(at),
                new.get(at),
                found,
            );
        }
        return;
    };
    let named = |items: &[Value], name: Option<&Value>| {
        items
            .iter()
            .position(|item| name.is_some() && item.get(key) == name)
    };
    let kept_before: Vec<usize> = old
        .iter()
        .filter_map(|item| named(new, item.get(key)))
        .collect();
    for (at, item) in new.iter().enumerate() {
        let was = named(old, item.get(key)).and_then(|place| old.get(place));
        compare(child(pointer, &at.to_string()), was, Some(item), found);
    }
    for (at, item) in old.iter().enumerate() {
        if named(new, item.get(key)).is_none() {
            compare(child(pointer, &at.to_string()), Some(item), None, found);
        }
    }
    if !kept_before.is_sorted() {
        let names = |items: &[Value]| {
            Value::Array(
                items
                    .iter()
                    .filter_map(|item| item.get(key))
                    .cloned()
                    .collect(),
            )
        };
        found.push(FieldChange {
            pointer: pointer.to_owned(),
            before: Some(names(old)),
            after: Some(names(new)),
        });
    }
}

/// The field that names the items of both lists: present in each, and different in each.
fn naming_field(old: &[Value], new: &[Value]) -> Option<&'static str> {
    ["id", "serial", "reading", "name", "event"]
        .into_iter()
        .find(|key| {
            [old, new].into_iter().all(|items| {
                let names: Vec<Option<&Value>> = items.iter().map(|item| item.get(*key)).collect();
                names
                    .iter()
                    .enumerate()
                    .all(|(at, name)| name.is_some() && !names[..at].contains(name))
            }) && !(old.is_empty() && new.is_empty())
        })
}

fn child(pointer: &str, name: &str) -> String {
    format!("{pointer}/{}", name.replace('~', "~0").replace('/', "~1"))
}

#[cfg(test)]
mod tests {
    use gagwright_mechanics::InputValue;
    use serde_json::json;

    use super::*;
    use crate::facets::{Equipment, Rung};

    fn item(name: &str, serial: &str) -> Equipment {
        Equipment {
            name: name.to_owned(),
            serial: serial.to_owned(),
            working_load: Some(12_000.0),
            inspected_until: None,
        }
    }

    fn pointers(before: &Facets, after: &Facets) -> Vec<String> {
        diff(before, after)
            .iter()
            .flat_map(|change| {
                let facet = change.facet.name();
                change
                    .fields
                    .iter()
                    .map(move |field| format!("{facet}{}", field.pointer))
            })
            .collect()
    }

    #[test]
    fn the_same_contents_differ_in_nothing() {
        let mut facets = Facets::default();
        facets.rigging.equipment = vec![item("winch", "W1")];
        assert_eq!(diff(&facets, &facets), vec![]);
    }

    #[test]
    fn a_changed_number_is_named_with_both_values() {
        let mut before = Facets::default();
        let value = |value| InputValue::Number {
            value,
            tolerance: None,
        };
        before
            .action
            .parameters
            .insert("drop_height".to_owned(), value(12.0));
        let mut after = before.clone();
        after
            .action
            .parameters
            .insert("drop_height".to_owned(), value(15.0));
        let changes = diff(&before, &after);
        assert_eq!(changes.len(), 1);
        assert_eq!(changes[0].facet, Facet::Action);
        assert_eq!(
            changes[0].fields,
            vec![FieldChange {
                pointer: "/parameters/drop_height/value".to_owned(),
                before: Some(json!(12.0)),
                after: Some(json!(15.0)),
            }]
        );
    }

    #[test]
    fn a_piece_put_in_front_does_not_read_as_a_change_of_the_rest() {
        let mut before = Facets::default();
        before.rigging.equipment = vec![item("winch", "W1"), item("sling", "S1")];
        let mut after = before.clone();
        after.rigging.equipment.insert(0, item("shackle", "H1"));
        assert_eq!(pointers(&before, &after), ["rigging/equipment/0"]);
        after.rigging.equipment[2].working_load = Some(9_000.0);
        assert_eq!(
            pointers(&before, &after),
            ["rigging/equipment/0", "rigging/equipment/2/working_load"]
        );
        assert_eq!(
            pointers(&after, &before),
            ["rigging/equipment/1/working_load", "rigging/equipment/0"]
        );
    }

    #[test]
    fn rungs_in_another_order_are_a_change() {
        let rung = |name: &str| Rung {
            name: name.to_owned(),
            what: name.to_owned(),
            good_runs: 1,
        };
        let mut before = Facets::default();
        before.rehearsals.rungs = vec![rung("bag"), rung("half")];
        let mut after = before.clone();
        after.rehearsals.rungs.reverse();
        assert_eq!(pointers(&before, &after), ["rehearsals/rungs"]);
    }
}
