//! The names and addresses this machine answers to on a local network, and which of them an authority
//! may speak for. Asks the system once for its interfaces and its name; the rest is plain sorting.

use std::{
    collections::BTreeSet,
    fmt,
    net::{IpAddr, Ipv4Addr, Ipv6Addr, SocketAddr, UdpSocket},
    str::FromStr,
};

/// One name or address that a phone can type.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Name {
    /// An address.
    Ip(IpAddr),
    /// A host's name, in lower case.
    Host(String),
}

impl Name {
    /// As it stands in a web address: IPv6 in brackets.
    pub fn in_url(&self) -> String {
        match self {
            Name::Ip(IpAddr::V6(ip)) => format!("[{ip}]"),
            other => other.to_string(),
        }
    }

    /// Whether it always means the very machine that asks.
    pub fn is_loopback(&self) -> bool {
        match self {
            Name::Ip(ip) => ip.is_loopback(),
            Name::Host(host) => host == "localhost",
        }
    }
}

impl fmt::Display for Name {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Name::Ip(ip) => ip.fmt(f),
            Name::Host(host) => f.write_str(host),
        }
    }
}

impl FromStr for Name {
    type Err = String;

    /// Reads an address, in brackets or not, or a host's name.
    fn from_str(text: &str) -> Result<Self, String> {
        let text = text.trim();
        let bare = text
            .strip_prefix('[')
            .and_then(|rest| rest.strip_suffix(']'))
            .unwrap_or(text);
        if let Ok(ip) = bare.parse::<IpAddr>() {
            return match ip {
                ip if ip.is_unspecified() || ip.is_multicast() => {
                    Err(format!("{ip} is no address of one machine"))
                }
                ip => Ok(Name::Ip(ip)),
            };
        }
        let host = text.trim_end_matches('.').to_ascii_lowercase();
        let label = |label: &str| {
            (1..=63).contains(&label.len())
                && !label.starts_with('-')
                && !label.ends_with('-')
                && label
                    .bytes()
                    .all(|byte| byte.is_ascii_alphanumeric() || byte == b'-')
        };
        let last = host.rsplit('.').next().unwrap_or_default();
        if host.len() > 253 || !host.split('.').all(label) {
            return Err(
                "a name is letters, digits and hyphens between dots, as in slate.local; no \
                 https://, no port, no *"
                    .to_owned(),
            );
        }
        if host != "localhost" && !host.contains('.') {
            return Err(format!(
                "a name with no dot could be all of a domain on the internet; write {host}.local, or the \
                 whole name that the network gives it"
            ));
        }
        if last.bytes().all(|byte| byte.is_ascii_digit()) {
            return Err("it looks like an address and is none".to_owned());
        }
        Ok(Name::Host(host))
    }
}

/// The ranges that are nobody's on the internet and everybody's at home, with the size of their prefix.
pub const PRIVATE_RANGES: [(IpAddr, u8); 7] = [
    (IpAddr::V4(Ipv4Addr::new(10, 0, 0, 0)), 8),
    (IpAddr::V4(Ipv4Addr::new(172, 16, 0, 0)), 12),
    (IpAddr::V4(Ipv4Addr::new(192, 168, 0, 0)), 16),
    (IpAddr::V4(Ipv4Addr::new(169, 254, 0, 0)), 16),
    (IpAddr::V4(Ipv4Addr::new(127, 0, 0, 0)), 8),
    (IpAddr::V6(Ipv6Addr::new(0xfc00, 0, 0, 0, 0, 0, 0, 0)), 7),
    (IpAddr::V6(Ipv6Addr::LOCALHOST), 128),
];

/// Whether an address lies in one of [`PRIVATE_RANGES`].
pub fn is_private(ip: IpAddr) -> bool {
    match ip {
        IpAddr::V4(ip) => ip.is_private() || ip.is_link_local() || ip.is_loopback(),
        IpAddr::V6(ip) => ip.is_unique_local() || ip.is_loopback(),
    }
}

/// What the system says of this machine.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Machine {
    /// The addresses of its interfaces, loopback left out.
    pub addresses: Vec<IpAddr>,
    /// The address it would speak from to somewhere far away; usually the one phones reach.
    pub outward: Option<IpAddr>,
    /// Its name, without a domain.
    pub host: Option<String>,
}

impl Machine {
    /// Asks the system.
    ///
    /// # Errors
    /// When the interfaces cannot be listed.
    pub fn look() -> std::io::Result<Self> {
        let addresses = if_addrs::get_if_addrs()?
            .into_iter()
            .map(|interface| interface.ip())
            .filter(|ip| !ip.is_loopback())
            .collect();
        let host = hostname::get()
            .ok()
            .and_then(|name| name.into_string().ok())
            .map(|name| name.split('.').next().unwrap_or_default().to_owned())
            .filter(|name| matches!(format!("{name}.local").parse(), Ok(Name::Host(_))))
            .map(|name| name.to_ascii_lowercase());
        Ok(Self {
            addresses,
            outward: outward(),
            host,
        })
    }

    /// The private addresses that a listener there can be reached at, the likeliest first.
    pub fn reachable(&self, listen: SocketAddr) -> Vec<IpAddr> {
        let mut found: Vec<IpAddr> = self
            .addresses
            .iter()
            .copied()
            .chain(listen.ip().is_loopback().then(|| listen.ip()))
            .filter(|ip| is_private(*ip))
            .filter(|ip| match listen.ip() {
                IpAddr::V4(Ipv4Addr::UNSPECIFIED) => ip.is_ipv4(),
                IpAddr::V6(Ipv6Addr::UNSPECIFIED) => true,
                one => *ip == one,
            })
            .collect();
        // A router's usual range before the ones that virtual networks like to take.
        found.sort_by_key(|ip| {
            let rank = match ip {
                ip if Some(*ip) == self.outward => 0,
                IpAddr::V4(ip) => match ip.octets() {
                    [192, 168, ..] => 1,
                    [10, ..] => 2,
                    [172, ..] => 3,
                    _ => 4,
                },
                IpAddr::V6(_) => 5,
            };
            (rank, *ip)
        });
        found.dedup();
        found
    }

    /// Everything a certificate for this machine should name, as far as `allowed` lets it, and what
    /// was asked for by name in any case.
    pub fn names(&self, asked: &[Name], allowed: impl Fn(&Name) -> bool) -> BTreeSet<Name> {
        // Not the bare name: an authority that may speak for "app" may speak for everything under .app.
        let host = self
            .host
            .iter()
            .map(|host| Name::Host(format!("{host}.local")));
        let loopback = [
            Name::Host("localhost".to_owned()),
            Name::Ip(Ipv4Addr::LOCALHOST.into()),
            Name::Ip(Ipv6Addr::LOCALHOST.into()),
        ];
        self.addresses
            .iter()
            .filter(|ip| is_private(**ip))
            .map(|ip| Name::Ip(*ip))
            .chain(host)
            .chain(loopback)
            .filter(allowed)
            .chain(asked.iter().cloned())
            .collect()
    }
}

/// The address the system would speak from. Connecting a datagram socket sends nothing; it only asks
/// the routing table, here for an address kept for documentation (RFC 5737).
fn outward() -> Option<IpAddr> {
    let socket = UdpSocket::bind((Ipv4Addr::UNSPECIFIED, 0)).ok()?;
    socket.connect((Ipv4Addr::new(198, 51, 100, 1), 9)).ok()?;
    socket.local_addr().ok().map(|address| address.ip())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn ip(text: &str) -> IpAddr {
        text.parse().unwrap()
    }

    fn machine() -> Machine {
        Machine {
            addresses: [
                "203.0.113.9",
                "172.17.0.1",
                "10.0.4.2",
                "fd00::2",
                "fe80::1",
            ]
            .map(ip)
            .to_vec(),
            outward: Some(ip("10.0.4.2")),
            host: Some("slate".into()),
        }
    }

    #[test]
    fn names_are_read_as_people_write_them() {
        let host = |text: &str| Ok(Name::Host(text.to_owned()));
        assert_eq!("Slate.Local.".parse(), host("slate.local"));
        assert_eq!("10.1.2.3".parse(), Ok(Name::Ip(ip("10.1.2.3"))));
        assert_eq!("[fd00::2]".parse(), Ok(Name::Ip(ip("fd00::2"))));
        for wrong in [
            "",
            "https://slate",
            "slate:8443",
            "*.local",
            "a..b",
            "-a",
            "tøm",
            "10.0.0.256",
            "0.0.0.0",
            "sl ate",
            "app",
        ] {
            assert!(wrong.parse::<Name>().is_err(), "{wrong:?} was taken");
        }
        assert_eq!(Name::Ip(ip("fd00::2")).in_url(), "[fd00::2]");
    }

    #[test]
    fn a_private_address_lies_in_a_range_that_the_authority_is_given() {
        let within = |ip: IpAddr, (base, prefix): (IpAddr, u8)| match (ip, base) {
            (IpAddr::V4(ip), IpAddr::V4(base)) => {
                (u32::from(ip) ^ u32::from(base)) >> (32 - u32::from(prefix)) == 0
            }
            (IpAddr::V6(ip), IpAddr::V6(base)) => {
                (u128::from(ip) ^ u128::from(base)) >> (128 - u32::from(prefix)) == 0
            }
            _ => false,
        };
        for text in [
            "10.255.0.1",
            "172.15.0.1",
            "172.16.0.1",
            "172.31.9.9",
            "172.32.0.1",
            "192.168.7.7",
            "192.169.0.1",
            "169.254.3.3",
            "127.0.0.53",
            "8.8.8.8",
            "192.0.2.2",
            "100.64.0.1",
            "fd12::1",
            "fc00::1",
            "fe80::1",
            "2001:db8::1",
            "::1",
            "::2",
        ] {
            let ranged = PRIVATE_RANGES.iter().any(|range| within(ip(text), *range));
            assert_eq!(is_private(ip(text)), ranged, "{text}");
        }
    }

    #[test]
    fn only_addresses_that_the_listener_hears_are_told_the_likeliest_first() {
        let told = |listen: &str| machine().reachable(listen.parse().unwrap());
        assert_eq!(told("0.0.0.0:8443"), [ip("10.0.4.2"), ip("172.17.0.1")]);
        assert_eq!(
            told("[::]:8443"),
            [ip("10.0.4.2"), ip("172.17.0.1"), ip("fd00::2")]
        );
        assert_eq!(told("172.17.0.1:8443"), [ip("172.17.0.1")]);
        assert_eq!(told("127.0.0.1:8443"), [ip("127.0.0.1")]);
        assert!(told("203.0.113.9:8443").is_empty());
    }

    #[test]
    fn a_certificate_names_what_is_private_and_what_was_asked_for() {
        let asked = [Name::Ip(ip("203.0.113.9"))];
        let names = machine().names(&asked, |name| *name != Name::Ip(ip("172.17.0.1")));
        let told: Vec<String> = names.iter().map(Name::to_string).collect();
        assert_eq!(
            told,
            [
                "10.0.4.2",
                "127.0.0.1",
                "203.0.113.9",
                "::1",
                "fd00::2",
                "localhost",
                "slate.local"
            ]
        );
    }
}
