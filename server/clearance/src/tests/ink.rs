//! Sign-offs on paper, told as scenes.

use super::{Ink, media_type};
use crate::{
    case::RoleState,
    day_mark::{self, DayStatement},
    policy::Role,
    scene::{Scene, device_of, key_of, person_of},
    signoff::{Decision, Statement, sign},
};

fn on_paper(scene: &mut Scene, role: Role, witness: Role) -> Statement {
    let witness = person_of(witness);
    Statement {
        kind: Statement::INK.to_owned(),
        device: device_of(witness),
        ink: Some(Ink {
            witness,
            photograph: "ab".repeat(32),
        }),
        ..scene.statement(role)
    }
}

#[test]
fn a_sign_off_on_paper_counts_and_is_marked_as_ink() {
    let mut scene = Scene::new();
    let ink = on_paper(&mut scene, Role::Rigging, Role::FirstAd);
    scene.hand_in(&ink).unwrap();
    let rigging = scene.standing(Role::Rigging);
    assert_eq!(rigging.state, RoleState::Standing);
    assert_eq!(rigging.signer, Some(person_of(Role::Rigging)));
    assert_eq!(rigging.witness, Some(person_of(Role::FirstAd)));
    // A performer may consent on paper; it is their own hand.
    let ink = on_paper(&mut scene, Role::Performer, Role::FirstAd);
    scene.hand_in(&ink).unwrap();
    assert_eq!(scene.states()[&Role::Performer], RoleState::Standing);
    // It lapses as any other does.
    scene.height(9.0);
    assert_eq!(scene.states()[&Role::Rigging], RoleState::Lapsed);
}

#[test]
fn what_is_not_witnessed_is_not_taken() {
    let mut scene = Scene::new();
    let mut own = on_paper(&mut scene, Role::Rigging, Role::Rigging);
    assert_refused(&mut scene, &own, "the witness must be somebody else");
    own.ink = None;
    assert_refused(
        &mut scene,
        &own,
        "kind must be \"gagwright/plan-signoff/1\"",
    );
    let mut hash = on_paper(&mut scene, Role::Rigging, Role::FirstAd);
    hash.ink.as_mut().unwrap().photograph = "AB".repeat(32);
    assert_refused(&mut scene, &hash, "ink.photograph must be the SHA-256");
    let ink = on_paper(&mut scene, Role::Rigging, Role::FirstAd);
    scene.member(Role::FirstAd).roles.clear();
    assert_refused(&mut scene, &ink, "cannot be a witness");
    // Another witness than the one whose device signs.
    let mut other = on_paper(&mut scene, Role::Rigging, Role::Medic);
    other.ink.as_mut().unwrap().witness = person_of(Role::Camera);
    let jws = sign(&other, &key_of(person_of(Role::Medic))).unwrap();
    let refused = crate::door::accept(&jws, &[], &scene.case, scene.now).unwrap_err();
    assert!(
        refused.to_string().contains("belongs to someone else"),
        "{refused}"
    );
}

#[test]
fn a_mark_for_the_day_on_paper_counts_as_one_and_is_witnessed_by_somebody_else() {
    let mut scene = Scene::ready();
    let on_paper = |scene: &mut Scene, witness: Role| {
        let witness = person_of(witness);
        DayStatement {
            kind: DayStatement::INK.to_owned(),
            device: device_of(witness),
            ink: Some(Ink {
                witness,
                photograph: "ab".repeat(32),
            }),
            ..scene.day_statement(Role::Rigging)
        }
    };
    // A no on paper is heard, and so is the yes that follows it.
    let mut no = on_paper(&mut scene, Role::FirstAd);
    no.decision = Decision::Decline;
    scene.hand_in_day(&no).unwrap();
    assert_eq!(scene.day_mark(Role::Rigging).state, RoleState::Declined);
    scene.now += jiff::SignedDuration::from_mins(1);
    let yes = on_paper(&mut scene, Role::FirstAd);
    scene.hand_in_day(&yes).unwrap();
    let mark = scene.day_mark(Role::Rigging);
    assert_eq!(mark.state, RoleState::Standing);
    assert_eq!(mark.signer, Some(person_of(Role::Rigging)));
    assert_eq!(mark.witness, Some(person_of(Role::FirstAd)));

    let mut refused = |one: &DayStatement, says: &str| {
        let said = scene.hand_in_day(one).unwrap_err().to_string();
        assert!(said.contains(says), "{says}: {said}");
    };
    let mut own = yes.clone();
    own.id = crate::SignOffId(uuid::Uuid::from_u128(4_004));
    own.device = device_of(own.signer);
    own.ink.as_mut().unwrap().witness = own.signer;
    refused(&own, "the witness must be somebody else");
    own.ink = None;
    refused(&own, "kind must be \"gagwright/day-signoff/1\"");
    // The judge hears no witness of their own mark, whatever let it in.
    let mut own = on_paper(&mut scene, Role::Rigging);
    own.decision = Decision::Decline;
    let jws = day_mark::sign(&own, &key_of(own.signer)).unwrap();
    scene.record_day(jws);
    assert_eq!(scene.day_mark(Role::Rigging).state, RoleState::Standing);
}

fn assert_refused(scene: &mut Scene, statement: &Statement, says: &str) {
    let refused = scene.hand_in(statement).unwrap_err().to_string();
    assert!(refused.contains(says), "{says}: {refused}");
}

#[test]
fn the_judge_hears_no_witness_of_their_own_signature() {
    let mut scene = Scene::new();
    let own = on_paper(&mut scene, Role::Rigging, Role::Rigging);
    scene.record(sign(&own, &key_of(own.signer)).unwrap());
    assert_eq!(scene.states()[&Role::Rigging], RoleState::Missing);
}

#[test]
fn a_photograph_is_known_by_its_first_bytes() {
    // ISO/IEC 10918-1 (SOI, then a marker) and the PNG specification, section 5.2.
    assert_eq!(media_type(&[0xff, 0xd8, 0xff, 0xe0]), Some("image/jpeg"));
    assert_eq!(media_type(b"\x89PNG\r\n\x1a\n...."), Some("image/png"));
    assert_eq!(media_type(b"<svg>"), None);
    assert_eq!(media_type(&[]), None);
}
