//! What a new plan starts from: what the policy says the technique brings.

use gagwright_casting::{Slot, SlotId};

use crate::{
    plan::{Facets, Plan},
    policy::Policy,
};

impl Plan {
    /// Facets for a new gag: the technique's ladder, and one slot with the technique's requirements.
    /// The slot's id is the caller's to mint, so that the same request makes the same plan.
    pub fn starting(technique: &str, policy: &Policy, slot: SlotId) -> Facets {
        let mut facets = Facets::default();
        let brings = policy
            .techniques
            .get(technique)
            .cloned()
            .unwrap_or_default();
        facets.rehearsals.rungs = brings.rungs;
        facets.cast.slots = vec![Slot {
            id: slot,
            name: "Performer".to_owned(),
            requirements: brings.requirements,
            person: None,
            kit_mass: 0.0,
        }];
        facets
    }
}
