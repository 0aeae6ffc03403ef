//! The tools over HTTP: they answer what mechanics answers, refuse with the field and the fix, and take no
//! more work than they say.

use serde_json::{Value, json};

use crate::support::{Got, World};

fn ask(world: &World, tool: &str, body: &Value) -> Got {
    world.call("POST", tool).json(body).send()
}

fn named<'a>(list: &'a Value, key: &str, name: &str) -> &'a Value {
    let found = list.as_array().unwrap().iter();
    let found = found.clone().find(|one| one[key] == name);
    found.unwrap_or_else(|| panic!("no {name} in {list}"))
}

fn number(value: &Value) -> f64 {
    value.as_f64().unwrap_or_else(|| panic!("{value}"))
}

fn value(value: f64) -> Value {
    json!({ "value": value })
}

fn fall() -> Value {
    json!({ "drop_height": { "value": 10.0, "tolerance": 0.2 }, "performer_mass": value(75.0) })
}

/// The pull that the demo's ladder is shot with.
fn pull(bar: f64) -> Value {
    json!({
        "performer_mass": value(80.0), "pull_direction": "backward", "wanted_distance": value(5.0),
        "reservoir_pressure": value(bar * 1.0e5), "rated_pressure": value(10.0e5),
        "reservoir_volume": value(0.05), "bore": value(0.1), "stroke": value(0.6),
        "purchase": value(4.0), "valve_conductance": value(4.0e-7), "line_modulus": value(9.0e5),
        "line_length": value(12.0), "line_strength": value(18_700.0),
        "anchor_strength": value(45_000.0), "corridor_length": value(9.0),
    })
}

#[test]
fn spread_and_sensitivity_tell_what_tolerances_do() {
    let world = World::new();
    let asked = json!({ "inputs": fall(), "draws": 2_000, "seed": 7 });
    let first = ask(&world, "/techniques/high-fall/spread", &asked);
    let again = ask(&world, "/techniques/high-fall/spread", &asked);
    assert_eq!(first.body, again.body, "the same seed gave other draws");
    let spread = first.expect(200);
    assert_eq!(
        (&spread["draws"], &spread["seed"]),
        (&json!(2_000), &json!(7))
    );
    let impact = named(&spread["figures"], "name", "impact_speed");
    // v = sqrt(2 g h): 14.0 m/s without air, and a height out by 0.2 m moves it by half of 2 %.
    assert!(
        (13.0..14.01).contains(&number(&impact["median"])),
        "{impact}"
    );
    let width = number(&impact["high"]) - number(&impact["low"]);
    assert!((0.05..0.6).contains(&width), "{impact}");

    let asked = json!({ "inputs": fall(), "figure": "impact_speed" });
    let found = ask(&world, "/techniques/high-fall/sensitivity", &asked).expect(200);
    let height = named(&found["bars"], "parameter", "drop_height");
    // dv = g dh / v for each end, so 2 * 9.8 * 0.2 / 14 = 0.28 m/s, less what air takes.
    assert!((0.2..0.3).contains(&number(&height["swing"])), "{height}");
}

#[test]
fn solve_and_compare_answer_questions_about_a_plan() {
    let world = World::new();
    let asked = json!({
        "inputs": fall(), "parameter": "drop_height", "figure": "impact_speed", "wanted": 10.0,
    });
    let found = ask(&world, "/techniques/high-fall/solve", &asked).expect(200);
    let roots = found["roots"].as_array().unwrap();
    assert_eq!(roots.len(), 1, "{found}");
    // h = v^2 / 2 g = 5.099 m without air (Galileo); air asks for a little more.
    assert!((5.098..5.4).contains(&number(&roots[0])), "{found}");
    let mut higher = fall();
    higher["drop_height"] = value(12.0);
    let asked = json!({ "before": fall(), "after": higher });
    let found = ask(&world, "/techniques/high-fall/compare", &asked).expect(200);
    assert_eq!(
        named(&found["figures"], "name", "impact_speed")["moved"],
        true
    );
    assert_eq!(found["inputs"].as_array().unwrap().len(), 1, "{found}");
}

#[test]
fn a_ladder_of_shots_gives_back_the_coefficient_it_was_shot_with() {
    let world = World::new();
    let figure = |assessment: &Value, name: &str| {
        number(&named(&assessment["figures"], "name", name)["value"])
    };
    let shots: Vec<Value> = [3.0, 3.5, 4.0, 4.5, 5.0]
        .iter()
        .map(|bar| {
            let mut truth = pull(*bar);
            truth["seal_friction"] = value(330.0);
            let given = ask(
                &world,
                "/techniques/ratchet-pull/assessment",
                &json!({ "inputs": truth }),
            );
            let given = given.expect(200);
            json!({
                "inputs": pull(*bar),
                "measured": { "total_distance": figure(&given, "total_distance") },
            })
        })
        .collect();
    let calibrate = |shots: &[Value]| {
        ask(
            &world,
            "/techniques/ratchet-pull/calibrate",
            &json!({ "inputs": pull(5.4), "shots": shots, "coefficients": ["seal_friction"] }),
        )
    };
    let found = calibrate(&shots).expect(200);
    let friction = named(&found["coefficients"], "name", "seal_friction");
    assert_eq!(friction["stated"], 100.0);
    let learned = number(&friction["value"]);
    assert!((learned - 330.0).abs() < 1.0, "{friction}");
    assert_eq!(found["shots"].as_array().unwrap().len(), 5);
    let distance = named(&found["prediction"], "figure", "total_distance");
    assert!(
        number(&distance["value"]) < number(&distance["stated"]),
        "{distance}"
    );

    // Too few, too many, and what no shot can have measured.
    let problem = calibrate(&shots[..1]).refused(422, "invalid_input");
    assert_eq!(problem["errors"][0]["pointer"], "/shots");
    assert!(
        problem["detail"].as_str().unwrap().contains("more"),
        "{problem}"
    );
    let many: Vec<Value> = shots.iter().cycle().take(201).cloned().collect();
    let problem = calibrate(&many).refused(422, "invalid_input");
    assert_eq!(problem["errors"][0]["pointer"], "/shots");
    let mut odd = shots.clone();
    odd[3]["measured"] = json!({ "joy": 3.0 });
    let problem = calibrate(&odd).refused(422, "invalid_input");
    assert_eq!(problem["errors"][0]["pointer"], "/shots/3/measured/joy");
    odd[3] = shots[3].clone();
    odd[2]["inputs"]["bore"] = value(-1.0);
    let problem = calibrate(&odd).refused(422, "invalid_input");
    assert_eq!(problem["errors"][0]["pointer"], "/shots/2/inputs/bore");
}

#[test]
fn what_a_tool_cannot_do_is_refused_with_the_field() {
    let world = World::new();
    let solve = |parameter: &str, figure: &str| json!({ "inputs": fall(), "parameter": parameter, "figure": figure, "wanted": 1.0 });
    let mut wrong = fall();
    wrong["drop_height"] = value(-3.0);
    for (tool, body, pointer) in [
        ("spread", json!({ "inputs": fall(), "draws": 99 }), "/draws"),
        (
            "spread",
            json!({ "inputs": fall(), "draws": 100_001 }),
            "/draws",
        ),
        ("spread", json!({ "inputs": wrong }), "/inputs/drop_height"),
        ("spread", json!({ "inputs": fall(), "dice": 3 }), "/dice"),
        (
            "sensitivity",
            json!({ "inputs": fall(), "figure": "joy" }),
            "/figure",
        ),
        ("solve", solve("joy", "impact_speed"), "/parameter"),
        ("solve", solve("drop_height", "joy"), "/figure"),
        (
            "compare",
            json!({ "before": fall(), "after": wrong }),
            "/after/drop_height",
        ),
        ("compare", json!({ "before": fall() }), "/after"),
        (
            "calibrate",
            json!({ "inputs": fall(), "shots": [], "confidence": 2.0 }),
            "/confidence",
        ),
    ] {
        let path = format!("/techniques/high-fall/{tool}");
        let problem = ask(&world, &path, &body).refused(422, "invalid_input");
        assert_eq!(
            problem["errors"][0]["pointer"], pointer,
            "{tool}: {problem}"
        );
        assert_ne!(problem["errors"][0]["fix"], "", "{problem}");
        let path = format!("/techniques/levitation/{tool}");
        let body = json!({ "inputs": {}, "figure": "a", "parameter": "b", "wanted": 1.0,
            "shots": [], "before": {}, "after": {} });
        let answer = ask(&world, &path, &only(tool, &body));
        answer.refused(404, "unknown_id");
    }
    let anyone = world.server.call("POST", "/techniques/high-fall/spread");
    anyone
        .json(&json!({ "inputs": fall() }))
        .send()
        .refused(401, "not_signed_in");
}

/// The fields of a body that the tool knows.
fn only(tool: &str, body: &Value) -> Value {
    let known: &[&str] = match tool {
        "spread" => &["inputs"],
        "sensitivity" => &["inputs", "figure"],
        "solve" => &["inputs", "figure", "parameter", "wanted"],
        "calibrate" => &["inputs", "shots"],
        _ => &["before", "after"],
    };
    let fields = body.as_object().unwrap().iter();
    fields
        .filter(|(name, _)| known.contains(&name.as_str()))
        .map(|(name, value)| (name.clone(), value.clone()))
        .collect::<serde_json::Map<_, _>>()
        .into()
}

#[test]
fn limits_of_habit_are_read_with_their_reasons() {
    let world = World::new();
    let read = |technique: &str| {
        let path = format!("/techniques/{technique}/limits");
        world.call("GET", &path).send()
    };
    let found = read("high-fall").expect(200);
    let wind = named(&found["items"], "name", "wind");
    assert_eq!(wind["quantity"], "speed");
    assert!(number(&wind["value"]) > 0.0);
    assert!(wind["why"].as_str().unwrap().ends_with('.'));
    assert_eq!(wind["source"]["standing"], "common_practice");
    read("levitation").refused(404, "unknown_id");
}
