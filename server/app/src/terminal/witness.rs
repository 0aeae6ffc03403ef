//! `witness`: what somebody outside does who watches a trail: makes a key, and signs that a checkpoint continues the
//! last one it signed. It opens no database and no socket, and signs nothing that shrank or forked.

use std::path::PathBuf;

use clap::{Args, Subcommand};
use gagwright_trail::{
    Checkpoint, Hash, VerifyingKey, Witness,
    export::{read_checkpoint, read_leaves, verify_export_with},
    roots_at,
    tree::hex,
    verify_consistency,
};
use serde::{Deserialize, Serialize};

use super::{fault::Fault, files, say, verify, verify_witness::moment};
use crate::{clock, entropy, private_file};

/// What a witness does.
#[derive(Debug, Subcommand)]
pub(crate) enum WitnessSubcommand {
    /// Make a witness's key
    #[command(
        after_help = "Example:\n  gagwright witness key --name witness.example/w1 --out w1.key\n\n\
        Prints the public key. Give it to the production, which adds it on its Trail screen, and to whoever is\n\
        to check the trail with `gagwright verify --witness`. The name stands in the trail for ever: take an\n\
        organisation's or a machine's, not a person's."
    )]
    Key(KeyArguments),
    /// Cosign a checkpoint, if it continues the last one that was cosigned
    #[command(
        after_help = "Examples:\n  gagwright witness sign trail.jsonl --key w1.key --first --out seen.note\n  \
        gagwright witness sign trail.jsonl --key w1.key --last seen.note --out seen-2.note\n  \
        gagwright witness sign checkpoint.txt --log-key 'name+hash+key' --key w1.key --last seen.note \\\n    \
        --proof growth.json\n\n\
        What it writes goes back to the production, and is kept for the next time: it is what --last asks for.\n\
        A trail that lost entries, or has others than it had, is not signed. The proof is what the API gives under\n\
        trail/consistency; an export needs none."
    )]
    Sign(SignArguments),
}

#[derive(Args, Debug)]
pub(crate) struct KeyArguments {
    /// The name it signs under, with no spaces and no "+"
    #[arg(long)]
    pub(crate) name: String,
    /// The file to write the secret key to; it must not be there yet
    #[arg(long, value_name = "FILE")]
    pub(crate) out: PathBuf,
}

#[derive(Args, Debug)]
#[command(group(clap::ArgGroup::new("before").required(true)))]
pub(crate) struct SignArguments {
    /// An exported trail (.jsonl), or a checkpoint as the API gives it
    pub(crate) file: PathBuf,
    /// The witness's secret key
    #[arg(long, value_name = "FILE")]
    pub(crate) key: PathBuf,
    /// The last note of this trail that this witness cosigned
    #[arg(long, value_name = "NOTE", group = "before")]
    pub(crate) last: Option<PathBuf>,
    /// This witness has never cosigned this trail
    #[arg(long, group = "before")]
    pub(crate) first: bool,
    /// The proof that the trail only grew since, where only a checkpoint is given
    #[arg(long, value_name = "FILE")]
    pub(crate) proof: Option<PathBuf>,
    /// The log's public key as you got it from somewhere you trust, name+hash+key
    #[arg(long, value_name = "KEY")]
    pub(crate) log_key: Option<String>,
    /// Write the cosigned note to this file and print only the new line
    #[arg(long, value_name = "FILE")]
    pub(crate) out: Option<PathBuf>,
}

/// The file with the secret.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Kept {
    kind: String,
    name: String,
    /// 32 bytes, hex.
    seed: String,
}

const KIND: &str = "gagwright/witness-key/1";

/// What the API gives under `trail/consistency`.
#[derive(Deserialize)]
struct Growth {
    from: u64,
    to: u64,
    path: Vec<Hash>,
}

pub(crate) fn run(subcommand: &WitnessSubcommand) -> Result<(), Fault> {
    match subcommand {
        WitnessSubcommand::Key(arguments) => make_key(arguments),
        WitnessSubcommand::Sign(arguments) => sign(arguments),
    }
}

fn make_key(arguments: &KeyArguments) -> Result<(), Fault> {
    let mut seed = [0u8; 32];
    entropy::system(&mut seed);
    let witness = Witness::from_seed(&arguments.name, seed)
        .map_err(|_| Fault::usage("--name: must not be empty nor hold white space or \"+\""))?;
    let kept = Kept {
        kind: KIND.to_owned(),
        name: arguments.name.clone(),
        seed: hex(&seed),
    };
    let text = serde_json::to_string(&kept)
        .map_err(|error| Fault::failed(format!("the key cannot be written: {error}")))?;
    private_file::write_new(&arguments.out, format!("{text}\n").as_bytes()).map_err(|error| {
        let file = arguments.out.display();
        Fault::failed(format!(
            "cannot write {file}: {error}; choose another with --out"
        ))
    })?;
    say(witness.key().to_string())
}

fn key_in(arguments: &SignArguments) -> Result<Witness, Fault> {
    let file = arguments.key.display();
    let text = files::read(&arguments.key)?;
    let open = private_file::open_to_others(&arguments.key)
        .map_err(|error| Fault::failed(format!("cannot read {file}: {error}")))?;
    if open {
        return Err(Fault::failed(format!(
            "others may read {file}, so it may be used by others; make it its owner's alone (chmod 600), or \
             make a new key if somebody had it"
        )));
    }
    let broken = || {
        Fault::failed(format!(
            "{file} is no witness's key; make one with `gagwright witness key`"
        ))
    };
    let kept: Kept = serde_json::from_str(&text).map_err(|_| broken())?;
    let seed = Hash::from_hex(&kept.seed).filter(|_| kept.kind == KIND);
    Witness::from_seed(&kept.name, seed.ok_or_else(broken)?.0).map_err(|_| broken())
}

/// What there is to cosign.
struct Shown {
    log: VerifyingKey,
    note: String,
    checkpoint: Checkpoint,
    /// The leaves, where a whole export was given.
    leaves: Option<Vec<Hash>>,
    /// The keys and sizes of the cosignatures that came with it.
    cosigned: Vec<(String, u64)>,
}

fn sign(arguments: &SignArguments) -> Result<(), Fault> {
    let witness = key_in(arguments)?;
    let shown = shown(arguments, &witness)?;
    let now = u64::try_from(clock::now().as_second()).unwrap_or(0);
    if arguments.first {
        first(&witness, &shown)?;
    }
    if let Some(file) = &arguments.last {
        let seconds = continues(arguments, &witness, &shown, &files::read(file)?)?;
        if now < seconds {
            return Err(refused(format!(
                "this machine's clock is behind the last note, which was cosigned at {}; set the clock",
                moment(seconds)
            )));
        }
    }
    let line = witness
        .cosign(&shown.note, &shown.log, now)
        .map_err(|error| refused(error.to_string()))?;
    let note = format!("{}{line}\n", shown.note);
    match &arguments.out {
        None => say(note),
        Some(file) => {
            files::put(file, note.as_bytes()).map_err(|error| {
                let file = file.display();
                Fault::failed(format!(
                    "cannot write {file}: {error}; choose another with --out"
                ))
            })?;
            say(line)
        }
    }
}

/// Whoever says that it is the first time is not believed against its own signature.
fn first(witness: &Witness, shown: &Shown) -> Result<(), Fault> {
    let key = witness.key().to_string();
    let before = shown.cosigned.iter().filter(|(by, _)| *by == key);
    match before.map(|(_, size)| size).max() {
        None => Ok(()),
        Some(size) => Err(refused(format!(
            "this key cosigned this trail before, at {size} entries, so it is not the first time; give the note of \
             then with --last"
        ))),
    }
}

fn refused(problem: String) -> Fault {
    Fault::failed(format!("NOT cosigned: {problem}"))
}

fn shown(arguments: &SignArguments, witness: &Witness) -> Result<Shown, Fault> {
    let text = files::read(&arguments.file)?;
    let given = arguments
        .log_key
        .as_deref()
        .map(verify::key_of_log)
        .transpose()?;
    if !text.starts_with('{') {
        let log = given.ok_or_else(|| {
            Fault::usage(
                "a checkpoint alone does not say whose it is: give --log-key with the log's key as you got it \
                 from somewhere you trust, or give an export",
            )
        })?;
        let checkpoint = log
            .verify(&text)
            .map_err(|error| refused(error.to_string()))?;
        let own = witness.key().verify(&text).ok();
        return Ok(Shown {
            log,
            note: text,
            cosigned: own
                .map(|_| (witness.key().to_string(), checkpoint.size))
                .into_iter()
                .collect(),
            checkpoint,
            leaves: None,
        });
    }
    let verified = verify_export_with(&text, given.as_ref(), &[])
        .map_err(|error| refused(format!("this trail does NOT verify: {error}")))?;
    let broken = |error: &dyn std::fmt::Display| refused(error.to_string());
    let log: VerifyingKey = verified.log_key.parse().map_err(|error| broken(&error))?;
    let note = read_checkpoint(&text).map_err(|error| broken(&error))?;
    let leaves = read_leaves(&text).map_err(|error| broken(&error))?;
    let leaves: Result<Vec<Hash>, _> = leaves.iter().map(|leaf| leaf.entry.hash()).collect();
    Ok(Shown {
        checkpoint: log.verify(&note).map_err(|error| broken(&error))?,
        log,
        note,
        leaves: Some(leaves.map_err(|error| broken(&error))?),
        cosigned: verified
            .witnessed
            .into_iter()
            .map(|one| (one.key, one.size))
            .collect(),
    })
}

/// Whether what is shown continues the last note, and when that was cosigned.
fn continues(
    arguments: &SignArguments,
    witness: &Witness,
    shown: &Shown,
    last: &str,
) -> Result<u64, Fault> {
    let of_last =
        |error: &dyn std::fmt::Display| refused(format!("the note given with --last: {error}"));
    let before = shown.log.verify(last).map_err(|error| of_last(&error))?;
    let cosigned = witness
        .key()
        .verify(last)
        .map_err(|error| of_last(&error))?;
    let (old, new) = (before.size, shown.checkpoint.size);
    if new < old {
        return Err(refused(format!(
            "the trail shrank: it had {old} entries at {}, and has {new} now. Entries were taken out. Keep both \
             notes: together they prove it",
            moment(cosigned.seconds)
        )));
    }
    let forked = || {
        refused(format!(
            "the trail forked: its first {old} entries are not those that it had at {}. Entries were changed, \
             exchanged or moved. Keep both notes: together they prove it",
            moment(cosigned.seconds)
        ))
    };
    if let Some(leaves) = &shown.leaves {
        let roots = roots_at(leaves, &[old].into());
        return match roots.get(&old) == Some(&before.root) {
            true => Ok(cosigned.seconds),
            false => Err(forked()),
        };
    }
    if new == old {
        return match before.root == shown.checkpoint.root {
            true => Ok(cosigned.seconds),
            false => Err(forked()),
        };
    }
    let Some(file) = &arguments.proof else {
        return Err(Fault::usage(format!(
            "give --proof with what the API answers to trail/consistency?from={old}&to={new}, or an export \
             instead of the checkpoint"
        )));
    };
    let proof = files::read(file)?;
    let growth: Growth = serde_json::from_str(&proof).map_err(|error| {
        Fault::usage(format!(
            "--proof {}: {error}; give the API's answer as it came",
            file.display()
        ))
    })?;
    if (growth.from, growth.to) != (old, new) {
        return Err(refused(format!(
            "the proof is from {} to {} entries; it should be from {old} to {new}",
            growth.from, growth.to
        )));
    }
    verify_consistency(old, new, &before.root, &shown.checkpoint.root, &growth.path).map_err(
        |error| {
            refused(format!(
                "the proof does not show that the trail only grew: {error}"
            ))
        },
    )?;
    Ok(cosigned.seconds)
}
