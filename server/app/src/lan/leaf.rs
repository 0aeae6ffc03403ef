//! The certificate this server shows: signed by the local authority for every name and address of the
//! machine, short-lived, and made again when they change or its time runs low. Its key never touches
//! the disk.

use std::{collections::BTreeSet, sync::Arc, time::Duration};

use jiff::{SignedDuration, Timestamp};
use rcgen::{
    CertificateParams, DistinguishedName, DnType, ExtendedKeyUsagePurpose, IsCa, KeyPair,
    KeyUsagePurpose, PKCS_ECDSA_P256_SHA256, SanType,
};
use rustls::{
    RootCertStore,
    client::{WebPkiServerVerifier, danger::ServerCertVerifier as _},
    crypto::aws_lc_rs::default_provider,
    pki_types::{PrivateKeyDer, ServerName, UnixTime},
    sign::CertifiedKey,
};

use super::{
    LanError,
    addresses::Name,
    authority::{Authority, HEAD_START, moment},
};

/// How long one lasts. Phones refuse more than 397 days; a set's server is started far more often.
const LIFE: SignedDuration = SignedDuration::from_hours(24 * 90);
/// One with less time left than this is made again.
const LOW: SignedDuration = SignedDuration::from_hours(24 * 30);

/// A certificate for this server, with its key.
#[derive(Debug)]
pub struct Leaf {
    /// What is shown when a phone connects.
    pub certified: Arc<CertifiedKey>,
    /// What it names.
    pub names: BTreeSet<Name>,
    /// When it stops counting.
    pub ends_at: Timestamp,
}

impl Leaf {
    /// Makes one and checks it as a phone would.
    ///
    /// # Errors
    /// When the authority does not hold together, or may not speak for one of the names.
    pub fn make(
        authority: &Authority,
        names: BTreeSet<Name>,
        now: Timestamp,
    ) -> Result<Self, LanError> {
        let ends_at = now
            .saturating_add(LIFE)
            .unwrap_or(Timestamp::MAX)
            .min(authority.ends_at());
        let begins = now
            .saturating_sub(HEAD_START)
            .unwrap_or(now)
            .max(authority.begins_at());
        let mut parameters = CertificateParams::default();
        parameters.distinguished_name = DistinguishedName::new();
        parameters
            .distinguished_name
            .push(DnType::CommonName, "Gagwright on this network");
        parameters.is_ca = IsCa::ExplicitNoCa;
        parameters.key_usages = vec![KeyUsagePurpose::DigitalSignature];
        parameters.extended_key_usages = vec![ExtendedKeyUsagePurpose::ServerAuth];
        parameters.use_authority_key_identifier_extension = true;
        parameters.not_before = moment(begins)?;
        parameters.not_after = moment(ends_at)?;
        parameters.subject_alt_names = names
            .iter()
            .map(|name| match name {
                Name::Ip(ip) => Ok(SanType::IpAddress(*ip)),
                Name::Host(host) => host.as_str().try_into().map(SanType::DnsName),
            })
            .collect::<Result<_, rcgen::Error>>()
            .map_err(LanError::make)?;
        let key = KeyPair::generate_for(&PKCS_ECDSA_P256_SHA256).map_err(LanError::make)?;
        let certificate = parameters
            .signed_by(&key, authority.issuer())
            .map_err(LanError::make)?;
        let key = PrivateKeyDer::Pkcs8(key.serialize_der().into());
        let certified =
            CertifiedKey::from_der(vec![certificate.der().clone()], key, &default_provider())
                .map_err(LanError::make)?;
        let leaf = Self {
            certified: Arc::new(certified),
            names,
            ends_at,
        };
        leaf.check(authority, now)
            .map_err(|error| LanError::Unsound {
                folder: authority.folder().into(),
                why: error.to_string(),
            })?;
        Ok(leaf)
    }

    /// Whether the time left is short, and another one would have more.
    pub fn runs_low(&self, authority: &Authority, now: Timestamp) -> bool {
        self.ends_at < authority.ends_at() && self.ends_at.duration_since(now) < LOW
    }

    /// What a phone does that trusts the authority and nothing else.
    fn check(&self, authority: &Authority, now: Timestamp) -> Result<(), rustls::Error> {
        let mut roots = RootCertStore::empty();
        roots.add(authority.der().clone())?;
        let verifier = WebPkiServerVerifier::builder_with_provider(
            Arc::new(roots),
            Arc::new(default_provider()),
        )
        .build()
        .map_err(|error| rustls::Error::General(error.to_string()))?;
        let shown = self.certified.end_entity_cert()?;
        let seconds = u64::try_from(now.as_second()).unwrap_or_default();
        let now = UnixTime::since_unix_epoch(Duration::from_secs(seconds));
        for name in &self.names {
            let name = ServerName::try_from(name.to_string())
                .map_err(|error| rustls::Error::General(error.to_string()))?;
            verifier.verify_server_cert(shown, &[], &name, &[], now)?;
        }
        Ok(())
    }
}
