//! Hats that are lent, and what is signed under them: as it should be, and with one thing amiss.

use gagwright_clearance::Role;

use super::Telling;
use crate::{
    chance::Chance,
    clock::DAY,
    people::{PERFORMERS, Paper, SPARE, holder},
    story::{Mark, Place, Scope, What},
};

const LENT: [Role; 6] = [
    Role::Rigging,
    Role::Rigging,
    Role::Coordinator,
    Role::FirstAd,
    Role::Guardian,
    Role::Medic,
];
const GAGS: [Scope; 4] = [
    Scope::Everything,
    Scope::Everything,
    Scope::This,
    Scope::Another,
];

impl Telling<'_> {
    /// A mark becomes that of whoever was lent a hat last, now and then.
    pub(super) fn in_somebodys_stead(&self, mark: &mut Mark, chance: &mut Chance) {
        let deputies = self.latest(|what| matches!(what, What::Depute { .. }));
        if let Some(place) = deputies.first()
            && let What::Depute { to, role, .. } = self.story[*place].what
            && role != Role::Performer
            && !chance.one_in(3)
        {
            (mark.by, mark.role, mark.slot, mark.deputy) = (to, role, None, Some(*place));
        }
    }

    pub(super) fn deputy(&mut self, chance: &mut Chance) {
        let made = self.latest(|what| matches!(what, What::Depute { .. }));
        if let Some(which) = made.first()
            && chance.one_in(2)
        {
            return self.put(What::EndDeputy(*which));
        }
        let role = chance.of(&LENT);
        let to = chance.of(&[SPARE, SPARE, 7]);
        let starts = self.now + chance.of(&[-60, -60, 30]);
        let until = starts + chance.of(&[90, DAY, 30 * DAY]);
        self.put(What::Depute {
            from: holder(role),
            to,
            role,
            gags: chance.of(&GAGS),
            starts,
            until,
        });
        let place = self.story.len() - 1;
        let mark = self.mark(role, None, to);
        self.put(What::Sign(Mark {
            deputy: Some(place),
            ..mark
        }));
    }

    /// Whoever is away lends the hat, and the day is signed in their stead. Often one thing about it is amiss.
    pub(super) fn deputy_for_the_day(&mut self, chance: &mut Chance) {
        let mut role = chance.of(&LENT);
        let odd = chance.below(20);
        if odd == 0 {
            role = chance.of(&[Role::Guardian, Role::Performer]);
        }
        if role == Role::Guardian {
            let minor = |one: &crate::contents::Content| one.slots == [(1, Some(PERFORMERS[2]))];
            let with_a_minor = self.contents.iter().position(minor);
            self.revise(with_a_minor.unwrap_or(0));
        }
        let (mut from, mut to, mut lent) = (holder(role), SPARE, role);
        let mut gags = chance.of(&[Scope::This, Scope::Everything]);
        let (mut starts, mut until) = (self.now - 60, self.now + DAY);
        match odd {
            1 | 2 => gags = Scope::Another,
            3 => starts = self.now + 30,
            4 => until = self.now - chance.of(&[0, 10]),
            5 => until = self.now + chance.of(&[1, 20]),
            6 => starts = self.now - chance.of(&[7, 14, 20]) * DAY,
            7 => to = PERFORMERS[0],
            8 | 16 => {
                lent = chance.of(&[Role::Coordinator, Role::FirstAd, Role::Production]);
                from = holder(lent);
            }
            9 => from = SPARE,
            // Whoever performs may not sign under the hat, and lends it.
            10 => {
                (role, lent, from) = (Role::Coordinator, Role::Coordinator, PERFORMERS[0]);
                self.put(What::Hat {
                    by: from,
                    role,
                    on: true,
                });
            }
            11 => self.put(What::Revoke(to)),
            17 => starts = self.now + chance.of(&[-10, 10]),
            _ => {}
        }
        self.put(What::Depute {
            from,
            to,
            role: lent,
            gags,
            starts,
            until,
        });
        let place = self.story.len() - 1;
        let slot = (role == Role::Performer).then_some(1);
        let mut mark = self.mark(role, slot, to);
        (mark.day, mark.deputy) = (Some(self.here()), Some(place));
        match odd {
            12 => mark.by = chance.of(&[3, 4, holder(role)]),
            13 => mark.deputy = Some(0),
            14 | 15 => mark.no = true,
            // By its own clock on the other side of when the lending starts.
            17 => mark.signed_at += if starts > self.now { 30 } else { -30 },
            _ => {}
        }
        // A no is answered by the holder's own yes, which does not lift it.
        let answered = mark.no || chance.one_in(8);
        let own = Mark {
            day: mark.day,
            ..self.mark(role, slot, holder(role))
        };
        self.put(What::SignDay(mark));
        if answered {
            self.put(What::SignDay(own));
        }
        self.after_it_was_lent(place, chance);
    }

    /// What may end that a hat is lent, soon after it was used.
    fn after_it_was_lent(&mut self, place: Place, chance: &mut Chance) {
        let What::Depute { from, to, role, .. } = self.story[place].what else {
            return;
        };
        match chance.below(10) {
            0 | 1 => self.put(What::EndDeputy(place)),
            2 => self.put(What::Hat {
                by: from,
                role,
                on: false,
            }),
            3 => self.put(What::Revoke(to)),
            4 => self.put(What::Paper {
                who: to,
                paper: Paper::Lost,
            }),
            5 => self.now += 20,
            _ => {}
        }
    }
}
