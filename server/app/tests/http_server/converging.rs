//! Two phones and a desk that worked on one gag for an hour with no signal, and then all send: in whatever
//! order their entries arrive, and however often each is sent, the server ends in the same state.

use gagwright_clearance::{
    Decision, Statement,
    day_mark::{self, DayStatement},
    jws,
};
use jiff::SignedDuration;
use serde_json::{Value, json};
use uuid::Uuid;

use crate::{signing::Phone, support::World};

/// One entry of an outbox: where it goes, and what it says. Sent again, it is the very same.
struct Entry<'a> {
    token: &'a str,
    key: Uuid,
    path: String,
    body: Value,
}

impl Entry<'_> {
    fn send(&self, world: &World) {
        let call = world.server.call("POST", &self.path).token(self.token);
        let got = call.key(self.key).json(&self.body).send();
        assert!(
            (200..300).contains(&got.status),
            "{}: {}",
            self.path,
            got.text()
        );
    }
}

/// The minutes of the hour that has just passed.
fn minute(of: i64) -> Value {
    let at = gagwright::clock::now().checked_sub(SignedDuration::from_mins(60 - of));
    json!(at.unwrap())
}

/// A gag with one piece of equipment, like every other that is made here.
fn gag(world: &World, number: usize) -> (Uuid, Uuid) {
    let (gag, page) = world.gag(&format!("G{number:02}"));
    let serial = format!("H-{number}");
    let mut facets = page["plan"]["facets"].clone();
    facets["setting"]["location"] = json!("Silo yard");
    facets["rigging"]["equipment"] = json!([{ "name": "harness", "serial": serial }]);
    let body = json!({ "technique": "high-fall", "facets": facets, "note": "harness" });
    let call = world.call("POST", &format!("/gags/{gag}/plans")).once();
    call.header("if-match", "\"1\"")
        .json(&body)
        .send()
        .expect(201);
    let item = Uuid::now_v7();
    let put =
        json!({ "id": item, "serial": serial, "name": "harness", "inspected_until": "2031-01-31" });
    let call = world.call("POST", &world.at("/equipment")).once();
    call.json(&put).send().expect(201);
    (gag, item)
}

/// What each of the three did in the hour, in the order they did it.
fn hour<'a>(
    world: &'a World,
    (gag, item): (Uuid, Uuid),
    [medic, rigger, desk]: [&'a Phone<'a>; 3],
) -> [Vec<Entry<'a>>; 3] {
    let entry = |phone: &'a Phone<'a>, path: String, body: Value| Entry {
        token: &phone.token,
        key: Uuid::now_v7(),
        path,
        body,
    };
    let signed = |phone: &'a Phone<'a>, role: &str, minutes: i64| {
        let signed_at = serde_json::from_value(minute(minutes)).unwrap();
        let statement = Statement {
            signed_at,
            ..phone.draft(gag, role)
        };
        let jws = jws::sign(&statement, &phone.key).unwrap();
        entry(
            phone,
            format!("/gags/{gag}/signoffs"),
            json!({ "jws": jws }),
        )
    };
    let day = |phone: &'a Phone<'a>, role: &str, decision: Decision, minutes: i64| {
        let path = format!("/gags/{gag}/day-signoff-draft?role={role}");
        let draft = world
            .server
            .call("GET", &path)
            .token(&phone.token)
            .send()
            .expect(200);
        let mut statement: DayStatement =
            serde_json::from_value(draft["statement"].clone()).unwrap();
        statement.id.0 = Uuid::now_v7();
        statement.device.0 = phone.device;
        statement.decision = decision;
        statement.signed_at = serde_json::from_value(minute(minutes)).unwrap();
        statement.good_until = statement.signed_at + SignedDuration::from_hours(11);
        let jws = day_mark::sign(&statement, &phone.key).unwrap();
        entry(
            phone,
            format!("/gags/{gag}/day-signoffs"),
            json!({ "jws": jws }),
        )
    };
    let reading = |phone: &'a Phone<'a>, value: f64, minutes: i64| {
        let body = json!({
            "id": Uuid::now_v7(), "kind": "wind", "value": value, "at": minute(minutes), "place": "",
        });
        entry(phone, format!("/gags/{gag}/readings"), body)
    };
    let hold = |phone: &'a Phone<'a>, reason: &str| {
        let body = json!({ "id": Uuid::now_v7(), "gag": gag, "reason": reason });
        entry(phone, world.at("/holds"), body)
    };
    let gear = |what: &str, body: Value| {
        entry(rigger, world.at(&format!("/equipment/{item}/{what}")), body)
    };
    let shock = json!({ "id": Uuid::now_v7(), "what": "the line snatched", "at": minute(20) });
    let back = json!({ "found": "no damage", "inspected_until": "2031-02-28", "at": minute(30) });
    let briefing = json!({
        "id": Uuid::now_v7(), "day": day_of_draft(world, gag, medic), "place": "Silo yard", "revision": 2,
        "at": minute(8), "attended": [world.person], "points": "the abort word",
    });
    [
        vec![
            signed(medic, "medic", 2),
            day(medic, "medic", Decision::Approve, 10),
            reading(medic, 3.0, 15),
            day(medic, "medic", Decision::Decline, 40),
        ],
        vec![
            signed(rigger, "first_ad", 5),
            gear("shock-loads", shock),
            gear("release", back),
            reading(rigger, 4.0, 35),
        ],
        vec![
            signed(desk, "coordinator", 1),
            entry(desk, format!("/gags/{gag}/briefings"), briefing),
            hold(desk, "a gust"),
        ],
    ]
}

fn day_of_draft(world: &World, gag: Uuid, phone: &Phone<'_>) -> Value {
    let path = format!("/gags/{gag}/day-signoff-draft?role=medic");
    let draft = world
        .server
        .call("GET", &path)
        .token(&phone.token)
        .send()
        .expect(200);
    draft["statement"]["day"].clone()
}

/// What people read of a gag, without the names of single records, which differ from gag to gag.
fn told(world: &World, gag: Uuid, token: &str, number: usize) -> String {
    let path = format!("/gags/{gag}");
    let page = world
        .server
        .call("GET", &path)
        .token(token)
        .send()
        .expect(200);
    let clearance = &page["clearance"];
    let marks = |roles: &Value| {
        let roles = roles.as_array().unwrap().iter();
        roles
            .map(|one| {
                format!(
                    "{} {} {}",
                    one["role"],
                    one["state"],
                    one["reasons"].as_array().unwrap().len()
                )
            })
            .collect::<Vec<_>>()
    };
    let blocks = |blocks: &Value| {
        let blocks = blocks.as_array().unwrap().iter();
        blocks
            .map(|one| one["kind"].to_string())
            .collect::<Vec<_>>()
    };
    let day = &clearance["day"];
    let values = |list: &Value, field: &str| {
        let list = list.as_array().unwrap().iter();
        list.map(|one| one[field].to_string()).collect::<Vec<_>>()
    };
    json!({
        "state": clearance["state"],
        "roles": marks(&clearance["roles"]),
        "blocks": blocks(&clearance["blocks"]),
        "marks": marks(&day["marks"]),
        "missed": day["briefing"]["missed"],
        "readings": values(&day["readings"], "value"),
        "equipment": values(&day["equipment"], "state"),
        "why_not": blocks(&clearance["go"]["why_not"]),
    })
    .to_string()
    .replace(&format!("H-{number}"), "H")
}

/// A small generator of numbers, so that the orders are the same in every run.
struct Dice(u64);

impl Dice {
    fn below(&mut self, most: usize) -> usize {
        self.0 = self
            .0
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1);
        usize::try_from(self.0 >> 33).unwrap() % most
    }
}

#[test]
fn whatever_order_entries_arrive_in_the_end_is_the_same() {
    let world = World::new();
    let medic = world.medic();
    let (_, rigger) = world.member(
        "C04",
        "Žofie Marková",
        "zofie@example.test",
        &["first_ad", "rigging"],
    );
    let medic = Phone::register(&world, &medic, 7);
    let rigger = Phone::register(&world, &rigger, 8);
    let desk = Phone::register(&world, &world.coordinator, 9);
    let mut dice = Dice(3);
    let mut first: Option<String> = None;
    for number in 1..=30 {
        let made = gag(&world, number);
        let queues = hour(&world, made, [&medic, &rigger, &desk]);
        let mut sent = [0; 3];
        while let Some(from) = {
            let left: Vec<usize> = (0..3).filter(|at| sent[*at] < queues[*at].len()).collect();
            (!left.is_empty()).then(|| left[dice.below(left.len())])
        } {
            queues[from][sent[from]].send(&world);
            // The answer was lost on the way back: the phone sends the entry again.
            if dice.below(3) == 0 {
                queues[from][sent[from]].send(&world);
            }
            sent[from] += 1;
        }
        let all = [&medic, &rigger, &desk].map(|one| told(&world, made.0, &one.token, number));
        assert_eq!(all[0], all[2], "every screen says the same");
        assert_eq!(all[1], all[2], "every screen says the same");
        let first = first.get_or_insert_with(|| all[0].clone());
        assert_eq!(*first, all[0], "order {number}");
        assert!(
            first.contains("declined") && first.contains("held"),
            "{first}"
        );
    }
}
