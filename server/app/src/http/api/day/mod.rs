//! What is logged while working.

pub mod reading;
pub mod run;
pub mod test_shot;
