//! Starting a production: its policy, its first person and the first leaf of its trail.

use gagwright_casting::Person;
use gagwright_clearance::Policy;
use gagwright_store::{
    Connection, members::MemberRow, people::StoredPerson, productions::Production,
};
use jiff::Timestamp;
use serde_json::json;

use super::{
    CommandError, Entropy, NewProduction,
    problems::{Problems, SHORT},
    record,
};
use crate::trail_file;

/// Starts a production with its founder on the roster. Who may do this is for the edge to decide:
/// the one-time set-up link, or the demo.
///
/// # Errors
/// For a name that is empty or a time zone nobody knows.
pub fn create(
    conn: &mut Connection,
    now: Timestamp,
    new: NewProduction,
    policy: Policy,
    entropy: Entropy<'_>,
) -> Result<Production, CommandError> {
    let mut problems = Problems::default();
    problems.required("/production_name", &new.name, SHORT);
    problems.required("/name", &new.founder.name, SHORT);
    if jiff::tz::TimeZone::get(&new.time_zone).is_err() {
        problems.add(
            "/time_zone",
            format!("\"{}\" is not a time zone", new.time_zone),
            "give an IANA name, for example Europe/Lisbon",
        );
    }
    problems.finish()?;
    let production = Production {
        id: new.id,
        name: new.name,
        demo: new.demo,
        time_zone: new.time_zone,
        hold_code: hold_code(entropy),
        policy,
        created_at: now,
    };
    gagwright_store::productions::insert(conn, &production)?;
    trail_file::ensure_log_key(conn, entropy)?;
    let founder = &new.founder;
    let person = founder_on_roster(founder);
    record::Leaf::for_production("production.created", now, new.id, None)
        .fact("founder", json!(founder.person))
        .fact("roles", json!(founder.roles))
        .fact("policy", json!(production.policy.version))
        .fact("demo", json!(production.demo))
        .fact("time_zone", json!(production.time_zone))
        .part(
            "production",
            None,
            json!({ "name": production.name }),
            entropy,
        )
        .part("policy", None, json!(production.policy), entropy)
        .person(&person, entropy)
        .append(conn)?;
    gagwright_store::people::insert(
        conn,
        &StoredPerson {
            person,
            production: new.id,
            version: 1,
        },
    )?;
    gagwright_store::members::upsert(
        conn,
        &MemberRow {
            production: new.id,
            person: founder.person,
            account: founder.account,
            roles: founder.roles.clone(),
        },
    )?;
    Ok(production)
}

fn founder_on_roster(founder: &super::Founder) -> Person {
    Person {
        occupation: founder.occupation.clone(),
        email: founder.email.clone(),
        ..Person::named(founder.person, founder.code.clone(), founder.name.clone())
    }
}

/// Eight characters that cannot be mistaken for each other on a wet page: no 0/O, 1/I/L, no vowels
/// that would spell words. 24^8 codes; the API limits how often a wrong one may be tried.
fn hold_code(entropy: Entropy<'_>) -> String {
    const LETTERS: &[u8; 24] = b"23456789BCDFGHJKMNPQRTVW";
    let mut code = String::new();
    while code.len() < 8 {
        let mut byte = [0u8; 1];
        entropy(&mut byte);
        // 240 is the largest multiple of 24 that fits: anything above would favour some letters.
        if byte[0] < 240 {
            code.push(char::from(LETTERS[usize::from(byte[0] % 24)]));
        }
    }
    code
}
