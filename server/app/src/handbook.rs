//! The handbook: a page for each technique, made from nothing but its description, so that the page and
//! the program cannot say different things. Values in, Markdown out; reads and writes no file.

mod ladder;
mod page;

use std::{collections::BTreeMap, fmt::Write};

use gagwright_mechanics::{Technique, techniques};

pub use page::page;

/// Every page by its path under `docs/`.
pub fn pages() -> BTreeMap<String, String> {
    let mut pages: BTreeMap<String, String> = techniques()
        .iter()
        .map(|one| (format!("techniques/{}.md", one.name()), page(*one)))
        .collect();
    pages.insert("techniques/README.md".into(), contents());
    if let Some(text) = ladder::page() {
        pages.insert("weight-bag-ladder.md".into(), text);
    }
    pages
}

/// The list of all pages.
fn contents() -> String {
    let mut text = String::from(
        "# Techniques\n\nMade from the program by `gagwright handbook`; change the technique, not the page.\n\n",
    );
    table(
        &mut text,
        &["Technique", "What the model covers and leaves out"],
        techniques().iter().map(|one| {
            vec![
                format!("[{}]({}.md)", one.title(), one.name()),
                one.summary().to_owned(),
            ]
        }),
    );
    text.push_str(
        "\nHow test shots settle what no sheet says: [a weight-bag ladder, worked](../weight-bag-ladder.md).\n",
    );
    text
}

/// Where the table of techniques begins in the README.
pub const TABLE_BEGINS: &str = "<!-- techniques: made by gagwright handbook -->\n";
/// Where it ends.
pub const TABLE_ENDS: &str = "<!-- techniques end -->\n";

/// The README with its table of techniques as they are now; none when it has no place for one.
pub fn readme(text: &str) -> Option<String> {
    let (before, rest) = text.split_once(TABLE_BEGINS)?;
    let (_, after) = rest.split_once(TABLE_ENDS)?;
    let mut made = String::from("\n");
    table(
        &mut made,
        &["technique", "computed"],
        techniques().iter().map(|one| {
            vec![
                format!("[{}](docs/techniques/{}.md)", one.title(), one.name()),
                figures(*one),
            ]
        }),
    );
    made.push('\n');
    Some(format!("{before}{TABLE_BEGINS}{made}{TABLE_ENDS}{after}"))
}

/// The most telling figures in a line.
fn figures(technique: &dyn Technique) -> String {
    const MOST: usize = 8;
    let titles: Vec<String> = technique
        .figures()
        .iter()
        .take(MOST)
        .map(|one| lowered(one.title))
        .collect();
    titles.join("; ")
}

/// A title inside a sentence; what begins with an abbreviation stays.
fn lowered(title: &str) -> String {
    let mut letters = title.chars();
    match (letters.next(), letters.clone().next()) {
        (Some(first), Some(second)) if second.is_lowercase() || second == ' ' => {
            first.to_lowercase().chain(letters).collect()
        }
        _ => title.to_owned(),
    }
}

/// Writes a table.
fn table(text: &mut String, columns: &[&str], rows: impl Iterator<Item = Vec<String>>) {
    let line = |cells: &mut dyn Iterator<Item = String>| {
        let cells: Vec<String> = cells
            .map(|cell| cell.replace('|', "\\|").replace('\n', " "))
            .collect();
        format!("| {} |\n", cells.join(" | "))
    };
    text.push_str(&line(&mut columns.iter().map(|one| (*one).to_owned())));
    // Writing to a string cannot fail.
    let _ = writeln!(text, "|{}", "---|".repeat(columns.len()));
    for row in rows {
        text.push_str(&line(&mut row.into_iter()));
    }
}

#[cfg(test)]
mod tests {
    use std::{fs, path::Path};

    use super::*;

    const MEND: &str = "Bring it up to date with: \
        cargo run -p gagwright -- handbook --out docs --readme README.md";

    fn root() -> &'static Path {
        Path::new(concat!(env!("CARGO_MANIFEST_DIR"), "/../.."))
    }

    #[test]
    fn the_pages_kept_are_what_the_techniques_say() {
        let made = pages();
        assert!(made.contains_key("weight-bag-ladder.md"));
        for (path, text) in &made {
            let kept = fs::read_to_string(root().join("docs").join(path)).unwrap_or_default();
            assert!(
                kept == *text,
                "docs/{path} is not what the program says. {MEND}"
            );
        }
        for entry in fs::read_dir(root().join("docs/techniques")).unwrap() {
            let name = entry.unwrap().file_name().into_string().unwrap();
            assert!(
                made.contains_key(&format!("techniques/{name}")),
                "docs/techniques/{name} is the page of no technique; remove it"
            );
        }
    }

    #[test]
    fn the_readme_lists_every_technique() {
        let kept = fs::read_to_string(root().join("README.md")).unwrap();
        let made = readme(&kept).expect("README.md has a place for the table");
        assert!(
            kept == made,
            "README.md does not list the techniques there are. {MEND}"
        );
        // One link beside the rows leads to the index.
        let rows = kept.matches("](docs/techniques/").count();
        let index = kept.matches("](docs/techniques/README.md)").count();
        assert_eq!(rows - index, techniques().len());
    }

    #[test]
    fn a_page_says_all_that_its_technique_does() {
        for technique in techniques() {
            let text = page(*technique);
            let says = |words: &str| {
                assert!(
                    text.contains(&words.replace('|', "\\|")),
                    "{} does not say: {words}",
                    technique.name()
                );
            };
            says(technique.summary());
            for parameter in technique.parameters() {
                says(parameter.title);
                says(parameter.help);
            }
            for figure in technique.figures() {
                says(figure.help);
            }
            for policy in gagwright_mechanics::Limits::built_in()
                .of(technique.name())
                .values()
            {
                says(&policy.why);
            }
        }
    }

    #[test]
    fn a_title_is_lowered_only_where_it_is_a_word() {
        assert_eq!(lowered("Impact speed"), "impact speed");
        assert_eq!(lowered("HIC"), "HIC");
        assert_eq!(lowered("G at the seat"), "g at the seat");
    }
}
