//! A gag from its first plan to the packet, as a phone and a desk would go about it.

use serde_json::{Value, json};

use crate::support::{World, text_of};

#[test]
fn a_plan_is_revised_from_the_revision_in_hand_and_never_merged() {
    let world = World::new();
    let (gag, page) = world.gag("G07");
    let path = format!("/gags/{gag}/plans");
    let read = world.call("GET", &format!("/gags/{gag}")).send();
    assert_eq!(read.header("etag"), "\"1\"");
    let mut facets = page["plan"]["facets"].clone();
    facets["camera"]["notes"] = json!("low angle");
    let revise = |facets: &Value, revision: &str| {
        let body = json!({ "technique": "high-fall", "facets": facets, "note": "camera moved" });
        let call = world.call("POST", &path).once().json(&body);
        if revision.is_empty() {
            call.send()
        } else {
            call.header("if-match", revision).send()
        }
    };
    revise(&facets, "").refused(428, "precondition_required");
    revise(&facets, "1").refused(422, "invalid_input");
    revise(&facets, "*").refused(422, "invalid_input");
    let size = world.trail_size();
    let second = revise(&facets, "\"1\"");
    assert_eq!(
        second.header("location"),
        format!("/api/v1/gags/{gag}/plans/2")
    );
    let second = second.expect(201);
    assert_eq!(second["plan"]["revision"], 2);
    assert_eq!(second["history"][0]["changed"], json!(["camera"]));
    assert_eq!(world.trail_size(), size + 1);

    // Somebody else still has revision 1 in hand and changes the medical cover.
    let mut theirs = page["plan"]["facets"].clone();
    theirs["medical"]["hospital"] = json!("Nearest with a burns unit");
    let problem = revise(&theirs, "\"1\"").refused(409, "stale_plan");
    assert_eq!(problem["expected"], 1);
    assert_eq!(problem["current"]["revision"], 2);
    assert_eq!(problem["changed_theirs"], json!(["camera"]));
    assert_eq!(problem["changed_yours"], json!(["medical"]));
    assert_eq!(world.trail_size(), size + 1);

    let first = world.call("GET", &format!("{path}/1")).send().expect(200);
    assert_eq!(first["facets"]["camera"]["notes"], "");
}

#[test]
fn a_gag_is_listed_matched_and_printed() {
    let world = World::new();
    world.person("P02", "Zuzana Ďurišová", "zuzana@example.test");
    let (gag, page) = world.gag("G07");
    // Who qualifies depends on the day, so a plan without one can't be matched.
    let slot = page["plan"]["facets"]["cast"]["slots"][0]["id"]
        .as_str()
        .unwrap()
        .to_owned();
    let matching = format!("/gags/{gag}/matches?slot={slot}");
    world.call("GET", &matching).send().refused(409, "conflict");
    let mut facets = page["plan"]["facets"].clone();
    facets["setting"]["day"] = json!("2027-03-04");
    world
        .call("POST", &format!("/gags/{gag}/plans"))
        .once()
        .header("if-match", "\"1\"")
        .json(&json!({ "technique": "high-fall", "facets": facets, "note": "a day" }))
        .send()
        .expect(201);
    let list = world.call("GET", &world.at("/gags")).send().expect(200);
    assert_eq!(list["items"][0]["code"], "G07");
    assert_ne!(list["items"][0]["state"], "cleared");
    let matches = world.call("GET", &matching).send().expect(200);
    assert_eq!(matches["items"][0]["person"]["name"], "Zuzana Ďurišová");
    world.call("GET", &world.at("/today")).send().expect(200);
    for paper in ["", "?paper=letter"] {
        let packet = world
            .call("GET", &format!("/gags/{gag}/packet{paper}"))
            .send();
        assert_eq!(packet.status, 200, "{}", packet.text());
        assert_eq!(packet.header("content-type"), "application/pdf");
        assert!(
            packet
                .header("content-disposition")
                .contains("G07-revision-2.pdf")
        );
        assert!(packet.body.starts_with(b"%PDF-"));
    }
}

#[test]
fn bodies_and_health_are_told_to_those_who_may_read_them_alone() {
    let world = World::new();
    let performer = world.person("P02", "Zuzana Ďurišová", "zuzana@example.test");
    let path = world.at(&format!("/people/{performer}"));
    let mut known = world.call("GET", &path).send().expect(200)["person"].clone();
    known["medically_clear_until"] = json!("2027-09-30");
    known["born"] = json!("1991-04-02");
    known["measurements"] = json!({
        "mass": { "value": 87.3, "on": "2027-03-01" },
        "chest": { "value": 1.137, "on": "2027-03-01" },
    });
    world
        .call("PUT", &path)
        .once()
        .header("if-match", "\"1\"")
        .json(&known)
        .send()
        .expect(200);
    let (gag, page) = world.gag("G07");
    let mut facets = page["plan"]["facets"].clone();
    facets["setting"]["day"] = json!("2027-03-04");
    let slot = &mut facets["cast"]["slots"][0];
    slot["person"] = json!(performer);
    slot["requirements"] = json!([
        { "kind": "medical_clearance" },
        { "kind": "measurement", "of": "chest", "target": 1.0, "tolerance": 0.02 },
        { "kind": "kitted_mass", "min": 50.0, "max": 80.0 },
        { "kind": "age", "min": 18, "max": 30 },
    ]);
    let slot = slot["id"].as_str().unwrap().to_owned();
    world
        .call("POST", &format!("/gags/{gag}/plans"))
        .once()
        .header("if-match", "\"1\"")
        .json(&json!({ "technique": "high-fall", "facets": facets, "note": "cast" }))
        .send()
        .expect(201);
    let (_, observer) = world.member("P03", "Ilse Haraldsen", "ilse@example.test", &["observer"]);
    let get = |token: &str, what: &str| {
        let path = format!("/gags/{gag}/{what}");
        let path = path.trim_end_matches('/');
        let got = world.server.call("GET", path).token(token).send();
        assert_eq!(got.status, 200, "{}", got.text());
        got
    };
    let personal = ["Medicallyclear", "87.3", "113.7", "35yearsold"];
    let whole = text_of(&get(&world.coordinator, "packet").body);
    let cut = text_of(&get(&observer, "packet").body);
    for words in personal {
        assert!(
            whole.contains(words),
            "the coordinator's packet lacks {words}"
        );
        assert!(!cut.contains(words), "the observer's packet has {words}");
    }
    assert!(
        cut.contains("ZuzanaĎurišová") && cut.contains("fit,asthemedicsays"),
        "{cut}"
    );

    let matches = format!("matches?slot={slot}");
    let items = |token: &str| get(token, &matches).json()["items"].clone();
    let (whole, cut) = (items(&world.coordinator), items(&observer));
    let squeezed = |items: &Value| items.to_string().replace(' ', "");
    for words in personal {
        assert!(squeezed(&whole).contains(words), "{words}: {whole}");
        assert!(!squeezed(&cut).contains(words), "{words}: {cut}");
    }
    assert_eq!(whole[0]["verdict"]["outcome"], cut[0]["verdict"]["outcome"]);
    // What is written down with a take is told to everyone, so it names none of it either.
    let page = get(&world.coordinator, "").json();
    let day = gagwright::clock::now().to_string()[..10].to_owned();
    let go = json!({
        "id": uuid::Uuid::now_v7(), "number": 1, "at": gagwright::clock::now(), "revision": 2,
        "plan_digest": page["clearance"]["plan_digest"], "day": day, "place": "",
    });
    let path = format!("/gags/{gag}/takes");
    let call = world.call("POST", &path).once();
    let take = call.json(&go).send().expect(201)["judged"].clone();
    assert_eq!(take["stood"], false);
    assert!(take.to_string().contains("reason withheld"), "{take}");
    assert!(squeezed(&page["clearance"]["go"]).contains(personal[3]));
    for words in personal {
        assert!(!squeezed(&take).contains(words), "{words}: {take}");
    }
    let export = world.server.call("GET", &world.at("/trail/export"));
    let export = export.token(&observer).send();
    assert_eq!(export.status, 200, "{}", export.text());
    for name in ["Zuzana", "zuzana@example.test", "1991-04-02", "2027-09-30"] {
        assert!(!export.text().contains(name), "the export has {name}");
    }
}

#[test]
fn two_gags_do_not_share_a_code() {
    let world = World::new();
    world.gag("G07");
    let size = world.trail_size();
    let again = json!({
        "id": uuid::Uuid::now_v7(), "code": "G07", "title": "Another", "technique": "high-fall",
    });
    world
        .call("POST", &world.at("/gags"))
        .once()
        .json(&again)
        .send()
        .refused(409, "conflict");
    assert_eq!(world.trail_size(), size);
}

#[test]
fn the_trail_proves_itself() {
    let world = World::new();
    let (gag, _) = world.gag("G07");
    let page = world.call("GET", &world.at("/trail")).send().expect(200);
    let size = page["size"].as_u64().unwrap();
    assert_eq!(size, world.trail_size());
    let newest = &page["items"][0];
    assert_eq!(newest["entry"]["gag"], gag.to_string());

    let hash = |value: &Value| gagwright_trail::Hash::from_hex(value.as_str().unwrap()).unwrap();
    let path = |value: &Value| {
        value
            .as_array()
            .unwrap()
            .iter()
            .map(hash)
            .collect::<Vec<_>>()
    };
    let leaf = size - 1;
    let proof = world
        .call("GET", &world.at(&format!("/trail/proof?leaf={leaf}")))
        .send()
        .expect(200);
    gagwright_trail::verify_inclusion(
        &hash(&newest["hash"]),
        leaf,
        size,
        &path(&proof["path"]),
        &hash(&page["root"]),
    )
    .unwrap();
    let growth = world
        .call(
            "GET",
            &world.at(&format!("/trail/consistency?from=1&to={size}")),
        )
        .send();
    let first = world
        .call("GET", &world.at("/trail?before=1"))
        .send()
        .expect(200);
    gagwright_trail::verify_consistency(
        1,
        size,
        &hash(&first["items"][0]["hash"]),
        &hash(&page["root"]),
        &path(&growth.expect(200)["path"]),
    )
    .unwrap();

    let note = world.call("GET", &world.at("/trail/checkpoint")).send();
    assert!(note.header("content-type").starts_with("text/plain"));
    assert!(
        note.text()
            .starts_with(&format!("gagwright/{}\n{size}\n", world.production))
    );
    let export = world.call("GET", &world.at("/trail/export")).send();
    assert_eq!(export.header("content-type"), "application/jsonl");
    assert!(export.text().lines().count() as u64 > size);

    let feed = world
        .call("GET", &world.at("/changes?after=1"))
        .send()
        .expect(200);
    assert_eq!(feed["size"], size);
    assert_eq!(feed["items"].as_array().unwrap().len() as u64, size - 1);
    assert_eq!(feed["items"][0]["index"], 1);
}
