//! A gag at a past moment, texts that can be erased, and erasing a person, over HTTP.

use gagwright_clearance::{Opening, Statement, jws};
use gagwright_trail::export::verify_export;
use serde_json::{Value, json};
use uuid::Uuid;

use crate::{
    signing::Phone,
    support::{Got, World},
};

const WORDS: &str = "Second ambulance on site by 14:00";

/// The medic approves on a condition, and gives the sign-off with its opening.
fn on_condition(phone: &Phone<'_>, gag: Uuid) -> (Statement, Value) {
    let path = format!("/gags/{gag}/signoff-draft?role=medic");
    let draft = phone
        .world
        .server
        .call("GET", &path)
        .token(&phone.token)
        .send()
        .expect(200);
    let opening = Opening::new(&[9; 32], WORDS);
    let mut statement = draft["statement"].clone();
    statement["id"] = json!(Uuid::now_v7());
    statement["device"] = json!(phone.device);
    statement["signed_at"] = json!(gagwright::clock::now());
    statement["decision"] = json!("approve_with_conditions");
    statement["conditions"] = json!([opening.commitment()]);
    let statement: Statement = serde_json::from_value(statement).unwrap();
    let jws = jws::sign(&statement, &phone.key).unwrap();
    (statement, json!({ "jws": jws, "openings": [opening] }))
}

fn then(world: &World, gag: Uuid, moment: &str) -> Got {
    world
        .call("GET", &world.at(&format!("/gags/{gag}/at?{moment}")))
        .send()
}

#[test]
fn a_gag_is_shown_as_it_stood_and_a_text_until_it_is_erased() {
    let world = World::new();
    let (gag, page) = world.gag("G07");
    let medic = world.medic();
    let phone = Phone::register(&world, &medic, 9);
    let (statement, body) = on_condition(&phone, gag);
    let hand_in = |body: &Value| {
        let path = format!("/gags/{gag}/signoffs");
        world
            .server
            .call("POST", &path)
            .token(&medic)
            .once()
            .json(body)
            .send()
    };
    let bare = json!({ "jws": body["jws"] });
    hand_in(&bare).refused(422, "sign_off_refused");
    let receipt = hand_in(&body).expect(201);
    assert_eq!(receipt["standing"]["open_conditions"], json!([WORDS]));
    let leaf = receipt["leaf"].as_u64().unwrap();

    let before = then(&world, gag, &format!("leaf={}", leaf - 1)).expect(200);
    let after = then(&world, gag, &format!("leaf={leaf}")).expect(200);
    let signed = |then: &Value| then["signed"].as_array().unwrap().len();
    assert_eq!(signed(&after), signed(&before) + 1);
    let made = after["signed"].as_array().unwrap().last().unwrap();
    assert_eq!(
        (&made["leaf"], &made["texts"]),
        (&json!(leaf), &json!([WORDS]))
    );
    assert_eq!(
        made["covers"],
        json!(statement.facets.keys().collect::<Vec<_>>())
    );
    assert_eq!(
        (
            after["certain"].as_bool(),
            after["unknown"].as_array().map(Vec::len)
        ),
        (Some(true), Some(0))
    );
    assert!(
        before["after"]
            .as_array()
            .unwrap()
            .iter()
            .any(|one| one["leaf"] == leaf)
    );
    // As it is now, it is what the gag's own page says.
    let now = world
        .call("GET", &format!("/gags/{gag}"))
        .send()
        .expect(200);
    assert_eq!(after["clearance"]["blocks"], now["clearance"]["blocks"]);
    assert_eq!(
        after["clearance"]["plan_digest"],
        page["clearance"]["plan_digest"]
    );
    then(&world, gag, "at=2020-01-01T00:00:00Z").refused(422, "invalid_input");
    then(&world, gag, "").refused(422, "invalid_input");

    // An observer may not take personal parts away; the coordinator may.
    let export = |query: &str| {
        let path = world.at(&format!("/trail/export{query}"));
        world.call("GET", &path).send().text().to_owned()
    };
    let (left, taken) = (export(""), export("?parts=true"));
    assert!(!left.contains(WORDS) && taken.contains(WORDS));
    assert_eq!(verify_export(&taken).unwrap().personal_erased, 0);

    // Only the role production erases.
    let person = statement.signer;
    let path = world.at(&format!("/people/{person}"));
    world
        .call("DELETE", &path)
        .once()
        .send()
        .refused(403, "forbidden");
}
