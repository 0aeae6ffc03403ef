//! What each kind of leaf changes. One arm a kind: whoever adds a command that appends a new kind adds its
//! arm here, or says in [`SILENT`] that no gag's case depends on it.

use std::collections::BTreeSet;

use gagwright_casting::PersonId;
use jiff::Timestamp;

use super::{GagThen, Kept, Leaf, Replay, ReplayError, day::DAY};
use crate::{
    case::{Agreement, Hold, Reading, RehearsalRun},
    delegation::Delegation,
    ids::{DeviceId, HoldId, RecordId, SignOffId},
    jws,
    opening::Opening,
    plan::{Facets, Plan},
    policy::{Policy, Role},
    resolving::Resolution,
    signoff::{ConditionMet, Device, SignOff, Statement},
    test_shot::TestShot,
};

/// Kinds that no gag's case depends on.
const SILENT: [&str; 5] = [
    "invitation.withdrawn",
    "invitation.accepted",
    "photograph.kept",
    "witness.added",
    "witness.removed",
];

pub(super) fn apply(
    replay: &mut Replay,
    leaf: &Leaf<'_>,
    at: Timestamp,
) -> Result<(), ReplayError> {
    match leaf.entry.kind.as_str() {
        "production.created" => {
            let founder: PersonId = leaf.fact("founder")?;
            let roles: BTreeSet<Role> = leaf.fact("roles")?;
            let policy: Kept<Policy> = leaf.part("policy", "")?;
            replay.policy = Some(policy);
            person(replay, leaf, founder)?;
            replay.roles.insert(founder, roles);
        }
        "person.put" => {
            let put: PersonId = leaf.fact("person")?;
            person(replay, leaf, put)?;
        }
        "roster.imported" => {
            let touched: Vec<PersonId> = leaf.fact("people")?;
            for one in touched {
                person(replay, leaf, one)?;
            }
        }
        "person.erased" => {
            let erased: PersonId = leaf.fact("person")?;
            // From here on nothing about them is missing: this is what was known.
            let nobody = Kept::Known(super::erased_person(erased));
            replay.people.insert(erased, nobody);
            replay.roles.remove(&erased);
            replay.day.erase(erased);
            for device in replay
                .devices
                .values_mut()
                .filter(|one| one.person == erased)
            {
                device.revoked_at.get_or_insert(at);
            }
        }
        "member.changed" | "invitation.made" => {
            let member: PersonId = leaf.fact("person")?;
            let roles: BTreeSet<Role> = leaf.fact("roles")?;
            replay.roles.insert(member, roles);
        }
        "policy.changed" => replay.policy = Some(Kept::Known(leaf.fact("policy")?)),
        "delegation.made" => {
            let made = Delegation {
                id: leaf.fact("delegation")?,
                from: leaf.actor()?,
                to: leaf.fact("to")?,
                role: leaf.fact("role")?,
                gags: leaf.fact("gags")?,
                starts: leaf.fact("starts")?,
                until: leaf.fact("until")?,
                limits: leaf.text("limits")?,
                made_at: at,
                ended_at: None,
            };
            replay.delegations.push(made);
        }
        "delegation.ended" => {
            let id: RecordId = leaf.fact("delegation")?;
            let made = replay.delegations.iter_mut().find(|one| one.id == id);
            made.ok_or_else(|| leaf.wrong(format!("no leaf made the delegation {id}")))?
                .ended_at = Some(at);
        }
        "decline.resolved" => {
            let resolution = Resolution {
                id: leaf.fact("resolution")?,
                signoff: leaf.fact("signoff")?,
                by: leaf.actor()?,
                role: leaf.fact("role")?,
                text: leaf.text("text")?,
                at,
            };
            gag(replay, leaf)?.resolutions.push(resolution);
        }
        "device.registered" => device(replay, leaf, at)?,
        "device.revoked" => {
            let id: DeviceId = leaf.fact("device")?;
            let device = replay.devices.get_mut(&id);
            device
                .ok_or_else(|| leaf.wrong(format!("no leaf registered the device {id}")))?
                .revoked_at = Some(at);
        }
        "gag.created" => {
            let gag = GagThen {
                code: leaf.fact("code")?,
                title: leaf.part("plan", "/title")?,
                revision: 0,
                plan: Kept::Gone {
                    leaf: leaf.entry.index,
                },
                earlier: Vec::new(),
                resolutions: Vec::new(),
                signoffs: Vec::new(),
                readings: Vec::new(),
                runs: Vec::new(),
                test_shots: Vec::new(),
                lost_shots: 0,
            };
            replay.gags.insert(leaf.gag()?, gag);
            plan(replay, leaf, at)?;
        }
        "plan.revised" => plan(replay, leaf, at)?,
        "signoff.made" => signoff(replay, leaf, at)?,
        "condition.met" => condition_met(replay, leaf, at)?,
        "hold.raised" => {
            let hold = Hold {
                id: leaf.fact("hold")?,
                gag: match &leaf.entry.gag {
                    Some(_) => Some(leaf.gag()?),
                    None => None,
                },
                raised_at: at,
                raised_by: leaf.maybe_actor()?,
                reason: leaf.text("reason")?,
                hazard: leaf.fact("hazard")?,
                agreements: Vec::new(),
                released_at: None,
            };
            replay.holds.push((leaf.entry.index, hold));
        }
        "hold.agreed" => hold_agreed(replay, leaf, at)?,
        "reading.logged" => {
            let reading = Reading {
                id: leaf.fact("reading")?,
                kind: leaf.fact("kind")?,
                value: leaf.fact("value")?,
                at: leaf.fact("read_at")?,
                by: leaf.actor()?,
                place: leaf.text("place")?,
            };
            gag(replay, leaf)?.readings.push(reading);
        }
        "run.logged" => {
            let run = RehearsalRun {
                id: leaf.fact("run")?,
                rung: leaf.fact("rung")?,
                facets: leaf.fact("facets")?,
                good: leaf.fact("good")?,
                note: leaf.text("note")?,
                at: leaf.fact("run_at")?,
                by: leaf.actor()?,
            };
            gag(replay, leaf)?.runs.push(run);
        }
        "test_shot.logged" => test_shot(replay, leaf, at)?,
        kind if DAY.contains(&kind) => super::day::apply(replay, leaf, at)?,
        other if SILENT.contains(&other) => {}
        other => replay.strange.push((leaf.entry.index, other.to_owned())),
    }
    Ok(())
}

fn gag<'r>(replay: &'r mut Replay, leaf: &Leaf<'_>) -> Result<&'r mut GagThen, ReplayError> {
    let id = leaf.gag()?;
    replay
        .gags
        .get_mut(&id)
        .ok_or_else(|| leaf.wrong(format!("no leaf created the gag {id}")))
}

fn person(replay: &mut Replay, leaf: &Leaf<'_>, id: PersonId) -> Result<(), ReplayError> {
    let kept = leaf.part(&super::person_part(id), "")?;
    replay.people.insert(id, kept);
    Ok(())
}

fn device(replay: &mut Replay, leaf: &Leaf<'_>, at: Timestamp) -> Result<(), ReplayError> {
    let device = Device {
        id: leaf.fact("device")?,
        person: leaf.fact("person")?,
        name: leaf.text("name")?,
        key: leaf.fact("key")?,
        registered_at: at,
        revoked_at: None,
    };
    replay.devices.insert(device.id, device);
    Ok(())
}

fn plan(replay: &mut Replay, leaf: &Leaf<'_>, at: Timestamp) -> Result<(), ReplayError> {
    let revision: u32 = leaf.fact("revision")?;
    let facets: Kept<Facets> = leaf.part("plan", "/facets")?;
    let plan = match facets {
        Kept::Known(facets) => Kept::Known(Plan {
            gag: leaf.gag()?,
            revision,
            technique: leaf.fact("technique")?,
            facets,
            policy: leaf.fact("policy")?,
            author: leaf.actor()?,
            written_at: at,
            note: leaf.text("note")?,
        }),
        Kept::Gone { leaf } => Kept::Gone { leaf },
    };
    let gag = gag(replay, leaf)?;
    if revision != gag.revision + 1 {
        return Err(leaf.wrong(format!(
            "it is revision {revision}, but revision {} came before",
            gag.revision
        )));
    }
    let before = std::mem::replace(&mut gag.plan, plan);
    if gag.revision > 0 {
        gag.earlier.push(before);
    }
    gag.revision = revision;
    Ok(())
}

fn signoff(replay: &mut Replay, leaf: &Leaf<'_>, at: Timestamp) -> Result<(), ReplayError> {
    let jws: String = leaf.fact("jws")?;
    let openings: Vec<Opening> = match leaf.entry.commitments.contains_key("said") {
        false => Vec::new(),
        true => match leaf.part("said", "/openings")? {
            Kept::Known(openings) => openings,
            Kept::Gone { .. } => Vec::new(),
        },
    };
    let signoff = SignOff {
        jws,
        received_at: at,
        leaf: leaf.entry.index,
        met: Vec::new(),
        openings,
    };
    gag(replay, leaf)?.signoffs.push(signoff);
    Ok(())
}

fn condition_met(replay: &mut Replay, leaf: &Leaf<'_>, at: Timestamp) -> Result<(), ReplayError> {
    let id: SignOffId = leaf.fact("signoff")?;
    let place: usize = leaf.fact("condition")?;
    let by = leaf.actor()?;
    let unknown = || {
        leaf.wrong(format!(
            "no leaf has the sign-off {id} with such a condition"
        ))
    };
    let mut found: Option<(&mut SignOff, Statement)> = None;
    for one in &mut gag(replay, leaf)?.signoffs {
        if let Ok(statement) = jws::read_unverified(&one.jws)
            && statement.id == id
        {
            found = Some((one, statement));
            break;
        }
    }
    let (signoff, statement) = found.ok_or_else(unknown)?;
    let condition = statement.conditions.get(place).ok_or_else(unknown)?;
    signoff.met.push(ConditionMet {
        condition: condition.clone(),
        by,
        at,
    });
    Ok(())
}

fn hold_agreed(replay: &mut Replay, leaf: &Leaf<'_>, at: Timestamp) -> Result<(), ReplayError> {
    let id: HoldId = leaf.fact("hold")?;
    let released: bool = leaf.fact("released")?;
    let agreement = Agreement {
        role: leaf.fact("role")?,
        person: leaf.actor()?,
        at,
        cause: leaf.text("cause")?,
    };
    let hold = replay.holds.iter_mut().find(|(_, hold)| hold.id == id);
    let (_, hold) = hold.ok_or_else(|| leaf.wrong(format!("no leaf raised the hold {id}")))?;
    hold.agreements.push(agreement);
    if released {
        hold.released_at = Some(at);
    }
    Ok(())
}

fn test_shot(replay: &mut Replay, leaf: &Leaf<'_>, at: Timestamp) -> Result<(), ReplayError> {
    let inputs = match leaf.part("shot", "/inputs")? {
        Kept::Known(inputs) => inputs,
        Kept::Gone { .. } => {
            gag(replay, leaf)?.lost_shots += 1;
            return Ok(());
        }
    };
    let shot = TestShot {
        id: leaf.fact("test_shot")?,
        gag: leaf.gag()?,
        technique: leaf.fact("technique")?,
        inputs,
        measured: leaf.fact("measured")?,
        load: leaf.fact("load")?,
        note: leaf.text("note")?,
        shot_at: leaf.fact("shot_at")?,
        recorded_by: leaf.actor()?,
        recorded_at: at,
    };
    gag(replay, leaf)?.test_shots.push(shot);
    Ok(())
}
