//! What is shown beside a body gimbal's figures: plots, ground to keep clear, and cautions.

use super::{Setup, checks::NEEDED};
use crate::{
    assessment::{Caution, Shape, Trace, Zone},
    evaluation::Evaluation,
    models::{self, GRAVITY},
    plotting::Recorder,
    units::{Quantity, say},
};

pub(super) fn traces(evaluation: &Evaluation) -> Vec<Trace> {
    let values = &evaluation.values;
    let Some((setup, head)) = Setup::of(values).zip(values.number("head_radius")) else {
        return Vec::new();
    };
    let mut turn = Recorder::new();
    let square = setup.rate * setup.rate;
    for step in 0..=72 {
        let angle = f64::from(step) * core::f64::consts::TAU / 72.0;
        // Upright at 0, head down at half a turn: along the body, towards the feet's side.
        let along = square * head - GRAVITY * libm::cos(angle);
        let across = GRAVITY * libm::sin(angle);
        turn.push(angle, [along, models::hypot(along, across)]);
    }
    let mut traces = vec![turn.trace(
        "turn",
        "One turn, at the head",
        ("Angle from upright", Quantity::Angle),
        [
            ("Towards the head, blood rising", Quantity::Acceleration),
            ("In all", Quantity::Acceleration),
        ],
    )];
    if let Some(drive) = values.number("drive_torque") {
        let mut up = Recorder::new();
        setup.rotor.spin_up(drive, setup.rate, |time, angle, rate| {
            up.push(time, [rate, angle]);
        });
        if !up.is_empty() {
            traces.push(up.trace(
                "spin_up",
                "Up to the rate",
                ("Time from the first push", Quantity::Time),
                [
                    ("Turn rate", Quantity::Rotation),
                    ("Angle turned", Quantity::Angle),
                ],
            ));
        }
    }
    traces
}

pub(super) fn zones(evaluation: &Evaluation) -> Vec<Zone> {
    let values = &evaluation.values;
    let (Some(setup), Some(head), Some(feet)) = (
        Setup::of(values),
        values.number("head_radius"),
        values.number("feet_radius"),
    ) else {
        return Vec::new();
    };
    // An arm's length past what turns, and past each prong.
    let reach = head.max(feet).max(setup.arm) + 0.8;
    vec![Zone {
        name: "sweep".to_owned(),
        title: "Sweep of the body".to_owned(),
        shape: Shape::Rectangle {
            x0: -reach,
            x1: reach,
            y0: -1.5,
            y1: 1.5,
        },
        reason: "Head, feet and weights come round here; only the two spotters stand at its edge, and nobody \
                 reaches in while it turns. Measured from under the axis."
            .to_owned(),
    }]
}

pub(super) fn cautions(evaluation: &Evaluation) -> Vec<Caution> {
    let mut cautions = Vec::new();
    let mut say_so = |name: &str, text: String| {
        cautions.push(Caution {
            name: name.to_owned(),
            text,
        });
    };
    let values = &evaluation.values;
    let torque = |v| say(Quantity::Torque, v);
    let Some(setup) = Setup::of(values) else {
        say_so(
            "not_entered",
            format!(
                "Nothing is computed before these are entered: {}.",
                values.missing(NEEDED).join(", ")
            ),
        );
        return cautions;
    };
    let rotor = setup.rotor;
    let offset = rotor.offset_torque();
    if let Some(drive) = values.number("drive_torque")
        && evaluation.value("spin_up_time").is_none()
    {
        say_so(
            "does_not_go_over",
            format!(
                "Pushed from hanging with {} against an offset of {} it does not come up to {}: balance it \
                 before anybody pushes harder.",
                torque(drive),
                torque(offset),
                say(Quantity::Rotation, setup.rate)
            ),
        );
    }
    if let Some(brake) = values.number("brake_torque")
        && evaluation.value("stop_time").is_none()
    {
        say_so(
            "does_not_stop",
            format!(
                "A brake of {} may not stop an offset of {}: no stop is computed.",
                torque(brake),
                torque(offset)
            ),
        );
    }
    let fitted = values.number("counterweight").unwrap_or(0.0);
    let wanted = setup.moment / setup.arm;
    if offset > rotor.friction {
        let text = if wanted > fitted {
            format!(
                "It falls to its heavy side by itself: {} more counterweight at that arm balances it.",
                say(Quantity::Mass, wanted - fitted)
            )
        } else {
            format!(
                "It falls to the counterweight's side by itself: {} less at that arm balances it.",
                say(Quantity::Mass, fitted - wanted)
            )
        };
        say_so("out_of_balance", text);
    }
    say_so(
        "body_moves",
        format!(
            "A body that bends or reaches moves its balance point: 5 cm of it is {} more about the axis.",
            torque(0.05 * GRAVITY * values.number("performer_mass").unwrap_or(0.0))
        ),
    );
    say_so(
        "ladder",
        format!(
            "Static tilt, half the rate, then {} for a timed turn; the one named to stop it holds the brake, \
             and a way to bring the head up by hand is tried first.",
            say(Quantity::Rotation, setup.rate)
        ),
    );
    cautions
}
