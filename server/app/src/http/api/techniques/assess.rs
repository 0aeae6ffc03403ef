//! Assessing inputs that no plan holds yet.

use actix_web::post;
use gagwright_mechanics::{Assessment, Inputs};
use serde::Deserialize;
use utoipa::ToSchema;

use super::technique;
use crate::http::{
    answer::{self, Answer},
    caller::Caller,
    extract::At,
    openapi::WriteRefusals,
    state::off_thread,
    writing::{Json, Plain},
};

/// What to assess.
#[derive(Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Question {
    /// Values by parameter name, SI; what is left out takes the parameter's default.
    pub inputs: Inputs,
}

/// Assess a technique
///
/// Needs a signed-in account. Computes and stores nothing, so it takes no idempotency key.
#[utoipa::path(
    tag = "techniques",
    params(("name" = String, Path, description = "The technique's machine name")),
    request_body = Question,
    responses((status = 200, description = "What it comes to", body = Assessment), WriteRefusals)
)]
#[post("/techniques/{name}/assessment")]
pub async fn assess_technique(
    _: Caller,
    name: At<String>,
    Plain(Json(question)): Plain<Json<Question>>,
) -> Answer {
    let technique = technique(&name)?;
    let assessment = off_thread(move || technique.assess(&question.inputs)).await?;
    answer::ok(&assessment)
}
