//! What a vehicle roll's figures are held against: its checks, their limits and who says so.

use crate::{
    assessment::{Bound, Check, Status},
    evaluation::Evaluation,
    judging::{Rule, Subject, common_practice, from_memory, judge, published},
    models::GRAVITY,
    units::{Quantity, say},
};

type Needs = &'static [&'static str];

/// What the roll needs, and more: by a ramp, or as measured.
macro_rules! roll_and {
    ($($extra:literal),*) => {
        [
            &[
                "method", "run_speed", "ramp_length", "ramp_slope", "track", "centre_height", "roof_height",
                "roof_width", $($extra),*
            ] as Needs,
            &[
                "method", "run_speed", "measured_rate", "measured_rise", "track", "centre_height", "roof_height",
                "roof_width", $($extra),*
            ] as Needs,
        ]
    };
}

const ROLL: [Needs; 2] = roll_and!();
const AHEAD: [Needs; 2] = roll_and!("car_length", "clear_ahead");
const ASIDE: [Needs; 2] = roll_and!("car_length", "clear_aside");
const DRIVER: [Needs; 2] = roll_and!("seat_side", "chest_height", "belt");
const CAGE: [Needs; 2] = roll_and!("performer_mass", "car_mass", "cage_proof");

/// Of the two, what the chosen way of rolling needs.
fn by(evaluation: &Evaluation, needs: [Needs; 2]) -> Needs {
    let [ramp, measured] = needs;
    match evaluation.values.choice("method") {
        Some("measured") => measured,
        _ => ramp,
    }
}

/// What the roll itself needs.
pub(super) fn roll_needs(evaluation: &Evaluation) -> Needs {
    by(evaluation, ROLL)
}

pub(super) fn checks(evaluation: &Evaluation) -> Vec<Check> {
    let mut checks = rolling(evaluation);
    checks.extend(driver(evaluation));
    checks.extend(fire(evaluation));
    checks
}

fn length(value: f64) -> String {
    say(Quantity::Length, value)
}

fn ratio(value: f64) -> String {
    say(Quantity::Ratio, value)
}

fn pull(value: f64) -> String {
    say(Quantity::Acceleration, value)
}

fn known(evaluation: &Evaluation, name: &str) -> String {
    evaluation
        .figure(name)
        .map_or_else(String::new, |figure| say(figure.quantity, figure.value))
}

fn input(evaluation: &Evaluation, name: &str) -> f64 {
    evaluation.values.number(name).unwrap_or(0.0)
}

fn wanted(evaluation: &Evaluation, name: &str) -> String {
    evaluation
        .policies
        .get(name)
        .map_or_else(String::new, |policy| say(policy.quantity, policy.value))
}

fn rolling(evaluation: &Evaluation) -> Vec<Check> {
    let turns = input(evaluation, "wanted_turns");
    let (ahead, aside) = (
        input(evaluation, "clear_ahead"),
        input(evaluation, "clear_aside"),
    );
    let room = |name, title, subject, limit, needs| {
        Rule::planned(
            name,
            title,
            Subject::Figure(subject),
            Quantity::Length,
            Bound::AtMost,
            limit,
            by(evaluation, needs),
        )
    };
    vec![
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "tip_margin",
                "Energy to go over",
                Subject::Figure("tip_margin"),
                Bound::AtLeast,
                by(evaluation, ROLL),
            )
            .cautionary(),
            |held| {
                format!(
                    "{} times what stands the car on its side, {} at the worst, from {} at take-off; {} is wanted, and \
                     more speed or a steeper ramp gives it.",
                    ratio(held.value),
                    ratio(held.low),
                    known(evaluation, "roll_rate"),
                    wanted(evaluation, "tip_margin")
                )
            },
        ),
        judge(
            evaluation,
            Rule::planned(
                "turns",
                "Turns wanted",
                Subject::Figure("turns"),
                Quantity::Ratio,
                Bound::AtLeast,
                turns,
                by(evaluation, ROLL),
            )
            .exact()
            .cautionary(),
            |held| {
                format!(
                    "{} turns are to be had, {} at the worst of the tolerances and {} at most; {} are wanted.",
                    ratio(held.value),
                    ratio(held.low),
                    known(evaluation, "turns_most"),
                    ratio(turns)
                )
            },
        ),
        judge(
            evaluation,
            room("clear_ahead", "Rest zone ahead", "rest_reach", ahead, AHEAD),
            |held| {
                format!(
                    "Ahead of the ramp the car reaches {}, up to {} within the tolerances; {} are clear, so slow down \
                     or clear more.",
                    length(held.value),
                    length(held.high),
                    length(ahead)
                )
            },
        ),
        judge(
            evaluation,
            room(
                "clear_aside",
                "Rest zone to the side",
                "side_reach",
                aside,
                ASIDE,
            ),
            |held| {
                format!(
                    "To the side of the run the car reaches {}, up to {} within the tolerances; {} are clear.",
                    length(held.value),
                    length(held.high),
                    length(aside)
                )
            },
        ),
    ]
}

/// Mean sideways accelerations that volunteers bore for about a tenth of a second with no permanent change.
const SIDE_LAP: f64 = 9.02 * GRAVITY;
const SIDE_HARNESS: f64 = 11.59 * GRAVITY;
/// A harness has at least this many straps.
const HARNESS: f64 = 4.0;
/// Built by a specialist maker or certified by an engineer.
const SIGNED: f64 = 2.0;

/// The body's limits are those of people held in a seat: without a belt there is none to hold the driver to.
fn unheld(check: Check) -> Check {
    Check {
        detail: "Without a belt nothing holds the driver, and no limit is known that a body thrown about meets."
            .to_owned(),
        ..check
    }
}

fn driver(evaluation: &Evaluation) -> Vec<Check> {
    let mut checks = belted(evaluation);
    if evaluation.values.choice("belt") == Some("none") {
        checks = checks
            .into_iter()
            .map(|check| match check.name.as_str() {
                "driver_risk" | "driver_side" if check.status == Status::Unknown => unheld(check),
                _ => check,
            })
            .collect();
    }
    checks
}

fn belted(evaluation: &Evaluation) -> Vec<Check> {
    let guideline = || {
        published(
            "Ontario film safety guideline 14, seat belts, harnesses and roll cages",
            "",
            Some("Ontario"),
        )
    };
    let strapped = evaluation
        .value("belt_straps")
        .is_some_and(|straps| straps >= HARNESS);
    let loose = evaluation.values.choice("belt") == Some("none");
    let (bears, what) = if strapped {
        (SIDE_HARNESS, "lap belt and torso harness")
    } else if loose {
        (f64::NAN, "lap belt only")
    } else {
        (SIDE_LAP, "lap belt only")
    };
    let low_risk = if loose { f64::NAN } else { 1.0 };
    let give = input(evaluation, "stop_length");
    let counted = |name, title, subject, limit, needs| {
        Rule::planned(
            name,
            title,
            Subject::Figure(subject),
            Quantity::Count,
            Bound::AtLeast,
            limit,
            needs,
        )
        .by(guideline())
        .exact()
    };
    vec![
        judge(
            evaluation,
            counted(
                "belt",
                "Harness on the driver",
                "belt_straps",
                HARNESS,
                &["belt"],
            ),
            |held| {
                format!(
                    "The belt has {} straps; a roll asks for a harness of {} or more: the guideline asks for a \
                     harness or a cage as necessary, both is the habit.",
                    say(Quantity::Count, held.value),
                    say(Quantity::Count, HARNESS)
                )
            },
        ),
        judge(
            evaluation,
            counted("cage", "Roll cage", "cage_signed", SIGNED, &["cage"]).by(common_practice()),
            |held| {
                let found = if held.value >= SIGNED {
                    "By a specialist maker or certified."
                } else if held.value > 0.0 {
                    "Built, but nobody signed for it."
                } else {
                    "No cage."
                };
                format!(
                    "{found} The Ontario guideline asks for a harness or a cage as necessary; both is the habit."
                )
            },
        ),
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "cage_factor",
                "Factor on the cage",
                Subject::Figure("cage_factor"),
                Bound::AtLeast,
                by(evaluation, CAGE),
            ),
            |held| {
                format!(
                    "The cage is good for {} times the hardest strike on the roof of {}, {} at the worst; {} is wanted.",
                    ratio(held.value),
                    known(evaluation, "cage_load"),
                    ratio(held.low),
                    wanted(evaluation, "cage_factor")
                )
            },
        ),
        judge(
            evaluation,
            Rule::planned(
                "driver_risk",
                "Body's limits in the landing",
                Subject::Figure("driver_risk"),
                Quantity::Ratio,
                Bound::AtMost,
                low_risk,
                by(evaluation, DRIVER),
            )
            .by(from_memory(
                "J. W. Brinkley, dynamic response limits",
                "low risk",
            )),
            |held| {
                format!(
                    "The hardest strike changes the driver's speed by {} over {}: {} of the limits for low risk, up to \
                     {}; a lower ramp or more give softens it.",
                    known(evaluation, "landing_change"),
                    length(give),
                    ratio(held.value),
                    ratio(held.high)
                )
            },
        ),
        judge(
            evaluation,
            Rule::planned(
                "driver_side",
                "Sideways g on the driver",
                Subject::Figure("driver_side"),
                Quantity::Acceleration,
                Bound::AtMost,
                bears,
                by(evaluation, DRIVER),
            )
            .by(published(
                "SAE 640843, sideways decelerations of volunteers",
                what,
                None,
            )),
            |held| {
                format!(
                    "{} across the seat on the mean, up to {}; volunteers with a {what} bore {} for a tenth of a \
                     second.",
                    pull(held.value),
                    pull(held.high),
                    pull(bears)
                )
            },
        ),
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "exit_time",
                "Driver out of the car",
                Subject::Input("exit_time"),
                Bound::AtMost,
                &["exit_time"],
            )
            .exact(),
            |held| {
                format!(
                    "The driver is out {} after the car rests, up to {}; {} is the habit.",
                    say(Quantity::Time, held.value),
                    say(Quantity::Time, held.high),
                    wanted(evaluation, "exit_time")
                )
            },
        ),
    ]
}

fn fire(evaluation: &Evaluation) -> Vec<Check> {
    let distance = input(evaluation, "people_distance");
    vec![
        judge(
            evaluation,
            Rule::planned(
                "people_distance",
                "People clear of a fuel fire",
                Subject::Figure("safe_distance"),
                Quantity::Length,
                Bound::AtMost,
                distance,
                &["fuel", "fuel_volume", "people_distance"],
            ),
            |held| {
                format!(
                    "If all the fuel burns, people stay {} off, up to {}; they stand at {} and would have {}, with \
                     flames {} high.",
                    length(held.value),
                    length(held.high),
                    length(distance),
                    known(evaluation, "people_flux"),
                    known(evaluation, "flame_height")
                )
            },
        ),
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "fuel_volume",
                "Fuel aboard",
                Subject::Input("fuel_volume"),
                Bound::AtMost,
                &["fuel_volume"],
            )
            .exact(),
            |held| {
                format!(
                    "{} are aboard, up to {}; {} is the habit, in a small cell with a cut-off.",
                    say(Quantity::Volume, held.value),
                    say(Quantity::Volume, held.high),
                    wanted(evaluation, "fuel_volume")
                )
            },
        ),
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "crew_time",
                "Fire crew at the car",
                Subject::Input("crew_time"),
                Bound::AtMost,
                &["crew_time"],
            )
            .exact(),
            |held| {
                format!(
                    "The fire crew works {} after the car rests, up to {}; {} is the habit.",
                    say(Quantity::Time, held.value),
                    say(Quantity::Time, held.high),
                    wanted(evaluation, "crew_time")
                )
            },
        ),
    ]
}
