//! A production's own values for limits of habit. Which limits there are, and what each is for, mechanics
//! says; this file only puts a production's values in their place and says who set them.

use std::collections::BTreeMap;

use gagwright_casting::PersonId;
use gagwright_mechanics::SetLimit;
use serde::{Deserialize, Serialize};

use crate::policy::Policy;

/// A production's own value for one limit.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct OwnLimit {
    /// The value, SI.
    pub value: f64,
    /// Why the production sets another, in a sentence.
    pub because: String,
    /// Who set it; the server fills it in when the policy comes into force.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "openapi", schema(nullable = false))]
    pub by: Option<PersonId>,
}

/// A production's own limits, by technique and then by the check's name.
pub type OwnLimits = BTreeMap<String, BTreeMap<String, OwnLimit>>;

/// What a production sets of a technique's limits, each with who set it and why. `name` says who somebody
/// is.
pub fn set(policy: &Policy, technique: &str, name: impl Fn(PersonId) -> String) -> Vec<SetLimit> {
    let own = policy.limits.get(technique).into_iter().flatten();
    own.map(|(check, own)| {
        let because = own.because.trim().trim_end_matches('.');
        SetLimit {
            check: check.clone(),
            value: own.value,
            said: match own.by {
                Some(by) => format!("{because} ({})", name(by)),
                None => because.to_owned(),
            },
        }
    })
    .collect()
}
