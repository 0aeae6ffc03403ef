//! The Merkle tree of RFC 6962, over leaf hashes kept by someone else, with its inclusion and
//! consistency proofs. The proof algorithms are those of RFC 9162, section 2.1. Leaves are bytes here;
//! what they say is not this module's business.

use std::{
    collections::{BTreeMap, BTreeSet},
    fmt,
};

use serde::{Deserialize, Serialize};
use sha2::{Digest, Sha256, block_api::compress256};

/// A SHA-256 hash; lower-case hex in JSON and in text.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Hash(pub [u8; 32]);

impl Hash {
    /// SHA-256 of bytes, with no prefix.
    pub fn of(bytes: &[u8]) -> Hash {
        Hash(Sha256::digest(bytes).into())
    }

    /// Lower-case hex.
    pub fn to_hex(&self) -> String {
        hex(&self.0)
    }

    /// Reads 64 lower-case hex digits.
    pub fn from_hex(text: &str) -> Option<Hash> {
        bytes_from_hex(text).map(Hash)
    }
}

impl fmt::Display for Hash {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.to_hex())
    }
}

impl fmt::Debug for Hash {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "Hash({self})")
    }
}

impl std::str::FromStr for Hash {
    type Err = String;
    fn from_str(text: &str) -> Result<Self, Self::Err> {
        Hash::from_hex(text).ok_or_else(|| "a hash is 64 lower-case hex digits".to_owned())
    }
}

impl Serialize for Hash {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(&self.to_hex())
    }
}

impl<'de> Deserialize<'de> for Hash {
    fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        String::deserialize(deserializer)?
            .parse()
            .map_err(serde::de::Error::custom)
    }
}

#[cfg(feature = "openapi")]
impl utoipa::PartialSchema for Hash {
    fn schema() -> utoipa::openapi::RefOr<utoipa::openapi::schema::Schema> {
        String::schema()
    }
}

#[cfg(feature = "openapi")]
impl utoipa::ToSchema for Hash {}

/// Lower-case hex of any bytes.
pub fn hex(bytes: &[u8]) -> String {
    const DIGITS: &[u8; 16] = b"0123456789abcdef";
    bytes
        .iter()
        .flat_map(|byte| [byte >> 4, byte & 15])
        .map(|nibble| char::from(DIGITS[usize::from(nibble)]))
        .collect()
}

/// Reads 32 bytes from 64 lower-case hex digits; upper case is refused so that each has one spelling.
pub fn bytes_from_hex(text: &str) -> Option<[u8; 32]> {
    let digits = text.as_bytes();
    if digits.len() != 64 {
        return None;
    }
    let nibble = |digit: u8| match digit {
        b'0'..=b'9' => Some(digit - b'0'),
        b'a'..=b'f' => Some(digit - b'a' + 10),
        _ => None,
    };
    let mut bytes = [0u8; 32];
    for (byte, pair) in bytes.iter_mut().zip(digits.chunks_exact(2)) {
        *byte = nibble(pair[0])? << 4 | nibble(pair[1])?;
    }
    Some(bytes)
}

/// Why a proof was refused or cannot be made.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum ProofError {
    /// The leaf is not in a tree of that size.
    #[error("leaf {index} is not in a tree of {size} leaves; the last one is {size} - 1")]
    NoSuchLeaf {
        /// The leaf asked about.
        index: u64,
        /// Leaves in the tree.
        size: u64,
    },
    /// The old tree is larger than the new one.
    #[error("a tree of {new} leaves cannot continue one of {old}")]
    Shrunk {
        /// Leaves in the older tree.
        old: u64,
        /// Leaves in the newer tree.
        new: u64,
    },
    /// The path has too many or too few hashes for these sizes.
    #[error("the proof has the wrong number of hashes for a tree of {size} leaves")]
    WrongLength {
        /// Leaves in the tree.
        size: u64,
    },
    /// The hashes lead elsewhere.
    #[error("the proof leads to root {found}, not to {expected}")]
    RootDiffers {
        /// The root the path leads to.
        found: Hash,
        /// The root it was held against.
        expected: Hash,
    },
}

/// Hash of one leaf: SHA-256 of a zero byte and the leaf (RFC 6962, section 2.1).
pub fn leaf_hash(leaf: &[u8]) -> Hash {
    Hash(
        Sha256::new()
            .chain_update([0])
            .chain_update(leaf)
            .finalize()
            .into(),
    )
}

/// SHA-256 of the byte 1 and two hashes (RFC 6962, section 2.1): always the same two blocks, so they are laid out whole.
fn node_hash(left: &Hash, right: &Hash) -> Hash {
    let mut blocks = [[0u8; 64]; 2];
    let [first, last] = &mut blocks;
    first[0] = 1;
    first[1..33].copy_from_slice(&left.0);
    first[33..].copy_from_slice(&right.0[..31]);
    last[0] = right.0[31];
    // FIPS 180-4, section 5.1.1: a one bit, noughts, and the length in bits.
    last[1] = 0x80;
    last[56..].copy_from_slice(&(65u64 * 8).to_be_bytes());
    let mut state = START;
    compress256(&mut state, &blocks);
    let mut hash = [0u8; 32];
    for (bytes, word) in hash.chunks_exact_mut(4).zip(state) {
        bytes.copy_from_slice(&word.to_be_bytes());
    }
    Hash(hash)
}

/// What SHA-256 begins with (FIPS 180-4, section 5.3.3).
const START: [u32; 8] = [
    0x6a09_e667,
    0xbb67_ae85,
    0x3c6e_f372,
    0xa54f_f53a,
    0x510e_527f,
    0x9b05_688c,
    0x1f83_d9ab,
    0x5be0_cd19,
];

/// The largest power of two below `size`, for `size` of 2 or more.
fn split(size: usize) -> usize {
    1 << (usize::BITS - 1 - (size - 1).leading_zeros())
}

/// Root over leaf hashes. The empty tree's root is SHA-256 of nothing.
pub fn root(leaves: &[Hash]) -> Hash {
    match leaves {
        [] => Hash::of(&[]),
        [only] => *only,
        many => {
            let (left, right) = many.split_at(split(many.len()));
            node_hash(&root(left), &root(right))
        }
    }
}

/// Roots over the first so many leaves, for each size asked that the tree reaches, in one walk.
pub fn roots_at(leaves: &[Hash], sizes: &BTreeSet<u64>) -> BTreeMap<u64, Hash> {
    let mut found = BTreeMap::new();
    // The complete subtrees so far, from the left, each with how many leaves it has.
    let mut complete: Vec<(u64, Hash)> = Vec::new();
    for size in 0..=leaves.len() {
        let asked = size as u64;
        if sizes.contains(&asked) {
            let hashes = complete.iter().rev().map(|(_, hash)| *hash);
            let whole = hashes.reduce(|right, left| node_hash(&left, &right));
            found.insert(asked, whole.unwrap_or_else(|| Hash::of(&[])));
        }
        let Some(leaf) = leaves.get(size) else { break };
        let (mut of, mut hash) = (1, *leaf);
        while let Some((_, left)) = complete.pop_if(|(size, _)| *size == of) {
            hash = node_hash(&left, &hash);
            of *= 2;
        }
        complete.push((of, hash));
    }
    found
}

/// The path from a leaf to the root (RFC 9162, section 2.1.3.1).
///
/// # Errors
/// When the tree has no such leaf.
pub fn inclusion_proof(leaves: &[Hash], index: u64) -> Result<Vec<Hash>, ProofError> {
    let size = leaves.len() as u64;
    let missing = ProofError::NoSuchLeaf { index, size };
    let mut place = usize::try_from(index).map_err(|_| missing.clone())?;
    if place >= leaves.len() {
        return Err(missing);
    }
    let mut path = Vec::new();
    let mut rest = leaves;
    while rest.len() > 1 {
        let (left, right) = rest.split_at(split(rest.len()));
        if place < left.len() {
            path.push(root(right));
            rest = left;
        } else {
            path.push(root(left));
            place -= left.len();
            rest = right;
        }
    }
    path.reverse();
    Ok(path)
}

/// Checks that a leaf is in the tree of that size and root (RFC 9162, section 2.1.3.2).
///
/// # Errors
/// Says whether the place, the length or the root is wrong.
pub fn verify_inclusion(
    leaf: &Hash,
    index: u64,
    size: u64,
    path: &[Hash],
    expected: &Hash,
) -> Result<(), ProofError> {
    if index >= size {
        return Err(ProofError::NoSuchLeaf { index, size });
    }
    let (mut place, mut last) = (index, size - 1);
    let mut found = *leaf;
    for step in path {
        if last == 0 {
            return Err(ProofError::WrongLength { size });
        }
        if place & 1 == 1 || place == last {
            found = node_hash(step, &found);
            while place & 1 == 0 && place != 0 {
                place >>= 1;
                last >>= 1;
            }
        } else {
            found = node_hash(&found, step);
        }
        place >>= 1;
        last >>= 1;
    }
    if last != 0 {
        return Err(ProofError::WrongLength { size });
    }
    same_root(found, *expected)
}

/// The hashes which show that the tree over `leaves` continues its own first `old` leaves (RFC 9162,
/// section 2.1.4.1). Empty when `old` is 0 or the whole tree.
///
/// # Errors
/// When `old` is more than there are leaves.
pub fn consistency_proof(leaves: &[Hash], old: u64) -> Result<Vec<Hash>, ProofError> {
    let new = leaves.len() as u64;
    let shrunk = ProofError::Shrunk { old, new };
    let mut rest_old = usize::try_from(old).map_err(|_| shrunk.clone())?;
    if rest_old > leaves.len() {
        return Err(shrunk);
    }
    if rest_old == 0 || rest_old == leaves.len() {
        return Ok(Vec::new());
    }
    let mut path = Vec::new();
    let mut rest = leaves;
    // The old root need not be sent while the old tree is exactly the left part walked so far.
    let mut known = true;
    while rest_old != rest.len() {
        let (left, right) = rest.split_at(split(rest.len()));
        if rest_old <= left.len() {
            path.push(root(right));
            rest = left;
        } else {
            path.push(root(left));
            rest_old -= left.len();
            rest = right;
            known = false;
        }
    }
    if !known {
        path.push(root(rest));
    }
    path.reverse();
    Ok(path)
}

/// Checks that one root's tree continues another's (RFC 9162, section 2.1.4.2).
///
/// # Errors
/// Says whether the sizes, the length or one of the roots is wrong.
pub fn verify_consistency(
    old: u64,
    new: u64,
    old_root: &Hash,
    new_root: &Hash,
    path: &[Hash],
) -> Result<(), ProofError> {
    let wrong_length = ProofError::WrongLength { size: new };
    if old > new {
        return Err(ProofError::Shrunk { old, new });
    }
    if old == 0 || old == new {
        if !path.is_empty() {
            return Err(wrong_length);
        }
        return same_root(*old_root, if old == 0 { Hash::of(&[]) } else { *new_root });
    }
    let mut steps = path.iter().copied();
    let (mut place, mut last) = (old - 1, new - 1);
    while place & 1 == 1 {
        place >>= 1;
        last >>= 1;
    }
    // When the old tree is a whole power of two its root starts the walk and is not in the path.
    let start = if old.is_power_of_two() {
        *old_root
    } else {
        steps.next().ok_or(wrong_length.clone())?
    };
    let (mut found_old, mut found_new) = (start, start);
    for step in steps {
        if last == 0 {
            return Err(wrong_length);
        }
        if place & 1 == 1 || place == last {
            found_old = node_hash(&step, &found_old);
            found_new = node_hash(&step, &found_new);
            while place & 1 == 0 && place != 0 {
                place >>= 1;
                last >>= 1;
            }
        } else {
            found_new = node_hash(&found_new, &step);
        }
        place >>= 1;
        last >>= 1;
    }
    if last != 0 {
        return Err(wrong_length);
    }
    same_root(found_old, *old_root)?;
    same_root(found_new, *new_root)
}

fn same_root(found: Hash, expected: Hash) -> Result<(), ProofError> {
    if found == expected {
        Ok(())
    } else {
        Err(ProofError::RootDiffers { found, expected })
    }
}

#[cfg(test)]
#[path = "tree_tests.rs"]
mod tests;
