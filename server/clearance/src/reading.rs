//! What the kinds of reading are called, measured in and can plausibly be. The one place for it: the
//! plan's bands, the readings handed in and the judge's sentences all ask here. It judges nothing.

use gagwright_mechanics::{
    Quantity,
    units::{format_imperial, format_metric, join, say},
};

use crate::case::ReadingKind;

impl ReadingKind {
    /// Every kind.
    pub const ALL: [ReadingKind; 5] = [
        ReadingKind::Wind,
        ReadingKind::Gust,
        ReadingKind::AirTemperature,
        ReadingKind::WaterTemperature,
        ReadingKind::Light,
    ];

    /// The machine name, as in JSON.
    pub fn name(self) -> &'static str {
        match self {
            ReadingKind::Wind => "wind",
            ReadingKind::Gust => "gust",
            ReadingKind::AirTemperature => "air_temperature",
            ReadingKind::WaterTemperature => "water_temperature",
            ReadingKind::Light => "light",
        }
    }

    /// The kind in running text.
    pub fn words(self) -> &'static str {
        match self {
            ReadingKind::Wind => "mean wind",
            ReadingKind::Gust => "gust",
            ReadingKind::AirTemperature => "air temperature",
            ReadingKind::WaterTemperature => "water temperature",
            ReadingKind::Light => "light",
        }
    }

    /// What is measured; none for light, which is read in lux and nothing else.
    pub fn quantity(self) -> Option<Quantity> {
        match self {
            ReadingKind::Wind | ReadingKind::Gust => Some(Quantity::Speed),
            ReadingKind::AirTemperature | ReadingKind::WaterTemperature => {
                Some(Quantity::Temperature)
            }
            ReadingKind::Light => None,
        }
    }

    /// The unit that values are kept in.
    pub fn unit(self) -> &'static str {
        self.quantity().map_or("lux", Quantity::si_symbol)
    }

    /// Least and most that it can be, in [`ReadingKind::unit`]: what the planet and its weather
    /// stations can show, with room to spare. Anything else is a slip of the finger.
    pub fn range(self) -> (f64, f64) {
        match self {
            ReadingKind::Wind | ReadingKind::Gust => (0.0, 120.0),
            ReadingKind::AirTemperature => (180.0, 335.0),
            ReadingKind::WaterTemperature => (270.0, 320.0),
            ReadingKind::Light => (0.0, 200_000.0),
        }
    }

    /// A value as people read it, metric with imperial in brackets: `6 m/s (13.4 mph)`.
    pub fn say(self, value: f64) -> String {
        match self.quantity() {
            Some(quantity) => {
                let imperial = join(format_imperial(quantity, value));
                format!("{} ({imperial})", join(format_metric(quantity, value)))
            }
            None => format!("{value} lux"),
        }
    }

    /// A value held against a limit that it breaks. Rounded alike, the two would contradict each other.
    pub(crate) fn say_beyond(self, value: f64, limit: Option<f64>) -> String {
        let alike = |limit: &f64| match self.quantity() {
            Some(quantity) => say(quantity, value) == say(quantity, *limit),
            None => false,
        };
        match limit.filter(alike) {
            Some(limit) if value > limit => format!("a little more than {}", self.say(limit)),
            Some(limit) => format!("a little less than {}", self.say(limit)),
            None => self.say(value),
        }
    }
}
