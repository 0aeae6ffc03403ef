//! What is done on the day.

pub mod briefings;
pub mod debriefs;
pub mod equipment;
pub mod incidents;
pub mod marks;
pub mod stand_downs;
pub mod takes;
