//! Rosters as CSV: all rows or none, every wrong cell named; and people written one at a time.

use serde_json::json;
use uuid::Uuid;

use crate::support::{Got, World};

fn import(world: &World, table: &str, text: impl Into<Vec<u8>>) -> Got {
    world
        .call("POST", &world.at(&format!("/roster/{table}")))
        .once()
        .body("text/csv", text)
        .send()
}

#[test]
fn a_roster_is_taken_whole_and_again_changes_nothing() {
    let world = World::new();
    let people = "code,name,occupation,performs\n\
                  P10,Zuzana Ďurišová,performer,yes\n\
                  P11,李 青山,performer,yes\n\
                  P12,Παρθενόπη Κ.,key rigger,no\n";
    let report = import(&world, "people", people).expect(200);
    assert_eq!(
        (&report["created"], &report["updated"]),
        (&json!(3), &json!(0))
    );
    let report = import(&world, "people", people).expect(200);
    assert_eq!(report["unchanged"], 3);
    let list = world.call("GET", &world.at("/people")).send().expect(200);
    assert!(list.to_string().contains("李 青山"));
    let file = world.call("GET", &world.at("/roster/people")).send();
    assert!(file.header("content-type").starts_with("text/csv"));
    let report = import(&world, "people", file.body).expect(200);
    assert_eq!(
        (&report["created"], &report["updated"]),
        (&json!(0), &json!(0))
    );
}

#[test]
fn a_roster_with_errors_is_refused_whole() {
    let world = World::new();
    let size = world.trail_size();
    let people = "code,name,occupation,performs\n\
                  P10,Zuzana Ďurišová,performer,yes\n\
                  P11,Oke Larsen,performer,perhaps\n\
                  P10,Twice,performer,yes\n";
    let problem = import(&world, "people", people).refused(422, "roster_refused");
    let errors = problem["errors"].as_array().unwrap();
    let found = |row: u64, column: &str| {
        errors
            .iter()
            .any(|one| one["row"] == row && one["column"] == column && one["fix"] != "")
    };
    assert!(found(3, "performs") && found(4, "code"), "{problem}");
    assert_eq!(world.trail_size(), size);
    let list = world.call("GET", &world.at("/people")).send().expect(200);
    assert_eq!(
        list["items"].as_array().unwrap().len(),
        1,
        "only the coordinator"
    );
    import(&world, "people", b"code,name\nP10,Jos\xe9\n".to_vec()).refused(422, "roster_refused");
    import(&world, "people", "").refused(422, "roster_refused");
}

#[test]
fn a_person_is_written_from_the_version_in_hand() {
    let world = World::new();
    let id = world.person("P02", "Oke Larsen", "oke@example.test");
    let path = world.at(&format!("/people/{id}"));
    let read = world.call("GET", &path).send();
    assert_eq!(read.header("etag"), "\"1\"");
    let mut person = read.json()["person"].clone();
    person["occupation"] = json!("key rigger");
    let put = |version: &str, person: &serde_json::Value| {
        world
            .call("PUT", &path)
            .once()
            .header("if-match", version)
            .json(person)
            .send()
    };
    world
        .call("PUT", &path)
        .once()
        .json(&person)
        .send()
        .refused(428, "precondition_required");
    let written = put("\"1\"", &person);
    assert_eq!(written.header("etag"), "\"2\"");
    written.expect(200);
    let size = world.trail_size();
    put("\"1\"", &person).refused(409, "conflict");
    person["id"] = json!(Uuid::now_v7());
    assert_eq!(
        put("\"2\"", &person).refused(422, "invalid_input")["errors"][0]["pointer"],
        "/id"
    );
    assert_eq!(world.trail_size(), size);
}

#[test]
fn hats_are_given_and_the_last_manager_stays() {
    let world = World::new();
    let id = world.person("P02", "Oke Larsen", "oke@example.test");
    let set = |person: Uuid, roles: &[&str]| {
        let body = json!({ "roles": roles });
        world
            .call("PUT", &world.at(&format!("/members/{person}")))
            .once()
            .json(&body)
            .send()
    };
    assert_eq!(
        set(id, &["rigging", "effects"]).expect(200)["roles"],
        json!(["rigging", "effects"])
    );
    set(world.person, &[]).refused(409, "conflict");
    let problem = set(id, &["emperor"]).refused(422, "invalid_input");
    assert_eq!(problem["errors"][0]["pointer"], "/roles/0");
}
