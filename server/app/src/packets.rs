//! A gag's packet: the case, the judge's answer and the trail's proof put into the values that the
//! packet is printed from. Decides every word of it, and nothing about how it looks.

mod figures;
mod on_the_day;
mod plan;
mod records;
mod risks;
mod signatures;

use std::collections::BTreeMap;

use gagwright_casting::{PersonId, ProductionId};
use gagwright_clearance::{BlockKind, Case, Clearance, ClearanceState, GagId, RoleState};
pub use gagwright_packet::Paper;
use gagwright_packet::{
    PacketDocument,
    document::{Attachment, Block, Mark, State, TrailProof},
};
use gagwright_store::{Connection, StoreError, gags::GagRow, productions::Production};
use jiff::Timestamp;

pub(crate) use figures::extent;
pub(crate) use plan::with_tolerance;
pub(crate) use signatures::thumbprint;

use crate::{
    commands::{Actor, CommandError},
    remembered::clearance,
    trail_file::{self, LeafProof},
    views::{self, gathering, sentences, withheld},
    words,
};

/// Renders a gag's packet as one reader may have it: what they may not read of others' bodies and health
/// is not on it.
///
/// # Errors
/// When the gag is not on the reader's production, or the store or the renderer fails.
pub fn build_for(
    conn: &mut Connection,
    reader: &Actor,
    now: Timestamp,
    gag: GagId,
    paper: Paper,
) -> Result<Vec<u8>, CommandError> {
    let (document, _) = gathered(conn, reader.production, Some(reader), now, gag)?;
    rendered(&document, paper)
}

/// Renders a gag's packet whole, for whoever holds the database itself.
///
/// # Errors
/// When the gag is not on this production, or the store or the renderer fails.
pub fn build(
    conn: &mut Connection,
    production: ProductionId,
    now: Timestamp,
    gag: GagId,
    paper: Paper,
) -> Result<Vec<u8>, CommandError> {
    let (document, _) = document(conn, production, now, gag)?;
    rendered(&document, paper)
}

fn rendered(document: &PacketDocument, paper: Paper) -> Result<Vec<u8>, CommandError> {
    gagwright_packet::render(document, paper)
        .map_err(|error| StoreError::Internal(format!("the packet: {error}")).into())
}

/// The values a gag's whole packet is printed from, and the proof printed in it.
///
/// # Errors
/// As [`build`].
pub fn document(
    conn: &mut Connection,
    production: ProductionId,
    now: Timestamp,
    gag: GagId,
) -> Result<(PacketDocument, LeafProof), CommandError> {
    gathered(conn, production, None, now, gag)
}

/// As [`document`], for one reader, or whole for none.
fn gathered(
    conn: &mut Connection,
    production: ProductionId,
    reader: Option<&Actor>,
    now: Timestamp,
    gag: GagId,
) -> Result<(PacketDocument, LeafProof), CommandError> {
    let shared = gathering::shared(conn, production)?;
    let (row, mut case) = gathering::case_with(conn, &shared, gag)?;
    if let Some(reader) = reader {
        case = views::shown(reader, case);
    }
    let mut judged = clearance(&case, now);
    // A page can be closed, paper is passed on: it also leaves out what the page shows of a cast body.
    if let Some(reader) = reader {
        withheld::in_clearance(reader, &mut judged);
    }
    let names = shared.names();
    let history = gagwright_store::plans::history(conn, gag)?;
    let leaf = history.last().map_or(0, |one| one.leaf);
    let proof = trail_file::leaf_proof(conn, production, leaf)?;
    let mut document = from(&shared.production, &row, &case, &judged, &names, now);
    document.trail = Some(printed(&proof, &names));
    document.attachments = attachments(&case, &proof);
    let drawn = gagwright_store::drawn_marks::for_gag(conn, gag)?;
    signatures::draw(&mut document.signoffs, &judged, &drawn);
    let shots = gagwright_store::test_shots::for_gag(conn, gag)?;
    let zone = words::zone(&shared.production.time_zone);
    document.on_the_day = on_the_day::parts(&on_the_day::Day {
        case: &case,
        judged: &judged,
        names: &names,
        zone: &zone,
        now,
    });
    document.records = records::parts(&case, &history, &shots, &names, &zone);
    Ok((document, proof))
}

/// Everything but the trail.
fn from(
    production: &Production,
    row: &GagRow,
    case: &Case,
    judged: &Clearance,
    names: &BTreeMap<PersonId, String>,
    now: Timestamp,
) -> PacketDocument {
    let zone = words::zone(&production.time_zone);
    let plan = &case.plan;
    let setting = &plan.facets.setting;
    let technique = gagwright_mechanics::find(&plan.technique);
    let assessment = judged.assessment.as_ref();
    PacketDocument {
        production: production.name.clone(),
        unit: setting.unit.clone(),
        gag_code: row.code.clone(),
        gag_title: row.title.clone(),
        technique: technique.map_or_else(|| plan.technique.clone(), |one| one.title().to_owned()),
        summary: plan.facets.action.summary.clone(),
        revision: plan.revision,
        revision_author: names.get(&plan.author).cloned().unwrap_or_default(),
        revision_written: words::moment(plan.written_at, &zone),
        revision_note: plan.note.clone(),
        scene: setting.scene.clone(),
        location: setting.location.clone(),
        day: setting.day.map(words::day).unwrap_or_default(),
        call: setting
            .call
            .map(|at| words::moment(at, &zone))
            .unwrap_or_default(),
        light: setting.light.clone(),
        state: State::new(words::clearance(judged.state), mark(judged.state)),
        state_sentence: sentence(judged),
        blocks: judged
            .blocks
            .iter()
            .filter(|block| block.kind != BlockKind::Unsigned)
            .map(|block| Block {
                kind: words::block(block.kind).into(),
                about: about(judged, &block.about),
                reason: block.reason.clone(),
                remedy: block.remedy.clone(),
                mark: block_mark(block.kind),
            })
            .collect(),
        cautions: judged
            .risks
            .iter()
            .filter_map(|risk| risk.caution.clone())
            .collect(),
        plan_digest: judged.plan_digest.clone(),
        verify_data: judged.plan_digest.clone(),
        verify_caption:
            "The plan's digest. Compare it with the one on the phone: the same digest is \
                         the same plan, to the last letter."
                .into(),
        demo: production.demo,
        generated_at: now.to_string(),
        generated_text: words::moment(now, &zone),
        risks: risks::parts(&plan.facets.action.risks, &judged.hazards, &case.policy),
        facets: plan::parts(case, &judged.facets, technique, names, &zone),
        hazards: judged
            .hazards
            .iter()
            .map(|hazard| hazard.words().to_owned())
            .collect(),
        figures: assessment.map(figures::rows).unwrap_or_default(),
        checks: assessment.map(figures::checks).unwrap_or_default(),
        plots: assessment.map(figures::plots).unwrap_or_default(),
        zones: assessment.map(figures::zones).unwrap_or_default(),
        figure_cautions: assessment
            .map(|one| {
                one.cautions
                    .iter()
                    .map(|caution| caution.text.clone())
                    .collect()
            })
            .unwrap_or_default(),
        figures_missing: if assessment.is_some() {
            String::new()
        } else {
            "The inputs were refused, so there are no figures.".into()
        },
        cast: signatures::cast(case, judged, names),
        signoffs: signatures::parts(case, judged, names, &zone),
        records: Vec::new(),
        on_the_day: Vec::new(),
        trail: None,
        attachments: Vec::new(),
    }
}

/// A clearance's strip.
pub(crate) fn mark(state: ClearanceState) -> Mark {
    match state {
        ClearanceState::Cleared => Mark::Whole,
        ClearanceState::NotAsked => Mark::None,
        ClearanceState::Waiting => Mark::Broken,
        ClearanceState::Lapsed => Mark::Torn,
        ClearanceState::Blocked | ClearanceState::Held => Mark::Crossed,
    }
}

fn block_mark(kind: BlockKind) -> Mark {
    match kind {
        BlockKind::Hold
        | BlockKind::Check
        | BlockKind::Inputs
        | BlockKind::Performer
        | BlockKind::Condition
        | BlockKind::Equipment
        | BlockKind::Decline
        | BlockKind::Separation => Mark::Crossed,
        BlockKind::Lapsed => Mark::Torn,
        _ => Mark::Broken,
    }
}

/// What a block is about, as people read it: a check's title, a slot's or a role's name.
fn about(judged: &Clearance, name: &str) -> String {
    if let Some(check) = judged
        .assessment
        .as_ref()
        .and_then(|one| one.checks.iter().find(|check| check.name == name))
    {
        return check.title.clone();
    }
    if let Some(slot) = judged
        .slots
        .iter()
        .find(|slot| slot.slot.to_string() == name)
    {
        return slot.name.clone();
    }
    if let Some(role) = judged
        .roles
        .iter()
        .find(|role| crate::permissions::role_name(role.role) == name)
    {
        return role.title.clone();
    }
    // Ids mean nothing on paper; the reason says what it is about.
    if name.len() == 36 && name.parse::<uuid::Uuid>().is_ok() {
        return String::new();
    }
    name.replace('_', " ")
}

/// One sentence under the answer.
fn sentence(judged: &Clearance) -> String {
    if judged.state == ClearanceState::Cleared {
        return format!(
            "All {} sign-offs stand on this very plan.",
            judged.roles.len()
        );
    }
    let missing = judged
        .roles
        .iter()
        .filter(|role| role.state == RoleState::Missing)
        .count();
    let lapsed = judged
        .roles
        .iter()
        .filter(|role| role.state == RoleState::Lapsed)
        .count();
    let others = judged
        .blocks
        .iter()
        .filter(|block| !matches!(block.kind, BlockKind::Unsigned | BlockKind::Lapsed))
        .count();
    let mut parts = Vec::new();
    for (count, one, many) in [
        (missing, "sign-off is missing", "sign-offs are missing"),
        (lapsed, "has lapsed", "have lapsed"),
        (others, "other thing stops it", "other things stop it"),
    ] {
        if count > 0 {
            parts.push(format!("{count} {}", if count == 1 { one } else { many }));
        }
    }
    format!("Do not perform this gag: {}.", parts.join(", "))
}

fn printed(proof: &LeafProof, names: &BTreeMap<PersonId, String>) -> TrailProof {
    TrailProof {
        log: proof.log_key.split('+').next().unwrap_or_default().to_owned(),
        leaf_index: proof.entry.index,
        leaf_records: sentences::sentence(&proof.entry, names),
        leaf_hash: proof.leaf_hash.clone(),
        tree_size: proof.tree_size,
        root: proof.root.clone(),
        path: proof.path.clone(),
        checkpoint: proof.checkpoint.clone(),
        log_key: proof.log_key.clone(),
        how_to_verify: vec![
            "Run: gagwright verify PACKET.pdf --log-key KEY, with this file and the log's key as you got \
             it from the production, not from this page."
                .into(),
            "It reads the files this PDF carries (a reader lists them under attachments), hashes the leaf, climbs the path to the root, and checks the signed note over that \
             root (RFC 6962, C2SP signed note)."
                .into(),
            "The leaf names the plan digest printed on the cover.".into(),
        ],
    }
}

/// What programs need to check the packet without a server.
fn attachments(case: &Case, proof: &LeafProof) -> Vec<Attachment> {
    let json = |value: serde_json::Result<String>| value.unwrap_or_default();
    vec![
        Attachment {
            name: "proof.json".into(),
            media_type: "application/json".into(),
            description: "The proof that this revision is in the trail.".into(),
            text: json(serde_json::to_string_pretty(proof)),
        },
        Attachment {
            name: "plan.json".into(),
            media_type: "application/json".into(),
            description: "The plan that the digest is over.".into(),
            text: json(serde_json::to_string_pretty(&case.plan)),
        },
        Attachment {
            name: "signoffs.json".into(),
            media_type: "application/json".into(),
            description: "Every sign-off as the devices made them, with the devices' public keys."
                .into(),
            text: json(serde_json::to_string_pretty(&serde_json::json!({
                "signoffs": case.signoffs,
                "devices": case.devices,
            }))),
        },
    ]
}
