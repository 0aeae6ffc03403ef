//! The judge on the day, the gear, the ladder and the cast, told as scenes.

use gagwright_casting::Requirement;
use jiff::{SignedDuration, civil::date};

use super::tests::{after, kinds, one_block};
use crate::{
    case::{BlockKind, ClearanceState, ReadingKind, RoleState},
    facets::{Band, Equipment},
    plan::Hazard,
    policy::Role,
    scene::{Scene, certificate, find, person_of, slot},
};

fn wind(max: f64) -> Band {
    Band {
        reading: ReadingKind::Wind,
        min: None,
        max: Some(max),
        max_age_minutes: 30,
    }
}

/// A cleared gag that allows at most 6 m/s of wind.
fn windy() -> Scene {
    let mut scene = Scene::new();
    scene
        .revise(|facets| facets.conditions.bands = vec![wind(6.0)])
        .everyone_signs();
    assert_eq!(
        scene.judged().blocks,
        vec![],
        "a reading that is missing does not stop a plan"
    );
    scene
}

#[test]
fn the_latest_reading_decides_and_one_outside_never_grows_too_old() {
    let mut scene = windy();
    scene.reading(ReadingKind::Wind, 7.5);
    one_block(
        &scene.judged(),
        BlockKind::Condition,
        "Mean wind was read as 7.5 m/s (16.8 mph) at the lip by Žofie Marková",
        "changing the band is a new revision",
    );
    scene.reading(ReadingKind::Gust, 2.0);
    assert_eq!(scene.judged().state, ClearanceState::Blocked);
    scene.reading(ReadingKind::Wind, 5.0);
    assert_eq!(scene.judged().state, ClearanceState::Cleared);
    scene.reading(ReadingKind::Wind, 9.0);
    assert_eq!(scene.judged().state, ClearanceState::Blocked);
    scene.later(SignedDuration::from_hours(72));
    assert_eq!(
        scene.judged().state,
        ClearanceState::Blocked,
        "waiting makes no wind drop"
    );
    scene.reading(ReadingKind::Wind, 5.9);
    assert_eq!(scene.judged().state, ClearanceState::Cleared);
}

#[test]
fn readings_are_said_as_people_read_them() {
    let said = |kind, value, min, max| {
        let mut scene = Scene::new();
        scene.revise(|facets| {
            facets.conditions.bands = vec![Band {
                reading: kind,
                min,
                max,
                max_age_minutes: 30,
            }];
        });
        scene.everyone_signs().reading(kind, value);
        let blocks = scene.judged().blocks;
        blocks.first().map(|block| block.reason.clone()).unwrap()
    };
    let cold = said(
        ReadingKind::AirTemperature,
        272.15,
        Some(275.15),
        Some(308.15),
    );
    assert!(cold.contains("was read as -1.0 °C (30.2 °F)"), "{cold}");
    assert!(
        cold.ends_with("the plan allows 2.0 °C (35.6 °F) to 35.0 °C (95.0 °F)."),
        "{cold}"
    );
    let dark = said(ReadingKind::Light, 120.0, Some(200.0), None);
    assert!(dark.contains("Light was read as 120 lux"), "{dark}");
    assert!(dark.contains("at least 200 lux"), "{dark}");
    // Rounded to three figures the reading would look like the limit.
    let windy = said(ReadingKind::Wind, 6.001, None, Some(6.0));
    assert!(
        windy.contains("was read as a little more than 6 m/s (13.4 mph)"),
        "{windy}"
    );
}

#[test]
fn plausible_readings_have_a_unit_and_an_order() {
    for kind in ReadingKind::ALL {
        let (least, most) = kind.range();
        assert!(least < most && !kind.unit().is_empty(), "{}", kind.name());
        assert_eq!(serde_json::to_value(kind).unwrap(), kind.name());
    }
}

#[test]
fn a_reading_from_tomorrow_hides_nothing() {
    let mut scene = windy();
    scene
        .reading(ReadingKind::Wind, 9.0)
        .reading(ReadingKind::Wind, 1.0);
    let ahead = scene
        .now
        .checked_add(SignedDuration::from_hours(5))
        .unwrap();
    scene.case.readings[1].at = ahead;
    assert_eq!(scene.judged().state, ClearanceState::Blocked);
}

#[test]
fn an_inspection_that_runs_out_before_the_day_blocks() {
    let piece = |until| Equipment {
        name: "sling".to_owned(),
        serial: "S-17".to_owned(),
        working_load: Some(10_000.0),
        inspected_until: until,
    };
    let mut scene = Scene::new();
    scene.revise(|facets| facets.rigging.equipment = vec![piece(Some(date(2026, 3, 14)))]);
    scene
        .rehearsed("bag")
        .rehearsed("bag")
        .rehearsed("half")
        .everyone_signs();
    assert_eq!(scene.judged().state, ClearanceState::Cleared);
    scene.revise(|facets| facets.rigging.equipment = vec![piece(Some(date(2026, 3, 13)))]);
    scene
        .rehearsed("bag")
        .rehearsed("bag")
        .rehearsed("half")
        .everyone_signs();
    one_block(
        &scene.judged(),
        BlockKind::Equipment,
        "The inspection of sling (S-17) counts until 2026-03-13; it is needed on 2026-03-14.",
        "inspected again",
    );
    scene.revise(|facets| facets.rigging.equipment = vec![piece(None)]);
    scene
        .rehearsed("bag")
        .rehearsed("bag")
        .rehearsed("half")
        .everyone_signs();
    one_block(
        &scene.judged(),
        BlockKind::Equipment,
        "Sling (S-17) has no inspection date.",
        "Enter the last day",
    );
}

#[test]
fn a_rescue_must_be_drilled_inside_its_limit() {
    for (drilled, expected) in [
        (Some(200.0), vec![]),
        (Some(300.0), vec![]),
        (Some(301.0), vec![BlockKind::Equipment]),
        (None, vec![BlockKind::Rehearsal]),
    ] {
        let mut scene = Scene::new();
        scene.revise(|facets| {
            facets.rigging.rescue.limit_seconds = Some(300.0);
            facets.rigging.rescue.drilled_seconds = drilled;
        });
        scene
            .rehearsed("bag")
            .rehearsed("bag")
            .rehearsed("half")
            .everyone_signs();
        assert_eq!(kinds(&scene.judged()), expected, "{drilled:?}");
    }
}

#[test]
fn rungs_are_passed_in_order_with_the_plan_as_it_is() {
    let climbed = |runs: &[(&str, bool)]| {
        let mut scene = Scene::cleared();
        scene.case.runs.clear();
        for (rung, good) in runs {
            scene.run(rung, *good);
        }
        let blocks = scene.judged().blocks;
        blocks.first().map(|block| block.reason.clone())
    };
    let (bag, half) = (("bag", true), ("half", true));
    assert_eq!(climbed(&[bag, bag, half]), None);
    assert_eq!(climbed(&[bag, ("bag", false), bag, half]), None);
    let says = climbed(&[]).unwrap();
    assert!(says.contains("0 good of 2 needed on the rung \"weight bag\", and one rung after it"));
    assert!(
        climbed(&[bag, half, bag]).unwrap().contains("0 good of 1"),
        "half came too early"
    );
    assert!(climbed(&[half, bag, bag]).unwrap().contains("0 good of 1"));
    assert!(
        climbed(&[bag, ("bag", false), half])
            .unwrap()
            .contains("1 good of 2")
    );
    let stopped = climbed(&[bag, bag, half, ("half", false), ("half", false)]).unwrap();
    assert!(stopped.contains("last two runs in a row"), "{stopped}");

    let mut scene = Scene::cleared();
    scene
        .revise(|facets| facets.rigging.method = "other catcher".to_owned())
        .everyone_signs();
    one_block(
        &scene.judged(),
        BlockKind::Rehearsal,
        "runs made before the plan changed no longer count",
        "Rehearse the rungs in order",
    );
    let mut scene = Scene::cleared();
    scene
        .revise(|facets| facets.camera.notes = "wider".to_owned())
        .everyone_signs();
    assert_eq!(
        scene.judged().state,
        ClearanceState::Cleared,
        "a camera move is no new rehearsal"
    );
}

#[test]
fn one_run_delivered_twice_counts_once() {
    let clearance = after(|scene| {
        scene.case.runs.remove(0);
        let again = scene.case.runs[0].clone();
        scene.case.runs.insert(0, again);
    });
    assert_eq!(kinds(&clearance), [BlockKind::Rehearsal]);
}

#[test]
fn casting_blocks_with_what_casting_says() {
    let unfit = after(|scene| {
        scene.case.people[0].medically_clear_until = Some(date(2026, 3, 1));
    });
    assert_eq!(kinds(&unfit), [BlockKind::Performer]);
    assert!(
        unfit.blocks[0]
            .reason
            .starts_with("Thandeka Ngubo is not qualified as Double for Ines")
    );
    assert!(unfit.slots[0].verdict.is_some());

    let unknown = after(|scene| scene.case.people.clear());
    one_block(
        &unknown,
        BlockKind::Performer,
        "is not on the roster",
        "Add them to the roster",
    );

    let nobody = after(|scene| {
        scene
            .revise(|facets| facets.cast.slots[0].person = None)
            .everyone_signs();
    });
    one_block(
        &nobody,
        BlockKind::Uncast,
        "Nobody is cast as Double for Ines.",
        "Cast someone",
    );

    let empty = after(|scene| {
        scene
            .revise(|facets| facets.cast.slots.clear())
            .everyone_signs();
    });
    one_block(
        &empty,
        BlockKind::Uncast,
        "no slot for a performer",
        "Add a slot",
    );

    let undated = after(|scene| {
        scene
            .revise(|facets| facets.setting.day = None)
            .everyone_signs();
    });
    one_block(
        &undated,
        BlockKind::Undated,
        "No shooting day",
        "Set the shooting day",
    );
}

#[test]
fn consent_on_the_roster_is_not_consent_and_a_performers_own_sign_off_is() {
    let mut scene = Scene::new();
    let (gag, revision) = (scene.case.plan.gag, scene.case.plan.revision);
    scene.case.people[0].consents = vec![gagwright_casting::Consent {
        gag,
        revision,
        withdrawn: None,
    }];
    let verdict = scene.judged().slots[0].verdict.clone().unwrap();
    let consent = verdict
        .findings
        .iter()
        .find(|one| one.requirement == Requirement::Consent);
    assert_ne!(
        consent.unwrap().standing,
        gagwright_casting::FindingStanding::Met
    );

    scene.case.people[0].consents.clear();
    scene.signs(Role::Performer);
    let verdict = scene.judged().slots[0].verdict.clone().unwrap();
    assert_eq!(verdict.outcome, gagwright_casting::Outcome::Qualified);
    // A consent signed on revision 1 reaches on while nothing it covers changes.
    scene.revise(|facets| facets.camera.notes = "wider".to_owned());
    let verdict = scene.judged().slots[0].verdict.clone().unwrap();
    assert_eq!(verdict.outcome, gagwright_casting::Outcome::Qualified);
    scene.declines(Role::Performer, "not today");
    let verdict = scene.judged().slots[0].verdict.clone().unwrap();
    assert_ne!(verdict.outcome, gagwright_casting::Outcome::Qualified);
}

#[test]
fn another_performer_in_the_slot_must_consent_for_themselves() {
    let mut scene = Scene::cleared();
    let camera = person_of(Role::Camera);
    let mut other = scene.case.people[0].clone();
    other.id = camera;
    other.name = "Eun-ji Baek".to_owned();
    scene.case.people.push(other);
    scene.revise(|facets| facets.cast.slots[0].person = Some(camera));
    let standing = scene.standing(Role::Performer);
    assert_eq!(standing.state, RoleState::Missing);
    assert_eq!(standing.reasons, ["Eun-ji Baek has not consented."]);
}

#[test]
fn one_person_under_two_hats_that_must_be_apart_blocks() {
    let clearance = after(|scene| {
        scene
            .case
            .policy
            .separate
            .push([Role::Medic, Role::FirstAd]);
        // Radmila Ilić signs as medic too, past the door, which would refuse it.
        let radmila = person_of(Role::FirstAd);
        scene.member(Role::FirstAd).roles.insert(Role::Medic);
        scene
            .member(Role::FirstAd)
            .certificates
            .push(certificate("paramedic"));
        let mut statement = scene.statement(Role::Medic);
        statement.signer = radmila;
        statement.device = crate::scene::device_of(radmila);
        scene.record(crate::signoff::sign(&statement, &crate::scene::key_of(radmila)).unwrap());
    });
    one_block(
        &clearance,
        BlockKind::Separation,
        "Radmila Ilić signed as Medic and First assistant director; these must be two people.",
        "Have someone else sign",
    );
}

#[test]
fn hazards_follow_from_the_contents() {
    let mut scene = Scene::cleared();
    scene.revise(|facets| {
        facets.action.hazards.insert(Hazard::Water);
    });
    assert_eq!(scene.standing(Role::Marine).because, "water");
    scene.case.people[0].born = Some(date(2008, 3, 15));
    assert_eq!(
        scene.standing(Role::Guardian).because,
        "a minor",
        "eighteen the day after"
    );
    scene.case.people[0].born = Some(date(2008, 3, 14));
    assert!(
        !scene.states().contains_key(&Role::Guardian),
        "eighteen on the day"
    );
    // While no day is set, ages count on the day the plan was written, whenever it is judged.
    scene.case.people[0].born = Some(date(2008, 3, 10));
    scene.revise(|facets| facets.setting.day = None);
    scene.case.plan.written_at = crate::scene::time("2026-03-09T23:00:00Z");
    assert_eq!(scene.standing(Role::Guardian).because, "a minor");
    scene.later(SignedDuration::from_hours(24 * 400));
    assert_eq!(scene.standing(Role::Guardian).because, "a minor");
    scene.case.people[0].born = Some(date(1996, 4, 2));
    scene.revise(|facets| {
        facets.effects.charges.push(crate::facets::GivenCharge {
            name: "dust hit".to_owned(),
            count: 1,
            lead_seconds: 0.0,
            stand_off: 5.0,
            given_by: "Anaïs Rochette".to_owned(),
        });
    });
    assert_eq!(scene.standing(Role::Effects).because, "a charge");
}

#[test]
fn somebody_born_on_the_last_of_february_comes_of_age_on_the_first_of_march() {
    let born = date(2008, 2, 29);
    assert!(super::is_minor(born, date(2026, 2, 28)));
    assert!(!super::is_minor(born, date(2026, 3, 1)));
    assert!(
        super::is_minor(date(2027, 1, 1), date(2026, 3, 1)),
        "not born yet"
    );
}

#[test]
fn somebody_of_unknown_age_might_be_a_minor() {
    let ageless = after(|scene| scene.case.people[0].born = None);
    one_block(
        &ageless,
        BlockKind::Performer,
        "No birthday is on record for Thandeka Ngubo, cast as Double for Ines",
        "Enter their birthday",
    );
    // A slot that asks for an age says it once, in casting's words.
    let asked = after(|scene| {
        scene.revise(|facets| {
            let adult = Requirement::Age {
                min: Some(18),
                max: None,
            };
            facets.cast.slots[0].requirements.push(adult);
        });
        scene.everyone_signs();
        scene.case.people[0].born = None;
    });
    one_block(
        &asked,
        BlockKind::Performer,
        "is not qualified as Double for Ines: No birthday on record",
        "identity document",
    );
}

#[test]
fn the_real_techniques_are_known_to_the_built_in_policy_and_judged_without_panic() {
    for technique in gagwright_mechanics::techniques() {
        let policy = crate::Policy::built_in();
        assert!(
            policy.techniques.contains_key(technique.name()),
            "{}",
            technique.name()
        );
        let mut scene = Scene::new();
        scene.case.plan.technique = technique.name().to_owned();
        scene.case.plan.facets = crate::Plan::starting(technique.name(), policy, slot());
        let clearance = super::clearance(&scene.case, scene.now);
        assert_ne!(clearance.state, ClearanceState::Cleared);
        // A fight with bare hands has no hazard that a department of its own answers for.
        for hazard in &policy.techniques[technique.name()].hazards {
            assert!(clearance.hazards.contains(hazard), "{}", technique.name());
        }
        assert!(
            clearance
                .blocks
                .iter()
                .all(|block| block.kind != BlockKind::Inputs
                    || !block.reason.contains("no technique"))
        );
    }
    assert!(find("test-fall").is_some());
}
