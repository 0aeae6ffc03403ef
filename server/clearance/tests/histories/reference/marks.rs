//! How a mark of the plan stands. A mark counts while every facet its role answers for is as it was
//! signed, its time has not run out, its signer still holds the hat (or deputises for somebody who does)
//! and the certificates the hat asks for, its device was not revoked before it arrived, and nothing has
//! happened since that voids it.

use gagwright_clearance::{Facet, Role, RoleState};

use super::{Asked, Reference, table};
use crate::{
    people::Who,
    story::{Mark, Place, What},
};

impl Reference<'_> {
    /// Marks of the plan for a role and, for a performer, by whoever is cast in the slot now; oldest
    /// first. One delivered twice is heard the first time only; a yes that arrives after its signer's own no
    /// is not heard unless it was said after it.
    fn said(&self, asked: Asked) -> Vec<(Place, &Mark)> {
        let mut said: Vec<(Place, &Mark)> = Vec::new();
        for (place, one) in self.story.iter().enumerate() {
            if let What::Sign(mark) = &one.what
                && mark.role == asked.0
                && mark.slot == asked.1
                && self.is_performers_own(mark)
                && !said.iter().any(|(_, earlier)| *earlier == mark)
            {
                said.push((place, mark));
            }
        }
        standing_words(said)
    }

    pub fn is_performers_own(&self, mark: &Mark) -> bool {
        mark.slot.is_none()
            || (self.plan().slots).contains(&(mark.slot.unwrap_or(0), Some(mark.by)))
    }

    fn resolved(&self, place: Place, mark: &Mark) -> bool {
        let Some(settling) = self.policy.settling.get(&mark.role) else {
            return false;
        };
        let mut resolved = false;
        for (at, one) in self.story.iter().enumerate() {
            if let What::Resolve {
                mark: which,
                by,
                role,
            } = &one.what
            {
                let same = *which == place
                    || matches!(&self.story[*which].what, What::Sign(other) if other == mark);
                resolved |= same && self.held(*by, *role, at) && settling.declines.contains(role);
            }
        }
        resolved
    }

    /// Whether a decline stands under a role. The last word under it always counts. Beyond that, nobody
    /// lifts a no for somebody else: for a role with the final say, whoever said it says otherwise or no
    /// longer holds the hat; for one whose declines are settled in writing, it is settled.
    fn declined(&self, said: &[(Place, &Mark)]) -> bool {
        let heard: Vec<_> = said.iter().filter(|(_, mark)| !mark.forged).collect();
        let Some((_, last)) = heard.last() else {
            return false;
        };
        if last.no {
            return true;
        }
        let role = last.role;
        let final_say = self.policy.final_say.contains(&role);
        let settled = self.policy.settling.get(&role);
        let in_writing = settled.is_some_and(|one| !one.declines.is_empty());
        let mut stands = false;
        for (place, mark) in &heard {
            let mut own_last = true;
            for (later, other) in &heard {
                own_last &= !(later > place && other.by == mark.by);
            }
            if mark.no && own_last {
                stands |= match final_say {
                    true => self.entitled(*place, mark),
                    false => in_writing && !self.resolved(*place, mark),
                };
            }
        }
        stands
    }

    /// Whether a role said no, asked or not.
    pub fn says_no(&self, role: Role) -> bool {
        role != Role::Performer && self.declined(&self.said((role, None)))
    }

    pub fn plan_mark(&self, asked: Asked) -> RoleState {
        let said = self.said(asked);
        if self.declined(&said) {
            return RoleState::Declined;
        }
        let mut newest = None;
        let mut unheard_after = false;
        for (place, mark) in said {
            if mark.forged {
                unheard_after = true;
            } else {
                newest = Some((place, mark));
                unheard_after = false;
            }
        }
        let Some((place, mark)) = newest else {
            return RoleState::Missing;
        };
        if unheard_after || self.fell(place, mark) {
            RoleState::Lapsed
        } else if mark.conditional && !self.met(mark) {
            RoleState::Conditional
        } else {
            RoleState::Standing
        }
    }

    /// Whether the facets a role answers for differ between what was signed and what is.
    pub fn differs(&self, mark: &Mark) -> bool {
        let Some(role) = self.policy.role(mark.role) else {
            return true;
        };
        let signed = &self.contents[mark.content];
        let mut differs = false;
        for (number, facet) in Facet::ALL.iter().enumerate() {
            let answers = role.covers.contains(facet);
            differs |= answers && signed.variant[number] != self.plan().variant[number];
        }
        differs
    }

    /// Whether the device was revoked before a mark arrived.
    pub fn revoked_before(&self, who: Who, arrived: i64) -> bool {
        let mut revoked = false;
        for one in self.story {
            revoked |= matches!(one.what, What::Revoke(of) if of == who) && one.at <= arrived;
        }
        revoked
    }

    fn fell(&self, place: Place, mark: &Mark) -> bool {
        let arrived = self.story[place].at;
        let made = mark.signed_at.min(arrived);
        let hours = self
            .policy
            .role(mark.role)
            .and_then(|one| one.good_for_hours);
        let ran_out = mark.good_until.is_some_and(|until| until <= self.now)
            || hours.is_some_and(|hours| made + i64::from(hours) * 60 <= self.now);
        let own = (mark.role == Role::Performer).then_some(mark.by);
        self.differs(mark)
            || mark.old_words
            || ran_out
            || self.revoked_before(mark.by, arrived)
            || (mark.role != Role::Performer && !self.entitled(place, mark))
            || !self.papers(mark, self.plan().day)
            || (table::SHOCK_PLAN.contains(&mark.role) && self.shocked_since(made))
            || (table::HEAD.contains(&mark.role) && self.struck_since(made, own))
    }

    /// Whether a condition was said to be met by somebody who holds the hat that set it; a performer's
    /// own, by themselves.
    fn met(&self, mark: &Mark) -> bool {
        let mut met = false;
        for one in self.story {
            if let What::Meet { mark: which, by } = one.what
                && matches!(&self.story[which].what, What::Sign(other) if other == mark)
            {
                met |= match mark.role {
                    Role::Performer => by == mark.by,
                    role => self.holds(by, role),
                };
            }
        }
        met
    }
}

/// What was said without every yes that its signer had already taken back when it arrived.
pub fn standing_words(said: Vec<(Place, &Mark)>) -> Vec<(Place, &Mark)> {
    let mut standing = Vec::new();
    for (place, mark) in &said {
        let mut taken_back = false;
        for (before, other) in &said {
            taken_back |= before < place
                && other.no
                && !other.forged
                && !mark.no
                && other.by == mark.by
                && other.day.map(|(day, _)| day) == mark.day.map(|(day, _)| day)
                && other.signed_at >= mark.signed_at;
        }
        if !taken_back {
            standing.push((*place, *mark));
        }
    }
    standing
}
