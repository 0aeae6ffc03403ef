//! Takes away what is kept of one person: what the roster says, what they wrote, what they drew, their
//! address and their sign-in. Rows stay where others count on them, with nothing of the person in them; the
//! trail's leaves are not touched. Must not know who may ask for it.

use diesel::prelude::*;
use gagwright_casting::{PersonId, ProductionId};
use gagwright_clearance::{
    case::{Briefing, DaySignOff, Debrief, Incident, Look, RegisteredItem, SHOCKED, Take},
    day_mark, signoff,
};
use jiff::Timestamp;
use serde_json::Value;
use uuid::Uuid;

use crate::{
    Connection, StoreError,
    columns::{Id, Moment},
    day_records::{self, Kind},
    documents, holds, idempotency, productions,
    schema::{
        accounts, day_records as day_rows, devices, drawn_marks, gags, invitations, members,
        photographs, plans, readings, runs, sessions, signoffs, test_shots,
    },
    signoffs as signed, trail,
};

/// How much there was.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Erased {
    /// Parts kept beside leaves of the trail.
    pub parts: usize,
    /// Sign-offs whose texts were kept.
    pub openings: usize,
    /// Marks they drew.
    pub marks: usize,
}

/// Erases all that is kept of a person but their row on the roster, which the caller replaces.
///
/// # Errors
/// When the database cannot be written.
pub fn erase(
    conn: &mut Connection,
    production: ProductionId,
    person: PersonId,
    now: Timestamp,
) -> Result<Erased, StoreError> {
    let (of, who) = (Id(production.0), Id(person.0));
    let erased = Erased {
        parts: trail::erase_about(conn, production, person)?,
        openings: signed::erase_openings(conn, production, person)?,
        marks: marks(conn, of, who)?,
    };
    words(conn, production, person)?;
    photographs(conn, of, person)?;
    day(conn, production, person)?;
    idempotency::forget_about(conn, person)?;
    let theirs = devices::table
        .filter(devices::production.eq(of))
        .filter(devices::person.eq(who));
    diesel::update(theirs)
        .set(devices::name.eq(""))
        .execute(conn)?;
    diesel::update(theirs.filter(devices::revoked_at.is_null()))
        .set(devices::revoked_at.eq(Some(Moment::from(now))))
        .execute(conn)?;
    diesel::delete(
        invitations::table
            .filter(invitations::production.eq(of))
            .filter(invitations::person.eq(who)),
    )
    .execute(conn)?;
    account(conn, of, who, now)?;
    Ok(erased)
}

fn marks(conn: &mut Connection, production: Id, person: Id) -> Result<usize, StoreError> {
    let theirs = signoffs::table
        .filter(signoffs::production.eq(production))
        .filter(signoffs::signer.eq(person))
        .select(signoffs::id);
    Ok(
        diesel::delete(drawn_marks::table.filter(drawn_marks::signoff.eq_any(theirs)))
            .execute(conn)?,
    )
}

/// Photographs of paper with their ink, and of paper whose signing they saw: both names are on it.
fn photographs(conn: &mut Connection, production: Id, person: PersonId) -> Result<(), StoreError> {
    let kept: Vec<(Id, String)> = signoffs::table
        .filter(signoffs::production.eq(production))
        .select((signoffs::id, signoffs::jws))
        .load(conn)?;
    for (id, jws) in kept {
        let shown = signoff::read_unverified(&jws)
            .is_ok_and(|one| one.signer == person || one.hand() == person);
        if shown {
            diesel::delete(photographs::table.find(id)).execute(conn)?;
        }
    }
    let days: Vec<day_records::Kept<DaySignOff>> =
        day_records::list(conn, ProductionId(production.0), Kind::Mark)?;
    for (_, mark) in days {
        let Ok(one) = day_mark::read_unverified(&mark.jws) else {
            continue;
        };
        if one.signer == person || one.hand() == person {
            diesel::delete(photographs::table.find(Id(one.id.0))).execute(conn)?;
        }
    }
    Ok(())
}

/// What the medic found in them, what they used, and what they wrote on the day.
fn day(
    conn: &mut Connection,
    production: ProductionId,
    person: PersonId,
) -> Result<(), StoreError> {
    for (_, look) in day_records::list::<Look>(conn, production, Kind::Look)? {
        if look.person == person {
            diesel::delete(day_rows::table.find(Id(look.id.0))).execute(conn)?;
        }
    }
    for (_, mut one) in day_records::list::<RegisteredItem>(conn, production, Kind::Equipment)? {
        let before = one.clone();
        if let Some(aside) = one.quarantined.as_mut().filter(|aside| aside.by == person)
            && aside.reason != SHOCKED
        {
            aside.reason.clear();
        }
        for shock in one
            .shock_loads
            .iter_mut()
            .filter(|shock| shock.by == person)
        {
            shock.what.clear();
        }
        if one != before {
            day_records::update(conn, Kind::Equipment, one.id, &one)?;
        }
    }
    for (_, mut one) in day_records::list::<Briefing>(conn, production, Kind::Briefing)? {
        if one.by == person {
            one.points.clear();
            day_records::update(conn, Kind::Briefing, one.id, &one)?;
        }
    }
    for (_, mut one) in day_records::list::<Debrief>(conn, production, Kind::Debrief)? {
        let before = one.clone();
        if one.by == person {
            one.as_planned.clear();
            one.differently.clear();
            one.next_time.clear();
        }
        one.used.retain(|used| used.person != person);
        if one != before {
            day_records::update(conn, Kind::Debrief, one.id, &one)?;
        }
    }
    for (_, mut one) in day_records::list::<Take>(conn, production, Kind::Take)? {
        let before = one.clone();
        if let Some(judged) = one.judged.as_mut().filter(|_| before.called_by == person) {
            judged.why_not.clear();
        }
        if let Some(outcome) = one.outcome.as_mut().filter(|outcome| outcome.by == person) {
            outcome.note.clear();
        }
        if one != before {
            day_records::update(conn, Kind::Take, one.id, &one)?;
        }
    }
    let policy = productions::get(conn, production)?.map(|found| found.policy);
    for (_, mut one) in day_records::list::<Incident>(conn, production, Kind::Incident)? {
        let before = one.clone();
        if one.by == person {
            one.what.clear();
        }
        let named = policy.as_ref().map(|policy| policy.to_tell(one.kind));
        for told in one.told.iter_mut().filter(|told| told.by == person) {
            // Whom the policy names stands in the clear in the trail too.
            if named
                .as_ref()
                .is_none_or(|named| !named.contains(&told.who))
            {
                told.who.clear();
            }
        }
        for closing in one.closings.iter_mut().filter(|one| one.person == person) {
            closing.action.clear();
        }
        if one != before {
            day_records::update(conn, Kind::Incident, one.id, &one)?;
        }
    }
    Ok(())
}

/// What they wrote beside holds, readings, runs, test shots and revisions.
fn words(
    conn: &mut Connection,
    production: ProductionId,
    person: PersonId,
) -> Result<(), StoreError> {
    for kept in holds::list(conn, production)? {
        let mut hold = kept.hold.clone();
        if hold.raised_by == Some(person) {
            hold.reason.clear();
        }
        for agreement in &mut hold.agreements {
            if agreement.person == person {
                agreement.cause.clear();
            }
        }
        if hold != kept.hold {
            holds::update(conn, &hold, hold.released_at)?;
        }
    }
    let (of, who) = (Id(production.0), Id(person.0));
    let own = gags::table.filter(gags::production.eq(of)).select(gags::id);
    diesel::update(
        plans::table
            .filter(plans::gag.eq_any(own))
            .filter(plans::author.eq(who)),
    )
    .set(plans::note.eq(""))
    .execute(conn)?;
    let rows: Vec<(Id, String)> = readings::table
        .filter(readings::production.eq(of))
        .select((readings::id, readings::document))
        .load(conn)?;
    for (id, text) in without(rows, "by", "place", person)? {
        diesel::update(readings::table.find(id))
            .set(readings::document.eq(text))
            .execute(conn)?;
    }
    let rows: Vec<(Id, String)> = runs::table
        .filter(runs::gag.eq_any(own))
        .select((runs::id, runs::document))
        .load(conn)?;
    for (id, text) in without(rows, "by", "note", person)? {
        diesel::update(runs::table.find(id))
            .set(runs::document.eq(text))
            .execute(conn)?;
    }
    let rows: Vec<(Id, String)> = test_shots::table
        .filter(test_shots::gag.eq_any(own))
        .select((test_shots::id, test_shots::document))
        .load(conn)?;
    for (id, text) in without(rows, "recorded_by", "note", person)? {
        diesel::update(test_shots::table.find(id))
            .set(test_shots::document.eq(text))
            .execute(conn)?;
    }
    Ok(())
}

/// Those documents that this person wrote something in, with the text emptied.
fn without(
    rows: Vec<(Id, String)>,
    author: &str,
    text: &str,
    person: PersonId,
) -> Result<Vec<(Id, String)>, StoreError> {
    let person = person.to_string();
    let mut changed = Vec::new();
    for (id, document) in rows {
        let mut value: Value = documents::read("the document", id.0, &document)?;
        if value.get(author).and_then(Value::as_str) != Some(person.as_str()) {
            continue;
        }
        if let Some(said) = value.get_mut(text) {
            *said = Value::String(String::new());
            changed.push((id, documents::write("the document", &value)?));
        }
    }
    Ok(changed)
}

/// Takes their seat away, and the account with it where it is no other production's.
fn account(
    conn: &mut Connection,
    production: Id,
    person: Id,
    now: Timestamp,
) -> Result<(), StoreError> {
    let seat = members::table.find((production, person));
    let account: Option<Option<Id>> = seat.select(members::account).first(conn).optional()?;
    diesel::delete(seat).execute(conn)?;
    let Some(account) = account.flatten() else {
        return Ok(());
    };
    let elsewhere: i64 = members::table
        .filter(members::account.eq(Some(account)))
        .count()
        .get_result(conn)?;
    if elsewhere > 0 {
        return Ok(());
    }
    crate::sessions::revoke_account(conn, account.0, now)?;
    diesel::update(sessions::table.filter(sessions::account.eq(account)))
        .set((
            sessions::browser.eq(None::<String>),
            sessions::system.eq(None::<String>),
        ))
        .execute(conn)?;
    diesel::update(accounts::table.find(account))
        .set((
            accounts::email.eq(nobody(account.0)),
            accounts::name.eq(""),
            // No password has this hash.
            accounts::password_hash.eq(""),
        ))
        .execute(conn)?;
    Ok(())
}

/// An address that nobody can have (RFC 2606, section 2).
fn nobody(account: Uuid) -> String {
    format!("{account}@erased.invalid")
}
