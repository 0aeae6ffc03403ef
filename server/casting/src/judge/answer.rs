//! What the rule of one requirement answers, before it is put beside the requirement as a finding.

use jiff::civil::Date;

use crate::requirement::{Context, Cure, FindingStanding};

/// The answer of one rule.
pub(super) struct Answer {
    pub(super) standing: FindingStanding,
    pub(super) reason: String,
    pub(super) cure: Option<Cure>,
    /// Parts of the fit, each 0 to 1; empty for rules that do not rank.
    pub(super) fit: Vec<f64>,
}

impl Answer {
    pub(super) fn met(reason: String) -> Self {
        Self {
            standing: FindingStanding::Met,
            reason,
            cure: None,
            fit: Vec::new(),
        }
    }

    pub(super) fn not_met(reason: String) -> Self {
        Self {
            standing: FindingStanding::NotMet,
            reason,
            cure: None,
            fit: Vec::new(),
        }
    }

    /// Curable by doing `what` on or before `by`; not met when that day is already past on the day
    /// of asking.
    pub(super) fn curable(reason: String, what: String, by: Date, context: &Context) -> Self {
        if context.today.is_some_and(|today| today > by) {
            return Self::not_met(format!(
                "{reason}; too late for {what}, the last day was {by}"
            ));
        }
        Self {
            standing: FindingStanding::Curable,
            reason,
            cure: Some(Cure { what, by }),
            fit: Vec::new(),
        }
    }

    /// Adds parts of the fit. A part that is not a number, from figures that are none, counts
    /// nothing.
    pub(super) fn ranked(mut self, parts: &[f64]) -> Self {
        let met = self.standing == FindingStanding::Met;
        self.fit = parts
            .iter()
            .map(|part| {
                if met && part.is_finite() {
                    part.clamp(0.0, 1.0)
                } else {
                    0.0
                }
            })
            .collect();
        self
    }
}
