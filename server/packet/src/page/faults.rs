//! Looks at finished pages for text that left its cell or the page, and for lines printed over
//! each other. Used by the tests, and by every debug build.

use super::{Draw, Frame, Page, Path, Step};
use crate::fonts::Fonts;

/// A glyph may lean this far out of its cell: side bearings of slanted and swash letters.
const LEAN: f32 = 1.5;

/// One sentence for each fault.
pub(crate) fn faults(fonts: &Fonts, frame: &Frame, pages: &[Page]) -> Vec<String> {
    let mut found = Vec::new();
    for (number, page) in pages.iter().enumerate() {
        let mut boxes: Vec<[f32; 4]> = Vec::new();
        for draw in &page.draws {
            let (x, y, line, left, right) = match draw {
                Draw::Text {
                    x,
                    y,
                    line,
                    left,
                    right,
                } => (x, y, line, left, right),
                Draw::Path(path) => {
                    if !path_is_inside(frame, path) {
                        found.push(format!("page {}: a shape leaves the frame", number + 1));
                    }
                    continue;
                }
            };
            let text = || {
                line.runs
                    .iter()
                    .map(|run| run.text.as_str())
                    .collect::<String>()
            };
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
            if ink[0] < 0.0
                || ink[1] < 0.0
                || ink[2] > frame.page_width
                || ink[3] > frame.page_height
            {
                fault("ink leaves the page");
            }
            if ink[0] < frame.left - LEAN || ink[2] > frame.left + frame.width + LEAN {
                fault("ink leaves the frame");
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

/// Shapes stay between the margins and on the page. Frames and arrows may stand over by their own
/// thickness.
fn path_is_inside(frame: &Frame, path: &Path) -> bool {
    let inside = |x: f32, y: f32| {
        x >= frame.left - 2.0
            && x <= frame.left + frame.width + 2.0
            && y >= 0.0
            && y <= frame.page_height
    };
    path.steps.iter().all(|step| match *step {
        Step::Move(x, y) | Step::Line(x, y) => inside(x, y),
        Step::Curve([ax, ay, bx, by, x, y]) => inside(ax, ay) && inside(bx, by) && inside(x, y),
        Step::Close => true,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{
        Paper,
        page::{Ink, Stroke},
        text::{Look, Span, lines},
    };

    fn found(draws: Vec<Draw>) -> Vec<String> {
        faults(
            &Fonts::get().unwrap(),
            &Frame::of(Paper::A4),
            &[Page { draws }],
        )
    }

    fn text(x: f32, y: f32, room: f32) -> Draw {
        let span = Span::new("Meridian", Look::regular(10.0));
        let line = lines(&Fonts::get().unwrap(), &[span], f32::INFINITY).remove(0);
        Draw::Text {
            x,
            y,
            line,
            left: x,
            right: x + room,
        }
    }

    #[test]
    fn good_pages_have_none() {
        assert!(found(vec![text(60.0, 100.0, 80.0), text(60.0, 114.0, 80.0)]).is_empty());
    }

    #[test]
    fn each_fault_is_found() {
        let crossing = vec![text(60.0, 100.0, 80.0), text(70.0, 104.0, 80.0)];
        assert!(found(crossing)[0].contains("over other text"));
        assert!(found(vec![text(60.0, 100.0, 20.0)])[0].contains("wider than its cell"));
        assert!(found(vec![text(20.0, 100.0, 80.0)])[0].contains("leaves the frame"));
        assert!(found(vec![text(60.0, 845.0, 80.0)])[0].contains("leaves the page"));
        let line = Path::line(60.0, 90.0, 600.0, 90.0, Stroke::solid(Ink::Black, 1.0));
        assert!(found(vec![Draw::Path(line)])[0].contains("a shape leaves"));
    }
}
