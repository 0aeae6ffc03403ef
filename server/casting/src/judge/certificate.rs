//! Certificates: dates, categories, withdrawal, clocks that run on use, and whether anyone has
//! looked at the evidence.
//!
//! Any certificate of a wanted kind, or of a kind above it, can meet the requirement by itself; the
//! best one decides. Facts later than the last day asked about say nothing about that day, so that
//! a verdict on a past day comes out as it did then.

use std::cmp::Reverse;

use jiff::civil::Date;

use super::{
    answer::Answer,
    days::{between, count, plus, plus_months},
};
use crate::{
    catalogue::{Catalogue, CertificateKind, Validity, same_category},
    person::{Certificate, Person},
    requirement::Context,
    words::capital,
};

pub(super) fn certificate(
    any_of: &[String],
    category: Option<&str>,
    cover_days: u32,
    person: &Person,
    context: &Context,
    catalogue: &Catalogue,
) -> Answer {
    let asked = Asked {
        category,
        cover_days,
        last_day: plus(context.day, i64::from(cover_days)),
        context,
        catalogue,
    };
    let unknown = any_of
        .iter()
        .find(|kind| catalogue.certificate(kind).is_none());
    person
        .certificates
        .iter()
        .filter(|held| {
            any_of
                .iter()
                .any(|wanted| catalogue.satisfies(&held.kind, wanted))
        })
        .filter_map(|held| Some((held, catalogue.certificate(&held.kind)?)))
        .map(|(held, kind)| asked.judge(held, kind))
        .min_by_key(|(answer, last)| {
            let by = answer.cure.as_ref().map(|cure| cure.by);
            (answer.standing, Reverse(by), Reverse(*last))
        })
        .map_or_else(
            || {
                Answer::not_met(match unknown {
                    _ if any_of.is_empty() => "No kind of certificate is named".into(),
                    Some(kind) => format!(
                        "The catalogue has no certificate kind `{kind}`, so nothing can prove it"
                    ),
                    None => format!("No {} on record", either(any_of, catalogue)),
                })
                .ranked(&[0.0])
            },
            |(answer, _)| answer,
        )
}

/// The last day a certificate counts, and what ends it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Clock {
    /// Its own date, or the scheme's term from issue.
    Expiry,
    /// Too long unused.
    Unused,
}

/// The last day on which a certificate counts by its dates alone; none when it does not run out, or
/// when nothing says when it does.
pub(crate) fn last_good_day(held: &Certificate, kind: &CertificateKind) -> Option<(Date, Clock)> {
    let expiry = match expiry(held, kind) {
        Expiry::On(day) => Some((day, Clock::Expiry)),
        Expiry::Never | Expiry::Unknown => None,
    };
    let unused = kind.use_clock.as_ref().map(|clock| {
        (
            plus_months(last_use(held, None), clock.unused_months),
            Clock::Unused,
        )
    });
    match (expiry, unused) {
        (Some(expiry), Some(unused)) => Some(if unused.0 < expiry.0 { unused } else { expiry }),
        (expiry, unused) => expiry.or(unused),
    }
}

enum Expiry {
    On(Date),
    Never,
    Unknown,
}

/// The date on the document wins; without one, the scheme's term counts from issue.
fn expiry(held: &Certificate, kind: &CertificateKind) -> Expiry {
    match (held.expires, kind.validity) {
        (Some(date), _) => Expiry::On(date),
        // A term of 36 months from the 10th ends with the 9th.
        (None, Validity::Months(months)) => Expiry::On(plus(plus_months(held.issued, months), -1)),
        (None, Validity::NoExpiry) => Expiry::Never,
        (None, Validity::AsPrinted) => Expiry::Unknown,
    }
}

/// The course that earned it was use too. Use after `until` says nothing about that day.
fn last_use(held: &Certificate, until: Option<Date>) -> Date {
    held.last_used
        .filter(|used| until.is_none_or(|until| *used <= until))
        .map_or(held.issued, |used| used.max(held.issued))
}

struct Asked<'a> {
    category: Option<&'a str>,
    cover_days: u32,
    last_day: Date,
    context: &'a Context,
    catalogue: &'a Catalogue,
}

/// One thing that stands between a certificate and counting, and what would mend it.
struct Lack {
    problem: String,
    cure: String,
    by: Date,
}

impl Asked<'_> {
    /// The answer for one certificate, and the last day it counts for choosing among several.
    fn judge(&self, held: &Certificate, kind: &CertificateKind) -> (Answer, Option<Date>) {
        let title = capital(self.catalogue.certificate_title(&held.kind));
        let last = match expiry(held, kind) {
            Expiry::On(day) => Some(day),
            Expiry::Never => Some(Date::MAX),
            Expiry::Unknown => None,
        };
        if let Some(refused) = self.beyond_cure(held) {
            return (
                Answer::not_met(format!("{title} {refused}")).ranked(&[0.0]),
                last,
            );
        }
        let mut lacks = Vec::new();
        match self.expiry_lack(held, kind) {
            Ok(lack) => lacks.extend(lack),
            Err(refused) => {
                return (
                    Answer::not_met(format!("{title} {refused}")).ranked(&[0.0]),
                    last,
                );
            }
        }
        lacks.extend(self.use_lack(held, kind));
        lacks.extend(self.evidence_lack(held));
        let answer = match lacks.iter().map(|lack| lack.by).min() {
            None => self.met(&title, last),
            Some(by) => {
                let join = |part: fn(&Lack) -> &str| {
                    lacks.iter().map(part).collect::<Vec<_>>().join(", and ")
                };
                let reason = format!("{title} {}", join(|lack| &lack.problem));
                Answer::curable(reason, join(|lack| &lack.cure), by, self.context).ranked(&[0.0])
            }
        };
        (answer, last)
    }

    fn met(&self, title: &str, last: Option<Date>) -> Answer {
        match last.filter(|last| *last < Date::MAX) {
            Some(last) => {
                let margin = between(self.last_day, last);
                #[expect(clippy::cast_precision_loss, reason = "days in a calendar")]
                let part = margin as f64 / 365.0;
                Answer::met(format!(
                    "{title} valid through {last}, {} past the {}",
                    count(margin),
                    self.needed()
                ))
                .ranked(&[part])
            }
            None => Answer::met(format!("{title} held, it does not expire")).ranked(&[1.0]),
        }
    }

    /// "shooting day" or "shooting day and its 2 cover days".
    fn needed(&self) -> String {
        match self.cover_days {
            0 => "shooting day".into(),
            1 => "shooting day and its cover day".into(),
            days => format!("shooting day and its {days} cover days"),
        }
    }

    fn beyond_cure(&self, held: &Certificate) -> Option<String> {
        if let Some(withdrawn) = held.withdrawn.filter(|day| *day <= self.last_day) {
            return Some(format!("was withdrawn on {withdrawn}"));
        }
        if let Some(wanted) = self.category {
            match &held.category {
                None => return Some(format!("carries no category where {wanted} is needed")),
                Some(category) if !same_category(category, wanted) => {
                    return Some(format!(
                        "is for category {category} where {wanted} is needed"
                    ));
                }
                Some(_) => {}
            }
        }
        (held.issued > self.context.day).then(|| {
            format!(
                "counts from {}, {} after the shooting day",
                held.issued,
                count(between(self.context.day, held.issued))
            )
        })
    }

    /// Nothing, something that a renewal would mend, or a reason why none can.
    fn expiry_lack(
        &self,
        held: &Certificate,
        kind: &CertificateKind,
    ) -> Result<Option<Lack>, String> {
        let ends = match expiry(held, kind) {
            Expiry::Never => return Ok(None),
            Expiry::Unknown => {
                return Ok(Some(Lack {
                    problem: "has no expiry date on record".into(),
                    cure: "the date on the document recorded".into(),
                    by: self.context.day,
                }));
            }
            Expiry::On(day) if day >= self.last_day => return Ok(None),
            Expiry::On(day) => day,
        };
        let problem = if ends < self.context.day {
            format!(
                "expires on {ends}, {} before the shooting day",
                count(between(ends, self.context.day))
            )
        } else {
            format!(
                "expires on {ends}, {} short of the {}",
                count(between(ends, self.last_day)),
                self.needed()
            )
        };
        match kind.renewal_lead_days {
            None => Err(format!("{problem}, and it cannot be renewed")),
            Some(lead) => Ok(Some(Lack {
                problem,
                cure: format!("a renewal begun {} ahead", count(i64::from(lead))),
                by: self.begin_by(ends, lead),
            })),
        }
    }

    fn use_lack(&self, held: &Certificate, kind: &CertificateKind) -> Option<Lack> {
        let clock = kind.use_clock.as_ref()?;
        let used = last_use(held, Some(self.context.day));
        let ends = plus_months(used, clock.unused_months);
        (ends < self.last_day).then(|| Lack {
            problem: format!(
                "was last used on {used}, {} past the {} months allowed by the {}",
                count(between(ends, self.last_day)),
                clock.unused_months,
                if self.cover_days == 0 {
                    "shooting day"
                } else {
                    "last cover day"
                }
            ),
            cure: clock.cure.clone(),
            by: self.begin_by(ends, clock.lead_days),
        })
    }

    /// The last day to begin something that takes `lead` days and must be done when the first
    /// uncovered day comes.
    fn begin_by(&self, ends: Date, lead: u32) -> Date {
        plus(plus(ends, 1).max(self.context.day), -i64::from(lead))
    }

    fn evidence_lack(&self, held: &Certificate) -> Option<Lack> {
        let problem = match &held.checked {
            None => "has not been checked by anyone".into(),
            Some(check) if check.on < held.issued => format!(
                "was checked on {}, before this one was issued on {}",
                check.on, held.issued
            ),
            Some(check) if check.on > self.last_day => {
                format!("was only checked on {}, after the day", check.on)
            }
            Some(_) => return None,
        };
        Some(Lack {
            problem,
            cure: "a sight of the original".into(),
            by: self.context.day,
        })
    }
}

/// "rope access, level 3, or rope access technician, level III".
fn either(any_of: &[String], catalogue: &Catalogue) -> String {
    let titles: Vec<_> = any_of
        .iter()
        .map(|kind| catalogue.certificate_title(kind))
        .collect();
    titles.join(" or ")
}
