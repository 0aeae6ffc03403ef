//! `verify`: checks an exported trail, a leaf's proof or one sign-off with nothing but the file and,
//! where given, a key. It opens no database and no socket, and says what the file cannot prove.

use std::path::Path;

use gagwright_clearance::{
    day_mark,
    signoff::{self, PublicKey},
};
use gagwright_trail::{
    Hash, VerifyingKey, WitnessKey,
    export::{FoundSignOff, verify_export_with},
    verify_inclusion,
};
use serde::Serialize;

use super::{
    arguments::VerifyArguments,
    fault::Fault,
    files, say, say_json,
    table::{WIDTH, paragraph_in},
    verify_packet,
    verify_witness::{self, Told},
};
use crate::{packets, trail_file::LeafProof, words};

/// Keys that the reader has from somewhere else than the file.
#[derive(Clone, Copy, Debug, Default)]
pub(crate) struct Keys<'a> {
    /// The log's.
    pub(crate) log: Option<&'a VerifyingKey>,
    /// A device's, for a sign-off by itself.
    pub(crate) device: Option<&'a PublicKey>,
    /// Those of witnesses, each of which must have cosigned.
    pub(crate) witnesses: &'a [WitnessKey],
}

impl<'a> Keys<'a> {
    pub(crate) fn of_log(log: &'a VerifyingKey) -> Self {
        Keys {
            log: Some(log),
            ..Keys::default()
        }
    }
}

/// What was found.
#[derive(Debug, Serialize)]
pub(crate) struct Findings {
    /// What kind of file it is.
    pub(crate) file: &'static str,
    /// What was checked and holds.
    pub(crate) facts: Vec<String>,
    /// What this proves.
    pub(crate) proves: Vec<String>,
    /// What it does not prove.
    pub(crate) does_not_prove: Vec<String>,
}

pub(crate) fn run(arguments: &VerifyArguments) -> Result<(), Fault> {
    let bytes = files::bytes_of(&arguments.file)?;
    let log_key = arguments.log_key.as_deref().map(key_of_log).transpose()?;
    let key = arguments.key.as_deref().map(key_of_device).transpose()?;
    let mut witnesses: Vec<WitnessKey> = Vec::new();
    for text in &arguments.witness {
        let given = verify_witness::key_of_witness(text)?;
        // A key given twice is one witness, and not two.
        if !witnesses.contains(&given) {
            witnesses.push(given);
        }
    }
    let keys = Keys {
        log: log_key.as_ref(),
        device: key.as_ref(),
        witnesses: &witnesses,
    };
    let findings = if bytes.starts_with(b"%PDF") {
        verify_packet::check(&bytes, keys)?
    } else {
        check(&files::text_of(&arguments.file, bytes)?, keys)?
    };
    if arguments.json {
        return say_json(&findings);
    }
    say(told(&findings, WIDTH))
}

pub(crate) fn key_of_log(text: &str) -> Result<VerifyingKey, Fault> {
    text.trim().parse().map_err(|error| {
        Fault::usage(format!(
            "--log-key: {error}; give it as printed, name+hash+key"
        ))
    })
}

fn key_of_device(file: &Path) -> Result<PublicKey, Fault> {
    let text = files::read(file)?;
    serde_json::from_str(&text).map_err(|error| {
        Fault::usage(format!(
            "--key {}: {error}; give a JWK file: {{\"kty\":\"EC\",\"crv\":\"P-256\",\"x\":..., \"y\":...}}",
            file.display()
        ))
    })
}

/// Checks a text by what it looks like.
pub(crate) fn check(text: &str, keys: Keys<'_>) -> Result<Findings, Fault> {
    let trimmed = text.trim();
    if !trimmed.is_empty() && !trimmed.contains(char::is_whitespace) && !trimmed.starts_with('{') {
        if !keys.witnesses.is_empty() {
            return Err(Fault::usage(
                "--witness is for an exported trail, a packet or its proof; a sign-off by itself has no cosignatures",
            ));
        }
        return one_signoff(trimmed, keys.device);
    }
    if let Ok(proof) = serde_json::from_str::<LeafProof>(trimmed) {
        return leaf(&proof, keys);
    }
    trail(text, keys)
}

fn trail(text: &str, keys: Keys<'_>) -> Result<Findings, Fault> {
    let verified = verify_export_with(text, keys.log, keys.witnesses)
        .map_err(|error| Fault::failed(format!("this trail does NOT verify: {error}")))?;
    let mut good = 0;
    let mut unknown = 0;
    for found in &verified.signoffs {
        match of_trail(found)? {
            true => good += 1,
            false => unknown += 1,
        }
    }
    let mut facts = vec![
        format!(
            "{} leaves, from {} to {}",
            verified.size,
            moment(&verified.first_at),
            moment(&verified.last_at)
        ),
        format!("root {}", verified.root.to_hex()),
        format!("signed by {}", verified.log_key),
        format!("{good} sign-offs verify with the keys that this trail registered before them"),
        format!(
            "{} personal parts match their commitments, {} are erased or left out",
            verified.personal_kept, verified.personal_erased
        ),
    ];
    if unknown > 0 {
        facts.push(format!(
            "{unknown} sign-offs name a device that this trail never registered: not checked"
        ));
    }
    let kinds: Vec<String> = verified
        .kinds
        .iter()
        .map(|(kind, count)| format!("{kind} {count}"))
        .collect();
    let told = verify_witness::of_export(&verified);
    facts.extend(told.facts);
    facts.push(format!("leaves by kind: {}", kinds.join(", ")));
    let mut proves = verified.proves;
    if good > 0 {
        proves.push(
            "Each sign-off counted as verified was made by whoever held the key of that device, over \
             exactly the facets it names."
                .into(),
        );
    }
    proves.extend(told.proves);
    let mut does_not_prove = verified.does_not_prove;
    does_not_prove.extend(told.does_not_prove);
    Ok(Findings {
        file: "exported trail",
        facts,
        proves,
        does_not_prove,
    })
}

fn moment(at: &Option<String>) -> &str {
    at.as_deref().unwrap_or("never")
}

/// Whether a sign-off in a trail verifies; false when its key is not known. A wrong signature fails the
/// whole file: somebody tampered before the leaf was written, or the server accepted what it must not.
fn of_trail(found: &FoundSignOff) -> Result<bool, Fault> {
    let Some(key) = &found.key else {
        return Ok(false);
    };
    let key: PublicKey = serde_json::from_value(key.clone()).map_err(|error| {
        Fault::failed(format!(
            "this trail does NOT verify: leaf {}: the device's key cannot be read: {error}",
            found.leaf
        ))
    })?;
    // A mark for a day says in its header that it is one.
    let holds = if day_mark::read_unverified(&found.jws).is_ok() {
        day_mark::verify(&found.jws, &key).map(drop)
    } else {
        signoff::verify(&found.jws, &key).map(drop)
    };
    holds.map_err(|error| {
        Fault::failed(format!(
            "this trail does NOT verify: leaf {}: {error}",
            found.leaf
        ))
    })?;
    Ok(true)
}

pub(crate) fn leaf(proof: &LeafProof, keys: Keys<'_>) -> Result<Findings, Fault> {
    let wrong = |problem: String| Fault::failed(format!("this proof does NOT verify: {problem}"));
    if proof.kind != LeafProof::KIND {
        return Err(wrong(format!("its kind is not {}", LeafProof::KIND)));
    }
    let hash = proof
        .entry
        .hash()
        .map_err(|error| wrong(error.to_string()))?;
    if hash.to_hex() != proof.leaf_hash {
        return Err(wrong("the leaf does not have the hash beside it".into()));
    }
    let path: Option<Vec<Hash>> = proof.path.iter().map(|one| Hash::from_hex(one)).collect();
    let path = path.ok_or_else(|| wrong("a hash of its path is not 64 hex digits".into()))?;
    let root =
        Hash::from_hex(&proof.root).ok_or_else(|| wrong("its root is not 64 hex digits".into()))?;
    verify_inclusion(&hash, proof.entry.index, proof.tree_size, &path, &root)
        .map_err(|error| wrong(error.to_string()))?;
    let own: VerifyingKey = proof
        .log_key
        .parse()
        .map_err(|error| wrong(format!("the log's key cannot be read: {error}")))?;
    if keys.log.is_some_and(|given| *given != own) {
        return Err(wrong(
            "it is signed with another key than the one you gave".into(),
        ));
    }
    let checkpoint = own
        .verify(&proof.checkpoint)
        .map_err(|error| wrong(error.to_string()))?;
    if checkpoint.size != proof.tree_size || checkpoint.root != root {
        return Err(wrong(
            "the signed note is over another tree than this path leads to".into(),
        ));
    }
    let mut facts = vec![
        format!(
            "leaf {} of {}: {}, accepted {}",
            proof.entry.index, proof.tree_size, proof.entry.kind, proof.entry.at
        ),
        format!("root {}", proof.root),
        format!("signed by {}", proof.log_key),
    ];
    for fact in ["code", "revision", "plan_digest"] {
        if let Some(value) = proof.entry.facts.get(fact) {
            facts.push(format!(
                "{}: {}",
                fact.replace('_', " "),
                value.to_string().trim_matches('"')
            ));
        }
    }
    let mut does_not_prove = vec![
        "That the log never showed anyone a different tree: compare its signed notes with other \
         people's."
            .to_owned(),
        "That the time is right: it is the server's own clock.".to_owned(),
        "That the plan was safe, or carried out as written.".to_owned(),
    ];
    if keys.log.is_none() {
        does_not_prove.insert(
            0,
            "That the key is the production's: it came with the file. Give the key you trust with \
             --log-key."
                .into(),
        );
    }
    let mut proves = vec![
        "This leaf, unchanged to the last byte, is in the tree that the log signed.".into(),
        "Anyone who holds that signed note can tell if the leaf is ever changed or dropped.".into(),
    ];
    let told: Told = verify_witness::of_note(&proof.checkpoint, keys.witnesses).map_err(wrong)?;
    facts.extend(told.facts);
    proves.extend(told.proves);
    does_not_prove.extend(told.does_not_prove);
    Ok(Findings {
        file: "proof of one leaf",
        facts,
        proves,
        does_not_prove,
    })
}

fn one_signoff(jws: &str, key: Option<&PublicKey>) -> Result<Findings, Fault> {
    let Some(key) = key else {
        return Err(Fault::usage(
            "a sign-off by itself needs the device's public key: add --key FILE with its JWK (it is \
             on the person's page and in the packet's signoffs.json)",
        ));
    };
    if day_mark::read_unverified(jws).is_ok() {
        return one_day_mark(jws, key);
    }
    let statement = signoff::verify(jws, key)
        .map_err(|error| Fault::failed(format!("this sign-off does NOT verify: {error}")))?;
    let covers: Vec<&str> = statement.facets.keys().map(|facet| facet.name()).collect();
    let mut facts = vec![
        format!(
            "{} as {}",
            words::decision(statement.decision),
            words::named(&statement.role)
        ),
        format!("gag {}, revision {}", statement.gag, statement.revision),
        format!("plan digest {}", statement.plan_digest),
        format!("covers {}", covers.join(", ")),
        format!("signer {}, device {}", statement.signer, statement.device),
        format!("signed at {} by the device's clock", statement.signed_at),
        format!("key thumbprint {}", packets::thumbprint(key)),
    ];
    facts.extend(
        statement
            .conditions
            .iter()
            .map(|one| format!("a condition whose text has the commitment {one}")),
    );
    let reason = statement.reason.iter();
    facts.extend(reason.map(|one| format!("a reason whose text has the commitment {one}")));
    Ok(Findings {
        file: "sign-off",
        facts,
        proves: vec![
            "Whoever held this key signed exactly this statement; not one letter has changed since."
                .into(),
        ],
        does_not_prove: vec![
            "Whose key it is: compare the thumbprint with the device's owner.".into(),
            "That it still stands: a later revision, a later decline or a revoked device is not in \
             this file."
                .into(),
            "That the time is right: it is the device's own clock.".into(),
            "What a commitment stands for: the text is kept apart, and may have been erased.".into(),
        ],
    })
}

fn one_day_mark(jws: &str, key: &PublicKey) -> Result<Findings, Fault> {
    let statement = day_mark::verify(jws, key)
        .map_err(|error| Fault::failed(format!("this mark for a day does NOT verify: {error}")))?;
    Ok(Findings {
        file: "mark for a day",
        facts: vec![
            format!(
                "{} as {} for {}",
                words::decision(statement.decision),
                words::named(&statement.role),
                statement.day
            ),
            format!("gag {}, revision {}", statement.gag, statement.revision),
            format!("plan digest {}", statement.plan_digest),
            format!("equipment {}", statement.serials.join(", ")),
            format!("signer {}, device {}", statement.signer, statement.device),
            format!("signed at {} by the device's clock", statement.signed_at),
            format!("good until {} at the latest", statement.good_until),
            format!("key thumbprint {}", packets::thumbprint(key)),
        ],
        proves: vec![
            "Whoever held this key signed exactly this statement about that day; not one letter has \
             changed since."
                .into(),
        ],
        does_not_prove: vec![
            "Whose key it is: compare the thumbprint with the device's owner.".into(),
            "That it still stands: what voided it later is not in this file.".into(),
            "That the time is right: it is the device's own clock.".into(),
            "Where it was: the place is in it only as a hash.".into(),
        ],
    })
}

/// The findings as people read them, in so many columns.
pub(crate) fn told(findings: &Findings, width: usize) -> String {
    let mut text = format!("Verified: {}.\n\n", findings.file);
    for fact in &findings.facts {
        text.push_str(&paragraph_in(width, "  ", 4, fact));
    }
    for (heading, sentences) in [
        ("\nThis proves:\n", &findings.proves),
        ("\nThis does not prove:\n", &findings.does_not_prove),
    ] {
        text.push_str(heading);
        for sentence in sentences {
            text.push_str(&paragraph_in(width, "  - ", 4, sentence));
        }
    }
    text
}
