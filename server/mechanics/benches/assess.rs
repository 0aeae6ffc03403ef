//! How long one assessment takes, intervals over all tolerances included.

#![allow(missing_docs, clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "../tests/mechanics/common/mod.rs"]
mod common;

use criterion::{Criterion, criterion_group, criterion_main};
use gagwright_mechanics::techniques;

fn assess(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("assess");
    group.sample_size(20);
    for technique in techniques() {
        let inputs = common::plausible(technique.name());
        group.bench_function(technique.name(), |bencher| {
            bencher.iter(|| technique.assess(std::hint::black_box(&inputs)).unwrap());
        });
    }
    group.finish();
}

criterion_group!(benches, assess);
criterion_main!(benches);
