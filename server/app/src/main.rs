//! The binary: everything it can do is in the library, so that tests can do it too.

use std::process::ExitCode;

fn main() -> ExitCode {
    gagwright::terminal::run()
}
