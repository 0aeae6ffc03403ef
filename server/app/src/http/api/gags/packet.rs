//! The printed packet.

use actix_web::{get, web::Query};
use gagwright_clearance::GagId;
use gagwright_store::gags;
use serde::Deserialize;
use utoipa::{IntoParams, ToSchema};

use crate::{
    clock,
    http::{
        answer::{self, Answer},
        caller::Caller,
        extract::At,
        openapi::Refusals,
        state::{App, read},
    },
    packets,
    permissions::Permission,
};

/// The size of paper.
#[derive(Clone, Copy, Default, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum PaperSize {
    /// 210 by 297 mm.
    #[default]
    A4,
    /// 8.5 by 11 inches.
    Letter,
}

impl From<PaperSize> for packets::Paper {
    fn from(size: PaperSize) -> Self {
        match size {
            PaperSize::A4 => packets::Paper::A4,
            PaperSize::Letter => packets::Paper::Letter,
        }
    }
}

/// On which paper.
#[derive(Deserialize, IntoParams)]
#[serde(deny_unknown_fields)]
#[into_params(parameter_in = Query)]
pub struct On {
    /// `a4` (unless given) or `letter`.
    #[serde(default)]
    #[param(inline)]
    paper: PaperSize,
}

/// Print a gag's packet
///
/// Needs `read_production`. A PDF with the plan, its figures, its cast, its sign-offs and their
/// proof. Masses, measurements, ages and medical dates are on it only for those who may read them.
#[utoipa::path(
    tag = "gags",
    params(("gag" = Uuid, Path, description = "The gag"), On),
    responses(
        (status = 200, description = "The packet", body = Vec<u8>, content_type = "application/pdf"),
        Refusals,
    )
)]
#[get("/gags/{gag}/packet")]
pub async fn print_packet(app: App, caller: Caller, gag: At<GagId>, asked: Query<On>) -> Answer {
    let paper = asked.into_inner().paper.into();
    let (name, bytes) = read(&app, move |conn| {
        let actor = caller.on_gag(conn, *gag, Permission::ReadProduction)?;
        let bytes = packets::build_for(conn, &actor, clock::now(), *gag, paper)?;
        let row = gags::get(conn, *gag)?;
        let name = row.map(|row| format!("{}-revision-{}.pdf", row.code, row.current_revision));
        Ok((name.unwrap_or_else(|| "packet.pdf".into()), bytes))
    })
    .await?;
    Ok(answer::file("application/pdf", &name, bytes))
}
