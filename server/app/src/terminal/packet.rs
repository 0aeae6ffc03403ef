//! `packet`: a gag's packet as a PDF file, with its proof beside it.

use std::{fs, path::PathBuf};

use gagwright_packet::Paper;
use serde_json::json;

use super::{
    arguments::{PacketArguments, PaperSize},
    database,
    fault::Fault,
    say, say_json,
};
use crate::{clock, packets};

pub(crate) fn run(arguments: &PacketArguments) -> Result<(), Fault> {
    let paper = match arguments.paper {
        PaperSize::A4 => Paper::A4,
        PaperSize::Letter => Paper::Letter,
    };
    let store = database::open(&arguments.place)?;
    let (document, proof) = store.read(|conn| {
        let production = database::production(conn, &arguments.place)?;
        let row = database::gag(conn, &production, &arguments.gag)?;
        Ok::<_, Fault>(packets::document(
            conn,
            production.id,
            clock::now(),
            row.id,
        )?)
    })?;
    let bytes = gagwright_packet::render(&document, paper)
        .map_err(|error| Fault::failed(format!("the packet cannot be printed: {error}")))?;
    let file = arguments.out.clone().unwrap_or_else(|| {
        PathBuf::from(format!("{}-r{}.pdf", document.gag_code, document.revision))
    });
    let beside = file.with_extension("proof.json");
    let proof = serde_json::to_string_pretty(&proof)
        .map_err(|error| Fault::failed(format!("the proof cannot be written: {error}")))?;
    for (file, bytes) in [(&file, bytes.as_slice()), (&beside, proof.as_bytes())] {
        fs::write(file, bytes).map_err(|error| {
            Fault::failed(format!(
                "cannot write {}: {error}; choose another with --out",
                file.display()
            ))
        })?;
    }
    if arguments.json {
        return say_json(&json!({
            "file": file,
            "proof": beside,
            "gag": document.gag_code,
            "revision": document.revision,
            "state": document.state.word,
            "plan_digest": document.plan_digest,
        }));
    }
    say(format!(
        "{} {} revision {}: {}\n{}\n{}\n{}",
        document.gag_code,
        document.gag_title,
        document.revision,
        document.state.word,
        document.state_sentence,
        file.display(),
        beside.display()
    ))
}
