//! Checkpoints against published vectors, another program's signature, and tampering.

use proptest::prelude::*;

use super::*;

/// RFC 8032, section 7.1, test 1: the secret key.
const SEED: &str = "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60";
const ORIGIN: &str = "salt-meridian.example/trail";

/// The key and note for RFC 8032's first key, made with Python's `hashlib` and `cryptography` from the
/// wording of C2SP signed-note and tlog-checkpoint.
const KEY: &str =
    "salt-meridian.example/trail+2b379984+AddamAGCsQq31Uv+08lkBzoO4XLz2qYjJa8CGmj3B1Ea";
const NOTE: &str = "salt-meridian.example/trail\n8\nXcnaeacGWamtVZy3Ad7ZoqudgjqtL0lgz+Nw7/RgQyg=\n\n\u{2014} salt-meridian.example/trail KzeZhMQ1hkWjzGwQGC0wTolDc40B0MSEcLnsR1b7cn0bOxcHy+/uudUthFzytSe/lQ/oEf6KtPGqe7kFMYLzXrTQdwg=\n";

fn log_key() -> LogKey {
    LogKey::from_seed(crate::tree::bytes_from_hex(SEED).unwrap())
}

fn root() -> Hash {
    "5dc9da79a70659a9ad559cb701ded9a2ab9d823aad2f4960cfe370eff4604328"
        .parse()
        .unwrap()
}

#[test]
fn rfc_8032_section_7_1_test_1() {
    let key = log_key().0;
    assert_eq!(
        crate::tree::hex(key.verifying_key().as_bytes()),
        "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a"
    );
    assert_eq!(
        crate::tree::hex(&key.sign(b"").to_bytes()),
        "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b"
    );
}

#[test]
fn our_note_and_key_are_byte_for_byte_another_programs() {
    let key = log_key();
    assert_eq!(key.verifying_key(ORIGIN).unwrap().to_string(), KEY);
    assert_eq!(key.sign_checkpoint(ORIGIN, 8, &root()).unwrap(), NOTE);
    let checkpoint = KEY.parse::<VerifyingKey>().unwrap().verify(NOTE).unwrap();
    assert_eq!((checkpoint.size, checkpoint.root), (8, root()));
    assert_eq!(checkpoint.origin, ORIGIN);
}

#[test]
fn the_example_of_c2sp_tlog_checkpoint_is_read() {
    // C2SP tlog-checkpoint, first example, and C2SP tlog-cosignature, which adds a second line.
    let example = "example.com/behind-the-sofa\n20852163\nCsUYapGGPo4dkMgIAUqom/Xajj7h2fB2MPA3j2jxq2I=\n\n\u{2014} example.com/behind-the-sofa Az3grlgtzPICa5OS8npVmf1Myq/5IZniMp+ZJurmRDeOoRDe4URYN7u5/Zhcyv2q1gGzGku9nTo+zyWE+xeMcTOAYQ8=\n";
    let checkpoint = Checkpoint::parse_unverified(example).unwrap();
    assert_eq!(checkpoint.origin, "example.com/behind-the-sofa");
    assert_eq!(checkpoint.size, 20_852_163);
    assert_eq!(
        KEY.parse::<VerifyingKey>().unwrap().verify(example),
        Err(CheckpointError::NotSigned(ORIGIN.to_owned()))
    );
}

#[test]
fn a_witness_may_add_a_signature_and_ours_still_counts() {
    let witnessed = format!(
        "{NOTE}\u{2014} witness.example/w1 jWbPPwAAAABkGFDLEZMHwSRaJNiIDoe9DYn/zXcrtPHeolMI\n"
    );
    KEY.parse::<VerifyingKey>()
        .unwrap()
        .verify(&witnessed)
        .unwrap();
}

#[test]
fn malformed_notes_are_refused_with_a_reason() {
    let key: VerifyingKey = KEY.parse().unwrap();
    for (change, says) in [
        (NOTE.replace("\n8\n", "\n08\n"), "signature"),
        (NOTE.replace("\n8\n", "\n9\n"), "signature"),
        (NOTE.replace('\u{2014}', "-"), "long dash"),
        (NOTE.replace("\n\n", "\n"), "blank line"),
        (NOTE.trim_end().to_owned(), "line end"),
        (NOTE.replace('\n', "\r\n"), "control characters"),
        (String::new(), "blank line"),
        ("x\n\n".to_owned(), "line end"),
    ] {
        let error = key.verify(&change).unwrap_err().to_string();
        assert!(error.contains(says), "{error} / {change}");
    }
}

#[test]
fn a_checkpoint_text_needs_plain_numbers_even_when_rightly_signed() {
    let key = log_key();
    let public = key.verifying_key(ORIGIN).unwrap();
    let sign = |text: &str| {
        let mut blob = public.id().to_vec();
        blob.extend_from_slice(&key.0.sign(text.as_bytes()).to_bytes());
        format!("{text}\n\u{2014} {ORIGIN} {}\n", STANDARD.encode(blob))
    };
    let root = STANDARD.encode(root().0);
    assert!(
        public
            .verify(&sign(&format!("{ORIGIN}\n8\n{root}\n")))
            .is_ok()
    );
    assert!(
        public
            .verify(&sign(&format!("{ORIGIN}\n8\n{root}\nextra\n")))
            .is_ok()
    );
    for (text, says) in [
        (format!("{ORIGIN}\n08\n{root}\n"), "decimal"),
        (format!("{ORIGIN}\n-8\n{root}\n"), "decimal"),
        (format!("{ORIGIN}\n+8\n{root}\n"), "decimal"),
        (format!("{ORIGIN}\n\n{root}\n"), "decimal"),
        (
            format!("{ORIGIN}\n99999999999999999999\n{root}\n"),
            "decimal",
        ),
        (format!("{ORIGIN}\n8\n{}\n", &root[..8]), "32 bytes"),
        (format!("{ORIGIN}\n8\n"), "third line"),
        (format!("other.example\n8\n{root}\n"), "not for"),
    ] {
        let error = public.verify(&sign(&text)).unwrap_err().to_string();
        assert!(error.contains(says), "{error} / {text:?}");
    }
}

#[test]
fn keys_and_origins_are_checked() {
    for bad in ["", "a b", "a+b", "a\nb"] {
        assert!(log_key().verifying_key(bad).is_err(), "{bad:?}");
    }
    for bad in [
        "",
        "name",
        "name+00000000",
        &KEY.replace("+2b379984+", "+2b379985+"),
        &KEY.replace("salt", "sand"),
        &KEY.replace("+Add", "+Bdd"),
        &KEY[..KEY.len() - 4],
    ] {
        assert!(bad.parse::<VerifyingKey>().is_err(), "{bad}");
    }
    assert_eq!(format!("{:?}", log_key()), "LogKey(secret)");
}

proptest! {
    #[test]
    fn no_changed_character_verifies(place in any::<prop::sample::Index>(), with in any::<char>()) {
        let mut characters: Vec<char> = NOTE.chars().collect();
        let place = place.index(characters.len());
        prop_assume!(characters[place] != with);
        characters[place] = with;
        let changed: String = characters.into_iter().collect();
        prop_assert!(KEY.parse::<VerifyingKey>().unwrap().verify(&changed).is_err());
    }

    #[test]
    fn any_text_is_refused_without_panic(text in any::<String>()) {
        prop_assert!(KEY.parse::<VerifyingKey>().unwrap().verify(&text).is_err());
        prop_assert!(text.parse::<VerifyingKey>().is_err());
    }
}
