//! The story's witness: somebody outside who is added, and twice cosigns the trail, the second time after it grew.

use gagwright_store::Store;
use gagwright_trail::{Checkpoint, VerifyingKey, Witness, verify_consistency};

use super::{Teller, play, play_read};
use crate::{
    commands::{
        CommandError,
        witnesses::{self, NewCosignature, NewWitness},
    },
    demo::stage::Stage,
    entropy,
    terminal::fault::Fault,
    trail_file,
};

/// The witness, and the last note that it cosigned.
pub(super) struct Watching {
    pub(super) witness: Witness,
    last: Checkpoint,
}

/// A witness is added and looks at the trail for the first time.
pub(super) fn begin(
    teller: &mut Teller,
    store: &Store,
    stage: Stage,
) -> Result<(Watching, Stage), Fault> {
    teller.step("Somebody outside begins to watch the trail")?;
    let mut seed = [0u8; 32];
    entropy::system(&mut seed);
    let witness = Witness::from_seed("witness.example/insurer", seed)
        .map_err(|error| Fault::failed(error.to_string()))?;
    let key = witness.key().to_string();
    let (added, stage) = play(store, stage, move |conn, stage| {
        let actor = stage.by_code(conn, "C01")?;
        let now = stage.tick();
        witnesses::add(conn, &actor, now, &NewWitness { key })
    })?;
    teller.tell(&format!(
        "The insurer made a key and keeps it. The coordinator adds its public half, {}, as a witness.",
        added.key
    ))?;
    let (last, stage) = look(teller, store, stage, &witness)?;
    Ok((Watching { witness, last }, stage))
}

/// It looks again.
pub(super) fn again(
    teller: &mut Teller,
    store: &Store,
    stage: Stage,
    watching: &mut Watching,
) -> Result<Stage, Fault> {
    teller.step("The witness looks again")?;
    let production = stage.production;
    let before = watching.last.clone();
    let (last, stage) = look(teller, store, stage, &watching.witness)?;
    let (old, new) = (before.size, last.size);
    let path = play_read(store, move |conn| {
        Ok(gagwright_store::trail::consistency_path(
            conn, production, old, new,
        )?)
    })?;
    teller.state(
        old < new && verify_consistency(old, new, &before.root, &last.root, &path).is_ok(),
        &format!(
            "the {old} entries that it saw first are the first of these {new}, by {} hashes: nothing was changed or \
             taken out, not even by whoever runs the server.",
            path.len()
        ),
    )?;
    watching.last = last;
    Ok(stage)
}

fn look(
    teller: &mut Teller,
    store: &Store,
    stage: Stage,
    witness: &Witness,
) -> Result<(Checkpoint, Stage), Fault> {
    let production = stage.production;
    let (note, log): (String, VerifyingKey) = play_read(store, move |conn| {
        Ok((
            trail_file::checkpoint(conn, production)?,
            trail_file::verifying_key(conn, production)?,
        ))
    })?;
    let failed = |error: gagwright_trail::CheckpointError| Fault::failed(error.to_string());
    let checkpoint = log.verify(&note).map_err(failed)?;
    let mut stage = stage;
    let seconds = u64::try_from(stage.tick().as_second()).unwrap_or(0);
    let line = witness.cosign(&note, &log, seconds).map_err(failed)?;
    let cosigned = format!("{note}{line}\n");
    teller.write(
        &format!("cosigned-{}.note", checkpoint.size),
        cosigned.as_bytes(),
    )?;
    let (size, stage) = play(store, stage, move |conn, stage| {
        let actor = stage.by_code(conn, "C01")?;
        let now = stage.tick();
        let new = NewCosignature {
            cosigned,
            size: None,
        };
        witnesses::receive(conn, &actor, now, &new)?;
        Ok::<_, CommandError>(gagwright_store::trail::size(conn, stage.production)?)
    })?;
    teller.state(
        size == checkpoint.size,
        &format!(
            "the trail of {size} entries is cosigned, and has still {size}: a cosignature adds none."
        ),
    )?;
    Ok((checkpoint, stage))
}
