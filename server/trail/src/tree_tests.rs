//! The tree against published vectors, against another implementation, and against itself.

use proptest::prelude::*;

use super::*;

/// Leaves of the test vectors used by the RFC 6962 implementations' public test suites.
fn published_leaves() -> Vec<Hash> {
    let leaves: [&[u8]; 8] = [
        b"",
        &[0x00],
        &[0x10],
        &[0x20, 0x21],
        &[0x30, 0x31],
        &[0x40, 0x41, 0x42, 0x43],
        &[0x50, 0x51, 0x52, 0x53, 0x54, 0x55, 0x56, 0x57],
        &[
            0x60, 0x61, 0x62, 0x63, 0x64, 0x65, 0x66, 0x67, 0x68, 0x69, 0x6a, 0x6b, 0x6c, 0x6d,
            0x6e, 0x6f,
        ],
    ];
    leaves.iter().map(|leaf| leaf_hash(leaf)).collect()
}

/// Roots for sizes 1 to 8, from the same suites.
const ROOTS: [&str; 8] = [
    "6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d",
    "fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125",
    "aeb6bcfe274b70a14fb067a5e5578264db0fa9b51af5e0ba159158f329e06e77",
    "d37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7",
    "4e3bbb1f7b478dcfe71fb631631519a3bca12c9aefca1612bfce4c13a86264d4",
    "76e67dadbcdf1e10e1b74ddc608abd2f98dfb16fbce75277b5232a127f2087ef",
    "ddb89be403809e325750d3d263cd78929c2942b7942a34b77e122c9594a74c8c",
    "5dc9da79a70659a9ad559cb701ded9a2ab9d823aad2f4960cfe370eff4604328",
];

const A: &str = "96a296d224f285c67bee93c30f8a309157f0daa35dc5b87e410b78630a09cfc7";
const B: &str = "5f083f0a1a33ca076a95279832580db3e0ef4584bdff1f54c8a360f50de3031e";
const C: &str = "6b47aaf29ee3c2af9af889bc1fb9254dabd31177f16232dd6aab035ca39bf6e4";
const D: &str = "bc1a0643b12e4d2d7c77918f44e0f4f79a838b6cf9ec5b5c283e1f4d88599e6b";
const E: &str = "ca854ea128ed050b41b35ffc1b87b8eb2bde461e9e3b5596ece6b9d5975a0ae0";
const F: &str = "0ebc5d3437fbe2db158b9f126a1d118e308181031d0a949f8dededebc558ef6a";

fn hashes(texts: &[&str]) -> Vec<Hash> {
    texts.iter().map(|text| text.parse().unwrap()).collect()
}

#[test]
fn roots_of_every_size_in_one_walk_are_the_published_ones() {
    let sizes = (0..=9).collect();
    let found = roots_at(&published_leaves(), &sizes);
    assert_eq!(found.len(), 9, "the tree has no ninth leaf");
    assert_eq!(found[&0], root(&[]));
    for (index, expected) in ROOTS.iter().enumerate() {
        assert_eq!(found[&(index as u64 + 1)].to_hex(), *expected);
    }
    assert_eq!(roots_at(&[], &[0, 1].into()), [(0, root(&[]))].into());
}

#[test]
fn roots_match_the_published_ones() {
    let leaves = published_leaves();
    assert_eq!(
        root(&[]).to_hex(),
        "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"
    );
    for (index, expected) in ROOTS.iter().enumerate() {
        assert_eq!(
            root(&leaves[..=index]).to_hex(),
            *expected,
            "size {}",
            index + 1
        );
    }
}

#[test]
fn inclusion_paths_match_the_published_ones() {
    let leaves = published_leaves();
    assert_eq!(inclusion_proof(&leaves, 0).unwrap(), hashes(&[A, B, C]));
    assert_eq!(
        inclusion_proof(&leaves, 5).unwrap(),
        hashes(&[D, E, ROOTS[3]])
    );
    assert_eq!(inclusion_proof(&leaves[..1], 0).unwrap(), hashes(&[]));
}

#[test]
fn consistency_paths_match_the_published_ones() {
    let leaves = published_leaves();
    assert_eq!(consistency_proof(&leaves, 1).unwrap(), hashes(&[A, B, C]));
    assert_eq!(
        consistency_proof(&leaves, 6).unwrap(),
        hashes(&[F, E, ROOTS[3]])
    );
    assert_eq!(consistency_proof(&leaves[..5], 2).unwrap(), hashes(&[B, D]));
}

#[test]
fn proofs_that_cannot_exist_are_refused() {
    let leaves = published_leaves();
    assert!(matches!(
        inclusion_proof(&leaves, 8),
        Err(ProofError::NoSuchLeaf { .. })
    ));
    assert!(matches!(
        inclusion_proof(&leaves, u64::MAX),
        Err(ProofError::NoSuchLeaf { .. })
    ));
    assert!(matches!(
        consistency_proof(&leaves, 9),
        Err(ProofError::Shrunk { .. })
    ));
    assert!(matches!(
        inclusion_proof(&[], 0),
        Err(ProofError::NoSuchLeaf { .. })
    ));
}

#[test]
fn hex_has_one_spelling() {
    let hash = leaf_hash(b"");
    assert_eq!(Hash::from_hex(&hash.to_hex()), Some(hash));
    assert_eq!(Hash::from_hex(&hash.to_hex().to_uppercase()), None);
    assert_eq!(Hash::from_hex("6e34"), None);
    assert_eq!(Hash::from_hex(&"é".repeat(32)), None);
}

fn leaves_of(size: usize) -> Vec<Hash> {
    (0..size)
        .map(|index| leaf_hash(&index.to_be_bytes()))
        .collect()
}

#[test]
fn every_proof_up_to_forty_leaves_verifies_and_no_other_does() {
    for size in 1..=40usize {
        let leaves = leaves_of(size);
        let top = root(&leaves);
        for (index, leaf) in leaves.iter().enumerate() {
            let path = inclusion_proof(&leaves, index as u64).unwrap();
            verify_inclusion(leaf, index as u64, size as u64, &path, &top).unwrap();
            for other in 0..size {
                if other != index {
                    assert!(
                        verify_inclusion(leaf, other as u64, size as u64, &path, &top).is_err(),
                        "leaf {index} of {size} passed as leaf {other}"
                    );
                }
            }
        }
        for old in 0..=size {
            let path = consistency_proof(&leaves, old as u64).unwrap();
            let old_root = root(&leaves[..old]);
            verify_consistency(old as u64, size as u64, &old_root, &top, &path).unwrap();
        }
    }
}

proptest! {
    #[test]
    fn a_changed_path_leaf_or_root_never_verifies(
        size in 2usize..300, place in any::<prop::sample::Index>(),
        step in any::<prop::sample::Index>(), bit in 0usize..256,
    ) {
        let leaves = leaves_of(size);
        let index = place.index(size);
        let top = root(&leaves);
        let mut path = inclusion_proof(&leaves, index as u64).unwrap();
        let flip = |hash: &Hash| {
            let mut changed = *hash;
            changed.0[bit / 8] ^= 1 << (bit % 8);
            changed
        };
        let (index, size) = (index as u64, size as u64);
        let leaf = leaves[index as usize];
        prop_assert!(verify_inclusion(&flip(&leaf), index, size, &path, &top).is_err());
        prop_assert!(verify_inclusion(&leaf, index, size, &path, &flip(&top)).is_err());
        let mut longer = path.clone();
        longer.push(top);
        prop_assert!(verify_inclusion(&leaf, index, size, &longer, &top).is_err());
        prop_assert!(verify_inclusion(&leaf, index, size, &path[1..], &top).is_err());
        let which = step.index(path.len());
        path[which] = flip(&path[which]);
        prop_assert!(verify_inclusion(&leaf, index, size, &path, &top).is_err());
    }

    #[test]
    fn a_rewritten_history_is_never_consistent(
        size in 2usize..200, old in any::<prop::sample::Index>(), changed in any::<prop::sample::Index>(),
    ) {
        let leaves = leaves_of(size);
        let old = 1 + old.index(size - 1);
        let mut rewritten = leaves.clone();
        rewritten[changed.index(old)] = leaf_hash(b"rewritten");
        let path = consistency_proof(&rewritten, old as u64).unwrap();
        prop_assert!(verify_consistency(
            old as u64, size as u64, &root(&leaves[..old]), &root(&rewritten), &path
        ).is_err());
    }

    #[test]
    fn arbitrary_paths_never_panic(
        index in any::<u64>(), old in any::<u64>(), size in any::<u64>(),
        path in prop::collection::vec(any::<[u8; 32]>().prop_map(Hash), 0..70),
    ) {
        let hash = leaf_hash(b"");
        let _ = verify_inclusion(&hash, index, size, &path, &hash);
        let _ = verify_consistency(old, size, &hash, &hash, &path);
    }

    #[test]
    fn another_implementation_agrees(size in 1usize..200, place in any::<prop::sample::Index>()) {
        use ct_merkle::mem_backed_tree::MemoryBackedTree;
        let mut theirs = MemoryBackedTree::<Sha256, Vec<u8>>::new();
        for index in 0..size {
            theirs.push(index.to_be_bytes().to_vec());
        }
        let ours = leaves_of(size);
        let joined = |path: Vec<Hash>| path.iter().flat_map(|hash| hash.0).collect::<Vec<u8>>();
        prop_assert_eq!(root(&ours).0.to_vec(), theirs.root().as_bytes().to_vec());
        let index = place.index(size);
        prop_assert_eq!(
            joined(inclusion_proof(&ours, index as u64).unwrap()),
            theirs.prove_inclusion(index).as_bytes().to_vec()
        );
        if index > 0 {
            prop_assert_eq!(
                joined(consistency_proof(&ours, index as u64).unwrap()),
                theirs.prove_consistency(size - index).as_bytes().to_vec()
            );
        }
    }
}
