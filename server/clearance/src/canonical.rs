//! RFC 8785 canonical bytes of facets, and the hashes made from them: a sign-off names these, so a
//! change in one facet leaves the others' sign-offs standing.

use std::collections::BTreeSet;

pub use gagwright_trail::canonical::{CanonicalError, canonical_bytes, from_canonical_bytes};
use gagwright_trail::tree::{Hash, leaf_hash, root};

use crate::{
    Facet,
    plan::{FacetHashes, Facets},
};

/// The RFC 8785 bytes of one facet.
///
/// # Errors
/// For numbers that are not finite and integers beyond 2^53.
pub fn facet_bytes(facets: &Facets, facet: Facet) -> Result<Vec<u8>, CanonicalError> {
    match facet {
        Facet::Setting => canonical_bytes(&facets.setting),
        Facet::Action => canonical_bytes(&facets.action),
        Facet::Rigging => canonical_bytes(&facets.rigging),
        Facet::Effects => canonical_bytes(&facets.effects),
        Facet::Vehicles => canonical_bytes(&facets.vehicles),
        Facet::Cast => canonical_bytes(&facets.cast),
        Facet::Medical => canonical_bytes(&facets.medical),
        Facet::Camera => canonical_bytes(&facets.camera),
        Facet::Conditions => canonical_bytes(&facets.conditions),
        Facet::Rehearsals => canonical_bytes(&facets.rehearsals),
    }
}

/// SHA-256 of each facet's canonical bytes, lower-case hex.
///
/// # Errors
/// As [`facet_bytes`].
pub fn facet_hashes(facets: &Facets) -> Result<FacetHashes, CanonicalError> {
    Facet::ALL
        .into_iter()
        .map(|facet| Ok((facet, Hash::of(&facet_bytes(facets, facet)?).to_hex())))
        .collect()
}

/// The plan's digest: the RFC 6962 root over the facets' canonical bytes in table order, hex.
///
/// # Errors
/// As [`facet_bytes`].
pub fn plan_digest(facets: &Facets) -> Result<String, CanonicalError> {
    let leaves: Result<Vec<Hash>, CanonicalError> = Facet::ALL
        .into_iter()
        .map(|facet| Ok(leaf_hash(&facet_bytes(facets, facet)?)))
        .collect();
    Ok(root(&leaves?).to_hex())
}

/// The hash of each facet and the plan's digest, from the same canonical bytes.
///
/// # Errors
/// As [`facet_bytes`].
pub fn hashes_and_digest(facets: &Facets) -> Result<(FacetHashes, String), CanonicalError> {
    let mut hashes = FacetHashes::new();
    let mut leaves = Vec::new();
    for facet in Facet::ALL {
        let bytes = facet_bytes(facets, facet)?;
        hashes.insert(facet, Hash::of(&bytes).to_hex());
        leaves.push(leaf_hash(&bytes));
    }
    Ok((hashes, root(&leaves).to_hex()))
}

/// What a role signs: the plan's digest, and the hashes of the facets that the role answers for.
///
/// # Errors
/// As [`facet_bytes`].
pub fn signed_content(
    facets: &Facets,
    covers: &BTreeSet<Facet>,
) -> Result<(String, FacetHashes), CanonicalError> {
    let (mut hashes, digest) = hashes_and_digest(facets)?;
    hashes.retain(|facet, _| covers.contains(facet));
    Ok((digest, hashes))
}

#[cfg(test)]
mod tests {
    use gagwright_mechanics::InputValue;

    use super::*;

    #[test]
    fn the_empty_plan_has_the_digest_another_program_gives() {
        // Python's hashlib over the ten empty facets, spelled out by hand from RFC 8785.
        let facets = Facets::default();
        assert_eq!(
            String::from_utf8(facet_bytes(&facets, Facet::Rigging).unwrap()).unwrap(),
            r#"{"equipment":[],"method":"","parameters":{},"rescue":{"drilled_seconds":null,"limit_seconds":null,"method":""}}"#
        );
        assert_eq!(
            plan_digest(&facets).unwrap(),
            "937c03fcf174611ecc2c9318b5d7a40f06f904ebced3debc02b23a57e5c91d19"
        );
        assert_eq!(
            facet_hashes(&facets).unwrap()[&Facet::Rehearsals],
            "2a0ed37d6eece21b5a1d183a536883e386c75c31f5eaf6b4e87be70549b0032d"
        );
    }

    #[test]
    fn a_change_in_a_facet_changes_its_hash_and_the_digest_and_no_other_hash() {
        let before = Facets::default();
        let mut after = before.clone();
        after.camera.notes = "wider".to_owned();
        let (was, is) = (
            facet_hashes(&before).unwrap(),
            facet_hashes(&after).unwrap(),
        );
        for facet in Facet::ALL {
            assert_eq!(
                was[&facet] != is[&facet],
                facet == Facet::Camera,
                "{}",
                facet.name()
            );
        }
        assert_ne!(plan_digest(&before).unwrap(), plan_digest(&after).unwrap());
    }

    #[test]
    fn numbers_that_are_not_finite_have_no_hash() {
        let mut facets = Facets::default();
        facets.rigging.parameters.insert(
            "line_length".to_owned(),
            InputValue::Number {
                value: f64::NAN,
                tolerance: None,
            },
        );
        let error = facet_hashes(&facets).unwrap_err();
        assert!(
            error.to_string().contains("/parameters/line_length"),
            "{error}"
        );
        assert!(plan_digest(&facets).is_err());
    }
}
