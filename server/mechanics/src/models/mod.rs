//! Shared physics: each model in its own file, with its equation's source.
