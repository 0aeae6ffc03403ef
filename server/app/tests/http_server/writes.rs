//! Writes that are sent again: the first answer is kept with the work and given once more.

use diesel::connection::SimpleConnection;
use gagwright_store::StoreError;
use serde_json::json;
use uuid::Uuid;

use crate::support::{Server, World};

#[test]
fn a_repeat_gets_the_first_answer_and_does_nothing() {
    let world = World::new();
    let (key, id) = (Uuid::now_v7(), Uuid::now_v7());
    let gag =
        json!({ "id": id, "code": "G07", "title": "Off the tower", "technique": "high-fall" });
    let send = || {
        world
            .call("POST", &world.at("/gags"))
            .key(key)
            .json(&gag)
            .send()
    };
    let first = send();
    assert_eq!(first.header("idempotency-replayed"), "");
    assert_eq!(first.header("location"), format!("/api/v1/gags/{id}"));
    let size = world.trail_size();
    let again = send();
    assert_eq!(again.header("idempotency-replayed"), "true");
    for header in ["location", "etag", "content-type"] {
        assert_eq!(again.header(header), first.header(header), "{header}");
    }
    assert_eq!((again.status, &again.body), (first.status, &first.body));
    assert_eq!(first.status, 201, "{}", first.text());
    assert_eq!(world.trail_size(), size);
}

#[test]
fn the_answer_is_still_there_after_a_restart() {
    let world = World::new();
    let key = Uuid::now_v7();
    let hold = json!({ "id": Uuid::now_v7(), "reason": "loose anchor" });
    let first = world
        .call("POST", &world.at("/holds"))
        .key(key)
        .json(&hold)
        .send();
    assert_eq!(first.status, 201, "{}", first.text());
    let World {
        server,
        production,
        coordinator,
        ..
    } = world;
    let server = Server::start_in(server.stop());
    assert_eq!(
        server.setup_token, "",
        "a database with an account needs no set-up"
    );
    let again = server
        .call("POST", &format!("/productions/{production}/holds"))
        .token(&coordinator)
        .key(key)
        .json(&hold)
        .send();
    assert_eq!((again.status, &again.body), (201, &first.body));
    assert_eq!(again.header("idempotency-replayed"), "true");
}

#[test]
fn a_key_names_one_request_of_one_account() {
    let world = World::new();
    let (_, medic) = world.member(
        "P02",
        "Mirembe Achterberg",
        "mirembe@example.test",
        &["medic"],
    );
    let key = Uuid::now_v7();
    let path = world.at("/holds");
    let hold = |reason: &str| json!({ "id": Uuid::now_v7(), "reason": reason });
    let send = |token: &str, body: &serde_json::Value| {
        world
            .server
            .call("POST", &path)
            .token(token)
            .key(key)
            .json(body)
            .send()
    };
    let first = hold("wind");
    send(&world.coordinator, &first).expect(201);
    let size = world.trail_size();
    send(&world.coordinator, &hold("other words")).refused(422, "key_reused");
    assert_eq!(world.trail_size(), size);
    // The same key under another account is another key.
    send(&medic, &hold("other words")).expect(201);
}

#[test]
fn a_kept_answer_is_for_those_who_are_still_on_the_production() {
    let world = World::new();
    let (person, medic) = world.member("P02", "Oke Larsen", "oke@example.test", &["medic"]);
    let (gag, _) = world.gag("G07");
    let calls = [
        (world.at("/holds"), json!({ "id": Uuid::now_v7() })),
        (
            format!("/gags/{gag}/readings"),
            json!({
                "id": Uuid::now_v7(), "kind": "wind", "value": 3.0, "at": gagwright::clock::now(),
                "place": "mast",
            }),
        ),
    ];
    let keys = [Uuid::now_v7(), Uuid::now_v7()];
    let send = |at: usize| {
        let (path, body) = &calls[at];
        let call = world.server.call("POST", path).token(&medic);
        call.key(keys[at]).json(body).send()
    };
    for at in [0, 1] {
        send(at).expect(201);
        assert_eq!(send(at).header("idempotency-replayed"), "true");
    }
    world
        .call("PUT", &world.at(&format!("/members/{person}")))
        .once()
        .json(&json!({ "roles": [] }))
        .send()
        .expect(200);
    for at in [0, 1] {
        send(at).refused(403, "forbidden");
    }
}

#[test]
fn a_refusal_is_not_kept() {
    let world = World::new();
    let (key, id) = (Uuid::now_v7(), Uuid::now_v7());
    let send = |technique: &str| {
        let gag = json!({ "id": id, "code": "G07", "title": "Tower", "technique": technique });
        world
            .call("POST", &world.at("/gags"))
            .key(key)
            .json(&gag)
            .send()
    };
    let refused = send("levitation");
    assert_eq!(
        refused.refused(422, "invalid_input")["errors"][0]["pointer"],
        "/technique"
    );
    send("high-fall").expect(201);
}

#[test]
fn every_write_asks_for_a_key() {
    let world = World::new();
    let hold = json!({ "id": Uuid::now_v7() });
    let problem = world.call("POST", &world.at("/holds")).json(&hold).send();
    assert_eq!(
        problem.refused(422, "invalid_input")["header"],
        "Idempotency-Key"
    );
    let problem = world
        .call("POST", &world.at("/holds"))
        .header("idempotency-key", "one")
        .json(&hold)
        .send();
    assert_eq!(
        problem.refused(422, "invalid_input")["header"],
        "Idempotency-Key"
    );
}

#[test]
fn many_phones_writing_at_once_each_get_their_answer() {
    let world = World::new();
    let size = world.trail_size();
    std::thread::scope(|scope| {
        for _ in 0..8 {
            scope.spawn(|| {
                for _ in 0..5 {
                    let hold = json!({ "id": Uuid::now_v7() });
                    world
                        .call("POST", &world.at("/holds"))
                        .once()
                        .json(&hold)
                        .send()
                        .expect(201);
                }
            });
        }
    });
    assert_eq!(world.trail_size(), size + 40);
    let holds = world.call("GET", &world.at("/holds")).send().expect(200);
    assert_eq!(holds["items"].as_array().unwrap().len(), 40);
}

#[test]
fn one_key_sent_many_times_at_once_does_the_work_once() {
    let world = World::new();
    let size = world.trail_size();
    let (key, hold) = (
        Uuid::now_v7(),
        json!({ "id": Uuid::now_v7(), "reason": "wind" }),
    );
    let send = || {
        world
            .call("POST", &world.at("/holds"))
            .key(key)
            .json(&hold)
            .send()
            .expect(201)
    };
    let answers: Vec<_> = std::thread::scope(|scope| {
        let phones: Vec<_> = (0..6).map(|_| scope.spawn(send)).collect();
        phones
            .into_iter()
            .map(|phone| phone.join().unwrap())
            .collect()
    });
    assert!(answers.iter().all(|answer| *answer == answers[0]));
    assert_eq!(world.trail_size(), size + 1);
}

#[test]
fn an_old_token_does_not_stand_in_the_way_of_a_hold_by_code() {
    let world = World::new();
    let code = world.call("GET", &world.at("")).send().expect(200)["hold_code"].clone();
    let long_ago = gagwright::clock::now() - jiff::SignedDuration::from_hours(1);
    let (old, _) = world.server.tokens.issue(Uuid::now_v7(), long_ago).unwrap();
    world
        .server
        .call(
            "POST",
            &format!("/hold-codes/{}/holds", code.as_str().unwrap()),
        )
        .token(&old)
        .once()
        .json(&json!({ "id": Uuid::now_v7() }))
        .send()
        .expect(201);
}

/// SQLite answers as on a full disk when the file may not grow.
fn most_pages(world: &World, pages: u32) {
    world
        .server
        .store
        .write(move |conn| {
            conn.batch_execute(&format!("PRAGMA max_page_count = {pages}"))
                .map_err(StoreError::from)
        })
        .unwrap();
}

#[test]
fn a_full_disk_is_said_as_such_and_the_same_request_is_done_once_there_is_room() {
    let world = World::new();
    most_pages(&world, 1);
    // Pages that are there already take a few more rows; each of these is larger than a page.
    let raise = |key: Uuid| {
        let hold = json!({ "id": key, "reason": "the anchor is loose; ".repeat(90) });
        world
            .call("POST", &world.at("/holds"))
            .key(key)
            .json(&hold)
            .send()
    };
    let mut kept = 0;
    let key = loop {
        let key = Uuid::now_v7();
        let before = world.trail_size();
        let answer = raise(key);
        if answer.status == 201 {
            kept += 1;
            assert!(kept < 100, "the file was not to grow");
            continue;
        }
        assert_eq!(answer.header("retry-after"), "60");
        let told = answer.refused(507, "storage_full");
        let detail = told["detail"].as_str().unwrap();
        assert!(detail.contains("nothing was stored"), "{detail}");
        assert_eq!(world.trail_size(), before);
        break key;
    };
    let holds = || {
        let page = world.call("GET", &world.at("/holds")).send().expect(200);
        page["items"].as_array().unwrap().len()
    };
    assert_eq!(holds(), kept, "reading goes on, and nothing is half there");
    most_pages(&world, 1_000_000);
    let size = world.trail_size();
    raise(key).expect(201);
    let again = raise(key);
    assert_eq!(again.header("idempotency-replayed"), "true");
    again.expect(201);
    assert_eq!((holds(), world.trail_size()), (kept + 1, size + 1));
}
