//! Cuts a person down to what one reader may see. Health is shared as fit or unfit for the day, never
//! as dates or history, and a body's numbers only where a slot asks for them; yet the cut-down person
//! gets the same verdict, so that every phone comes to the answer the server gives.

use std::collections::BTreeSet;

use gagwright_casting::{Measurement, Person, Requirement, Slot};
use gagwright_clearance::judge::is_minor;
use jiff::{ToSpan, civil::Date};

use super::Visible;
use crate::{commands::Actor, permissions::Permission};

/// What of a person this reader may see. Everyone may see all of themselves.
pub fn visible(reader: &Actor, person: &Person) -> Visible {
    let own = reader.person == person.id;
    Visible {
        personal: own || reader.may(Permission::ReadPersonal),
        medical: own || reader.may(Permission::ReadMedical),
    }
}

/// A person as the roster shows them to this reader.
pub fn on_roster(reader: &Actor, person: &Person) -> Person {
    let visible = visible(reader, person);
    let mut shown = person.clone();
    if !visible.personal {
        hide_proofs(&mut shown);
        shown.born = None;
        shown.measurements.clear();
        shown.last_wrap = None;
    }
    if !visible.medical {
        shown.medically_clear_until = None;
        shown.exposures.clear();
    }
    shown
}

/// A person as a gag's page shows them to this reader: what the slot asks about stays, coarsened as
/// far as the answer allows.
///
/// `age_day` is the day on which the judge counts ages, which an undated plan has too.
pub fn in_slot(
    reader: &Actor,
    person: &Person,
    slot: &Slot,
    day: Option<Date>,
    age_day: Date,
) -> Person {
    let visible = visible(reader, person);
    let mut shown = person.clone();
    if !visible.personal {
        hide_proofs(&mut shown);
        let asked = measurements_asked(slot);
        shown
            .measurements
            .retain(|measurement, _| asked.contains(measurement));
        for measured in shown.measurements.values_mut() {
            measured.by = None;
        }
        let asks_age = slot
            .requirements
            .iter()
            .any(|one| matches!(one, Requirement::Age { .. }));
        shown.born = shown.born.and_then(|born| {
            if asks_age {
                same_age(born, age_day)
            } else {
                same_side_of_eighteen(born, age_day)
            }
        });
        if !slot
            .requirements
            .iter()
            .any(|one| matches!(one, Requirement::Rest { .. }))
        {
            shown.last_wrap = None;
        }
    }
    if !visible.medical {
        // Fit through the shooting day, or not known to be: nothing about how long or why.
        shown.medically_clear_until = match (shown.medically_clear_until, day) {
            (Some(until), Some(day)) if until >= day => Some(day),
            _ => None,
        };
        let asked: BTreeSet<&str> = slot
            .requirements
            .iter()
            .filter_map(|one| match one {
                Requirement::DailyExposure { exposure, .. } => Some(exposure.as_str()),
                _ => None,
            })
            .collect();
        shown
            .exposures
            .retain(|one| Some(one.on) == day && asked.contains(one.kind.as_str()));
    }
    shown
}

/// Numbers on certificates, and addresses. That somebody looked at the evidence stays: the verdict asks.
fn hide_proofs(person: &mut Person) {
    person.email = None;
    for certificate in &mut person.certificates {
        certificate.number = None;
    }
}

fn measurements_asked(slot: &Slot) -> BTreeSet<Measurement> {
    slot.requirements
        .iter()
        .filter_map(|one| match one {
            Requirement::Measurement { of, .. } => Some(*of),
            Requirement::KittedMass { .. } => Some(Measurement::Mass),
            _ => None,
        })
        .collect()
}

/// The birthday of somebody who turns the same age exactly on that day.
fn same_age(born: Date, day: Date) -> Option<Date> {
    let years = born.until((jiff::Unit::Year, day)).ok()?.get_years();
    day.checked_sub(years.years()).ok()
}

/// The birthday of somebody who turns eighteen on that day, or seventeen if they are a minor: whether a
/// guardian must sign follows from it, and nothing else can be read off it.
fn same_side_of_eighteen(born: Date, day: Date) -> Option<Date> {
    let years = if is_minor(born, day) { 17 } else { 18 };
    day.checked_sub(years.years()).ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_coarsened_birthday_keeps_the_age() {
        let born = jiff::civil::date(1999, 7, 30);
        let day = jiff::civil::date(2027, 3, 8);
        let coarse = same_age(born, day).unwrap();
        assert_eq!(coarse, jiff::civil::date(2000, 3, 8));
        assert_ne!(coarse, born);
    }

    #[test]
    fn a_birthday_nobody_asks_about_still_tells_minors_from_adults() {
        for day in [
            jiff::civil::date(2027, 3, 8),
            jiff::civil::date(2028, 2, 29),
        ] {
            for (born, minor) in [
                (day.checked_sub(18.years()).unwrap(), false),
                (jiff::civil::date(1961, 2, 28), false),
                (
                    day.checked_sub(18.years()).unwrap().tomorrow().unwrap(),
                    true,
                ),
                (jiff::civil::date(2019, 5, 5), true),
            ] {
                let coarse = same_side_of_eighteen(born, day).unwrap();
                assert_eq!(is_minor(coarse, day), minor, "{born} on {day}");
                assert_eq!(is_minor(born, day), minor, "{born} on {day}");
            }
        }
    }
}
