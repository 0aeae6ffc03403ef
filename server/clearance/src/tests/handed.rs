//! Handed requests: what may travel, what may not, and tampering.

use serde_json::json;

use super::*;
use crate::{
    policy::Role,
    scene::{Scene, key_of, person_of},
};

const NOW: &str = "2026-03-02T09:00:00Z";

fn device() -> Device {
    let scene = Scene::new();
    let person = person_of(Role::Medic);
    let mut found = scene.case.devices.into_iter();
    found.find(|device| device.person == person).unwrap()
}

fn reading() -> HandedRequest {
    let device = device();
    HandedRequest {
        production: ProductionId(Uuid::from_u128(1)),
        person: device.person,
        device: device.id,
        made_at: NOW.parse().unwrap(),
        key: Uuid::from_u128(2),
        method: "POST".to_owned(),
        path: format!("/gags/{}/readings", Uuid::from_u128(3)),
        if_match: None,
        body: json!({ "value": 4.5, "kind": "wind" }),
    }
}

fn change(edit: impl FnOnce(&mut HandedRequest)) -> HandedRequest {
    let mut request = reading();
    edit(&mut request);
    request
}

#[test]
fn what_is_signed_comes_back() {
    let (request, device) = (reading(), device());
    let jws = sign(&request, &key_of(request.person)).unwrap();
    assert_eq!(verify(&jws, &device.key).unwrap(), request);
    assert_eq!(read_unverified(&jws).unwrap(), request);
    check_device(&request, &device, NOW.parse().unwrap()).unwrap();
}

#[test]
fn only_what_may_travel_is_read() {
    let id = Uuid::from_u128(3);
    let asked = |path: String, if_match: Option<&str>| {
        change(|one| {
            one.path = path;
            one.if_match = if_match.map(str::to_owned);
        })
        .asked()
    };
    let production = Uuid::from_u128(1);
    for (path, if_match, expected) in [
        (
            format!("/productions/{production}/holds"),
            None,
            Asked::Hold,
        ),
        (
            format!("/gags/{id}/readings"),
            None,
            Asked::Reading(GagId(id)),
        ),
        (format!("/gags/{id}/runs"), None, Asked::Run(GagId(id))),
        (
            format!("/gags/{id}/test-shots"),
            None,
            Asked::TestShot(GagId(id)),
        ),
        (
            format!("/gags/{id}/plans"),
            Some("\"3\""),
            Asked::Revision(GagId(id), 3),
        ),
        (
            format!("/holds/{id}/agreements"),
            None,
            Asked::Release(HoldId(id)),
        ),
        (
            format!("/productions/{production}/incidents"),
            None,
            Asked::Incident,
        ),
        (
            format!("/productions/{production}/stand-downs"),
            None,
            Asked::StandDown,
        ),
        (
            format!("/productions/{production}/equipment/{id}/quarantine"),
            None,
            Asked::Quarantine(RecordId(id)),
        ),
        (
            format!("/productions/{production}/equipment/{id}/shock-loads"),
            None,
            Asked::ShockLoad(RecordId(id)),
        ),
        (
            format!("/gags/{id}/briefings"),
            None,
            Asked::Briefing(GagId(id)),
        ),
        (
            format!("/gags/{id}/day-signoffs"),
            None,
            Asked::DayMark(GagId(id)),
        ),
        (format!("/gags/{id}/takes"), None, Asked::Go(GagId(id))),
        (
            format!("/gags/{id}/takes/{id}/outcome"),
            None,
            Asked::TakeEnd(GagId(id), RecordId(id)),
        ),
    ] {
        assert_eq!(asked(path, if_match).unwrap(), expected);
    }
    for (path, if_match, told) in [
        (
            format!("/productions/{id}/holds"),
            None,
            "another production",
        ),
        (
            format!("/productions/{production}/invitations"),
            None,
            "not one that may",
        ),
        (
            format!("/productions/{id}/equipment/{id}/shock-loads"),
            None,
            "another production",
        ),
        (
            format!("/productions/{production}/equipment/GW-114/quarantine"),
            None,
            "UUID",
        ),
        (
            format!("/productions/{production}/equipment/{id}/release"),
            None,
            "not one that may",
        ),
        (format!("/gags/{id}/looks"), None, "not one that may"),
        (format!("/gags/{id}/signoffs"), None, "not one that may"),
        (format!("/gags/{id}/readings/"), None, "not one that may"),
        (format!("gags/{id}/readings"), None, "not one that may"),
        (format!("/gags/{id}/readings?x=1"), None, "not one that may"),
        ("/sessions".to_owned(), None, "not one that may"),
        ("/gags/G07/readings".to_owned(), None, "UUID"),
        (format!("/gags/{}/readings", id.simple()), None, "UUID"),
        (
            format!("/gags/{id}/readings"),
            Some("\"3\""),
            "only a plan revision",
        ),
        (format!("/gags/{id}/plans"), None, "needs if_match"),
        (format!("/gags/{id}/plans"), Some("3"), "needs if_match"),
        (format!("/gags/{id}/plans"), Some("\"0\""), "needs if_match"),
        (format!("/gags/{id}/plans"), Some("*"), "needs if_match"),
    ] {
        let error = asked(path.clone(), if_match).unwrap_err().to_string();
        assert!(error.contains(told), "{path} {if_match:?}: {error}");
    }
    let put = change(|one| one.method = "PUT".to_owned());
    assert!(put.asked().unwrap_err().to_string().contains("POST"));
    // Nor is it signed by mistake.
    assert!(sign(&put, &key_of(put.person)).is_err());
}

#[test]
fn a_sign_off_is_not_taken_for_one_nor_one_for_a_sign_off() {
    let mut scene = Scene::new();
    let statement = scene.statement(Role::Medic);
    let key = key_of(statement.signer);
    let signoff = crate::jws::sign(&statement, &key).unwrap();
    let public = PublicKey::from(key.verifying_key());
    assert!(matches!(
        verify(&signoff, &public),
        Err(HandedError::Malformed(_))
    ));
    let jws = sign(&reading(), &key).unwrap();
    assert!(crate::jws::verify(&jws, &public).is_err());
}

#[test]
fn another_key_another_device_and_any_change_are_refused() {
    let (request, device) = (reading(), device());
    let key = key_of(request.person);
    let jws = sign(&request, &key).unwrap();
    let thief = key_of(person_of(Role::Coordinator));
    assert_eq!(
        verify(&jws, &PublicKey::from(thief.verifying_key())),
        Err(HandedError::BadSignature)
    );
    // The header's kid and the request's device must be one.
    let sealed = compact::seal(TYPE, DeviceId(Uuid::from_u128(9)), &request, &key).unwrap();
    assert!(matches!(
        verify(&sealed, &device.key),
        Err(HandedError::BadRequest(_))
    ));
    for place in 0..jws.len() {
        let with = if &jws[place..=place] == "A" { "B" } else { "A" };
        let changed = format!("{}{with}{}", &jws[..place], &jws[place + 1..]);
        assert!(verify(&changed, &device.key).is_err(), "{place}");
    }
    let mut value = serde_json::to_value(&request).unwrap();
    value["also"] = json!(true);
    let extra = compact::seal(TYPE, request.device, &value, &key).unwrap();
    assert!(matches!(
        verify(&extra, &device.key),
        Err(HandedError::BadRequest(_))
    ));
    let long = "a".repeat(LONGEST + 1);
    assert!(
        verify(&long, &device.key)
            .unwrap_err()
            .to_string()
            .contains("KiB")
    );
}

#[test]
fn the_device_must_be_the_authors_live_and_its_clock_possible() {
    let now: Timestamp = NOW.parse().unwrap();
    let told = |request: &HandedRequest, device: &Device| {
        check_device(request, device, now).unwrap_err().to_string()
    };
    let other = change(|one| one.person = person_of(Role::Coordinator));
    assert!(told(&other, &device()).contains("someone else"));
    let mut revoked = device();
    revoked.revoked_at = Some(now);
    assert!(told(&reading(), &revoked).contains("revoked"));
    let at = |text: &str| change(|one| one.made_at = text.parse().unwrap());
    assert!(told(&at("2026-03-03T09:00:01Z"), &device()).contains("ahead"));
    // The device was registered at 08:00 on 1 February.
    assert!(told(&at("2026-01-31T07:59:59Z"), &device()).contains("before"));
    for fine in ["2026-03-03T09:00:00Z", "2026-01-31T08:00:00Z"] {
        check_device(&at(fine), &device(), now).unwrap();
    }
}
