//! Reading a catalogue's two files, and refusing those that contradict themselves.

use std::collections::{BTreeMap, BTreeSet};

use serde::Deserialize;

use super::{Catalogue, CertificateKind, SkillKind, Validity};

/// Why a catalogue was refused.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum CatalogueError {
    /// The text is not the JSON a catalogue file is.
    #[error("{file} is not a catalogue file: {problem}")]
    Malformed {
        /// `certificates` or `skills`.
        file: &'static str,
        /// What the reader said.
        problem: String,
    },
    /// The same name twice.
    #[error("{file} lists `{name}` twice; keep one")]
    Twice {
        /// `certificates` or `skills`.
        file: &'static str,
        /// The name.
        name: String,
    },
    /// A kind says it satisfies one that does not exist, or itself.
    #[error("certificate kind `{kind}` says it satisfies `{satisfies}`, {problem}")]
    Satisfies {
        /// The kind that says so.
        kind: String,
        /// What it names.
        satisfies: String,
        /// Why that cannot be.
        problem: &'static str,
    },
    /// A figure that makes no sense.
    #[error("`{name}`: {problem}")]
    Figure {
        /// The kind or skill.
        name: String,
        /// What is wrong.
        problem: &'static str,
    },
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct CertificatesFile {
    version: String,
    #[allow(dead_code)] // for people who read the file
    about: String,
    kinds: Vec<CertificateKind>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct SkillsFile {
    #[allow(dead_code)]
    version: String,
    #[allow(dead_code)]
    about: String,
    mass_good_for_days: u32,
    #[allow(dead_code)]
    mass_note: String,
    skills: Vec<SkillKind>,
}

pub(super) fn read(certificates: &str, skills: &str) -> Result<Catalogue, CatalogueError> {
    let certificates: CertificatesFile = parse("certificates", certificates)?;
    let skills: SkillsFile = parse("skills", skills)?;
    let version = certificates.version;
    let certificates = by_name("certificates", certificates.kinds, |kind| &kind.kind)?;
    let mass_good_for_days = skills.mass_good_for_days;
    let skills = by_name("skills", skills.skills, |skill| &skill.name)?;
    check_figures(&certificates, &skills)?;
    let satisfied_by_holding = close(&certificates)?;
    Ok(Catalogue {
        version,
        mass_good_for_days,
        certificates,
        skills,
        satisfied_by_holding,
    })
}

fn parse<T: for<'a> Deserialize<'a>>(file: &'static str, text: &str) -> Result<T, CatalogueError> {
    serde_json::from_str(text).map_err(|error| CatalogueError::Malformed {
        file,
        problem: error.to_string(),
    })
}

fn by_name<T>(
    file: &'static str,
    things: Vec<T>,
    name: impl Fn(&T) -> &String,
) -> Result<BTreeMap<String, T>, CatalogueError> {
    let mut map = BTreeMap::new();
    for thing in things {
        let key = name(&thing).clone();
        if map.insert(key.clone(), thing).is_some() {
            return Err(CatalogueError::Twice { file, name: key });
        }
    }
    Ok(map)
}

/// Figures that would make a rule mean nothing are refused rather than applied.
fn check_figures(
    certificates: &BTreeMap<String, CertificateKind>,
    skills: &BTreeMap<String, SkillKind>,
) -> Result<(), CatalogueError> {
    let wrong = |name: &str, problem| {
        Err(CatalogueError::Figure {
            name: name.into(),
            problem,
        })
    };
    for kind in certificates.values() {
        if matches!(kind.validity, Validity::Months(months) if !(1..=1200).contains(&months)) {
            return wrong(&kind.kind, "validity must be 1 to 1200 months");
        }
        if kind.renewal_lead_days.is_some_and(|days| days > 3650) {
            return wrong(&kind.kind, "renewal_lead_days must be at most 3650");
        }
        if let Some(clock) = &kind.use_clock {
            if !(1..=1200).contains(&clock.unused_months) {
                return wrong(&kind.kind, "use_clock.unused_months must be 1 to 1200");
            }
            if clock.lead_days > 3650 {
                return wrong(&kind.kind, "use_clock.lead_days must be at most 3650");
            }
        }
        if kind.source.trim().is_empty() {
            return wrong(&kind.kind, "source must say where the rule comes from");
        }
    }
    for skill in skills.values() {
        if skill.recency_days == 0 {
            return wrong(&skill.name, "recency_days must be at least 1");
        }
    }
    Ok(())
}

/// Follows `satisfies` to the end, so that level 3 stands in for level 1 by way of level 2.
fn close(
    kinds: &BTreeMap<String, CertificateKind>,
) -> Result<BTreeMap<String, BTreeSet<String>>, CatalogueError> {
    let mut closed = BTreeMap::new();
    for (name, kind) in kinds {
        let mut reached = BTreeSet::from([name.clone()]);
        let mut waiting: Vec<&CertificateKind> = vec![kind];
        while let Some(next) = waiting.pop() {
            for lower in &next.satisfies {
                let refused = |problem| CatalogueError::Satisfies {
                    kind: next.kind.clone(),
                    satisfies: lower.clone(),
                    problem,
                };
                if lower == name {
                    return Err(refused(
                        "which comes back to itself; a kind cannot be below itself",
                    ));
                }
                let known = kinds
                    .get(lower)
                    .ok_or_else(|| refused("which is not in the catalogue"))?;
                if reached.insert(lower.clone()) {
                    waiting.push(known);
                }
            }
        }
        closed.insert(name.clone(), reached);
    }
    Ok(closed)
}
