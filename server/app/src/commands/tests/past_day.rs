//! A scripted day: after every step, what replay rebuilds from the trail alone is what the database says, and
//! is judged alike; and erasing a performer takes away what the medic found in them and no proof.

use std::{fs, path::Path};

use gagwright_clearance::{
    case::{Fitness, IncidentKind, TakeResult, Used},
    clearance, day_mark,
    replay::Replay,
};
use gagwright_trail::{
    Entry,
    export::{read_leaves, verify_export},
};
use jiff::civil::Date;
use serde_json::Map;

use super::*;
use crate::{
    commands::on_the_day::{
        BackInUse, NewBriefing, NewClosing, NewDebrief, NewGo, NewIncident, NewLook, NewOutcome,
        NewShockLoad, NewStandDown, NewTold, PutItem, SetAside, briefings, debriefs, equipment,
        incidents, marks, stand_downs, takes,
    },
    trail_file::{self, Parts},
};

/// What the trail alone says is what the database says, in all three layers of the answer.
fn same(conn: &mut Connection, stage: &Stage, gag: GagId) -> Result<Replay, CommandError> {
    let mut replay = Replay::new();
    for leaf in gagwright_store::trail::entries(conn, stage.production, 0, 100_000)? {
        let parts = leaf.parts.iter();
        let said = parts
            .map(|(name, part)| (name.clone(), part.said.clone()))
            .collect();
        replay.add(&leaf.entry, &said).unwrap();
    }
    let live = views::case(conn, stage.production, gag)?;
    let rebuilt = replay.case(gag).unwrap();
    assert!(rebuilt.certain, "{:?}", rebuilt.unknown);
    let case = rebuilt.case.unwrap();
    assert_eq!(
        serde_json::to_value(&case).unwrap(),
        serde_json::to_value(&live).unwrap()
    );
    assert_eq!(clearance(&case, stage.now), clearance(&live, stage.now));
    Ok(replay)
}

fn record_id(number: u128) -> RecordId {
    RecordId(Uuid::from_u128(number))
}

/// The day of one gag; gives whom the medic looked at.
fn play(conn: &mut Connection, stage: &mut Stage, gag: GagId) -> Result<PersonId, CommandError> {
    let mut bytes = counting();
    let day: Date = "2026-11-25".parse().unwrap();
    let plan = gagwright_store::plans::current(conn, gag)?;
    let performer = plan.facets.cast.slots[0].person.unwrap();
    let serial = plan.facets.rigging.equipment[0].serial.clone();
    let of = |conn: &mut Connection, stage: &Stage, role: Role| {
        let members = gagwright_store::members::list(conn, stage.production)?;
        let member = members.into_iter().find(|one| one.roles.contains(&role));
        stage.actor(conn, member.unwrap().person)
    };
    let coordinator = of(conn, stage, Role::Coordinator)?;
    let medic = of(conn, stage, Role::Medic)?;
    let producer = of(conn, stage, Role::Production)?;
    let rigger = of(conn, stage, Role::Rigging)?;
    stage.sign_all(conn, gag, |_| true)?;
    same(conn, stage, gag)?;

    let item = |name: &str| PutItem {
        id: record_id(1),
        serial: serial.clone(),
        name: name.into(),
        working_load: Some(20_000.0),
        rating: "22 kN".into(),
        inspected_until: Some(day),
    };
    equipment::put(conn, &coordinator, stage.tick(), item("a"), &mut bytes)?;
    same(conn, stage, gag)?;
    let at = stage.tick();
    let aside = SetAside {
        reason: "a nick".into(),
        at,
    };
    equipment::quarantine(conn, &coordinator, at, record_id(1), aside, &mut bytes)?;
    same(conn, stage, gag)?;
    equipment::put(conn, &coordinator, stage.tick(), item("b"), &mut bytes)?;
    same(conn, stage, gag)?;
    let at = stage.tick();
    let back = BackInUse {
        found: "sound".into(),
        inspected_until: day,
        at,
    };
    equipment::release(conn, &rigger, at, record_id(1), back, &mut bytes)?;
    same(conn, stage, gag)?;
    let at = stage.tick();
    let shock = NewShockLoad {
        id: record_id(2),
        what: "snatched".into(),
        at,
    };
    equipment::shock_load(conn, &coordinator, at, record_id(1), shock, &mut bytes)?;
    same(conn, stage, gag)?;

    let at = stage.tick();
    let briefing = NewBriefing {
        id: record_id(3),
        day,
        place: "Quay".into(),
        revision: 1,
        at,
        attended: vec![performer],
        points: "The word is stop".into(),
    };
    briefings::brief(conn, &coordinator, at, gag, briefing, &mut bytes)?;
    same(conn, stage, gag)?;
    let now = stage.tick();
    let draft = marks::draft(conn, &coordinator, now, gag, Role::Coordinator, None, None)?;
    let (device, key) = &stage.keys[&coordinator.person];
    let mut statement = draft.statement;
    statement.id = gagwright_clearance::SignOffId(Uuid::from_u128(4));
    statement.device = *device;
    let jws = day_mark::sign(&statement, key)?;
    marks::submit(conn, &coordinator, now, gag, &jws)?;
    same(conn, stage, gag)?;

    let at = stage.tick();
    let go = NewGo {
        id: record_id(5),
        number: 1,
        at,
        revision: 1,
        plan_digest: record::plan_digest(&plan.facets)?,
        day,
        place: "Quay".into(),
    };
    takes::go(conn, &coordinator, at, gag, go, &mut bytes)?;
    same(conn, stage, gag)?;
    let at = stage.tick();
    let ended = NewOutcome {
        result: TakeResult::Good,
        note: "clean".into(),
        at,
    };
    takes::end(conn, &coordinator, at, gag, record_id(5), ended, &mut bytes)?;
    same(conn, stage, gag)?;
    let at = stage.tick();
    let said = NewDebrief {
        id: record_id(9),
        day,
        place: "Quay".into(),
        revision: 1,
        at,
        led_by: coordinator.person,
        attended: vec![performer],
        as_planned: "The fall".into(),
        differently: "The landing was late".into(),
        next_time: "A second bag".into(),
        used: vec![Used {
            person: performer,
            skills: BTreeSet::new(),
        }],
    };
    debriefs::debrief(conn, &coordinator, at, gag, said, &mut bytes)?;
    same(conn, stage, gag)?;
    let at = stage.tick();
    let look = NewLook {
        id: record_id(6),
        take: Some(record_id(5)),
        person: performer,
        day,
        fitness: Fitness::Unfit,
        head_impact: true,
        at,
    };
    takes::look(conn, &medic, at, gag, look, &mut bytes)?;
    same(conn, stage, gag)?;
    let from = stage.tick();
    let down = NewStandDown {
        id: record_id(7),
        person: performer,
        from,
        until: None,
    };
    stand_downs::stand_down(conn, &medic, from, down)?;
    same(conn, stage, gag)?;
    stand_downs::bring_back(conn, &medic, stage.tick(), record_id(7))?;
    same(conn, stage, gag)?;

    let at = stage.tick();
    let report = NewIncident {
        id: record_id(8),
        kind: IncidentKind::NearMiss,
        gag: Some(gag),
        at,
        what: "a bag slid".into(),
    };
    let incident = incidents::report(conn, &medic, at, report, &mut bytes)?;
    same(conn, stage, gag)?;
    let policy = record::policy(conn, stage.production)?;
    for who in policy
        .to_tell(incident.kind)
        .into_iter()
        .chain(["the owner".into()])
    {
        let at = stage.tick();
        let told = NewTold { who, at };
        incidents::tell(conn, &coordinator, at, record_id(8), told, &mut bytes)?;
        same(conn, stage, gag)?;
    }
    for (actor, role) in [
        (&coordinator, Role::Coordinator),
        (&producer, Role::Production),
    ] {
        let action = "a net".to_owned();
        let closing = NewClosing { role, action };
        incidents::close(conn, actor, stage.tick(), record_id(8), closing, &mut bytes)?;
        same(conn, stage, gag)?;
    }
    Ok(performer)
}

#[test]
fn a_scripted_day_is_rebuilt_and_judged_alike_and_a_performer_can_be_erased() {
    let scene = Scene::with("G02");
    let gag = scene.gag;
    let (performer, scene) = scene.play(move |conn, stage| {
        let performer = play(conn, stage, gag)?;
        let replay = same(conn, stage, gag)?;
        let day = replay.case(gag).unwrap().case.unwrap().day;
        assert!(day.incidents[0].closed_at.is_some());
        assert_eq!(
            (day.looks.len(), day.takes.len(), day.briefings.len()),
            (1, 1, 1)
        );
        let said = &day.debriefs[0];
        assert_eq!(
            (said.next_time.as_str(), said.used.len()),
            ("A second bag", 1)
        );
        Ok(performer)
    });
    let producer = scene
        .store
        .read(|conn| gagwright_store::members::list(conn, scene.stage.production))
        .unwrap()
        .into_iter()
        .find(|one| one.roles.contains(&Role::Production))
        .unwrap();
    let size = scene.size();
    let (text, _) = scene.play(move |conn, stage| {
        let actor = stage.actor(conn, producer.person)?;
        erasure::erase(conn, &actor, stage.tick(), performer)?;
        same(conn, stage, gag)?;
        trail_file::export(conn, stage.production, Parts::Taken)
    });
    // Every leaf, proof and signature is as good as it was; that there was a look is known, its finding is not.
    assert_eq!(verify_export(&text).unwrap().size, size + 1);
    let mut replay = Replay::new();
    let mut met = false;
    for leaf in read_leaves(&text).unwrap() {
        if leaf.entry.kind == "look.recorded" {
            met = true;
            assert!(!leaf.said().contains_key("look"));
        }
        if leaf.entry.kind == "gag.debriefed" {
            // What was said stays, for somebody else said it; what the performer used is gone.
            let said = leaf.said();
            assert!(said.contains_key("said"));
            assert!(said.keys().all(|name| !name.starts_with("used:")));
        }
        if leaf.entry.kind == "person.erased" {
            let then = replay.case(gag).unwrap();
            let said = |one: &String| one.contains("What the medic found of");
            assert!(
                !then.certain && then.unknown.iter().any(said),
                "{:?}",
                then.unknown
            );
        }
        replay.add(&leaf.entry, &leaf.said()).unwrap();
    }
    assert!(met);
}

/// Every kind of leaf that a command names in its source.
fn kinds_in(folder: &Path, kinds: &mut BTreeSet<String>) {
    for one in fs::read_dir(folder).unwrap() {
        let path = one.unwrap().path();
        if path
            .file_name()
            .is_some_and(|name| name.to_string_lossy().starts_with("tests"))
        {
            continue;
        }
        if path.is_dir() {
            kinds_in(&path, kinds);
            continue;
        }
        let text = fs::read_to_string(&path).unwrap();
        let named = text.split('"').skip(1).step_by(2).filter(|one| {
            let letters = |part: &str| {
                !part.is_empty() && part.chars().all(|c| c.is_ascii_lowercase() || c == '_')
            };
            one.split_once('.')
                .is_some_and(|(thing, done)| letters(thing) && letters(done))
        });
        kinds.extend(named.map(str::to_owned));
    }
}

#[test]
fn replay_knows_every_kind_that_a_command_appends() {
    let mut kinds = BTreeSet::new();
    kinds_in(
        &Path::new(env!("CARGO_MANIFEST_DIR")).join("src/commands"),
        &mut kinds,
    );
    assert!(kinds.len() >= 38, "{kinds:?}");
    for kind in kinds {
        let entry = Entry {
            index: 0,
            at: morning().to_string(),
            kind: kind.clone(),
            production: Uuid::nil().to_string(),
            gag: None,
            actor: None,
            facts: Map::new(),
            commitments: Default::default(),
        };
        // With nothing said it may be refused, but never be strange.
        let mut replay = Replay::new();
        let _ = replay.add(&entry, &Default::default());
        assert_eq!(replay.strange().next(), None, "{kind}");
    }
}
