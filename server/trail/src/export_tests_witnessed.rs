//! Cosignatures in an export: of the whole trail, of its beginning, missing, changed, and of another trail.

use super::*;
use crate::{Witness, verify_export_with};

const TIME: u64 = 1_773_000_000;

fn witness(seed: u8) -> Witness {
    Witness::from_seed("witness.example.com/w1", [seed; 32]).unwrap()
}

/// A checkpoint of the first so many leaves, cosigned.
fn cosigned(export: &Export, size: usize, by: &Witness) -> String {
    let leaves = export.leaves[..size].iter();
    let hashes: Vec<Hash> = leaves.map(|leaf| leaf.entry.hash().unwrap()).collect();
    let note = key()
        .sign_checkpoint(ORIGIN, size as u64, &root(&hashes))
        .unwrap();
    let log = key().verifying_key(ORIGIN).unwrap();
    let line = by.cosign(&note, &log, TIME + size as u64).unwrap();
    format!("{note}{line}\n")
}

/// Five leaves, the last of which names the witness; cosigned at 2, 3 and 5.
fn export() -> Export {
    let named = json!({"witness_key": witness(1).key().to_string()});
    let mut leaves = sample().leaves;
    leaves.push(ExportedLeaf::bare(entry(4, "witness.added", named)));
    let mut export = export_of(leaves);
    export.cosigned = vec![
        cosigned(&export, 2, &witness(1)),
        cosigned(&export, 3, &witness(1)),
    ];
    export.checkpoint = cosigned(&export, 5, &witness(1));
    export
}

fn with(export: &Export, given: &[Witness]) -> Result<Verified, ExportError> {
    let keys: Vec<WitnessKey> = given.iter().map(Witness::key).collect();
    verify_export_with(&export.to_jsonl().unwrap(), None, &keys)
}

#[test]
fn each_cosignature_says_how_many_leaves_were_seen_and_when() {
    let seen = |given: &[Witness]| {
        let verified = with(&export(), given).unwrap();
        assert_eq!(verified.cosignatures_unchecked, 0);
        let told = |one: &Witnessed| (one.size, one.seconds - TIME, one.key_was_given);
        verified.witnessed.iter().map(told).collect::<Vec<_>>()
    };
    // The key stands in the trail; that the reader has it too is said.
    assert_eq!(seen(&[]), [(2, 2, false), (3, 3, false), (5, 5, false)]);
    assert_eq!(
        seen(&[witness(1)]),
        [(2, 2, true), (3, 3, true), (5, 5, true)]
    );
}

#[test]
fn a_witness_asked_for_must_have_cosigned() {
    let error = with(&export(), &[witness(1), witness(2)]).unwrap_err();
    assert_eq!(error.line, 7);
    assert!(error.problem.contains("no checkpoint"), "{error}");
    let mut taken_out = export();
    taken_out.cosigned.clear();
    taken_out.checkpoint = export_of(taken_out.leaves.clone()).checkpoint;
    assert!(with(&taken_out, &[]).is_ok(), "a trail needs no witness");
    assert!(with(&taken_out, &[witness(1)]).is_err());
    // A line by a key that nobody named is counted and not believed.
    let mut stranger = export();
    stranger.checkpoint = cosigned(&stranger, 5, &witness(9));
    assert_eq!(with(&stranger, &[]).unwrap().cosignatures_unchecked, 1);
}

#[test]
fn a_changed_cosignature_is_found_out_with_and_without_its_key() {
    for earlier in [true, false] {
        let mut changed = export();
        let note = match earlier {
            true => &mut changed.cosigned[0],
            false => &mut changed.checkpoint,
        };
        // A letter of the signature, well inside the last line.
        let at = note.len() - 20;
        let other = if &note[at..=at] == "A" { "B" } else { "A" };
        note.replace_range(at..=at, other);
        for given in [vec![], vec![witness(1)]] {
            let error = with(&changed, &given).unwrap_err();
            assert_eq!(error.line, 7);
            assert!(error.problem.contains("does not verify"), "{error}");
        }
    }
}

#[test]
fn earlier_checkpoints_must_be_of_this_trail_and_in_order() {
    let refused = |cosigned: Vec<String>, word: &str| {
        let mut other = export();
        other.cosigned = cosigned;
        let error = with(&other, &[]).unwrap_err();
        assert!(error.problem.contains(word), "{error}");
    };
    let good = export();
    let [two, three] = [good.cosigned[0].clone(), good.cosigned[1].clone()];
    refused(vec![three.clone(), two.clone()], "in order");
    refused(vec![two.clone(), two.clone()], "in order");
    refused(vec![two.clone(), good.checkpoint.clone()], "in order");
    // The same log signed for another second leaf, and the witness saw it: a fork.
    let mut fork = export();
    fork.leaves[1].entry.kind = "person.erased".to_owned();
    refused(
        vec![cosigned(&fork, 2, &witness(1)), three],
        "another trail",
    );
    refused(vec![two.replace("\n2\n", "\n3\n")], "does not verify");
}
