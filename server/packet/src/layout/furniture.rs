//! The running head and foot: which gag, which revision, which page, made when, and the caution.

use crate::{
    PacketDocument,
    document::Mark,
    fonts::Fonts,
    page::{Draw, Flow, Ink, Path, Piece, Stroke},
    parts::strip,
    text::{Line, Look, Span, fit},
};

/// Printed at the foot of every page.
const CAUTION: &str = "Planning aid. Local law and licensed people decide.";
const DEMO: &str = "DEMONSTRATION: invented people, places and figures. Do not perform.";

/// Draws the head and the foot on every page.
pub(super) fn furnish(fonts: &Fonts, document: &PacketDocument, flow: &mut Flow) {
    let count = flow.pages.len();
    let frame = flow.frame;
    for (index, page) in flow.pages.iter_mut().enumerate() {
        let mut draws = Piece::default();
        let right_edge = frame.left + frame.width;

        let place = format!(
            "Revision {}   ·   page {}/{count}",
            document.revision,
            index + 1
        );
        let place = fit(fonts, &Span::new(place, Look::bold(8.6)), frame.width * 0.5);
        let place_left = right_edge - place.width;
        put(&mut draws, place, place_left, 40.0);

        let code_room = frame.width * 0.3;
        let code = fit(
            fonts,
            &Span::new(document.gag_code.as_str(), Look::bold(10.5)),
            code_room,
        );
        let code_right = frame.left + code.width;
        put(&mut draws, code, frame.left, 40.0);
        let room = place_left - 16.0 - code_right - 7.0;
        if room > 40.0 {
            let title = format!("{}   ·   {}", document.gag_title, document.production);
            let look = Look::regular(8.6).in_ink(Ink::Grey);
            put(
                &mut draws,
                fit(fonts, &Span::new(title, look), room),
                code_right + 7.0,
                40.0,
            );
        }
        let rule = Stroke::solid(Ink::Black, 0.7);
        draws.put_path(Path::line(frame.left, 47.0, right_edge, 47.0, rule));

        let foot = frame.page_height - 32.0;
        draws.put_path(Path::line(
            frame.left,
            foot - 11.0,
            right_edge,
            foot - 11.0,
            Stroke::solid(Ink::Line, 0.5),
        ));
        let quiet = Look::regular(7.4).in_ink(Ink::Grey);
        let made = if document.generated_text.trim().is_empty() {
            document.generated_at.as_str()
        } else {
            document.generated_text.as_str()
        };
        let made = format!("Made {made}");
        let made = fit(fonts, &Span::new(made, quiet), frame.width * 0.48);
        let made_left = right_edge - made.width;
        put(&mut draws, made, made_left, foot);
        let room = made_left - 12.0 - frame.left;
        put(
            &mut draws,
            fit(fonts, &Span::new(CAUTION, quiet), room),
            frame.left,
            foot,
        );

        if document.demo {
            let tape = strip(Mark::Broken, 26.0, 7.0);
            draws.put(tape, frame.left, 16.5);
            let look = Look::bold(7.6).in_ink(Ink::Tape);
            let text = fit(fonts, &Span::new(DEMO, look), frame.width - 34.0);
            put(&mut draws, text, frame.left + 33.0, 23.0);
        }
        page.draws.extend(draws.draws);
    }
}

fn put(piece: &mut Piece, line: Line, x: f32, y: f32) {
    let right = x + line.width;
    piece.draws.push(Draw::Text {
        x,
        y,
        line,
        left: x,
        right,
    });
}
