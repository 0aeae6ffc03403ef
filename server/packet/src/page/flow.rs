//! Flows pieces down pages: kept chains stay together, heads of tables are drawn again.

use super::{Draw, Piece};
use crate::Paper;

/// A page's size and the part of it that text may use.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Frame {
    /// Page width.
    pub(crate) page_width: f32,
    /// Page height.
    pub(crate) page_height: f32,
    /// Left edge of the text.
    pub(crate) left: f32,
    /// Top edge of the text.
    pub(crate) top: f32,
    /// Width of the text.
    pub(crate) width: f32,
    /// Bottom edge of the text.
    pub(crate) bottom: f32,
}

impl Frame {
    /// The frame for a paper.
    pub(crate) fn of(paper: Paper) -> Frame {
        let (page_width, page_height) = match paper {
            Paper::A4 => (595.28, 841.89),
            Paper::Letter => (612.0, 792.0),
        };
        // Wide enough at the sides for a two-hole punch and for printers that cannot reach the edge.
        let side = 50.0;
        Frame {
            page_width,
            page_height,
            left: side,
            top: 66.0,
            width: page_width - 2.0 * side,
            bottom: page_height - 54.0,
        }
    }

    /// Height of the text.
    pub(crate) fn height(&self) -> f32 {
        self.bottom - self.top
    }
}

/// One page as drawn.
#[derive(Clone, Debug, Default)]
pub(crate) struct Page {
    /// What is drawn, in page coordinates.
    pub(crate) draws: Vec<Draw>,
}

/// An entry of the document's outline.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Entry {
    /// 0 for a section, 1 for a part of one.
    pub(crate) depth: u8,
    /// The title.
    pub(crate) title: String,
    /// The page, from 0.
    pub(crate) page: usize,
    /// Height on the page, from its top.
    pub(crate) y: f32,
}

/// Pages being filled.
pub(crate) struct Flow {
    /// The frame of every page.
    pub(crate) frame: Frame,
    /// The pages so far.
    pub(crate) pages: Vec<Page>,
    /// The outline so far.
    pub(crate) outline: Vec<Entry>,
    y: f32,
}

impl Flow {
    /// One empty page.
    pub(crate) fn new(frame: Frame) -> Flow {
        Flow {
            frame,
            pages: vec![Page::default()],
            outline: Vec::new(),
            y: frame.top,
        }
    }

    /// Starts a new page, unless the current one is still empty.
    pub(crate) fn new_page(&mut self) {
        if self.y > self.frame.top {
            self.pages.push(Page::default());
            self.y = self.frame.top;
        }
    }

    /// Starts a new page unless at least this part of the current one is still free.
    pub(crate) fn new_page_unless_free(&mut self, part: f32) {
        if self.frame.bottom - self.y < self.frame.height() * part {
            self.new_page();
        }
    }

    /// Places pieces one under the other.
    pub(crate) fn add(&mut self, pieces: Vec<Piece>) {
        let mut chain = chain_heights(&pieces).into_iter();
        for piece in pieces {
            let together = chain.next().unwrap_or(piece.height);
            let at_top = self.y <= self.frame.top;
            let before = if at_top { 0.0 } else { piece.before };
            let left_over = self.frame.bottom - self.y - before;
            // A chain longer than a page cannot be kept whole; its pieces then flow one by one.
            let needed = if together <= self.frame.height() * 0.8 {
                together
            } else {
                piece.height
            };
            if !at_top && needed > left_over + 0.01 {
                self.new_page();
                if let Some(again) = &piece.again {
                    self.place(Piece::clone(again));
                }
            } else {
                self.y += before;
            }
            self.place(piece);
        }
    }

    fn place(&mut self, piece: Piece) {
        let page = self.pages.len().saturating_sub(1);
        if let Some((depth, title)) = piece.outline {
            self.outline.push(Entry {
                depth,
                title,
                page,
                y: self.y,
            });
        }
        let (x, y) = (self.frame.left, self.y);
        if let Some(page) = self.pages.last_mut() {
            page.draws.extend(piece.draws.into_iter().map(|mut draw| {
                draw.shift(x, y);
                draw
            }));
        }
        self.y += piece.height;
    }
}

/// For each piece, the height of it and of everything that must stand on its page below it.
fn chain_heights(pieces: &[Piece]) -> Vec<f32> {
    let mut heights = vec![0.0; pieces.len()];
    let mut below = 0.0;
    for (index, piece) in pieces.iter().enumerate().rev() {
        heights[index] = piece.height + if piece.keep { below } else { 0.0 };
        below = heights[index] + piece.before;
    }
    heights
}

#[cfg(test)]
mod tests {
    use super::*;

    fn flow() -> Flow {
        Flow::new(Frame::of(Paper::A4))
    }

    #[test]
    fn a_heading_moves_with_what_it_heads() {
        let mut flow = flow();
        let tall = flow.frame.height() - 30.0;
        flow.add(vec![
            Piece::blank(tall),
            Piece::blank(20.0).kept().outlined(0, "Heading"),
            Piece::blank(20.0),
        ]);
        assert_eq!(flow.outline[0].page, 1);
        assert_eq!(flow.pages.len(), 2);
    }

    #[test]
    fn a_chain_longer_than_a_page_still_flows() {
        let mut flow = flow();
        flow.add((0..200).map(|_| Piece::blank(20.0).kept()).collect());
        assert!(flow.pages.len() > 4);
    }

    #[test]
    fn space_above_is_dropped_at_the_top() {
        let mut flow = flow();
        flow.add(vec![Piece::blank(10.0).after(30.0).outlined(0, "First")]);
        assert!((flow.outline[0].y - flow.frame.top).abs() < 0.01);
    }
}
