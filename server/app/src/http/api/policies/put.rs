//! Putting another policy in force.

use std::future::{Ready, ready};

use actix_web::{FromRequest, HttpRequest, dev::Payload, http::header, put};
use gagwright_casting::ProductionId;
use gagwright_clearance::Policy;
use serde::Deserialize;
use utoipa::ToSchema;

use crate::{
    commands::policies,
    entropy,
    http::{
        answer::{Answer, Reply},
        caller::Caller,
        extract::At,
        openapi::{WriteHeaders, WriteRefusals},
        problem::{Code, Problem, ProblemDocument},
        state::App,
        writing::{Json, Write},
    },
    permissions::Permission,
    views::{PolicyPage, rules},
};

/// Another policy, and why.
#[derive(Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct NewPolicy {
    /// The whole policy, under a version that no policy had.
    pub policy: Policy,
    /// Why it changes.
    #[serde(default)]
    pub note: String,
}

/// The version in hand, from `If-Match: "<version>"`.
pub struct InForce(String);

impl FromRequest for InForce {
    type Error = Problem;
    type Future = Ready<Result<Self, Problem>>;

    fn from_request(request: &HttpRequest, _: &mut Payload) -> Self::Future {
        let sent = request.headers().get(header::IF_MATCH);
        let version = sent.and_then(|sent| {
            let text = sent.to_str().ok()?.trim();
            let text = text.strip_prefix("W/").unwrap_or(text);
            text.strip_prefix('"')?.strip_suffix('"')
        });
        ready(version.map(|one| Self(one.to_owned())).ok_or_else(|| {
            Problem::new(
                Code::PreconditionRequired,
                "Send If-Match with the version of the policy you have in hand, in quotes, for example \
                 If-Match: \"2026.1\"; it is the ETag of the policy.",
            )
        }))
    }
}

/// Put a policy in force
///
/// Needs `change_policy`, and `If-Match` with the version in force. Sign-offs are judged by it from then on:
/// those that no longer meet it lapse and say why, and no others.
#[utoipa::path(
    tag = "policy",
    params(
        ("production" = Uuid, Path, description = "The production"),
        ("If-Match" = String, Header, description = "The version in force, in quotes"),
        WriteHeaders,
    ),
    request_body = NewPolicy,
    responses(
        (status = 200, description = "The policy, now in force", body = PolicyPage),
        (status = 428, description = "If-Match is missing", body = ProblemDocument,
            content_type = "application/problem+json"),
        WriteRefusals,
    )
)]
#[put("/productions/{production}/policy")]
pub async fn put_policy(
    app: App,
    caller: Caller,
    production: At<ProductionId>,
    InForce(expected): InForce,
    write: Write<Json<NewPolicy>>,
) -> Answer {
    write
        .commit(&app, move |desk, Json(NewPolicy { policy, note })| {
            let actor = caller.on_production(desk.conn, *production, Permission::ChangePolicy)?;
            let entropy = &mut entropy::system;
            let put = policies::put_in_force(
                desk.conn, &actor, desk.now, &expected, policy, note, entropy,
            )?;
            let page = rules::policy_page(desk.conn, &actor)?;
            Ok(Reply::ok(&page)?.tagged(&put.version))
        })
        .await
}
