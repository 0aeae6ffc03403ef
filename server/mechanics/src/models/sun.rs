//! Where the sun stands: the equations of the NOAA Global Monitoring Laboratory's solar position
//! spreadsheet, after J. Meeus, Astronomical Algorithms, 1991 (public domain). Good to a hundredth of a
//! degree between 1901 and 2099. Light through clear air: A. B. Meinel and M. P. Meinel, Applied Solar
//! Energy, 1976, with the air mass of F. Kasten and A. T. Young, Applied Optics 28, 1989 (from memory).

const DEGREE: f64 = core::f64::consts::PI / 180.0;

/// A place and a moment, in universal time.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Moment {
    /// Latitude, rad, north positive.
    pub latitude: f64,
    /// Longitude, rad, east positive.
    pub longitude: f64,
    /// Year of the common era.
    pub year: f64,
    /// Day of the year, 1 for the first of January.
    pub day: f64,
    /// Seconds since midnight in universal time; may run past the day.
    pub seconds: f64,
}

/// Where the sun is seen.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sun {
    /// Clockwise from north, rad, from 0 to a whole turn.
    pub azimuth: f64,
    /// Above the horizon, rad, without the air's bending.
    pub elevation: f64,
    /// Above the horizon as seen through air, rad.
    pub seen: f64,
}

/// Julian day of the first of January of a year of the Gregorian calendar, at midnight.
fn new_year(year: f64) -> f64 {
    let before = year - 1.0;
    1_721_425.5 + 365.0 * before + f64::floor(before / 4.0) - f64::floor(before / 100.0)
        + f64::floor(before / 400.0)
}

/// The sun's place.
pub fn position(moment: &Moment) -> Sun {
    let day = new_year(moment.year) + moment.day - 1.0 + moment.seconds / 86_400.0;
    let t = (day - 2_451_545.0) / 36_525.0;
    let mean_longitude = 280.46646 + t * (36_000.769_83 + 0.000_303_2 * t);
    let anomaly = (357.52911 + t * (35_999.050_29 - 0.000_153_7 * t)) * DEGREE;
    let eccentricity = 0.016_708_634 - t * (0.000_042_037 + 0.000_000_126_7 * t);
    let centre = libm::sin(anomaly) * (1.914_602 - t * (0.004_817 + 0.000_014 * t))
        + libm::sin(2.0 * anomaly) * (0.019_993 - 0.000_101 * t)
        + libm::sin(3.0 * anomaly) * 0.000_289;
    let node = (125.04 - 1934.136 * t) * DEGREE;
    let apparent = (mean_longitude + centre - 0.005_69 - 0.004_78 * libm::sin(node)) * DEGREE;
    let seconds = 21.448 - t * (46.815 + t * (0.000_59 - t * 0.001_813));
    let tilt = (23.0 + (26.0 + seconds / 60.0) / 60.0 + 0.002_56 * libm::cos(node)) * DEGREE;
    let declination = libm::asin(libm::sin(tilt) * libm::sin(apparent));
    // The equation of time, in radians of the Earth's turn.
    let y = libm::tan(0.5 * tilt) * libm::tan(0.5 * tilt);
    let l = mean_longitude * DEGREE;
    let ahead = y * libm::sin(2.0 * l) - 2.0 * eccentricity * libm::sin(anomaly)
        + 4.0 * eccentricity * y * libm::sin(anomaly) * libm::cos(2.0 * l)
        - 0.5 * y * y * libm::sin(4.0 * l)
        - 1.25 * eccentricity * eccentricity * libm::sin(2.0 * anomaly);
    let turn = 2.0 * core::f64::consts::PI;
    let hour = turn * moment.seconds / 86_400.0 + ahead + moment.longitude - 0.5 * turn;
    let (sin_lat, cos_lat) = (libm::sin(moment.latitude), libm::cos(moment.latitude));
    let (sin_dec, cos_dec) = (libm::sin(declination), libm::cos(declination));
    let east = -cos_dec * libm::sin(hour);
    let north = sin_dec * cos_lat - cos_dec * sin_lat * libm::cos(hour);
    let up = sin_lat * sin_dec + cos_lat * cos_dec * libm::cos(hour);
    let azimuth = libm::atan2(east, north);
    let elevation = libm::atan2(up, super::hypot(east, north));
    Sun {
        azimuth: if azimuth < 0.0 {
            azimuth + turn
        } else {
            azimuth
        },
        elevation,
        seen: elevation + refraction(elevation),
    }
}

/// How much air lifts the sun, rad (the same spreadsheet's approximation).
fn refraction(elevation: f64) -> f64 {
    let degrees = elevation / DEGREE;
    let tangent = libm::tan(elevation);
    let arc_seconds = if degrees > 85.0 {
        0.0
    } else if degrees > 5.0 {
        let cube = tangent * tangent * tangent;
        58.1 / tangent - 0.07 / cube + 0.000_086 / (cube * tangent * tangent)
    } else if degrees > -0.575 {
        1735.0 + degrees * (-518.2 + degrees * (103.4 + degrees * (-12.79 + degrees * 0.711)))
    } else {
        -20.774 / tangent
    };
    arc_seconds / 3600.0 * DEGREE
}

/// Length of the shadow of something a metre high on level ground; none with the sun down.
pub fn shadow_length(sun: &Sun) -> Option<f64> {
    (sun.seen > 0.0).then(|| libm::cos(sun.seen) / libm::sin(sun.seen))
}

/// Where such a shadow's tip lies, m east and north of its foot; none with the sun down.
pub fn shadow(sun: &Sun) -> Option<[f64; 2]> {
    shadow_length(sun).map(|length| {
        [
            -length * libm::sin(sun.azimuth),
            -length * libm::cos(sun.azimuth),
        ]
    })
}

/// Share of the sun's light that comes straight through clear air; none with the sun down.
pub fn direct_share(sun: &Sun) -> Option<f64> {
    if sun.seen <= 0.0 {
        return None;
    }
    let degrees = sun.seen / DEGREE;
    let mass = 1.0 / (libm::sin(sun.seen) + 0.50572 * libm::pow(degrees + 6.07995, -1.6364));
    Some(libm::pow(0.7, libm::pow(mass, 0.678)))
}
