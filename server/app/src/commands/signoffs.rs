//! Drafting, receiving and completing sign-offs. A sign-off proves itself: the device's key decides who
//! signed, so anyone on the production may carry one here from a phone that has no signal.

use gagwright_casting::{GagId, PersonId, SlotId};
use gagwright_clearance::{
    Decision, Facets, Opening, Role, RoleStanding, SignOff, SignOffError, SignOffId, Statement,
    diff::{FacetChange, diff},
    draft::prepare,
    judge::standing_of,
    opening::{text_of, told},
    replay::erased_person,
    signoff::{self, ConditionMet},
};
use gagwright_store::{Connection, StoreError};
use jiff::Timestamp;
use serde_json::json;

use super::{Actor, CommandError, Entropy, record};
use crate::{
    permissions::Permission,
    remembered::{accept, clearance, look_at},
    views::{Draft, SignOffReceipt, gathering},
};

/// Makes a statement ready for the actor to sign under one of their hats, or, for a witness, as somebody
/// else signs it on paper: the witness's device adds the ink.
///
/// # Errors
/// Without the hat (or, for a performer, the slot), or when the gag is not on this production.
pub fn draft(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    gag: GagId,
    role: Role,
    slot: Option<SlotId>,
    signer: Option<PersonId>,
) -> Result<Draft, CommandError> {
    actor.require(Permission::SignOff)?;
    let signer = signer.unwrap_or(actor.person);
    let case = gathering::case(conn, actor.production, gag)?;
    let policy = case.policy.role(role).ok_or_else(|| {
        CommandError::invalid(
            "/role",
            format!("{} signs nothing by this production's policy", role.name()),
            "sign under another role",
        )
    })?;
    // The device mints the id; here nobody has signed yet.
    let id = SignOffId(uuid::Uuid::nil());
    let prepared = prepare(&case, role, slot, signer, id, now).map_err(|error| match error {
        SignOffError::NotAllowed(why) => CommandError::Forbidden {
            permission: Permission::SignOff,
            why: Some(why),
        },
        SignOffError::BadStatement(_) if slot.is_some() => CommandError::invalid(
            "/slot",
            "is given, but only a performer signs for a slot",
            "leave slot out",
        ),
        other => other.into(),
    })?;
    let changes = match &prepared.previous {
        Some(before) => {
            let facets = facets_at(conn, gag, before.revision)?;
            diff(&facets, &case.plan.facets)
                .into_iter()
                .filter(|change| policy.covers.contains(&change.facet))
                .collect::<Vec<FacetChange>>()
        }
        None => Vec::new(),
    };
    Ok(Draft {
        statement: prepared.statement,
        attestation: prepared.attestation,
        covers: prepared.covers,
        previous: prepared.previous,
        changes,
    })
}

fn facets_at(conn: &mut Connection, gag: GagId, revision: u32) -> Result<Facets, CommandError> {
    Ok(gagwright_store::plans::get(conn, gag, revision)?.facets)
}

/// A sign-off that is on record.
#[derive(Clone, Debug, PartialEq)]
pub enum Taken {
    /// Recorded just now.
    Now(SignOffReceipt),
    /// Recorded before: somebody else carried the very same one here first, or it was sent again.
    Before(SignOffReceipt),
}

impl Taken {
    /// The receipt, whenever it was recorded.
    pub fn receipt(self) -> SignOffReceipt {
        match self {
            Taken::Now(receipt) | Taken::Before(receipt) => receipt,
        }
    }
}

/// Checks a sign-off's signature before its turn to be written comes: that is by far the dearest step, and
/// many can be checked at a time, but written only one after another. What it cannot make out is left to
/// [`submit`], which decides.
///
/// # Errors
/// When the database cannot be read.
pub fn foresee(conn: &mut Connection, jws: &str) -> Result<(), CommandError> {
    let Ok(claimed) = signoff::read_unverified(jws) else {
        return Ok(());
    };
    let devices = gagwright_store::devices::get(conn, claimed.production, claimed.device)?;
    if let Some(device) = devices {
        look_at(jws, &device.key);
    }
    Ok(())
}

/// Receives a sign-off on a gag. Anyone on the production may carry one: the device's key says who signed.
///
/// # Errors
/// [`CommandError::SignOff`] with the reason it was refused at the door, or [`CommandError::Conflict`]
/// when its id is another sign-off's.
pub fn submit(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    gag: GagId,
    jws: &str,
    openings: Vec<Opening>,
    entropy: Entropy<'_>,
) -> Result<Taken, CommandError> {
    actor.require(Permission::ReadProduction)?;
    let shared = gathering::shared(conn, actor.production)?;
    let (row, mut case) = gathering::case_with(conn, &shared, gag)?;
    let claimed = signoff::read_unverified(jws)?;
    // The signer may never have signed this gag before, so their devices are not in its case yet.
    case.devices = shared.devices.clone();
    if let Some((known, at)) = gagwright_store::signoffs::get(conn, claimed.id)? {
        if known.jws == jws && at == gag {
            let judged = clearance(&case, now);
            // The gag may have stopped asking for this role since.
            let standing = standing(judged.roles, &claimed)
                .unwrap_or_else(|_| standing_of(&case, &claimed, now));
            return Ok(Taken::Before(SignOffReceipt {
                id: claimed.id,
                leaf: known.leaf,
                standing,
                clearance: judged.state,
            }));
        }
        return Err(CommandError::Conflict {
            what: "sign-off",
            detail: format!(
                "{} is the id of another sign-off; sign again under a new id",
                claimed.id
            ),
        });
    }
    let statement = accept(jws, &openings, &case, now)?;
    // Everyone of the production is at hand already, and signing waits for nothing that it need not.
    let signer = shared.people.get(&statement.signer);
    if signer.is_some_and(|person| *person == erased_person(statement.signer)) {
        return Err(record::about_erased("sign-off"));
    }
    let mut leaf = record::Leaf::new("signoff.made", now, Some(actor))
        .about(row.id)
        .fact("code", json!(row.code))
        .fact("signoff", json!(statement.id))
        .fact("signer", json!(statement.signer))
        .fact("device_id", json!(statement.device))
        .fact("role", json!(statement.role))
        .fact("slot", json!(statement.slot))
        .fact("decision", json!(statement.decision))
        .fact("revision", json!(statement.revision))
        .fact("plan_digest", json!(statement.plan_digest))
        .fact("policy", json!(case.policy.version))
        .fact("delegation", json!(statement.delegation))
        .fact(
            "witness",
            json!(statement.ink.as_ref().map(|ink| ink.witness)),
        )
        .fact("jws", json!(jws));
    if !openings.is_empty() {
        // Their author's, whoever carried them here: they go when the signer is erased.
        let said = json!({ "openings": openings });
        leaf = leaf.part("said", Some(statement.signer), said, entropy);
    }
    let leaf = leaf.append(conn)?;
    let signoff = SignOff {
        jws: jws.to_owned(),
        received_at: now,
        leaf,
        met: Vec::new(),
        openings,
    };
    gagwright_store::signoffs::insert(conn, actor.production, &statement, &signoff)?;
    case.signoffs.push(signoff);
    let judged = clearance(&case, now);
    Ok(Taken::Now(SignOffReceipt {
        id: statement.id,
        leaf,
        standing: standing(judged.roles, &statement)?,
        clearance: judged.state,
    }))
}

/// How the role of a statement stands in the judge's answer.
fn standing(roles: Vec<RoleStanding>, statement: &Statement) -> Result<RoleStanding, CommandError> {
    roles
        .into_iter()
        .find(|one| one.role == statement.role && one.slot == statement.slot)
        .ok_or_else(|| CommandError::Conflict {
            what: "role",
            detail: format!(
                "this gag does not ask {} to sign; nothing was recorded",
                statement.role.name()
            ),
        })
}

/// Says that a condition of a sign-off is met. A holder of the role that set it may, and whoever else the
/// policy names; for a performer's condition only the performer.
///
/// # Errors
/// Without that hat, when the sign-off set no such condition, or when it was said before.
pub fn meet_condition(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    id: SignOffId,
    condition: String,
) -> Result<RoleStanding, CommandError> {
    actor.require(Permission::SignOff)?;
    let unknown = || CommandError::NotFound {
        what: "sign-off",
        id: id.to_string(),
    };
    let (signoff, gag) = gagwright_store::signoffs::get(conn, id)?.ok_or_else(unknown)?;
    let shared = gathering::shared(conn, actor.production)?;
    let (row, mut case) = match gathering::case_with(conn, &shared, gag) {
        // The gag of another production: the sign-off is as unknown as the gag.
        Err(CommandError::NotFound { .. }) => return Err(unknown()),
        other => other?,
    };
    let statement = signoff::read_unverified(&signoff.jws)?;
    match statement.role {
        Role::Performer if statement.signer != actor.person => {
            return Err(CommandError::Forbidden {
                permission: Permission::SignOff,
                why: Some("a performer's condition is theirs alone to call met".into()),
            });
        }
        Role::Performer => {}
        role => {
            let settling = case.policy.settling.get(&role);
            let others = settling.into_iter().flat_map(|one| &one.conditions);
            if !others.into_iter().any(|other| actor.roles.contains(other)) {
                actor.require_role(role, Permission::SignOff)?;
            }
        }
    }
    // By what readers are shown, which is its words until they are erased, or by its commitment.
    let meant = |commitment: &String| {
        *commitment == condition || told(commitment, &signoff.openings) == condition
    };
    let place = statement.conditions.iter().position(meant);
    let place = place.filter(|_| statement.decision == Decision::ApproveWithConditions);
    let Some(place) = place else {
        return Err(CommandError::invalid(
            "/condition",
            "is not one of this sign-off's conditions",
            if statement.conditions.is_empty() {
                "it set none; there is nothing to meet".to_owned()
            } else {
                let told = statement.conditions.iter().map(|one| {
                    let text = text_of(one, &signoff.openings);
                    text.unwrap_or(one).to_owned()
                });
                format!(
                    "repeat one of them word for word: {}",
                    told.collect::<Vec<String>>().join("; ")
                )
            },
        ));
    };
    let met = ConditionMet {
        condition: statement.conditions.get(place).cloned().unwrap_or_default(),
        by: actor.person,
        at: now,
    };
    record::Leaf::new("condition.met", now, Some(actor))
        .about(row.id)
        .fact("code", json!(row.code))
        .fact("signoff", json!(id))
        .fact("role", json!(statement.role))
        // Which of the sign-off's conditions, counted from zero; its words are free text and stay out.
        .fact("condition", json!(place))
        .append(conn)?;
    match gagwright_store::signoffs::add_met(conn, id, &met) {
        Err(StoreError::Conflict { .. }) => {
            return Err(CommandError::Conflict {
                what: "condition",
                detail: "it was called met before; nothing is left to do".into(),
            });
        }
        other => other?,
    }
    for one in case
        .signoffs
        .iter_mut()
        .filter(|one| one.jws == signoff.jws)
    {
        one.met.push(met.clone());
    }
    standing(clearance(&case, now).roles, &statement)
}
