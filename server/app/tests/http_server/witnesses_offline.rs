//! A witness from its key to the insurer's check, with the program itself: key, sign, bring, export, verify; and what
//! a log that forks or forgets cannot get past it.

use std::{
    fs,
    path::Path,
    process::{Command, Output},
};

use gagwright_store::meta;
use gagwright_trail::{
    Entry, Export, Hash, LogKey,
    export::{ExportHeader, read_leaves},
    root,
};
use serde_json::{Value, json};

use crate::support::World;

fn gagwright(folder: &Path, arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_gagwright"))
        .args(arguments)
        .current_dir(folder)
        .env_remove("GAGWRIGHT_DATABASE")
        .output()
        .unwrap()
}

fn text(bytes: &[u8]) -> String {
    String::from_utf8(bytes.to_vec()).unwrap()
}

/// What it printed, on one line.
#[track_caller]
fn done(folder: &Path, arguments: &[&str]) -> String {
    let output = gagwright(folder, arguments);
    assert!(output.status.success(), "{}", text(&output.stderr));
    text(&output.stdout)
}

/// Why it would not, in one line.
#[track_caller]
fn refused(folder: &Path, arguments: &[&str]) -> String {
    let output = gagwright(folder, arguments);
    assert_eq!(output.status.code(), Some(1), "{}", text(&output.stdout));
    let told = text(&output.stderr);
    told.split_whitespace().collect::<Vec<_>>().join(" ")
}

fn fetch(world: &World, path: &str, file: &str, folder: &Path) -> String {
    let got = world.call("GET", &world.at(path)).send();
    assert_eq!(got.status, 200, "{}", got.text());
    fs::write(folder.join(file), got.text()).unwrap();
    got.text().to_owned()
}

fn bring(world: &World, folder: &Path, file: &str) {
    let note = fs::read_to_string(folder.join(file)).unwrap();
    world
        .call("POST", &world.at("/trail/cosignatures"))
        .once()
        .json(&json!({ "cosigned": note }))
        .send()
        .expect(201);
}

/// The same trail with one entry changed, signed with the log's own key: what only its operator could make.
fn forked(world: &World, export: &str) -> Export {
    let seed = world.server.store.read(|conn| meta::get(conn, "log_seed"));
    let log = LogKey::from_seed(Hash::from_hex(&seed.unwrap().unwrap()).unwrap().0);
    let header: ExportHeader = serde_json::from_str(export.lines().next().unwrap()).unwrap();
    let mut leaves = read_leaves(export).unwrap();
    let changed: &mut Entry = &mut leaves[1].entry;
    changed.at = "2020-01-01T00:00:00Z".to_owned();
    let hashes: Vec<Hash> = leaves
        .iter()
        .map(|leaf| leaf.entry.hash().unwrap())
        .collect();
    let size = hashes.len() as u64;
    Export {
        checkpoint: log
            .sign_checkpoint(&header.origin, size, &root(&hashes))
            .unwrap(),
        header,
        leaves,
        cosigned: Vec::new(),
    }
}

#[test]
fn from_the_key_to_the_insurers_check() {
    let world = World::new();
    let scratch = tempfile::tempdir().unwrap();
    let folder = scratch.path();
    let made = [
        "witness",
        "key",
        "--name",
        "witness.example/w1",
        "--out",
        "w1.key",
    ];
    let key = done(folder, &made).trim().to_owned();
    assert!(key.starts_with("witness.example/w1+"), "{key}");
    assert!(refused(folder, &made).contains("cannot write w1.key"));
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt;
        let mode = fs::metadata(folder.join("w1.key")).unwrap().permissions();
        assert_eq!(mode.mode() & 0o777, 0o600);
    }
    let other = [
        "witness",
        "key",
        "--name",
        "witness.example/w2",
        "--out",
        "w2.key",
    ];
    let other = done(folder, &other).trim().to_owned();
    world
        .call("POST", &world.at("/trail/witnesses"))
        .once()
        .json(&json!({ "key": key }))
        .send()
        .expect(201);

    // The first time, from an export. One must say that it is the first.
    fetch(&world, "/trail/export", "one.jsonl", folder);
    let bare = gagwright(folder, &["witness", "sign", "one.jsonl", "--key", "w1.key"]);
    assert_eq!(bare.status.code(), Some(2));
    let first = [
        "witness",
        "sign",
        "one.jsonl",
        "--key",
        "w1.key",
        "--first",
        "--out",
        "one.note",
    ];
    let line = done(folder, &first);
    assert!(line.starts_with("\u{2014} witness.example/w1 "), "{line}");
    bring(&world, folder, "one.note");
    let seen = world.trail_size();

    // The next time, after it grew: from an export, or from a checkpoint with the API's proof.
    world.gag("G07");
    world.gag("G08");
    let two = fetch(&world, "/trail/export", "two.jsonl", folder);
    fetch(&world, "/trail/checkpoint", "two.txt", folder);
    let growth = format!("/trail/consistency?from={seen}");
    let growth = fetch(&world, &growth, "growth.json", folder);
    let header: Value = serde_json::from_str(two.lines().next().unwrap()).unwrap();
    let log = header["log_key"].as_str().unwrap();
    let next = |file: &'static str, more: &[&'static str]| {
        [
            &[
                "witness", "sign", file, "--key", "w1.key", "--last", "one.note",
            ],
            more,
        ]
        .concat()
    };
    done(folder, &next("two.jsonl", &["--out", "two.note"]));
    let mut short = next("two.txt", &["--proof", "growth.json", "--log-key"]);
    short.push(log);
    let whole = done(folder, &short);
    assert!(whole.contains(&format!("\n{}\n", seen + 2)), "{whole}");
    assert!(
        whole
            .lines()
            .last()
            .unwrap()
            .starts_with("\u{2014} witness.example/w1 ")
    );

    // A witness that lost its last note and says it is the first time is told by what it cosigned itself.
    let again = ["witness", "sign", "two.jsonl", "--key", "w1.key", "--first"];
    let told = refused(folder, &again);
    assert!(
        told.contains(&format!("before, at {seen} entries")),
        "{told}"
    );

    // The insurer: the file and the witness's key, and no server.
    let verify =
        |file: &str, key: &str| done(folder, &["verify", file, "--witness", key, "--json"]);
    let found: Value = serde_json::from_str(&verify("two.jsonl", &key)).unwrap();
    let told = |found: &Value, list: &str| found[list].to_string();
    let part = format!("exactly the first {seen} of these {} leaves", seen + 2);
    assert!(told(&found, "proves").contains(&part), "{found}");
    assert!(told(&found, "does_not_prove").contains("the 2 leaves that came after"));
    assert!(told(&found, "does_not_prove").contains("not one word of what is in it"));
    let twice = ["verify", "two.jsonl", "--witness", &key, "--witness", &key];
    let twice = done(folder, &[&twice[..], &["--json"]].concat());
    assert_eq!(serde_json::from_str::<Value>(&twice).unwrap(), found);
    bring(&world, folder, "two.note");
    let three = fetch(&world, "/trail/export", "three.jsonl", folder);
    let found: Value = serde_json::from_str(&verify("three.jsonl", &key)).unwrap();
    let part = format!("exactly these {} leaves", seen + 2);
    assert!(told(&found, "proves").contains(&part), "{found}");
    assert!(told(&found, "facts").contains("cosigned 2 times by witness.example/w1"));
    // Without the key it is checked with the one in the trail, and that is said.
    let plain = done(folder, &["verify", "three.jsonl"]);
    let plain = plain.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(
        plain.contains("the key that the trail itself names"),
        "{plain}"
    );

    // Missing, changed, taken out.
    let asked = |file: &str, key: &str| refused(folder, &["verify", file, "--witness", key]);
    assert!(asked("three.jsonl", &other).contains("no checkpoint in this file is cosigned"));
    let line = fs::read_to_string(folder.join("one.note")).unwrap();
    let line = line.lines().last().unwrap();
    let bent = line.replace(&line[line.len() - 12..line.len() - 8], "AAAA");
    fs::write(folder.join("bent.jsonl"), three.replace(line, &bent)).unwrap();
    assert!(asked("bent.jsonl", &key).contains("does not verify"));
    assert!(refused(folder, &["verify", "bent.jsonl"]).contains("does not verify"));
    fs::write(folder.join("one-bare.jsonl"), {
        let one = fs::read_to_string(folder.join("one.jsonl")).unwrap();
        assert!(!one.contains(line));
        one
    })
    .unwrap();
    assert!(asked("one-bare.jsonl", &key).contains("or its cosignature was taken out"));

    // The log forks: its own signature is good, and the witness stands in the way, at the check and at the next note.
    let mut fork = forked(&world, &three);
    fs::write(folder.join("fork.jsonl"), fork.to_jsonl().unwrap()).unwrap();
    done(folder, &["verify", "fork.jsonl"]);
    assert!(asked("fork.jsonl", &key).contains("no checkpoint"));
    fork.cosigned = vec![fs::read_to_string(folder.join("one.note")).unwrap()];
    fs::write(folder.join("spliced.jsonl"), fork.to_jsonl().unwrap()).unwrap();
    assert!(asked("spliced.jsonl", &key).contains("another trail than the one that was cosigned"));
    let told = refused(folder, &next("fork.jsonl", &[]));
    assert!(told.contains("NOT cosigned: the trail forked"), "{told}");
    fs::write(folder.join("fork.txt"), &fork.checkpoint).unwrap();
    let mut short = next("fork.txt", &["--proof", "growth.json", "--log-key"]);
    short.push(log);
    let told = refused(folder, &short);
    assert!(
        told.contains("NOT cosigned: the proof does not show"),
        "{told}"
    );
    // It forgets.
    let back = [
        "witness",
        "sign",
        "one.jsonl",
        "--key",
        "w1.key",
        "--last",
        "two.note",
    ];
    assert!(refused(folder, &back).contains("NOT cosigned: the trail shrank"));
    // A proof between other sizes, somebody else's last note, no log key, a key that others may read.
    let wrong = growth.replace(
        &format!("\"from\":{seen}"),
        &format!("\"from\":{}", seen - 1),
    );
    fs::write(folder.join("growth.json"), wrong).unwrap();
    let mut short = next("two.txt", &["--proof", "growth.json", "--log-key"]);
    short.push(log);
    assert!(refused(folder, &short).contains("should be from"));
    let theirs = [
        "witness",
        "sign",
        "two.jsonl",
        "--key",
        "w2.key",
        "--last",
        "one.note",
    ];
    assert!(refused(folder, &theirs).contains("carries no signature by witness.example/w2"));
    let nobodys = gagwright(folder, &next("two.txt", &["--proof", "growth.json"]));
    assert_eq!(nobodys.status.code(), Some(2));
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt;
        let open = fs::Permissions::from_mode(0o644);
        fs::set_permissions(folder.join("w1.key"), open).unwrap();
        assert!(refused(folder, &next("two.jsonl", &[])).contains("others may read w1.key"));
    }
}
