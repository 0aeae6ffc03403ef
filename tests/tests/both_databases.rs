//! One production's day over HTTP, told the same on SQLite and on PostgreSQL: read, refuse, hold,
//! release, print, export and verify.

use gagwright_tests::{Client, DemoServer, Trouble, text};
use serde_json::{Value, json};
use uuid::Uuid;

#[allow(
    missing_docs,
    dead_code,
    clippy::expect_used,
    clippy::panic,
    clippy::unwrap_used
)]
#[path = "../../server/store/tests/support/postgres.rs"]
mod postgres;

#[test]
fn on_sqlite() -> Result<(), Trouble> {
    let folder = tempfile::tempdir()?;
    story(&format!(
        "sqlite:{}",
        folder.path().join("story.db").display()
    ))
}

#[test]
fn on_postgresql() -> Result<(), Trouble> {
    let cluster = postgres::Cluster::start(&["fsync=off"]);
    cluster.create_database("story");
    story(&cluster.url("story"))
}

fn story(database: &str) -> Result<(), Trouble> {
    let server = DemoServer::start(database)?;
    let coordinator = server.sign_in("coordinator")?;
    let observer = server.sign_in("observer")?;

    // The list: every state is there to be seen, and the list says of each gag what its page says.
    let gags = items(
        &coordinator,
        &format!("/productions/{}/gags", coordinator.production),
    )?;
    assert_eq!(gags.len(), 22);
    let cleared = by_state(&gags, "cleared").ok_or("no gag of the demo is cleared")?;
    let id = text(cleared, "/id");
    let (status, page) = coordinator.get(&format!("/gags/{id}"))?;
    assert_eq!(status, 200);
    assert_eq!(text(&page, "/clearance/state"), "cleared");
    assert_eq!(
        page.pointer("/clearance/blocks")
            .and_then(Value::as_array)
            .map(Vec::len),
        Some(0)
    );

    // A test shot comes back as it was logged, on the gag's page as well.
    let shot = json!({
        "id": Uuid::now_v7(), "technique": "high-fall", "inputs": {"drop_height": {"value": 6.1}},
        "measured": {"impact_speed": 10.7}, "load": "bag", "note": "",
        "shot_at": "2026-01-05T09:00:00Z",
    });
    let (status, logged) = coordinator.post(&format!("/gags/{id}/test-shots"), &shot)?;
    assert_eq!(status, 201, "{logged}");
    let (_, page) = coordinator.get(&format!("/gags/{id}"))?;
    let kept = page["test_shots"].as_array().and_then(|all| all.last());
    assert_eq!(kept, Some(&logged));
    for field in ["inputs", "measured", "load", "shot_at"] {
        assert_eq!(logged[field], shot[field], "{field}");
    }
    assert_eq!(text(&page, "/clearance/state"), "cleared");

    // Someone who only reads the record may hold, like anyone, and may do nothing else.
    let before = trail_size(&observer)?;
    let (status, problem) = observer.post(
        &format!("/gags/{id}/runs"),
        &json!({
            "id": Uuid::now_v7(), "rung": "dry", "good": true, "revision": 1,
            "at": "2026-01-05T09:00:00Z",
        }),
    )?;
    assert_eq!(
        (status, text(&problem, "/code").as_str()),
        (403, "forbidden")
    );
    assert_eq!(
        trail_size(&observer)?,
        before,
        "a refused write left a leaf"
    );
    let hold = Uuid::now_v7();
    let (status, _) = observer.post(
        &format!("/productions/{}/holds", observer.production),
        &json!({"id": hold, "gag": id, "reason": "Someone is inside the line"}),
    )?;
    assert_eq!(status, 201);
    assert_eq!(trail_size(&observer)?, before + 1);
    let (_, page) = coordinator.get(&format!("/gags/{id}"))?;
    assert_eq!(text(&page, "/clearance/state"), "held");

    // Released with its cause, it is cleared again: nothing else had changed.
    let (status, _) = coordinator.post(
        &format!("/holds/{hold}/agreements"),
        &json!({"role": "coordinator", "cause": "Walked the line; the way is clear."}),
    )?;
    assert_eq!(status, 201);
    let (_, page) = coordinator.get(&format!("/gags/{id}"))?;
    assert_eq!(text(&page, "/clearance/state"), "cleared");

    // Paper and proof.
    let packet = coordinator.bytes(&format!("/gags/{id}/packet?paper=a4"))?;
    assert!(packet.starts_with(b"%PDF-"));
    let export = observer.bytes(&format!(
        "/productions/{}/trail/export",
        observer.production
    ))?;
    let verified = gagwright_trail::verify_export(std::str::from_utf8(&export)?)?;
    assert_eq!(verified.size, trail_size(&observer)?);
    let (_, shown) = observer.get(&format!(
        "/productions/{}/trail?limit=1",
        observer.production
    ))?;
    assert_eq!(text(&shown, "/root"), verified.root.to_hex());
    Ok(())
}

fn items(client: &Client, path: &str) -> Result<Vec<Value>, Trouble> {
    let (status, list) = client.get(path)?;
    assert_eq!(status, 200, "{list}");
    Ok(list["items"].as_array().cloned().unwrap_or_default())
}

fn by_state<'a>(gags: &'a [Value], state: &str) -> Option<&'a Value> {
    gags.iter().find(|gag| gag["state"] == state)
}

fn trail_size(client: &Client) -> Result<u64, Trouble> {
    let (_, production) = client.get(&format!("/productions/{}", client.production))?;
    production["trail_size"]
        .as_u64()
        .ok_or_else(|| "no trail size".into())
}
