//! What each kind of leaf of the day changes. How a gag's day stood is for the file beside it.

use std::collections::BTreeSet;

use gagwright_casting::{GagId, PersonId};
use jiff::Timestamp;

use super::{Kept, Leaf, Replay, ReplayError, used_part};
use crate::{
    case::{
        Briefing, Closing, DaySignOff, Debrief, GoJudged, Incident, Look, RegisteredItem, Returned,
        ShockLoad, StandDown, Take, TakeOutcome, Told, Used,
    },
    ids::RecordId,
};

/// Kinds that say what happened on the day.
pub(super) const DAY: [&str; 15] = [
    "equipment.put",
    "equipment.quarantined",
    "equipment.released",
    "equipment.shock_loaded",
    "briefing.held",
    "day.signed",
    "go.called",
    "take.ended",
    "gag.debriefed",
    "look.recorded",
    "person.stood_down",
    "person.returned",
    "incident.reported",
    "incident.told",
    "incident.closed_by",
];

/// A record with its leaf and the gag it is about.
pub(super) type OnGag<T> = (u64, GagId, T);

/// Everything of the day that the leaves so far said, each list in their order.
#[derive(Clone, Debug, Default)]
pub(super) struct DayThen {
    pub(super) equipment: Vec<RegisteredItem>,
    pub(super) briefings: Vec<OnGag<Briefing>>,
    pub(super) marks: Vec<(GagId, DaySignOff)>,
    pub(super) takes: Vec<OnGag<Take>>,
    pub(super) debriefs: Vec<OnGag<Debrief>>,
    /// Performers of whom what they used cannot be read any more.
    pub(super) lost_used: Vec<(u64, PersonId)>,
    pub(super) looks: Vec<Look>,
    /// Looks whose finding cannot be read any more.
    pub(super) lost_looks: Vec<(u64, PersonId)>,
    pub(super) stand_downs: Vec<StandDown>,
    pub(super) incidents: Vec<(u64, Incident)>,
    /// Leaves whose names or places, which the answer quotes or compares, cannot be read any more.
    pub(super) lost_items: BTreeSet<(u64, RecordId)>,
    pub(super) lost_places: BTreeSet<u64>,
}

impl DayThen {
    /// Nothing that was found in their body, or that they used, is missed any more.
    pub(super) fn erase(&mut self, person: PersonId) {
        self.looks.retain(|one| one.person != person);
        self.lost_looks
            .retain(|(_, looked_at)| *looked_at != person);
        self.lost_used.retain(|(_, used_by)| *used_by != person);
        for (_, _, debrief) in &mut self.debriefs {
            debrief.used.retain(|one| one.person != person);
        }
    }
}

pub(super) fn apply(
    replay: &mut Replay,
    leaf: &Leaf<'_>,
    at: Timestamp,
) -> Result<(), ReplayError> {
    match leaf.entry.kind.as_str() {
        "equipment.put" => put(&mut replay.day, leaf)?,
        "equipment.quarantined" => {
            let (since, reason) = (leaf.fact("since")?, leaf.text("reason")?);
            item(&mut replay.day, leaf)?.set_aside(since, reason, leaf.actor()?);
        }
        "equipment.released" => {
            let until = leaf.fact("inspected_until")?;
            let item = item(&mut replay.day, leaf)?;
            item.quarantined = None;
            item.inspected_until = Some(until);
        }
        "equipment.shock_loaded" => {
            let shock = ShockLoad {
                id: leaf.fact("shock_load")?,
                at: leaf.fact("at")?,
                what: leaf.text("what")?,
                by: leaf.actor()?,
            };
            item(&mut replay.day, leaf)?.shocked(shock);
        }
        "briefing.held" => {
            let held = Briefing {
                id: leaf.fact("briefing")?,
                day: leaf.fact("day")?,
                place: place(&mut replay.day, leaf)?,
                revision: leaf.fact("revision")?,
                facets: leaf.fact("facets")?,
                at: leaf.fact("at")?,
                by: leaf.actor()?,
                attended: leaf.fact("attended")?,
                points: leaf.text("points")?,
            };
            let kept = (leaf.entry.index, leaf.gag()?, held);
            replay.day.briefings.push(kept);
        }
        "day.signed" => {
            let mark = DaySignOff {
                jws: leaf.fact("jws")?,
                received_at: at,
                leaf: leaf.entry.index,
            };
            replay.day.marks.push((leaf.gag()?, mark));
        }
        "go.called" => go(&mut replay.day, leaf)?,
        "take.ended" => {
            let outcome = TakeOutcome {
                result: leaf.fact("result")?,
                note: leaf.text("note")?,
                at: leaf.fact("at")?,
                by: leaf.actor()?,
            };
            let id: RecordId = leaf.fact("take")?;
            let take = replay.day.takes.iter_mut().find(|(_, _, one)| one.id == id);
            let (_, _, take) =
                take.ok_or_else(|| leaf.wrong(format!("no leaf called a go for the take {id}")))?;
            take.outcome = Some(outcome);
        }
        "gag.debriefed" => debrief(&mut replay.day, leaf)?,
        "look.recorded" => look(&mut replay.day, leaf)?,
        "person.stood_down" => {
            let down = StandDown {
                id: leaf.fact("stand_down")?,
                person: leaf.fact("person")?,
                from: leaf.fact("from")?,
                until: leaf.fact("until")?,
                by: leaf.actor()?,
                returned: None,
                after_look: false,
            };
            replay.day.stand_downs.push(down);
        }
        "person.returned" => {
            let id: RecordId = leaf.fact("stand_down")?;
            let back = Returned {
                at,
                by: leaf.actor()?,
            };
            let down = replay.day.stand_downs.iter_mut().find(|one| one.id == id);
            down.ok_or_else(|| leaf.wrong(format!("no leaf stood anybody down as {id}")))?
                .returned = Some(back);
        }
        "incident.reported" => {
            let reported = Incident {
                id: leaf.fact("incident")?,
                kind: leaf.fact("kind")?,
                gag: match &leaf.entry.gag {
                    Some(_) => Some(leaf.gag()?),
                    None => None,
                },
                at: leaf.fact("at")?,
                by: leaf.actor()?,
                what: leaf.text("what")?,
                told: Vec::new(),
                closings: Vec::new(),
                closed_at: None,
            };
            replay.day.incidents.push((leaf.entry.index, reported));
        }
        "incident.told" => {
            let named: Option<String> = leaf.fact("who")?;
            let told = Told {
                who: match named {
                    Some(who) => who,
                    None => leaf.text("who")?,
                },
                at: leaf.fact("at")?,
                by: leaf.actor()?,
            };
            incident(replay, leaf, at)?.told.push(told);
        }
        "incident.closed_by" => {
            let closing = Closing {
                role: leaf.fact("role")?,
                person: leaf.actor()?,
                at,
                action: leaf.text("action")?,
            };
            incident(replay, leaf, at)?.closings.push(closing);
        }
        other => return Err(leaf.wrong(format!("{other} is no kind of the day"))),
    }
    Ok(())
}

fn put(day: &mut DayThen, leaf: &Leaf<'_>) -> Result<(), ReplayError> {
    let id: RecordId = leaf.fact("item")?;
    let mut text = |name: &str| {
        Ok::<_, ReplayError>(match leaf.part("item", &format!("/{name}"))? {
            Kept::Known(text) => text,
            Kept::Gone { leaf } => {
                day.lost_items.insert((leaf, id));
                String::new()
            }
        })
    };
    let (name, rating) = (text("name")?, text("rating")?);
    let before = day.equipment.iter_mut().find(|one| one.id == id);
    let (quarantined, shock_loads) = match &before {
        Some(one) => (one.quarantined.clone(), one.shock_loads.clone()),
        None => (None, Vec::new()),
    };
    let put = RegisteredItem {
        id,
        serial: leaf.fact("serial")?,
        name,
        working_load: leaf.fact("working_load")?,
        rating,
        inspected_until: leaf.fact("inspected_until")?,
        quarantined,
        shock_loads,
    };
    // What an entry says replaces what earlier ones said.
    day.lost_items
        .retain(|(lost, of)| *of != id || *lost == leaf.entry.index);
    match before {
        Some(before) => *before = put,
        None => day.equipment.push(put),
    }
    Ok(())
}

fn item<'d>(day: &'d mut DayThen, leaf: &Leaf<'_>) -> Result<&'d mut RegisteredItem, ReplayError> {
    let id: RecordId = leaf.fact("item")?;
    let found = day.equipment.iter_mut().find(|one| one.id == id);
    found.ok_or_else(|| leaf.wrong(format!("no leaf entered the piece of equipment {id}")))
}

fn place(day: &mut DayThen, leaf: &Leaf<'_>) -> Result<String, ReplayError> {
    Ok(match leaf.part("place", "")? {
        Kept::Known(place) => place,
        Kept::Gone { leaf } => {
            day.lost_places.insert(leaf);
            String::new()
        }
    })
}

fn go(day: &mut DayThen, leaf: &Leaf<'_>) -> Result<(), ReplayError> {
    let why_not = match leaf.part("said", "/why_not")? {
        Kept::Known(why_not) => why_not,
        Kept::Gone { .. } => Vec::new(),
    };
    let take = Take {
        id: leaf.fact("take")?,
        number: leaf.fact("number")?,
        called_at: leaf.fact("called_at")?,
        called_by: leaf.actor()?,
        revision: leaf.fact("revision")?,
        plan_digest: leaf.fact("plan_digest")?,
        day: leaf.fact("day")?,
        place: place(day, leaf)?,
        cast: leaf.fact("cast")?,
        judged: Some(GoJudged {
            stood: leaf.fact("stood")?,
            why_not,
        }),
        outcome: None,
    };
    day.takes.push((leaf.entry.index, leaf.gag()?, take));
    Ok(())
}

fn debrief(day: &mut DayThen, leaf: &Leaf<'_>) -> Result<(), ReplayError> {
    let performers: Vec<PersonId> = leaf.fact("performers")?;
    let mut used = Vec::new();
    for person in performers {
        match leaf.part(&used_part(person), "")? {
            Kept::Known(skills) => used.push(Used { person, skills }),
            Kept::Gone { leaf } => day.lost_used.push((leaf, person)),
        }
    }
    let said = Debrief {
        id: leaf.fact("debrief")?,
        day: leaf.fact("day")?,
        place: place(day, leaf)?,
        revision: leaf.fact("revision")?,
        at: leaf.fact("at")?,
        led_by: leaf.fact("led_by")?,
        by: leaf.actor()?,
        attended: leaf.fact("attended")?,
        as_planned: leaf.text("as_planned")?,
        differently: leaf.text("differently")?,
        next_time: leaf.text("next_time")?,
        used,
    };
    day.debriefs.push((leaf.entry.index, leaf.gag()?, said));
    Ok(())
}

fn look(day: &mut DayThen, leaf: &Leaf<'_>) -> Result<(), ReplayError> {
    let person: PersonId = leaf.fact("person")?;
    let fitness = leaf.part("look", "/fitness")?;
    let head_impact = leaf.part("look", "/head_impact")?;
    let (Kept::Known(fitness), Kept::Known(head_impact)) = (fitness, head_impact) else {
        day.lost_looks.push((leaf.entry.index, person));
        return Ok(());
    };
    day.looks.push(Look {
        id: leaf.fact("look")?,
        gag: leaf.gag()?,
        take: leaf.fact("take")?,
        person,
        day: leaf.fact("day")?,
        fitness,
        head_impact,
        at: leaf.fact("at")?,
        by: leaf.actor()?,
    });
    Ok(())
}

/// The incident that a leaf is about, closed when the leaf says that it closed it.
fn incident<'r>(
    replay: &'r mut Replay,
    leaf: &Leaf<'_>,
    at: Timestamp,
) -> Result<&'r mut Incident, ReplayError> {
    let id: RecordId = leaf.fact("incident")?;
    let closed: bool = leaf.fact("closed")?;
    let found = replay
        .day
        .incidents
        .iter_mut()
        .find(|(_, one)| one.id == id);
    let (_, found) =
        found.ok_or_else(|| leaf.wrong(format!("no leaf reported the incident {id}")))?;
    if closed {
        found.closed_at = Some(at);
    }
    Ok(found)
}
