//! What the terminal says when phones can be let in: the addresses, the fingerprint to compare, and a QR
//! code that opens the page about trusting.

use fast_qr::QRBuilder;

use super::{Https, Local, authority::Origin};

/// The text for the screen of the machine that serves. `page` is the address of the page about
/// trusting; `colours` is for a terminal, whose own colours could turn the code inside out.
pub fn text(https: &Https, page: Option<&str>, colours: bool) -> String {
    let mut addresses = https.addresses().into_iter();
    let mut text = String::new();
    if let Some(first) = addresses.next() {
        text.push_str(&format!("  The app        {first}\n"));
    }
    for other in addresses {
        text.push_str(&format!("  or             {other}\n"));
    }
    if let (Some(local), Some(page)) = (https.local(), page) {
        text.push_str(&format!("  New phones     {page}\n"));
        text.push_str(&trusting(local, page, colours));
    }
    text
}

fn trusting(local: &Local, page: &str, colours: bool) -> String {
    let authority = &local.authority;
    let fingerprint = authority.fingerprint();
    // Thirty-two pairs and their colons, cut in half where a colon is.
    let (first, second) = fingerprint
        .split_at_checked(48)
        .unwrap_or((&fingerprint, ""));
    let origin = match local.origin {
        Origin::Kept => "",
        Origin::First => {
            "A certificate authority was made for this set. Each phone has to trust it once.\n"
        }
        Origin::Renewed => {
            "The certificate authority was made anew. Every phone has to trust it again, and\n\
             should forget the old one.\n"
        }
    };
    format!(
        "\n{origin}Each new phone opens the page for new phones once and is walked through.\n\
         What it shows of the certificate must be the same as here:\n\n  \
         {}\n  SHA-256  {first}\n           {second}\n\n\
         The authority is kept in {}.\n\
         Keep a copy of that folder safe, and hand it to nobody.\n\
         What a phone keeps belongs to the address it opened: give this machine one that\n\
         stays.\n\n{}\n",
        authority.name(),
        authority.folder().display(),
        code(page, colours)
    )
}

/// The code in half blocks, light on dark with its quiet margin, two columns in from the edge.
fn code(address: &str, colours: bool) -> String {
    let (on, off) = if colours {
        ("\x1b[97;40m", "\x1b[0m")
    } else {
        ("", "")
    };
    match QRBuilder::new(address).build() {
        Ok(code) => {
            let size = code.size + 2 * MARGIN;
            let dark = |row: usize, column: usize| {
                let inside = |at: usize| (MARGIN..MARGIN + code.size).contains(&at);
                inside(row) && inside(column) && code[row - MARGIN][column - MARGIN].value()
            };
            (0..size.div_ceil(2))
                .map(|pair| {
                    let line: String = (0..size)
                        .map(
                            |column| match (dark(2 * pair, column), dark(2 * pair + 1, column)) {
                                (false, false) => '█',
                                (false, true) => '▀',
                                (true, false) => '▄',
                                (true, true) => ' ',
                            },
                        )
                        .collect();
                    format!("  {on}{line}{off}\n")
                })
                .collect()
        }
        // Only an address longer than a code can hold; it is printed in words as well.
        Err(_) => String::new(),
    }
}

/// The quiet zone around a code that readers are promised (ISO/IEC 18004), in modules.
const MARGIN: usize = 4;
