//! An assessment as what a packet prints: figures and checks in both unit systems, one plot for each
//! trace in units a person reads, and the zones.

use gagwright_mechanics::{Assessment, Check, Figure, Quantity, Shape, Status, Trace, Zone, units};
use gagwright_packet::document::{
    CheckRow, Curve, FigureRow, Mark, Plot, PlotLimit, State, ZoneRow, ZoneShape,
};

use crate::words;

pub(super) fn rows(assessment: &Assessment) -> Vec<FigureRow> {
    assessment.figures.iter().map(figure).collect()
}

fn figure(figure: &Figure) -> FigureRow {
    let say = |si| words::metric(figure.quantity, si);
    let imperial = |si| words::imperial(figure.quantity, si);
    let same = say(figure.value) == imperial(figure.value);
    FigureRow {
        title: figure.title.clone(),
        metric: say(figure.value),
        interval_metric: words::interval(figure.low, figure.high, say),
        imperial: if same {
            String::new()
        } else {
            imperial(figure.value)
        },
        interval_imperial: if same {
            String::new()
        } else {
            words::interval(figure.low, figure.high, imperial)
        },
    }
}

/// A check's strip.
pub(crate) fn mark(status: Status) -> Mark {
    match status {
        Status::Within => Mark::Whole,
        Status::Marginal | Status::Unknown => Mark::Broken,
        Status::Exceeded => Mark::Crossed,
    }
}

pub(super) fn checks(assessment: &Assessment) -> Vec<CheckRow> {
    assessment.checks.iter().map(check).collect()
}

fn check(check: &Check) -> CheckRow {
    let quantity = check.limit.quantity;
    let mut value = check
        .value
        .map(|si| words::both(quantity, si))
        .unwrap_or_default();
    if let (Some(low), Some(high)) = (check.low, check.high) {
        let interval = words::interval(low, high, |si| words::metric(quantity, si));
        if !interval.is_empty() {
            value.push_str(&format!(", {interval}"));
        }
    }
    CheckRow {
        title: check.title.clone(),
        value,
        limit: words::limit(check),
        source: words::source(&check.source),
        standing: words::standing(check.source.standing).into(),
        state: State::new(words::status(check.status), mark(check.status)),
        blocking: check.blocking,
        detail: check.detail.clone(),
    }
}

/// The trace that says most: the first, which techniques order by how telling it is.
pub(super) fn plots(assessment: &Assessment) -> Vec<Plot> {
    assessment
        .traces
        .iter()
        .take(1)
        .map(|trace| plot(trace, assessment))
        .collect()
}

fn plot(trace: &Trace, assessment: &Assessment) -> Plot {
    let across = scale(trace.x.quantity, &trace.x.values);
    // One axis carries one quantity: curves of another would need their own page.
    let quantity = trace.y.first().map_or(Quantity::Ratio, |one| one.quantity);
    let all: Vec<f64> = trace
        .y
        .iter()
        .filter(|one| one.quantity == quantity)
        .flat_map(|one| one.values.iter().copied())
        .collect();
    let up = scale(quantity, &all);
    let shown: Vec<&gagwright_mechanics::Series> = trace
        .y
        .iter()
        .filter(|one| one.quantity == quantity)
        .collect();
    let title = match shown.as_slice() {
        [only] => only.title.clone(),
        _ => quantity_title(quantity),
    };
    // Only limits that lie near the curve help; a far one would flatten it.
    let most = all
        .iter()
        .copied()
        .fold(0.0_f64, |most, value| most.max(value.abs()));
    let limits = assessment
        .checks
        .iter()
        .filter(|check| check.limit.quantity == quantity && check.limit.value.abs() <= most * 2.0)
        .filter(|check| {
            check
                .value
                .is_some_and(|value| shown.iter().any(|series| marks(series, value)))
        })
        .map(|check| PlotLimit {
            label: format!("{}: {}", check.title, words::limit(check)),
            value: up.apply(check.limit.value),
        })
        .collect();
    Plot {
        title: trace.title.clone(),
        x_label: across.label(&trace.x.title),
        y_label: up.label(&title),
        x: trace
            .x
            .values
            .iter()
            .map(|value| across.apply(*value))
            .collect(),
        curves: shown
            .into_iter()
            .map(|series| Curve {
                label: series.title.clone(),
                values: series.values.iter().map(|value| up.apply(*value)).collect(),
            })
            .collect(),
        limits,
        caption: "Computed from the plan's own inputs at their stated values.".into(),
    }
}

/// Whether a curve reaches or ends with a value, so that a limit on that value belongs beside it: the
/// same rule as on the screen.
fn marks(series: &gagwright_mechanics::Series, value: f64) -> bool {
    let good = || series.values.iter().copied().filter(|one| one.is_finite());
    let ends = [
        good().reduce(f64::max),
        good().reduce(f64::min),
        good().next_back(),
    ];
    ends.into_iter()
        .flatten()
        .any(|one| one != 0.0 && (value - one).abs() <= 0.01 * one.abs().max(value.abs()))
}

fn quantity_title(quantity: Quantity) -> String {
    let title = quantity.title();
    let mut letters = title.chars();
    letters.next().map_or(String::new(), |first| {
        first.to_uppercase().chain(letters).collect()
    })
}

/// A straight line from SI to the unit that people read the largest value in.
struct Scale {
    factor: f64,
    offset: f64,
    unit: &'static str,
}

impl Scale {
    fn apply(&self, si: f64) -> f64 {
        si * self.factor + self.offset
    }

    fn label(&self, title: &str) -> String {
        if self.unit.is_empty() {
            title.to_owned()
        } else {
            format!("{title} ({})", self.unit)
        }
    }
}

fn scale(quantity: Quantity, values: &[f64]) -> Scale {
    let most = values
        .iter()
        .copied()
        .filter(|value| value.is_finite())
        .fold(0.0_f64, |most, value| most.max(value.abs()));
    let unit = units::format_metric(quantity, most).1;
    let (factor, offset) = match (quantity, unit) {
        (Quantity::Temperature, _) => (1.0, -273.15),
        (Quantity::Acceleration, _) => (1.0 / 9.80665, 0.0),
        (Quantity::Angle, _) => (180.0 / std::f64::consts::PI, 0.0),
        (Quantity::Conductance, _) => (1.0e8, 0.0),
        (Quantity::Volume, _) => (1e3, 0.0),
        (_, "mm" | "g" | "ms") => (1e3, 0.0),
        (Quantity::Rotation, _) => (30.0 / std::f64::consts::PI, 0.0),
        (_, "kN" | "kJ" | "kW/m²" | "kN/m" | "kW" | "kN m") => (1e-3, 0.0),
        (_, "bar") => (1e-5, 0.0),
        (_, "min") => (1.0 / 60.0, 0.0),
        _ => (1.0, 0.0),
    };
    Scale {
        factor,
        offset,
        unit,
    }
}

pub(super) fn zones(assessment: &Assessment) -> Vec<ZoneRow> {
    assessment.zones.iter().map(zone).collect()
}

/// How large a zone is, in words.
pub(crate) fn extent(shape: &Shape) -> String {
    let length = |si| words::both(Quantity::Length, si);
    match *shape {
        Shape::Ellipse {
            x, half_x, half_y, ..
        } => format!(
            "ellipse {} along by {} across, its middle {} along",
            length(2.0 * half_x),
            length(2.0 * half_y),
            length(x)
        ),
        Shape::Rectangle { x0, x1, y0, y1 } => format!(
            "rectangle {} along by {} across, from {} to {} along",
            length(x1 - x0),
            length(y1 - y0),
            length(x0),
            length(x1)
        ),
    }
}

fn zone(zone: &Zone) -> ZoneRow {
    let shape = match zone.shape {
        Shape::Ellipse {
            x,
            y,
            half_x,
            half_y,
        } => ZoneShape::Ellipse {
            x,
            y,
            half_x,
            half_y,
        },
        Shape::Rectangle { x0, x1, y0, y1 } => ZoneShape::Rectangle { x0, x1, y0, y1 },
    };
    ZoneRow {
        title: zone.title.clone(),
        extent: extent(&zone.shape),
        reason: zone.reason.clone(),
        shape: Some(shape),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_plot_is_scaled_as_its_values_are_written() {
        for (quantity, si) in [
            (Quantity::Force, 4_321.0),
            (Quantity::Temperature, 310.0),
            (Quantity::Pressure, 6.3e5),
            (Quantity::Acceleration, 30.0),
            (Quantity::HeatFlux, 84_000.0),
            (Quantity::Time, 0.5),
            (Quantity::Angle, 0.4),
            (Quantity::Stiffness, 24_080.0),
            (Quantity::Volume, 0.05),
            (Quantity::Conductance, 3e-8),
            (Quantity::Rotation, 3.1),
            (Quantity::Torque, 2_400.0),
            (Quantity::Power, 18_000.0),
            (Quantity::Pixels, 1.4),
        ] {
            let (written, unit) = units::format_metric(quantity, si);
            let scale = scale(quantity, &[si]);
            let written: f64 = written.parse().unwrap();
            assert_eq!(scale.unit, unit);
            assert!(
                (scale.apply(si) - written).abs() <= written.abs() * 0.01,
                "{quantity:?}"
            );
        }
    }
}
