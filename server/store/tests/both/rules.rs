//! Policies, delegations, resolutions and photographs: kept whole, each once.

use gagwright_clearance::{Delegation, RecordId, Resolution, Role, SignOffId};
use gagwright_store::{
    delegations, devices, photographs, plans, policies, productions, resolutions, signoffs,
};

use crate::support::{
    assert_conflict,
    build::{self, at, id},
    databases, write,
};

#[test]
fn a_policy_is_kept_under_its_version_once_and_listed_newest_first() {
    for database in databases() {
        let store = database.ready();
        let stage = build::stage(&store);
        let kept = |version: &str, leaf| {
            let mut policy = build::policy();
            policy.version = version.to_owned();
            policies::KeptPolicy {
                production: stage.production,
                policy,
                by: stage.one,
                note: "the insurer's wording".to_owned(),
                at: at(5),
                leaf,
            }
        };
        let (first, second, again) = (kept("a", 3), kept("b", 9), kept("a", 11));
        let (one, two) = (first.clone(), second.clone());
        write(&store, move |conn| {
            policies::insert(conn, &one)?;
            policies::insert(conn, &two)?;
            productions::set_policy(conn, stage.production, &two.policy)
        })
        .unwrap();
        let listed = store.read(|conn| policies::list(conn, stage.production));
        assert_eq!(listed.unwrap(), [second, first], "{}", database.name);
        assert_conflict(
            write(&store, move |conn| policies::insert(conn, &again)),
            "policy",
            "in force before",
        );
    }
}

#[test]
fn delegations_are_ended_and_declines_resolved_once() {
    for database in databases() {
        let store = database.ready();
        let stage = build::stage(&store);
        let made = Delegation {
            id: RecordId(id(61)),
            from: stage.one,
            to: stage.two,
            role: Role::FirstAd,
            gags: vec![stage.gag],
            starts: at(0),
            until: at(7200),
            limits: "the night unit".to_owned(),
            made_at: at(0),
            ended_at: None,
        };
        let device = build::device(31, stage.one);
        let statement = build::statement(41, stage.production, stage.gag, stage.one, device.id);
        let resolution = Resolution {
            id: RecordId(id(62)),
            signoff: statement.id,
            by: stage.two,
            role: Role::Coordinator,
            text: "A larger bag is hired".to_owned(),
            at: at(90),
        };
        let (delegation, resolved) = (made.clone(), resolution.clone());
        write(&store, move |conn| {
            devices::insert(conn, stage.production, &device)?;
            signoffs::insert(conn, stage.production, &statement, &build::signoff(4))?;
            delegations::insert(conn, stage.production, &delegation, 5)?;
            resolutions::insert(conn, stage.production, stage.gag, &resolved, 6)
        })
        .unwrap();
        let ended = Delegation {
            ended_at: Some(at(60)),
            ..made
        };
        let update = ended.clone();
        write(&store, move |conn| delegations::update(conn, &update)).unwrap();
        let listed = store.read(|conn| delegations::list(conn, stage.production));
        assert_eq!(listed.unwrap(), [ended], "{}", database.name);
        let by_gag = store.read(|conn| resolutions::for_production(conn, stage.production));
        assert_eq!(
            by_gag.unwrap()[&stage.gag],
            std::slice::from_ref(&resolution)
        );
        let again = Resolution {
            id: RecordId(id(63)),
            ..resolution
        };
        assert_conflict(
            write(&store, move |conn| {
                resolutions::insert(conn, stage.production, stage.gag, &again, 7)
            }),
            "resolution",
            "resolved before",
        );
    }
}

#[test]
fn a_photograph_comes_back_byte_for_byte_and_only_with_its_sign_off() {
    for database in databases() {
        let store = database.ready();
        let stage = build::stage(&store);
        let device = build::device(31, stage.one);
        let statement = build::statement(41, stage.production, stage.gag, stage.one, device.id);
        let signoff = statement.id;
        let photograph = photographs::Photograph {
            media_type: "image/png".to_owned(),
            bytes: (0..=255).collect(),
        };
        let (kept, lost) = (photograph.clone(), photograph.clone());
        write(&store, move |conn| {
            devices::insert(conn, stage.production, &device)?;
            signoffs::insert(conn, stage.production, &statement, &build::signoff(4))?;
            photographs::insert(conn, signoff, &kept)
        })
        .unwrap();
        assert!(
            store
                .read(|conn| photographs::is_kept(conn, signoff))
                .unwrap()
        );
        let read = store.read(|conn| photographs::get(conn, signoff)).unwrap();
        assert_eq!(read, Some(photograph), "{}", database.name);
        let nowhere = SignOffId(id(99));
        assert!(
            write(&store, move |conn| photographs::insert(
                conn, nowhere, &lost
            ))
            .is_err()
        );
    }
}

#[test]
fn some_plans_are_those_asked_for_and_no_others() {
    for database in databases() {
        let store = database.ready();
        let stage = build::stage(&store);
        write(&store, move |conn| {
            for revision in 1..=3 {
                let plan = build::plan(stage.gag, revision, stage.one);
                let hashes = build::facet_hashes(revision);
                plans::insert(conn, &plan, "digest", &hashes, u64::from(revision))?;
            }
            Ok(())
        })
        .unwrap();
        let wanted = [(stage.gag, 1), (stage.gag, 3), (stage.gag, 9)].into();
        let found = store.read(|conn| plans::some(conn, &wanted)).unwrap();
        let numbers: Vec<u32> = found.iter().map(|plan| plan.revision).collect();
        assert_eq!(numbers, [1, 3], "{}", database.name);
    }
}
