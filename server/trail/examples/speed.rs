//! How long the root of a log takes from its entries, and the root itself, beside how long the same crate takes
//! to hash as many bytes in one piece, as one JSON document: what `tests/bench` sets beside another
//! implementation. Entry `n` is `n` in eight bytes, over and over.

#![allow(missing_docs, clippy::unwrap_used, clippy::expect_used, clippy::panic)]
#![allow(clippy::disallowed_methods, reason = "a bench reads the clock")]

use std::{hint::black_box, time::Instant};

use gagwright_trail::{Hash, leaf_hash, root};
use sha2::{Digest, Sha256};

/// Bytes of one piece that is hashed over and over: more than a processor's caches hold.
const PIECE: usize = 64 << 20;

fn main() {
    let mut arguments = std::env::args().skip(1).map(|text| text.parse().unwrap());
    let (count, size): (u64, usize) = (
        arguments.next().unwrap_or(100_000),
        arguments.next().unwrap_or(760) as usize,
    );
    let entries: Vec<u8> = (0..count)
        .flat_map(|n| n.to_be_bytes().into_iter().cycle().take(size))
        .collect();
    let tree = || {
        let leaves: Vec<Hash> = black_box(&entries).chunks(size).map(leaf_hash).collect();
        root(&leaves)
    };
    // A byte before each entry; a byte before each pair of hashes (RFC 6962, section 2.1).
    let hashed = count as usize * (size + 1) + (count as usize - 1) * 65;
    let piece = vec![7u8; PIECE.min(hashed)];
    let plain = || {
        let mut hasher = Sha256::new();
        for done in (0..hashed).step_by(piece.len()) {
            hasher.update(&black_box(&piece)[..piece.len().min(hashed - done)]);
        }
        Hash(hasher.finalize().into())
    };
    // By turns, so that what else the machine does falls on both alike.
    let (mut ours, mut theirs) = (Vec::new(), Vec::new());
    for _ in 0..7 {
        ours.push(timed(tree));
        theirs.push(timed(plain));
    }
    ours.sort();
    theirs.sort();
    let ((nanoseconds, root), (plain, _)) = (ours[3], theirs[3]);
    println!(
        "{{\"nanoseconds\": {nanoseconds}, \"root\": \"{root}\", \"bytes\": {hashed}, \"plain_nanoseconds\": {plain}}}"
    );
}

fn timed(work: impl Fn() -> Hash) -> (u128, Hash) {
    let start = Instant::now();
    let found = work();
    (start.elapsed().as_nanos(), found)
}
