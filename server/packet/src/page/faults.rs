//! Looks at finished pages for text that left its cell or the page, and for lines printed over
//! each other. Used by the tests, and by every debug build.

use super::{Draw, Frame, Page};
use crate::fonts::Fonts;

/// A glyph may lean this far out of its cell: side bearings of slanted and swash letters.
const LEAN: f32 = 1.5;

/// One sentence for each fault.
pub(crate) fn faults(fonts: &Fonts, frame: &Frame, pages: &[Page]) -> Vec<String> {
    let mut found = Vec::new();
    for (number, page) in pages.iter().enumerate() {
        let mut boxes: Vec<[f32; 4]> = Vec::new();
        for draw in &page.draws {
            let Draw::Text { x, y, line, left, right } = draw else { continue };
            let text = || line.runs.iter().map(|run| run.text.as_str()).collect::<String>();
            let mut fault = |what: &str| {
                let start: String = text().chars().take(40).collect();
                found.push(format!("page {}: {what}: \"{start}\"", number + 1));
            };
            if *x < left - 0.05 || x + line.width > right + 0.05 {
                fault("text is wider than its cell");
            }
            let Some((ink_left, ink_bottom, ink_right, ink_top)) = line.ink_box(fonts) else {
                continue;
            };
            let ink = [x + ink_left, y - ink_top, x + ink_right, y - ink_bottom];
            if ink[0] < left - LEAN || ink[2] > right + LEAN {
                fault("ink leaves its cell");
            }
            if ink[0] < 0.0 || ink[1] < 0.0 || ink[2] > frame.page_width || ink[3] > frame.page_height
            {
                fault("ink leaves the page");
            }
            let crossed = boxes.iter().any(|other| {
                let across = ink[2].min(other[2]) - ink[0].max(other[0]);
                let down = ink[3].min(other[3]) - ink[1].max(other[1]);
                across > 0.5 && down > 0.5
            });
            if crossed {
                fault("text is printed over other text");
            }
            boxes.push(ink);
        }
    }
    found
}
