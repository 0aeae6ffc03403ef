//! The plausible inputs of every technique, as one JSON document.

#![allow(missing_docs, clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "../tests/mechanics/common/mod.rs"]
mod common;

use std::collections::BTreeMap;

use gagwright_mechanics::techniques;

fn main() -> serde_json::Result<()> {
    let all: BTreeMap<_, _> = techniques()
        .iter()
        .map(|technique| (technique.name(), common::plausible(technique.name())))
        .collect();
    println!("{}", serde_json::to_string(&all)?);
    Ok(())
}
