//! What is kept comes back as it was, and what clashes is refused by name.

use std::collections::BTreeSet;

use gagwright_casting::ProductionId;
use gagwright_store::{
    StoreError, devices, gags, holds, meta, people, people::StoredPerson, plans, productions,
};

use crate::support::{
    assert_conflict,
    build::{self, at, id},
    databases, write,
};

#[test]
fn settings_are_kept_by_key() {
    for database in databases() {
        let store = database.ready();
        write(&store, |conn| meta::set(conn, "demo", "no")).unwrap();
        write(&store, |conn| meta::set(conn, "demo", "yes")).unwrap();
        assert_eq!(
            store
                .read(|conn| meta::get(conn, "demo"))
                .unwrap()
                .as_deref(),
            Some("yes")
        );
        assert!(write(&store, |conn| meta::remove(conn, "demo")).unwrap());
        assert!(
            !write(&store, |conn| meta::remove(conn, "demo")).unwrap(),
            "{}",
            database.name
        );
    }
}

#[test]
fn a_production_and_its_policy_come_back() {
    for database in databases() {
        let store = database.ready();
        let made = build::production(1);
        let kept = made.clone();
        write(&store, move |conn| productions::insert(conn, &kept)).unwrap();
        assert_eq!(
            store
                .read(|conn| productions::get(conn, made.id))
                .unwrap()
                .as_ref(),
            Some(&made)
        );
        assert_eq!(
            store
                .read(|conn| productions::by_hold_code(conn, "tide-1"))
                .unwrap()
                .as_ref(),
            Some(&made)
        );
        assert_eq!(
            store
                .read(|conn| productions::by_hold_code(conn, "tide-2"))
                .unwrap(),
            None
        );

        let mut same_code = build::production(2);
        same_code.hold_code = made.hold_code.clone();
        assert_conflict(
            write(&store, move |conn| productions::insert(conn, &same_code)),
            "production",
            "hold code",
        );

        let mut policy = build::policy();
        policy.version = "test.2".to_owned();
        let (production, other) = (made.id, ProductionId(id(9)));
        write(&store, move |conn| {
            productions::set_policy(conn, production, &policy)
        })
        .unwrap();
        let kept = store.read(productions::list).unwrap();
        assert_eq!(kept.len(), 1);
        assert_eq!(kept[0].policy.version, "test.2");
        let error = write(&store, move |conn| {
            productions::set_policy(conn, other, &build::policy())
        });
        assert!(matches!(
            error,
            Err(StoreError::NotFound {
                what: "production",
                ..
            })
        ));
    }
}

#[test]
fn a_person_is_changed_only_from_the_version_that_was_read() {
    for database in databases() {
        let store = database.ready();
        let stage = build::stage(&store);
        let read = store
            .read(|conn| people::get(conn, stage.production, stage.one))
            .unwrap();
        let StoredPerson {
            mut person,
            version,
            ..
        } = read.unwrap();
        assert_eq!(
            (person.clone(), version),
            (build::person(11, "P01", "Iluka Märtson"), 1)
        );

        person.occupation = "key rigger".to_owned();
        let (first, production) = (person.clone(), stage.production);
        let version = write(&store, move |conn| {
            people::update(conn, production, &first, Some(1))
        })
        .unwrap();
        assert_eq!(version, 2);

        let late = person.clone();
        assert_conflict(
            write(&store, move |conn| {
                people::update(conn, production, &late, Some(1))
            }),
            "person",
            "version 1 was expected and version 2 is kept",
        );
        let imported = person.clone();
        let version = write(&store, move |conn| {
            people::update(conn, production, &imported, None)
        })
        .unwrap();
        assert_eq!(version, 3, "an import does not ask for a version");

        person.code = "P02".to_owned();
        let taken = person.clone();
        assert_conflict(
            write(&store, move |conn| {
                people::update(conn, production, &taken, None)
            }),
            "person",
            "code",
        );
        let twice = StoredPerson {
            person: build::person(13, "P02", "Somebody else"),
            production,
            version: 1,
        };
        assert_conflict(
            write(&store, move |conn| people::insert(conn, &twice)),
            "person",
            "code",
        );

        let elsewhere = ProductionId(id(2));
        assert_eq!(
            store
                .read(|conn| people::get(conn, elsewhere, stage.one))
                .unwrap(),
            None
        );
        let error = write(&store, move |conn| {
            people::update(conn, elsewhere, &person, None)
        })
        .unwrap_err();
        assert!(
            matches!(error, StoreError::NotFound { what: "person", .. }),
            "{error:?}"
        );

        let both = [stage.two, stage.one];
        let many = store
            .read(|conn| people::get_many(conn, production, &both))
            .unwrap();
        let codes: Vec<_> = many
            .iter()
            .map(|stored| stored.person.code.as_str())
            .collect();
        assert_eq!(codes, ["P01", "P02"], "{}", database.name);
        assert_eq!(
            store
                .read(|conn| people::get_many(conn, production, &[]))
                .unwrap(),
            []
        );
        assert_eq!(
            store.read(|conn| people::list(conn, production)).unwrap(),
            many
        );
    }
}

#[test]
fn of_two_who_write_the_same_revision_one_is_refused() {
    for database in databases() {
        let store = database.ready();
        let stage = build::stage(&store);
        let insert = |revision: u32, author| {
            let plan = build::plan(stage.gag, revision, author);
            write(&store, move |conn| {
                let facets = build::facet_hashes(revision);
                plans::insert(conn, &plan, &format!("{revision:064x}"), &facets, 7)
            })
        };
        let none = store
            .read(|conn| plans::current(conn, stage.gag))
            .unwrap_err();
        assert!(matches!(none, StoreError::NotFound { .. }), "{none:?}");

        insert(1, stage.one).unwrap();
        insert(2, stage.one).unwrap();
        assert_conflict(
            insert(2, stage.two),
            "plan",
            "revision 2 of this gag is written already",
        );
        assert_conflict(
            insert(4, stage.two),
            "plan",
            "revision 4 cannot follow revision 2",
        );

        let current = store.read(|conn| plans::current(conn, stage.gag)).unwrap();
        assert_eq!(current, build::plan(stage.gag, 2, stage.one));
        let first = store.read(|conn| plans::get(conn, stage.gag, 1)).unwrap();
        assert_eq!(first, build::plan(stage.gag, 1, stage.one));
        let gag = store
            .read(|conn| gags::get(conn, stage.gag))
            .unwrap()
            .unwrap();
        assert_eq!(gag.current_revision, 2);
        let history = store.read(|conn| plans::history(conn, stage.gag)).unwrap();
        assert_eq!(
            history.iter().map(|one| one.revision).collect::<Vec<_>>(),
            [1, 2]
        );
        assert_eq!(history[1].facets, build::facet_hashes(2));
        assert_eq!(history[1].digest, format!("{:064x}", 2));
        assert_eq!((history[1].leaf, history[1].author), (7, stage.one));
        assert_eq!(history[1].written_at, at(2));
    }
}

#[test]
fn after_a_conflict_the_same_write_can_read_what_it_clashed_with() {
    for database in databases() {
        let store = database.ready();
        let stage = build::stage(&store);
        let found = write(&store, move |conn| {
            let clash = gags::insert(conn, &build::gag(22, stage.production, "G07"));
            assert!(
                matches!(clash, Err(StoreError::Conflict { what: "gag", .. })),
                "{clash:?}"
            );
            gags::by_code(conn, stage.production, "G07")
        });
        assert_eq!(found.unwrap().unwrap().id, stage.gag, "{}", database.name);
    }
}

#[test]
fn what_refers_to_nothing_is_refused() {
    for database in databases() {
        let store = database.ready();
        let stage = build::stage(&store);
        let nobody = build::device(31, gagwright_casting::PersonId(id(99)));
        assert_conflict(
            write(&store, move |conn| {
                devices::insert(conn, stage.production, &nobody)
            }),
            "device",
            "refers to something that is not there",
        );
        let gone = Some(gagwright_casting::GagId(id(98)));
        assert_conflict(
            write(&store, move |conn| {
                holds::insert(conn, stage.production, &build::hold(41, gone), 0)
            }),
            "hold",
            "refers to something that is not there",
        );
    }
}

#[test]
fn codes_sort_the_same_on_both_databases() {
    let mut orders = BTreeSet::new();
    for database in databases() {
        let store = database.ready();
        let stage = build::stage(&store);
        write(&store, move |conn| {
            for (number, code) in [
                (101, "b2"),
                (102, "B1"),
                (103, "É1"),
                (104, "_x"),
                (105, "a 1"),
            ] {
                gags::insert(conn, &build::gag(number, stage.production, code))?;
            }
            Ok(())
        })
        .unwrap();
        let codes: Vec<String> = store
            .read(|conn| gags::list(conn, stage.production))
            .unwrap()
            .into_iter()
            .map(|gag| gag.code)
            .collect();
        assert_eq!(codes.len(), 6);
        orders.insert(codes);
    }
    assert_eq!(orders.len(), 1, "{orders:?}");
}
