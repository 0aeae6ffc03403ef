//! Setting up, signing in, staying signed in, and who may do what.

use jiff::SignedDuration;
use serde_json::json;
use uuid::Uuid;

use crate::support::{PASSWORD, Server, World};

fn sign_in(server: &Server, email: &str, password: &str) -> crate::support::Got {
    server
        .call("POST", "/sessions")
        .json(&json!({ "email": email, "password": password }))
        .send()
}

#[test]
fn the_printed_link_makes_the_first_account_once() {
    let server = Server::start();
    assert_eq!(
        server.call("GET", "/status").send().expect(200)["needs_setup"],
        true
    );
    let mut setup = json!({
        "token": "not the printed one", "name": "Thandeka Mbeki", "email": "thandeka@example.test",
        "password": PASSWORD, "production_name": "Salt Meridian", "time_zone": "Africa/Windhoek",
    });
    let set_up = |body: &serde_json::Value| server.call("POST", "/setup").json(body).send();
    set_up(&setup).refused(403, "forbidden");
    setup["token"] = json!(server.setup_token);
    setup["password"] = json!("short");
    let problem = set_up(&setup).refused(422, "invalid_input");
    assert_eq!(problem["errors"][0]["pointer"], "/password");
    setup["password"] = json!(PASSWORD);
    setup["time_zone"] = json!("Sea/Nowhere");
    let problem = set_up(&setup).refused(422, "invalid_input");
    assert_eq!(problem["errors"][0]["pointer"], "/time_zone");
    setup["time_zone"] = json!("Africa/Windhoek");
    let session = set_up(&setup).expect(201);
    assert_eq!(session["memberships"][0]["roles"], json!(["coordinator"]));
    set_up(&setup).refused(403, "forbidden");
    let status = server.call("GET", "/status").send().expect(200);
    assert_eq!(
        (&status["needs_setup"], &status["demo"]),
        (&json!(false), &json!(false))
    );
    assert!(status.get("demo_sign_ins").is_none());
    sign_in(&server, "Thandeka@example.test", PASSWORD).expect(200);
}

#[test]
fn a_wrong_password_and_an_unknown_address_read_the_same() {
    let world = World::new();
    let wrong = sign_in(&world.server, "thandeka@example.test", "not the password");
    let unknown = sign_in(&world.server, "nobody@example.test", "not the password");
    let (wrong, unknown) = (
        wrong.refused(401, "not_signed_in"),
        unknown.refused(401, "not_signed_in"),
    );
    assert_eq!(wrong, unknown);
}

#[test]
fn guessing_a_password_is_slowed_down() {
    let world = World::new();
    let last = (0..12)
        .map(|_| sign_in(&world.server, "oke@example.test", "a guess of mine"))
        .find(|got| got.status != 401)
        .expect("a refusal before the twelfth guess");
    assert!(!last.header("retry-after").is_empty());
    last.refused(429, "rate_limited");
    sign_in(&world.server, "thandeka@example.test", PASSWORD).expect(200);
}

#[test]
fn a_lost_refresh_is_made_good_and_two_live_copies_end_the_session() {
    let world = World::new();
    let signed_in = sign_in(&world.server, "thandeka@example.test", PASSWORD);
    let set = signed_in.header("set-cookie").to_owned();
    for part in ["HttpOnly", "SameSite=Strict", "Path=/api/v1/sessions"] {
        assert!(set.contains(part), "{set}");
    }
    let refresh = |cookie: &str| {
        world
            .server
            .call("POST", "/sessions/refresh")
            .header("cookie", cookie)
            .send()
    };
    let first = signed_in.cookie();
    let second = refresh(&first);
    let second_cookie = second.cookie();
    let session = second.expect(200);
    assert_ne!(first, second_cookie);
    world.call("GET", &world.at("")).send().expect(200);
    assert_eq!(session["account"]["name"], "Thandeka Mbeki");

    // The second never arrived: the first is good again, and voids it.
    let third = refresh(&first);
    let third_cookie = third.cookie();
    third.expect(200);
    // It did arrive, in another's hands: two copies live, so both are ended.
    refresh(&second_cookie).refused(401, "not_signed_in");
    refresh(&third_cookie).refused(401, "not_signed_in");
    refresh(&first).refused(401, "not_signed_in");
    refresh("gagwright_refresh=invented").refused(401, "not_signed_in");
    world
        .server
        .call("POST", "/sessions/refresh")
        .send()
        .refused(401, "not_signed_in");
}

#[test]
fn signing_out_ends_the_family() {
    let world = World::new();
    let cookie = sign_in(&world.server, "thandeka@example.test", PASSWORD).cookie();
    let out = world
        .server
        .call("DELETE", "/sessions")
        .header("cookie", &cookie)
        .send();
    assert_eq!(out.status, 204);
    assert!(out.header("set-cookie").contains("Max-Age=0"));
    world
        .server
        .call("POST", "/sessions/refresh")
        .header("cookie", &cookie)
        .send()
        .refused(401, "not_signed_in");
}

#[test]
fn tokens_that_are_old_foreign_or_missing_are_told_apart() {
    let world = World::new();
    let path = world.at("");
    let call = || world.server.call("GET", &path);
    let missing = call().send();
    assert_eq!(missing.header("www-authenticate"), "Bearer");
    missing.refused(401, "not_signed_in");
    call()
        .token("eyJhbGciOiJIUzI1NiJ9.e30.AAAA")
        .send()
        .refused(401, "not_signed_in");
    call()
        .header("authorization", "Basic dXNlcjpwYXNz")
        .send()
        .refused(401, "not_signed_in");
    let long_ago = gagwright::clock::now() - SignedDuration::from_hours(1);
    let (old, _) = world.server.tokens.issue(Uuid::now_v7(), long_ago).unwrap();
    call().token(&old).send().refused(401, "token_expired");
}

#[test]
fn hats_decide_and_strangers_learn_nothing() {
    let world = World::new();
    let (gag, _) = world.gag("G01");
    let (performer, token) = world.member(
        "P02",
        "Zuzana Ďurišová",
        "zuzana@example.test",
        &["performer"],
    );
    let size = world.trail_size();
    let as_performer = |method: &str, path: &str| world.server.call(method, path).token(&token);

    as_performer("GET", &format!("/gags/{gag}"))
        .send()
        .expect(200);
    let new =
        json!({ "id": Uuid::now_v7(), "code": "G02", "title": "No", "technique": "high-fall" });
    let problem = as_performer("POST", &world.at("/gags"))
        .once()
        .json(&new)
        .send();
    assert_eq!(
        problem.refused(403, "forbidden")["permission"],
        "edit_plans"
    );
    as_performer("PUT", &world.at(&format!("/members/{performer}")))
        .once()
        .json(&json!({ "roles": ["coordinator"] }))
        .send()
        .refused(403, "forbidden");
    as_performer("GET", &world.at("/roster/people"))
        .send()
        .refused(403, "forbidden");

    // A good token of an account that is on no production.
    let (stranger, _) = world
        .server
        .tokens
        .issue(Uuid::now_v7(), gagwright::clock::now())
        .unwrap();
    for path in [
        world.at(""),
        world.at("/gags"),
        format!("/gags/{gag}"),
        world.at("/trail"),
    ] {
        world
            .server
            .call("GET", &path)
            .token(&stranger)
            .send()
            .refused(404, "unknown_id");
    }
    assert_eq!(world.trail_size(), size);
}

#[test]
fn a_person_reads_all_of_themselves_and_little_of_others() {
    let world = World::new();
    let (ines, token) = world.member("P02", "Inês Okonkwo", "ines@example.test", &["performer"]);
    let id = Uuid::now_v7();
    let other = json!({
        "id": id, "code": "P03", "name": "Oke Larsen", "occupation": "performer", "performs": true,
        "email": "oke@example.test", "born": "1991-04-02", "medically_clear_until": "2027-01-31",
    });
    world
        .call("PUT", &world.at(&format!("/people/{id}")))
        .once()
        .header("if-none-match", "*")
        .json(&other)
        .send()
        .expect(201);
    let read = |token: &str, id: Uuid| {
        world
            .server
            .call("GET", &world.at(&format!("/people/{id}")))
            .token(token)
            .send()
            .expect(200)
    };
    let seen = read(&token, id);
    assert_eq!(
        seen["visible"],
        json!({ "personal": false, "medical": false })
    );
    assert!(
        !seen.to_string().contains("1991-04-02") && !seen.to_string().contains("2027-01-31"),
        "{seen}"
    );
    assert_eq!(read(&token, ines)["visible"]["personal"], true);
    assert_eq!(read(&world.coordinator, id)["person"]["born"], "1991-04-02");
}

#[test]
fn an_invitation_works_once_and_is_no_way_around_a_password() {
    let world = World::new();
    let person = world.person("P02", "Mirembe Achterberg", "mirembe@example.test");
    let invite = |person: Uuid| {
        let body = json!({ "person": person, "roles": ["medic"] });
        world
            .call("POST", &world.at("/invitations"))
            .once()
            .json(&body)
            .send()
    };
    invite(person).expect(201);
    let token = world.invitation_to("mirembe@example.test");
    let accept = |token: &str, password: &str| {
        let body = json!({ "token": token, "name": "Mirembe Achterberg", "password": password });
        world
            .server
            .call("POST", "/invitations/accept")
            .json(&body)
            .send()
    };
    accept("invented", PASSWORD).refused(404, "unknown_id");
    accept(&token, "short").refused(422, "invalid_input");
    accept(&token, PASSWORD).expect(200);
    accept(&token, PASSWORD).refused(409, "conflict");

    // The coordinator's own address on somebody else's line of the roster.
    let twin = world.person("P09", "Thandeka Mbeki", "thandeka@example.test");
    invite(twin).expect(201);
    let token = world.invitation_to("thandeka@example.test");
    accept(&token, "not her password").refused(401, "not_signed_in");
}

#[test]
fn a_letter_whose_reason_has_passed_makes_no_account() {
    let world = World::new();
    let person = world.person("P02", "Mirembe Achterberg", "mirembe@example.test");
    let invite = || {
        world
            .call("POST", &world.at("/invitations"))
            .once()
            .json(&json!({ "person": person, "roles": ["medic"] }))
            .send()
            .expect(201)
    };
    let accept = |token: &str| {
        let body = json!({ "token": token, "name": "Mirembe Achterberg", "password": PASSWORD });
        world
            .server
            .call("POST", "/invitations/accept")
            .json(&body)
            .send()
    };
    let address = |email: &str, version: &str| {
        let path = world.at(&format!("/people/{person}"));
        let mut known = world.call("GET", &path).send().expect(200)["person"].clone();
        known["email"] = json!(email);
        world
            .call("PUT", &path)
            .once()
            .header("if-match", version)
            .json(&known)
            .send()
            .expect(200);
    };
    invite();
    let old = world.invitation_to("mirembe@example.test");
    // The roster had the wrong address; whoever got the letter is not the medic.
    address("m.achterberg@example.test", "\"1\"");
    let problem = accept(&old).refused(409, "conflict");
    assert!(
        problem["detail"]
            .as_str()
            .unwrap()
            .contains("another address"),
        "{problem}"
    );
    invite();
    let new = world.invitation_to("m.achterberg@example.test");
    address("mirembe@example.test", "\"2\"");
    let problem = accept(&old).refused(409, "conflict");
    assert!(
        problem["detail"]
            .as_str()
            .unwrap()
            .contains("newer invitation"),
        "{problem}"
    );
    address("m.achterberg@example.test", "\"3\"");
    accept(&new).expect(200);
    // The old letter does not take the seat from the medic who sits in it.
    address("mirembe@example.test", "\"4\"");
    let problem = accept(&old).refused(409, "conflict");
    assert!(
        problem["detail"]
            .as_str()
            .unwrap()
            .contains("has an account"),
        "{problem}"
    );
    sign_in(&world.server, "m.achterberg@example.test", PASSWORD).expect(200);
}

#[test]
fn nobody_gives_themselves_a_role_and_anyone_may_give_one_up() {
    let world = World::new();
    let (second, token) = world.member(
        "P02",
        "Zuzana Ďurišová",
        "zuzana@example.test",
        &["production", "performer"],
    );
    let set = |token: &str, person: Uuid, roles: &[&str]| {
        world
            .server
            .call("PUT", &world.at(&format!("/members/{person}")))
            .token(token)
            .once()
            .json(&json!({ "roles": roles }))
            .send()
    };
    set(&token, second, &["production", "performer", "medic"]).refused(403, "forbidden");
    set(&token, second, &["production"]).expect(200);
    set(&token, second, &["production", "performer"]).refused(403, "forbidden");
    set(&world.coordinator, second, &["production", "medic"]).expect(200);
    set(&token, world.person, &["coordinator", "rigging"]).expect(200);
}

#[test]
fn a_phone_revoked_by_somebody_else_ends_its_owners_sessions() {
    let world = World::new();
    let (_, token) = world.member("P02", "Oke Larsen", "oke@example.test", &["performer"]);
    let key = p256::ecdsa::SigningKey::from_slice(&[7; 32]).unwrap();
    let register = || {
        let device = Uuid::now_v7();
        let key = gagwright_clearance::signoff::PublicKey::from(key.verifying_key());
        world
            .server
            .call("POST", &world.at("/devices"))
            .token(&token)
            .once()
            .json(&json!({ "id": device, "name": "phone", "key": key }))
            .send()
            .expect(201);
        device
    };
    let revoke = |token: &str, device: Uuid| {
        let path = world.at(&format!("/devices/{device}"));
        let got = world
            .server
            .call("DELETE", &path)
            .token(token)
            .once()
            .send();
        assert_eq!(got.status, 204, "{}", got.text());
    };
    let refresh = |cookie: &str| {
        let call = world.server.call("POST", "/sessions/refresh");
        call.header("cookie", cookie).send()
    };
    // One's own old phone goes without signing out of the new one.
    let cookie = sign_in(&world.server, "oke@example.test", PASSWORD).cookie();
    revoke(&token, register());
    let next = refresh(&cookie);
    let cookie = next.cookie();
    next.expect(200);
    revoke(&world.coordinator, register());
    refresh(&cookie).refused(401, "not_signed_in");
    sign_in(&world.server, "oke@example.test", PASSWORD).expect(200);
}

#[test]
fn a_new_password_needs_the_old_one_and_ends_other_sessions() {
    const NEW: &str = "dunes before the wind";
    let world = World::new();
    let elsewhere = sign_in(&world.server, "thandeka@example.test", PASSWORD).cookie();
    let change = |current: &str, new: &str| {
        world
            .call("PUT", "/me/password")
            .json(&json!({ "current": current, "new": new }))
            .send()
    };
    let problem = change("not the password", NEW).refused(422, "invalid_input");
    assert_eq!(problem["errors"][0]["pointer"], "/current");
    let problem = change(PASSWORD, "short").refused(422, "invalid_input");
    assert_eq!(problem["errors"][0]["pointer"], "/new");
    let changed = change(PASSWORD, NEW);
    assert_eq!(changed.status, 204, "{}", changed.text());
    let refresh = |cookie: &str| {
        let call = world.server.call("POST", "/sessions/refresh");
        call.header("cookie", cookie).send()
    };
    refresh(&elsewhere).refused(401, "not_signed_in");
    refresh(&changed.cookie()).expect(200);
    sign_in(&world.server, "thandeka@example.test", PASSWORD).refused(401, "not_signed_in");
    sign_in(&world.server, "thandeka@example.test", NEW).expect(200);
}

#[test]
fn the_demo_says_that_it_is_one_and_lets_everyone_in() {
    let folder = tempfile::tempdir().unwrap();
    let address = format!("sqlite:{}", folder.path().join("kept.db").display());
    let store = gagwright_store::Store::open(&address).unwrap();
    store.migrate().unwrap();
    gagwright::demo::seed(&store, gagwright::clock::now(), gagwright::entropy::system).unwrap();
    drop(store);
    let server = Server::start_in(folder);
    assert_eq!(server.setup_token, "", "the demo needs no set-up");
    let status = server.call("GET", "/status").send().expect(200);
    assert_eq!(
        (&status["demo"], &status["needs_setup"]),
        (&json!(true), &json!(false))
    );
    let people = status["demo_sign_ins"].as_array().unwrap();
    assert!(people.len() >= 3);
    for person in people {
        let (email, password) = (person["email"].as_str(), person["password"].as_str());
        let session = sign_in(&server, email.unwrap(), password.unwrap()).expect(200);
        assert_eq!(session["memberships"][0]["production"]["demo"], true);
        assert_eq!(session["account"]["name"], person["name"]);
        let production = &session["memberships"][0]["production"]["id"];
        let token = session["access_token"].as_str().unwrap();
        for page in [
            "", "/today", "/gags", "/people", "/holds", "/trail", "/changes",
        ] {
            let path = format!("/productions/{}{page}", production.as_str().unwrap());
            server.call("GET", &path).token(token).send().expect(200);
        }
    }
}
