//! Whether a signer holds the certificates their role asks for. The rules of a certificate are
//! casting's; this module only asks them about someone who signs.

use gagwright_casting::{Catalogue, Context, FindingStanding, GagId, Person, Requirement, find};
use jiff::civil::Date;

use crate::signoff::Member;

/// What is missing for a signer, one sentence for each group of certificates that none satisfies. They
/// must be in date both when it is asked and on the shooting day: a licence that runs out the week
/// before the shoot is no licence for it.
pub(crate) fn missing(
    member: &Member,
    groups: &[Vec<String>],
    gag: GagId,
    revision: u32,
    today: Date,
    shooting: Option<Date>,
) -> Vec<String> {
    if groups.is_empty() {
        return Vec::new();
    }
    let catalogue = Catalogue::built_in();
    let signer = as_person(member);
    let mut days = vec![today];
    days.extend(shooting.filter(|day| *day > today));
    groups
        .iter()
        .filter_map(|group| {
            let requirement = Requirement::Certificate {
                any_of: group.clone(),
                category: None,
                cover_days: 0,
            };
            days.iter().find_map(|day| {
                let context = Context {
                    gag,
                    revision,
                    day: *day,
                    call: None,
                    today: Some(today),
                };
                let finding = find(&requirement, &signer, 0.0, &context, catalogue);
                (finding.standing != FindingStanding::Met).then_some(finding.reason)
            })
        })
        .collect()
}

/// A member seen as a person who holds certificates, and nothing else.
fn as_person(member: &Member) -> Person {
    Person {
        certificates: member.certificates.clone(),
        ..Person::named(member.person, "", member.name.clone())
    }
}
