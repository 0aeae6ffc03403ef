//! The trail: indexes without gaps whoever appends, roots and proofs that the pure functions agree
//! with, and personal parts that can be erased without breaking any of it.

use std::thread;

use gagwright_casting::ProductionId;
use gagwright_store::{
    Connection, Store, StoreError, meta, productions,
    trail::{self, NewEntry},
};
use gagwright_trail::{Entry, commitment, consistency_proof, inclusion_proof, leaf_hash, root};
use serde_json::{Value, json};

use crate::support::{
    build::{self, at, id},
    databases,
};

fn append(store: &Store, new: NewEntry) -> Result<Entry, StoreError> {
    store.write(move |conn| trail::append(conn, new))
}

/// Checks that what is stored is one whole tree, and gives its size.
fn verify(conn: &mut Connection, production: ProductionId) -> Result<u64, StoreError> {
    let size = trail::size(conn, production)?;
    let stored = trail::entries(conn, production, 0, u32::MAX)?;
    assert_eq!(stored.len() as u64, size);
    let mut hashes = Vec::new();
    for (index, one) in (0u64..).zip(&stored) {
        assert_eq!(one.entry.index, index);
        assert_eq!(one.entry.bytes().unwrap(), one.bytes);
        hashes.push(leaf_hash(&one.bytes));
    }
    assert_eq!(trail::hashes(conn, production, size)?, hashes);
    assert_eq!(trail::root(conn, production, size)?, root(&hashes));
    Ok(size)
}

#[test]
fn indexes_have_no_gaps_under_eight_threads_and_two_processes() {
    for database in databases() {
        let store = database.ready();
        let stage = build::stage(&store);
        let other_process = database.open();
        thread::scope(|scope| {
            for number in 0..8u32 {
                let store = if number % 2 == 0 {
                    store.clone()
                } else {
                    other_process.clone()
                };
                scope.spawn(move || {
                    for step in 0..25u32 {
                        let entry = build::entry(stage.production, "reading.logged");
                        let result = store.write(move |conn| {
                            let entry = trail::append(conn, entry)?;
                            meta::set(conn, &format!("{number}.{step}"), &entry.index.to_string())?;
                            // Every fifth is refused after its leaf was appended: the leaf goes too.
                            if step % 5 == 4 {
                                return Err(StoreError::NotFound {
                                    what: "x",
                                    id: "y".into(),
                                });
                            }
                            Ok(entry)
                        });
                        assert_eq!(result.is_ok(), step % 5 != 4, "{result:?}");
                    }
                });
            }
        });
        let size = store.read(|conn| verify(conn, stage.production)).unwrap();
        assert_eq!(size, 8 * 20, "{}", database.name);
    }
}

#[test]
fn roots_and_proofs_of_every_size_agree_with_the_pure_functions() {
    for database in databases() {
        let store = database.ready();
        let stage = build::stage(&store);
        let production = stage.production;
        store
            .write(move |conn| {
                for number in 0..37u32 {
                    let mut new = build::entry(production, "gag.created");
                    new.facts.insert("number".to_owned(), json!(number));
                    assert_eq!(trail::append(conn, new)?.index, u64::from(number));
                }
                Ok::<_, StoreError>(())
            })
            .unwrap();
        store
            .read(|conn| {
                let all = trail::hashes(conn, production, 37)?;
                for size in 0..=37u64 {
                    let tree = &all[..size as usize];
                    assert_eq!(trail::root(conn, production, size)?, root(tree), "{size}");
                    if size % 6 != 1 {
                        continue;
                    }
                    for index in 0..size {
                        assert_eq!(
                            trail::inclusion_path(conn, production, index, size)?,
                            inclusion_proof(tree, index).unwrap(),
                            "leaf {index} of {size}"
                        );
                        assert_eq!(
                            trail::consistency_path(conn, production, index + 1, size)?,
                            consistency_proof(tree, index + 1).unwrap(),
                            "{} in {size}",
                            index + 1
                        );
                    }
                    assert_eq!(trail::consistency_path(conn, production, 0, size)?, []);
                }
                Ok::<_, StoreError>(())
            })
            .unwrap();
    }
}

#[test]
fn what_the_tree_does_not_have_is_not_found() {
    for database in databases() {
        let store = database.ready();
        let stage = build::stage(&store);
        let production = stage.production;
        append(&store, build::entry(production, "gag.created")).unwrap();
        let not_found = |result: Result<(), StoreError>| {
            assert!(
                matches!(result, Err(StoreError::NotFound { .. })),
                "{result:?}"
            );
        };
        not_found(store.read(|conn| trail::root(conn, production, 2).map(drop)));
        not_found(store.read(|conn| trail::hashes(conn, production, 2).map(drop)));
        not_found(store.read(|conn| trail::inclusion_path(conn, production, 1, 1).map(drop)));
        not_found(store.read(|conn| trail::inclusion_path(conn, production, 0, 2).map(drop)));
        not_found(store.read(|conn| trail::consistency_path(conn, production, 2, 1).map(drop)));
        not_found(store.read(|conn| trail::root(conn, production, u64::MAX).map(drop)));
        let entry = store
            .read(|conn| trail::entry(conn, production, u64::MAX))
            .unwrap();
        assert_eq!(entry, None, "{}", database.name);
        let entries = store
            .read(|conn| trail::entries(conn, production, u64::MAX, 5))
            .unwrap();
        assert_eq!(entries, []);
    }
}

#[test]
fn an_entry_comes_back_with_its_personal_part_until_that_is_erased() {
    for database in databases() {
        let store = database.ready();
        let stage = build::stage(&store);
        let production = stage.production;
        let personal = json!({"reason": "Swell over the mats", "naïve": "Ἀνδρομέδα", "n": 0.1});
        let salt = [9u8; 32];
        let mut new = build::entry(production, "hold.raised");
        new.gag = Some(stage.gag);
        new.actor = Some(stage.one);
        let part = trail::Part {
            about: Some(stage.one),
            salt,
            said: personal.clone(),
        };
        let kept = trail::Part {
            about: Some(stage.two),
            ..part.clone()
        };
        new.parts.insert("said".to_owned(), part.clone());
        new.parts.insert("other".to_owned(), kept.clone());
        let entry = append(&store, new).unwrap();
        append(&store, build::entry(production, "hold.agreed")).unwrap();
        assert_eq!(entry.at, at(70).to_string());
        assert_eq!(entry.gag, Some(stage.gag.to_string()));
        assert_eq!(entry.actor, Some(stage.one.to_string()));
        assert_eq!(
            entry.commitments["said"],
            commitment(&salt, &personal).unwrap()
        );
        let text = String::from_utf8(entry.bytes().unwrap()).unwrap();
        assert!(
            !text.contains("Swell"),
            "nothing personal in the leaf: {text}"
        );

        let before = store.read(|conn| trail::root(conn, production, 2)).unwrap();
        let stored = store
            .read(|conn| trail::entry(conn, production, 0))
            .unwrap()
            .unwrap();
        assert_eq!(stored.entry, entry);
        assert_eq!(stored.parts["said"], part);
        assert_eq!(stored.parts.len(), 2);

        let erase = || {
            let one = stage.one;
            store
                .write(move |conn| trail::erase_about(conn, production, one))
                .unwrap()
        };
        assert_eq!((erase(), erase()), (1, 0));
        let erased = store
            .read(|conn| trail::entry(conn, production, 0))
            .unwrap()
            .unwrap();
        // What is about others stays.
        assert_eq!(erased.parts, [("other".to_owned(), kept)].into());
        assert_eq!((erased.entry, erased.hash), (entry, stored.hash));
        assert_eq!(store.read(|conn| verify(conn, production)).unwrap(), 2);
        assert_eq!(
            store.read(|conn| trail::root(conn, production, 2)).unwrap(),
            before
        );
    }
}

#[test]
fn pages_go_forwards_and_backwards() {
    for database in databases() {
        let store = database.ready();
        let stage = build::stage(&store);
        let production = stage.production;
        store
            .write(move |conn| {
                (0..10).try_for_each(|_| {
                    trail::append(conn, build::entry(production, "run.logged")).map(drop)
                })
            })
            .unwrap();
        let indexes = |stored: Vec<trail::StoredEntry>| -> Vec<u64> {
            stored.iter().map(|one| one.entry.index).collect()
        };
        let after = |after| {
            store
                .read(|conn| trail::entries(conn, production, after, 4))
                .unwrap()
        };
        assert_eq!(indexes(after(0)), [0, 1, 2, 3]);
        assert_eq!(indexes(after(8)), [8, 9]);
        assert_eq!(indexes(after(10)), [0u64; 0]);
        let before = |before| {
            store
                .read(|conn| trail::entries_before(conn, production, before, 4))
                .unwrap()
        };
        assert_eq!(indexes(before(10)), [9, 8, 7, 6]);
        assert_eq!(indexes(before(2)), [1, 0]);
        assert_eq!(indexes(before(u64::MAX)), [9, 8, 7, 6]);
    }
}

#[test]
fn productions_have_trees_of_their_own() {
    for database in databases() {
        let store = database.ready();
        let stage = build::stage(&store);
        let other = ProductionId(id(2));
        store
            .write(|conn| productions::insert(conn, &build::production(2)))
            .unwrap();
        for production in [stage.production, other, other] {
            append(&store, build::entry(production, "gag.created")).unwrap();
        }
        assert_eq!(
            store.read(|conn| verify(conn, stage.production)).unwrap(),
            1
        );
        assert_eq!(store.read(|conn| verify(conn, other)).unwrap(), 2);
        let nowhere = append(&store, build::entry(ProductionId(id(3)), "gag.created"));
        assert!(
            matches!(nowhere, Err(StoreError::Conflict { .. })),
            "{nowhere:?}"
        );
    }
}

#[test]
fn what_has_no_canonical_form_is_refused_and_leaves_no_leaf() {
    for database in databases() {
        let store = database.ready();
        let stage = build::stage(&store);
        let mut new = build::entry(stage.production, "gag.created");
        new.facts.insert("beyond".to_owned(), Value::from(u64::MAX));
        let error = append(&store, new).unwrap_err();
        assert!(error.to_string().contains("2^53"), "{error}");
        assert_eq!(
            store
                .read(|conn| trail::size(conn, stage.production))
                .unwrap(),
            0
        );
    }
}

#[test]
fn a_leaf_that_was_tampered_with_no_longer_fits_its_tree() {
    use diesel::connection::SimpleConnection;
    for database in databases() {
        let store = database.ready();
        let stage = build::stage(&store);
        for _ in 0..3 {
            append(&store, build::entry(stage.production, "reading.logged")).unwrap();
        }
        store
            .write(|conn| {
                conn.batch_execute(
                    "UPDATE trail_entries SET bytes = replace(bytes, '\"revision\":3', \
                     '\"revision\":4') WHERE position = 1",
                )
                .map_err(StoreError::from)
            })
            .unwrap();
        let (stored, kept) = store
            .read(|conn| {
                let stored = trail::entry(conn, stage.production, 1)?.unwrap();
                Ok::<_, StoreError>((stored, trail::hashes(conn, stage.production, 3)?))
            })
            .unwrap();
        assert_eq!(stored.entry.facts["revision"], 4, "{}", database.name);
        assert_ne!(stored.hash, kept[1], "{}", database.name);
    }
}
