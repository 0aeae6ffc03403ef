//! How many queries a page needs: the same for one gag as for forty.

use std::sync::{
    Arc,
    atomic::{AtomicUsize, Ordering},
};

use diesel::{Connection as _, connection::InstrumentationEvent};
use gagwright_casting::{GagId, ProductionId};
use gagwright_store::{
    Connection, Store, StoreError, devices, gags, holds, members, people, plans, productions,
    readings, runs, signoffs, trail,
};

use crate::support::{
    build::{self, id},
    databases,
};

/// Everything a list of gags with their clearance needs.
fn list_page(conn: &mut Connection, production: ProductionId) -> Result<usize, StoreError> {
    productions::get(conn, production)?;
    members::list(conn, production)?;
    people::list(conn, production)?;
    devices::list(conn, production)?;
    let gags = gags::list(conn, production)?.len();
    assert_eq!(plans::current_for_production(conn, production)?.len(), gags);
    assert_eq!(signoffs::for_gags(conn, production)?.len(), gags);
    assert_eq!(runs::for_production(conn, production)?.len(), gags);
    assert_eq!(readings::for_production(conn, production)?.len(), gags);
    assert_eq!(holds::open(conn, production)?.len(), gags);
    Ok(gags)
}

fn queries<T>(
    store: &Store,
    f: impl FnOnce(&mut Connection) -> Result<T, StoreError>,
) -> (usize, T) {
    let count = Arc::new(AtomicUsize::new(0));
    let counter = count.clone();
    let answer = store
        .read(|conn| {
            conn.set_instrumentation(move |event: InstrumentationEvent<'_>| {
                if matches!(event, InstrumentationEvent::StartQuery { .. }) {
                    counter.fetch_add(1, Ordering::Relaxed);
                }
            });
            let answer = f(conn)?;
            conn.set_instrumentation(|_: InstrumentationEvent<'_>| {});
            Ok::<_, StoreError>(answer)
        })
        .unwrap();
    (count.load(Ordering::Relaxed), answer)
}

#[test]
fn a_list_needs_no_query_for_each_gag() {
    for database in databases() {
        let store = database.ready();
        let stage = build::stage(&store);
        let fill = |from: u128, to: u128| {
            store
                .write(move |conn| {
                    for number in from..to {
                        let gag = GagId(id(1000 + number));
                        let production = stage.production;
                        gags::insert(
                            conn,
                            &build::gag(1000 + number, production, &format!("X{number:02}")),
                        )?;
                        let plan = build::plan(gag, 1, stage.one);
                        plans::insert(conn, &plan, "00", &build::facet_hashes(1), 0)?;
                        let device = build::device(2000 + number, stage.one);
                        devices::insert(conn, production, &device)?;
                        let said =
                            build::statement(3000 + number, production, gag, stage.one, device.id);
                        signoffs::insert(conn, production, &said, &build::signoff(0))?;
                        runs::insert(conn, gag, &build::run(4000 + number, stage.one), 0)?;
                        let reading = build::reading(6000 + number, stage.one);
                        readings::insert(conn, production, Some(gag), &reading, 0)?;
                        let hold = build::hold(7000 + number, Some(gag));
                        holds::insert(conn, production, &hold, 0)?;
                    }
                    // The gag of the stage has no plan; it would not be in the list.
                    Ok::<_, StoreError>(())
                })
                .unwrap();
        };
        store
            .write(move |conn| {
                use diesel::connection::SimpleConnection;
                conn.batch_execute("DELETE FROM gags")
                    .map_err(StoreError::from)
            })
            .unwrap();
        fill(0, 1);
        let (for_one, gags) = queries(&store, |conn| list_page(conn, stage.production));
        assert_eq!(gags, 1);
        fill(1, 40);
        let (for_forty, gags) = queries(&store, |conn| list_page(conn, stage.production));
        assert_eq!(gags, 40);
        assert_eq!(for_one, for_forty, "{}", database.name);
        assert!(for_forty <= 12, "{}: {for_forty}", database.name);
    }
}

#[test]
fn a_root_or_a_proof_is_two_queries_however_long_the_trail() {
    for database in databases() {
        let store = database.ready();
        let stage = build::stage(&store);
        store
            .write(move |conn| {
                (0..511).try_for_each(|_| {
                    trail::append(conn, build::entry(stage.production, "run.logged")).map(drop)
                })
            })
            .unwrap();
        let (needed, _) = queries(&store, |conn| trail::root(conn, stage.production, 511));
        assert_eq!(needed, 2, "{}", database.name);
        let (needed, path) = queries(&store, |conn| {
            trail::inclusion_path(conn, stage.production, 300, 511)
        });
        assert_eq!((needed, path.len()), (2, 9), "{}", database.name);
    }
}
