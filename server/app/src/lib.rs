//! The Gagwright server and command line: the API, the terminal and what they share. Commands and views
//! are the two doors to the store; everything that reads a clock, a socket or a file lives at this edge.

pub mod clock;
pub mod commands;
pub mod config;
pub mod demo;
pub mod entropy;
pub mod handbook;
pub mod http;
pub mod lan;
pub mod mail;
pub mod packets;
pub mod passwords;
pub mod permissions;
pub mod private_file;
pub mod remembered;
pub mod terminal;
pub mod threads;
pub mod tokens;
pub mod trail_file;
pub mod views;
pub mod words;
