//! Delegates, told as scenes.

use gagwright_casting::GagId;
use jiff::SignedDuration;
use uuid::Uuid;

use super::{Delegation, DelegationRule, hats, in_force, problems};
use crate::{
    case::{DayBlock, DayBlockKind, RoleStanding, RoleState},
    day_mark::{self, DayStatement},
    draft::prepare,
    ids::{RecordId, SignOffId},
    policy::Role,
    scene::{Scene, certificate, device_of, person_of},
    signoff::{Decision, SignOffError, Statement},
};

/// Rigging lets the first assistant director, who has the certificate, sign for two days.
fn scene() -> Scene {
    let mut scene = Scene::new();
    scene.everyone_signs();
    scene
        .member(Role::FirstAd)
        .certificates
        .push(certificate("rope_access_3"));
    let delegation = delegation(&scene);
    scene.case.delegations.push(delegation);
    scene
}

fn delegation(scene: &Scene) -> Delegation {
    Delegation {
        id: RecordId(Uuid::from_u128(77)),
        from: person_of(Role::Rigging),
        to: person_of(Role::FirstAd),
        role: Role::Rigging,
        gags: Vec::new(),
        starts: scene.now,
        until: scene
            .now
            .checked_add(SignedDuration::from_hours(48))
            .unwrap(),
        limits: "the harbour only".to_owned(),
        made_at: scene.now,
        ended_at: None,
    }
}

fn statement(scene: &mut Scene) -> Result<Statement, SignOffError> {
    let signer = person_of(Role::FirstAd);
    let id = SignOffId(Uuid::from_u128(scene.mint() + 9_000));
    let prepared = prepare(&scene.case, Role::Rigging, None, signer, id, scene.now)?;
    Ok(Statement {
        device: device_of(signer),
        ..prepared.statement
    })
}

/// A scene in which the delegate has signed revision 2.
fn signed() -> Scene {
    let mut scene = scene();
    scene.height(9.0);
    let statement = statement(&mut scene).unwrap();
    assert_eq!(statement.delegation, Some(RecordId(Uuid::from_u128(77))));
    scene.hand_in(&statement).unwrap();
    scene
}

/// The holder is away on the day, and the delegate signs it.
fn deputised_day() -> Scene {
    let mut scene = Scene::morning();
    scene.briefed();
    scene
        .member(Role::FirstAd)
        .certificates
        .push(certificate("rope_access_3"));
    let lent = delegation(&scene);
    scene.case.delegations.push(lent);
    let statement = day_statement(&mut scene);
    assert_eq!(statement.delegation, Some(RecordId(Uuid::from_u128(77))));
    scene.hand_in_day(&statement).unwrap();
    scene
}

fn day_statement(scene: &mut Scene) -> DayStatement {
    let signer = person_of(Role::FirstAd);
    let id = SignOffId(Uuid::from_u128(scene.mint() + 9_000));
    let prepared = day_mark::prepare(&scene.case, Role::Rigging, None, signer, id, scene.now);
    DayStatement {
        device: device_of(signer),
        ..prepared.unwrap().statement
    }
}

#[test]
fn a_delegate_signs_in_the_stead_of_the_holder_and_is_named() {
    let scene = signed();
    let rigging = scene.standing(Role::Rigging);
    assert_eq!(rigging.state, RoleState::Standing);
    assert_eq!(rigging.signer, Some(person_of(Role::FirstAd)));
    assert_eq!(rigging.signed_for, Some(person_of(Role::Rigging)));
    let hats = hats(&scene.case, person_of(Role::FirstAd), scene.now);
    assert!(hats.contains(&Role::Rigging) && hats.contains(&Role::FirstAd));
}

#[test]
fn without_naming_a_delegation_nobody_signs_under_a_hat_they_do_not_hold() {
    let mut scene = scene();
    let mut bare = statement(&mut scene).unwrap();
    bare.delegation = None;
    let refused = scene.hand_in(&bare).unwrap_err().to_string();
    assert_eq!(refused, "Radmila Ilić does not hold the role Key rigger");
    bare.delegation = Some(RecordId(Uuid::from_u128(78)));
    let refused = scene.hand_in(&bare).unwrap_err().to_string();
    assert_eq!(refused, "nobody let Radmila Ilić sign as Key rigger");
}

/// What the delegate signed: the plan, or the day.
struct Signed {
    scene: fn() -> Scene,
    standing: fn(&Scene) -> RoleStanding,
    /// The date there, and the one on which the delegation runs out.
    on: &'static str,
    until: &'static str,
}

const SIGNED: [Signed; 2] = [
    Signed {
        scene: signed,
        standing: |scene| scene.standing(Role::Rigging),
        on: "2026-03-02",
        until: "2026-03-04",
    },
    Signed {
        scene: deputised_day,
        standing: |scene| scene.day_mark(Role::Rigging),
        on: "2026-03-14",
        until: "2026-03-16",
    },
];

#[test]
fn what_was_signed_lapses_when_the_delegation_ends_and_the_reason_is_named() {
    type Change = fn(&mut Scene);
    for what in SIGNED {
        let ended = format!("Žofie Marková ended on {}", what.on);
        let ran_out = format!(
            "Radmila Ilić could sign for Žofie Marková until {}",
            what.until
        );
        let cases: [(Change, &str); 6] = [
            (
                |scene| scene.case.delegations[0].ended_at = Some(scene.now),
                &ended,
            ),
            (
                |scene| {
                    scene.later(SignedDuration::from_hours(49));
                },
                &ran_out,
            ),
            (
                |scene| scene.member(Role::Rigging).roles.clear(),
                "Žofie Marková, for whom Radmila Ilić signed, no longer holds the role Key rigger.",
            ),
            (
                |scene| scene.case.delegations[0].gags = vec![GagId(Uuid::from_u128(5))],
                "Žofie Marková did not let Radmila Ilić sign for this gag.",
            ),
            (
                |scene| {
                    scene.case.policy.delegation.remove(&Role::Rigging);
                },
                "The policy lets nobody sign for Key rigger.",
            ),
            (
                |scene| scene.member(Role::FirstAd).certificates.clear(),
                "Radmila Ilić needs a certificate to sign as Key rigger",
            ),
        ];
        for (change, says) in cases {
            let mut scene = (what.scene)();
            change(&mut scene);
            let rigging = (what.standing)(&scene);
            assert_eq!(rigging.state, RoleState::Lapsed, "{says}");
            let told = |one: &String| one.contains(says);
            assert!(
                rigging.reasons.iter().any(told),
                "{says}: {:?}",
                rigging.reasons
            );
        }
    }
}

#[test]
fn the_policy_may_do_without_the_certificate() {
    let mut scene = signed();
    let rule = DelegationRule {
        longest_days: 14,
        certificates: false,
    };
    scene.case.policy.delegation.insert(Role::Rigging, rule);
    scene.member(Role::FirstAd).certificates.clear();
    assert_eq!(scene.states()[&Role::Rigging], RoleState::Standing);
}

#[test]
fn nobody_deputises_on_a_gag_they_perform() {
    let mut scene = scene();
    scene.case.delegations[0].to = person_of(Role::Performer);
    let performer = person_of(Role::Performer);
    assert_eq!(
        in_force(&scene.case, performer, Role::Rigging, scene.now),
        None
    );
    assert!(!hats(&scene.case, performer, scene.now).contains(&Role::Rigging));
}

#[test]
fn hats_kept_apart_are_kept_apart_for_a_delegate_too() {
    let mut scene = scene();
    // Fire and effects are kept apart; the effects supervisor may sign for fire.
    let effects = person_of(Role::Effects);
    scene
        .member(Role::Effects)
        .certificates
        .push(certificate("fire_safety_officer"));
    let mut lent = delegation(&scene);
    (lent.role, lent.from, lent.to) = (Role::Fire, person_of(Role::Fire), effects);
    scene.case.delegations = vec![lent];
    scene.revise(|facets| {
        facets.action.hazards.insert(crate::Hazard::Fire);
    });
    scene.signs(Role::Effects);
    let id = SignOffId(Uuid::from_u128(9_500));
    let prepared = prepare(&scene.case, Role::Fire, None, effects, id, scene.now).unwrap();
    let statement = Statement {
        device: device_of(effects),
        ..prepared.statement
    };
    let refused = scene.hand_in(&statement).unwrap_err().to_string();
    assert!(refused.contains("the policy keeps"), "{refused}");
}

#[test]
fn a_delegation_that_may_not_be_says_why() {
    let scene = scene();
    let good = delegation(&scene);
    let check = |change: &dyn Fn(&mut Delegation)| {
        let mut one = good.clone();
        change(&mut one);
        problems(&one, &scene.case.policy, &scene.case.members, scene.now)
            .into_iter()
            .map(|(field, problem, _)| format!("{field} {problem}"))
            .collect::<Vec<_>>()
    };
    assert_eq!(check(&|_| {}), Vec::<String>::new());
    // A delegate holds nothing of their own to hand on.
    let on = check(&|one| (one.from, one.to) = (one.to, person_of(Role::Camera)));
    assert_eq!(on, ["/role you do not hold the role Key rigger yourself"]);
    for role in super::NEVER {
        let found = check(&|one| (one.role, one.from) = (role, person_of(Role::Performer)));
        assert!(found[0].contains("lets nobody sign"), "{role:?}: {found:?}");
    }
    let long = check(&|one| {
        one.until = one
            .starts
            .checked_add(SignedDuration::from_hours(15 * 24))
            .unwrap();
    });
    assert_eq!(long, ["/until is more than 14 days after it starts"]);
    let past = check(&|one| one.until = one.starts);
    assert_eq!(past, ["/until is past, or before it starts"]);
    let own = check(&|one| one.to = one.from);
    assert_eq!(own, ["/to is yourself"]);
}

#[test]
fn a_delegate_signs_the_day_in_the_stead_of_the_holder_and_is_named() {
    let mut scene = deputised_day();
    let mark = scene.day_mark(Role::Rigging);
    assert_eq!(mark.state, RoleState::Standing, "{:?}", mark.reasons);
    assert_eq!(mark.signer, Some(person_of(Role::FirstAd)));
    assert_eq!(mark.signed_for, Some(person_of(Role::Rigging)));
    // A no of theirs stands as well, until they take it back.
    scene.later(SignedDuration::from_mins(1));
    let mut no = day_statement(&mut scene);
    no.decision = Decision::Decline;
    scene.hand_in_day(&no).unwrap();
    assert_eq!(scene.day_mark(Role::Rigging).state, RoleState::Declined);
    scene.later(SignedDuration::from_mins(1));
    scene.signs_the_day(Role::Rigging);
    assert_eq!(scene.day_mark(Role::Rigging).state, RoleState::Declined);
    let remedy = |scene: &Scene| {
        let why_not = scene.judged().go.why_not;
        let mark = |one: &DayBlock| one.kind == DayBlockKind::Decline;
        why_not.into_iter().find(mark).map(|one| one.remedy)
    };
    let theirs = remedy(&scene).unwrap();
    assert!(theirs.contains("only they can say otherwise"), "{theirs}");
    // A delegation that has ended takes its no with it, where the holder has spoken since.
    scene.case.delegations[0].ended_at = Some(scene.now);
    assert_eq!(scene.day_mark(Role::Rigging).state, RoleState::Standing);
    // Where nobody has, the no is what was said last, and it is the holder's to say otherwise.
    scene.case.day.signoffs.pop();
    assert_eq!(scene.day_mark(Role::Rigging).state, RoleState::Declined);
    let holders = remedy(&scene).unwrap();
    assert!(holders.contains("Ask Žofie Marková"), "{holders}");
}

#[test]
fn nobody_signs_the_day_under_a_hat_that_is_not_lent_to_them_and_consent_never_is() {
    let mut scene = deputised_day();
    let refused = |scene: &mut Scene, change: fn(&mut DayStatement)| {
        let mut statement = day_statement(scene);
        change(&mut statement);
        scene.hand_in_day(&statement).unwrap_err().to_string()
    };
    assert_eq!(
        refused(&mut scene, |one| one.delegation = None),
        "Radmila Ilić does not hold the role Key rigger"
    );
    assert_eq!(
        refused(&mut scene, |one| one.delegation =
            Some(RecordId(Uuid::from_u128(78)))),
        "nobody let Radmila Ilić sign as Key rigger"
    );
    let mut consent = scene.day_statement(Role::Performer);
    consent.delegation = Some(RecordId(Uuid::from_u128(77)));
    let told = scene.hand_in_day(&consent).unwrap_err().to_string();
    assert!(told.contains("consent is one's own"), "{told}");
    // Without the certificate that the role asks for, unless the policy says otherwise.
    scene.member(Role::FirstAd).certificates.clear();
    let bare = day_statement(&mut scene);
    assert!(scene.hand_in_day(&bare).is_err());
    let rule = DelegationRule {
        longest_days: 14,
        certificates: false,
    };
    scene.case.policy.delegation.insert(Role::Rigging, rule);
    scene.hand_in_day(&bare).unwrap();
}
