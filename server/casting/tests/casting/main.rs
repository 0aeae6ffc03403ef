//! What casting promises, checked from outside the crate.

#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]
// Tables of cases are read by row; naming their tuple types would only hide the columns.
#![allow(clippy::type_complexity)]

mod builders;
mod catalogue;
mod demo_roster;
mod judge_bodies;
mod judge_certificates;
mod judge_properties;
mod judge_skills;
mod judge_time;
mod lapsing;
mod ranking;
mod roster_errors;
mod roster_properties;
mod roster_updates;
