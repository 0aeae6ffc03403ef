//! The rules of clearance said once more, slowly: from the whole list of happenings, with plain loops, on
//! every question anew. Written from the policy and the trade's table of what voids what; it calls nothing
//! of the judge and shares nothing with it but the names of its answers.

mod day;
mod deputies;
mod facts;
mod go;
mod holds;
mod marks;
mod plan;
mod table;

pub use deputies::Became;
pub use holds::INCIDENT;

use std::collections::{BTreeMap, BTreeSet};

use gagwright_clearance::{BlockKind, Policy, Role, RoleState, case::DayBlockKind};

use crate::{contents::Content, story::Happening};

/// A mark that is asked for: the role and, for a performer, the slot.
pub type Asked = (Role, Option<u8>);

/// The three answers, and how every mark stands.
#[derive(Clone, Debug, PartialEq)]
pub struct Answer {
    /// The kinds of thing that keep the plan from being cleared; none: it is.
    pub plan: BTreeSet<BlockKind>,
    pub marks: BTreeMap<Asked, RoleState>,
    /// The kinds of thing that the day waits for; none: it stands.
    pub day: BTreeSet<DayBlockKind>,
    pub day_marks: BTreeMap<Asked, RoleState>,
    /// Whether a go may be called.
    pub may_go: bool,
    /// Whether the go that was called still stands; none: none is open.
    pub open_go: Option<bool>,
    /// The number of the next take.
    pub next: u32,
}

/// Everything that is known, and when it is asked.
pub struct Reference<'a> {
    pub story: &'a [Happening],
    pub contents: &'a [Content],
    pub policy: &'a Policy,
    pub now: i64,
}

impl Reference<'_> {
    pub fn answer(&self) -> Answer {
        let mut marks = BTreeMap::new();
        let mut day_marks = BTreeMap::new();
        for asked in self.asked() {
            marks.insert(asked, self.plan_mark(asked));
            if self.policy.day_attestation(asked.0).is_some() {
                day_marks.insert(asked, self.day_mark(asked));
            }
        }
        Answer {
            plan: self.plan_waits_for(),
            day: self.day_waits_for(),
            may_go: self.may_go(),
            open_go: self.open_go(),
            next: self.next_take(),
            marks,
            day_marks,
        }
    }
}
