//! What one phone hands to another: done once as its author, whoever brings it and in whatever order.

use gagwright::{
    commands::{Founder, NewProduction, productions},
    entropy,
};
use gagwright_casting::{PersonId, ProductionId};
use gagwright_clearance::{
    DeviceId, Policy, Role,
    handed::{self, HandedRequest},
    signoff::PublicKey,
};
use jiff::SignedDuration;
use serde_json::{Value, json};
use uuid::Uuid;

use crate::{
    signing::Phone,
    support::{Got, World},
};

/// The author's phone, the author, and what they ask.
struct Author<'a> {
    phone: Phone<'a>,
    person: Uuid,
}

impl<'a> Author<'a> {
    fn medic(world: &'a World) -> Self {
        let (person, token) = world.member(
            "P02",
            "Mirembe Achterberg",
            "mirembe@example.test",
            &["medic"],
        );
        Self {
            phone: Phone::register(world, &token, 7),
            person,
        }
    }

    fn coordinator(world: &'a World) -> Self {
        Self {
            phone: Phone::register(world, &world.coordinator, 9),
            person: world.person,
        }
    }

    fn asks(&self, path: String, body: Value) -> HandedRequest {
        HandedRequest {
            production: ProductionId(self.phone.world.production),
            person: PersonId(self.person),
            device: DeviceId(self.phone.device),
            made_at: gagwright::clock::now(),
            key: Uuid::now_v7(),
            method: "POST".into(),
            path,
            if_match: None,
            body,
        }
    }

    fn reading(&self, gag: Uuid) -> HandedRequest {
        let body = json!({
            "value": 4.50, "kind": "wind", "id": Uuid::now_v7(), "at": gagwright::clock::now(), "place": "",
        });
        self.asks(format!("/gags/{gag}/readings"), body)
    }

    fn jws(&self, request: &HandedRequest) -> String {
        handed::sign(request, &self.phone.key).unwrap()
    }

    /// The same request as the author's own phone sends it, keys in the order and spacing it likes.
    fn sends(&self, request: &HandedRequest) -> Got {
        let server = &self.phone.world.server;
        let mut call = server
            .call("POST", &request.path)
            .token(&self.phone.token)
            .key(request.key);
        if let Some(tag) = &request.if_match {
            call = call.header("if-match", tag);
        }
        let spaced = serde_json::to_string_pretty(&request.body).unwrap();
        call.body("application/json", spaced).send()
    }
}

fn carry(world: &World, token: &str, jws: &str) -> Got {
    let call = world.server.call("POST", "/handed").token(token);
    call.json(&json!({ "jws": jws })).send()
}

fn last_leaf(world: &World) -> Value {
    let page = world.call("GET", &world.at("/trail?limit=1")).send();
    page.expect(200)["items"][0].clone()
}

#[test]
fn the_authors_own_first_and_then_carried_is_one() {
    let world = World::new();
    let (gag, _) = world.gag("G07");
    let author = Author::medic(&world);
    let request = author.reading(gag);
    let own = author.sends(&request);
    assert_eq!(own.status, 201, "{}", own.text());
    let size = world.trail_size();
    let carried = carry(&world, &world.coordinator, &author.jws(&request));
    assert_eq!(carried.header("idempotency-replayed"), "true");
    assert_eq!((carried.status, &carried.body), (201, &own.body));
    assert_eq!(world.trail_size(), size);
    let leaf = last_leaf(&world);
    assert_eq!(leaf["entry"]["facts"].get("carried_by"), None);
}

#[test]
fn carried_first_and_then_the_authors_own_is_one_and_the_trail_names_both() {
    let world = World::new();
    let (gag, _) = world.gag("G07");
    let author = Author::medic(&world);
    let (_, other) = world.member("P03", "Oke Larsen", "oke@example.test", &["observer"]);
    let request = author.reading(gag);
    let jws = author.jws(&request);
    let size = world.trail_size();
    let carried = carry(&world, &world.coordinator, &jws);
    assert_eq!(carried.status, 201, "{}", carried.text());
    assert_eq!(carried.header("idempotency-replayed"), "");
    assert_eq!(carried.json()["by"], author.person.to_string());
    let leaf = last_leaf(&world);
    assert_eq!(leaf["entry"]["actor"], author.person.to_string());
    assert_eq!(
        leaf["entry"]["facts"]["carried_by"],
        world.person.to_string()
    );
    assert_eq!(
        leaf["sentence"],
        "Mirembe Achterberg logged a wind reading for G07; carried here by Thandeka Mbeki"
    );
    // The author's own phone, and a second carrier who may log nothing themselves.
    let own = author.sends(&request);
    let second = carry(&world, &other, &jws);
    for again in [&own, &second] {
        assert_eq!(again.header("idempotency-replayed"), "true");
        assert_eq!((again.status, &again.body), (201, &carried.body));
    }
    assert_eq!(world.trail_size(), size + 1);
    // Whoever brings their own is no carrier.
    let mine = author.reading(gag);
    carry(&world, &author.phone.token, &author.jws(&mine)).expect(201);
    assert_eq!(last_leaf(&world)["entry"]["facts"].get("carried_by"), None);
}

#[test]
fn two_carriers_at_once_do_it_once() {
    let world = World::new();
    let author = Author::medic(&world);
    let (_, other) = world.member("P03", "Oke Larsen", "oke@example.test", &["rigging"]);
    let request = author.asks(
        world.at("/holds"),
        json!({ "id": Uuid::now_v7(), "reason": "wind" }),
    );
    let jws = author.jws(&request);
    let size = world.trail_size();
    let bodies: Vec<Value> = std::thread::scope(|scope| {
        let tokens = [&world.coordinator, &other, &world.coordinator, &other];
        let phones = tokens.map(|token| scope.spawn(|| carry(&world, token, &jws).expect(201)));
        phones.map(|phone| phone.join().unwrap()).into()
    });
    assert!(bodies.iter().all(|body| *body == bodies[0]));
    assert_eq!(bodies[0]["raised_by"], author.person.to_string());
    assert_eq!(world.trail_size(), size + 1);
}

#[test]
fn stops_and_the_day_travel_too_and_the_medics_looks_do_not() {
    let world = World::new();
    let (gag, page) = world.gag("G07");
    let author = Author::coordinator(&world);
    let (_, carrier) = world.member("P03", "Oke Larsen", "oke@example.test", &["observer"]);
    let now = gagwright::clock::now;
    let bring = |path: String, body: Value| {
        let request = author.asks(path, body);
        let jws = author.jws(&request);
        let size = world.trail_size();
        let done = carry(&world, &carrier, &jws).expect(201);
        assert_eq!(carry(&world, &carrier, &jws).expect(201), done);
        assert_eq!(world.trail_size(), size + 1, "once, whoever brings it");
        assert_eq!(
            last_leaf(&world)["entry"]["actor"],
            author.person.to_string()
        );
        done
    };
    let day = now().to_string()[..10].to_owned();
    let incident = bring(
        world.at("/incidents"),
        json!({ "id": Uuid::now_v7(), "kind": "near_miss", "gag": gag, "at": now(), "what": "a shackle fell" }),
    );
    assert_eq!(incident["by"], author.person.to_string());
    let down = bring(
        world.at("/stand-downs"),
        json!({ "id": Uuid::now_v7(), "person": author.person, "from": now(), "until": null }),
    );
    assert_eq!(down["person"], author.person.to_string());
    let item = Uuid::now_v7();
    let put =
        json!({ "id": item, "serial": "H-12", "name": "harness", "inspected_until": "2031-01-31" });
    world
        .call("POST", &world.at("/equipment"))
        .once()
        .json(&put)
        .send()
        .expect(201);
    let shocked = bring(
        world.at(&format!("/equipment/{item}/shock-loads")),
        json!({ "id": Uuid::now_v7(), "what": "the line snatched", "at": now() }),
    );
    assert_eq!(shocked["quarantined"]["reason"], "it took a shock load");
    bring(
        format!("/gags/{gag}/briefings"),
        json!({ "id": Uuid::now_v7(), "day": day, "place": "Silo yard", "revision": 1, "at": now(),
            "attended": [], "points": "" }),
    );
    let take = Uuid::now_v7();
    let digest = &page["clearance"]["plan_digest"];
    let go = bring(
        format!("/gags/{gag}/takes"),
        json!({ "id": take, "number": 1, "at": now(), "revision": 1, "plan_digest": digest, "day": day,
            "place": "Silo yard" }),
    );
    assert_eq!(go["judged"]["stood"], false, "much stands against it: {go}");
    let ended = bring(
        format!("/gags/{gag}/takes/{take}/outcome"),
        json!({ "result": "stopped", "note": "", "at": now() }),
    );
    assert_eq!(ended["outcome"]["result"], "stopped");

    let look = author.asks(format!("/gags/{gag}/looks"), json!({}));
    assert!(handed::sign(&look, &author.phone.key).is_err());
    let seen = world
        .call("GET", &format!("/gags/{gag}"))
        .send()
        .expect(200);
    assert_eq!(
        seen["case"]["day"]["incidents"][0]["what"],
        "a shackle fell"
    );
}

#[test]
fn everything_that_may_travel_does_what_its_own_address_does() {
    let world = World::new();
    let (gag, page) = world.gag("G07");
    let author = Author::coordinator(&world);
    let (_, carrier) = world.member("P03", "Oke Larsen", "oke@example.test", &["observer"]);
    let bring = |request: &HandedRequest| carry(&world, &carrier, &author.jws(request)).expect(201);
    let hold = Uuid::now_v7();
    bring(&author.asks(world.at("/holds"), json!({ "id": hold, "gag": gag })));
    let agreed = bring(&author.asks(
        format!("/holds/{hold}/agreements"),
        json!({ "role": "coordinator", "cause": "looked at it" }),
    ));
    assert!(agreed["released_at"].is_string(), "{agreed}");
    let rung = &page["plan"]["facets"]["rehearsals"]["rungs"][0]["name"];
    bring(&author.asks(
        format!("/gags/{gag}/runs"),
        json!({
            "id": Uuid::now_v7(), "rung": rung, "good": true, "revision": 1,
            "at": gagwright::clock::now(),
        }),
    ));
    let shot = Uuid::now_v7();
    let logged = bring(&author.asks(
        format!("/gags/{gag}/test-shots"),
        json!({
            "id": shot, "technique": "high-fall", "inputs": {}, "load": "bag",
            "measured": { "impact_speed": 11.5 }, "shot_at": gagwright::clock::now(),
        }),
    ));
    assert_eq!(logged["recorded_by"], world.person.to_string());
    let mut facets = page["plan"]["facets"].clone();
    facets["camera"]["notes"] = json!("wider");
    let mut revision = author.asks(
        format!("/gags/{gag}/plans"),
        json!({ "technique": "high-fall", "facets": facets, "note": "wider" }),
    );
    revision.if_match = Some("\"1\"".into());
    let written = bring(&revision);
    assert_eq!(written["plan"]["revision"], 2);
    assert_eq!(written["plan"]["author"], world.person.to_string());
    let own = author.sends(&revision);
    assert_eq!(own.header("idempotency-replayed"), "true");
    assert_eq!(own.header("etag"), "\"2\"");

    // A second one against the same revision is stale, with both sides shown.
    facets["camera"]["notes"] = json!("wider still");
    let mut late = author.asks(
        format!("/gags/{gag}/plans"),
        json!({ "technique": "high-fall", "facets": facets, "note": "late" }),
    );
    late.if_match = Some("\"1\"".into());
    let size = world.trail_size();
    let problem = carry(&world, &carrier, &author.jws(&late)).refused(409, "stale_plan");
    assert_eq!(problem, author.sends(&late).refused(409, "stale_plan"));
    assert_eq!(problem["current"]["revision"], 2);
    assert_eq!(problem["changed_yours"], json!(["camera"]));
    assert_eq!(world.trail_size(), size);
}

#[test]
fn a_carrier_reads_no_more_of_a_plans_people_than_they_may() {
    let world = World::new();
    let (gag, page) = world.gag("G07");
    let author = Author::coordinator(&world);
    let (_, carrier) = world.member("P03", "Oke Larsen", "oke@example.test", &["observer"]);
    let person = world.person("P04", "Ines Varga", "ines@example.test");
    let path = world.at(&format!("/people/{person}"));
    let mut known = world.call("GET", &path).send().expect(200)["person"].clone();
    known["born"] = json!("1991-04-12");
    let put = world.call("PUT", &path).once().header("if-match", "\"1\"");
    put.json(&known).send().expect(200);
    let mut facets = page["plan"]["facets"].clone();
    facets["cast"]["slots"] = json!([{
        "id": Uuid::now_v7(), "name": "Double", "requirements": [], "person": person,
    }]);
    let mut request = author.asks(
        format!("/gags/{gag}/plans"),
        json!({ "technique": "high-fall", "facets": facets, "note": "cast" }),
    );
    request.if_match = Some("\"1\"".into());
    let jws = author.jws(&request);
    let reads = |token: &str| {
        let read = world
            .server
            .call("GET", &format!("/gags/{gag}"))
            .token(token);
        read.send().expect(200)["case"]["people"].clone()
    };
    for _ in 0..2 {
        let shown = carry(&world, &carrier, &jws).expect(201)["case"]["people"].clone();
        assert_eq!(shown, reads(&carrier));
        assert_ne!(shown, reads(&world.coordinator));
    }
}

#[test]
fn what_was_changed_on_the_way_or_signed_by_another_is_refused() {
    let world = World::new();
    let (gag, _) = world.gag("G07");
    let author = Author::medic(&world);
    let thief = Author {
        phone: Phone::register(&world, &world.coordinator, 9),
        person: author.person,
    };
    let size = world.trail_size();
    let refused = |jws: &str, told: &str| {
        let problem = carry(&world, &world.coordinator, jws).refused(422, "handed_refused");
        let detail = problem["detail"].as_str().unwrap();
        assert!(detail.contains(told), "{detail}");
    };
    let request = author.reading(gag);
    let signed = author.jws(&request);
    let parts: Vec<&str> = signed.split('.').collect();
    let mut other = request.clone();
    other.body["value"] = json!(1.5);
    let payload = author.jws(&other);
    let payload = payload.split('.').nth(1).unwrap();
    refused(
        &format!("{}.{payload}.{}", parts[0], parts[2]),
        "does not verify",
    );
    refused("not.a.jws", "not a compact JWS");
    refused("", "three parts");

    refused(&thief.jws(&thief.reading(gag)), "belongs to someone else");
    let mut unknown = request.clone();
    unknown.device = DeviceId(Uuid::now_v7());
    refused(&author.jws(&unknown), "is not registered");
    let mut early = request.clone();
    early.made_at = gagwright::clock::now() + SignedDuration::from_hours(26);
    refused(&author.jws(&early), "ahead");
    early.made_at = gagwright::clock::now() - SignedDuration::from_hours(30);
    refused(&author.jws(&early), "before");

    // What it asks is judged as its own address would.
    let bad = author.asks(format!("/gags/{gag}/readings"), json!({ "id": "G07" }));
    let problem = carry(&world, &world.coordinator, &author.jws(&bad));
    assert_eq!(
        problem.refused(422, "invalid_input")["errors"][0]["pointer"],
        "/id"
    );
    let nowhere = author.reading(Uuid::now_v7());
    carry(&world, &world.coordinator, &author.jws(&nowhere)).refused(404, "unknown_id");
    world
        .server
        .call("POST", "/handed")
        .json(&json!({ "jws": signed }))
        .send()
        .refused(401, "not_signed_in");
    assert_eq!(world.trail_size(), size);
}

#[test]
fn one_key_asks_one_thing() {
    let world = World::new();
    let (gag, _) = world.gag("G07");
    let author = Author::medic(&world);
    let request = author.reading(gag);
    author.sends(&request);
    let mut other = request.clone();
    other.body["value"] = json!(1.5);
    carry(&world, &world.coordinator, &author.jws(&other)).refused(422, "key_reused");
}

#[test]
fn another_production_learns_nothing() {
    let world = World::new();
    let (gag, _) = world.gag("G07");
    let author = Author::medic(&world);
    let mut request = author.reading(gag);
    request.production = ProductionId(Uuid::now_v7());
    carry(&world, &world.coordinator, &author.jws(&request)).refused(404, "unknown_id");
}

#[test]
fn what_was_done_on_one_production_is_not_told_on_another() {
    let world = World::new();
    let (gag, _) = world.gag("G07");
    let author = Author::coordinator(&world);
    let mut request = author.reading(gag);
    assert_eq!(author.sends(&request).status, 201);

    // The author is on another production too, and signs the very same request as if it belonged there.
    let other = NewProduction {
        id: ProductionId(Uuid::now_v7()),
        name: "Salt Meridian, second unit".into(),
        time_zone: "Africa/Windhoek".into(),
        demo: false,
        founder: Founder {
            person: PersonId(Uuid::now_v7()),
            code: "P01".into(),
            name: "Thandeka Mbeki".into(),
            occupation: "coordinator".into(),
            account: Some(world.server.tokens.read(&world.coordinator).unwrap().sub),
            email: None,
            roles: [Role::Coordinator].into(),
        },
    };
    (request.production, request.person) = (other.id, other.founder.person);
    let now = gagwright::clock::now();
    let started = world.server.store.write(move |conn| {
        productions::create(
            conn,
            now,
            other,
            Policy::built_in().clone(),
            &mut entropy::system,
        )
    });
    started.unwrap();
    request.device = DeviceId(Uuid::now_v7());
    let path = format!("/productions/{}/devices", request.production);
    let key = PublicKey::from(author.phone.key.verifying_key());
    let device = json!({ "id": request.device, "name": "phone", "key": key });
    world
        .call("POST", &path)
        .once()
        .json(&device)
        .send()
        .expect(201);
    carry(&world, &world.coordinator, &author.jws(&request)).refused(404, "unknown_id");
}

#[test]
fn a_revoked_device_and_one_who_may_no_longer_ask_are_refused_but_what_was_done_stays() {
    let world = World::new();
    let (gag, _) = world.gag("G07");
    let author = Author::medic(&world);
    let (first, late) = (author.reading(gag), author.reading(gag));
    carry(&world, &world.coordinator, &author.jws(&first)).expect(201);
    let give = |roles: Value| {
        let path = world.at(&format!("/members/{}", author.person));
        world
            .call("PUT", &path)
            .once()
            .json(&json!({ "roles": roles }))
            .send()
            .expect(200);
    };
    let bring = |request: &HandedRequest| carry(&world, &world.coordinator, &author.jws(request));
    for roles in [json!(["observer"]), json!([])] {
        give(roles);
        let problem = bring(&late).refused(422, "handed_refused");
        let detail = problem["detail"].as_str().unwrap();
        assert!(
            detail.contains("Mirembe Achterberg, who made this, may not log readings"),
            "{detail}"
        );
    }
    give(json!(["medic"]));
    let path = world.at(&format!("/devices/{}", author.phone.device));
    world.call("DELETE", &path).once().send();
    let problem = bring(&late).refused(422, "handed_refused");
    assert!(
        problem["detail"].as_str().unwrap().contains("was revoked"),
        "{problem}"
    );
    // What was done before is answered as before.
    assert_eq!(bring(&first).header("idempotency-replayed"), "true");
}
