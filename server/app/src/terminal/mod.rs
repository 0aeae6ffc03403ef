//! The command line: what can be typed, and what is printed for it. Every subcommand is a file; each
//! prints a table for people or, with `--json`, one JSON value for programs, and gives an exit code:
//! 0 done, 1 failed, 2 typed wrongly.

mod arguments;
mod assess;
mod audit;
mod database;
mod describe_api;
mod erase;
mod fault;
mod files;
mod handbook;
mod import;
mod matching;
mod migrate;
mod packet;
mod policy;
mod serve;
mod story;
mod table;
mod tools;
mod verify;
mod verify_packet;
mod verify_witness;
mod witness;

use std::process::ExitCode;

use clap::Parser;

use arguments::{Arguments, Subcommand};
use fault::Fault;

/// Reads the command line, does what it says and gives the exit code.
pub fn run() -> ExitCode {
    let arguments = match Arguments::try_parse() {
        Ok(arguments) => arguments,
        Err(error) => {
            // Help and version are answers, not errors; clap knows which stream each belongs on.
            let code = if error.use_stderr() { 2 } else { 0 };
            return match error.print() {
                Ok(()) => ExitCode::from(code),
                Err(_) => ExitCode::from(1),
            };
        }
    };
    match run_subcommand(arguments.subcommand) {
        Ok(()) => ExitCode::SUCCESS,
        Err(fault) => fault.report(),
    }
}

fn run_subcommand(subcommand: Option<Subcommand>) -> Result<(), Fault> {
    match subcommand {
        None => serve::demo(),
        Some(Subcommand::Serve(options)) => serve::serve(options),
        Some(Subcommand::Demo(arguments)) => story::run(&arguments),
        Some(Subcommand::Assess(arguments)) => assess::run(&arguments),
        Some(Subcommand::Spread(arguments)) => tools::spread(&arguments),
        Some(Subcommand::Sensitivity(arguments)) => tools::sensitivity(&arguments),
        Some(Subcommand::Solve(arguments)) => tools::solve(&arguments),
        Some(Subcommand::Match(arguments)) => matching::run(&arguments),
        Some(Subcommand::Import(arguments)) => import::run(&arguments),
        Some(Subcommand::Packet(arguments)) => packet::run(&arguments),
        Some(Subcommand::Verify(arguments)) => verify::run(&arguments),
        Some(Subcommand::Witness(arguments)) => witness::run(&arguments.subcommand),
        Some(Subcommand::Export(arguments)) => audit::export(&arguments),
        Some(Subcommand::Audit(arguments)) => audit::run(&arguments),
        Some(Subcommand::Erase(arguments)) => erase::run(&arguments),
        Some(Subcommand::Migrate(arguments)) => migrate::run(&arguments),
        Some(Subcommand::DescribeApi) => describe_api::run(),
        Some(Subcommand::Policy(arguments)) => policy::run(&arguments),
        Some(Subcommand::Handbook(arguments)) => handbook::run(&arguments),
    }
}

/// Prints a line to standard output; a reader that has gone away (`| head`) ends the program quietly.
pub(crate) fn say(text: impl AsRef<str>) -> Result<(), Fault> {
    use std::io::Write;
    let mut out = std::io::stdout().lock();
    out.write_all(text.as_ref().as_bytes())
        .and_then(|()| {
            if text.as_ref().ends_with('\n') {
                Ok(())
            } else {
                out.write_all(b"\n")
            }
        })
        .and_then(|()| out.flush())
        .map_err(|error| match error.kind() {
            std::io::ErrorKind::BrokenPipe => Fault::Quiet,
            _ => Fault::failed(format!("cannot write the answer: {error}")),
        })
}

/// Prints one JSON value.
pub(crate) fn say_json<T: serde::Serialize>(value: &T) -> Result<(), Fault> {
    let text = serde_json::to_string_pretty(value)
        .map_err(|error| Fault::failed(format!("cannot write the answer as JSON: {error}")))?;
    say(text)
}
