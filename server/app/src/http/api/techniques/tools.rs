//! The tools that work on any technique: how figures spread, what moves them, which input gives what is
//! wanted, what test shots teach, what a change changes. They compute and store nothing. Each is bounded
//! by mechanics; here only so many run at once, so that nobody's sums keep others from signing.

use actix_web::post;
use gagwright_mechanics::{
    AssessError, Inputs, Technique, reading,
    tools::{
        self, CalibrateRequest, Calibration, CompareRequest, Comparison, Sensitivity,
        SensitivityRequest, Solution, SolveRequest, Spread, SpreadRequest,
    },
};
use serde::{Serialize, de::DeserializeOwned};
use tokio::sync::Semaphore;

use super::technique;
use crate::{
    http::{
        answer::{self, Answer},
        caller::Caller,
        extract::At,
        openapi::WriteRefusals,
        problem::{Problem, escape},
        state::off_thread,
        writing::{Json, Plain},
    },
    threads::AllCores,
};

/// How many are worked out at once; the rest wait their turn.
static TURNS: Semaphore = Semaphore::const_new(2);

/// How a technique's figures spread
///
/// Needs a signed-in account. Draws states within the inputs' tolerances, at most 100,000, the same for
/// the same seed. Computes and stores nothing, so it takes no idempotency key.
#[utoipa::path(
    tag = "techniques",
    params(("technique" = String, Path, description = "The technique's machine name")),
    request_body = SpreadRequest,
    responses((status = 200, description = "The spread of each figure", body = Spread), WriteRefusals)
)]
#[post("/techniques/{technique}/spread")]
pub async fn spread(_: Caller, name: At<String>, body: Plain<Json<SpreadRequest>>) -> Answer {
    work(&name, body, |technique, asked| {
        tools::spread_on(&AllCores, technique, asked)
            .map_err(|error| refusal(technique, &error, "", "/draws"))
    })
    .await
}

/// Which inputs move a figure most
///
/// Needs a signed-in account. Moves each input alone to the ends of its tolerance. Computes and stores
/// nothing, so it takes no idempotency key.
#[utoipa::path(
    tag = "techniques",
    params(("technique" = String, Path, description = "The technique's machine name")),
    request_body = SensitivityRequest,
    responses((status = 200, description = "The inputs, the most telling first", body = Sensitivity), WriteRefusals)
)]
#[post("/techniques/{technique}/sensitivity")]
pub async fn sensitivity(
    _: Caller,
    name: At<String>,
    body: Plain<Json<SensitivityRequest>>,
) -> Answer {
    work(&name, body, |technique, asked| {
        tools::sensitivity(technique, asked)
            .map_err(|error| refusal(technique, &error, "", "/figure"))
    })
    .await
}

/// Which value of an input gives a wanted figure
///
/// Needs a signed-in account. Gives every value in the range, or says why there is none. Computes and
/// stores nothing, so it takes no idempotency key.
#[utoipa::path(
    tag = "techniques",
    params(("technique" = String, Path, description = "The technique's machine name")),
    request_body = SolveRequest,
    responses((status = 200, description = "The values", body = Solution), WriteRefusals)
)]
#[post("/techniques/{technique}/solve")]
pub async fn solve(_: Caller, name: At<String>, body: Plain<Json<SolveRequest>>) -> Answer {
    work(&name, body, |technique, asked| {
        tools::solve_for(technique, asked)
            .map_err(|error| refusal(technique, &error, "", "/parameter"))
    })
    .await
}

/// What test shots teach, and what the next shot may do
///
/// Needs a signed-in account. Fits the technique's coefficients to at most 200 shots. Refused, saying
/// which shot is missing, when the shots cannot settle a coefficient. Computes and stores nothing, so it
/// takes no idempotency key.
#[utoipa::path(
    tag = "techniques",
    params(("technique" = String, Path, description = "The technique's machine name")),
    request_body = CalibrateRequest,
    responses((status = 200, description = "The coefficients and the prediction", body = Calibration), WriteRefusals)
)]
#[post("/techniques/{technique}/calibrate")]
pub async fn calibrate(_: Caller, name: At<String>, body: Plain<Json<CalibrateRequest>>) -> Answer {
    work(&name, body, |technique, asked| {
        for (at, shot) in asked.shots.iter().enumerate() {
            readable(technique, &shot.inputs, &format!("/shots/{at}/inputs"))?;
            for figure in shot.measured.keys() {
                measurable(technique, figure, at)?;
            }
        }
        tools::calibrate(technique, asked).map_err(|error| refusal(technique, &error, "", "/shots"))
    })
    .await
}

/// What a change of plan changes
///
/// Needs a signed-in account. Both plans are of this technique. Computes and stores nothing, so it takes
/// no idempotency key.
#[utoipa::path(
    tag = "techniques",
    params(("technique" = String, Path, description = "The technique's machine name")),
    request_body = CompareRequest,
    responses((status = 200, description = "What moved", body = Comparison), WriteRefusals)
)]
#[post("/techniques/{technique}/compare")]
pub async fn compare(_: Caller, name: At<String>, body: Plain<Json<CompareRequest>>) -> Answer {
    work(&name, body, |technique, asked| {
        readable(technique, &asked.before, "/before")?;
        readable(technique, &asked.after, "/after")?;
        tools::compare(technique, asked).map_err(|error| refusal(technique, &error, "", "/after"))
    })
    .await
}

/// Works one out when its turn comes, off the threads that answer.
async fn work<Q, A>(
    name: &str,
    Plain(Json(asked)): Plain<Json<Q>>,
    tool: impl FnOnce(&dyn Technique, &Q) -> Result<A, Problem> + Send + 'static,
) -> Answer
where
    Q: DeserializeOwned + Send + 'static,
    A: Serialize + Send + 'static,
{
    let technique = technique(name)?;
    let turn = TURNS.acquire().await.map_err(Problem::internal)?;
    let found = off_thread(move || {
        let found = tool(technique, &asked);
        drop(turn);
        found
    })
    .await?;
    answer::ok(&found)
}

/// Inputs that are not the request's only ones, so that a refusal says which.
fn readable(technique: &dyn Technique, inputs: &Inputs, within: &str) -> Result<(), Problem> {
    reading::read(technique.name(), technique.parameters(), inputs)
        .map(|_| ())
        .map_err(|error| refusal(technique, &error, within, within))
}

fn measurable(technique: &dyn Technique, figure: &str, shot: usize) -> Result<(), Problem> {
    if technique.figures().iter().any(|one| one.name == figure) {
        return Ok(());
    }
    let known: Vec<&str> = technique.figures().iter().map(|one| one.name).collect();
    let name: String = figure.chars().take(80).collect();
    Err(Problem::field(
        format!("/shots/{shot}/measured/{}", escape(&name)),
        format!("is not a figure of {}", technique.name()),
        format!("leave it out, or use one of: {}", known.join(", ")),
    ))
}

/// The fields of requests that mechanics names in its refusals.
const FIELDS: [&str; 8] = [
    "draws",
    "figure",
    "parameter",
    "wanted",
    "from",
    "shots",
    "coefficients",
    "confidence",
];

/// Places what mechanics refuses: a field of the request, an input, or, for what concerns neither, the
/// field it follows from.
fn refusal(
    technique: &dyn Technique,
    error: &AssessError,
    within: &str,
    otherwise: &str,
) -> Problem {
    let inputs = if within.is_empty() { "/inputs" } else { within };
    match error {
        AssessError::UnknownParameter { name, known, .. } => Problem::field(
            format!("{inputs}/{}", escape(name)),
            "is not a parameter of this technique",
            format!("leave it out, or use one of: {known}"),
        ),
        AssessError::BadValue { name, problem } => {
            let is_input = technique.parameters().iter().any(|one| one.name == name);
            let pointer = if is_input {
                format!("{inputs}/{name}")
            } else if FIELDS.contains(&name.as_str()) {
                format!("/{name}")
            } else {
                otherwise.to_owned()
            };
            // Mechanics says what is wrong and what would be right in one sentence, mostly with a
            // semicolon between.
            let (wrong, fix) = problem
                .split_once("; ")
                .or_else(|| problem.split_once(": "))
                .unwrap_or((problem, "give a value as the technique describes it"));
            Problem::field(pointer, wrong, fix.trim_end_matches('.'))
        }
    }
}
