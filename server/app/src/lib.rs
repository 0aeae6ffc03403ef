//! The Gagwright server and command line: the API, the terminal and what they share. Commands and views
//! are the two doors to the store; everything that reads a clock, a socket or a file lives at this edge.

pub mod commands;
pub mod permissions;
pub mod views;
