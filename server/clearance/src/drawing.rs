//! A mark drawn with a finger beside a sign-off. The statement carries the hash of its canonical bytes, so
//! the signature binds it; the drawing itself stays outside what is signed and outside the trail, because it
//! is personal and may be erased, and everything that was signed still verifies without it.

use gagwright_trail::tree::Hash;
use serde::{Deserialize, Serialize};

use crate::canonical::canonical_bytes;

/// The side of the box a mark is drawn in. Screens and paper scale it.
pub const SIDE: u16 = 1000;
/// Most bytes of a drawing in canonical form. A signature of a few hundred points fits.
pub const LARGEST: usize = 4096;

/// Strokes in the order they were drawn, each the points x, y, x, y ... from the top left corner of a box of
/// 1000 by 1000. A stroke of one point is a dot.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(transparent)]
pub struct Drawing(pub Vec<Vec<u16>>);

/// Why a drawing is refused.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum DrawingError {
    /// Nothing is drawn.
    #[error("has no stroke; draw one, or leave the drawing out")]
    Empty,
    /// A stroke that is no row of points, counted from zero.
    #[error("stroke {0} is not a row of points; give x and y for each, and at least one point")]
    NotPoints(usize),
    /// A point outside the box.
    #[error("stroke {0} leaves the box; every x and y is from 0 to 1000")]
    Outside(usize),
    /// Too much.
    #[error("is {0} bytes in canonical form, and at most 4096 are kept; draw with fewer points")]
    TooLarge(usize),
}

impl Drawing {
    /// Its RFC 8785 bytes.
    pub fn bytes(&self) -> Vec<u8> {
        // Lists of small whole numbers always have a canonical form.
        canonical_bytes(self).unwrap_or_default()
    }

    /// SHA-256 of its canonical bytes, lower-case hex: what a statement's `mark` says.
    pub fn hash(&self) -> String {
        Hash::of(&self.bytes()).to_hex()
    }

    /// Whether it can be kept and drawn.
    ///
    /// # Errors
    /// Says what is wrong and what to do.
    pub fn check(&self) -> Result<(), DrawingError> {
        if self.0.is_empty() {
            return Err(DrawingError::Empty);
        }
        for (index, stroke) in self.0.iter().enumerate() {
            if stroke.is_empty() || stroke.len() % 2 != 0 {
                return Err(DrawingError::NotPoints(index));
            }
            if stroke.iter().any(|one| *one > SIDE) {
                return Err(DrawingError::Outside(index));
            }
        }
        let size = self.bytes().len();
        if size > LARGEST {
            return Err(DrawingError::TooLarge(size));
        }
        Ok(())
    }
}

/// Whether a statement's `mark` is a hash as [`Drawing::hash`] writes it.
pub fn is_hash(text: &str) -> bool {
    text.len() == 64
        && text
            .bytes()
            .all(|byte| byte.is_ascii_digit() || (b'a'..=b'f').contains(&byte))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_drawing_has_the_bytes_and_the_hash_that_another_program_gives() {
        let drawing = Drawing(vec![vec![0, 1000, 500, 20], vec![7, 7]]);
        assert_eq!(drawing.bytes(), b"[[0,1000,500,20],[7,7]]");
        // Python: hashlib.sha256(b"[[0,1000,500,20],[7,7]]").hexdigest()
        assert_eq!(
            drawing.hash(),
            "a00917019d0674267ccacbc88006d8b590ef01f9807033afe9e7c66ba3217063"
        );
        assert!(is_hash(&drawing.hash()));
        assert_eq!(drawing.check(), Ok(()));
    }

    #[test]
    fn what_cannot_be_drawn_is_refused() {
        let refused = |strokes: Vec<Vec<u16>>| Drawing(strokes).check().unwrap_err();
        assert_eq!(refused(vec![]), DrawingError::Empty);
        assert_eq!(
            refused(vec![vec![1, 2], vec![]]),
            DrawingError::NotPoints(1)
        );
        assert_eq!(refused(vec![vec![1, 2, 3]]), DrawingError::NotPoints(0));
        assert_eq!(refused(vec![vec![1, 1001]]), DrawingError::Outside(0));
        // 4 bytes a number with its comma: the largest that fits, and one point more.
        let fits = vec![vec![999; 1022]];
        assert_eq!(Drawing(fits).check(), Ok(()));
        assert_eq!(refused(vec![vec![999; 1024]]), DrawingError::TooLarge(4099));
        assert!(serde_json::from_str::<Drawing>("[[1,-2]]").is_err());
        assert!(serde_json::from_str::<Drawing>("[[1,2.5]]").is_err());
        assert!(!is_hash(&"A".repeat(64)) && !is_hash("ab"));
    }
}
