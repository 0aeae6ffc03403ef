//! What others changed is seen by the very next sign-off, whichever address or process changed it: what is
//! remembered between commands is never what is decided by.

use gagwright_clearance::{DeviceId, ProductionId, signoff::PublicKey};
use gagwright_store::{Store, StoreError, devices};
use p256::ecdsa::SigningKey;
use serde_json::{Value, json};

use crate::{signing::Phone, support::World};

/// A gag, and the medic's phone, which has signed once, so that whatever is remembered is remembered.
fn signed(world: &World) -> (uuid::Uuid, Phone<'_>, Value) {
    let (gag, _) = world.gag("G07");
    let medic = world.medic();
    let phone = Phone::register(world, &medic, 7);
    let receipt = phone.hand_in(gag, &phone.sign(gag, "medic")).expect(201);
    assert_eq!(receipt["standing"]["state"], "standing");
    (gag, phone, receipt)
}

fn medic_of(world: &World) -> Value {
    let people = world.call("GET", &world.at("/people")).send().expect(200);
    let mut people = people["items"].as_array().unwrap().iter();
    let medic = people.find(|one| one["code"] == "P02").unwrap();
    let path = world.at(&format!("/people/{}", medic["id"].as_str().unwrap()));
    world.call("GET", &path).send().expect(200)
}

#[test]
fn a_device_that_was_revoked_signs_no_more() {
    let world = World::new();
    let (gag, phone, _) = signed(&world);
    let jws = phone.sign(gag, "medic");
    let path = world.at(&format!("/devices/{}", phone.device));
    let revoke = world.server.call("DELETE", &path).token(&phone.token);
    let revoked = revoke.once().send();
    assert!((200..300).contains(&revoked.status), "{}", revoked.text());
    let told = phone.hand_in(gag, &jws).refused(422, "sign_off_refused");
    assert!(
        told["detail"].as_str().unwrap().contains("revoked"),
        "{told}"
    );
}

#[test]
fn a_device_revoked_by_another_process_signs_no_more() {
    let world = World::new();
    let (gag, phone, _) = signed(&world);
    let jws = phone.sign(gag, "medic");
    let file = world.server.folder.path().join("kept.db");
    let beside = Store::open(&format!("sqlite:{}", file.display())).unwrap();
    let (production, device) = (ProductionId(world.production), DeviceId(phone.device));
    let at = gagwright::clock::now();
    beside
        .write(move |conn| devices::revoke(conn, production, device, at))
        .unwrap();
    let told = phone.hand_in(gag, &jws).refused(422, "sign_off_refused");
    assert!(
        told["detail"].as_str().unwrap().contains("revoked"),
        "{told}"
    );
}

#[test]
fn a_certificate_that_was_withdrawn_is_missed() {
    let world = World::new();
    let (gag, phone, _) = signed(&world);
    let jws = phone.sign(gag, "medic");
    let known = medic_of(&world);
    let mut person = known["person"].clone();
    person["certificates"] = json!([]);
    let id = person["id"].as_str().unwrap().to_owned();
    world
        .call("PUT", &world.at(&format!("/people/{id}")))
        .once()
        .header("if-match", &format!("\"{}\"", known["version"]))
        .json(&person)
        .send()
        .expect(200);
    let told = phone.hand_in(gag, &jws).refused(422, "sign_off_refused");
    let detail = told["detail"].as_str().unwrap();
    assert!(detail.contains("certificate"), "{told}");
}

#[test]
fn a_hold_on_the_production_is_in_the_next_receipt_and_gone_with_it() {
    let world = World::new();
    let (gag, phone, receipt) = signed(&world);
    assert_ne!(receipt["clearance"], "held");
    world
        .call("POST", &world.at("/holds"))
        .once()
        .json(&json!({ "id": uuid::Uuid::now_v7(), "reason": "loose anchor" }))
        .send()
        .expect(201);
    let receipt = phone.hand_in(gag, &phone.sign(gag, "medic")).expect(201);
    assert_eq!(receipt["clearance"], "held");
}

#[test]
fn a_sign_off_under_a_key_it_was_not_made_with_is_refused_after_it_was_seen_to_verify() {
    let world = World::new();
    let (gag, phone, _) = signed(&world);
    // The same device under another key: what was verified before was so with the old one.
    let statement = phone.draft(gag, "medic");
    let jws = gagwright_clearance::jws::sign(&statement, &phone.key).unwrap();
    let other = SigningKey::from_slice(&[9; 32]).unwrap();
    gagwright::remembered::look_at(&jws, &PublicKey::from(phone.key.verifying_key()));
    let key = serde_json::to_string(&PublicKey::from(other.verifying_key())).unwrap();
    let device = phone.device;
    world
        .server
        .store
        .write(move |conn| {
            use diesel::connection::SimpleConnection;
            let id = device.simple();
            conn.batch_execute(&format!(
                "UPDATE devices SET public_key = '{key}' WHERE id = X'{id}'"
            ))
            .map_err(StoreError::from)
        })
        .unwrap();
    let told = phone.hand_in(gag, &jws).refused(422, "sign_off_refused");
    let detail = told["detail"].as_str().unwrap();
    assert!(detail.contains("does not verify"), "{told}");
}
