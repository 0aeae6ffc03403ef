//! Plays a day of the invented production, again by running the very commands that people run on it:
//! the register, the briefing, marks, a go and what comes of it.

use std::collections::BTreeSet;

use gagwright_casting::{PersonId, roster::RosterTable};
use gagwright_clearance::{
    GagId, RecordId, Role, RoleState,
    case::{Fitness, IncidentKind, RegisteredItem, TakeResult},
    day_mark,
};
use gagwright_store::{Connection, day_records, day_records::Kind};
use jiff::{SignedDuration, tz::Offset};
use serde::Deserialize;

use super::{
    ROSTER,
    script::{GagScript, Step},
    stage::Stage,
};
use crate::commands::{
    CommandError,
    on_the_day::{
        BackInUse, NewBriefing, NewDebrief, NewGo, NewIncident, NewLook, NewOutcome, NewShockLoad,
        NewStandDown, NewTold, PutItem, briefings, debriefs, equipment, incidents, marks,
        stand_downs, takes,
    },
    people,
};

/// One thing that happens on the day.
#[derive(Clone, Debug, Deserialize)]
#[serde(tag = "do", rename_all = "snake_case", deny_unknown_fields)]
pub(crate) enum DayStep {
    /// Enters the plan's equipment in the register, as the plan names it.
    Register { by: String },
    /// Holds the briefing where the plan says.
    Brief {
        by: String,
        attended: Vec<String>,
        points: String,
    },
    /// Something that may happen on any day, this one too.
    Plan { step: Step },
    /// Has everyone sign the day who must and has not.
    SignDay {
        #[serde(default)]
        except: BTreeSet<Role>,
    },
    /// Calls the go for the next take.
    Go { by: String },
    /// Says how the take ended.
    End {
        by: String,
        result: TakeResult,
        note: String,
    },
    /// The medic's look at one performer, after the last take.
    Look {
        by: String,
        person: String,
        fitness: Fitness,
        #[serde(default)]
        head_impact: bool,
    },
    /// A piece of equipment took a shock load.
    Shock {
        by: String,
        serial: String,
        what: String,
    },
    /// It was inspected and is back in use.
    Back {
        by: String,
        serial: String,
        found: String,
        good_for_days: i32,
    },
    /// Somebody does not perform for the hours given.
    StandDown {
        by: String,
        person: String,
        hours: i64,
    },
    /// Reports a near miss, and who was told of it.
    NearMiss {
        by: String,
        what: String,
        told: Vec<String>,
    },
    /// What was said afterwards, where the briefing was.
    Debrief {
        by: String,
        attended: Vec<String>,
        differently: String,
        next_time: String,
    },
    /// Time passes.
    Wait { minutes: i64 },
}

impl Stage {
    /// Adds a gag and plays whatever happens to it.
    pub(crate) fn put_on(
        &mut self,
        conn: &mut Connection,
        by: &str,
        gag: &GagScript,
    ) -> Result<(), CommandError> {
        if gag.today.is_empty() {
            let plan = self.create(conn, by, gag)?;
            return self.play(conn, plan.gag, &gag.then);
        }
        let today = Offset::UTC.to_datetime(self.now).date();
        let cast = gag.slots.iter().filter_map(|slot| slot.person.as_deref());
        self.ask_for_today(conn, by, cast, today)?;
        let mut gag = gag.clone();
        gag.facets.setting.day = Some(today);
        gag.facets.setting.call = Some(self.now);
        let plan = self.create(conn, by, &gag)?;
        self.play(conn, plan.gag, &gag.then)?;
        self.play_day(conn, plan.gag, &gag.today)
    }

    /// The roster has people free for the shooting weeks; these come in today as well.
    fn ask_for_today<'a>(
        &mut self,
        conn: &mut Connection,
        by: &str,
        cast: impl Iterator<Item = &'a str>,
        today: jiff::civil::Date,
    ) -> Result<(), CommandError> {
        let rows = ROSTER[3].1;
        let mut table: Vec<String> = rows.lines().take(1).map(str::to_owned).collect();
        for code in cast {
            let of = format!("{code},");
            let known = rows.lines().filter(|row| row.starts_with(&of));
            table.extend(known.map(str::to_owned));
            table.push(format!("{code},{today},{today},yes"));
        }
        let actor = self.by_code(conn, by)?;
        let (now, text) = (self.tick(), table.join("\n"));
        let kind = RosterTable::Availability;
        people::import(conn, &actor, now, kind, text.as_bytes(), &mut *self.entropy)?;
        Ok(())
    }

    /// Plays a gag's day.
    pub(crate) fn play_day(
        &mut self,
        conn: &mut Connection,
        gag: GagId,
        steps: &[DayStep],
    ) -> Result<(), CommandError> {
        for step in steps {
            self.on_the_day(conn, gag, step)?;
        }
        Ok(())
    }

    fn on_the_day(
        &mut self,
        conn: &mut Connection,
        gag: GagId,
        step: &DayStep,
    ) -> Result<(), CommandError> {
        match step {
            DayStep::Register { by } => self.register(conn, gag, by),
            DayStep::Brief {
                by,
                attended,
                points,
            } => self.brief(conn, gag, by, attended, points),
            DayStep::Plan { step } => self.play(conn, gag, std::slice::from_ref(step)),
            DayStep::SignDay { except } => self.sign_day(conn, gag, except),
            DayStep::Go { by } => self.go(conn, gag, by),
            DayStep::End { by, result, note } => {
                let actor = self.by_code(conn, by)?;
                let (id, now) = (self.last_take(conn, gag)?, self.tick());
                let new = NewOutcome {
                    result: *result,
                    note: note.clone(),
                    at: now,
                };
                takes::end(conn, &actor, now, gag, id, new, &mut *self.entropy).map(drop)
            }
            DayStep::Look {
                by,
                person,
                fitness,
                head_impact,
            } => {
                let actor = self.by_code(conn, by)?;
                let take = self.last_take(conn, gag)?;
                let person = self.person(person)?;
                let (_, answer) = self.judge(conn, gag)?;
                let (id, now) = (RecordId(self.mint()), self.tick());
                let new = NewLook {
                    id,
                    take: Some(take),
                    person,
                    day: answer.day.day,
                    fitness: *fitness,
                    head_impact: *head_impact,
                    at: now,
                };
                takes::look(conn, &actor, now, gag, new, &mut *self.entropy).map(drop)
            }
            DayStep::Shock { by, serial, what } => {
                let actor = self.by_code(conn, by)?;
                let item = self.item(conn, serial)?;
                let (id, now) = (RecordId(self.mint()), self.tick());
                let new = NewShockLoad {
                    id,
                    what: what.clone(),
                    at: now,
                };
                equipment::shock_load(conn, &actor, now, item.id, new, &mut *self.entropy).map(drop)
            }
            DayStep::Back {
                by,
                serial,
                found,
                good_for_days,
            } => {
                let actor = self.by_code(conn, by)?;
                let item = self.item(conn, serial)?;
                let now = self.tick();
                let new = BackInUse {
                    found: found.clone(),
                    inspected_until: Offset::UTC
                        .to_datetime(now)
                        .date()
                        .saturating_add(jiff::Span::new().days(*good_for_days)),
                    at: now,
                };
                equipment::release(conn, &actor, now, item.id, new, &mut *self.entropy).map(drop)
            }
            DayStep::StandDown { by, person, hours } => {
                let actor = self.by_code(conn, by)?;
                let person = self.person(person)?;
                let (id, now) = (RecordId(self.mint()), self.tick());
                let new = NewStandDown {
                    id,
                    person,
                    from: now,
                    until: now.checked_add(SignedDuration::from_hours(*hours)).ok(),
                };
                stand_downs::stand_down(conn, &actor, now, new).map(drop)
            }
            DayStep::NearMiss { by, what, told } => {
                let actor = self.by_code(conn, by)?;
                let (id, now) = (RecordId(self.mint()), self.tick());
                let new = NewIncident {
                    id,
                    kind: IncidentKind::NearMiss,
                    gag: Some(gag),
                    at: now,
                    what: what.clone(),
                };
                incidents::report(conn, &actor, now, new, &mut *self.entropy)?;
                for who in told {
                    let now = self.tick();
                    let new = NewTold {
                        who: who.clone(),
                        at: now,
                    };
                    incidents::tell(conn, &actor, now, id, new, &mut *self.entropy)?;
                }
                Ok(())
            }
            DayStep::Debrief {
                by,
                attended,
                differently,
                next_time,
            } => self.debrief(conn, gag, by, attended, (differently, next_time)),
            DayStep::Wait { minutes } => {
                let later = self.now.checked_add(SignedDuration::from_mins(*minutes));
                self.now = later.unwrap_or(self.now);
                Ok(())
            }
        }
    }

    /// Pieces that are on the register already stay as they are.
    fn register(
        &mut self,
        conn: &mut Connection,
        gag: GagId,
        by: &str,
    ) -> Result<(), CommandError> {
        let actor = self.by_code(conn, by)?;
        let plan = gagwright_store::plans::current(conn, gag)?;
        for one in plan.facets.rigging.equipment {
            if self.item(conn, &one.serial).is_ok() {
                continue;
            }
            let (id, now) = (RecordId(self.mint()), self.tick());
            let new = PutItem {
                id,
                serial: one.serial,
                name: one.name,
                working_load: one.working_load,
                rating: String::new(),
                inspected_until: one.inspected_until,
            };
            equipment::put(conn, &actor, now, new, &mut *self.entropy)?;
        }
        Ok(())
    }

    fn item(&self, conn: &mut Connection, serial: &str) -> Result<RegisteredItem, CommandError> {
        let all: Vec<(_, RegisteredItem)> =
            day_records::list(conn, self.production, Kind::Equipment)?;
        let mut items = all.into_iter().map(|(_, item)| item);
        items
            .find(|item| item.serial == serial)
            .ok_or_else(|| CommandError::NotFound {
                what: "piece of equipment",
                id: serial.to_owned(),
            })
    }

    fn brief(
        &mut self,
        conn: &mut Connection,
        gag: GagId,
        by: &str,
        attended: &[String],
        points: &str,
    ) -> Result<(), CommandError> {
        let actor = self.by_code(conn, by)?;
        let there = attended.iter().map(|code| self.person(code));
        let attended = there.collect::<Result<Vec<PersonId>, _>>()?;
        let plan = gagwright_store::plans::current(conn, gag)?;
        let (id, now) = (RecordId(self.mint()), self.tick());
        let setting = plan.facets.setting;
        let new = NewBriefing {
            id,
            day: setting
                .day
                .unwrap_or_else(|| Offset::UTC.to_datetime(now).date()),
            place: setting.location,
            revision: plan.revision,
            at: now,
            attended,
            points: points.to_owned(),
        };
        briefings::brief(conn, &actor, now, gag, new, &mut *self.entropy).map(drop)
    }

    fn debrief(
        &mut self,
        conn: &mut Connection,
        gag: GagId,
        by: &str,
        attended: &[String],
        (differently, next_time): (&str, &str),
    ) -> Result<(), CommandError> {
        let actor = self.by_code(conn, by)?;
        let there = attended.iter().map(|code| self.person(code));
        let attended = there.collect::<Result<Vec<PersonId>, _>>()?;
        let (case, answer) = self.judge(conn, gag)?;
        let (id, now) = (RecordId(self.mint()), self.tick());
        let new = NewDebrief {
            id,
            day: answer.day.day,
            place: answer.day.place,
            revision: case.plan.revision,
            at: now,
            led_by: actor.person,
            attended,
            as_planned: String::new(),
            differently: differently.to_owned(),
            next_time: next_time.to_owned(),
            used: Vec::new(),
        };
        debriefs::debrief(conn, &actor, now, gag, new, &mut *self.entropy).map(drop)
    }

    /// Everyone whose mark the day wants signs it with their own device's key.
    fn sign_day(
        &mut self,
        conn: &mut Connection,
        gag: GagId,
        except: &BTreeSet<Role>,
    ) -> Result<(), CommandError> {
        let (case, answer) = self.judge(conn, gag)?;
        for mark in answer.day.marks {
            if mark.state == RoleState::Standing || except.contains(&mark.role) {
                continue;
            }
            let signer = self.signer(&case, mark.role, mark.slot)?;
            self.has_device(conn, signer)?;
            let actor = self.actor(conn, signer)?;
            let id = self.mint();
            let now = self.tick();
            let drafted = marks::draft(conn, &actor, now, gag, mark.role, mark.slot, None)?;
            let (device, key) = self.key(signer)?;
            let mut statement = drafted.statement;
            statement.id = gagwright_clearance::SignOffId(id);
            statement.device = *device;
            statement.signed_at = now;
            let jws = day_mark::sign(&statement, key)?;
            marks::submit(conn, &actor, now, gag, &jws)?;
        }
        Ok(())
    }

    fn go(&mut self, conn: &mut Connection, gag: GagId, by: &str) -> Result<(), CommandError> {
        let actor = self.by_code(conn, by)?;
        let (_, answer) = self.judge(conn, gag)?;
        let (id, now) = (RecordId(self.mint()), self.tick());
        let new = NewGo {
            id,
            number: answer.go.next,
            at: now,
            revision: answer.revision,
            plan_digest: answer.plan_digest,
            day: answer.day.day,
            place: answer.day.place,
        };
        takes::go(conn, &actor, now, gag, new, &mut *self.entropy).map(drop)
    }

    fn last_take(&self, conn: &mut Connection, gag: GagId) -> Result<RecordId, CommandError> {
        let (case, _) = self.judge(conn, gag)?;
        let last = case.day.takes.iter().max_by_key(|one| one.number);
        last.map(|one| one.id)
            .ok_or_else(|| CommandError::NotFound {
                what: "take",
                id: gag.to_string(),
            })
    }
}
