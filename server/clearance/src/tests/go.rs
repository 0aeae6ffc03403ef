//! A go: called only when the plan is cleared and the day stands, and good for one take. "Go lasts one
//! take", the medic's look after it and the freeze after a near miss are common practice from memory.

use gagwright_casting::{Requirement, SlotId};
use jiff::{SignedDuration, civil::date};
use uuid::Uuid;

use crate::{
    case::{
        BlockKind, ClearanceState, Closing, DayBlockKind, Fitness, Incident, IncidentKind,
        Quarantine, ReadingKind, Returned, RoleState, StandDown, TakeResult, Told,
    },
    day_scene::DAY,
    ids::RecordId,
    judge::{is_open, missing_closings, untold},
    policy::{LapseEvent, Role},
    scene::{Scene, person_of},
    signoff::Decision,
};

#[test]
fn a_morning_waits_for_the_briefing_the_reading_and_the_marks() {
    let scene = Scene::morning();
    assert_eq!(scene.judged().state, ClearanceState::Cleared);
    assert_eq!(
        scene.why_not(),
        [
            DayBlockKind::Briefing,
            DayBlockKind::Reading,
            DayBlockKind::Unsigned
        ]
    );
    assert!(Scene::ready().judged().go.may);
}

#[test]
fn no_go_while_the_plan_is_not_cleared() {
    let mut scene = Scene::ready();
    scene.hold(None);
    assert_eq!(scene.why_not(), [DayBlockKind::Plan]);
    assert!(scene.judged().day.stands);
}

#[test]
fn no_go_on_another_day_than_the_plans_unless_briefed_for_it() {
    let mut scene = Scene::ready();
    scene.later(SignedDuration::from_hours(24 * 20));
    // The day is past: today is judged, and nobody was briefed for it.
    let judged = scene.judged();
    assert_eq!(judged.day.day, date(2026, 4, 3));
    assert!(scene.why_not().contains(&DayBlockKind::Briefing));
    let mut early = Scene::cleared();
    early.now = crate::scene::time("2026-03-10T09:00:00Z");
    assert_eq!(early.judged().day.day, DAY);
    assert!(early.why_not().contains(&DayBlockKind::NotToday));
}

#[test]
fn people_are_judged_again_for_another_day() {
    let mut scene = Scene::ready();
    scene.case.people[0].medically_clear_until = Some(DAY);
    assert!(scene.judged().go.may);
    let everyone = scene.judged().day.briefing.attended;
    scene.later(SignedDuration::from_hours(24));
    scene.briefed_at(DAY.tomorrow().unwrap(), "Silo yard", everyone);
    scene.reading(ReadingKind::Wind, 2.0);
    scene.everyone_signs_the_day();
    let why = scene.judged().go.why_not;
    assert_eq!(scene.why_not(), [DayBlockKind::Performer], "{why:?}");
    assert!(why[0].reason.contains("on 2026-03-15"), "{why:?}");
}

#[test]
fn a_reading_grows_old() {
    let mut scene = Scene::ready();
    scene.reading(ReadingKind::Wind, 3.0);
    // The band allows 20 minutes, which is less than the policy's 30.
    scene.later(SignedDuration::from_mins(20));
    assert!(scene.judged().go.may);
    scene.later(SignedDuration::from_mins(1));
    let why = scene.judged().go.why_not;
    assert_eq!(scene.why_not(), [DayBlockKind::Reading]);
    assert!(
        why[0].reason.ends_with("a reading counts for 20 min."),
        "{why:?}"
    );
}

#[test]
fn a_reading_at_the_bands_own_edge_is_inside() {
    let mut scene = Scene::ready();
    scene.reading(ReadingKind::Wind, 6.0);
    assert!(scene.judged().go.may);
    scene.reading(ReadingKind::Wind, 6.000_001);
    assert!(!scene.judged().go.may);
}

#[test]
fn whoever_missed_the_briefing_is_named_and_may_be_briefed_later() {
    let mut scene = Scene::morning();
    scene.reading(ReadingKind::Wind, 3.0);
    scene.briefed_at(DAY, "Silo yard", vec![]);
    scene.everyone_signs_the_day();
    let judged = scene.judged();
    assert!(
        judged
            .day
            .briefing
            .missed
            .contains(&person_of(Role::Performer))
    );
    // Whoever led it was there.
    assert!(
        !judged
            .day
            .briefing
            .missed
            .contains(&person_of(Role::FirstAd))
    );
    scene.briefed_at(DAY, "Silo yard", judged.day.briefing.missed);
    assert!(scene.judged().go.may, "{:?}", scene.judged().go.why_not);
}

#[test]
fn a_briefing_is_outdated_by_what_is_done() {
    let mut scene = Scene::ready();
    scene.revise(|facets| facets.action.summary = "From the other side.".to_owned());
    assert!(scene.judged().day.briefing.outdated);
    let mut camera = Scene::ready();
    camera.revise(|facets| facets.camera.notes = "a longer lens".to_owned());
    assert!(!camera.judged().day.briefing.outdated);
}

#[test]
fn a_go_is_spent_by_its_take_and_the_next_needs_the_medics_look() {
    let mut scene = Scene::ready();
    assert_eq!(scene.judged().go.next, 1);
    let take = scene.calls_go();
    let judged = scene.judged();
    assert_eq!(scene.why_not(), [DayBlockKind::OpenTake]);
    assert_eq!(
        judged.go.open.as_ref().unwrap().lapsed,
        Vec::<String>::new()
    );
    scene.ends(take, TakeResult::NotGood);
    assert_eq!(scene.why_not(), [DayBlockKind::Look]);
    scene.looked(Some(take), Fitness::Limits, false);
    let judged = scene.judged();
    assert!(judged.go.may && judged.go.next == 2);
}

#[test]
fn a_take_stopped_before_the_action_needs_no_look() {
    let mut scene = Scene::ready();
    let take = scene.calls_go();
    scene.ends(take, TakeResult::Stopped);
    assert!(scene.judged().go.may);
}

#[test]
fn a_hold_raised_and_released_after_the_go_has_voided_it() {
    let mut scene = Scene::ready();
    scene.calls_go();
    scene.hold(None);
    let at = scene.now;
    scene.case.holds[0].released_at = Some(at);
    let open = scene.judged().go.open.unwrap();
    assert!(open.lapsed[0].starts_with("A hold was raised after the go"));
}

#[test]
fn an_unfit_performer_waits_for_the_medic() {
    let mut scene = Scene::ready();
    scene.looked(None, Fitness::Unfit, false);
    assert_eq!(scene.why_not(), [DayBlockKind::StoodDown]);
    scene.looked(None, Fitness::Fit, false);
    assert!(scene.judged().go.may);
}

#[test]
fn whoever_is_stood_down_does_not_perform_until_they_are_back() {
    let mut scene = Scene::ready();
    let at = scene.now;
    scene.case.day.stand_downs.push(StandDown {
        id: RecordId(Uuid::from_u128(5)),
        person: person_of(Role::Performer),
        from: at,
        until: None,
        by: person_of(Role::Performer),
        returned: None,
        after_look: false,
    });
    assert_eq!(scene.why_not(), [DayBlockKind::StoodDown]);
    scene.case.day.stand_downs[0].returned = Some(Returned {
        at,
        by: person_of(Role::Performer),
    });
    assert!(scene.judged().go.may);
}

#[test]
fn equipment_in_quarantine_blocks_the_plan_and_the_day() {
    let mut scene = Scene::ready();
    let since = scene.now;
    scene.case.day.equipment[0].quarantined = Some(Quarantine {
        since,
        reason: "A frayed strap.".to_owned(),
        by: person_of(Role::Rigging),
        again_at: None,
    });
    let judged = scene.judged();
    assert_eq!(judged.state, ClearanceState::Blocked);
    assert!(judged.blocks[0].reason.contains("in quarantine since"));
    assert!(judged.blocks[0].reason.ends_with("A frayed strap."));
    assert_eq!(
        scene.why_not(),
        [DayBlockKind::Plan, DayBlockKind::Equipment]
    );
}

#[test]
fn the_registers_inspection_counts_before_the_plans() {
    let mut scene = Scene::ready();
    scene.case.day.equipment[0].inspected_until = Some(date(2026, 3, 13));
    assert!(
        scene.judged().blocks[0]
            .reason
            .contains("counts until 2026-03-13")
    );
    scene.case.day.equipment[0].inspected_until = Some(DAY);
    assert!(scene.judged().go.may);
}

fn near_miss(scene: &mut Scene) -> Incident {
    Incident {
        id: RecordId(Uuid::from_u128(6)),
        kind: IncidentKind::NearMiss,
        gag: Some(scene.case.plan.gag),
        at: scene.now,
        by: person_of(Role::Rigging),
        what: "a shackle fell".to_owned(),
        told: Vec::new(),
        closings: Vec::new(),
        closed_at: None,
    }
}

#[test]
fn a_near_miss_freezes_the_plan_until_two_people_say_what_was_done_and_all_were_told() {
    let mut scene = Scene::ready();
    let incident = near_miss(&mut scene);
    scene.case.day.incidents.push(incident);
    let judged = scene.judged();
    assert_eq!(judged.state, ClearanceState::Held);
    assert_eq!(judged.blocks[0].kind, BlockKind::Incident);
    let at = scene.now;
    let (policy, members) = (scene.case.policy.clone(), scene.case.members.clone());
    let open = &mut scene.case.day.incidents[0];
    assert_eq!(
        untold(open, &policy),
        ["coordinator", "first_ad", "production"]
    );
    for who in ["coordinator", "first_ad", "production"] {
        let by = person_of(Role::Rigging);
        open.told.push(Told {
            who: who.to_owned(),
            at,
            by,
        });
    }
    let closing = |role: Role, person: Role| Closing {
        role,
        person: person_of(person),
        at,
        action: "all shackles moused and checked".to_owned(),
    };
    open.closings
        .push(closing(Role::Coordinator, Role::Coordinator));
    assert_eq!(
        missing_closings(open, &policy, &members),
        [Role::Production]
    );
    assert!(is_open(open, &policy, &members));
    // Whoever does not hold the hat closes nothing.
    open.closings.push(closing(Role::Production, Role::Camera));
    assert!(is_open(open, &policy, &members));
    open.closings
        .push(closing(Role::Production, Role::Production));
    assert!(!is_open(open, &policy, &members));
    assert!(scene.judged().go.may);
}

#[test]
fn one_person_with_both_hats_does_not_close_an_incident() {
    let mut scene = Scene::ready();
    let mut incident = near_miss(&mut scene);
    let at = scene.now;
    scene
        .member(Role::Coordinator)
        .roles
        .insert(Role::Production);
    for role in [Role::Coordinator, Role::Production] {
        incident.closings.push(Closing {
            role,
            person: person_of(Role::Coordinator),
            at,
            action: "looked at".to_owned(),
        });
    }
    let missing = missing_closings(&incident, &scene.case.policy, &scene.case.members);
    assert_eq!(missing, [Role::Production]);
}

#[test]
fn what_takes_put_a_body_through_counts_against_its_cap() {
    let mut scene = Scene::morning();
    scene.revise(|facets| {
        facets.cast.slots[0]
            .requirements
            .push(Requirement::DailyExposure {
                exposure: "high_fall".to_owned(),
                adds: 1,
                max: 2,
            });
    });
    scene.everyone_signs();
    scene.briefed();
    scene.reading(ReadingKind::Wind, 3.0);
    scene.everyone_signs_the_day();
    for _ in 0..2 {
        assert!(scene.judged().go.may, "{:?}", scene.judged().go.why_not);
        let take = scene.calls_go();
        scene.ends(take, TakeResult::Good);
        scene.looked(Some(take), Fitness::Fit, false);
    }
    // Two taken and one to come make three, where two is the most.
    let why = scene.judged().go.why_not;
    assert!(
        why[0].reason.contains("2 taken that day and 1 here make 3"),
        "{why:?}"
    );
}

/// Common practice: a skill used in a take is a skill used, and one stopped before the action is not.
#[test]
fn a_take_is_practice_of_what_its_slot_asks_for() {
    let mut scene = Scene::ready();
    let skill = Requirement::Skill {
        name: "high_fall".to_owned(),
        level: 3,
        within_days: Some(183),
    };
    let mut plan = scene.case.plan.clone();
    plan.facets.cast.slots[0].requirements.push(skill);
    let who = plan.facets.cast.slots[0].person.unwrap();
    let mut person = scene
        .case
        .people
        .iter()
        .find(|one| one.id == who)
        .unwrap()
        .clone();
    let old = jiff::civil::date(2020, 1, 1);
    person.skills = vec![gagwright_casting::Skill {
        name: "high_fall".to_owned(),
        level: 4,
        assessed_by: None,
        assessed_on: None,
        last_used: Some(old),
    }];
    let used = |scene: &Scene| {
        let practised =
            crate::judge::practised(&plan, &scene.case.day.takes, &scene.case.day.debriefs);
        let mut person = person.clone();
        crate::judge::with_takes(&mut person, [].iter(), practised.iter(), &[]);
        person.skills[0].last_used.unwrap()
    };
    let take = scene.calls_go();
    assert!(crate::judge::to_debrief(&plan, &scene.case.day.takes).is_none());
    scene.ends(take, TakeResult::Stopped);
    assert_eq!(used(&scene), old);
    let (last, performed) = crate::judge::to_debrief(&plan, &scene.case.day.takes).unwrap();
    assert_eq!((last.id, performed.len()), (take, 0));
    let take = scene.calls_go();
    scene.ends(take, TakeResult::NotGood);
    let (last, performed) = crate::judge::to_debrief(&plan, &scene.case.day.takes).unwrap();
    assert_eq!(last.id, take);
    let of_them = performed.iter().find(|one| one.person == who).unwrap();
    assert!(of_them.skills.contains("high_fall"));
    let day = scene.case.day.takes[1].day;
    assert_eq!(used(&scene), day);

    // A debrief says what was used: nothing, and then, by its last word, that skill after all.
    let said = |number: u128, minute: i64, skills: &[&str]| crate::case::Debrief {
        id: RecordId(uuid::Uuid::from_u128(number)),
        day,
        place: "Quay".to_owned(),
        revision: 1,
        at: scene.now + jiff::SignedDuration::from_mins(minute),
        led_by: who,
        by: who,
        attended: Vec::new(),
        as_planned: "all of it".to_owned(),
        differently: String::new(),
        next_time: String::new(),
        used: vec![crate::case::Used {
            person: who,
            skills: skills.iter().map(|one| (*one).to_owned()).collect(),
        }],
    };
    let (nothing, after_all) = (said(901, 1, &[]), said(900, 2, &["high_fall"]));
    let mut earlier = said(902, 0, &["high_fall"]);
    earlier.day = old;
    scene.case.day.debriefs = vec![nothing];
    assert_eq!(used(&scene), old);
    scene.case.day.debriefs.insert(0, after_all);
    assert_eq!(used(&scene), day);
    // On a day without a take nobody has used anything, whatever was written down.
    scene.case.day.takes.clear();
    scene.case.day.debriefs.push(earlier);
    assert_eq!(used(&scene), old);
    let elsewhere = crate::judge::practised(&plan, &[], &scene.case.day.debriefs);
    assert!(elsewhere.is_empty());
}

#[test]
fn a_decline_for_the_day_stands_until_its_signer_says_otherwise() {
    let mut scene = Scene::ready();
    let mut statement = scene.day_statement(Role::Medic);
    statement.decision = Decision::Decline;
    scene.hand_in_day(&statement).unwrap();
    assert_eq!(scene.day_mark(Role::Medic).state, RoleState::Declined);
    assert_eq!(scene.why_not(), [DayBlockKind::Decline]);
    scene.signs_the_day(Role::Medic);
    assert!(scene.judged().go.may);
}

#[test]
fn a_no_to_another_day_is_never_a_yes_to_this_one() {
    let mut scene = Scene::morning();
    // A production that lets the rigger's mark stand from one day to the next.
    let lapses = &mut scene.case.policy.lapses;
    for row in lapses
        .iter_mut()
        .filter(|row| row.event == LapseEvent::NewDay)
    {
        row.day.remove(&Role::Rigging);
    }
    let mut statement = scene.day_statement(Role::Rigging);
    statement.decision = Decision::Decline;
    scene.hand_in_day(&statement).unwrap();
    assert_eq!(scene.day_mark(Role::Rigging).state, RoleState::Declined);
    // By the evening it is briefed for the day after.
    scene.later(SignedDuration::from_hours(12));
    scene.briefed_at(DAY.tomorrow().unwrap(), "Silo yard", Vec::new());
    let mark = scene.day_mark(Role::Rigging);
    assert_eq!(mark.state, RoleState::Lapsed);
    assert_eq!(mark.reasons, ["Žofie Marková declined 2026-03-14."]);
}

#[test]
fn what_a_body_took_in_a_slot_counts_when_the_slot_is_gone() {
    let mut scene = Scene::ready();
    let once = |exposure: &str| Requirement::DailyExposure {
        exposure: exposure.to_owned(),
        adds: 1,
        max: 1,
    };
    scene.revise(|facets| facets.cast.slots[0].requirements = vec![once("high_fall")]);
    let take = scene.calls_go();
    scene.ends(take, TakeResult::Good);
    let plan_kinds = |scene: &Scene| -> Vec<_> {
        let blocks = scene.judged().blocks;
        blocks.iter().map(|block| block.kind).collect()
    };
    assert!(plan_kinds(&scene).contains(&BlockKind::Performer));
    // Written anew, the same performer is cast in another slot: they have fallen all the same.
    scene.revise(|facets| facets.cast.slots[0].id = SlotId(Uuid::from_u128(99)));
    assert!(plan_kinds(&scene).contains(&BlockKind::Performer));
}

#[test]
fn what_happened_at_one_moment_is_told_in_the_same_order_however_it_arrived() {
    let mut scene = Scene::ready();
    scene.calls_go();
    scene.hold(None).hold(None).shocked().shocked();
    let at = scene.now;
    let shocks = &mut scene.case.day.equipment[0].shock_loads;
    (shocks[0].at, shocks[1].at) = (at, at);
    scene
        .reading(ReadingKind::Wind, 7.0)
        .reading(ReadingKind::Wind, 8.0);
    for reading in &mut scene.case.readings {
        reading.at = at;
    }
    let before = scene.judged();
    scene.case.holds.reverse();
    scene.case.readings.reverse();
    assert_eq!(scene.judged(), before);
    assert!(before.go.open.is_some_and(|open| !open.lapsed.is_empty()));
}
