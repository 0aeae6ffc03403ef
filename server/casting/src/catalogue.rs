//! What kinds of certificate and skill exist, and the rules that hang on a kind rather than a
//! person: how long it counts, how long a renewal takes, whether its clock runs on use, and which
//! lower kinds it satisfies.
//!
//! This module knows no person and no slot's history; it only reads the catalogue's own text. The
//! built-in catalogue is `seed-data/catalogue/{certificates,skills}.json`, compiled in so that a
//! phone with no signal judges by the same rules as the server.

mod kinds;
mod read;

use std::{
    collections::{BTreeMap, BTreeSet},
    sync::OnceLock,
};

pub use kinds::{CertificateKind, SkillKind, Standing, UseClock, Validity};
pub use read::CatalogueError;

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
    /// When a file is not well formed, a name is there twice, or a kind names one that does not
    /// exist.
    pub fn read(certificates: &str, skills: &str) -> Result<Self, CatalogueError> {
        read::read(certificates, skills)
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

    /// Whether holding `held` satisfies a call for `wanted`: the same kind, or one that stands in
    /// for it at any remove. Kinds the catalogue does not know satisfy nothing.
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

    /// The categories that the named kinds come in, or none when any of them leaves its categories
    /// free.
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
