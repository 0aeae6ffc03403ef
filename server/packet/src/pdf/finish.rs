//! What printpdf has no way to say, put into the file that it made: nested bookmarks, the files
//! carried along, the language, one level of packing, and an identifier that is the same for the
//! same file.

use std::collections::BTreeMap;

use flate2::{Compression, write::ZlibEncoder};
use lopdf::{Dictionary, Document, Object, Stream, StringFormat, dictionary, text_string};
use sha2::{Digest, Sha256};

use super::{About, outline};
use crate::{document::Attachment, page::Flow};

/// Finishes the file and gives its bytes.
pub(super) fn finish(
    mut file: Document,
    flow: &Flow,
    about: &About<'_>,
) -> Result<Vec<u8>, lopdf::Error> {
    file.version = "1.7".to_owned();
    let bookmarks = outline::add(&mut file, flow);
    let carried = add_attachments(&mut file, about);
    let catalog = file.catalog_mut()?;
    // Readers have their own settings for how pages are laid side by side.
    catalog.remove(b"PageLayout");
    catalog.set("Lang", text_string("en"));
    catalog.set(
        "ViewerPreferences",
        dictionary! { "DisplayDocTitle" => true },
    );
    if let Some(bookmarks) = bookmarks {
        catalog.set("Outlines", bookmarks);
        catalog.set("PageMode", "UseOutlines");
    }
    if !carried.is_empty() {
        let names = dictionary! { "Names" => carried };
        catalog.set("Names", dictionary! { "EmbeddedFiles" => names });
    }
    drop_empty(&mut file)?;
    for object in file.objects.values_mut() {
        if let Object::Stream(stream) = object {
            pack(stream)?;
        }
    }
    identify(&mut file)?;
    let mut bytes = Vec::new();
    file.save_to(&mut bytes)?;
    Ok(bytes)
}

/// printpdf writes an entry for everything that a file can say of itself, said or not.
fn drop_empty(file: &mut Document) -> Result<(), lopdf::Error> {
    let info = file.trailer.get(b"Info").and_then(Object::as_reference)?;
    let info = file.get_dictionary_mut(info)?;
    for key in ["GTS_PDFXVersion", "Author", "Identifier", "Keywords"] {
        if matches!(info.get(key.as_bytes()), Ok(Object::String(text, _)) if text.is_empty()) {
            info.remove(key.as_bytes());
        }
    }
    Ok(())
}

/// Half the time of the usual 6 for one part in fifty of the size.
const LEVEL: u32 = 4;

/// Packs a stream that is not packed yet.
fn pack(stream: &mut Stream) -> Result<(), lopdf::Error> {
    use std::io::Write as _;
    if stream.dict.has(b"Filter") {
        return Ok(());
    }
    let mut encoder = ZlibEncoder::new(Vec::new(), Compression::new(LEVEL));
    encoder.write_all(&stream.content)?;
    stream.set_content(encoder.finish()?);
    stream.dict.set("Filter", "FlateDecode");
    Ok(())
}

/// Replaces the random identifier with a hash of everything else in the file.
fn identify(file: &mut Document) -> Result<(), lopdf::Error> {
    file.trailer.remove(b"ID");
    let mut rest = Vec::new();
    file.save_to(&mut rest)?;
    let hash = Sha256::digest(&rest);
    let id = Object::String(hash[..16].to_vec(), StringFormat::Hexadecimal);
    file.trailer.set("ID", vec![id.clone(), id]);
    Ok(())
}

/// Adds the files carried along: names and references in turn, sorted by name as a name tree must
/// be. Of two with one name the last is carried.
fn add_attachments(file: &mut Document, about: &About<'_>) -> Vec<Object> {
    let sorted: BTreeMap<&str, &Attachment> = about
        .attachments
        .iter()
        .map(|attachment| (attachment.name.as_str(), attachment))
        .collect();
    let mut entries = Vec::new();
    for (name, attachment) in sorted {
        let size = i64::try_from(attachment.text.len()).unwrap_or(i64::MAX);
        let about_file = dictionary! { "Size" => size, "ModDate" => date(about.made) };
        let kind = dictionary! {
            "Type" => "EmbeddedFile",
            "Subtype" => attachment.media_type.as_str(),
            "Params" => about_file,
        };
        let stream = file.add_object(Stream::new(kind, attachment.text.clone().into_bytes()));
        let specification: Dictionary = dictionary! {
            "Type" => "Filespec",
            "F" => Object::string_literal(name),
            "UF" => text_string(name),
            "Desc" => text_string(&attachment.description),
            "EF" => dictionary! { "F" => stream, "UF" => stream },
        };
        let specification = file.add_object(specification);
        entries.extend([Object::string_literal(name), specification.into()]);
    }
    entries
}

/// A moment as ISO 32000-1, clause 7.9.4 writes it.
fn date(moment: jiff::Timestamp) -> Object {
    let utc = moment.to_zoned(jiff::tz::TimeZone::UTC);
    Object::string_literal(utc.strftime("D:%Y%m%d%H%M%SZ").to_string())
}
