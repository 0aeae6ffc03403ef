//! Certificates: every way one can count or fail to, at its boundaries.

use gagwright_casting::{Certificate, FindingStanding, Requirement};
use jiff::civil::{Date, date};

use crate::builders::{DAY, assert_finding, certificate, context, judge_one, person};

use FindingStanding::{Curable, Met, NotMet};

fn asks(kind: &str, category: Option<&str>, cover_days: u32) -> Requirement {
    Requirement::Certificate {
        any_of: vec![kind.into()],
        category: category.map(Into::into),
        cover_days,
    }
}

/// One certificate, changed as the case says, against one requirement.
fn check(
    case: &str,
    kind: &str,
    requirement: &Requirement,
    change: impl FnOnce(&mut Certificate),
    expected: (FindingStanding, &str, Option<Date>),
) {
    let mut person = person("P01");
    let mut held = certificate(kind);
    change(&mut held);
    person.certificates.push(held);
    let finding = judge_one(requirement, &person, &context());
    assert_finding(case, &finding, expected.0, expected.1, expected.2);
}

#[test]
#[rustfmt::skip] // one case a line
fn expiry_at_the_day_and_at_the_cover_days() {
    // First aid at work renews in 14 days by the catalogue (common practice).
    let kind = "first_aid_at_work";
    let cases: [(&str, u32, Date, FindingStanding, &str, Option<Date>); 8] = [
        ("on the day", 0, DAY, Met, "0 days past the shooting day", None),
        ("the day after", 0, date(2027, 3, 9), Met, "1 day past", None),
        ("the day before", 0, date(2027, 3, 7), Curable, "1 day before the shooting day", Some(date(2027, 2, 22))),
        ("on the last cover day", 3, date(2027, 3, 11), Met, "its 3 cover days", None),
        (
            "a day short of cover",
            3,
            date(2027, 3, 10),
            Curable,
            "1 day short of the shooting day and its 3 cover days",
            Some(date(2027, 2, 25)),
        ),
        (
            "on the day, cover uncovered",
            1,
            DAY,
            Curable,
            "1 day short of the shooting day and its cover day",
            Some(date(2027, 2, 23)),
        ),
        ("long lapsed", 0, date(2026, 2, 10), Curable, "391 days before", Some(date(2027, 2, 22))),
        ("cover off the calendar", u32::MAX, date(2027, 3, 9), Curable, "short", Some(date(2027, 2, 24))),
    ];
    for (case, cover, expires, standing, reason, by) in cases {
        let change = |held: &mut Certificate| held.expires = Some(expires);
        check(
            case,
            kind,
            &asks(kind, None, cover),
            change,
            (standing, reason, by),
        );
    }
}

#[test]
fn what_cannot_be_renewed_is_not_met() {
    let kind = "equipment_examiner";
    let change = |held: &mut Certificate| held.expires = Some(date(2027, 3, 7));
    let expected = (NotMet, "cannot be renewed", None);
    check("examiner", kind, &asks(kind, None, 0), change, expected);
}

#[test]
fn without_a_date_the_scheme_decides() {
    // First aid at work, 36 months (UK HSE): issued 2024-03-09, its last day is 2027-03-08.
    let kind = "first_aid_at_work";
    let issued = |issued| {
        move |held: &mut Certificate| {
            held.issued = issued;
            held.expires = None;
        }
    };
    let asked = asks(kind, None, 0);
    let met = (Met, "valid through 2027-03-08", None);
    check("last day", kind, &asked, issued(date(2024, 3, 9)), met);
    let lapsed = (Curable, "expires on 2027-03-07", Some(date(2027, 2, 22)));
    check("day after", kind, &asked, issued(date(2024, 3, 8)), lapsed);
    let no_date = |held: &mut Certificate| held.expires = None;
    let unknown = (Curable, "no expiry date on record", Some(DAY));
    let kind = "pyrotechnician";
    check("as printed", kind, &asks(kind, None, 0), no_date, unknown);
    let kind = "sport_diver";
    check(
        "no expiry",
        kind,
        &asks(kind, None, 9),
        no_date,
        (Met, "does not expire", None),
    );
}

#[test]
fn a_certificate_counts_from_its_first_day() {
    let kind = "basic_life_support";
    let issued = |day: Date| {
        move |held: &mut Certificate| {
            held.issued = day;
            held.checked.as_mut().unwrap().on = day;
        }
    };
    check(
        "on the day",
        kind,
        &asks(kind, None, 0),
        issued(DAY),
        (Met, "valid through", None),
    );
    let later = (NotMet, "counts from 2027-03-09, 1 day after", None);
    check(
        "the day after",
        kind,
        &asks(kind, None, 0),
        issued(date(2027, 3, 9)),
        later,
    );
}

#[test]
#[rustfmt::skip] // one case a line
fn withdrawal_is_final_from_its_day_on() {
    let kind = "basic_life_support";
    for (case, withdrawn, cover, standing) in [
        ("before", date(2026, 5, 1), 0, NotMet),
        ("on the day", DAY, 0, NotMet),
        ("the day after", date(2027, 3, 9), 0, Met),
        ("inside cover", date(2027, 3, 9), 1, NotMet),
    ] {
        let change = |held: &mut Certificate| held.withdrawn = Some(withdrawn);
        let reason = if standing == NotMet {
            "was withdrawn on"
        } else {
            "valid through"
        };
        check(
            case,
            kind,
            &asks(kind, None, cover),
            change,
            (standing, reason, None),
        );
    }
}

#[test]
#[rustfmt::skip] // one case a line
fn the_category_must_be_the_one_asked_for() {
    let kind = "powered_access";
    let asked = asks(kind, Some("3b"), 0);
    for (case, category, standing, reason) in [
        ("the same", Some("3b"), Met, "valid through"),
        ("another case", Some(" 3B "), Met, "valid through"),
        ("another", Some("3a"), NotMet, "for category 3a where 3b is needed"),
        ("none", None, NotMet, "carries no category where 3b is needed"),
    ] {
        let change = |held: &mut Certificate| held.category = category.map(Into::into);
        check(case, kind, &asked, change, (standing, reason, None));
    }
    let any = |held: &mut Certificate| held.category = Some("3a".into());
    check(
        "not asked",
        kind,
        &asks(kind, None, 0),
        any,
        (Met, "valid through", None),
    );
}

#[test]
#[rustfmt::skip] // one case a line
fn some_clocks_run_on_use() {
    // More than six unused months asks for a refresher (IRATA International's public page on
    // refresher training); the refresher is arranged in 7 days (common practice).
    let kind = "rope_access_1";
    let used = |used: Option<Date>, issued: Date| {
        move |held: &mut Certificate| {
            held.last_used = used;
            held.issued = issued;
        }
    };
    let old = date(2025, 6, 1);
    let checked = |change: &dyn Fn(&mut Certificate), held: &mut Certificate| {
        change(held);
        held.checked.as_mut().unwrap().on = held.issued;
    };
    let cases: [(
        &str,
        Option<Date>,
        Date,
        u32,
        FindingStanding,
        &str,
        Option<Date>,
    ); 7] = [
        ("six months to the day", Some(date(2026, 9, 8)), old, 0, Met, "valid", None),
        ("a day more", Some(date(2026, 9, 7)), old, 0, Curable, "1 day past the 6 months", Some(date(2027, 3, 1))),
        (
            "inside the cover days",
            Some(date(2026, 9, 8)),
            old,
            2,
            Curable,
            "by the last cover day",
            Some(date(2027, 3, 2)),
        ),
        ("never used, newly earned", None, date(2026, 10, 1), 0, Met, "valid", None),
        ("used long ago, newly earned", Some(date(2026, 1, 1)), date(2026, 10, 1), 0, Met, "valid", None),
        ("never used, long held", None, old, 0, Curable, "last used on 2025-06-01", Some(date(2027, 3, 1))),
        ("used after the day", Some(date(2027, 3, 9)), old, 0, Curable, "2025-06-01", Some(date(2027, 3, 1))),
    ];
    for (case, last, issued, cover, standing, reason, by) in cases {
        let change = used(last, issued);
        let change = |held: &mut Certificate| checked(&change, held);
        check(
            case,
            kind,
            &asks(kind, None, cover),
            change,
            (standing, reason, by),
        );
    }
}

#[test]
fn evidence_nobody_looked_at_does_not_count() {
    let kind = "basic_life_support";
    let asked = asks(kind, None, 0);
    let unchecked = |held: &mut Certificate| held.checked = None;
    let expected = (Curable, "has not been checked by anyone", Some(DAY));
    check("unchecked", kind, &asked, unchecked, expected);
    let on = |on: Date| move |held: &mut Certificate| held.checked.as_mut().unwrap().on = on;
    let stale = (Curable, "before this one was issued", Some(DAY));
    check(
        "of the one before",
        kind,
        &asked,
        on(date(2026, 1, 9)),
        stale,
    );
    check(
        "on the day of issue",
        kind,
        &asked,
        on(date(2026, 1, 10)),
        (Met, "valid", None),
    );
    check(
        "on the shooting day",
        kind,
        &asked,
        on(DAY),
        (Met, "valid", None),
    );
    let late = (Curable, "only checked on 2027-03-09", Some(DAY));
    check("after the day", kind, &asked, on(date(2027, 3, 9)), late);
}

#[test]
fn several_lacks_are_all_named_and_the_first_deadline_counts() {
    let kind = "rope_access_1";
    let mut person = person("P01");
    let mut held = certificate(kind);
    held.expires = Some(date(2027, 3, 1));
    held.last_used = Some(date(2026, 3, 1));
    held.checked = None;
    person.certificates.push(held);
    let finding = judge_one(&asks(kind, None, 0), &person, &context());
    // 28 days before the day for the renewal, 7 for the refresher, the day itself for the sight.
    assert_finding(
        "three",
        &finding,
        Curable,
        "expires on 2027-03-01",
        Some(date(2027, 2, 8)),
    );
    for piece in ["last used on 2026-03-01", "not been checked"] {
        assert!(finding.reason.contains(piece), "{finding:?}");
    }
    let cure = finding.cure.unwrap().what;
    for piece in ["renewal", "refresher", "sight of the original"] {
        assert!(cure.contains(piece), "{cure}");
    }
}

#[test]
fn a_deadline_already_past_is_no_cure() {
    let kind = "first_aid_at_work";
    let mut person = person("P01");
    let mut held = certificate(kind);
    held.expires = Some(date(2027, 3, 7));
    person.certificates.push(held);
    let mut context = context();
    context.today = Some(date(2027, 2, 22));
    let finding = judge_one(&asks(kind, None, 0), &person, &context);
    assert_finding(
        "last day to begin",
        &finding,
        Curable,
        "expires",
        Some(date(2027, 2, 22)),
    );
    context.today = Some(date(2027, 2, 23));
    let finding = judge_one(&asks(kind, None, 0), &person, &context);
    assert_finding(
        "a day late",
        &finding,
        NotMet,
        "too late for a renewal",
        None,
    );
}

#[test]
fn a_higher_class_meets_a_lower_and_not_the_other_way() {
    let valid = |_: &mut Certificate| {};
    let asked = asks("rope_access_2", None, 0);
    check(
        "level 3",
        "rope_access_3",
        &asked,
        valid,
        (Met, "Rope access, level 3 valid", None),
    );
    check(
        "level 1",
        "rope_access_1",
        &asked,
        valid,
        (NotMet, "No rope access, level 2", None),
    );
}

#[test]
fn the_best_of_several_certificates_decides() {
    let asked = Requirement::Certificate {
        any_of: vec![
            "first_aid_at_work".into(),
            "wilderness_first_responder".into(),
        ],
        category: None,
        cover_days: 0,
    };
    let mut person = person("P01");
    let mut lapsed = certificate("first_aid_at_work");
    lapsed.expires = Some(date(2026, 6, 1));
    let mut withdrawn = certificate("first_aid_at_work");
    withdrawn.withdrawn = Some(date(2026, 6, 1));
    person.certificates = vec![withdrawn, lapsed];
    let finding = judge_one(&asked, &person, &context());
    assert_finding(
        "curable beats withdrawn",
        &finding,
        Curable,
        "2026-06-01",
        Some(date(2027, 2, 22)),
    );
    person
        .certificates
        .push(certificate("wilderness_first_responder"));
    let finding = judge_one(&asked, &person, &context());
    assert_finding(
        "met beats both",
        &finding,
        Met,
        "Wilderness first responder valid",
        None,
    );
}

#[test]
fn nothing_held_or_nothing_known_is_not_met() {
    let empty = person("P01");
    let finding = judge_one(&asks("first_aid_at_work", None, 0), &empty, &context());
    assert_finding(
        "none held",
        &finding,
        NotMet,
        "No first aid at work on record",
        None,
    );
    let mut odd = person("P01");
    odd.certificates.push(certificate("wizard_licence"));
    let finding = judge_one(&asks("wizard_licence", None, 0), &odd, &context());
    assert_finding(
        "unknown kind",
        &finding,
        NotMet,
        "no certificate kind `wizard_licence`",
        None,
    );
    let nothing = Requirement::Certificate {
        any_of: Vec::new(),
        category: None,
        cover_days: 0,
    };
    let finding = judge_one(&nothing, &odd, &context());
    assert_finding(
        "no kind named",
        &finding,
        NotMet,
        "No kind of certificate is named",
        None,
    );
}

#[test]
fn of_several_the_easiest_to_cure_or_the_longest_decides() {
    let kind = "first_aid_at_work";
    let asked = asks(kind, None, 0);
    let mut lapsed = certificate(kind);
    lapsed.expires = Some(date(2027, 3, 1));
    let mut unchecked = certificate(kind);
    unchecked.checked = None;
    let mut long = certificate(kind);
    long.expires = Some(date(2028, 6, 1));
    let mut short = certificate(kind);
    short.expires = Some(date(2027, 6, 1));
    let (seen, day) = ("not been checked", Some(DAY));
    for (first, second, standing, reason, by) in [
        (&lapsed, &unchecked, Curable, seen, day),
        (&unchecked, &lapsed, Curable, seen, day),
        (&long, &short, Met, "through 2028-06-01", None),
        (&short, &long, Met, "through 2028-06-01", None),
    ] {
        let mut person = person("P01");
        person.certificates = vec![first.clone(), second.clone()];
        let finding = judge_one(&asked, &person, &context());
        assert_finding("two", &finding, standing, reason, by);
    }
}
