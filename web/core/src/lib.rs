//! The pure crates for the phone, bound to WebAssembly.
//!
//! Every function takes and returns JSON text, so that what crosses the border is the same document
//! that travels over the wire. An error is thrown as an `Error` whose message says what is wrong and
//! what would be right. No rule is decided here: each function decodes, makes one call, encodes.
#![allow(unsafe_code)] // Only for what `#[wasm_bindgen]` expands to.

use wasm_bindgen::prelude::*;

/// The version of the rules, so that the app can say which it runs.
#[wasm_bindgen]
pub fn version() -> String {
    env!("CARGO_PKG_VERSION").to_owned()
}
