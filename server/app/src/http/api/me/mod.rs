//! What people change about their own account.

pub mod password;
