//! The case of one gag, put together from what the leaves said, with everything that bears on it and
//! cannot be known any more.

use std::collections::BTreeSet;

use gagwright_casting::{GagId, PersonId};
use serde::{Deserialize, Serialize};

use super::{GagThen, Kept, Replay};
use crate::{
    case::{Case, Hold},
    day_mark,
    earlier::{carried, revisions},
    jws,
    plan::Plan,
    policy::Policy,
    signoff::{Device, Member, Statement},
};

/// A gag's case as it stood.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Rebuilt {
    /// The case; none when the plan or the policy cannot be known any more.
    pub case: Option<Case>,
    /// Whether everything that the answer depends on is known. When it is not, the judge's answer to this
    /// case is not the answer of that day.
    pub certain: bool,
    /// What cannot be known any more, in sentences.
    pub unknown: Vec<String>,
}

impl Replay {
    /// The case of a gag after the leaves so far; none when there was no such gag yet.
    pub fn case(&self, gag: GagId) -> Option<Rebuilt> {
        let then = self.gags.get(&gag)?;
        let production = self.production?;
        let mut lost = Lost::default();
        for (leaf, kind) in &self.strange {
            lost.needed(format!(
                "Leaf {leaf} is of the kind {kind}, which this program does not know; what it changed is unknown."
            ));
        }
        let policy = lost.policy(self.policy.as_ref());
        let plan = lost.plan(then);
        let signed: Vec<Statement> = then
            .signoffs
            .iter()
            .filter_map(|one| jws::read_unverified(&one.jws).ok())
            .collect();
        for (signoff, statement) in then.signoffs.iter().zip(&signed) {
            let texts = statement.conditions.len() + usize::from(statement.reason.is_some());
            if texts > signoff.openings.len() {
                lost.words(signoff.leaf, "what the signer wrote");
            }
        }
        let holds = self.holds_on(gag, &mut lost);
        let case = match (policy, plan) {
            (Some(policy), Some(plan)) => {
                let cast: BTreeSet<PersonId> = cast(&plan);
                let day = self.day_of(&plan, &cast, &policy, &mut lost);
                let signers: BTreeSet<PersonId> = signed
                    .iter()
                    .map(Statement::hand)
                    .chain(day_mark::hands(&day))
                    .collect();
                // Of a signer only the certificates count, and only where the policy asks for some.
                let proven = |one: &&Statement| {
                    let role = policy.role(one.role);
                    role.is_some_and(|role| !role.certificates.is_empty())
                };
                let proven = signed.iter().filter(proven).map(|one| one.signer);
                let asked: BTreeSet<PersonId> = proven.chain(cast.iter().copied()).collect();
                for person in asked {
                    lost.person(person, self.people.get(&person), cast.contains(&person));
                }
                let wanted = revisions(&then.signoffs, plan.revision);
                let known = then.earlier.iter().filter_map(Kept::known);
                let before = known.filter(|one| wanted.contains(&one.revision)).cloned();
                let earlier = carried(&plan, before);
                Some(Case {
                    production,
                    signoffs: then.signoffs.clone(),
                    holds,
                    readings: then.readings.clone(),
                    runs: then.runs.clone(),
                    people: cast
                        .iter()
                        .filter_map(|id| self.people.get(id)?.known().cloned())
                        .collect(),
                    members: self.members(),
                    devices: self.devices_of(&signers),
                    policy,
                    plan,
                    day,
                    delegations: self.delegations.clone(),
                    resolutions: then.resolutions.clone(),
                    earlier,
                })
            }
            _ => None,
        };
        Some(Rebuilt {
            case,
            certain: lost.certain,
            unknown: lost.told,
        })
    }

    /// Holds on a gag or on the whole production, in the order of the leaves.
    pub fn holds(&self, gag: GagId) -> Vec<Hold> {
        self.holds_on(gag, &mut Lost::default())
    }

    fn holds_on(&self, gag: GagId, lost: &mut Lost) -> Vec<Hold> {
        let on = |hold: &Hold| hold.gag.is_none_or(|held| held == gag);
        let mut holds = Vec::new();
        for (leaf, hold) in self.holds.iter().filter(|(_, hold)| on(hold)) {
            if self.gone.contains(leaf) {
                lost.words(*leaf, "why the hold was raised");
            }
            holds.push(hold.clone());
        }
        holds
    }

    /// Who held which hats, with the certificates the policy may ask of them.
    fn members(&self) -> Vec<Member> {
        self.roles
            .iter()
            .filter_map(|(id, roles)| {
                let kept = self.people.get(id)?;
                let known = kept.known();
                Some(Member {
                    person: *id,
                    name: known.map_or_else(
                        || format!("somebody since erased ({id})"),
                        |person| person.name.clone(),
                    ),
                    roles: roles.clone(),
                    certificates: known
                        .map(|one| one.certificates.clone())
                        .unwrap_or_default(),
                })
            })
            .collect()
    }

    fn devices_of(&self, signers: &BTreeSet<PersonId>) -> Vec<Device> {
        let mut devices: Vec<Device> = self
            .devices
            .values()
            .filter(|device| signers.contains(&device.person))
            .cloned()
            .collect();
        devices.sort_by_key(|device| (device.registered_at, device.id));
        devices
    }
}

fn cast(plan: &Plan) -> BTreeSet<PersonId> {
    let slots = plan.facets.cast.slots.iter();
    slots.filter_map(|slot| slot.person).collect()
}

/// What cannot be known any more.
pub(super) struct Lost {
    certain: bool,
    told: Vec<String>,
}

impl Default for Lost {
    fn default() -> Self {
        Lost {
            certain: true,
            told: Vec::new(),
        }
    }
}

impl Lost {
    /// Something the answer depends on.
    pub(super) fn needed(&mut self, sentence: String) {
        self.certain = false;
        self.told.push(sentence);
    }

    /// Words that change nothing about the answer.
    pub(super) fn words(&mut self, leaf: u64, what: &str) {
        self.told.push(format!(
            "The words beside leaf {leaf} were erased or are not in this file: {what} cannot be read any more; \
             that it was said, when and by whom is known."
        ));
    }

    fn policy(&mut self, policy: Option<&Kept<Policy>>) -> Option<Policy> {
        match policy {
            Some(Kept::Known(policy)) => return Some(policy.clone()),
            Some(Kept::Gone { leaf }) => self.needed(format!(
                "The policy of leaf {leaf} is not in this file: who had to sign cannot be known."
            )),
            None => self.needed("No leaf says which policy held.".to_owned()),
        }
        None
    }

    fn plan(&mut self, gag: &GagThen) -> Option<Plan> {
        match &gag.plan {
            Kept::Known(plan) => Some(plan.clone()),
            Kept::Gone { leaf } => {
                self.needed(format!(
                    "Revision {} of the plan, leaf {leaf}, is not in this file: only its hashes are known.",
                    gag.revision
                ));
                None
            }
        }
    }

    fn person(&mut self, id: PersonId, kept: Option<&Kept<gagwright_casting::Person>>, cast: bool) {
        let Some(Kept::Gone { leaf }) = kept else {
            return;
        };
        self.needed(match cast {
            true => format!(
                "What the roster said of {id}, leaf {leaf}, was erased or is not in this file: whether they could \
                 do what they were cast for cannot be known any more."
            ),
            false => format!(
                "What the roster said of {id}, leaf {leaf}, was erased or is not in this file: which certificates \
                 they held when they signed cannot be known any more."
            ),
        });
    }
}
