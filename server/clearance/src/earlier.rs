//! What earlier revisions said, as far as sign-offs that no longer match it need: a case carries these,
//! so that a phone can say what has changed since somebody signed and whether they accept it. Contents
//! count only when their hash is the one that was signed.

use std::collections::{BTreeMap, BTreeSet};

use gagwright_casting::{PersonId, SlotId};
use gagwright_mechanics::Facet;
use gagwright_trail::tree::Hash;
use serde::{Deserialize, Serialize};
use serde_json::Value;

use crate::{
    canonical::{canonical_bytes, facet_hashes},
    diff::{FacetChange, diff_values, facet_value},
    jws,
    plan::{FacetHashes, Facets, Plan},
    policy::Role,
    signoff::SignOff,
};

/// Facets of one earlier revision.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct EarlierFacets {
    /// The revision.
    pub revision: u32,
    /// Its contents, only those that the plan no longer has.
    #[cfg_attr(feature = "openapi", schema(value_type = std::collections::BTreeMap<Facet, serde_json::Value>))]
    pub facets: BTreeMap<Facet, Value>,
}

/// The revisions whose contents the judge asks for: those of each signer's newest word that are not the
/// plan's own revision.
pub fn revisions(signoffs: &[SignOff], current: u32) -> BTreeSet<u32> {
    let mut seen: BTreeSet<(Role, Option<SlotId>, PersonId)> = BTreeSet::new();
    let mut newest: Vec<&SignOff> = signoffs.iter().collect();
    newest.sort_by_key(|one| std::cmp::Reverse(one.leaf));
    newest
        .into_iter()
        .filter_map(|one| jws::read_unverified(&one.jws).ok())
        .filter(|one| seen.insert((one.role, one.slot, one.signer)))
        .map(|one| one.revision)
        .filter(|revision| *revision < current)
        .collect()
}

/// What a case carries of earlier plans: each facet that differs from the plan's own.
pub fn carried(plan: &Plan, earlier: impl IntoIterator<Item = Plan>) -> Vec<EarlierFacets> {
    let mut carried: Vec<EarlierFacets> = earlier
        .into_iter()
        .map(|old| EarlierFacets {
            revision: old.revision,
            facets: differing(&old.facets, &plan.facets),
        })
        .filter(|one| !one.facets.is_empty())
        .collect();
    carried.sort_by_key(|one| one.revision);
    carried
}

fn differing(old: &Facets, new: &Facets) -> BTreeMap<Facet, Value> {
    Facet::ALL
        .into_iter()
        .map(|facet| (facet, facet_value(old, facet)))
        .filter(|(facet, value)| *value != facet_value(new, *facet))
        .collect()
}

/// The content of a facet that was signed, from what a case carries; none when it is not there or its
/// hash is another.
pub(crate) fn signed<'a>(
    earlier: &'a [EarlierFacets],
    revision: u32,
    facet: Facet,
    hash: &str,
) -> Option<&'a Value> {
    let kept = earlier.iter().find(|one| one.revision == revision)?;
    let value = kept.facets.get(&facet)?;
    let bytes = canonical_bytes(value).ok()?;
    (Hash::of(&bytes).to_hex() == hash).then_some(value)
}

/// What has changed, field by field, since content with these hashes was signed, as far as the earlier
/// contents are at hand; and the facets that changed and whose earlier content is not.
pub fn changes(
    plan: &Plan,
    earlier: &[EarlierFacets],
    revision: u32,
    signed_hashes: &FacetHashes,
) -> (Vec<FacetChange>, Vec<Facet>) {
    let now = facet_hashes(&plan.facets).unwrap_or_default();
    let mut found = Vec::new();
    let mut unknown = Vec::new();
    for (facet, hash) in signed_hashes {
        if now.get(facet) == Some(hash) {
            continue;
        }
        match signed(earlier, revision, *facet, hash) {
            Some(before) => {
                let fields = diff_values(before, &facet_value(&plan.facets, *facet));
                if !fields.is_empty() {
                    found.push(FacetChange {
                        facet: *facet,
                        fields,
                    });
                }
            }
            None => unknown.push(*facet),
        }
    }
    (found, unknown)
}
