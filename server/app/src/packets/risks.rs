//! The hazards of a gag weighed, as what a packet prints. Every level is written out as a word, so that a
//! photocopy says as much as the screen does.

use gagwright_casting::words::capital;
use gagwright_clearance::{
    Hazard, Policy, Rating, Risk,
    risk::{ControlKind, PROMPT},
};
use gagwright_mechanics::models::risk::{self, Probability, Severity};
use gagwright_packet::document::{Content, Part, Row};

/// One part for each risk, then all of them in the matrix. Empty where nothing was weighed.
pub(super) fn parts(risks: &[Risk], hazards: &[Hazard], policy: &Policy) -> Vec<Part> {
    if risks.is_empty() {
        return Vec::new();
    }
    let mut parts: Vec<Part> = risks
        .iter()
        .enumerate()
        .map(|(at, one)| part(at + 1, one, policy))
        .collect();
    parts.push(matrix(risks, hazards));
    parts
}

fn part(number: usize, one: &Risk, policy: &Policy) -> Part {
    let mut content = vec![Content::Rows {
        heading: String::new(),
        rows: vec![
            Row::new("Hazard", one.hazard.words()),
            Row::new("With nothing done", rated(one.before)),
            Row::new("With the controls", rated(one.after)),
            Row::new("Who answers", policy.title(one.owner)),
        ],
    }];
    let controls: Vec<String> = one
        .controls
        .iter()
        .map(|control| format!("{}: {}", kind(control.kind), control.what))
        .collect();
    if !controls.is_empty() {
        content.push(Content::Steps {
            heading: "Controls, the strongest kind first".into(),
            items: controls,
        });
    }
    Part {
        title: format!("{number}. {}", one.event),
        content,
        ..Part::default()
    }
}

/// "HIGH (1C): catastrophic, occasional".
fn rated(rating: Rating) -> String {
    format!(
        "{} ({}): {}, {}",
        rating.level().words().to_uppercase(),
        rating.code(),
        rating.severity.words(),
        rating.probability.words()
    )
}

fn kind(kind: ControlKind) -> String {
    capital(kind.words())
}

/// The whole table, with the numbers of the risks where they stand.
fn matrix(risks: &[Risk], hazards: &[Hazard]) -> Part {
    let mut columns = vec!["".to_owned()];
    columns.extend(Severity::ALL.map(|one| format!("{} {}", one.number(), capital(one.words()))));
    let rows = Probability::ALL
        .iter()
        .map(|probability| {
            let mut row = vec![format!(
                "{} {}",
                probability.letter(),
                capital(probability.words())
            )];
            row.extend(Severity::ALL.map(|severity| cell(risks, severity, *probability)));
            row
        })
        .collect();
    let mut content = vec![Content::Table {
        heading: String::new(),
        columns,
        rows,
        note: format!(
            "{PROMPT} Levels by MIL-STD-882E, table III. Numbers are the risks above, before their \
             controls and after."
        ),
    }];
    let unweighed: Vec<String> = hazards
        .iter()
        .filter(|hazard| !risks.iter().any(|one| one.hazard == **hazard))
        .map(|hazard| hazard.words().to_owned())
        .collect();
    if !unweighed.is_empty() {
        content.push(Content::List {
            heading: "Hazards of this gag not weighed here".into(),
            items: unweighed,
        });
    }
    Part {
        title: "Where they stand".into(),
        content,
        ..Part::default()
    }
}

/// "High; before 1, 2; after 3".
fn cell(risks: &[Risk], severity: Severity, probability: Probability) -> String {
    let here = |rating: Rating| rating.severity == severity && rating.probability == probability;
    let numbers = |of: fn(&Risk) -> Rating| -> Vec<String> {
        let numbered = risks.iter().enumerate();
        numbered
            .filter(|(_, one)| here(of(one)))
            .map(|(at, _)| (at + 1).to_string())
            .collect()
    };
    let level = risk::level(severity, probability);
    let mut text = capital(level.words());
    for (word, found) in [
        ("before", numbers(|one| one.before)),
        ("after", numbers(|one| one.after)),
    ] {
        if !found.is_empty() {
            text.push_str(&format!("; {word} {}", found.join(", ")));
        }
    }
    text
}

#[cfg(test)]
mod tests {
    use gagwright_clearance::{Control, Role};

    use super::*;

    fn rated(severity: Severity, probability: Probability) -> Rating {
        Rating {
            severity,
            probability,
        }
    }

    fn risks() -> Vec<Risk> {
        vec![Risk {
            hazard: Hazard::Height,
            event: "She misses the bag".into(),
            before: rated(Severity::Catastrophic, Probability::Occasional),
            controls: vec![Control {
                kind: ControlKind::Engineer,
                what: "a wider bag".into(),
            }],
            after: rated(Severity::Catastrophic, Probability::Improbable),
            owner: Role::Rigging,
        }]
    }

    fn all(parts: &[Part]) -> String {
        serde_json::to_string(parts).unwrap()
    }

    /// MIL-STD-882E, table III: 1C is high, 1E is medium.
    #[test]
    fn levels_codes_and_who_answers_are_in_words() {
        let parts = parts(&risks(), &[Hazard::Height], Policy::built_in());
        let text = all(&parts);
        for said in [
            "1. She misses the bag",
            "HIGH (1C): catastrophic, occasional",
            "MEDIUM (1E): catastrophic, improbable",
            "Engineer: a wider bag",
            "Key rigger",
            "High; before 1",
            "Medium; after 1",
            PROMPT,
        ] {
            assert!(text.contains(said), "{said} is not in {text}");
        }
        assert!(!text.contains("not weighed"), "{text}");
    }

    #[test]
    fn a_hazard_that_nobody_weighed_is_named() {
        let hazards = [Hazard::Height, Hazard::Fire];
        let text = all(&parts(&risks(), &hazards, Policy::built_in()));
        assert!(text.contains("not weighed here"), "{text}");
        assert!(text.contains("\"fire\""), "{text}");
    }

    #[test]
    fn nothing_weighed_prints_no_page() {
        assert_eq!(parts(&[], &[Hazard::Fire], Policy::built_in()), vec![]);
    }
}
