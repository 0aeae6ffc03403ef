//! Bad input: each refusal names the place and the fix, and nothing is stored.

use serde_json::{Value, json};
use uuid::Uuid;

use crate::support::{Got, World};

/// Sends a body to the address where gags are made.
fn send(world: &World, media: &str, body: impl Into<Vec<u8>>) -> Got {
    world
        .call("POST", &world.at("/gags"))
        .once()
        .body(media, body)
        .send()
}

#[test]
fn what_is_not_json_is_placed() {
    let world = World::new();
    let size = world.trail_size();
    let detail = |body: &str| {
        let problem = send(&world, "application/json", body).refused(400, "malformed_json");
        problem["detail"].as_str().unwrap().to_owned()
    };
    let told = detail("{\n  \"code\": \"G07\",\n  \"title\": }");
    assert!(told.contains("line 3, column 12"), "{told}");
    assert!(detail("{\"height\": NaN}").contains("finite"));
    detail("{\"height\": 1e400}");
    detail("");
    detail(&"[".repeat(5000));
    send(&world, "application/json", vec![b'{', 0xff, b'}']).refused(400, "malformed_json");
    assert_eq!(world.trail_size(), size);
}

#[test]
fn fields_that_are_wrong_are_named_by_pointer() {
    let world = World::new();
    let size = world.trail_size();
    let id = Uuid::now_v7();
    let pointer = |body: &str| {
        let problem = send(&world, "application/json", body).refused(422, "invalid_input");
        let error = &problem["errors"][0];
        assert!(
            error["fix"].as_str().is_some_and(|fix| !fix.is_empty()),
            "{problem}"
        );
        error["pointer"].as_str().unwrap().to_owned()
    };
    let whole = format!(r#"{{"id":"{id}","code":"G07","title":"Tower","technique":"high-fall""#);
    assert_eq!(pointer(r#"{"code":"G07"}"#), "/id");
    assert_eq!(pointer(r#"{"id":"G07"}"#), "/id");
    assert_eq!(pointer(&format!(r#"{whole},"colour":"red"}}"#)), "/colour");
    assert_eq!(pointer(&format!(r#"{whole},"title":"Twice"}}"#)), "/title");
    assert_eq!(
        pointer(&format!(
            r#"{whole},"facets":{{"rigging":{{"method":7}}}}}}"#
        )),
        "/facets/rigging/method"
    );
    let height = |value: &str| {
        let drop =
            format!(r#"{{"action":{{"summary":"x","parameters":{{"drop_height":{value}}}}}}}"#);
        format!(r#"{whole},"facets":{drop}}}"#)
    };
    for value in [
        r#"{"value":-4}"#,
        r#"{"value":1e12}"#,
        r#"{"value":"ten feet"}"#,
    ] {
        let at = pointer(&height(value));
        assert!(
            at.starts_with("/facets/action/parameters/drop_height"),
            "{at}"
        );
    }
    assert_eq!(world.trail_size(), size);
    assert_eq!(
        world.call("GET", &world.at("/gags")).send().expect(200)["items"],
        json!([])
    );
}

#[test]
fn bodies_of_the_wrong_kind_or_size_are_refused() {
    let world = World::new();
    let size = world.trail_size();
    send(&world, "text/plain", "{}").refused(415, "unsupported_media");
    send(&world, "application/x-www-form-urlencoded", "a=b").refused(415, "unsupported_media");
    let long = json!({ "title": "x".repeat(1_100_000) }).to_string();
    let problem = send(&world, "application/json", long).refused(413, "body_too_large");
    assert_eq!(problem["limit_bytes"], 1024 * 1024);
    let roster = "code,name\n".repeat(250_000);
    world
        .call("POST", &world.at("/roster/people"))
        .once()
        .body("text/csv", roster)
        .send()
        .refused(413, "body_too_large");
    assert_eq!(world.trail_size(), size);
}

#[test]
fn ids_that_are_unknown_or_no_ids_are_not_found() {
    let world = World::new();
    let some = Uuid::now_v7();
    let (gag, _) = world.gag("G01");
    let size = world.trail_size();
    for path in [
        format!("/gags/{some}"),
        "/gags/G01".into(),
        format!("/gags/{gag}/plans/99"),
        format!("/gags/{gag}/plans/first"),
        format!("/productions/{some}"),
        world.at(&format!("/people/{some}")),
        world.at("/roster/animals"),
        world.at("/trail/proof?leaf=999"),
    ] {
        world.call("GET", &path).send().refused(404, "unknown_id");
    }
    let hold = json!({ "role": "coordinator", "cause": "none" });
    world
        .call("POST", &format!("/holds/{some}/agreements"))
        .once()
        .json(&hold)
        .send()
        .refused(404, "unknown_id");
    world
        .call("DELETE", &world.at(&format!("/devices/{some}")))
        .once()
        .send()
        .refused(404, "unknown_id");
    assert_eq!(world.trail_size(), size);
}

#[test]
fn queries_are_read_strictly() {
    let world = World::new();
    let (gag, _) = world.gag("G01");
    for path in [
        format!("/gags/{gag}/matches"),
        format!("/gags/{gag}/packet?paper=a3"),
        format!("/gags/{gag}/packet?papre=a4"),
        format!("/gags/{gag}/signoff-draft?role=king"),
        world.at("/changes?after=-1"),
    ] {
        let problem = world
            .call("GET", &path)
            .send()
            .refused(422, "invalid_input");
        assert_eq!(problem["in"], "query", "{path}");
    }
}

#[test]
fn addresses_and_methods_that_are_not_there_say_so() {
    let world = World::new();
    world
        .call("GET", "/stunts")
        .send()
        .refused(404, "no_such_route");
    world
        .server
        .plain("GET", "/api/v2/status")
        .send()
        .refused(404, "no_such_route");
    let got = world.call("DELETE", &world.at("/gags")).once().send();
    assert_eq!(got.header("allow"), "GET, POST");
    got.refused(405, "method_not_allowed");
}

#[test]
fn inputs_of_an_assessment_are_named_when_wrong() {
    let world = World::new();
    let assess = |technique: &str, inputs: Value| {
        let path = format!("/techniques/{technique}/assessment");
        world
            .call("POST", &path)
            .json(&json!({ "inputs": inputs }))
            .send()
    };
    let value = |value: f64| json!({ "value": value });
    let fall = json!({ "drop_height": value(10.0), "performer_mass": value(75.0) });
    let good = assess("high-fall", fall).expect(200);
    let impact = good["figures"]
        .as_array()
        .unwrap()
        .iter()
        .find(|one| one["name"] == "impact_speed");
    // Free fall without air: v = sqrt(2 g h) = 14.0 m/s; air can only take from it.
    let speed = impact.expect("an impact speed")["value"].as_f64().unwrap();
    assert!((13.0..14.01).contains(&speed), "{speed}");
    let problem = assess("high-fall", json!({ "drop_heigth": { "value": 10.0 } }));
    let problem = problem.refused(422, "invalid_input");
    assert_eq!(problem["errors"][0]["pointer"], "/inputs/drop_heigth");
    let problem = assess("high-fall", json!({ "drop_height": { "value": 1.0e9 } }));
    let problem = problem.refused(422, "invalid_input");
    assert_eq!(problem["errors"][0]["pointer"], "/inputs/drop_height");
    assess("levitation", json!({})).refused(404, "unknown_id");
}
