//! Which certificates run out before which shooting days, so that renewals start in time. Knows no
//! slot: it looks ahead for everyone at once.

use jiff::civil::Date;
use serde::{Deserialize, Serialize};

use crate::{
    catalogue::{Catalogue, Validity, same_category},
    ids::{CertificateId, PersonId},
    judge::{Clock, last_good_day},
    person::{Certificate, Person},
};

/// One certificate that will not last.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Lapse {
    /// Whose.
    pub person: PersonId,
    /// Their code.
    pub code: String,
    /// Their name.
    pub name: String,
    /// Which.
    pub certificate: CertificateId,
    /// Its kind.
    pub kind: String,
    /// The last day it counts.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = Date))]
    pub last_day: Date,
    /// What ends it.
    pub cause: LapseCause,
    /// The first of the shooting days that it no longer covers.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = Date))]
    pub before: Date,
}

/// What ends a certificate.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(rename_all = "snake_case")]
pub enum LapseCause {
    /// Its own date, or the scheme's term from issue.
    Expires,
    /// Its scheme's clock runs on use, and it has been too long unused.
    Unused,
}

/// Certificates whose last good day falls before one of the given shooting days, soonest first.
///
/// One already out of date counts too: it lapses before the first of the days. Withdrawn ones are
/// left out, as are those whose holder has another that stands in for them and lasts longer without
/// a gap, and kinds the catalogue does not know.
#[must_use]
pub fn lapsing<'a>(
    people: impl IntoIterator<Item = &'a Person>,
    days: &[Date],
    catalogue: &Catalogue,
) -> Vec<Lapse> {
    let mut lapses: Vec<Lapse> = Vec::new();
    for person in people {
        for held in &person.certificates {
            let Some((last_day, clock)) = ends(held, catalogue) else {
                continue;
            };
            let Some(before) = days.iter().copied().filter(|day| *day > last_day).min() else {
                continue;
            };
            if person
                .certificates
                .iter()
                .any(|other| outlasts(other, held, last_day, catalogue))
            {
                continue;
            }
            lapses.push(Lapse {
                person: person.id,
                code: person.code.clone(),
                name: person.name.clone(),
                certificate: held.id,
                kind: held.kind.clone(),
                last_day,
                cause: match clock {
                    Clock::Expiry => LapseCause::Expires,
                    Clock::Unused => LapseCause::Unused,
                },
                before,
            });
        }
    }
    lapses.sort_by(|a, b| {
        (a.last_day, &a.name, &a.code, &a.kind).cmp(&(b.last_day, &b.name, &b.code, &b.kind))
    });
    lapses
}

fn ends(held: &Certificate, catalogue: &Catalogue) -> Option<(Date, Clock)> {
    if held.withdrawn.is_some() {
        return None;
    }
    last_good_day(held, catalogue.certificate(&held.kind)?)
}

/// Whether `other` stands in for `held`, starts before `held` ends or the day after, and lasts
/// longer.
fn outlasts(
    other: &Certificate,
    held: &Certificate,
    last_day: Date,
    catalogue: &Catalogue,
) -> bool {
    let same = match (&other.category, &held.category) {
        (_, None) => true,
        (None, Some(_)) => false,
        (Some(other), Some(held)) => same_category(other, held),
    };
    let joins = other.issued <= last_day.tomorrow().unwrap_or(Date::MAX);
    same && joins
        && other.withdrawn.is_none()
        && catalogue.satisfies(&other.kind, &held.kind)
        && catalogue.certificate(&other.kind).is_some_and(|kind| {
            match last_good_day(other, kind) {
                Some((others_last, _)) => others_last > last_day,
                // With no date recorded, only a kind that never runs out is known to last.
                None => kind.validity == Validity::NoExpiry,
            }
        })
}
