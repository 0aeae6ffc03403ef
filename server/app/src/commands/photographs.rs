//! Keeping the photograph of a sign-off or of a mark for the day made on paper, and showing it to those who may see it. It is
//! personal: what was signed holds only its hash, and verifies without it.

use gagwright_casting::{GagId, PersonId};
use gagwright_clearance::{
    Ink, RecordId, SignOffId,
    case::DaySignOff,
    day_mark,
    ink::{LARGEST_PHOTOGRAPH, media_type},
    signoff,
};
use gagwright_store::{Connection, day_records, day_records::Kind, photographs::Photograph};
use gagwright_trail::Hash;
use jiff::Timestamp;
use serde_json::json;

use super::{Actor, CommandError, Entropy, record};
use crate::permissions::Permission;

/// Keeps a photograph. One that is kept already is taken again and changes nothing.
///
/// # Errors
/// When the sign-off was not made on paper, when the photograph is not the one its witness signed for, or when
/// somebody whom it shows was erased.
pub fn keep(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    id: SignOffId,
    bytes: Vec<u8>,
    entropy: Entropy<'_>,
) -> Result<(), CommandError> {
    actor.require(Permission::ReadProduction)?;
    let paper = paper(conn, actor, id)?;
    let Some(ink) = &paper.ink else {
        return Err(CommandError::Conflict {
            what: "photograph",
            detail: "this sign-off was not made on paper".into(),
        });
    };
    let refused = |problem: &str, fix: &str| Err(CommandError::invalid("", problem, fix));
    let Some(media_type) = media_type(&bytes) else {
        return refused(
            "is neither a JPEG nor a PNG",
            "send the photograph as one of the two",
        );
    };
    if bytes.len() > LARGEST_PHOTOGRAPH {
        return refused("is larger than 4 MiB", "take it again with fewer pixels");
    }
    let hash = Hash::of(&bytes).to_hex();
    if hash != ink.photograph {
        return refused(
            "is not the photograph that the witness signed for",
            "send the very file whose SHA-256 the statement has in ink.photograph",
        );
    }
    if gagwright_store::photographs::is_kept(conn, id)? {
        return Ok(());
    }
    // A phone may send again what was kept and taken away since.
    for shown in [paper.signer, paper.hand] {
        record::not_erased(conn, actor.production, shown, "photograph")?;
    }
    record::Leaf::new("photograph.kept", now, Some(actor))
        .about(paper.gag)
        .fact("signoff", json!(id))
        .fact("bytes", json!(bytes.len()))
        .personal(json!({ "photograph": hash }), entropy)
        .append(conn)?;
    let photograph = Photograph {
        media_type: media_type.to_owned(),
        bytes,
    };
    gagwright_store::photographs::insert(conn, id, &photograph)?;
    Ok(())
}

/// The photograph, for the signer, the witness, and those who may read personal data.
///
/// # Errors
/// For anyone else, and when none is kept.
pub fn read(
    conn: &mut Connection,
    actor: &Actor,
    id: SignOffId,
) -> Result<Photograph, CommandError> {
    let paper = paper(conn, actor, id)?;
    if paper.signer != actor.person && paper.hand != actor.person {
        actor.require(Permission::ReadPersonal)?;
    }
    gagwright_store::photographs::get(conn, id)?.ok_or_else(|| CommandError::NotFound {
        what: "photograph of sign-off",
        id: id.to_string(),
    })
}

/// What of a signed statement a photograph is about.
struct Paper {
    signer: PersonId,
    hand: PersonId,
    ink: Option<Ink>,
    gag: GagId,
}

/// A sign-off, or a mark for the day.
fn paper(conn: &mut Connection, actor: &Actor, id: SignOffId) -> Result<Paper, CommandError> {
    let unknown = || CommandError::NotFound {
        what: "sign-off",
        id: id.to_string(),
    };
    let paper = match gagwright_store::signoffs::get(conn, id)? {
        Some((found, gag)) => {
            let one = signoff::read_unverified(&found.jws)?;
            Paper {
                signer: one.signer,
                hand: one.hand(),
                ink: one.ink,
                gag,
            }
        }
        None => {
            let mark: Option<day_records::Kept<DaySignOff>> =
                day_records::get(conn, actor.production, Kind::Mark, RecordId(id.0))?;
            let (gag, mark) = mark.ok_or_else(unknown)?;
            let one = day_mark::read_unverified(&mark.jws)?;
            Paper {
                signer: one.signer,
                hand: one.hand(),
                ink: one.ink,
                gag: gag.ok_or_else(unknown)?,
            }
        }
    };
    record::gag(conn, actor.production, paper.gag).map_err(|_| unknown())?;
    Ok(paper)
}
