//! The same gag on its day, told in a few words: who was briefed, what was read, who signed the day, what
//! was called and how it ended.

use gagwright_casting::PersonId;
use gagwright_mechanics::Facet;
use jiff::civil::{Date, date};
use uuid::Uuid;

use crate::{
    canonical::{facet_hashes, plan_digest},
    case::{
        Briefing, DayBlockKind, DaySignOff, Fitness, Look, ReadingKind, RegisteredItem,
        RoleStanding, RoleState, ShockLoad, Take, TakeOutcome, TakeResult,
    },
    day_mark::{self, DayStatement},
    facets::{Band, Equipment},
    ids::{RecordId, SignOffId},
    judge::BRIEFED,
    policy::Role,
    scene::{Scene, device_of, key_of, person_of, slot, time},
    signoff::SignOffError,
};

/// The day of the gag.
pub const DAY: Date = date(2026, 3, 14);

impl Scene {
    /// Cleared, on the morning of its day, with a harness on the register and a wind band; nothing of the
    /// day is done yet.
    pub fn morning() -> Scene {
        let mut scene = Scene::new();
        scene.revise(|facets| {
            facets.setting.location = "Silo yard".to_owned();
            facets.rigging.equipment = vec![Equipment {
                name: "harness".to_owned(),
                serial: "H-12".to_owned(),
                working_load: Some(1500.0),
                inspected_until: Some(date(2026, 6, 30)),
            }];
            facets.conditions.bands = vec![Band {
                reading: ReadingKind::Wind,
                min: None,
                max: Some(6.0),
                max_age_minutes: 20,
            }];
        });
        scene.rehearsed("bag").rehearsed("bag").rehearsed("half");
        scene.everyone_signs();
        scene.case.day.equipment = vec![RegisteredItem {
            id: RecordId(Uuid::from_u128(77)),
            serial: "H-12".to_owned(),
            name: "harness".to_owned(),
            working_load: Some(1500.0),
            rating: String::new(),
            inspected_until: None,
            quarantined: None,
            shock_loads: Vec::new(),
        }];
        scene.now = time("2026-03-14T07:00:00Z");
        scene
    }

    /// As [`Scene::morning`], and everything of the day is done.
    pub fn ready() -> Scene {
        let mut scene = Scene::morning();
        scene.briefed();
        scene.reading(ReadingKind::Wind, 3.0);
        scene.everyone_signs_the_day();
        scene
    }

    fn record_id(&mut self) -> RecordId {
        RecordId(Uuid::from_u128(11 << 64 | self.mint()))
    }

    pub fn briefed(&mut self) -> &mut Scene {
        let everyone: Vec<PersonId> = Role::ALL
            .into_iter()
            .filter(|role| *role != Role::Observer)
            .map(person_of)
            .collect();
        self.briefed_at(DAY, "Silo yard", everyone)
    }

    pub fn briefed_at(&mut self, day: Date, place: &str, attended: Vec<PersonId>) -> &mut Scene {
        let mut facets = facet_hashes(&self.case.plan.facets).unwrap();
        facets.retain(|facet: &Facet, _| BRIEFED.contains(facet));
        let id = self.record_id();
        self.case.day.briefings.push(Briefing {
            id,
            day,
            place: place.to_owned(),
            revision: self.case.plan.revision,
            facets,
            at: self.now,
            by: person_of(Role::FirstAd),
            attended,
            points: String::new(),
        });
        self
    }

    pub fn day_statement(&mut self, role: Role) -> DayStatement {
        let signer = person_of(role);
        let place = (role == Role::Performer).then(slot);
        let id = SignOffId(self.record_id().0);
        let prepared = day_mark::prepare(&self.case, role, place, signer, id, self.now).unwrap();
        DayStatement {
            device: device_of(signer),
            ..prepared.statement
        }
    }

    /// Signs with the signer's own key, past the door, and records it.
    pub fn hand_in_day(&mut self, statement: &DayStatement) -> Result<(), SignOffError> {
        let jws = day_mark::sign(statement, &key_of(statement.hand()))?;
        day_mark::accept(&jws, &self.case, self.now)?;
        self.record_day(jws);
        Ok(())
    }

    /// Records without asking the door.
    pub fn record_day(&mut self, jws: String) {
        let leaf = self.mint() as u64;
        let received_at = self.now;
        self.case.day.signoffs.push(DaySignOff {
            jws,
            received_at,
            leaf,
        });
    }

    pub fn signs_the_day(&mut self, role: Role) -> &mut Scene {
        let statement = self.day_statement(role);
        self.hand_in_day(&statement).unwrap();
        self
    }

    pub fn everyone_signs_the_day(&mut self) -> &mut Scene {
        for mark in self.judged().day.marks {
            if mark.state != RoleState::Standing {
                self.signs_the_day(mark.role);
            }
        }
        self
    }

    pub fn day_mark(&self, role: Role) -> RoleStanding {
        let marks = self.judged().day.marks;
        let found = marks.into_iter().find(|one| one.role == role);
        found.unwrap_or_else(|| panic!("{} is not asked for the day", role.name()))
    }

    /// The kinds of what stands against a go, each once.
    pub fn why_not(&self) -> Vec<DayBlockKind> {
        let why_not = self.judged().go.why_not;
        let mut kinds: Vec<_> = why_not.iter().map(|one| one.kind).collect();
        kinds.dedup();
        kinds
    }

    /// Calls a go, whether or not it may be called.
    pub fn calls_go(&mut self) -> RecordId {
        let judged = self.judged();
        let id = self.record_id();
        self.case.day.takes.push(Take {
            id,
            number: judged.go.next,
            called_at: self.now,
            called_by: person_of(Role::Coordinator),
            revision: self.case.plan.revision,
            plan_digest: plan_digest(&self.case.plan.facets).unwrap(),
            day: judged.day.day,
            place: judged.day.place,
            cast: day_mark::cast(&self.case),
            judged: None,
            outcome: None,
        });
        id
    }

    pub fn ends(&mut self, take: RecordId, result: TakeResult) -> &mut Scene {
        self.mint();
        let at = self.now;
        let take = self.case.day.takes.iter_mut().find(|one| one.id == take);
        take.unwrap().outcome = Some(TakeOutcome {
            result,
            note: String::new(),
            at,
            by: person_of(Role::FirstAd),
        });
        self
    }

    pub fn looked(&mut self, take: Option<RecordId>, fitness: Fitness, head: bool) -> &mut Scene {
        let id = self.record_id();
        self.case.day.looks.push(Look {
            id,
            gag: self.case.plan.gag,
            take,
            person: person_of(Role::Performer),
            day: DAY,
            fitness,
            head_impact: head,
            at: self.now,
            by: person_of(Role::Medic),
        });
        self
    }

    pub fn shocked(&mut self) -> &mut Scene {
        let id = self.record_id();
        let at = self.now;
        self.case.day.equipment[0].shock_loads.push(ShockLoad {
            id,
            at,
            what: "the line snatched".to_owned(),
            by: person_of(Role::Rigging),
        });
        self
    }
}
