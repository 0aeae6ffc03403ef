//! What arrives late, and what a night leaves behind: words that travelled by another phone, marks of the
//! evening before, a blow to the head just before midnight, stops that ended before the go was heard of.
//! That a shift's marks do not serve the next morning's is common practice.

use jiff::SignedDuration;

use crate::{
    case::{DayBlockKind, Fitness, ReadingKind, Returned, RoleState, StandDown, TakeResult},
    day_scene::DAY,
    facets::Equipment,
    ids::RecordId,
    policy::Role,
    scene::{Scene, person_of},
    signoff::Decision,
};

#[test]
fn a_yes_said_before_a_no_does_not_lift_it_by_arriving_after() {
    let mut scene = Scene::cleared();
    let yes = scene.statement(Role::Rigging);
    scene.declines(Role::Rigging, "the anchor moved");
    assert_eq!(scene.standing(Role::Rigging).state, RoleState::Declined);
    scene.hand_in(&yes).unwrap();
    assert_eq!(scene.standing(Role::Rigging).state, RoleState::Declined);
    // In the order they were said it is the same.
    let mut scene = Scene::cleared();
    scene
        .signs(Role::Rigging)
        .declines(Role::Rigging, "the anchor moved");
    assert_eq!(scene.standing(Role::Rigging).state, RoleState::Declined);
    scene.signs(Role::Rigging);
    assert_ne!(scene.standing(Role::Rigging).state, RoleState::Declined);
}

#[test]
fn a_yes_to_the_day_said_before_a_no_does_not_lift_it_by_arriving_after() {
    let mut scene = Scene::ready();
    let yes = scene.day_statement(Role::Rigging);
    scene.later(SignedDuration::from_mins(1));
    let mut no = scene.day_statement(Role::Rigging);
    no.decision = Decision::Decline;
    scene.hand_in_day(&no).unwrap();
    scene.hand_in_day(&yes).unwrap();
    assert_eq!(scene.day_mark(Role::Rigging).state, RoleState::Declined);
    scene.later(SignedDuration::from_mins(1));
    scene.signs_the_day(Role::Rigging);
    assert_eq!(scene.day_mark(Role::Rigging).state, RoleState::Standing);
}

#[test]
fn nobody_else_lifts_a_no_to_the_day() {
    let mut scene = Scene::ready();
    let other = person_of(Role::FirstAd);
    scene.member(Role::FirstAd).roles.insert(Role::Rigging);
    let held = scene.member(Role::Rigging).certificates.clone();
    scene.member(Role::FirstAd).certificates.extend(held);
    let mut no = scene.day_statement(Role::Rigging);
    no.decision = Decision::Decline;
    scene.hand_in_day(&no).unwrap();
    scene.later(SignedDuration::from_mins(1));
    let mut yes = scene.day_statement(Role::Rigging);
    (yes.signer, yes.device) = (other, crate::scene::device_of(other));
    scene.hand_in_day(&yes).unwrap();
    assert_eq!(scene.day_mark(Role::Rigging).state, RoleState::Declined);
}

#[test]
fn marks_and_briefing_of_one_shift_do_not_serve_the_next_morning() {
    let mut scene = Scene::ready();
    assert!(scene.judged().go.may);
    scene.later(SignedDuration::from_hours(14));
    scene.reading(ReadingKind::Wind, 2.0);
    let judged = scene.judged();
    assert_eq!(judged.day.day, DAY, "it is still that day somewhere");
    assert_eq!(
        scene.why_not(),
        [DayBlockKind::Briefing, DayBlockKind::Lapsed]
    );
}

#[test]
fn midnight_frees_nobody_who_struck_their_head() {
    let mut scene = Scene::ready();
    let take = scene.calls_go();
    scene.ends(take, TakeResult::Good);
    scene.looked(Some(take), Fitness::Fit, true);
    // Briefed again for what the calendar calls tomorrow, an hour later.
    scene.later(SignedDuration::from_hours(1));
    let everyone = scene.judged().day.briefing.attended;
    scene.briefed_at(DAY.tomorrow().unwrap(), "Silo yard", everyone);
    assert!(scene.why_not().contains(&DayBlockKind::StoodDown));
    scene.later(SignedDuration::from_hours(22));
    let everyone = scene.judged().day.briefing.attended;
    scene.briefed_at(DAY.tomorrow().unwrap(), "Silo yard", everyone.clone());
    assert!(scene.why_not().contains(&DayBlockKind::StoodDown));
    scene.later(SignedDuration::from_hours(2));
    scene.briefed_at(DAY.tomorrow().unwrap(), "Silo yard", everyone);
    assert!(!scene.why_not().contains(&DayBlockKind::StoodDown));
}

#[test]
fn a_look_is_owed_over_midnight() {
    let mut scene = Scene::ready();
    let take = scene.calls_go();
    scene.ends(take, TakeResult::Good);
    let everyone = scene.judged().day.briefing.attended;
    scene.briefed_at(DAY.tomorrow().unwrap(), "Silo yard", everyone);
    assert!(scene.why_not().contains(&DayBlockKind::Look));
    // A medic who has not heard of the take looks all the same.
    scene.looked(None, Fitness::Fit, false);
    assert!(!scene.why_not().contains(&DayBlockKind::Look));
}

#[test]
fn whoever_performs_signs_under_no_hat_that_is_kept_apart_from_it() {
    let mut scene = Scene::ready();
    let performer = person_of(Role::Performer);
    assert!(scene.case.policy.keeps_apart(Role::Medic, Role::Performer));
    let mut mark = scene.day_statement(Role::Medic);
    (mark.signer, mark.device) = (performer, crate::scene::device_of(performer));
    let held = scene.member(Role::Medic).clone();
    scene.member(Role::Performer).roles.insert(Role::Medic);
    scene.member(Role::Performer).certificates = held.certificates;
    let refused = scene.hand_in_day(&mark).unwrap_err().to_string();
    assert!(refused.contains("apart"), "{refused}");
    // Recorded all the same, it counts for nothing.
    let jws = crate::day_mark::sign(&mark, &crate::scene::key_of(performer)).unwrap();
    scene.record_day(jws);
    let standing = scene.day_mark(Role::Medic);
    assert_eq!(standing.state, RoleState::Lapsed);
    assert!(
        standing.reasons[0].contains("performs on this gag"),
        "{standing:?}"
    );
}

#[test]
fn a_go_heard_of_late_is_judged_by_what_was_in_the_way_when_it_was_called() {
    let mut scene = Scene::ready();
    scene.later(SignedDuration::from_mins(1));
    scene.case.day.stand_downs.push(StandDown {
        id: RecordId(uuid::Uuid::from_u128(5)),
        person: person_of(Role::Performer),
        from: scene.now,
        until: None,
        by: person_of(Role::Performer),
        returned: None,
        after_look: false,
    });
    scene.later(SignedDuration::from_mins(1));
    let called = scene.now;
    scene.later(SignedDuration::from_mins(1));
    scene.case.day.stand_downs[0].returned = Some(Returned {
        at: scene.now,
        by: person_of(Role::Medic),
    });
    assert!(scene.judged().go.may);
    let judged = |at| {
        let case = scene.case.reopened(at);
        crate::judge::clearance_with(&case, at, crate::test_fall::find)
            .go
            .may
    };
    assert!(!judged(called));
    assert!(judged(scene.now));
}

#[test]
fn a_serial_is_found_however_it_is_spelt() {
    let mut scene = Scene::ready();
    scene.shocked();
    let marks = scene.day_mark(Role::Rigging);
    assert_eq!(marks.state, RoleState::Lapsed);
    scene.case.day.equipment[0].serial = " h-12".to_owned();
    assert_eq!(
        scene.day_mark(Role::Rigging).reasons,
        marks
            .reasons
            .iter()
            .map(|one| one.replace("(H-12)", "( h-12)"))
            .collect::<Vec<_>>()
    );
    let listed: &Equipment = &scene.case.plan.facets.rigging.equipment[0];
    assert_eq!(listed.serial, "H-12");
}

#[test]
fn an_inspection_settles_nothing_that_befell_after_it() {
    let mut scene = Scene::ready();
    let inspected = scene.now;
    scene.later(SignedDuration::from_mins(5));
    scene.shocked();
    let shock = scene.case.day.equipment[0].shock_loads.pop().unwrap();
    let mut item = scene.case.day.equipment[0].clone();
    item.shocked(shock);
    assert!(!item.taken_back(inspected));
    assert!(item.quarantined.is_some());
    assert!(item.taken_back(scene.now) && item.quarantined.is_none());
}

#[test]
fn a_no_to_an_earlier_revision_is_heard() {
    let mut scene = Scene::ready();
    let mut no = scene.statement(Role::Rigging);
    no.decision = Decision::Decline;
    no.reason = Some("the anchor moved".to_owned());
    let mut day_no = scene.day_statement(Role::Medic);
    day_no.decision = Decision::Decline;
    let yes = scene.statement(Role::Medic);
    scene.revise(|facets| facets.camera.notes = "wider".to_owned());
    scene.hand_in(&no).unwrap();
    scene.hand_in_day(&day_no).unwrap();
    assert_eq!(scene.standing(Role::Rigging).state, RoleState::Declined);
    assert_eq!(scene.day_mark(Role::Medic).state, RoleState::Declined);
    assert!(scene.hand_in(&yes).is_err(), "a yes is to what is current");
}

#[test]
fn a_piece_that_two_set_aside_is_so_for_the_first_and_until_after_the_last_in_any_order() {
    let scene = Scene::ready();
    let minute = |n: i64| scene.now + SignedDuration::from_mins(n);
    let told = [
        (minute(0), "a frayed strap", Role::Rigging),
        (minute(5), "the buckle is bent", Role::Medic),
        (minute(9), "it smells of smoke", Role::Effects),
    ];
    for order in [
        [0, 1, 2],
        [0, 2, 1],
        [1, 0, 2],
        [1, 2, 0],
        [2, 0, 1],
        [2, 1, 0],
    ] {
        let mut item = scene.case.day.equipment[0].clone();
        for at in order {
            let (since, reason, role) = told[at];
            item.set_aside(since, reason.to_owned(), person_of(role));
        }
        let aside = item.quarantined.clone().unwrap();
        assert_eq!(
            (aside.since, aside.reason.as_str()),
            (minute(0), "a frayed strap")
        );
        assert_eq!(aside.again_at, Some(minute(9)));
        // Inspected between the second and the third: it saw two of them.
        assert!(!item.taken_back(minute(7)));
        assert!(item.quarantined.is_some());
        assert!(item.taken_back(minute(10)));
        assert!(item.quarantined.is_none());
    }
}
