//! What has changed since somebody signed, told apart: what the role accepts in advance, what it does not,
//! and what the policy has it answer for since.

use gagwright_mechanics::Facet;

use super::bench::{Bench, Heard};
use crate::{
    accepted,
    diff::{FacetChange, diff_values, facet_value},
    earlier,
    policy::RolePolicy,
    said_changes, words,
};

/// The changes that bear on one sign-off.
#[derive(Default)]
pub(crate) struct Changes {
    /// Facets that are not as they were signed and not accepted so, in table order.
    pub facets: Vec<Facet>,
    /// Those of them that the role did not answer for when it signed.
    added: Vec<Facet>,
    /// A sentence for each change that the role accepts in advance.
    pub accepted: Vec<String>,
    /// A sentence for each change that it does not, as far as what was signed is at hand.
    said: Vec<String>,
}

/// What has changed since a sign-off was made, among all that its role answers for.
pub(crate) fn since(bench: &Bench<'_>, policy: &RolePolicy, heard: &Heard<'_>) -> Changes {
    let statement = &heard.statement;
    let case = bench.case;
    let mut changes = Changes::default();
    let mut told: Vec<FacetChange> = Vec::new();
    for facet in Facet::ALL {
        let signed = statement.facets.get(&facet);
        if !policy.covers.contains(&facet) && signed.is_none() {
            continue;
        }
        let Some(hash) = signed else {
            changes.facets.push(facet);
            changes.added.push(facet);
            continue;
        };
        if bench.hashes.get(&facet) == Some(hash) {
            continue;
        }
        let before = earlier::signed(&case.earlier, statement.revision, facet, hash);
        let fields =
            before.map(|before| diff_values(before, &facet_value(&case.plan.facets, facet)));
        let fields = fields.filter(|fields| !fields.is_empty());
        let accepted = match (&fields, bench.technique) {
            (Some(fields), Some(technique)) => {
                accepted::all(&case.policy, policy.role, technique, fields)
            }
            _ => None,
        };
        match accepted {
            Some(sentences) => changes.accepted.extend(sentences),
            None => {
                changes.facets.push(facet);
                told.extend(fields.map(|fields| FacetChange { facet, fields }));
            }
        }
    }
    changes.said = said_changes::sentences(
        bench.technique,
        &case.plan.facets.cast.slots,
        &told,
        &policy.title,
    );
    changes
}

impl Changes {
    /// Why a sign-off does not stand, as far as it follows from these.
    pub fn sentences(&self, name: &str, revision: u32, title: &str) -> Vec<String> {
        let changed: Vec<Facet> = self
            .facets
            .iter()
            .copied()
            .filter(|facet| !self.added.contains(facet))
            .collect();
        let mut said = Vec::new();
        if !changed.is_empty() {
            let have = if changed.len() == 1 { "has" } else { "have" };
            said.push(format!(
                "{} {have} changed since {name} signed revision {revision}.",
                words::capital(&words::facets(&changed)),
            ));
        }
        said.extend(self.said.iter().cloned());
        if !self.added.is_empty() {
            said.push(format!(
                "The policy now has {title} answer for {} too, which {name} did not sign.",
                words::facets(&self.added)
            ));
        }
        said
    }
}
