//! Accounts, memberships, invitations, refresh tokens and answers kept for repeats.

use std::collections::BTreeSet;

use gagwright_clearance::Role;
use gagwright_store::{
    StoreError, accounts,
    accounts::Account,
    idempotency,
    idempotency::Stored,
    invitations,
    invitations::Invitation,
    members,
    members::MemberRow,
    productions, sessions,
    sessions::{Session, Taken},
};
use jiff::Timestamp;
use uuid::Uuid;

use crate::support::{
    build::{self, at, id},
    databases,
};

fn account(number: u128, email: &str) -> Account {
    Account {
        id: id(number),
        email: email.to_owned(),
        name: "Iluka Märtson".to_owned(),
        password_hash: "$argon2id$v=19$m=19456,t=2,p=1$c2FsdA$aGFzaA".to_owned(),
        created_at: at(0),
    }
}

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
    }
}

#[test]
fn one_address_is_one_account_whatever_its_case() {
    for database in databases() {
        let store = database.ready();
        assert_eq!(store.read(accounts::count).unwrap(), 0);
        store
            .write(|conn| accounts::insert(conn, &account(1, " Iluka@Example.org")))
            .unwrap();
        let clash = store.write(|conn| accounts::insert(conn, &account(2, "iluka@example.ORG")));
        assert!(
            matches!(
                clash,
                Err(StoreError::Conflict {
                    what: "account",
                    ..
                })
            ),
            "{clash:?}"
        );
        let found = store
            .read(|conn| accounts::by_email(conn, "ILUKA@example.org"))
            .unwrap();
        assert_eq!(
            found.unwrap().email,
            "iluka@example.org",
            "{}",
            database.name
        );

        store
            .write(|conn| accounts::set_password(conn, id(1), "other"))
            .unwrap();
        let kept = store
            .read(|conn| accounts::by_id(conn, id(1)))
            .unwrap()
            .unwrap();
        assert_eq!(kept.password_hash, "other");
        let nobody = store
            .write(|conn| accounts::set_password(conn, id(7), "x"))
            .unwrap_err();
        assert!(
            matches!(
                nobody,
                StoreError::NotFound {
                    what: "account",
                    ..
                }
            ),
            "{nobody:?}"
        );
        assert_eq!(store.read(accounts::count).unwrap(), 1);
    }
}

#[test]
fn a_refresh_token_is_good_once_and_its_reuse_ends_the_family() {
    for database in databases() {
        let store = database.ready();
        let take = |number: u8, now: Timestamp| {
            store
                .write(move |conn| sessions::take(conn, &[number; 32], now))
                .unwrap()
        };
        store
            .write(|conn| {
                accounts::insert(conn, &account(1, "iluka@example.org"))?;
                sessions::insert(conn, &token(1, id(301), id(1)))?;
                sessions::insert(conn, &token(2, id(301), id(1)))?;
                sessions::insert(conn, &token(3, id(302), id(1)))
            })
            .unwrap();
        assert_eq!(take(9, at(1)), Taken::Unknown);
        let Taken::Fresh(first) = take(1, at(1)) else {
            panic!("the first use is good")
        };
        assert_eq!((first.family, first.used_at), (id(301), Some(at(1))));

        let Taken::Reused(stolen) = take(1, at(2)) else {
            panic!("the second is not")
        };
        assert_eq!(stolen.family, id(301));
        assert_eq!(
            take(2, at(3)),
            Taken::Expired,
            "the next of the family was revoked with it"
        );
        assert!(
            matches!(take(3, at(4)), Taken::Fresh(_)),
            "another sign-in is untouched"
        );
    }
}

#[test]
fn of_two_who_present_one_token_together_one_is_given_the_next() {
    for database in databases() {
        let store = database.ready();
        store
            .write(|conn| {
                accounts::insert(conn, &account(1, "iluka@example.org"))?;
                sessions::insert(conn, &token(1, id(301), id(1)))
            })
            .unwrap();
        let fresh = std::thread::scope(|scope| {
            let takers: Vec<_> = (0..8)
                .map(|_| {
                    scope.spawn(|| {
                        store
                            .write(|conn| sessions::take(conn, &[1; 32], at(1)))
                            .unwrap()
                    })
                })
                .collect();
            takers
                .into_iter()
                .map(|taker| taker.join().unwrap())
                .filter(|taken| matches!(taken, Taken::Fresh(_)))
                .count()
        });
        assert_eq!(fresh, 1, "{}", database.name);
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

#[test]
fn members_have_hats_and_one_account_each() {
    for database in databases() {
        let store = database.ready();
        let stage = build::stage(&store);
        let member = move |person, account, roles: &[Role]| MemberRow {
            production: stage.production,
            person,
            account,
            roles: BTreeSet::from_iter(roles.iter().copied()),
        };
        let (one, two) = (
            member(stage.one, Some(id(1)), &[Role::Coordinator, Role::FirstAd]),
            member(stage.two, None, &[Role::Medic]),
        );
        let rows = [one.clone(), two.clone()];
        store
            .write(move |conn| {
                accounts::insert(conn, &account(1, "iluka@example.org"))?;
                rows.iter().try_for_each(|row| members::upsert(conn, row))
            })
            .unwrap();
        let listed = store
            .read(|conn| members::list(conn, stage.production))
            .unwrap();
        assert_eq!(listed, [one.clone(), two.clone()]);

        let thief = member(stage.two, Some(id(1)), &[]);
        let clash = store
            .write(move |conn| members::upsert(conn, &thief))
            .unwrap_err();
        assert!(
            matches!(clash, StoreError::Conflict { what: "member", .. }),
            "{clash:?}"
        );
        let clash = store
            .write(move |conn| members::link_account(conn, stage.production, stage.two, id(1)))
            .unwrap_err();
        assert!(
            matches!(clash, StoreError::Conflict { what: "member", .. }),
            "{clash:?}"
        );

        let mut changed = one.clone();
        changed.roles.remove(&Role::FirstAd);
        let kept = changed.clone();
        store
            .write(move |conn| members::upsert(conn, &kept))
            .unwrap();
        assert_eq!(
            store
                .read(|conn| members::by_account(conn, stage.production, id(1)))
                .unwrap(),
            Some(changed.clone())
        );
        assert_eq!(
            store
                .read(|conn| members::get(conn, stage.production, stage.two))
                .unwrap(),
            Some(two)
        );
        assert_eq!(
            store
                .read(|conn| members::memberships(conn, id(1)))
                .unwrap(),
            [changed]
        );
        let productions = store
            .read(|conn| productions::for_account(conn, id(1)))
            .unwrap();
        assert_eq!(
            productions.iter().map(|one| one.id).collect::<Vec<_>>(),
            [stage.production]
        );
        assert_eq!(
            store
                .read(|conn| productions::for_account(conn, id(2)))
                .unwrap(),
            []
        );
    }
}

#[test]
fn an_invitation_is_accepted_once() {
    for database in databases() {
        let store = database.ready();
        let stage = build::stage(&store);
        let invitation = Invitation {
            id: id(400),
            production: stage.production,
            person: stage.two,
            email: "thandeka@example.org".to_owned(),
            token_hash: vec![7; 32],
            expires_at: at(500),
            accepted_at: None,
        };
        let sent = invitation.clone();
        store
            .write(move |conn| invitations::insert(conn, &sent))
            .unwrap();
        let found = store
            .read(|conn| invitations::by_token_hash(conn, &[7; 32]))
            .unwrap();
        assert_eq!(found, Some(invitation));
        store
            .write(|conn| invitations::accept(conn, id(400), at(20)))
            .unwrap();
        let again = store
            .write(|conn| invitations::accept(conn, id(400), at(30)))
            .unwrap_err();
        assert!(
            matches!(
                again,
                StoreError::Conflict {
                    what: "invitation",
                    ..
                }
            ),
            "{again:?}"
        );
        let listed = store
            .read(|conn| invitations::list(conn, stage.production))
            .unwrap();
        assert_eq!(listed[0].accepted_at, Some(at(20)), "{}", database.name);
    }
}

#[test]
fn the_first_answer_to_a_key_is_kept_for_good() {
    for database in databases() {
        let answer = Stored {
            request_hash: vec![3; 32],
            status: 201,
            content_type: "application/json".to_owned(),
            location: Some("/api/v1/gags/1".to_owned()),
            etag: None,
            body: vec![0, 255, 10, 13, 0],
            created_at: at(10),
        };
        let store = database.ready();
        let kept = answer.clone();
        store
            .write(move |conn| idempotency::save(conn, "a", id(1), &kept))
            .unwrap();
        let mut other = answer.clone();
        other.status = 409;
        let clash = store
            .write(move |conn| idempotency::save(conn, "a", id(1), &other))
            .unwrap_err();
        assert!(
            matches!(clash, StoreError::Conflict { what: "answer", .. }),
            "{clash:?}"
        );
        drop(store);

        let store = database.open();
        let find = |account: &'static str, key| {
            store
                .read(move |conn| idempotency::find(conn, account, key))
                .unwrap()
        };
        assert_eq!(find("a", id(1)), Some(answer), "{}", database.name);
        assert_eq!(
            find("b", id(1)),
            None,
            "another account's key is another key"
        );
        assert_eq!(find("a", id(2)), None);
        assert_eq!(
            store
                .write(|conn| idempotency::purge_before(conn, at(10)))
                .unwrap(),
            0
        );
        assert_eq!(
            store
                .write(|conn| idempotency::purge_before(conn, at(11)))
                .unwrap(),
            1
        );
    }
}
