//! The values a packet is printed from: plain strings and numbers, already in the words people
//! read. Knows nothing of how a plan is judged or kept, and nothing of fonts or pages.
//!
//! Whoever fills these in decides every word; the renderer decides only where the words go. Times
//! are given twice where both are needed: once for machines and once for people.

mod figures;
mod plan;
mod signatures;

pub use figures::{CheckRow, Curve, FigureRow, Plot, PlotLimit, ZoneRow, ZoneShape};
pub use plan::{Content, Part, Row};
pub use signatures::{CastSlot, FindingRow, SignOffPart, TrailProof};

use serde::{Deserialize, Serialize};

/// Everything one packet prints.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct PacketDocument {
    /// The production's name.
    pub production: String,
    /// The unit that shoots it; empty when the plan names none.
    pub unit: String,
    /// The gag's short code, for example `G07`. Printed on every page and spelled for the radio.
    pub gag_code: String,
    /// The gag's title.
    pub gag_title: String,
    /// How it is done, for example "High fall".
    pub technique: String,
    /// One paragraph: what happens.
    pub summary: String,
    /// The plan's revision.
    pub revision: u32,
    /// Who wrote the revision.
    pub revision_author: String,
    /// When it was written, as people read it.
    pub revision_written: String,
    /// What the author said about it.
    pub revision_note: String,
    /// Scene number.
    pub scene: String,
    /// The place.
    pub location: String,
    /// The shooting day, as people read it.
    pub day: String,
    /// Call on that day, as people read it.
    pub call: String,
    /// Light.
    pub light: String,
    /// The answer: cleared, waiting, lapsed, blocked, held, not asked yet.
    pub state: State,
    /// One sentence under the answer: "Two signatures are missing and one check is marginal."
    pub state_sentence: String,
    /// Everything that stops the gag except missing signatures, worst first. The cover takes the
    /// missing signatures from `signoffs`.
    pub blocks: Vec<Block>,
    /// What every reader must know. The standing caution ("planning aid; local law and licensed
    /// people decide") is always printed and need not be repeated here.
    pub cautions: Vec<String>,
    /// The plan's digest, hex.
    pub plan_digest: String,
    /// What the code on the cover says to a scanner: an address or the digest itself. Empty: no
    /// code is printed.
    pub verify_data: String,
    /// The sentence beside that code.
    pub verify_caption: String,
    /// True when the production is invented; every page then says so.
    pub demo: bool,
    /// When the packet was made: RFC 3339 in UTC, for example `2026-03-14T09:26:53Z`. It dates the
    /// file and makes it reproducible.
    pub generated_at: String,
    /// The same moment as people read it; empty: `generated_at` is printed.
    pub generated_text: String,
    /// The plan, one part for each facet, in table order. Empty facets too: the reader must see
    /// that they are empty.
    pub facets: Vec<Part>,
    /// Hazards weighed, one part for each risk. Empty: the packet has no page of risks.
    pub risks: Vec<Part>,
    /// Hazards present.
    pub hazards: Vec<String>,
    /// Figures, the most telling first.
    pub figures: Vec<FigureRow>,
    /// Figures held against limits.
    pub checks: Vec<CheckRow>,
    /// Curves.
    pub plots: Vec<Plot>,
    /// Ground that must be clear.
    pub zones: Vec<ZoneRow>,
    /// What a reader must know about these very figures.
    pub figure_cautions: Vec<String>,
    /// Why there are no figures, where there are none: the inputs were refused, for example.
    pub figures_missing: String,
    /// Who performs, slot by slot.
    pub cast: Vec<CastSlot>,
    /// Every role that must sign and how it stands.
    pub signoffs: Vec<SignOffPart>,
    /// What has been logged beside the plan: rehearsal runs, readings, holds, earlier revisions.
    pub records: Vec<Part>,
    /// The day around a take, one part a subject. Empty: nothing was done on any day, and no page says so.
    pub on_the_day: Vec<Part>,
    /// The proof that this revision is in the trail; none when it has not been appended yet.
    pub trail: Option<TrailProof>,
    /// Files carried inside the PDF for programs, for example the sign-offs as JSON.
    pub attachments: Vec<Attachment>,
}

/// An answer as a word and a strip. The strip is drawn, so it also reads on a monochrome page.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct State {
    /// The word, for example "Cleared".
    pub word: String,
    /// The strip.
    pub mark: Mark,
}

impl State {
    /// A word and its strip.
    pub fn new(word: impl Into<String>, mark: Mark) -> Self {
        State {
            word: word.into(),
            mark,
        }
    }
}

/// The strip of tape that says how something stands.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Mark {
    /// Cleared, standing, within, qualified, met.
    Whole,
    /// Waiting, missing, marginal, conditional, curable, unknown.
    Broken,
    /// Lapsed.
    Torn,
    /// Held, blocked, declined, exceeded, not qualified, not met.
    Crossed,
    /// Not asked yet.
    #[default]
    None,
}

/// One thing that stops the gag.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct Block {
    /// What kind of thing, in a word or two: "Hold", "Check", "Performer" ...
    pub kind: String,
    /// What it is about: the check's title, the slot's name, the role.
    pub about: String,
    /// What is wrong, in a sentence.
    pub reason: String,
    /// What would put it right, in a sentence.
    pub remedy: String,
    /// Its strip.
    pub mark: Mark,
}

/// A file carried inside the PDF. It is data for programs and is not printed.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct Attachment {
    /// File name, for example `signoffs.json`.
    pub name: String,
    /// Media type, for example `application/json`.
    pub media_type: String,
    /// What it is, in a sentence.
    pub description: String,
    /// Its text, UTF-8.
    pub text: String,
}
