//! How long a packet takes, with the fonts already read. `cargo bench -p gagwright-packet`.
#![allow(missing_docs)] // the macros write undocumented functions

use criterion::{Criterion, criterion_group, criterion_main};
use gagwright_packet::{PacketDocument, Paper, render};

fn packets(c: &mut Criterion) {
    for (name, json) in [
        ("normal", include_str!("../tests/documents/normal.json")),
        ("stress", include_str!("../tests/documents/stress.json")),
    ] {
        let Ok(document) = serde_json::from_str::<PacketDocument>(json) else {
            continue;
        };
        c.bench_function(&format!("packet/{name}"), |b| {
            b.iter(|| render(&document, Paper::A4).map(|bytes| bytes.len()));
        });
    }
}

criterion_group!(benches, packets);
criterion_main!(benches);
