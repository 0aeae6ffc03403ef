//! What kinds of certificate and skill exist, and the rules that hang on a kind rather than a person:
//! how long it counts, how long a renewal takes, whether its clock runs on use, and which lower kinds it
//! satisfies.
//!
//! This module knows no person and no slot's history; it only reads the catalogue's own text. The built-in
//! catalogue is `seed-data/catalogue/{certificates,skills}.json`, compiled in so that a phone with no signal
//! judges by the same rules as the server.

use std::{
    collections::{BTreeMap, BTreeSet},
    sync::OnceLock,
};

use serde::{Deserialize, Serialize};

use crate::{
    nearest::nearest,
    requirement::{Requirement, Slot},
};

const CERTIFICATES: &str = include_str!("../../../seed-data/catalogue/certificates.json");
const SKILLS: &str = include_str!("../../../seed-data/catalogue/skills.json");

/// Every kind of certificate and every skill that casting knows, checked for consistency.
#[derive(Clone, Debug, PartialEq)]
pub struct Catalogue {
    version: String,
    mass_good_for_days: u32,
    certificates: BTreeMap<String, CertificateKind>,
    skills: BTreeMap<String, SkillKind>,
    /// For each kind, every kind that holding it satisfies: itself and all below it.
    satisfied_by_holding: BTreeMap<String, BTreeSet<String>>,
}

/// One kind of certificate.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct CertificateKind {
    /// Machine name, for example `rope_access_3`.
    pub kind: String,
    /// What people read, in running text.
    pub title: String,
    /// The scheme it belongs to, described.
    pub scheme: String,
    /// How long it counts.
    pub validity: Validity,
    /// Days a renewal usually takes; none: it cannot be renewed, only earned again.
    pub renewal_lead_days: Option<u32>,
    /// A clock that runs on use, beside the date on the document.
    #[serde(default)]
    pub use_clock: Option<UseClock>,
    /// Lower kinds it stands in for.
    #[serde(default)]
    pub satisfies: Vec<String>,
    /// Categories or classes it comes in; empty where it has none or they are free.
    #[serde(default)]
    pub categories: Vec<String>,
    /// What else to know.
    #[serde(default)]
    pub note: Option<String>,
    /// Where the rule comes from.
    pub standing: Standing,
    /// The document, or that it is common practice.
    pub source: String,
}

/// How long a certificate counts when the document itself carries no date.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(rename_all = "snake_case")]
pub enum Validity {
    /// So many months from issue.
    Months(u32),
    /// It does not run out.
    NoExpiry,
    /// Only the document says; with no date recorded it proves nothing.
    AsPrinted,
}

/// A clock that runs on use: after so many unused months the holder needs something more.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct UseClock {
    /// Longest gap in whole months; exactly this many is still in time.
    pub unused_months: u32,
    /// What starts the clock again, as a noun phrase.
    pub cure: String,
    /// Days that takes to arrange.
    pub lead_days: u32,
    /// Where the rule comes from.
    pub standing: Standing,
    /// The document, or that it is common practice.
    pub source: String,
}

/// Whether a rule was read in a public text or is habit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(rename_all = "snake_case")]
pub enum Standing {
    /// Read in a public text, named in `source`.
    PublicText,
    /// Habit of the trade: a default that the production may change.
    CommonPractice,
}

/// One skill.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct SkillKind {
    /// Machine name, for example `high_fall`.
    pub name: String,
    /// What people read, in running text.
    pub title: String,
    /// Group in the trade's taxonomy: body, heights, vehicles ...
    pub group: String,
    /// Default longest gap between last use or assessment and the shooting day.
    pub recency_days: u32,
    /// Whether a mistake in it is likely to be grave.
    pub high_consequence: bool,
    /// Where `recency_days` comes from.
    pub standing: Standing,
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

/// A name in a slot's requirements that the catalogue does not have.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("requirement {}: {problem}; {fix}", .requirement + 1)]
pub struct UnknownName {
    /// Place of the requirement in the slot's list, from 0.
    pub requirement: usize,
    /// Place of the field in it: `name`, `category`, or `any_of/0`, `any_of/1` ...
    pub field: String,
    /// What is wrong.
    pub problem: String,
    /// What to write instead.
    pub fix: String,
}

impl Catalogue {
    /// The catalogue that comes with Gagwright.
    #[must_use]
    pub fn built_in() -> &'static Self {
        static BUILT_IN: OnceLock<Catalogue> = OnceLock::new();
        #[expect(
            clippy::expect_used,
            reason = "the text is compiled in and a test reads it: this is no input from outside"
        )]
        BUILT_IN.get_or_init(|| {
            Self::read(CERTIFICATES, SKILLS).expect("the built-in catalogue is consistent")
        })
    }

    /// Reads a catalogue from the text of its two files and checks that it is consistent.
    ///
    /// # Errors
    ///
    /// When a file is not well formed, a name is there twice, or a kind names one that does not exist.
    pub fn read(certificates: &str, skills: &str) -> Result<Self, CatalogueError> {
        let certificates: CertificatesFile = parse("certificates", certificates)?;
        let skills: SkillsFile = parse("skills", skills)?;
        let version = certificates.version;
        let certificates = by_name("certificates", certificates.kinds, |kind| &kind.kind)?;
        let mass_good_for_days = skills.mass_good_for_days;
        let skills = by_name("skills", skills.skills, |skill| &skill.name)?;
        check_figures(&certificates, &skills)?;
        let satisfied_by_holding = close(&certificates)?;
        Ok(Self {
            version,
            mass_good_for_days,
            certificates,
            skills,
            satisfied_by_holding,
        })
    }

    /// The catalogue's version.
    #[must_use]
    pub fn version(&self) -> &str {
        &self.version
    }

    /// Days after which a weighed mass is too old to rig by (common practice).
    #[must_use]
    pub fn mass_good_for_days(&self) -> u32 {
        self.mass_good_for_days
    }

    /// A kind of certificate by its machine name.
    #[must_use]
    pub fn certificate(&self, kind: &str) -> Option<&CertificateKind> {
        self.certificates.get(kind)
    }

    /// A skill by its machine name.
    #[must_use]
    pub fn skill(&self, name: &str) -> Option<&SkillKind> {
        self.skills.get(name)
    }

    /// Every kind of certificate, by machine name.
    pub fn certificates(&self) -> impl Iterator<Item = &CertificateKind> {
        self.certificates.values()
    }

    /// Every skill, by machine name.
    pub fn skills(&self) -> impl Iterator<Item = &SkillKind> {
        self.skills.values()
    }

    /// Whether holding `held` satisfies a call for `wanted`: the same kind, or one that stands in for it at
    /// any remove. Kinds the catalogue does not know satisfy nothing.
    #[must_use]
    pub fn satisfies(&self, held: &str, wanted: &str) -> bool {
        self.satisfied_by_holding
            .get(held)
            .is_some_and(|kinds| kinds.contains(wanted))
    }

    /// What people read for a kind of certificate; the machine name when it is unknown.
    #[must_use]
    pub fn certificate_title<'a>(&'a self, kind: &'a str) -> &'a str {
        self.certificate(kind).map_or(kind, |known| &known.title)
    }

    /// What people read for a skill; the machine name when it is unknown.
    #[must_use]
    pub fn skill_title<'a>(&'a self, name: &'a str) -> &'a str {
        self.skill(name).map_or(name, |known| &known.title)
    }

    /// The known kind of certificate nearest to a mistyped one.
    #[must_use]
    pub fn nearest_certificate(&self, kind: &str) -> Option<&str> {
        nearest(kind, self.certificates.keys().map(String::as_str))
    }

    /// The known skill nearest to a mistyped one.
    #[must_use]
    pub fn nearest_skill(&self, name: &str) -> Option<&str> {
        nearest(name, self.skills.keys().map(String::as_str))
    }

    /// Every name in a slot's requirements that the catalogue does not have.
    #[must_use]
    pub fn unknown_names(&self, slot: &Slot) -> Vec<UnknownName> {
        let mut unknown = Vec::new();
        for (requirement, wanted) in slot.requirements.iter().enumerate() {
            match wanted {
                Requirement::Skill { name, .. } if self.skill(name).is_none() => {
                    unknown.push(UnknownName {
                        requirement,
                        field: "name".into(),
                        problem: format!("there is no skill `{name}` in the catalogue"),
                        fix: suggestion(self.nearest_skill(name)),
                    });
                }
                Requirement::Certificate {
                    any_of, category, ..
                } => {
                    if any_of.is_empty() {
                        unknown.push(UnknownName {
                            requirement,
                            field: "any_of".into(),
                            problem: "no kind of certificate is named".into(),
                            fix: "name at least one".into(),
                        });
                    }
                    for (place, kind) in any_of.iter().enumerate() {
                        if self.certificate(kind).is_none() {
                            unknown.push(UnknownName {
                                requirement,
                                field: format!("any_of/{place}"),
                                problem: format!(
                                    "there is no certificate kind `{kind}` in the catalogue"
                                ),
                                fix: suggestion(self.nearest_certificate(kind)),
                            });
                        }
                    }
                    if let Some(category) = category
                        && let Some(known) = self.closed_categories(any_of)
                        && !known.iter().any(|known| same_category(known, category))
                    {
                        unknown.push(UnknownName {
                            requirement,
                            field: "category".into(),
                            problem: format!("`{category}` is not a category of these kinds"),
                            fix: format!("use one of {}", known.join(", ")),
                        });
                    }
                }
                _ => {}
            }
        }
        unknown
    }

    /// The categories that the named kinds come in, or none when any of them leaves its categories free.
    fn closed_categories<'a>(&'a self, kinds: &[String]) -> Option<Vec<&'a str>> {
        let mut all = Vec::new();
        for kind in kinds {
            let known = self.certificate(kind)?;
            if known.categories.is_empty() {
                return None;
            }
            all.extend(known.categories.iter().map(String::as_str));
        }
        Some(all)
    }
}

/// Whether two categories are the same, whatever the case and the space around them.
pub(crate) fn same_category(a: &str, b: &str) -> bool {
    a.trim().to_lowercase() == b.trim().to_lowercase()
}

fn suggestion(nearest: Option<&str>) -> String {
    nearest.map_or_else(
        || "use a name from the catalogue".into(),
        |nearest| format!("did you mean `{nearest}`?"),
    )
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
