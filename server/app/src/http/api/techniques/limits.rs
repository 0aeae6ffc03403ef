//! A technique's limits that are habit or policy, and neither physics nor law.

use actix_web::get;
use gagwright_mechanics::{Limits, Policy};

use super::technique;
use crate::http::{
    answer::{self, Answer, Items},
    caller::Caller,
    extract::At,
    openapi::Refusals,
};

/// List a technique's limits of habit
///
/// Needs a signed-in account. Each with its value, why it is what it is, and who says so.
#[utoipa::path(
    tag = "techniques",
    params(("technique" = String, Path, description = "The technique's machine name")),
    responses((status = 200, description = "All of them, by check", body = Items<Policy>), Refusals)
)]
#[get("/techniques/{technique}/limits")]
pub async fn list_limits(_: Caller, name: At<String>) -> Answer {
    let technique = technique(&name)?;
    answer::items(
        Limits::built_in()
            .of(technique.name())
            .into_values()
            .collect(),
    )
}
