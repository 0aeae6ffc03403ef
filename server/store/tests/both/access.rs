//! Accounts, memberships, invitations and answers kept for repeats.

use std::collections::BTreeSet;

use gagwright_casting::PersonId;
use gagwright_clearance::Role;
use gagwright_store::{
    StoreError, accounts, accounts::Account, idempotency, idempotency::Stored, invitations,
    invitations::Invitation, members, members::MemberRow, productions,
};

use crate::support::{
    build::{self, at, id},
    databases,
};

pub fn account(number: u128, email: &str) -> Account {
    Account {
        id: id(number),
        email: email.to_owned(),
        name: "Iluka Märtson".to_owned(),
        password_hash: "$argon2id$v=19$m=19456,t=2,p=1$c2FsdA$aGFzaA".to_owned(),
        created_at: at(0),
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
            withdrawn_at: None,
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
fn an_invitation_is_withdrawn_where_it_was_made() {
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
            withdrawn_at: None,
        };
        store
            .write(move |conn| {
                invitations::insert(conn, &invitation)?;
                invitations::withdraw(conn, id(400), at(20))?;
                invitations::withdraw(conn, id(400), at(30))
            })
            .unwrap();
        let get = |production| store.read(|conn| invitations::get(conn, production, id(400)));
        let kept = get(stage.production).unwrap().unwrap();
        assert_eq!(kept.withdrawn_at, Some(at(20)), "{}", database.name);
        let elsewhere = get(gagwright_casting::ProductionId(id(999))).unwrap();
        assert_eq!(elsewhere, None, "{}", database.name);
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

#[test]
fn answers_that_name_somebody_are_forgotten_and_no_others() {
    let somebody = PersonId(id(0xabcd));
    let naming = |n: u128| n.is_multiple_of(400) || n == 1199;
    for database in databases() {
        let store = database.ready();
        // More than are looked through at a time, with some on either side of where one look ends.
        store
            .write(move |conn| {
                for n in 0..1200 {
                    let body = match naming(n) {
                        true => format!(r#"{{"person":"{somebody}"}}"#),
                        false => format!(r#"{{"person":"{}"}}"#, PersonId(id(n))),
                    };
                    let answer = Stored {
                        request_hash: vec![7; 32],
                        status: 201,
                        content_type: "application/json".to_owned(),
                        location: None,
                        etag: None,
                        body: body.into_bytes(),
                        created_at: at(10),
                    };
                    idempotency::save(conn, "a", id(n), &answer)?;
                }
                idempotency::forget_about(conn, somebody)
            })
            .unwrap();
        for n in 0..1200 {
            let kept = store
                .read(move |conn| idempotency::find(conn, "a", id(n)))
                .unwrap();
            assert_eq!(kept.is_some(), !naming(n), "{n} on {}", database.name);
        }
    }
}
