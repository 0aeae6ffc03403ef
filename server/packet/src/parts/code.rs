//! The square code a phone scans (ISO/IEC 18004), drawn as filled squares.

use fast_qr::{ECL, QRBuilder};

use crate::{
    PacketError,
    page::{Ink, Path, Piece, Step},
};

/// Draws the code for some data in a square of the given side, quiet zone included.
pub(crate) fn code(data: &str, side: f32) -> Result<Piece, PacketError> {
    let made = QRBuilder::new(data)
        .ecl(ECL::M)
        .build()
        .map_err(|_| PacketError::BadField {
            field: "verify_data".into(),
            problem: format!("{} bytes are too many for one printed code", data.len()),
            fix: "give an address or a digest of at most 2000 bytes".into(),
        })?;
    // The standard asks for four light modules on every side.
    let quiet = 4.0;
    let module = side / (made.size as f32 + 2.0 * quiet);
    let mut steps = Vec::new();
    for row in 0..made.size {
        let modules = &made[row];
        let mut column = 0;
        while column < made.size {
            if !modules[column].value() {
                column += 1;
                continue;
            }
            // Dark modules in a row are one bar, so that no hairline shows between them.
            let start = column;
            while column < made.size && modules[column].value() {
                column += 1;
            }
            let (x0, x1) = (
                (start as f32 + quiet) * module,
                (column as f32 + quiet) * module,
            );
            let (y0, y1) = (
                (row as f32 + quiet) * module,
                (row as f32 + quiet + 1.0) * module,
            );
            steps.extend([
                Step::Move(x0, y0),
                Step::Line(x1, y0),
                Step::Line(x1, y1),
                Step::Line(x0, y1),
                Step::Close,
            ]);
        }
    }
    let mut piece = Piece::blank(side);
    piece.put_path(Path {
        steps,
        fill: Some(Ink::Black),
        stroke: None,
    });
    Ok(piece)
}
