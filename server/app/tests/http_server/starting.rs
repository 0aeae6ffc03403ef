//! Starting: what stands in the way is named, with what to do.

use gagwright::http::{Running, ServeError, ServeOptions, start};
use tempfile::TempDir;

use crate::support::Server;

fn options(folder: &TempDir) -> ServeOptions {
    ServeOptions {
        database: format!("sqlite:{}", folder.path().join("kept.db").display()),
        listen: "127.0.0.1:0".into(),
        outbox: folder.path().join("outbox"),
        ..ServeOptions::default()
    }
}

/// Starts and stops; what is told in between.
fn try_start<T: Send + 'static>(
    options: ServeOptions,
    look: impl FnOnce(&Running) -> T,
) -> Result<T, ServeError> {
    actix_web::rt::System::new().block_on(async move {
        let running = start(options).await?;
        let seen = look(&running);
        running.stop().await;
        Ok(seen)
    })
}

#[test]
fn a_taken_port_is_named_with_a_way_out() {
    let first = Server::start();
    let folder = tempfile::tempdir().unwrap();
    let listen = first.url.trim_start_matches("http://").to_owned();
    let refused = try_start(
        ServeOptions {
            listen: listen.clone(),
            ..options(&folder)
        },
        |_| (),
    );
    let told = refused.unwrap_err().to_string();
    assert!(
        told.contains(&listen) && told.contains("--listen"),
        "{told}"
    );
}

#[test]
fn options_that_are_not_valid_are_named() {
    let folder = tempfile::tempdir().unwrap();
    let told = |options: ServeOptions| try_start(options, |_| ()).unwrap_err().to_string();
    let listen = told(ServeOptions {
        listen: "nowhere".into(),
        ..options(&folder)
    });
    assert!(
        listen.contains("nowhere") && listen.contains("ADDRESS:PORT"),
        "{listen}"
    );
    let url = told(ServeOptions {
        public_url: Some("stunts.example.test".into()),
        ..options(&folder)
    });
    assert!(
        url.contains("--public-url") && url.contains("https://"),
        "{url}"
    );
    let mail = told(ServeOptions {
        mail_from: "nobody".into(),
        ..options(&folder)
    });
    assert!(mail.contains("--mail-from"), "{mail}");
    let database = told(ServeOptions {
        database: "mysql://x/y".into(),
        ..options(&folder)
    });
    assert!(database.contains("postgres://"), "{database}");
}

#[test]
fn the_set_up_link_carries_the_public_address_and_a_fresh_token_each_time() {
    let folder = tempfile::tempdir().unwrap();
    let link = || {
        let public_url = Some("https://stunts.example.test/".to_owned());
        try_start(
            ServeOptions {
                public_url,
                ..options(&folder)
            },
            |running| {
                assert!(running.shared.secure);
                running.setup_link.clone().unwrap()
            },
        )
        .unwrap()
    };
    let (first, second) = (link(), link());
    assert!(
        first.starts_with("https://stunts.example.test/setup#"),
        "{first}"
    );
    assert_ne!(first, second);
}
