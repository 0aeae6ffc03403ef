//! What voids whose marks, as the trade has it: the table of changes and what they void. A tick is a
//! role's mark that falls; "new" is the new performer's own; "if fit", "mass", "own" are the table's words.
//! What the plan layer sees as a change of a facet (another piece of equipment, another performer, another
//! day) is not here: it falls with the facet.

use gagwright_clearance::Role::{self, *};

/// A shock load: coordinator, performer ("if fit": for the day), rigging and engineer.
pub const SHOCK_PLAN: &[Role] = &[Coordinator, Rigging, Engineer];
pub const SHOCK_DAY: &[Role] = &[Coordinator, Performer, Rigging];

/// A head impact: coordinator, the performer struck, medic.
pub const HEAD: &[Role] = &[Coordinator, Performer, Medic];

/// Hats that nobody wears on a gag they perform in.
pub const NO_PERFORMER: &[Role] = &[
    Coordinator,
    Rigging,
    Engineer,
    Effects,
    Fire,
    Medic,
    Guardian,
];

/// Other equipment than the day was signed for.
pub const SWAP_DAY: &[Role] = &[Coordinator, Performer, Rigging];

/// Another performer: all who signed the day but the first assistant director.
pub fn recast_voids(role: Role) -> bool {
    role != FirstAd
}

// Another day or place voids every mark for the day; a reading out of band voids none, and the go.
// A certificate that ran out and a device revoked before the mark arrived void their own signer's mark.
