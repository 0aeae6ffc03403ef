//! Cuts a person down to what one reader may see. Health is shared as fit or unfit for the day, never
//! as dates or history, and a body's numbers only where a slot asks for them; yet the cut-down person
//! gets the same verdict, so that every phone comes to the answer the server gives.

use std::collections::BTreeSet;

use gagwright_casting::{Measurement, Person, Requirement, Slot};
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
pub fn in_slot(reader: &Actor, person: &Person, slot: &Slot, day: Option<Date>) -> Person {
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
        shown.born = shown
            .born
            .filter(|_| asks_age)
            .and_then(|born| same_age(born, day));
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
fn same_age(born: Date, day: Option<Date>) -> Option<Date> {
    let day = day?;
    let years = born.until((jiff::Unit::Year, day)).ok()?.get_years();
    day.checked_sub(years.years()).ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_coarsened_birthday_keeps_the_age() {
        let born = jiff::civil::date(1999, 7, 30);
        let day = jiff::civil::date(2027, 3, 8);
        let coarse = same_age(born, Some(day)).unwrap();
        assert_eq!(coarse, jiff::civil::date(2000, 3, 8));
        assert_ne!(coarse, born);
    }
}
