//! The judge held against a second telling of its rules: random histories of a gag, and after what happens
//! the judge, who is given records, and the reference, who is told the whole list and recounts it, must
//! give the same three answers and say the same of every mark.
//!
//! `GAGWRIGHT_HISTORIES` says how many histories are told, `GAGWRIGHT_HISTORY` tells one by its number.

#![allow(missing_docs, clippy::unwrap_used, clippy::expect_used, clippy::panic)]
#![allow(clippy::disallowed_methods, reason = "it says how long it took")]

mod chance;
mod clock;
mod contents;
mod ink;
mod invariants;
mod people;
mod reference;
mod story;
mod telling;
#[path = "../../src/tests/test_fall.rs"]
mod test_fall;
mod world;

use std::{
    collections::{BTreeMap, BTreeSet},
    sync::{
        Mutex, RwLock,
        atomic::{AtomicUsize, Ordering},
    },
};

use gagwright_clearance::{Clearance, ClearanceState, JudgeMemory, Policy, clearance_remembering};

use crate::{
    chance::Chance,
    contents::Content,
    ink::Signing,
    reference::{Answer, Asked, Became, Reference},
    telling::Telling,
    world::World,
};

/// What is told when nothing else is asked for: some seconds.
const HISTORIES: usize = 3_000;

/// What all histories share.
struct Stage<'a> {
    contents: &'a [Content],
    policy: &'a Policy,
    signing: Signing<'a>,
    memory: JudgeMemory,
    bare: World,
}

/// How far the histories went: a test of nothing but blocked gags would prove little.
#[derive(Default)]
struct Seen {
    asked: AtomicUsize,
    cleared: AtomicUsize,
    may_go: AtomicUsize,
    go_stands: AtomicUsize,
    go_lapsed: AtomicUsize,
    /// In how many histories something became of a mark for the day signed in somebody's stead.
    deputised: Mutex<BTreeMap<Became, usize>>,
}

/// The built-in policy, for the one technique there is here.
fn policy() -> Policy {
    let mut policy = Policy::built_in().clone();
    policy.techniques.clear();
    let hazards = std::collections::BTreeSet::from([gagwright_clearance::plan::Hazard::Height]);
    let technique = gagwright_clearance::policy::TechniquePolicy {
        hazards,
        ..Default::default()
    };
    policy.techniques.insert("test-fall".to_owned(), technique);
    // Built in, every role that may be lent asks for its certificates; here one does not.
    let medic = policy.delegation.get_mut(&gagwright_clearance::Role::Medic);
    medic.expect("a medic may be signed for").certificates = false;
    assert_eq!(policy.problems(), Vec::<String>::new());
    policy
}

fn number_of(slot: gagwright_casting::SlotId) -> u8 {
    (slot.0.as_u128() & 0xff) as u8
}

/// The judge's answer in the reference's form.
fn put(judged: &Clearance) -> Answer {
    let standings = |all: &[gagwright_clearance::RoleStanding]| {
        let one = |one: &gagwright_clearance::RoleStanding| -> (Asked, _) {
            ((one.role, one.slot.map(number_of)), one.state)
        };
        all.iter().map(one).collect::<BTreeMap<_, _>>()
    };
    Answer {
        plan: judged.blocks.iter().map(|block| block.kind).collect(),
        marks: standings(&judged.roles),
        day: judged.day.blocks.iter().map(|block| block.kind).collect(),
        day_marks: standings(&judged.day.marks),
        may_go: judged.go.may,
        open_go: judged.go.open.as_ref().map(|open| open.lapsed.is_empty()),
        next: judged.go.next,
    }
}

/// Tells one history and holds the two answers against each other on the way.
fn tell(number: usize, stage: &Stage<'_>, seen: &Seen) -> Result<(), String> {
    let mut chance = Chance(number as u64);
    let mut telling = Telling::new(stage.contents, stage.policy);
    match chance.one_in(6) {
        true => telling.bare(),
        false => telling.ready(),
    }
    let mut world = stage.bare.clone();
    let mut heard = 0;
    let mut deputised = BTreeSet::new();
    let steps = 6 + chance.below(7);
    for step in 0..steps {
        telling.go_on(&mut chance);
        // The last step always, the others now and then.
        if step + 1 != steps && !chance.one_in(4) {
            continue;
        }
        for happening in &telling.story[heard..] {
            world.hear(happening, &stage.signing);
        }
        heard = telling.story.len();
        let now = clock::moment(telling.now);
        let judged = clearance_remembering(&world.case, now, test_fall::find, &stage.memory);
        let reference = Reference {
            story: &telling.story,
            contents: stage.contents,
            policy: stage.policy,
            now: telling.now,
        };
        let (ours, theirs) = (put(&judged), reference.answer());
        if ours != theirs {
            return Err(difference(number, &telling, (&ours, &theirs), &judged));
        }
        deputised.extend(reference.deputised_days());
        invariants::hold(&telling.story, stage.contents, telling.now, &judged);
        if number.is_multiple_of(16) && step + 1 == steps {
            invariants::order_changes_nothing(
                &world.case,
                now,
                &judged,
                &mut chance,
                &stage.memory,
            );
            invariants::a_change_lapses_whoever_covers_it(
                &world.case,
                now,
                &judged,
                &mut chance,
                &stage.memory,
            );
        }
        let count = |counter: &AtomicUsize, when: bool| {
            counter.fetch_add(usize::from(when), Ordering::Relaxed);
        };
        count(&seen.asked, true);
        count(&seen.cleared, judged.state == ClearanceState::Cleared);
        count(&seen.may_go, ours.may_go);
        count(&seen.go_stands, ours.open_go == Some(true));
        count(&seen.go_lapsed, ours.open_go == Some(false));
    }
    let mut all = seen.deputised.lock().unwrap();
    for became in deputised {
        *all.entry(became).or_default() += 1;
    }
    Ok(())
}

/// What happened and where the two differ, for whoever has to find out which is right.
fn difference(
    number: usize,
    telling: &Telling<'_>,
    (ours, theirs): (&Answer, &Answer),
    judged: &Clearance,
) -> String {
    let told = telling.story.iter().enumerate();
    let told: Vec<String> = told
        .map(|(place, one)| format!("{place:3} {:5} {:?}", one.at, one.what))
        .collect();
    let mut differ = Vec::new();
    let mut hold = |what: &str, ours: String, theirs: String| {
        if ours != theirs {
            differ.push(format!("{what}:\n  judge     {ours}\n  reference {theirs}"));
        }
    };
    hold(
        "plan",
        format!("{:?}", ours.plan),
        format!("{:?}", theirs.plan),
    );
    hold(
        "marks",
        format!("{:?}", ours.marks),
        format!("{:?}", theirs.marks),
    );
    hold(
        "day",
        format!("{:?}", ours.day),
        format!("{:?}", theirs.day),
    );
    hold(
        "day marks",
        format!("{:?}", ours.day_marks),
        format!("{:?}", theirs.day_marks),
    );
    let go = |one: &Answer| format!("{:?}", (one.may_go, one.open_go, one.next));
    hold("go", go(ours), go(theirs));
    format!(
        "history {number}, asked at minute {}:\n{}\n{}\nthe judge says: {:#?}",
        telling.now,
        told.join("\n"),
        differ.join("\n"),
        judged
            .go
            .why_not
            .iter()
            .map(|one| &one.reason)
            .collect::<Vec<_>>()
    )
}

#[test]
fn the_judge_and_the_reference_agree_on_every_history() {
    let number = |name: &str| {
        let given = std::env::var(name).ok();
        given.map(|text| text.parse::<usize>().expect("a number"))
    };
    let (contents, policy) = (contents::all(), policy());
    let stage = Stage {
        bare: World::new(&contents, &policy),
        signing: Signing {
            contents: &contents,
            policy: &policy,
            made: RwLock::default(),
        },
        memory: JudgeMemory::holding(1 << 30),
        contents: &contents,
        policy: &policy,
    };
    let seen = Seen::default();
    if let Some(one) = number("GAGWRIGHT_HISTORY") {
        return tell(one, &stage, &seen).unwrap_or_else(|problem| panic!("{problem}"));
    }
    let all = number("GAGWRIGHT_HISTORIES").unwrap_or(HISTORIES);
    let next = AtomicUsize::new(0);
    let failed: Mutex<Vec<String>> = Mutex::default();
    let started = std::time::Instant::now();
    let threads = std::thread::available_parallelism().map_or(2, usize::from);
    std::thread::scope(|scope| {
        for _ in 0..threads {
            scope.spawn(|| {
                loop {
                    let number = next.fetch_add(1, Ordering::Relaxed);
                    if number >= all {
                        break;
                    }
                    if let Err(problem) = tell(number, &stage, &seen) {
                        failed.lock().unwrap().push(problem);
                        next.store(all, Ordering::Relaxed);
                    }
                }
            });
        }
    });
    let failed = failed.into_inner().unwrap();
    assert!(failed.is_empty(), "{}", failed.join("\n\n"));
    let read = |counter: &AtomicUsize| counter.load(Ordering::Relaxed);
    println!(
        "{all} histories, {} questions in {:.1?}: {} cleared, {} may go, {} goes stand, {} lapsed; {} marks made",
        read(&seen.asked),
        started.elapsed(),
        read(&seen.cleared),
        read(&seen.may_go),
        read(&seen.go_stands),
        read(&seen.go_lapsed),
        stage.memory.marks()
    );
    // Enough of each kind of answer, or the histories have become too tame or too wild to prove much.
    for counter in [
        &seen.cleared,
        &seen.may_go,
        &seen.go_stands,
        &seen.go_lapsed,
    ] {
        assert!(
            read(counter) * 200 > read(&seen.asked),
            "too few of one kind of answer"
        );
    }
    let deputised = seen.deputised.into_inner().unwrap();
    println!("of days signed in somebody's stead: {deputised:?}");
    for became in Became::ALL {
        let histories = deputised.get(&became).copied().unwrap_or_default();
        // Of a few histories nobody can ask that much.
        let enough = histories * 1000 >= all || all < 1000;
        assert!(enough, "{became:?}: {histories}");
    }
}
