//! The proof that this revision is in the trail, in a form that can be typed in again, and how to
//! check it in plain words.

use crate::{
    PacketDocument,
    fonts::Fonts,
    page::{Ink, Path, Piece, Stroke},
    parts::{Cell, Column, Voice, heading, paragraph, pieces_of_lines, steps, table},
    text::{Look, Span, lines},
};

/// Printed when the document brings no words of its own.
const HOW: [&str; 4] = [
    "Hash the leaf: SHA-256 over a zero byte followed by the leaf's bytes (RFC 6962, 2.1). It must \
     equal the leaf hash above.",
    "Walk the path upwards: at each step hash a one byte, the left node and the right node \
     together with SHA-256, in the order that the leaf's index gives (RFC 6962, 2.1.1).",
    "The result must equal the root above, and the root in the checkpoint.",
    "Check the checkpoint's signature with the log's public key, which you have from someone you \
     trust and not from this sheet alone.",
];

/// Sets the section.
pub(super) fn trail(fonts: &Fonts, document: &PacketDocument, width: f32) -> Vec<Piece> {
    let mut pieces = vec![heading(fonts, "What this revision is", &[], width)];
    let mut identity = vec![hash_row("Plan digest", &document.plan_digest)];
    identity.extend(
        document
            .facets
            .iter()
            .map(|facet| hash_row(&facet.title, &facet.hash)),
    );
    pieces.extend(pairs(fonts, identity, width));
    let Some(proof) = &document.trail else {
        pieces.push(heading(fonts, "In the trail", &[], width));
        let text = "This revision is not in the trail yet, so there is no proof to print.";
        pieces.extend(paragraph(fonts, text, Voice::BODY, width, 0.0));
        return pieces;
    };
    pieces.push(heading(fonts, "In the trail", &[], width));
    pieces.extend(paragraph(
        fonts,
        &proof.leaf_records,
        Voice::BODY,
        width,
        0.0,
    ));
    let mut rows = vec![
        plain_row("Log", &proof.log),
        plain_row(
            "Leaf",
            &format!(
                "{} of {} (counted from 0)",
                proof.leaf_index, proof.tree_size
            ),
        ),
        hash_row("Leaf hash", &proof.leaf_hash),
        hash_row("Root", &proof.root),
    ];
    if !proof.log_key.trim().is_empty() {
        rows.push(hash_row("Log's public key", &proof.log_key));
    }
    pieces.extend(pairs(fonts, rows, width));

    pieces.push(heading(fonts, "Path from the leaf to the root", &[], width));
    if proof.path.is_empty() {
        let text = "The tree has one leaf; its hash is the root.";
        pieces.extend(paragraph(fonts, text, Voice::BODY, width, 0.0));
    }
    let path = proof
        .path
        .iter()
        .enumerate()
        .map(|(index, hash)| hash_row(&format!("Step {}", index + 1), hash))
        .collect();
    pieces.extend(pairs(fonts, path, width));

    if !proof.checkpoint.trim().is_empty() {
        pieces.push(heading(fonts, "Checkpoint", &[], width));
        let look = Look::mono(7.6);
        let indent = 10.0;
        let text = Span::new(proof.checkpoint.trim_end(), look);
        let set = lines(fonts, &[text], width - indent);
        for mut piece in pieces_of_lines(set, indent, width - indent) {
            let height = piece.height;
            let bar = Stroke::solid(Ink::Tape, 2.0);
            piece.put_path(Path::line(2.0, 0.0, 2.0, height, bar));
            pieces.push(piece);
        }
    }
    pieces.push(heading(fonts, "How to check it", &[], width));
    let how: Vec<String> = if proof.how_to_verify.is_empty() {
        HOW.iter().map(|step| (*step).to_owned()).collect()
    } else {
        proof.how_to_verify.clone()
    };
    pieces.extend(steps(fonts, &how, width));
    pieces
}

fn plain_row(label: &str, value: &str) -> Vec<Cell> {
    row(label, Span::new(value, Voice::CELL))
}

fn hash_row(label: &str, value: &str) -> Vec<Cell> {
    let value = if value.trim().is_empty() {
        "—"
    } else {
        value
    };
    row(label, Span::new(value, Voice::HASH))
}

fn row(label: &str, value: Span) -> Vec<Cell> {
    vec![
        Cell::Text(vec![vec![Span::new(label, Voice::CELL_QUIET)]]),
        Cell::Text(vec![vec![value]]),
    ]
}

fn pairs(fonts: &Fonts, rows: Vec<Vec<Cell>>, width: f32) -> Vec<Piece> {
    table(
        fonts,
        &[Column::new("", 2.0), Column::new("", 8.0)],
        rows,
        width,
    )
}
