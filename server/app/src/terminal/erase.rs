//! `erase`: takes away what is kept of a person.

use super::{arguments::EraseArguments, database, fault::Fault, say, say_json};
use crate::{clock, commands::erasure};

pub(crate) fn run(arguments: &EraseArguments) -> Result<(), Fault> {
    let store = database::open(&arguments.place)?;
    let (actor, person) = store.read(|conn| {
        let production = database::production(conn, &arguments.place)?;
        let actor = database::actor(conn, &production, &arguments.place)?;
        let code = &arguments.person;
        let person = gagwright_store::people::by_code(conn, production.id, code)?;
        let person = person.ok_or_else(|| {
            Fault::failed(format!(
                "nobody on the roster of {} has the code {code}",
                production.name
            ))
        })?;
        Ok::<_, Fault>((actor, person.person.id))
    })?;
    let now = clock::now();
    let erased = store.write(move |conn| erasure::erase(conn, &actor, now, person))?;
    if arguments.json {
        return say_json(&erased);
    }
    let mut told = format!(
        "Erased {}: {} parts beside the trail, the texts of {} sign-offs, {} drawn marks. Leaf {}.\n\
         Every leaf, proof and signature is as good as before; copies made elsewhere are not reached.",
        arguments.person, erased.parts, erased.openings, erased.marks, erased.leaf
    );
    if !erased.cast_in.is_empty() {
        told.push_str(&format!(
            "\nStill cast in {}: plans stay as they are; revise these.",
            erased.cast_in.join(", ")
        ));
    }
    say(told)
}
