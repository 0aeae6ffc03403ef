//! What one phone handed to another where there was no network.

pub mod carry;
