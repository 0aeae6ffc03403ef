//! Whether a go may be called, and whether the one that was called still stands. A go is for one take: it
//! is spent by the take, and anything that happens in between voids it.

use super::Reference;
use crate::{
    contents::PLACES,
    story::{Place, Scope, What},
};

impl Reference<'_> {
    fn open_take(&self) -> Option<Place> {
        let mut open = None;
        for (place, one) in self.story.iter().enumerate() {
            let mut ended = false;
            for other in self.story {
                ended |= matches!(other.what, What::End { take, .. } if take == place);
            }
            if matches!(one.what, What::Go { .. }) && !ended {
                open = Some(place);
            }
        }
        open
    }

    pub fn next_take(&self) -> u32 {
        let mut next = 1;
        for one in self.story {
            if let What::Go { .. } = one.what {
                next += 1;
            }
        }
        next
    }

    fn ready(&self) -> bool {
        self.plan_waits_for().is_empty() && self.day_waits_for().is_empty()
    }

    pub fn may_go(&self) -> bool {
        self.ready() && self.open_take().is_none()
    }

    pub fn open_go(&self) -> Option<bool> {
        let place = self.open_take()?;
        let called = self.story[place].at;
        let What::Go {
            revision,
            day,
            place: where_,
            ..
        } = self.story[place].what
        else {
            return None;
        };
        let mut held = false;
        for one in self.story {
            if let What::Hold { gag, .. } = one.what {
                held |= gag != Scope::Another && one.at >= called;
            }
        }
        let same = revision == self.revision() && (day, PLACES[where_]) == self.here();
        Some(
            same && self.ready()
                && !held
                && !self.shocked_since(called)
                && !self.blown_since(called)
                && !self.struck_since(called, None),
        )
    }
}
