//! `export` writes a trail to a file; `audit` shows a gag as it stood at a past moment, from such a file alone.
//! The audit opens no database and no socket.

use std::fs;

use gagwright_casting::PersonId;
use gagwright_clearance::{
    Clearance,
    case::{Debrief, Take},
};
use gagwright_trail::export::{read_leaves, verify_export, verify_export_against};
use jiff::Timestamp;

use super::{
    arguments::{AuditArguments, ExportArguments},
    database,
    fault::Fault,
    files, say, say_json,
    table::{WIDTH, paragraph_in},
    verify,
};
use crate::{
    trail_file::{self, Parts},
    views::{self, GagThen, Moment, SignedThen},
    words,
};

pub(crate) fn export(arguments: &ExportArguments) -> Result<(), Fault> {
    let parts = match arguments.parts {
        true => Parts::Taken,
        false => Parts::Left,
    };
    let store = database::open(&arguments.place)?;
    let text = store.read(|conn| {
        let production = database::production(conn, &arguments.place)?;
        Ok::<_, Fault>(trail_file::export(conn, production.id, parts)?)
    })?;
    let file = arguments.out.display();
    fs::write(&arguments.out, text).map_err(|error| {
        Fault::failed(format!(
            "cannot write {file}: {error}; choose another with --out"
        ))
    })?;
    say(format!("{file}"))
}

pub(crate) fn run(arguments: &AuditArguments) -> Result<(), Fault> {
    let text = files::read(&arguments.export)?;
    let key = arguments
        .log_key
        .as_deref()
        .map(verify::key_of_log)
        .transpose()?;
    match &key {
        Some(key) => verify_export_against(&text, key),
        None => verify_export(&text),
    }
    .map_err(|error| Fault::failed(format!("this trail does NOT verify: {error}")))?;
    let leaves: Vec<views::LeafWithParts> = read_leaves(&text)
        .map_err(|error| Fault::failed(error.to_string()))?
        .into_iter()
        .map(|leaf| {
            let said = leaf.said();
            (leaf.entry, said)
        })
        .collect();
    let moment = match (&arguments.at, arguments.leaf) {
        (Some(at), _) => Moment::At(moment(at)?),
        (None, Some(leaf)) => Moment::Leaf(leaf),
        (None, None) => return Err(Fault::usage("give --at TIME or --leaf NUMBER")),
    };
    let then = views::rebuild(&leaves, |replay| replay.by_code(&arguments.gag), moment)
        .map_err(|error| Fault::failed(format!("{}: {error}", arguments.gag)))?;
    if arguments.json {
        return say_json(&then);
    }
    say(told(&then, WIDTH))
}

fn moment(text: &str) -> Result<Timestamp, Fault> {
    text.parse().map_err(|_| {
        Fault::usage(format!(
            "--at {text} is not a moment; write it as 2026-11-25T14:30:00Z"
        ))
    })
}

fn told(then: &GagThen, width: usize) -> String {
    let mut text = format!(
        "{} {} at {}, after leaf {}: revision {}\n",
        then.code,
        then.title.as_deref().unwrap_or("(title not known)"),
        then.judged_at,
        then.leaf,
        then.revision
    );
    let answer = match (&then.clearance, then.certain) {
        (Some(judged), true) => words::named(&judged.state),
        _ => "cannot be known any more".to_owned(),
    };
    text.push_str(&format!("The answer then: {answer}\n"));
    let mut list = |heading: &str, lines: Vec<String>| {
        if lines.is_empty() {
            return;
        }
        text.push_str(&format!("\n{heading}\n"));
        for line in lines {
            text.push_str(&paragraph_in(width, "  ", 4, &line));
        }
    };
    list("Cannot be known any more:", then.unknown.clone());
    let blocks = then.clearance.iter().flat_map(|judged| &judged.blocks);
    list(
        "What stopped it:",
        blocks.map(|block| block.reason.clone()).collect(),
    );
    let day = then.clearance.iter().flat_map(|judged| &judged.day.blocks);
    list(
        "What the day waited for:",
        day.map(|block| block.reason.clone()).collect(),
    );
    list("The go:", then.clearance.iter().map(go).collect());
    let takes = then.takes.iter();
    list("Takes:", takes.map(take).collect());
    let debriefs = then.debriefs.iter();
    list(
        "Debriefs:",
        debriefs.map(|one| debrief(then, one)).collect(),
    );
    list(
        "Who had signed, by leaf:",
        then.signed.iter().map(|one| signed(then, one)).collect(),
    );
    let readings = then.readings.iter();
    list(
        "Readings:",
        readings
            .map(|one| {
                format!(
                    "{}: {} at {}",
                    words::named(&one.kind),
                    one.kind.say(one.value),
                    one.at
                )
            })
            .collect(),
    );
    let holds = then.holds.iter();
    list(
        "Holds:",
        holds
            .map(|hold| {
                let until = hold
                    .released_at
                    .map_or("still held".to_owned(), |at| format!("released {at}"));
                format!("raised {}: {}; {until}", hold.raised_at, hold.reason)
            })
            .collect(),
    );
    let after = then.after.iter();
    list(
        "What came after:",
        after
            .map(|one| format!("leaf {}, {}: {}", one.leaf, one.at, one.sentence))
            .collect(),
    );
    text
}

/// Whether a go was given and stood, in a sentence.
fn go(judged: &Clearance) -> String {
    match (&judged.go.open, judged.go.may) {
        (Some(open), _) if open.lapsed.is_empty() => {
            format!(
                "called for take {} at {}; it stood",
                open.number, open.called_at
            )
        }
        (Some(open), _) => format!(
            "called for take {} at {}; it no longer stood: {}",
            open.number,
            open.called_at,
            open.lapsed.join(" ")
        ),
        (None, true) => format!("not called; it could be, for take {}", judged.go.next),
        (None, false) => format!("not called, and could not be, for take {}", judged.go.next),
    }
}

/// A take and how it ended, in a sentence.
fn take(one: &Take) -> String {
    let stood = match &one.judged {
        Some(judged) if !judged.stood => "; the go did not stand",
        _ => "",
    };
    let ended = match &one.outcome {
        Some(outcome) if outcome.note.is_empty() => words::named(&outcome.result),
        Some(outcome) => format!("{}; \"{}\"", words::named(&outcome.result), outcome.note),
        None => "open".to_owned(),
    };
    format!("take {}, {}{stood}: {ended}", one.number, one.called_at)
}

/// A debrief: what was said, and which skills were used.
fn debrief(then: &GagThen, one: &Debrief) -> String {
    let name = |id: &PersonId| then.names.get(id).cloned().unwrap_or(id.to_string());
    let mut told = format!("{}, led by {}", one.day, name(&one.led_by));
    let said = [
        ("as planned", &one.as_planned),
        ("differently", &one.differently),
        ("next time", &one.next_time),
    ];
    for (what, text) in said.into_iter().filter(|(_, text)| !text.is_empty()) {
        told.push_str(&format!("; {what}: \"{text}\""));
    }
    for used in &one.used {
        let skills: Vec<String> = used.skills.iter().map(words::named).collect();
        let skills = if skills.is_empty() {
            "no skill asked for".to_owned()
        } else {
            skills.join(", ")
        };
        told.push_str(&format!("; {} used {skills}", name(&used.person)));
    }
    told
}

fn signed(then: &GagThen, one: &SignedThen) -> String {
    let name = then
        .names
        .get(&one.signer)
        .cloned()
        .unwrap_or_else(|| one.signer.to_string());
    let covers: Vec<&str> = one.covers.iter().map(|facet| facet.name()).collect();
    let mut told = format!(
        "leaf {}, received {}: {name}, {} as {}, having read revision {} ({})",
        one.leaf,
        one.received_at,
        words::decision(one.decision),
        words::named(&one.role),
        one.revision,
        covers.join(", ")
    );
    if let Some(ahead) = one.ahead_seconds.filter(|ahead| *ahead >= 60) {
        told.push_str(&format!("; their clock was {} min ahead", ahead / 60));
    }
    for text in &one.texts {
        told.push_str(&format!("; \"{text}\""));
    }
    told
}
