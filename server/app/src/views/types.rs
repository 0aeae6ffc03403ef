//! The shapes of what people read. Plain data with nothing to compute.

use std::collections::{BTreeMap, BTreeSet};

use gagwright_casting::{Person, PersonId, ProductionId, Slot, SlotId, Verdict};
use gagwright_clearance::{
    Case, Clearance, ClearanceState, Device, Drawing, Facet, GagId, Hold, Plan, Policy, Role,
    RoleStanding, RoleState, SignOffId, Statement, TestShot, diff::FacetChange,
    policy::Attestation,
};
use gagwright_mechanics::Status;
use gagwright_trail::Entry;
use jiff::{Timestamp, civil::Date};
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::permissions::Permission;

/// A gag by its names.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct GagRef {
    /// Which.
    pub id: GagId,
    /// The short code said over a radio, for example `G07`.
    pub code: String,
    /// What people call it.
    pub title: String,
}

/// A person by their names.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct PersonRef {
    /// Who.
    pub id: PersonId,
    /// Name as they write it.
    pub name: String,
    /// The production's short code for them.
    pub code: String,
}

/// One gag in a list.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct GagSummary {
    /// Which.
    pub id: GagId,
    /// Its short code.
    pub code: String,
    /// Its title.
    pub title: String,
    /// The technique's machine name.
    pub technique: String,
    /// The technique as people read it.
    pub technique_title: String,
    /// Scene number.
    pub scene: String,
    /// The place.
    pub location: String,
    /// The unit that shoots it.
    pub unit: String,
    /// The shooting day.
    #[schema(required = true, value_type = Option<String>, format = Date)]
    pub day: Option<Date>,
    /// The current revision.
    pub revision: u32,
    /// The answer in a word.
    pub state: ClearanceState,
    /// How many sign-offs it needs.
    pub roles_needed: u32,
    /// How many of them stand.
    pub roles_standing: u32,
    /// The worst check; none when the inputs were refused.
    #[schema(required = true)]
    pub worst_check: Option<Status>,
    /// The first thing that stops it, in a sentence.
    #[schema(required = true)]
    pub top_block: Option<String>,
    /// Holds not yet released, those on the whole production included.
    pub open_holds: u32,
}

/// One revision in a gag's history.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct PlanRevision {
    /// Which.
    pub revision: u32,
    /// Who wrote it.
    pub author: PersonRef,
    /// When.
    #[schema(value_type = String, format = DateTime)]
    pub written_at: Timestamp,
    /// Why it differs from the one before.
    pub note: String,
    /// Its digest, hex.
    pub digest: String,
    /// Its leaf in the trail.
    pub leaf: u64,
    /// Facets that differ from the revision before; all of them in the first.
    #[schema(value_type = Vec<Facet>)]
    pub changed: Vec<Facet>,
}

/// Which gag a page is about.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct GagHead {
    /// Which.
    pub id: GagId,
    /// Its short code.
    pub code: String,
    /// Its title.
    pub title: String,
    /// The production.
    pub production: ProductionId,
}

/// Where a gag stands in the trail.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct TrailPlace {
    /// Leaves in the production's tree now.
    pub size: u64,
    /// The leaf that recorded the current revision.
    pub leaf: u64,
}

/// Everything about one gag, in one answer.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct GagPage {
    /// Which.
    pub gag: GagHead,
    /// The current plan.
    pub plan: Plan,
    /// All that bears on it, people cut down to what the reader may see. A phone judges from this and
    /// comes to the same answer as the server.
    pub case: Case,
    /// The judge's answer, from that very case.
    pub clearance: Clearance,
    /// Every revision, newest first.
    pub history: Vec<PlanRevision>,
    /// The marks drawn beside sign-offs, by sign-off; one that only confirmed has none.
    #[serde(default)]
    #[schema(required = true, value_type = BTreeMap<String, Drawing>)]
    pub marks: BTreeMap<SignOffId, Drawing>,
    /// Test shots logged on the gag, in the order of the trail. They bear on no clearance, so the judge
    /// is not given them.
    #[serde(default)]
    #[schema(required = true)]
    pub test_shots: Vec<TestShot>,
    /// Names of everyone the page mentions.
    #[schema(value_type = BTreeMap<String, String>)]
    pub names: BTreeMap<PersonId, String>,
    /// Where the printed packet is.
    pub packet_url: String,
    /// Where it stands in the trail.
    pub trail: TrailPlace,
}

/// A signature someone is asked for.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct ToSign {
    /// The gag.
    pub gag: GagRef,
    /// The hat.
    pub role: Role,
    /// The hat as people read it.
    pub role_title: String,
    /// The performer's slot.
    #[schema(required = true)]
    pub slot: Option<SlotId>,
    /// How the role stands now.
    pub state: RoleState,
    /// Why it is asked, in a sentence.
    pub why: String,
    /// The day it is a mark for; none: it is for the plan.
    #[schema(value_type = Option<String>, format = Date, required = true)]
    pub day: Option<Date>,
}

/// A hold that is open.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct HeldItem {
    /// The hold.
    pub hold: Hold,
    /// The gag; none: the whole production.
    #[schema(required = true)]
    pub gag: Option<GagRef>,
    /// Who still has to agree before it is released, by hat.
    pub needs: Vec<Role>,
}

/// A certificate that runs out before a day it is needed on.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct LapsingCertificate {
    /// Whose.
    pub person: PersonRef,
    /// Which.
    pub certificate: CertificateExpiry,
    /// The last shooting day they are cast for or sign for.
    #[schema(value_type = String, format = Date)]
    pub before_day: Date,
}

/// A certificate's kind and last day.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct CertificateExpiry {
    /// Kind from the catalogue.
    pub kind: String,
    /// Last day it counts.
    #[schema(value_type = String, format = Date)]
    pub expires: Date,
}

/// What one person has to know today.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Today {
    /// When this was put together.
    #[schema(value_type = String, format = DateTime)]
    pub now: Timestamp,
    /// What the reader is asked to sign.
    pub to_sign: Vec<ToSign>,
    /// What is held.
    pub held: Vec<HeldItem>,
    /// The gags that come next, by shooting day.
    pub next: Vec<GagSummary>,
    /// Certificates that run out before they are needed.
    pub lapsing_certificates: Vec<LapsingCertificate>,
}

/// One person held against a slot.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Candidate {
    /// Who.
    pub person: CandidatePerson,
    /// How they stand, requirement by requirement.
    pub verdict: Verdict,
}

/// A candidate by their names.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct CandidatePerson {
    /// Who.
    pub id: PersonId,
    /// Name.
    pub name: String,
    /// The production's code for them.
    pub code: String,
    /// What they are called for.
    pub occupation: String,
}

/// Everyone who performs, held against one slot, best first.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Matches {
    /// The slot.
    pub slot: Slot,
    /// The shooting day judged for.
    #[schema(required = true, value_type = Option<String>, format = Date)]
    pub day: Option<Date>,
    /// The candidates.
    pub items: Vec<Candidate>,
}

/// A statement made ready for signing; the device fills in `id`, `device`, `signed_at` and the
/// decision with its conditions or reason, then signs its canonical bytes.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Draft {
    /// What would be signed.
    pub statement: Statement,
    /// The words the signer puts their name to.
    pub attestation: Attestation,
    /// The facets it covers.
    pub covers: Vec<Facet>,
    /// What this role signed last, if anything.
    #[schema(required = true)]
    pub previous: Option<gagwright_clearance::draft::PreviousSignOff>,
    /// What changed in the covered facets since then.
    pub changes: Vec<FacetChange>,
}

/// What a signer gets back.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SignOffReceipt {
    /// The sign-off.
    pub id: SignOffId,
    /// Its leaf in the trail.
    pub leaf: u64,
    /// How the role stands now.
    pub standing: RoleStanding,
    /// How the gag stands now.
    pub clearance: ClearanceState,
}

/// What an import did.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct ImportReport {
    /// Which table: `people`, `certificates`, `skills` or `availability`.
    pub table: String,
    /// Rows that were new.
    pub created: u32,
    /// Rows that changed something.
    pub updated: u32,
    /// Rows that said what was known already.
    pub unchanged: u32,
    /// Runs of days taken off record because the newer table does not have them.
    pub removed: u32,
}

/// One person in a list.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct PersonSummary {
    /// Who.
    pub id: PersonId,
    /// The production's code for them.
    pub code: String,
    /// Name.
    pub name: String,
    /// What they are called for.
    pub occupation: String,
    /// Whether they may be cast.
    pub performs: bool,
    /// Their hats.
    #[schema(value_type = Vec<Role>)]
    pub roles: BTreeSet<Role>,
    /// Their skills by name and level.
    pub skills: Vec<SkillLevel>,
    /// How many certificates they hold.
    pub certificates: u32,
    /// The next day one of them runs out.
    #[schema(required = true, value_type = Option<String>, format = Date)]
    pub next_expiry: Option<Date>,
}

/// A skill and its level.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct SkillLevel {
    /// Name from the catalogue.
    pub name: String,
    /// 0 to 5.
    pub level: u8,
}

/// What of a person the reader may see.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Visible {
    /// Birthday, measurements, address, certificate numbers.
    pub personal: bool,
    /// Medical date and exposures.
    pub medical: bool,
}

/// One person, cut down to what the reader may see.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct PersonPage {
    /// The person.
    pub person: Person,
    /// The version to give back when writing.
    pub version: i64,
    /// Their hats.
    #[schema(value_type = Vec<Role>)]
    pub roles: BTreeSet<Role>,
    /// Their devices.
    pub devices: Vec<Device>,
    /// What was left in.
    pub visible: Visible,
}

/// One member of a production.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct MemberSummary {
    /// Who.
    pub person: PersonId,
    /// Name.
    pub name: String,
    /// The production's code for them.
    pub code: String,
    /// Their hats.
    #[schema(value_type = Vec<Role>)]
    pub roles: BTreeSet<Role>,
    /// Whether they can sign in.
    pub has_account: bool,
}

/// The reader, on this production.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct Me {
    /// Who.
    pub person: PersonId,
    /// Their hats.
    #[schema(value_type = Vec<Role>)]
    pub roles: BTreeSet<Role>,
    /// What they may do.
    #[schema(value_type = Vec<Permission>)]
    pub permissions: BTreeSet<Permission>,
}

/// A production, its people and its rules.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct ProductionPage {
    /// Which.
    pub id: ProductionId,
    /// Its name.
    pub name: String,
    /// Whether it is the demo, with invented people and public passwords.
    pub demo: bool,
    /// IANA time zone of its call times.
    pub time_zone: String,
    /// The code printed on the brief, for those who may print it.
    #[schema(required = true)]
    pub hold_code: Option<String>,
    /// Who must sign what.
    pub policy: Policy,
    /// Everyone with a hat or an account.
    pub members: Vec<MemberSummary>,
    /// Every device that signs here, so that a phone with no network can check what another hands it.
    pub devices: Vec<Device>,
    /// The reader.
    pub me: Me,
    /// Leaves in the trail.
    pub trail_size: u64,
}

/// One leaf in the feed of changes.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct ChangeItem {
    /// Position in the trail.
    pub index: u64,
    /// When.
    pub at: String,
    /// What kind of command.
    pub kind: String,
    /// The gag, where it is about one.
    #[schema(required = true)]
    pub gag: Option<String>,
    /// Who did it.
    #[schema(required = true)]
    pub actor: Option<String>,
    /// Their name, where they are still on the roster.
    #[schema(required = true)]
    pub actor_name: Option<String>,
    /// The hold, where it is about one.
    pub hold: Option<String>,
    /// The near miss or incident, where it is about one.
    pub incident: Option<String>,
    /// The gag's code, where it is about one: a phone that hears of a hold says at once what is held.
    pub code: Option<String>,
}

/// The feed after a position.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Changes {
    /// Leaves in the trail.
    pub size: u64,
    /// Those after the position asked for, oldest first.
    pub items: Vec<ChangeItem>,
}

/// One leaf, told in words.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct TrailItem {
    /// The leaf.
    pub entry: Entry,
    /// Its hash, hex.
    pub hash: String,
    /// Who did it, where they are still on the roster.
    #[schema(required = true)]
    pub actor_name: Option<String>,
    /// What happened, in a sentence.
    pub sentence: String,
}

/// A page of the trail, newest first.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct TrailPage {
    /// Leaves in the tree.
    pub size: u64,
    /// Its root, hex.
    pub root: String,
    /// The page.
    pub items: Vec<TrailItem>,
}
