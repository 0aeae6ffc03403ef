//! Devices that hold signing keys.

pub mod register;
pub mod revoke;
