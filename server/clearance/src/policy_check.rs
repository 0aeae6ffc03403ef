//! Whether a policy holds together: a production may write its own, and a gap in one would clear gags
//! that nobody answers for.

use std::collections::BTreeSet;

use gagwright_casting::{Catalogue, Slot, SlotId};
use gagwright_mechanics::Facet;

use crate::{
    plan::Hazard,
    policy::{Policy, Role, RolePolicy, TechniquePolicy, day_problems},
};

impl Policy {
    /// Everything that does not fit together, a sentence each, without the final stop.
    pub fn problems(&self) -> Vec<String> {
        let mut problems = Vec::new();
        if self.version.trim().is_empty() {
            problems.push("it has no version".to_owned());
        }
        self.core_roles(&mut problems);
        let mut roles = BTreeSet::new();
        let mut attestations = BTreeSet::new();
        for role in &self.roles {
            if !roles.insert(role.role) {
                problems.push(format!("the role {} is in it twice", role.role.name()));
            }
            if !attestations.insert(role.attestation.id.as_str()) {
                problems.push(format!(
                    "two roles share the attestation {}",
                    role.attestation.id
                ));
            }
            role_problems(role, &mut problems);
        }
        self.references(&roles, &mut problems);
        self.owners(&mut problems);
        for (name, technique) in &self.techniques {
            technique_problems(name, technique, &mut problems);
        }
        day_problems(self, &mut problems);
        problems
    }

    /// The coordinator answers for every gag and the whole of it; every performer consents.
    fn core_roles(&self, problems: &mut Vec<String>) {
        match self.role(Role::Coordinator) {
            Some(coordinator) if coordinator.required.always => {
                if Facet::ALL
                    .iter()
                    .any(|facet| !coordinator.covers.contains(facet))
                {
                    problems.push("the coordinator does not answer for every facet".to_owned());
                }
            }
            _ => problems.push("the coordinator need not sign every gag".to_owned()),
        }
        if !self
            .role(Role::Performer)
            .is_some_and(|performer| performer.required.always)
        {
            problems.push("performers need not consent to every gag".to_owned());
        }
    }

    fn references(&self, roles: &BTreeSet<Role>, problems: &mut Vec<String>) {
        let technique_roles = self
            .techniques
            .values()
            .flat_map(|technique| &technique.roles);
        let named = self.separate.iter().flatten().chain(self.owners.values());
        let named: BTreeSet<&Role> = named
            .chain(&self.final_say)
            .chain(technique_roles)
            .collect();
        for role in named.into_iter().filter(|role| !roles.contains(role)) {
            problems.push(format!(
                "it names the role {} and does not describe it",
                role.name()
            ));
        }
        for [one, other] in &self.separate {
            if one == other {
                problems.push(format!("the role {} is kept apart from itself", one.name()));
            }
        }
    }

    fn owners(&self, problems: &mut Vec<String>) {
        for hazard in Hazard::ALL {
            let Some(owner) = self.owners.get(&hazard) else {
                problems.push(format!("nobody owns the hazard of {}", hazard.words()));
                continue;
            };
            let signs = self.role(*owner).is_none_or(|policy| {
                policy.required.always || policy.required.hazards.contains(&hazard)
            });
            if !signs {
                problems.push(format!(
                    "{} owns the hazard of {} and need not sign for it",
                    owner.name(),
                    hazard.words()
                ));
            }
        }
    }
}

fn role_problems(role: &RolePolicy, problems: &mut Vec<String>) {
    let name = role.role.name();
    if role.role == Role::Observer {
        problems.push("an observer reads and signs nothing".to_owned());
    }
    if role.title.trim().is_empty() {
        problems.push(format!("the role {name} has no title"));
    }
    if role.covers.is_empty() {
        problems.push(format!("the role {name} answers for nothing"));
    }
    if role.attestation.id.trim().is_empty() || role.attestation.text.trim().is_empty() {
        problems.push(format!("the role {name} has no attestation to sign"));
    }
    if role.good_for_hours == Some(0) {
        problems.push(format!(
            "sign-offs of the role {name} are good for no time at all"
        ));
    }
    for group in &role.certificates {
        if group.is_empty() {
            problems.push(format!(
                "the role {name} asks for a certificate and names none"
            ));
        }
        for kind in group {
            if Catalogue::built_in().certificate(kind).is_none() {
                problems.push(format!(
                    "the role {name} asks for an unknown certificate, {kind}"
                ));
            }
        }
    }
}

fn technique_problems(name: &str, technique: &TechniquePolicy, problems: &mut Vec<String>) {
    let slot = Slot {
        id: SlotId(uuid::Uuid::nil()),
        name: String::new(),
        requirements: technique.requirements.clone(),
        person: None,
        kit_mass: 0.0,
    };
    for unknown in Catalogue::built_in().unknown_names(&slot) {
        problems.push(format!("the technique {name}: {unknown}"));
    }
    let mut rungs = BTreeSet::new();
    for rung in &technique.rungs {
        if !rungs.insert(rung.name.as_str()) {
            problems.push(format!(
                "the technique {name} has two rungs named {}",
                rung.name
            ));
        }
        if rung.good_runs == 0 || rung.what.trim().is_empty() {
            problems.push(format!(
                "the technique {name} has an empty rung, {}",
                rung.name
            ));
        }
    }
}
