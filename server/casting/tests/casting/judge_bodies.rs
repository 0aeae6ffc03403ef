//! Measurements, kitted mass and age at their boundaries.

use gagwright_casting::{Catalogue, FindingStanding, Measurement, Requirement, find};
use jiff::civil::{Date, date};

use crate::builders::{DAY, assert_finding, context, judge_one, person, with_measurement};

use FindingStanding::{Curable, Met, NotMet};

const TAKEN: Date = date(2027, 1, 15);

#[test]
#[rustfmt::skip] // one case a line
fn likeness_is_within_the_tolerance_or_not() {
    // Doubling habit, common practice: height within 3 cm, shoe within 1.
    let height = |target| Requirement::Measurement {
        of: Measurement::Height,
        target,
        tolerance: 0.03,
    };
    for (case, value, standing, reason) in [
        ("the same", 1.72, Met, "the same"),
        ("at the upper edge", 1.75, Met, "3 cm more"),
        ("at the lower edge", 1.69, Met, "3 cm less"),
        ("past the upper edge", 1.751, NotMet, "3.1 cm more"),
        ("past the lower edge", 1.689, NotMet, "0.1 cm more than the 3 cm allowed"),
        ("not a number", f64::NAN, NotMet, "not a number"),
        ("endless", f64::INFINITY, NotMet, "not a number"),
    ] {
        let person = with_measurement(Measurement::Height, value, TAKEN);
        assert_finding(
            case,
            &judge_one(&height(1.72), &person, &context()),
            standing,
            reason,
            None,
        );
    }
    let finding = judge_one(&height(1.72), &person("P01"), &context());
    assert_finding(
        "missing",
        &finding,
        Curable,
        "No height on record",
        Some(DAY),
    );
    let person = with_measurement(Measurement::Height, 1.72, TAKEN);
    let finding = judge_one(&height(f64::NAN), &person, &context());
    assert_finding("no target", &finding, NotMet, "not a number", None);
    let shoe = Requirement::Measurement {
        of: Measurement::Shoe,
        target: 41.0,
        tolerance: 1.0,
    };
    let person = with_measurement(Measurement::Shoe, 42.5, TAKEN);
    let finding = judge_one(&shoe, &person, &context());
    assert_finding(
        "shoe",
        &finding,
        NotMet,
        "EU 42.5 where EU 41 is doubled, 1.5 more",
        None,
    );
}

#[test]
#[rustfmt::skip] // one case a line
fn the_rig_carries_body_and_kit_together() {
    let rig = Requirement::KittedMass {
        min: 50.0,
        max: 80.0,
    };
    let day = Some(DAY);
    let cases: [(&str, f64, f64, FindingStanding, &str, Option<Date>); 11] = [
        ("in the middle", 60.0, 5.0, Met, "65 kg with 5 kg of kit, 15 kg inside", None),
        ("at the most", 75.0, 5.0, Met, "0 kg inside", None),
        ("over by the kit", 75.1, 5.0, NotMet, "0.1 kg over the rig's most of 80 kg", None),
        ("at the least", 45.0, 5.0, Met, "weigh again at the rig", None),
        ("under", 44.5, 5.0, NotMet, "0.5 kg under the rig's least of 50 kg", None),
        // Mass is checked again to within 2 kg (common practice).
        ("2 kg from the edge", 73.0, 5.0, Met, "2 kg inside the rig's 50 kg to 80 kg", None),
        ("nearer than 2 kg", 73.1, 5.0, Met, "weigh again at the rig", None),
        ("kit that lifts", 60.0, -5.0, NotMet, "not a number to rig by", None),
        ("kit not a number", 60.0, f64::NAN, NotMet, "not a number to rig by", None),
        ("nobody there", 0.0, 60.0, NotMet, "not a number above zero", None),
        ("endless", f64::INFINITY, 5.0, NotMet, "not a number above zero", None),
    ];
    for (case, body, kit, standing, reason, by) in cases {
        let person = with_measurement(Measurement::Mass, body, TAKEN);
        let finding = find(&rig, &person, kit, &context(), Catalogue::built_in());
        assert_finding(case, &finding, standing, reason, by);
    }
    let person_at = |mass| with_measurement(Measurement::Mass, mass, TAKEN);
    let says = |mass| judge_one(&rig, &person_at(mass), &context()).reason;
    assert!(!says(78.0).contains("weigh again"), "2 kg is enough");
    assert!(says(78.1).contains("weigh again"), "less is not");
    let finding = judge_one(&rig, &person("P01"), &context());
    assert_finding("never weighed", &finding, Curable, "No mass on record", day);
    let boundless = Requirement::KittedMass {
        min: 50.0,
        max: f64::INFINITY,
    };
    let person = with_measurement(Measurement::Mass, 60.0, TAKEN);
    assert_finding(
        "no limit",
        &judge_one(&boundless, &person, &context()),
        NotMet,
        "number",
        None,
    );
}

#[test]
#[rustfmt::skip] // one case a line
fn an_old_mass_is_weighed_again() {
    // 180 days by the catalogue (common practice): 2026-09-09 is 180 days before 2027-03-08.
    assert_eq!(Catalogue::built_in().mass_good_for_days(), 180);
    let rig = Requirement::KittedMass {
        min: 50.0,
        max: 80.0,
    };
    for (case, on, standing, reason, by) in [
        ("at the limit", date(2026, 9, 9), Met, "inside", None),
        ("a day past", date(2026, 9, 8), Curable, "1 day past the limit of 180", Some(DAY)),
        ("on the day", DAY, Met, "inside", None),
        ("after the day", date(2027, 3, 9), Curable, "weighed after the shooting day", Some(DAY)),
    ] {
        let person = with_measurement(Measurement::Mass, 65.0, on);
        assert_finding(
            case,
            &judge_one(&rig, &person, &context()),
            standing,
            reason,
            by,
        );
    }
    let person = with_measurement(Measurement::Mass, 95.0, date(2026, 1, 1));
    let finding = judge_one(&rig, &person, &context());
    assert_finding("old and out of range", &finding, NotMet, "15 kg over", None);
}

#[test]
#[rustfmt::skip] // one case a line
fn age_is_counted_in_whole_years_on_the_day() {
    let adult = Requirement::Age {
        min: Some(18),
        max: None,
    };
    let child = Requirement::Age {
        min: None,
        max: Some(15),
    };
    for (case, asked, born, standing, reason) in [
        ("birthday today", &adult, date(2009, 3, 8), Met, "18 years old"),
        ("birthday tomorrow", &adult, date(2009, 3, 9), NotMet, "17 years old"),
        ("fifteen for the last day", &child, date(2011, 3, 9), Met, "15 years old"),
        ("sixteen today", &child, date(2011, 3, 8), NotMet, "1 over"),
        ("born after the day", &adult, date(2027, 3, 9), NotMet, "after the shooting day"),
        ("born on the day", &child, DAY, Met, "0 years old"),
    ] {
        let mut person = person("P01");
        person.born = Some(born);
        assert_finding(
            case,
            &judge_one(asked, &person, &context()),
            standing,
            reason,
            None,
        );
    }
    let finding = judge_one(&adult, &person("P01"), &context());
    assert_finding(
        "no birthday",
        &finding,
        Curable,
        "No birthday on record",
        Some(DAY),
    );
}

#[test]
fn a_leap_day_birthday_comes_on_the_first_of_march() {
    let adult = Requirement::Age {
        min: Some(23),
        max: None,
    };
    let mut person = person("P01");
    person.born = Some(date(2004, 2, 29));
    let mut context = context();
    context.day = date(2027, 2, 28);
    assert_finding(
        "28 February",
        &judge_one(&adult, &person, &context),
        NotMet,
        "22 years",
        None,
    );
    context.day = date(2027, 3, 1);
    assert_finding(
        "1 March",
        &judge_one(&adult, &person, &context),
        Met,
        "23 years",
        None,
    );
}
