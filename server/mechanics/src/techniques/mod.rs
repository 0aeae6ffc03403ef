//! One file a technique.
