//! Witnesses over HTTP: added and removed by those who may, cosignatures taken in once, every other one refused with
//! its reason.

use gagwright_trail::{LogKey, VerifyingKey, Witness, WitnessKey, root, verify_export_with};
use serde_json::{Value, json};
use uuid::Uuid;

use crate::support::{Got, World};

const NAME: &str = "witness.example/w1";

fn witness(seed: u8) -> Witness {
    Witness::from_seed(NAME, [seed; 32]).unwrap()
}

fn seconds(later: i64) -> u64 {
    let now = gagwright::clock::now().as_second();
    u64::try_from(now + later).unwrap()
}

fn text(world: &World, path: &str) -> String {
    let got = world.call("GET", &world.at(path)).send();
    assert_eq!(got.status, 200, "{}", got.text());
    got.text().to_owned()
}

fn log(world: &World) -> VerifyingKey {
    let export = text(world, "/trail/export");
    let header: Value = serde_json::from_str(export.lines().next().unwrap()).unwrap();
    header["log_key"].as_str().unwrap().parse().unwrap()
}

fn add(world: &World, key: &str) -> Got {
    world
        .call("POST", &world.at("/trail/witnesses"))
        .once()
        .json(&json!({ "key": key }))
        .send()
}

fn bring(world: &World, body: &Value) -> Got {
    world
        .call("POST", &world.at("/trail/cosignatures"))
        .once()
        .json(body)
        .send()
}

/// The production's checkpoint as it is now, with a line of this witness at so many seconds from now.
fn cosigned(world: &World, by: &Witness, later: i64) -> (String, String) {
    let note = text(world, "/trail/checkpoint");
    let line = by.cosign(&note, &log(world), seconds(later)).unwrap();
    (format!("{note}{line}\n"), line)
}

fn listed(world: &World) -> Value {
    world
        .call("GET", &world.at("/trail/witnesses"))
        .send()
        .expect(200)
}

#[test]
fn a_witness_is_added_cosigns_and_is_removed() {
    let world = World::new();
    let (_, observer) = world.member("P09", "Ngaire Tūhoe", "ngaire@example.test", &["observer"]);
    let key = witness(1).key().to_string();
    let as_observer = |path: &str, body: &Value| {
        world
            .server
            .call("POST", &world.at(path))
            .token(&observer)
            .once()
            .json(body)
            .send()
    };
    as_observer("/trail/witnesses", &json!({ "key": key })).refused(403, "forbidden");
    let leaves = world.trail_size();
    let added = add(&world, &format!(" {key}\n")).expect(201);
    assert_eq!((&added["name"], &added["key"]), (&json!(NAME), &json!(key)));
    assert_eq!(
        (added["id"].as_u64(), world.trail_size()),
        (Some(leaves), leaves + 1)
    );
    let page = text(&world, "/trail?limit=1");
    assert!(page.contains(&format!(
        "Thandeka Mbeki added {NAME} as a witness of the trail"
    )));

    // Whoever may read the trail may bring it. No entry is added, and the checkpoint carries the line.
    let (note, line) = cosigned(&world, &witness(1), 0);
    let taken = as_observer("/trail/cosignatures", &json!({ "cosigned": note })).expect(201);
    assert_eq!(taken["items"][0]["size"], leaves + 1);
    assert_eq!(world.trail_size(), leaves + 1);
    assert_eq!(text(&world, "/trail/checkpoint"), note);
    // Again, by another request: the same, once.
    assert_eq!(
        bring(&world, &json!({ "cosigned": note })).expect(201),
        taken
    );
    assert_eq!(text(&world, "/trail/checkpoint"), note);
    assert_eq!(listed(&world)["items"][0]["cosigned"], taken["items"]);

    // The trail grows: the cosignature stays with its own size, in the export as well.
    world.gag("G07");
    assert!(!text(&world, "/trail/checkpoint").contains(&line));
    let export = text(&world, "/trail/export");
    let verified = verify_export_with(&export, None, &[witness(1).key()]).unwrap();
    assert_eq!(verified.witnessed.len(), 1);
    assert_eq!(
        (verified.witnessed[0].size, verified.size),
        (leaves + 1, leaves + 2)
    );
    // A line alone is of the checkpoint as it is now, or of the size that is said.
    let (_, line) = cosigned(&world, &witness(1), 0);
    world.gag("G08");
    bring(&world, &json!({ "cosigned": line })).refused(422, "invalid_input");
    let size = leaves + 2;
    let taken = bring(&world, &json!({ "cosigned": line, "size": size })).expect(201);
    assert_eq!(taken["items"][0]["size"], size);
    let sizes = |listed: &Value| -> Vec<u64> {
        let cosigned = listed["items"][0]["cosigned"].as_array().unwrap();
        cosigned
            .iter()
            .map(|one| one["size"].as_u64().unwrap())
            .collect()
    };
    assert_eq!(sizes(&listed(&world)), [leaves + 2, leaves + 1]);

    // Removed: what it cosigned stays, and it is asked no more.
    let remove = |id: u64| {
        let path = world.at(&format!("/trail/witnesses/{id}/remove"));
        world.call("POST", &path).once().send()
    };
    remove(0).refused(404, "unknown_id");
    let removed = remove(leaves).expect(200);
    assert!(removed["removed_at"].is_string());
    assert_eq!(removed["cosigned"].as_array().unwrap().len(), 2);
    remove(leaves).refused(409, "conflict");
    assert!(text(&world, "/trail?limit=1").contains(&format!("removed {NAME} as a witness")));
    let (note, _) = cosigned(&world, &witness(1), 0);
    bring(&world, &json!({ "cosigned": note })).refused(422, "invalid_input");
    let export = text(&world, "/trail/export");
    let verified = verify_export_with(&export, None, &[witness(1).key()]).unwrap();
    assert_eq!(verified.witnessed.len(), 2);
    // The name is free for another key.
    add(&world, &witness(2).key().to_string()).expect(201);
}

#[track_caller]
fn says(got: Got, pointer: &str, words: [&str; 2]) {
    let problem = got.refused(422, "invalid_input");
    let error = &problem["errors"][0];
    assert_eq!(error["pointer"], pointer, "{problem}");
    let (what, fix) = (error["problem"].as_str(), error["fix"].as_str());
    assert!(what.unwrap().contains(words[0]), "{problem}");
    assert!(fix.unwrap().contains(words[1]), "{problem}");
}

#[test]
fn a_key_that_is_none_or_is_there_is_refused() {
    let world = World::new();
    let key = witness(1).key().to_string();
    let leaves = world.trail_size();
    says(
        add(&world, "witness"),
        "/key",
        ["name+hash+base64", "gagwright witness key"],
    );
    // The log's own key is of another kind.
    let logs = log(&world).to_string();
    says(
        add(&world, &logs),
        "/key",
        ["not a witness's", "gagwright witness key"],
    );
    let long = Witness::from_seed(&"w".repeat(201), [3; 32]).unwrap();
    says(
        add(&world, &long.key().to_string()),
        "/key",
        ["201 characters", "shorter"],
    );
    assert_eq!(world.trail_size(), leaves);
    add(&world, &key).expect(201);
    says(
        add(&world, &key),
        "/key",
        ["there already", "nothing is left"],
    );
    let other_name = Witness::from_seed("witness.example/w2", [1; 32]).unwrap();
    says(
        add(&world, &other_name.key().to_string()),
        "/key",
        ["there already, as witness.example/w1", "a key of its own"],
    );
    says(
        add(&world, &witness(2).key().to_string()),
        "/key",
        ["with another key", "remove that one first"],
    );
    assert_eq!(world.trail_size(), leaves + 1);
}

#[test]
fn every_cosignature_that_does_not_hold_is_refused_with_its_reason() {
    let world = World::new();
    add(&world, &witness(1).key().to_string()).expect(201);
    let size = world.trail_size();
    let refused = |cosigned: &str, what: &str, fix: &str| {
        let body = json!({ "cosigned": cosigned });
        says(bring(&world, &body), "/cosigned", [what, fix]);
    };
    let plain = text(&world, "/trail/checkpoint");
    let (good, line) = cosigned(&world, &witness(1), 0);

    refused("hello", "long dash", "whole note");
    refused(" \n", "it is empty", "whole note");
    refused(&plain, "no cosignature", "whole note");
    // Nobody added it, or another key of that name.
    let stranger = Witness::from_seed("witness.example/w9", [9; 32]).unwrap();
    let (note, _) = cosigned(&world, &stranger, 0);
    refused(&note, "witness.example/w9 is no witness", "add the witness");
    let (note, _) = cosigned(&world, &witness(2), 0);
    refused(&note, "with another key", "the key that was added");
    // One letter of the signature.
    let at = good.len() - 20;
    let letter = if &good[at..=at] == "A" { "B" } else { "A" };
    let mut bent = good.clone();
    bent.replace_range(at..=at, letter);
    refused(&bent, "does not verify", "cosign once more");
    // Another log's checkpoint under this origin, and one of a trail that this one is not.
    let origin = log(&world).name().to_owned();
    let other = LogKey::from_seed([7; 32]);
    let note = other.sign_checkpoint(&origin, size, &root(&[])).unwrap();
    let by = other.verifying_key(&origin).unwrap();
    let line_of_other = witness(1).cosign(&note, &by, seconds(0)).unwrap();
    refused(
        &format!("{note}{line_of_other}\n"),
        "not the checkpoint that this server signs",
        "this production's trail",
    );
    let note = other
        .sign_checkpoint(&origin, size + 5, &root(&[]))
        .unwrap();
    refused(
        &note,
        &format!("{} entries, and this trail has {size}", size + 5),
        "lost",
    );
    // The log's own line taken away.
    let own = plain.lines().last().unwrap();
    refused(
        &good.replace(&format!("{own}\n"), ""),
        "no signature by",
        "whole note",
    );
    // A clock ahead of the server's by more than five minutes, or before the last entry.
    let (note, _) = cosigned(&world, &witness(1), 1200);
    refused(&note, "still to come", "clock");
    let (note, _) = cosigned(&world, &witness(1), -3600);
    refused(&note, "the last entry it is about", "clock");
    let far = witness(1)
        .cosign(&plain, &log(&world), u64::MAX >> 1)
        .unwrap();
    refused(&far, "thousands of years", "clock");
    // A size that is not its own, or no size of this trail.
    for (body, what) in [
        (
            json!({ "cosigned": good, "size": size - 1 }),
            "checkpoint has",
        ),
        (json!({ "cosigned": line, "size": 0 }), "has 0 entries"),
        (
            json!({ "cosigned": line, "size": size + 1 }),
            "this trail has",
        ),
    ] {
        says(bring(&world, &body), "/size", [what, ""]);
    }
    let body = json!({ "cosigned": line, "size": size - 1 });
    says(
        bring(&world, &body),
        "/cosigned",
        ["does not verify", "once more"],
    );
    assert_eq!(listed(&world)["items"][0]["cosigned"], json!([]));

    // With line ends as another system writes them, and none at the end, it is good; a second time of signing the
    // same says nothing new, and the first stays.
    let pasted = good.trim_end().replace('\n', "\r\n");
    let first = bring(&world, &json!({ "cosigned": pasted })).expect(201);
    let (later, _) = cosigned(&world, &witness(1), 60);
    assert_eq!(
        bring(&world, &json!({ "cosigned": later })).expect(201),
        first
    );
    let key: WitnessKey = witness(1).key();
    assert!(key.verify(&text(&world, "/trail/checkpoint")).is_ok());
    // The trail has grown since: a line alone, with no size, cannot be placed, and is told how it can.
    world.gag("G99");
    let unplaced = bring(&world, &json!({ "cosigned": line }));
    says(unplaced, "/cosigned", ["does not verify", "give the size"]);
    // Another production's address shows nothing of it.
    let elsewhere = format!("/productions/{}/trail/witnesses", Uuid::now_v7());
    assert_ne!(world.call("GET", &elsewhere).send().status, 200);
}
