//! Sign-offs as bytes: published vectors, one strict spelling, and tampering.

use base64::{Engine, engine::general_purpose::URL_SAFE_NO_PAD};
use p256::ecdsa::{
    Signature,
    signature::{Signer, Verifier},
};
use proptest::prelude::*;
use serde_json::{Value, json};

use super::*;
use crate::{
    canonical::canonical_bytes,
    policy::Role,
    scene::{Scene, key_of},
};

#[path = "jws_tests/altered.rs"]
mod altered;

/// RFC 6979, appendix A.2.5: the P-256 private key and its public point.
const PRIVATE: &str = "c9afa9d845ba75166b5c215767b1d6934e50c3db36e89b127b8a622b120f6721";

fn bytes(hex: &str) -> Vec<u8> {
    (0..hex.len())
        .step_by(2)
        .map(|at| u8::from_str_radix(&hex[at..at + 2], 16).unwrap())
        .collect()
}

#[test]
fn rfc_6979_appendix_a_2_5_sample_with_sha_256() {
    let key = SigningKey::from_slice(&bytes(PRIVATE)).unwrap();
    let signature: Signature = key.sign(b"sample");
    let expected = "efd48b2aacb6a8fd1140dd9cd45e81d69d2c877b56aaf991c34d0ea84eaf3716\
                    f7cb1c942d657c41d436c7a1b6e29f65f3e900dbb9aff4064dc4ab2f843acda8";
    assert_eq!(
        signature.to_bytes().to_vec(),
        bytes(&expected.replace(' ', ""))
    );
}

#[test]
fn rfc_7515_appendix_a_3_key_verifies_its_example() {
    // RFC 7515, appendix A.3.1: the JWK, the signing input and the signature, from memory; a wrong
    // letter anywhere would make the check fail.
    let key = PublicKey {
        kty: "EC".to_owned(),
        crv: "P-256".to_owned(),
        x: "f83OJ3D2xF1Bg8vub9tLe1gHMzV76e8Tus9uPHvRVEU".to_owned(),
        y: "x_FEzRu9m36HLN_tue659LNpXW6pCyStikYjKIWI5a0".to_owned(),
    };
    let input = "eyJhbGciOiJFUzI1NiJ9.eyJpc3MiOiJqb2UiLA0KICJleHAiOjEzMDA4MTkzODAsDQogImh0dHA6Ly9leGFtcGxlLmNvbS9pc19yb290Ijp0cnVlfQ";
    let signature = URL_SAFE_NO_PAD
        .decode("DtEhU3ljbEg8L38VWAfUAqOyKAM6-Xx-F4GawxaepmXFCgfTjDxw5djxLa8ISlSApmWQxfKTUJqPP3-Kg6NU1Q")
        .unwrap();
    let signature = Signature::from_slice(&signature).unwrap();
    check_key(&key)
        .unwrap()
        .verify(input.as_bytes(), &signature)
        .unwrap();
    // It is a good JWS and no sign-off of ours: the header has no typ and no kid.
    let whole = format!("{input}.{}", URL_SAFE_NO_PAD.encode(signature.to_bytes()));
    assert!(matches!(
        verify(&whole, &key),
        Err(SignOffError::Malformed(_))
    ));
}

#[test]
fn keys_that_are_not_points_of_the_curve_are_refused() {
    let good = PublicKey::from(key_of(crate::scene::person_of(Role::Medic)).verifying_key());
    check_key(&good).unwrap();
    let change = |edit: &dyn Fn(&mut PublicKey)| {
        let mut key = good.clone();
        edit(&mut key);
        check_key(&key).unwrap_err().to_string()
    };
    assert!(change(&|key| key.kty = "RSA".to_owned()).contains("kty"));
    assert!(change(&|key| key.crv = "P-384".to_owned()).contains("kty"));
    assert!(change(&|key| key.x = key.y.clone()).contains("not a point"));
    assert!(change(&|key| key.y.push('=')).contains("32 bytes"));
    assert!(change(&|key| key.x.truncate(20)).contains("32 bytes"));
    assert!(change(&|key| key.x.clear()).contains("32 bytes"));
}

fn signed() -> (String, PublicKey, Statement) {
    let mut scene = Scene::new();
    let statement = scene.statement(Role::Medic);
    let key = key_of(statement.signer);
    (
        sign(&statement, &key).unwrap(),
        key.verifying_key().into(),
        statement,
    )
}

/// A JWS with any header and payload, rightly signed with the medic's key.
fn forge(header: &str, payload: &str) -> String {
    let text = format!(
        "{}.{}",
        URL_SAFE_NO_PAD.encode(header),
        URL_SAFE_NO_PAD.encode(payload)
    );
    let key = key_of(crate::scene::person_of(Role::Medic));
    let signature: Signature = key.sign(text.as_bytes());
    format!("{text}.{}", URL_SAFE_NO_PAD.encode(signature.to_bytes()))
}

#[test]
fn what_is_signed_comes_back() {
    let (jws, key, statement) = signed();
    assert_eq!(verify(&jws, &key).unwrap(), statement);
    assert_eq!(read_unverified(&jws).unwrap(), statement);
    let header = URL_SAFE_NO_PAD
        .decode(jws.split('.').next().unwrap())
        .unwrap();
    assert_eq!(
        String::from_utf8(header).unwrap(),
        format!(
            r#"{{"alg":"ES256","kid":"{}","typ":"gagwright-signoff+jws"}}"#,
            statement.device
        )
    );
}

#[test]
fn only_one_header_is_read() {
    let (jws, key, statement) = signed();
    let payload = URL_SAFE_NO_PAD
        .decode(jws.split('.').nth(1).unwrap())
        .unwrap();
    let payload = String::from_utf8(payload).unwrap();
    let kid = statement.device;
    let header = |rest: &str| format!(r#"{{"alg":"ES256","kid":"{kid}","typ":"{TYPE}"{rest}}}"#);
    verify(&forge(&header(""), &payload), &key).unwrap();
    for bad in [
        header(r#","crit":["b64"],"b64":false"#),
        header(r#","jwk":{}"#),
        header(r#","alg":"none""#),
        header("").replace("ES256", "none"),
        header("").replace("ES256", "HS256"),
        header("").replace("ES256", "ES384"),
        header("").replace("gagwright-signoff+jws", "JWT"),
        format!(r#"{{"alg":"ES256","typ":"{TYPE}"}}"#),
        "[]".to_owned(),
        String::new(),
    ] {
        let error = verify(&forge(&bad, &payload), &key).unwrap_err();
        assert!(
            matches!(error, SignOffError::Malformed(_)),
            "{bad}: {error}"
        );
    }
    let other = header("").replace(&kid.to_string(), "00000000-0000-0000-0000-000000000001");
    assert!(matches!(
        verify(&forge(&other, &payload), &key),
        Err(SignOffError::BadStatement(_))
    ));
}

#[test]
fn only_a_canonical_payload_is_read() {
    let (_, key, statement) = signed();
    let header = format!(
        r#"{{"alg":"ES256","kid":"{}","typ":"{TYPE}"}}"#,
        statement.device
    );
    let good = serde_json::to_value(&statement).unwrap();
    let text = |value: &Value| String::from_utf8(canonical_bytes(value).unwrap()).unwrap();
    verify(&forge(&header, &text(&good)), &key).unwrap();

    let mut extra = good.clone();
    extra["also"] = json!(1);
    let mut digits = good.clone();
    digits["revision"] = json!("1");
    for bad in [
        text(&good).replacen(',', ", ", 1),
        serde_json::to_string_pretty(&good).unwrap(),
        text(&good).replacen("{", r#"{"attestation":"medic/1","#, 1),
        text(&extra),
        text(&digits),
        "null".to_owned(),
        String::new(),
    ] {
        let error = verify(&forge(&header, &bad), &key).unwrap_err();
        assert!(
            matches!(error, SignOffError::BadStatement(_)),
            "{bad}: {error}"
        );
    }
}

#[test]
fn a_browsers_spelling_of_the_time_is_read() {
    // JavaScript's toISOString always writes three digits of milliseconds.
    let (_, key, statement) = signed();
    let header = format!(
        r#"{{"alg":"ES256","kid":"{}","typ":"{TYPE}"}}"#,
        statement.device
    );
    for spelled in ["2026-03-02T09:04:00.000Z", "2026-03-02T09:04:00.120Z"] {
        let mut value = serde_json::to_value(&statement).unwrap();
        value["signed_at"] = json!(spelled);
        let payload = String::from_utf8(canonical_bytes(&value).unwrap()).unwrap();
        let read = verify(&forge(&header, &payload), &key).unwrap();
        assert_eq!(read.signed_at, spelled.parse().unwrap());
    }
}

#[test]
fn a_signature_must_be_the_64_bytes_r_and_s() {
    let (jws, key, _) = signed();
    let (text, signature) = jws.rsplit_once('.').unwrap();
    let raw = URL_SAFE_NO_PAD.decode(signature).unwrap();
    for bad in [
        vec![],
        raw[..63].to_vec(),
        [&raw[..], &[0]].concat(),
        vec![0; 64],
    ] {
        let jws = format!("{text}.{}", URL_SAFE_NO_PAD.encode(bad));
        assert!(matches!(
            verify(&jws, &key),
            Err(SignOffError::Malformed(_))
        ));
    }
    for bad in [
        format!("{text}."),
        format!("{text}.{signature}="),
        format!("{jws}.x"),
        text.to_owned(),
    ] {
        assert!(verify(&bad, &key).is_err(), "{bad}");
    }
    assert!(
        verify(&"a".repeat(LONGEST + 1), &key)
            .unwrap_err()
            .to_string()
            .contains("64 KiB")
    );
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(128))]

    #[test]
    fn no_changed_character_verifies(place in any::<prop::sample::Index>(), with in "[A-Za-z0-9_.=-]") {
        let (jws, key, _) = signed();
        let place = place.index(jws.len());
        prop_assume!(jws[place..=place] != with);
        let changed = format!("{}{with}{}", &jws[..place], &jws[place + 1..]);
        prop_assert!(verify(&changed, &key).is_err());
    }

    #[test]
    fn any_text_is_refused_without_panic(text in any::<String>()) {
        let (_, key, _) = signed();
        prop_assert!(verify(&text, &key).is_err());
        prop_assert!(read_unverified(&text).is_err());
    }
}
