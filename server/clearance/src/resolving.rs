//! What settles a decline or a condition. Dissent is never overwritten: it stays on the record beside
//! what was written to resolve it.

use std::collections::BTreeSet;

use gagwright_casting::PersonId;
use jiff::Timestamp;
use serde::{Deserialize, Serialize};

use crate::{ids::RecordId, ids::SignOffId, policy::Role};

/// Who may settle what one role said.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields, default)]
pub struct Settling {
    /// Roles whose holders may resolve a decline in writing, after which anyone who holds the role may
    /// sign. Empty: only whoever declined can say otherwise.
    #[cfg_attr(feature = "openapi", schema(required = true, value_type = Vec<Role>))]
    pub declines: BTreeSet<Role>,
    /// Roles whose holders may say that a condition is met, beside the role that set it.
    #[cfg_attr(feature = "openapi", schema(required = true, value_type = Vec<Role>))]
    pub conditions: BTreeSet<Role>,
}

/// A decline resolved in writing.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct Resolution {
    /// Which.
    pub id: RecordId,
    /// The decline.
    pub signoff: SignOffId,
    /// Who resolved it.
    pub by: PersonId,
    /// Under which hat.
    pub role: Role,
    /// What was agreed, in words.
    pub text: String,
    /// When, server time.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = DateTime))]
    pub at: Timestamp,
}

#[cfg(test)]
#[path = "tests/resolving.rs"]
mod tests;
