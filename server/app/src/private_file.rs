//! Files with secrets in them: only their owner may read them, from the first byte on.

use std::{
    fs,
    io::{self, Write},
    path::Path,
};

/// Writes a file that must not be there yet, and waits until the disk has it.
///
/// # Errors
/// When it is there already or cannot be written.
pub fn write_new(file: &Path, bytes: &[u8]) -> io::Result<()> {
    let mut options = fs::OpenOptions::new();
    options.write(true).create_new(true);
    #[cfg(unix)]
    {
        use std::os::unix::fs::OpenOptionsExt;
        options.mode(0o600);
    }
    let mut file = options.open(file)?;
    file.write_all(bytes)?;
    file.sync_all()
}

/// Whether anyone but the owner may read the file. Where files have no owner's mode, nobody is known to.
///
/// # Errors
/// When the file cannot be looked at.
pub fn open_to_others(file: &Path) -> io::Result<bool> {
    let about = fs::metadata(file)?;
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt;
        Ok(about.permissions().mode() & 0o077 != 0)
    }
    #[cfg(not(unix))]
    {
        let _ = about;
        Ok(false)
    }
}
