//! Tells a history at random: here what sensible people do.

mod deputies;
mod whatever;

use gagwright_clearance::{Policy, Role, case::Fitness, plan::Hazard};

use crate::{
    chance::Chance,
    clock::{DAY, MORNING, SHOOT},
    contents::Content,
    ink::signs_day,
    people::{Who, holder},
    reference::Reference,
    story::{Happening, Mark, Place, What},
};

const ROLES: [Role; 10] = [
    Role::Coordinator,
    Role::Performer,
    Role::Rigging,
    Role::Medic,
    Role::FirstAd,
    Role::Production,
    Role::Engineer,
    Role::Effects,
    Role::Fire,
    Role::Guardian,
];

pub struct Telling<'a> {
    pub story: Vec<Happening>,
    pub now: i64,
    pub contents: &'a [Content],
    pub policy: &'a Policy,
    content: usize,
    revision: u32,
}

impl<'a> Telling<'a> {
    pub fn new(contents: &'a [Content], policy: &'a Policy) -> Telling<'a> {
        Telling {
            story: Vec::new(),
            now: MORNING,
            contents,
            policy,
            content: 0,
            revision: 1,
        }
    }

    /// Rehearsed and signed the evening before, briefed and signed for the day in the morning.
    pub fn ready(&mut self) {
        self.now = SHOOT * DAY - 10 * 60;
        self.rehearse();
        self.everyone_signs();
        self.now = MORNING - 20;
        self.brief(None);
        self.everyone_signs_the_day();
        self.now = MORNING - 5;
        self.put(What::Read {
            value: 3.0,
            at: self.now,
        });
        self.now = MORNING;
    }

    /// Rehearsed, and nothing signed.
    pub fn bare(&mut self) {
        self.now = SHOOT * DAY - 10 * 60;
        self.rehearse();
        self.now = MORNING;
    }

    fn put(&mut self, what: What) {
        self.story.push(Happening { at: self.now, what });
    }

    fn facts(&self) -> Reference<'_> {
        Reference {
            story: &self.story,
            contents: self.contents,
            policy: self.policy,
            now: self.now,
        }
    }

    fn here(&self) -> (i64, usize) {
        let (day, place) = self.facts().here();
        (day, usize::from(place == crate::contents::PLACES[1]))
    }

    /// The newest happenings of a kind, newest first, to go on from.
    fn latest(&self, wanted: fn(&What) -> bool) -> Vec<Place> {
        let all = self.story.iter().enumerate().rev();
        all.filter(|(_, one)| wanted(&one.what))
            .map(|(place, _)| place)
            .take(3)
            .collect()
    }

    fn mark(&self, role: Role, slot: Option<u8>, by: Who) -> Mark {
        Mark {
            role,
            by,
            slot,
            no: false,
            conditional: false,
            revision: self.revision,
            content: self.content,
            signed_at: self.now,
            forged: false,
            old_words: false,
            deputy: None,
            day: None,
            good_until: None,
        }
    }

    /// Every place where somebody may sign, with who would.
    fn desks(&self) -> Vec<(Role, Option<u8>, Who)> {
        let mut desks = Vec::new();
        for role in ROLES {
            if role != Role::Performer {
                desks.push((role, None, holder(role)));
            }
        }
        for (number, person) in &self.contents[self.content].slots {
            desks.extend(person.map(|who| (Role::Performer, Some(*number), who)));
        }
        desks
    }

    fn asked(&self) -> Vec<(Role, Option<u8>, Who)> {
        let asked = self.facts().asked();
        let mut desks = self.desks();
        desks.retain(|(role, slot, _)| asked.contains(&(*role, *slot)));
        desks
    }

    fn everyone_signs(&mut self) {
        for (role, slot, by) in self.asked() {
            self.put(What::Sign(self.mark(role, slot, by)));
        }
    }

    fn everyone_signs_the_day(&mut self) {
        let day = Some(self.here());
        for (role, slot, by) in self.asked() {
            if signs_day(self.policy, role) {
                let mark = self.mark(role, slot, by);
                self.put(What::SignDay(Mark { day, ..mark }));
            }
        }
    }

    fn rehearse(&mut self) {
        let content = self.content;
        for (rung, times) in self.contents[content].rungs.clone() {
            for _ in 0..times {
                self.put(What::Run {
                    rung,
                    good: true,
                    content,
                });
            }
        }
    }

    fn brief(&mut self, absent: Option<Who>) {
        let (day, place) = self.here();
        self.put(What::Brief {
            day,
            place,
            content: self.content,
            absent,
        });
    }

    fn revise(&mut self, content: usize) {
        self.put(What::Revise(content));
        self.content = content;
        self.revision += 1;
    }

    /// What a good crew does when something is not in order.
    fn mend(&mut self, chance: &mut Chance) {
        let facts = self.facts();
        let (answer, serial) = (facts.answer(), facts.plan().serial);
        let serial = usize::from(serial == crate::contents::SERIALS[1]);
        use gagwright_clearance::{BlockKind as Plan, case::DayBlockKind as Day};
        if answer.plan.contains(&Plan::Check)
            || answer.plan.contains(&Plan::Uncast)
            || answer.plan.contains(&Plan::Undated)
        {
            self.revise(0);
        }
        if answer.plan.contains(&Plan::Equipment) {
            self.put(What::Inspect {
                serial,
                until: SHOOT + 5,
                at: self.now,
            });
        }
        for hold in self.latest(|what| matches!(what, What::Hold { .. })) {
            if let What::Hold { hazard, .. } = self.story[hold].what {
                let owner = match hazard {
                    Some(Hazard::Height) => Some(Role::Rigging),
                    Some(Hazard::Charge) => Some(Role::Effects),
                    Some(_) => Some(Role::Guardian),
                    None => None,
                };
                for role in owner.into_iter().chain([Role::Coordinator]) {
                    self.put(What::Agree {
                        hold,
                        role,
                        by: holder(role),
                        said: true,
                    });
                }
            }
        }
        for incident in self
            .latest(|what| matches!(what, What::Incident { .. }))
            .into_iter()
            .take(1)
        {
            for who in crate::reference::INCIDENT {
                self.put(What::Tell { incident, who });
            }
            for role in [Role::Coordinator, Role::Production] {
                self.put(What::Close {
                    incident,
                    role,
                    by: holder(role),
                });
            }
        }
        if answer.plan.contains(&Plan::Rehearsal) {
            self.rehearse();
        }
        for (asked, state) in self.facts().answer().marks {
            let desk = self
                .desks()
                .into_iter()
                .find(|(role, slot, _)| (*role, *slot) == asked);
            if let Some((role, slot, by)) = desk
                && state != gagwright_clearance::RoleState::Standing
            {
                self.put(What::Sign(self.mark(role, slot, by)));
            }
        }
        for take in self.latest(|what| matches!(what, What::GoElsewhere { .. })) {
            let ended = |what: &What| matches!(*what, What::EndElsewhere { take: which, .. } if which == take);
            if !self.story.iter().any(|one| ended(&one.what)) {
                let performed = true;
                self.put(What::EndElsewhere { take, performed });
            }
        }
        if answer.day.contains(&Day::Look)
            && let Some(take) = self.latest(|what| matches!(what, What::Go { .. })).first()
        {
            let take = Some(*take);
            let (day, _) = self.here();
            for (_, who) in self.contents[self.content].slots.clone() {
                if let Some(who) = who {
                    self.put(What::Look {
                        who,
                        take,
                        day,
                        fitness: Fitness::Fit,
                        head: false,
                    });
                }
            }
        }
        if answer.day.contains(&Day::Briefing) || chance.one_in(4) {
            self.brief(None);
        }
        self.put(What::Read {
            value: 3.0,
            at: self.now,
        });
        for (asked, state) in self.facts().answer().day_marks {
            let desk = self
                .desks()
                .into_iter()
                .find(|(role, slot, _)| (*role, *slot) == asked);
            if let Some((role, slot, by)) = desk
                && state != gagwright_clearance::RoleState::Standing
            {
                let day = Some(self.here());
                let mark = self.mark(role, slot, by);
                self.put(What::SignDay(Mark { day, ..mark }));
            }
        }
    }
}
