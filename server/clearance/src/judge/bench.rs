//! What every part of the judge looks things up in: names, members, hashes, and the sign-offs that can
//! be heard at all. It decides nothing about the gag.

use std::{
    cell::OnceCell,
    collections::{BTreeMap, BTreeSet},
    sync::Arc,
};

use gagwright_casting::{Person, PersonId, SlotId};
use gagwright_mechanics::{Facet, Technique};
use jiff::{Timestamp, civil::Date};

use super::{
    FindTechnique,
    events::{self, Happened},
    memory::JudgeMemory,
};
use crate::{
    case::{Case, DaySignOff, Names},
    day_mark::DayStatement,
    delegation::{self, Delegation, Hat},
    ids::SignOffId,
    ink,
    plan::FacetHashes,
    policy::{Role, RolePolicy},
    signoff::{Decision, Device, Member, SignOff, Statement},
    words,
};

/// A sign-off on this gag and what it states, its signature not yet checked.
pub(crate) struct Heard<'a> {
    pub signoff: &'a SignOff,
    pub statement: Arc<Statement>,
    /// The answer of [`Bench::device_of`], kept: checking a signature is by far the dearest step.
    device: OnceCell<Option<&'a Device>>,
}

/// A mark for a day of this gag, likewise.
pub(crate) struct HeardDay<'a> {
    pub signoff: &'a DaySignOff,
    pub statement: Arc<DayStatement>,
    device: OnceCell<Option<&'a Device>>,
}

/// The case laid out for looking things up.
pub(crate) struct Bench<'a> {
    pub case: &'a Case,
    pub now: Timestamp,
    pub today: Date,
    /// Hashes of the facets; empty when the plan has no canonical form, so that nothing matches.
    pub hashes: FacetHashes,
    pub names: Names,
    /// In trail order, each id once.
    heard: Vec<Heard<'a>>,
    members: BTreeMap<PersonId, &'a Member>,
    happened: OnceCell<Vec<Happened>>,
    heard_day: OnceCell<Vec<HeardDay<'a>>>,
    memory: &'a JudgeMemory,
    /// The plan's technique, where it is known: what its numbers are called and measured in.
    pub technique: Option<&'static dyn Technique>,
}

impl<'a> Bench<'a> {
    pub fn new(
        case: &'a Case,
        now: Timestamp,
        hashes: FacetHashes,
        memory: &'a JudgeMemory,
    ) -> Bench<'a> {
        Bench::with(case, now, hashes, gagwright_mechanics::find, memory)
    }

    pub fn with(
        case: &'a Case,
        now: Timestamp,
        hashes: FacetHashes,
        find: FindTechnique,
        memory: &'a JudgeMemory,
    ) -> Bench<'a> {
        let people = case
            .people
            .iter()
            .map(|person| (person.id, person.name.clone()));
        let members = case
            .members
            .iter()
            .map(|member| (member.person, member.name.clone()));
        Bench {
            case,
            now,
            today: words::day_of(now),
            hashes,
            names: people.chain(members).collect(),
            heard: heard(case, memory),
            members: case
                .members
                .iter()
                .map(|member| (member.person, member))
                .collect(),
            happened: OnceCell::new(),
            heard_day: OnceCell::new(),
            memory,
            technique: find(&case.plan.technique),
        }
    }

    /// Everything in the policy that does not fit together.
    pub fn policy_problems(&self) -> Arc<Vec<String>> {
        self.memory.problems(&self.case.policy)
    }

    /// What happened on the day that voids what was signed before it.
    pub fn happened(&self) -> &[Happened] {
        self.happened.get_or_init(|| events::happened(self))
    }

    /// Whether these facets are what they were when the hashes were kept.
    pub fn is_as_then(&self, facets: &[Facet], then: &FacetHashes) -> bool {
        facets.iter().all(|facet| {
            let now = self.hashes.get(facet);
            now.is_some() && then.get(facet) == now
        })
    }

    pub fn name(&self, person: PersonId) -> String {
        self.names
            .get(&person)
            .cloned()
            .unwrap_or_else(|| format!("person {person}"))
    }

    pub fn member(&self, person: PersonId) -> Option<&'a Member> {
        self.members.get(&person).copied()
    }

    pub fn person(&self, person: PersonId) -> Option<&'a Person> {
        self.case.people.iter().find(|one| one.id == person)
    }

    pub fn holds_role(&self, person: PersonId, role: Role) -> bool {
        self.member(person)
            .is_some_and(|member| member.roles.contains(&role))
    }

    /// The delegation that a statement names, if it lets this signer sign as that role.
    pub fn delegation(&self, hat: Hat) -> Option<&'a Delegation> {
        let named = hat.delegation?;
        let mut all = self.case.delegations.iter();
        all.find(|one| one.id == named && one.to == hat.signer && one.role == hat.role)
    }

    /// Why somebody's word under a role does not count now, in a sentence; none: they hold the role, or
    /// deputise for somebody who does.
    pub fn unentitled(&self, hat: Hat, received: Timestamp, title: &str) -> Option<String> {
        if hat.delegation.is_none() {
            let lost = !self.holds_role(hat.signer, hat.role);
            let name = || self.name(hat.signer);
            return lost.then(|| format!("{} no longer holds the role {title}.", name()));
        }
        let Some(delegation) = self.delegation(hat) else {
            let name = self.name(hat.signer);
            return Some(format!("Nobody let {name} sign as {title}."));
        };
        let name = |person| self.name(person);
        delegation::refusal(self.case, delegation, received, self.now, name)
    }

    /// Whether whoever signs under this hat needs the certificates that the role asks for; a delegate may not.
    pub fn needs_certificates(&self, hat: Hat) -> bool {
        let rule = self.case.policy.delegation.get(&hat.role);
        hat.delegation.is_none() || rule.is_none_or(|rule| rule.certificates)
    }

    /// Everyone who holds a role, by name.
    pub fn holders(&self, role: Role) -> Vec<String> {
        let mut names: Vec<String> = self
            .members
            .values()
            .filter(|member| member.roles.contains(&role))
            .map(|member| member.name.clone())
            .collect();
        names.sort();
        names
    }

    pub fn role(&self, role: Role) -> Option<&'a RolePolicy> {
        self.case
            .policy
            .roles
            .iter()
            .find(|policy| policy.role == role)
    }

    pub fn title(&self, role: Role) -> String {
        self.role(role)
            .map_or_else(|| role.name().to_owned(), |policy| policy.title.clone())
    }

    /// Sign-offs under a role and, for performers, in a slot by its performer, newest first; without a yes
    /// that its own signer had taken back before it arrived.
    pub fn newest_first(
        &self,
        role: Role,
        place: Option<(SlotId, PersonId)>,
    ) -> impl Iterator<Item = &Heard<'a>> {
        let heard = self.heard.iter().enumerate().rev();
        heard
            .filter(move |(_, heard)| {
                let statement = &heard.statement;
                statement.role == role
                    && statement.slot == place.map(|(slot, _)| slot)
                    && place.is_none_or(|(_, person)| statement.signer == person)
            })
            .filter(|(at, heard)| !self.taken_back(*at, &heard.statement))
            .map(|(_, heard)| heard)
    }

    /// Whether the signer's own no, received before this yes, was said after it or as they stood: a yes that
    /// travelled by another phone lifts no later no. Where clocks differ, doubt goes to the no.
    fn taken_back(&self, at: usize, yes: &Statement) -> bool {
        yes.decision != Decision::Decline
            && self.heard.iter().take(at).any(|heard| {
                let no = &heard.statement;
                no.decision == Decision::Decline
                    && (no.signer, no.role, no.slot) == (yes.signer, yes.role, yes.slot)
                    && no.signed_at >= yes.signed_at
                    && self.device_of(heard).is_some()
            })
    }

    /// The device a sign-off was made on, if its signature verifies with that device's key and the
    /// device belongs to the signer or, for a sign-off on paper, to its witness.
    pub fn device_of(&self, heard: &Heard<'a>) -> Option<&'a Device> {
        *heard.device.get_or_init(|| {
            let statement = &heard.statement;
            let device = self
                .case
                .devices
                .iter()
                .find(|device| device.id == statement.device)?;
            let verified = self.memory.verified(&heard.signoff.jws, &device.key)?;
            // On paper the witness's device signs, and nobody is their own witness.
            let hand = device.person == statement.hand() && ink::problem(statement).is_none();
            (verified == *statement && hand).then_some(device)
        })
    }

    /// Marks for days of this gag at a revision it has reached, newest first.
    pub fn day_newest_first(&self) -> impl Iterator<Item = &HeardDay<'a>> {
        let heard = self.heard_day.get_or_init(|| heard_day(self));
        heard.iter().rev()
    }

    /// The device a mark for the day was made on, likewise.
    pub fn day_device_of(&self, heard: &HeardDay<'a>) -> Option<&'a Device> {
        *heard.device.get_or_init(|| {
            let statement = &heard.statement;
            let mut devices = self.case.devices.iter();
            let device = devices.find(|device| device.id == statement.device)?;
            let verified = self.memory.verified_day(&heard.signoff.jws, &device.key)?;
            let hand = device.person == statement.hand() && statement.ink_problem().is_none();
            (verified == *statement && hand).then_some(device)
        })
    }
}

/// In trail order. A repeated id is a replay under the role and place it was signed for: only the first is
/// heard.
fn heard_day<'a>(bench: &Bench<'a>) -> Vec<HeardDay<'a>> {
    let case = bench.case;
    let mut signoffs: Vec<&DaySignOff> = case.day.signoffs.iter().collect();
    signoffs.sort_by_key(|one| one.leaf);
    let mut seen = BTreeSet::new();
    signoffs
        .into_iter()
        .filter_map(|signoff| {
            let statement = bench.memory.claimed_day(&signoff.jws)?;
            let here = statement.gag == case.plan.gag
                && statement.production == case.production
                && statement.revision <= case.plan.revision;
            let place = statement.slot.map(|slot| (slot, statement.signer));
            let first = here && seen.insert((statement.id, statement.role, place));
            first.then(|| HeardDay {
                signoff,
                statement,
                device: OnceCell::new(),
            })
        })
        .collect()
}

/// The sign-offs that speak of this gag at a revision it has reached. A repeated id is a replay: only
/// the first in trail order is heard.
fn heard<'a>(case: &'a Case, memory: &JudgeMemory) -> Vec<Heard<'a>> {
    let mut signoffs: Vec<&SignOff> = case.signoffs.iter().collect();
    signoffs.sort_by_key(|signoff| signoff.leaf);
    let mut seen: BTreeSet<SignOffId> = BTreeSet::new();
    signoffs
        .into_iter()
        .filter_map(|signoff| {
            let statement = memory.claimed(&signoff.jws)?;
            Some(Heard {
                signoff,
                statement,
                device: OnceCell::new(),
            })
        })
        .filter(|heard| {
            let statement = &heard.statement;
            statement.gag == case.plan.gag
                && statement.production == case.production
                && statement.revision <= case.plan.revision
                && seen.insert(statement.id)
        })
        .collect()
}
