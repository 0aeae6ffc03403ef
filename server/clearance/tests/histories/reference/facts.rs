//! Plain facts: what the plan says now, who holds which hat, what hangs where.

use gagwright_clearance::Role;

use super::Reference;
use crate::{
    clock,
    contents::{Content, SERIALS},
    people::{COMPANY, Paper, Who},
    story::{Place, What},
};

impl Reference<'_> {
    /// The plan as it stands.
    pub fn plan(&self) -> &Content {
        let mut content = 0;
        for one in self.story {
            if let What::Revise(to) = one.what {
                content = to;
            }
        }
        &self.contents[content]
    }

    pub fn revision(&self) -> u32 {
        let mut revision = 1;
        for one in self.story {
            if let What::Revise(_) = one.what {
                revision += 1;
            }
        }
        revision
    }

    /// The minute at which the plan as it stands was written.
    pub fn written(&self) -> i64 {
        let mut written = 0;
        for one in self.story {
            if let What::Revise(_) = one.what {
                written = one.at;
            }
        }
        written
    }

    /// Whether somebody held a hat after so many happenings.
    pub fn held(&self, who: Who, role: Role, after: Place) -> bool {
        let mut held = COMPANY[who].1 == Some(role);
        for one in &self.story[..after] {
            if let What::Hat { by, role: hat, on } = one.what
                && by == who
                && hat == role
            {
                held = on;
            }
        }
        held
    }

    pub fn holds(&self, who: Who, role: Role) -> bool {
        self.held(who, role, self.story.len())
    }

    pub fn is_cast(&self, who: Who) -> bool {
        let mut cast = false;
        for (_, person) in &self.plan().slots {
            cast |= *person == Some(who);
        }
        cast
    }

    /// Whether somebody is under eighteen on a day: all birthdays here are the second of April, and all
    /// days before it.
    pub fn is_minor(&self, who: Who, day: i64) -> bool {
        assert!(day < 21, "the second of April changes who is of age");
        2026 - i64::from(COMPANY[who].3) <= 18
    }

    /// Whether somebody's certificate is one of those a role asks for and counts on a day.
    fn certified_on(&self, who: Who, role: Role, day: i64) -> bool {
        let mut paper = Paper::Good;
        for one in self.story {
            if let What::Paper {
                who: of,
                paper: now,
            } = one.what
                && of == who
            {
                paper = now;
            }
        }
        let in_date = match paper {
            Paper::Good => true,
            Paper::Until(last) => day <= last,
            Paper::Withdrawn(from) => day < from,
            Paper::Lost => false,
        };
        // What the policy asks of each role, in the words of the catalogue: level 3 stands in for level 2,
        // and a film pyrotechnician is a pyrotechnician.
        let fits = match role {
            Role::Rigging => COMPANY[who].2 == "rope_access_3",
            Role::Medic => COMPANY[who].2 == "paramedic",
            Role::Effects => COMPANY[who].2 == "pyrotechnician_film",
            Role::Fire => COMPANY[who].2 == "fire_safety_officer",
            Role::Engineer => COMPANY[who].2 == "engineer_registration",
            _ => return true,
        };
        fits && in_date
    }

    /// Certificates must count both today and on the day in question, where that is still to come.
    pub fn certified(&self, who: Who, role: Role, day: Option<i64>) -> bool {
        let today = clock::day_of(self.now);
        let then = match day {
            Some(day) if day > today => self.certified_on(who, role, day),
            _ => true,
        };
        self.certified_on(who, role, today) && then
    }

    /// Whether what is used now took a shock load at or after a minute.
    pub fn shocked_since(&self, minute: i64) -> bool {
        let mut shocked = false;
        for one in self.story {
            if let What::Shock(serial) = one.what {
                shocked |= SERIALS[serial] == self.plan().serial && one.at >= minute;
            }
        }
        shocked
    }

    /// Whether anybody cast now, or one of them, took a head impact at or after a minute.
    pub fn struck_since(&self, minute: i64, whose: Option<Who>) -> bool {
        let mut struck = false;
        for one in self.story {
            if let What::Look {
                who, head: true, ..
            }
            | What::KeptOff { who, .. } = one.what
            {
                let asked = whose.is_none() || whose == Some(who);
                struck |= self.is_cast(who) && asked && one.at >= minute;
            }
        }
        struck
    }

    /// Whether the wind was read outside the plan's band at or after a minute. A reading from more than
    /// five minutes ahead is not one yet, and what is no number is outside.
    pub fn blown_since(&self, minute: i64) -> bool {
        let mut blown = false;
        for one in self.story {
            if let What::Read { value, at } = one.what {
                let inside = value <= self.plan().band;
                blown |= at >= minute && at <= self.now + 5 && !inside;
            }
        }
        blown
    }

    /// The latest reading of the wind, minute and whether it is inside the band; of two at one minute,
    /// one that is outside decides.
    pub fn latest_wind(&self) -> Option<(i64, bool)> {
        let mut latest: Option<(i64, bool)> = None;
        for one in self.story {
            if let What::Read { value, at } = one.what
                && at <= self.now + 5
            {
                let inside = value <= self.plan().band;
                latest = match latest {
                    Some((before, _)) if before > at => latest,
                    Some((before, was)) if before == at => Some((at, was && inside)),
                    _ => Some((at, inside)),
                };
            }
        }
        latest
    }

    /// Whether a piece is set aside, and the last day that its inspection counts.
    pub fn gear(&self, serial: &str) -> (bool, i64) {
        let mut aside = false;
        let mut until = crate::contents::INSPECTED;
        // The minutes that an inspection must not lie before: of all that is known to have befallen it.
        let mut shocks: Vec<i64> = Vec::new();
        let mut since = 0;
        for one in self.story {
            match one.what {
                What::Shock(which) if SERIALS[which] == serial => {
                    shocks.push(one.at);
                    if !aside {
                        since = one.at;
                    }
                    aside = true;
                }
                What::SetAside(which) if SERIALS[which] == serial => {
                    since = one.at;
                    aside = true;
                }
                What::Inspect {
                    serial: which,
                    until: day,
                    at,
                } if SERIALS[which] == serial => {
                    let saw_all = since <= at && shocks.iter().all(|shock| *shock <= at);
                    if !aside || saw_all {
                        aside = false;
                        until = day;
                    }
                }
                _ => {}
            }
        }
        (aside, until)
    }
}
