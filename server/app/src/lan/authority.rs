//! The local certificate authority: a key that stays on this machine and a certificate that phones are
//! asked to trust. It is made once, on first use, and may speak for nothing but private addresses,
//! `.local` names and the names it was made with, so that trusting it opens no other door.

use std::{
    fs, io,
    path::{Path, PathBuf},
};

use jiff::{SignedDuration, Timestamp};
use rcgen::{
    BasicConstraints, CertificateParams, CidrSubnet, DistinguishedName, DnType, GeneralSubtree,
    IsCa, Issuer, KeyPair, KeyUsagePurpose, NameConstraints, PKCS_ECDSA_P256_SHA256,
    PublicKeyData as _,
};
use rustls::pki_types::{CertificateDer, PrivatePkcs8KeyDer};
use serde::{Deserialize, Serialize};
use sha2::{Digest, Sha256};

use super::{
    LanError,
    addresses::{Name, PRIVATE_RANGES, is_private},
};
use crate::private_file;

/// How long an authority lasts: about ten years.
const LIFE: SignedDuration = SignedDuration::from_hours(24 * 3652);
/// One that ends this soon is made anew at start, before phones begin to refuse it.
const TOO_OLD: SignedDuration = SignedDuration::from_hours(24 * 30);
/// Certificates begin to count a little before they are made, for phones whose clock is behind.
pub(super) const HEAD_START: SignedDuration = SignedDuration::from_hours(48);

/// What the folder keeps: everything in one file, so that it is there whole or not at all.
#[derive(Serialize, Deserialize)]
struct Kept {
    /// When it was made.
    made_at: Timestamp,
    /// When it stops counting.
    ends_at: Timestamp,
    /// The names it may speak for beside private addresses, `localhost` and `.local`.
    names: Vec<String>,
    /// PEM.
    certificate: String,
    /// PKCS #8, PEM.
    key: String,
}

/// A certificate authority of this machine.
pub struct Authority {
    issuer: Issuer<'static, KeyPair>,
    certificate: CertificateDer<'static>,
    name: String,
    made_at: Timestamp,
    ends_at: Timestamp,
    names: Vec<Name>,
    folder: PathBuf,
}

impl std::fmt::Debug for Authority {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "Authority({})", self.name)
    }
}

/// How an authority came to be there.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Origin {
    /// It was kept from before; phones that trusted it go on.
    Kept,
    /// Made just now, the first one in this folder.
    First,
    /// Made just now in place of another, which was asked for or had come to its end.
    Renewed,
}

impl Authority {
    /// Takes the authority that the folder keeps, or makes one that may speak for `names`.
    ///
    /// # Errors
    /// When the folder cannot be used, or what it keeps is broken, open to others or not for now.
    pub fn open(
        folder: &Path,
        names: &[Name],
        anew: bool,
        now: Timestamp,
    ) -> Result<(Self, Origin), LanError> {
        let file = folder.join("authority.json");
        let (authority, origin) = match fs::read(&file) {
            Ok(bytes) if !anew => {
                let kept = Self::read(folder, &file, &bytes, now)?;
                if kept.ends_at.duration_since(now) > TOO_OLD {
                    (kept, Origin::Kept)
                } else {
                    (Self::make(folder, names, now)?, Origin::Renewed)
                }
            }
            Ok(_) => (Self::make(folder, names, now)?, Origin::Renewed),
            Err(error) if error.kind() == io::ErrorKind::NotFound => {
                (Self::make(folder, names, now)?, Origin::First)
            }
            Err(error) => return Err(LanError::file(&file, "read", &error)),
        };
        // The public half as a file of its own, to be handed on or looked at with other tools.
        let public = folder.join("authority.crt");
        fs::write(&public, authority.pem())
            .map_err(|error| LanError::file(&public, "write", &error))?;
        Ok((authority, origin))
    }

    fn read(folder: &Path, file: &Path, bytes: &[u8], now: Timestamp) -> Result<Self, LanError> {
        let open =
            private_file::open_to_others(file).map_err(|e| LanError::file(file, "read", &e))?;
        if open {
            return Err(LanError::KeyOpen { file: file.into() });
        }
        let broken = |why: String| LanError::Broken {
            file: file.into(),
            why,
        };
        let kept: Kept =
            serde_json::from_slice(bytes).map_err(|error| broken(error.to_string()))?;
        if now
            < kept
                .made_at
                .saturating_sub(HEAD_START)
                .unwrap_or(kept.made_at)
        {
            return Err(LanError::Clock {
                now,
                made: kept.made_at,
            });
        }
        let part = |text: &str, tag: &str| match pem::parse(text) {
            Ok(block) if block.tag() == tag => Ok(block.into_contents()),
            Ok(block) => Err(broken(format!("it holds a {} for a {tag}", block.tag()))),
            Err(error) => Err(broken(format!("its {tag} is not PEM ({error})"))),
        };
        let key = PrivatePkcs8KeyDer::from(part(&kept.key, "PRIVATE KEY")?);
        let key = KeyPair::from_pkcs8_der_and_sign_algo(&key, &PKCS_ECDSA_P256_SHA256)
            .map_err(|error| broken(format!("its key cannot be used ({error})")))?;
        let names = kept
            .names
            .iter()
            .map(|name| {
                name.parse()
                    .map_err(|why| broken(format!("{name:?}: {why}")))
            })
            .collect::<Result<_, _>>()?;
        let name = name_of(&key);
        Ok(Self {
            certificate: part(&kept.certificate, "CERTIFICATE")?.into(),
            issuer: Issuer::new(parameters(&name), key),
            name,
            made_at: kept.made_at,
            ends_at: kept.ends_at,
            names,
            folder: folder.into(),
        })
    }

    fn make(folder: &Path, names: &[Name], now: Timestamp) -> Result<Self, LanError> {
        let key = KeyPair::generate_for(&PKCS_ECDSA_P256_SHA256).map_err(LanError::make)?;
        let name = name_of(&key);
        let ends_at = now.saturating_add(LIFE).unwrap_or(Timestamp::MAX);
        let mut parameters = parameters(&name);
        parameters.not_before = moment(now.saturating_sub(HEAD_START).unwrap_or(now))?;
        parameters.not_after = moment(ends_at)?;
        parameters.name_constraints = Some(NameConstraints {
            permitted_subtrees: permitted(names),
            excluded_subtrees: Vec::new(),
        });
        let certificate = parameters.self_signed(&key).map_err(LanError::make)?;
        let certificate: CertificateDer<'static> = certificate.der().clone();
        let kept = Kept {
            made_at: now,
            ends_at,
            names: names.iter().map(Name::to_string).collect(),
            certificate: pem::encode(&pem::Pem::new("CERTIFICATE", certificate.to_vec())),
            key: pem::encode(&pem::Pem::new("PRIVATE KEY", key.serialize_der())),
        };
        keep(folder, &kept)?;
        Ok(Self {
            issuer: Issuer::new(parameters, key),
            certificate,
            name,
            made_at: now,
            ends_at,
            names: names.to_vec(),
            folder: folder.into(),
        })
    }

    /// Whether the certificate lets it speak for a name.
    pub fn may_speak_for(&self, name: &Name) -> bool {
        match name {
            Name::Ip(ip) if is_private(*ip) => true,
            Name::Ip(_) => self.names.contains(name),
            Name::Host(host) => ["localhost", "local"]
                .into_iter()
                .chain(self.names.iter().filter_map(|name| match name {
                    Name::Host(host) => Some(host.as_str()),
                    Name::Ip(_) => None,
                }))
                .any(|root| {
                    host.strip_suffix(root)
                        .is_some_and(|rest| rest.is_empty() || rest.ends_with('.'))
                }),
        }
    }

    /// What signs.
    pub(super) fn issuer(&self) -> &Issuer<'static, KeyPair> {
        &self.issuer
    }

    /// The certificate, as phones are given it.
    pub fn der(&self) -> &CertificateDer<'static> {
        &self.certificate
    }

    /// The certificate as text.
    pub fn pem(&self) -> String {
        pem::encode(&pem::Pem::new("CERTIFICATE", self.certificate.to_vec()))
    }

    /// What phones list it as; two authorities never have the same.
    pub fn name(&self) -> &str {
        &self.name
    }

    /// SHA-256 of the certificate.
    pub fn digest(&self) -> [u8; 32] {
        Sha256::digest(&self.certificate).into()
    }

    /// The digest as phones show it: pairs of capitals with colons.
    pub fn fingerprint(&self) -> String {
        let pairs: Vec<String> = self.digest().iter().map(|b| format!("{b:02X}")).collect();
        pairs.join(":")
    }

    /// When it starts counting.
    pub fn begins_at(&self) -> Timestamp {
        self.made_at
            .saturating_sub(HEAD_START)
            .unwrap_or(self.made_at)
    }

    /// When it stops counting.
    pub fn ends_at(&self) -> Timestamp {
        self.ends_at
    }

    /// Where it is kept.
    pub fn folder(&self) -> &Path {
        &self.folder
    }
}

/// The part of an authority's name that its key decides, so that two of them are told apart in a list.
fn name_of(key: &KeyPair) -> String {
    let digest = Sha256::digest(key.der_bytes());
    let short: String = digest.iter().take(3).map(|b| format!("{b:02X}")).collect();
    format!("Gagwright set network {short}")
}

/// What an authority's certificate says, but for its times and limits.
fn parameters(name: &str) -> CertificateParams {
    let mut parameters = CertificateParams::default();
    parameters.distinguished_name = DistinguishedName::new();
    parameters.distinguished_name.push(DnType::CommonName, name);
    parameters.is_ca = IsCa::Ca(BasicConstraints::Constrained(0));
    parameters.key_usages = vec![KeyUsagePurpose::KeyCertSign, KeyUsagePurpose::CrlSign];
    parameters
}

/// Name constraints (RFC 5280 section 4.2.1.10). As some names and some addresses are permitted, every
/// other name and address is refused by whoever checks a certificate.
fn permitted(names: &[Name]) -> Vec<GeneralSubtree> {
    let host = |host: &str| GeneralSubtree::DnsName(host.to_owned());
    let range = |ip, prefix| GeneralSubtree::IpAddress(CidrSubnet::from_addr_prefix(ip, prefix));
    PRIVATE_RANGES
        .iter()
        .map(|(ip, prefix)| range(*ip, *prefix))
        .chain([host("localhost"), host("local")])
        .chain(names.iter().map(|name| match name {
            Name::Host(name) => host(name),
            Name::Ip(ip) => range(*ip, if ip.is_ipv4() { 32 } else { 128 }),
        }))
        .collect()
}

/// Puts the authority in its folder, whole or not at all.
fn keep(folder: &Path, kept: &Kept) -> Result<(), LanError> {
    let text = serde_json::to_vec_pretty(kept).map_err(LanError::make)?;
    fs::create_dir_all(folder).map_err(|error| LanError::file(folder, "make", &error))?;
    let fresh = folder.join("authority.json.new");
    let file = folder.join("authority.json");
    // What a start that was cut off may have left.
    match fs::remove_file(&fresh) {
        Err(error) if error.kind() != io::ErrorKind::NotFound => {
            return Err(LanError::file(&fresh, "replace", &error));
        }
        _ => {}
    }
    private_file::write_new(&fresh, &text)
        .and_then(|()| fs::rename(&fresh, &file))
        .map_err(|error| LanError::file(&file, "write", &error))
}

/// A time as certificates are made with.
pub(super) fn moment(time: Timestamp) -> Result<time::OffsetDateTime, LanError> {
    time::OffsetDateTime::from_unix_timestamp(time.as_second()).map_err(LanError::make)
}
