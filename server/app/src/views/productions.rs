//! A production's own page: its people, its rules and what the reader may do on it.

use gagwright_store::Connection;

use super::{Me, MemberSummary, ProductionPage, gathering};
use crate::{
    commands::{Actor, CommandError},
    permissions::{self, Permission},
};

/// The production the reader is on.
///
/// # Errors
/// When the reader may not read it.
pub fn production_page(
    conn: &mut Connection,
    reader: &Actor,
) -> Result<ProductionPage, CommandError> {
    reader.require(Permission::ReadProduction)?;
    let shared = gathering::shared(conn, reader.production)?;
    let members = shared
        .members
        .iter()
        .filter_map(|member| {
            let person = shared.people.get(&member.person)?;
            Some(MemberSummary {
                person: member.person,
                name: person.name.clone(),
                code: person.code.clone(),
                roles: member.roles.clone(),
                has_account: member.account.is_some(),
            })
        })
        .collect();
    let trail_size = gagwright_store::trail::size(conn, reader.production)?;
    let production = &shared.production;
    Ok(ProductionPage {
        id: production.id,
        name: production.name.clone(),
        demo: production.demo,
        time_zone: production.time_zone.clone(),
        hold_code: reader
            .may(Permission::ManageMembers)
            .then(|| production.hold_code.clone()),
        policy: production.policy.clone(),
        members,
        devices: shared.devices.clone(),
        me: Me {
            person: reader.person,
            roles: reader.roles.clone(),
            permissions: permissions::of_roles(&reader.roles),
        },
        trail_size,
    })
}
