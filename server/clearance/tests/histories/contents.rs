//! What a plan may say in these histories: one plan, and the same with one thing or two changed.

use gagwright_casting::{Requirement, Slot, SlotId};
use gagwright_clearance::{
    Facet, Facets,
    canonical::{facet_hashes, plan_digest},
    case::ReadingKind,
    facets::{Band, CameraPosition, Equipment, GivenCharge, Rung},
    plan::FacetHashes,
};
use gagwright_mechanics::InputValue;

use crate::{
    clock,
    people::{Who, id, person},
};

/// One thing that can be otherwise.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Twist {
    Touch(Facet),
    Height(Option<f64>),
    Cast(Who),
    Nobody,
    Two,
    Moved,
    Harness,
    Band(f64),
    Day(Option<i64>),
    Site,
    Charge,
    Ladder,
    Rescue(Option<f64>),
}

use Twist::*;

/// Every content there is; the first is where a history starts.
const CONTENTS: &[&[Twist]] = &[
    &[],
    &[Touch(Facet::Setting)],
    &[Touch(Facet::Action)],
    &[Touch(Facet::Rigging)],
    &[Touch(Facet::Effects)],
    &[Touch(Facet::Vehicles)],
    &[Touch(Facet::Cast)],
    &[Touch(Facet::Medical)],
    &[Touch(Facet::Camera)],
    &[Touch(Facet::Conditions)],
    &[Touch(Facet::Rehearsals)],
    &[Height(Some(11.0))],
    &[Height(Some(13.0))],
    &[Height(None)],
    &[Cast(7)],
    &[Cast(10)],
    &[Nobody],
    &[Two],
    &[Moved],
    &[Harness],
    &[Band(4.0)],
    &[Day(Some(clock::SHOOT + 1))],
    &[Day(None)],
    &[Site],
    &[Charge],
    &[Ladder],
    &[Rescue(Some(200.0))],
    &[Rescue(Some(400.0))],
    &[Rescue(None)],
    &[Harness, Band(4.0)],
    &[Cast(7), Height(Some(11.0))],
    &[Charge, Touch(Facet::Camera)],
];

/// One content, its hashes for those who sign it, and in plain words for the reference.
pub struct Content {
    pub facets: Facets,
    pub hashes: FacetHashes,
    pub digest: String,
    /// For each facet in table order, which of the contents first had it so.
    pub variant: [usize; 10],
    pub height: Option<f64>,
    /// Slot number and who is cast in it.
    pub slots: Vec<(u8, Option<Who>)>,
    pub serial: &'static str,
    pub band: f64,
    pub day: Option<i64>,
    pub place: &'static str,
    pub charge: bool,
    pub rungs: Vec<(&'static str, u32)>,
    kit: f64,
    /// Longest time for the rescue and the time of the drill, seconds.
    pub rescue: (Option<f64>, Option<f64>),
}

pub const PLACES: [&str; 2] = ["Silo yard", "Gravel pit"];
pub const SERIALS: [&str; 2] = ["H-12", "H-13"];
/// The last day the plan's own inspections count.
pub const INSPECTED: i64 = clock::SHOOT + 3;
/// What a slot counts of falls, and the most in a day.
pub const FALLS: u32 = 2;

pub fn slot(number: u8) -> SlotId {
    SlotId(id(5, number.into()))
}

pub fn all() -> Vec<Content> {
    let mut all: Vec<Content> = Vec::new();
    for twists in CONTENTS {
        let mut content = base();
        for twist in *twists {
            apply(&mut content, *twist);
        }
        write(&mut content);
        let place = all.len();
        content.variant = Facet::ALL.map(|facet| {
            let same = |other: &Content| equal(&other.facets, &content.facets, facet);
            all.iter().position(same).unwrap_or(place)
        });
        content.hashes = facet_hashes(&content.facets).unwrap();
        content.digest = plan_digest(&content.facets).unwrap();
        all.push(content);
    }
    all
}

fn equal(one: &Facets, other: &Facets, facet: Facet) -> bool {
    match facet {
        Facet::Setting => one.setting == other.setting,
        Facet::Action => one.action == other.action,
        Facet::Rigging => one.rigging == other.rigging,
        Facet::Effects => one.effects == other.effects,
        Facet::Vehicles => one.vehicles == other.vehicles,
        Facet::Cast => one.cast == other.cast,
        Facet::Medical => one.medical == other.medical,
        Facet::Camera => one.camera == other.camera,
        Facet::Conditions => one.conditions == other.conditions,
        Facet::Rehearsals => one.rehearsals == other.rehearsals,
    }
}

fn base() -> Content {
    Content {
        facets: Facets::default(),
        hashes: FacetHashes::new(),
        digest: String::new(),
        variant: [0; 10],
        height: Some(10.0),
        slots: vec![(1, Some(1))],
        serial: SERIALS[0],
        band: 6.0,
        day: Some(clock::SHOOT),
        place: PLACES[0],
        charge: false,
        rungs: vec![("bag", 2), ("half", 1)],
        kit: 3.0,
        rescue: (None, None),
    }
}

fn apply(content: &mut Content, twist: Twist) {
    match twist {
        Touch(Facet::Cast) => content.kit = 5.0,
        Touch(Facet::Rehearsals) => content.rungs[0].1 = 1,
        Touch(facet) => touch(&mut content.facets, facet),
        Height(metres) => content.height = metres,
        Cast(who) => content.slots = vec![(1, Some(who))],
        Nobody => content.slots = vec![(1, None)],
        Two => content.slots = vec![(1, Some(1)), (2, Some(7))],
        Moved => content.slots = vec![(3, Some(1))],
        Harness => content.serial = SERIALS[1],
        Band(most) => content.band = most,
        Day(day) => content.day = day,
        Site => content.place = PLACES[1],
        Charge => content.charge = true,
        Ladder => content.rungs.push(("full", 1)),
        Rescue(drilled) => content.rescue = (Some(300.0), drilled),
    }
}

fn number(value: f64) -> InputValue {
    InputValue::Number {
        value,
        tolerance: None,
    }
}

/// A small change that nothing but the facet's hash sees.
fn touch(facets: &mut Facets, facet: Facet) {
    let more = || "more".to_owned();
    match facet {
        Facet::Setting => facets.setting.light = more(),
        Facet::Action => facets.action.steps.push(more()),
        Facet::Rigging => facets.rigging.method = more(),
        Facet::Effects => facets.effects.suppression = more(),
        Facet::Vehicles => facets.vehicles.method = more(),
        Facet::Cast | Facet::Rehearsals => {} // written whole below
        Facet::Medical => facets.medical.ambulance = more(),
        Facet::Camera => facets.camera.positions.push(CameraPosition {
            name: "B".to_owned(),
            place: more(),
            lens: String::new(),
        }),
        Facet::Conditions => facets.conditions.stop_on.push(more()),
    }
}

/// Writes the plain words into the facets.
fn write(content: &mut Content) {
    let facets = &mut content.facets;
    facets.setting.scene = "12".to_owned();
    facets.setting.day = content.day.map(clock::date);
    facets.setting.location = content.place.to_owned();
    if let Some(metres) = content.height {
        let action = &mut facets.action.parameters;
        action.insert("height".to_owned(), number(metres));
    }
    facets.rigging.equipment = vec![Equipment {
        name: "harness".to_owned(),
        serial: content.serial.to_owned(),
        working_load: Some(1500.0),
        inspected_until: Some(clock::date(INSPECTED)),
    }];
    (
        facets.rigging.rescue.limit_seconds,
        facets.rigging.rescue.drilled_seconds,
    ) = content.rescue;
    if content.charge {
        facets.effects.charges = vec![GivenCharge {
            name: "mortar".to_owned(),
            count: 1,
            lead_seconds: 0.5,
            stand_off: 20.0,
            given_by: "Anaïs Rochette".to_owned(),
        }];
    }
    facets.cast.slots = content
        .slots
        .iter()
        .map(|(number, who)| Slot {
            id: slot(*number),
            name: format!("Double {number}"),
            requirements: vec![
                Requirement::MedicalClearance,
                Requirement::Consent,
                Requirement::DailyExposure {
                    exposure: "high_fall".to_owned(),
                    adds: 1,
                    max: FALLS,
                },
            ],
            person: who.map(person),
            kit_mass: content.kit,
        })
        .collect();
    facets.conditions.bands = vec![Band {
        reading: ReadingKind::Wind,
        min: None,
        max: Some(content.band),
        max_age_minutes: 20,
    }];
    facets.rehearsals.rungs = content
        .rungs
        .iter()
        .map(|(name, good_runs)| Rung {
            name: (*name).to_owned(),
            what: (*name).to_owned(),
            good_runs: *good_runs,
        })
        .collect();
}
