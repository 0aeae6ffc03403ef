//! What follows for the gag from how each role stands, and from who signed as what.

use super::bench::Bench;
use crate::{
    case::{Block, BlockKind, RoleStanding, RoleState},
    policy::Role,
    words,
};

/// One block for each needed mark that does not stand.
pub(crate) fn blocks(bench: &Bench<'_>, standings: &[RoleStanding]) -> Vec<Block> {
    standings
        .iter()
        .filter_map(|standing| block(bench, standing))
        .collect()
}

fn block(bench: &Bench<'_>, standing: &RoleStanding) -> Option<Block> {
    let revision = bench.case.plan.revision;
    let title = &standing.title;
    let reasons = standing.reasons.join(" ");
    let (kind, reason, remedy) = match standing.state {
        RoleState::Standing => return None,
        RoleState::Missing => (
            BlockKind::Unsigned,
            reasons,
            format!("{} revision {revision}.", ask(bench, standing)),
        ),
        RoleState::Lapsed => (
            BlockKind::Lapsed,
            format!("{title}: {reasons}"),
            format!("{} revision {revision}.", ask(bench, standing)),
        ),
        RoleState::Declined => (
            BlockKind::Decline,
            format!("{title}: {reasons}"),
            decline_remedy(bench, standing),
        ),
        RoleState::Conditional => (
            BlockKind::OpenCondition,
            format!(
                "{title}: {} approved on conditions that are not met yet: {}.",
                standing
                    .signer
                    .map_or_else(|| "The signer".to_owned(), |id| bench.name(id)),
                standing.open_conditions.join("; ")
            ),
            format!("Meet them; someone who holds the role {title} then says so."),
        ),
    };
    Some(Block {
        kind,
        about: about(standing),
        reason,
        remedy,
    })
}

/// The role, or the performer's slot.
pub(crate) fn about(standing: &RoleStanding) -> String {
    standing
        .slot
        .map_or_else(|| standing.role.name().to_owned(), |slot| slot.to_string())
}

/// Whom to ask, up to the word "sign".
pub(crate) fn ask(bench: &Bench<'_>, standing: &RoleStanding) -> String {
    if standing.role == Role::Performer {
        let slots = &bench.case.plan.facets.cast.slots;
        let slot = slots.iter().find(|slot| Some(slot.id) == standing.slot);
        let name = slot
            .and_then(|slot| slot.person)
            .map(|person| bench.name(person));
        return format!(
            "Ask {} to read and sign",
            name.as_deref().unwrap_or("the performer")
        );
    }
    match bench.holders(standing.role).as_slice() {
        [] => format!(
            "Give someone the role {}, then have them sign",
            standing.title
        ),
        holders => format!("Ask {} to read and sign", holders.join(" or ")),
    }
}

fn decline_remedy(bench: &Bench<'_>, standing: &RoleStanding) -> String {
    let name = standing
        .signer
        .map_or_else(|| "the signer".to_owned(), |id| bench.name(id));
    if standing.role == Role::Performer {
        return format!("Only {name} can say otherwise; or cast someone else.");
    }
    if bench.case.policy.final_say.contains(&standing.role) {
        return format!(
            "Nobody can overrule {}: change the plan and ask {name} again.",
            standing.title
        );
    }
    format!(
        "Resolve it in writing and ask {} to sign again.",
        standing.title
    )
}

/// Two hats that one person may not wear on a gag, worn by one person.
pub(crate) fn separation(bench: &Bench<'_>, standings: &[RoleStanding]) -> Vec<Block> {
    let stands = |role: Role| {
        standings.iter().filter(move |one| {
            one.role == role && matches!(one.state, RoleState::Standing | RoleState::Conditional)
        })
    };
    let mut blocks = Vec::new();
    for [one, other] in &bench.case.policy.separate {
        for first in stands(*one) {
            let clash = stands(*other).find(|second| second.signer == first.signer);
            if let (Some(second), Some(signer)) = (clash, first.signer) {
                let titles = [first.title.as_str(), second.title.as_str()];
                blocks.push(Block {
                    kind: BlockKind::Separation,
                    about: one.name().to_owned(),
                    reason: format!(
                        "{} signed as {}; these must be two people.",
                        bench.name(signer),
                        words::list(&titles)
                    ),
                    remedy: format!(
                        "Have someone else sign as {} or as {}.",
                        titles[0], titles[1]
                    ),
                });
            }
        }
    }
    blocks
}
