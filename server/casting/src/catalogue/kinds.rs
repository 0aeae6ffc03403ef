//! The shapes of what a catalogue lists. Knows no rule: the judge applies them.

use serde::{Deserialize, Serialize};

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
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub renewal_lead_days: Option<u32>,
    /// A clock that runs on use, beside the date on the document.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub use_clock: Option<UseClock>,
    /// Lower kinds it stands in for.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub satisfies: Vec<String>,
    /// Categories or classes it comes in; empty where it has none or they are free.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub categories: Vec<String>,
    /// What else to know.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(required = true))]
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
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema), schema(as = RuleStanding))]
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
