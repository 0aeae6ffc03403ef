//! The columns of each table.

use super::RosterTable;
use crate::person::Measurement;

/// One column.
pub(super) struct Column {
    pub(super) name: &'static str,
    /// Whether a table without it is refused. Others may be left out and count as blank.
    pub(super) required: bool,
}

const fn must(name: &'static str) -> Column {
    Column {
        name,
        required: true,
    }
}

const fn may(name: &'static str) -> Column {
    Column {
        name,
        required: false,
    }
}

static PEOPLE: [Column; 21] = [
    must("code"),
    may("name"),
    may("occupation"),
    may("performs"),
    may("email"),
    may("born"),
    may("height"),
    may("mass"),
    may("chest"),
    may("waist"),
    may("hip"),
    may("inseam"),
    may("sleeve"),
    may("neck"),
    may("shoulder"),
    may("head"),
    may("shoe"),
    may("measured_on"),
    may("measured_by"),
    may("medically_clear_until"),
    may("last_wrap"),
];

static CERTIFICATES: [Column; 12] = [
    must("person"),
    must("kind"),
    may("category"),
    may("number"),
    may("issuer"),
    must("issued"),
    may("expires"),
    may("last_used"),
    may("checked_by"),
    may("checked_on"),
    may("checked_how"),
    may("withdrawn"),
];

static SKILLS: [Column; 6] = [
    must("person"),
    must("skill"),
    must("level"),
    may("assessed_by"),
    may("assessed_on"),
    may("last_used"),
];

static AVAILABILITY: [Column; 4] = [must("person"), must("from"), must("to"), must("available")];

pub(super) fn of(table: RosterTable) -> &'static [Column] {
    match table {
        RosterTable::People => &PEOPLE,
        RosterTable::Certificates => &CERTIFICATES,
        RosterTable::Skills => &SKILLS,
        RosterTable::Availability => &AVAILABILITY,
    }
}

/// The measurements and their columns.
pub(super) const MEASUREMENTS: [(Measurement, &str); 11] = [
    (Measurement::Height, "height"),
    (Measurement::Mass, "mass"),
    (Measurement::Chest, "chest"),
    (Measurement::Waist, "waist"),
    (Measurement::Hip, "hip"),
    (Measurement::Inseam, "inseam"),
    (Measurement::Sleeve, "sleeve"),
    (Measurement::Neck, "neck"),
    (Measurement::Shoulder, "shoulder"),
    (Measurement::Head, "head"),
    (Measurement::Shoe, "shoe"),
];
