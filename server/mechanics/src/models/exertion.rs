//! Effort and rest of a body that goes flat out in turns: a reserve from 1, fresh, to 0, spent.
//!
//! It runs out evenly while working flat out and comes back as (1 - R)' = -(1 - R) / tau at rest: the balance of
//! work above critical power with exponential recovery (P. F. Skiba et al., Med. Sci. Sports Exerc. 44, 2012, from
//! memory), written for the one effort and scaled to its own full store. Exact between changes.

/// How soon a body is spent and how soon it comes back, s.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stamina {
    /// Longest that it goes flat out from fresh.
    pub full_effort: f64,
    /// Time constant of recovery.
    pub recovery: f64,
}

/// Takes with rests between.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Day {
    /// How many takes.
    pub takes: usize,
    /// Time of one, s.
    pub take: f64,
    /// Rest between two, s.
    pub rest: f64,
}

impl Stamina {
    /// The reserve after working flat out.
    pub fn worked(&self, reserve: f64, time: f64) -> f64 {
        (reserve - time / self.full_effort).max(0.0)
    }

    /// The reserve after a rest.
    pub fn rested(&self, reserve: f64, time: f64) -> f64 {
        1.0 - (1.0 - reserve) * libm::exp(-time / self.recovery)
    }

    /// Goes through the day, giving the time and the reserve at the end of each take to `watch`; the reserve at
    /// the end of the last.
    pub fn through(&self, day: &Day, mut watch: impl FnMut(f64, f64)) -> f64 {
        let (mut reserve, mut time) = (1.0, 0.0);
        for take in 0..day.takes {
            if take > 0 {
                reserve = self.rested(reserve, day.rest);
                time += day.rest;
            }
            reserve = self.worked(reserve, day.take);
            time += day.take;
            watch(time, reserve);
        }
        reserve
    }
}

impl Day {
    /// From the first take's start to the last one's end, s.
    pub fn length(&self) -> f64 {
        let takes = self.takes as f64;
        takes * self.take + (takes - 1.0).max(0.0) * self.rest
    }

    /// Share of the time that is work, take by take.
    pub fn working_share(&self) -> f64 {
        self.take / (self.take + self.rest)
    }
}
