//! The day over HTTP: the register, a briefing, a mark, a go with its take and the medic's look, a stand-down
//! and a near miss, each recorded once and judged on the gag's own page.

use gagwright_clearance::day_mark::{self, DayStatement};
use serde_json::{Value, json};
use uuid::Uuid;

use crate::{
    signing::Phone,
    support::{Got, World, text_of},
};

fn now() -> Value {
    json!(gagwright::clock::now())
}

fn today() -> String {
    gagwright_clearance::words::day_of(gagwright::clock::now()).to_string()
}

fn post(world: &World, token: &str, path: &str, body: &Value) -> Got {
    let call = world.server.call("POST", path).token(token).once();
    call.json(body).send()
}

fn page(world: &World, gag: Uuid) -> Value {
    let path = format!("/gags/{gag}");
    world.call("GET", &path).send().expect(200)
}

/// A gag with a harness, and its performer.
fn scene(world: &World) -> (Uuid, Uuid) {
    let (gag, page) = world.gag("G07");
    let performer = world.person("P21", "Iolana Kealoha", "iolana@example.test");
    let mut facets = page["plan"]["facets"].clone();
    facets["setting"]["location"] = json!("Silo yard");
    facets["cast"]["slots"] = json!([{
        "id": Uuid::now_v7(), "name": "Double for Ines", "requirements": [], "person": performer,
        "kit_mass": 0.0,
    }]);
    facets["rigging"]["equipment"] = json!([{ "name": "harness", "serial": "H-12" }]);
    let body = json!({ "technique": "high-fall", "facets": facets, "note": "cast" });
    let path = format!("/gags/{gag}/plans");
    let call = world.call("POST", &path).once().header("if-match", "\"1\"");
    call.json(&body).send().expect(201);
    (gag, performer)
}

fn has(blocks: &Value, kind: &str) -> bool {
    let blocks = blocks.as_array().unwrap();
    blocks.iter().any(|one| one["kind"] == kind)
}

#[test]
fn equipment_is_registered_set_aside_and_taken_back() {
    let world = World::new();
    let (gag, _) = scene(&world);
    let item = Uuid::now_v7();
    let put =
        json!({ "id": item, "serial": "H-12", "name": "harness", "inspected_until": "2031-01-31" });
    let path = world.at("/equipment");
    let kept = post(&world, &world.coordinator, &path, &put).expect(201);
    assert_eq!(kept["shock_loads"], json!([]));
    let twin = json!({ "id": Uuid::now_v7(), "serial": "H-12", "name": "another" });
    post(&world, &world.coordinator, &path, &twin).refused(409, "conflict");

    let shock = json!({ "id": Uuid::now_v7(), "what": "the line snatched", "at": now() });
    let at = |what: &str| world.at(&format!("/equipment/{item}/{what}"));
    let kept = post(&world, &world.coordinator, &at("shock-loads"), &shock).expect(201);
    assert_eq!(kept["quarantined"]["reason"], "it took a shock load");
    let one = &page(&world, gag)["clearance"]["day"]["equipment"][0];
    assert_eq!(one["state"], "quarantined");
    let aside = json!({ "reason": "frayed", "at": now() });
    // What another saw counts as well, and the first is told.
    let twice = post(&world, &world.coordinator, &at("quarantine"), &aside).expect(201);
    assert_eq!(twice["quarantined"]["reason"], "it took a shock load");
    assert_eq!(twice["quarantined"]["again_at"], aside["at"]);

    // What befell a piece is not left behind under another serial.
    let renamed = json!({ "id": item, "serial": "H-12 old", "name": "harness", "inspected_until": "2031-01-31" });
    post(&world, &world.coordinator, &path, &renamed).refused(409, "conflict");
    let back =
        |at: Value| json!({ "found": "no damage", "inspected_until": "2031-02-28", "at": at });
    let (early, back) = (back(json!("2026-01-01T08:00:00Z")), back(now()));
    post(&world, &world.coordinator, &at("release"), &back).refused(403, "forbidden");
    let (_, rigger) = world.member("C04", "Žofie Marková", "zofie@example.test", &["rigging"]);
    // One told by a clock that is ahead might seem to have seen what came after it.
    let mut ahead = back.clone();
    ahead["at"] = json!(gagwright::clock::now() + jiff::SignedDuration::from_hours(2));
    let problem = post(&world, &rigger, &at("release"), &ahead).refused(422, "invalid_input");
    assert_eq!(problem["errors"][0]["pointer"], "/at");
    // An inspection that was made before the shock load settles nothing of it.
    post(&world, &rigger, &at("release"), &early).refused(409, "conflict");
    let kept = post(&world, &rigger, &at("release"), &back).expect(201);
    assert_eq!(kept["quarantined"], Value::Null);
    assert_eq!(
        page(&world, gag)["clearance"]["day"]["equipment"][0]["state"],
        "ready"
    );
    let book = world.call("GET", &world.at("/day")).send().expect(200);
    assert_eq!(
        book["equipment"][0]["shock_loads"][0]["what"],
        "the line snatched"
    );
}

#[test]
fn a_day_is_briefed_signed_and_its_go_is_recorded_with_what_spoke_against_it() {
    let world = World::new();
    let (gag, performer) = scene(&world);
    let briefing = json!({
        "id": Uuid::now_v7(), "day": today(), "place": "Silo yard", "revision": 2, "at": now(),
        "attended": [performer], "points": "the abort word",
    });
    let path = format!("/gags/{gag}/briefings");
    post(&world, &world.coordinator, &path, &briefing).expect(201);
    let judged = page(&world, gag)["clearance"].clone();
    assert_eq!(judged["day"]["briefing"]["missed"], json!([]));
    assert_eq!(judged["day"]["day"], today());

    let medic = world.medic();
    let phone = Phone::register(&world, &medic, 9);
    let path = format!("/gags/{gag}/day-signoff-draft?role=medic");
    let draft = world
        .server
        .call("GET", &path)
        .token(&medic)
        .send()
        .expect(200);
    assert_eq!(draft["place"], "Silo yard");
    let mut statement: DayStatement = serde_json::from_value(draft["statement"].clone()).unwrap();
    statement.id.0 = Uuid::now_v7();
    statement.device.0 = phone.device;
    let jws = day_mark::sign(&statement, &phone.key).unwrap();
    let path = format!("/gags/{gag}/day-signoffs");
    let taken = post(&world, &medic, &path, &json!({ "jws": jws })).expect(201);
    assert_eq!(taken["state"], "standing", "{taken}");
    post(&world, &world.coordinator, &path, &json!({ "jws": jws })).expect(200);

    let take = Uuid::now_v7();
    let digest = page(&world, gag)["clearance"]["plan_digest"].clone();
    let go = json!({
        "id": take, "number": 1, "at": now(), "revision": 2, "plan_digest": digest, "day": today(),
        "place": "Silo yard",
    });
    let path = format!("/gags/{gag}/takes");
    post(&world, &medic, &path, &go).refused(403, "forbidden");
    let kept = post(&world, &world.coordinator, &path, &go).expect(201);
    // Hardly anybody has signed: it is written down, with why it did not stand.
    assert_eq!(kept["judged"]["stood"], false);
    assert!(!kept["judged"]["why_not"].as_array().unwrap().is_empty());
    assert_eq!(page(&world, gag)["clearance"]["go"]["open"]["number"], 1);

    let end = json!({ "result": "good", "note": "clean", "at": now() });
    let path = format!("/gags/{gag}/takes/{take}/outcome");
    post(&world, &world.coordinator, &path, &end).expect(201);
    post(&world, &world.coordinator, &path, &end).refused(409, "conflict");
    assert!(has(
        &page(&world, gag)["clearance"]["go"]["why_not"],
        "look"
    ));

    let look = json!({
        "id": Uuid::now_v7(), "take": take, "person": performer, "day": today(),
        "fitness": "fit", "head_impact": true, "at": now(),
    });
    let path = format!("/gags/{gag}/looks");
    post(&world, &world.coordinator, &path, &look).refused(403, "forbidden");
    post(&world, &medic, &path, &look).expect(201);
    let judged = page(&world, gag)["clearance"].clone();
    assert!(has(&judged["go"]["why_not"], "stood_down"));
    let marks = judged["day"]["marks"].as_array().unwrap();
    let own = marks.iter().find(|one| one["role"] == "medic").unwrap();
    assert_eq!(own["state"], "lapsed");

    // Whose head was struck is told to those who read medical data; the others, until when they are down.
    let (_, observer) = world.member("C30", "Nanami Aoki", "nanami@example.test", &["observer"]);
    let read = |token: &str| {
        let path = format!("/gags/{gag}");
        world
            .server
            .call("GET", &path)
            .token(token)
            .send()
            .expect(200)
    };
    let (told, kept) = (read(&medic), read(&observer));
    assert_eq!(told["case"]["day"]["looks"][0]["head_impact"], true);
    assert_eq!(kept["case"]["day"]["looks"][0]["head_impact"], false);
    assert_eq!(
        kept["clearance"]["go"]["may"],
        told["clearance"]["go"]["may"]
    );
    assert_eq!(kept["clearance"]["day"], told["clearance"]["day"]);
    for told in ["head impact", "head_impact"] {
        assert!(!kept["clearance"].to_string().contains(told));
    }

    // What was found in a body stands nowhere in the trail in the clear.
    let trail = world
        .call("GET", &world.at("/trail?limit=1"))
        .send()
        .expect(200);
    assert!(
        !trail["items"][0]["entry"]["facts"]
            .to_string()
            .contains("fit"),
        "{trail}"
    );
}

#[test]
fn a_debrief_is_kept_once_and_says_what_was_used() {
    let world = World::new();
    let (gag, performer) = scene(&world);
    let path = format!("/gags/{gag}/debriefs");
    let good = json!({
        "id": Uuid::now_v7(), "day": today(), "place": "Silo yard", "revision": 2, "at": now(),
        "led_by": performer, "attended": [performer], "differently": "The landing was late",
        "used": [{ "person": performer, "skills": [] }],
    });
    let with = |changes: Value| {
        let mut body = good.clone();
        for (name, value) in changes.as_object().unwrap() {
            body[name] = value.clone();
        }
        post(&world, &world.coordinator, &path, &body).refused(422, "invalid_input")
    };
    let pointers = |problem: Value| -> Vec<String> {
        let errors = problem["errors"].as_array().unwrap().iter();
        errors
            .map(|one| {
                assert!(!one["fix"].as_str().unwrap().is_empty());
                one["pointer"].as_str().unwrap().to_owned()
            })
            .collect()
    };
    let stranger = Uuid::now_v7();
    let wrong = with(json!({
        "place": " ", "revision": 9, "differently": "", "led_by": stranger, "day": "2999-01-01",
        "used": [{ "person": performer, "skills": [] }, { "person": performer, "skills": [] }],
    }));
    let all = [
        "/place",
        "/as_planned",
        "/day",
        "/revision",
        "/led_by",
        "/used/1/person",
    ];
    assert_eq!(pointers(wrong), all);
    // Nobody is said to have used what their slot does not ask for.
    let wrong = with(json!({ "used": [{ "person": performer, "skills": ["high_fall"] }] }));
    assert_eq!(pointers(wrong), ["/used/0/skills/0"]);

    let (_, observer) = world.member("C30", "Nanami Aoki", "nanami@example.test", &["observer"]);
    post(&world, &observer, &path, &good).refused(403, "forbidden");
    let kept = post(&world, &world.coordinator, &path, &good).expect(201);
    assert_eq!(kept["led_by"], json!(performer));
    // The same one sent again counts once; another under its id is refused.
    let again = post(&world, &world.coordinator, &path, &good).expect(200);
    assert_eq!(again, kept);
    let mut other = good.clone();
    other["next_time"] = json!("A second bag");
    post(&world, &world.coordinator, &path, &other).refused(409, "conflict");
    let page = page(&world, gag);
    assert_eq!(page["case"]["day"]["debriefs"], json!([kept]));
    assert!(page["names"][performer.to_string()].is_string());

    // What was said stands in the trail beside its leaf, and not in the clear.
    let path = world.at("/trail?limit=1");
    let trail = world.call("GET", &path).send().expect(200);
    assert_eq!(trail["items"][0]["entry"]["kind"], "gag.debriefed");
    assert!(!trail["items"][0]["entry"].to_string().contains("landing"));
    let leaf = &trail["items"][0]["entry"]["index"];
    let path = world.at(&format!("/gags/{gag}/at?leaf={leaf}"));
    let then = world.call("GET", &path).send().expect(200);
    assert_eq!(then["debriefs"], json!([kept]));

    // The packet has it for whoever reads on paper.
    let packet = world.call("GET", &format!("/gags/{gag}/packet")).send();
    let text = text_of(&packet.body);
    for printed in [
        "Debriefs",
        "onrevision2",
        "IolanaKealoha",
        "Thelandingwaslate",
        "noskillthatwasaskedfor",
    ] {
        assert!(text.contains(printed), "{printed} is not in the packet");
    }
}

#[test]
fn what_a_clock_that_is_ahead_tells_is_taken_as_of_its_arrival() {
    let world = World::new();
    let (gag, performer) = scene(&world);
    let begun = gagwright::clock::now();
    let ahead = json!(begun + jiff::SignedDuration::from_hours(2));
    let shot = json!({
        "technique": "high-fall", "inputs": { "drop_height": { "value": 9.0 }, "performer_mass": { "value": 80.0 } },
        "measured": { "impact_speed": 12.0 }, "load": "bag",
    });
    let logged = [
        ("test-shots", "shot_at", "shot_at", shot),
        (
            "briefings",
            "at",
            "at",
            json!({ "day": today(), "place": "Silo yard", "revision": 2, "attended": [performer] }),
        ),
        (
            "debriefs",
            "at",
            "at",
            json!({
                "day": today(), "place": "Silo yard", "revision": 2, "led_by": performer,
                "attended": [performer], "as_planned": "All of it", "used": [],
            }),
        ),
    ];
    for (path, field, fact, mut body) in logged {
        body["id"] = json!(Uuid::now_v7());
        body[field] = ahead.clone();
        let path = format!("/gags/{gag}/{path}");
        let kept = post(&world, &world.coordinator, &path, &body).expect(201);
        let at: jiff::Timestamp = kept[field].as_str().unwrap().parse().unwrap();
        assert!(begun <= at && at <= gagwright::clock::now(), "{path}: {at}");
        // The trail has both: when it is taken to have been, and how wrong the clock was.
        let trail = world
            .call("GET", &world.at("/trail?limit=1"))
            .send()
            .expect(200);
        let facts = &trail["items"][0]["entry"]["facts"];
        assert_eq!(facts[fact], kept[field], "{path}");
        let off = facts["told_ahead_s"].as_i64().unwrap();
        assert!((7190..=7200).contains(&off), "{path}: {off}");
        // A clock that is right leaves no such note.
        body["id"] = json!(Uuid::now_v7());
        body[field] = json!(begun);
        let kept = post(&world, &world.coordinator, &path, &body).expect(201);
        assert_eq!(kept[field], json!(begun), "{path}");
        let trail = world
            .call("GET", &world.at("/trail?limit=1"))
            .send()
            .expect(200);
        let facts = &trail["items"][0]["entry"]["facts"];
        assert_eq!(facts.get("told_ahead_s"), None, "{path}");
    }
    // A reading may clear something, and so it would hide a newer one: it is refused, and says why.
    let reading = json!({
        "id": Uuid::now_v7(), "kind": "wind", "value": 3.0, "place": "mast", "at": ahead,
    });
    let path = format!("/gags/{gag}/readings");
    let problem = post(&world, &world.coordinator, &path, &reading).refused(422, "invalid_input");
    assert_eq!(problem["errors"][0]["pointer"], "/at");
    assert!(
        problem["errors"][0]["fix"]
            .as_str()
            .unwrap()
            .contains("clock")
    );
    // Somebody who stands down is down from its arrival at the latest.
    let down = json!({ "id": Uuid::now_v7(), "person": performer, "from": ahead });
    let path = world.at("/stand-downs");
    let kept = post(&world, &world.coordinator, &path, &down).expect(201);
    let from: jiff::Timestamp = kept["from"].as_str().unwrap().parse().unwrap();
    assert!(from <= gagwright::clock::now(), "{from}");
    // Sent again it is still the same debrief.
    let debrief = json!({
        "id": Uuid::now_v7(), "day": today(), "place": "Silo yard", "revision": 2, "at": ahead,
        "led_by": performer, "attended": [performer], "as_planned": "All of it", "used": [],
    });
    let path = format!("/gags/{gag}/debriefs");
    let kept = post(&world, &world.coordinator, &path, &debrief).expect(201);
    let again = post(&world, &world.coordinator, &path, &debrief).expect(200);
    assert_eq!(again, kept);
}

#[test]
fn nothing_about_somebody_who_was_erased_comes_back_by_a_late_repeat() {
    let world = World::new();
    let (gag, performer) = scene(&world);
    let (_, medic) = world.member("C05", "Nadia Haddad", "nadia@example.test", &["medic"]);
    let (_, producer) = world.member("C40", "Reza Tavana", "reza@example.test", &["production"]);
    let look = json!({
        "id": Uuid::now_v7(), "person": performer, "day": today(), "fitness": "unfit", "head_impact": true,
        "at": now(),
    });
    let path = format!("/gags/{gag}/looks");
    let key = Uuid::now_v7();
    let send = |key: Uuid| {
        let call = world.server.call("POST", &path).token(&medic).key(key);
        call.json(&look).send()
    };
    let kept = send(key).expect(201);
    assert_eq!(send(key).expect(201), kept);

    let person = world.at(&format!("/people/{performer}"));
    let call = world.server.call("DELETE", &person).token(&producer).once();
    call.send().expect(200);
    // Neither the first answer to it nor the look itself is told or taken in again.
    for key in [key, Uuid::now_v7()] {
        let problem = send(key).refused(409, "conflict");
        assert!(
            problem["detail"].as_str().unwrap().contains("erased"),
            "{problem}"
        );
    }
    let debrief = json!({
        "id": Uuid::now_v7(), "day": today(), "place": "Silo yard", "revision": 2, "at": now(),
        "led_by": world.person, "attended": [], "as_planned": "All of it",
        "used": [{ "person": performer, "skills": [] }],
    });
    let path = format!("/gags/{gag}/debriefs");
    let problem = post(&world, &world.coordinator, &path, &debrief).refused(422, "invalid_input");
    assert_eq!(problem["errors"][0]["pointer"], "/used/0/person");
    assert!(
        problem["errors"][0]["problem"]
            .as_str()
            .unwrap()
            .contains("erased")
    );
}

#[test]
fn a_mark_for_the_day_on_paper_is_witnessed_and_its_photograph_kept() {
    let world = World::new();
    let (gag, _) = scene(&world);
    let (signer, _) = world.member("C04", "Žofie Marková", "zofie@example.test", &["rigging"]);
    let witness = Phone::register(&world, &world.coordinator, 3);
    let path = format!("/gags/{gag}/day-signoff-draft?role=rigging&signer={signer}");
    let draft = world.call("GET", &path).send().expect(200);
    let mut statement: DayStatement = serde_json::from_value(draft["statement"].clone()).unwrap();
    // A PNG by its first bytes; what else is in it nobody decodes.
    let photograph = b"\x89PNG\r\n\x1a\nthe page of the day".to_vec();
    statement.kind = DayStatement::INK.to_owned();
    statement.id.0 = Uuid::now_v7();
    statement.device.0 = witness.device;
    statement.decision = gagwright_clearance::Decision::Decline;
    statement.ink = Some(gagwright_clearance::Ink {
        witness: gagwright_casting::PersonId(world.person),
        photograph: gagwright_trail::Hash::of(&photograph).to_hex(),
    });
    let jws = day_mark::sign(&statement, &witness.key).unwrap();
    let path = format!("/gags/{gag}/day-signoffs");
    let taken = post(&world, &world.coordinator, &path, &json!({ "jws": jws })).expect(201);
    assert_eq!(taken["state"], "declined", "{taken}");
    assert_eq!(taken["signer"], json!(signer));
    assert_eq!(taken["witness"], json!(world.person));

    let place = format!("/signoffs/{}/photograph", statement.id);
    let send = |bytes: &[u8]| {
        let call = world.call("PUT", &place).once();
        call.body("image/png", bytes).send()
    };
    send(b"\x89PNG\r\n\x1a\nanother").refused(422, "invalid_input");
    assert_eq!(send(&photograph).status, 204);
    let leaves = world.trail_size();
    assert_eq!(send(&photograph).status, 204);
    assert_eq!(world.trail_size(), leaves);
    assert_eq!(world.call("GET", &place).send().body, photograph);
    let (_, camera) = world.member("P06", "Eun-ji Baek", "eun@example.test", &["camera"]);
    let other = world.server.call("GET", &place).token(&camera).send();
    other.refused(403, "forbidden");

    // It shows their name and hand, so it goes when they are erased; the mark and the trail stay as they are.
    let (_, producer) = world.member("C40", "Reza Tavana", "reza@example.test", &["production"]);
    let entries = || {
        let export = world.call("GET", &world.at("/trail/export")).send();
        let leaves = gagwright_trail::export::read_leaves(export.text()).unwrap();
        leaves
            .into_iter()
            .map(|leaf| leaf.entry)
            .collect::<Vec<_>>()
    };
    let before = entries();
    let path = world.at(&format!("/people/{signer}"));
    let call = world.server.call("DELETE", &path).token(&producer).once();
    call.send().expect(200);
    world.call("GET", &place).send().refused(404, "unknown_id");
    assert_eq!(entries()[..before.len()], before);
    let marks = page(&world, gag)["case"]["day"]["signoffs"].clone();
    assert_eq!(marks[0]["jws"], json!(jws));
    // Nor is it taken in again.
    let problem = send(&photograph).refused(409, "conflict");
    assert!(
        problem["detail"].as_str().unwrap().contains("erased"),
        "{problem}"
    );
}

#[test]
fn anyone_stands_themselves_down_and_a_near_miss_freezes_until_it_is_closed() {
    let world = World::new();
    let (gag, performer) = scene(&world);
    let down = Uuid::now_v7();
    let body = json!({ "id": down, "person": performer, "from": now() });
    let (_, observer) = world.member("C30", "Nanami Aoki", "nanami@example.test", &["observer"]);
    let path = world.at("/stand-downs");
    post(&world, &observer, &path, &body).refused(403, "forbidden");
    post(&world, &world.coordinator, &path, &body).expect(201);
    assert!(has(
        &page(&world, gag)["clearance"]["day"]["blocks"],
        "stood_down"
    ));
    let path = world.at(&format!("/stand-downs/{down}/return"));
    world.call("POST", &path).once().send().expect(201);
    assert!(!has(
        &page(&world, gag)["clearance"]["day"]["blocks"],
        "stood_down"
    ));

    let incident = Uuid::now_v7();
    let body = json!({ "id": incident, "kind": "near_miss", "gag": gag, "at": now(), "what": "a shackle fell" });
    post(&world, &observer, &world.at("/incidents"), &body).expect(201);
    let judged = page(&world, gag)["clearance"].clone();
    assert_eq!(judged["state"], "held");
    assert_eq!(judged["blocks"][0]["kind"], "incident");
    let at = |what: &str| world.at(&format!("/incidents/{incident}/{what}"));
    for who in ["coordinator", "first_ad", "production"] {
        let told = json!({ "who": who, "at": now() });
        post(&world, &world.coordinator, &at("told"), &told).expect(201);
    }
    let closing = |role: &str| json!({ "role": role, "action": "all shackles moused" });
    post(
        &world,
        &world.coordinator,
        &at("closings"),
        &closing("coordinator"),
    )
    .expect(201);
    let (_, producer) = world.member(
        "C15",
        "Kwabena Sarpong",
        "kwabena@example.test",
        &["production"],
    );
    let closed = post(&world, &producer, &at("closings"), &closing("production")).expect(201);
    assert!(closed["closed_at"].is_string());
    assert!(!has(&page(&world, gag)["clearance"]["blocks"], "incident"));
}

#[test]
fn a_second_tap_on_the_hold_code_is_told_that_it_is_held() {
    let world = World::new();
    let (gag, _) = scene(&world);
    let production = world.call("GET", &world.at("")).send().expect(200);
    let code = production["hold_code"].as_str().unwrap().to_owned();
    let hold = |reason: &str| {
        let body = json!({ "id": Uuid::now_v7(), "gag_code": "G07", "reason": reason });
        let path = format!("/hold-codes/{code}/holds");
        world.server.call("POST", &path).once().json(&body).send()
    };
    let first = hold("").expect(201);
    let again = hold("").expect(200);
    assert_eq!(first, again);
    // Somebody who says why is always written down.
    let told = hold("the wind").expect(201);
    assert_ne!(told["id"], first["id"]);
    let judged = page(&world, gag)["clearance"].clone();
    let holds = judged["blocks"].as_array().unwrap().iter();
    assert_eq!(holds.filter(|one| one["kind"] == "hold").count(), 2);
}
