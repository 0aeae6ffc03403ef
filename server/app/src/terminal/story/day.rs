//! The story's day: the briefing and who missed it, what is read and signed on the spot, a gust that stops
//! the go without touching a signature, and the go, its take and what follows it.

use std::collections::BTreeSet;

use gagwright_clearance::{
    Clearance, GagId, ReadingKind, RoleState,
    case::{Fitness, TakeResult},
};
use gagwright_store::Store;
use jiff::Timestamp;

use super::{MAIN, Teller, casting::INSIDE, play};
use crate::{
    commands::CommandError,
    demo::{day::DayStep, script::Step, stage::Stage},
    terminal::{
        fault::Fault,
        table::{Align, Table},
    },
};

/// The day that the plan is written for.
const SHOOTING: &str = "2027-03-08T06:30:00Z";

/// From the register to the end of the only burn that the day allows.
pub(super) fn work(
    teller: &mut Teller,
    store: &Store,
    mut stage: Stage,
    gag: GagId,
) -> Result<Stage, Fault> {
    stage.now = SHOOTING
        .parse::<Timestamp>()
        .map_err(|error| Fault::failed(format!("the shooting day cannot be read: {error}")))?;
    let stage = briefing(teller, store, stage, gag)?;
    let stage = gust(teller, store, stage, gag)?;
    take(teller, store, stage, gag)
}

fn briefing(teller: &mut Teller, store: &Store, stage: Stage, gag: GagId) -> Result<Stage, Fault> {
    teller.step(&format!(
        "Months later, on 8 March 2027, {MAIN} is briefed where it is shot"
    ))?;
    let ask = |answer: &Clearance| {
        let missed = answer.day.briefing.missed.len();
        (missed, answer.go.may, answer.day.stands)
    };
    let steps = [
        DayStep::Register { by: "C04".into() },
        brief(
            &["C01", "C03", "C04", "P02"],
            "Walked to the water and back.",
        ),
    ];
    let (answer, stage) = done(store, stage, gag, steps)?;
    teller.tell(
        "The register has both extinguishers by serial. The medic is still on the road when the first \
         assistant director briefs.",
    )?;
    teller.show(&open(&answer))?;
    teller.state(
        ask(&answer) == (0, false, false),
        "only those count as missed who have signed the day, and nobody has yet: there is no go.",
    )?;
    let steps = [
        read(ReadingKind::Wind, 1.8),
        read(ReadingKind::Gust, 2.6),
        DayStep::SignDay {
            except: BTreeSet::new(),
        },
    ];
    let (answer, stage) = done(store, stage, gag, steps)?;
    let standing = answer.day.marks.iter();
    let standing = standing.filter(|one| one.state == RoleState::Standing);
    teller.state(
        standing.count() == answer.day.marks.len() && ask(&answer) == (1, false, false),
        "everyone has signed the day with their own key; the medic, who missed the briefing, stops the go.",
    )?;
    Ok(stage)
}

fn take(teller: &mut Teller, store: &Store, stage: Stage, gag: GagId) -> Result<Stage, Fault> {
    teller.step("The go is called, and the medic looks")?;
    let steps = [
        DayStep::Go { by: "C01".into() },
        DayStep::End {
            by: "C01".into(),
            result: TakeResult::Good,
            note: "Out at eight seconds, down on the mark.".into(),
        },
    ];
    let (answer, stage) = done(store, stage, gag, steps)?;
    teller.state(
        !answer.go.may && answer.day.people.iter().any(|one| one.look_owed),
        "one go is good for one take; the next waits for the medic's look.",
    )?;
    let steps = [DayStep::Look {
        by: "C05".into(),
        person: "P02".into(),
        fitness: Fitness::Fit,
        head_impact: false,
    }];
    let (answer, stage) = done(store, stage, gag, steps)?;
    teller.state(
        answer.day.people.iter().all(|one| !one.look_owed),
        "the medic has looked and says \"fit\", and never why.",
    )?;
    teller.state(
        !answer.go.may
            && answer
                .go
                .why_not
                .iter()
                .any(|one| one.reason.contains("not qualified")),
        "the production allows one full burn a day, and the take is counted: there is no second.",
    )?;
    Ok(stage)
}

fn gust(teller: &mut Teller, store: &Store, stage: Stage, gag: GagId) -> Result<Stage, Fault> {
    teller.step("The absentee is briefed; a gust outside its limit holds the go")?;
    let (_, stage) = done(
        store,
        stage,
        gag,
        [brief(&["C05"], "As before, for the medic.")],
    )?;
    let (answer, stage) = done(store, stage, gag, [read(ReadingKind::Gust, 4.4)])?;
    teller.show(&open(&answer))?;
    teller.state(
        !answer.go.may
            && answer
                .roles
                .iter()
                .all(|one| one.state == RoleState::Standing),
        "there is no go, and every signature on the plan still stands.",
    )?;
    let (answer, stage) = done(store, stage, gag, [read(ReadingKind::Gust, 2.4)])?;
    teller.state(
        answer.day.stands && answer.go.may && answer.go.next == 1,
        "when a later reading is inside again, the day stands and the go may be called for take 1.",
    )?;
    Ok(stage)
}

/// Plays steps of the day and gives the judge's answer after them.
fn done<const N: usize>(
    store: &Store,
    stage: Stage,
    gag: GagId,
    steps: [DayStep; N],
) -> Result<(Clearance, Stage), Fault> {
    play(store, stage, move |conn, stage| {
        stage.play_day(conn, gag, &steps)?;
        let (_, answer) = stage.judge(conn, gag)?;
        Ok::<_, CommandError>(answer)
    })
}

fn brief(attended: &[&str], points: &str) -> DayStep {
    DayStep::Brief {
        by: "C06".into(),
        attended: attended.iter().map(|code| (*code).to_owned()).collect(),
        points: points.into(),
    }
}

fn read(kind: ReadingKind, value: f64) -> DayStep {
    DayStep::Plan {
        step: Step::Read {
            by: "C04".into(),
            kind,
            value,
            place: "shed door".into(),
        },
    }
}

/// What stands against a go.
fn open(answer: &Clearance) -> String {
    let mut table = Table::new(&[("Against a go", Align::Left), ("What to do", Align::Left)]);
    for one in &answer.go.why_not {
        table.row([&one.reason, &one.remedy]);
    }
    table.render(INSIDE)
}
