//! Whether the day stands: the briefing, the wind, the gear, the people, and the marks made for it.

use std::collections::BTreeSet;

use gagwright_clearance::{
    Role, RoleState,
    case::{DayBlockKind, Fitness},
};

use super::{Asked, Reference, marks::standing_words, table};
use crate::{
    clock::{self, DAY},
    contents::{PLACES, SERIALS},
    people::Who,
    story::{Mark, Place, What},
};

/// A mark for the day, and a briefing, are good for twelve hours and never outlast their day.
const HOURS: i64 = 12;
/// A reading of the wind is good for as long as the plan's band says, and at most half an hour.
const WIND_AGE: i64 = 20;

/// Whether it can be that day somewhere in the world, or its night is not over.
pub fn can_be(day: i64, now: i64) -> bool {
    (day * DAY - 14 * 60 <= now) && (now < (day + 1) * DAY + 18 * 60)
}

impl Reference<'_> {
    /// Which day and place it is: what the latest briefing said that can be of now; else the plan's,
    /// unless its day is over; else today.
    pub fn here(&self) -> (i64, &'static str) {
        let mut briefed: Option<(i64, i64, usize)> = None;
        for one in self.story {
            if let What::Brief { day, place, .. } = one.what
                && can_be(day, self.now)
                && briefed.is_none_or(|(at, ..)| at <= one.at)
            {
                briefed = Some((one.at, day, place));
            }
        }
        let plan = self.plan();
        match (briefed, plan.day) {
            (Some((_, day, place)), _) => (day, PLACES[place]),
            (None, Some(day)) if self.now < (day + 1) * DAY + 18 * 60 => (day, plan.place),
            (None, _) => (clock::day_of(self.now), plan.place),
        }
    }

    pub fn day_waits_for(&self) -> BTreeSet<DayBlockKind> {
        let (day, _) = self.here();
        let plan = self.plan();
        let mut kinds = BTreeSet::new();
        let mut add = |kind, waits: bool| {
            if waits {
                kinds.insert(kind);
            }
        };
        add(DayBlockKind::NotToday, !can_be(day, self.now));
        add(DayBlockKind::Briefing, !self.briefed());
        let read = match self.latest_wind() {
            Some((at, inside)) => inside && self.now <= at + WIND_AGE && self.here_at(at),
            None => false,
        };
        add(DayBlockKind::Reading, !read);
        add(DayBlockKind::OpenTake, self.busy_elsewhere());
        let (aside, until) = self.gear(plan.serial);
        add(DayBlockKind::Equipment, aside || until < day);
        for (_, person) in &plan.slots {
            let Some(who) = *person else { continue };
            add(DayBlockKind::StoodDown, self.stood_down(who));
            let owed = self.look_owed(who, day) || self.look_owed_elsewhere(who, day);
            add(DayBlockKind::Look, owed);
            let moved = plan.day != Some(day);
            add(
                DayBlockKind::Performer,
                moved && !self.may_perform(who, day),
            );
        }
        for asked in self.asked() {
            if self.policy.day_attestation(asked.0).is_none() {
                continue;
            }
            match self.day_mark(asked) {
                RoleState::Standing => {}
                RoleState::Missing => add(DayBlockKind::Unsigned, true),
                RoleState::Declined => add(DayBlockKind::Decline, true),
                RoleState::Lapsed | RoleState::Conditional => add(DayBlockKind::Lapsed, true),
            }
        }
        kinds
    }

    /// Whether the latest briefing for this day before a minute was held here, if there was one.
    fn here_at(&self, minute: i64) -> bool {
        let (today, here) = self.here();
        let mut latest: Option<(i64, bool)> = None;
        for one in self.story {
            if let What::Brief { day, place, .. } = one.what
                && day == today
                && one.at <= minute
                && latest.is_none_or(|(at, _)| at <= one.at)
            {
                latest = Some((one.at, PLACES[place] == here));
            }
        }
        latest.is_none_or(|(_, same)| same)
    }

    /// Everyone cast, and everyone whose mark for the day stands, was told here of the plan as it is.
    fn briefed(&self) -> bool {
        let mut held = false;
        let mut there: BTreeSet<Who> = BTreeSet::new();
        for one in self.story {
            if let What::Brief {
                day,
                place,
                content,
                absent,
            } = one.what
                && (day, PLACES[place]) == self.here()
                && self.now < one.at + HOURS * 60
                && self.still(content)
            {
                held = true;
                for who in 0..crate::people::COMPANY.len() {
                    if Some(who) != absent || who == 4 {
                        there.insert(who); // number 4 leads every briefing
                    }
                }
            }
        }
        let mut all = true;
        for (_, person) in &self.plan().slots {
            all &= person.is_none_or(|who| there.contains(&who));
        }
        for asked in self.asked() {
            if self.policy.day_attestation(asked.0).is_some()
                && self.day_mark(asked) == RoleState::Standing
            {
                let newest = self.said_of_the_day(asked).last().map(|(_, mark)| mark.by);
                all &= newest.is_some_and(|who| there.contains(&who));
            }
        }
        held && all
    }

    fn stood_down(&self, who: Who) -> bool {
        let mut down = false;
        // Whoever was struck does not perform until that day is over, and not for a day and a night from the
        // look; whoever was found unfit, until looked at again.
        let mut unfit: Option<(i64, Fitness)> = None;
        for (place, one) in self.story.iter().enumerate() {
            match one.what {
                What::Look {
                    who: of,
                    day: on,
                    fitness,
                    head,
                    ..
                } if of == who => {
                    let rests = ((on + 1) * DAY).max(one.at + DAY);
                    down |= head && self.now < rests;
                    let later = unfit.is_none_or(|before| before <= (one.at, fitness));
                    if later {
                        unfit = Some((one.at, fitness));
                    }
                }
                What::StandDown { who: of, until } if of == who => {
                    let mut back = until.is_some_and(|until| until <= self.now);
                    for other in self.story {
                        back |= matches!(other.what, What::Return(which) if which == place);
                    }
                    down |= !back;
                }
                What::KeptOff { who: of, until } if of == who => down |= self.now < until,
                _ => {}
            }
        }
        down || matches!(unfit, Some((_, Fitness::Unfit)))
    }

    /// Whether a take of another gag is open with anybody cast here in it, or with the piece used here.
    fn busy_elsewhere(&self) -> bool {
        let mut busy = false;
        for (place, one) in self.story.iter().enumerate() {
            if let What::GoElsewhere { who, serial, .. } = one.what {
                let mut ended = false;
                for other in self.story {
                    ended |= matches!(other.what, What::EndElsewhere { take, .. } if take == place);
                }
                let ours = self.is_cast(who) || SERIALS[serial] == self.plan().serial;
                busy |= ours && !ended;
            }
        }
        busy
    }

    /// After a fall on another gag, likewise.
    fn look_owed_elsewhere(&self, who: Who, day: i64) -> bool {
        let mut owed = false;
        for (place, one) in self.story.iter().enumerate() {
            let What::GoElsewhere {
                who: of,
                look: true,
                ..
            } = one.what
            else {
                continue;
            };
            let lately = clock::day_of(one.at) == day || one.at >= self.now - DAY;
            let mut stopped = false;
            let mut ended = one.at;
            for other in self.story {
                if let What::EndElsewhere { take, performed } = other.what
                    && take == place
                {
                    (ended, stopped) = (other.at, !performed);
                }
            }
            let mut looked = false;
            for other in self.story {
                if let What::Look { who: of, .. } = other.what {
                    looked |= of == who && other.at >= ended;
                }
            }
            owed |= of == who && lately && !stopped && !looked;
        }
        owed
    }

    /// After a fall the medic looks at everyone who fell, on this day or in the day and night before, before the
    /// next go. A look since it ended is one, whatever it was said to be about.
    fn look_owed(&self, who: Who, day: i64) -> bool {
        let mut last: Option<Place> = None;
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
            let lately = on == day || one.at >= self.now - DAY;
            if was_in && lately && self.performed(place) {
                last = Some(place);
            }
        }
        let Some(last) = last else { return false };
        let mut ended = self.story[last].at;
        for one in self.story {
            if matches!(one.what, What::End { take, .. } if take == last) {
                ended = one.at;
            }
        }
        let mut looked = false;
        for one in self.story {
            if let What::Look { who: of, take, .. } = one.what {
                looked |= of == who && (take == Some(last) || one.at >= ended);
            }
        }
        !looked
    }

    /// Marks of the day whose signature holds, oldest first; one delivered twice counts once.
    pub fn said_of_the_day(&self, asked: Asked) -> Vec<(Place, &Mark)> {
        let mut said: Vec<(Place, &Mark)> = Vec::new();
        for (place, one) in self.story.iter().enumerate() {
            if let What::SignDay(mark) = &one.what
                && (mark.role, mark.slot) == asked
                && !mark.forged
                && self.is_performers_own(mark)
                && !said.iter().any(|(_, earlier)| *earlier == mark)
            {
                said.push((place, mark));
            }
        }
        standing_words(said)
    }

    pub fn day_mark(&self, asked: Asked) -> RoleState {
        let said = self.said_of_the_day(asked);
        let Some((place, last)) = said.last().copied() else {
            return RoleState::Missing;
        };
        let (today, _) = self.here();
        let mut no = last.no && last.day.is_some_and(|(day, _)| day == today);
        // Nobody lifts a no for somebody else.
        for (at, mark) in &said {
            let own_last = self.own_last_today(&said, (*at, mark));
            let counts = asked.0 == Role::Performer || self.entitled(*at, mark);
            no |= mark.no && own_last && counts;
        }
        if no {
            RoleState::Declined
        } else if last.no || self.day_fell(place, last) {
            RoleState::Lapsed
        } else {
            RoleState::Standing
        }
    }

    /// Whether a mark is of today, and the last that its signer said of today.
    pub fn own_last_today(&self, said: &[(Place, &Mark)], (place, mark): (Place, &Mark)) -> bool {
        let (today, _) = self.here();
        let of_today = |mark: &Mark| mark.day.is_some_and(|(day, _)| day == today);
        let mut own_last = of_today(mark);
        for (later, other) in said {
            own_last &= !(*later > place && other.by == mark.by && of_today(other));
        }
        own_last
    }

    fn day_fell(&self, place: Place, mark: &Mark) -> bool {
        let (today, _) = self.here();
        self.day_moved_on(place, mark)
            || self.revoked_before(mark.by, self.story[place].at)
            || (mark.role != Role::Performer && !self.entitled(place, mark))
            || (table::NO_PERFORMER.contains(&mark.role) && self.is_cast(mark.by))
            || !self.papers(mark, Some(today))
    }

    /// Whether something is no longer as a mark of the day has it, whoever signed it.
    pub fn day_moved_on(&self, place: Place, mark: &Mark) -> bool {
        let (today, here) = self.here();
        let (day, where_) = mark.day.unwrap_or((i64::MIN, 0));
        let made = mark.signed_at.min(self.story[place].at);
        let until = mark.good_until.unwrap_or(mark.signed_at + HOURS * 60);
        let until = until.min(made + HOURS * 60).min((day + 1) * DAY + 18 * 60);
        let signed = &self.contents[mark.content];
        let plan = self.plan();
        let cast = |slots: &[(u8, Option<Who>)]| -> Vec<(u8, Option<Who>)> {
            let cast = slots.iter().filter(|(_, person)| person.is_some());
            cast.copied().collect()
        };
        let recast = cast(&signed.slots) != cast(&plan.slots);
        let swapped = signed.serial != plan.serial;
        let own = (mark.role == Role::Performer).then_some(mark.by);
        self.differs(mark)
            || mark.old_words
            || until <= self.now
            || day != today
            || PLACES[where_] != here
            || (recast && table::recast_voids(mark.role))
            || (swapped && table::SWAP_DAY.contains(&mark.role))
            || (table::SHOCK_DAY.contains(&mark.role) && self.shocked_since(made))
            || (table::HEAD.contains(&mark.role) && self.struck_since(made, own))
    }
}
