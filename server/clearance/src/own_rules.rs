//! Whether the rules that a production adds hold together: delegation, bands, what settles a decline, and
//! its own limits. What asks the techniques is apart from the rest: the judge on a phone has them in another
//! package, and a limit or a band that no technique knows clears nothing there.

use gagwright_mechanics::{Limits, ParameterKind, Quantity, techniques};

use crate::{
    accepted::AcceptedBand,
    delegation::NEVER,
    own_limits::OwnLimit,
    policy::{Policy, Role},
    validate::Problems,
};

/// A band that lets more than this pass unsigned is no small change.
const WIDEST: f64 = 0.25;

/// A delegation longer than this outlives a shoot.
const LONGEST_DAYS: u32 = 366;

impl Policy {
    /// Roles that these rules name, with where.
    pub(crate) fn own_references(&self, named: &mut Vec<(String, Role)>) {
        let delegation = self.delegation.keys();
        named.extend(delegation.map(|role| (format!("/delegation/{}", role.name()), *role)));
        let bands = self.bands.iter().enumerate();
        named.extend(bands.map(|(at, band)| (format!("/bands/{at}/role"), band.role)));
        for (role, settling) in &self.settling {
            let pointer = format!("/settling/{}", role.name());
            named.push((pointer.clone(), *role));
            let by = settling.declines.iter().chain(&settling.conditions);
            named.extend(by.map(|one| (pointer.clone(), *one)));
        }
    }

    /// Everything in them that cannot be.
    pub(crate) fn own_rules(&self, found: &mut Problems) {
        for (role, rule) in &self.delegation {
            let pointer = format!("/delegation/{}", role.name());
            if NEVER.contains(role) {
                found.add(
                    &pointer,
                    format!("nobody can sign for the role {}", role.name()),
                    "take it out: consent, a minor's conditions and animal welfare are never delegated",
                );
            }
            if rule.longest_days == 0 || rule.longest_days > LONGEST_DAYS {
                found.add(
                    format!("{pointer}/longest_days"),
                    format!(
                        "a delegation of the role {} may run {} days",
                        role.name(),
                        rule.longest_days
                    ),
                    format!("give 1 to {LONGEST_DAYS} days"),
                );
            }
        }
        for (at, band) in self.bands.iter().enumerate() {
            band_problems(&format!("/bands/{at}"), band, found);
        }
        for (technique, own) in &self.limits {
            for (check, limit) in own {
                let pointer = format!("/limits/{technique}/{check}");
                limit_problems(&pointer, &format!("{check} of {technique}"), limit, found);
            }
        }
        for (role, settling) in &self.settling {
            let pointer = format!("/settling/{}", role.name());
            let own = *role == Role::Performer || self.final_say.contains(role);
            if own && !settling.declines.is_empty() {
                found.add(
                    format!("{pointer}/declines"),
                    format!("nobody can resolve a decline of the role {}", role.name()),
                    "leave declines empty: this role has the final say",
                );
            }
            if *role == Role::Performer && !settling.conditions.is_empty() {
                found.add(
                    format!("{pointer}/conditions"),
                    "only a performer can say that their own condition is met",
                    "leave conditions empty",
                );
            }
        }
    }

    /// What the techniques do not know.
    pub(crate) fn against_techniques(&self, found: &mut Problems) {
        for (at, band) in self.bands.iter().enumerate() {
            let quantities = quantities(band);
            if quantities.is_empty() {
                found.add(
                    format!("/bands/{at}/parameter"),
                    format!(
                        "a band of the role {} is for a number that no technique has",
                        band.role.name()
                    ),
                    "use the machine name of a number that a technique asks for",
                );
            }
            if band.relative.is_some() && quantities.contains(&Quantity::Temperature) {
                found.add(
                    format!("/bands/{at}/relative"),
                    "a share of a temperature depends on the scale it is read on",
                    "give absolute, in kelvins",
                );
            }
        }
        self.unknown_limits(found);
    }

    fn unknown_limits(&self, found: &mut Problems) {
        for (technique, own) in &self.limits {
            let known = Limits::built_in().of(technique);
            for check in own.keys().filter(|check| !known.contains_key(*check)) {
                let names: Vec<&str> = known.keys().map(String::as_str).collect();
                found.add(
                    format!("/limits/{technique}/{check}"),
                    format!("the technique {technique} has no limit of habit named {check}"),
                    match names.as_slice() {
                        [] => "take it out: that technique has none".to_owned(),
                        names => format!("use one of: {}", names.join(", ")),
                    },
                );
            }
        }
    }
}

fn limit_problems(pointer: &str, name: &str, limit: &OwnLimit, found: &mut Problems) {
    if !limit.value.is_finite() {
        found.add(
            format!("{pointer}/value"),
            format!("the limit {name} is not a number"),
            "give a number, SI",
        );
    }
    if limit.because.trim().is_empty() {
        found.add(
            format!("{pointer}/because"),
            format!("the limit {name} is set without a reason"),
            "say why this production sets another value",
        );
    }
}

/// The quantities that a band is about.
fn quantities(band: &AcceptedBand) -> Vec<Quantity> {
    let parameters = techniques()
        .iter()
        .flat_map(|technique| technique.parameters());
    match (&band.parameter, band.quantity) {
        (Some(parameter), _) => parameters
            .filter(|one| one.name == parameter)
            .filter_map(|one| match one.kind {
                ParameterKind::Number { quantity, .. } => Some(quantity),
                ParameterKind::Choice { .. } => None,
            })
            .collect(),
        (None, quantity) => quantity.into_iter().collect(),
    }
}

fn band_problems(pointer: &str, band: &AcceptedBand, found: &mut Problems) {
    let name = band.role.name();
    if band.role == Role::Performer {
        found.add(
            format!("{pointer}/role"),
            "a performer consents to one revision and accepts no changes in advance",
            "take the band out",
        );
    }
    if band.parameter.is_some() == band.quantity.is_some() {
        found.add(
            pointer,
            format!("a band of the role {name} must be for a parameter or for a quantity"),
            "give one of the two",
        );
    }
    let good = |amount: f64, most: f64| amount.is_finite() && amount > 0.0 && amount <= most;
    match (band.relative, band.absolute) {
        (Some(share), None) if good(share, WIDEST) => {}
        (None, Some(amount)) if good(amount, f64::MAX) => {}
        _ => found.add(
            pointer,
            format!("a band of the role {name} has no sensible width"),
            "give relative, more than 0 and at most 0.25, or absolute, more than 0",
        ),
    }
}
