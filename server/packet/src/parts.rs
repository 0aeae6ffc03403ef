//! What sections are made of: headings, paragraphs, tables, strips of tape, plots, maps, codes.
//! Each turns values into pieces of a given width. Knows nothing of which section uses it.

mod code;
mod ground;
mod plot;
mod table;
mod tape;
mod writing;

pub(crate) use code::code;
pub(crate) use ground::ground;
pub(crate) use plot::plot;
pub(crate) use table::{Cell, Column, table};
pub(crate) use tape::{strip, strip_with_word};
pub(crate) use writing::{
    Voice, bullets, caption, heading, labelled, paragraph, pieces_of_lines, section, steps,
    sub_heading,
};
