//! Plain tables for a terminal of 80 columns: columns as wide as their content allows, long cells
//! wrapped, widths counted as a terminal shows them so that any script lines up. It knows nothing of
//! gags.

use unicode_width::{UnicodeWidthChar, UnicodeWidthStr};

/// The width that every table and paragraph fits.
pub const WIDTH: usize = 80;

/// How a column lines up.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Align {
    /// Words.
    Left,
    /// Numbers.
    Right,
}

/// A table being filled.
#[derive(Clone, Debug)]
pub struct Table {
    headings: Vec<(&'static str, Align)>,
    rows: Vec<Vec<String>>,
}

impl Table {
    /// A table with these headings.
    pub fn new(headings: &[(&'static str, Align)]) -> Self {
        Self {
            headings: headings.to_vec(),
            rows: Vec::new(),
        }
    }

    /// Adds a row; cells that are left out are empty.
    pub fn row<I, S>(&mut self, cells: I)
    where
        I: IntoIterator<Item = S>,
        S: Into<String>,
    {
        let mut row: Vec<String> = cells.into_iter().map(Into::into).collect();
        row.resize(self.headings.len(), String::new());
        self.rows.push(row);
    }

    /// Whether it has no rows.
    pub fn is_empty(&self) -> bool {
        self.rows.is_empty()
    }

    /// The table as text, every line at most `width` columns and ending in a line feed.
    pub fn render(&self, width: usize) -> String {
        let widths = self.widths(width);
        let mut text = String::new();
        let headings: Vec<String> = self.headings.iter().map(|one| one.0.to_owned()).collect();
        self.line(&mut text, &headings, &widths);
        let rule: Vec<String> = widths.iter().map(|width| "-".repeat(*width)).collect();
        self.line(&mut text, &rule, &widths);
        for row in &self.rows {
            self.line(&mut text, row, &widths);
        }
        text
    }

    /// Column widths: what each needs, and where that is too much together, the widest give way first.
    /// Words stay whole as long as they can: only when even the longest words do not fit side by side
    /// are words longer than forty, then twenty, then twelve columns cut.
    fn widths(&self, width: usize) -> Vec<usize> {
        let column = |index: usize| {
            self.rows
                .iter()
                .map(move |row| row[index].as_str())
                .chain([self.headings[index].0])
        };
        let count = self.headings.len();
        let mut widths: Vec<usize> = (0..count)
            .map(|index| column(index).map(longest_line).max().unwrap_or(0))
            .collect();
        let words: Vec<usize> = (0..count)
            .map(|index| column(index).map(longest_word).max().unwrap_or(0))
            .collect();
        let room = width.saturating_sub(2 * count.saturating_sub(1));
        let capped = |most: usize| {
            words
                .iter()
                .map(|word| (*word).min(most))
                .collect::<Vec<_>>()
        };
        let least = [usize::MAX, 40, 20]
            .into_iter()
            .map(capped)
            .find(|least| least.iter().sum::<usize>() <= room)
            .unwrap_or_else(|| capped(12));
        while widths.iter().sum::<usize>() > room {
            let widest = (0..count)
                .filter(|index| widths[*index] > least[*index])
                .max_by_key(|index| widths[*index]);
            match widest {
                Some(index) => widths[index] -= 1,
                None => break,
            }
        }
        widths
    }

    fn line(&self, text: &mut String, cells: &[String], widths: &[usize]) {
        let wrapped: Vec<Vec<String>> = cells
            .iter()
            .zip(widths)
            .map(|(cell, width)| wrap(cell, *width))
            .collect();
        let height = wrapped.iter().map(Vec::len).max().unwrap_or(0);
        for at in 0..height {
            let mut line = String::new();
            for (index, column) in wrapped.iter().enumerate() {
                let piece = column.get(at).map_or("", String::as_str);
                let gap = " ".repeat(widths[index].saturating_sub(piece.width()));
                if index > 0 {
                    line.push_str("  ");
                }
                match self.headings[index].1 {
                    Align::Left => {
                        line.push_str(piece);
                        line.push_str(&gap);
                    }
                    Align::Right => {
                        line.push_str(&gap);
                        line.push_str(piece);
                    }
                }
            }
            text.push_str(line.trim_end());
            text.push('\n');
        }
    }
}

fn longest_line(cell: &str) -> usize {
    cell.lines().map(UnicodeWidthStr::width).max().unwrap_or(0)
}

fn longest_word(cell: &str) -> usize {
    cell.split_whitespace()
        .map(UnicodeWidthStr::width)
        .max()
        .unwrap_or(0)
}

/// Breaks text into lines of at most `width` columns, at spaces where there are any; a word longer
/// than the width is cut.
pub fn wrap(text: &str, width: usize) -> Vec<String> {
    let width = width.max(1);
    let mut lines = Vec::new();
    for paragraph in text.split('\n') {
        let mut line = String::new();
        for word in paragraph.split(' ').filter(|word| !word.is_empty()) {
            let mut word = word;
            if !line.is_empty() && line.width() + 1 + word.width() > width {
                lines.push(std::mem::take(&mut line));
            }
            while word.width() > width {
                let (head, tail) = cut(word, width);
                lines.push(head.to_owned());
                word = tail;
            }
            if !line.is_empty() {
                line.push(' ');
            }
            line.push_str(word);
        }
        lines.push(line);
    }
    lines
}

/// Splits a word so that the head fits the width; at least one character goes into the head.
fn cut(word: &str, width: usize) -> (&str, &str) {
    let mut used = 0;
    for (at, character) in word.char_indices() {
        let wide = character.width().unwrap_or(0);
        if used + wide > width && at > 0 {
            return word.split_at(at);
        }
        used += wide;
    }
    (word, "")
}

/// A paragraph wrapped to the terminal, each line after `indent` spaces, the first after `lead`.
pub fn paragraph(lead: &str, indent: usize, text: &str) -> String {
    paragraph_in(WIDTH, lead, indent, text)
}

/// As [`paragraph`], wrapped to another width.
pub fn paragraph_in(width: usize, lead: &str, indent: usize, text: &str) -> String {
    let lines = wrap(text, width.saturating_sub(indent.max(lead.width())));
    let mut told = String::new();
    for (at, line) in lines.iter().enumerate() {
        let start = if at == 0 {
            format!("{lead}{}", " ".repeat(indent.saturating_sub(lead.width())))
        } else {
            " ".repeat(indent.max(lead.width()))
        };
        told.push_str(format!("{start}{line}").trim_end());
        told.push('\n');
    }
    told
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn any_script_lines_up_and_long_cells_wrap() {
        let mut table = Table::new(&[
            ("Name", Align::Left),
            ("Level", Align::Right),
            ("Why", Align::Left),
        ]);
        table.row([
            "榎並 汐里",
            "4",
            "level 4 where 3 is needed, last used 41 days before the shooting day, which is enough",
        ]);
        table.row(["Žofie Králíčková", "10", "fine"]);
        let text = table.render(60);
        for line in text.lines() {
            assert!(line.width() <= 60, "{line}");
        }
        assert!(text.contains("榎並 汐里             4  "), "{text}");
        assert!(text.contains("Žofie Králíčková     10  fine"), "{text}");
    }

    #[test]
    fn words_longer_than_the_line_are_cut_and_nothing_is_lost() {
        let text = "abcdefghij klm 漢字漢字漢字";
        let lines = wrap(text, 4);
        assert!(lines.iter().all(|line| line.width() <= 4), "{lines:?}");
        let kept: String = lines.concat().replace(' ', "");
        assert_eq!(kept, text.replace(' ', ""));
    }

    #[test]
    fn paragraphs_hang_under_their_lead() {
        let text = paragraph("  - ", 4, &"word ".repeat(30));
        assert!(text.starts_with("  - word"));
        assert!(
            text.lines()
                .skip(1)
                .all(|line| line.starts_with("    word") && line.width() <= WIDTH)
        );
    }
}
