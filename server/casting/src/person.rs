//! People as casting sees them: what each can prove, and when.

use std::collections::BTreeMap;

use jiff::civil::Date;
use serde::{Deserialize, Serialize};

use crate::ids::{CertificateId, GagId, PersonId};

/// A performer or crew member.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct Person {
    /// Who.
    pub id: PersonId,
    /// The short code the production knows them by, unique in it, for example `P07`; import updates
    /// by this.
    pub code: String,
    /// Name as they write it, any script, NFC.
    pub name: String,
    /// What they are called for: "performer", "key rigger", "medic" ... free text.
    pub occupation: String,
    /// Whether they may be cast in slots.
    pub performs: bool,
    /// Address for invitations; none when they have no account.
    #[serde(default)]
    pub email: Option<String>,
    /// Birthday, where it matters (minors, insurance).
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(value_type = Option<String>, format = Date))]
    pub born: Option<Date>,
    /// Body measurements.
    #[serde(default)]
    pub measurements: BTreeMap<Measurement, Measured>,
    /// Dated proofs.
    #[serde(default)]
    pub certificates: Vec<Certificate>,
    /// Graded competences.
    #[serde(default)]
    pub skills: Vec<Skill>,
    /// When they can and cannot work. Days not covered are unknown.
    #[serde(default)]
    pub availability: Vec<Availability>,
    /// Fit to perform through this day, as the medic says. A date, never a diagnosis.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(value_type = Option<String>, format = Date))]
    pub medically_clear_until: Option<Date>,
    /// When they last wrapped, for rest before the next call.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(value_type = Option<String>, format = DateTime))]
    pub last_wrap: Option<jiff::Timestamp>,
    /// What their body has taken on which day.
    #[serde(default)]
    pub exposures: Vec<Exposure>,
    /// Revisions of gags they have agreed to perform.
    #[serde(default)]
    pub consents: Vec<Consent>,
}

impl Person {
    /// Somebody of whom no more is known than what they are called.
    pub fn named(id: PersonId, code: impl Into<String>, name: impl Into<String>) -> Person {
        Person {
            id,
            code: code.into(),
            name: name.into(),
            occupation: String::new(),
            performs: false,
            email: None,
            born: None,
            measurements: BTreeMap::new(),
            certificates: Vec::new(),
            skills: Vec::new(),
            availability: Vec::new(),
            medically_clear_until: None,
            last_wrap: None,
            exposures: Vec::new(),
            consents: Vec::new(),
        }
    }
}

/// What is measured on a body. Lengths in metres, masses in kilograms, shoe in Paris points (EU size).
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(rename_all = "snake_case")]
#[allow(missing_docs)] // the names are the measurements
pub enum Measurement {
    Height,
    Mass,
    Chest,
    Waist,
    Hip,
    Inseam,
    Sleeve,
    Neck,
    Shoulder,
    Head,
    Shoe,
}

/// One measurement, and who took it when.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Measured {
    /// SI (shoe: EU size).
    pub value: f64,
    /// When it was taken.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = Date))]
    pub on: Date,
    /// Who took it.
    #[serde(default)]
    pub by: Option<String>,
}

/// A dated, scoped proof from an issuer.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Certificate {
    /// Which one.
    pub id: CertificateId,
    /// Kind from the catalogue, for example `rope_access_3`.
    pub kind: String,
    /// Category or class inside the kind, where it has them.
    #[serde(default)]
    pub category: Option<String>,
    /// The number on it.
    #[serde(default)]
    pub number: Option<String>,
    /// Who issued it.
    #[serde(default)]
    pub issuer: Option<String>,
    /// First day it counts.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = Date))]
    pub issued: Date,
    /// Last day it counts; none where the scheme has no expiry.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(value_type = Option<String>, format = Date))]
    pub expires: Option<Date>,
    /// Last time the work it covers was done, for schemes whose clock runs on use.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(value_type = Option<String>, format = Date))]
    pub last_used: Option<Date>,
    /// Who looked at the evidence, on which day and how ("sight of original", "register").
    #[serde(default)]
    pub checked: Option<EvidenceCheck>,
    /// When it was withdrawn, if it was.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(value_type = Option<String>, format = Date))]
    pub withdrawn: Option<Date>,
}

/// Who looked at a certificate's evidence.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct EvidenceCheck {
    /// Who looked.
    pub by: String,
    /// When.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = Date))]
    pub on: Date,
    /// How: register, telephone, sight of original.
    pub method: String,
}

/// A graded competence. Grade, certificate and recency are three separate facts.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Skill {
    /// Name from the catalogue, for example `high_fall`.
    pub name: String,
    /// 0 untested; 1 trained, closely supervised; 2 performs known versions with supervision; 3
    /// performs independently and adapts; 4 designs and leads; 5 assesses others.
    pub level: u8,
    /// Who assessed it.
    #[serde(default)]
    pub assessed_by: Option<String>,
    /// When it was assessed.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(value_type = Option<String>, format = Date))]
    pub assessed_on: Option<Date>,
    /// When it was last used.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(value_type = Option<String>, format = Date))]
    pub last_used: Option<Date>,
}

/// A run of days on which someone can or cannot work.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Availability {
    /// First day.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = Date))]
    pub from: Date,
    /// Last day.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = Date))]
    pub to: Date,
    /// Whether they can work.
    pub available: bool,
}

/// What a body took on a day.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Exposure {
    /// `full_burn`, `partial_burn`, `head_impact`, `high_fall`, `ratchet_pull` ...
    pub kind: String,
    /// The day.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = Date))]
    pub on: Date,
    /// How many.
    pub count: u32,
}

/// Agreement to perform one revision of a gag.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Consent {
    /// The gag.
    pub gag: GagId,
    /// The revision agreed to.
    pub revision: u32,
    /// When it was withdrawn, if it was.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(value_type = Option<String>, format = DateTime))]
    pub withdrawn: Option<jiff::Timestamp>,
}
