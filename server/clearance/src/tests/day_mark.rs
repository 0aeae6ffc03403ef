//! What the door refuses of a mark for the day, and which day and place a case is about.

use gagwright_casting::SlotId;
use jiff::{SignedDuration, civil::date};
use uuid::Uuid;

use crate::{
    day_mark::{self, DayStatement, day_and_place, span},
    day_scene::DAY,
    policy::Role,
    scene::{Scene, key_of, person_of, time},
    signoff::{Decision, SignOffError},
};

fn refused(change: impl FnOnce(&mut DayStatement)) -> String {
    let mut scene = Scene::morning();
    let mut statement = scene.day_statement(Role::Medic);
    change(&mut statement);
    scene.hand_in_day(&statement).unwrap_err().to_string()
}

#[test]
fn the_door_takes_only_what_is_so() {
    assert!(refused(|one| one.serials = vec!["H-13".to_owned()]).contains("other equipment"));
    assert!(refused(|one| one.cast.clear()).contains("another cast"));
    assert!(refused(|one| one.revision = 1).contains("another revision"));
    assert!(refused(|one| one.attestation = "medic/1".to_owned()).contains("another attestation"));
    assert!(
        refused(|one| one.decision = Decision::ApproveWithConditions)
            .contains("conditions belong to the plan")
    );
    assert!(refused(|one| one.place = "Silo yard".to_owned()).contains("SHA-256 of the place"));
    assert!(refused(|one| one.day = date(2026, 3, 20)).contains("a day is signed on the day"));
    let long = refused(|one| one.good_until += SignedDuration::from_hours(1));
    assert!(long.contains("at most 12 hours"), "{long}");
    assert!(refused(|one| one.role = Role::Camera).contains("other facets"));
}

#[test]
fn nobody_signs_the_day_for_another() {
    let mut scene = Scene::morning();
    let mut statement = scene.day_statement(Role::Performer);
    statement.signer = person_of(Role::Medic);
    let jws = day_mark::sign(&statement, &key_of(person_of(Role::Performer))).unwrap();
    let error = day_mark::accept(&jws, &scene.case, scene.now).unwrap_err();
    assert!(
        error.to_string().contains("belongs to someone else"),
        "{error}"
    );
}

#[test]
fn consent_to_the_day_is_for_the_slot_that_its_signer_is_cast_in() {
    let told = |role: Role, slot: Option<SlotId>| {
        let mut scene = Scene::morning();
        let mut statement = scene.day_statement(role);
        statement.slot = slot;
        scene.hand_in_day(&statement).unwrap_err().to_string()
    };
    let nowhere = Some(SlotId(Uuid::from_u128(4_040)));
    assert!(told(Role::Performer, None).contains("give slot"));
    assert!(told(Role::Performer, nowhere).contains("the plan has no slot"));
    assert!(told(Role::Medic, nowhere).contains("only a performer signs for a slot"));
}

#[test]
fn a_replay_and_a_changed_byte_are_refused() {
    let mut scene = Scene::morning();
    let statement = scene.day_statement(Role::Medic);
    scene.hand_in_day(&statement).unwrap();
    assert!(
        scene
            .hand_in_day(&statement)
            .unwrap_err()
            .to_string()
            .contains("recorded already")
    );
    let other = key_of(person_of(Role::Camera));
    let jws = day_mark::sign(&scene.day_statement(Role::Rigging), &other).unwrap();
    assert_eq!(
        day_mark::accept(&jws, &scene.case, scene.now),
        Err(SignOffError::BadSignature)
    );
}

#[test]
fn a_plan_sign_off_is_no_mark_for_the_day() {
    let scene = Scene::morning();
    let plan = &scene.case.signoffs[0].jws;
    assert!(day_mark::read_unverified(plan).is_err());
}

#[test]
fn a_mark_names_the_readings_that_were_shown() {
    let scene = Scene::ready();
    let last = scene.case.day.signoffs.last().unwrap();
    let statement = day_mark::read_unverified(&last.jws).unwrap();
    assert_eq!(statement.readings.len(), 1);
    assert_eq!(statement.readings[0].value, 3.0);
    assert_eq!(statement.serials, ["H-12"]);
}

#[test]
fn a_place_is_hashed_in_its_plain_spelling() {
    // printf 'silo yard' | sha256sum, with another program (coreutils).
    let hash = "a2599725ad925baee62dd02a9b3255a7cb7ad792cd7164a07982b57800b0544c";
    assert_eq!(day_mark::place_hash("  Silo   YARD "), hash);
}

#[test]
fn a_day_lasts_wherever_in_the_world_it_is() {
    // UTC+14 begins it, UTC-12 ends it, and a night shoot six hours later.
    let (from, until) = span(DAY);
    assert_eq!(from, time("2026-03-13T10:00:00Z"));
    assert_eq!(until, time("2026-03-15T18:00:00Z"));
}

#[test]
fn a_mark_does_not_outlast_what_the_policy_gives_it() {
    let mut scene = Scene::ready();
    scene.later(SignedDuration::from_hours(18));
    let why = scene.day_mark(Role::Medic).reasons.join(" ");
    assert!(why.contains("was good until"), "{why}");
}

#[test]
fn the_latest_briefing_says_which_day_and_place_it_is() {
    let mut scene = Scene::morning();
    assert_eq!(
        day_and_place(&scene.case, scene.now),
        (DAY, "Silo yard".to_owned())
    );
    scene.briefed_at(date(2026, 3, 15), "North quay", vec![]);
    scene.later(SignedDuration::from_hours(12));
    let (day, place) = day_and_place(&scene.case, scene.now);
    assert_eq!((day, place.as_str()), (date(2026, 3, 15), "North quay"));
    // A briefing for a day that it cannot be says nothing.
    scene.later(SignedDuration::from_hours(72));
    let (day, place) = day_and_place(&scene.case, scene.now);
    assert_eq!((day, place.as_str()), (date(2026, 3, 17), "Silo yard"));
}
