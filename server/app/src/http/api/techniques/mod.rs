//! How a gag is done, and what that does to bodies and gear.

pub mod assess;
pub mod limits;
pub mod list;
pub mod tools;

use gagwright_mechanics::Technique;

use crate::http::problem::{Code, Problem};

/// The technique of that machine name.
fn technique(name: &str) -> Result<&'static dyn Technique, Problem> {
    gagwright_mechanics::find(name).ok_or_else(|| {
        let name: String = name.chars().take(80).collect();
        let detail = format!("There is no technique {name:?}; GET /api/v1/techniques lists them.");
        Problem::new(Code::UnknownId, detail)
    })
}
