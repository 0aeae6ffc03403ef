//! Which certificates run out before which days.

use gagwright_casting::{Catalogue, Certificate, LapseCause, Person, lapsing};
use jiff::civil::{Date, date};

use crate::builders::{certificate, person};

const DAYS: [Date; 3] = [date(2027, 3, 10), date(2027, 3, 8), date(2027, 3, 19)];

fn holding(certificates: Vec<Certificate>) -> Person {
    Person {
        certificates,
        ..person("P01")
    }
}

fn ending(kind: &str, expires: Option<Date>) -> Certificate {
    Certificate {
        expires,
        ..certificate(kind)
    }
}

fn seen(people: &[Person]) -> Vec<(String, Date, Date, LapseCause)> {
    lapsing(people, &DAYS, Catalogue::built_in())
        .into_iter()
        .map(|lapse| (lapse.kind, lapse.last_day, lapse.before, lapse.cause))
        .collect()
}

#[test]
#[rustfmt::skip] // one case a line
fn the_first_day_no_longer_covered_is_named() {
    let kind = "first_aid_at_work";
    for (expires, before) in [
        (date(2026, 1, 1), Some(date(2027, 3, 8))),
        (date(2027, 3, 7), Some(date(2027, 3, 8))),
        (date(2027, 3, 8), Some(date(2027, 3, 10))),
        (date(2027, 3, 18), Some(date(2027, 3, 19))),
        (date(2027, 3, 19), None),
    ] {
        let people = [holding(vec![ending(kind, Some(expires))])];
        let expected: Vec<_> = before
            .map(|before| (kind.to_owned(), expires, before, LapseCause::Expires))
            .into_iter()
            .collect();
        assert_eq!(seen(&people), expected, "{expires}");
    }
    let people = [holding(vec![ending(kind, Some(date(2026, 1, 1)))])];
    assert!(
        lapsing(&people, &[], Catalogue::built_in()).is_empty(),
        "no days, no lapses"
    );
}

#[test]
fn a_clock_that_runs_on_use_lapses_too() {
    // Rope access: more than six unused months (IRATA International's page on refresher training).
    let mut rope = certificate("rope_access_1");
    rope.last_used = Some(date(2026, 9, 9));
    assert_eq!(
        seen(&[holding(vec![rope])]),
        [(
            "rope_access_1".into(),
            date(2027, 3, 9),
            date(2027, 3, 10),
            LapseCause::Unused
        )]
    );
}

#[test]
fn one_that_stands_in_without_a_gap_is_enough() {
    let short = ending("rope_access_1", Some(date(2027, 3, 9)));
    let mut higher = certificate("rope_access_2");
    assert_eq!(seen(&[holding(vec![short.clone(), higher.clone()])]), []);
    higher.issued = date(2027, 3, 10);
    assert_eq!(
        seen(&[holding(vec![short.clone(), higher.clone()])]),
        [],
        "begins the day after"
    );
    higher.issued = date(2027, 3, 11);
    assert_eq!(
        seen(&[holding(vec![short.clone(), higher.clone()])]).len(),
        1,
        "leaves a gap"
    );
    higher.issued = date(2026, 1, 10);
    higher.withdrawn = Some(date(2026, 2, 1));
    assert_eq!(
        seen(&[holding(vec![short.clone(), higher])]).len(),
        1,
        "was withdrawn"
    );
    let mut other_class = ending("powered_access", Some(date(2027, 3, 9)));
    other_class.category = Some("3a".into());
    let mut longer = certificate("powered_access");
    longer.category = Some("3b".into());
    assert_eq!(
        seen(&[holding(vec![other_class, longer])]).len(),
        1,
        "another category"
    );
    let ending_soon = ending("pyrotechnician", Some(date(2027, 3, 9)));
    let dateless = ending("pyrotechnician", None);
    assert_eq!(
        seen(&[holding(vec![ending_soon, dateless])]).len(),
        1,
        "no date on record"
    );
    let card = ending("sport_diver", Some(date(2027, 3, 9)));
    let endless = ending("rescue_diver", None);
    assert_eq!(
        seen(&[holding(vec![card, endless])]),
        [],
        "does not run out"
    );
}

#[test]
fn what_never_ends_or_is_gone_is_left_out() {
    let mut withdrawn = ending("first_aid_at_work", Some(date(2027, 1, 1)));
    withdrawn.withdrawn = Some(date(2026, 6, 1));
    let people = [holding(vec![
        ending("sport_diver", None),
        withdrawn,
        ending("wizard_licence", Some(date(2027, 1, 1))),
    ])];
    assert_eq!(seen(&people), []);
}

#[test]
fn the_soonest_comes_first() {
    let people = [
        holding(vec![ending("first_aid_at_work", Some(date(2027, 3, 1)))]),
        holding(vec![ending("basic_life_support", Some(date(2027, 2, 1)))]),
    ];
    let kinds: Vec<_> = seen(&people).into_iter().map(|lapse| lapse.0).collect();
    assert_eq!(kinds, ["basic_life_support", "first_aid_at_work"]);
}
