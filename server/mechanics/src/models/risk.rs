//! The risk matrix of MIL-STD-882E: how bad by how likely gives a level. It weighs nothing that was not
//! written down by a person, and it permits nothing: a score is a prompt, never a permit.

use serde::{Deserialize, Serialize};

/// How bad the worst credible outcome is: severity categories 1 to 4 of MIL-STD-882E, table I.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(rename_all = "snake_case")]
pub enum Severity {
    /// 1: somebody could die or be permanently and wholly disabled.
    Catastrophic,
    /// 2: permanent partial disability, or several people in hospital.
    Critical,
    /// 3: an injury that costs days of work.
    Marginal,
    /// 4: an injury that costs no day of work.
    Negligible,
}

impl Severity {
    /// Every category, the worst first.
    pub const ALL: [Severity; 4] = [
        Severity::Catastrophic,
        Severity::Critical,
        Severity::Marginal,
        Severity::Negligible,
    ];

    /// The category's number.
    pub fn number(self) -> char {
        match self {
            Severity::Catastrophic => '1',
            Severity::Critical => '2',
            Severity::Marginal => '3',
            Severity::Negligible => '4',
        }
    }

    /// The category's name, as running text has it.
    pub fn words(self) -> &'static str {
        match self {
            Severity::Catastrophic => "catastrophic",
            Severity::Critical => "critical",
            Severity::Marginal => "marginal",
            Severity::Negligible => "negligible",
        }
    }
}

/// How likely that outcome is: probability levels A to F of MIL-STD-882E, table II.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(rename_all = "snake_case")]
pub enum Probability {
    /// A: to be expected often.
    Frequent,
    /// B: will happen several times.
    Probable,
    /// C: will happen some time.
    Occasional,
    /// D: unlikely, and possible.
    Remote,
    /// E: so unlikely that it may be assumed not to happen.
    Improbable,
    /// F: cannot happen, because the hazard is gone.
    Eliminated,
}

impl Probability {
    /// Every level, the likeliest first.
    pub const ALL: [Probability; 6] = [
        Probability::Frequent,
        Probability::Probable,
        Probability::Occasional,
        Probability::Remote,
        Probability::Improbable,
        Probability::Eliminated,
    ];

    /// The level's letter.
    pub fn letter(self) -> char {
        match self {
            Probability::Frequent => 'A',
            Probability::Probable => 'B',
            Probability::Occasional => 'C',
            Probability::Remote => 'D',
            Probability::Improbable => 'E',
            Probability::Eliminated => 'F',
        }
    }

    /// The level's name, as running text has it.
    pub fn words(self) -> &'static str {
        match self {
            Probability::Frequent => "frequent",
            Probability::Probable => "probable",
            Probability::Occasional => "occasional",
            Probability::Remote => "remote",
            Probability::Improbable => "improbable",
            Probability::Eliminated => "eliminated",
        }
    }
}

/// What the matrix answers, the least first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(rename_all = "snake_case")]
#[allow(missing_docs)] // the standard's names
pub enum RiskLevel {
    Eliminated,
    Low,
    Medium,
    Serious,
    High,
}

impl RiskLevel {
    /// The level's name, as running text has it.
    pub fn words(self) -> &'static str {
        match self {
            RiskLevel::Eliminated => "eliminated",
            RiskLevel::Low => "low",
            RiskLevel::Medium => "medium",
            RiskLevel::Serious => "serious",
            RiskLevel::High => "high",
        }
    }
}

/// The level of a risk: MIL-STD-882E, table III. The cell of a marginal outcome that is improbable is
/// from memory (a public copy has low there); the standard before it, 882D, also bands it as medium.
pub fn level(severity: Severity, probability: Probability) -> RiskLevel {
    use Probability as P;
    use RiskLevel::{Eliminated, High, Low, Medium, Serious};
    use Severity as S;
    match (probability, severity) {
        (P::Eliminated, _) => Eliminated,
        (P::Frequent | P::Probable, S::Catastrophic | S::Critical)
        | (P::Occasional, S::Catastrophic) => High,
        (P::Frequent | P::Probable, S::Marginal)
        | (P::Occasional, S::Critical)
        | (P::Remote, S::Catastrophic) => Serious,
        (P::Frequent | P::Probable, S::Negligible)
        | (P::Occasional, S::Marginal)
        | (P::Remote, S::Critical | S::Marginal)
        | (P::Improbable, S::Catastrophic | S::Critical | S::Marginal) => Medium,
        (P::Occasional | P::Remote | P::Improbable, S::Negligible) => Low,
    }
}

/// The code people read for a risk: "1C" is catastrophic and occasional.
pub fn code(severity: Severity, probability: Probability) -> String {
    format!("{}{}", severity.number(), probability.letter())
}
