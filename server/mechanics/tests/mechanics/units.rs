//! Units as people write them. Conversion factors are exact definitions unless a source is named.

use crate::common::{GRAVITY, close};
use gagwright_mechanics::{
    Quantity,
    units::{self, Measured, UnitError, format_imperial, format_metric, parse},
};
use proptest::prelude::*;

#[track_caller]
fn reads(quantity: Quantity, text: &str, si: f64) {
    let read = parse(quantity, text).unwrap_or_else(|error| panic!("{text}: {error}"));
    close(read.value, si, 1e-9);
    assert_eq!(read.tolerance, None);
}

#[test]
fn what_people_write() {
    use Quantity::*;
    for (quantity, text, si) in [
        (Length, "30m", 30.0),
        (Length, " 30 m ", 30.0),
        (Length, "100ft", 30.48),
        (Length, "5'6\"", 1.6764),
        (Length, "5' 6\"", 1.6764),
        (Length, "5′6″", 1.6764),
        (Length, "5 ft 6 in", 1.6764),
        (Length, "6'", 1.8288),
        (Length, "12 in", 0.3048),
        (Length, "3/16 in", 0.0047625),
        (Length, "-1.5m", -1.5),
        (Length, "−1.5 m", -1.5),
        (Length, "1.2e2 cm", 1.2),
        (Length, "2 Metres", 2.0),
        (Pressure, "6bar", 6e5),
        (Pressure, "6 Bar", 6e5),
        (Pressure, "90psi", 620_528.156_3),
        (Pressure, "600 kPa", 6e5),
        (Pressure, "0.6 MPa", 6e5),
        (Mass, "62kg", 62.0),
        (Mass, "62 KG", 62.0),
        (Mass, "140 lb", 63.5029318),
        (Mass, "500 g", 0.5),
        (Acceleration, "3.5g", 3.5 * GRAVITY),
        (Acceleration, "3.5 G", 3.5 * GRAVITY),
        (Acceleration, "9.8 m/s2", 9.8),
        (Acceleration, "9.8 m/s²", 9.8),
        (Acceleration, "9.8 m/s^2", 9.8),
        (Speed, "35 mph", 15.6464),
        (Speed, "50 km/h", 50.0 / 3.6),
        (Speed, "12 m/s", 12.0),
        (Speed, "10 kn", 5.144444444),
        (Force, "5 kN", 5000.0),
        (Force, "1200 lbf", 5_337.865_938),
        (Temperature, "20C", 293.15),
        (Temperature, "20 °C", 293.15),
        (Temperature, "68F", 293.15),
        (Temperature, "-40 F", 233.15),
        (Temperature, "293K", 293.0),
        (Time, "15 s", 15.0),
        (Time, "1.5 min", 90.0),
        (Time, "3:40", 220.0),
        (Time, "250 ms", 0.25),
        (Volume, "20 L", 0.02),
        (Volume, "20l", 0.02),
        (Volume, "5 US gal", 0.018_927_058_92),
        (Conductance, "5 dm3/(s bar)", 5e-8),
        (Conductance, "5 dm³/(s·bar)", 5e-8),
        (Angle, "30deg", 30.0_f64.to_radians()),
        (Angle, "30°", 30.0_f64.to_radians()),
        (Angle, "0.5 rad", 0.5),
        (Rotation, "60 rpm", core::f64::consts::TAU),
        (Rotation, "90 deg/s", core::f64::consts::FRAC_PI_2),
        (Torque, "120 N m", 120.0),
        (Torque, "1.5 kN m", 1500.0),
        (Power, "12 kW", 12e3),
        (Pixels, "1.5 px", 1.5),
        (HeatFlux, "84 kW/m2", 84e3),
        (HeatFlux, "2 cal/cm2s", 83_680.0),
        (HeatFlux, "2 cal/(cm² s)", 83_680.0),
        (Ratio, "40 %", 0.4),
        (Ratio, "0.4", 0.4),
        (Stiffness, "22 kN/m", 22e3),
        (Energy, "150 ft lbf", 203.3727),
        (ArealDensity, "0.5 kg/m2", 0.5),
        (ArealDensity, "200 g/m²", 0.2),
        (Area, "0.5 m2", 0.5),
        (Count, "6", 6.0),
    ] {
        let read = parse(quantity, text).unwrap_or_else(|error| panic!("{text}: {error}"));
        close(read.value, si, 1e-6);
    }
}

#[test]
fn commas_that_can_mean_one_thing() {
    reads(Quantity::Length, "1,5 m", 1.5);
    reads(Quantity::Length, "0,250 m", 0.25);
    reads(Quantity::Force, "1,200.5 N", 1200.5);
    reads(Quantity::Force, "12,345,678 N", 12_345_678.0);
    reads(Quantity::Force, "1234,567 N", 1234.567);
    let error = parse(Quantity::Force, "1,200 lbf").unwrap_err();
    assert_eq!(
        error.to_string(),
        "\"1,200 lbf\": the comma could be read as 1.200 or as 1200; write one of those"
    );
    for broken in ["1,2,3 m", ",5 m", "1,,2 m", "12,34.5 m", "1.2,3 m", "1, m"] {
        assert!(parse(Quantity::Length, broken).is_err(), "{broken}");
    }
}

#[test]
fn tolerances() {
    let read = |quantity, text: &str| parse(quantity, text).unwrap();
    for text in [
        "30m +-0.5m",
        "30 m ± 0.5 m",
        "30 m +/- 0.5",
        "30m±50cm",
        "30 m ±0.5",
    ] {
        let Measured { value, tolerance } = read(Quantity::Length, text);
        close(value, 30.0, 1e-12);
        close(tolerance.unwrap(), 0.5, 1e-12);
    }
    close(
        read(Quantity::Length, "30m +-2%").tolerance.unwrap(),
        0.6,
        1e-12,
    );
    close(
        read(Quantity::Length, "-30m ± 2 %").tolerance.unwrap(),
        0.6,
        1e-12,
    );
    close(
        read(Quantity::Length, "5'6\" ± 1 in").tolerance.unwrap(),
        0.0254,
        1e-12,
    );
    // A difference of temperatures has no offset, and five ninths of the size in Fahrenheit.
    close(
        read(Quantity::Temperature, "20C ± 2C").tolerance.unwrap(),
        2.0,
        1e-12,
    );
    close(
        read(Quantity::Temperature, "68 F ± 9 F").tolerance.unwrap(),
        5.0,
        1e-12,
    );
    // Per cent of a ratio are percentage points.
    close(
        read(Quantity::Ratio, "40 % ± 5 %").tolerance.unwrap(),
        0.05,
        1e-12,
    );
    close(
        read(Quantity::Ratio, "0.4 ± 0.05").tolerance.unwrap(),
        0.05,
        1e-12,
    );
    for bad in [
        "30 m ± -1 m",
        "30 m ±",
        "30 m ± 1 kg",
        "30 m ± nan",
        "30 m ± 1 m ± 2 m",
    ] {
        assert!(parse(Quantity::Length, bad).is_err(), "{bad}");
    }
    let error = parse(Quantity::Temperature, "20 C ± 5 %").unwrap_err();
    assert!(error.to_string().contains("write degrees"), "{error}");
}

#[test]
fn refusals_say_what_was_read_and_what_is_right() {
    let refusal = |quantity, text: &str| parse(quantity, text).unwrap_err().to_string();
    assert_eq!(
        refusal(Quantity::Length, "30"),
        "\"30\" has no unit; write it with one of m, ft, in, cm, mm, km, yd"
    );
    assert_eq!(
        refusal(Quantity::Length, "30 kg"),
        "\"kg\" in \"30 kg\" is a unit of mass, not of length; use m, ft, in, cm, mm, km, yd"
    );
    assert_eq!(
        refusal(Quantity::Force, "5 lb"),
        "\"lb\" in \"5 lb\" is a unit of mass, not of force; use N, kN, lbf, kgf, MN"
    );
    assert_eq!(
        refusal(Quantity::Mass, "62 stones"),
        "\"stones\" in \"62 stones\" is not a unit of mass; use kg, lb, g, t"
    );
    assert_eq!(
        refusal(Quantity::Length, "high"),
        "\"high\" does not start with a number; give a length, in m, ft, in, cm, mm, km, yd"
    );
    assert_eq!(
        refusal(Quantity::Length, "30m long"),
        "\"mlong\" in \"30m long\" is not a unit of length; use m, ft, in, cm, mm, km, yd"
    );
    assert!(matches!(
        parse(Quantity::Length, "  "),
        Err(UnitError::Empty { .. })
    ));
    assert!(matches!(
        parse(Quantity::Count, "2.5"),
        Err(UnitError::NotWhole { .. })
    ));
    assert!(matches!(
        parse(Quantity::Count, "-2"),
        Err(UnitError::NotWhole { .. })
    ));
    assert!(matches!(
        parse(Quantity::Temperature, "-300 C"),
        Err(UnitError::BelowAbsoluteZero { .. })
    ));
    for text in [
        "NaN m",
        "nan",
        "inf m",
        "-Infinity m",
        "1e999 m",
        "∞ m",
        "1/0 in",
        "1e308 km",
    ] {
        let error = parse(Quantity::Length, text).unwrap_err();
        assert!(
            matches!(error, UnitError::NotFinite { .. }),
            "{text}: {error}"
        );
    }
    // The size of a prefix is in its case, so a wrong case is refused and not guessed at.
    assert!(parse(Quantity::Force, "5 mN").is_err());
    assert!(parse(Quantity::Pressure, "5 mPa").is_err());
    let long = "9".repeat(5000);
    assert!(refusal(Quantity::Length, &long).len() < 500);
}

#[test]
fn what_people_read() {
    use Quantity::*;
    let metric = |quantity, si| units::say(quantity, si);
    for (quantity, si, text) in [
        (Length, 30.48, "30.5 m"),
        (Length, 0.0047625, "4.76 mm"),
        (Length, 1234.0, "1234 m"),
        (Length, 0.0, "0 m"),
        (Length, 2.0, "2 m"),
        (Force, 785.4, "785 N"),
        (Force, 8006.8, "8.01 kN"),
        (Pressure, 6e5, "6 bar"),
        (Temperature, 306.65, "33.5 °C"),
        (Acceleration, 3.5 * GRAVITY, "3.5 g"),
        (HeatFlux, 84e3, "84 kW/m²"),
        (Angle, 30.0_f64.to_radians(), "30°"),
        (Ratio, 7.2, "7.2"),
        (Ratio, 0.000412, "0.000412"),
        (Count, 6.0, "6"),
        (Time, 220.0, "3.67 min"),
        (Time, 0.057, "57 ms"),
        (Conductance, 5e-8, "5 dm³/(s bar)"),
        (Volume, 0.02, "20 L"),
        (Rotation, core::f64::consts::TAU, "60 rpm"),
        (Torque, 1500.0, "1.5 kN m"),
        (Power, 745.699_871_582_270_2, "746 W"),
        (Pixels, 0.993, "0.993 px"),
    ] {
        assert_eq!(metric(quantity, si), text);
    }
    assert_eq!(format_imperial(Length, 30.48), ("100".to_owned(), "ft"));
    assert_eq!(format_imperial(Force, 8006.8), ("1800".to_owned(), "lbf"));
    assert_eq!(
        format_imperial(Pressure, 620_528.0),
        ("90".to_owned(), "psi")
    );
    // 550 foot-pounds-force a second.
    assert_eq!(
        format_imperial(Power, 745.699_871_582_270_2),
        ("1".to_owned(), "hp")
    );
    assert_eq!(
        format_imperial(Torque, 1_355.817_948),
        ("1000".to_owned(), "lbf ft")
    );
    assert_eq!(format_imperial(Speed, 15.6464), ("35".to_owned(), "mph"));
    assert_eq!(
        format_imperial(Temperature, 293.15),
        ("68.0".to_owned(), "°F")
    );
    assert_eq!(
        format_metric(Temperature, 273.149_999),
        ("0.0".to_owned(), "°C")
    );
}

/// A chance nobody can count the noughts of is said in words, and read back from them.
#[test]
fn a_small_chance_is_said_in_words() {
    use Quantity::{Length, Ratio};
    for (si, said) in [
        (1.0e-5, "0.00001"),
        (1.0e-6, "1 in a million"),
        (9.996e-7, "1 in a million"),
        (5.0e-7, "1 in 2 million"),
        (4.0e-9, "1 in 250 million"),
        (1.0e-9, "1 in a thousand million"),
        (1.0e-12, "1 in 1000000 million"),
    ] {
        for written in [format_metric(Ratio, si), format_imperial(Ratio, si)] {
            assert_eq!(written, (said.to_owned(), ""));
        }
        close(parse(Ratio, said).unwrap().value, si, 5e-3);
    }
    close(parse(Ratio, "1 in 400").unwrap().value, 0.0025, 1e-12);
    for refused in [
        "1 in 0",
        "1 in 0.5",
        "1 in",
        "1 in 3 dozen",
        "1 in 2 million more",
    ] {
        let read = parse(Ratio, refused);
        assert!(read.is_err(), "{refused}: {read:?}");
    }
    assert!(parse(Length, "1 in 12").is_err());
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    /// Whatever is shown reads back as itself, to the digits shown.
    #[test]
    fn shown_values_read_back(index in 0_usize..Quantity::ALL.len(), exponent in -4.0_f64..6.0, mantissa in 1.0_f64..10.0) {
        let quantity = Quantity::ALL[index];
        let scale = match quantity {
            Quantity::Conductance => 1e-9,
            Quantity::Temperature => 1.0,
            Quantity::Volume => 1e-2,
            _ => 1e-1,
        };
        let mut si = mantissa * 10.0_f64.powf(exponent) * scale;
        if quantity == Quantity::Count {
            si = si.round();
        }
        if quantity == Quantity::Temperature {
            // Rounded to a tenth of a degree, absolute zero itself reads as below it.
            si = si.max(1.0);
        }
        for (number, unit) in [format_metric(quantity, si), format_imperial(quantity, si)] {
            let text = format!("{number} {unit}");
            let read = parse(quantity, &text);
            prop_assert!(read.is_ok(), "{text}: {read:?}");
            let read = read.unwrap().value;
            // Three significant digits, or a tenth of a degree.
            let allowed = match quantity {
                Quantity::Temperature => 0.051,
                _ => 0.0051 * si.abs(),
            };
            prop_assert!((read - si).abs() <= allowed, "{si} -> {text} -> {read}");
        }
    }

    /// Text of any kind is read or refused, never worse.
    #[test]
    fn any_text_is_read_or_refused(index in 0_usize..18, text in "\\PC{0,40}") {
        if let Ok(read) = parse(Quantity::ALL[index], &text) {
            prop_assert!(read.value.is_finite());
            prop_assert!(read.tolerance.is_none_or(|t| t.is_finite() && t >= 0.0));
        }
    }

    /// Likewise text that looks nearly right.
    #[test]
    fn nearly_right_text_is_read_or_refused(
        index in 0_usize..18,
        text in "[-+]?[0-9.,/]{0,6}(e[-+]?[0-9]{0,3})? ?(m|ft|'|\"|kg|%|C|N|g|bar|deg|:)?[0-9\"]{0,2}( ?(±|\\+-) ?[0-9.]{0,3}(%|m)?)?"
    ) {
        if let Ok(read) = parse(Quantity::ALL[index], &text) {
            prop_assert!(read.value.is_finite());
            prop_assert!(read.tolerance.is_none_or(|t| t.is_finite() && t >= 0.0));
        }
    }
}
