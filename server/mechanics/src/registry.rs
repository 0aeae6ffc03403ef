//! The one list of techniques.

use crate::technique::Technique;

/// Every technique, in the order people are offered them.
pub fn techniques() -> &'static [&'static dyn Technique] {
    &[]
}

/// The technique of that machine name.
pub fn find(name: &str) -> Option<&'static dyn Technique> {
    techniques().iter().copied().find(|technique| technique.name() == name)
}
