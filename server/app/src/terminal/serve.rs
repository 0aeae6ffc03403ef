//! `serve`, and starting with no subcommand: the demo in a browser.

use std::{fs, path::Path};

use clap::Parser;
use gagwright_store::Store;

use super::{
    database::DEMO,
    fault::Fault,
    say,
    table::{Align, Table, WIDTH, paragraph},
};
use crate::{clock, config::ServeOptions, demo, entropy, http};

pub(crate) fn serve(options: ServeOptions) -> Result<(), Fault> {
    http::serve(options).map_err(|error| Fault::failed(error.to_string()))
}

/// What the environment says about serving, with nothing typed.
#[derive(Parser)]
struct Environment {
    #[command(flatten)]
    options: ServeOptions,
}

/// Serves the invented production, making it first where it is not there yet.
pub(crate) fn demo() -> Result<(), Fault> {
    let mut options = Environment::try_parse_from(["gagwright"])
        .map_err(|error| Fault::usage(error.to_string()))?
        .options;
    options.database = format!("sqlite:{DEMO}");
    if let Some(folder) = Path::new(DEMO).parent() {
        fs::create_dir_all(folder).map_err(|error| {
            Fault::failed(format!(
                "cannot make the folder {}: {error}; start gagwright where you may write",
                folder.display()
            ))
        })?;
    }
    let store = Store::open(&options.database)?;
    store.migrate()?;
    let fresh = demo::seed(&store, clock::now(), entropy::system)?;
    let sign_ins = store.read(demo::sign_ins)?;
    drop(store);
    say(welcome(fresh, sign_ins.as_deref()))?;
    http::serve(options).map_err(|error| Fault::failed(error.to_string()))
}

fn welcome(fresh: bool, sign_ins: Option<&[demo::SignIn]>) -> String {
    let Some(sign_ins) = sign_ins else {
        return format!("{DEMO} holds a production of its own, so there are no demo sign-ins.\n");
    };
    let mut text = paragraph(
        "",
        0,
        &format!(
            "This is the invented production \"Salt Meridian\", {} in {DEMO}. Its people and \
             passwords are made up and public: put nothing real in it. Delete the folder to start \
             again; for your own production use `gagwright serve`.",
            if fresh { "made just now" } else { "kept" }
        ),
    );
    text.push_str(&format!(
        "\nSign in with the password \"{}\" as any of:\n\n",
        demo::PASSWORD
    ));
    let mut table = Table::new(&[("Address", Align::Left), ("Who", Align::Left)]);
    for one in sign_ins {
        table.row([
            one.email.clone(),
            format!("{}, {}", one.name, one.occupation),
        ]);
    }
    text.push_str(&table.render(WIDTH));
    text.push('\n');
    text
}
