//! Rebuilds the crate when a migration changes: they are embedded by a macro that cargo cannot see
//! through.

fn main() {
    println!("cargo:rerun-if-changed=../../migrations");
}
