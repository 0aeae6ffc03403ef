//! Stops: from an account, and by the code on the brief with none.

use serde_json::json;
use uuid::Uuid;

use crate::support::World;

#[test]
fn anyone_with_the_code_holds_and_the_coordinator_releases() {
    let world = World::new();
    let (gag, _) = world.gag("G07");
    let production = world.call("GET", &world.at("")).send().expect(200);
    let code = production["hold_code"].as_str().unwrap().to_owned();
    let raise = |code: &str, body: &serde_json::Value| {
        world
            .server
            .call("POST", &format!("/hold-codes/{code}/holds"))
            .once()
            .json(body)
            .send()
    };
    let size = world.trail_size();
    let id = Uuid::now_v7();
    raise("WRONGCDE", &json!({ "id": id })).refused(404, "unknown_id");
    assert_eq!(world.trail_size(), size);

    // As people copy it from paper: any case, with a dash in the middle.
    let copied = format!("{}-{}", &code[..4].to_lowercase(), &code[4..]);
    let held = raise(&copied, &json!({ "id": id, "gag_code": "g07" })).expect(201);
    assert_eq!(held["id"], id.to_string());
    assert_eq!(held["gag_code"], "G07");
    assert_eq!(
        held.as_object().unwrap().len(),
        3,
        "nothing else is told: {held}"
    );
    assert_eq!(world.trail_size(), size + 1);
    let page = world
        .call("GET", &format!("/gags/{gag}"))
        .send()
        .expect(200);
    assert_eq!(page["clearance"]["state"], "held");

    let agree = |role: &str, cause: &str| {
        let body = json!({ "role": role, "cause": cause });
        world
            .call("POST", &format!("/holds/{id}/agreements"))
            .once()
            .json(&body)
            .send()
    };
    agree("medic", "looked").refused(403, "forbidden");
    assert_eq!(
        agree("coordinator", "").refused(422, "invalid_input")["errors"][0]["pointer"],
        "/cause"
    );
    let hold = agree("coordinator", "the anchor was looked at and is good").expect(201);
    assert_eq!(hold["agreements"].as_array().unwrap().len(), 1);
    let page = world
        .call("GET", &format!("/gags/{gag}"))
        .send()
        .expect(200);
    assert_ne!(page["clearance"]["state"], "held");
}

#[test]
fn a_mistyped_gag_holds_everything_and_says_so() {
    let world = World::new();
    let (gag, _) = world.gag("G07");
    let production = world.call("GET", &world.at("")).send().expect(200);
    let code = production["hold_code"].as_str().unwrap().to_owned();
    let held = world
        .server
        .call("POST", &format!("/hold-codes/{code}/holds"))
        .once()
        .json(&json!({ "id": Uuid::now_v7(), "gag_code": "G70", "reason": "the anchor slipped" }))
        .send()
        .expect(201);
    assert_eq!(held["gag_code"], serde_json::Value::Null);
    let page = world
        .call("GET", &format!("/gags/{gag}"))
        .send()
        .expect(200);
    assert_eq!(page["clearance"]["state"], "held");
    let hold = &page["case"]["holds"][0];
    assert_eq!(hold["gag"], serde_json::Value::Null);
    assert_eq!(hold["reason"], "the anchor slipped (\"G70\")");
}

#[test]
fn readings_and_runs_are_logged() {
    let world = World::new();
    let (gag, page) = world.gag("G07");
    let now = gagwright::clock::now();
    let reading = |value: f64| {
        let body = json!({ "id": Uuid::now_v7(), "kind": "wind", "value": value, "at": now, "place": "roof" });
        world
            .call("POST", &format!("/gags/{gag}/readings"))
            .once()
            .json(&body)
            .send()
    };
    assert_eq!(reading(4.5).expect(201)["by"], world.person.to_string());
    assert_eq!(
        reading(4500.0).refused(422, "invalid_input")["errors"][0]["pointer"],
        "/value"
    );
    let rung = page["plan"]["facets"]["rehearsals"]["rungs"][0]["name"]
        .as_str()
        .unwrap();
    let log = |rung: &str, revision: u32| {
        let body = json!({
            "id": Uuid::now_v7(), "rung": rung, "good": true, "note": "clean", "revision": revision,
            "at": gagwright::clock::now(),
        });
        world
            .call("POST", &format!("/gags/{gag}/runs"))
            .once()
            .json(&body)
            .send()
    };
    let first = log(rung, 1).expect(201);
    for (rung, revision, pointer) in [("the moon", 1, "/rung"), (rung, 2, "/revision")] {
        let problem = log(rung, revision).refused(422, "invalid_input");
        assert_eq!(problem["errors"][0]["pointer"], pointer);
    }
    // What was rehearsed is the revision named, whatever is current when the run arrives.
    let mut facets = page["plan"]["facets"].clone();
    facets["action"]["parameters"]["drop_height"] = json!({ "value": 14.0 });
    let body = json!({ "technique": "high-fall", "facets": facets, "note": "higher" });
    world
        .call("POST", &format!("/gags/{gag}/plans"))
        .once()
        .header("if-match", "\"1\"")
        .json(&body)
        .send()
        .expect(201);
    assert_eq!(log(rung, 1).expect(201)["facets"], first["facets"]);
    assert_ne!(log(rung, 2).expect(201)["facets"], first["facets"]);
}
