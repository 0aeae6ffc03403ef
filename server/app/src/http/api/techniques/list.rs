//! The techniques there are.

use actix_web::get;
use gagwright_mechanics::{TechniqueDescription, descriptions};

use crate::http::{
    answer::{self, Answer, Items},
    caller::Caller,
    openapi::Refusals,
};

/// List techniques
///
/// Needs a signed-in account. Forms, tables and plots are drawn from these descriptions.
#[utoipa::path(
    tag = "techniques",
    responses((status = 200, description = "All of them", body = Items<TechniqueDescription>), Refusals)
)]
#[get("/techniques")]
pub async fn list_techniques(_: Caller) -> Answer {
    answer::items(descriptions())
}
