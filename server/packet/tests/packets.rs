//! Whole packets: bytes in the right form, the right pages, every word where it belongs.
#![allow(clippy::unwrap_used, clippy::panic)] // a test that cannot go on should stop

use std::collections::BTreeSet;

use gagwright_packet::{
    PacketDocument, PacketError, Paper, attachments,
    document::{Mark, State},
    layout_faults, render,
};
use lopdf::{Document, Object};

const PAPERS: [Paper; 2] = [Paper::A4, Paper::Letter];

fn document(name: &str) -> PacketDocument {
    let path = format!("{}/tests/documents/{name}.json", env!("CARGO_MANIFEST_DIR"));
    serde_json::from_str(&std::fs::read_to_string(path).unwrap()).unwrap()
}

fn read(bytes: &[u8]) -> Document {
    Document::load_mem(bytes).unwrap()
}

/// The text of a page, with every run of blanks as one space.
fn text(pdf: &Document, page: u32) -> String {
    let text = pdf.extract_text(&[page]).unwrap();
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

fn all_text(pdf: &Document) -> String {
    pdf.get_pages()
        .keys()
        .map(|&page| text(pdf, page))
        .collect::<Vec<_>>()
        .join(" ")
}

/// The same without any blanks: a reader may put them between any two runs.
fn squeezed(text: &str) -> String {
    text.chars().filter(|c| !c.is_whitespace()).collect()
}

fn titles(pdf: &Document) -> Vec<String> {
    pdf.get_toc()
        .unwrap()
        .toc
        .into_iter()
        .map(|entry| entry.title)
        .collect()
}

#[test]
fn nothing_leaves_its_cell_or_covers_other_text() {
    for name in ["normal", "stress", "empty"] {
        for paper in PAPERS {
            let faults = layout_faults(&document(name), paper).unwrap();
            assert!(faults.is_empty(), "{name} on {paper:?}: {faults:#?}");
        }
    }
}

#[test]
fn the_same_document_gives_the_same_bytes() {
    for name in ["normal", "stress"] {
        let first = render(&document(name), Paper::A4).unwrap();
        assert_eq!(first, render(&document(name), Paper::A4).unwrap(), "{name}");
    }
    let other = PacketDocument {
        revision: 5,
        ..document("normal")
    };
    let first = render(&document("normal"), Paper::A4).unwrap();
    assert_ne!(first, render(&other, Paper::A4).unwrap());
}

#[test]
fn pages_are_portrait_in_the_paper_asked_for() {
    for (paper, width, height) in [(Paper::A4, 595.28, 841.89), (Paper::Letter, 612.0, 792.0)] {
        let pdf = read(&render(&document("normal"), paper).unwrap());
        for id in pdf.get_pages().into_values() {
            let page = pdf.get_dictionary(id).unwrap();
            let bounds: Vec<f32> = page
                .get(b"MediaBox")
                .and_then(Object::as_array)
                .unwrap()
                .iter()
                .map(|side| side.as_float().unwrap())
                .collect();
            assert_eq!(bounds, [0.0, 0.0, width, height]);
        }
    }
}

#[test]
fn a_normal_packet_stays_short_and_small() {
    let bytes = render(&document("normal"), Paper::A4).unwrap();
    let pages = read(&bytes).get_pages().len();
    assert!((8..=12).contains(&pages), "{pages} pages");
    assert!(bytes.len() < 150_000, "{} bytes", bytes.len());
}

#[test]
fn every_page_says_which_gag_which_revision_and_which_page() {
    let pdf = read(&render(&document("normal"), Paper::Letter).unwrap());
    let count = pdf.get_pages().len();
    for page in 1..=count {
        let text = squeezed(&text(&pdf, page as u32));
        for words in [
            "G07".to_owned(),
            format!("Revision4·page{page}/{count}"),
            "Planningaid.Locallawandlicensedpeopledecide.".to_owned(),
            "Made13March2026,09:26:53UTC".to_owned(),
            "DEMONSTRATION:inventedpeople".to_owned(),
        ] {
            assert!(text.contains(&words), "page {page} lacks {words}: {text}");
        }
    }
}

#[test]
fn a_real_production_is_not_marked_as_a_demonstration() {
    let real = PacketDocument {
        demo: false,
        ..document("normal")
    };
    let pdf = read(&render(&real, Paper::A4).unwrap());
    assert!(!all_text(&pdf).contains("DEMONSTRATION"));
}

#[test]
fn the_cover_answers_first() {
    let pdf = read(&render(&document("normal"), Paper::A4).unwrap());
    let cover = squeezed(&text(&pdf, 1));
    for words in [
        "Descentthroughthesilowindow",
        "Waiting",
        "Golfzeroseven,revisionfour,checksixfoureightseven",
        "Stillunsigned:4of6",
        "FirstassistantdirectorMissing",
        "Back-uplineanddescender,serialDSC-3391",
        "Haveitinspected",
    ] {
        let found = cover.contains(words) || cover.replace('—', "").contains(words);
        assert!(found, "the cover lacks {words}: {cover}");
    }
}

#[test]
fn every_word_of_the_document_is_printed() {
    let document = document("normal");
    let printed = squeezed(&all_text(&read(&render(&document, Paper::A4).unwrap())));
    let mut wanted: Vec<String> = Vec::new();
    for check in &document.checks {
        wanted.extend([
            check.title.clone(),
            check.detail.clone(),
            check.source.clone(),
        ]);
        wanted.push(check.state.word.clone());
    }
    for figure in &document.figures {
        wanted.extend([
            figure.title.clone(),
            figure.metric.clone(),
            figure.imperial.clone(),
        ]);
    }
    for finding in document.cast.iter().flat_map(|slot| &slot.findings) {
        wanted.extend([
            finding.requirement.clone(),
            finding.reason.clone(),
            finding.cure.clone(),
        ]);
    }
    for part in &document.signoffs {
        wanted.extend([
            part.role.clone(),
            part.key_fingerprint.clone(),
            part.attestation.clone(),
        ]);
        wanted.extend(part.sentences.iter().chain(&part.conditions).cloned());
    }
    let proof = document.trail.as_ref().unwrap();
    wanted.extend(proof.path.iter().cloned());
    wanted.push(proof.root.clone());
    wanted.extend(proof.checkpoint.lines().map(str::to_owned));
    for zone in &document.zones {
        wanted.extend([zone.title.clone(), zone.reason.clone()]);
    }
    for words in wanted {
        assert!(printed.contains(&squeezed(&words)), "not printed: {words}");
    }
}

#[test]
fn a_limit_of_common_practice_says_so_once() {
    let mut document = document("normal");
    document.checks.truncate(1);
    let mut said = |source: &str, standing: &str| {
        document.checks[0].source = source.into();
        document.checks[0].standing = standing.into();
        let text = all_text(&read(&render(&document, Paper::A4).unwrap())).to_lowercase();
        squeezed(&text).matches("commonpractice").count()
    };
    let elsewhere = said("Table 3", "from memory");
    assert_eq!(said("Common practice", "common practice"), elsewhere + 1);
    assert_eq!(
        said("Common practice: a fifth in reserve", "common practice"),
        elsewhere + 1
    );
    assert_eq!(said("Table 3", "common practice"), elsewhere + 1);
    assert_eq!(
        said("Table 3, common practice", "common practice"),
        elsewhere + 2
    );
}

#[test]
fn every_font_is_carried_cut_down_and_gives_its_text() {
    let pdf = read(&render(&document("stress"), Paper::A4).unwrap());
    let mut tags = BTreeSet::new();
    for font in pdf.objects.values().filter_map(|o| o.as_dict().ok()) {
        if !font
            .get(b"Subtype")
            .is_ok_and(|kind| *kind == "Type0".into())
        {
            continue;
        }
        let name = font.get(b"BaseFont").and_then(Object::as_name).unwrap();
        let name = String::from_utf8_lossy(name).into_owned();
        let (tag, _) = name.split_once('+').unwrap();
        assert!(
            tag.len() == 6 && tag.bytes().all(|b| b.is_ascii_uppercase()),
            "{name}"
        );
        assert!(tags.insert(tag.to_owned()), "{name} shares its tag");
        let text = font
            .get_deref(b"ToUnicode", &pdf)
            .and_then(Object::as_stream);
        assert!(text.is_ok(), "{name} gives no text");
        let descendant = font
            .get(b"DescendantFonts")
            .and_then(Object::as_array)
            .unwrap()[0]
            .as_dict()
            .unwrap();
        let program = descendant
            .get_deref(b"FontDescriptor", &pdf)
            .and_then(Object::as_dict)
            .and_then(|about| about.get_deref(b"FontFile2", &pdf))
            .and_then(Object::as_stream)
            .and_then(lopdf::Stream::decompressed_content)
            .unwrap();
        assert!(program.starts_with(&[0, 1, 0, 0]), "{name} is no TrueType");
        assert!(program.len() < 150_000, "{name}: {} bytes", program.len());
    }
    assert!(tags.len() >= 8, "{tags:?}");
}

#[test]
fn a_glyph_that_stands_for_two_texts_is_spelled_out_where_it_must() {
    // No face has either character, so both are drawn as the same box. U+13081 comes more often.
    let odd = PacketDocument {
        gag_title: "Box \u{13080}\u{13081}\u{13081}".into(),
        ..document("empty")
    };
    let pdf = read(&render(&odd, Paper::A4).unwrap());
    let page = pdf.get_page_content(pdf.get_pages()[&1]);
    let page = String::from_utf8_lossy(&page).into_owned();
    let spelled: BTreeSet<&str> = page
        .split("/ActualText<")
        .skip(1)
        .filter_map(|rest| rest.split_once('>'))
        .map(|(text, _)| text)
        .collect();
    assert_eq!(spelled, BTreeSet::from(["FEFFD80CDC80"]));
    let mapped = pdf
        .objects
        .values()
        .filter_map(|object| object.as_stream().ok()?.decompressed_content().ok())
        .any(|content| String::from_utf8_lossy(&content).contains("<0000> <D80CDC81>"));
    assert!(mapped, "the box has no text of its own");
}

#[test]
fn an_unsigned_role_gets_a_box_for_ink_and_a_signed_one_does_not() {
    let mut document = document("normal");
    let boxes = |document: &PacketDocument| {
        let text = all_text(&read(&render(document, Paper::A4).unwrap()));
        squeezed(&text).matches("Nameincapitals").count()
    };
    assert_eq!(boxes(&document), 4);
    for part in &mut document.signoffs {
        part.stands = true;
    }
    assert_eq!(boxes(&document), 0);
    let text = squeezed(&all_text(&read(&render(&document, Paper::A4).unwrap())));
    assert!(text.contains("Stillunsigned:nothing"));
}

#[test]
fn sections_and_parts_are_in_the_outline() {
    let titles = titles(&read(&render(&document("normal"), Paper::A4).unwrap()));
    let mut rest = titles.iter();
    for wanted in [
        "Cover",
        "Still unsigned: 4 of 6",
        "Plan",
        "Setting",
        "Rehearsals",
        "Figures and limits",
        "Cast",
        "Sign-offs",
        "Stunt coordinator",
        "Logged beside the plan",
        "Proof",
        "How to check it",
    ] {
        assert!(
            rest.any(|title| title == wanted),
            "{wanted} is missing or late in {titles:?}"
        );
    }
}

#[test]
fn names_in_many_scripts_keep_their_text() {
    // What a reader copies out: each name is in the mapping from codes to text, or spelled out
    // beside its glyphs.
    let bytes = render(&document("stress"), Paper::A4).unwrap();
    let pdf = read(&bytes);
    let mut mapped = BTreeSet::new();
    let mut spelled = String::new();
    for object in pdf.objects.values() {
        let Ok(stream) = object.as_stream() else {
            continue;
        };
        let Ok(content) = stream.decompressed_content() else {
            continue;
        };
        let content = String::from_utf8_lossy(&content).into_owned();
        if content.contains("begincmap") {
            for text in content.lines().filter_map(|line| line.rsplit_once("> <")) {
                let text = text.1.trim_end_matches('>');
                let units: Vec<u16> = (0..text.len() / 4)
                    .filter_map(|at| u16::from_str_radix(&text[at * 4..at * 4 + 4], 16).ok())
                    .collect();
                mapped.extend(String::from_utf16_lossy(&units).chars());
            }
        }
        spelled.push_str(&content);
    }
    for name in [
        "د. ليلى الدرعاوي",
        "榎並 汐里",
        "맹하랑",
        "Trịnh Thục Vy",
        "Αικατερίνη Βρυσάκη",
        "Зоряна",
        "שירה",
    ] {
        for c in name.chars().filter(|c| !c.is_whitespace()) {
            assert!(mapped.contains(&c), "{c} of {name} cannot be copied out");
        }
    }
    assert!(spelled.contains("ActualText"), "no run is spelled out");
    // A character that no font has still carries its text.
    assert!(
        mapped.contains(&'\u{13000}'),
        "the box for a missing glyph has lost its text"
    );
}

#[test]
fn attachments_come_back_whole() {
    for name in ["normal", "stress", "empty"] {
        let document = document(name);
        let mut sent = document.attachments.clone();
        sent.sort_by(|a, b| a.name.cmp(&b.name));
        assert_eq!(
            attachments(&render(&document, Paper::A4).unwrap()).unwrap(),
            sent,
            "{name}"
        );
    }
}

#[test]
fn what_is_no_packet_is_refused_when_read_back() {
    let packet = render(&document("normal"), Paper::A4).unwrap();
    for bad in [
        b"".as_slice(),
        b"%PDF-1.7",
        b"not a packet",
        &packet[..packet.len() / 2],
    ] {
        let Err(PacketError::Unreadable(_)) = attachments(bad) else {
            panic!("{} bytes were accepted", bad.len());
        };
    }
}

#[test]
fn a_moment_that_is_none_is_refused_by_name() {
    let bad = PacketDocument {
        generated_at: "yesterday".into(),
        ..document("empty")
    };
    let Err(PacketError::BadField { field, fix, .. }) = render(&bad, Paper::A4) else {
        panic!("it was accepted");
    };
    assert_eq!(field, "generated_at");
    assert!(fix.contains("2026-03-14T09:26:53Z"));
}

#[test]
fn data_too_long_for_a_code_is_refused_by_name() {
    let bad = PacketDocument {
        verify_data: "x".repeat(5000),
        ..document("empty")
    };
    let error = render(&bad, Paper::A4).unwrap_err().to_string();
    assert!(error.starts_with("verify_data: "), "{error}");
}

#[test]
fn numbers_that_cannot_be_drawn_leave_a_gap_and_never_a_bad_file() {
    let mut document = document("normal");
    let plot = &mut document.plots[0];
    plot.curves[0].values[3] = f64::NAN;
    plot.curves[0].values[5] = f64::INFINITY;
    plot.curves[1].values.truncate(2);
    plot.limits[0].value = f64::NEG_INFINITY;
    document.zones[0].shape = Some(gagwright_packet::document::ZoneShape::Ellipse {
        x: f64::NAN,
        y: 0.0,
        half_x: f64::INFINITY,
        half_y: 1.0,
    });
    for paper in PAPERS {
        let bytes = render(&document, paper).unwrap();
        let pdf = read(&bytes);
        for id in pdf.get_pages().into_values() {
            let content = String::from_utf8_lossy(&pdf.get_page_content(id)).into_owned();
            assert!(!content.contains("NaN") && !content.contains("inf "));
        }
    }
}

#[test]
fn each_mark_is_drawn_differently() {
    let page = |mark| {
        let state = State::new("Same word", mark);
        let one = PacketDocument {
            state,
            ..document("empty")
        };
        let pdf = read(&render(&one, Paper::A4).unwrap());
        let id = pdf.get_pages()[&1];
        pdf.get_page_content(id)
    };
    let pages: BTreeSet<Vec<u8>> = [
        Mark::Whole,
        Mark::Broken,
        Mark::Torn,
        Mark::Crossed,
        Mark::None,
    ]
    .map(page)
    .into();
    assert_eq!(pages.len(), 5);
}

#[test]
fn a_drawn_mark_is_printed_as_lines_and_stays_in_its_place() {
    let lines = |document: &PacketDocument| -> usize {
        assert!(layout_faults(document, Paper::A4).unwrap().is_empty());
        let pdf = read(&render(document, Paper::A4).unwrap());
        pdf.get_pages()
            .into_values()
            .map(|page| {
                let content = pdf.get_page_content(page);
                let content = lopdf::content::Content::decode(&content).unwrap();
                let line_to = |one: &&lopdf::content::Operation| one.operator == "l";
                content.operations.iter().filter(line_to).count()
            })
            .sum()
    };
    let mut document = document("normal");
    let before = lines(&document);
    let signed = document
        .signoffs
        .iter_mut()
        .find(|part| part.stands)
        .unwrap();
    // Two strokes of three points; half a point at the end of one is left out.
    signed.drawing = vec![
        vec![0, 0, 1000, 0, 1000, 400],
        vec![5, 5, 6, 6, 900, 380, 7],
    ];
    assert_eq!(lines(&document), before + 4);
    for odd in [vec![vec![]], vec![vec![3]], vec![vec![500, 500]]] {
        let signed = document
            .signoffs
            .iter_mut()
            .find(|part| part.stands)
            .unwrap();
        signed.drawing = odd;
        lines(&document);
    }
}
