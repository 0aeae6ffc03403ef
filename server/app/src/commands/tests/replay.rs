//! The whole demo, played while the database is watched between any two leaves: what replay rebuilds from
//! the trail alone is what the database said then.

use std::{cell::RefCell, rc::Rc};

use gagwright_clearance::{Case, clearance, replay::Replay};
use gagwright_store::trail;

use super::*;

/// What the database said once so many leaves were in it.
struct Seen {
    size: u64,
    cases: Vec<(GagId, Case)>,
}

/// Every gag is looked at after this many leaves, and always at the end; in between, the gag that the leaf is
/// about.
const EVERY: u64 = 12;

fn look(conn: &mut Connection, production: ProductionId, all: bool) -> Seen {
    let size = trail::size(conn, production).unwrap();
    let last = trail::entries_before(conn, production, size, 1).unwrap();
    let about: Option<GagId> = last
        .first()
        .and_then(|leaf| leaf.entry.gag.as_deref()?.parse().ok());
    let mut cases = Vec::new();
    if all || size.is_multiple_of(EVERY) {
        let shared = views::gathering::shared(conn, production).unwrap();
        let every = views::gathering::all_cases(conn, &shared).unwrap();
        cases.extend(every.into_iter().map(|(row, case)| (row.id, case)));
    } else if let Some(gag) = about {
        cases.push((gag, views::case(conn, production, gag).unwrap()));
    }
    Seen { size, cases }
}

/// The demo, and what the database said after each leaf.
fn watched() -> (Store, ProductionId, Vec<Seen>, TempDir) {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("watched.db");
    let store = Store::open(&format!("sqlite:{}", path.display())).unwrap();
    store.migrate().unwrap();
    let script = script::built_in().unwrap();
    let (production, seen) = store
        .write(move |conn| {
            let mut stage = demo::open(conn, &script, morning(), Box::new(counting()), |_| None)?;
            let production = stage.production;
            let seen = Rc::new(RefCell::new(Vec::new()));
            let watching = Rc::clone(&seen);
            record::watched::watch(Some(Box::new(move |conn| {
                watching.borrow_mut().push(look(conn, production, false));
            })));
            // Replay does not know the records of the day yet.
            for gag in script.gags.iter().filter(|gag| gag.today.is_empty()) {
                stage.put_on(conn, "C01", gag)?;
            }
            record::watched::watch(None);
            let mut seen = Rc::try_unwrap(seen).map_or_else(|_| Vec::new(), RefCell::into_inner);
            seen.push(look(conn, production, true));
            Ok::<_, CommandError>((production, seen))
        })
        .unwrap();
    (store, production, seen, folder)
}

#[test]
fn every_gag_at_every_leaf_of_the_demo_is_rebuilt_from_the_trail_alone() {
    let (store, production, seen, _folder) = watched();
    let leaves = store
        .read(|conn| trail::entries(conn, production, 0, 100_000))
        .unwrap();
    assert!(leaves.len() > 120, "{} leaves", leaves.len());
    let mut replay = Replay::new();
    let mut seen = seen.into_iter().peekable();
    let (mut compared, mut judged) = (0, 0);
    for leaf in &leaves {
        let said = leaf
            .parts
            .iter()
            .map(|(name, part)| (name.clone(), part.said.clone()))
            .collect();
        replay.add(&leaf.entry, &said).unwrap();
        assert_eq!(replay.strange().next(), None);
        while let Some(then) = seen.next_if(|then| then.size <= replay.size()) {
            assert_eq!(then.size, replay.size(), "a leaf went unwatched");
            for (gag, case) in then.cases {
                let rebuilt = replay.case(gag).unwrap();
                assert!(
                    rebuilt.certain && rebuilt.unknown.is_empty(),
                    "{:?}",
                    rebuilt.unknown
                );
                let rebuilt = rebuilt.case.unwrap();
                assert_eq!(
                    serde_json::to_value(&rebuilt).unwrap(),
                    serde_json::to_value(&case).unwrap(),
                    "{gag} after {} leaves",
                    then.size
                );
                compared += 1;
                // The answer follows from the case; that it does is seen now and then.
                if compared % 11 == 0 {
                    let now = replay.at().unwrap();
                    assert_eq!(clearance(&rebuilt, now), clearance(&case, now));
                    judged += 1;
                }
            }
        }
    }
    assert_eq!(
        (seen.next().is_none(), replay.size()),
        (true, leaves.len() as u64)
    );
    assert!(
        compared > 120 && judged > 10,
        "{compared} cases, {judged} judged"
    );
}
