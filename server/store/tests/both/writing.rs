//! The writer: answers come after the commit, a write that fails leaves nothing, and nothing that one
//! write does hurts another.

use std::{sync::mpsc, thread, time::Duration};

use diesel::{Connection as _, connection::SimpleConnection};
use gagwright_store::{Connection, Store, StoreError, accounts, meta};

use crate::support::{TestDatabase, build, databases};

fn set(store: &Store, key: &'static str) -> Result<(), StoreError> {
    store.write(move |conn| meta::set(conn, key, "kept"))
}

fn kept(store: &Store, key: &str) -> bool {
    store.read(|conn| meta::get(conn, key)).unwrap().is_some()
}

#[test]
fn writes_of_one_group_are_answered_only_after_their_common_commit() {
    for database in databases() {
        let store = database.ready();
        // The second write must queue while the first one runs. That cannot be seen from outside, so a
        // busy machine may need another try with more time.
        let shared = [50, 500, 3000]
            .into_iter()
            .any(|patience| share_a_group(&store, Duration::from_millis(patience), database.name));
        assert!(
            shared,
            "{}: the first was answered before the second had run",
            database.name
        );
    }
}

/// Two writes of which the second queues while the first runs. False when they did not come to share a
/// group.
fn share_a_group(store: &Store, patience: Duration, name: &str) -> bool {
    store.write(|conn| meta::remove(conn, "early")).unwrap();
    let (early_ran, has_early_run) = mpsc::channel();
    let (finish_early, may_early_finish) = mpsc::channel::<()>();
    let (late_ran, has_late_run) = mpsc::channel();
    let (finish_late, may_late_finish) = mpsc::channel::<()>();
    let (answer, answered) = mpsc::channel();
    thread::scope(|scope| {
        scope.spawn(move || {
            let result = store.write(move |conn| {
                meta::set(conn, "early", "kept")?;
                early_ran.send(()).unwrap();
                may_early_finish.recv().unwrap();
                Ok::<_, StoreError>(())
            });
            answer.send(result).unwrap();
        });
        has_early_run.recv().unwrap();
        scope.spawn(move || {
            store
                .write(move |conn| {
                    assert!(meta::get(conn, "early")?.is_some());
                    late_ran.send(()).unwrap();
                    may_late_finish.recv().unwrap();
                    Ok::<_, StoreError>(())
                })
                .unwrap();
        });
        thread::sleep(patience);
        finish_early.send(()).unwrap();
        has_late_run.recv().unwrap();
        // The first has run and returned. As long as the second runs, their common commit is to come,
        // so nobody else sees the first and nobody has been answered.
        let unanswered = answered.recv_timeout(Duration::from_millis(200)).is_err();
        if unanswered {
            assert!(!kept(store, "early"), "{name}: visible before the commit");
        }
        finish_late.send(()).unwrap();
        if unanswered {
            answered.recv().unwrap().unwrap();
        }
        assert!(kept(store, "early"), "{name}: answered and not kept");
        unanswered
    })
}

#[test]
fn an_answered_write_is_seen_by_every_later_read() {
    for database in databases() {
        let store = database.ready();
        let other_process = database.open();
        for number in 0..50u32 {
            store
                .write(move |conn| meta::set(conn, "count", &number.to_string()))
                .unwrap();
            let seen = other_process.read(|conn| meta::get(conn, "count")).unwrap();
            assert_eq!(seen, Some(number.to_string()), "{}", database.name);
        }
    }
}

#[test]
fn a_write_that_fails_leaves_nothing_and_its_neighbours_alone() {
    for database in databases() {
        let store = database.ready();
        let results: Vec<Result<(), StoreError>> = thread::scope(|scope| {
            let writers: Vec<_> = (0..40u32)
                .map(|number| {
                    let store = store.clone();
                    scope.spawn(move || {
                        store.write(move |conn| {
                            meta::set(conn, &format!("key {number}"), "x")?;
                            match number % 4 {
                                0 => Err(StoreError::NotFound {
                                    what: "gag",
                                    id: "G99".into(),
                                }),
                                1 => panic!("write {number} gave up"),
                                _ => Ok(()),
                            }
                        })
                    })
                })
                .collect();
            writers
                .into_iter()
                .map(|writer| writer.join().unwrap())
                .collect()
        });
        for (number, result) in results.iter().enumerate() {
            let expected = match number % 4 {
                0 => matches!(result, Err(StoreError::NotFound { .. })),
                1 => *result == Err(StoreError::Internal(format!("write {number} gave up"))),
                _ => result.is_ok(),
            };
            assert!(
                expected,
                "{}: write {number} gave {result:?}",
                database.name
            );
            assert_eq!(
                kept(&store, &format!("key {number}")),
                number % 4 > 1,
                "{number}"
            );
        }
    }
}

#[test]
fn a_panic_inside_a_nested_transaction_undoes_the_whole_write() {
    for database in databases() {
        let store = database.ready();
        let result = store.write(|conn| {
            meta::set(conn, "outer", "x")?;
            conn.transaction(|conn| {
                meta::set(conn, "inner", "x")?;
                conn.transaction(|conn| -> Result<(), StoreError> {
                    meta::set(conn, "innermost", "x")?;
                    panic!("three deep")
                })
            })
        });
        assert_eq!(result, Err(StoreError::Internal("three deep".to_owned())));
        for key in ["outer", "inner", "innermost"] {
            assert!(!kept(&store, key), "{}: {key}", database.name);
        }
        set(&store, "next").unwrap();
        assert!(kept(&store, "next"));
    }
}

#[test]
fn a_write_that_hides_a_failed_statement_hurts_only_itself() {
    for database in databases() {
        let store = database.ready();
        thread::scope(|scope| {
            let (go, may_go) = mpsc::channel::<()>();
            let holder = store.clone();
            scope.spawn(move || {
                holder.write(move |_| {
                    may_go.recv().unwrap();
                    Ok::<_, StoreError>(())
                })
            });
            thread::sleep(Duration::from_millis(30));
            let hiding = store.clone();
            let hidden = scope.spawn(move || {
                hiding.write(|conn| {
                    meta::set(conn, "hidden", "x")?;
                    let failed = conn.batch_execute("SELECT * FROM no_such_table");
                    assert!(failed.is_err());
                    Ok::<_, StoreError>(())
                })
            });
            thread::sleep(Duration::from_millis(30));
            let honest = store.clone();
            let neighbour = scope.spawn(move || set(&honest, "honest"));
            thread::sleep(Duration::from_millis(30));
            go.send(()).unwrap();
            neighbour.join().unwrap().unwrap();
            // PostgreSQL refuses to go on after a failed statement; SQLite does not mind. Whichever it
            // is, the answer says what was kept.
            let answer = hidden.join().unwrap();
            assert_eq!(
                answer.is_ok(),
                kept(&store, "hidden"),
                "{}: {answer:?}",
                database.name
            );
        });
        assert!(kept(&store, "honest"), "{}", database.name);
    }
}

#[test]
fn a_write_from_inside_a_write_is_an_error_and_not_a_standstill() {
    for database in databases() {
        let store = database.ready();
        let inner = store.clone();
        let result = store.write(move |_| set(&inner, "inner"));
        assert!(
            matches!(result, Err(StoreError::Internal(_))),
            "{}: {result:?}",
            database.name
        );
    }
}

#[test]
fn the_last_handle_may_be_dropped_inside_a_write() {
    for database in databases() {
        let store = database.ready();
        let (done, is_done) = mpsc::channel();
        let (go, may_go) = mpsc::channel::<()>();
        let moved = store.clone();
        let caller = thread::spawn(move || {
            let inside = moved.clone();
            let result = moved.write(move |conn| {
                may_go.recv().unwrap();
                drop(inside);
                meta::set(conn, "last", "x")
            });
            done.send(result).unwrap();
        });
        drop(store);
        go.send(()).unwrap();
        is_done
            .recv_timeout(Duration::from_secs(10))
            .unwrap()
            .unwrap();
        caller.join().unwrap();
        assert!(kept(&database.open(), "last"), "{}", database.name);
    }
}

#[test]
fn a_full_disk_refuses_the_write_and_keeps_what_was_answered() {
    let database = TestDatabase::sqlite();
    let store = database.ready();
    set(&store, "before").unwrap();
    let filled = store.write(|conn| {
        // SQLite answers as on a full disk when the file may not grow.
        conn.batch_execute("PRAGMA max_page_count = 1")
            .map_err(StoreError::from)?;
        let long = "x".repeat(4_000_000);
        meta::set(conn, "during", &long)
    });
    assert!(matches!(filled, Err(StoreError::Full(_))), "{filled:?}");
    assert!(filled.unwrap_err().to_string().contains("free disk space"));
    assert!(!kept(&store, "during"));
    let store = database.open();
    assert!(kept(&store, "before"));
    set(&store, "after").unwrap();
    assert!(kept(&store, "after"));
}

#[test]
fn a_postgres_that_was_restarted_is_used_again() {
    let cluster = crate::support::postgres::Cluster::start(&[]);
    cluster.create_database("again");
    let store = Store::open(&cluster.url("again")).unwrap();
    store.migrate().unwrap();
    set(&store, "before").unwrap();
    assert!(kept(&store, "before"));
    cluster.crash();
    let down = set(&store, "down").unwrap_err();
    assert!(matches!(down, StoreError::Unavailable(_)), "{down:?}");
    cluster.resume();
    set(&store, "after").unwrap();
    for (key, expected) in [("before", true), ("down", false), ("after", true)] {
        assert_eq!(kept(&store, key), expected, "{key}");
    }
}

#[test]
fn another_process_that_writes_is_waited_for() {
    let database = TestDatabase::sqlite();
    let store = database.ready();
    let other = database.open();
    let (holding, is_holding) = mpsc::channel();
    thread::scope(|scope| {
        scope.spawn(move || {
            other
                .write(move |conn| {
                    meta::set(conn, "other", "x")?;
                    holding.send(()).unwrap();
                    thread::sleep(Duration::from_millis(300));
                    Ok::<_, StoreError>(())
                })
                .unwrap();
        });
        is_holding.recv().unwrap();
        // Sees what the other committed, as it began only afterwards.
        let seen = store.write(|conn| meta::get(conn, "other")).unwrap();
        assert_eq!(seen.as_deref(), Some("x"));
    });
}

#[test]
fn a_caller_may_have_an_error_of_its_own() {
    #[derive(Debug, PartialEq)]
    enum Refusal {
        TooWindy,
        Store(StoreError),
    }
    impl From<StoreError> for Refusal {
        fn from(error: StoreError) -> Self {
            Refusal::Store(error)
        }
    }
    for database in databases() {
        let store = database.ready();
        let refused = store.write(|conn| {
            meta::set(conn, "gust", "14.2")?;
            Err::<(), _>(Refusal::TooWindy)
        });
        assert_eq!(refused, Err(Refusal::TooWindy));
        let counted: Result<u64, Refusal> = store.read(|conn| Ok(accounts::count(conn)?));
        assert_eq!(counted, Ok(0));
        assert!(!kept(&store, "gust"), "{}", database.name);
    }
}

#[test]
fn a_connection_is_given_and_not_made() {
    // The two kinds are told apart where SQL differs; nothing else needs to know.
    for database in databases() {
        let store = database.ready();
        build::stage(&store);
        let kind = store
            .read(|conn| {
                Ok::<_, StoreError>(match conn {
                    Connection::Sqlite(_) => "SQLite",
                    Connection::Postgres(_) => "PostgreSQL",
                })
            })
            .unwrap();
        assert_eq!(kind, store.kind());
    }
}
