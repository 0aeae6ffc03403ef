//! What can happen to a gag, as a list in the order it did. The reference reads nothing else.

use gagwright_clearance::{
    Decision, Role,
    case::{Fitness, IncidentKind, TakeResult},
    plan::Hazard,
};

use crate::people::{Paper, Who};

/// A place in the list, by which later entries name earlier ones.
pub type Place = usize;

/// One thing that happened, and the minute at which the server heard of it.
#[derive(Clone, Debug)]
pub struct Happening {
    pub at: i64,
    pub what: What,
}

/// A mark as its signer made it. Two that are alike in everything are one mark delivered twice.
#[derive(Clone, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct Mark {
    pub role: Role,
    pub by: Who,
    pub slot: Option<u8>,
    pub no: bool,
    pub conditional: bool,
    pub revision: u32,
    pub content: usize,
    pub signed_at: i64,
    /// Signed with somebody else's key.
    pub forged: bool,
    /// Under the words of another policy.
    pub old_words: bool,
    pub deputy: Option<Place>,
    /// For a mark of the day: the day and the place signed for.
    pub day: Option<(i64, usize)>,
    pub good_until: Option<i64>,
}

impl Mark {
    pub fn decision(&self) -> Decision {
        match (self.no, self.conditional) {
            (true, _) => Decision::Decline,
            (false, true) => Decision::ApproveWithConditions,
            (false, false) => Decision::Approve,
        }
    }
}

#[derive(Clone, Debug)]
pub enum What {
    Revise(usize),
    Sign(Mark),
    Meet {
        mark: Place,
        by: Who,
    },
    Resolve {
        mark: Place,
        by: Who,
        role: Role,
    },
    SignDay(Mark),
    Hold {
        hazard: Option<Hazard>,
        gag: Scope,
    },
    Agree {
        hold: Place,
        role: Role,
        by: Who,
        said: bool,
    },
    Read {
        value: f64,
        at: i64,
    },
    Run {
        rung: &'static str,
        good: bool,
        content: usize,
    },
    Hat {
        by: Who,
        role: Role,
        on: bool,
    },
    Revoke(Who),
    Paper {
        who: Who,
        paper: Paper,
    },
    Fit {
        who: Who,
        until: Option<i64>,
    },
    Depute {
        from: Who,
        to: Who,
        role: Role,
        gags: Scope,
        starts: i64,
        until: i64,
    },
    EndDeputy(Place),
    Shock(usize),
    SetAside(usize),
    /// What an inspection at a minute, at most the one it is heard of, found good until a day.
    Inspect {
        serial: usize,
        until: i64,
        at: i64,
    },
    Brief {
        day: i64,
        place: usize,
        content: usize,
        absent: Option<Who>,
    },
    StandDown {
        who: Who,
        until: Option<i64>,
    },
    /// What stands for a look of the medic's, for somebody who does not read what was found.
    KeptOff {
        who: Who,
        until: i64,
    },
    Return(Place),
    Look {
        who: Who,
        take: Option<Place>,
        day: i64,
        fitness: Fitness,
        head: bool,
    },
    Incident {
        kind: IncidentKind,
        gag: Scope,
    },
    Tell {
        incident: Place,
        who: &'static str,
    },
    Close {
        incident: Place,
        role: Role,
        by: Who,
    },
    Go {
        content: usize,
        revision: u32,
        day: i64,
        place: usize,
    },
    End {
        take: Place,
        result: TakeResult,
    },
    /// A go on another gag, with one person and one piece in it; after it the medic looks, or does not.
    GoElsewhere {
        who: Who,
        serial: usize,
        look: bool,
    },
    EndElsewhere {
        take: Place,
        performed: bool,
    },
}

/// What a hold, an incident or something lent is about.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Scope {
    This,
    Another,
    Everything,
}
