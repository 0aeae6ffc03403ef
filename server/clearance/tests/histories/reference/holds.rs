//! Holds and incidents: what stops everything until the right people have said the right things.

use gagwright_clearance::{Role, case::IncidentKind, plan::Hazard};

use super::Reference;
use crate::{
    people::Who,
    story::{Place, Scope, What},
};

/// Who owns which hazard, of those named here.
fn owner(hazard: Hazard) -> Role {
    match hazard {
        Hazard::Height | Hazard::Line | Hazard::Gas => Role::Rigging,
        Hazard::Charge | Hazard::Glass => Role::Effects,
        Hazard::Minor => Role::Guardian,
        other => unreachable!("{other:?} is not in these histories"),
    }
}

impl Reference<'_> {
    pub fn held_up(&self) -> bool {
        let mut held = false;
        for (place, one) in self.story.iter().enumerate() {
            if let What::Hold { hazard, gag } = one.what {
                held |= gag != Scope::Another && !self.released(place, hazard);
            }
        }
        held
    }

    /// A hold is released once, at the moment when the coordinator and the owner of the hazard, two
    /// people, have stated the cause, each holding the hat; or now, if that is so now.
    fn released(&self, hold: Place, hazard: Option<Hazard>) -> bool {
        let mut released = self.agreed(hold, hazard, self.story.len());
        for (place, one) in self.story.iter().enumerate() {
            if matches!(one.what, What::Agree { hold: which, .. } if which == hold) {
                released |= self.agreed(hold, hazard, place + 1);
            }
        }
        released
    }

    fn agreed(&self, hold: Place, hazard: Option<Hazard>, after: Place) -> bool {
        let mut coordinators: Vec<Who> = Vec::new();
        let mut owners: Vec<Who> = Vec::new();
        for (place, one) in self.story[..after].iter().enumerate() {
            if let What::Agree {
                hold: which,
                role,
                by,
                said,
            } = one.what
                && which == hold
                && said
                && self.held(by, role, place)
                && self.held(by, role, after)
            {
                if role == Role::Coordinator {
                    coordinators.push(by);
                }
                if hazard.map(owner) == Some(role) {
                    owners.push(by);
                }
            }
        }
        match hazard {
            None => !coordinators.is_empty(),
            Some(_) => two_people(&coordinators, &owners),
        }
    }

    pub fn frozen(&self) -> bool {
        let mut frozen = false;
        for (place, one) in self.story.iter().enumerate() {
            if let What::Incident { kind, gag } = one.what {
                frozen |= gag != Scope::Another && !self.closed(place, kind);
            }
        }
        frozen
    }

    fn closed(&self, incident: Place, kind: IncidentKind) -> bool {
        let mut closed = self.told_and_mended(incident, kind, self.story.len());
        for (place, one) in self.story.iter().enumerate() {
            let about = matches!(one.what, What::Tell { incident: which, .. }
                | What::Close { incident: which, .. } if which == incident);
            if about {
                closed |= self.told_and_mended(incident, kind, place + 1);
            }
        }
        closed
    }

    /// Everyone was told whom the policy names, and coordinator and production, two people, have each
    /// said what was done.
    fn told_and_mended(&self, incident: Place, kind: IncidentKind, after: Place) -> bool {
        let must_know: &[&str] = match kind {
            IncidentKind::NearMiss => NEAR_MISS,
            IncidentKind::Incident => INCIDENT,
        };
        let mut coordinators: Vec<Who> = Vec::new();
        let mut producers: Vec<Who> = Vec::new();
        let mut told: Vec<&str> = Vec::new();
        for (place, one) in self.story[..after].iter().enumerate() {
            match one.what {
                What::Tell {
                    incident: which,
                    who,
                } if which == incident => told.push(who),
                What::Close {
                    incident: which,
                    role,
                    by,
                } if which == incident
                    && self.held(by, role, place)
                    && self.held(by, role, after) =>
                {
                    match role {
                        Role::Coordinator => coordinators.push(by),
                        Role::Production => producers.push(by),
                        _ => {}
                    }
                }
                _ => {}
            }
        }
        let all_told = must_know.iter().all(|who| told.contains(who));
        all_told && two_people(&coordinators, &producers)
    }
}

pub const NEAR_MISS: &[&str] = &["coordinator", "first_ad", "production"];
pub const INCIDENT: &[&str] = &[
    "coordinator",
    "first_ad",
    "medic",
    "production",
    "the insurer",
    "the authority",
];

fn two_people(some: &[Who], others: &[Who]) -> bool {
    let mut two = false;
    for one in some {
        for other in others {
            two |= one != other;
        }
    }
    two
}
