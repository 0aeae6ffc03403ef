//! How long the root of a log takes from its entries, and the root itself, as one JSON document: what
//! `tests/bench` sets beside another implementation. Entry `n` is `n` in eight bytes, over and over.

#![allow(missing_docs, clippy::unwrap_used, clippy::expect_used, clippy::panic)]
#![allow(clippy::disallowed_methods, reason = "a bench reads the clock")]

use std::{hint::black_box, time::Instant};

use gagwright_trail::{Hash, leaf_hash, root};

fn main() {
    let mut arguments = std::env::args().skip(1).map(|text| text.parse().unwrap());
    let (count, size): (u64, usize) = (
        arguments.next().unwrap_or(100_000),
        arguments.next().unwrap_or(400) as usize,
    );
    let entries: Vec<Vec<u8>> = (0..count)
        .map(|n| n.to_be_bytes().into_iter().cycle().take(size).collect())
        .collect();
    let run = |_| {
        let start = Instant::now();
        let leaves: Vec<Hash> = black_box(&entries)
            .iter()
            .map(|one| leaf_hash(one))
            .collect();
        let found = root(&leaves);
        (start.elapsed().as_nanos(), found)
    };
    let mut runs: Vec<_> = (0..7).map(run).collect();
    runs.sort();
    let (nanoseconds, root) = runs[3];
    println!("{{\"nanoseconds\": {nanoseconds}, \"root\": \"{root}\"}}");
}
