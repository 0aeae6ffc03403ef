//! The door: a good sign-off passes, and each field altered, forged or replayed is refused.

use gagwright_mechanics::Facet;
use jiff::SignedDuration;
use uuid::Uuid;

use super::*;
use crate::{
    ids::SignOffId,
    scene::{Scene, certificate, device_of, key_of, person_of, slot},
    signoff::sign,
};

/// What the door says to a rigging sign-off after a change to it or to the case, signed afterwards with
/// the signer's own key.
fn refused(change: impl FnOnce(&mut Statement, &mut Scene)) -> String {
    let mut scene = Scene::new();
    let mut statement = scene.statement(Role::Rigging);
    change(&mut statement, &mut scene);
    scene.hand_in(&statement).unwrap_err().to_string()
}

#[test]
fn each_field_altered_before_signing_is_refused_with_its_reason() {
    type Change = Box<dyn Fn(&mut Statement, &mut Scene)>;
    let nil = Uuid::from_u128(77);
    let cases: Vec<(&str, Change)> = vec![
        (
            "kind must be",
            Box::new(|s, _| s.kind = "gagwright/plan-signoff/2".to_owned()),
        ),
        (
            "another production",
            Box::new(move |s, _| s.production = crate::ProductionId(nil)),
        ),
        (
            "another gag",
            Box::new(move |s, _| s.gag = crate::GagId(nil)),
        ),
        ("another revision", Box::new(|s, _| s.revision = 2)),
        (
            "another technique",
            Box::new(|s, _| s.technique = "high-fall".to_owned()),
        ),
        (
            "another revision",
            Box::new(|_, scene| {
                scene.revise(|_| {});
            }),
        ),
        (
            "another plan",
            Box::new(|s, _| s.plan_digest = "00".repeat(32)),
        ),
        (
            "other facets",
            Box::new(|s, _| {
                s.facets.remove(&Facet::Cast);
            }),
        ),
        (
            "other facets",
            Box::new(|s, _| {
                s.facets.insert(Facet::Camera, "00".repeat(32));
            }),
        ),
        (
            "other content",
            Box::new(|s, _| {
                s.facets.insert(Facet::Cast, "00".repeat(32));
            }),
        ),
        (
            "does not hold the role Effects supervisor",
            Box::new(|s, scene| {
                let other = scene.statement(Role::Effects);
                s.role = Role::Effects;
                s.facets = other.facets;
                s.attestation = other.attestation;
            }),
        ),
        ("signs nothing", Box::new(|s, _| s.role = Role::Observer)),
        (
            "only a performer signs for a slot",
            Box::new(|s, _| s.slot = Some(slot())),
        ),
        (
            "needs at least one condition",
            Box::new(|s, _| {
                s.decision = Decision::ApproveWithConditions;
            }),
        ),
        (
            "text of condition 2 must not be empty",
            Box::new(|s, _| {
                s.decision = Decision::ApproveWithConditions;
                s.conditions = vec!["a".to_owned(), " ".to_owned()];
            }),
        ),
        (
            "each text that was signed once",
            Box::new(|s, _| {
                s.decision = Decision::ApproveWithConditions;
                s.conditions = vec!["a".to_owned(), "a".to_owned()];
            }),
        ),
        (
            "leave conditions out",
            Box::new(|s, _| s.conditions = vec!["a".to_owned()]),
        ),
        (
            "must say why",
            Box::new(|s, _| s.decision = Decision::Decline),
        ),
        (
            "text of reason must not be empty",
            Box::new(|s, _| {
                s.decision = Decision::Decline;
                s.reason = Some("  ".to_owned());
            }),
        ),
        (
            "leave reason out",
            Box::new(|s, _| s.reason = Some("because".to_owned())),
        ),
        (
            "another attestation",
            Box::new(|s, _| s.attestation = "rigging/0".to_owned()),
        ),
        (
            "belongs to someone else",
            Box::new(|s, scene| {
                // The rigger's device, signed with the medic's key in the medic's name.
                s.signer = person_of(Role::Medic);
                let key = key_of(s.signer).verifying_key().into();
                let device = scene.case.devices.iter_mut().find(|one| one.id == s.device);
                device.unwrap().key = key;
            }),
        ),
        (
            "is not registered",
            Box::new(move |s, _| s.device = crate::DeviceId(nil)),
        ),
        (
            "was revoked",
            Box::new(|s, scene| {
                let now = scene.now;
                let device = scene.case.devices.iter_mut().find(|one| one.id == s.device);
                device.unwrap().revoked_at = Some(now);
            }),
        ),
        (
            "more than a day ahead",
            Box::new(|s, scene| {
                s.signed_at = scene
                    .now
                    .checked_add(SignedDuration::from_hours(25))
                    .unwrap();
            }),
        ),
        (
            "before this revision was written",
            Box::new(|s, scene| {
                let written = scene.case.plan.written_at;
                s.signed_at = written.checked_sub(SignedDuration::from_hours(25)).unwrap();
            }),
        ),
        (
            "which is past",
            Box::new(|s, scene| s.good_until = Some(scene.now)),
        ),
        (
            "needs a certificate",
            Box::new(|_, scene| {
                scene.member(Role::Rigging).certificates.clear();
            }),
        ),
        (
            "does not hold the role Key rigger",
            Box::new(|_, scene| {
                scene.member(Role::Rigging).roles.clear();
            }),
        ),
    ];
    for (says, change) in cases {
        let said = refused(|statement, scene| change(statement, scene));
        assert!(said.contains(says), "expected \"{says}\", got \"{said}\"");
    }
}

#[test]
fn a_good_sign_off_passes_once() {
    let mut scene = Scene::new();
    let statement = scene.statement(Role::Rigging);
    let jws = sign(&statement, &key_of(statement.signer)).unwrap();
    assert_eq!(
        accept(&jws, &[], &scene.case, scene.now),
        Ok(statement.clone())
    );
    scene.record(jws.clone());
    let replay = accept(&jws, &[], &scene.case, scene.now)
        .unwrap_err()
        .to_string();
    assert!(replay.contains("is recorded already"), "{replay}");
    // The same id on other words is a replay too.
    let mut other = scene.statement(Role::Rigging);
    other.id = statement.id;
    assert!(
        scene
            .hand_in(&other)
            .unwrap_err()
            .to_string()
            .contains("is recorded already")
    );
}

#[test]
fn another_persons_key_does_not_sign_for_a_device() {
    let mut scene = Scene::new();
    let statement = scene.statement(Role::Rigging);
    let forged = sign(&statement, &key_of(person_of(Role::Medic))).unwrap();
    assert_eq!(
        accept(&forged, &[], &scene.case, scene.now),
        Err(SignOffError::BadSignature)
    );
}

#[test]
fn clocks_may_be_a_day_off() {
    for hours in [-24, 24] {
        let mut scene = Scene::new();
        let mut statement = scene.statement(Role::Rigging);
        let base = if hours < 0 {
            scene.case.plan.written_at
        } else {
            scene.now
        };
        statement.signed_at = base.checked_add(SignedDuration::from_hours(hours)).unwrap();
        scene.hand_in(&statement).unwrap();
    }
}

#[test]
fn performers_consent_for_themselves_in_their_own_slot() {
    let mut scene = Scene::new();
    let mut statement = scene.statement(Role::Performer);
    statement.slot = None;
    assert!(
        scene
            .hand_in(&statement)
            .unwrap_err()
            .to_string()
            .contains("give slot")
    );
    statement.slot = Some(crate::SlotId(Uuid::from_u128(5)));
    assert!(
        scene
            .hand_in(&statement)
            .unwrap_err()
            .to_string()
            .contains("no slot")
    );
    statement.slot = Some(slot());
    let mut for_another = statement.clone();
    for_another.signer = person_of(Role::Coordinator);
    for_another.device = device_of(for_another.signer);
    let said = scene.hand_in(&for_another).unwrap_err().to_string();
    assert!(
        said.contains("Māra Ozola is not cast as Double for Ines"),
        "{said}"
    );
    scene.hand_in(&statement).unwrap();
}

#[test]
fn a_person_who_signed_under_one_hat_may_not_sign_under_one_kept_apart() {
    let mut scene = Scene::new();
    scene.height(11.0); // marginal, so that the engineer is asked
    scene.signs(Role::Rigging);
    let rigger = person_of(Role::Rigging);
    scene.member(Role::Rigging).roles.insert(Role::Engineer);
    scene
        .member(Role::Rigging)
        .certificates
        .push(certificate("engineer_registration"));
    let mut statement = scene.statement(Role::Engineer);
    statement.signer = rigger;
    statement.device = device_of(rigger);
    let said = scene.hand_in(&statement).unwrap_err().to_string();
    assert!(
        said.contains("keeps Engineer and Key rigger apart"),
        "{said}"
    );
    // A decline is not a mark that must be apart from another.
    statement.decision = Decision::Decline;
    statement.reason = Some("the anchor is not drawn".to_owned());
    scene.hand_in(&statement).unwrap();
}

#[test]
fn a_coordinator_who_performs_cannot_sign_as_coordinator_too() {
    let mut scene = Scene::new();
    let coordinator = person_of(Role::Coordinator);
    let mut performer = scene.case.people[0].clone();
    performer.id = coordinator;
    scene.case.people = vec![performer];
    scene.revise(|facets| facets.cast.slots[0].person = Some(coordinator));
    let mut consent = scene.statement(Role::Performer);
    consent.signer = coordinator;
    consent.device = device_of(coordinator);
    scene.hand_in(&consent).unwrap();
    let statement = scene.statement(Role::Coordinator);
    let said = scene.hand_in(&statement).unwrap_err().to_string();
    assert!(said.contains("apart"), "{said}");
}

#[test]
fn a_role_with_limited_hours_must_say_until_when() {
    let mut scene = Scene::new();
    scene.revise(|facets| {
        facets.action.hazards.insert(crate::Hazard::Weapon);
    });
    let good = scene.statement(Role::Armourer);
    assert!(good.good_until.is_some(), "the draft says it");
    for until in [
        None,
        good.good_until
            .map(|until| until.checked_add(SignedDuration::from_hours(1)).unwrap()),
    ] {
        let mut statement = good.clone();
        statement.good_until = until;
        let said = scene.hand_in(&statement).unwrap_err().to_string();
        assert!(said.contains("at most 24 hours"), "{said}");
    }
    scene.hand_in(&good).unwrap();
}

#[test]
fn a_decline_asks_for_the_role_and_nothing_more() {
    let mut scene = Scene::new();
    scene.member(Role::Medic).certificates.clear();
    scene.declines(Role::Medic, "no cover arranged");
    let statement = scene.statement(Role::Medic);
    assert!(scene.hand_in(&statement).is_err());
    let mut used = statement.clone();
    used.id = SignOffId(Uuid::from_u128(1));
    assert!(
        scene
            .hand_in(&used)
            .unwrap_err()
            .to_string()
            .contains("needs a certificate")
    );
}

#[test]
fn what_was_written_is_committed_to_and_must_come_beside_the_sign_off() {
    let mut scene = Scene::new();
    let mut written = scene.statement(Role::Rigging);
    written.decision = Decision::ApproveWithConditions;
    written.conditions = vec![
        "Load test witnessed".to_owned(),
        "Zoriana's wrist taped".to_owned(),
    ];
    let (statement, openings) = crate::scene::sealed(&written);
    let jws = sign(&statement, &key_of(statement.signer)).unwrap();
    let accepted = |openings: &[Opening]| accept(&jws, openings, &scene.case, scene.now);
    assert_eq!(accepted(&openings), Ok(statement.clone()));
    let mut turned = openings.clone();
    turned.reverse();
    assert_eq!(accepted(&turned), Ok(statement.clone()), "in any order");
    let refused = |openings: &[Opening], says: &str| {
        let said = accepted(openings).unwrap_err().to_string();
        assert!(said.contains(says), "expected \"{says}\", got \"{said}\"");
    };
    refused(&openings[..1], "the text of condition 2");
    refused(&[], "the text of condition 1");
    let mut other = openings.clone();
    other[1].text.push('!');
    refused(&other, "the text of condition 2");
    let mut other = openings.clone();
    other[0].salt = "00".repeat(31);
    refused(&other, "the text of condition 1");
    let mut more = openings.clone();
    more.push(Opening::new(&[9; 32], "slipped in"));
    refused(&more, "nothing else");
    // In the clear, as statements were once written.
    let jws = sign(&written, &key_of(written.signer)).unwrap();
    let said = accept(&jws, &openings, &scene.case, scene.now).unwrap_err();
    assert!(said.to_string().contains("commitments to texts"), "{said}");
    // Nothing that was written can be read in what was signed.
    let statement = serde_json::to_string(&statement).unwrap();
    assert!(
        !statement.contains("Load") && !statement.contains("wrist"),
        "{statement}"
    );
}

#[test]
fn an_erased_text_still_holds_a_gag_until_its_condition_is_met() {
    let mut scene = Scene::cleared();
    scene.signs_on_condition(Role::Medic, "second ambulance on site");
    scene.case.signoffs.last_mut().unwrap().openings.clear();
    let standing = scene.standing(Role::Medic);
    assert_eq!(standing.state, RoleState::Conditional);
    assert!(
        standing.open_conditions[0].starts_with("the text was erased; its commitment stands"),
        "{:?}",
        standing.open_conditions
    );
    scene.declines(Role::Medic, "no cover");
    scene.case.signoffs.last_mut().unwrap().openings.clear();
    let reasons = scene.standing(Role::Medic).reasons.join(" ");
    assert!(reasons.contains("its commitment stands"), "{reasons}");
}
