//! The API's description and its viewer, the app's files, and the headers that go with each.

use std::collections::BTreeSet;

use serde_json::Value;

use crate::support::{Server, World};

/// Every address the API promises, by method.
const PROMISED: &str = "
GET /status
POST /setup
POST /sessions
DELETE /sessions
POST /sessions/refresh
GET /sessions
DELETE /sessions/{session}
DELETE /sessions/others
PUT /me/password
GET /techniques
POST /techniques/{name}/assessment
GET /techniques/{technique}/limits
POST /techniques/{technique}/spread
POST /techniques/{technique}/sensitivity
POST /techniques/{technique}/solve
POST /techniques/{technique}/calibrate
POST /techniques/{technique}/compare
GET /productions/{production}
GET /productions/{production}/today
GET /productions/{production}/gags
POST /productions/{production}/gags
GET /gags/{gag}
POST /gags/{gag}/plans
GET /gags/{gag}/plans/{revision}
GET /gags/{gag}/matches
GET /gags/{gag}/signoff-draft
POST /gags/{gag}/signoffs
POST /signoffs/{signoff}/conditions-met
POST /handed
GET /productions/{production}/holds
POST /productions/{production}/holds
POST /holds/{hold}/agreements
POST /hold-codes/{code}/holds
POST /gags/{gag}/readings
POST /gags/{gag}/runs
GET /gags/{gag}/test-shots
POST /gags/{gag}/test-shots
POST /gags/{gag}/briefings
POST /gags/{gag}/debriefs
GET /gags/{gag}/day-signoff-draft
POST /gags/{gag}/day-signoffs
POST /gags/{gag}/looks
POST /gags/{gag}/takes
POST /gags/{gag}/takes/{take}/outcome
GET /productions/{production}/day
POST /productions/{production}/equipment
POST /productions/{production}/equipment/{item}/quarantine
POST /productions/{production}/equipment/{item}/release
POST /productions/{production}/equipment/{item}/shock-loads
POST /productions/{production}/incidents
POST /productions/{production}/incidents/{incident}/closings
POST /productions/{production}/incidents/{incident}/told
POST /productions/{production}/stand-downs
POST /productions/{production}/stand-downs/{stand_down}/return
GET /productions/{production}/people
GET /productions/{production}/people/{person}
PUT /productions/{production}/people/{person}
DELETE /productions/{production}/people/{person}
GET /productions/{production}/roster/{table}
POST /productions/{production}/roster/{table}
GET /productions/{production}/devices
POST /productions/{production}/devices
DELETE /productions/{production}/devices/{device}
GET /productions/{production}/invitations
POST /productions/{production}/invitations
DELETE /productions/{production}/invitations/{invitation}
POST /invitations/accept
GET /productions/{production}/members
PUT /productions/{production}/members/{person}
GET /gags/{gag}/packet
GET /productions/{production}/changes
GET /productions/{production}/trail
GET /productions/{production}/trail/checkpoint
GET /productions/{production}/trail/proof
GET /productions/{production}/trail/witnesses
POST /productions/{production}/trail/witnesses
POST /productions/{production}/trail/witnesses/{witness}/remove
POST /productions/{production}/trail/cosignatures
GET /productions/{production}/trail/consistency
GET /productions/{production}/trail/export
GET /productions/{production}/gags/{gag}/at
GET /productions/{production}/events
GET /productions/{production}/delegations
GET /productions/{production}/policies/{version}
GET /productions/{production}/policy
GET /signoffs/{signoff}/photograph
POST /productions/{production}/delegations
POST /productions/{production}/delegations/{delegation}/end
POST /productions/{production}/policy-preview
POST /signoffs/{signoff}/resolutions
PUT /productions/{production}/policy
PUT /signoffs/{signoff}/photograph
";

#[test]
fn the_description_lists_every_address_and_every_address_is_served() {
    let server = Server::start();
    let document = server
        .plain("GET", "/api/v1/openapi.json")
        .send()
        .expect(200);
    assert!(
        document["openapi"].as_str().unwrap().starts_with("3.1"),
        "{}",
        document["openapi"]
    );
    let mut described = BTreeSet::new();
    let mut names = BTreeSet::new();
    for (path, item) in document["paths"].as_object().unwrap() {
        let short = path.strip_prefix("/api/v1").expect("all under /api/v1");
        for (method, operation) in item.as_object().unwrap() {
            described.insert(format!("{} {short}", method.to_uppercase()));
            check_operation(path, operation);
            let name = operation["operationId"].as_str().unwrap().to_owned();
            assert!(names.insert(name.clone()), "{name} names two operations");
        }
    }
    let promised: BTreeSet<String> = PROMISED
        .lines()
        .filter(|line| !line.is_empty())
        .map(str::to_owned)
        .collect();
    assert_eq!(described, promised);

    for promise in &promised {
        let (method, path) = promise.split_once(' ').unwrap();
        let filled: String = path
            .split('/')
            .map(|step| {
                if step.starts_with('{') {
                    "0197f2a0-0000-7000-8000-000000000000"
                } else {
                    step
                }
            })
            .collect::<Vec<_>>()
            .join("/");
        let got = server.call(method, &filled).send();
        let code = if got.status < 300 {
            Value::Null
        } else {
            got.json()["code"].clone()
        };
        assert!(
            code != "no_such_route" && code != "method_not_allowed",
            "{promise}: {}",
            got.text()
        );
        assert_eq!(got.header("cache-control"), "no-store", "{promise}");
    }
}

/// Says what it is for, what it gives back and how it refuses; every reference leads somewhere.
fn check_operation(path: &str, operation: &Value) {
    assert!(
        operation["summary"]
            .as_str()
            .is_some_and(|text| !text.is_empty()),
        "{path}"
    );
    assert!(operation["tags"][0].is_string(), "{path}");
    let responses = operation["responses"].as_object().unwrap();
    assert!(
        responses.keys().any(|status| status.starts_with('2')),
        "{path}"
    );
    assert!(
        responses["500"]["content"]["application/problem+json"].is_object(),
        "{path}"
    );
    for step in path
        .split('/')
        .filter_map(|step| step.strip_prefix('{')?.strip_suffix('}'))
    {
        let named = operation["parameters"]
            .as_array()
            .is_some_and(|parameters| {
                parameters
                    .iter()
                    .any(|one| one["name"] == step && one["in"] == "path")
            });
        assert!(named, "{path} does not describe {step}");
    }
}

#[test]
fn every_reference_in_the_description_leads_somewhere() {
    let document = Server::start()
        .plain("GET", "/api/v1/openapi.json")
        .send()
        .expect(200);
    let mut references = BTreeSet::new();
    collect(&document, &mut references);
    assert!(references.len() > 20);
    for reference in references {
        assert!(document.pointer(&reference[1..]).is_some(), "{reference}");
    }
}

fn collect(value: &Value, into: &mut BTreeSet<String>) {
    match value {
        Value::Object(members) => {
            for (name, member) in members {
                match (name.as_str(), member.as_str()) {
                    ("$ref", Some(reference)) => drop(into.insert(reference.to_owned())),
                    _ => collect(member, into),
                }
            }
        }
        Value::Array(items) => items.iter().for_each(|item| collect(item, into)),
        _ => {}
    }
}

#[test]
fn the_viewer_needs_nothing_from_elsewhere() {
    let server = Server::start();
    let redirect = server.plain("GET", "/api/docs").send();
    assert_eq!(
        (redirect.status, redirect.header("location")),
        (308, "/api/docs/")
    );
    let page = server.plain("GET", "/api/docs/").send();
    assert_eq!(page.status, 200);
    let html = page.text();
    assert!(
        !html.contains("http://") && !html.contains("https://"),
        "{html}"
    );
    assert!(
        page.header("content-security-policy")
            .contains("script-src 'self';")
    );
    let starter = server
        .plain("GET", "/api/docs/swagger-initializer.js")
        .send();
    assert!(
        starter.text().contains("/api/v1/openapi.json"),
        "{}",
        starter.text()
    );
}

#[test]
fn only_navigations_fall_back_to_the_app() {
    let server = Server::start();
    let page = server.plain("GET", "/").send();
    assert_eq!(page.status, 200);
    assert!(page.header("content-type").starts_with("text/html"));
    assert_eq!(page.header("cache-control"), "no-cache");
    assert_eq!(page.header("x-content-type-options"), "nosniff");
    assert_eq!(page.header("referrer-policy"), "no-referrer");
    assert_eq!(page.header("content-encoding"), "");
    let policy = page.header("content-security-policy");
    assert!(
        policy.contains("require-trusted-types-for 'script'"),
        "{policy}"
    );
    assert!(page.header("permissions-policy").contains("camera=(self)"));
    assert!(page.header("vary").contains("Accept-Encoding"));

    let navigate = |path: &str| {
        server
            .plain("GET", path)
            .header("sec-fetch-mode", "navigate")
            .send()
    };
    assert_eq!(
        navigate("/gags/0197f2a0-0000-7000-8000-000000000000").body,
        page.body
    );
    let by_hand = server
        .plain("GET", "/people")
        .header("accept", "text/html")
        .send();
    assert_eq!(by_hand.body, page.body);
    let script = server
        .plain("GET", "/assets/gone-1234.js")
        .header("sec-fetch-mode", "no-cors")
        .send();
    script.refused(404, "no_such_route");
    server
        .plain("GET", "/assets/gone-1234.js")
        .header("accept", "*/*")
        .send()
        .refused(404, "no_such_route");
    server
        .plain("POST", "/")
        .send()
        .refused(405, "method_not_allowed");
    let head = server.plain("HEAD", "/").send();
    assert_eq!((head.status, head.body.len()), (200, 0));

    let known = server
        .plain("GET", "/")
        .header("if-none-match", page.header("etag"))
        .send();
    assert_eq!((known.status, known.body.len()), (304, 0));
}

#[test]
fn answers_of_the_api_are_compressed_and_never_kept() {
    let world = World::new();
    let path = world.at("");
    let got = world
        .call("GET", &path)
        .header("accept-encoding", "gzip")
        .send();
    assert_eq!(got.header("content-encoding"), "gzip");
    assert_eq!(got.header("cache-control"), "no-store");
    assert!(
        got.header("content-security-policy")
            .starts_with("default-src 'none'")
    );
}
