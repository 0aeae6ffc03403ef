//! What is added on the way to the take: devices, sign-offs, holds, readings and runs.

use gagwright_casting::ProductionId;
use gagwright_clearance::{Agreement, Drawing, Role, signoff::ConditionMet};
use gagwright_store::{
    StoreError, devices, drawn_marks, gags, holds, holds::StoredHold, readings, runs, signoffs,
    test_shots,
};

use crate::support::{
    assert_conflict,
    build::{self, at, id},
    databases, write,
};

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
fn a_drawn_mark_is_kept_with_its_sign_off_and_tells_when_a_device_last_signed() {
    for database in databases() {
        let name = &database.name;
        let store = database.ready();
        let stage = build::stage(&store);
        let device = build::device(31, stage.one);
        let said = build::statement(51, stage.production, stage.gag, stage.one, device.id);
        let (id, drawing) = (said.id, Drawing(vec![vec![0, 5, 1000, 7]]));
        let early = drawing.clone();
        assert_conflict(
            write(&store, move |conn| drawn_marks::keep(conn, id, &early)),
            "mark",
            "not there",
        );
        let (registered, kept) = (device.clone(), drawing.clone());
        write(&store, move |conn| {
            devices::insert(conn, stage.production, &registered)?;
            signoffs::insert(conn, stage.production, &said, &build::signoff(4))?;
            drawn_marks::keep(conn, id, &kept)?;
            drawn_marks::keep(conn, id, &kept)
        })
        .unwrap();
        let marks = store
            .read(|conn| drawn_marks::for_gag(conn, stage.gag))
            .unwrap();
        assert_eq!(
            marks.into_iter().collect::<Vec<_>>(),
            [(id, drawing)],
            "{name}"
        );
        let last = store
            .read(|conn| signoffs::last_by_device(conn, stage.production))
            .unwrap();
        assert_eq!(
            last.into_iter().collect::<Vec<_>>(),
            [(device.id, at(30))],
            "{name}"
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
fn test_shots_come_back_whole_and_in_the_order_of_the_trail() {
    for database in databases() {
        let name = &database.name;
        let store = database.ready();
        let stage = build::stage(&store);
        let shot = |number, by| build::test_shot(number, stage.gag, by);
        // The later leaf first: what counts is the trail, not the order of writing.
        let (first, second) = (shot(82, stage.one), shot(81, stage.two));
        let (kept_first, kept_second) = (first.clone(), second.clone());
        write(&store, move |conn| {
            test_shots::insert(conn, &kept_second, 5)?;
            test_shots::insert(conn, &kept_first, 4)
        })
        .unwrap();
        let of_gag = store
            .read(|conn| test_shots::for_gag(conn, stage.gag))
            .unwrap();
        assert_eq!(of_gag, [first.clone(), second], "{name}");
        assert_eq!(
            of_gag[0].measured["total_distance"].to_bits(),
            (0.1f64 + 0.2).to_bits(),
            "{name}"
        );
        let again = first.clone();
        assert_conflict(
            write(&store, move |conn| test_shots::insert(conn, &again, 6)),
            "test shot",
            "logged before",
        );
        let mut elsewhere = first;
        elsewhere.id = gagwright_clearance::RecordId(id(83));
        elsewhere.gag = gagwright_casting::GagId(id(99));
        let lost = write(&store, move |conn| test_shots::insert(conn, &elsewhere, 7));
        assert!(
            matches!(lost, Err(StoreError::Conflict { .. })),
            "{name}: {lost:?}"
        );
    }
}
