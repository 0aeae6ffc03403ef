//! Keeping the mark a signer drew. The sign-off's own leaf has the mark's hash inside what was signed, so
//! keeping the drawing beside it appends nothing: it is personal, and may be deleted one day.

use gagwright_clearance::{Drawing, Statement, signoff};
use gagwright_store::Connection;

use super::{Actor, CommandError, record};
use crate::permissions::Permission;

/// Keeps a drawing with the sign-off it was handed in with, which is on record by now.
///
/// # Errors
/// When it cannot be drawn, or is not the one that was signed.
pub fn keep(
    conn: &mut Connection,
    actor: &Actor,
    jws: &str,
    drawing: &Drawing,
) -> Result<(), CommandError> {
    actor.require(Permission::ReadProduction)?;
    if let Err(problem) = drawing.check() {
        let told = problem.to_string();
        let (problem, fix) = told.split_once("; ").unwrap_or((&told, "draw it again"));
        return Err(CommandError::invalid("/mark", problem, fix));
    }
    let statement: Statement = signoff::read_unverified(jws)?;
    if statement.mark.as_deref() != Some(drawing.hash().as_str()) {
        return Err(CommandError::invalid(
            "/mark",
            "is not the drawing that was signed",
            "send the very drawing whose hash the statement has in its mark, or leave it out",
        ));
    }
    // One that follows its sign-off late stays away when the signer was erased meanwhile.
    if record::is_erased(conn, actor.production, statement.signer)? {
        return Ok(());
    }
    gagwright_store::drawn_marks::keep(conn, statement.id, drawing)?;
    Ok(())
}
