//! The rules for the phone, bound to WebAssembly: casting, clearance and trail. Techniques are computed by
//! the package beside it (`web/techniques`), which `lookup` asks.
//!
//! Every function takes and returns JSON text, so that what crosses the border is the same document
//! that travels over the wire. An error is thrown as an `Error` whose message says what is wrong and
//! what would be right. No rule is decided here: each function decodes, makes one call, encodes.
#![allow(unsafe_code)] // Only for what `#[wasm_bindgen]` expands to.

use std::{collections::BTreeSet, fmt::Display, sync::LazyLock};

use gagwright_casting::{Catalogue, Context, Person, PersonId, Slot, SlotId};
use gagwright_clearance::{
    Case, Device, Facets, JudgeMemory, Role, RoleStanding, canonical as contents,
    clearance_remembering, day_mark, delegation, diff, draft::prepare, handed, judge, jws,
    signoff::PublicKey,
};
use gagwright_mechanics::{
    Quantity,
    models::risk::{self, Probability, Severity},
    units,
};
use gagwright_trail::{Hash, canonical_bytes, verify_consistency, verify_inclusion as verify_path};
use jiff::Timestamp;
use serde::{Deserialize, Serialize, de::DeserializeOwned};
use wasm_bindgen::prelude::*;

mod lookup;

type Answer<T> = Result<T, JsError>;

/// The version of the rules, so that the app can say which it runs.
#[wasm_bindgen]
pub fn version() -> String {
    env!("CARGO_PKG_VERSION").to_owned()
}

/// The kinds of certificate and the skills that casting knows, with their titles, for lists and forms.
#[wasm_bindgen]
pub fn catalogue() -> Answer<String> {
    let known = Catalogue::built_in();
    write(&serde_json::json!({
        "certificates": known.certificates().collect::<Vec<_>>(),
        "skills": known.skills().collect::<Vec<_>>(),
    }))
}

/// What a debrief begins with: the last take that has ended, and who performed that day with the skills their slots ask
/// for; `null` while no take has ended.
#[wasm_bindgen]
pub fn to_debrief(case: &str) -> Answer<String> {
    let case: Case = read("case", case)?;
    let found = judge::to_debrief(&case.plan, &case.day.takes);
    write(&found.map(|(last, used)| serde_json::json!({ "last": last, "used": used })))
}

/// The verdict on one person for one slot.
#[wasm_bindgen]
pub fn judge_slot(slot: &str, person: &str, context: &str) -> Answer<String> {
    let slot: Slot = read("slot", slot)?;
    let person: Person = read("person", person)?;
    let context: Context = read("context", context)?;
    write(&gagwright_casting::judge(
        &slot,
        &person,
        &context,
        Catalogue::built_in(),
    ))
}

/// The one judge: cleared, or what is missing, lapsed, held or blocking.
#[wasm_bindgen]
pub fn clearance(case: &str, now: &str) -> Answer<String> {
    static MEMORY: LazyLock<JudgeMemory> = LazyLock::new(JudgeMemory::default);
    let case: Case = read("case", case)?;
    write(&clearance_remembering(
        &case,
        moment(now)?,
        lookup::find,
        &MEMORY,
    ))
}

/// What of a clearance says who may sign; reading the rest of it back would only make the package larger.
#[derive(Deserialize)]
struct Standings {
    roles: Vec<RoleStanding>,
    slots: Vec<Cast>,
}

/// Who is cast in a slot.
#[derive(Deserialize)]
struct Cast {
    slot: SlotId,
    person: Option<PersonId>,
}

/// The marks that a person may make now, under these hats, from a clearance.
#[wasm_bindgen]
pub fn owed(clearance: &str, person: &str, hats: &str) -> Answer<String> {
    let Standings { roles, slots } = read("clearance", clearance)?;
    let hats: BTreeSet<Role> = read("hats", hats)?;
    let cast: Vec<_> = slots.iter().map(|one| (one.slot, one.person)).collect();
    let person = id("person", person)?;
    write(&gagwright_clearance::owed(&roles, &cast, person, &hats))
}

/// The hats under which a person may sign on a gag now: their own, and those of whom they deputise for.
#[wasm_bindgen]
pub fn hats(case: &str, person: &str, now: &str) -> Answer<String> {
    let case: Case = read("case", case)?;
    let person = id("person", person)?;
    write(&delegation::hats(&case, person, moment(now)?))
}

/// A statement made ready for a person to sign under a hat (a performer's for their slot), with the words
/// signed, the facets covered and the sign-off made last.
#[wasm_bindgen]
pub fn draft_signoff(
    case: &str,
    role: &str,
    slot: Option<String>,
    person: &str,
    signoff: &str,
    now: &str,
) -> Answer<String> {
    let case: Case = read("case", case)?;
    let role: Role = id("role", role)?;
    let slot: Option<SlotId> = slot.map(|slot| id("slot", &slot)).transpose()?;
    let (person, signoff) = (id("person", person)?, id("signoff", signoff)?);
    write(&prepare(&case, role, slot, person, signoff, moment(now)?).map_err(thrown)?)
}

/// What the matrix says of a severity and a probability.
#[wasm_bindgen]
pub fn risk_level(severity: &str, probability: &str) -> Answer<String> {
    let severity: Severity = id("severity", severity)?;
    let probability: Probability = id("probability", probability)?;
    write(&risk::level(severity, probability))
}

/// A statement about the day made ready for a person to sign under a hat (a performer's for their slot),
/// with the words signed and the place.
#[wasm_bindgen]
pub fn draft_day(
    case: &str,
    role: &str,
    slot: Option<String>,
    person: &str,
    signoff: &str,
    now: &str,
) -> Answer<String> {
    let case: Case = read("case", case)?;
    let role: Role = id("role", role)?;
    let slot: Option<SlotId> = slot.map(|slot| id("slot", &slot)).transpose()?;
    let (person, signoff) = (id("person", person)?, id("signoff", signoff)?);
    write(&day_mark::prepare(&case, role, slot, person, signoff, moment(now)?).map_err(thrown)?)
}

/// What differs between two contents of a plan, by facet.
#[wasm_bindgen]
pub fn diff_facets(before: &str, after: &str) -> Answer<String> {
    let before: Facets = read("before", before)?;
    let after: Facets = read("after", after)?;
    write(&diff::diff(&before, &after))
}

/// Each facet's hash.
#[wasm_bindgen]
pub fn facet_hashes(facets: &str) -> Answer<String> {
    let facets: Facets = read("facets", facets)?;
    write(&contents::facet_hashes(&facets).map_err(thrown)?)
}

/// The RFC 8785 form of any JSON value: what is hashed and signed.
#[wasm_bindgen]
pub fn canonical(value: &str) -> Answer<String> {
    let value: serde_json::Value = read("value", value)?;
    String::from_utf8(canonical_bytes(&value).map_err(thrown)?).map_err(thrown)
}

/// The statement a sign-off makes, once its signature holds under the given key (a JWK).
#[wasm_bindgen]
pub fn verify_signoff(signoff: &str, key: &str) -> Answer<String> {
    let key: PublicKey = read("key", key)?;
    write(&jws::verify(signoff, &key).map_err(thrown)?)
}

/// The request that was handed over, once its signature holds under the given key (a JWK).
#[wasm_bindgen]
pub fn verify_handed(jws: &str, key: &str) -> Answer<String> {
    let key: PublicKey = read("key", key)?;
    write(&handed::verify(jws, &key).map_err(thrown)?)
}

/// As [`verify_handed`] with the device itself, which must be the author's, live, and its clock possible.
#[wasm_bindgen]
pub fn accept_handed(jws: &str, device: &str, now: &str) -> Answer<String> {
    let device: Device = read("device", device)?;
    let request = handed::verify(jws, &device.key).map_err(thrown)?;
    handed::check_device(&request, &device, moment(now)?).map_err(thrown)?;
    write(&request)
}

/// A leaf's way to the root, as the API gives it together with the leaf's hash.
#[derive(Deserialize)]
struct LeafPath {
    leaf: u64,
    size: u64,
    hash: Hash,
    root: Hash,
    path: Vec<Hash>,
}

/// Throws, saying why, unless the path leads from the leaf to the root.
#[wasm_bindgen]
pub fn verify_inclusion(proof: &str) -> Answer<()> {
    let proof: LeafPath = read("proof", proof)?;
    verify_path(
        &proof.hash,
        proof.leaf,
        proof.size,
        &proof.path,
        &proof.root,
    )
    .map_err(thrown)
}

/// Two roots of one trail and the proof that the later continues the earlier.
#[derive(Deserialize)]
struct Growth {
    from: u64,
    to: u64,
    old_root: Hash,
    new_root: Hash,
    path: Vec<Hash>,
}

/// Throws, saying why, unless the later trail holds all of the earlier one, unchanged.
#[wasm_bindgen]
pub fn verify_growth(proof: &str) -> Answer<()> {
    let proof: Growth = read("proof", proof)?;
    let (old, new) = (&proof.old_root, &proof.new_root);
    verify_consistency(proof.from, proof.to, old, new, &proof.path).map_err(thrown)
}

/// What a person wrote, in SI.
#[wasm_bindgen]
pub fn parse_quantity(quantity: &str, text: &str) -> Answer<f64> {
    Ok(units::parse(named(quantity)?, text).map_err(thrown)?.value)
}

/// An SI value as a person reads it, in `metric` or `imperial` units.
#[wasm_bindgen]
pub fn format_quantity(quantity: &str, si: f64, system: &str) -> Answer<String> {
    let quantity = named(quantity)?;
    let (number, unit) = match system {
        "metric" => units::format_metric(quantity, si),
        "imperial" => units::format_imperial(quantity, si),
        other => {
            return Err(JsError::new(&format!(
                "units are metric or imperial, not \"{other}\""
            )));
        }
    };
    Ok(units::join((number, unit)))
}

/// A single name or id, which crosses the border without the quotes that JSON puts around it.
fn id<T: DeserializeOwned>(what: &str, text: &str) -> Answer<T> {
    serde_json::from_value(serde_json::Value::from(text)).map_err(|error| wrong(what, &error))
}

fn moment(now: &str) -> Answer<Timestamp> {
    now.parse().map_err(|error| wrong("now", &error))
}

fn named(quantity: &str) -> Answer<Quantity> {
    id("quantity", quantity)
}

fn read<T: DeserializeOwned>(what: &str, text: &str) -> Answer<T> {
    parsed(text).map_err(|error| wrong(what, &error))
}

/// By way of a value of any shape: else what reads a text and what reads a value would each be compiled for every
/// type of ours, for inside of signatures it is values that are read.
fn parsed<T: DeserializeOwned>(text: &str) -> serde_json::Result<T> {
    let value: serde_json::Value = serde_json::from_str(text)?;
    serde_json::from_value(value)
}

fn write<T: Serialize>(value: &T) -> Answer<String> {
    serde_json::to_string(value).map_err(thrown)
}

fn wrong(what: &str, error: &impl Display) -> JsError {
    JsError::new(&format!("{what}: {error}"))
}

fn thrown(error: impl Display) -> JsError {
    JsError::new(&error.to_string())
}
