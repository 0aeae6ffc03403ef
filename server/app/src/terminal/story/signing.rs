//! The story's second part: figures, rehearsals, signatures with real keys, and the changes that make
//! exactly the right ones fall.

use std::collections::BTreeSet;

use gagwright_clearance::{
    Case, Clearance, ClearanceState, Facet, GagId, Role, RoleState, SignOffId,
    signoff::{self, PublicKey},
};
use gagwright_mechanics::Status;
use gagwright_store::Store;
use p256::ecdsa::SigningKey;
use serde_json::{Value, json};

use super::{MAIN, Teller, casting::INSIDE, play};
use crate::{
    commands::{self, CommandError},
    demo::{script::Step, stage::Stage},
    terminal::{
        fault::Fault,
        table::{Align, Table},
    },
    words,
};

fn judge(store: &Store, stage: &Stage, gag: GagId) -> Result<(Case, Clearance), Fault> {
    Ok(store.read(|conn| stage.judge(conn, gag))?)
}

/// From figures to cleared, changed twice, and cleared again.
pub(super) fn sign(
    teller: &mut Teller,
    store: &Store,
    stage: Stage,
    gag: GagId,
) -> Result<Stage, Fault> {
    figures(teller, store, &stage, gag)?;
    let stage = rehearse(teller, store, stage, gag)?;
    let stage = first_signatures(teller, store, stage, gag)?;
    let stage = refusals(teller, store, stage, gag)?;
    let stage = change(
        teller,
        store,
        stage,
        gag,
        &Change {
            title: "One value changes: the burn may be lit in 2.5 m/s of wind, not 2",
            step: Step::Revise {
                by: "C01".into(),
                note: "Wind limit raised after the test day".into(),
                inputs: [("wind_speed".to_owned(), "2.5 m/s".to_owned())].into(),
                facets: Value::Null,
            },
            facet: Facet::Conditions,
            falls: &[
                Role::Coordinator,
                Role::Performer,
                Role::Effects,
                Role::Fire,
                Role::FirstAd,
            ],
            stands: &[Role::Medic, Role::Production],
        },
    )?;
    change(
        teller,
        store,
        stage,
        gag,
        &Change {
            title: "A camera moves",
            step: Step::Revise {
                by: "C01".into(),
                note: "B camera two metres left, out of the smoke".into(),
                inputs: Default::default(),
                facets: json!({ "camera": { "notes": "B camera two metres left of the mark" } }),
            },
            facet: Facet::Camera,
            falls: &[Role::Coordinator, Role::FirstAd],
            stands: &[
                Role::Performer,
                Role::Effects,
                Role::Fire,
                Role::Medic,
                Role::Production,
            ],
        },
    )
}

fn figures(teller: &mut Teller, store: &Store, stage: &Stage, gag: GagId) -> Result<(), Fault> {
    teller.step(&format!(
        "The figures of {MAIN} are held against their limits"
    ))?;
    let (_, judged) = judge(store, stage, gag)?;
    let assessment = judged
        .assessment
        .ok_or_else(|| Fault::failed("the inputs of the story's gag were refused"))?;
    let mut table = Table::new(&[
        ("Check", Align::Left),
        ("Found", Align::Right),
        ("Limit", Align::Left),
        ("Outcome", Align::Left),
    ]);
    for check in &assessment.checks {
        let found = check
            .value
            .map(|si| words::both(check.limit.quantity, si))
            .unwrap_or_default();
        table.row([
            &check.title,
            &found,
            &words::limit(check),
            words::status(check.status),
        ]);
    }
    teller.show(&table.render(INSIDE))?;
    teller.state(
        assessment
            .checks
            .iter()
            .all(|check| check.status == Status::Within),
        "every check is within its limit, so no engineer is asked.",
    )
}

fn rehearse(teller: &mut Teller, store: &Store, stage: Stage, gag: GagId) -> Result<Stage, Fault> {
    teller.step("The ladder is rehearsed and each run is logged")?;
    let (runs, stage) = play(store, stage, move |conn, stage| {
        stage.rehearse(conn, gag, "C04", None)?;
        Ok(stage.judge(conn, gag)?.0.runs.len())
    })?;
    teller.tell(&format!(
        "{runs} good runs, rung by rung, logged by the fire safety officer."
    ))?;
    let (_, judged) = judge(store, &stage, gag)?;
    let rehearsal = gagwright_clearance::BlockKind::Rehearsal;
    teller.state(
        judged.blocks.iter().all(|block| block.kind != rehearsal),
        "no rung is left to rehearse.",
    )?;
    Ok(stage)
}

fn first_signatures(
    teller: &mut Teller,
    store: &Store,
    stage: Stage,
    gag: GagId,
) -> Result<Stage, Fault> {
    teller.step("Everyone the policy asks signs, each with a key of their own")?;
    let (before, judged) = judge(store, &stage, gag)?;
    teller.tell(
        "Each key is made for its owner (P-256) and written where only its owner may read it; the \
         server gets the public half. What is signed is the statement's canonical bytes, as a JWS \
         that any JOSE library can check.",
    )?;
    let signers = signers(&before, &judged);
    let (_, stage) = play(store, stage, move |conn, stage| {
        for person in signers {
            stage.register_device(conn, person, "Phone")?;
        }
        Ok(())
    })?;
    keep_keys(teller, &stage)?;
    let (_, stage) = play(store, stage, move |conn, stage| {
        stage.sign_all(conn, gag, |_| true)
    })?;
    let (case, judged) = judge(store, &stage, gag)?;
    teller.show(&roles(&case, &judged))?;
    let roles: BTreeSet<Role> = judged.roles.iter().map(|role| role.role).collect();
    teller.state(
        [Role::Coordinator, Role::Effects, Role::Medic]
            .iter()
            .all(|role| roles.contains(role)),
        "coordinator, effects and medic are among those who had to sign.",
    )?;
    teller.state(
        judged.state == ClearanceState::Cleared && judged.blocks.is_empty(),
        &format!("{MAIN} is cleared on revision {}.", judged.revision),
    )?;
    Ok(stage)
}

/// Who is asked to sign.
fn signers(case: &Case, judged: &Clearance) -> BTreeSet<gagwright_casting::PersonId> {
    judged
        .roles
        .iter()
        .filter_map(|role| match role.role {
            Role::Performer => {
                let slots = &case.plan.facets.cast.slots;
                slots.iter().find(|slot| Some(slot.id) == role.slot)?.person
            }
            hat => {
                let holder = case
                    .members
                    .iter()
                    .find(|member| member.roles.contains(&hat))?;
                Some(holder.person)
            }
        })
        .collect()
}

/// Writes each key as a JWK (RFC 7517, section 4; RFC 7518, section 6.2): private halves readable by
/// their owner alone, public halves beside them.
fn keep_keys(teller: &Teller, stage: &Stage) -> Result<(), Fault> {
    use base64::{Engine, engine::general_purpose::URL_SAFE_NO_PAD};
    for (code, person) in &stage.people {
        let Some((device, key)) = stage.keys.get(person) else {
            continue;
        };
        let public: PublicKey = key.verifying_key().into();
        let private = json!({
            "kty": public.kty, "crv": public.crv, "x": public.x, "y": public.y,
            "d": URL_SAFE_NO_PAD.encode(key.to_bytes()),
            "kid": device,
        });
        teller.write_secret(
            &format!("keys/{code}.private.jwk.json"),
            private.to_string().as_bytes(),
        )?;
        let public = json!(public).to_string();
        teller.write_secret(&format!("keys/{code}.public.jwk.json"), public.as_bytes())?;
    }
    Ok(())
}

/// Roles, who signed and how each stands.
fn roles(case: &Case, judged: &Clearance) -> String {
    let mut table = Table::new(&[
        ("Role", Align::Left),
        ("Signed by", Align::Left),
        ("On", Align::Left),
        ("Leaf", Align::Right),
        ("Now", Align::Left),
    ]);
    for role in &judged.roles {
        let name = role.signer.map_or("nobody", |id| {
            case.members
                .iter()
                .find(|member| member.person == id)
                .map_or("somebody", |member| member.name.as_str())
        });
        let leaf = role.signoff.and_then(|id| leaf_of(case, id));
        table.row([
            role.title.clone(),
            name.to_owned(),
            role.revision
                .map(|revision| format!("r{revision}"))
                .unwrap_or_default(),
            leaf.map(|leaf| leaf.to_string()).unwrap_or_default(),
            words::role_state(role.state).to_owned(),
        ]);
    }
    table.render(INSIDE)
}

fn leaf_of(case: &Case, id: SignOffId) -> Option<u64> {
    case.signoffs
        .iter()
        .find(|one| signoff::read_unverified(&one.jws).is_ok_and(|made| made.id == id))
        .map(|one| one.leaf)
}

/// What the door turns away: a stranger's key, a hat one does not hold; and the same sign-off twice, which counts once.
fn refusals(teller: &mut Teller, store: &Store, stage: Stage, gag: GagId) -> Result<Stage, Fault> {
    teller.step("What is turned away at the door")?;
    let (case, _) = judge(store, &stage, gag)?;
    let made = case
        .signoffs
        .iter()
        .find(|one| signoff::read_unverified(&one.jws).is_ok_and(|made| made.role == Role::Medic))
        .ok_or_else(|| Fault::failed("the medic's sign-off is missing"))?;
    let mut forged = signoff::read_unverified(&made.jws).map_err(CommandError::from)?;
    forged.id = SignOffId(uuid::Uuid::now_v7());
    let mut seed = [7u8; 32];
    crate::entropy::system(&mut seed[1..]);
    let stranger = SigningKey::from_slice(&seed)
        .map_err(|error| Fault::failed(format!("no key could be made: {error}")))?;
    let forged = signoff::sign(&forged, &stranger).map_err(CommandError::from)?;

    let medic = store.read(|conn| stage.by_code(conn, "C05"))?;
    let now = stage.now;
    let bearer = medic.clone();
    let refused = store.write(move |conn| {
        let system = &mut crate::entropy::system;
        commands::signoffs::submit(conn, &bearer, now, gag, &forged, Vec::new(), system)
    });
    tell_refusal(
        teller,
        "a medic's sign-off made with a stranger's key",
        refused.err(),
    )?;
    let again = made.jws.clone();
    let repeated = store.write(move |conn| {
        let system = &mut crate::entropy::system;
        commands::signoffs::submit(conn, &medic, now, gag, &again, Vec::new(), system)
    });
    teller.state(
        repeated.is_ok(),
        "the medic's own sign-off, handed in a second time, is answered as the first time, and counts once.",
    )?;
    let performer = store.read(|conn| stage.by_code(conn, "P01"))?;
    let now = stage.now;
    let refused = store.read(|conn| {
        commands::signoffs::draft(conn, &performer, now, gag, Role::Coordinator, None, None)
    });
    tell_refusal(
        teller,
        "a performer who would sign as coordinator",
        refused.err(),
    )?;
    let (after, _) = judge(store, &stage, gag)?;
    teller.state(
        after.signoffs.len() == case.signoffs.len(),
        "none of it left a trace among the sign-offs.",
    )?;
    Ok(stage)
}

fn tell_refusal(teller: &Teller, what: &str, refused: Option<CommandError>) -> Result<(), Fault> {
    let why = refused
        .as_ref()
        .map(ToString::to_string)
        .unwrap_or_default();
    teller.state(refused.is_some(), &format!("{what} is refused: {why}."))
}

/// A change and what it must do.
struct Change<'a> {
    title: &'a str,
    step: Step,
    facet: Facet,
    falls: &'a [Role],
    stands: &'a [Role],
}

/// Makes a change, holds what fell and what stands against what must, and has those who fell sign again.
fn change(
    teller: &mut Teller,
    store: &Store,
    stage: Stage,
    gag: GagId,
    change: &Change<'_>,
) -> Result<Stage, Fault> {
    teller.step(change.title)?;
    let step = change.step.clone();
    let (_, stage) = play(store, stage, move |conn, stage| {
        stage.play(conn, gag, &[step])
    })?;
    let (case, judged) = judge(store, &stage, gag)?;
    teller.tell(&format!(
        "That is revision {}, and it touches one facet of the plan: {}.",
        judged.revision,
        change.facet.name()
    ))?;
    let mut table = Table::new(&[
        ("Role", Align::Left),
        ("Now", Align::Left),
        ("Why", Align::Left),
    ]);
    for role in &judged.roles {
        let why = match role.state {
            RoleState::Standing => {
                format!(
                    "signed revision {}; nothing it covers has changed",
                    role.revision.unwrap_or(0)
                )
            }
            _ => role.reasons.join(" "),
        };
        table.row([role.title.as_str(), words::role_state(role.state), &why]);
    }
    teller.show(&table.render(INSIDE))?;
    let now = |state: RoleState| -> BTreeSet<Role> {
        judged
            .roles
            .iter()
            .filter(|role| role.state == state)
            .map(|role| role.role)
            .collect()
    };
    let names = |roles: &[Role]| {
        roles
            .iter()
            .map(|role| case.policy.title(*role).to_owned())
            .collect::<Vec<_>>()
            .join(", ")
    };
    teller.state(
        now(RoleState::Lapsed) == change.falls.iter().copied().collect(),
        &format!("exactly these fell: {}.", names(change.falls)),
    )?;
    teller.state(
        now(RoleState::Standing) == change.stands.iter().copied().collect(),
        &format!("exactly these stand: {}.", names(change.stands)),
    )?;
    teller.state(
        judged
            .roles
            .iter()
            .filter(|role| role.state == RoleState::Lapsed)
            .all(|role| role.changed == [change.facet]),
        "each of them names the facet that changed.",
    )?;
    teller.state(
        judged.state == ClearanceState::Lapsed,
        &format!("{MAIN} is no longer cleared; it has lapsed."),
    )?;
    let falls = change.falls.len();
    let (signed, stage) = play(store, stage, move |conn, stage| {
        stage.sign_all(conn, gag, |_| true)
    })?;
    let (_, judged) = judge(store, &stage, gag)?;
    teller.state(
        signed.len() == falls && judged.state == ClearanceState::Cleared,
        &format!(
            "those {falls} sign again, nobody else has to, and {MAIN} is cleared on revision {}.",
            judged.revision
        ),
    )?;
    Ok(stage)
}
