//! A certificate brought from elsewhere: two PEM files, read at start and again when they change on the
//! disk, so that whoever renews them need not stop the server.

use std::{
    fs,
    path::{Path, PathBuf},
    sync::{Arc, Mutex, PoisonError},
};

use rustls::{
    InconsistentKeys,
    crypto::aws_lc_rs::default_provider,
    pki_types::{CertificateDer, PrivateKeyDer, pem::PemObject as _},
    sign::CertifiedKey,
};

use super::LanError;

/// The two files, and what they held when they were last read.
#[derive(Debug)]
pub struct Own {
    certificate: PathBuf,
    key: PathBuf,
    seen: Mutex<(Vec<u8>, Vec<u8>)>,
}

impl Own {
    /// Reads both files.
    ///
    /// # Errors
    /// When one is missing or is not what it should be, or they do not belong together.
    pub fn open(certificate: &Path, key: &Path) -> Result<(Self, Arc<CertifiedKey>), LanError> {
        let own = Self {
            certificate: certificate.into(),
            key: key.into(),
            seen: Mutex::default(),
        };
        let bytes = own.read()?;
        let certified = own.certified(&bytes)?;
        *own.seen.lock().unwrap_or_else(PoisonError::into_inner) = bytes;
        Ok((own, certified))
    }

    /// What the files hold now, when that is something new.
    ///
    /// # Errors
    /// As [`Own::open`]; each change is looked at once, so that an error is told once.
    pub fn look_again(&self) -> Result<Option<Arc<CertifiedKey>>, LanError> {
        let bytes = self.read()?;
        let mut seen = self.seen.lock().unwrap_or_else(PoisonError::into_inner);
        if *seen == bytes {
            return Ok(None);
        }
        seen.clone_from(&bytes);
        self.certified(&bytes).map(Some)
    }

    fn read(&self) -> Result<(Vec<u8>, Vec<u8>), LanError> {
        let read = |option: &'static str, file: &Path| {
            fs::read(file).map_err(|error| LanError::Given {
                option,
                file: file.into(),
                why: format!("it cannot be read ({error})"),
            })
        };
        Ok((
            read("--tls-cert", &self.certificate)?,
            read("--tls-key", &self.key)?,
        ))
    }

    fn certified(
        &self,
        (certificate, key): &(Vec<u8>, Vec<u8>),
    ) -> Result<Arc<CertifiedKey>, LanError> {
        let given = |option: &'static str, file: &Path, why: String| LanError::Given {
            option,
            file: file.into(),
            why,
        };
        let chain = CertificateDer::pem_slice_iter(certificate)
            .collect::<Result<Vec<_>, _>>()
            .map_err(|error| given("--tls-cert", &self.certificate, error.to_string()))?;
        if chain.is_empty() {
            let why = "there is no BEGIN CERTIFICATE in it".to_owned();
            return Err(given("--tls-cert", &self.certificate, why));
        }
        let key = PrivateKeyDer::from_pem_slice(key).map_err(|_| {
            let why =
                "there is no key in it that can be read; a key under a password cannot".to_owned();
            given("--tls-key", &self.key, why)
        })?;
        CertifiedKey::from_der(chain, key, &default_provider())
            .map(Arc::new)
            .map_err(|error| match error {
                rustls::Error::InconsistentKeys(InconsistentKeys::KeyMismatch) => {
                    let why = "it is not the key of the first certificate in --tls-cert".to_owned();
                    given("--tls-key", &self.key, why)
                }
                other => given("--tls-cert", &self.certificate, other.to_string()),
            })
    }
}
