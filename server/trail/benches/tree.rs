//! How fast the tree is against plain SHA-256, and how long proofs take. Ratios are printed beside the
//! times: a leaf of the trail is some hundreds of bytes, and RFC 6962 hashes 65 bytes for every node, which
//! SHA-256 pads to two blocks.

#![allow(missing_docs, clippy::unwrap_used, clippy::expect_used, clippy::panic)]
#![allow(clippy::disallowed_methods, reason = "a bench reads the clock")]

use std::{
    hint::black_box,
    time::{Duration, Instant},
};

use criterion::{Criterion, criterion_group, criterion_main};
use gagwright_trail::{
    Hash,
    tree::{
        consistency_proof, inclusion_proof, leaf_hash, root, verify_consistency, verify_inclusion,
    },
};
use sha2::{Digest, Sha256};

const LEAVES: usize = 1_000_000;

/// The shortest of a few runs: what the machine can do when nothing else runs.
fn best<T>(mut work: impl FnMut() -> T) -> Duration {
    let run = |_| {
        let start = Instant::now();
        black_box(work());
        start.elapsed()
    };
    (0..5).map(run).min().unwrap()
}

fn ratio(what: &str, tree: Duration, plain: Duration) {
    let ratio = plain.as_secs_f64() / tree.as_secs_f64();
    println!("{what}: {tree:.1?}, plain SHA-256 {plain:.1?}, {ratio:.2} of its rate");
}

fn against_plain() {
    // What the tree hashes for its nodes, in one piece: a byte and two hashes each.
    let leaves: Vec<Hash> = (0..LEAVES as u64)
        .map(|n| leaf_hash(&n.to_be_bytes()))
        .collect();
    let nodes = vec![7u8; 65 * (LEAVES - 1)];
    let blocks = vec![7u8; 128 * (LEAVES - 1)];
    let tree = best(|| root(black_box(&leaves)));
    let plain = best(|| Sha256::digest(black_box(&nodes)));
    ratio("root of 1,000,000 leaf hashes, by bytes", tree, plain);
    let padded = best(|| Sha256::digest(black_box(&blocks)));
    ratio(
        "root of 1,000,000 leaf hashes, by blocks of SHA-256",
        tree,
        padded,
    );
    drop((nodes, blocks));
    // From the leaves themselves, as long as entries of the trail are.
    let size = 400;
    let entries = vec![7u8; size * LEAVES];
    let tree = best(|| {
        let leaves: Vec<Hash> = black_box(&entries).chunks(size).map(leaf_hash).collect();
        root(&leaves)
    });
    drop(entries);
    let whole = vec![7u8; (size + 1) * LEAVES + 65 * (LEAVES - 1)];
    let plain = best(|| Sha256::digest(black_box(&whole)));
    ratio(
        "root of 1,000,000 entries of 400 bytes, by bytes",
        tree,
        plain,
    );
}

fn tree(criterion: &mut Criterion) {
    against_plain();
    let leaves: Vec<Hash> = (0..LEAVES as u64)
        .map(|n| leaf_hash(&n.to_be_bytes()))
        .collect();
    let (size, at, old) = (LEAVES as u64, 765_432, 654_321);
    let (whole, before) = (root(&leaves), root(&leaves[..old as usize]));
    let inclusion = inclusion_proof(&leaves, at).unwrap();
    let consistency = consistency_proof(&leaves, old).unwrap();
    let mut group = criterion.benchmark_group("tree_1000000");
    group.sample_size(10);
    group.bench_function("root", |bencher| bencher.iter(|| root(black_box(&leaves))));
    group.bench_function("inclusion proof", |bencher| {
        bencher.iter(|| inclusion_proof(black_box(&leaves), at).unwrap());
    });
    group.bench_function("consistency proof", |bencher| {
        bencher.iter(|| consistency_proof(black_box(&leaves), old).unwrap());
    });
    group.bench_function("verify inclusion", |bencher| {
        let leaf = leaves[at as usize];
        bencher.iter(|| verify_inclusion(&leaf, at, size, black_box(&inclusion), &whole).unwrap());
    });
    group.bench_function("verify consistency", |bencher| {
        bencher.iter(|| {
            verify_consistency(old, size, &before, &whole, black_box(&consistency)).unwrap();
        });
    });
    group.finish();
}

criterion_group!(benches, tree);
criterion_main!(benches);
