//! A role's attestation of the very content it answers for.

pub mod draft;
pub mod meet;
pub mod photograph;
pub mod resolve;
pub mod submit;
