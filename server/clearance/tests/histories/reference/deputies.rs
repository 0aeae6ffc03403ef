//! Whether somebody speaks for the role they signed under: they hold its hat, or a holder lent it to them, for
//! a time and for certain gags. It is asked anew at every moment, and of the plan and the day alike.

use std::collections::BTreeSet;

use gagwright_clearance::{Role, RoleState};

use super::{Asked, Reference};
use crate::{
    clock::DAY,
    story::{Mark, Place, Scope, What},
};

/// What can be amiss with a mark that was signed in somebody's stead.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Amiss {
    /// What it names lends nothing.
    NothingLent,
    ToAnother,
    AnotherRole,
    /// The policy lets nobody lend the role, or nothing could.
    NeverLent,
    AnotherGag,
    NotYet,
    RanOut,
    /// It has run for as long as the policy lets one run.
    TooLong,
    Withdrawn,
    /// Whoever lent the hat does not hold it.
    HolderGone,
    /// Nobody deputises on a gag they perform in.
    Performs,
    Revoked,
    Uncertified,
}

/// What became of a mark for the day signed in somebody's stead.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Became {
    Stood,
    /// It says no, and is the last word.
    SaysNo,
    /// It said no and others say yes, which does not lift it.
    StillNo,
    /// The same, once whoever said it may no longer speak.
    NoLongerNo,
    /// It lapsed, for this and nothing else.
    Lapsed(Amiss),
}

impl Became {
    pub const ALL: [Became; 17] = [
        Became::Stood,
        Became::SaysNo,
        Became::StillNo,
        Became::NoLongerNo,
        Became::Lapsed(Amiss::NothingLent),
        Became::Lapsed(Amiss::ToAnother),
        Became::Lapsed(Amiss::AnotherRole),
        Became::Lapsed(Amiss::NeverLent),
        Became::Lapsed(Amiss::AnotherGag),
        Became::Lapsed(Amiss::NotYet),
        Became::Lapsed(Amiss::RanOut),
        Became::Lapsed(Amiss::TooLong),
        Became::Lapsed(Amiss::Withdrawn),
        Became::Lapsed(Amiss::HolderGone),
        Became::Lapsed(Amiss::Performs),
        Became::Lapsed(Amiss::Revoked),
        Became::Lapsed(Amiss::Uncertified),
    ];
}

impl Reference<'_> {
    /// Whether somebody's word under a role counts now: by their own hat, or, where the mark names what was lent,
    /// by that and by nothing else.
    pub fn entitled(&self, place: Place, mark: &Mark) -> bool {
        match mark.deputy {
            None => self.holds(mark.by, mark.role),
            Some(named) => self.amiss(place, mark, named).is_empty(),
        }
    }

    /// Everything amiss with what was lent, for a mark that arrived at a place of the story.
    fn amiss(&self, place: Place, mark: &Mark, named: Place) -> BTreeSet<Amiss> {
        let What::Depute {
            from,
            to,
            role,
            gags,
            starts,
            until,
        } = self.story[named].what
        else {
            return BTreeSet::from([Amiss::NothingLent]);
        };
        let mut amiss = BTreeSet::new();
        let mut add = |what, is: bool| {
            if is {
                amiss.insert(what);
            }
        };
        add(Amiss::ToAnother, to != mark.by);
        add(Amiss::AnotherRole, role != mark.role);
        add(Amiss::AnotherGag, gags == Scope::Another);
        // Consent, a minor's conditions and the welfare of animals are nobody else's to give.
        let never = matches!(role, Role::Performer | Role::Guardian | Role::Animals);
        let rule = self.policy.delegation.get(&role);
        add(Amiss::NeverLent, never || rule.is_none());
        if let Some(rule) = rule {
            let longest = starts + i64::from(rule.longest_days) * DAY;
            add(Amiss::TooLong, longest <= self.now);
        }
        // When it arrived, by the server's clock: what a phone's clock says lends nobody a hat.
        add(Amiss::NotYet, self.story[place].at < starts);
        add(Amiss::RanOut, until <= self.now);
        let mut ended = false;
        for one in self.story {
            ended |= matches!(one.what, What::EndDeputy(which) if which == named);
        }
        add(Amiss::Withdrawn, ended);
        add(Amiss::HolderGone, !self.holds(from, role));
        add(Amiss::Performs, self.is_cast(to));
        amiss
    }

    /// Whether a signer has the certificates that the role asks for, or signs in the stead of somebody who may
    /// lend the role without them.
    pub fn papers(&self, mark: &Mark, day: Option<i64>) -> bool {
        let rule = self.policy.delegation.get(&mark.role);
        let without = mark.deputy.is_some() && rule.is_some_and(|rule| !rule.certificates);
        without || self.certified(mark.by, mark.role, day)
    }

    /// What became of the marks for the day that were signed in somebody's stead.
    pub fn deputised_days(&self) -> BTreeSet<Became> {
        let mut all = BTreeSet::new();
        for asked in self.asked() {
            if self.policy.day_attestation(asked.0).is_some() {
                self.add_deputised_day(asked, &mut all);
            }
        }
        all
    }

    fn add_deputised_day(&self, asked: Asked, all: &mut BTreeSet<Became>) {
        let said = self.said_of_the_day(asked);
        let Some((place, last)) = said.last().copied() else {
            return;
        };
        let state = self.day_mark(asked);
        for (at, mark) in &said {
            let no = mark.deputy.is_some() && mark.no && *at != place;
            if no && self.own_last_today(&said, (*at, mark)) {
                match (state, self.entitled(*at, mark)) {
                    (RoleState::Declined, true) if !last.no => all.insert(Became::StillNo),
                    (RoleState::Standing, false) => all.insert(Became::NoLongerNo),
                    _ => false,
                };
            }
        }
        let Some(named) = last.deputy else { return };
        match state {
            RoleState::Standing => {
                all.insert(Became::Stood);
            }
            RoleState::Declined if last.no => {
                all.insert(Became::SaysNo);
            }
            RoleState::Lapsed if !last.no && !self.day_moved_on(place, last) => {
                let (today, _) = self.here();
                let mut amiss = self.amiss(place, last, named);
                if self.revoked_before(last.by, self.story[place].at) {
                    amiss.insert(Amiss::Revoked);
                }
                if !self.papers(last, Some(today)) {
                    amiss.insert(Amiss::Uncertified);
                }
                if amiss.len() == 1 {
                    all.extend(amiss.into_iter().map(Became::Lapsed));
                }
            }
            _ => {}
        }
    }
}
