//! Bodies: likeness to the doubled actor, what hangs on the rig, and age.

use jiff::civil::Date;

use super::{
    answer::Answer,
    days::{between, count},
};
use crate::{
    catalogue::Catalogue,
    person::{Measurement, Person},
    requirement::Context,
    words::capital,
};

/// Room for the last bit when 1.72 m is compared with 1.75 m less 3 cm: far below what a tape can
/// show.
const ROUNDING: f64 = 1e-9;

/// Nearer than this to the end of the rig's range, kilograms, the sentence asks for another look at
/// the rig (common practice: mass is checked again to within 2 kg, clothed and kitted).
const RECHECK_MASS: f64 = 2.0;

pub(super) fn measurement(
    of: Measurement,
    target: f64,
    tolerance: f64,
    person: &Person,
    context: &Context,
) -> Answer {
    let name = name(of);
    // A figure that is none asks for nothing that anyone could bring.
    if !(target.is_finite() && tolerance.is_finite()) {
        return Answer::not_met(format!("The {name} asked for is not a number")).ranked(&[0.0]);
    }
    let Some(measured) = person.measurements.get(&of) else {
        return Answer::curable(
            format!("No {name} on record, {} is needed", show(of, target)),
            format!("measuring {name}"),
            context.day,
            context,
        )
        .ranked(&[0.0]);
    };
    if !measured.value.is_finite() {
        return Answer::not_met(format!("The {name} on record is not a number")).ranked(&[0.0]);
    }
    let off = measured.value - target;
    let sentence = format!(
        "{} {} where {} is doubled, {}",
        capital(name),
        show(of, measured.value),
        show(of, target),
        difference(of, off)
    );
    if off.abs() <= tolerance + ROUNDING {
        let closeness = if tolerance > ROUNDING {
            1.0 - off.abs() / tolerance
        } else {
            1.0
        };
        Answer::met(format!("{sentence} (at most {})", show(of, tolerance))).ranked(&[closeness])
    } else {
        Answer::not_met(format!(
            "{sentence} and {} more than the {} allowed",
            show(of, off.abs() - tolerance),
            show(of, tolerance)
        ))
        .ranked(&[0.0])
    }
}

pub(super) fn kitted_mass(
    min: f64,
    max: f64,
    kit_mass: f64,
    person: &Person,
    context: &Context,
    catalogue: &Catalogue,
) -> Answer {
    let weigh = |reason: String, what: &str| {
        Answer::curable(reason, what.into(), context.day, context).ranked(&[0.0])
    };
    let asked = kit_mass >= 0.0 && kit_mass.is_finite() && min.is_finite() && max.is_finite();
    if !asked {
        return Answer::not_met(
            "The rig's range or the kit's mass is not a number to rig by".into(),
        )
        .ranked(&[0.0]);
    }
    let Some(body) = person.measurements.get(&Measurement::Mass) else {
        return weigh(
            format!(
                "No mass on record, {} to {} kitted is needed",
                kilograms(min),
                kilograms(max)
            ),
            "weighing, clothed and kitted",
        );
    };
    let total = body.value + kit_mass;
    if !(body.value > 0.0 && total.is_finite()) {
        return Answer::not_met("The mass on record is not a number above zero".into())
            .ranked(&[0.0]);
    }
    let kitted = format!("{} with {} of kit", kilograms(total), kilograms(kit_mass));
    if total < min - ROUNDING {
        return Answer::not_met(format!(
            "{kitted}, {} under the rig's least of {}",
            kilograms(min - total),
            kilograms(min)
        ))
        .ranked(&[0.0]);
    }
    if total > max + ROUNDING {
        return Answer::not_met(format!(
            "{kitted}, {} over the rig's most of {}",
            kilograms(total - max),
            kilograms(max)
        ))
        .ranked(&[0.0]);
    }
    let age = between(body.on, context.day);
    let limit = i64::from(catalogue.mass_good_for_days());
    if age > limit {
        return weigh(
            format!(
                "{kitted} is inside the rig's range, but weighed {} before the shooting day, {} \
                 past the limit of {limit}",
                count(age),
                count(age - limit)
            ),
            "weighing again, clothed and kitted",
        );
    }
    if age < 0 {
        return weigh(
            format!("{kitted} is inside the rig's range, but weighed after the shooting day"),
            "weighing, clothed and kitted",
        );
    }
    let margin = (total - min).min(max - total).max(0.0);
    let recheck = if margin < RECHECK_MASS {
        "; weigh again at the rig"
    } else {
        ""
    };
    let half = (max - min) / 2.0;
    let closeness = if half > ROUNDING { margin / half } else { 1.0 };
    Answer::met(format!(
        "{kitted}, {} inside the rig's {} to {}{recheck}",
        kilograms(margin),
        kilograms(min),
        kilograms(max)
    ))
    .ranked(&[closeness])
}

pub(super) fn age(min: Option<u8>, max: Option<u8>, person: &Person, context: &Context) -> Answer {
    let Some(born) = person.born else {
        return Answer::curable(
            "No birthday on record".into(),
            "a sight of an identity document".into(),
            context.day,
            context,
        );
    };
    let Some(years) = whole_years(born, context.day) else {
        return Answer::not_met(format!("Born on {born}, after the shooting day"));
    };
    if let Some(least) = min.filter(|least| years < i32::from(*least)) {
        return Answer::not_met(format!(
            "{years} years old on the shooting day where {least} is the least, {} short",
            i32::from(least) - years
        ));
    }
    if let Some(most) = max.filter(|most| years > i32::from(*most)) {
        return Answer::not_met(format!(
            "{years} years old on the shooting day where {most} is the most, {} over",
            years - i32::from(most)
        ));
    }
    let range = match (min, max) {
        (Some(min), Some(max)) => format!(" where {min} to {max} is asked"),
        (Some(min), None) => format!(" where at least {min} is asked"),
        (None, Some(max)) => format!(" where at most {max} is asked"),
        (None, None) => String::new(),
    };
    Answer::met(format!("{years} years old on the shooting day{range}"))
}

/// Whole years lived. Someone born on 29 February turns a year older on 1 March in a common year:
/// where law differs, this is the later day and so the safer one for a least age.
fn whole_years(born: Date, day: Date) -> Option<i32> {
    if born > day {
        return None;
    }
    let birthday_to_come = (day.month(), day.day()) < (born.month(), born.day());
    Some(i32::from(day.year()) - i32::from(born.year()) - i32::from(birthday_to_come))
}

fn name(of: Measurement) -> &'static str {
    match of {
        Measurement::Height => "height",
        Measurement::Mass => "mass",
        Measurement::Chest => "chest",
        Measurement::Waist => "waist",
        Measurement::Hip => "hip",
        Measurement::Inseam => "inseam",
        Measurement::Sleeve => "sleeve",
        Measurement::Neck => "neck",
        Measurement::Shoulder => "shoulder",
        Measurement::Head => "head",
        Measurement::Shoe => "shoe size",
    }
}

/// A value as people say it: centimetres, kilograms, shoe sizes.
fn show(of: Measurement, value: f64) -> String {
    match of {
        Measurement::Mass => kilograms(value),
        Measurement::Shoe => format!("EU {}", tenths(value)),
        _ => format!("{} cm", tenths(value * 100.0)),
    }
}

fn difference(of: Measurement, off: f64) -> String {
    if off.abs() <= ROUNDING {
        return "the same".into();
    }
    let amount = match of {
        Measurement::Mass => kilograms(off.abs()),
        Measurement::Shoe => tenths(off.abs()),
        _ => format!("{} cm", tenths(off.abs() * 100.0)),
    };
    let word = match (of, off > 0.0) {
        (Measurement::Mass, true) => "heavier",
        (Measurement::Mass, false) => "lighter",
        (_, true) => "more",
        (_, false) => "less",
    };
    format!("{amount} {word}")
}

fn kilograms(value: f64) -> String {
    format!("{} kg", tenths(value))
}

/// One decimal, and none when it would be zero. A tape and a scale show no more.
fn tenths(value: f64) -> String {
    let text = format!("{value:.1}");
    let text = text.strip_suffix(".0").unwrap_or(&text);
    // A hair below zero prints as minus nothing.
    if text == "-0" {
        "0".into()
    } else {
        text.into()
    }
}
