//! Limits that are habit or policy and not physics or law: data that a production may edit. Each technique
//! brings its own with it, from `seed-data/catalogue/limits`.

use std::{borrow::Cow, collections::BTreeMap, sync::OnceLock};

use serde::{Deserialize, Serialize};

use crate::{
    assessment::{Source, Standing},
    judging::common_practice,
    registry::techniques,
    units::Quantity,
};

/// One limit of habit or policy.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct Policy {
    /// The name of the check that it limits.
    pub name: String,
    /// The kind of quantity.
    pub quantity: Quantity,
    /// The limit, SI.
    pub value: f64,
    /// Why it is what it is, in a sentence.
    pub why: String,
    /// Who set it: the program's own habit of the trade until a production says otherwise.
    #[serde(default = "common_practice")]
    pub source: Source,
}

/// A production's own value for one limit of a technique.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct SetLimit {
    /// The name of the check that it limits.
    pub check: String,
    /// The value, SI.
    pub value: f64,
    /// Who set it and why, as the check's source says it.
    pub said: String,
}

/// The policies of one technique, by the check's name.
pub type Policies = BTreeMap<String, Policy>;

/// The policies of every technique.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Limits(BTreeMap<String, Policies>);

impl Limits {
    /// Those that come with the program. A technique whose data cannot be read has none, and every check
    /// that needs one is then unknown.
    pub fn built_in() -> &'static Limits {
        static BUILT_IN: OnceLock<Limits> = OnceLock::new();
        BUILT_IN.get_or_init(|| {
            let mut limits = Limits::default();
            for technique in techniques() {
                let rows: Vec<Policy> =
                    serde_json::from_str(technique.policy()).unwrap_or_default();
                limits.0.insert(
                    technique.name().to_owned(),
                    rows.into_iter()
                        .map(|row| (row.name.clone(), row))
                        .collect(),
                );
            }
            limits
        })
    }

    /// A technique's policies.
    pub fn of(&self, technique: &str) -> Policies {
        self.0.get(technique).cloned().unwrap_or_default()
    }

    /// The program's own limits with some of one technique's set by a production. What the technique has no
    /// limit for limits nothing.
    pub fn set(technique: &str, own: &[SetLimit]) -> Cow<'static, Limits> {
        let mut limits = Cow::Borrowed(Limits::built_in());
        for one in own {
            if let Some(with) = limits.with(technique, &one.check, one.value, &one.said) {
                limits = Cow::Owned(with);
            }
        }
        limits
    }

    /// The same limits with one of them set by a production. None when there is no such limit, or when the
    /// value is not a finite number.
    #[must_use]
    pub fn with(&self, technique: &str, check: &str, value: f64, set_by: &str) -> Option<Limits> {
        let mut limits = self.clone();
        let policy = limits.0.get_mut(technique)?.get_mut(check)?;
        if !value.is_finite() {
            return None;
        }
        policy.value = value;
        policy.source = Source {
            document: set_by.to_owned(),
            clause: None,
            jurisdiction: None,
            standing: Standing::Production,
        };
        Some(limits)
    }
}
