//! Reads back what a packet prints, so that a reader can be told whether the page and the files it carries say the
//! same; and whether the file is, byte for byte, as it was finished. Knows nothing of what is printed.

use lopdf::Document;
use sha2::{Digest, Sha256};

use crate::PacketError;

/// Everything that the pages print, with no white space: a hash is printed in groups.
///
/// # Errors
/// When the bytes are not a PDF, or a page cannot be read.
pub fn printed(pdf: &[u8]) -> Result<String, PacketError> {
    let unreadable = |error: lopdf::Error| PacketError::Unreadable(error.to_string());
    let pdf = Document::load_mem(pdf).map_err(unreadable)?;
    let pages: Vec<u32> = pdf.get_pages().keys().copied().collect();
    let text = pdf.extract_text(&pages).map_err(unreadable)?;
    Ok(text.chars().filter(|one| !one.is_whitespace()).collect())
}

/// Whether the identifier in the file is still the hash of everything else in it, as the file was finished.
pub fn whole(pdf: &[u8]) -> bool {
    const HEX: usize = 32;
    let Some(at) = rfind(pdf, b"/ID[<") else {
        return false;
    };
    let Some((id, length)) = identifier(&pdf[at..], HEX) else {
        return false;
    };
    let mut rest = pdf[..at].to_vec();
    rest.extend_from_slice(&pdf[at + length..]);
    let hash = Sha256::digest(&rest);
    let hex: String = hash[..HEX / 2]
        .iter()
        .map(|byte| format!("{byte:02X}"))
        .collect();
    id.eq_ignore_ascii_case(&hex)
}

/// The identifier, given twice, and the length of what names it.
fn identifier(from: &[u8], hex: usize) -> Option<(String, usize)> {
    let text = std::str::from_utf8(from.get(..from.len().min(200))?).ok();
    let text = text.or_else(|| std::str::from_utf8(from.get(..5 + 2 * hex + 4)?).ok())?;
    let (inside, _) = text.strip_prefix("/ID[<")?.split_once(']')?;
    let (first, second) = inside.strip_suffix('>')?.split_once('>')?;
    let second = second.trim_start().strip_prefix('<')?;
    let length = "/ID[<".len() + inside.len() + "]".len();
    (first.len() == hex && first == second).then(|| (first.to_owned(), length))
}

fn rfind(bytes: &[u8], wanted: &[u8]) -> Option<usize> {
    bytes
        .windows(wanted.len())
        .rposition(|window| window == wanted)
}
