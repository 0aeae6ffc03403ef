//! Sign-ins and their refresh tokens: each token is good once, and two live copies give themselves away.

use gagwright_store::{
    Store, StoreError, accounts,
    sessions::{self, Agent, Session, Taken},
};
use jiff::Timestamp;
use uuid::Uuid;

use crate::{
    access::account,
    support::{
        TestDatabase,
        build::{at, id},
        databases,
    },
};

fn token(number: u8, family: Uuid, account: Uuid) -> Session {
    Session {
        id: id(200 + u128::from(number)),
        family,
        account,
        token_hash: vec![number; 32],
        issued_at: at(0),
        expires_at: at(1000),
        used_at: None,
        revoked_at: None,
        agent: Agent::default(),
    }
}

/// Takes one token and, where it is good, gives out another, as a server does in one write.
fn rotate(store: &Store, number: u8, next: u8, now: Timestamp) -> Taken {
    store
        .write(move |conn| {
            let taken = sessions::take(conn, &[number; 32], now)?;
            if let Taken::Fresh(session) = &taken {
                let mut successor = token(next, session.family, session.account);
                successor.issued_at = now;
                sessions::insert(conn, &successor)?;
            }
            Ok::<_, StoreError>(taken)
        })
        .unwrap()
}

/// A database with tokens 1 of one sign-in and 90 of another.
fn two_sign_ins(database: &TestDatabase) -> Store {
    let store = database.ready();
    store
        .write(|conn| {
            accounts::insert(conn, &account(1, "iluka@example.org"))?;
            sessions::insert(conn, &token(1, id(301), id(1)))?;
            sessions::insert(conn, &token(90, id(302), id(1)))
        })
        .unwrap();
    store
}

#[test]
fn a_lost_answer_does_not_end_the_sign_in() {
    for database in databases() {
        let store = two_sign_ins(&database);
        assert_eq!(rotate(&store, 9, 10, at(1)), Taken::Unknown);
        let Taken::Fresh(first) = rotate(&store, 1, 2, at(1)) else {
            panic!("the first use is good")
        };
        assert_eq!((first.family, first.used_at), (id(301), Some(at(1))));
        // The answers with tokens 2 and 3 never arrive; the phone still has token 1.
        assert!(matches!(rotate(&store, 1, 3, at(2)), Taken::Fresh(_)));
        assert!(matches!(rotate(&store, 1, 4, at(3)), Taken::Fresh(_)));
        assert!(matches!(rotate(&store, 4, 5, at(4)), Taken::Fresh(_)));
        assert!(matches!(rotate(&store, 5, 6, at(5)), Taken::Fresh(_)));
    }
}

#[test]
fn two_live_copies_end_the_sign_in_for_both() {
    for database in databases() {
        let name = &database.name;
        // Token 1 was copied. The thief has token 2 for it, the owner comes with token 1 and gets 3.
        let store = two_sign_ins(&database);
        rotate(&store, 1, 2, at(1));
        rotate(&store, 1, 3, at(2));
        let Taken::Reused(stolen) = rotate(&store, 2, 4, at(3)) else {
            panic!("{name}: token 2 is revoked while its family lives")
        };
        assert_eq!(stolen.family, id(301));
        assert_eq!(rotate(&store, 3, 5, at(4)), Taken::Expired, "{name}");
        assert_eq!(rotate(&store, 1, 6, at(5)), Taken::Expired, "{name}");
        assert!(
            matches!(rotate(&store, 90, 91, at(6)), Taken::Fresh(_)),
            "{name}: another sign-in is untouched"
        );
    }
}

#[test]
fn sign_ins_are_told_from_their_tokens() {
    for database in databases() {
        let name = &database.name;
        let store = two_sign_ins(&database);
        rotate(&store, 1, 2, at(10));
        let told = store
            .read(|conn| sessions::sign_ins(conn, id(1), at(20)))
            .unwrap();
        let families: Vec<_> = told
            .iter()
            .map(|one| (one.family, one.started_at, one.last_used_at))
            .collect();
        assert_eq!(
            families,
            [(id(301), at(0), at(10)), (id(302), at(0), at(0))],
            "{name}"
        );
        // The used token's family is told by either of its tokens.
        for number in [1, 2] {
            let family = store.read(|conn| sessions::family_of(conn, &[number; 32]));
            assert_eq!(family.unwrap(), Some(id(301)), "{name}");
        }
        store
            .write(|conn| sessions::revoke_family(conn, id(301), at(30)))
            .unwrap();
        let left = |now| {
            let left = store.read(|conn| sessions::sign_ins(conn, id(1), now));
            left.unwrap().len()
        };
        assert_eq!((left(at(31)), left(at(1000))), (1, 0), "{name}");
        let owner = |family| store.read(|conn| sessions::account_of(conn, family));
        assert_eq!(owner(id(302)).unwrap(), Some(id(1)), "{name}");
        assert_eq!(owner(id(999)).unwrap(), None, "{name}");
    }
}

#[test]
fn a_copy_that_was_used_further_ends_the_sign_in() {
    for database in databases() {
        let name = &database.name;
        // The thief went on to use token 2 before the owner came with token 1.
        let store = two_sign_ins(&database);
        rotate(&store, 1, 2, at(1));
        rotate(&store, 2, 3, at(2));
        assert!(
            matches!(rotate(&store, 1, 4, at(3)), Taken::Reused(_)),
            "{name}: token 1 has a used successor"
        );
        assert_eq!(rotate(&store, 3, 5, at(4)), Taken::Expired, "{name}");
    }
}

#[test]
fn of_many_who_present_one_token_together_one_holds_a_live_token() {
    for database in databases() {
        let store = two_sign_ins(&database);
        std::thread::scope(|scope| {
            for next in 10..18 {
                let store = &store;
                scope.spawn(move || rotate(store, 1, next, at(1)));
            }
        });
        let live = store
            .write(|conn| sessions::revoke_family(conn, id(301), at(2)))
            .unwrap();
        // Token 1 itself, which is used, and one of the eight.
        assert_eq!(live, 2, "{}", database.name);
    }
}

#[test]
fn tokens_run_out_and_can_be_revoked() {
    for database in databases() {
        let store = database.ready();
        store
            .write(|conn| {
                accounts::insert(conn, &account(1, "iluka@example.org"))?;
                for number in 1..=3 {
                    sessions::insert(conn, &token(number, id(301), id(1)))?;
                }
                Ok::<_, StoreError>(())
            })
            .unwrap();
        let late = store
            .write(|conn| sessions::take(conn, &[1; 32], at(1000)))
            .unwrap();
        assert_eq!(
            late,
            Taken::Expired,
            "good until, not through, its last moment"
        );
        assert_eq!(
            store
                .write(|conn| sessions::revoke_account(conn, id(1), at(5)))
                .unwrap(),
            3
        );
        assert_eq!(
            store
                .write(|conn| sessions::revoke_family(conn, id(301), at(6)))
                .unwrap(),
            0
        );
        let revoked = store
            .write(|conn| sessions::take(conn, &[2; 32], at(7)))
            .unwrap();
        assert_eq!(revoked, Taken::Expired);
        assert_eq!(
            store
                .write(|conn| sessions::purge_before(conn, at(1001)))
                .unwrap(),
            3
        );
    }
}
