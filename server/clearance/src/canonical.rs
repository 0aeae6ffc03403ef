//! RFC 8785 canonical bytes and the hashes made from them.
