//! The day around a take, as what a packet prints: who was briefed, what was read and how old it is, the
//! equipment by serial, the marks for the day, goes and takes, debriefs, looks, stand-downs, near misses
//! and incidents. What a medic found is fit, limits or not; a body's troubles are on no paper.

use std::collections::BTreeMap;

use gagwright_casting::{PersonId, words::capital};
use gagwright_clearance::{
    Case, Clearance,
    case::{
        EquipmentState, Fitness, IncidentKind, ReadingState, RoleStanding, RoleState, Take,
        TakeResult,
    },
    day_mark::{self, DayStatement},
    judge::untold,
};
use gagwright_mechanics::Quantity;
use gagwright_packet::document::{Content, Part, Row};
use jiff::{Timestamp, tz::TimeZone};

use crate::words;

/// The newest takes and looks that still fit a page; the trail keeps all.
const NEWEST: usize = 12;

/// What the pages are made from.
pub(super) struct Day<'a> {
    pub case: &'a Case,
    pub judged: &'a Clearance,
    pub names: &'a BTreeMap<PersonId, String>,
    pub zone: &'a TimeZone,
    pub now: Timestamp,
}

/// Every part of the day; none while nothing has been done on any day.
pub(super) fn parts(day: &Day<'_>) -> Vec<Part> {
    let log = &day.case.day;
    let nothing = log.briefings.is_empty()
        && log.signoffs.is_empty()
        && log.takes.is_empty()
        && log.debriefs.is_empty()
        && log.looks.iter().all(|one| one.gag != day.case.plan.gag)
        && log.stand_downs.is_empty()
        && log.incidents.is_empty();
    if nothing {
        return Vec::new();
    }
    let mut parts = vec![day.standing(), day.briefing()];
    parts.extend(day.tables());
    parts.extend(day.debriefs());
    parts
}

impl Day<'_> {
    fn name(&self, id: &PersonId) -> String {
        let known = self.names.get(id);
        known.cloned().unwrap_or_else(|| "not on the roster".into())
    }

    fn all(&self, ids: &[PersonId]) -> String {
        let names: Vec<String> = ids.iter().map(|id| self.name(id)).collect();
        names.join(", ")
    }

    fn at(&self, at: Timestamp) -> String {
        words::short_moment(at, self.zone)
    }

    fn standing(&self) -> Part {
        let day = &self.judged.day;
        let mut content = vec![Content::Rows {
            heading: String::new(),
            rows: vec![
                Row::new("Day", words::day(day.day)),
                Row::new("Place", &day.place),
                Row::new("Go", go(self.judged)),
            ],
        }];
        let mut open: Vec<String> = Vec::new();
        for one in &self.judged.go.why_not {
            if !open.contains(&one.reason) {
                open.push(one.reason.clone());
            }
        }
        if !open.is_empty() {
            content.push(Content::List {
                heading: "Against a go when this was printed".into(),
                items: open,
            });
        }
        part("Where the day stands", content)
    }

    fn briefing(&self) -> Part {
        let standing = &self.judged.day.briefing;
        let mut briefings: Vec<_> = self.case.day.briefings.iter().collect();
        briefings.sort_by_key(|one| (one.at, one.id));
        let mut content: Vec<Content> = Vec::new();
        for one in briefings.into_iter().rev().take(4) {
            let mut rows = vec![
                Row::new("Where", &one.place),
                Row::new("Led by", self.name(&one.by)),
                Row::new("There", self.all(&one.attended)),
            ];
            if !one.points.is_empty() {
                rows.push(Row::new("Said beyond the plan", &one.points));
            }
            content.push(Content::Rows {
                heading: format!("{}, on revision {}", self.at(one.at), one.revision),
                rows,
            });
        }
        let text = if standing.at.is_none() {
            "Nobody has been briefed for this day and place.".to_owned()
        } else if standing.missed.is_empty() {
            "Everyone who must be briefed was there.".to_owned()
        } else {
            format!("Missed it: {}.", self.all(&standing.missed))
        };
        content.push(Content::Paragraph {
            heading: String::new(),
            text,
        });
        part("Briefing and attendance", content)
    }

    fn debriefs(&self) -> Option<Part> {
        let mut debriefs: Vec<_> = self.case.day.debriefs.iter().collect();
        debriefs.sort_by_key(|one| (one.at, one.id));
        let content: Vec<Content> = debriefs
            .into_iter()
            .rev()
            .take(4)
            .map(|one| {
                let said = [
                    ("As planned", &one.as_planned),
                    ("Differently", &one.differently),
                    ("Next time", &one.next_time),
                ];
                let mut rows = vec![
                    Row::new("Where", &one.place),
                    Row::new("Led by", self.name(&one.led_by)),
                    Row::new("There", self.all(&one.attended)),
                ];
                let said = said.into_iter().filter(|(_, text)| !text.is_empty());
                rows.extend(said.map(|(what, text)| Row::new(what, text)));
                rows.extend(one.used.iter().map(|used| {
                    let skills: Vec<String> = used.skills.iter().map(words::named).collect();
                    let skills = match skills.is_empty() {
                        true => "no skill that was asked for".to_owned(),
                        false => skills.join(", "),
                    };
                    Row::new("Used", format!("{}: {skills}", self.name(&used.person)))
                }));
                Content::Rows {
                    heading: format!("{}, on revision {}", words::day(one.day), one.revision),
                    rows,
                }
            })
            .collect();
        (!content.is_empty()).then(|| part("Debriefs", content))
    }

    fn tables(&self) -> Vec<Part> {
        let (day, log) = (&self.judged.day, &self.case.day);
        let mut takes: Vec<&Take> = log.takes.iter().collect();
        takes.sort_by_key(|one| std::cmp::Reverse(one.number));
        let number = |id| {
            let found = log.takes.iter().find(|one| Some(one.id) == id);
            found.map_or_else(
                || "no take".to_owned(),
                |one| format!("take {}", one.number),
            )
        };
        [
            table(
                "What must be read",
                &["Of", "Value", "Read", "Age", "Stands"],
                day.readings
                    .iter()
                    .map(|one| {
                        let value = one.value.map(|value| words::reading(one.kind, value));
                        vec![
                            capital(&words::named(&one.kind)),
                            value.unwrap_or_default(),
                            one.at.map(|at| self.at(at)).unwrap_or_default(),
                            one.at
                                .map(|at| {
                                    let age = self.now.duration_since(at).as_mins();
                                    format!("{age} min, counts {} min", one.max_age_minutes)
                                })
                                .unwrap_or_default(),
                            reading(one.state).to_owned(),
                        ]
                    })
                    .collect(),
            ),
            table(
                "Equipment today",
                &[
                    "Equipment",
                    "Serial",
                    "Safe working load",
                    "Inspected until",
                    "Stands",
                ],
                day.equipment
                    .iter()
                    .map(|one| {
                        let load = one
                            .working_load
                            .map(|load| words::both(Quantity::Force, load));
                        vec![
                            one.name.clone(),
                            one.serial.clone(),
                            load.unwrap_or_else(|| "not stated".into()),
                            one.inspected_until.map(words::day).unwrap_or_default(),
                            match one.state {
                                EquipmentState::Ready => "ready",
                                EquipmentState::Uninspected => "NOT INSPECTED",
                                EquipmentState::Quarantined => "IN QUARANTINE",
                            }
                            .to_owned(),
                        ]
                    })
                    .collect(),
            ),
            table(
                "Marks for the day",
                &["As", "Stands", "By", "Signed", "Received", "Device"],
                day.marks.iter().map(|one| self.mark(one)).collect(),
            ),
            table(
                "Goes and takes",
                &["Take", "Go called", "By", "Go stood", "Ended", "Seen"],
                takes
                    .iter()
                    .take(NEWEST)
                    .map(|one| {
                        let stood = one.judged.as_ref().map(|judged| judged.stood);
                        let ended = one.outcome.as_ref();
                        vec![
                            one.number.to_string(),
                            self.at(one.called_at),
                            self.name(&one.called_by),
                            match stood {
                                Some(true) => "yes",
                                Some(false) => "NO",
                                None => "not known",
                            }
                            .to_owned(),
                            ended.map_or("open".into(), |one| result(one.result).to_owned()),
                            ended.map(|one| one.note.clone()).unwrap_or_default(),
                        ]
                    })
                    .collect(),
            ),
            table(
                "The medic's looks",
                &["After", "Who", "Fit", "When", "By"],
                log.looks
                    .iter()
                    .rev()
                    .filter(|one| one.gag == self.case.plan.gag)
                    .take(NEWEST)
                    .map(|one| {
                        vec![
                            number(one.take),
                            self.name(&one.person),
                            match one.fitness {
                                Fitness::Fit => "fit",
                                Fitness::Limits => "fit within limits",
                                Fitness::Unfit => "NOT FIT",
                            }
                            .to_owned(),
                            self.at(one.at),
                            self.name(&one.by),
                        ]
                    })
                    .collect(),
            ),
            table(
                "Stood down",
                &["Who", "From", "Until", "By", "Back"],
                log.stand_downs
                    .iter()
                    .rev()
                    .map(|one| {
                        let until = one.until.map(|at| self.at(at));
                        let back = one.returned.as_ref().map(|one| self.at(one.at));
                        vec![
                            self.name(&one.person),
                            self.at(one.from),
                            until.unwrap_or_else(|| "further notice".into()),
                            self.name(&one.by),
                            back.unwrap_or_else(|| "not yet".into()),
                        ]
                    })
                    .collect(),
            ),
            table(
                "Near misses and incidents",
                &[
                    "Kind",
                    "When",
                    "Reported by",
                    "What happened",
                    "Not told yet",
                    "Done about it",
                ],
                log.incidents
                    .iter()
                    .rev()
                    .map(|one| {
                        let kind = match one.kind {
                            IncidentKind::NearMiss => "Near miss",
                            IncidentKind::Incident => "Incident",
                        };
                        let untold: Vec<String> = untold(one, &self.case.policy)
                            .iter()
                            .map(|who| who.replace('_', " "))
                            .collect();
                        let done: Vec<String> = one
                            .closings
                            .iter()
                            .map(|one| format!("{}: {}", words::named(&one.role), one.action))
                            .collect();
                        vec![
                            kind.to_owned(),
                            self.at(one.at),
                            self.name(&one.by),
                            one.what.clone(),
                            untold.join(", "),
                            if done.is_empty() {
                                "nothing yet".into()
                            } else {
                                done.join("\n")
                            },
                        ]
                    })
                    .collect(),
            ),
        ]
        .into_iter()
        .flatten()
        .collect()
    }

    /// A mark by what its own statement says, with both clocks.
    fn mark(&self, one: &RoleStanding) -> Vec<String> {
        let made = self.case.day.signoffs.iter().find_map(|signoff| {
            let statement = day_mark::read_unverified(&signoff.jws).ok()?;
            (Some(statement.id) == one.signoff).then_some((signoff, statement))
        });
        let state = words::role_state(one.state);
        let state = if one.state == RoleState::Standing {
            state.to_owned()
        } else {
            state.to_uppercase()
        };
        let Some((signoff, statement)) = made else {
            let empty = [const { String::new() }; 4];
            return [one.title.clone(), state]
                .into_iter()
                .chain(empty)
                .collect();
        };
        let mut devices = self.case.devices.iter();
        let device = devices.find(|device| device.id == statement.device);
        vec![
            one.title.clone(),
            state,
            self.signed_by(one, &statement),
            self.at(statement.signed_at),
            self.at(signoff.received_at),
            device.map(|device| device.name.clone()).unwrap_or_default(),
        ]
    }

    fn signed_by(&self, one: &RoleStanding, statement: &DayStatement) -> String {
        let mut told = self.name(&statement.signer);
        if let Some(holder) = &one.signed_for {
            told = format!("{told}, for {}", self.name(holder));
        }
        match &statement.ink {
            Some(ink) => format!("{told}, in ink, seen by {}", self.name(&ink.witness)),
            None => told,
        }
    }
}

fn go(judged: &Clearance) -> String {
    let go = &judged.go;
    match &go.open {
        Some(open) => format!("take {} is open", open.number),
        None if go.may => format!("may be called for take {}", go.next),
        None => format!("may NOT be called for take {}", go.next),
    }
}

fn result(result: TakeResult) -> &'static str {
    match result {
        TakeResult::Good => "good",
        TakeResult::NotGood => "not good",
        TakeResult::Stopped => "stopped before the action",
    }
}

fn reading(state: ReadingState) -> &'static str {
    match state {
        ReadingState::Good => "good",
        ReadingState::Old => "TOO OLD",
        ReadingState::Missing => "NOT READ",
        ReadingState::Outside => "OUTSIDE",
    }
}

fn part(title: &str, content: Vec<Content>) -> Part {
    Part {
        title: title.into(),
        content,
        ..Part::default()
    }
}

fn table(title: &str, columns: &[&str], rows: Vec<Vec<String>>) -> Option<Part> {
    let table = Content::Table {
        heading: String::new(),
        columns: columns.iter().map(|one| (*one).to_owned()).collect(),
        rows,
        note: String::new(),
    };
    match &table {
        Content::Table { rows, .. } if rows.is_empty() => None,
        _ => Some(part(title, vec![table])),
    }
}
