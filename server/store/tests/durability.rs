//! A write that was answered is there after the process is killed. This program starts itself as the
//! writer, kills it in the middle of its work, and holds what is kept against what was answered. Its
//! own `main` rather than the test harness's, so that it can be both.

#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "support/mod.rs"]
mod support;

use std::{
    collections::BTreeSet,
    io::{BufRead, BufReader, Write},
    process::{Command, Stdio},
    thread,
};

use gagwright_casting::ProductionId;
use gagwright_store::{Store, StoreError, meta, trail};
use gagwright_trail::{leaf_hash, root};
use support::{TestDatabase, build, databases, postgres::Cluster};

/// How many answers the writer gives before it is killed.
const ANSWERS: usize = 300;

fn main() {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    if let [word, url] = arguments.as_slice()
        && word == "write-until-killed"
    {
        return write_until_killed(url);
    }
    for database in databases() {
        for round in 1..=3 {
            killed_process(&database, round);
        }
        println!("{}: every answered write survived kill -9", database.name);
    }
    crashed_server();
    println!("PostgreSQL: every answered write survived a crash of the server");
}

/// Four threads that append to the trail and say so as soon as they are answered.
fn write_until_killed(url: &str) {
    let store = Store::open(url).unwrap();
    let production = ProductionId(build::id(1));
    thread::scope(|scope| {
        for _ in 0..4 {
            scope.spawn(|| {
                loop {
                    let index = store
                        .write(move |conn| {
                            let entry =
                                trail::append(conn, build::entry(production, "run.logged"))?;
                            // A second table, so that half a write would show.
                            meta::set(conn, &format!("leaf {}", entry.index), "kept")?;
                            Ok::<_, StoreError>(entry.index)
                        })
                        .unwrap();
                    let mut out = std::io::stdout().lock();
                    writeln!(out, "{index}").unwrap();
                    out.flush().unwrap();
                }
            });
        }
    });
}

fn killed_process(database: &TestDatabase, round: usize) {
    let store = database.ready();
    if round == 1 {
        build::stage(&store);
    }
    drop(store);
    let mut child = Command::new(std::env::current_exe().unwrap())
        .args(["write-until-killed", &database.url])
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    let mut lines = BufReader::new(child.stdout.take().unwrap()).lines();
    let mut answered: BTreeSet<u64> = BTreeSet::new();
    // This process writes too, while the other does: two writers on one database.
    let beside = database.open();
    for line in lines.by_ref().take(ANSWERS) {
        answered.insert(line.unwrap().parse().unwrap());
        if answered.len().is_multiple_of(50) {
            let production = ProductionId(build::id(1));
            // The other process never pauses, so this one may be told to try again.
            let index = loop {
                let written = beside.write(move |conn| {
                    let entry = trail::append(conn, build::entry(production, "hold.raised"))?;
                    meta::set(conn, &format!("leaf {}", entry.index), "kept")?;
                    Ok::<_, StoreError>(entry.index)
                });
                match written {
                    Err(StoreError::Unavailable(_)) => {}
                    other => break other.unwrap(),
                }
            };
            answered.insert(index);
        }
    }
    // SIGKILL: no handler runs, nothing is flushed.
    child.kill().unwrap();
    child.wait().unwrap();
    // What it said before it died counts as well; a line cut short by the kill does not.
    answered.extend(
        lines
            .map_while(Result::ok)
            .filter_map(|line| line.parse::<u64>().ok()),
    );
    drop(beside);
    assert!(
        answered.len() >= ANSWERS,
        "{}: the writer stopped by itself",
        database.name
    );
    assert_kept(&database.open(), &answered);
}

fn crashed_server() {
    let cluster = Cluster::start(&[]);
    cluster.create_database("crash");
    let url = cluster.url("crash");
    let store = Store::open(&url).unwrap();
    store.migrate().unwrap();
    build::stage(&store);
    let production = ProductionId(build::id(1));
    let answered: BTreeSet<u64> = thread::scope(|scope| {
        let writers: Vec<_> = (0..4)
            .map(|_| {
                scope.spawn(|| {
                    let mut answered = Vec::new();
                    // Until the server is gone.
                    while let Ok(index) = store.write(move |conn| {
                        let entry = trail::append(conn, build::entry(production, "run.logged"))?;
                        meta::set(conn, &format!("leaf {}", entry.index), "kept")?;
                        Ok::<_, StoreError>(entry.index)
                    }) {
                        answered.push(index);
                    }
                    answered
                })
            })
            .collect();
        while store.read(|conn| trail::size(conn, production)).unwrap() < 200 {
            thread::yield_now();
        }
        cluster.crash();
        writers
            .into_iter()
            .flat_map(|writer| writer.join().unwrap())
            .collect()
    });
    cluster.resume();
    assert!(answered.len() >= 150, "{}", answered.len());
    assert_kept(&store, &answered);
}

/// Everything answered is there, whole, in a tree that verifies and has no gap.
fn assert_kept(store: &Store, answered: &BTreeSet<u64>) {
    let production = ProductionId(build::id(1));
    store
        .read(|conn| {
            let size = trail::size(conn, production)?;
            let stored = trail::entries(conn, production, 0, u32::MAX)?;
            let indexes: Vec<u64> = stored.iter().map(|one| one.entry.index).collect();
            assert_eq!(indexes, (0..size).collect::<Vec<_>>());
            let hashes: Vec<_> = stored.iter().map(|one| leaf_hash(&one.bytes)).collect();
            assert_eq!(trail::root(conn, production, size)?, root(&hashes));
            for index in answered {
                assert!(
                    *index < size,
                    "leaf {index} was answered and is lost; there are {size}"
                );
            }
            for index in 0..size {
                let kept = meta::get(conn, &format!("leaf {index}"))?;
                assert!(kept.is_some(), "leaf {index} was kept by half");
            }
            Ok::<_, StoreError>(())
        })
        .unwrap();
}
