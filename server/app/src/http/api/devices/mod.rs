//! Devices that hold signing keys.

pub mod list;
pub mod register;
pub mod revoke;
