//! Whether the plan is cleared: who must sign it, and everything that stands in its way.

use std::collections::BTreeSet;

use gagwright_clearance::{BlockKind, Role, RoleState, case::TakeResult};

use super::{Asked, Reference};
use crate::{clock, contents::FALLS, people::Who, story::What};

/// What is rehearsed and what is briefed: action, rigging, effects and vehicles, by their places in the
/// table of facets.
pub const REHEARSED: [usize; 4] = [1, 2, 3, 4];

impl Reference<'_> {
    /// Everyone who must sign: on every gag the coordinator, each performer, the medic, the first
    /// assistant director and the production; for the height, rigging; for a charge, effects and fire; for a
    /// minor, the guardian; for a doubtful check, the engineer; and whoever was not asked and said no.
    pub fn asked(&self) -> Vec<Asked> {
        let plan = self.plan();
        let mut asked: Vec<Asked> = Vec::new();
        for role in [
            Role::Coordinator,
            Role::Medic,
            Role::FirstAd,
            Role::Production,
            Role::Rigging,
        ] {
            asked.push((role, None));
        }
        for (number, person) in &plan.slots {
            if person.is_some() {
                asked.push((Role::Performer, Some(*number)));
            }
        }
        let doubtful = !matches!(plan.height, Some(height) if height <= 10.0);
        for (role, wanted) in [
            (Role::Effects, plan.charge),
            (Role::Fire, plan.charge),
            (Role::Guardian, self.casts_a_minor()),
            (Role::Engineer, doubtful),
        ] {
            if wanted || self.says_no(role) {
                asked.push((role, None));
            }
        }
        asked
    }

    fn casts_a_minor(&self) -> bool {
        let plan = self.plan();
        let day = plan.day.unwrap_or(clock::day_of(self.written()));
        let mut minor = false;
        for (_, person) in &plan.slots {
            minor |= person.is_some_and(|who| self.is_minor(who, day));
        }
        minor
    }

    pub fn plan_waits_for(&self) -> BTreeSet<BlockKind> {
        let plan = self.plan();
        let mut kinds = BTreeSet::new();
        let mut add = |kind, waits: bool| {
            if waits {
                kinds.insert(kind);
            }
        };
        add(BlockKind::Hold, self.held_up());
        add(BlockKind::Incident, self.frozen());
        let safe = matches!(plan.height, Some(height) if height <= 12.0);
        add(BlockKind::Check, !safe);
        let windy = matches!(self.latest_wind(), Some((_, false)));
        add(BlockKind::Condition, windy);
        for asked in self.asked() {
            match self.plan_mark(asked) {
                RoleState::Standing => {}
                RoleState::Conditional => add(BlockKind::OpenCondition, true),
                RoleState::Missing => add(BlockKind::Unsigned, true),
                RoleState::Lapsed => add(BlockKind::Lapsed, true),
                RoleState::Declined => add(BlockKind::Decline, true),
            }
        }
        add(BlockKind::Undated, plan.day.is_none());
        for (_, person) in &plan.slots {
            add(BlockKind::Uncast, person.is_none());
            if let (Some(who), Some(day)) = (person, plan.day) {
                add(BlockKind::Performer, !self.may_perform(*who, day));
            }
        }
        let (aside, until) = self.gear(plan.serial);
        let today = clock::day_of(self.now);
        let needed = plan.day.unwrap_or(today).max(today);
        let slow = matches!(plan.rescue, (Some(most), Some(took)) if took > most);
        add(BlockKind::Equipment, aside || until < needed || slow);
        add(BlockKind::Separation, self.one_person_twice());
        let undrilled = matches!(plan.rescue, (Some(_), None));
        add(BlockKind::Rehearsal, undrilled || !self.rehearsed());
        kinds
    }

    /// Fit through the day by the medic's word, and with a fall left to take on it. Consent is the
    /// performer's own mark.
    pub fn may_perform(&self, who: Who, day: i64) -> bool {
        let mut fit_until = Some(300);
        for one in self.story {
            if let What::Fit { who: of, until } = one.what
                && of == who
            {
                fit_until = until;
            }
        }
        fit_until.is_some_and(|until| day <= until) && self.falls(who, day) < FALLS
    }

    /// Falls taken on a day: one for each take of that day that was performed with them in it.
    fn falls(&self, who: Who, day: i64) -> u32 {
        let mut falls = 0;
        for (place, one) in self.story.iter().enumerate() {
            let What::Go {
                content, day: on, ..
            } = one.what
            else {
                continue;
            };
            let mut was_in = false;
            for (_, person) in &self.contents[content].slots {
                was_in |= *person == Some(who);
            }
            if was_in && on == day && self.performed(place) {
                falls += 1;
            }
        }
        falls
    }

    /// Whether a take ended, and not before the action.
    pub fn performed(&self, take: usize) -> bool {
        let mut performed = false;
        for one in self.story {
            if let What::End {
                take: which,
                result,
            } = one.what
                && which == take
            {
                performed = result != TakeResult::Stopped;
            }
        }
        performed
    }

    /// Whether somebody's marks stand under two hats that the policy keeps apart.
    fn one_person_twice(&self) -> bool {
        let signers = self.signers();
        let mut twice = false;
        for (role, who) in &signers {
            for (other, by) in &signers {
                twice |= who == by && self.policy.separate.contains(&[*role, *other]);
            }
        }
        twice
    }

    /// Who has a mark standing under which role, open conditions or not.
    fn signers(&self) -> Vec<(Role, Who)> {
        let mut signers = Vec::new();
        for asked in self.asked() {
            let stands = matches!(
                self.plan_mark(asked),
                RoleState::Standing | RoleState::Conditional
            );
            // A mark that stands is the newest that verifies.
            let mut by = None;
            for one in self.story {
                if let What::Sign(mark) = &one.what
                    && (mark.role, mark.slot) == asked
                    && !mark.forged
                    && self.is_performers_own(mark)
                {
                    by = Some(mark.by);
                }
            }
            if let (true, Some(by)) = (stands, by) {
                signers.push((asked.0, by));
            }
        }
        signers
    }

    /// Whether what a run rehearsed, or a briefing briefed, is as it was.
    pub fn still(&self, content: usize) -> bool {
        let then = &self.contents[content];
        let mut still = true;
        for facet in REHEARSED {
            still &= then.variant[facet] == self.plan().variant[facet];
        }
        still
    }

    /// Every rung passed in order with the plan as it is; and the last two runs not both bad.
    fn rehearsed(&self) -> bool {
        let mut runs = Vec::new();
        for one in self.story {
            if let What::Run {
                rung,
                good,
                content,
            } = one.what
                && self.still(content)
            {
                runs.push((rung, good));
            }
        }
        let mut from = 0;
        for (rung, wanted) in &self.plan().rungs {
            let mut good_runs = 0;
            while good_runs < *wanted {
                let Some((what, good)) = runs.get(from) else {
                    return false;
                };
                from += 1;
                if what == rung && *good {
                    good_runs += 1;
                }
            }
        }
        !matches!(runs.as_slice(), [.., (_, false), (_, false)])
    }
}
