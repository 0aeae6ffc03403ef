//! The story's ladder of test shots: weight bags at rising pressure, then a person, and what they teach
//! before the next shot.

use gagwright_clearance::{GagId, Load, TestShot};
use gagwright_mechanics::{
    InputValue, Inputs, Quantity,
    tools::{CalibrateRequest, TestShot as Learned, calibrate},
};
use gagwright_store::Store;
use serde_json::json;

use super::{Board, Teller, casting::INSIDE, play, play_read};
use crate::{
    commands::CommandError,
    demo::{
        ladder,
        script::{self, Step},
        stage::Stage,
    },
    terminal::{
        fault::Fault,
        table::{Align, Table},
    },
    words,
};

/// The coefficient that no sheet gives for a rig as it stands.
const COEFFICIENT: &str = "seal_friction";

pub(super) fn test(
    teller: &mut Teller,
    store: &Store,
    stage: Stage,
    board: &Board,
) -> Result<Stage, Fault> {
    let script = script::built_in().map_err(CommandError::from)?;
    let ladder = ladder::of(&script).map_err(CommandError::from)?;
    let technique = script::model(&ladder.technique).map_err(CommandError::from)?;
    let gag = board
        .iter()
        .find(|one| one.0 == ladder.gag)
        .map(|one| one.1)
        .ok_or_else(|| Fault::failed("the ladder's gag is not among those written down"))?;
    teller.step("A ladder of weight bags is shot, and teaches what no sheet says")?;
    let (shots, stage) = shoot(store, stage, &script, &ladder.gag, gag)?;
    let bags = shots.iter().filter(|one| one.load == Load::Bag).count();
    teller.tell(&format!(
        "{}: {bags} shots with a bag at rising pressure, then {} with a person, each logged with its \
         settings and what was measured.",
        ladder.gag,
        shots.len() - bags
    ))?;
    teller.show(&shown(&shots))?;
    teller.state(
        shots.len() == ladder.shots.len(),
        "every shot is kept, in the order of the trail.",
    )?;

    let request = CalibrateRequest {
        inputs: ladder.next.clone(),
        shots: shots
            .iter()
            .map(|shot| Learned {
                inputs: shot.inputs.clone(),
                measured: shot.measured.clone(),
            })
            .collect(),
        coefficients: Some(vec![COEFFICIENT.to_owned()]),
        confidence: 0.9,
    };
    let fit = calibrate(technique, &request)
        .map_err(|error| Fault::failed(format!("the shots cannot be learned from: {error}")))?;
    let learned = fit
        .coefficients
        .first()
        .ok_or_else(|| Fault::failed("nothing was learned"))?;
    let say = |si| words::metric(learned.quantity, si);
    teller.tell(&format!(
        "The sheet says {} of {}. The shots say {}, from {} to {} at 90 %.",
        say(learned.stated),
        learned.title.to_lowercase(),
        say(learned.value),
        say(learned.low),
        say(learned.high)
    ))?;
    let truth = script::set_over(&ladder.next, &ladder.technique, &ladder.rig)
        .map_err(CommandError::from)?;
    let rig = number(&truth, COEFFICIENT).unwrap_or(f64::NAN);
    teller.state(
        learned.low < rig && rig < learned.high,
        &format!(
            "the invented rig's own {}, which nobody was told, is in that interval.",
            say(rig)
        ),
    )?;
    let given = technique
        .assess(&truth)
        .map_err(|error| Fault::failed(error.to_string()))?;
    for one in &fit.prediction {
        let say = |si| words::metric(one.quantity, si);
        let real = given
            .figures
            .iter()
            .find(|figure| figure.name == one.figure);
        teller.tell(&format!(
            "Next at {}: {} {}, from {} to {} for one new shot; the sheet alone would say {}.",
            number(&ladder.next, "reservoir_pressure")
                .map_or_else(String::new, |si| words::metric(Quantity::Pressure, si)),
            one.title.to_lowercase(),
            say(one.value),
            say(one.low),
            say(one.high),
            one.stated.map_or_else(|| "nothing".to_owned(), say)
        ))?;
        teller.state(
            real.is_some_and(|real| one.low < real.value && real.value < one.high),
            "what the rig then does is inside.",
        )?;
    }
    let file = json!({ "technique": ladder.technique, "request": request, "answer": fit });
    teller.write("ladder.json", format!("{file:#}\n").as_bytes())?;
    Ok(stage)
}

/// Logs the ladder's shots with the commands that people use, and reads them back.
fn shoot(
    store: &Store,
    stage: Stage,
    script: &script::Script,
    code: &str,
    gag: GagId,
) -> Result<(Vec<TestShot>, Stage), Fault> {
    let steps: Vec<Step> = script
        .gags
        .iter()
        .filter(|one| one.code == code)
        .flat_map(|one| one.then.iter())
        .filter(|step| matches!(step, Step::TestShot { .. }))
        .cloned()
        .collect();
    let ((), stage) = play(store, stage, move |conn, stage| {
        stage.play(conn, gag, &steps)
    })?;
    let shots = play_read(store, move |conn| {
        Ok(gagwright_store::test_shots::for_gag(conn, gag)?)
    })?;
    Ok((shots, stage))
}

fn number(inputs: &Inputs, name: &str) -> Option<f64> {
    match inputs.0.get(name)? {
        InputValue::Number { value, .. } => Some(*value),
        InputValue::Choice(_) => None,
    }
}

fn shown(shots: &[TestShot]) -> String {
    let mut table = Table::new(&[
        ("Load", Align::Left),
        ("Pressure", Align::Right),
        ("Distance", Align::Right),
        ("Peak", Align::Right),
        ("Seen", Align::Left),
    ]);
    for shot in shots {
        let measured = |name: &str, quantity| {
            let value = shot.measured.get(name);
            value.map_or_else(String::new, |si| words::metric(quantity, *si))
        };
        let pressure = number(&shot.inputs, "reservoir_pressure");
        table.row([
            words::load(shot.load).to_owned(),
            pressure.map_or_else(String::new, |si| words::metric(Quantity::Pressure, si)),
            measured("total_distance", Quantity::Length),
            measured("peak_acceleration", Quantity::Acceleration),
            shot.note.clone(),
        ]);
    }
    table.render(INSIDE)
}
