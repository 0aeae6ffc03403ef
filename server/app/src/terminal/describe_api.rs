//! `describe-api`: prints the API's description, made from the handlers, with no server or database. It
//! is also how the copy that the web app's types are made from is brought up to date.

use super::{fault::Fault, say};
use crate::http::openapi;

pub(crate) fn run() -> Result<(), Fault> {
    say(text()?)
}

/// The description as it is printed and kept.
fn text() -> Result<String, Fault> {
    openapi::document()
        .to_pretty_json()
        .map_err(|error| Fault::failed(format!("cannot write the API's description: {error}")))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_copy_kept_for_the_app_is_what_the_code_describes() {
        let kept = include_str!("../../../../web/src/api/openapi.json");
        assert!(
            text().unwrap().trim_end() == kept.trim_end(),
            "web/src/api/openapi.json is not what the code describes. Bring it up to date with: \
             cargo run -p gagwright -- describe-api > web/src/api/openapi.json && npm --prefix web run api"
        );
    }
}
