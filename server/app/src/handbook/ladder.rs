//! The worked page about a ladder of weight bags. Every number on it is worked out when it is made.

use std::fmt::Write;

use gagwright_mechanics::{
    AssessError, Figure, Inputs, ParameterKind, Quantity, Technique,
    tools::{Calibration, calibrate},
};

use super::table;
use crate::{
    demo::{
        ladder::{self, Ladder, Shot},
        script::{self, ScriptError},
    },
    words,
};

/// The coefficient that the page fits first.
const ONE: &str = "seal_friction";
/// What was measured.
const FIGURES: [&str; 2] = ["total_distance", "peak_acceleration"];

/// The page; none when the invented production has no ladder that can be worked, which a test would find.
pub fn page() -> Option<String> {
    worked().ok()
}

fn worked() -> Result<String, ScriptError> {
    let ladder = ladder::of(&script::built_in()?)?;
    let technique = script::model(&ladder.technique)?;
    let wrong = |error: AssessError| ScriptError(error.to_string());
    let fit = calibrate(technique, &ladder.request(Some(&[ONE]))).map_err(wrong)?;
    let mut text = String::from(
        "# A weight-bag ladder, worked\n\nMade by `gagwright handbook`: the numbers are worked out, not \
         written.\n\nA maker's sheet does not say how a rig pulls once it stands where it stands. So it is \
         shot with a weight bag before it is shot with a person, from the lowest mark upwards, and each \
         shot's settings and measurements are logged. The calibration then finds the coefficient that no \
         sheet gives, says how sure it is of it, and says what the next shot may do before anybody is on \
         the line. The rig below is invented.\n",
    );
    rig(&mut text, technique, &ladder);
    shots(&mut text, technique, &ladder)?;
    taught(&mut text, technique, &ladder, &fit);
    next(&mut text, technique, &ladder, &fit);
    more(&mut text, technique, &ladder);
    text.push_str(
        "\n## How it is worked out\n\nNonlinear least squares over all shots, each figure weighed by how \
         far its measurements stray from the fit. The interval is that of one new shot: what the \
         coefficient leaves open and the stray of single shots, by Student's t. It knows nothing of what no \
         shot has shown: another line, a wet seal, a colder morning. Shoot the bag again when the rig has \
         been moved.\n",
    );
    Ok(text)
}

fn rig(text: &mut String, technique: &dyn Technique, ladder: &Ladder) {
    let _ = write!(
        text,
        "\n## The rig\n\n{}, as gag {} of the invented production plans it.\n\n",
        technique.title(),
        ladder.gag
    );
    let rows = technique.parameters().iter().filter_map(|one| {
        let given = ladder.stated.0.get(one.name)?;
        Some(vec![one.title.to_owned(), said(&one.kind, given)])
    });
    table(text, &["Input", "Stated"], rows);
}

fn said(kind: &ParameterKind, given: &gagwright_mechanics::InputValue) -> String {
    use gagwright_mechanics::InputValue;
    match (kind, given) {
        (ParameterKind::Number { quantity, .. }, InputValue::Number { value, .. }) => {
            words::both(*quantity, *value)
        }
        (ParameterKind::Choice { options, .. }, InputValue::Choice(name)) => options
            .iter()
            .find(|one| one.name == name)
            .map_or_else(|| name.clone(), |one| one.title.to_owned()),
        _ => String::new(),
    }
}

fn figures(technique: &dyn Technique, inputs: &Inputs) -> Result<Vec<Figure>, ScriptError> {
    technique
        .assess(inputs)
        .map(|one| one.figures)
        .map_err(|error| ScriptError(error.to_string()))
}

fn number(inputs: &Inputs, name: &str, quantity: Quantity) -> String {
    match inputs.0.get(name) {
        Some(gagwright_mechanics::InputValue::Number { value, .. }) => {
            words::metric(quantity, *value)
        }
        _ => String::new(),
    }
}

fn shots(text: &mut String, technique: &dyn Technique, ladder: &Ladder) -> Result<(), ScriptError> {
    text.push_str(
        "\n## The shots\n\nOnly the pressure rises; then the last two with a person.\n\n",
    );
    let described: Vec<_> = FIGURES
        .iter()
        .filter_map(|name| technique.figures().iter().find(|one| one.name == *name))
        .collect();
    let mut columns = vec!["Shot", "Load", "Mass", "Pressure"];
    let titles: Vec<String> = described
        .iter()
        .flat_map(|one| [one.title.to_owned(), "as stated".to_owned()])
        .collect();
    columns.extend(titles.iter().map(String::as_str));
    let mut rows = Vec::new();
    for (at, shot) in ladder.shots.iter().enumerate() {
        let model = figures(technique, &shot.inputs)?;
        rows.push(row(at, shot, &described, &model));
    }
    table(text, &columns, rows.into_iter());
    text.push_str(
        "\n\"As stated\" is what the model gives with the plan's own coefficients: it is too far and too \
         hard, every time, which is no accident of measuring.\n",
    );
    Ok(())
}

fn row(
    at: usize,
    shot: &Shot,
    described: &[&gagwright_mechanics::FigureDescription],
    model: &[Figure],
) -> Vec<String> {
    let mut row = vec![
        (at + 1).to_string(),
        words::load(shot.load).to_owned(),
        number(&shot.inputs, "performer_mass", Quantity::Mass),
        number(&shot.inputs, "reservoir_pressure", Quantity::Pressure),
    ];
    for one in described {
        let say =
            |si: Option<f64>| si.map_or_else(String::new, |si| words::metric(one.quantity, si));
        row.push(say(shot.measured.get(one.name).copied()));
        row.push(say(model
            .iter()
            .find(|figure| figure.name == one.name)
            .map(|figure| figure.value)));
    }
    row
}

fn taught(text: &mut String, technique: &dyn Technique, ladder: &Ladder, fit: &Calibration) {
    text.push_str("\n## What they teach\n\n");
    let sure = fit.confidence * 100.0;
    for one in &fit.coefficients {
        let say = |si| words::both(one.quantity, si);
        let _ = write!(
            text,
            "{} was stated as {}. The shots say {}, from {} to {} at {sure:.0} %.",
            one.title,
            say(one.stated),
            say(one.value),
            say(one.low),
            say(one.high)
        );
    }
    if let Some(truth) = ladder.rig.get(ONE) {
        let _ = write!(
            text,
            " Since the rig is invented, its truth is known: {truth}."
        );
    }
    text.push_str("\n\nSingle shots stray from the fit by:\n\n");
    for one in &fit.deviation {
        if let Some(figure) = technique.figures().iter().find(|f| f.name == one.figure) {
            let _ = writeln!(
                text,
                "- {}: {}",
                figure.title,
                words::both(figure.quantity, one.value)
            );
        }
    }
}

fn next(text: &mut String, technique: &dyn Technique, ladder: &Ladder, fit: &Calibration) {
    let pressure = number(&ladder.next, "reservoir_pressure", Quantity::Pressure);
    let _ = write!(
        text,
        "\n## What the next shot may do\n\nThe plan goes to {pressure}, beyond the highest mark shot so \
         far. Before anybody is on the line:\n\n"
    );
    let sure = format!("One new shot, {:.0} %", fit.confidence * 100.0);
    table(
        text,
        &["Figure", "As stated", "After the shots", &sure],
        fit.prediction.iter().map(|one| {
            let say = |si| words::both(one.quantity, si);
            vec![
                one.title.clone(),
                one.stated.map_or_else(|| "not given".to_owned(), say),
                say(one.value),
                format!("{} to {}", say(one.low), say(one.high)),
            ]
        }),
    );
    let _ = write!(
        text,
        "\nShoot the bag at {pressure} first: if it does not fall inside the interval, something is \
         different from what the ladder knew, and nobody goes on the line until it is found.\n\nMore about \
         the model: [{}](techniques/{}.md).\n",
        technique.title(),
        technique.name()
    );
}

/// What happens when more is asked of the shots than they hold.
fn more(text: &mut String, technique: &dyn Technique, ladder: &Ladder) {
    text.push_str("\n## What they do not\n\n");
    match calibrate(technique, &ladder.request(None)) {
        Err(AssessError::BadValue { problem, .. }) => {
            let _ = writeln!(
                text,
                "Asked for every coefficient at once, the calibration refuses, and says why:\n\n> {problem}"
            );
        }
        Err(error) => {
            let _ = writeln!(text, "{error}");
        }
        Ok(fit) => {
            text.push_str(
                "Asked for every coefficient at once, the same shots leave wide intervals: they cannot \
                 tell the coefficients well apart.\n\n",
            );
            table(
                text,
                &["Coefficient", "The shots say", "Interval"],
                fit.coefficients.iter().map(|one| {
                    let say = |si| words::both(one.quantity, si);
                    vec![
                        one.title.clone(),
                        say(one.value),
                        format!("{} to {}", say(one.low), say(one.high)),
                    ]
                }),
            );
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_ladder_finds_the_truth_it_was_shot_with_and_the_next_shot_falls_inside() {
        let ladder = ladder::of(&script::built_in().unwrap()).unwrap();
        let technique = script::model(&ladder.technique).unwrap();
        let fit = calibrate(technique, &ladder.request(Some(&[ONE]))).unwrap();
        let found = &fit.coefficients[0];
        let truth = script::set_over(&ladder.next, &ladder.technique, &ladder.rig).unwrap();
        let Some(gagwright_mechanics::InputValue::Number { value, .. }) = truth.0.get(ONE) else {
            panic!("the rig has no {ONE}");
        };
        assert!(found.low < *value && *value < found.high, "{found:?}");
        assert!(found.stated < found.low, "the sheet was right: {found:?}");
        let given = technique.assess(&truth).unwrap().figures;
        for one in &fit.prediction {
            let true_value = given.iter().find(|f| f.name == one.figure).unwrap().value;
            assert!(one.low < true_value && true_value < one.high, "{one:?}");
            assert!(one.stated.unwrap() > one.high, "{one:?}");
        }
    }
}
