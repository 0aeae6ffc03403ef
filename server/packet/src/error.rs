//! Why a packet could not be made.

/// Why a packet could not be made. Any text can be printed, so there is little that can go wrong.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum PacketError {
    /// A field cannot be used as it is.
    #[error("{field}: {problem}; {fix}")]
    BadField {
        /// The field of the document.
        field: String,
        /// What is wrong with it.
        problem: String,
        /// What would put it right.
        fix: String,
    },
    /// The bytes are not a PDF, or not one that can be read.
    #[error("this is not a packet that can be read: {0}; give the PDF as it was made")]
    Unreadable(String),
    /// A font carried in this crate could not be read. It means a broken build.
    #[error("the font {0} carried in this program cannot be read; build it again")]
    Font(&'static str),
    /// The layout does not fit its page. It means a fault in this crate.
    #[error("the layout does not fit: {0}")]
    Layout(String),
    /// The file could not be written. It means a fault in this crate.
    #[error("the packet could not be written: {0}")]
    Unwritten(String),
}
