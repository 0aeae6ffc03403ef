//! Signing over HTTP with a key that the server never sees.

use gagwright_clearance::{DeviceId, Drawing, SignOffId, Statement, jws, signoff::PublicKey};
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
    pub fn sign(&self, gag: Uuid, role: &str) -> String {
        self.sign_with(gag, role, None)
    }

    /// What would be signed, all but the signature.
    pub fn draft(&self, gag: Uuid, role: &str) -> Statement {
        let path = format!("/gags/{gag}/signoff-draft?role={role}");
        let draft = self
            .world
            .server
            .call("GET", &path)
            .token(&self.token)
            .send()
            .expect(200);
        self.complete(serde_json::from_value(draft["statement"].clone()).unwrap())
    }

    /// A drafted statement with what the device says.
    pub fn complete(&self, drafted: Statement) -> Statement {
        Statement {
            id: SignOffId(Uuid::now_v7()),
            device: DeviceId(self.device),
            signed_at: gagwright::clock::now(),
            ..drafted
        }
    }

    /// As [`Phone::sign`], with the hash of a drawn mark.
    fn sign_with(&self, gag: Uuid, role: &str, mark: Option<&Drawing>) -> String {
        let statement = Statement {
            mark: mark.map(Drawing::hash),
            ..self.draft(gag, role)
        };
        jws::sign(&statement, &self.key).unwrap()
    }

    pub fn hand_in(&self, gag: Uuid, jws: &str) -> Got {
        self.hand_in_body(gag, &json!({ "jws": jws }))
    }

    pub fn hand_in_body(&self, gag: Uuid, body: &Value) -> Got {
        let path = format!("/gags/{gag}/signoffs");
        self.world
            .server
            .call("POST", &path)
            .token(&self.token)
            .once()
            .json(body)
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

#[test]
fn a_drawn_mark_is_bound_by_the_signature_and_kept_beside_it() {
    let world = World::new();
    let (gag, _) = world.gag("G07");
    let phone = Phone::register(&world, &world.coordinator, 3);
    let page = || {
        world
            .call("GET", &format!("/gags/{gag}"))
            .send()
            .expect(200)
    };
    assert_eq!(page()["marks"], json!({}));
    let drawing = Drawing(vec![vec![10, 20, 500, 300], vec![700, 30]]);

    // What cannot be drawn, or is not what was signed, is refused whole: the sign-off is not recorded either.
    let jws = phone.sign_with(gag, "coordinator", Some(&drawing));
    for (mark, told) in [
        (json!([]), "has no stroke"),
        (json!([[1, 2, 3]]), "stroke 0 is not a row of points"),
        (json!([[1, 1001]]), "leaves the box"),
        (json!([[9, 9]]), "is not the drawing that was signed"),
    ] {
        let refused = phone
            .hand_in_body(gag, &json!({ "jws": jws, "mark": mark }))
            .refused(422, "invalid_input");
        assert_eq!(refused["errors"][0]["pointer"], "/mark");
        let problem = refused["errors"][0]["problem"].as_str().unwrap();
        assert!(problem.contains(told), "{problem}");
    }
    let plain = phone.sign(gag, "coordinator");
    phone
        .hand_in_body(gag, &json!({ "jws": plain, "mark": drawing }))
        .refused(422, "invalid_input");
    assert_eq!(page()["case"]["signoffs"], json!([]));

    // Carried here without the drawing it counts; the drawing follows with the same sign-off, once.
    phone.hand_in(gag, &jws).expect(201);
    assert_eq!(page()["marks"], json!({}));
    let trail = world.trail_size();
    for _ in 0..2 {
        phone
            .hand_in_body(gag, &json!({ "jws": jws, "mark": drawing }))
            .expect(200);
    }
    assert_eq!(world.trail_size(), trail);
    let shown = page();
    let id = shown["clearance"]["roles"]
        .as_array()
        .unwrap()
        .iter()
        .find(|one| one["role"] == "coordinator")
        .unwrap()["signoff"]
        .as_str()
        .unwrap();
    assert_eq!(shown["marks"], json!({ id: drawing }));

    let bad = {
        let mut statement: Statement = jws::read_unverified(&jws).unwrap();
        statement.id = gagwright_clearance::SignOffId(Uuid::now_v7());
        statement.mark = Some("no hash".into());
        jws::sign(&statement, &phone.key).unwrap()
    };
    phone.hand_in(gag, &bad).refused(422, "sign_off_refused");
}
