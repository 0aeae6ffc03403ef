//! Values kept whole as JSON text in their RFC 8785 form, so that what is read back is byte for byte
//! what was hashed.

use serde::{Serialize, de::DeserializeOwned};

use crate::error::StoreError;

/// The text to keep.
pub(crate) fn write<T: Serialize>(what: &str, value: &T) -> Result<String, StoreError> {
    let refused = |why: String| StoreError::Internal(format!("{what} cannot be written: {why}"));
    let bytes = gagwright_trail::canonical::canonical_bytes(value)
        .map_err(|error| refused(error.to_string()))?;
    String::from_utf8(bytes).map_err(|error| refused(error.to_string()))
}

/// The value that was kept.
pub(crate) fn read<T: DeserializeOwned>(
    what: &str,
    id: impl std::fmt::Display,
    text: &str,
) -> Result<T, StoreError> {
    serde_json::from_str(text).map_err(|error| StoreError::unreadable(what, id, error))
}

/// The name a plain enum value has in JSON, to be kept as a word of its own.
pub(crate) fn name<T: Serialize>(what: &str, value: &T) -> Result<String, StoreError> {
    match serde_json::to_value(value) {
        Ok(serde_json::Value::String(name)) => Ok(name),
        _ => Err(StoreError::Internal(format!(
            "{what} has no name to be kept under"
        ))),
    }
}
