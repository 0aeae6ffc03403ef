//! Witnesses and their cosignatures: kept whole, one name at a time, no cosignature twice.

use gagwright_store::witnesses::{
    Cosignature, Witness, cosignatures, cosignatures_of, insert, insert_cosignature, list, remove,
};

use crate::support::{
    assert_conflict,
    build::{self, at},
    databases, write,
};

fn witness(leaf: u64) -> Witness {
    Witness {
        leaf,
        name: "witness.example/w1".to_owned(),
        key: format!("witness.example/w1+0000000{leaf}+AAAA"),
        added_at: at(i64::try_from(leaf).unwrap()),
        removed_at: None,
    }
}

fn cosignature(size: u64, key: &str, seconds: u64) -> Cosignature {
    Cosignature {
        size,
        key: key.to_owned(),
        name: "witness.example/w1".to_owned(),
        line: format!("\u{2014} witness.example/w1 {size}{key}="),
        seconds,
        received_at: at(i64::try_from(size).unwrap()),
    }
}

#[test]
fn a_name_is_free_again_once_its_witness_is_removed() {
    for database in databases() {
        let store = database.ready();
        let production = build::stage(&store).production;
        let (first, second) = (witness(3), witness(7));
        let (one, again) = (first.clone(), second.clone());
        write(&store, move |conn| insert(conn, production, &one)).unwrap();
        assert_conflict(
            write(&store, move |conn| insert(conn, production, &again)),
            "witness",
            "of this name is there",
        );
        let next = second.clone();
        write(&store, move |conn| {
            remove(conn, production, "witness.example/w1", at(60))?;
            insert(conn, production, &next)
        })
        .unwrap();
        let removed = Witness {
            removed_at: Some(at(60)),
            ..first
        };
        let listed = store.read(|conn| list(conn, production)).unwrap();
        assert_eq!(listed, [removed, second], "{}", database.name);
        let nobody = write(&store, move |conn| {
            remove(conn, production, "witness.example/w2", at(61))
        });
        assert!(nobody.is_err());
    }
}

#[test]
fn a_key_cosigns_a_size_once_and_several_keys_each_for_themselves() {
    for database in databases() {
        let store = database.ready();
        let production = build::stage(&store).production;
        // By size, whichever came first; and 2^53 + 1, which only a whole number holds.
        let kept = [
            cosignature(2, "a", 9_007_199_254_740_993),
            cosignature(5, "a", 50),
            cosignature(5, "b", 51),
        ];
        let rows = kept.clone();
        write(&store, move |conn| {
            for row in rows.iter().rev() {
                insert_cosignature(conn, production, row)?;
            }
            Ok(())
        })
        .unwrap();
        let all = store.read(|conn| cosignatures(conn, production)).unwrap();
        assert_eq!(all, kept, "{}", database.name);
        let of_five = store.read(|conn| cosignatures_of(conn, production, 5));
        assert_eq!(of_five.unwrap(), kept[1..]);
        let of_four = store.read(|conn| cosignatures_of(conn, production, 4));
        assert_eq!(of_four.unwrap(), []);
        // Another time of the same key for the same size is a second one all the same.
        assert_conflict(
            write(&store, move |conn| {
                insert_cosignature(conn, production, &cosignature(5, "a", 52))
            }),
            "cosignature",
            "cosigned this size before",
        );
    }
}
