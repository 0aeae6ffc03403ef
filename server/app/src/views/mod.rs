//! What people read: the answers of the API and the terminal, put together from the store and judged by
//! the pure crates. Views write nothing; they must not know HTTP, a terminal or a clock.

mod accounts;
mod day_book;
pub(crate) mod day_records;
pub(crate) mod gags;
pub(crate) mod gathering;
mod matches;
mod people;
mod productions;
pub mod reader;
pub mod rules;
pub mod sentences;
mod then;
mod today;
mod trail;
pub mod types;
pub mod withheld;
mod witnesses;

pub use accounts::{
    DeviceSummary, MemberAccount, OpenInvitation, device_list, member_accounts, open_invitations,
};
pub use day_book::{DayBook, IncidentStanding, OpenTakeOf, day_book};
pub use gags::{gag_list, gag_page, shown};
pub use gathering::case;
pub use matches::matches;
pub use people::{people, person};
pub use productions::production_page;
pub use rules::{GagEffects, PolicyPage, PolicyPreview, PolicyVersion};
pub use then::{
    AfterThen, GagThen, LeafWithParts, Moment, NotRebuilt, SignedThen, gag_then, leaves, rebuild,
};
pub use today::today;
pub use trail::{changes as feed, heard, trail_page};
pub use types::*;
pub use witnesses::{CosignedView, WitnessView, Witnesses, witness_view, witnesses};
