//! The medic's word, availability, rest, exposure and consent at their boundaries.

use gagwright_casting::{Availability, Consent, Exposure, FindingStanding, GagId, Requirement};
use jiff::{
    Timestamp,
    civil::{Date, date},
};
use uuid::Uuid;

use crate::builders::{DAY, GAG, assert_finding, context, judge_one, person};

use FindingStanding::{Curable, Met, NotMet};

fn at(text: &str) -> Timestamp {
    text.parse().unwrap()
}

#[test]
#[rustfmt::skip] // one case a line
fn the_medic_says_fit_through_a_day() {
    for (case, until, standing, reason, by) in [
        ("through the day", Some(DAY), Met, "0 days past", None),
        ("longer", Some(date(2027, 4, 1)), Met, "24 days past", None),
        ("to the day before", Some(date(2027, 3, 7)), Curable, "1 day short", Some(DAY)),
        ("never", None, Curable, "No medical clearance", Some(DAY)),
    ] {
        let mut person = person("P01");
        person.medically_clear_until = until;
        let finding = judge_one(&Requirement::MedicalClearance, &person, &context());
        assert_finding(case, &finding, standing, reason, by);
    }
}

#[test]
#[rustfmt::skip] // one case a line
fn availability_is_said_or_asked() {
    let run = |from, to, available| Availability {
        from,
        to,
        available,
    };
    let first = date(2027, 3, 1);
    let last = date(2027, 3, 31);
    let cases: [(&str, Vec<Availability>, FindingStanding, &str, Option<Date>); 7] = [
        ("nothing said", vec![], Curable, "Nothing on record", Some(DAY)),
        ("around the day", vec![run(first, last, true)], Met, "Available", None),
        ("from the day", vec![run(DAY, last, true)], Met, "Available", None),
        ("to the day", vec![run(first, DAY, true)], Met, "Available", None),
        ("to the day before", vec![run(first, date(2027, 3, 7), true)], Curable, "Nothing on record", Some(DAY)),
        ("refused", vec![run(DAY, DAY, false)], NotMet, "Not available", None),
        (
            "both: the refusal stands",
            vec![run(first, last, true), run(DAY, DAY, false)],
            NotMet,
            "Not available",
            None,
        ),
    ];
    for (case, availability, standing, reason, by) in cases {
        let mut person = person("P01");
        person.availability = availability;
        let finding = judge_one(&Requirement::Availability, &person, &context());
        assert_finding(case, &finding, standing, reason, by);
    }
}

#[test]
#[rustfmt::skip] // one case a line
fn rest_runs_from_wrap_to_call() {
    let rest = Requirement::Rest { hours: 11.0 };
    let call = Some(at("2027-03-08T06:00:00Z"));
    let cases: [(
        &str,
        Option<Timestamp>,
        Option<Timestamp>,
        FindingStanding,
        &str,
        Option<Date>,
    ); 6] = [
        ("just enough", Some(at("2027-03-07T19:00:00Z")), call, Met, "11 h of rest", None),
        (
            "a minute short",
            Some(at("2027-03-07T19:01:00Z")),
            call,
            NotMet,
            "0 h 1 min short; a call at 2027-03-08 06:01 UTC would do",
            None,
        ),
        ("plenty", Some(at("2027-03-01T19:00:00Z")), call, Met, "155 h of rest", None),
        ("still at work", Some(at("2027-03-08T07:00:00Z")), call, NotMet, "after the call", None),
        ("no wrap", None, call, Curable, "No last wrap", Some(DAY)),
        ("no call", Some(at("2027-03-07T19:00:00Z")), None, Curable, "call is not set", Some(DAY)),
    ];
    for (case, wrap, call, standing, reason, by) in cases {
        let mut person = person("P01");
        person.last_wrap = wrap;
        let mut context = context();
        context.call = call;
        assert_finding(
            case,
            &judge_one(&rest, &person, &context),
            standing,
            reason,
            by,
        );
    }
    for hours in [f64::NAN, f64::INFINITY, -1.0, 1e300] {
        let mut person = person("P01");
        person.last_wrap = Some(at("2027-03-01T19:00:00Z"));
        let mut context = context();
        context.call = call;
        let finding = judge_one(&Requirement::Rest { hours }, &person, &context);
        assert_finding(
            "no figure",
            &finding,
            NotMet,
            "not a figure to judge by",
            None,
        );
    }
}

#[test]
#[rustfmt::skip] // one case a line
fn exposures_add_up_over_the_day() {
    let burns = |adds| Requirement::DailyExposure {
        exposure: "full_burn".into(),
        adds,
        max: 2,
    };
    let taken = |kind: &str, on, count| Exposure {
        kind: kind.into(),
        on,
        count,
    };
    let cases: [(&str, Vec<Exposure>, u32, FindingStanding, &str); 7] = [
        ("none so far", vec![], 1, Met, "1 to spare"),
        ("at the most", vec![taken("full_burn", DAY, 1)], 1, Met, "0 to spare"),
        ("over", vec![taken("full_burn", DAY, 2)], 1, NotMet, "1 over"),
        ("in two entries", vec![taken("full_burn", DAY, 1); 2], 1, NotMet, "1 over"),
        ("another day", vec![taken("full_burn", date(2027, 3, 7), 9)], 1, Met, "1 to spare"),
        ("another kind", vec![taken("high_fall", DAY, 9)], 1, Met, "1 to spare"),
        ("past counting", vec![taken("full_burn", DAY, u32::MAX); 2], u32::MAX, NotMet, "over"),
    ];
    for (case, exposures, adds, standing, reason) in cases {
        let mut person = person("P01");
        person.exposures = exposures;
        let finding = judge_one(&burns(adds), &person, &context());
        assert_finding(case, &finding, standing, reason, None);
    }
    // A head impact takes a person off for the day: none allowed, none added here.
    let impact = Requirement::DailyExposure {
        exposure: "head_impact".into(),
        adds: 0,
        max: 0,
    };
    let mut person = person("P01");
    assert_finding(
        "no impact",
        &judge_one(&impact, &person, &context()),
        Met,
        "head impact",
        None,
    );
    person.exposures.push(taken("head_impact", DAY, 1));
    assert_finding(
        "impact",
        &judge_one(&impact, &person, &context()),
        NotMet,
        "1 over",
        None,
    );
}

#[test]
#[rustfmt::skip] // one case a line
fn consent_is_to_this_very_revision() {
    let consent = |gag, revision, withdrawn: Option<&str>| Consent {
        gag,
        revision,
        withdrawn: withdrawn.map(at),
    };
    let other = GagId(Uuid::from_u128(99));
    let when = Some("2027-03-08T05:00:00Z");
    let cases: [(&str, Vec<Consent>, FindingStanding, &str, Option<Date>); 7] = [
        ("given", vec![consent(GAG, 3, None)], Met, "Consents to revision 3", None),
        ("none", vec![], Curable, "Has not consented", Some(DAY)),
        ("to an older one", vec![consent(GAG, 2, None)], Curable, "to revision 2, not", Some(DAY)),
        ("to another gag", vec![consent(other, 3, None)], Curable, "Has not", Some(DAY)),
        ("withdrawn", vec![consent(GAG, 3, when)], NotMet, "Withdrew consent", None),
        ("withdrawn, then given again", vec![consent(GAG, 3, when), consent(GAG, 3, None)], Met, "Consents", None),
        ("given, then withdrawn", vec![consent(GAG, 3, None), consent(GAG, 3, when)], NotMet, "Withdrew", None),
    ];
    for (case, consents, standing, reason, by) in cases {
        let mut person = person("P01");
        person.consents = consents;
        let finding = judge_one(&Requirement::Consent, &person, &context());
        assert_finding(case, &finding, standing, reason, by);
    }
}
