//! Makes sure that the web app's bundle is there before the server embeds it: builds it with npm when
//! it is missing or older than its sources, and says plainly what to install when that cannot be done.
//! With `GAGWRIGHT_WEB_DIST=FOLDER` it builds nothing and embeds that folder, for those who package.

use std::{
    env, fs, io,
    path::{Path, PathBuf},
    process::Command,
    time::SystemTime,
};

/// What the bundle is made from, inside `web/`.
const SOURCES: [&str; 11] = [
    "src",
    "public",
    "scripts",
    "core/pkg",
    "core/lookup.js",
    "techniques/pkg",
    "index.html",
    "package.json",
    "package-lock.json",
    "vite.config.ts",
    "svelte.config.js",
];

fn main() {
    println!("cargo::rerun-if-env-changed=GAGWRIGHT_WEB_DIST");
    println!("cargo::rerun-if-changed=build.rs");
    if let Err(problem) = embed() {
        for line in problem.lines() {
            println!("cargo::error={line}");
        }
    }
}

fn embed() -> Result<(), String> {
    let web = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../web");
    let bundle = match env::var_os("GAGWRIGHT_WEB_DIST") {
        Some(folder) => given(Path::new(&folder))?,
        None => built(&web)?,
    };
    let bundle = bundle
        .canonicalize()
        .map_err(|error| format!("{}: {error}", bundle.display()))?;
    let code =
        format!("#[derive(rust_embed::RustEmbed)]\n#[folder = {bundle:?}]\nstruct Bundle;\n");
    let out = PathBuf::from(env::var_os("OUT_DIR").ok_or("cargo gave no OUT_DIR")?);
    fs::write(out.join("bundle.rs"), code)
        .map_err(|error| format!("cannot write bundle.rs: {error}"))
}

fn given(folder: &Path) -> Result<PathBuf, String> {
    println!("cargo::rerun-if-changed={}", folder.display());
    if folder.join("index.html").is_file() {
        return Ok(folder.to_path_buf());
    }
    Err(format!(
        "GAGWRIGHT_WEB_DIST is {}, which has no index.html.",
        folder.display()
    ))
}

fn built(web: &Path) -> Result<PathBuf, String> {
    let bundle = web.join("dist");
    let page = bundle.join("index.html");
    for source in SOURCES {
        println!("cargo::rerun-if-changed={}", web.join(source).display());
    }
    println!("cargo::rerun-if-changed={}", page.display());

    let newest = SOURCES
        .iter()
        .filter_map(|source| newest_change(&web.join(source)).ok())
        .max()
        .ok_or_else(|| format!("The web app's sources are missing from {}.", web.display()))?;
    if changed(&page).is_ok_and(|built| built >= newest) {
        return Ok(bundle);
    }
    check_node()?;
    if !installed(web) {
        run(web, &["ci", "--no-audit", "--no-fund"])?;
    }
    run(web, &["run", "build"])?;
    // The page takes the age of the sources it was made from. Cargo would otherwise see a file newer than
    // the start of this script and run it, and compile the server, once more for nothing.
    fs::File::options()
        .write(true)
        .open(&page)
        .and_then(|file| file.set_modified(newest))
        .map_err(|error| format!("The web build left no {}: {error}", page.display()))?;
    Ok(bundle)
}

fn changed(path: &Path) -> io::Result<SystemTime> {
    fs::metadata(path)?.modified()
}

fn newest_change(path: &Path) -> io::Result<SystemTime> {
    let mut newest = changed(path)?;
    if path.is_dir() {
        for entry in fs::read_dir(path)? {
            newest = newest.max(newest_change(&entry?.path())?);
        }
    }
    Ok(newest)
}

/// Whether `npm ci` was run since the lock file last changed.
fn installed(web: &Path) -> bool {
    let lock = changed(&web.join("package-lock.json"));
    let done = changed(&web.join("node_modules/.package-lock.json"));
    matches!((lock, done), (Ok(lock), Ok(done)) if done >= lock)
}

fn check_node() -> Result<(), String> {
    let advice = "Install Node.js 20.19 or later with npm (https://nodejs.org, or your system's packages), \
                  then build again.\nOr set GAGWRIGHT_WEB_DIST to a folder with a bundle built elsewhere.";
    let told = Command::new("node").arg("--version").output();
    let version = match told {
        Ok(output) => String::from_utf8_lossy(&output.stdout).trim().to_owned(),
        Err(_) => {
            return Err(format!(
                "The web app must be built, and Node.js was not found.\n{advice}"
            ));
        }
    };
    let mut numbers = version
        .trim_start_matches('v')
        .split('.')
        .map(|part| part.parse::<u32>());
    match (numbers.next(), numbers.next()) {
        (Some(Ok(major)), Some(Ok(minor))) if (major, minor) >= (20, 19) => Ok(()),
        _ => Err(format!(
            "The web app must be built, and Node.js here is {version}.\n{advice}"
        )),
    }
}

fn run(web: &Path, arguments: &[&str]) -> Result<(), String> {
    let program = if cfg!(windows) { "npm.cmd" } else { "npm" };
    let said = format!("npm {}", arguments.join(" "));
    let output = Command::new(program)
        .args(arguments)
        .current_dir(web)
        .output()
        .map_err(|error| {
            format!("{said} could not be started ({error}). Install npm, which comes with Node.js.")
        })?;
    if output.status.success() {
        return Ok(());
    }
    let told = [output.stdout, output.stderr].concat();
    let told = String::from_utf8_lossy(&told).into_owned();
    let tail: Vec<&str> = told.lines().rev().take(30).collect();
    let tail: Vec<&str> = tail.into_iter().rev().collect();
    Err(format!(
        "{said} failed in {}:\n{}",
        web.display(),
        tail.join("\n")
    ))
}
