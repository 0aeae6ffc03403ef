//! What a server would hand to the judge after a list of happenings: records, and no opinion of its own.

use std::collections::BTreeMap;

use gagwright_clearance::{
    Case, Delegation, Hold, HoldId, Plan, Policy, Reading, RecordId, RehearsalRun, Resolution,
    SignOff, SignOffId,
    canonical::facet_hashes,
    case::{
        Agreement, Briefing, Closing, DayLog, DaySignOff, Incident, Look, ReadingKind,
        RegisteredItem, Returned, ShockLoad, StandDown, Take, TakeElsewhere, TakeOutcome, Told,
    },
    judge::{BRIEFED, REHEARSED, is_open, missing_agreements},
    plan::FacetHashes,
    signoff::ConditionMet,
};
use gagwright_mechanics::Facet;

use crate::{
    clock,
    contents::{Content, PLACES, SERIALS, slot},
    ink::{self, Signing},
    people::{self, Who, id, person},
    story::{Happening, Place, Scope, What},
};

pub fn record(place: Place) -> RecordId {
    RecordId(id(7, place as u128))
}

/// The server, so far.
#[derive(Clone)]
pub struct World {
    pub case: Case,
    heard: usize,
    /// Where in the case each mark of the plan is.
    marks: BTreeMap<Place, (usize, SignOffId)>,
}

fn gag_of(scope: Scope) -> Option<gagwright_casting::GagId> {
    match scope {
        Scope::This => Some(ink::gag()),
        Scope::Another => Some(gagwright_casting::GagId(id(3, 99))),
        Scope::Everything => None,
    }
}

fn only(hashes: &FacetHashes, facets: &[Facet]) -> FacetHashes {
    let mut hashes = hashes.clone();
    hashes.retain(|facet, _| facets.contains(facet));
    hashes
}

impl World {
    pub fn new(contents: &[Content], policy: &Policy) -> World {
        let item = |serial: &str| RegisteredItem {
            id: RecordId(id(10, serial.as_bytes()[3].into())),
            serial: serial.to_owned(),
            name: "harness".to_owned(),
            working_load: None,
            rating: String::new(),
            inspected_until: None,
            quarantined: None,
            shock_loads: Vec::new(),
        };
        World {
            case: Case {
                production: ink::production(),
                plan: Plan {
                    gag: ink::gag(),
                    revision: 1,
                    technique: "test-fall".to_owned(),
                    facets: contents[0].facets.clone(),
                    policy: policy.version.clone(),
                    author: person(0),
                    written_at: clock::moment(0),
                    note: String::new(),
                },
                signoffs: Vec::new(),
                holds: Vec::new(),
                readings: Vec::new(),
                runs: Vec::new(),
                people: people::roster(clock::date(300)),
                members: people::members(),
                devices: people::devices(),
                policy: policy.clone(),
                day: DayLog {
                    equipment: SERIALS.map(item).into(),
                    ..DayLog::default()
                },
                earlier: Vec::new(),
                delegations: Vec::new(),
                resolutions: Vec::new(),
            },
            heard: 0,
            marks: BTreeMap::new(),
        }
    }

    pub fn hear(&mut self, happening: &Happening, signing: &Signing<'_>) {
        let place = self.heard;
        self.heard += 1;
        let at = clock::moment(happening.at);
        let (case, contents) = (&mut self.case, signing.contents);
        match &happening.what {
            What::Revise(content) => {
                case.plan.facets = contents[*content].facets.clone();
                case.plan.revision += 1;
                case.plan.written_at = at;
            }
            What::Sign(mark) => {
                let id = ink::mark_id(mark);
                self.marks.insert(place, (case.signoffs.len(), id));
                case.signoffs.push(SignOff {
                    jws: signing.jws(mark),
                    received_at: at,
                    leaf: place as u64,
                    met: Vec::new(),
                    openings: Vec::new(),
                });
            }
            What::SignDay(mark) => case.day.signoffs.push(DaySignOff {
                jws: signing.jws(mark),
                received_at: at,
                leaf: place as u64,
            }),
            What::Meet { mark, by } => {
                let found = &mut case.signoffs[self.marks[mark].0];
                found.met.push(ConditionMet {
                    condition: ink::condition(),
                    by: person(*by),
                    at,
                });
            }
            // A server takes these only from somebody who holds the hat then.
            What::Resolve { by, role, .. }
            | What::Agree { by, role, .. }
            | What::Close { by, role, .. }
                if !holds_hat(case, *by, *role) => {}
            What::Resolve { mark, by, role } => {
                let signoff = self.marks[mark].1;
                case.resolutions.push(Resolution {
                    id: record(place),
                    signoff,
                    by: person(*by),
                    role: *role,
                    text: "talked through".to_owned(),
                    at,
                });
            }
            What::Hold { hazard, gag } => case.holds.push(Hold {
                id: HoldId(id(8, place as u128)),
                gag: gag_of(*gag),
                raised_at: at,
                raised_by: None,
                reason: String::new(),
                hazard: *hazard,
                agreements: Vec::new(),
                released_at: None,
            }),
            What::Agree {
                hold,
                role,
                by,
                said,
            } => {
                let wanted = HoldId(id(8, *hold as u128));
                let mut holds = case.holds.iter_mut();
                let hold = holds.find(|one| one.id == wanted).unwrap();
                if hold.released_at.is_none() {
                    hold.agreements.push(Agreement {
                        role: *role,
                        person: person(*by),
                        at,
                        cause: if *said { "seen to" } else { " " }.to_owned(),
                    });
                    let open = missing_agreements(hold, &case.policy, &case.members);
                    hold.released_at = open.is_empty().then_some(at);
                }
            }
            What::Read { value, at } => case.readings.push(Reading {
                id: record(place),
                kind: ReadingKind::Wind,
                value: *value,
                at: clock::moment(*at),
                by: person(2),
                place: String::new(),
            }),
            What::Run {
                rung,
                good,
                content,
            } => case.runs.push(RehearsalRun {
                id: record(place),
                rung: (*rung).to_owned(),
                facets: only(&contents[*content].hashes, &REHEARSED),
                good: *good,
                note: String::new(),
                at,
                by: person(0),
            }),
            What::Hat { by, role, on } => {
                let roles = &mut case.members[*by].roles;
                let _ = if *on {
                    roles.insert(*role)
                } else {
                    roles.remove(role)
                };
            }
            What::Revoke(who) => {
                let revoked = &mut case.devices[*who].revoked_at;
                *revoked = revoked.or(Some(at));
            }
            What::Paper { who, paper } => {
                case.members[*who].certificates =
                    people::certificates(people::COMPANY[*who].2, *paper);
            }
            What::Fit { who, until } => {
                let mut people = case.people.iter_mut();
                let found = people.find(|one| one.id == person(*who)).unwrap();
                found.medically_clear_until = until.map(clock::date);
            }
            What::Depute {
                from,
                to,
                role,
                gags,
                starts,
                until,
            } => case.delegations.push(Delegation {
                id: record(place),
                from: person(*from),
                to: person(*to),
                role: *role,
                gags: Vec::from_iter(gag_of(*gags)),
                starts: clock::moment(*starts),
                until: clock::moment(*until),
                limits: String::new(),
                made_at: at,
                ended_at: None,
            }),
            What::EndDeputy(which) => {
                let mut all = case.delegations.iter_mut();
                all.find(|one| one.id == record(*which)).unwrap().ended_at = Some(at);
            }
            What::Shock(serial) => case.day.equipment[*serial].shocked(ShockLoad {
                id: record(place),
                at,
                what: "the line snatched".to_owned(),
                by: person(2),
            }),
            What::SetAside(serial) => {
                let reason = "a worn buckle".to_owned();
                case.day.equipment[*serial].set_aside(at, reason, person(2));
            }
            What::Inspect { serial, until, at } => {
                let item = &mut case.day.equipment[*serial];
                if item.quarantined.is_none() || item.taken_back(clock::moment(*at)) {
                    item.inspected_until = Some(clock::date(*until));
                }
            }
            other => self.hear_of_the_day(place, happening.at, other, contents),
        }
    }

    fn hear_of_the_day(&mut self, place: Place, minute: i64, what: &What, contents: &[Content]) {
        let at = clock::moment(minute);
        let case = &mut self.case;
        match what {
            What::Brief {
                day,
                place: where_,
                content,
                absent,
            } => {
                let there = (0..people::COMPANY.len()).filter(|who| Some(*who) != *absent);
                case.day.briefings.push(Briefing {
                    id: record(place),
                    day: clock::date(*day),
                    place: PLACES[*where_].to_owned(),
                    revision: case.plan.revision,
                    facets: only(&contents[*content].hashes, &BRIEFED),
                    at,
                    by: person(4),
                    attended: there.map(person).collect(),
                    points: String::new(),
                });
            }
            What::StandDown { who, until } => case.day.stand_downs.push(StandDown {
                id: record(place),
                person: person(*who),
                from: at,
                until: until.map(clock::moment),
                by: person(*who),
                returned: None,
                after_look: false,
            }),
            What::KeptOff { who, until } => case.day.stand_downs.push(StandDown {
                id: record(place),
                person: person(*who),
                from: at,
                until: Some(clock::moment(*until)),
                by: person(3),
                returned: None,
                after_look: true,
            }),
            What::Return(which) => {
                let mut all = case.day.stand_downs.iter_mut();
                let found = all.find(|one| one.id == record(*which)).unwrap();
                found.returned = Some(Returned { at, by: person(3) });
            }
            What::Look {
                who,
                take,
                day,
                fitness,
                head,
            } => case.day.looks.push(Look {
                id: record(place),
                gag: ink::gag(),
                take: take.map(record),
                person: person(*who),
                day: clock::date(*day),
                fitness: *fitness,
                head_impact: *head,
                at,
                by: person(3),
            }),
            What::Incident { kind, gag } => case.day.incidents.push(Incident {
                id: record(place),
                kind: *kind,
                gag: gag_of(*gag),
                at,
                by: person(4),
                what: String::new(),
                told: Vec::new(),
                closings: Vec::new(),
                closed_at: None,
            }),
            What::Tell { incident, .. } | What::Close { incident, .. } => {
                let mut all = case.day.incidents.iter_mut();
                let found = all.find(|one| one.id == record(*incident)).unwrap();
                match what {
                    What::Tell { who, .. } => found.told.push(Told {
                        who: (*who).to_owned(),
                        at,
                        by: person(4),
                    }),
                    What::Close { role, by, .. } => found.closings.push(Closing {
                        role: *role,
                        person: person(*by),
                        at,
                        action: "a second spotter".to_owned(),
                    }),
                    _ => {}
                }
                if !is_open(found, &case.policy, &case.members) {
                    found.closed_at = found.closed_at.or(Some(at));
                }
            }
            What::Go {
                content,
                revision,
                day,
                place: where_,
            } => {
                let content = &contents[*content];
                let cast = content.slots.iter();
                let number = case.day.takes.len() as u32 + 1;
                case.day.takes.push(Take {
                    id: record(place),
                    number,
                    called_at: at,
                    called_by: person(0),
                    revision: *revision,
                    plan_digest: content.digest.clone(),
                    day: clock::date(*day),
                    place: PLACES[*where_].to_owned(),
                    cast: cast
                        .filter_map(|(number, who)| Some((slot(*number), person((*who)?))))
                        .collect(),
                    judged: None,
                    outcome: None,
                });
            }
            What::End { take, result } => {
                let mut all = case.day.takes.iter_mut();
                let found = all.find(|one| one.id == record(*take)).unwrap();
                found.outcome = Some(TakeOutcome {
                    result: *result,
                    note: String::new(),
                    at,
                    by: person(4),
                });
            }
            What::GoElsewhere { who, serial, look } => case.day.elsewhere.push(TakeElsewhere {
                gag: gagwright_casting::GagId(id(3, 99)),
                code: "G99".to_owned(),
                take: record(place),
                number: 1,
                day: clock::date(clock::day_of(minute)),
                called_at: at,
                ended_at: None,
                people: vec![person(*who)],
                serials: vec![SERIALS[*serial].to_owned()],
                look: *look,
            }),
            What::EndElsewhere { take, performed } => {
                let mut all = case.day.elsewhere.iter_mut();
                let found = all.find(|one| one.take == record(*take)).unwrap();
                found.ended_at = Some(at);
                found.serials.clear();
                found.look &= *performed;
            }
            _ => unreachable!("heard above"),
        }
    }
}

fn holds_hat(case: &Case, who: Who, role: gagwright_clearance::Role) -> bool {
    let mut members = case.members.iter();
    members.any(|one| one.person == person(who) && one.roles.contains(&role))
}

/// The contents' hashes are what the judge makes of them anew.
#[test]
fn contents_hash_as_the_plan_does() {
    for content in crate::contents::all() {
        assert_eq!(facet_hashes(&content.facets).unwrap(), content.hashes);
    }
}
