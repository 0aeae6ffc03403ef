//! What can be typed. Help texts teach by example; nothing here does any work.

use std::path::PathBuf;

use clap::{Args, Parser, Subcommand as ClapSubcommand, ValueEnum};

use super::witness::WitnessSubcommand;
use crate::config::ServeOptions;

/// Plan film stunts, work out the forces, cast them, get them signed and keep the record.
#[derive(Debug, Parser)]
#[command(
    name = "gagwright",
    version,
    about = "Plan film stunts: forces, cast, sign-offs and a record that can be checked",
    long_about = "Plan film stunts: work out the forces, cast people who are qualified on the day, get \
                  every department to sign the very plan that will be shot, and keep a record that \
                  can be checked a year later.\n\nWith no subcommand it starts a server with the \
                  invented production \"Salt Meridian\" to try things on.\n\nGagwright is a planning \
                  aid. Every limit names its source; local law and licensed people decide.",
    after_help = "Examples:\n  gagwright                                  try it in a browser\n  \
                  gagwright demo --out story                 the whole job in the terminal\n  \
                  gagwright assess high-fall drop_height=30m a technique's figures and checks\n  \
                  gagwright serve --database sqlite:our.db   your own production"
)]
pub(crate) struct Arguments {
    #[command(subcommand)]
    pub(crate) subcommand: Option<Subcommand>,
}

/// What there is to do.
#[derive(Debug, ClapSubcommand)]
pub(crate) enum Subcommand {
    /// Serve the app and the API
    #[command(after_help = "Examples:\n  gagwright serve\n  \
        gagwright serve --database sqlite:our.db --listen 0.0.0.0:8080\n  \
        gagwright serve --database postgres://gagwright@db/gagwright\n  \
        gagwright serve --lan                                    phones on a set's own network\n  \
        gagwright serve --listen 0.0.0.0:443 --tls-cert chain.pem --tls-key key.pem\n\n\
        On an empty database it prints a one-time set-up link; there is no default password.\n\
        With --lan it prints a QR code that walks each phone through trusting this machine, once.")]
    Serve(ServeOptions),
    /// Do the whole job in the terminal, on the invented production, and check every step
    #[command(after_help = "Example:\n  gagwright demo --out story\n\n\
        Imports a roster, casts gags, signs with real keys, changes one value so that exactly the\n\
        affected sign-offs lapse, signs again, clears, prints the packet, exports the trail and\n\
        checks it, then shows that a forged copy is found out. Ends with exit code 1 if any step\n\
        is not as stated.")]
    Demo(DemoArguments),
    /// Work out a technique's figures and hold them against their limits
    #[command(
        after_help = "Examples:\n  gagwright assess                                 list techniques\n  \
        gagwright assess high-fall --describe            what it wants to know\n  \
        gagwright assess high-fall drop_height=30m\n  \
        gagwright assess high-fall drop_height='100ft +- 1ft' performer_mass=62kg\n\n\
        Write quantities as you would on paper: 30m, 100ft, 5'6\", 6bar, 90psi, 62kg, 12 m/s, 40%.\n\
        Add a tolerance with +- or ±; without one the technique's usual tolerance counts."
    )]
    Assess(AssessArguments),
    /// Draw states within the inputs' tolerances: how figures spread, how often limits are crossed
    #[command(
        after_help = "Examples:\n  gagwright spread high-fall drop_height='12m +- 0.5m' performer_mass=75kg\n  \
        gagwright spread high-fall drop_height=12m performer_mass=75kg --draws 50000 --seed 3\n\n\
        The same seed gives the same draws on every machine."
    )]
    Spread(SpreadArguments),
    /// Rank the inputs by how far their tolerances move one figure
    #[command(
        after_help = "Example:\n  gagwright sensitivity high-fall impact_speed drop_height='12m +- 0.5m' performer_mass=75kg"
    )]
    Sensitivity(SensitivityArguments),
    /// Find the value of an input that gives a wanted figure
    #[command(
        after_help = "Examples:\n  gagwright solve high-fall drop_height impact_speed=12m/s performer_mass=75kg\n  \
        gagwright solve high-fall drop_height impact_speed=12m/s performer_mass=75kg --to 20m\n\n\
        Gives every value in the range, or says why there is none."
    )]
    Solve(SolveArguments),
    /// Hold everyone on the roster against a gag's slots and say why, requirement by requirement
    #[command(
        after_help = "Examples:\n  gagwright match G07\n  gagwright match G07 --slot 2\n  \
        gagwright match G07 --slot \"Double for Ines\" --json"
    )]
    Match(MatchArguments),
    /// Import a roster table from a CSV file, all rows or none
    #[command(after_help = "Examples:\n  gagwright import people people.csv\n  \
        gagwright import certificates certificates.csv --database sqlite:our.db\n\n\
        Importing again updates by code. If any cell is wrong, every wrong cell is listed with row,\n\
        column and what to write instead, and nothing is imported.")]
    Import(ImportArguments),
    /// Print a gag's packet as PDF
    #[command(after_help = "Examples:\n  gagwright packet G07\n  \
        gagwright packet G07 --paper letter --out g07.pdf")]
    Packet(PacketArguments),
    /// Check an exported trail, a packet, its proof or one sign-off, with no server
    #[command(after_help = "Examples:\n  gagwright verify trail.jsonl\n  \
        gagwright verify trail.jsonl --log-key 'name+hash+key'\n  \
        gagwright verify G07-r3.pdf --log-key 'name+hash+key'\n  \
        gagwright verify packet-proof.json\n  \
        gagwright verify signoff.jws --key device.jwk.json\n  \
        gagwright verify trail.jsonl --witness 'name+hash+key'\n\n\
        It says in plain words what the file proves and what it cannot prove.")]
    Verify(VerifyArguments),
    /// Watch a trail from outside: make a witness's key, cosign checkpoints
    #[command(
        after_help = "Examples:\n  gagwright witness key --name witness.example/w1 --out w1.key\n  \
        gagwright witness sign trail.jsonl --key w1.key --first --out seen.note\n\n\
        A witness sees how long the trail is and its root, and signs that it only grew."
    )]
    Witness(WitnessArguments),
    /// Write a production's trail to a file that anybody can check
    #[command(after_help = "Examples:\n  gagwright export --out trail.jsonl\n  \
        gagwright export --parts --out whole.jsonl     with the personal parts, for an auditor")]
    Export(ExportArguments),
    /// Show a gag as it stood at a past moment, from an exported trail alone
    #[command(
        after_help = "Examples:\n  gagwright audit --export whole.jsonl --gag G07 --at 2026-11-25T14:30:00Z\n  \
        gagwright audit --export whole.jsonl --gag G07 --leaf 212\n\n\
        The file must have been written with its personal parts. The file is verified first; no leaf that\n\
        came after the moment is used; and where something was erased since, it says what cannot be known\n\
        any more."
    )]
    Audit(AuditArguments),
    /// Erase a person: what the roster says of them, what they wrote and drew, and the salts that stand for it
    #[command(after_help = "Example:\n  gagwright erase C14 --as C02\n\n\
        Whoever does it must hold the role production, and cannot be the person. Every leaf, proof and\n\
        signature stays valid.")]
    Erase(EraseArguments),
    /// Bring a database up to date
    #[command(
        after_help = "Examples:\n  gagwright migrate --database sqlite:our.db\n  \
        gagwright migrate --database postgres://gagwright@db/gagwright --json"
    )]
    Migrate(MigrateArguments),
    /// Check a production's own policy, or print the one that comes with the program
    #[command(
        after_help = "Examples:\n  gagwright policy > ours.json     to begin from\n  \
        gagwright policy ours.json       everything that is wrong with it, and what would mend it"
    )]
    Policy(PolicyArguments),
    /// Print the API's description (OpenAPI 3.1), for programs that talk to the server
    #[command(after_help = "Example:\n  gagwright describe-api > openapi.json\n\n\
        A running server gives the same at /api/v1/openapi.json, and shows it at /api/docs/.")]
    DescribeApi,
    /// Write the handbook's pages, one for each technique, from what the program itself says of it
    #[command(after_help = "Examples:\n  gagwright handbook --out docs\n  \
        gagwright handbook --out docs --readme README.md     and the README's table")]
    Handbook(HandbookArguments),
}

/// Which database and which production.
#[derive(Args, Debug)]
pub(crate) struct Place {
    /// A SQLite file, `sqlite:PATH` or `postgres://USER@HOST/NAME` [default: gagwright.db, or the
    /// demo's gagwright-data/demo.db where there is no such file]
    #[arg(long, env = "GAGWRIGHT_DATABASE")]
    pub(crate) database: Option<String>,
    /// Name or id of the production; needed only where the database has several
    #[arg(long)]
    pub(crate) production: Option<String>,
    /// Code of the person you act as [default: the production's coordinator]
    #[arg(long = "as", value_name = "CODE")]
    pub(crate) acting: Option<String>,
}

#[derive(Args, Debug)]
pub(crate) struct DemoArguments {
    /// Folder for the database, keys, packets and the exported trail; made where it is missing, and
    /// must be empty
    #[arg(long, value_name = "FOLDER")]
    pub(crate) out: PathBuf,
}

#[derive(Args, Debug)]
pub(crate) struct AssessArguments {
    /// The technique's name; without one the techniques are listed
    pub(crate) technique: Option<String>,
    /// Inputs, name=value
    #[arg(value_name = "NAME=VALUE")]
    pub(crate) inputs: Vec<String>,
    /// Describe the technique's inputs with units and ranges instead
    #[arg(long)]
    pub(crate) describe: bool,
    /// Answer in JSON, SI units
    #[arg(long)]
    pub(crate) json: bool,
}

#[derive(Args, Debug)]
pub(crate) struct SpreadArguments {
    /// The technique's name
    pub(crate) technique: String,
    /// Inputs, name=value
    #[arg(value_name = "NAME=VALUE")]
    pub(crate) inputs: Vec<String>,
    /// How many states to draw, 100 to 100000
    #[arg(long, default_value_t = 10_000)]
    pub(crate) draws: u32,
    /// Another seed gives other draws
    #[arg(long, default_value_t = 1)]
    pub(crate) seed: u32,
    /// Answer in JSON, SI units
    #[arg(long)]
    pub(crate) json: bool,
}

#[derive(Args, Debug)]
pub(crate) struct SensitivityArguments {
    /// The technique's name
    pub(crate) technique: String,
    /// The figure's name
    pub(crate) figure: String,
    /// Inputs, name=value
    #[arg(value_name = "NAME=VALUE")]
    pub(crate) inputs: Vec<String>,
    /// Answer in JSON, SI units
    #[arg(long)]
    pub(crate) json: bool,
}

#[derive(Args, Debug)]
pub(crate) struct SolveArguments {
    /// The technique's name
    pub(crate) technique: String,
    /// The input that may move
    pub(crate) input: String,
    /// The figure that is wanted, name=value
    #[arg(value_name = "FIGURE=VALUE")]
    pub(crate) wanted: String,
    /// The other inputs, name=value
    #[arg(value_name = "NAME=VALUE")]
    pub(crate) inputs: Vec<String>,
    /// The least the input may be [default: its own least]
    #[arg(long, value_name = "VALUE")]
    pub(crate) from: Option<String>,
    /// The most the input may be [default: its own most]
    #[arg(long, value_name = "VALUE")]
    pub(crate) to: Option<String>,
    /// Answer in JSON, SI units
    #[arg(long)]
    pub(crate) json: bool,
}

#[derive(Args, Debug)]
pub(crate) struct MatchArguments {
    /// The gag's code
    pub(crate) gag: String,
    /// Only this slot, by number (from 1), name or id
    #[arg(long)]
    pub(crate) slot: Option<String>,
    #[command(flatten)]
    pub(crate) place: Place,
    /// Answer in JSON
    #[arg(long)]
    pub(crate) json: bool,
}

/// A roster table.
#[derive(Clone, Copy, Debug, ValueEnum)]
pub(crate) enum Table {
    /// Names, codes, occupations, measurements
    People,
    /// Dated proofs
    Certificates,
    /// Graded competences
    Skills,
    /// Days people can and cannot work
    Availability,
}

#[derive(Args, Debug)]
pub(crate) struct ImportArguments {
    /// Which table
    pub(crate) table: Table,
    /// The CSV file, UTF-8
    pub(crate) file: PathBuf,
    #[command(flatten)]
    pub(crate) place: Place,
    /// Answer in JSON
    #[arg(long)]
    pub(crate) json: bool,
}

/// Paper sizes.
#[derive(Clone, Copy, Debug, ValueEnum)]
pub(crate) enum PaperSize {
    /// 210 by 297 mm
    A4,
    /// 8.5 by 11 inches
    Letter,
}

#[derive(Args, Debug)]
pub(crate) struct PacketArguments {
    /// The gag's code
    pub(crate) gag: String,
    /// Paper
    #[arg(long, default_value = "a4")]
    pub(crate) paper: PaperSize,
    /// The file to write [default: CODE-rREVISION.pdf]
    #[arg(long, value_name = "FILE")]
    pub(crate) out: Option<PathBuf>,
    #[command(flatten)]
    pub(crate) place: Place,
    /// Answer in JSON
    #[arg(long)]
    pub(crate) json: bool,
}

#[derive(Args, Debug)]
pub(crate) struct VerifyArguments {
    /// An exported trail (.jsonl), a packet (.pdf), a packet's proof (.json) or a sign-off (one line, compact JWS)
    pub(crate) file: PathBuf,
    /// The device's public key as a JWK file, to check a sign-off
    #[arg(long, value_name = "FILE")]
    pub(crate) key: Option<PathBuf>,
    /// The log's public key as you got it from somewhere you trust, name+hash+key
    #[arg(long, value_name = "KEY")]
    pub(crate) log_key: Option<String>,
    /// The key of a witness who must have cosigned, name+hash+key; may be given several times
    #[arg(long, value_name = "KEY")]
    pub(crate) witness: Vec<String>,
    /// Answer in JSON
    #[arg(long)]
    pub(crate) json: bool,
}

#[derive(Args, Debug)]
pub(crate) struct WitnessArguments {
    #[command(subcommand)]
    pub(crate) subcommand: WitnessSubcommand,
}

#[derive(Args, Debug)]
pub(crate) struct PolicyArguments {
    /// The policy, JSON; without one the program's own is printed
    pub(crate) file: Option<PathBuf>,
    /// Answer in JSON
    #[arg(long)]
    pub(crate) json: bool,
}

#[derive(Args, Debug)]
pub(crate) struct ExportArguments {
    /// Take the personal parts along
    #[arg(long)]
    pub(crate) parts: bool,
    /// The file to write
    #[arg(long, value_name = "FILE", default_value = "trail.jsonl")]
    pub(crate) out: PathBuf,
    #[command(flatten)]
    pub(crate) place: Place,
}

#[derive(Args, Debug)]
#[command(group(clap::ArgGroup::new("moment").required(true)))]
pub(crate) struct AuditArguments {
    /// The exported trail, with its personal parts
    #[arg(long, value_name = "FILE")]
    pub(crate) export: PathBuf,
    /// The gag's code
    #[arg(long)]
    pub(crate) gag: String,
    /// The moment, RFC 3339
    #[arg(long, value_name = "TIME", group = "moment")]
    pub(crate) at: Option<String>,
    /// After this leaf
    #[arg(long, group = "moment")]
    pub(crate) leaf: Option<u64>,
    /// The log's public key as you got it from somewhere you trust, name+hash+key
    #[arg(long, value_name = "KEY")]
    pub(crate) log_key: Option<String>,
    /// Answer in JSON
    #[arg(long)]
    pub(crate) json: bool,
}

#[derive(Args, Debug)]
pub(crate) struct EraseArguments {
    /// The person's code
    pub(crate) person: String,
    #[command(flatten)]
    pub(crate) place: Place,
    /// Answer in JSON
    #[arg(long)]
    pub(crate) json: bool,
}

#[derive(Args, Debug)]
pub(crate) struct HandbookArguments {
    /// Folder for the pages; made where it is missing
    #[arg(long, value_name = "FOLDER")]
    pub(crate) out: PathBuf,
    /// A README whose table of techniques is brought up to date as well
    #[arg(long, value_name = "FILE")]
    pub(crate) readme: Option<PathBuf>,
}

#[derive(Args, Debug)]
pub(crate) struct MigrateArguments {
    /// A SQLite file, `sqlite:PATH` or `postgres://USER@HOST/NAME`
    #[arg(long, env = "GAGWRIGHT_DATABASE")]
    pub(crate) database: String,
    /// Only list what would be applied
    #[arg(long)]
    pub(crate) dry_run: bool,
    /// Answer in JSON
    #[arg(long)]
    pub(crate) json: bool,
}

#[cfg(test)]
mod tests {
    use clap::CommandFactory;

    use super::*;

    #[test]
    fn the_command_line_is_well_formed() {
        Arguments::command().debug_assert();
    }
}
