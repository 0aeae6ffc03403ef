//! How long ten thousand draws take, for each technique.

#![allow(missing_docs, clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "../tests/mechanics/common/mod.rs"]
mod common;

use criterion::{Criterion, criterion_group, criterion_main};
use gagwright_mechanics::{
    techniques,
    tools::{SpreadRequest, spread},
};

fn draws(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("spread_10000");
    group.sample_size(10);
    for technique in techniques() {
        let request = SpreadRequest {
            inputs: common::plausible(technique.name()),
            draws: 10_000,
            seed: 1,
        };
        group.bench_function(technique.name(), |bencher| {
            bencher.iter(|| spread(*technique, std::hint::black_box(&request)).unwrap());
        });
    }
    group.finish();
}

criterion_group!(benches, draws);
criterion_main!(benches);
