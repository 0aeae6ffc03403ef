//! Everything else that can happen, one thing at a time and at random: late, twice, under the wrong hat, with
//! somebody else's key.

use gagwright_clearance::{
    Role,
    case::{Fitness, IncidentKind, TakeResult},
    plan::Hazard,
};

use super::{ROLES, Telling};
use crate::{
    chance::Chance,
    clock::{self, DAY, MORNING, SHOOT},
    ink::signs_day,
    people::{COMPANY, PERFORMERS, Paper, SPARE, holder},
    story::{Mark, Place, Scope, What},
};

const SCOPES: [Scope; 4] = [Scope::This, Scope::This, Scope::Everything, Scope::Another];
const HAZARDS: [Option<Hazard>; 4] = [
    None,
    Some(Hazard::Height),
    Some(Hazard::Charge),
    Some(Hazard::Minor),
];

impl Telling<'_> {
    /// One thing more, whatever it is.
    pub fn go_on(&mut self, chance: &mut Chance) {
        self.now += chance.of(&[0, 5]);
        match chance.below(38) {
            0..=3 => {
                let content = chance.below(self.contents.len());
                self.revise(content);
            }
            4..=6 => self.mend(chance),
            7 | 8 => self.sign(chance),
            9 | 10 => self.sign_the_day(chance),
            11 => self.word_on_a_mark(chance),
            12 => {
                self.put(What::Hold {
                    hazard: chance.of(&HAZARDS),
                    gag: chance.of(&SCOPES),
                });
                if chance.one_in(3) {
                    self.agree(chance);
                }
            }
            13 => self.agree(chance),
            14 => {
                let at = self.now + chance.of(&[0, 0, 0, -40, 10, 4]);
                let value = chance.of(&[3.0, 5.0, 6.0, 8.0, f64::NAN]);
                self.put(What::Read { value, at });
            }
            15 => {
                let rung = chance.of(&["bag", "half", "full"]);
                let (good, content) = (!chance.one_in(2), self.content);
                self.put(What::Run {
                    rung,
                    good,
                    content,
                });
                if chance.one_in(2) {
                    self.put(What::Run {
                        rung,
                        good,
                        content,
                    });
                }
            }
            16 | 17 => {
                let role = chance.of(&ROLES);
                let by = chance.of(&[holder(role), holder(role), SPARE, 0]);
                self.put(What::Hat {
                    by,
                    role,
                    on: by != holder(role) || chance.one_in(3),
                });
                if chance.one_in(6) {
                    self.performer_with_a_hat();
                }
            }
            18 => self.put(What::Revoke(chance.below(COMPANY.len()))),
            19 | 20 => {
                let who = chance.of(&[2, 2, 3, 6, 9, SPARE]);
                let paper = chance.of(&[
                    Paper::Good,
                    Paper::Until(SHOOT - 1),
                    Paper::Until(SHOOT),
                    Paper::Withdrawn(SHOOT),
                    Paper::Withdrawn(SHOOT + 1),
                    Paper::Lost,
                ]);
                self.put(What::Paper { who, paper });
            }
            21 => {
                let until = chance.of(&[None, Some(SHOOT - 1), Some(SHOOT), Some(300)]);
                self.put(What::Fit {
                    who: chance.of(&PERFORMERS),
                    until,
                });
            }
            22 => self.deputy(chance),
            23 => self.put(What::Shock(chance.below(2))),
            24 => match chance.one_in(2) {
                true => self.put(What::SetAside(chance.below(2))),
                false => self.put(What::Inspect {
                    serial: chance.below(2),
                    until: SHOOT + chance.of(&[-1, 0, 1, 5]),
                    at: self.now - chance.of(&[0, 0, 15, 60]),
                }),
            },
            25 => {
                let absent = chance.one_in(2).then(|| chance.below(COMPANY.len()));
                let place = usize::from(chance.one_in(4));
                let day = clock::day_of(self.now) + chance.of(&[0, 0, 0, 1, -1]);
                self.put(What::Brief {
                    day,
                    place,
                    content: self.content,
                    absent,
                });
            }
            26 => self.stand_down(chance),
            27 | 28 => self.look(chance),
            29 if chance.one_in(2) => self.take_elsewhere(chance),
            29 => self.incident(chance),
            30..=33 => self.take(chance),
            34 => self.now += 20,
            35 | 36 => self.deputy_for_the_day(chance),
            // To few moments, so that few marks have to be made.
            _ => {
                let wait = chance.of(&[12 * 60, DAY, 8 * DAY]);
                self.now = MORNING + wait * ((self.now - MORNING) / wait + 1);
            }
        }
    }

    /// Somebody who performs takes the coordinator's hat as well, and signs the day under it.
    fn performer_with_a_hat(&mut self) {
        let (role, by) = (Role::Coordinator, PERFORMERS[0]);
        self.put(What::Hat { by, role, on: true });
        let (day, mark) = (Some(self.here()), self.mark(role, None, by));
        self.put(What::SignDay(Mark { day, ..mark }));
    }

    fn odd(&mut self, mark: Mark, chance: &mut Chance) -> Mark {
        let mut mark = mark;
        match chance.below(14) {
            0 => mark.forged = true,
            1 => mark.by = chance.of(&[SPARE, 0, 1, 3]),
            2 => mark.signed_at -= 30,
            3 => mark.signed_at += 30,
            4 => mark.old_words = true,
            5 => mark.good_until = Some(self.now + chance.of(&[1, 60])),
            6..=8 => mark.no = true,
            // Signed before the last change and delivered after it.
            9 => {
                let before = self.latest(|what| matches!(what, What::Revise(_)));
                if let Some(What::Revise(content)) = before.get(1).map(|at| &self.story[*at].what) {
                    (mark.content, mark.revision) = (*content, self.revision - 1);
                }
            }
            _ => {}
        }
        if mark.slot.is_some() && mark.by != holder(mark.role) && chance.one_in(2) {
            mark.by = chance.of(&PERFORMERS);
        }
        mark
    }

    fn sign(&mut self, chance: &mut Chance) {
        let said = self.latest(|what| matches!(what, What::Sign(_)));
        if chance.one_in(8)
            && let Some(What::Sign(mark)) = said.last().map(|at| &self.story[*at].what)
        {
            let again = mark.clone();
            return self.put(What::Sign(again));
        }
        let desks = self.desks();
        let (role, slot, by) = chance.of(&desks);
        let mark = self.mark(role, slot, by);
        let mut mark = self.odd(mark, chance);
        self.in_somebodys_stead(&mut mark, chance);
        mark.conditional = !mark.no && chance.one_in(4);
        self.put(What::Sign(mark));
    }

    fn sign_the_day(&mut self, chance: &mut Chance) {
        let mut desks = self.desks();
        desks.retain(|(role, ..)| signs_day(self.policy, *role));
        let (role, slot, by) = chance.of(&desks);
        let (day, place) = self.here();
        let mark = self.mark(role, slot, by);
        let mut mark = self.odd(mark, chance);
        self.in_somebodys_stead(&mut mark, chance);
        let day = day + chance.of(&[0, 0, 0, 1, -1]);
        mark.day = Some((day, if chance.one_in(5) { 1 - place } else { place }));
        self.put(What::SignDay(mark));
    }

    /// A condition met, or a decline resolved.
    fn word_on_a_mark(&mut self, chance: &mut Chance) {
        let said =
            self.latest(|what| matches!(what, What::Sign(mark) if mark.no || mark.conditional));
        let Some(at) = said.first().copied() else {
            return;
        };
        let What::Sign(mark) = &self.story[at].what else {
            return;
        };
        // The first time it was delivered is the mark.
        let first = self
            .story
            .iter()
            .position(|one| matches!(&one.what, What::Sign(other) if other == mark));
        let place = first.unwrap_or(at);
        let what = match mark.no {
            true => {
                let role = chance.of(&[Role::Coordinator, Role::Production, Role::Medic]);
                What::Resolve {
                    mark: place,
                    by: holder(role),
                    role,
                }
            }
            false => What::Meet {
                mark: place,
                by: chance.of(&[mark.by, mark.by, holder(mark.role), SPARE]),
            },
        };
        self.put(what);
    }

    fn agree(&mut self, chance: &mut Chance) {
        let holds = self.latest(|what| matches!(what, What::Hold { .. }));
        let Some(hold) = holds.first().copied() else {
            return;
        };
        // One person under two hats is not two people.
        if chance.one_in(4) {
            let (role, by, said) = (Role::Rigging, 0, true);
            self.put(What::Hat { by, role, on: true });
            for role in [Role::Coordinator, role] {
                self.put(What::Agree {
                    hold,
                    role,
                    by,
                    said,
                });
            }
            return;
        }
        for _ in 0..chance.of(&[1, 2, 3]) {
            let role = chance.of(&[
                Role::Coordinator,
                Role::Coordinator,
                Role::Rigging,
                Role::Effects,
                Role::Guardian,
            ]);
            let by = chance.of(&[holder(role), holder(role), holder(role), 0, SPARE]);
            self.put(What::Agree {
                hold,
                role,
                by,
                said: !chance.one_in(6),
            });
        }
    }

    fn stand_down(&mut self, chance: &mut Chance) {
        let downs = self.latest(|what| matches!(what, What::StandDown { .. }));
        match downs.first() {
            Some(which) if chance.one_in(2) => self.put(What::Return(*which)),
            _ if chance.one_in(4) => self.put(What::KeptOff {
                who: chance.of(&PERFORMERS),
                until: self.now + chance.of(&[10, DAY]),
            }),
            _ => {
                let until = chance.of(&[None, Some(self.now + 10), Some(self.now + DAY)]);
                self.put(What::StandDown {
                    who: chance.of(&[1, 1, 7, 10]),
                    until,
                });
            }
        }
    }

    fn look(&mut self, chance: &mut Chance) {
        let takes = self.latest(|what| matches!(what, What::Go { .. }));
        let take = chance.of(&[takes.first().copied(), None]);
        let (day, _) = self.here();
        self.put(What::Look {
            who: chance.of(&[1, 1, 7, 10]),
            take,
            day: day + chance.of(&[0, 0, 0, -1]),
            fitness: chance.of(&[Fitness::Fit, Fitness::Fit, Fitness::Limits, Fitness::Unfit]),
            head: chance.one_in(3),
        });
    }

    fn incident(&mut self, chance: &mut Chance) {
        let open = self.latest(|what| matches!(what, What::Incident { .. }));
        let Some(incident) = open.first().copied().filter(|_| chance.one_in(2)) else {
            let kind = chance.of(&[IncidentKind::NearMiss, IncidentKind::Incident]);
            return self.put(What::Incident {
                kind,
                gag: chance.of(&SCOPES),
            });
        };
        for who in crate::reference::INCIDENT {
            if !chance.one_in(12) {
                self.put(What::Tell { incident, who });
            }
        }
        for role in [Role::Coordinator, Role::Production] {
            let by = chance.of(&[holder(role), holder(role), holder(role), 0]);
            self.put(What::Close { incident, role, by });
        }
    }

    fn take_elsewhere(&mut self, chance: &mut Chance) {
        let takes = self.latest(|what| matches!(what, What::GoElsewhere { .. }));
        let open = takes.first().copied().filter(|take| {
            !(self.story.iter()).any(
                |one| matches!(one.what, What::EndElsewhere { take: which, .. } if which == *take),
            )
        });
        match open {
            Some(take) => self.put(What::EndElsewhere {
                take,
                performed: !chance.one_in(3),
            }),
            None => {
                self.put(What::GoElsewhere {
                    who: chance.of(&[1, 1, 7]),
                    serial: chance.below(2),
                    look: !chance.one_in(3),
                });
                // Most are over before anything else happens.
                if !chance.one_in(3) {
                    let (take, performed) = (self.story.len() - 1, true);
                    self.put(What::EndElsewhere { take, performed });
                }
            }
        }
    }

    fn take(&mut self, chance: &mut Chance) {
        let takes = self.latest(|what| matches!(what, What::Go { .. }));
        let ended = |take: Place| {
            self.story
                .iter()
                .any(|one| matches!(one.what, What::End { take: which, .. } if which == take))
        };
        if let Some(take) = takes.first().copied().filter(|take| !ended(*take)) {
            let result = chance.of(&[TakeResult::Good, TakeResult::NotGood, TakeResult::Stopped]);
            return self.put(What::End { take, result });
        }
        let (day, place) = self.here();
        self.put(What::Go {
            content: self.content,
            revision: self.revision,
            day,
            place,
        });
    }
}
