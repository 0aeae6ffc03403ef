//! Proof that the trail only grew.

use actix_web::{get, web::Query};
use gagwright_casting::ProductionId;
use gagwright_store::trail;
use serde::{Deserialize, Serialize};
use utoipa::{IntoParams, ToSchema};

use crate::{
    http::{
        answer::{self, Answer},
        caller::Caller,
        extract::At,
        openapi::Refusals,
        state::{App, read},
    },
    permissions::Permission,
};

/// Between which sizes.
#[derive(Deserialize, IntoParams)]
#[serde(deny_unknown_fields)]
#[into_params(parameter_in = Query)]
pub struct Between {
    /// The smaller tree.
    from: u64,
    /// The larger tree; left out: the tree as it is now.
    to: Option<u64>,
}

/// An RFC 6962 consistency proof (section 2.1.2).
#[derive(Serialize, ToSchema)]
pub struct ConsistencyProof {
    /// Leaves in the smaller tree.
    pub from: u64,
    /// Leaves in the larger tree.
    pub to: u64,
    /// The path, hex.
    pub path: Vec<String>,
}

/// Prove that the trail only grew
///
/// Needs `read_trail`.
#[utoipa::path(
    tag = "trail",
    params(("production" = Uuid, Path, description = "The production"), Between),
    responses((status = 200, description = "The proof", body = ConsistencyProof), Refusals)
)]
#[get("/productions/{production}/trail/consistency")]
pub async fn prove_growth(
    app: App,
    caller: Caller,
    production: At<ProductionId>,
    asked: Query<Between>,
) -> Answer {
    let Between { from, to } = asked.into_inner();
    let proof = read(&app, move |conn| {
        let actor = caller.on_production(conn, *production, Permission::ReadTrail)?;
        let size = trail::size(conn, actor.production)?;
        let to = to.unwrap_or(size);
        let path = trail::consistency_path(conn, actor.production, from, to)?;
        Ok(ConsistencyProof {
            from,
            to,
            path: path.iter().map(|hash| hash.to_hex()).collect(),
        })
    })
    .await?;
    answer::ok(&proof)
}
