//! Every row of the table of what lapses: the roles it names and no others, in both layers and for the go.
//! The table is the trade's own (plan marks and day marks, "go lasts one take"), common practice from
//! memory and no standard's; what is held here is that each event lapses exactly what its row says.

use std::collections::BTreeSet;

use gagwright_casting::PersonId;
use jiff::SignedDuration;

use crate::{
    case::{Fitness, ReadingKind, RoleState},
    day_scene::DAY,
    policy::{LapseEvent, Policy, Role},
    scene::{Scene, person_of, slot},
};

fn lapsed(standings: &[crate::case::RoleStanding]) -> BTreeSet<Role> {
    standings
        .iter()
        .filter(|one| one.state == RoleState::Lapsed)
        .map(|one| one.role)
        .collect()
}

fn plan(scene: &Scene) -> BTreeSet<Role> {
    lapsed(&scene.judged().roles)
}

fn day(scene: &Scene) -> BTreeSet<Role> {
    lapsed(&scene.judged().day.marks)
}

/// Roles of a row that this gag asks at all.
fn row(scene: &Scene, event: LapseEvent) -> (BTreeSet<Role>, BTreeSet<Role>) {
    let judged = scene.judged();
    let row = scene.case.policy.lapse(event).unwrap();
    let of = |asked: &[crate::case::RoleStanding], named: &BTreeSet<Role>| {
        let asked: BTreeSet<Role> = asked.iter().map(|one| one.role).collect();
        asked.intersection(named).copied().collect()
    };
    (
        of(&judged.roles, &row.plan),
        of(&judged.day.marks, &row.day),
    )
}

#[test]
fn everything_stands_before_anything_happens() {
    let scene = Scene::ready();
    let judged = scene.judged();
    assert_eq!(judged.blocks, vec![]);
    assert_eq!(judged.day.blocks, vec![]);
    assert!(judged.day.stands && judged.go.may);
    let roles: BTreeSet<Role> = judged.day.marks.iter().map(|one| one.role).collect();
    // A fall: those who sign any day, and the rigger. Camera, engineer and production sign no day.
    assert_eq!(
        roles,
        BTreeSet::from([
            Role::Coordinator,
            Role::Performer,
            Role::Rigging,
            Role::Medic,
            Role::FirstAd
        ])
    );
}

#[test]
fn a_shock_load_lapses_what_its_row_says() {
    let mut scene = Scene::ready();
    let take = scene.calls_go();
    scene.shocked();
    let (on_plan, on_day) = row(&scene, LapseEvent::ShockLoad);
    assert_eq!(plan(&scene), on_plan);
    assert_eq!(day(&scene), on_day);
    assert!(on_day.contains(&Role::Rigging) && !on_day.contains(&Role::Medic));
    let open = scene.judged().go.open.unwrap();
    assert_eq!(open.take, take);
    assert!(
        open.lapsed
            .iter()
            .any(|why| why.contains("Harness (H-12) took a shock load")),
        "{:?}",
        open.lapsed
    );
}

#[test]
fn marks_made_after_a_shock_load_stand() {
    let mut scene = Scene::ready();
    scene.shocked();
    scene.everyone_signs().everyone_signs_the_day();
    scene.reading(ReadingKind::Wind, 3.0);
    assert!(scene.judged().go.may, "{:?}", scene.judged().go.why_not);
}

#[test]
fn a_shock_load_to_equipment_that_is_not_used_lapses_nothing() {
    let mut scene = Scene::ready();
    scene.case.day.equipment[0].serial = "H-13".to_owned();
    scene.shocked();
    assert!(scene.judged().go.may);
}

#[test]
fn another_piece_of_equipment_lapses_what_its_row_says() {
    let mut scene = Scene::ready();
    scene.revise(|facets| facets.rigging.equipment[0].serial = "H-13".to_owned());
    let (on_plan, on_day) = row(&scene, LapseEvent::EquipmentSwap);
    // In the plan it is the rigging that changed: whoever answers for it signs again.
    assert!(on_plan.is_subset(&plan(&scene)));
    assert_eq!(day(&scene), on_day);
    let why = scene.day_mark(Role::Coordinator).reasons.join(" ");
    assert!(why.contains("without H-12 and with H-13"), "{why}");
}

#[test]
fn another_performer_lapses_what_its_row_says() {
    let mut scene = Scene::ready();
    let other = person_of(Role::Camera);
    let mut person = scene.case.people[0].clone();
    person.id = other;
    scene.case.people.push(person);
    scene.revise(|facets| facets.cast.slots[0].person = Some(other));
    let (_, mut on_day) = row(&scene, LapseEvent::PerformerSwap);
    // The new performer has not signed: theirs is missing, not lapsed. The first assistant director's
    // own mark falls by the cast they answer for.
    on_day.remove(&Role::Performer);
    on_day.insert(Role::FirstAd);
    assert_eq!(day(&scene), on_day);
    assert_eq!(scene.day_mark(Role::Performer).state, RoleState::Missing);
}

#[test]
fn another_day_lapses_the_day_and_leaves_the_plan() {
    let mut scene = Scene::ready();
    scene.later(SignedDuration::from_hours(8));
    let everyone: Vec<PersonId> = scene.judged().day.briefing.attended;
    scene.briefed_at(DAY.tomorrow().unwrap(), "Silo yard", everyone);
    let (on_plan, on_day) = row(&scene, LapseEvent::NewDay);
    assert_eq!((plan(&scene), on_plan), (BTreeSet::new(), BTreeSet::new()));
    assert_eq!(day(&scene), on_day);
    let why = scene.day_mark(Role::Medic).reasons.join(" ");
    assert!(
        why.contains("signed for 2026-03-14; this is 2026-03-15"),
        "{why}"
    );
}

#[test]
fn another_place_lapses_the_day_and_leaves_the_plan() {
    let mut scene = Scene::ready();
    let everyone: Vec<PersonId> = scene.judged().day.briefing.attended;
    scene.briefed_at(DAY, "North quay", everyone.clone());
    let (_, on_day) = row(&scene, LapseEvent::NewSite);
    assert_eq!(plan(&scene), BTreeSet::new());
    assert_eq!(day(&scene), on_day);
    // Spelt otherwise it is the same place.
    scene.briefed_at(DAY, " silo  YARD ", everyone);
    assert_eq!(day(&scene), BTreeSet::new());
}

#[test]
fn a_reading_out_of_band_stops_the_go_and_lapses_no_mark() {
    let mut scene = Scene::ready();
    let _take = scene.calls_go();
    scene.reading(ReadingKind::Wind, 9.6);
    assert!(!scene.judged().go.may);
    // The wind drops again: the marks stand, and the go that was called is spent all the same.
    scene.reading(ReadingKind::Wind, 4.0);
    assert_eq!(
        (plan(&scene), day(&scene)),
        (BTreeSet::new(), BTreeSet::new())
    );
    let open = scene.judged().go.open.unwrap();
    assert_eq!(open.lapsed.len(), 1, "{:?}", open.lapsed);
    assert!(open.lapsed[0].starts_with("Mean wind was read outside the band, 9.6 m/s"));
}

#[test]
fn a_head_impact_lapses_what_its_row_says_and_stands_the_performer_down() {
    let mut scene = Scene::ready();
    let take = scene.calls_go();
    scene.ends(take, crate::case::TakeResult::Good);
    scene.looked(Some(take), Fitness::Fit, true);
    let (on_plan, on_day) = row(&scene, LapseEvent::HeadImpact);
    let named = BTreeSet::from([Role::Coordinator, Role::Performer, Role::Medic]);
    assert_eq!((&on_plan, &on_day), (&named, &named));
    assert_eq!((plan(&scene), day(&scene)), (on_plan, on_day));
    // Signing again lifts nothing for the body: they are down for the day, "I'm fine" or not.
    scene.looked(Some(take), Fitness::Fit, false);
    scene.everyone_signs().everyone_signs_the_day();
    let judged = scene.judged();
    assert_eq!(
        judged.day.people[0].stood_down.as_deref(),
        Some("Thandeka Ngubo is stood down until 2026-03-15 07:15 UTC, after the medic's look.")
    );
    assert!(!judged.go.may);
    scene.case.policy.after_take.head_impact_days = 2;
    let stood = scene.judged().day.people[0].stood_down.clone().unwrap();
    assert!(stood.contains("2026-03-16 07:15"), "{stood}");
}

#[test]
fn a_head_impact_to_somebody_not_cast_lapses_nothing() {
    let mut scene = Scene::ready();
    scene.looked(None, Fitness::Fit, true);
    scene.case.day.looks[0].person = person_of(Role::Camera);
    assert!(scene.judged().go.may);
}

#[test]
fn a_performers_mark_falls_by_their_own_body_alone() {
    let mut scene = Scene::ready();
    let other = person_of(Role::Camera);
    let mut person = scene.case.people[0].clone();
    person.id = other;
    scene.case.people.push(person);
    scene.revise(|facets| {
        let mut second = facets.cast.slots[0].clone();
        second.id = gagwright_casting::SlotId(uuid::Uuid::from_u128(99));
        second.person = Some(other);
        facets.cast.slots.push(second);
    });
    for role in [Role::Coordinator, Role::Performer, Role::Medic] {
        scene.signs(role).signs_the_day(role);
    }
    scene.looked(None, Fitness::Fit, true);
    scene.case.day.looks[0].person = other;
    let judged = scene.judged();
    let own = |list: &[crate::case::RoleStanding]| {
        let mut marks = list.iter();
        marks.find(|one| one.slot == Some(slot())).unwrap().state
    };
    assert_eq!(own(&judged.roles), RoleState::Standing);
    assert_eq!(own(&judged.day.marks), RoleState::Standing);
    assert_eq!(scene.day_mark(Role::Medic).state, RoleState::Lapsed);
}

#[test]
fn a_certificate_that_ran_out_lapses_its_holders_own_marks() {
    let mut scene = Scene::ready();
    scene.member(Role::Medic).certificates.clear();
    assert_eq!(plan(&scene), BTreeSet::from([Role::Medic]));
    assert_eq!(day(&scene), BTreeSet::from([Role::Medic]));
    assert!(!scene.judged().go.may);
    // Where the table leaves the role out, it lapses nothing.
    for row in &mut scene.case.policy.lapses {
        if row.event == LapseEvent::Certificate {
            row.plan.remove(&Role::Medic);
            row.day.remove(&Role::Medic);
        }
    }
    assert!(scene.judged().go.may);
}

#[test]
fn a_device_revoked_before_a_mark_arrived_lapses_it() {
    let mut scene = Scene::ready();
    let medic = person_of(Role::Medic);
    let first = scene.case.day.signoffs[0].received_at;
    for device in &mut scene.case.devices {
        if device.person == medic {
            device.revoked_at = Some(first - SignedDuration::from_hours(1));
        }
    }
    // The plan was signed long before.
    assert_eq!(plan(&scene), BTreeSet::new());
    assert_eq!(day(&scene), BTreeSet::from([Role::Medic]));
}

#[test]
fn a_policy_must_say_what_each_event_lapses() {
    let problems = |change: fn(&mut Policy)| {
        let mut policy = Policy::built_in().clone();
        change(&mut policy);
        policy.problems()
    };
    assert_eq!(problems(|_| {}), Vec::<String>::new());
    let gone = problems(|policy| {
        policy
            .lapses
            .retain(|row| row.event != LapseEvent::ShockLoad)
    });
    assert_eq!(gone, ["it does not say what lapses on a shock load"]);
    let beyond = problems(|policy| {
        let row = policy
            .lapses
            .iter_mut()
            .find(|row| row.event == LapseEvent::PerformerSwap);
        row.unwrap().plan.insert(Role::Effects);
    });
    assert_eq!(
        beyond,
        ["effects is to sign the plan again on another performer and does not answer for the cast"]
    );
    let kept = problems(|policy| {
        let row = policy
            .lapses
            .iter_mut()
            .find(|row| row.event == LapseEvent::NewSite);
        row.unwrap().go = false;
    });
    assert_eq!(kept, ["a go is to outlast another place"]);
    assert_eq!(
        problems(|policy| policy.day.go.clear()),
        ["nobody may call a go"]
    );
    assert_eq!(
        problems(|policy| policy.tell.clear()),
        [
            "nobody is told of a near miss",
            "nobody is told of an incident"
        ]
    );
}
