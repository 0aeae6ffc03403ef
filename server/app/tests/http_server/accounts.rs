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
fn a_refresh_cookie_is_good_once_and_its_reuse_ends_the_session() {
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

    refresh(&first).refused(401, "not_signed_in");
    // The copy was used, so the true owner's next one is dead as well.
    refresh(&second_cookie).refused(401, "not_signed_in");
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
