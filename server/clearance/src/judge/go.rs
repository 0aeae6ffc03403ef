//! Whether a go may be called. A go is good for one take: it is called when the plan is cleared and the
//! day stands, and it is spent by the take, whatever became of it.

use super::bench::Bench;
use crate::{
    case::{Block, DayBlock, DayBlockKind, DayStanding, GoStanding, OpenTake, Take},
    words,
};

/// Whether a go may be called now, and what became of the one that was.
pub(crate) fn standing(
    bench: &Bench<'_>,
    digest: &str,
    blocks: &[Block],
    day: &DayStanding,
) -> GoStanding {
    let takes = &bench.case.day.takes;
    let mut why_not: Vec<DayBlock> = blocks
        .iter()
        .map(|block| DayBlock {
            kind: DayBlockKind::Plan,
            about: block.about.clone(),
            reason: block.reason.clone(),
            remedy: block.remedy.clone(),
        })
        .collect();
    why_not.extend(day.blocks.iter().cloned());
    let open = takes
        .iter()
        .filter(|take| take.outcome.is_none())
        .max_by_key(|take| (take.number, take.called_at, take.id))
        .map(|take| open_take(bench, digest, take, &why_not, day));
    if let Some(open) = &open {
        why_not.push(DayBlock {
            kind: DayBlockKind::OpenTake,
            about: open.take.to_string(),
            reason: format!("Take {} is open.", open.number),
            remedy: "Record how it ended.".to_owned(),
        });
    }
    why_not.sort_by_key(|block| block.kind);
    GoStanding {
        may: why_not.is_empty(),
        why_not,
        open,
        next: takes
            .iter()
            .map(|take| take.number)
            .max()
            .unwrap_or(0)
            .saturating_add(1),
        callers: bench.case.policy.day.go.iter().copied().collect(),
    }
}

fn open_take(
    bench: &Bench<'_>,
    digest: &str,
    take: &Take,
    why_not: &[DayBlock],
    day: &DayStanding,
) -> OpenTake {
    let mut lapsed = Vec::new();
    if take.revision != bench.case.plan.revision || take.plan_digest != digest {
        lapsed.push(format!(
            "The go was for revision {}; revision {} is current.",
            take.revision, bench.case.plan.revision
        ));
    }
    if take.day != day.day {
        lapsed.push(format!("The go was for {}; this is {}.", take.day, day.day));
    }
    if !crate::day_mark::same_place(&take.place, &day.place) {
        lapsed.push(format!(
            "The go was for \"{}\"; this is \"{}\".",
            take.place, day.place
        ));
    }
    lapsed.extend(why_not.iter().map(|block| block.reason.clone()));
    // What came and went again since has voided it all the same.
    let policy = &bench.case.policy;
    let since = bench
        .happened()
        .iter()
        .filter(|one| one.at >= take.called_at && policy.voids_go(one.event));
    lapsed.extend(since.map(|one| one.said.clone()));
    let holds = bench.case.holds.iter();
    let mut raised: Vec<_> = holds
        .filter(|hold| hold.gag.is_none_or(|gag| gag == bench.case.plan.gag))
        .filter(|hold| hold.raised_at >= take.called_at)
        .collect();
    raised.sort_by_key(|hold| (hold.raised_at, hold.id));
    lapsed.extend(raised.into_iter().map(|hold| {
        let at = words::minute(hold.raised_at);
        format!("A hold was raised after the go, on {at}.")
    }));
    let mut seen = std::collections::BTreeSet::new();
    lapsed.retain(|one| seen.insert(one.clone()));
    OpenTake {
        take: take.id,
        number: take.number,
        called_by: take.called_by,
        called_at: take.called_at,
        lapsed,
    }
}
