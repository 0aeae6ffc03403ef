//! A throwaway PostgreSQL cluster: made in a temporary folder, reachable by a socket in it alone, and
//! gone when the test process ends, however it ends. Knows nothing of the store.

use std::{
    path::{Path, PathBuf},
    process::{Child, Command, Stdio},
};

/// A running cluster.
pub struct Cluster {
    folder: PathBuf,
    programs: PathBuf,
    user: Option<String>,
    options: String,
    _watchdog: Child,
}

impl Cluster {
    /// Makes and starts one, with settings such as `fsync=off`.
    ///
    /// # Panics
    /// When PostgreSQL is not installed or does not start, saying what to do.
    pub fn start(settings: &[&str]) -> Cluster {
        let programs = programs();
        // PostgreSQL refuses to run as root.
        let user = is_root().then(unprivileged_user);
        let folder = tempfile::Builder::new()
            .prefix("gagwright-pg-")
            .tempdir_in(short_temporary_folder())
            .expect("a folder for the cluster")
            .keep();
        if let Some(user) = &user {
            run(Command::new("chown").arg(user).arg(&folder));
        }
        let mut options = format!(
            "-c listen_addresses= -c unix_socket_directories={}",
            folder.display()
        );
        for setting in settings {
            options.push_str(&format!(" -c {setting}"));
        }
        let watchdog = watchdog(&folder, &programs, user.as_deref());
        let cluster = Cluster {
            folder,
            programs,
            user,
            options,
            _watchdog: watchdog,
        };
        run(cluster
            .command("initdb")
            .args(["--no-sync", "--no-locale", "--encoding=UTF8"])
            .args(["--auth=trust", "--username=postgres", "--pgdata"])
            .arg(cluster.data()));
        cluster.resume();
        cluster
    }

    /// The address of a database in it.
    pub fn url(&self, database: &str) -> String {
        let host = self.folder.display().to_string().replace('/', "%2F");
        format!("postgres://postgres@{host}/{database}")
    }

    /// Makes a database.
    pub fn create_database(&self, name: &str) {
        run(self
            .command("createdb")
            .args(["--username=postgres", "--host"])
            .arg(&self.folder)
            .arg(name));
    }

    /// Stops it as a crash would: nothing is written out, every connection breaks.
    pub fn crash(&self) {
        run(self
            .command("pg_ctl")
            .args(["--mode=immediate", "--wait", "stop", "--pgdata"])
            .arg(self.data()));
    }

    /// Starts it again, recovering from what reached the disk.
    pub fn resume(&self) {
        run(self
            .command("pg_ctl")
            .args(["--wait", "--silent", "start", "--pgdata"])
            .arg(self.data())
            .arg("--log")
            .arg(self.folder.join("log"))
            .arg("--options")
            .arg(&self.options));
    }

    fn data(&self) -> PathBuf {
        self.folder.join("data")
    }

    fn command(&self, program: &str) -> Command {
        let path = self.programs.join(program);
        let mut command = match &self.user {
            Some(user) => {
                let mut command = Command::new("runuser");
                command.args(["-u", user, "--"]).arg(path);
                command
            }
            None => Command::new(path),
        };
        command.current_dir(&self.folder);
        command
    }
}

/// A shell that waits for this process to end, which closes its input, and then stops the cluster and
/// removes it: a static is never dropped, and a killed process drops nothing.
fn watchdog(folder: &Path, programs: &Path, user: Option<&str>) -> Child {
    let as_user = user
        .map(|user| format!("runuser -u {user} -- "))
        .unwrap_or_default();
    let script = format!(
        "cd /; cat >/dev/null; {as_user}'{}/pg_ctl' --mode=immediate --wait stop --pgdata '{folder}/data' \
         >/dev/null 2>&1; rm -rf '{folder}'",
        programs.display(),
        folder = folder.display(),
    );
    let mut command = Command::new("sh");
    command
        .arg("-c")
        .arg(script)
        .stdin(Stdio::piped())
        .stdout(Stdio::null())
        .stderr(Stdio::null());
    // In a group of its own, so that stopping the tests from the keyboard does not stop it first.
    std::os::unix::process::CommandExt::process_group(&mut command, 0);
    command.spawn().expect("a shell")
}

/// The folder with PostgreSQL's programs.
fn programs() -> PathBuf {
    let on_path = std::env::var_os("PATH").unwrap_or_default();
    let mut folders: Vec<PathBuf> = std::env::split_paths(&on_path).collect();
    let versions = std::fs::read_dir("/usr/lib/postgresql")
        .into_iter()
        .flatten()
        .flatten();
    let mut packaged: Vec<PathBuf> = versions.map(|entry| entry.path().join("bin")).collect();
    packaged.sort();
    folders.extend(packaged.into_iter().rev());
    let complete = |folder: &PathBuf| {
        ["initdb", "pg_ctl", "createdb"]
            .iter()
            .all(|program| folder.join(program).is_file())
    };
    folders.into_iter().find(complete).unwrap_or_else(|| {
        panic!(
            "PostgreSQL's initdb, pg_ctl and createdb are on neither PATH nor in \
             /usr/lib/postgresql/*/bin. The store must pass on both databases: install the server \
             (`apt-get install postgresql` on Debian, `brew install postgresql` on a Mac) and run the \
             tests again"
        )
    })
}

/// A socket's path may have about 100 bytes.
fn short_temporary_folder() -> PathBuf {
    let folder = std::env::temp_dir();
    if folder.as_os_str().len() > 60 {
        PathBuf::from("/tmp")
    } else {
        folder
    }
}

fn is_root() -> bool {
    let output = Command::new("id")
        .arg("-u")
        .output()
        .expect("the program `id`");
    output.stdout.trim_ascii() == b"0"
}

fn unprivileged_user() -> String {
    ["postgres", "nobody"]
        .into_iter()
        .find(|user| {
            let known = Command::new("id").arg("-u").arg(user).output();
            known.is_ok_and(|output| output.status.success())
        })
        .expect("PostgreSQL does not run as root: run the tests as another user, or add a user `postgres`")
        .to_owned()
}

fn run(command: &mut Command) {
    let shown = format!("{command:?}");
    // The server inherits what pg_ctl was given; with a pipe there, waiting for its end would never
    // stop. Messages go to files instead.
    let messages = tempfile::tempfile().expect("a file for messages");
    let also = messages.try_clone().expect("a file for messages");
    let status = command
        .stdin(Stdio::null())
        .stdout(messages.try_clone().expect("a file"))
        .stderr(also)
        .status();
    let text = || {
        use std::io::{Read, Seek};
        let mut file = &messages;
        let mut text = String::new();
        let _ = file.rewind();
        let _ = file.read_to_string(&mut text);
        text
    };
    match status {
        Ok(status) if status.success() => {}
        Ok(status) => panic!("{shown} ended with {status}:\n{}", text()),
        Err(error) => panic!("{shown} cannot be run: {error}"),
    }
}
