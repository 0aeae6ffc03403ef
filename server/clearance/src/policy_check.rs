//! Whether a policy holds together: a production may write its own, and a gap in one would clear gags
//! that nobody answers for. Every finding says where it is and what would mend it.

use std::collections::BTreeSet;

use gagwright_casting::{Catalogue, Slot, SlotId};
use gagwright_mechanics::Facet;

use crate::{
    plan::Hazard,
    policy::{Policy, Role, RolePolicy, TechniquePolicy, day_problems},
    validate::{FieldProblem, Problems},
};

impl Policy {
    /// Everything that does not fit together or that no technique knows, with where it is in the policy and
    /// what would mend it.
    pub fn findings(&self) -> Vec<FieldProblem> {
        let mut found = Problems(self.inconsistencies());
        self.against_techniques(&mut found);
        found.0
    }

    /// Everything that does not fit together by itself.
    pub(crate) fn inconsistencies(&self) -> Vec<FieldProblem> {
        let mut found = Problems::default();
        if self.version.trim().is_empty() {
            found.add(
                "/version",
                "it has no version",
                "give it a short name that no version had",
            );
        }
        self.core_roles(&mut found);
        let mut roles = BTreeSet::new();
        let mut attestations = BTreeSet::new();
        for (at, role) in self.roles.iter().enumerate() {
            let pointer = format!("/roles/{at}");
            if !roles.insert(role.role) {
                found.add(
                    &pointer,
                    format!("the role {} is in it twice", role.role.name()),
                    "take one out",
                );
            }
            if !attestations.insert(role.attestation.id.as_str()) {
                found.add(
                    format!("{pointer}/attestation/id"),
                    format!("two roles share the attestation {}", role.attestation.id),
                    "give each its own id",
                );
            }
            role_problems(&pointer, role, &mut found);
        }
        self.references(&roles, &mut found);
        self.owners(&mut found);
        for (name, technique) in &self.techniques {
            technique_problems(name, technique, &mut found);
        }
        self.own_rules(&mut found);
        let mut of_the_day = Vec::new();
        day_problems(self, &mut of_the_day);
        for problem in of_the_day {
            found.add("", problem, "correct what the policy says of the day");
        }
        found.0
    }

    /// The coordinator answers for every gag and the whole of it; every performer consents.
    fn core_roles(&self, found: &mut Problems) {
        let pointer =
            |role: Role, field: &str| match self.roles.iter().position(|one| one.role == role) {
                Some(at) => format!("/roles/{at}{field}"),
                None => "/roles".to_owned(),
            };
        match self.role(Role::Coordinator) {
            Some(coordinator) if coordinator.required.always => {
                if Facet::ALL
                    .iter()
                    .any(|facet| !coordinator.covers.contains(facet))
                {
                    found.add(
                        pointer(Role::Coordinator, "/covers"),
                        "the coordinator does not answer for every facet",
                        "list every facet",
                    );
                }
            }
            _ => found.add(
                pointer(Role::Coordinator, "/required/always"),
                "the coordinator need not sign every gag",
                "set always to true",
            ),
        }
        if !self
            .role(Role::Performer)
            .is_some_and(|performer| performer.required.always)
        {
            found.add(
                pointer(Role::Performer, "/required/always"),
                "performers need not consent to every gag",
                "set always to true",
            );
        }
    }

    fn references(&self, roles: &BTreeSet<Role>, found: &mut Problems) {
        let mut named: Vec<(String, Role)> = Vec::new();
        for (at, [one, other]) in self.separate.iter().enumerate() {
            named.push((format!("/separate/{at}/0"), *one));
            named.push((format!("/separate/{at}/1"), *other));
        }
        for (hazard, owner) in &self.owners {
            named.push((format!("/owners/{}", hazard.name()), *owner));
        }
        named.extend(
            self.final_say
                .iter()
                .map(|role| ("/final_say".to_owned(), *role)),
        );
        for (name, technique) in &self.techniques {
            let roles = technique.roles.iter();
            named.extend(roles.map(|role| (format!("/techniques/{name}/roles"), *role)));
        }
        self.own_references(&mut named);
        let mut said = BTreeSet::new();
        for (pointer, role) in named {
            if !roles.contains(&role) && said.insert(role) {
                found.add(
                    pointer,
                    format!("it names the role {} and does not describe it", role.name()),
                    "describe the role in roles, or name another",
                );
            }
        }
        for (at, [one, other]) in self.separate.iter().enumerate() {
            if one == other {
                found.add(
                    format!("/separate/{at}"),
                    format!("the role {} is kept apart from itself", one.name()),
                    "name two roles",
                );
            }
        }
    }

    fn owners(&self, found: &mut Problems) {
        for hazard in Hazard::ALL {
            let pointer = format!("/owners/{}", hazard.name());
            let Some(owner) = self.owners.get(&hazard) else {
                found.add(
                    pointer,
                    format!("nobody owns the hazard of {}", hazard.words()),
                    "name the role that must agree before a hold about it is released",
                );
                continue;
            };
            let signs = self.role(*owner).is_none_or(|policy| {
                policy.required.always || policy.required.hazards.contains(&hazard)
            });
            if !signs {
                found.add(
                    pointer,
                    format!(
                        "{} owns the hazard of {} and need not sign for it",
                        owner.name(),
                        hazard.words()
                    ),
                    "have that role sign for the hazard, or give it another owner",
                );
            }
        }
    }
}

fn role_problems(pointer: &str, role: &RolePolicy, found: &mut Problems) {
    let name = role.role.name();
    if role.role == Role::Observer {
        found.add(
            format!("{pointer}/role"),
            "an observer reads and signs nothing",
            "take it out",
        );
    }
    if role.title.trim().is_empty() {
        found.add(
            format!("{pointer}/title"),
            format!("the role {name} has no title"),
            "write what people call it",
        );
    }
    if role.covers.is_empty() {
        found.add(
            format!("{pointer}/covers"),
            format!("the role {name} answers for nothing"),
            "list the facets it answers for",
        );
    }
    if role.attestation.id.trim().is_empty() || role.attestation.text.trim().is_empty() {
        found.add(
            format!("{pointer}/attestation"),
            format!("the role {name} has no attestation to sign"),
            "write the words it puts its name to, and their id",
        );
    }
    for (language, text) in &role.attestation.texts {
        if language == crate::policy::Attestation::ENGLISH
            || !(2..=35).contains(&language.len())
            || !language
                .chars()
                .all(|one| one.is_ascii_alphanumeric() || one == '-')
            || text.trim().is_empty()
        {
            found.add(
                format!("{pointer}/attestation/texts/{language}"),
                format!(
                    "the role {name} has an attestation in \"{}\" that cannot be shown",
                    language.escape_debug()
                ),
                "use a language code other than en, and write the words in it",
            );
        }
    }
    if role.good_for_hours == Some(0) {
        found.add(
            format!("{pointer}/good_for_hours"),
            format!("sign-offs of the role {name} are good for no time at all"),
            "give at least one hour, or leave it out: then they are good until something changes",
        );
    }
    for (at, group) in role.certificates.iter().enumerate() {
        let pointer = format!("{pointer}/certificates/{at}");
        if group.is_empty() {
            found.add(
                &pointer,
                format!("the role {name} asks for a certificate and names none"),
                "name one, or take the empty group out",
            );
        }
        for (at, kind) in group.iter().enumerate() {
            if Catalogue::built_in().certificate(kind).is_none() {
                found.add(
                    format!("{pointer}/{at}"),
                    format!("the role {name} asks for an unknown certificate, {kind}"),
                    "use a kind from the catalogue of certificates",
                );
            }
        }
    }
}

fn technique_problems(name: &str, technique: &TechniquePolicy, found: &mut Problems) {
    let slot = Slot {
        id: SlotId(uuid::Uuid::nil()),
        name: String::new(),
        requirements: technique.requirements.clone(),
        person: None,
        kit_mass: 0.0,
    };
    for unknown in Catalogue::built_in().unknown_names(&slot) {
        found.add(
            format!("/techniques/{name}/requirements"),
            format!("the technique {name}: {unknown}"),
            "use a name from the catalogue",
        );
    }
    let mut rungs = BTreeSet::new();
    for (at, rung) in technique.rungs.iter().enumerate() {
        let pointer = format!("/techniques/{name}/rungs/{at}");
        if !rungs.insert(rung.name.as_str()) {
            found.add(
                &pointer,
                format!("the technique {name} has two rungs named {}", rung.name),
                "give each rung its own name",
            );
        }
        if rung.good_runs == 0 || rung.what.trim().is_empty() {
            found.add(
                &pointer,
                format!("the technique {name} has an empty rung, {}", rung.name),
                "say what is done, and how many good runs it takes",
            );
        }
    }
}
