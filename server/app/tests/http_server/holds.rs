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
    let problem =
        raise(&code, &json!({ "id": id, "gag_code": "G99" })).refused(422, "invalid_input");
    assert_eq!(problem["errors"][0]["pointer"], "/gag_code");
    assert_eq!(world.trail_size(), size);

    // As people copy it from paper: any case, with a dash in the middle.
    let copied = format!("{}-{}", &code[..4].to_lowercase(), &code[4..]);
    let held = raise(&copied, &json!({ "id": id, "gag_code": "G07" })).expect(201);
    assert_eq!(held["id"], id.to_string());
    assert_eq!(
        held.as_object().unwrap().len(),
        2,
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
    let run = |rung: &str| {
        let body = json!({ "id": Uuid::now_v7(), "rung": rung, "good": true, "note": "clean" });
        world
            .call("POST", &format!("/gags/{gag}/runs"))
            .once()
            .json(&body)
            .send()
    };
    run(rung).expect(201);
    assert_eq!(
        run("the moon").refused(422, "invalid_input")["errors"][0]["pointer"],
        "/rung"
    );
}
