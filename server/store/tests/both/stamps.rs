//! The stamp moves with everything that the cases of a production share, and with nothing else.

use diesel::connection::SimpleConnection;
use gagwright_clearance::{Delegation, RecordId, Resolution, Role};
use gagwright_store::{
    Connection, Store, StoreError, day_records, delegations, devices, gags, holds,
    members::{self, MemberRow},
    meta, people, plans, productions, readings, resolutions, runs, signoffs, stamp, trail,
};
use serde_json::json;

use crate::support::{
    build::{self, Stage, at, id},
    databases, write,
};

type Change = Box<dyn FnOnce(&mut Connection) -> Result<(), StoreError> + Send>;

fn now(store: &Store) -> stamp::Stamp {
    store.read(stamp::now).unwrap()
}

/// Something of everything a case is gathered from, in an order in which each can be.
fn shared(stage: Stage) -> Vec<(&'static str, Change)> {
    let Stage {
        production,
        one,
        two,
        gag,
    } = stage;
    let device = build::device(31, one);
    let said = build::statement(41, production, gag, one, device.id);
    let resolution = Resolution {
        id: RecordId(id(62)),
        signoff: said.id,
        by: two,
        role: Role::Coordinator,
        text: "A larger bag is hired".to_owned(),
        at: at(90),
    };
    let delegation = Delegation {
        id: RecordId(id(61)),
        from: one,
        to: two,
        role: Role::FirstAd,
        gags: vec![gag],
        starts: at(0),
        until: at(7200),
        limits: String::new(),
        made_at: at(0),
        ended_at: None,
    };
    let changed = build::person(11, "P01", "Iluka Varga");
    let member = MemberRow {
        production,
        person: one,
        account: None,
        roles: [Role::Medic].into(),
    };
    vec![
        (
            "production",
            Box::new(|conn: &mut Connection| productions::insert(conn, &build::production(2)))
                as Change,
        ),
        (
            "policy",
            Box::new(move |conn| productions::set_policy(conn, production, &build::policy())),
        ),
        (
            "person",
            Box::new(move |conn| people::update(conn, production, &changed, None).map(drop)),
        ),
        (
            "member",
            Box::new(move |conn| members::upsert(conn, &member)),
        ),
        (
            "device",
            Box::new(move |conn| devices::insert(conn, production, &device)),
        ),
        (
            "gag",
            Box::new(move |conn| gags::insert(conn, &build::gag(22, production, "G08"))),
        ),
        (
            "plan",
            Box::new(move |conn| {
                let plan = build::plan(gag, 1, one);
                plans::insert(conn, &plan, "d", &build::facet_hashes(1), 3)
            }),
        ),
        (
            "hold",
            Box::new(move |conn| holds::insert(conn, production, &build::hold(71, None), 4)),
        ),
        (
            "day record",
            Box::new(move |conn| {
                let (kind, record) = (day_records::Kind::Look, RecordId(id(81)));
                day_records::insert(conn, production, None, kind, record, &json!({}), 5)
            }),
        ),
        (
            "delegation",
            Box::new(move |conn| delegations::insert(conn, production, &delegation, 6)),
        ),
        (
            "resolution",
            Box::new(move |conn| {
                signoffs::insert(conn, production, &said, &build::signoff(7))?;
                resolutions::insert(conn, production, gag, &resolution, 8)
            }),
        ),
    ]
}

#[test]
fn whatever_cases_share_moves_the_stamp_and_what_is_undone_gives_it_back() {
    for database in databases() {
        let store = database.ready();
        let beside = database.open();
        let stage = build::stage(&store);
        let mut seen = vec![now(&store)];
        for (what, change) in shared(stage) {
            write(&store, change).unwrap_or_else(|error| panic!("{what}: {error}"));
            // Another process is told as well.
            let after = now(&beside);
            assert_eq!(after, now(&store), "{what}");
            assert!(!seen.contains(&after), "{}: {what}", database.name);
            seen.push(after);
        }
        // Changing a row and taking one away move it as adding one does, and a failed write does not.
        for table in [
            "resolutions",
            "delegations",
            "day_records",
            "holds",
            "plans",
            "members",
            "people",
            "devices",
            "gags",
            "productions",
        ] {
            let column = match table {
                "plans" => "note",
                "members" => "roles",
                "devices" | "productions" => "name",
                "gags" | "people" => "code",
                _ => "document",
            };
            let before = now(&store);
            let failed: Result<(), StoreError> = store.write(move |conn| {
                let was = stamp::now(conn)?;
                conn.batch_execute(&format!("UPDATE {table} SET {column} = {column}"))?;
                let changed = stamp::now(conn)?;
                assert_ne!(was, changed, "{table}");
                Err(StoreError::Internal("thought better of it".to_owned()))
            });
            let told = failed.unwrap_err().to_string();
            assert!(told.contains("thought better"), "{table}: {told}");
            assert_eq!(now(&store), before, "{table}");
        }
        for table in [
            "resolutions",
            "delegations",
            "day_records",
            "holds",
            "plans",
        ] {
            let before = now(&store);
            write(&store, move |conn| {
                Ok(conn.batch_execute(&format!("DELETE FROM {table}"))?)
            })
            .unwrap();
            assert_ne!(now(&store), before, "{}: {table}", database.name);
        }
    }
}

#[test]
fn a_sign_off_and_what_else_belongs_to_one_gag_alone_leave_the_stamp() {
    for database in databases() {
        let store = database.ready();
        let stage = build::stage(&store);
        let device = build::device(31, stage.one);
        let said = build::statement(41, stage.production, stage.gag, stage.one, device.id);
        write(&store, move |conn| {
            devices::insert(conn, stage.production, &device)
        })
        .unwrap();
        let before = now(&store);
        write(&store, move |conn| {
            trail::append(conn, build::entry(stage.production, "signoff.made"))?;
            signoffs::insert(conn, stage.production, &said, &build::signoff(7))?;
            let reading = build::reading(91, stage.one);
            readings::insert(conn, stage.production, Some(stage.gag), &reading, 8)?;
            runs::insert(conn, stage.gag, &build::run(92, stage.one), 9)?;
            meta::set(conn, "read", "aloud")
        })
        .unwrap();
        assert_eq!(now(&store), before, "{}", database.name);
    }
}
