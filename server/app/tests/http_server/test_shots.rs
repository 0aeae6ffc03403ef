//! Test shots over HTTP: logged once, refused with the field and the fix, shown where the phone keeps
//! them, told to those who listen, and part of an export that verifies.

use serde_json::{Value, json};
use uuid::Uuid;

use crate::support::{Got, World};

fn shot(edit: impl FnOnce(&mut Value)) -> Value {
    let mut body = json!({
        "id": Uuid::now_v7(),
        "technique": "ratchet-pull",
        "inputs": {
            "reservoir_pressure": { "value": 6.0e5, "tolerance": 1.0e4 },
            "performer_mass": { "value": 80.0 },
        },
        "measured": { "total_distance": 6.4 },
        "load": "bag",
        "note": "Clean, no swing",
        "shot_at": gagwright::clock::now(),
    });
    edit(&mut body);
    body
}

fn log(world: &World, token: &str, gag: Uuid, body: &Value) -> Got {
    world
        .server
        .call("POST", &format!("/gags/{gag}/test-shots"))
        .token(token)
        .once()
        .json(body)
        .send()
}

#[test]
fn a_test_shot_is_logged_and_read_where_the_gag_is() {
    let world = World::new();
    // The gag is a high fall: another technique may be tested for it first.
    let (gag, page) = world.gag("G07");
    assert_eq!(page["test_shots"], json!([]));
    let body = shot(|_| ());
    let size = world.trail_size();
    let kept = log(&world, &world.coordinator, gag, &body).expect(201);
    assert_eq!(world.trail_size(), size + 1);
    for field in ["id", "technique", "inputs", "measured", "load", "note"] {
        assert_eq!(kept[field], body[field], "{field}");
    }
    assert_eq!(kept["gag"], gag.to_string());
    assert_eq!(kept["recorded_by"], world.person.to_string());
    assert!(kept["recorded_at"].is_string());
    let second = shot(|body| body["load"] = json!("person"));
    let second = log(&world, &world.coordinator, gag, &second).expect(201);

    let read = |path: String| world.call("GET", &path).send().expect(200);
    let list = read(format!("/gags/{gag}/test-shots"));
    assert_eq!(list["items"], json!([kept, second]));
    let page = read(format!("/gags/{gag}"));
    assert_eq!(page["test_shots"], list["items"]);
    assert_eq!(
        page["names"][world.person.to_string()],
        "Thandeka Mbeki",
        "whoever logged it is named"
    );

    // Those who listen hear of it, and the trail tells it without the body's mass.
    let changes = read(world.at(&format!("/changes?after={size}")));
    let kinds: Vec<&Value> = changes["items"].as_array().unwrap().iter().collect();
    assert!(
        kinds
            .iter()
            .any(|one| one["kind"] == "test_shot.logged" && one["gag"] == gag.to_string()),
        "{changes}"
    );
    let trail = read(world.at("/trail?limit=1"));
    let leaf = &trail["items"][0];
    assert_eq!(
        leaf["sentence"],
        "Thandeka Mbeki logged a test shot with a person on G07"
    );
    assert_eq!(leaf["entry"]["facts"]["measured"], second["measured"]);
    assert!(leaf["entry"]["commitments"]["said"].is_string(), "{leaf}");
    assert!(!leaf.to_string().contains("performer_mass"), "{leaf}");
    let export = world.call("GET", &world.at("/trail/export")).send();
    assert_eq!(export.status, 200);
    let verified = gagwright_trail::verify_export(export.text()).unwrap();
    assert_eq!(verified.size, world.trail_size());
}

/// What makes a shot wrong.
type Edit<'a> = &'a dyn Fn(&mut Value);

#[test]
fn a_shot_that_cannot_be_is_refused_with_the_field_and_the_fix() {
    let world = World::new();
    let (gag, _) = world.gag("G07");
    let size = world.trail_size();
    let refused = |edit: &dyn Fn(&mut Value)| {
        let body = shot(|body| edit(body));
        let problem = log(&world, &world.coordinator, gag, &body).refused(422, "invalid_input");
        let error = problem["errors"][0].clone();
        let word = |name: &str| error[name].as_str().unwrap_or_default().to_owned();
        (word("pointer"), word("fix"))
    };
    let cases: [(Edit, &str, &str); 8] = [
        (
            &|body| body["technique"] = json!("teleport"),
            "/technique",
            "ratchet-pull",
        ),
        (
            &|body| body["inputs"]["drop_height"] = json!({ "value": 3.0 }),
            "/inputs/drop_height",
            "reservoir_pressure",
        ),
        (
            &|body| body["inputs"]["performer_mass"] = json!({ "value": -3.0 }),
            "/inputs/performer_mass",
            "give the value that was set",
        ),
        (
            &|body| body["measured"] = json!({}),
            "/measured",
            "total_distance",
        ),
        (
            &|body| body["measured"] = json!({ "impact_speed": 3.0 }),
            "/measured/impact_speed",
            "total_distance",
        ),
        (&|body| body["load"] = json!("goat"), "/load", "bag"),
        (
            &|body| body["note"] = json!("x".repeat(9_000)),
            "/note",
            "shorten",
        ),
        (
            &|body| {
                body.as_object_mut().unwrap().remove("inputs");
            },
            "/inputs",
            "add it",
        ),
    ];
    for (edit, pointer, fix) in cases {
        let (at, told) = refused(edit);
        assert_eq!(at, pointer);
        assert!(told.contains(fix), "{pointer}: {told}");
    }
    assert_eq!(world.trail_size(), size, "a refused shot left a leaf");
    let list = world
        .call("GET", &format!("/gags/{gag}/test-shots"))
        .send()
        .expect(200);
    assert_eq!(list["items"], json!([]));
}

#[test]
fn a_shot_is_logged_by_those_who_log_the_day_and_once() {
    let world = World::new();
    let (gag, _) = world.gag("G07");
    let (_, observer) = world.member("P03", "Oke Larsen", "oke@example.test", &["observer"]);
    let body = shot(|_| ());
    let problem = log(&world, &observer, gag, &body).refused(403, "forbidden");
    assert_eq!(problem["permission"], "log_day");
    log(&world, &world.coordinator, Uuid::now_v7(), &body).refused(404, "unknown_id");

    let (key, size) = (Uuid::now_v7(), world.trail_size());
    let send = || {
        world
            .call("POST", &format!("/gags/{gag}/test-shots"))
            .key(key)
            .json(&body)
            .send()
    };
    let first = send();
    assert_eq!(first.status, 201, "{}", first.text());
    let again = send();
    assert_eq!(again.header("idempotency-replayed"), "true");
    assert_eq!((again.status, &again.body), (201, &first.body));
    assert_eq!(world.trail_size(), size + 1);
    // The same shot under another key is a clash, not a second shot.
    log(&world, &world.coordinator, gag, &body).refused(409, "conflict");
    assert_eq!(world.trail_size(), size + 1);
    // Whoever only reads may read it.
    let list = world
        .server
        .call("GET", &format!("/gags/{gag}/test-shots"))
        .token(&observer)
        .send()
        .expect(200);
    assert_eq!(list["items"].as_array().unwrap().len(), 1);
}
