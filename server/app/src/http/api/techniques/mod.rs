//! How a gag is done, and what that does to bodies and gear.

pub mod assess;
pub mod list;
