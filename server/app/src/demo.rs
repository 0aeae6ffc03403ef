//! The invented production "Salt Meridian": its roster, its people's sign-ins and its gags, made by
//! running the real commands on an empty database. It exists to be tried; a database that holds it is
//! marked, and says so wherever it is shown.

pub(crate) mod day;
pub(crate) mod ladder;
pub(crate) mod script;
pub(crate) mod stage;

use std::collections::BTreeSet;

use gagwright_casting::{PersonId, ProductionId, roster::RosterTable};
use gagwright_clearance::{Policy, Role};
use gagwright_store::{Connection, Store, StoreError, accounts, meta};
use jiff::{SignedDuration, Timestamp};
use serde::{Deserialize, Serialize};
use uuid::Uuid;

use crate::{
    commands::{
        self, CommandError, Founder, NewProduction,
        members::{NewAccount, NewInvitation},
        record,
    },
    passwords,
};
use script::Script;
use stage::{OwnedEntropy, Stage};

/// The password of every sign-in of the demo. It is public and works only in a database marked as demo.
pub const PASSWORD: &str = "salt-meridian";

/// Where the mark and the sign-ins are kept.
const MARK: &str = "demo";

/// How long before the end of what happened so far a gag of today was begun.
const DAY_BEGAN: SignedDuration = SignedDuration::from_mins(-34);

/// The invented coordinator's code; they start the production.
const FOUNDER: &str = "C01";

/// The invented roster, table by table.
pub(crate) const ROSTER: [(RosterTable, &str); 4] = [
    (
        RosterTable::People,
        include_str!("../../../seed-data/demo/people.csv"),
    ),
    (
        RosterTable::Certificates,
        include_str!("../../../seed-data/demo/certificates.csv"),
    ),
    (
        RosterTable::Skills,
        include_str!("../../../seed-data/demo/skills.csv"),
    ),
    (
        RosterTable::Availability,
        include_str!("../../../seed-data/demo/availability.csv"),
    ),
];

/// The invented roster was written down on this day; facts on it may not lie ahead of the clock.
const WRITTEN: &str = "2026-11-02T08:00:00Z";

/// How somebody signs in to the demo.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, utoipa::ToSchema)]
#[schema(as = DemoSignIn)]
pub struct SignIn {
    /// Address.
    pub email: String,
    /// Password, which everybody knows.
    pub password: String,
    /// Name.
    pub name: String,
    /// What they are called for.
    pub occupation: String,
    /// Their hats.
    #[schema(value_type = Vec<Role>)]
    pub roles: BTreeSet<Role>,
}

/// The demo's sign-ins; none when the database is not the demo.
///
/// # Errors
/// When the database cannot be read.
pub fn sign_ins(conn: &mut Connection) -> Result<Option<Vec<SignIn>>, StoreError> {
    match meta::get(conn, MARK)? {
        Some(text) => serde_json::from_str(&text)
            .map(Some)
            .map_err(|error| StoreError::Corrupt(format!("the demo's sign-ins: {error}"))),
        None => Ok(None),
    }
}

/// Puts the invented production into an empty database, in one transaction; leaves any other database
/// alone. True when it did.
///
/// # Errors
/// When the database cannot be written.
pub fn seed(
    store: &Store,
    now: Timestamp,
    entropy: impl FnMut(&mut [u8]) + Send + 'static,
) -> Result<bool, CommandError> {
    let empty = store.read(|conn| {
        let productions = gagwright_store::productions::list(conn)?;
        Ok::<_, StoreError>(productions.is_empty() && accounts::count(conn)? == 0)
    })?;
    if !empty {
        return Ok(false);
    }
    let password_hash =
        passwords::hash(PASSWORD).map_err(|error| StoreError::Internal(error.to_string()))?;
    let script = script::built_in()?;
    let written: Timestamp = WRITTEN.parse().unwrap_or(Timestamp::UNIX_EPOCH);
    // What happened so far took an afternoon: it ends now, so that nothing lies in the future.
    let began = now
        .saturating_add(SignedDuration::from_hours(-4))
        .unwrap_or(now)
        .max(written);
    store.write(move |conn| {
        let mut stage = open(conn, &script, began, Box::new(entropy), |person| {
            Some(NewAccount {
                id: person.id,
                name: person.name,
                password_hash: password_hash.clone(),
            })
        })?;
        for gag in &script.gags {
            if !gag.today.is_empty() {
                // The day was worked in the last hour, so that whoever looks finds it going on.
                let since = now.saturating_add(DAY_BEGAN).unwrap_or(now);
                stage.now = stage.now.max(since);
            }
            stage.put_on(conn, FOUNDER, gag)?;
        }
        mark(conn, stage.production)
    })?;
    Ok(true)
}

/// Somebody who is to have an account.
pub(crate) struct Newcomer {
    /// For the account.
    pub(crate) id: Uuid,
    /// Their name.
    pub(crate) name: String,
}

/// Starts the production: founder, roster, hats, and accounts for whom `account` makes one.
pub(crate) fn open(
    conn: &mut Connection,
    script: &Script,
    began: Timestamp,
    entropy: OwnedEntropy,
    account: impl Fn(Newcomer) -> Option<NewAccount>,
) -> Result<Stage, CommandError> {
    let mut stage = Stage {
        production: ProductionId(Uuid::nil()),
        people: Default::default(),
        keys: Default::default(),
        now: began,
        step: SignedDuration::from_secs(15),
        entropy,
    };
    found(conn, &mut stage, script, &account)?;
    import(conn, &mut stage)?;
    stage.meet_people(conn)?;
    give_hats(conn, &mut stage, script, &account)?;
    Ok(stage)
}

fn found(
    conn: &mut Connection,
    stage: &mut Stage,
    script: &Script,
    account: &impl Fn(Newcomer) -> Option<NewAccount>,
) -> Result<(), CommandError> {
    let founder = founder_row();
    let newcomer = Newcomer {
        id: stage.mint(),
        name: founder.name.clone(),
    };
    let now = stage.tick();
    let account = account(newcomer);
    if let Some(new) = &account {
        accounts::insert(
            conn,
            &accounts::Account {
                id: new.id,
                email: founder.email.clone(),
                name: new.name.clone(),
                password_hash: new.password_hash.clone(),
                created_at: now,
            },
        )?;
    }
    stage.production = ProductionId(stage.mint());
    let new = NewProduction {
        id: stage.production,
        name: script.production.name.clone(),
        time_zone: script.production.time_zone.clone(),
        demo: true,
        founder: Founder {
            person: PersonId(stage.mint()),
            code: FOUNDER.into(),
            name: founder.name,
            occupation: founder.occupation,
            account: account.map(|new| new.id),
            email: Some(founder.email),
            roles: script.crew.get(FOUNDER).cloned().unwrap_or_default(),
        },
    };
    let policy = Policy::built_in().clone();
    commands::productions::create(conn, now, new, policy, &mut *stage.entropy)?;
    Ok(())
}

struct FounderRow {
    name: String,
    occupation: String,
    email: String,
}

/// The founder's row of the roster: the production needs a coordinator before anybody can import it.
fn founder_row() -> FounderRow {
    let cells = ROSTER[0]
        .1
        .lines()
        .find(|line| line.starts_with(FOUNDER))
        .map(|line| line.split(',').map(str::to_owned).collect::<Vec<_>>())
        .unwrap_or_default();
    let cell = |at: usize| cells.get(at).cloned().unwrap_or_default();
    FounderRow {
        name: cell(1),
        occupation: cell(2),
        email: cell(4),
    }
}

fn import(conn: &mut Connection, stage: &mut Stage) -> Result<(), CommandError> {
    stage.meet_people(conn)?;
    let founder = stage.by_code(conn, FOUNDER)?;
    for (table, text) in ROSTER {
        let now = stage.tick();
        commands::people::import(
            conn,
            &founder,
            now,
            table,
            text.as_bytes(),
            &mut *stage.entropy,
        )?;
    }
    Ok(())
}

/// Gives crew their hats and everyone who performs the performer's; those with an address are invited
/// and, where an account is made for them, accept.
fn give_hats(
    conn: &mut Connection,
    stage: &mut Stage,
    script: &Script,
    account: &impl Fn(Newcomer) -> Option<NewAccount>,
) -> Result<(), CommandError> {
    let founder = stage.by_code(conn, FOUNDER)?;
    for stored in gagwright_store::people::list(conn, stage.production)? {
        let person = stored.person;
        if person.id == founder.person {
            continue;
        }
        let mut roles = script.crew.get(&person.code).cloned().unwrap_or_default();
        if person.performs {
            roles.insert(Role::Performer);
        }
        let newcomer = Newcomer {
            id: stage.mint(),
            name: person.name.clone(),
        };
        let account = account(newcomer).filter(|_| person.email.is_some());
        let now = stage.tick();
        let Some(account) = account else {
            commands::members::set_roles(conn, &founder, now, person.id, roles)?;
            continue;
        };
        let mut token_hash = vec![0u8; 32];
        (stage.entropy)(&mut token_hash);
        let invitation = NewInvitation {
            id: stage.mint(),
            person: person.id,
            roles,
            token_hash: token_hash.clone(),
            expires_at: now
                .saturating_add(SignedDuration::from_hours(72))
                .unwrap_or(now),
        };
        commands::members::invite(conn, &founder, now, invitation, &mut *stage.entropy)?;
        let now = stage.tick();
        commands::members::accept(conn, now, &token_hash, account)?;
    }
    Ok(())
}

/// Marks the database as the demo and keeps its sign-ins beside the mark.
fn mark(conn: &mut Connection, production: ProductionId) -> Result<(), CommandError> {
    let mut sign_ins = Vec::new();
    for member in gagwright_store::members::list(conn, production)? {
        if member.account.is_none() {
            continue;
        }
        let person = record::person(conn, production, member.person)?.person;
        if let Some(email) = person.email {
            sign_ins.push((
                person.code,
                SignIn {
                    email,
                    password: PASSWORD.into(),
                    name: person.name,
                    occupation: person.occupation,
                    roles: member.roles,
                },
            ));
        }
    }
    sign_ins.sort_by(|a, b| a.0.cmp(&b.0));
    let sign_ins: Vec<SignIn> = sign_ins.into_iter().map(|(_, one)| one).collect();
    let text = serde_json::to_string(&sign_ins)
        .map_err(|error| StoreError::Internal(error.to_string()))?;
    meta::set(conn, MARK, &text)?;
    Ok(())
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeMap;

    use gagwright_clearance::clearance;

    use super::*;
    use crate::{commands::Actor, trail_file, views};

    fn seeded() -> (Store, tempfile::TempDir, Timestamp) {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("demo.db");
        let store = Store::open(&format!("sqlite:{}", path.display())).unwrap();
        store.migrate().unwrap();
        let now: Timestamp = "2026-11-25T16:00:00Z".parse().unwrap();
        assert!(seed(&store, now, crate::entropy::system).unwrap());
        (store, folder, now)
    }

    fn members(store: &Store) -> Vec<Actor> {
        store
            .read(|conn| {
                let production = gagwright_store::productions::list(conn)?.remove(0).id;
                Ok::<_, StoreError>(
                    gagwright_store::members::list(conn, production)?
                        .into_iter()
                        .map(|one| Actor {
                            account: one.account,
                            production,
                            person: one.person,
                            roles: one.roles,
                            carried_by: None,
                        })
                        .collect(),
                )
            })
            .unwrap()
    }

    #[test]
    fn the_invented_production_stands_as_its_script_says_and_its_trail_verifies() {
        let (store, _folder, now) = seeded();
        let everyone = members(&store);
        let coordinator = everyone
            .iter()
            .find(|one| one.roles.contains(&Role::Coordinator))
            .unwrap();
        let ends: BTreeMap<String, _> = script::built_in()
            .unwrap()
            .gags
            .into_iter()
            .map(|gag| (gag.code, gag.ends))
            .collect();
        let list = store
            .read(|conn| views::gag_list(conn, coordinator, now))
            .unwrap();
        let stands: BTreeMap<String, _> = list
            .iter()
            .map(|gag| (gag.code.clone(), gag.state))
            .collect();
        assert_eq!(stands, ends);
        let trail = store
            .read(|conn| trail_file::export(conn, coordinator.production, trail_file::Parts::Left))
            .unwrap();
        let verified = gagwright_trail::verify_export(&trail).unwrap();
        assert!(verified.signoffs.len() > 20);
        let mut kinds: BTreeMap<&str, u32> = BTreeMap::new();
        for found in verified.signoffs {
            let key = serde_json::from_value(found.key.unwrap()).unwrap();
            let plan = gagwright_clearance::signoff::verify(&found.jws, &key).map(|_| "plan");
            let day = gagwright_clearance::day_mark::verify(&found.jws, &key).map(|_| "day");
            *kinds.entry(plan.or(day).unwrap()).or_insert(0) += 1;
            assert!(found.key_in_trail);
        }
        // Five sign the day of each of the two gags of today.
        assert_eq!(kinds["day"], 10);
        let sign_ins = store.read(sign_ins).unwrap().unwrap();
        assert_eq!(sign_ins.len(), 18);
        assert!(sign_ins[0].roles.contains(&Role::Coordinator));
        assert!(
            !seed(&store, now, crate::entropy::system).unwrap(),
            "a second seeding does nothing"
        );

        // Whatever a reader may not see is cut away, and the judge still answers the same.
        let gags: Vec<_> = list.iter().map(|gag| gag.id).collect();
        for gag in gags {
            let whole = store
                .read(|conn| views::case(conn, coordinator.production, gag))
                .unwrap();
            let wanted = clearance(&whole, now);
            for reader in &everyone {
                let shown = views::shown(reader, whole.clone());
                let judged = clearance(&shown, now);
                assert_eq!(judged.state, wanted.state);
                assert_eq!(judged.roles, wanted.roles);
                let outcomes = |answer: &gagwright_clearance::Clearance| {
                    answer
                        .slots
                        .iter()
                        .map(|slot| slot.verdict.as_ref().map(|verdict| verdict.outcome))
                        .collect::<Vec<_>>()
                };
                assert_eq!(outcomes(&judged), outcomes(&wanted));
                let may = [Role::Coordinator, Role::Medic, Role::Production]
                    .iter()
                    .any(|role| reader.roles.contains(role));
                let day = whole.plan.facets.setting.day;
                for other in shown
                    .people
                    .iter()
                    .filter(|one| !may && one.id != reader.person)
                {
                    assert!(other.email.is_none());
                    assert!(
                        other
                            .medically_clear_until
                            .is_none_or(|until| Some(until) == day)
                    );
                    assert!(other.certificates.iter().all(|one| one.number.is_none()));
                }
            }
        }
    }
}
