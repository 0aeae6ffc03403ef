//! `handbook`: writes the pages about the techniques, made from what the program itself says of them.

use std::{fs, path::Path};

use super::{arguments::HandbookArguments, fault::Fault, say};
use crate::handbook;

pub(crate) fn run(arguments: &HandbookArguments) -> Result<(), Fault> {
    let pages = handbook::pages();
    for (path, text) in &pages {
        let file = arguments.out.join(path);
        if let Some(folder) = file.parent() {
            fs::create_dir_all(folder).map_err(|error| cannot(folder, &error))?;
        }
        fs::write(&file, text).map_err(|error| cannot(&file, &error))?;
    }
    if let Some(file) = &arguments.readme {
        let text = fs::read_to_string(file).map_err(|error| cannot(file, &error))?;
        let made = handbook::readme(&text).ok_or_else(|| {
            Fault::failed(format!(
                "{} has no place for the table of techniques; it goes between the lines {:?} and {:?}",
                file.display(),
                handbook::TABLE_BEGINS.trim_end(),
                handbook::TABLE_ENDS.trim_end()
            ))
        })?;
        fs::write(file, made).map_err(|error| cannot(file, &error))?;
    }
    say(format!(
        "{} pages are in {}",
        pages.len(),
        arguments.out.display()
    ))
}

fn cannot(file: &Path, error: &std::io::Error) -> Fault {
    Fault::failed(format!("cannot write {}: {error}", file.display()))
}
