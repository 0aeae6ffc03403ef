//! `verify --witness`: what cosignatures in an export or under a proof show, in plain words.

use gagwright_trail::{Cosigned, Verified, WitnessKey, Witnessed};
use jiff::Timestamp;

use super::fault::Fault;

/// The key of a witness as it was typed.
pub(crate) fn key_of_witness(text: &str) -> Result<WitnessKey, Fault> {
    text.trim().parse().map_err(|error| {
        Fault::usage(format!(
            "--witness: {error}; give it as `gagwright witness key` printed it, name+hash+key"
        ))
    })
}

/// A moment given in seconds.
pub(crate) fn moment(seconds: u64) -> String {
    let at = i64::try_from(seconds)
        .ok()
        .and_then(|seconds| Timestamp::from_second(seconds).ok());
    at.map_or_else(
        || format!("second {seconds} of the epoch"),
        |at| at.to_string(),
    )
}

/// What is said of cosignatures.
#[derive(Debug, Default)]
pub(crate) struct Told {
    pub(crate) facts: Vec<String>,
    pub(crate) proves: Vec<String>,
    pub(crate) does_not_prove: Vec<String>,
}

/// What the cosignatures of a verified export show.
pub(crate) fn of_export(verified: &Verified) -> Told {
    let mut told = Told::default();
    // In order of size, so the last of a key is the longest trail that it saw.
    for (index, one) in verified.witnessed.iter().enumerate() {
        let rest = verified.witnessed.iter().skip(index + 1);
        if rest.clone().any(|later| later.key == one.key) {
            continue;
        }
        let times = verified
            .witnessed
            .iter()
            .filter(|it| it.key == one.key)
            .count();
        told.facts.push(cosigned(one, times, verified.size));
        if one.key_was_given {
            told.proves
                .push(saw(&one.name, one.size, verified.size, one.seconds));
            told.does_not_prove
                .extend(after(&one.name, one.size, verified.size));
        }
    }
    match verified.cosignatures_unchecked {
        0 => {}
        1 => told.facts.push(
            "1 cosignature is by a key that neither this trail nor you named: not checked"
                .to_owned(),
        ),
        more => told.facts.push(format!(
            "{more} cosignatures are by keys that neither this trail nor you named: not checked"
        )),
    }
    if !told.proves.is_empty() {
        told.does_not_prove.extend(limits());
    }
    told
}

fn cosigned(one: &Witnessed, times: usize, size: u64) -> String {
    let often = match times {
        1 => "once".to_owned(),
        more => format!("{more} times"),
    };
    let whose = match one.key_was_given {
        true => "checked with the key that you gave",
        false => {
            "checked with the key that the trail itself names: give --witness with the key as you have it \
             from the witness"
        }
    };
    let seen = match one.size {
        all if all == size => format!("all {size} leaves"),
        first => format!("the first {first} of its {size} leaves"),
    };
    format!(
        "cosigned {often} by {}, last with {seen}, at {}; {whose}",
        one.name,
        moment(one.seconds)
    )
}

fn saw(name: &str, seen: u64, size: u64, seconds: u64) -> String {
    let which = if seen == size {
        format!("exactly these {size} leaves")
    } else {
        format!("exactly the first {seen} of these {size} leaves")
    };
    format!(
        "The witness {name} says that the trail had {which} at {} by its own clock, and that it continued whatever \
         this witness had cosigned before.",
        moment(seconds)
    )
}

fn after(name: &str, seen: u64, size: u64) -> Option<String> {
    (seen < size).then(|| {
        format!(
            "Anything by {name} about the {} that came after the last it saw.",
            match size - seen {
                1 => "one leaf".to_owned(),
                more => format!("{more} leaves"),
            }
        )
    })
}

fn limits() -> [String; 2] {
    [
        "That a witness read the trail: it sees how long it is and its root, and not one word of what is in it."
            .to_owned(),
        "That a witness kept its key to itself and compared each time: that is its word, and its clock.".to_owned(),
    ]
}

/// What a proof's signed note shows, cosigned by every one of these keys.
pub(crate) fn of_note(note: &str, witnesses: &[WitnessKey]) -> Result<Told, String> {
    let mut told = Told::default();
    for key in witnesses {
        let Cosigned {
            checkpoint,
            seconds,
        } = key.verify(note).map_err(|error| error.to_string())?;
        let size = checkpoint.size;
        told.facts.push(format!(
            "cosigned by {} at {}; checked with the key that you gave",
            key.name(),
            moment(seconds)
        ));
        told.proves.push(saw(key.name(), size, size, seconds));
    }
    if !told.proves.is_empty() {
        told.does_not_prove.extend(limits());
    }
    Ok(told)
}
