//! `demo`: the whole job in the terminal, as a story whose every step is checked while it is told. A
//! step that does not come out as stated ends the story with exit code 1.

mod casting;
mod day;
mod proving;
mod signing;
mod testing;
mod witnessing;

use std::{
    fs,
    path::{Path, PathBuf},
};

use gagwright_clearance::GagId;
use gagwright_store::{Connection, Store};
use jiff::{SignedDuration, Timestamp};

use super::{arguments::DemoArguments, fault::Fault, say, table::paragraph};
use crate::{
    commands::CommandError,
    demo::{self, script, stage::Stage},
    entropy, private_file,
};

/// The story plays on this morning, so that it comes out the same on every day it is told.
const MORNING: &str = "2026-11-25T09:00:00Z";
/// The gag that is signed from beginning to end.
const MAIN: &str = "G01";
/// The gags that are written down and cast.
const CAST: [&str; 4] = ["G01", "G02", "G03", "G04"];

pub(crate) fn run(arguments: &DemoArguments) -> Result<(), Fault> {
    let mut teller = Teller {
        step: 0,
        folder: prepare(&arguments.out)?,
    };
    let store = Store::open(&format!("sqlite:{}", teller.file("story.db").display()))?;
    store.migrate()?;
    teller.introduction()?;

    let (board, stage) = opening(&mut teller, &store)?;
    let stage = casting::cast(&mut teller, &store, stage, &board)?;
    let stage = testing::test(&mut teller, &store, stage, &board)?;
    let main = board
        .iter()
        .find(|one| one.0 == MAIN)
        .map(|one| one.1)
        .ok_or_else(|| Fault::failed("the story's gag is not among those written down"))?;
    let stage = signing::sign(&mut teller, &store, stage, main)?;
    let (mut watching, stage) = witnessing::begin(&mut teller, &store, stage)?;
    let stage = day::work(&mut teller, &store, stage, main)?;
    let stage = witnessing::again(&mut teller, &store, stage, &mut watching)?;
    let witness = watching.witness.key();
    proving::prove(&mut teller, &store, &stage, main, &witness)?;
    teller.end()
}

/// Gags by code.
type Board = Vec<(String, GagId)>;

/// Tells the story and holds it to what it says.
pub(super) struct Teller {
    step: u32,
    folder: PathBuf,
}

impl Teller {
    fn introduction(&self) -> Result<(), Fault> {
        say(paragraph(
            "",
            0,
            &format!(
                "One production's job, from a roster to a packet and a record that can be checked. \
                 Everybody in it is invented. It plays on the morning of 25 November 2026 and on the shooting day, 8 March 2027, and \
                 everything it makes is in {}.",
                self.folder.display()
            ),
        ))
    }

    /// Begins a step.
    pub(super) fn step(&mut self, title: &str) -> Result<(), Fault> {
        self.step += 1;
        say(format!("\n{}. {title}\n", self.step))
    }

    /// Tells a sentence.
    pub(super) fn tell(&self, text: &str) -> Result<(), Fault> {
        say(paragraph("   ", 3, text))
    }

    /// Shows a table or the like, moved in.
    pub(super) fn show(&self, text: &str) -> Result<(), Fault> {
        let lines: Vec<String> = text
            .lines()
            .map(|line| {
                if line.is_empty() {
                    String::new()
                } else {
                    format!("   {line}")
                }
            })
            .collect();
        say(format!("{}\n", lines.join("\n")))
    }

    /// States something, and ends the story when it is not so.
    pub(super) fn state(&self, so: bool, statement: &str) -> Result<(), Fault> {
        if !so {
            return Err(Fault::failed(format!(
                "step {} did not come out as stated. It should be so that: {statement}",
                self.step
            )));
        }
        say(paragraph("   = ", 5, statement))
    }

    /// A file in the story's folder.
    pub(super) fn file(&self, name: &str) -> PathBuf {
        self.folder.join(name)
    }

    /// Writes a file and says so.
    pub(super) fn write(&self, name: &str, bytes: &[u8]) -> Result<(), Fault> {
        let file = self.file(name);
        fs::write(&file, bytes)
            .map_err(|error| Fault::failed(format!("cannot write {}: {error}", file.display())))?;
        say(paragraph(
            "   > ",
            5,
            &format!("{} ({} bytes)", file.display(), bytes.len()),
        ))
    }

    /// Writes a file that only its owner may read.
    pub(super) fn write_secret(&self, name: &str, bytes: &[u8]) -> Result<(), Fault> {
        let file = self.file(name);
        private_file::write_new(&file, bytes)
            .map_err(|error| Fault::failed(format!("cannot write {}: {error}", file.display())))
    }

    fn end(&self) -> Result<(), Fault> {
        say(format!(
            "\nAll {} steps came out as stated. To check the trail yourself:\n  \
             gagwright verify {}",
            self.step,
            self.file("trail.jsonl").display()
        ))
    }
}

/// The folder, made where it is missing; it must be empty, so that nothing is overwritten.
fn prepare(folder: &Path) -> Result<PathBuf, Fault> {
    let name = folder.display();
    let failed = |error: std::io::Error| {
        Fault::failed(format!(
            "cannot use the folder {name}: {error}; choose another with --out"
        ))
    };
    fs::create_dir_all(folder).map_err(failed)?;
    if fs::read_dir(folder).map_err(failed)?.next().is_some() {
        return Err(Fault::usage(format!(
            "the folder {name} is not empty; give an empty or a new one with --out"
        )));
    }
    fs::create_dir(folder.join("keys")).map_err(failed)?;
    Ok(folder.to_path_buf())
}

/// Runs part of the story in one transaction and gives the stage back with what it found.
pub(super) fn play<T: Send + 'static>(
    store: &Store,
    mut stage: Stage,
    part: impl FnOnce(&mut Connection, &mut Stage) -> Result<T, CommandError> + Send + 'static,
) -> Result<(T, Stage), Fault> {
    Ok(store.write(move |conn| {
        let found = part(conn, &mut stage)?;
        Ok::<_, CommandError>((found, stage))
    })?)
}

/// The production, its roster and its gags.
fn opening(teller: &mut Teller, store: &Store) -> Result<(Board, Stage), Fault> {
    let began: Timestamp = MORNING
        .parse()
        .map_err(|error| Fault::failed(format!("the story's morning cannot be read: {error}")))?;
    let script = script::built_in().map_err(CommandError::from)?;
    let for_opening = script.clone();

    teller.step("The roster comes in")?;
    let mut stage = store.write(move |conn| {
        let mut stage = demo::open(conn, &for_opening, began, Box::new(entropy::system), |_| {
            None
        })?;
        stage.step = SignedDuration::from_secs(20);
        Ok::<_, CommandError>(stage)
    })?;
    let (people, certificates, skills) = store.read(|conn| {
        let people = gagwright_store::people::list(conn, stage.production)?;
        let certificates: usize = people.iter().map(|one| one.person.certificates.len()).sum();
        let skills: usize = people.iter().map(|one| one.person.skills.len()).sum();
        Ok::<_, Fault>((people.len(), certificates, skills))
    })?;
    teller.tell(&format!(
        "\"{}\" starts with its coordinator. Four tables are imported: {people} people, \
         {certificates} certificates, {skills} graded skills, and who is available when.",
        script.production.name
    ))?;
    teller.state(
        people == demo::ROSTER[0].1.lines().count() - 1,
        "everybody in the table of people is on the roster, once.",
    )?;
    stage = casting::broken_roster(teller, store, stage, people)?;

    teller.step("The gags are written down")?;
    let wanted: Vec<script::GagScript> = script
        .gags
        .iter()
        .filter(|gag| CAST.contains(&gag.code.as_str()))
        .cloned()
        .map(|mut gag| {
            for slot in &mut gag.slots {
                slot.person = None;
            }
            gag
        })
        .collect();
    let (board, stage) = play(store, stage, move |conn, stage| {
        let mut board = Board::new();
        for gag in &wanted {
            let plan = stage.create(conn, "C01", gag)?;
            board.push((gag.code.clone(), plan.gag));
        }
        Ok(board)
    })?;
    teller.tell("Each is planned by facets, with its technique's inputs; nobody is cast yet.")?;
    teller.show(&casting::board(store, &stage)?)?;
    teller.state(
        board.len() == CAST.len(),
        "four gags are written down, none of them cleared.",
    )?;
    Ok((board, stage))
}

/// Reads one part of the story.
pub(super) fn play_read<T>(
    store: &Store,
    part: impl FnOnce(&mut Connection) -> Result<T, CommandError>,
) -> Result<T, Fault> {
    Ok(store.read(part)?)
}
