//! Names of things as sentences use them, and the small grammar that joins them. It decides nothing.

pub(crate) use gagwright_casting::words::capital;
use gagwright_mechanics::Facet;
use jiff::{Timestamp, civil::Date, tz::Offset};

use crate::{plan::Hazard, policy::Role};

impl Role {
    /// Every role, in the order people read them.
    pub const ALL: [Role; 16] = [
        Role::Coordinator,
        Role::Performer,
        Role::Rigging,
        Role::Effects,
        Role::Fire,
        Role::Medic,
        Role::FirstAd,
        Role::Vehicles,
        Role::Armourer,
        Role::Marine,
        Role::Animals,
        Role::Camera,
        Role::Engineer,
        Role::Guardian,
        Role::Production,
        Role::Observer,
    ];

    /// The machine name, as in JSON.
    pub fn name(self) -> &'static str {
        match self {
            Role::Coordinator => "coordinator",
            Role::Performer => "performer",
            Role::Rigging => "rigging",
            Role::Effects => "effects",
            Role::Fire => "fire",
            Role::Medic => "medic",
            Role::FirstAd => "first_ad",
            Role::Vehicles => "vehicles",
            Role::Armourer => "armourer",
            Role::Marine => "marine",
            Role::Animals => "animals",
            Role::Camera => "camera",
            Role::Engineer => "engineer",
            Role::Guardian => "guardian",
            Role::Production => "production",
            Role::Observer => "observer",
        }
    }
}

impl Hazard {
    /// Every hazard.
    pub const ALL: [Hazard; 12] = [
        Hazard::Height,
        Hazard::Line,
        Hazard::Gas,
        Hazard::Fire,
        Hazard::Charge,
        Hazard::Glass,
        Hazard::Vehicle,
        Hazard::Weapon,
        Hazard::Water,
        Hazard::Animal,
        Hazard::Minor,
        Hazard::LockOff,
    ];

    /// The machine name, as in JSON.
    pub fn name(self) -> &'static str {
        match self {
            Hazard::Height => "height",
            Hazard::Line => "line",
            Hazard::Gas => "gas",
            Hazard::Fire => "fire",
            Hazard::Charge => "charge",
            Hazard::Glass => "glass",
            Hazard::Vehicle => "vehicle",
            Hazard::Weapon => "weapon",
            Hazard::Water => "water",
            Hazard::Animal => "animal",
            Hazard::Minor => "minor",
            Hazard::LockOff => "lock_off",
        }
    }

    /// The hazard in running text.
    pub fn words(self) -> &'static str {
        match self {
            Hazard::Height => "height",
            Hazard::Line => "a loaded line",
            Hazard::Gas => "gas under pressure",
            Hazard::Fire => "fire",
            Hazard::Charge => "a charge",
            Hazard::Glass => "breaking glass",
            Hazard::Vehicle => "a moving vehicle",
            Hazard::Weapon => "a weapon",
            Hazard::Water => "water",
            Hazard::Animal => "an animal",
            Hazard::Minor => "a minor",
            Hazard::LockOff => "a lock-off composite",
        }
    }
}

/// "a", "a and b", "a, b and c".
pub(crate) fn list<T: AsRef<str>>(items: &[T]) -> String {
    match items {
        [] => String::new(),
        [only] => only.as_ref().to_owned(),
        [many @ .., last] => {
            let many: Vec<&str> = many.iter().map(AsRef::as_ref).collect();
            format!("{} and {}", many.join(", "), last.as_ref())
        }
    }
}

/// A text that people wrote, without its final stop, to go on inside a sentence.
pub(crate) fn unstopped(text: &str) -> &str {
    text.trim().trim_end_matches('.')
}

/// The facets' names in running text.
pub(crate) fn facets(facets: &[Facet]) -> String {
    let names: Vec<&str> = facets.iter().map(|facet| facet.name()).collect();
    list(&names)
}

/// The UTC day of a moment. The day a person would name may differ by one; certificates and days of
/// shooting are compared by this one everywhere, so that the server and every phone agree.
pub fn day_of(moment: Timestamp) -> Date {
    Offset::UTC.to_datetime(moment).date()
}

/// A moment to the minute, in UTC.
pub(crate) fn minute(moment: Timestamp) -> String {
    let clock = Offset::UTC.to_datetime(moment);
    format!(
        "{} {:02}:{:02} UTC",
        clock.date(),
        clock.hour(),
        clock.minute()
    )
}
