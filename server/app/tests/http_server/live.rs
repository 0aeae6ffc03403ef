//! Live changes: a phone that listens hears of a hold at once.

use std::{
    io::{BufRead, BufReader, Write},
    net::TcpStream,
    time::{Duration, Instant},
};

use serde_json::{Value, json};
use uuid::Uuid;

use crate::support::World;

/// A listening phone, with no client library between it and the wire.
struct Phone(BufReader<TcpStream>);

impl Phone {
    fn listen(world: &World, query: &str, header: &str) -> Self {
        let host = world.server.url.trim_start_matches("http://");
        let mut wire = TcpStream::connect(host).unwrap();
        wire.set_read_timeout(Some(Duration::from_secs(5))).unwrap();
        let path = world.at("/events");
        write!(
            wire,
            "GET /api/v1{path}{query} HTTP/1.1\r\nHost: {host}\r\n{header}\r\n"
        )
        .unwrap();
        let mut phone = Self(BufReader::new(wire));
        assert!(phone.line().contains("200"));
        while !phone.line().contains("connected") {}
        phone
    }

    fn line(&mut self) -> String {
        let mut line = String::new();
        self.0
            .read_line(&mut line)
            .expect("something within five seconds");
        assert!(!line.is_empty(), "the server hung up");
        line
    }

    /// The next event's data.
    fn hear(&mut self) -> Value {
        loop {
            let line = self.line();
            if let Some(data) = line.strip_prefix("data: ") {
                return serde_json::from_str(data).unwrap();
            }
        }
    }
}

fn hold(world: &World) {
    let body = json!({ "id": Uuid::now_v7(), "reason": "wind" });
    world
        .call("POST", &world.at("/holds"))
        .once()
        .json(&body)
        .send()
        .expect(201);
}

#[test]
#[allow(clippy::disallowed_methods)] // the promise is about real time
fn a_hold_is_heard_within_a_second() {
    let world = World::new();
    let size = world.trail_size();
    let mut phone = Phone::listen(&world, &format!("?access_token={}", world.coordinator), "");
    let raised = Instant::now();
    hold(&world);
    let event = phone.hear();
    assert!(
        raised.elapsed() < Duration::from_secs(1),
        "{:?}",
        raised.elapsed()
    );
    assert_eq!(
        (&event["kind"], &event["index"]),
        (&json!("hold.raised"), &json!(size))
    );
    assert!(event["hold"].is_string(), "{event}");
    assert!(event["actor_name"].is_string(), "{event}");
    assert_eq!(event["gag"], Value::Null, "it stops everything");
}

#[test]
fn a_phone_that_comes_back_hears_what_it_missed() {
    let world = World::new();
    let size = world.trail_size();
    hold(&world);
    hold(&world);
    let headers = format!(
        "Authorization: Bearer {}\r\nLast-Event-ID: {}\r\n",
        world.coordinator,
        size - 1
    );
    let mut phone = Phone::listen(&world, "", &headers);
    assert_eq!(phone.hear()["index"], size);
    assert_eq!(phone.hear()["index"], size + 1);
}

#[test]
fn a_stream_ends_with_its_token() {
    let world = World::new();
    let account = world.server.tokens.read(&world.coordinator).unwrap().sub;
    let almost_over = gagwright::clock::now() - gagwright::tokens::ACCESS_LIFE
        + jiff::SignedDuration::from_secs(3);
    let (token, _) = world.server.tokens.issue(account, almost_over).unwrap();
    let mut phone = Phone::listen(&world, &format!("?access_token={token}"), "");
    // The end of a chunked answer (RFC 9112, section 7.1) is a chunk of no bytes.
    while phone.line().trim_end() != "0" {}
}

#[test]
fn a_stream_ends_for_whoever_is_taken_off_the_production() {
    let world = World::new();
    let (person, token) = world.member("P02", "Oke Larsen", "oke@example.test", &["observer"]);
    let mut phone = Phone::listen(&world, &format!("?access_token={token}"), "");
    let path = world.at(&format!("/members/{person}"));
    let taken = world
        .call("PUT", &path)
        .once()
        .json(&json!({ "roles": [] }));
    taken.send().expect(200);
    // The end of a chunked answer, and before it not a word of what happened since.
    loop {
        let line = phone.line();
        assert!(!line.starts_with("data"), "{line}");
        if line.trim_end() == "0" {
            break;
        }
    }
}

#[test]
fn strangers_hear_nothing_and_a_query_token_opens_nothing_else() {
    let world = World::new();
    let path = world.at("/events");
    world
        .server
        .call("GET", &path)
        .send()
        .refused(401, "not_signed_in");
    world
        .server
        .call("GET", &format!("{path}?access_token=x"))
        .send()
        .refused(401, "not_signed_in");
    let elsewhere = format!("{}?access_token={}", world.at("/people"), world.coordinator);
    world
        .server
        .call("GET", &elsewhere)
        .send()
        .refused(401, "not_signed_in");
}

#[test]
#[allow(clippy::disallowed_methods)] // how long stopping takes is the point
fn a_stopping_server_hangs_up_on_listeners() {
    let world = World::new();
    let _phone = Phone::listen(&world, &format!("?access_token={}", world.coordinator), "");
    let asked = Instant::now();
    world.server.stop();
    assert!(
        asked.elapsed() < Duration::from_secs(3),
        "{:?}",
        asked.elapsed()
    );
}
