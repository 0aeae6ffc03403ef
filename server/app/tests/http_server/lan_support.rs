//! A server on a local network to test, a client that trusts one authority and no other, and OpenSSL as
//! a judge from outside.

use std::{
    fs,
    io::{Read, Write},
    net::TcpStream,
    path::Path,
    process::{Command, Output},
    sync::{Arc, mpsc},
    thread,
};

use gagwright::{
    http::{ServeOptions, start},
    lan::{Local, addresses::Machine, announce},
};
use jiff::Timestamp;
use rustls::{
    ClientConfig, ClientConnection, RootCertStore, StreamOwned,
    crypto::aws_lc_rs::default_provider,
    pki_types::{CertificateDer, ServerName, pem::PemObject},
};
use tempfile::TempDir;
use tokio::sync::oneshot;

/// A server that speaks HTTPS. It stops when dropped.
pub struct LanServer {
    pub port: u16,
    pub page: Option<String>,
    pub public_url: String,
    pub setup_token: String,
    pub announced: String,
    pub folder: TempDir,
    stop: Option<oneshot::Sender<()>>,
    thread: Option<thread::JoinHandle<()>>,
}

/// Options for one on this machine alone, on ports that the system chooses.
pub fn options(folder: &Path) -> ServeOptions {
    ServeOptions {
        database: format!("sqlite:{}", folder.join("kept.db").display()),
        listen: "127.0.0.1:0".into(),
        lan_page: "127.0.0.1:0".into(),
        outbox: folder.join("outbox"),
        workers: Some(1),
        ..ServeOptions::default()
    }
}

impl LanServer {
    /// Starts one, or tells why it does not.
    pub fn start(folder: TempDir, options: ServeOptions) -> Result<Self, String> {
        let (told, hear) = mpsc::channel();
        let thread = thread::spawn(move || {
            actix_web::rt::System::new().block_on(async move {
                let running = match start(options).await {
                    Ok(running) => running,
                    Err(error) => return told.send(Err(error.to_string())).unwrap(),
                };
                let (stop, stopped) = oneshot::channel();
                let page = running.page_address();
                let https = running.https.as_ref().unwrap();
                let announced = announce::text(https, page.as_deref(), false);
                let url = running.public_url.clone();
                let link = running.setup_link.clone().unwrap_or_default();
                told.send(Ok((
                    running.address.port(),
                    page,
                    url,
                    link,
                    announced,
                    stop,
                )))
                .unwrap();
                let _ = stopped.await;
                running.stop().await;
            });
        });
        let (port, page, public_url, link, announced, stop) = hear.recv().unwrap()?;
        Ok(Self {
            port,
            page,
            public_url,
            setup_token: link.rsplit('#').next().unwrap_or_default().to_owned(),
            announced,
            folder,
            stop: Some(stop),
            thread: Some(thread),
        })
    }

    /// Stops it and gives back its folder.
    pub fn stop(mut self) -> TempDir {
        self.halt();
        std::mem::replace(&mut self.folder, tempfile::tempdir().unwrap())
    }

    fn halt(&mut self) {
        if let Some(stop) = self.stop.take() {
            let _ = stop.send(());
        }
        if let Some(thread) = self.thread.take() {
            thread.join().unwrap();
        }
    }

    /// Sends one request over HTTPS, believing only what the certificates in a file signed.
    pub fn call(&self, trusted: &Path, host: &str, request: &str) -> Result<String, String> {
        let mut stream = self.connect(trusted, host)?;
        stream
            .write_all(request.as_bytes())
            .map_err(|e| e.to_string())?;
        let mut answer = Vec::new();
        // A server may close without a word of parting; what came until then counts.
        let _ = stream.read_to_end(&mut answer);
        Ok(String::from_utf8_lossy(&answer).into_owned())
    }

    /// An answer from the plain port: its status, headers and body.
    pub fn plain(&self, method: &str, path: &str) -> (u16, String, Vec<u8>) {
        let page = self.page.as_ref().unwrap();
        let port = page.rsplit_once(':').unwrap().1;
        let mut wire = TcpStream::connect(format!("127.0.0.1:{port}")).unwrap();
        write!(
            wire,
            "{method} {path} HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\nContent-Length: 0\r\nConnection: close\r\n\r\n"
        )
        .unwrap();
        let mut answer = Vec::new();
        wire.read_to_end(&mut answer).unwrap();
        let end = answer
            .windows(4)
            .position(|part| part == b"\r\n\r\n")
            .unwrap();
        let head = String::from_utf8(answer[..end].to_vec())
            .unwrap()
            .to_lowercase();
        let status = head.split(' ').nth(1).unwrap().parse().unwrap();
        (status, head, answer[end + 4..].to_vec())
    }

    /// A connection, as [`LanServer::call`] makes it.
    pub fn connect(
        &self,
        trusted: &Path,
        host: &str,
    ) -> Result<StreamOwned<ClientConnection, TcpStream>, String> {
        let mut roots = RootCertStore::empty();
        for certificate in CertificateDer::pem_file_iter(trusted).unwrap() {
            roots.add(certificate.unwrap()).unwrap();
        }
        let config = ClientConfig::builder_with_provider(Arc::new(default_provider()))
            .with_safe_default_protocol_versions()
            .unwrap()
            .with_root_certificates(roots)
            .with_no_client_auth();
        let name = ServerName::try_from(host.to_owned()).unwrap();
        let mut connection = ClientConnection::new(Arc::new(config), name).unwrap();
        let mut stream = TcpStream::connect(("127.0.0.1", self.port)).unwrap();
        connection
            .complete_io(&mut stream)
            .map_err(|error| error.to_string())?;
        Ok(StreamOwned::new(connection, stream))
    }
}

impl Drop for LanServer {
    fn drop(&mut self) {
        self.halt();
    }
}

/// A request of HTTP/1.1 with nothing in it.
pub fn get(path: &str) -> String {
    format!("GET {path} HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n")
}

/// A machine with a private address, one that is not, and a name.
pub fn machine() -> Machine {
    Machine {
        addresses: ["10.0.4.2", "203.0.113.9"]
            .map(|ip| ip.parse().unwrap())
            .to_vec(),
        outward: None,
        host: Some("slate".into()),
    }
}

pub fn at(text: &str) -> Timestamp {
    text.parse().unwrap()
}

/// Opens or makes the authority of a folder for [`machine`].
pub fn local(folder: &Path, asked: &[&str], now: Timestamp) -> Result<Local, String> {
    let asked = asked.iter().map(|name| name.parse().unwrap()).collect();
    Local::open(folder, asked, false, &machine(), now).map_err(|error| error.to_string())
}

/// Writes the certificate that is shown at present as PEM.
pub fn write_leaf(local: &Local, file: &Path) {
    let der = local.certified().end_entity_cert().unwrap().to_vec();
    fs::write(file, pem::encode(&pem::Pem::new("CERTIFICATE", der))).unwrap();
}

/// Runs OpenSSL in a folder.
pub fn openssl(folder: &Path, arguments: &[&str]) -> Output {
    Command::new("openssl")
        .args(arguments)
        .current_dir(folder)
        .output()
        .expect("openssl is installed")
}

/// Runs OpenSSL, which must succeed, and gives what it printed.
pub fn openssl_says(folder: &Path, arguments: &[&str]) -> String {
    let output = openssl(folder, arguments);
    let told = [output.stdout, output.stderr].concat();
    let told = String::from_utf8_lossy(&told).into_owned();
    assert!(output.status.success(), "openssl {arguments:?}: {told}");
    told
}
