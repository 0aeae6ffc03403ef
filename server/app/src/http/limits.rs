//! How often one caller may try. Signing in is limited by address and by account, so that passwords
//! cannot be guessed; the hold codes have a bucket of their own, wide enough that nobody on a set who
//! taps "hold" in a hurry is ever refused, and narrow enough that codes cannot be searched.

use std::{net::IpAddr, num::NonZeroU32};

use actix_web::{
    Error, HttpRequest, ResponseError,
    body::{BoxBody, MessageBody},
    dev::{ServiceRequest, ServiceResponse},
    http::header::{self, HeaderMap},
    middleware::Next,
    web,
};
use governor::{
    DefaultKeyedRateLimiter, NotUntil, Quota, RateLimiter,
    clock::{Clock, DefaultClock},
};

use super::{
    problem::{Code, Problem},
    state::Shared,
};

/// The buckets.
pub struct Limits {
    sign_in_by_address: DefaultKeyedRateLimiter<IpAddr>,
    sign_in_by_email: DefaultKeyedRateLimiter<String>,
    hold_codes: DefaultKeyedRateLimiter<IpAddr>,
    clock: DefaultClock,
}

const fn some(count: u32) -> NonZeroU32 {
    match NonZeroU32::new(count) {
        Some(count) => count,
        None => NonZeroU32::MIN,
    }
}

impl Default for Limits {
    fn default() -> Self {
        Self {
            // A whole unit may sit behind one address and sign in at the morning's call.
            sign_in_by_address: RateLimiter::keyed(Quota::per_minute(some(60))),
            // Ten tries, then one every six seconds: no nuisance to a person, useless for guessing.
            sign_in_by_email: RateLimiter::keyed(Quota::per_minute(some(10))),
            hold_codes: RateLimiter::keyed(Quota::per_second(some(2)).allow_burst(some(240))),
            clock: DefaultClock::default(),
        }
    }
}

impl Limits {
    /// Counts one attempt to sign in to an account.
    ///
    /// # Errors
    /// `rate_limited`, saying when to try again.
    pub fn sign_in_to(&self, email: &str) -> Result<(), Problem> {
        let key = email.trim().to_lowercase();
        let checked = self.sign_in_by_email.check_key(&key);
        checked.map_err(|until| self.refused(&until, "attempts to sign in to this account"))
    }

    /// Forgets callers who have been quiet long enough to have a full bucket again.
    pub fn forget_the_quiet(&self) {
        self.sign_in_by_address.retain_recent();
        self.sign_in_by_email.retain_recent();
        self.hold_codes.retain_recent();
    }

    fn refused(&self, until: &NotUntil<<DefaultClock as Clock>::Instant>, what: &str) -> Problem {
        let seconds = until.wait_time_from(self.clock.now()).as_secs() + 1;
        Problem::new(
            Code::RateLimited,
            format!("Too many {what}; try again in {seconds} s."),
        )
        .with_header(header::RETRY_AFTER, seconds.to_string())
    }
}

/// The caller's address: the socket's, or behind a proxy what the proxy itself saw.
pub fn address_of(request: &HttpRequest, behind_proxy: bool) -> IpAddr {
    let told = behind_proxy.then(|| last_hop(request.headers())).flatten();
    told.or_else(|| request.peer_addr().map(|peer| peer.ip()))
        .unwrap_or(IpAddr::V4(std::net::Ipv4Addr::UNSPECIFIED))
}

/// The last hop of `X-Forwarded-For`, or of `Forwarded` (RFC 7239) where there is none. The proxy writes
/// the last one; everything before it came from the caller, who may have invented it.
fn last_hop(headers: &HeaderMap) -> Option<IpAddr> {
    let last = |name: &str| {
        let value = headers.get_all(name).last()?.to_str().ok()?;
        value.rsplit(',').next()
    };
    if let Some(hop) = last("x-forwarded-for") {
        return parse_address(hop);
    }
    let told = last("forwarded")?.split(';').find_map(|pair| {
        let (name, value) = pair.split_once('=')?;
        name.trim().eq_ignore_ascii_case("for").then_some(value)
    })?;
    parse_address(told.trim().trim_matches('"'))
}

fn parse_address(text: &str) -> Option<IpAddr> {
    let plain = text.trim().trim_start_matches('[');
    plain
        .parse()
        .ok()
        .or_else(|| plain.split(']').next()?.parse().ok())
        .or_else(|| plain.rsplit_once(':')?.0.parse().ok())
}

/// Counts attempts to sign in, refresh, set up and accept invitations by the caller's address.
///
/// # Errors
/// Only what the handler itself fails with; a refusal is an answer.
pub async fn sign_in(
    request: ServiceRequest,
    next: Next<impl MessageBody + 'static>,
) -> Result<ServiceResponse<BoxBody>, Error> {
    limited(request, next, |limits, address| {
        let checked = limits.sign_in_by_address.check_key(&address);
        checked.map_err(|until| limits.refused(&until, "attempts to sign in from this address"))
    })
    .await
}

/// Counts holds raised by code by the caller's address.
///
/// # Errors
/// As [`sign_in`].
pub async fn hold_codes(
    request: ServiceRequest,
    next: Next<impl MessageBody + 'static>,
) -> Result<ServiceResponse<BoxBody>, Error> {
    limited(request, next, |limits, address| {
        let checked = limits.hold_codes.check_key(&address);
        checked.map_err(|until| limits.refused(&until, "holds by code from this address"))
    })
    .await
}

async fn limited(
    request: ServiceRequest,
    next: Next<impl MessageBody + 'static>,
    check: impl FnOnce(&Limits, IpAddr) -> Result<(), Problem>,
) -> Result<ServiceResponse<BoxBody>, Error> {
    let refusal = request.app_data::<web::Data<Shared>>().and_then(|shared| {
        let address = address_of(request.request(), shared.behind_proxy);
        check(&shared.limits, address).err()
    });
    match refusal {
        Some(problem) => Ok(request.into_response(problem.error_response())),
        None => next
            .call(request)
            .await
            .map(ServiceResponse::map_into_boxed_body),
    }
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;

    #[test]
    fn one_account_is_refused_after_ten_tries_and_others_are_not() {
        let limits = Limits::default();
        for _ in 0..10 {
            limits.sign_in_to("ines@example.test").unwrap();
        }
        assert_eq!(
            limits.sign_in_to(" Ines@example.test").unwrap_err().code(),
            Code::RateLimited
        );
        limits.sign_in_to("oke@example.test").unwrap();
    }

    #[test]
    fn behind_a_proxy_the_last_hop_counts_and_not_what_the_caller_wrote_before_it() {
        use actix_web::test::TestRequest;
        // Addresses of documentation: RFC 5737 and RFC 3849.
        let seen = |lines: &[(&'static str, &'static str)], behind_proxy| {
            let request = lines
                .iter()
                .fold(TestRequest::default(), |request, line| {
                    request.append_header(*line)
                })
                .peer_addr("192.0.2.1:80".parse().unwrap())
                .to_http_request();
            address_of(&request, behind_proxy).to_string()
        };
        let chain = [("x-forwarded-for", "203.0.113.9, 198.51.100.7")];
        assert_eq!(seen(&chain, true), "198.51.100.7");
        assert_eq!(seen(&chain, false), "192.0.2.1");
        let lines = [
            ("x-forwarded-for", "203.0.113.9"),
            ("x-forwarded-for", "198.51.100.8"),
        ];
        assert_eq!(seen(&lines, true), "198.51.100.8");
        let standard = [(
            "forwarded",
            "for=203.0.113.9, proto=https;For=\"[2001:db8::7]:4711\"",
        )];
        assert_eq!(seen(&standard, true), "2001:db8::7");
        assert_eq!(seen(&[("x-forwarded-for", "unknown")], true), "192.0.2.1");
        assert_eq!(seen(&[], true), "192.0.2.1");
    }

    #[test]
    fn addresses_are_read_with_and_without_ports() {
        for text in [
            "192.0.2.7",
            "192.0.2.7:4711",
            "[2001:db8::7]:4711",
            "2001:db8::7",
        ] {
            assert!(parse_address(text).is_some(), "{text}");
        }
        assert!(parse_address("unknown").is_none());
    }
}
