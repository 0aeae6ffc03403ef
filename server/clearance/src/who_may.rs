//! Who may do what on the day beyond what the policy's table of roles says: rules of the trade about
//! stopping and starting again. It knows hats and people, and neither accounts nor permissions.

use std::collections::BTreeSet;

use gagwright_casting::PersonId;

use crate::{case::StandDown, policy::Role};

/// Hats that may take a piece of equipment back into use: those who build with it, and the engineer.
const EXAMINERS: [Role; 7] = [
    Role::Rigging,
    Role::Engineer,
    Role::Effects,
    Role::Vehicles,
    Role::Armourer,
    Role::Marine,
    Role::Animals,
];

/// Hats that may stand somebody else down.
const KEEPERS: [Role; 4] = [
    Role::Coordinator,
    Role::Medic,
    Role::Production,
    Role::Guardian,
];

/// Whether somebody with these hats may take equipment back into use after an inspection.
pub fn take_back_into_use(hats: &BTreeSet<Role>) -> bool {
    EXAMINERS.iter().any(|role| hats.contains(role))
}

/// Whether somebody with these hats may stand a person down: anybody themselves, and some others.
pub fn stand_down(who: PersonId, hats: &BTreeSet<Role>, person: PersonId) -> bool {
    who == person || KEEPERS.iter().any(|role| hats.contains(role))
}

/// Whether somebody with these hats may bring a person back: whoever stood them down, and the medic.
pub fn bring_back(who: PersonId, hats: &BTreeSet<Role>, down: &StandDown) -> bool {
    who == down.by || hats.contains(&Role::Medic)
}
