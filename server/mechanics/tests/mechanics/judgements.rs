//! What techniques say of worked cases: that a check comes out the way its source does, that intervals
//! are what they claim, and that a status means the same everywhere.

use crate::common::{
    GRAVITY, Given,
    Given::{Exact, Option as Name, Within},
    POUND_FORCE, assess, check, close, figure, plausible,
};
use gagwright_mechanics::{
    Assessment, Bound, FigureDescription, Inputs, Quantity, Shape, Standing, Status,
    evaluation::{Computed, over_tolerances},
    find,
    judging::{Held, status},
    models::{
        fall, skin, stopping,
        trajectory::{self, Throw},
    },
    reading,
    technique::Computation,
};

const FOOT: f64 = 0.3048;

#[test]
fn a_status_means_the_same_everywhere() {
    let held = |low, value, high| Held { value, low, high };
    let judge = |bound, held: Held| status(bound, &held, 100.0, 0.05, true);
    use Bound::{AtLeast, AtMost};
    // All inside with a twentieth to spare; then less to spare; straddling; the value itself outside.
    assert_eq!(judge(AtMost, held(80.0, 90.0, 95.0)), Status::Within);
    assert_eq!(judge(AtMost, held(80.0, 90.0, 95.1)), Status::Marginal);
    assert_eq!(judge(AtMost, held(80.0, 90.0, 101.0)), Status::Marginal);
    assert_eq!(judge(AtMost, held(80.0, 100.0, 110.0)), Status::Marginal);
    assert_eq!(judge(AtMost, held(80.0, 100.1, 110.0)), Status::Exceeded);
    assert_eq!(judge(AtLeast, held(105.0, 110.0, 120.0)), Status::Within);
    assert_eq!(judge(AtLeast, held(104.9, 110.0, 120.0)), Status::Marginal);
    assert_eq!(judge(AtLeast, held(90.0, 100.0, 120.0)), Status::Marginal);
    assert_eq!(judge(AtLeast, held(90.0, 99.9, 120.0)), Status::Exceeded);
    // An interval that is not whole can't be within, however far inside it looks.
    assert_eq!(
        status(AtMost, &held(1.0, 1.0, 1.0), 100.0, 0.05, false),
        Status::Marginal
    );
    // Counted things need no reserve.
    assert_eq!(
        status(AtLeast, &held(2.0, 2.0, 2.0), 2.0, 0.0, true),
        Status::Within
    );
}

static DESCRIBED: [FigureDescription; 2] = [
    FigureDescription {
        name: "product",
        title: "Product",
        quantity: Quantity::Ratio,
        help: ".",
    },
    FigureDescription {
        name: "ratio",
        title: "Ratio",
        quantity: Quantity::Ratio,
        help: ".",
    },
];

#[test]
fn intervals_span_the_corners() {
    // Depth 3 ± 0.3 and share 0.7 ± 0.1: the product spans 2.7 * 0.6 to 3.3 * 0.8 and the ratio
    // 2.7 / 0.8 to 3.3 / 0.6, which no move of one input alone reaches.
    let technique = find("high-fall").unwrap();
    let number = |value, tolerance: f64| gagwright_mechanics::InputValue::Number {
        value,
        tolerance: Some(tolerance),
    };
    let given = Inputs(
        [
            ("catcher_depth".to_owned(), number(3.0, 0.3)),
            ("usable_depth".to_owned(), number(0.7, 0.1)),
        ]
        .into(),
    );
    let values = reading::read(technique.name(), technique.parameters(), &given).unwrap();
    let computation = Computation::new(|values| {
        let mut out = Computed::new();
        let (depth, share) = (
            values.number("catcher_depth").unwrap(),
            values.number("usable_depth").unwrap(),
        );
        out.set("product", depth * share);
        out.set("ratio", depth / share);
        out
    });
    let evaluation = over_tolerances(values, &DESCRIBED, &computation).unwrap();
    let product = evaluation.figure("product").unwrap();
    close(product.low, 2.7 * 0.6, 1e-12);
    close(product.high, 3.3 * 0.8, 1e-12);
    let ratio = evaluation.figure("ratio").unwrap();
    close(ratio.low, 2.7 / 0.8, 1e-12);
    close(ratio.high, 3.3 / 0.6, 1e-12);
}

#[test]
fn catchers_have_the_guideline_ceilings() {
    // Ontario film guideline 25: boxes to 40 ft, bags to 120 ft. A box rig at 45 ft and a bag at 125 ft
    // are over it; at 38 ft and 115 ft they are not.
    for (catcher, feet, expected) in [
        ("box_rig", 45.0, Status::Exceeded),
        ("box_rig", 38.0, Status::Within),
        ("air_bag", 125.0, Status::Exceeded),
        ("air_bag", 115.0, Status::Within),
        // 40 ft sharp, with 0.1 m of doubt, is neither.
        ("box_rig", 40.0, Status::Marginal),
    ] {
        let assessment = assess(
            "high-fall",
            &[
                ("catcher", Name(catcher)),
                ("drop_height", Given::Number(feet * FOOT)),
            ],
        );
        let check = check(&assessment, "catcher_ceiling");
        assert_eq!(check.status, expected, "{catcher} {feet} ft");
        assert_eq!(check.source.standing, Standing::Published);
        assert!(check.blocking);
    }
}

#[test]
fn spotters_are_asked_for_above_fifteen_feet() {
    // The same guideline: at least two spotters above 15 ft.
    let high = assess("high-fall", &[("spotters", Exact(1.0))]);
    assert_eq!(check(&high, "spotters").status, Status::Exceeded);
    let low = assess(
        "high-fall",
        &[
            ("spotters", Exact(1.0)),
            ("drop_height", Exact(14.0 * FOOT)),
        ],
    );
    assert!(!low.checks.iter().any(|check| check.name == "spotters"));
}

#[test]
fn a_high_fall_from_the_worked_case() {
    // 30 m, 80 kg, CdA 0.5 m2, from rest at sea level: 22.928 m/s (computed with SciPy).
    let assessment = assess(
        "high-fall",
        &[
            ("drop_height", Exact(30.0)),
            ("performer_mass", Exact(80.0)),
            ("drag_area", Exact(0.5)),
            ("exit_speed", Exact(0.0)),
            ("exit_angle", Exact(0.0)),
        ],
    );
    close(figure(&assessment, "impact_speed").value, 22.928, 2e-3);
    // 7.5 m into 2.0 m of stopping: 3.75 g mean net of gravity, and 1 more is felt (energy, no drag).
    let assessment = assess(
        "high-fall",
        &[
            ("drop_height", Exact(7.5)),
            ("drag_area", Exact(0.05)),
            ("exit_speed", Exact(0.0)),
            ("catcher_depth", Exact(2.5)),
            ("usable_depth", Exact(0.8)),
            ("pulse_shape", Name("square")),
        ],
    );
    close(figure(&assessment, "mean_felt").value / GRAVITY, 4.75, 5e-3);
    close(
        figure(&assessment, "peak_felt").value,
        figure(&assessment, "mean_felt").value,
        1e-12,
    );
}

#[test]
fn seated_landings_are_held_to_the_spine() {
    let back = assess("high-fall", &[]);
    assert!(
        !back
            .checks
            .iter()
            .any(|check| check.name == "spinal_injury")
    );
    // A long fall onto little depth, seated: over the ejection criterion of 18.
    let seated = assess(
        "high-fall",
        &[
            ("landing_attitude", Name("seated")),
            ("drop_height", Exact(20.0)),
            ("catcher_depth", Exact(2.0)),
        ],
    );
    assert_eq!(check(&seated, "spinal_injury").status, Status::Exceeded);
    assert_eq!(check(&seated, "response_medium").status, Status::Exceeded);
    // The model itself, by hand: a stop that pushes with gravity and a haversine over 1.4 m.
    let speed = fall::with_drag(20.0, fall::terminal_speed(64.0, 0.5, 1.225)).speed;
    let stop = stopping::stop(speed, 1.4, stopping::Shape::Haversine);
    close(
        figure(&seated, "peak_felt").value,
        stop.peak + GRAVITY,
        1e-2,
    );
}

#[test]
fn missing_the_catcher_is_seen() {
    let aimed = assess("high-fall", &[]);
    let wide = assess("high-fall", &[("catcher_distance", Exact(7.0))]);
    assert!(figure(&wide, "miss_probability").value > 0.5);
    assert_eq!(check(&wide, "miss_probability").status, Status::Exceeded);
    // The size needed, put in as the size there is, gives at most the accepted chance and nearly it.
    let needed = |name| figure(&aimed, name).value;
    let exact = assess(
        "high-fall",
        &[
            ("catcher_length", Exact(needed("catcher_length_needed"))),
            ("catcher_width", Exact(needed("catcher_width_needed"))),
        ],
    );
    let chance = figure(&exact, "miss_probability").value;
    assert!((0.0003..=0.001).contains(&chance), "{chance}");
}

#[test]
fn two_hip_wires_from_the_worked_case() {
    // 90 kg at 2.5 g with each wire 20 degrees off the vertical: 1,174.1 N a wire; 1/8 in galvanised
    // with swaged ends 7.20, under 10; 3/16 in 15.12 (computed). No sheave, no bend, no swing.
    let lean = 20.0_f64.to_radians();
    let case = |size| {
        assess(
            "wire-flight",
            &[
                ("performer_mass", Exact(90.0)),
                ("lift_acceleration", Exact(1.5 * GRAVITY)),
                ("swing_angle", Exact(0.0)),
                ("overhead_spread", Exact(0.4 + 2.0 * 9.0 * lean.sin())),
                ("wire_length", Exact(9.0)),
                ("hip_width", Exact(0.4)),
                ("side_offset", Exact(0.0)),
                ("sheaves", Exact(0.0)),
                ("sheave_ratio", Exact(80.0)),
                ("wire_size", Name(size)),
            ],
        )
    };
    let thin = case("1/8");
    close(figure(&thin, "peak_tension_left").value, 1174.1, 1e-3);
    close(figure(&thin, "peak_felt").value, 2.5 * GRAVITY, 1e-9);
    // A wire that bends nowhere still counts the last row of the bend table, 95 %.
    close(figure(&thin, "lowest_factor").value, 7.20 * 0.95, 5e-3);
    assert_eq!(check(&thin, "design_factor").status, Status::Exceeded);
    assert_eq!(
        check(&thin, "design_factor").source.standing,
        Standing::CommonPractice
    );
    let thick = case("3/16");
    close(figure(&thick, "lowest_factor").value, 15.12 * 0.95, 5e-3);
    // Left alone the other wire at least hangs the whole load: 3.83 with 1/8 in, or less.
    let alone = figure(&thin, "one_wire_factor").value;
    assert!(alone < 3.83 * 0.95, "{alone}");
    let strength = 2000.0 * POUND_FORCE * 0.95 * 0.95;
    close(figure(&thin, "wire_strength").value, strength, 1e-9);
}

#[test]
fn a_flight_names_where_it_is_worst() {
    let gentle = assess(
        "wire-flight",
        &[("swing_angle", Exact(80.0_f64.to_radians()))],
    );
    let detail = &check(&gentle, "design_factor").detail;
    assert!(detail.contains("at the bottom of the swing"), "{detail}");
    // g (3 - 2 cos 80 deg) = 2.65 g without drag; a body of this drag loses a little of it.
    let felt = figure(&gentle, "peak_felt").value / GRAVITY;
    assert!((2.5..=2.6528).contains(&felt), "{felt}");
    let hard = assess(
        "wire-flight",
        &[
            ("swing_angle", Exact(0.0)),
            ("lift_acceleration", Exact(1.5 * GRAVITY)),
        ],
    );
    let detail = &check(&hard, "design_factor").detail;
    assert!(detail.contains("as the lift starts"), "{detail}");
}

#[test]
fn rescues_and_sets_are_held_to() {
    let slow = assess("wire-flight", &[("rescue_time", Exact(360.0))]);
    assert_eq!(check(&slow, "rescue_time").status, Status::Exceeded);
    let near = assess("wire-flight", &[("clear_distance", Exact(5.0))]);
    assert_eq!(check(&near, "clearance").status, Status::Exceeded);
    let top = assess("wire-flight", &[("balance_depth", Exact(-0.05))]);
    assert_eq!(check(&top, "balance").status, Status::Exceeded);
    assert!(check(&top, "balance").detail.contains("turns over"));
}

#[test]
fn a_pull_keeps_to_the_energy_there_is() {
    // The body can have no more than the gas gave on its way down the stroke; what the atmosphere takes
    // back and friction eat makes it less (first law).
    let assessment = assess("ratchet-pull", &[("pull_angle", Exact(0.0))]);
    let speed = figure(&assessment, "release_speed").value;
    let area = core::f64::consts::FRAC_PI_4 * (0.1_f64 * 0.1 - 0.02 * 0.02);
    let most = 6.0e5 * area * 0.6;
    let energy = 0.5 * 72.0 * speed * speed;
    assert!(energy < most, "{energy} J from {most} J");
    assert!(energy > 0.2 * most, "{energy} J from {most} J");
    // The line can't pull harder than the piston at full pressure, with its spring's overshoot.
    let steady = 6.0e5 * area / 2.0 * 0.9;
    assert!(figure(&assessment, "line_peak").value < 2.0 * steady);
}

#[test]
fn a_pull_six_metres_long() {
    // Pulls of the 6 m class are common practice: the pressure given back must give that distance.
    let asked = assess("ratchet-pull", &[]);
    let pressure = figure(&asked, "pressure_needed").value;
    let set = assess("ratchet-pull", &[("reservoir_pressure", Exact(pressure))]);
    close(figure(&set, "total_distance").value, 6.0, 1e-3);
    // And it says so when there is none.
    let short = assess(
        "ratchet-pull",
        &[
            ("wanted_distance", Exact(25.0)),
            ("stroke", Exact(0.1)),
            ("bore", Exact(0.03)),
        ],
    );
    assert!(
        !short
            .figures
            .iter()
            .any(|figure| figure.name == "pressure_needed")
    );
    assert!(
        short
            .cautions
            .iter()
            .any(|caution| caution.name == "distance_out_of_reach")
    );
}

#[test]
fn a_figure_at_balance_is_looked_at_from_both_sides() {
    // Car and throw meet to the frame as planned. With approach and run-in at one end and trigger and delay at the
    // other they are 1.08 frames apart: a plan of its own, exact.
    let apart = |ends: [f64; 4]| {
        assess(
            "car-hit",
            &[
                ("approach_speed", Exact(ends[0])),
                ("run_in", Exact(ends[1])),
                ("friction", Exact(0.7)),
                ("trigger", Exact(ends[2])),
                ("pull_delay", Exact(ends[3])),
                ("brake_before", Exact(0.0)),
            ],
        )
    };
    let corner = apart([9.95, 30.02, 2.906, 0.066]);
    let planned = assess(
        "car-hit",
        &[
            ("approach_speed", Within(10.0, 0.05)),
            ("run_in", Within(30.0, 0.02)),
            ("friction", Exact(0.7)),
            ("trigger", Within(2.92, 0.014)),
            ("pull_delay", Within(0.08, 0.014)),
            ("brake_before", Exact(0.0)),
        ],
    );
    let found = figure(&planned, "registration");
    assert!(found.high >= figure(&corner, "registration").value - 1e-9);
    assert_ne!(check(&planned, "registration").status, Status::Within);
}

#[test]
fn the_last_figures_are_held_to_their_corners_too() {
    // Push goes with the square of wind and by area over mass, so the corner is past the sum of single moves: 11.41 m
    // where that sum is 9.77 m (both computed). No length is below nothing.
    let windy = assess(
        "descender-drop",
        &[
            ("wind_speed", Within(5.0, 2.0)),
            ("drag_area", Within(0.8, 0.4)),
            ("clear_distance", Exact(11.3)),
        ],
    );
    let drift = figure(&windy, "wind_drift");
    assert!(drift.high >= 11.4 && drift.low >= 0.0, "{drift:?}");
    assert_ne!(check(&windy, "drift").status, Status::Within);
}

#[test]
fn a_line_carries_what_the_blocks_take() {
    // The piston feels the body's pull times the purchase over the share that the blocks pass on, so the line by the
    // cylinder carries the pull over that share (force balance; computed).
    let lossy = assess(
        "ratchet-pull",
        &[("line_share", Exact(0.8)), ("line_strength", Exact(8760.0))],
    );
    let of = |name| figure(&lossy, name).value;
    let body = 72.0 * of("peak_acceleration");
    close(of("body_force"), body, 1e-12);
    close(of("line_factor"), 8760.0 * 0.8 / body, 1e-12);
    // Turned a quarter, that tension twice at a right angle.
    close(
        of("anchor_load"),
        core::f64::consts::SQRT_2 * body / 0.8,
        1e-12,
    );
    // 4.66 at the cylinder's end, where five are asked for.
    assert_eq!(check(&lossy, "line_factor").status, Status::Exceeded);
}

#[test]
fn a_redirect_of_unknown_turn_passes_nothing() {
    let mut given = plausible("ratchet-pull");
    given.0.remove("redirect_angle");
    let unknown = find("ratchet-pull").unwrap().assess(&given).unwrap();
    assert_eq!(check(&unknown, "anchor_factor").status, Status::Unknown);
    assert!(
        check(&unknown, "anchor_factor")
            .detail
            .contains("Turn at the redirect")
    );
}

#[test]
fn a_corridor_holds_the_slide_too() {
    // Two metres past the landing are habit; the ground that is kept clear and the check are one.
    for length in [5.3, 6.0, 6.5, 7.0, 7.5, 9.0] {
        let pull = assess("ratchet-pull", &[("corridor_length", Exact(length))]);
        let zone = pull
            .zones
            .iter()
            .find(|zone| zone.name == "corridor")
            .unwrap();
        let Shape::Rectangle { x1, .. } = zone.shape else {
            panic!("no rectangle")
        };
        close(x1, figure(&pull, "total_distance").high + 2.0, 1e-9);
        let within = check(&pull, "corridor").status == Status::Within;
        assert!(!within || x1 <= length, "{length}: {x1}");
    }
    let short = assess("ratchet-pull", &[("corridor_length", Exact(5.3))]);
    assert_ne!(check(&short, "corridor").status, Status::Within);
}

#[test]
fn a_pull_that_stalls_says_so_and_passes_nothing() {
    let assessment = assess(
        "ratchet-pull",
        &[
            ("reservoir_pressure", Exact(0.3e5)),
            ("pull_angle", Exact(1.2)),
        ],
    );
    assert!(
        assessment
            .cautions
            .iter()
            .any(|caution| caution.name == "stalls")
    );
    assert_eq!(check(&assessment, "corridor").status, Status::Unknown);
}

#[test]
fn a_landing_above_the_top_of_the_flight_is_never_reached() {
    for (technique, raised, never) in [
        ("ratchet-pull", ("landing_height", 2.5), "total_distance"),
        ("air-ram", ("landing_height", 3.0), "landing_distance"),
        ("car-hit", ("pad_height", 1.5), "landing_distance"),
    ] {
        let level = assess(technique, &[]);
        let gives = |of: &Assessment| of.figures.iter().any(|one| one.name == never);
        assert!(gives(&level), "{technique}");
        assert!(level.cautions.iter().all(|one| one.name != "never_up"));
        let high = assess(technique, &[(raised.0, Exact(raised.1))]);
        assert!(!gives(&high), "{technique}");
        assert!(high.cautions.iter().any(|one| one.name == "never_up"));
        assert!(high.checks.iter().any(|one| one.status == Status::Unknown));
    }
}

/// Without drag, by the closed form: v sin a + sqrt((v sin a)^2 - 2 g up) over g is the time to come down onto
/// a surface `up` above the release.
#[test]
fn a_landing_above_the_release_is_met_on_the_way_down() {
    let throw = |angle: f64, up: f64| Throw {
        speed: 8.0,
        angle,
        height: -up,
        mass: 80.0,
        drag_area: 0.0,
        density: 1.2,
        wind: 0.0,
    };
    let rise: f64 = 8.0 * (0.9_f64).sin();
    for up in [0.1, 0.8, 1.5] {
        let time = (rise + (rise * rise - 2.0 * GRAVITY * up).sqrt()) / GRAVITY;
        let landing = trajectory::fly(&throw(0.9, up)).unwrap();
        close(landing.time, time, 1e-8);
        close(landing.distance, 8.0 * (0.9_f64).cos() * time, 1e-8);
    }
    let top = rise * rise / (2.0 * GRAVITY);
    assert!(trajectory::fly(&throw(0.9, top + 0.01)).is_none());
    assert!(trajectory::fly(&throw(0.0, 0.1)).is_none());
}

#[test]
fn scenario_of_a_hard_pull() {
    // A jerk of 5 g is over the usual alarm of 4 g (common practice).
    let hard = assess(
        "ratchet-pull",
        &[
            ("reservoir_pressure", Exact(16e5)),
            ("valve_conductance", Exact(50e-8)),
            ("valve_opening_time", Exact(0.005)),
            ("purchase", Exact(2.0)),
        ],
    );
    assert!(figure(&hard, "peak_acceleration").value > 4.0 * GRAVITY);
    assert_eq!(check(&hard, "peak_acceleration").status, Status::Exceeded);
    assert_eq!(check(&hard, "rated_pressure").status, Status::Marginal);
}

const THIN_SUIT: [(&str, Given); 5] = [
    ("outer_thickness", Exact(0.6e-3)),
    ("outer_mass", Exact(0.2)),
    ("gel_mass", Exact(0.4)),
    ("under_mass", Exact(0.15)),
    ("under_thickness", Exact(0.4e-3)),
];

#[test]
fn a_burn_under_too_little_gel_is_stopped() {
    let thin = assess("full-burn", &THIN_SUIT);
    let seconds = figure(&thin, "time_to_second_degree");
    assert!(seconds.value < 24.0, "{}", seconds.value);
    assert!(seconds.low < seconds.value && seconds.value < seconds.high);
    assert_eq!(check(&thin, "planned_under_half").status, Status::Exceeded);
    assert_eq!(check(&thin, "second_degree").status, Status::Exceeded);
    close(
        figure(&thin, "longest_planned_time").value,
        0.5 * seconds.value,
        1e-12,
    );
    // Bare skin in the same flame: 0.525 s at 84 kW/m2 absorbed (independent solver).
    close(figure(&thin, "bare_skin_time").value, 0.525, 0.05);
}

#[test]
fn full_engulfment_has_a_longest_time() {
    // Never over 15 s (common practice); a partial burn is not held to it.
    let long = assess("full-burn", &[("called_out_time", Exact(16.0))]);
    assert_eq!(check(&long, "full_engulfment").status, Status::Exceeded);
    let at = assess("full-burn", &[("called_out_time", Exact(15.0))]);
    assert_eq!(check(&at, "full_engulfment").status, Status::Within);
    let partial = assess(
        "full-burn",
        &[
            ("called_out_time", Exact(16.0)),
            ("coverage", Name("partial")),
        ],
    );
    assert!(
        !partial
            .checks
            .iter()
            .any(|check| check.name == "full_engulfment")
    );
    let early = assess("full-burn", &[("called_out_time", Exact(10.0))]);
    assert_eq!(check(&early, "call_after_plan").status, Status::Exceeded);
}

#[test]
fn safeties_are_counted_for_each_person() {
    let two = assess(
        "full-burn",
        &[("persons_alight", Exact(2.0)), ("safeties", Exact(8.0))],
    );
    assert_eq!(check(&two, "safeties").status, Status::Exceeded);
    let enough = assess(
        "full-burn",
        &[("persons_alight", Exact(2.0)), ("safeties", Exact(12.0))],
    );
    assert_eq!(check(&enough, "safeties").status, Status::Within);
}

#[test]
fn stored_heat_goes_on_burning() {
    // Called out just before the damage is done, heat in the layers may still finish it: damage at the
    // end is never less than when the flames went out.
    let thin = assess(
        "full-burn",
        &[
            &THIN_SUIT[..],
            &[
                ("called_out_time", Exact(5.0)),
                ("planned_time", Exact(4.0)),
            ],
        ]
        .concat(),
    );
    let after = figure(&thin, "stored_heat_damage").value;
    let all = figure(&thin, "skin_damage").value;
    assert!(after > 0.0 && after <= all, "{after} of {all}");
    assert!(figure(&thin, "peak_skin_temperature").value > skin::PAIN_TEMPERATURE);
}

#[test]
fn stripping_sooner_saves_skin() {
    // Heat stored in the layers works inward until they are off, so waiting can only add damage.
    let mut last = 0.0;
    for seconds in [1.0, 5.0, 10.0, 20.0, 40.0] {
        let changes = [
            &THIN_SUIT[..],
            &[
                ("called_out_time", Exact(4.0)),
                ("strip_time", Exact(seconds)),
            ],
        ];
        let damage = figure(&assess("full-burn", &changes.concat()), "skin_damage").value;
        assert!(damage >= last, "{seconds} s: {damage} after {last}");
        last = damage;
    }
    let soon = [
        &THIN_SUIT[..],
        &[("called_out_time", Exact(4.0)), ("strip_time", Exact(1.0))],
    ];
    assert!(figure(&assess("full-burn", &soon.concat()), "skin_damage").value < 0.5 * last);
}
