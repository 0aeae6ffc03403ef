//! Files that are given to be read: what they must be at all, before anybody looks at what is in them.

use std::{
    fs,
    io::{self, Write},
    path::Path,
};

use super::fault::Fault;

/// More than any production's trail; a larger file is not one.
const LARGEST: u64 = 1 << 30;

pub(crate) fn read(file: &Path) -> Result<String, Fault> {
    let bytes = bytes_of(file)?;
    text_of(file, bytes)
}

pub(crate) fn bytes_of(file: &Path) -> Result<Vec<u8>, Fault> {
    let name = file.display();
    let size = fs::metadata(file)
        .map_err(|error| Fault::failed(format!("cannot read {name}: {error}; check the path")))?
        .len();
    if size > LARGEST {
        return Err(Fault::failed(format!(
            "{name} is larger than any trail; give an exported trail, a packet, a proof or a sign-off"
        )));
    }
    fs::read(file)
        .map_err(|error| Fault::failed(format!("cannot read {name}: {error}; check the path")))
}

/// Puts a file in place whole: whatever happens on the way, what was there before is there, or what is new.
///
/// # Errors
/// When it cannot be written.
pub(crate) fn put(file: &Path, bytes: &[u8]) -> io::Result<()> {
    // A link is followed, and a pipe or a device takes what comes.
    let file = &fs::canonicalize(file).unwrap_or_else(|_| file.to_owned());
    if fs::metadata(file).is_ok_and(|there| !there.is_file() && !there.is_dir()) {
        return fs::write(file, bytes);
    }
    let mut beside = file.as_os_str().to_owned();
    beside.push(format!(".{}.part", std::process::id()));
    let beside = Path::new(&beside);
    let written = fs::File::create_new(beside).and_then(|mut part| {
        part.write_all(bytes)?;
        part.sync_all()?;
        fs::rename(beside, file)
    });
    if written.is_err() {
        // It may never have been made; why it was not written is told.
        let _ = fs::remove_file(beside);
    }
    written
}

pub(crate) fn text_of(file: &Path, bytes: Vec<u8>) -> Result<String, Fault> {
    let name = file.display();
    String::from_utf8(bytes).map_err(|error| {
        let whole = error.utf8_error().valid_up_to();
        let before = error.as_bytes().iter().take(whole);
        let line = 1 + before.filter(|byte| **byte == b'\n').count();
        Fault::failed(format!(
            "line {line} of {name} is not text (UTF-8); the file was damaged or is of another kind"
        ))
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_file_is_put_in_place_whole_or_left_as_it_was() {
        let folder = tempfile::tempdir().unwrap();
        let file = folder.path().join("seen.note");
        put(&file, b"one").unwrap();
        put(&file, b"two").unwrap();
        assert_eq!(fs::read(&file).unwrap(), b"two");
        // A folder in its place: refused, and nothing lies about.
        fs::create_dir(folder.path().join("there")).unwrap();
        assert!(put(&folder.path().join("there"), b"three").is_err());
        let names = fs::read_dir(folder.path()).unwrap();
        assert_eq!(names.count(), 2);
    }

    #[test]
    fn what_is_no_text_names_its_line() {
        // RFC 3629: 0xFF is in no UTF-8 text, and 0xC3 begins a letter of two bytes.
        for (bytes, line) in [
            (&b"\xff"[..], 1),
            (b"one\ntwo \xc3\xa9\n\xc3", 3),
            (b"one\n\n\xffthree\n", 3),
        ] {
            let fault = text_of(Path::new("trail.jsonl"), bytes.to_vec()).unwrap_err();
            let told = fault.sentence();
            assert!(
                told.contains(&format!("line {line} of trail.jsonl")),
                "{told}"
            );
        }
        let good = text_of(Path::new("x"), "Māra\n".into());
        assert_eq!(good.unwrap(), "Māra\n");
    }
}
