//! What a request says it was sent with, in the two words people know it by: the browser and the system.
//! Read from `User-Agent`, of which nothing else is kept. It tells sign-ins apart for their owner and decides
//! nothing.

use std::{
    convert::Infallible,
    future::{Ready, ready},
};

use actix_web::{FromRequest, HttpRequest, dev::Payload, http::header};
use gagwright_store::sessions::Agent;

/// As handlers ask for it.
pub struct SentWith(pub Agent);

/// A mark in `User-Agent` and the name it stands for; the first that is found counts, for most browsers also
/// claim to be the older ones.
const BROWSERS: [(&str, &str); 6] = [
    ("Edg", "Edge"),
    ("SamsungBrowser/", "Samsung Internet"),
    ("Firefox/", "Firefox"),
    ("FxiOS/", "Firefox"),
    ("Chrom", "Chrome"),
    ("Safari/", "Safari"),
];
const SYSTEMS: [(&str, &str); 7] = [
    ("Android", "Android"),
    ("iPhone", "iPhone"),
    ("iPad", "iPad"),
    ("Windows", "Windows"),
    ("Mac OS X", "macOS"),
    ("CrOS", "ChromeOS"),
    ("Linux", "Linux"),
];

/// Reads one header's text.
pub fn read(text: &str) -> Agent {
    let named = |names: &[(&str, &str)]| {
        let found = names.iter().find(|(mark, _)| text.contains(mark));
        found.map(|(_, name)| (*name).to_owned())
    };
    Agent {
        browser: named(&BROWSERS),
        system: named(&SYSTEMS),
    }
}

impl FromRequest for SentWith {
    type Error = Infallible;
    type Future = Ready<Result<Self, Infallible>>;

    fn from_request(request: &HttpRequest, _: &mut Payload) -> Self::Future {
        let sent = request.headers().get(header::USER_AGENT);
        let text = sent.and_then(|value| value.to_str().ok()).unwrap_or("");
        ready(Ok(Self(read(text))))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn said(text: &str) -> String {
        let Agent { browser, system } = read(text);
        let word = |one: Option<String>| one.unwrap_or_else(|| "?".into());
        format!("{} on {}", word(browser), word(system))
    }

    #[test]
    fn the_two_words_are_found_behind_what_browsers_claim() {
        let cases = [
            (
                "Mozilla/5.0 (Linux; Android 15; K) AppleWebKit/537.36 (KHTML, like Gecko) \
                 Chrome/140.0.0.0 Mobile Safari/537.36",
                "Chrome on Android",
            ),
            (
                "Mozilla/5.0 (iPhone; CPU iPhone OS 18_5 like Mac OS X) AppleWebKit/605.1.15 \
                 (KHTML, like Gecko) Version/18.5 Mobile/15E148 Safari/604.1",
                "Safari on iPhone",
            ),
            (
                "Mozilla/5.0 (X11; Linux x86_64; rv:140.0) Gecko/20100101 Firefox/140.0",
                "Firefox on Linux",
            ),
            (
                "Mozilla/5.0 (Windows NT 10.0; Win64; x64) AppleWebKit/537.36 (KHTML, like Gecko) \
                 Chrome/140.0.0.0 Safari/537.36 Edg/140.0.0.0",
                "Edge on Windows",
            ),
            ("carrier-pigeon/1", "? on ?"),
            ("", "? on ?"),
        ];
        for (text, words) in cases {
            assert_eq!(said(text), words, "{text}");
        }
    }
}
