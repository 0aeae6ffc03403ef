//! A sign-off: a role's attestation of the facets it answers for, at their exact content, as a JWS
//! (RFC 7515, ES256) over a [`Statement`]. The key is made on the device and never leaves it. Any
//! JOSE library can verify one.

use std::collections::BTreeSet;

use gagwright_casting::{Certificate, GagId, PersonId, ProductionId, SlotId};
use serde::{Deserialize, Serialize};

use crate::{
    canonical::CanonicalError,
    delegation::Hat,
    ids::{DeviceId, RecordId, SignOffId},
    ink::Ink,
    opening::Opening,
    plan::FacetHashes,
    policy::Role,
};

pub use crate::{
    door::{accept, accept_remembering},
    draft::draft,
    jws::{check_key, read_unverified, sign, verify},
};

/// What is signed. Its RFC 8785 bytes are the JWS payload.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct Statement {
    /// [`Statement::KIND`] or, with `ink`, [`Statement::INK`].
    pub kind: String,
    /// This sign-off; minted by the device, so a replay is seen.
    pub id: SignOffId,
    /// The production.
    pub production: ProductionId,
    /// The gag.
    pub gag: GagId,
    /// The revision signed.
    pub revision: u32,
    /// RFC 6962 root over the facets in table order, hex.
    pub plan_digest: String,
    /// The technique's machine name: the same contents mean something else under another.
    pub technique: String,
    /// Hashes of the facets covered.
    #[cfg_attr(feature = "openapi", schema(value_type = std::collections::BTreeMap<gagwright_mechanics::Facet, String>))]
    pub facets: FacetHashes,
    /// The hat it is signed under.
    pub role: Role,
    /// The performer's slot; only with [`Role::Performer`].
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "openapi", schema(nullable = false))]
    pub slot: Option<SlotId>,
    /// The decision.
    pub decision: Decision,
    /// What must be met first, with `approve_with_conditions`: a commitment to each condition's text (see
    /// [`Opening`]), lower-case hex.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub conditions: Vec<String>,
    /// Why, with `decline`: a commitment to the text, lower-case hex.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "openapi", schema(nullable = false))]
    pub reason: Option<String>,
    /// Id of the attestation text shown.
    pub attestation: String,
    /// The language it was shown in; none: English.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "openapi", schema(nullable = false))]
    pub language: Option<String>,
    /// The delegation under which a delegate signs; none: the signer holds the hat themselves.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "openapi", schema(nullable = false))]
    pub delegation: Option<RecordId>,
    /// Who saw it signed on paper; only with [`Statement::INK`], and then `device` is theirs.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "openapi", schema(nullable = false))]
    pub ink: Option<Ink>,
    /// Who signs.
    pub signer: PersonId,
    /// The device whose key signs.
    pub device: DeviceId,
    /// When, by the device's clock: shown, never trusted for order.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = DateTime))]
    pub signed_at: jiff::Timestamp,
    /// Until when it counts.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "openapi", schema(value_type = Option<String>, format = DateTime, nullable = false))]
    pub good_until: Option<jiff::Timestamp>,
    /// SHA-256, lower-case hex, of the mark the signer drew (see [`crate::Drawing`]); none: they only
    /// confirmed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "openapi", schema(nullable = false))]
    pub mark: Option<String>,
}

impl Statement {
    /// A sign-off made on the signer's own device.
    pub const KIND: &'static str = "gagwright/plan-signoff/1";

    /// A sign-off made on paper, recorded by a witness who signs for having seen it.
    pub const INK: &'static str = "gagwright/ink-signoff/1";

    /// Whose device signs: the signer's or, for one made on paper, the witness's.
    pub fn hand(&self) -> PersonId {
        self.ink.as_ref().map_or(self.signer, |ink| ink.witness)
    }

    /// Under whose hat it is said.
    pub(crate) fn hat(&self) -> Hat {
        Hat {
            role: self.role,
            signer: self.signer,
            delegation: self.delegation,
        }
    }
}

/// Yes, yes if, or no.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(rename_all = "snake_case")]
pub enum Decision {
    /// Yes.
    Approve,
    /// Yes, once the conditions are met; until they are, nothing is cleared.
    ApproveWithConditions,
    /// No, saying why; stands until the same role signs otherwise.
    Decline,
}

/// A sign-off as received.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct SignOff {
    /// The compact JWS exactly as the device made it.
    pub jws: String,
    /// When the server received it.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = DateTime))]
    pub received_at: jiff::Timestamp,
    /// Its leaf in the trail.
    pub leaf: u64,
    /// Conditions that have been met since, by commitment, and who said so.
    #[serde(default)]
    pub met: Vec<ConditionMet>,
    /// The texts it commits to, each with its salt; none where there are none or they were erased.
    #[serde(default)]
    pub openings: Vec<Opening>,
}

/// A condition that was met.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct ConditionMet {
    /// The commitment to the condition's text, as signed.
    pub condition: String,
    /// Who says it is met: only a holder of the role that set it.
    pub by: PersonId,
    /// When.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = DateTime))]
    pub at: jiff::Timestamp,
}

/// A device's public key (JWK, RFC 7517) and its life.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Device {
    /// Which.
    pub id: DeviceId,
    /// Whose.
    pub person: PersonId,
    /// What its owner calls it.
    pub name: String,
    /// P-256 public key, base64url coordinates.
    pub key: PublicKey,
    /// When it was registered.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = DateTime))]
    pub registered_at: jiff::Timestamp,
    /// When it was revoked, if it was.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(value_type = Option<String>, format = DateTime))]
    pub revoked_at: Option<jiff::Timestamp>,
}

/// An EC JWK for ES256: `{"kty":"EC","crv":"P-256","x":...,"y":...}`.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct PublicKey {
    /// Always `EC`.
    pub kty: String,
    /// Always `P-256`.
    pub crv: String,
    /// Base64url, 32 bytes.
    pub x: String,
    /// Base64url, 32 bytes.
    pub y: String,
}

/// Who holds which hats on the production, with what the policy asks of them.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Member {
    /// Who.
    pub person: PersonId,
    /// Name, for reasons that people read.
    pub name: String,
    /// The hats.
    #[cfg_attr(feature = "openapi", schema(value_type = Vec<Role>))]
    pub roles: BTreeSet<Role>,
    /// Their certificates.
    #[serde(default)]
    pub certificates: Vec<Certificate>,
}

/// Why a sign-off was refused at the door.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum SignOffError {
    /// Not a compact JWS with the header we ask for.
    #[error("the sign-off is not a compact JWS with alg ES256: {0}")]
    Malformed(String),
    /// The signature does not match the device's key.
    #[error("the signature does not verify with the key registered for this device")]
    BadSignature,
    /// The payload is not a statement, or not in canonical form.
    #[error("the signed statement is not valid: {0}")]
    BadStatement(String),
    /// It speaks of another gag, revision or content than the current one.
    #[error("the sign-off is for {what}: {detail}")]
    Mismatch {
        /// The field.
        what: &'static str,
        /// What was signed and what is current.
        detail: String,
    },
    /// The signer may not sign under this hat.
    #[error("{0}")]
    NotAllowed(String),
}

impl From<CanonicalError> for SignOffError {
    /// A plan that has no canonical form has no content to sign.
    fn from(error: CanonicalError) -> SignOffError {
        SignOffError::BadStatement(format!("the plan: {error}"))
    }
}
