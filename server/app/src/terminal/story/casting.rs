//! The story's first part: a roster that is refused whole, the board, and casting with every reason.

use gagwright_casting::{FindingStanding, Outcome, Requirement, roster::RosterTable};
use gagwright_clearance::ClearanceState;
use gagwright_store::Store;

use super::{Board, Teller, play};
use crate::{
    commands::{self, CommandError, NewRevision},
    demo::stage::Stage,
    terminal::{
        fault::{Fault, cells},
        table::{Align, Table, WIDTH},
    },
    views::{self, GagSummary, Matches},
    words,
};

/// The width that is left beside the story's margin.
pub(super) const INSIDE: usize = WIDTH - 3;

/// Tries a table with wrong cells: every one is told, and nothing is kept.
pub(super) fn broken_roster(
    teller: &Teller,
    store: &Store,
    stage: Stage,
    people: usize,
) -> Result<Stage, Fault> {
    const BROKEN: &str = "code,name,performs,height,born\n\
                          P16,New Person,yes,six foot,1999-02-31\n\
                          P17,=HYPERLINK(\"x\"),perhaps,171 cm,2001-05-05\n";
    let founder = store.read(|conn| stage.by_code(conn, "C01"))?;
    let now = stage.now;
    let refused = store.write(move |conn| {
        let table = RosterTable::People;
        commands::people::import(
            conn,
            &founder,
            now,
            table,
            BROKEN.as_bytes(),
            &mut crate::entropy::system,
        )
    });
    let problems = match refused {
        Err(CommandError::Roster { problems }) => problems,
        Err(other) => return Err(other.into()),
        Ok(_) => Vec::new(),
    };
    teller.tell("A table with wrong cells is tried as well. Every one is named, with its fix:")?;
    teller.show(&wrapped(&cells(&problems)))?;
    let after = store.read(|conn| {
        Ok::<_, Fault>(gagwright_store::people::list(conn, stage.production)?.len())
    })?;
    teller.state(
        problems.len() >= 3 && after == people,
        "the broken table is refused whole: not one of its rows is on the roster.",
    )?;
    Ok(stage)
}

fn wrapped(text: &str) -> String {
    text.lines()
        .flat_map(|line| crate::terminal::table::wrap(line.trim(), INSIDE))
        .collect::<Vec<_>>()
        .join("\n")
}

/// The gags as a table.
pub(super) fn board(store: &Store, stage: &Stage) -> Result<String, Fault> {
    let mut table = Table::new(&[
        ("Gag", Align::Left),
        ("Title", Align::Left),
        ("Technique", Align::Left),
        ("Day", Align::Left),
        ("State", Align::Left),
    ]);
    for gag in summaries(store, stage)? {
        table.row([
            gag.code,
            gag.title,
            gag.technique_title,
            gag.day.map(|day| day.to_string()).unwrap_or_default(),
            words::clearance(gag.state).to_owned(),
        ]);
    }
    Ok(table.render(INSIDE))
}

fn summaries(store: &Store, stage: &Stage) -> Result<Vec<GagSummary>, Fault> {
    Ok(store.read(|conn| {
        let actor = stage.by_code(conn, "C01")?;
        views::gag_list(conn, &actor, stage.now)
    })?)
}

/// Casts every slot with the best person who qualifies.
pub(super) fn cast(
    teller: &mut Teller,
    store: &Store,
    stage: Stage,
    board: &Board,
) -> Result<Stage, Fault> {
    teller.step("Casting: everyone is held against every slot, and every reason is listed")?;
    let mut stage = stage;
    let mut refused_somewhere = false;
    for (at, (code, gag)) in board.iter().enumerate() {
        let gag = *gag;
        let found: Vec<Matches> = store.read(|conn| {
            let actor = stage.by_code(conn, "C01")?;
            let plan = gagwright_store::plans::current(conn, gag)?;
            let slots = plan.facets.cast.slots.iter();
            slots
                .map(|slot| views::matches(conn, &actor, stage.now, gag, slot.id))
                .collect::<Result<_, CommandError>>()
        })?;
        for matches in &found {
            teller.tell(&format!("{code}, {}:", matches.slot.name))?;
            teller.show(&ranking(matches))?;
            refused_somewhere |= matches
                .items
                .iter()
                .any(|one| one.verdict.outcome == Outcome::NotQualified);
        }
        if at == 0 {
            tell_reasons(teller, found.first())?;
        }
        let chosen: Vec<_> = found
            .iter()
            .map(|matches| {
                matches
                    .items
                    .iter()
                    .find(|one| only_consent_is_open(&one.verdict.findings))
            })
            .collect();
        teller.state(
            chosen.iter().all(Option::is_some),
            &format!(
                "{code} is cast with {}, who needs nothing more than to consent.",
                chosen
                    .iter()
                    .flatten()
                    .map(|one| one.person.name.as_str())
                    .collect::<Vec<_>>()
                    .join(" and ")
            ),
        )?;
        let people: Vec<_> = chosen
            .iter()
            .map(|one| one.map(|one| one.person.id))
            .collect();
        stage = play(store, stage, move |conn, stage| {
            let actor = stage.by_code(conn, "C01")?;
            let mut plan = gagwright_store::plans::current(conn, gag)?;
            for (slot, person) in plan.facets.cast.slots.iter_mut().zip(people) {
                slot.person = person;
            }
            let now = stage.tick();
            let revision = NewRevision {
                technique: plan.technique,
                facets: plan.facets,
                note: "Cast".into(),
            };
            commands::plans::revise(
                conn,
                &actor,
                now,
                gag,
                plan.revision,
                revision,
                &mut crate::entropy::system,
            )
            .map(|_| ())
        })?
        .1;
    }
    teller.state(
        refused_somewhere,
        "somebody who does not qualify is told so, with the reason, and is not cast.",
    )?;
    let states = summaries(store, &stage)?;
    teller.state(
        states
            .iter()
            .all(|gag| gag.state != ClearanceState::Cleared),
        "casting alone clears nothing.",
    )?;
    Ok(stage)
}

/// Nothing stands against them but that they have not agreed to this revision yet.
fn only_consent_is_open(findings: &[gagwright_casting::Finding]) -> bool {
    findings
        .iter()
        .all(|one| one.standing == FindingStanding::Met || one.requirement == Requirement::Consent)
}

/// The first four, and whoever came last.
fn ranking(matches: &Matches) -> String {
    let mut table = Table::new(&[
        ("Code", Align::Left),
        ("Name", Align::Left),
        ("Verdict", Align::Left),
        ("Against it", Align::Left),
    ]);
    let last = matches.items.len().saturating_sub(1);
    for (at, one) in matches.items.iter().enumerate() {
        if at > 3 && at != last {
            continue;
        }
        let against = one
            .verdict
            .findings
            .iter()
            .filter(|finding| finding.standing != FindingStanding::Met)
            .max_by_key(|finding| {
                (
                    finding.standing,
                    finding.requirement != Requirement::Consent,
                )
            })
            .map_or("", |finding| finding.reason.as_str());
        table.row([
            one.person.code.as_str(),
            &one.person.name,
            words::outcome(one.verdict.outcome),
            against,
        ]);
    }
    table.render(INSIDE)
}

/// Every reason for the best candidate of the first slot.
fn tell_reasons(teller: &Teller, matches: Option<&Matches>) -> Result<(), Fault> {
    let Some(best) = matches.and_then(|one| one.items.first()) else {
        return Ok(());
    };
    teller.tell(&format!("All that was asked of {}:", best.person.name))?;
    let mut table = Table::new(&[
        ("", Align::Left),
        ("Asked", Align::Left),
        ("Found", Align::Left),
    ]);
    for finding in &best.verdict.findings {
        table.row([
            words::finding(finding.standing),
            &words::requirement(&finding.requirement),
            &finding.reason,
        ]);
    }
    teller.show(&table.render(INSIDE))
}
