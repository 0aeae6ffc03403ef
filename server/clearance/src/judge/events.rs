//! What happened at a moment and voids what was signed before it, as the policy's table says: shock
//! loads, readings outside their band, head impacts. What changed between two states (another performer,
//! another day) is seen by comparing what was signed.

use gagwright_casting::PersonId;
use jiff::Timestamp;

use super::{bench::Bench, day};
use crate::{
    policy::{LapseEvent, Policy, Role},
    words,
};

/// One thing that happened.
pub(crate) struct Happened {
    pub event: LapseEvent,
    pub at: Timestamp,
    /// Whose body it was, where it was somebody's.
    pub person: Option<PersonId>,
    /// In a sentence.
    pub said: String,
}

/// Everything that happened, in the order it did.
pub(crate) fn happened(bench: &Bench<'_>) -> Vec<Happened> {
    let mut all = shock_loads(bench);
    all.extend(out_of_band(bench));
    all.extend(head_impacts(bench));
    // Of two at one moment the order of arrival must not show.
    all.sort_by(|one, other| {
        let order = |one: &Happened| (one.at, one.event, one.person);
        (order(one), &one.said).cmp(&(order(other), &other.said))
    });
    all
}

fn shock_loads(bench: &Bench<'_>) -> Vec<Happened> {
    let used = |serial: &str| bench.case.plan.uses(serial);
    let items = bench.case.day.equipment.iter();
    items
        .filter(|item| used(&item.serial))
        .flat_map(|item| item.shock_loads.iter().map(move |shock| (item, shock)))
        .map(|(item, shock)| Happened {
            event: LapseEvent::ShockLoad,
            at: shock.at,
            person: None,
            said: format!(
                "{} ({}) took a shock load on {}.",
                words::capital(&item.name),
                item.serial,
                words::minute(shock.at)
            ),
        })
        .collect()
}

fn out_of_band(bench: &Bench<'_>) -> Vec<Happened> {
    let bands = &bench.case.plan.facets.conditions.bands;
    let outside = |kind, value| {
        let mut bands = bands.iter().filter(move |band| band.reading == kind);
        bands.any(|band| day::is_outside(band, value))
    };
    let readings = bench.case.readings.iter();
    readings
        .filter(|one| day::is_past(one, bench.now) && outside(one.kind, one.value))
        .map(|one| Happened {
            event: LapseEvent::OutOfBand,
            at: one.at,
            person: None,
            said: format!(
                "{} was read outside the band, {}, on {}.",
                words::capital(one.kind.words()),
                one.kind.say(one.value),
                words::minute(one.at)
            ),
        })
        .collect()
}

/// Looks that keep somebody from performing, or what stands for them where what was found is not read. What
/// was found is told to nobody.
fn head_impacts(bench: &Bench<'_>) -> Vec<Happened> {
    let day = &bench.case.day;
    let looks = day.looks.iter().filter(|look| look.head_impact);
    let looks = looks.map(|look| (look.person, look.at));
    let kept_off = day.stand_downs.iter().filter(|one| one.after_look);
    looks
        .chain(kept_off.map(|one| (one.person, one.from)))
        .filter(|(person, _)| bench.case.plan.casts(*person))
        .map(|(person, at)| Happened {
            event: LapseEvent::HeadImpact,
            at,
            person: Some(person),
            said: format!(
                "{} was stood down on {}, after the medic's look.",
                bench.name(person),
                words::minute(at)
            ),
        })
        .collect()
}

/// Why a mark made at a moment no longer counts: what has happened since that `voids` says lapses it. A
/// performer's mark falls by what happened to their own body, not to another's.
pub(crate) fn since(
    bench: &Bench<'_>,
    role: Role,
    signer: PersonId,
    made: Timestamp,
    voids: fn(&Policy, LapseEvent, Role) -> bool,
) -> Vec<String> {
    let own = |one: &&Happened| {
        role != Role::Performer || one.person.is_none_or(|person| person == signer)
    };
    bench
        .happened()
        .iter()
        .filter(|one| one.at >= made && voids(&bench.case.policy, one.event, role))
        .filter(own)
        .map(|one| one.said.clone())
        .collect()
}
