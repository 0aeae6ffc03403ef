//! The command line as people and programs meet it: the binary itself is run, and what it prints,
//! writes and exits with is held to what its help says.

#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use std::{
    fs,
    path::Path,
    process::{Command, Output},
};

use serde_json::Value;

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

fn json(output: &Output) -> Value {
    assert!(output.status.success(), "{}", text(&output.stderr));
    serde_json::from_slice(&output.stdout).unwrap()
}

/// How wide a terminal shows a line; combining marks take no room and wide letters two columns.
fn width(line: &str) -> usize {
    unicode_width::UnicodeWidthStr::width(line)
}

#[test]
fn the_story_comes_out_and_leaves_everything_it_names() {
    let folder = tempfile::tempdir().unwrap();
    let told = gagwright(folder.path(), &["demo", "--out", "story"]);
    let out = text(&told.stdout);
    assert!(told.status.success(), "{out}\n{}", text(&told.stderr));
    assert!(
        out.contains("exactly these fell: Stunt coordinator, Performer, Effects supervisor, Fire")
    );
    assert!(out.contains("exactly these stand: Medic, Production manager."));
    let told = out.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(
        told.contains("The sheet says 100 N of seal friction. The shots say 3"),
        "{out}"
    );
    let story = folder.path().join("story");
    for name in ["g01-a4.pdf", "g01-letter.pdf"] {
        assert!(
            fs::read(story.join(name)).unwrap().starts_with(b"%PDF-"),
            "{name}"
        );
    }
    for line in out
        .lines()
        .filter(|line| !line.contains(folder.path().to_str().unwrap()))
    {
        assert!(width(line) <= 80, "{} columns: {line}", width(line));
    }
    let again = gagwright(folder.path(), &["demo", "--out", "story"]);
    assert_eq!(
        again.status.code(),
        Some(2),
        "a folder that is not empty must be left alone"
    );

    // The keys are their owners' alone.
    #[cfg(unix)]
    for key in fs::read_dir(story.join("keys")).unwrap() {
        use std::os::unix::fs::PermissionsExt;
        let mode = key.unwrap().metadata().unwrap().permissions().mode();
        assert_eq!(mode & 0o777, 0o600);
    }

    // Everything can be checked again from its files, and a changed copy is found out.
    let trail = gagwright(folder.path(), &["verify", "story/trail.jsonl", "--json"]);
    assert!(
        json(&trail)["proves"]
            .as_array()
            .is_some_and(|all| !all.is_empty())
    );
    let proof = gagwright(folder.path(), &["verify", "story/g01-proof.json"]);
    assert!(
        text(&proof.stdout).contains("plan digest:"),
        "{}",
        text(&proof.stderr)
    );
    let tampered = gagwright(folder.path(), &["verify", "story/trail-tampered.jsonl"]);
    assert_eq!(tampered.status.code(), Some(1));
    assert!(text(&tampered.stderr).contains("does NOT verify"));
    let signed = "story/g01-coordinator.jws";
    let good = ["verify", signed, "--key", "story/keys/C01.public.jwk.json"];
    assert!(gagwright(folder.path(), &good).status.success());
    let other = ["verify", signed, "--key", "story/keys/C05.public.jwk.json"];
    assert_eq!(gagwright(folder.path(), &other).status.code(), Some(1));
    assert_eq!(
        gagwright(folder.path(), &["verify", signed]).status.code(),
        Some(2)
    );

    // The same database answers the other subcommands.
    let database = "story/story.db";
    let matches = json(&gagwright(
        folder.path(),
        &["match", "G01", "--json", "--database", database],
    ));
    let items = matches[0]["items"].as_array().unwrap();
    assert_eq!(
        items[0]["verdict"]["outcome"], "conditional",
        "whoever has only to consent comes first"
    );
    let burned = items.iter().any(|one| {
        let findings = one["verdict"]["findings"].as_array().unwrap().iter();
        let mut spent = findings.filter(|one| one["requirement"]["kind"] == "daily_exposure");
        spent.any(|one| one["standing"] == "not_met")
    });
    assert!(
        burned,
        "who burned in the take has had the only burn that the day allows"
    );
    assert!(
        items
            .iter()
            .any(|one| one["verdict"]["outcome"] == "not_qualified")
    );
    let missing = gagwright(folder.path(), &["match", "G99", "--database", database]);
    assert_eq!(missing.status.code(), Some(1));
    assert!(
        text(&missing.stderr).contains("G01"),
        "{}",
        text(&missing.stderr)
    );
    let packet = gagwright(
        folder.path(),
        &[
            "packet",
            "G01",
            "--paper",
            "letter",
            "--out",
            "p.pdf",
            "--json",
            "--database",
            database,
        ],
    );
    // The story's take was the only burn that its day allows.
    assert_eq!(json(&packet)["state"], "Blocked");
    assert!(folder.path().join("p.proof.json").exists());

    fs::write(
        folder.path().join("bad.csv"),
        "code,name,occupation,performs\nP50,New,performer,perhaps\n",
    )
    .unwrap();
    let import = ["import", "people", "bad.csv", "--database", database];
    let refused = gagwright(folder.path(), &import);
    assert_eq!(refused.status.code(), Some(1));
    assert!(
        text(&refused.stderr).contains("row 2, column performs"),
        "{}",
        text(&refused.stderr)
    );
    fs::write(
        folder.path().join("good.csv"),
        "code,name,occupation,performs\nP50,Nové Meno,performer,yes\n",
    )
    .unwrap();
    let import = [
        "import",
        "people",
        "good.csv",
        "--database",
        database,
        "--json",
    ];
    assert_eq!(json(&gagwright(folder.path(), &import))["created"], 1);
}

#[test]
fn assess_prints_figures_checks_and_sources_and_parses_as_json() {
    let folder = tempfile::tempdir().unwrap();
    let inputs = [
        "assess",
        "high-fall",
        "drop_height=40ft +- 6in",
        "performer_mass=137lb",
        "landing_attitude=back",
        "catcher=air_bag",
        "catcher_depth=2.6m",
        "catcher_length=9m",
        "catcher_width=7m",
        "catcher_distance=1.5m",
        "wind_speed=4m/s",
        "spotters=4",
        "emergency_providers=2",
        "ambulances=1",
    ];
    let told = gagwright(folder.path(), &inputs);
    let out = text(&told.stdout);
    assert!(told.status.success(), "{}", text(&told.stderr));
    for wanted in [
        "Impact speed",
        "mph",
        "Within",
        "guideline 25",
        "usual value",
    ] {
        assert!(out.contains(wanted), "{wanted} is missing:\n{out}");
    }
    for line in out.lines() {
        assert!(width(line) <= 80, "{line}");
    }
    // What nobody entered and nothing stands in for is unknown, a choice as much as a number.
    let told = gagwright(folder.path(), &["assess", "high-fall", "drop_height=12m"]);
    let out = text(&told.stdout);
    let missing: Vec<&str> = out
        .lines()
        .filter(|line| line.contains("not given"))
        .collect();
    assert!(
        missing.iter().any(|line| line.starts_with("Catcher ")),
        "{out}"
    );
    for line in missing {
        assert!(line.trim_end().ends_with("unknown"), "{line}");
    }
    let mut with_json = inputs.to_vec();
    with_json.push("--json");
    let answer = json(&gagwright(folder.path(), &with_json));
    let speed = answer["figures"]
        .as_array()
        .unwrap()
        .iter()
        .find(|one| one["name"] == "impact_speed")
        .and_then(|one| one["value"].as_f64())
        .unwrap();
    // No drag would give sqrt(2 g h) = 15.46 m/s for 40 ft (12.192 m): drag takes some of it.
    assert!((14.0..15.47).contains(&speed), "{speed}");
    let list = json(&gagwright(folder.path(), &["assess", "--json"]));
    assert!(list.as_array().unwrap().len() >= 4);
    let described = gagwright(folder.path(), &["assess", "full-burn", "--describe"]);
    assert!(text(&described.stdout).contains("gel_mass"));
}

#[test]
fn what_is_typed_wrongly_says_how_to_type_it() {
    let folder = tempfile::tempdir().unwrap();
    for (arguments, wanted) in [
        (
            vec!["assess", "high-fall", "drop_height=30kg"],
            "unit of mass",
        ),
        (vec!["assess", "high-fall", "drop_height=30"], "has no unit"),
        (
            vec!["assess", "high-fall", "drop_height=NaN m"],
            "not a finite number",
        ),
        (vec!["assess", "high-fall", "drop_height"], "name=value"),
        (
            vec!["assess", "high-fall", "drop_heigth=30m"],
            "drop_height",
        ),
        (
            vec!["assess", "high-fall", "drop_height=9000m"],
            "drop_height",
        ),
        (vec!["assess", "long-jump"], "high-fall"),
        (
            vec!["assess", "high-fall", "drop_height=3m", "drop_height=4m"],
            "given twice",
        ),
        (
            vec!["solve", "high-fall", "drop_height", "impact_speed"],
            "name=value",
        ),
        (
            vec!["solve", "high-fall", "drop_height", "joy=3m"],
            "impact_speed",
        ),
        (
            vec!["solve", "high-fall", "drop_height", "impact_speed=3kg"],
            "unit of mass",
        ),
        (
            vec!["spread", "high-fall", "drop_height=3m", "--draws", "9"],
            "draws",
        ),
        (vec!["sensitivity", "long-jump", "joy"], "high-fall"),
        (vec!["fly"], "unrecognized subcommand"),
    ] {
        let refused = gagwright(folder.path(), &arguments);
        assert_eq!(refused.status.code(), Some(2), "{arguments:?}");
        let told = text(&refused.stderr).replace('\n', " ");
        assert!(told.contains(wanted), "{arguments:?}: {told}");
    }
    for arguments in [vec!["match", "G01"], vec!["verify", "nothing.jsonl"]] {
        let failed = gagwright(folder.path(), &arguments);
        assert_eq!(failed.status.code(), Some(1), "{arguments:?}");
        assert!(
            !text(&failed.stderr).contains("panicked"),
            "{}",
            text(&failed.stderr)
        );
    }
    assert!(
        fs::read_dir(folder.path()).unwrap().next().is_none(),
        "a failed look-up must not make a database"
    );
}

#[test]
fn migrate_brings_a_database_up_once_and_help_teaches() {
    let folder = tempfile::tempdir().unwrap();
    let database = ["--database", "sqlite:own.db", "--json"];
    let mut would = vec!["migrate", "--dry-run"];
    would.extend(database);
    assert_eq!(json(&gagwright(folder.path(), &would))["applied"], false);
    let mut migrate = vec!["migrate"];
    migrate.extend(database);
    let first = json(&gagwright(folder.path(), &migrate));
    assert!(!first["migrations"].as_array().unwrap().is_empty());
    let second = json(&gagwright(folder.path(), &migrate));
    assert!(second["migrations"].as_array().unwrap().is_empty());
    for subcommand in [
        "serve",
        "demo",
        "assess",
        "match",
        "import",
        "packet",
        "verify",
        "migrate",
        "describe-api",
        "policy",
        "handbook",
        "spread",
        "sensitivity",
        "solve",
        "witness",
    ] {
        let help = gagwright(folder.path(), &[subcommand, "--help"]);
        assert!(help.status.success());
        assert!(
            text(&help.stdout).contains("Example"),
            "{subcommand} --help shows no example"
        );
    }
}

#[test]
fn questions_about_a_plan_are_answered_in_the_terminal() {
    let folder = tempfile::tempdir().unwrap();
    let fall = ["drop_height=12m +- 0.5m", "performer_mass=75kg"];
    let asked = |first: &[&str], more: &[&str]| {
        let words: Vec<&str> = first.iter().chain(&fall).chain(more).copied().collect();
        let told = gagwright(folder.path(), &words);
        let out = text(&told.stdout);
        assert!(told.status.success(), "{words:?}: {}", text(&told.stderr));
        for line in out.lines() {
            assert!(width(line) <= 80, "{line}");
        }
        out
    };
    let spread = asked(&["spread", "high-fall"], &["--draws", "1000"]);
    assert!(spread.contains("1000 draws"), "{spread}");
    assert!(spread.contains("Impact speed"), "{spread}");
    assert_eq!(
        spread,
        asked(&["spread", "high-fall"], &["--draws", "1000"])
    );
    let ranked = asked(&["sensitivity", "high-fall", "impact_speed"], &[]);
    let first = ranked.lines().nth(4).unwrap_or_default();
    assert!(first.starts_with("Drop height"), "{ranked}");
    let solved = asked(
        &["solve", "high-fall", "drop_height", "impact_speed=10 m/s"],
        &["--json"],
    );
    let solved: Value = serde_json::from_str(&solved).unwrap();
    // h = v^2 / 2 g = 5.099 m without air; air asks for a little more.
    let root = solved["roots"][0].as_f64().unwrap();
    assert!((5.098..5.4).contains(&root), "{root}");
    let told = asked(
        &["solve", "high-fall", "drop_height", "impact_speed=10 m/s"],
        &[],
    );
    assert!(told.contains("drop height at 5."), "{told}");
    let words = ["solve", "high-fall", "drop_height", "impact_speed=90 m/s"];
    let none = gagwright(folder.path(), &words);
    assert_eq!(none.status.code(), Some(1), "no such fall");
}

#[test]
fn a_policy_of_ones_own_is_checked_with_every_problem_and_its_place() {
    let folder = tempfile::tempdir().unwrap();
    let printed = gagwright(folder.path(), &["policy"]);
    assert!(printed.status.success());
    let mut policy = json(&printed);
    let file = folder.path().join("ours.json");
    std::fs::write(&file, policy.to_string()).unwrap();
    let sound = gagwright(folder.path(), &["policy", "ours.json"]);
    assert!(sound.status.success(), "{}", text(&sound.stderr));

    policy["delegation"]["performer"] =
        serde_json::json!({ "longest_days": 0, "certificates": true });
    policy["owners"].as_object_mut().unwrap().remove("fire");
    std::fs::write(&file, policy.to_string()).unwrap();
    let refused = gagwright(folder.path(), &["policy", "ours.json", "--json"]);
    assert_eq!(refused.status.code(), Some(1));
    let found = listed(&refused.stdout);
    for pointer in [
        "/delegation/performer",
        "/delegation/performer/longest_days",
        "/owners/fire",
    ] {
        assert!(
            found.iter().any(|one| one["pointer"] == pointer),
            "{pointer}: {found:?}"
        );
    }
    assert!(text(&refused.stderr).contains("cannot come into force"));
}

fn listed(bytes: &[u8]) -> Vec<Value> {
    serde_json::from_slice(bytes).unwrap()
}
