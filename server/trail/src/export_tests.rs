//! Exports and single proofs: written, read back, erased from, and tampered with.

use proptest::prelude::*;
use serde_json::json;

use super::*;

#[path = "export_tests_sweep.rs"]
mod sweep;
#[path = "export_tests_witnessed.rs"]
mod witnessed;
use crate::{LeafProof, LogKey, commitment, leaf_hash};

const ORIGIN: &str = "salt-meridian.example/trail";
const PRODUCTION: &str = "01920000-0000-7000-8000-000000000001";
/// A compact JWS only in form: its header names the device `d1`.
const JWS: &str = "eyJhbGciOiJFUzI1NiIsImtpZCI6ImQxIn0.e30.AA";

fn key() -> LogKey {
    LogKey::from_seed([3; 32])
}

fn entry(index: u64, kind: &str, facts: Value) -> Entry {
    Entry {
        index,
        at: format!("2026-03-02T07:{:02}:00Z", index % 60),
        kind: kind.to_owned(),
        production: PRODUCTION.to_owned(),
        gag: None,
        actor: None,
        facts: facts.as_object().unwrap().clone(),
        commitments: BTreeMap::new(),
    }
}

fn export_of(leaves: Vec<ExportedLeaf>) -> Export {
    let hashes: Vec<Hash> = leaves
        .iter()
        .map(|leaf| leaf.entry.hash().unwrap())
        .collect();
    let checkpoint = key()
        .sign_checkpoint(ORIGIN, hashes.len() as u64, &root(&hashes))
        .unwrap();
    Export {
        header: ExportHeader {
            kind: ExportHeader::KIND.to_owned(),
            production: PRODUCTION.to_owned(),
            origin: ORIGIN.to_owned(),
            log_key: key().verifying_key(ORIGIN).unwrap().to_string(),
            devices: Vec::new(),
        },
        leaves,
        checkpoint,
        cosigned: Vec::new(),
    }
}

fn sample() -> Export {
    let personal = json!({"name": "Māra Ozola", "mass": 58.5});
    let mut person = entry(1, "person.put", json!({"person": "p1"}));
    person.commitments = [(
        "person".to_owned(),
        commitment(&[9; 32], &personal).unwrap(),
    )]
    .into();
    let mut person = ExportedLeaf::bare(person);
    let part = ExportedPart::new(&[9; 32], personal);
    person.parts.insert("person".to_owned(), part);
    export_of(vec![
        ExportedLeaf::bare(entry(0, "production.created", json!({}))),
        person,
        ExportedLeaf::bare(entry(
            2,
            "device.registered",
            json!({"device": "d1", "key": {"kty": "EC"}}),
        )),
        ExportedLeaf::bare(entry(3, "signoff.made", json!({"jws": JWS}))),
    ])
}

#[test]
fn a_whole_export_verifies_and_says_what_it_holds() {
    let text = sample().to_jsonl().unwrap();
    assert_eq!(text.lines().count(), 6);
    let verified = verify_export(&text).unwrap();
    assert_eq!(
        (
            verified.size,
            verified.personal_kept,
            verified.personal_erased
        ),
        (4, 1, 0)
    );
    assert_eq!(verified.kinds["signoff.made"], 1);
    assert_eq!(verified.first_at.as_deref(), Some("2026-03-02T07:00:00Z"));
    assert_eq!(verified.last_at.as_deref(), Some("2026-03-02T07:03:00Z"));
    let signoff = &verified.signoffs[0];
    assert_eq!((signoff.leaf, signoff.device.as_deref()), (3, Some("d1")));
    assert_eq!(signoff.key, Some(json!({"kty": "EC"})));
    assert!(signoff.key_in_trail);
    assert!(verified.does_not_prove[0].contains("key came with the file"));
}

#[test]
fn a_reader_with_a_key_of_their_own_is_told_more() {
    let text = sample().to_jsonl().unwrap();
    let trusted = key().verifying_key(ORIGIN).unwrap();
    let verified = verify_export_against(&text, &trusted).unwrap();
    assert!(verified.key_was_given);
    assert!(
        !verified
            .does_not_prove
            .iter()
            .any(|line| line.contains("key came with the file"))
    );
    let other = LogKey::from_seed([4; 32]).verifying_key(ORIGIN).unwrap();
    let error = verify_export_against(&text, &other).unwrap_err();
    assert_eq!(error.line, 1);
    assert!(error.problem.contains("not with the key given"), "{error}");
}

#[test]
fn erasing_a_person_leaves_every_proof_valid() {
    let mut export = sample();
    export.leaves[1].parts.clear();
    let verified = verify_export(&export.to_jsonl().unwrap()).unwrap();
    assert_eq!(
        (
            verified.size,
            verified.personal_kept,
            verified.personal_erased
        ),
        (4, 0, 1)
    );
    assert_eq!(
        verified.root,
        verify_export(&sample().to_jsonl().unwrap()).unwrap().root
    );
    assert!(
        verified
            .does_not_prove
            .iter()
            .any(|line| line.contains("the one personal part that is not in this file"))
    );
}

#[test]
fn a_key_registered_after_the_sign_off_or_only_in_the_header_is_told_apart() {
    let mut export = export_of(vec![
        ExportedLeaf::bare(entry(0, "signoff.made", json!({"jws": JWS}))),
        ExportedLeaf::bare(entry(
            1,
            "device.registered",
            json!({"device": "d1", "key": {"kty": "EC"}}),
        )),
    ]);
    let verified = verify_export(&export.to_jsonl().unwrap()).unwrap();
    assert_eq!(verified.signoffs[0].key, None);
    export.header.devices = vec![ExportDevice {
        id: "d1".to_owned(),
        key: json!({"x": 1}),
    }];
    let verified = verify_export(&export.to_jsonl().unwrap()).unwrap();
    assert_eq!(verified.signoffs[0].key, Some(json!({"x": 1})));
    assert!(!verified.signoffs[0].key_in_trail);
}

/// Changes the text of a good export and gives what is then said.
fn refused(change: impl Fn(&str) -> String) -> ExportError {
    let text = sample().to_jsonl().unwrap();
    let changed = change(&text);
    assert_ne!(text, changed, "the change changed nothing");
    verify_export(&changed).unwrap_err()
}

#[test]
fn every_kind_of_tampering_names_its_line() {
    let without = |number: usize| {
        move |text: &str| {
            let lines = text
                .lines()
                .enumerate()
                .filter(|(index, _)| index + 1 != number);
            lines
                .map(|(_, line)| format!("{line}\n"))
                .collect::<String>()
        }
    };
    for (change, line, says) in [
        (
            refused(|text| text.replace("58.5", "58.6")),
            3,
            "not what the leaf commits to",
        ),
        (
            refused(|text| text.replace("person.put", "person.set")),
            3,
            "leaf 1 was changed",
        ),
        (
            refused(|text| text.replace("T07:03", "T07:04")),
            5,
            "leaf 3 was changed",
        ),
        (
            refused(|text| text.replace("\"kind\":\"person", "\"kind\": \"person")),
            3,
            "canonical",
        ),
        (refused(without(4)), 4, "leaf 2 is expected"),
        (
            refused(without(5)),
            5,
            "covers 4 leaves, but the file has 3",
        ),
        (refused(without(6)), 5, "checkpoint"),
        (refused(|_| String::new()), 1, "lines are missing"),
        (
            refused(|text| text.replacen("trail/1", "trail/2", 1)),
            1,
            "kind",
        ),
        (
            refused(|text| text.replacen("\"salt\":\"09", "\"salt\":\"0A", 1)),
            3,
            "must be 64 lower-case hex digits",
        ),
        (
            refused(|text| text.replacen("\"salt\":\"09", "\"salt\":\"08", 1)),
            3,
            "commits to",
        ),
        (
            refused(|text| text.replace("\\n4\\n", "\\n5\\n")),
            6,
            "changed or forged",
        ),
    ] {
        assert_eq!(change.line, line, "{change}");
        assert!(change.problem.contains(says), "{change}");
    }
}

#[test]
fn personal_data_that_was_never_committed_to_is_refused() {
    let mut export = sample();
    let slipped = ExportedPart::new(&[1; 32], json!({"name": "slipped in"}));
    export.leaves[0].parts.insert("said".to_owned(), slipped);
    let error = verify_export(&export.to_jsonl().unwrap()).unwrap_err();
    assert_eq!(error.line, 2);
    let mut export = sample();
    let part = export.leaves[1].parts.get_mut("person").unwrap();
    part.salt.truncate(62);
    let error = verify_export(&export.to_jsonl().unwrap()).unwrap_err();
    assert!(error.problem.contains("salt"), "{error}");
}

#[test]
fn a_leaf_of_another_production_is_refused() {
    let mut foreign = entry(0, "gag.created", json!({}));
    foreign.production = "other".to_owned();
    let export = export_of(vec![ExportedLeaf::bare(foreign)]);
    let error = verify_export(&export.to_jsonl().unwrap()).unwrap_err();
    assert_eq!(
        (error.line, error.problem.contains("another production")),
        (2, true)
    );
}

#[test]
fn an_empty_trail_is_a_good_trail() {
    assert_eq!(
        verify_export(&export_of(Vec::new()).to_jsonl().unwrap())
            .unwrap()
            .size,
        0
    );
}

#[test]
fn one_leafs_proof_travels_alone_and_any_change_shows() {
    let export = sample();
    let hashes: Vec<Hash> = export
        .leaves
        .iter()
        .map(|leaf| leaf.entry.hash().unwrap())
        .collect();
    let trusted = key().verifying_key(ORIGIN).unwrap();
    let proof = LeafProof::make(
        export.leaves[3].entry.clone(),
        &hashes,
        export.checkpoint.clone(),
        &trusted,
    )
    .unwrap();
    let text = serde_json::to_string(&proof).unwrap();
    let proof: LeafProof = serde_json::from_str(&text).unwrap();
    assert_eq!(proof.verify(&trusted).unwrap().size, 4);

    let refuse = |change: &dyn Fn(&mut LeafProof)| {
        let mut changed = proof.clone();
        change(&mut changed);
        changed.verify(&trusted).unwrap_err()
    };
    refuse(&|proof| proof.entry.kind.push('x'));
    refuse(&|proof| proof.entry.index = 2);
    refuse(&|proof| proof.leaf = leaf_hash(b""));
    refuse(&|proof| proof.path.clear());
    refuse(&|proof| proof.path.reverse());
    refuse(&|proof| proof.checkpoint.push('\n'));
    refuse(&|proof| proof.kind.clear());
    assert!(
        proof
            .verify(&LogKey::from_seed([5; 32]).verifying_key(ORIGIN).unwrap())
            .is_err()
    );
}

proptest! {
    #[test]
    fn any_text_is_refused_without_panic(text in any::<String>()) {
        prop_assert!(verify_export(&text).is_err());
    }

    #[test]
    fn no_changed_character_goes_unseen(place in any::<prop::sample::Index>(), with in any::<char>()) {
        let text = sample().to_jsonl().unwrap();
        let mut characters: Vec<char> = text.chars().collect();
        let place = place.index(characters.len() - 1);
        prop_assume!(characters[place] != with);
        characters[place] = with;
        let changed: String = characters.into_iter().collect();
        prop_assert!(verify_export(&changed).is_err(), "{changed}");
    }
}
