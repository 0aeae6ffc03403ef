//! Reads back the files that a packet carries, so that what it proves can be checked from the
//! packet alone. Knows nothing of what is in them.

use std::io::Read as _;

use flate2::read::ZlibDecoder;
use lopdf::{Dictionary, Document, Object, decode_text_string};

use crate::{PacketError, document::Attachment};

/// A carried file larger than this is refused: a few kilobytes can unpack to gigabytes.
const LARGEST: u64 = 64 * 1024 * 1024;
/// Depth of the tree of names; the standard needs no more than a few.
const DEEPEST: usize = 8;

/// The files that a packet carries, sorted by name. None is no error.
///
/// # Errors
/// When the bytes are not a PDF, or a carried file cannot be unpacked or is not UTF-8.
pub fn attachments(pdf: &[u8]) -> Result<Vec<Attachment>, PacketError> {
    let unreadable = |error: lopdf::Error| PacketError::Unreadable(error.to_string());
    let pdf = Document::load_mem(pdf).map_err(unreadable)?;
    let catalog = pdf.catalog().map_err(unreadable)?;
    let Some(tree) = child(&pdf, catalog, b"Names").and_then(|d| child(&pdf, d, b"EmbeddedFiles"))
    else {
        return Ok(Vec::new());
    };
    let mut specifications = Vec::new();
    collect(&pdf, tree, DEEPEST, &mut specifications);
    let mut found = specifications
        .into_iter()
        .map(|specification| read(&pdf, specification))
        .collect::<Result<Vec<_>, _>>()?;
    found.sort_by(|a, b| a.name.cmp(&b.name));
    Ok(found)
}

/// The dictionary under a key, through a reference where there is one.
fn child<'a>(pdf: &'a Document, parent: &'a Dictionary, key: &[u8]) -> Option<&'a Dictionary> {
    let (_, object) = pdf.dereference(parent.get(key).ok()?).ok()?;
    object.as_dict().ok()
}

/// Gathers file specifications from a tree of names.
fn collect<'a>(
    pdf: &'a Document,
    node: &'a Dictionary,
    depth: usize,
    into: &mut Vec<&'a Dictionary>,
) {
    let array = |key: &[u8]| node.get(key).and_then(Object::as_array).ok();
    for pair in array(b"Names")
        .into_iter()
        .flat_map(|names| names.chunks_exact(2))
    {
        if let Ok((_, Object::Dictionary(specification))) = pdf.dereference(&pair[1]) {
            into.push(specification);
        }
    }
    if depth == 0 {
        return;
    }
    for kid in array(b"Kids").into_iter().flatten() {
        if let Ok((_, Object::Dictionary(below))) = pdf.dereference(kid) {
            collect(pdf, below, depth - 1, into);
        }
    }
}

fn read(pdf: &Document, specification: &Dictionary) -> Result<Attachment, PacketError> {
    let text = |key: &[u8]| {
        specification
            .get(key)
            .ok()
            .and_then(|o| decode_text_string(o).ok())
            .unwrap_or_default()
    };
    let name = text(b"UF");
    let bad = |what: &str| PacketError::Unreadable(format!("the carried file \"{name}\" {what}"));
    let stream = child(pdf, specification, b"EF")
        .and_then(|files| files.get(b"F").ok())
        .and_then(|file| pdf.dereference(file).ok())
        .and_then(|(_, file)| file.as_stream().ok())
        .ok_or_else(|| bad("is named and not there"))?;
    let mut bytes = Vec::new();
    let packed = stream.filters().is_ok_and(|filters| !filters.is_empty());
    if packed {
        ZlibDecoder::new(stream.content.as_slice())
            .take(LARGEST + 1)
            .read_to_end(&mut bytes)
            .map_err(|_| bad("cannot be unpacked"))?;
    } else {
        bytes.clone_from(&stream.content);
    }
    if bytes.len() as u64 > LARGEST {
        return Err(bad("is larger than 64 MiB"));
    }
    let media_type = stream
        .dict
        .get(b"Subtype")
        .and_then(Object::as_name)
        .unwrap_or_default();
    Ok(Attachment {
        media_type: String::from_utf8_lossy(media_type).into_owned(),
        description: text(b"Desc"),
        text: String::from_utf8(bytes).map_err(|_| bad("is not UTF-8"))?,
        name,
    })
}
