//! What is kept comes back as it was, and what clashes is refused by name.

use std::collections::BTreeSet;

use gagwright_casting::ProductionId;
use gagwright_clearance::{Agreement, Role, signoff::ConditionMet};
use gagwright_store::{
    Connection, Store, StoreError, devices, gags, holds, holds::StoredHold, meta, people,
    people::StoredPerson, plans, productions, readings, runs, signoffs,
};

use crate::support::{
    build::{self, at, id},
    databases,
};

/// Runs a write whose error type is the store's.
fn write<T: Send + 'static>(
    store: &Store,
    f: impl FnOnce(&mut Connection) -> Result<T, StoreError> + Send + 'static,
) -> Result<T, StoreError> {
    store.write(f)
}

fn assert_conflict<T: std::fmt::Debug>(result: Result<T, StoreError>, what: &str, words: &str) {
    match result {
        Err(StoreError::Conflict { what: kind, detail }) => {
            assert_eq!(kind, what);
            assert!(detail.contains(words), "{detail}");
        }
        other => panic!("expected a conflict about a {what}, got {other:?}"),
    }
}

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
fn a_sign_off_comes_back_word_for_word_with_the_conditions_met() {
    for database in databases() {
        let store = database.ready();
        let stage = build::stage(&store);
        let device = build::device(31, stage.one);
        let statement = build::statement(51, stage.production, stage.gag, stage.one, device.id);
        let mut expected = build::signoff(4);
        let (kept, registered, said) = (expected.clone(), device.clone(), statement.clone());
        write(&store, move |conn| {
            devices::insert(conn, stage.production, &registered)?;
            signoffs::insert(conn, stage.production, &said, &kept)
        })
        .unwrap();

        let (again, said) = (build::signoff(9), statement.clone());
        assert_conflict(
            write(&store, move |conn| {
                signoffs::insert(conn, stage.production, &said, &again)
            }),
            "sign-off",
            "received before",
        );

        let met = ConditionMet {
            condition: "Second spotter on the rail".to_owned(),
            by: stage.one,
            at: at(35),
        };
        for attempt in 0..2 {
            let met = met.clone();
            let result = write(&store, move |conn| {
                signoffs::add_met(conn, statement.id, &met)
            });
            if attempt == 0 {
                result.unwrap();
            } else {
                assert_conflict(result, "condition", "before");
            }
        }
        expected.met = vec![met];
        let found = store
            .read(|conn| signoffs::get(conn, statement.id))
            .unwrap();
        assert_eq!(found, Some((expected.clone(), stage.gag)));
        let of_gag = store
            .read(|conn| signoffs::for_gag(conn, stage.gag))
            .unwrap();
        assert_eq!(of_gag, [expected.clone()]);
        let of_all = store
            .read(|conn| signoffs::for_gags(conn, stage.production))
            .unwrap();
        assert_eq!(
            of_all.into_iter().collect::<Vec<_>>(),
            [(stage.gag, vec![expected])]
        );
    }
}

#[test]
fn a_device_stays_revoked_since_the_first_time() {
    for database in databases() {
        let store = database.ready();
        let stage = build::stage(&store);
        let device = build::device(31, stage.two);
        let registered = device.clone();
        write(&store, move |conn| {
            devices::insert(conn, stage.production, &registered)
        })
        .unwrap();
        for moment in [at(100), at(200)] {
            let id = device.id;
            write(&store, move |conn| {
                devices::revoke(conn, stage.production, id, moment)
            })
            .unwrap();
        }
        let kept = store
            .read(|conn| devices::get(conn, stage.production, device.id))
            .unwrap();
        assert_eq!(kept.unwrap().revoked_at, Some(at(100)), "{}", database.name);
        let of_person = store
            .read(|conn| devices::for_person(conn, stage.production, stage.two))
            .unwrap();
        assert_eq!(of_person.len(), 1);
        assert_eq!(
            store
                .read(|conn| devices::list(conn, stage.production))
                .unwrap(),
            of_person
        );
        let elsewhere = ProductionId(id(2));
        let error = write(&store, move |conn| {
            devices::revoke(conn, elsewhere, device.id, at(1))
        });
        assert!(matches!(
            error,
            Err(StoreError::NotFound { what: "device", .. })
        ));
    }
}

#[test]
fn holds_on_the_gag_and_on_everything_count_until_released() {
    for database in databases() {
        let store = database.ready();
        let stage = build::stage(&store);
        write(&store, move |conn| {
            gags::insert(conn, &build::gag(22, stage.production, "G08"))?;
            let other = gagwright_casting::GagId(id(22));
            holds::insert(conn, stage.production, &build::hold(41, None), 0)?;
            holds::insert(conn, stage.production, &build::hold(42, Some(stage.gag)), 1)?;
            holds::insert(conn, stage.production, &build::hold(43, Some(other)), 2)
        })
        .unwrap();
        let of_gag = store
            .read(|conn| holds::for_gag(conn, stage.production, stage.gag))
            .unwrap();
        assert_eq!(
            of_gag,
            [build::hold(41, None), build::hold(42, Some(stage.gag))]
        );

        let mut agreed = build::hold(42, Some(stage.gag));
        agreed.agreements.push(Agreement {
            role: Role::Coordinator,
            person: stage.one,
            at: at(90),
            cause: "Mats moved up the slip".to_owned(),
        });
        let (half, whole) = (agreed.clone(), agreed.clone());
        write(&store, move |conn| holds::update(conn, &half, None)).unwrap();
        assert_eq!(
            store
                .read(|conn| holds::open(conn, stage.production))
                .unwrap()
                .len(),
            3
        );
        write(&store, move |conn| {
            holds::update(conn, &whole, Some(at(91)))
        })
        .unwrap();
        assert_eq!(
            store
                .read(|conn| holds::open(conn, stage.production))
                .unwrap()
                .len(),
            2
        );
        let kept = store.read(|conn| holds::get(conn, agreed.id)).unwrap();
        let expected = StoredHold {
            hold: agreed,
            production: stage.production,
            released_at: Some(at(91)),
            leaf: 1,
        };
        assert_eq!(kept.as_ref(), Some(&expected), "{}", database.name);
        assert_eq!(
            store
                .read(|conn| holds::list(conn, stage.production))
                .unwrap()[1],
            expected
        );
    }
}

#[test]
fn readings_and_runs_come_back_to_the_last_bit() {
    for database in databases() {
        let store = database.ready();
        let stage = build::stage(&store);
        write(&store, move |conn| {
            let everywhere = build::reading(61, stage.one);
            readings::insert(conn, stage.production, None, &everywhere, 0)?;
            let here = build::reading(62, stage.two);
            readings::insert(conn, stage.production, Some(stage.gag), &here, 1)?;
            runs::insert(conn, stage.gag, &build::run(71, stage.one), 2)
        })
        .unwrap();
        let (everywhere, here) = (build::reading(61, stage.one), build::reading(62, stage.two));
        let of_gag = store
            .read(|conn| readings::for_gag(conn, stage.production, stage.gag))
            .unwrap();
        assert_eq!(of_gag, [everywhere.clone(), here.clone()]);
        assert_eq!(of_gag[0].value.to_bits(), (0.1f64 + 0.2).to_bits());
        let all = store
            .read(|conn| readings::for_production(conn, stage.production))
            .unwrap();
        assert_eq!(all, [(None, everywhere), (Some(stage.gag), here)]);
        let run = build::run(71, stage.one);
        let of_gag = store.read(|conn| runs::for_gag(conn, stage.gag)).unwrap();
        assert_eq!(of_gag, std::slice::from_ref(&run));
        let by_gag = store
            .read(|conn| runs::for_production(conn, stage.production))
            .unwrap();
        assert_eq!(
            by_gag.into_iter().collect::<Vec<_>>(),
            [(stage.gag, vec![run])]
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
