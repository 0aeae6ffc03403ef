//! Pages: what is drawn on them, how pieces flow from one to the next, and whether everything
//! stayed where it should. Knows nothing of what the pieces say.

mod drawing;
mod faults;
mod flow;

pub(crate) use drawing::{Draw, Ink, Path, Piece, Step, Stroke};
pub(crate) use faults::faults;
pub(crate) use flow::{Entry, Flow, Frame, Page};
