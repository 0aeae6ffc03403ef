//! Signing over HTTP with a key that the server never sees.

use gagwright_clearance::{Statement, jws, signoff::PublicKey};
use p256::ecdsa::SigningKey;
use serde_json::{Value, json};
use uuid::Uuid;

use crate::support::{Got, World};

/// A person's phone.
pub struct Phone<'a> {
    pub world: &'a World,
    pub token: String,
    pub device: Uuid,
    pub key: SigningKey,
}

impl<'a> Phone<'a> {
    /// Registers a device whose key comes from one byte.
    pub fn register(world: &'a World, token: &str, seed: u8) -> Self {
        let key = SigningKey::from_slice(&[seed; 32]).unwrap();
        let device = Uuid::now_v7();
        let body =
            json!({ "id": device, "name": "phone", "key": PublicKey::from(key.verifying_key()) });
        let path = world.at("/devices");
        world
            .server
            .call("POST", &path)
            .token(token)
            .once()
            .json(&body)
            .send()
            .expect(201);
        Self {
            world,
            token: token.to_owned(),
            device,
            key,
        }
    }

    /// Fills a draft in and signs it.
    fn sign(&self, gag: Uuid, role: &str) -> String {
        let path = format!("/gags/{gag}/signoff-draft?role={role}");
        let draft = self
            .world
            .server
            .call("GET", &path)
            .token(&self.token)
            .send()
            .expect(200);
        let mut statement = draft["statement"].clone();
        statement["id"] = json!(Uuid::now_v7());
        statement["device"] = json!(self.device);
        statement["signed_at"] = json!(gagwright::clock::now());
        statement["decision"] = json!("approve");
        let statement: Statement = serde_json::from_value(statement).unwrap();
        jws::sign(&statement, &self.key).unwrap()
    }

    fn hand_in(&self, gag: Uuid, jws: &str) -> Got {
        let body = json!({ "jws": jws });
        let path = format!("/gags/{gag}/signoffs");
        self.world
            .server
            .call("POST", &path)
            .token(&self.token)
            .once()
            .json(&body)
            .send()
    }
}

fn standing<'v>(page: &'v Value, role: &str) -> &'v Value {
    let roles = page["clearance"]["roles"].as_array().unwrap();
    roles
        .iter()
        .find(|one| one["role"] == role)
        .unwrap_or_else(|| panic!("no {role} in {page}"))
}

#[test]
fn a_signature_stands_until_what_it_covers_changes() {
    let world = World::new();
    let (gag, page) = world.gag("G07");
    let medic = world.medic();
    let phone = Phone::register(&world, &medic, 7);
    let receipt = phone.hand_in(gag, &phone.sign(gag, "medic")).expect(201);
    assert_eq!(receipt["standing"]["state"], "standing");
    let read = || {
        world
            .call("GET", &format!("/gags/{gag}"))
            .send()
            .expect(200)
    };
    assert_eq!(standing(&read(), "medic")["state"], "standing");

    let mut facets = page["plan"]["facets"].clone();
    facets["medical"]["hospital"] = json!("Nearest with a burns unit");
    let body = json!({ "technique": "high-fall", "facets": facets, "note": "another hospital" });
    world
        .call("POST", &format!("/gags/{gag}/plans"))
        .once()
        .header("if-match", "\"1\"")
        .json(&body)
        .send()
        .expect(201);
    let after = read();
    assert_eq!(standing(&after, "medic")["state"], "lapsed");
    assert_eq!(standing(&after, "medic")["changed"], json!(["medical"]));
}

#[test]
fn what_is_forged_replayed_or_anothers_is_refused() {
    let world = World::new();
    let (gag, _) = world.gag("G07");
    let (other, _) = world.gag("G08");
    let medic = world.medic();
    let phone = Phone::register(&world, &medic, 7);
    let mine = Phone::register(&world, &world.coordinator, 9);
    let size = world.trail_size();
    let signed = phone.sign(gag, "medic");

    let thief = Phone {
        world: &world,
        token: medic.clone(),
        device: phone.device,
        key: SigningKey::from_slice(&[8; 32]).unwrap(),
    };
    phone
        .hand_in(gag, &thief.sign(gag, "medic"))
        .refused(422, "sign_off_refused");
    phone
        .hand_in(gag, "not.a.jws")
        .refused(422, "sign_off_refused");
    phone
        .hand_in(other, &signed)
        .refused(422, "sign_off_refused");
    let draft = world.server.call(
        "GET",
        &format!("/gags/{gag}/signoff-draft?role=coordinator"),
    );
    draft.token(&medic).send().refused(403, "forbidden");
    assert_eq!(world.trail_size(), size);

    // A sign-off may travel on somebody else's phone when the signer has no signal: it is the medic's all
    // the same, and taken once.
    let receipt = mine.hand_in(gag, &signed).expect(201);
    assert_eq!(receipt["standing"]["role"], "medic");
    assert_ne!(receipt["standing"]["signer"], world.person.to_string());
    // It comes again from the signer's own phone, and from somebody who may sign nothing: the receipt, once.
    let (_, observer) = world.member("P04", "Oke Larsen", "oke@example.test", &["observer"]);
    let size = world.trail_size();
    let other = Phone {
        world: &world,
        token: observer,
        device: phone.device,
        key: phone.key.clone(),
    };
    for again in [&phone, &other] {
        assert_eq!(again.hand_in(gag, &signed).expect(200), receipt);
    }
    let mut repeated: Vec<&str> = signed.split('.').collect();
    repeated[2] = repeated[1];
    phone
        .hand_in(gag, &repeated.join("."))
        .refused(422, "sign_off_refused");
    assert_eq!(world.trail_size(), size);
}

#[test]
fn a_revoked_device_signs_nothing_more() {
    let world = World::new();
    let (gag, _) = world.gag("G07");
    let phone = Phone::register(&world, &world.coordinator, 7);
    let signed = phone.sign(gag, "coordinator");
    let revoke = || {
        world
            .call("DELETE", &world.at(&format!("/devices/{}", phone.device)))
            .once()
            .send()
    };
    assert_eq!(revoke().status, 204);
    revoke().refused(409, "conflict");
    phone.hand_in(gag, &signed).refused(422, "sign_off_refused");
}
