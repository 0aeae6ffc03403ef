//! The risk matrix against the standard's table.

use gagwright_mechanics::models::risk::{
    Probability, RiskLevel, RiskLevel::*, Severity, code, level,
};

/// MIL-STD-882E (2012), table III, as printed: a row for each probability, a column for each severity
/// 1 to 4. All but one of its cells were read in a public copy of the table; a marginal, improbable risk
/// (row E, column 3) is from memory, and follows from 882D's value for that cell, 17, in its band
/// 10 to 17.
const TABLE: [(Probability, [RiskLevel; 4]); 6] = [
    (Probability::Frequent, [High, High, Serious, Medium]),
    (Probability::Probable, [High, High, Serious, Medium]),
    (Probability::Occasional, [High, Serious, Medium, Low]),
    (Probability::Remote, [Serious, Medium, Medium, Low]),
    (Probability::Improbable, [Medium, Medium, Medium, Low]),
    (
        Probability::Eliminated,
        [Eliminated, Eliminated, Eliminated, Eliminated],
    ),
];

#[test]
fn every_cell_is_the_standards() {
    for (place, (probability, row)) in TABLE.into_iter().enumerate() {
        assert_eq!(Probability::ALL[place], probability);
        for (severity, wanted) in Severity::ALL.into_iter().zip(row) {
            assert_eq!(
                level(severity, probability),
                wanted,
                "{}",
                code(severity, probability)
            );
        }
    }
}

/// MIL-STD-882D (2000), tables A-III and A-IV: 1 to 5 high, 6 to 9 serious, 10 to 17 medium, 18 to 20
/// low (bands from memory). The numbers and the words are two printings of one judgement.
#[test]
fn the_standard_before_it_agrees() {
    let values = [
        [1, 3, 7, 13],
        [2, 5, 9, 16],
        [4, 6, 11, 18],
        [8, 10, 14, 19],
        [12, 15, 17, 20],
    ];
    for (row, probability) in values.into_iter().zip(Probability::ALL) {
        for (value, severity) in row.into_iter().zip(Severity::ALL) {
            let banded = match value {
                1..=5 => High,
                6..=9 => Serious,
                10..=17 => Medium,
                _ => Low,
            };
            assert_eq!(level(severity, probability), banded, "value {value}");
        }
    }
}

#[test]
fn less_bad_or_less_likely_is_never_a_higher_level() {
    for pair in Severity::ALL.windows(2) {
        for probability in Probability::ALL {
            assert!(level(pair[0], probability) >= level(pair[1], probability));
        }
    }
    for pair in Probability::ALL.windows(2) {
        for severity in Severity::ALL {
            assert!(level(severity, pair[0]) >= level(severity, pair[1]));
        }
    }
}

/// The standard writes an assessed risk as one severity and one probability: "1A" to "4F".
#[test]
fn a_code_is_the_number_and_the_letter() {
    assert_eq!(code(Severity::Catastrophic, Probability::Occasional), "1C");
    assert_eq!(code(Severity::Negligible, Probability::Eliminated), "4F");
}
