//! Which hazards a gag has and which roles must sign it. The policy says so; this module only reads it
//! against the plan.

use std::collections::BTreeSet;

use gagwright_casting::{Slot, SlotId};
use gagwright_mechanics::{Assessment, Status};
use jiff::{Unit, civil::Date};

use super::bench::Bench;
use crate::{
    case::{RoleStanding, RoleState},
    plan::{Hazard, Plan},
    policy::{Policy, Required, Role, RolePolicy},
    words,
};

/// A mark that a gag needs.
pub(crate) struct Needed<'a> {
    pub policy: &'a RolePolicy,
    /// The performer's slot and its name.
    pub slot: Option<&'a Slot>,
    pub because: String,
}

impl Needed<'_> {
    pub fn slot_id(&self) -> Option<SlotId> {
        self.slot.map(|slot| slot.id)
    }

    /// The mark as it stands while nobody has signed.
    pub fn unsigned(&self) -> RoleStanding {
        let policy = self.policy;
        unsigned(policy.role, &policy.title, self.slot_id(), &self.because)
    }
}

/// A mark as it stands while nobody has signed.
pub(crate) fn unsigned(
    role: Role,
    title: &str,
    slot: Option<SlotId>,
    because: &str,
) -> RoleStanding {
    RoleStanding {
        role,
        title: title.to_owned(),
        slot,
        because: because.to_owned(),
        state: RoleState::Missing,
        signoff: None,
        signer: None,
        received_at: None,
        revision: None,
        reasons: Vec::new(),
        changed: Vec::new(),
        open_conditions: Vec::new(),
        signed_for: None,
        witness: None,
        good_until: None,
        notes: Vec::new(),
    }
}

/// Hazards that the technique always brings, those the plan names or weighs, and those that follow from its
/// contents: charges listed, and anyone under eighteen cast.
pub(crate) fn hazards(bench: &Bench<'_>) -> BTreeSet<Hazard> {
    let plan = &bench.case.plan;
    let mut hazards = plan_hazards(plan, &bench.case.policy);
    let day = age_day(plan);
    let minor = plan.facets.cast.slots.iter().any(|slot| {
        let born = slot
            .person
            .and_then(|id| bench.person(id))
            .and_then(|person| person.born);
        born.is_some_and(|born| is_minor(born, day))
    });
    if minor {
        hazards.insert(Hazard::Minor);
    }
    hazards
}

/// The same without what follows from who is cast.
pub(crate) fn plan_hazards(plan: &Plan, policy: &Policy) -> BTreeSet<Hazard> {
    let mut hazards = plan.facets.action.hazards.clone();
    hazards.extend(plan.facets.action.risks.iter().map(|risk| risk.hazard));
    if let Some(technique) = policy.techniques.get(&plan.technique) {
        hazards.extend(&technique.hazards);
    }
    if !plan.facets.effects.charges.is_empty() {
        hazards.insert(Hazard::Charge);
    }
    hazards
}

/// The day on which ages count: the shooting day and, while none is set, the day the plan was written.
/// Never today, so that whoever judges the same plan asks the same roles.
pub fn age_day(plan: &Plan) -> Date {
    let written = || words::day_of(plan.written_at);
    plan.facets.setting.day.unwrap_or_else(written)
}

/// Whether somebody is under eighteen on a day. Born on 29 February, they come of age on 1 March.
pub fn is_minor(born: Date, day: Date) -> bool {
    born.until((Unit::Year, day))
        .map_or(true, |lived| lived.get_years() < 18)
}

/// Every role that must sign, in the policy's order, each performer by themselves.
pub(crate) fn needed<'a>(
    bench: &Bench<'a>,
    hazards: &BTreeSet<Hazard>,
    assessment: Option<&Assessment>,
) -> Vec<Needed<'a>> {
    let mut needed = Vec::new();
    for policy in &bench.case.policy.roles {
        match policy.role {
            Role::Observer => {}
            Role::Performer => {
                let cast = bench.case.plan.facets.cast.slots.iter();
                needed.extend(
                    cast.filter(|slot| slot.person.is_some())
                        .map(|slot| Needed {
                            policy,
                            slot: Some(slot),
                            because: format!("cast as {}", slot.name),
                        }),
                );
            }
            role => {
                let because =
                    because(bench, policy, hazards, assessment).or_else(|| declined(bench, role));
                if let Some(because) = because {
                    needed.push(Needed {
                        policy,
                        slot: None,
                        because,
                    });
                }
            }
        }
    }
    needed
}

fn because(
    bench: &Bench<'_>,
    policy: &RolePolicy,
    hazards: &BTreeSet<Hazard>,
    assessment: Option<&Assessment>,
) -> Option<String> {
    let required = &policy.required;
    // Said before "every gag": it is why this one needs more than a glance.
    if let Some(because) = risk_left(bench, required) {
        return Some(because);
    }
    if required.always {
        return Some("every gag".to_owned());
    }
    let present: Vec<&str> = required
        .hazards
        .intersection(hazards)
        .map(|hazard| hazard.words())
        .collect();
    if !present.is_empty() {
        return Some(words::list(&present));
    }
    let technique = bench.case.policy.techniques.get(&bench.case.plan.technique);
    if technique.is_some_and(|technique| technique.roles.contains(&policy.role)) {
        return Some("the technique".to_owned());
    }
    if required.doubtful_check {
        let worst = assessment?
            .checks
            .iter()
            .filter(|check| check.status != Status::Within);
        // The first of the worst, so that the sentence does not depend on a sort.
        let worst = worst.reduce(|one, other| {
            if other.status > one.status {
                other
            } else {
                one
            }
        })?;
        let status = match worst.status {
            Status::Exceeded => "exceeded",
            Status::Unknown => "unknown",
            _ => "marginal",
        };
        return Some(format!("a check is {status}: {}", worst.title));
    }
    None
}

/// The first of the worst risks that the role must put its mark to.
fn risk_left(bench: &Bench<'_>, required: &Required) -> Option<String> {
    let from = required.risk_from?;
    let risks = bench.case.plan.facets.action.risks.iter();
    let worst = risks
        .filter(|risk| risk.after.level() >= from)
        .reduce(|one, other| {
            if other.after.level() > one.after.level() {
                other
            } else {
                one
            }
        })?;
    Some(format!(
        "a risk stays {} after its controls: {}",
        worst.after.level().words(),
        worst.event
    ))
}

/// A role that was not asked and said no all the same: a no is never left out.
fn declined(bench: &Bench<'_>, role: Role) -> Option<String> {
    super::standing::decline(bench, role, None).map(|_| "it declined".to_owned())
}
