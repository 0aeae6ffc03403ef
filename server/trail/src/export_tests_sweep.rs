//! Every byte and every leaf of a compact export, tampered with one after the other: each change is seen,
//! and the error names its line and what is wrong with it.
//!
//! The leaves in `export_tests_leaves.jsonl` were written by the program itself, by its story's production: a
//! device, a sign-off, a mark for the day, the creation with its personal parts, a member, a go and a medic's look.
//! They are numbered anew and signed for with the key of these tests.

use super::*;

fn real() -> Export {
    let leaves = include_str!("export_tests_leaves.jsonl");
    let leaves = leaves.lines().enumerate().map(|(index, line)| {
        let mut leaf: ExportedLeaf = serde_json::from_str(line).unwrap();
        leaf.entry.index = index as u64;
        leaf
    });
    let mut export = export_of(leaves.collect());
    export.header.production = export.leaves[0].entry.production.clone();
    export
}

/// The lines of the file, to be changed and joined again.
fn lines() -> Vec<String> {
    let text = real().to_jsonl().unwrap();
    text.lines().map(str::to_owned).collect()
}

fn refusal(lines: &[String]) -> ExportError {
    verify_export(&format!("{}\n", lines.join("\n"))).unwrap_err()
}

#[test]
fn the_leaves_are_complete() {
    let verified = verify_export(&real().to_jsonl().unwrap()).unwrap();
    assert_eq!(verified.size, 7);
    assert!(verified.personal_kept >= 5, "{}", verified.personal_kept);
    assert_eq!(verified.signoffs.len(), 2);
    assert!(verified.signoffs.iter().all(|one| one.key_in_trail));
    for kind in ["signoff.made", "day.signed", "device.registered"] {
        assert_eq!(verified.kinds[kind], 1, "{kind}");
    }
}

#[test]
fn a_bit_flipped_in_any_byte_is_seen_on_its_line() {
    let text = real().to_jsonl().unwrap();
    assert!((7_000..10_000).contains(&text.len()), "{}", text.len());
    let end = text.lines().count();
    let mut line = 1;
    for (at, byte) in text.bytes().enumerate() {
        // The seven bits of a letter in turn; what is not UTF-8 any more is refused before it is read.
        let mut copy = text.clone().into_bytes();
        copy[at] ^= 1 << (at % 7);
        let copy = String::from_utf8(copy);
        if let Ok(copy) = copy {
            let error = verify_export(&copy).unwrap_err();
            // A leaf names itself. What the header says of the key and of the production is held against
            // the leaves and the signature, so a change there may show where the two part.
            let named = match line {
                1 => [1, 2, end].contains(&error.line),
                _ => error.line == line,
            };
            assert!(named, "byte {at} of line {line}: {error}");
            assert!(!error.problem.is_empty());
        } else {
            assert!(!byte.is_ascii(), "byte {at} is still a letter");
        }
        line += usize::from(byte == b'\n');
    }
}

#[test]
fn any_leaf_dropped_doubled_or_swapped_is_named() {
    let good = lines();
    let leaves = good.len() - 2;
    for leaf in 0..leaves {
        let line = leaf + 2;
        let mut dropped = good.clone();
        dropped.remove(line - 1);
        let error = refusal(&dropped);
        assert_eq!(error.line, line, "{error}");
        let says = match leaf + 1 == leaves {
            true => "covers 7 leaves, but the file has 6".to_owned(),
            false => format!(
                "leaf {leaf} is expected here, but this one says it is {}",
                leaf + 1
            ),
        };
        assert!(error.problem.contains(&says), "{error}");

        let mut doubled = good.clone();
        doubled.insert(line, good[line - 1].clone());
        let error = refusal(&doubled);
        assert_eq!(error.line, line + 1, "{error}");
        let says = format!(
            "leaf {} is expected here, but this one says it is {leaf}",
            leaf + 1
        );
        assert!(error.problem.contains(&says), "{error}");

        if leaf + 1 < leaves {
            let mut swapped = good.clone();
            swapped.swap(line - 1, line);
            let error = refusal(&swapped);
            assert_eq!(error.line, line, "{error}");
            let says = format!(
                "leaf {leaf} is expected here, but this one says it is {}",
                leaf + 1
            );
            assert!(error.problem.contains(&says), "{error}");
        }
    }
}

/// Whoever changes a leaf and writes its hash anew, or numbers the leaves again, is stopped by the signed root.
#[test]
fn a_leaf_changed_with_its_hash_is_stopped_by_the_signed_root() {
    let good = real();
    let end = good.leaves.len() + 2;
    for leaf in 0..good.leaves.len() {
        let mut changed = good.clone();
        changed.leaves[leaf].entry.at = "2026-03-02T07:00:00Z".to_owned();
        let mut swapped = good.clone();
        let next = (leaf + 1) % good.leaves.len();
        swapped.leaves.swap(leaf, next);
        for (index, one) in swapped.leaves.iter_mut().enumerate() {
            one.entry.index = index as u64;
        }
        for bad in [changed, swapped] {
            let error = verify_export(&bad.to_jsonl().unwrap()).unwrap_err();
            assert_eq!(error.line, end, "{error}");
            assert!(
                error
                    .problem
                    .contains("a leaf was changed, removed, added or moved"),
                "{error}"
            );
        }
    }
}
