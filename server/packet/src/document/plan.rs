//! The plan part by part: a heading, a hash and content of a few plain shapes.

use serde::{Deserialize, Serialize};

/// One facet of the plan, or one record beside it.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct Part {
    /// The heading, for example "Rigging".
    pub title: String,
    /// The facet's hash, hex; its start is printed beside the heading. Empty: none is printed.
    pub hash: String,
    /// A short remark beside the heading, for example "changed in revision 4". May be empty.
    pub remark: String,
    /// What it says, in order. Empty: the packet says that nothing is planned here.
    pub content: Vec<Content>,
}

/// A run of content of one shape. Headings are left out when empty.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(tag = "kind", rename_all = "snake_case", deny_unknown_fields)]
pub enum Content {
    /// Running text.
    Paragraph {
        /// Heading.
        #[serde(default)]
        heading: String,
        /// The text; line breaks in it are kept.
        text: String,
    },
    /// Names and values.
    Rows {
        /// Heading.
        #[serde(default)]
        heading: String,
        /// The pairs.
        rows: Vec<Row>,
    },
    /// Items in no order.
    List {
        /// Heading.
        #[serde(default)]
        heading: String,
        /// The items.
        items: Vec<String>,
    },
    /// Items in order, numbered.
    Steps {
        /// Heading.
        #[serde(default)]
        heading: String,
        /// The steps.
        items: Vec<String>,
    },
    /// A table: equipment, charges as the licensed operator gave them, cameras, bands.
    Table {
        /// Heading, for example "Charges, as given by the licensed operator".
        #[serde(default)]
        heading: String,
        /// Column titles.
        columns: Vec<String>,
        /// Rows, each as long as `columns`; a short row is filled with empty cells.
        rows: Vec<Vec<String>>,
        /// A sentence under the table.
        #[serde(default)]
        note: String,
    },
}

/// A name and its value.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct Row {
    /// The name.
    pub label: String,
    /// The value, with its unit.
    pub value: String,
    /// The same value in other units, or a remark. May be empty.
    pub other: String,
}

impl Row {
    /// A name and its value.
    pub fn new(label: impl Into<String>, value: impl Into<String>) -> Self {
        Row {
            label: label.into(),
            value: value.into(),
            other: String::new(),
        }
    }
}
