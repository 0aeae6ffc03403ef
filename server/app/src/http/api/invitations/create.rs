//! Inviting somebody on the roster.

use std::{collections::BTreeSet, sync::mpsc};

use actix_web::post;
use gagwright_casting::{PersonId, ProductionId};
use gagwright_clearance::Role;
use gagwright_store::{Connection, people, productions};
use jiff::{SignedDuration, Timestamp};
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

use crate::{
    commands::{
        Actor, CommandError,
        members::{self, NewInvitation},
    },
    entropy,
    http::{
        answer::{Answer, Reply},
        caller::Caller,
        extract::At,
        openapi::{WriteHeaders, WriteRefusals},
        state::App,
        writing::{Json, Write},
    },
    mail::{self, Letter},
    permissions::Permission,
    tokens,
};

/// How long an invitation can be accepted.
const LIFE: SignedDuration = SignedDuration::from_hours(24 * 7);

/// Whom to invite, and as what.
#[derive(Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Invite {
    /// Somebody on the roster who has an address.
    #[schema(value_type = Uuid)]
    pub person: PersonId,
    /// The hats they are to have.
    #[schema(value_type = Vec<Role>)]
    pub roles: BTreeSet<Role>,
}

/// Until when the invitation can be accepted. Its link goes to the person by mail alone.
#[derive(Serialize, ToSchema)]
pub struct Invited {
    /// Until when.
    #[schema(value_type = String, format = DateTime)]
    pub expires_at: Timestamp,
}

/// Invite somebody on the roster
///
/// Needs `manage_members`. The link goes to the address on the roster and works once, for a week.
#[utoipa::path(
    tag = "accounts",
    params(("production" = Uuid, Path, description = "The production"), WriteHeaders),
    request_body = Invite,
    responses((status = 201, description = "Invited", body = Invited), WriteRefusals)
)]
#[post("/productions/{production}/invitations")]
pub async fn invite(
    app: App,
    caller: Caller,
    production: At<ProductionId>,
    write: Write<Json<Invite>>,
) -> Answer {
    let (post, letters) = mpsc::channel();
    let public_url = app.public_url.clone();
    let answer = write
        .commit(&app, move |desk, Json(invite)| {
            let actor = caller.on_production(desk.conn, *production, Permission::ManageMembers)?;
            let token = tokens::secret();
            let expires_at = desk.now + LIFE;
            let person = invite.person;
            let new = NewInvitation {
                id: Uuid::now_v7(),
                person,
                roles: invite.roles,
                token_hash: tokens::secret_hash(&token).to_vec(),
                expires_at,
            };
            let made = members::invite(desk.conn, &actor, desk.now, new, &mut entropy::system)?;
            let link = format!("{public_url}/invitation#{token}");
            // Handed over only after the commit; with nobody to take it there is nothing to undo.
            let _ = post.send(letter(
                desk.conn,
                &actor,
                person,
                &made.email,
                &link,
                expires_at,
            )?);
            Reply::recorded(&Invited { expires_at })
        })
        .await?;
    letters
        .try_iter()
        .for_each(|letter| app.mail.send_later(letter));
    Ok(answer)
}

fn letter(
    conn: &mut Connection,
    actor: &Actor,
    person: PersonId,
    address: &str,
    link: &str,
    expires_at: Timestamp,
) -> Result<Letter, CommandError> {
    let mut name_of = |person| {
        let found = people::get(conn, actor.production, person)?;
        Ok::<_, CommandError>(found.map(|one| one.person.name).unwrap_or_default())
    };
    let (name, inviter) = (name_of(person)?, name_of(actor.person)?);
    let production = productions::get(conn, actor.production)?
        .map(|one| one.name)
        .unwrap_or_default();
    Ok(mail::invitation(mail::Invitation {
        name: &name,
        address,
        production: &production,
        inviter: &inviter,
        link,
        expires_at,
    }))
}
