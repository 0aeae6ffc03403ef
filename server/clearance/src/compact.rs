//! Compact JWS (RFC 7515) with ES256 (RFC 7518, section 3.4), and nothing wider: one algorithm, one
//! header, one spelling. What a device signs goes through here; what it means is for [`crate::jws`] and
//! [`crate::handed`].

use base64::{Engine, engine::general_purpose::URL_SAFE_NO_PAD};
use p256::ecdsa::{
    Signature, SigningKey, VerifyingKey,
    signature::{Signer, Verifier},
};
use serde::{Deserialize, Serialize, de::DeserializeOwned};
use serde_json::Value;

use crate::{
    canonical::{CanonicalError, canonical_bytes},
    ids::DeviceId,
    signoff::PublicKey,
};

/// The protected header, exactly these three.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Header {
    alg: String,
    kid: DeviceId,
    typ: String,
}

/// Signs a payload's canonical bytes with a device's key.
pub(crate) fn seal<T: Serialize>(
    typ: &str,
    device: DeviceId,
    payload: &T,
    key: &SigningKey,
) -> Result<String, CanonicalError> {
    let header = Header {
        alg: "ES256".to_owned(),
        kid: device,
        typ: typ.to_owned(),
    };
    let text = format!(
        "{}.{}",
        URL_SAFE_NO_PAD.encode(canonical_bytes(&header)?),
        URL_SAFE_NO_PAD.encode(canonical_bytes(payload)?)
    );
    let signature: Signature = key.sign(text.as_bytes());
    Ok(format!(
        "{text}.{}",
        URL_SAFE_NO_PAD.encode(signature.to_bytes())
    ))
}

/// A JWS taken apart, its signature not yet checked.
pub(crate) struct Parts<'a> {
    /// Header and payload as they were signed.
    signed: &'a str,
    /// The header's kid.
    pub device: DeviceId,
    payload: Vec<u8>,
    signature: Signature,
}

/// Takes a JWS apart. The error ends the sentence "it is not a JWS of ours: ...".
pub(crate) fn open<'a>(jws: &'a str, typ: &str, longest: usize) -> Result<Parts<'a>, String> {
    if jws.len() > longest {
        return Err(format!("it is longer than {} KiB", longest / 1024));
    }
    let parts: Vec<&str> = jws.split('.').collect();
    let [header, payload, signature] = parts.as_slice() else {
        return Err("it must have three parts joined by dots".to_owned());
    };
    let decode = |text: &str, what: &str| {
        URL_SAFE_NO_PAD
            .decode(text)
            .map_err(|_| format!("its {what} is not base64url without padding"))
    };
    let header = decode(header, "header")?;
    let header: Header = serde_json::from_slice(&header).map_err(|error| {
        format!("its header must hold exactly alg, typ and kid, the device's id: {error}")
    })?;
    if header.alg != "ES256" {
        return Err(format!("its alg is \"{}\"", printable(&header.alg)));
    }
    if header.typ != typ {
        return Err(format!("its typ must be \"{typ}\""));
    }
    let payload = decode(payload, "payload")?;
    let signature = decode(signature, "signature")?;
    // RFC 7518, section 3.4: r and s, 32 bytes each; never the ASN.1 form.
    let signature = Signature::from_slice(&signature)
        .map_err(|_| "its signature must be the 64 bytes r and s".to_owned())?;
    let signed = jws.rsplit_once('.').map_or("", |(signed, _)| signed);
    Ok(Parts {
        signed,
        device: header.kid,
        payload,
        signature,
    })
}

impl Parts<'_> {
    /// Whether the device with this key signed it.
    pub fn signed_with(&self, key: &VerifyingKey) -> bool {
        key.verify(self.signed.as_bytes(), &self.signature).is_ok()
    }

    /// The payload, which must be in canonical form as JSON, not as `T`: a device may spell a time with
    /// more digits than we would, and that is still one spelling of that JSON.
    pub fn payload<T: DeserializeOwned>(&self) -> Result<T, String> {
        let value: Value =
            serde_json::from_slice(&self.payload).map_err(|error| error.to_string())?;
        let canonical = canonical_bytes(&value).map_err(|error| error.to_string())?;
        if canonical != self.payload {
            return Err("the payload is not in RFC 8785 canonical form".to_owned());
        }
        serde_json::from_value(value).map_err(|error| error.to_string())
    }
}

/// Reads a P-256 JWK. The error names the member that is wrong.
pub(crate) fn verifying_key(key: &PublicKey) -> Result<VerifyingKey, &'static str> {
    if key.kty != "EC" || key.crv != "P-256" {
        return Err("kty must be \"EC\" and crv \"P-256\"");
    }
    let coordinate = |text: &str| {
        URL_SAFE_NO_PAD
            .decode(text)
            .ok()
            .and_then(|bytes| <[u8; 32]>::try_from(bytes).ok())
    };
    let (Some(x), Some(y)) = (coordinate(&key.x), coordinate(&key.y)) else {
        return Err("x and y must each be 32 bytes in base64url without padding");
    };
    // SEC 1, section 2.3.4: 04 marks an uncompressed point.
    let mut point = [4u8; 65];
    point[1..33].copy_from_slice(&x);
    point[33..].copy_from_slice(&y);
    VerifyingKey::from_sec1_bytes(&point).map_err(|_| "x and y are not a point of the curve")
}

impl From<&VerifyingKey> for PublicKey {
    fn from(key: &VerifyingKey) -> PublicKey {
        let point = key.to_sec1_point(false);
        let coordinate = |bytes: Option<&[u8]>| URL_SAFE_NO_PAD.encode(bytes.unwrap_or_default());
        PublicKey {
            kty: "EC".to_owned(),
            crv: "P-256".to_owned(),
            x: coordinate(point.x().map(|x| x.as_slice())),
            y: coordinate(point.y().map(|y| y.as_slice())),
        }
    }
}

/// At most a few plain characters of something hostile, for an error message.
fn printable(text: &str) -> String {
    text.chars()
        .filter(char::is_ascii_graphic)
        .take(16)
        .collect()
}
