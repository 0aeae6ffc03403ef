//! What each hat may do on a production. One table, read by the commands, the views and the API's
//! routes; it must not know how anybody signed in.

use std::collections::BTreeSet;

use gagwright_clearance::Role;
use serde::{Deserialize, Serialize};

/// Something a person may be allowed to do on one production.
#[derive(
    Clone,
    Copy,
    Debug,
    PartialEq,
    Eq,
    PartialOrd,
    Ord,
    Hash,
    Serialize,
    Deserialize,
    utoipa::ToSchema,
)]
#[serde(rename_all = "snake_case")]
pub enum Permission {
    /// Read gags, plans, sign-offs, holds and who is on the production.
    ReadProduction,
    /// Read birthdays, measurements, addresses and certificate numbers.
    ReadPersonal,
    /// Read how long a person is fit for, and what their body has taken.
    ReadMedical,
    /// Write people and import rosters.
    EditPeople,
    /// Write gags and revise plans.
    EditPlans,
    /// Sign under a hat one holds.
    SignOff,
    /// Raise a hold. Every member may; the code printed on the brief needs no account at all.
    RaiseHold,
    /// Agree to the release of a hold, under a hat one holds.
    ReleaseHold,
    /// Log readings, rehearsal runs and test shots.
    LogDay,
    /// Give and take hats, and invite people.
    ManageMembers,
    /// Read the trail and its proofs.
    ReadTrail,
    /// Put another policy in force.
    ChangePolicy,
}

impl Permission {
    /// Every permission, in table order.
    pub const ALL: [Permission; 12] = [
        Permission::ReadProduction,
        Permission::ReadPersonal,
        Permission::ReadMedical,
        Permission::EditPeople,
        Permission::EditPlans,
        Permission::SignOff,
        Permission::RaiseHold,
        Permission::ReleaseHold,
        Permission::LogDay,
        Permission::ManageMembers,
        Permission::ReadTrail,
        Permission::ChangePolicy,
    ];

    /// What it allows, to end the sentence "you may not ...".
    pub fn sentence(self) -> &'static str {
        match self {
            Permission::ReadProduction => "read this production",
            Permission::ReadPersonal => "read personal data",
            Permission::ReadMedical => "read medical dates and exposures",
            Permission::EditPeople => "change people or import rosters",
            Permission::EditPlans => "create gags or revise plans",
            Permission::SignOff => "sign off",
            Permission::RaiseHold => "raise a hold from an account",
            Permission::ReleaseHold => "agree to release a hold",
            Permission::LogDay => "log readings, rehearsal runs or test shots",
            Permission::ManageMembers => "give roles or invite people",
            Permission::ReadTrail => "read the trail",
            Permission::ChangePolicy => "change the policy",
        }
    }

    /// The roles that carry it.
    pub fn held_by(self) -> Vec<Role> {
        Role::ALL
            .into_iter()
            .filter(|role| of_role(*role).contains(&self))
            .collect()
    }
}

/// A role's machine name, as in JSON.
pub fn role_name(role: Role) -> &'static str {
    role.name()
}

/// What one role may do.
pub fn of_role(role: Role) -> &'static [Permission] {
    use Permission::*;
    match role {
        Role::Coordinator => &[
            ReadProduction,
            ReadPersonal,
            ReadMedical,
            EditPeople,
            EditPlans,
            SignOff,
            RaiseHold,
            ReleaseHold,
            LogDay,
            ManageMembers,
            ReadTrail,
            ChangePolicy,
        ],
        Role::Production => &[
            ReadProduction,
            ReadPersonal,
            ReadMedical,
            EditPeople,
            SignOff,
            RaiseHold,
            ReleaseHold,
            LogDay,
            ManageMembers,
            ReadTrail,
            ChangePolicy,
        ],
        Role::Medic => &[
            ReadProduction,
            ReadPersonal,
            ReadMedical,
            SignOff,
            RaiseHold,
            ReleaseHold,
            LogDay,
            ReadTrail,
        ],
        Role::FirstAd
        | Role::Rigging
        | Role::Effects
        | Role::Fire
        | Role::Vehicles
        | Role::Armourer
        | Role::Marine
        | Role::Animals
        | Role::Camera
        | Role::Engineer => &[
            ReadProduction,
            SignOff,
            RaiseHold,
            ReleaseHold,
            LogDay,
            ReadTrail,
        ],
        Role::Performer | Role::Guardian => {
            &[ReadProduction, SignOff, RaiseHold, ReleaseHold, ReadTrail]
        }
        Role::Observer => &[ReadProduction, RaiseHold, ReadTrail],
    }
}

/// What a set of roles may do together.
pub fn of_roles(roles: &BTreeSet<Role>) -> BTreeSet<Permission> {
    roles
        .iter()
        .flat_map(|role| of_role(*role))
        .copied()
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_role_has_its_machine_name_and_may_hold_and_read() {
        for role in Role::ALL {
            assert_eq!(serde_json::to_value(role).unwrap(), role_name(role));
            assert!(
                of_role(role).contains(&Permission::RaiseHold),
                "{role:?} must be able to stop work"
            );
            assert!(of_role(role).contains(&Permission::ReadProduction));
        }
    }

    #[test]
    fn medical_data_is_for_coordinator_medic_and_production_alone() {
        assert_eq!(
            Permission::ReadMedical.held_by(),
            [Role::Coordinator, Role::Medic, Role::Production]
        );
        assert!(!of_role(Role::Observer).contains(&Permission::SignOff));
    }
}
