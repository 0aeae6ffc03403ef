//! Cosignatures against the published example, another program's signature, and tampering.

use super::*;
use crate::{LogKey, tree::bytes_from_hex};

/// RFC 8032, section 7.1, test 1 for the log and test 2 for the witness: the secret keys.
const LOG: &str = "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60";
const WITNESS: &str = "4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb";
const ORIGIN: &str = "salt-meridian.example/trail";
const NAME: &str = "witness.example.com/w1";

/// The witness's key and its line for [`note`], made with Python's `hashlib`, `struct` and `cryptography` from the
/// wording of C2SP tlog-cosignature; the time is the one in its example.
const KEY: &str = "witness.example.com/w1+e8498172+BD1AF8PoQ4lakrcKp00bfrycmCzPLsSWjMDNVfEq9GYM";
const LINE: &str = "\u{2014} witness.example.com/w1 6EmBcgAAAABkGFDLxGqcuIbsBboOnbUPC+e9ELqW66VS8z5lVr4FECYr5jK36Sw3HyLu8LUvuVihw4rdiw7+WB2iVOqolfj3mlcTCw==";
const TIME: u64 = 1_679_315_147;

fn log() -> LogKey {
    LogKey::from_seed(bytes_from_hex(LOG).unwrap())
}

fn note() -> String {
    let root = "5dc9da79a70659a9ad559cb701ded9a2ab9d823aad2f4960cfe370eff4604328";
    log()
        .sign_checkpoint(ORIGIN, 8, &root.parse().unwrap())
        .unwrap()
}

fn witness() -> Witness {
    Witness::from_seed(NAME, bytes_from_hex(WITNESS).unwrap()).unwrap()
}

#[test]
fn our_key_and_line_are_byte_for_byte_another_programs() {
    assert_eq!(witness().key().to_string(), KEY);
    assert_eq!(KEY.parse::<WitnessKey>().unwrap(), witness().key());
    let log = log().verifying_key(ORIGIN).unwrap();
    assert_eq!(witness().cosign(&note(), &log, TIME).unwrap(), LINE);
    let note = format!("{}{LINE}\n", note());
    let cosigned = KEY.parse::<WitnessKey>().unwrap().verify(&note).unwrap();
    assert_eq!((cosigned.checkpoint.size, cosigned.seconds), (8, TIME));
    assert_eq!(log.verify(&note).unwrap(), cosigned.checkpoint);
}

#[test]
fn the_example_of_c2sp_tlog_cosignature_is_read() {
    // C2SP tlog-cosignature v1.0.0: the first example, and the time in its signed message. It gives no keys.
    let example = "example.com/behind-the-sofa\n20852163\nCsUYapGGPo4dkMgIAUqom/Xajj7h2fB2MPA3j2jxq2I=\n\n\u{2014} example.com/behind-the-sofa Az3grlgtzPICa5OS8npVmf1Myq/5IZniMp+ZJurmRDeOoRDe4URYN7u5/Zhcyv2q1gGzGku9nTo+zyWE+xeMcTOAYQ8=\n\u{2014} witness.example.com/w1 jWbPPwAAAABkGFDLEZMHwSRaJNiIDoe9DYn/zXcrtPHeolMI5OWXEhZCB9dlrDJsX3b2oyin1nPZqhf5nNo0xUe+mbIUBkBIfZ+qnA==\n";
    let found = claimed(example).unwrap();
    assert_eq!(found.len(), 1, "the log's own line is no cosignature");
    assert_eq!((found[0].name.as_str(), found[0].seconds), (NAME, TIME));
    assert!(example.ends_with(&format!("{}\n", found[0].line)));
    // Another key of the same name did not sign it.
    assert_eq!(
        witness().key().verify(example),
        Err(CheckpointError::NotSigned(NAME.to_owned()))
    );
    assert_eq!(
        String::from_utf8(message(
            TIME,
            "example.com/behind-the-sofa\n20852163\nCsUYapGGPo4dkMgIAUqom/Xajj7h2fB2MPA3j2jxq2I=\n"
        ))
        .unwrap(),
        "cosignature/v1\ntime 1679315147\nexample.com/behind-the-sofa\n20852163\nCsUYapGGPo4dkMgIAUqom/Xajj7h2fB2MPA3j2jxq2I=\n"
    );
}

#[test]
fn no_bit_of_a_cosignature_or_of_the_text_under_it_can_be_flipped() {
    let key = witness().key();
    let blob = STANDARD.decode(LINE.rsplit_once(' ').unwrap().1).unwrap();
    let name = NAME.to_owned();
    for bit in 0..blob.len() * 8 {
        let mut other = blob.clone();
        other[bit / 8] ^= 1 << (bit % 8);
        let note = format!("{}\u{2014} {NAME} {}\n", note(), STANDARD.encode(other));
        let expected = match bit / 8 {
            // Another key id is another key's line.
            0..4 => CheckpointError::NotSigned(name.clone()),
            _ => CheckpointError::BadSignature(name.clone()),
        };
        assert_eq!(key.verify(&note), Err(expected), "bit {bit}");
    }
    let other = note().replace("\n8\n", "\n9\n");
    let error = key.verify(&format!("{other}{LINE}\n")).unwrap_err();
    assert_eq!(error, CheckpointError::BadSignature(name));
    // One bad line beside a good one is not overlooked.
    let mut bad = blob.clone();
    bad[75] ^= 1;
    let bad = STANDARD.encode(bad);
    let both = format!("{}{LINE}\n\u{2014} {NAME} {bad}\n", note());
    assert!(matches!(
        key.verify(&both),
        Err(CheckpointError::BadSignature(_))
    ));
}

#[test]
fn the_latest_of_several_counts() {
    let log = log().verifying_key(ORIGIN).unwrap();
    let later = witness().cosign(&note(), &log, TIME + 60).unwrap();
    let note = format!("{}{later}\n{LINE}\n", note());
    assert_eq!(witness().key().verify(&note).unwrap().seconds, TIME + 60);
    assert_eq!(claimed(&note).unwrap().len(), 2);
}

#[test]
fn what_the_log_did_not_sign_is_not_cosigned() {
    let other = LogKey::from_seed([7; 32]).verifying_key(ORIGIN).unwrap();
    assert!(witness().cosign(&note(), &other, TIME).is_err());
    let log = log().verifying_key(ORIGIN).unwrap();
    assert!(witness().cosign(&note(), &log, 1 << 63).is_err());
    assert!(Witness::from_seed("a witness", [7; 32]).is_err());
    assert!(!format!("{:?}", witness()).contains("4ccd"));
}

#[test]
fn a_logs_key_is_no_witnesss_and_the_other_way_round() {
    let log = log().verifying_key(ORIGIN).unwrap().to_string();
    let says = |error: CheckpointError| error.to_string();
    assert!(says(log.parse::<WitnessKey>().unwrap_err()).contains("not a witness's"));
    assert!(says(KEY.parse::<VerifyingKey>().unwrap_err()).contains("not Ed25519"));
    let renamed = KEY.replace("/w1", "/w2").parse::<WitnessKey>();
    assert!(says(renamed.unwrap_err()).contains("does not belong"));
}
