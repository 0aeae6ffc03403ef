//! stub
use super::{arguments::DemoArguments, fault::Fault};
pub(crate) fn run(_: &DemoArguments) -> Result<(), Fault> { Ok(()) }
