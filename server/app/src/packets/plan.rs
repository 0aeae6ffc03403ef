//! A plan's facets as what a packet prints. Words only; nothing is judged here.

use std::collections::BTreeMap;

use gagwright_casting::PersonId;
use gagwright_clearance::{Case, Facet, facets::Parameters, plan::FacetHashes};
use gagwright_mechanics::{InputValue, ParameterKind, Quantity, Technique};
use gagwright_packet::document::{Content, Part, Row};

use crate::words;

/// The ten parts, in table order, empty ones included.
pub(super) fn parts(
    case: &Case,
    hashes: &FacetHashes,
    technique: Option<&dyn Technique>,
    names: &BTreeMap<PersonId, String>,
    zone: &jiff::tz::TimeZone,
) -> Vec<Part> {
    let facets = &case.plan.facets;
    Facet::ALL
        .into_iter()
        .map(|facet| {
            let mut content = Vec::new();
            let parameters = match facet {
                Facet::Setting => {
                    let setting = &facets.setting;
                    let mut rows = Rows::default();
                    rows.add("Scene", &setting.scene);
                    rows.add("Place", &setting.location);
                    rows.add("Unit", &setting.unit);
                    rows.add(
                        "Shooting day",
                        setting.day.map(words::day).unwrap_or_default(),
                    );
                    rows.add(
                        "Call",
                        setting
                            .call
                            .map(|at| words::moment(at, zone))
                            .unwrap_or_default(),
                    );
                    rows.add("Light", &setting.light);
                    rows.into(&mut content, "");
                    &setting.parameters
                }
                Facet::Action => {
                    paragraph(&mut content, "", &facets.action.summary);
                    steps(&mut content, "Steps and cues", &facets.action.steps);
                    let hazards = facets
                        .action
                        .hazards
                        .iter()
                        .map(|one| one.words().to_owned());
                    list(
                        &mut content,
                        "Hazards beyond the technique's own",
                        hazards.collect(),
                    );
                    let risks = facets.action.risks.iter().map(|one| {
                        let (before, after) = (one.before.code(), one.after.code());
                        format!("{}: {before} before, {after} after its controls", one.event)
                    });
                    list(
                        &mut content,
                        "Risks weighed, set out below",
                        risks.collect(),
                    );
                    paragraph(&mut content, "Abort", &facets.action.abort);
                    &facets.action.parameters
                }
                Facet::Rigging => {
                    paragraph(&mut content, "", &facets.rigging.method);
                    equipment(&mut content, case);
                    let rescue = &facets.rigging.rescue;
                    paragraph(&mut content, "Rescue", &rescue.method);
                    let mut rows = Rows::default();
                    let seconds = |value: Option<f64>| {
                        value
                            .map(|s| words::both(Quantity::Time, s))
                            .unwrap_or_default()
                    };
                    rows.add("Longest time allowed", seconds(rescue.limit_seconds));
                    rows.add("Last drill took", seconds(rescue.drilled_seconds));
                    rows.into(&mut content, "");
                    &facets.rigging.parameters
                }
                Facet::Effects => {
                    paragraph(&mut content, "", &facets.effects.method);
                    charges(&mut content, case);
                    paragraph(&mut content, "Suppression", &facets.effects.suppression);
                    &facets.effects.parameters
                }
                Facet::Vehicles => {
                    paragraph(&mut content, "", &facets.vehicles.method);
                    &facets.vehicles.parameters
                }
                Facet::Cast => {
                    cast(&mut content, case, names);
                    &facets.cast.parameters
                }
                Facet::Medical => {
                    paragraph(&mut content, "", &facets.medical.cover);
                    let mut rows = Rows::default();
                    rows.add("Ambulance", &facets.medical.ambulance);
                    rows.add("Hospital and route", &facets.medical.hospital);
                    rows.into(&mut content, "");
                    &facets.medical.parameters
                }
                Facet::Camera => {
                    cameras(&mut content, case);
                    paragraph(&mut content, "", &facets.camera.notes);
                    &facets.camera.parameters
                }
                Facet::Conditions => {
                    bands(&mut content, case);
                    list(
                        &mut content,
                        "Also stops work",
                        facets.conditions.stop_on.clone(),
                    );
                    &facets.conditions.parameters
                }
                Facet::Rehearsals => {
                    rungs(&mut content, case);
                    &NO_PARAMETERS
                }
            };
            inputs(&mut content, parameters, technique);
            Part {
                title: title(facet).into(),
                hash: hashes.get(&facet).cloned().unwrap_or_default(),
                remark: String::new(),
                content,
            }
        })
        .collect()
}

static NO_PARAMETERS: Parameters = BTreeMap::new();

/// A facet's heading.
pub(crate) fn title(facet: Facet) -> &'static str {
    match facet {
        Facet::Setting => "Setting",
        Facet::Action => "Action",
        Facet::Rigging => "Rigging",
        Facet::Effects => "Effects",
        Facet::Vehicles => "Vehicles",
        Facet::Cast => "Cast",
        Facet::Medical => "Medical",
        Facet::Camera => "Camera",
        Facet::Conditions => "Conditions",
        Facet::Rehearsals => "Rehearsals",
    }
}

/// Names and values, blanks left out.
#[derive(Default)]
struct Rows(Vec<Row>);

impl Rows {
    fn add(&mut self, label: &str, value: impl AsRef<str>) {
        if !value.as_ref().trim().is_empty() {
            self.0.push(Row::new(label, value.as_ref()));
        }
    }

    fn into(self, content: &mut Vec<Content>, heading: &str) {
        if !self.0.is_empty() {
            content.push(Content::Rows {
                heading: heading.into(),
                rows: self.0,
            });
        }
    }
}

fn paragraph(content: &mut Vec<Content>, heading: &str, text: &str) {
    if !text.trim().is_empty() {
        content.push(Content::Paragraph {
            heading: heading.into(),
            text: text.into(),
        });
    }
}

fn list(content: &mut Vec<Content>, heading: &str, items: Vec<String>) {
    if !items.is_empty() {
        content.push(Content::List {
            heading: heading.into(),
            items,
        });
    }
}

fn steps(content: &mut Vec<Content>, heading: &str, items: &[String]) {
    if !items.is_empty() {
        content.push(Content::Steps {
            heading: heading.into(),
            items: items.to_vec(),
        });
    }
}

fn table(
    content: &mut Vec<Content>,
    heading: &str,
    columns: &[&str],
    rows: Vec<Vec<String>>,
    note: &str,
) {
    if !rows.is_empty() {
        content.push(Content::Table {
            heading: heading.into(),
            columns: columns.iter().map(|one| (*one).to_owned()).collect(),
            rows,
            note: note.into(),
        });
    }
}

fn equipment(content: &mut Vec<Content>, case: &Case) {
    let rows = case
        .plan
        .facets
        .rigging
        .equipment
        .iter()
        .map(|item| {
            vec![
                item.name.clone(),
                item.serial.clone(),
                item.working_load.map_or("not stated".into(), |load| {
                    words::both(Quantity::Force, load)
                }),
                item.inspected_until.map_or("not stated".into(), words::day),
            ]
        })
        .collect();
    let columns = [
        "Equipment",
        "Serial",
        "Safe working load",
        "Inspected until",
    ];
    table(content, "Equipment", &columns, rows, "");
}

fn charges(content: &mut Vec<Content>, case: &Case) {
    let rows = case
        .plan
        .facets
        .effects
        .charges
        .iter()
        .map(|charge| {
            vec![
                charge.name.clone(),
                charge.count.to_string(),
                words::both(Quantity::Time, charge.lead_seconds),
                words::both(Quantity::Length, charge.stand_off),
                charge.given_by.clone(),
            ]
        })
        .collect();
    table(
        content,
        "Charges, as given by the licensed operator",
        &["Charge", "Count", "Lead time", "Stand-off", "Given by"],
        rows,
        "Nothing in this table was computed.",
    );
}

fn cast(content: &mut Vec<Content>, case: &Case, names: &BTreeMap<PersonId, String>) {
    for slot in &case.plan.facets.cast.slots {
        let person = slot
            .person
            .map(|id| names.get(&id).cloned().unwrap_or_else(|| id.to_string()))
            .unwrap_or_else(|| "nobody cast".into());
        let mut items = vec![format!("Cast: {person}")];
        if slot.kit_mass > 0.0 {
            items.push(format!(
                "Costume and kit: {}",
                words::both(Quantity::Mass, slot.kit_mass)
            ));
        }
        items.extend(slot.requirements.iter().map(words::requirement));
        list(content, &slot.name, items);
    }
}

fn cameras(content: &mut Vec<Content>, case: &Case) {
    let rows = case
        .plan
        .facets
        .camera
        .positions
        .iter()
        .map(|camera| {
            vec![
                camera.name.clone(),
                camera.place.clone(),
                camera.lens.clone(),
            ]
        })
        .collect();
    table(
        content,
        "Cameras",
        &["Camera", "Place", "Lens and frame rate"],
        rows,
        "",
    );
}

fn bands(content: &mut Vec<Content>, case: &Case) {
    let rows = case
        .plan
        .facets
        .conditions
        .bands
        .iter()
        .map(|band| {
            let edge = |value: Option<f64>| {
                value.map_or("none".into(), |value| words::reading(band.reading, value))
            };
            vec![
                words::named(&band.reading),
                edge(band.min),
                edge(band.max),
                format!("{} min", band.max_age_minutes),
            ]
        })
        .collect();
    let columns = ["Reading", "Least", "Most", "Oldest that counts"];
    table(content, "Bands", &columns, rows, "");
}

fn rungs(content: &mut Vec<Content>, case: &Case) {
    let rows = case
        .plan
        .facets
        .rehearsals
        .rungs
        .iter()
        .map(|rung| {
            vec![
                rung.name.replace('_', " "),
                rung.what.clone(),
                rung.good_runs.to_string(),
            ]
        })
        .collect();
    table(
        content,
        "Ladder",
        &["Rung", "What is done", "Good runs"],
        rows,
        "",
    );
}

fn inputs(content: &mut Vec<Content>, given: &Parameters, technique: Option<&dyn Technique>) {
    let mut rows = Vec::new();
    for (name, value) in given {
        let known =
            technique.and_then(|model| model.parameters().iter().find(|one| one.name == name));
        let title = known.map_or(name.as_str(), |one| one.title);
        let (value, other) = match (value, known.map(|one| &one.kind)) {
            (
                InputValue::Number { value, tolerance },
                Some(ParameterKind::Number {
                    quantity,
                    tolerance: usual,
                    ..
                }),
            ) => {
                let tolerance = tolerance.unwrap_or(*usual);
                (
                    with_tolerance(*quantity, *value, tolerance, words::metric),
                    with_tolerance(*quantity, *value, tolerance, words::imperial),
                )
            }
            (InputValue::Number { value, .. }, _) => (value.to_string(), String::new()),
            (InputValue::Choice(name), Some(ParameterKind::Choice { options, .. })) => {
                let title = options
                    .iter()
                    .find(|one| one.name == name)
                    .map(|one| one.title);
                (title.unwrap_or(name).to_owned(), String::new())
            }
            (InputValue::Choice(name), _) => (name.clone(), String::new()),
        };
        let other = if other == value { String::new() } else { other };
        rows.push(Row {
            label: title.into(),
            value,
            other,
        });
    }
    if !rows.is_empty() {
        content.push(Content::Rows {
            heading: "Inputs to the figures".into(),
            rows,
        });
    }
}

/// "30 m ± 0.2 m". A tolerance on a temperature is a difference, so it is told in kelvin steps.
pub(crate) fn with_tolerance(
    quantity: Quantity,
    value: f64,
    tolerance: f64,
    say: impl Fn(Quantity, f64) -> String,
) -> String {
    let told = say(quantity, value);
    if tolerance == 0.0 {
        return told;
    }
    if quantity == Quantity::Temperature {
        let step = (
            say(quantity, value + tolerance),
            say(quantity, value - tolerance),
        );
        return format!("{told} ({} to {})", step.1, step.0);
    }
    format!("{told} ± {}", say(quantity, tolerance))
}
