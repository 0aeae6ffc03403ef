//! A certificate brought from elsewhere: served, read again when it changes, and named when it will not do.

use std::{fs, path::Path};

use gagwright::{http::ServeOptions, lan::own::Own};
use tempfile::TempDir;

use crate::lan_support::{LanServer, get, openssl_says, options};

/// A certificate for `localhost` that signs itself, as PEM files in the folder.
fn brought(folder: &Path, name: &str) {
    openssl_says(
        folder,
        &[
            "req",
            "-x509",
            "-newkey",
            "ec",
            "-pkeyopt",
            "ec_paramgen_curve:P-256",
            "-nodes",
            "-days",
            "2",
            "-subj",
            "/CN=localhost",
            "-addext",
            "subjectAltName=DNS:localhost",
            "-addext",
            "basicConstraints=critical,CA:FALSE",
            "-keyout",
            &format!("{name}.key"),
            "-out",
            &format!("{name}.pem"),
        ],
    );
}

fn with_files(folder: &TempDir, certificate: &str, key: &str) -> ServeOptions {
    ServeOptions {
        tls_cert: Some(folder.path().join(certificate)),
        tls_key: Some(folder.path().join(key)),
        ..options(folder.path())
    }
}

#[test]
fn a_certificate_that_was_brought_is_served() {
    let folder = tempfile::tempdir().unwrap();
    brought(folder.path(), "own");
    let options = with_files(&folder, "own.pem", "own.key");
    let server = LanServer::start(folder, options).unwrap();
    let trusted = server.folder.path().join("own.pem");
    let answer = server
        .call(&trusted, "localhost", &get("/api/v1/status"))
        .unwrap();
    assert!(answer.starts_with("HTTP/1.1 200"), "{answer}");
    assert!(server.page.is_none() && !server.folder.path().join("gagwright-lan").exists());
}

#[test]
fn a_certificate_that_was_brought_is_read_again_when_it_changes() {
    let folder = tempfile::tempdir().unwrap();
    brought(folder.path(), "own");
    let file = |name: &str| folder.path().join(name);
    let (own, first) = Own::open(&file("own.pem"), &file("own.key")).unwrap();
    assert!(own.look_again().unwrap().is_none());
    brought(folder.path(), "own");
    let second = own.look_again().unwrap().expect("they changed");
    assert_ne!(
        first.end_entity_cert().unwrap(),
        second.end_entity_cert().unwrap()
    );
    fs::write(file("own.pem"), "half a fi").unwrap();
    assert!(own.look_again().is_err());
    assert!(own.look_again().unwrap().is_none(), "an error is told once");
}

#[test]
fn with_a_certificate_that_was_brought_the_plain_port_leads_to_the_app() {
    let folder = tempfile::tempdir().unwrap();
    brought(folder.path(), "own");
    let options = ServeOptions {
        lan: true,
        ..with_files(&folder, "own.pem", "own.key")
    };
    let server = LanServer::start(folder, options).unwrap();
    let (status, head, _) = server.plain("GET", "/anything");
    assert_eq!(status, 303);
    assert!(
        head.contains(&format!("location: https://127.0.0.1:{}/\r\n", server.port)),
        "{head}"
    );
}

#[test]
fn files_that_will_not_do_are_named() {
    let folder = tempfile::tempdir().unwrap();
    brought(folder.path(), "own");
    brought(folder.path(), "other");
    fs::write(folder.path().join("empty.pem"), "nothing").unwrap();
    let told = |certificate: &str, key: &str| {
        let place = tempfile::tempdir().unwrap();
        let options = with_files(&folder, certificate, key);
        LanServer::start(place, options)
            .err()
            .expect("it does not start")
    };
    for (certificate, key, option, file) in [
        ("missing.pem", "own.key", "--tls-cert", "missing.pem"),
        ("own.pem", "missing.key", "--tls-key", "missing.key"),
        ("empty.pem", "own.key", "--tls-cert", "empty.pem"),
        ("own.pem", "empty.pem", "--tls-key", "empty.pem"),
        ("own.pem", "other.key", "--tls-key", "other.key"),
    ] {
        let told = told(certificate, key);
        assert!(
            told.contains(option) && told.contains(file) && told.contains("PEM"),
            "{told}"
        );
    }
}
