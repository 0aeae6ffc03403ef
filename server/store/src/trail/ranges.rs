//! Which complete subtrees of an RFC 6962 tree make up a root, an inclusion path or a consistency path,
//! so that each can be had from a few stored hashes. Pure arithmetic; must not know where hashes are
//! kept. The same answers as the whole-tree functions of `gagwright_trail`, which tests hold it to.

use std::collections::HashMap;

use gagwright_trail::Hash;
use sha2::{Digest, Sha256};

/// A complete subtree: `2^level` leaves from leaf `position * 2^level`.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub(super) struct Node {
    pub(super) level: u32,
    pub(super) position: u64,
}

/// A run of leaves that is a subtree of some tree.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Range {
    start: u64,
    length: u64,
}

impl Range {
    /// The whole tree of a size.
    pub(super) fn tree(size: u64) -> Range {
        Range {
            start: 0,
            length: size,
        }
    }

    /// The complete subtrees it is made of, from the left: one for each bit of its length. A range that
    /// comes from splitting a tree starts at a multiple of each of their sizes.
    pub(super) fn nodes(self) -> Vec<Node> {
        let mut start = self.start;
        (0..u64::BITS)
            .rev()
            .filter(|level| self.length >> level & 1 == 1)
            .map(|level| {
                let node = Node {
                    level,
                    position: start >> level,
                };
                start += 1 << level;
                node
            })
            .collect()
    }

    /// Its hash, from the hashes of its nodes; none when one is missing. The empty tree's hash is that
    /// of nothing.
    pub(super) fn hash(self, known: &HashMap<Node, Hash>) -> Option<Hash> {
        let mut from_right: Option<Hash> = None;
        for node in self.nodes().iter().rev() {
            let left = known.get(node)?;
            from_right = Some(match from_right {
                None => *left,
                Some(right) => parent(left, &right),
            });
        }
        Some(from_right.unwrap_or_else(|| Hash::of(&[])))
    }

    /// Split as RFC 6962 does, at the largest power of two below the length.
    fn halves(self) -> (Range, Range) {
        let left = 1 << (u64::BITS - 1 - (self.length - 1).leading_zeros());
        (
            Range {
                start: self.start,
                length: left,
            },
            Range {
                start: self.start + left,
                length: self.length - left,
            },
        )
    }
}

/// The path of a leaf in a tree (RFC 6962, section 2.1.1), from the leaf upwards; the leaf must be in it.
pub(super) fn inclusion(index: u64, size: u64) -> Vec<Range> {
    let mut path = Vec::new();
    let mut within = Range::tree(size);
    while within.length > 1 {
        let (left, right) = within.halves();
        if index < right.start {
            path.push(right);
            within = left;
        } else {
            path.push(left);
            within = right;
        }
    }
    path.reverse();
    path
}

/// The path that a tree of `old` leaves is the start of one of `new` (RFC 6962, section 2.1.2); `old`
/// must be from 1 to `new`.
pub(super) fn consistency(old: u64, new: u64) -> Vec<Range> {
    let mut path = Vec::new();
    let mut within = Range::tree(new);
    // Whether the old tree's own root is this very range, which the verifier then has already.
    let mut whole = true;
    while old != within.start + within.length {
        let (left, right) = within.halves();
        if old <= right.start {
            path.push(right);
            within = left;
        } else {
            path.push(left);
            within = right;
            whole = false;
        }
    }
    if !whole {
        path.push(within);
    }
    path.reverse();
    path
}

/// Hash of a node over its two children (RFC 6962, section 2.1).
pub(super) fn parent(left: &Hash, right: &Hash) -> Hash {
    Hash(
        Sha256::new()
            .chain_update([1])
            .chain_update(left.0)
            .chain_update(right.0)
            .finalize()
            .into(),
    )
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;

    /// Every complete subtree over some leaves, as the store keeps them.
    fn known(leaves: &[Hash]) -> HashMap<Node, Hash> {
        let mut known = HashMap::new();
        let mut row = leaves.to_vec();
        let mut level = 0;
        while !row.is_empty() {
            for (position, hash) in (0u64..).zip(&row) {
                known.insert(Node { level, position }, *hash);
            }
            row = row
                .chunks_exact(2)
                .map(|pair| parent(&pair[0], &pair[1]))
                .collect();
            level += 1;
        }
        known
    }

    #[test]
    fn every_small_tree_answers_as_the_whole_tree_functions_do() {
        let leaves: Vec<Hash> = (0u32..70)
            .map(|i| gagwright_trail::leaf_hash(&i.to_be_bytes()))
            .collect();
        let known = known(&leaves);
        let hashes = |ranges: Vec<Range>| -> Vec<Hash> {
            ranges
                .into_iter()
                .map(|range| range.hash(&known).unwrap())
                .collect()
        };
        for size in 0..=leaves.len() {
            let tree = &leaves[..size];
            let total = size as u64;
            assert_eq!(
                Range::tree(total).hash(&known),
                Some(gagwright_trail::root(tree)),
                "{size}"
            );
            for index in 0..total {
                assert_eq!(
                    hashes(inclusion(index, total)),
                    gagwright_trail::inclusion_proof(tree, index).unwrap(),
                    "leaf {index} of {size}"
                );
            }
            for old in 1..=total {
                assert_eq!(
                    hashes(consistency(old, total)),
                    gagwright_trail::consistency_proof(tree, old).unwrap(),
                    "{old} in {size}"
                );
            }
        }
    }

    #[test]
    fn a_large_tree_needs_few_hashes() {
        let size = (1 << 40) - 1;
        assert_eq!(Range::tree(size).nodes().len(), 40);
        let needed: usize = inclusion(size / 3, size)
            .iter()
            .map(|range| range.nodes().len())
            .sum();
        assert!(needed <= 2 * 40, "{needed}");
    }

    #[test]
    fn a_missing_hash_is_noticed() {
        assert_eq!(Range::tree(3).hash(&HashMap::new()), None);
    }
}
