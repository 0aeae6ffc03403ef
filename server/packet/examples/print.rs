//! Prints a packet from a JSON document, to look at it:
//! `cargo run -p gagwright-packet --example print -- tests/documents/normal.json a4 out.pdf`

use gagwright_packet::{PacketDocument, Paper, render};

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let [document, paper, out] = arguments.as_slice() else {
        return Err("give a JSON document, a4 or letter, and the file to write".into());
    };
    let document: PacketDocument = serde_json::from_str(&std::fs::read_to_string(document)?)?;
    let paper = match paper.as_str() {
        "a4" => Paper::A4,
        "letter" => Paper::Letter,
        other => return Err(format!("{other} is not a paper; write a4 or letter").into()),
    };
    let bytes = render(&document, paper)?;
    println!("{} bytes", bytes.len());
    std::fs::write(out, bytes)?;
    Ok(())
}
