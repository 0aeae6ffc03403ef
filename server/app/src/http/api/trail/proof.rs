//! Proof that a leaf is in the trail.

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

/// Which leaf.
#[derive(Deserialize, IntoParams)]
#[serde(deny_unknown_fields)]
#[into_params(parameter_in = Query)]
pub struct Leaf {
    /// Its index.
    leaf: u64,
}

/// An RFC 6962 audit path (section 2.1.1).
#[derive(Serialize, ToSchema)]
pub struct InclusionProof {
    /// The leaf's index.
    pub leaf: u64,
    /// Leaves in the tree.
    pub size: u64,
    /// The tree's root, hex.
    pub root: String,
    /// The path, hex, from the leaf up.
    pub path: Vec<String>,
}

/// Prove a leaf
///
/// Needs `read_trail`.
#[utoipa::path(
    tag = "trail",
    params(("production" = Uuid, Path, description = "The production"), Leaf),
    responses((status = 200, description = "The proof", body = InclusionProof), Refusals)
)]
#[get("/productions/{production}/trail/proof")]
pub async fn prove_leaf(
    app: App,
    caller: Caller,
    production: At<ProductionId>,
    asked: Query<Leaf>,
) -> Answer {
    let leaf = asked.leaf;
    let proof = read(&app, move |conn| {
        let actor = caller.on_production(conn, *production, Permission::ReadTrail)?;
        let size = trail::size(conn, actor.production)?;
        let path = trail::inclusion_path(conn, actor.production, leaf, size)?;
        let root = trail::root(conn, actor.production, size)?.to_hex();
        let path = path.iter().map(|hash| hash.to_hex()).collect();
        Ok(InclusionProof {
            leaf,
            size,
            root,
            path,
        })
    })
    .await?;
    answer::ok(&proof)
}
