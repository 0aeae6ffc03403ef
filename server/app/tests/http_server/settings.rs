//! What the settings screens ask: members and their invitations, devices, and one's own sign-ins.

use gagwright_clearance::signoff::PublicKey;
use p256::ecdsa::SigningKey;
use serde_json::{Value, json};
use uuid::Uuid;

use crate::support::{Got, PASSWORD, World};

const PHONE: &str = "Mozilla/5.0 (Linux; Android 15; K) AppleWebKit/537.36 (KHTML, like Gecko) \
                     Chrome/140.0.0.0 Mobile Safari/537.36";

fn sign_in(world: &World, agent: &str) -> Got {
    world
        .server
        .call("POST", "/sessions")
        .header("user-agent", agent)
        .json(&json!({ "email": "thandeka@example.test", "password": PASSWORD }))
        .send()
}

fn items(world: &World, token: &str, path: &str) -> Vec<Value> {
    let list = world
        .server
        .call("GET", path)
        .token(token)
        .send()
        .expect(200);
    list["items"].as_array().unwrap().clone()
}

#[test]
fn members_are_listed_with_their_accounts_and_what_waits_for_them() {
    let world = World::new();
    let (_, medic) = world.member(
        "P02",
        "Mirembe Achterberg",
        "mirembe@example.test",
        &["medic"],
    );
    let invited = world.person("P03", "Oke Lindqvist", "oke@example.test");
    world.person("P04", "Nobody Yet", "nobody@example.test");
    world
        .call("POST", &world.at("/invitations"))
        .once()
        .json(&json!({ "person": invited, "roles": ["rigging"] }))
        .send()
        .expect(201);

    let members = items(&world, &world.coordinator, &world.at("/members"));
    let told: Vec<(&str, bool, bool)> = members
        .iter()
        .map(|one| {
            (
                one["person"]["code"].as_str().unwrap(),
                one["has_account"].as_bool().unwrap(),
                one["invitation"].is_object(),
            )
        })
        .collect();
    assert_eq!(
        told,
        [
            ("P01", true, false),
            ("P02", true, false),
            ("P03", false, true)
        ]
    );
    assert_eq!(members[2]["roles"], json!(["rigging"]));
    assert_eq!(members[2]["email"], "oke@example.test");

    for path in ["/members", "/invitations"] {
        let refused = world
            .server
            .call("GET", &world.at(path))
            .token(&medic)
            .send()
            .refused(403, "forbidden");
        assert_eq!(refused["permission"], "manage_members");
    }
}

#[test]
fn a_withdrawn_invitation_is_void_and_withdrawn_once() {
    let world = World::new();
    let person = world.person("P03", "Oke Lindqvist", "oke@example.test");
    let invite = || {
        world
            .call("POST", &world.at("/invitations"))
            .once()
            .json(&json!({ "person": person, "roles": ["rigging"] }))
            .send()
            .expect(201)
    };
    invite();
    let token = world.invitation_to("oke@example.test");
    let open = items(&world, &world.coordinator, &world.at("/invitations"));
    assert_eq!(open.len(), 1);
    assert_eq!(open[0]["person"]["name"], "Oke Lindqvist");
    let path = world.at(&format!("/invitations/{}", open[0]["id"].as_str().unwrap()));
    let before = world.trail_size();
    world.call("DELETE", &path).once().send().expect(204);
    assert_eq!(world.trail_size(), before + 1);
    assert_eq!(
        items(&world, &world.coordinator, &world.at("/invitations")),
        Vec::<Value>::new()
    );
    world
        .call("DELETE", &path)
        .once()
        .send()
        .refused(409, "conflict");
    let refused = world
        .server
        .call("POST", "/invitations/accept")
        .json(&json!({ "token": token, "name": "Oke", "password": PASSWORD }))
        .send()
        .refused(409, "conflict");
    assert!(
        refused["detail"].as_str().unwrap().contains("withdrawn"),
        "{refused}"
    );
    world
        .call(
            "DELETE",
            &world.at(&format!("/invitations/{}", Uuid::now_v7())),
        )
        .once()
        .send()
        .refused(404, "unknown_id");
    // A new letter is good again.
    invite();
    assert_eq!(
        items(&world, &world.coordinator, &world.at("/invitations")).len(),
        1
    );
}

fn register(world: &World, token: &str, name: &str, seed: u8) -> Uuid {
    let key = SigningKey::from_slice(&[seed; 32]).unwrap();
    let id = Uuid::now_v7();
    world
        .server
        .call("POST", &world.at("/devices"))
        .token(token)
        .once()
        .json(&json!({ "id": id, "name": name, "key": PublicKey::from(key.verifying_key()) }))
        .send()
        .expect(201);
    id
}

#[test]
fn devices_are_listed_whole_for_those_who_may_revoke_them() {
    let world = World::new();
    let (_, medic) = world.member(
        "P02",
        "Mirembe Achterberg",
        "mirembe@example.test",
        &["medic"],
    );
    register(&world, &world.coordinator, "Desk", 3);
    let phone = register(&world, &medic, "Phone", 4);
    let names = |token: &str| -> Vec<(String, String, bool)> {
        items(&world, token, &world.at("/devices"))
            .iter()
            .map(|one| {
                (
                    one["name"].as_str().unwrap().to_owned(),
                    one["owner"]["code"].as_str().unwrap().to_owned(),
                    one["revoked_at"].is_string(),
                )
            })
            .collect()
    };
    let device = |name: &str, code: &str, revoked| (name.to_owned(), code.to_owned(), revoked);
    assert_eq!(
        names(&world.coordinator),
        [device("Phone", "P02", false), device("Desk", "P01", false)]
    );
    assert_eq!(names(&medic), [device("Phone", "P02", false)]);
    world
        .call("DELETE", &world.at(&format!("/devices/{phone}")))
        .once()
        .send()
        .expect(204);
    assert_eq!(names(&medic), [device("Phone", "P02", true)]);
}

#[test]
fn sign_ins_are_listed_and_ended_one_by_one_or_all_but_this() {
    let world = World::new();
    let here = sign_in(&world, PHONE);
    let there = sign_in(&world, "");
    let cookie = here.cookie();
    let other = there.cookie();
    let token = here.expect(200)["access_token"]
        .as_str()
        .unwrap()
        .to_owned();
    let list = || {
        let got = world
            .server
            .call("GET", "/sessions")
            .token(&token)
            .header("cookie", &cookie)
            .send()
            .expect(200);
        got["items"].as_array().unwrap().clone()
    };
    let all = list();
    // Setting up signed in as well.
    assert_eq!(all.len(), 3);
    let current: Vec<&Value> = all.iter().filter(|one| one["current"] == true).collect();
    assert_eq!(current.len(), 1);
    assert_eq!(
        (&current[0]["browser"], &current[0]["system"]),
        (&json!("Chrome"), &json!("Android"))
    );
    let unnamed = all
        .iter()
        .find(|one| one["browser"].is_null())
        .expect("the one that did not say");

    let end = |path: &str| world.server.call("DELETE", path).token(&token);
    let refresh = |cookie: &str| {
        world
            .server
            .call("POST", "/sessions/refresh")
            .header("cookie", cookie)
            .send()
    };
    end(&format!("/sessions/{}", unnamed["id"].as_str().unwrap()))
        .send()
        .expect(204);
    assert_eq!(list().len(), 2);
    refresh(&other).refused(401, "not_signed_in");

    // Without the cookie nobody can tell which one stays, so none is ended.
    end("/sessions/others").send().refused(401, "not_signed_in");
    end("/sessions/others")
        .header("cookie", &other)
        .send()
        .refused(401, "not_signed_in");
    assert_eq!(list().len(), 2);
    end("/sessions/others")
        .header("cookie", &cookie)
        .send()
        .expect(204);
    let left = list();
    assert_eq!(left.len(), 1);
    assert_eq!(left[0]["current"], true);
    refresh(&cookie).expect(200);

    // A sign-in of somebody else is as unknown as one that never was.
    let (_, medic) = world.member(
        "P02",
        "Mirembe Achterberg",
        "mirembe@example.test",
        &["medic"],
    );
    world
        .server
        .call(
            "DELETE",
            &format!("/sessions/{}", left[0]["id"].as_str().unwrap()),
        )
        .token(&medic)
        .send()
        .refused(404, "unknown_id");
    world
        .server
        .call("GET", "/sessions")
        .send()
        .refused(401, "not_signed_in");
}
