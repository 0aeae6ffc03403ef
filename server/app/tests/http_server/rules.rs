//! A production's own rules over HTTP: its policy, its delegates, sign-offs on paper, declines resolved.

use gagwright_clearance::{
    Ink, Opening, PersonId, Statement,
    day_mark::{self, DayStatement},
    jws,
};
use gagwright_trail::Hash;
use serde_json::{Value, json};
use uuid::Uuid;

use crate::{signing::Phone, support::World};

fn policy(world: &World) -> Value {
    let got = world.call("GET", &world.at("/policy")).send();
    assert_eq!(got.status, 200, "{}", got.text());
    let page = got.json();
    let version = page["policy"]["version"].as_str().unwrap();
    assert_eq!(got.header("etag"), format!("\"{version}\""));
    page["policy"].clone()
}

fn role<'v>(policy: &'v mut Value, name: &str) -> &'v mut Value {
    let roles = policy["roles"].as_array_mut().unwrap();
    roles.iter_mut().find(|one| one["role"] == name).unwrap()
}

/// The first assistant director with a phone, and their id.
fn first_ad<'a>(world: &'a World, code: &str, name: &str, seed: u8) -> (Uuid, Phone<'a>) {
    let email = format!("{code}@example.test").to_lowercase();
    let (person, token) = world.member(code, name, &email, &["first_ad"]);
    (person, Phone::register(world, &token, seed))
}

fn standing(world: &World, gag: Uuid, role: &str) -> Value {
    let page = world
        .call("GET", &format!("/gags/{gag}"))
        .send()
        .expect(200);
    let roles = page["clearance"]["roles"].as_array().unwrap().clone();
    let found = roles.into_iter().find(|one| one["role"] == role);
    found.unwrap_or_else(|| panic!("no {role} in {page}"))
}

#[test]
fn a_policy_is_previewed_put_in_force_once_and_lapses_only_what_it_is_about() {
    let world = World::new();
    let (gag, _) = world.gag("G07");
    let medic = Phone::register(&world, &world.medic(), 7);
    let (_, first) = first_ad(&world, "P05", "Radmila Ilić", 9);
    medic.hand_in(gag, &medic.sign(gag, "medic")).expect(201);
    first.hand_in(gag, &first.sign(gag, "first_ad")).expect(201);
    let in_force = policy(&world);

    // Everything wrong is named at once, and nothing is stored.
    let mut wrong = in_force.clone();
    role(&mut wrong, "medic")["attestation"]["text"] = json!("Other words.");
    wrong["limits"] = json!({ "high-fall": { "levitation": { "value": 1.0, "because": "" } } });
    let preview = |policy: &Value| {
        world
            .call("POST", &world.at("/policy-preview"))
            .json(policy)
            .send()
            .expect(200)
    };
    let problems = preview(&wrong)["problems"].as_array().unwrap().clone();
    let pointers: Vec<&str> = problems
        .iter()
        .map(|one| one["pointer"].as_str().unwrap())
        .collect();
    for wanted in [
        "/version",
        "/limits/high-fall/levitation",
        "/limits/high-fall/levitation/because",
    ] {
        assert!(pointers.contains(&wanted), "{wanted}: {pointers:?}");
    }
    assert!(
        pointers.iter().any(|one| one.ends_with("/attestation/id")),
        "{pointers:?}"
    );

    let mut ours = in_force.clone();
    ours["version"] = json!("ours-1");
    role(&mut ours, "medic")["attestation"] = json!({
        "id": "medic/2",
        "text": "Cover, route and hospital are confirmed by me today.",
        "texts": { "es": "Confirmo hoy la cobertura, la ruta y el hospital." },
    });
    let seen = preview(&ours);
    assert_eq!(seen["problems"], json!([]));
    let effects = &seen["gags"][0]["effects"]["roles"];
    assert_eq!(effects.as_array().unwrap().len(), 1, "{effects}");
    assert_eq!(effects[0]["role"], "medic");
    assert_eq!(effects[0]["after"], "lapsed");

    let put = |token: &str, version: &str| {
        world
            .server
            .call("PUT", &world.at("/policy"))
            .token(token)
            .once()
            .header("if-match", &format!("\"{version}\""))
            .json(&json!({ "policy": ours, "note": "the insurer's wording" }))
            .send()
    };
    put(&first.token, "2026.1").refused(403, "forbidden");
    put(&world.coordinator, "2025.9").refused(409, "conflict");
    let leaves = world.trail_size();
    let page = put(&world.coordinator, "2026.1").expect(200);
    assert_eq!(world.trail_size(), leaves + 1);
    assert_eq!(page["versions"][0]["version"], "ours-1");
    assert_eq!(page["versions"][0]["by"]["name"], "Thandeka Mbeki");
    assert_eq!(standing(&world, gag, "medic")["state"], "lapsed");
    assert_eq!(standing(&world, gag, "first_ad")["state"], "standing");
    let old = world
        .call("GET", &world.at("/policies/2026.1"))
        .send()
        .expect(200);
    assert_eq!(old, in_force);

    // The words are signed in the language they were shown in, and in no other.
    let mut statement = medic.draft(gag, "medic");
    statement.language = Some("fr".to_owned());
    let jws = jws::sign(&statement, &medic.key).unwrap();
    medic.hand_in(gag, &jws).refused(422, "sign_off_refused");
    statement.language = Some("es".to_owned());
    let jws = jws::sign(&statement, &medic.key).unwrap();
    let receipt = medic.hand_in(gag, &jws).expect(201);
    assert_eq!(receipt["standing"]["state"], "standing");
}

#[test]
fn a_delegate_signs_until_the_delegation_is_ended() {
    let world = World::new();
    let (gag, _) = world.gag("G07");
    let (holder, first) = first_ad(&world, "P05", "Radmila Ilić", 9);
    let (other, token) = world.member("P06", "Eun-ji Baek", "eun@example.test", &["camera"]);
    let camera = Phone::register(&world, &token, 11);
    let now = gagwright::clock::now();
    let hours = |hours| {
        now.checked_add(jiff::SignedDuration::from_hours(hours))
            .unwrap()
    };
    let make = |by: &Phone<'_>, to: Uuid, until: jiff::Timestamp| {
        let body = json!({
            "id": Uuid::now_v7(), "to": to, "role": "first_ad", "starts": now, "until": until,
            "limits": "the night unit",
        });
        world
            .server
            .call("POST", &world.at("/delegations"))
            .token(&by.token)
            .once()
            .json(&body)
            .send()
    };
    make(&first, other, hours(24 * 30)).refused(422, "invalid_input");
    make(&camera, holder, hours(10)).refused(422, "invalid_input");
    let made = make(&first, other, hours(48)).expect(201);

    let receipt = camera
        .hand_in(gag, &camera.sign(gag, "first_ad"))
        .expect(201);
    assert_eq!(receipt["standing"]["state"], "standing");
    assert_eq!(receipt["standing"]["signer"], json!(other));
    assert_eq!(receipt["standing"]["signed_for"], json!(holder));

    // The day as well: whoever deputises is there when the holder is not.
    let path = format!("/gags/{gag}/day-signoff-draft?role=first_ad");
    let draft = world.server.call("GET", &path).token(&token).send();
    let drafted = draft.expect(200)["statement"].clone();
    assert_eq!(drafted["delegation"], made["id"]);
    let mut day: DayStatement = serde_json::from_value(drafted).unwrap();
    day.id.0 = Uuid::now_v7();
    day.device.0 = camera.device;
    let jws = day_mark::sign(&day, &camera.key).unwrap();
    let path = format!("/gags/{gag}/day-signoffs");
    let call = world.server.call("POST", &path).token(&token).once();
    let taken = call.json(&json!({ "jws": jws })).send().expect(201);
    assert_eq!(taken["state"], "standing", "{taken}");
    assert_eq!(taken["signed_for"], json!(holder));

    let end = |token: &str| {
        let path = world.at(&format!(
            "/delegations/{}/end",
            made["id"].as_str().unwrap()
        ));
        world.server.call("POST", &path).token(token).once().send()
    };
    end(&camera.token).refused(403, "forbidden");
    end(&first.token).expect(200);
    let lapsed = standing(&world, gag, "first_ad");
    assert_eq!(lapsed["state"], "lapsed");
    assert!(
        lapsed["reasons"][0]
            .as_str()
            .unwrap()
            .starts_with("Radmila Ilić ended on"),
        "{lapsed}"
    );
    let listed = world
        .call("GET", &world.at("/delegations"))
        .send()
        .expect(200);
    assert_eq!(listed["items"][0]["limits"], "the night unit");
}

#[test]
fn a_sign_off_on_paper_is_witnessed_and_its_photograph_kept_for_those_who_may_see_it() {
    let world = World::new();
    let (gag, _) = world.gag("G07");
    let (signer, _) = first_ad(&world, "P05", "Radmila Ilić", 9);
    let witness = Phone::register(&world, &world.coordinator, 3);
    // A PNG by its first bytes; what else is in it nobody decodes.
    let photograph = b"\x89PNG\r\n\x1a\nthe page of G07".to_vec();
    let path = format!("/gags/{gag}/signoff-draft?role=first_ad&signer={signer}");
    let draft = world.call("GET", &path).send().expect(200);
    let drafted: Statement = serde_json::from_value(draft["statement"].clone()).unwrap();
    let statement = Statement {
        kind: Statement::INK.to_owned(),
        ink: Some(Ink {
            witness: PersonId(world.person),
            photograph: Hash::of(&photograph).to_hex(),
        }),
        ..witness.complete(drafted)
    };
    let jws = jws::sign(&statement, &witness.key).unwrap();
    let receipt = witness.hand_in(gag, &jws).expect(201);
    assert_eq!(receipt["standing"]["state"], "standing");
    assert_eq!(receipt["standing"]["signer"], json!(signer));
    assert_eq!(receipt["standing"]["witness"], json!(world.person));

    let place = format!("/signoffs/{}/photograph", statement.id);
    let send = |bytes: &[u8]| {
        world
            .call("PUT", &place)
            .once()
            .body("image/png", bytes)
            .send()
    };
    send(b"<svg/>").refused(422, "invalid_input");
    send(b"\x89PNG\r\n\x1a\nanother").refused(422, "invalid_input");
    world.call("GET", &place).send().refused(404, "unknown_id");
    let leaves = world.trail_size();
    assert_eq!(send(&photograph).status, 204);
    assert_eq!(send(&photograph).status, 204);
    assert_eq!(world.trail_size(), leaves + 1);
    let got = world.call("GET", &place).send();
    assert_eq!(got.header("content-type"), "image/png");
    assert_eq!(got.body, photograph);
    let (_, token) = world.member("P06", "Eun-ji Baek", "eun@example.test", &["camera"]);
    let other = world.server.call("GET", &place).token(&token).send();
    other.refused(403, "forbidden");
}

#[test]
fn a_decline_is_resolved_in_writing_by_whom_the_policy_names() {
    let world = World::new();
    let (gag, _) = world.gag("G07");
    let (_, first) = first_ad(&world, "P05", "Radmila Ilić", 9);
    let (_, second) = first_ad(&world, "P06", "Eun-ji Baek", 11);
    let mut statement = first.draft(gag, "first_ad");
    statement.decision = gagwright_clearance::Decision::Decline;
    let opening = Opening::new(&[9; 32], "no time for the dry run");
    statement.reason = opening.commitment();
    let jws = jws::sign(&statement, &first.key).unwrap();
    first
        .hand_in_body(gag, &json!({ "jws": jws, "openings": [opening] }))
        .expect(201);
    // Another holder's word does not lift it.
    let receipt = second
        .hand_in(gag, &second.sign(gag, "first_ad"))
        .expect(201);
    assert_eq!(receipt["standing"]["state"], "declined");

    let resolve = |token: &str| {
        world
            .server
            .call("POST", &format!("/signoffs/{}/resolutions", statement.id))
            .token(token)
            .once()
            .json(&json!({ "id": Uuid::now_v7(), "text": "The dry run is at six" }))
            .send()
    };
    resolve(&second.token).refused(403, "forbidden");
    let resolved = resolve(&world.coordinator).expect(201);
    assert_eq!(resolved["state"], "standing");
    let note = resolved["notes"][0].as_str().unwrap();
    assert!(
        note.contains("no time for the dry run") && note.ends_with("The dry run is at six."),
        "{note}"
    );
    resolve(&world.coordinator).refused(409, "conflict");
}
