//! The local authority, judged by OpenSSL (verify, x509, req), which knows nothing of this program: what
//! it signs is believed for this machine's names and for nothing else, and its file is guarded.

use std::{fs, path::Path};

use gagwright::lan::{Local, authority::Origin};
use serde_json::Value;

use crate::lan_support::{at, local, machine, openssl, openssl_says, write_leaf};

const NOW: &str = "2026-03-02T06:00:00Z";

/// Whether OpenSSL believes `leaf.pem` for a name, at the tests' time.
fn believed(folder: &Path, flag: &str, name: &str) -> bool {
    let seconds = at(NOW).as_second().to_string();
    let verify = [
        "verify",
        "-x509_strict",
        "-purpose",
        "sslserver",
        "-attime",
        &seconds,
        "-CAfile",
        "authority.crt",
        flag,
        name,
        "leaf.pem",
    ];
    openssl(folder, &verify).status.success()
}

#[test]
fn a_certificate_is_believed_for_this_machines_names_and_no_others() {
    let folder = tempfile::tempdir().unwrap();
    let folder = folder.path();
    let made = local(folder, &["stunts.example.test", "203.0.113.9"], at(NOW)).unwrap();
    write_leaf(&made, &folder.join("leaf.pem"));
    for name in ["slate.local", "localhost", "stunts.example.test"] {
        assert!(believed(folder, "-verify_hostname", name), "{name}");
    }
    for ip in ["10.0.4.2", "127.0.0.1", "::1", "203.0.113.9"] {
        assert!(believed(folder, "-verify_ip", ip), "{ip}");
    }
    for name in ["slate", "other.local", "example.test", "bank.example"] {
        assert!(!believed(folder, "-verify_hostname", name), "{name}");
    }
    assert!(!believed(folder, "-verify_ip", "10.0.4.3"));
}

#[test]
fn an_address_that_is_not_private_is_named_only_when_asked_for() {
    let folder = tempfile::tempdir().unwrap();
    let made = local(folder.path(), &[], at(NOW)).unwrap();
    write_leaf(&made, &folder.path().join("leaf.pem"));
    assert!(believed(folder.path(), "-verify_ip", "10.0.4.2"));
    assert!(!believed(folder.path(), "-verify_ip", "203.0.113.9"));
}

#[test]
fn whoever_steals_the_authority_cannot_speak_for_the_internet_with_it() {
    let folder = tempfile::tempdir().unwrap();
    let folder = folder.path();
    local(folder, &["stunts.example.test"], at(NOW)).unwrap();
    let kept: Value =
        serde_json::from_slice(&fs::read(folder.join("authority.json")).unwrap()).unwrap();
    fs::write(folder.join("stolen.key"), kept["key"].as_str().unwrap()).unwrap();
    openssl_says(
        folder,
        &[
            "req",
            "-newkey",
            "ec",
            "-pkeyopt",
            "ec_paramgen_curve:P-256",
            "-nodes",
            "-subj",
            "/CN=any",
            "-keyout",
            "leaf.key",
            "-out",
            "leaf.csr",
        ],
    );
    let forged = |names: &str| {
        fs::write(
            folder.join("names.cnf"),
            format!("subjectAltName={names}\n"),
        )
        .unwrap();
        openssl_says(
            folder,
            &[
                "x509",
                "-req",
                "-in",
                "leaf.csr",
                "-CA",
                "authority.crt",
                "-CAkey",
                "stolen.key",
                "-days",
                "36500",
                "-extfile",
                "names.cnf",
                "-out",
                "forged.pem",
            ],
        );
        // OpenSSL dates what it signs by the real clock, which these tests do not depend on.
        let output = openssl(
            folder,
            &[
                "verify",
                "-no_check_time",
                "-CAfile",
                "authority.crt",
                "forged.pem",
            ],
        );
        (
            output.status.success(),
            String::from_utf8_lossy(&output.stderr).into_owned(),
        )
    };
    // The recipe itself works: within its bounds the authority is believed.
    for names in [
        "IP:192.168.77.5",
        "DNS:other.local",
        "DNS:a.stunts.example.test",
        "IP:fd12::9",
    ] {
        let (fine, told) = forged(names);
        assert!(fine, "{names}: {told}");
    }
    for names in [
        "DNS:bank.example",
        "DNS:example.test",
        "DNS:evil-local",
        "DNS:slate",
        "IP:203.0.113.9",
        "IP:2001:db8::1",
        "DNS:slate.local,DNS:bank.example",
    ] {
        let (fine, told) = forged(names);
        assert!(
            !fine && told.contains("permitted subtree violation"),
            "{names}: {told}"
        );
    }
    // Nor can it make another authority.
    fs::write(
        folder.join("names.cnf"),
        "basicConstraints=critical,CA:TRUE\n",
    )
    .unwrap();
    openssl_says(
        folder,
        &[
            "x509",
            "-req",
            "-in",
            "leaf.csr",
            "-CA",
            "authority.crt",
            "-CAkey",
            "stolen.key",
            "-days",
            "36500",
            "-extfile",
            "names.cnf",
            "-out",
            "under.pem",
        ],
    );
    fs::write(folder.join("names.cnf"), "subjectAltName=DNS:slate.local\n").unwrap();
    openssl_says(
        folder,
        &[
            "x509",
            "-req",
            "-in",
            "leaf.csr",
            "-CA",
            "under.pem",
            "-CAkey",
            "leaf.key",
            "-days",
            "36500",
            "-extfile",
            "names.cnf",
            "-out",
            "below.pem",
        ],
    );
    let below = openssl(
        folder,
        &[
            "verify",
            "-no_check_time",
            "-CAfile",
            "authority.crt",
            "-untrusted",
            "under.pem",
            "below.pem",
        ],
    );
    assert!(!below.status.success(), "a second authority was believed");
}

#[test]
fn times_and_uses_are_what_phones_take() {
    let folder = tempfile::tempdir().unwrap();
    let folder = folder.path();
    let made = local(folder, &[], at(NOW)).unwrap();
    write_leaf(&made, &folder.join("leaf.pem"));
    let authority = openssl_says(folder, &["x509", "-in", "authority.crt", "-noout", "-text"]);
    for part in [
        "ASN1 OID: prime256v1",
        "CA:TRUE, pathlen:0",
        "X509v3 Basic Constraints: critical",
        "X509v3 Name Constraints: critical",
        "X509v3 Key Usage: critical",
        "Certificate Sign, CRL Sign",
        "Not Before: Feb 28 06:00:00 2026 GMT",
        "Not After : Mar  1 06:00:00 2036 GMT",
        "ecdsa-with-SHA256",
    ] {
        assert!(authority.contains(part), "{part} is not in\n{authority}");
    }
    let leaf = openssl_says(folder, &["x509", "-in", "leaf.pem", "-noout", "-text"]);
    for part in [
        "ASN1 OID: prime256v1",
        "TLS Web Server Authentication",
        "CA:FALSE",
        "Digital Signature",
        "Not Before: Feb 28 06:00:00 2026 GMT",
        // Ninety days; no phone takes more than 397.
        "Not After : May 31 06:00:00 2026 GMT",
    ] {
        assert!(leaf.contains(part), "{part} is not in\n{leaf}");
    }
    let print = openssl_says(
        folder,
        &[
            "x509",
            "-in",
            "authority.crt",
            "-noout",
            "-fingerprint",
            "-sha256",
        ],
    );
    assert!(
        print.trim().ends_with(&made.authority.fingerprint()),
        "{print}"
    );
}

#[test]
fn another_address_or_little_time_left_makes_another_certificate_by_the_same_authority() {
    let folder = tempfile::tempdir().unwrap();
    let made = local(folder.path(), &[], at(NOW)).unwrap();
    let shown = || made.certified().end_entity_cert().unwrap().to_vec();
    let print = made.authority.fingerprint();
    let first = shown();
    let same = made
        .look_again(&machine(), at("2026-04-30T06:00:00Z"))
        .unwrap();
    assert!(same.is_none() && shown() == first, "nothing had changed");

    let mut moved = machine();
    moved.addresses = vec!["192.168.9.9".parse().unwrap()];
    assert!(made.look_again(&moved, at(NOW)).unwrap().is_some());
    let second = shown();
    assert_ne!(first, second);
    write_leaf(&made, &folder.path().join("leaf.pem"));
    assert!(believed(folder.path(), "-verify_ip", "192.168.9.9"));
    assert!(!believed(folder.path(), "-verify_ip", "10.0.4.2"));

    // Thirty days before its end.
    assert!(
        made.look_again(&moved, at("2026-05-02T06:00:00Z"))
            .unwrap()
            .is_some()
    );
    assert_ne!(second, shown());
    assert_eq!(print, made.authority.fingerprint());
}

#[test]
fn an_authority_is_kept_and_made_anew_only_when_asked_or_at_its_end() {
    let folder = tempfile::tempdir().unwrap();
    let folder = folder.path();
    let first = local(folder, &[], at(NOW)).unwrap();
    assert_eq!(first.origin, Origin::First);
    let kept = local(folder, &[], at("2031-03-02T06:00:00Z")).unwrap();
    assert_eq!(kept.origin, Origin::Kept);
    assert_eq!(kept.authority.der(), first.authority.der());
    let anew = Local::open(folder, Vec::new(), true, &machine(), at(NOW)).unwrap();
    assert_eq!(anew.origin, Origin::Renewed);
    assert_ne!(anew.authority.der(), first.authority.der());
    assert_ne!(anew.authority.name(), first.authority.name());
    let ended = local(folder, &[], at("2036-02-20T06:00:00Z")).unwrap();
    assert_eq!(ended.origin, Origin::Renewed);
}

#[test]
#[cfg(unix)]
fn the_key_is_its_owners_alone() {
    use std::os::unix::fs::PermissionsExt;
    let folder = tempfile::tempdir().unwrap();
    local(folder.path(), &[], at(NOW)).unwrap();
    let file = folder.path().join("authority.json");
    let mode = fs::metadata(&file).unwrap().permissions().mode();
    assert_eq!(mode & 0o777, 0o600);
    fs::set_permissions(&file, fs::Permissions::from_mode(0o644)).unwrap();
    let told = local(folder.path(), &[], at(NOW)).unwrap_err();
    assert!(
        told.contains("chmod 600") && told.contains("authority.json"),
        "{told}"
    );
}

#[test]
fn what_stands_in_the_way_is_named_with_a_way_out() {
    let folder = tempfile::tempdir().unwrap();
    let folder = folder.path();
    local(folder, &[], at(NOW)).unwrap();
    let later = local(folder, &["stunts.example.test"], at(NOW)).unwrap_err();
    assert!(
        later.contains("stunts.example.test") && later.contains("--lan-new-authority"),
        "{later}"
    );
    let behind = local(folder, &[], at("2001-01-01T00:00:00Z")).unwrap_err();
    assert!(
        behind.contains("clock") && behind.contains("2026-03-02"),
        "{behind}"
    );

    // A key that is not the certificate's.
    let other = tempfile::tempdir().unwrap();
    local(other.path(), &[], at(NOW)).unwrap();
    let read = |folder: &Path| -> Value {
        serde_json::from_slice(&fs::read(folder.join("authority.json")).unwrap()).unwrap()
    };
    let mut mixed = read(folder);
    mixed["key"] = read(other.path())["key"].clone();
    let file = folder.join("authority.json");
    fs::write(&file, mixed.to_string()).unwrap();
    let unsound = local(folder, &[], at(NOW)).unwrap_err();
    assert!(unsound.contains("does not hold together"), "{unsound}");

    fs::write(&file, b"{\"made_at\": 1").unwrap();
    let damaged = local(folder, &[], at(NOW)).unwrap_err();
    assert!(
        damaged.contains("damaged") && damaged.contains("authority.json"),
        "{damaged}"
    );

    let not_a_folder = local(&file, &[], at(NOW)).unwrap_err();
    assert!(not_a_folder.contains("--lan-folder"), "{not_a_folder}");
}
