//! From finished pages to the bytes of a PDF 1.7 file (ISO 32000-1). Knows nothing of layout.
//!
//! The same pages give the same bytes: object numbers follow page order, the dates are the
//! document's own, and the file's identifier is a hash of what is in it.

mod content;
mod face;

use std::collections::BTreeMap;

use flate2::{Compression, write::ZlibEncoder};
use pdf_writer::{Date, Filter, Finish, Name, Pdf, Rect, Ref, Str, TextStr, types::PageMode};
use sha2::{Digest, Sha256};

use crate::{
    PacketError,
    document::Attachment,
    fonts::{FaceId, Fonts},
    page::Flow,
};
use face::Embedded;

/// What the file says about itself.
pub(crate) struct About<'a> {
    /// Title.
    pub(crate) title: String,
    /// Subject.
    pub(crate) subject: String,
    /// When it was made.
    pub(crate) made: jiff::Timestamp,
    /// Files it carries.
    pub(crate) attachments: &'a [Attachment],
}

/// Hands out object numbers.
pub(crate) struct Numbers(i32);

impl Numbers {
    pub(crate) fn next(&mut self) -> Ref {
        let number = Ref::new(self.0);
        self.0 += 1;
        number
    }
}

/// Writes the file.
pub(crate) fn write(fonts: &Fonts, flow: &Flow, about: &About<'_>) -> Result<Vec<u8>, PacketError> {
    let mut faces: BTreeMap<FaceId, Embedded> = BTreeMap::new();
    let contents: Vec<Vec<u8>> = flow
        .pages
        .iter()
        .map(|page| content::content(fonts, &flow.frame, page, &mut faces))
        .collect();

    let mut pdf = Pdf::new();
    let mut numbers = Numbers(1);
    let (catalog, tree) = (numbers.next(), numbers.next());
    let font_refs: BTreeMap<FaceId, Ref> = faces.keys().map(|&id| (id, numbers.next())).collect();
    let pages: Vec<(Ref, Ref)> = contents
        .iter()
        .map(|_| (numbers.next(), numbers.next()))
        .collect();

    for (&(page_ref, content_ref), stream) in pages.iter().zip(&contents) {
        let packed = compress(stream);
        pdf.stream(content_ref, &packed).filter(Filter::FlateDecode);
        let mut page = pdf.page(page_ref);
        page.parent(tree).contents(content_ref);
        page.media_box(Rect::new(
            0.0,
            0.0,
            flow.frame.page_width,
            flow.frame.page_height,
        ));
        let mut resources = page.resources();
        let mut listed = resources.fonts();
        for (&id, &font) in &font_refs {
            listed.pair(Name(content::font_name(id).as_bytes()), font);
        }
    }
    pdf.pages(tree)
        .count(pages.len() as i32)
        .kids(pages.iter().map(|&(page, _)| page));
    for (id, embedded) in &faces {
        if let Some(&font) = font_refs.get(id) {
            face::embed(&mut pdf, &mut numbers, font, fonts.face(*id), embedded)?;
        }
    }
    let outline = write_outline(&mut pdf, &mut numbers, flow, &pages);
    let files = write_attachments(&mut pdf, &mut numbers, about);

    let info = numbers.next();
    pdf.document_info(info)
        .title(TextStr(&about.title))
        .subject(TextStr(&about.subject))
        .creator(TextStr("Gagwright"))
        .producer(TextStr("Gagwright"))
        .creation_date(date(about.made))
        .modified_date(date(about.made));
    let mut root = pdf.catalog(catalog);
    root.pages(tree).lang(TextStr("en"));
    root.viewer_preferences().display_doc_title(true);
    if let Some(outline) = outline {
        root.outlines(outline).page_mode(PageMode::UseOutlines);
    }
    if !files.is_empty() {
        let mut names = root.names();
        let mut tree = names.embedded_files();
        let mut entries = tree.names();
        for (name, spec) in &files {
            entries.insert(Str(name.as_bytes()), *spec);
        }
    }
    root.finish();

    let mut hash = Sha256::new();
    hash.update(about.title.as_bytes());
    hash.update(about.made.to_string().as_bytes());
    for stream in &contents {
        hash.update(stream);
    }
    for attachment in about.attachments {
        hash.update(attachment.text.as_bytes());
    }
    let id = hash.finalize()[..16].to_vec();
    pdf.set_file_id((id.clone(), id));
    Ok(pdf.finish())
}

/// Half the time of the usual 6 for one part in fifty of the size.
const LEVEL: u32 = 4;

/// Packs a stream.
pub(crate) fn compress(bytes: &[u8]) -> Vec<u8> {
    use std::io::Write as _;
    let mut encoder = ZlibEncoder::new(Vec::new(), Compression::new(LEVEL));
    // Writing into memory has no way to fail.
    let _ = encoder.write_all(bytes);
    encoder.finish().unwrap_or_default()
}

fn date(moment: jiff::Timestamp) -> Date {
    let utc = moment.to_zoned(jiff::tz::TimeZone::UTC);
    Date::new(u16::try_from(utc.year()).unwrap_or(0))
        .month(utc.month() as u8)
        .day(utc.day() as u8)
        .hour(utc.hour() as u8)
        .minute(utc.minute() as u8)
        .second(utc.second() as u8)
        .utc_offset_hour(0)
        .utc_offset_minute(0)
}

/// Writes bookmarks in two depths; none when there are none.
fn write_outline(
    pdf: &mut Pdf,
    numbers: &mut Numbers,
    flow: &Flow,
    pages: &[(Ref, Ref)],
) -> Option<Ref> {
    if flow.outline.is_empty() {
        return None;
    }
    // Each section with the parts under it.
    let mut sections: Vec<(usize, Vec<usize>)> = Vec::new();
    for (index, entry) in flow.outline.iter().enumerate() {
        match sections.last_mut() {
            Some((_, parts)) if entry.depth > 0 => parts.push(index),
            _ => sections.push((index, Vec::new())),
        }
    }
    let root = numbers.next();
    let refs: Vec<Ref> = flow.outline.iter().map(|_| numbers.next()).collect();
    let tops: Vec<usize> = sections.iter().map(|&(index, _)| index).collect();
    let write_row =
        |pdf: &mut Pdf, row: &[usize], parent: Ref, children: &dyn Fn(usize) -> Vec<usize>| {
            for (place, &index) in row.iter().enumerate() {
                let entry = &flow.outline[index];
                let mut item = pdf.outline_item(refs[index]);
                item.title(TextStr(&entry.title)).parent(parent);
                if let Some(before) = place.checked_sub(1).and_then(|p| row.get(p)) {
                    item.prev(refs[*before]);
                }
                if let Some(after) = row.get(place + 1) {
                    item.next(refs[*after]);
                }
                let below = children(index);
                if let (Some(first), Some(last)) = (below.first(), below.last()) {
                    item.first(refs[*first])
                        .last(refs[*last])
                        .count(-(below.len() as i32));
                }
                if let Some(&(page, _)) = pages.get(entry.page) {
                    let top = flow.frame.page_height - entry.y + 6.0;
                    item.dest().page(page).xyz(0.0, top, None);
                }
            }
        };
    let parts_of = |index: usize| {
        sections
            .iter()
            .find(|&&(own, _)| own == index)
            .map(|(_, parts)| parts.clone())
            .unwrap_or_default()
    };
    write_row(pdf, &tops, root, &parts_of);
    for (index, parts) in &sections {
        write_row(pdf, parts, refs[*index], &|_| Vec::new());
    }
    if let (Some(first), Some(last)) = (tops.first(), tops.last()) {
        pdf.outline(root)
            .first(refs[*first])
            .last(refs[*last])
            .count(tops.len() as i32);
    }
    Some(root)
}

/// Writes the files carried along, sorted by name as a name tree must be.
fn write_attachments(
    pdf: &mut Pdf,
    numbers: &mut Numbers,
    about: &About<'_>,
) -> BTreeMap<String, Ref> {
    let mut files = BTreeMap::new();
    for attachment in about.attachments {
        let (stream, spec) = (numbers.next(), numbers.next());
        let packed = compress(attachment.text.as_bytes());
        let mut file = pdf.embedded_file(stream, &packed);
        file.filter(Filter::FlateDecode);
        file.subtype(Name(attachment.media_type.as_bytes()));
        file.params()
            .size(i32::try_from(attachment.text.len()).unwrap_or(i32::MAX))
            .modification_date(date(about.made));
        file.finish();
        pdf.file_spec(spec)
            .path(Str(attachment.name.as_bytes()))
            .unic_file(TextStr(&attachment.name))
            .description(TextStr(&attachment.description))
            .embedded_file_with_unicode(stream);
        files.insert(attachment.name.clone(), spec);
    }
    files
}
