//! From finished pages to the bytes of a PDF 1.7 file (ISO 32000-1). Knows nothing of layout.
//!
//! printpdf writes the pages and the fonts; what it has no way to say is added to the file
//! afterwards, in [`finish`]. The same pages give the same bytes.

mod content;
mod face;
mod finish;
mod outline;

use printpdf::{
    OffsetDateTime, PdfDocument, PdfDocumentInfo, PdfFont, PdfPage, PdfParseErrorSeverity,
    PdfSaveOptions, Pt, Rect,
};

use crate::{PacketError, document::Attachment, fonts::Fonts, page::Flow};

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

/// Writes the file.
pub(crate) fn write(fonts: &Fonts, flow: &Flow, about: &About<'_>) -> Result<Vec<u8>, PacketError> {
    let faces = face::used(fonts, flow);
    let mut document = PdfDocument::new(&about.title);
    document.metadata.info = info(about);
    for (&id, face) in &faces {
        let font = fonts.face(id);
        let parsed = font.embeddable().ok_or(PacketError::Font(font.name))?;
        let listed = &mut document.resources.fonts.map;
        listed.insert(face.name.clone(), PdfFont::new(parsed.clone()));
    }
    let paper = Rect::from_wh(Pt(flow.frame.page_width), Pt(flow.frame.page_height));
    document.pages = flow
        .pages
        .iter()
        .map(|page| PdfPage {
            media_box: paper.clone(),
            trim_box: paper.clone(),
            crop_box: paper.clone(),
            ops: content::content(&flow.frame, page, &faces),
        })
        .collect();

    let mut warnings = Vec::new();
    let file = document.to_lopdf_document(&PdfSaveOptions::default(), &mut warnings);
    // A face that could not be cut down is then embedded whole, or not at all: neither is a packet.
    if let Some(fault) = warnings
        .into_iter()
        .find(|warning| warning.severity == PdfParseErrorSeverity::Error)
    {
        return Err(PacketError::Unwritten(fault.msg));
    }
    finish::finish(file, flow, about).map_err(|error| PacketError::Unwritten(error.to_string()))
}

/// The document's own moment stands for every date, so that no clock is read.
fn info(about: &About<'_>) -> PdfDocumentInfo {
    let mut info = PdfDocumentInfo {
        document_title: about.title.clone(),
        subject: about.subject.clone(),
        creator: "Gagwright".to_owned(),
        producer: "Gagwright".to_owned(),
        ..PdfDocumentInfo::default()
    };
    if let Ok(moment) = OffsetDateTime::from_unix_timestamp(about.made.as_second()) {
        info.creation_date = moment;
        info.modification_date = moment;
        info.metadata_date = moment;
    }
    info
}
