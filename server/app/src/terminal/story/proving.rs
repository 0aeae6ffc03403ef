//! The story's last part: the packet, the exported trail, and what happens to a copy with one byte
//! changed.

use gagwright_clearance::{GagId, Role, signoff};
use gagwright_store::Store;
use gagwright_trail::{VerifyingKey, WitnessKey};

use super::{Teller, casting::INSIDE, play_read};
use crate::{
    demo::stage::Stage,
    packets::{self, Paper},
    terminal::{
        fault::Fault,
        verify::{self, Keys},
        verify_packet,
    },
    trail_file,
};

pub(super) fn prove(
    teller: &mut Teller,
    store: &Store,
    stage: &Stage,
    gag: GagId,
    witness: &WitnessKey,
) -> Result<(), Fault> {
    packet(teller, store, stage, gag)?;
    let (trail, key) = export(teller, store, stage, witness)?;
    let keys = Keys {
        witnesses: std::slice::from_ref(witness),
        ..Keys::of_log(&key)
    };
    offline(teller, store, stage, gag, keys)?;
    tampering(teller, &trail, keys)
}

fn packet(teller: &mut Teller, store: &Store, stage: &Stage, gag: GagId) -> Result<(), Fault> {
    teller.step("The packet is printed, on both papers")?;
    let (production, now) = (stage.production, stage.now);
    for (paper, name) in [(Paper::A4, "g01-a4.pdf"), (Paper::Letter, "g01-letter.pdf")] {
        let bytes = play_read(store, move |conn| {
            packets::build(conn, production, now, gag, paper)
        })?;
        let again = play_read(store, move |conn| {
            packets::build(conn, production, now, gag, paper)
        })?;
        teller.write(name, &bytes)?;
        teller.state(
            bytes.starts_with(b"%PDF-") && bytes == again,
            &format!("{name} is a PDF, and printing it again gives the same bytes."),
        )?;
    }
    Ok(())
}

fn export(
    teller: &mut Teller,
    store: &Store,
    stage: &Stage,
    witness: &WitnessKey,
) -> Result<(String, VerifyingKey), Fault> {
    teller.step("The trail is exported and checked with no server")?;
    let production = stage.production;
    let (trail, key, size) = play_read(store, move |conn| {
        Ok((
            trail_file::export(conn, production, trail_file::Parts::Left)?,
            trail_file::verifying_key(conn, production)?,
            gagwright_store::trail::size(conn, production)?,
        ))
    })?;
    teller.write("trail.jsonl", trail.as_bytes())?;
    let keys = Keys {
        witnesses: std::slice::from_ref(witness),
        ..Keys::of_log(&key)
    };
    let findings = verify::check(&trail, keys)?;
    teller.show(&verify::told(&findings, INSIDE))?;
    teller.state(
        trail.lines().count() as u64 == size + 2,
        &format!("all {size} leaves are in the file and verify, one for each thing that was done."),
    )?;
    Ok((trail, key))
}

/// One leaf's proof, and one sign-off by itself.
fn offline(
    teller: &mut Teller,
    store: &Store,
    stage: &Stage,
    gag: GagId,
    keys: Keys<'_>,
) -> Result<(), Fault> {
    teller.step("A single proof and a single sign-off are checked by themselves")?;
    let (production, now) = (stage.production, stage.now);
    let (_, proof) = play_read(store, move |conn| {
        packets::document(conn, production, now, gag)
    })?;
    let proof = serde_json::to_string_pretty(&proof)
        .map_err(|error| Fault::failed(format!("the proof cannot be written: {error}")))?;
    teller.write("g01-proof.json", proof.as_bytes())?;
    verify::check(&proof, keys)?;
    teller.state(
        true,
        "the packet's proof verifies: this revision is in the signed tree.",
    )?;

    let pdf = play_read(store, move |conn| {
        packets::build(conn, production, now, gag, Paper::A4)
    })?;
    verify_packet::check(&pdf, keys)?;
    const PLACES: usize = 40;
    let missed = (0..PLACES).filter(|place| {
        let mut copy = pdf.clone();
        if let Some(byte) = copy.get_mut(pdf.len() * (2 * place + 1) / (2 * PLACES)) {
            *byte ^= 1;
        }
        verify_packet::check(&copy, keys).is_ok()
    });
    teller.state(
        missed.count() == 0,
        &format!(
            "the packet itself verifies, page and files together, and {PLACES} copies with one byte changed do not."
        ),
    )?;

    let (case, _) = store.read(|conn| stage.judge(conn, gag))?;
    let (jws, statement) = case
        .signoffs
        .iter()
        .rev()
        .filter_map(|one| Some((one.jws.clone(), signoff::read_unverified(&one.jws).ok()?)))
        .find(|(_, statement)| statement.role == Role::Coordinator)
        .ok_or_else(|| Fault::failed("the coordinator's sign-off is missing"))?;
    let device = case
        .devices
        .iter()
        .find(|device| device.id == statement.device)
        .ok_or_else(|| Fault::failed("the coordinator's device is missing"))?;
    teller.write("g01-coordinator.jws", jws.as_bytes())?;
    verify::check(
        &jws,
        Keys {
            device: Some(&device.key),
            ..Keys::default()
        },
    )?;
    teller.state(
        true,
        "the coordinator's sign-off verifies with their public key alone.",
    )
}

/// One byte changed in a copy, in many places one after the other: each is found out.
fn tampering(teller: &mut Teller, trail: &str, keys: Keys<'_>) -> Result<(), Fault> {
    teller.step("One byte of a copy is changed")?;
    const PLACES: usize = 60;
    let bytes = trail.as_bytes();
    // First where it would hurt: a digit of the digest of a plan that was signed.
    let digest = trail
        .rfind("\"plan_digest\":\"")
        .map(|at| at + "\"plan_digest\":\"".len())
        .ok_or_else(|| Fault::failed("no plan's digest is in the trail"))?;
    let (copy, found) = changed(bytes, digest, keys);
    teller.write("trail-tampered.jsonl", &copy)?;
    let told = found
        .as_ref()
        .map(|fault| fault.sentence().to_owned())
        .unwrap_or_default();
    teller.tell(&format!(
        "One digit of a plan's digest is another in this copy. {told}."
    ))?;
    teller.state(found.is_some(), "the changed copy is found out.")?;
    let missed: Vec<usize> = (0..PLACES)
        .map(|place| bytes.len() * (2 * place + 1) / (2 * PLACES))
        .filter(|at| changed(bytes, *at, keys).1.is_none())
        .collect();
    teller.state(
        missed.is_empty(),
        &format!("so are {PLACES} more copies, each with one byte changed in another place."),
    )
}

/// A copy with the lowest bit of one byte turned over, and what checking it says.
fn changed(bytes: &[u8], at: usize, keys: Keys<'_>) -> (Vec<u8>, Option<Fault>) {
    let mut copy = bytes.to_vec();
    if let Some(byte) = copy.get_mut(at) {
        *byte ^= 1;
    }
    let found = match std::str::from_utf8(&copy) {
        Ok(text) => verify::check(text, keys).err(),
        Err(_) => Some(Fault::failed("it is not text any more")),
    };
    (copy, found)
}
