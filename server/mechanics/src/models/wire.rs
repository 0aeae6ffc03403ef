//! Wire rope: breaking strength by size and material, what a termination keeps, and what a bend keeps.

use super::GRAVITY;

/// Newtons in a pound-force.
const POUND_FORCE: f64 = 0.453_592_37 * GRAVITY;

/// What the wire is made of.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Material {
    /// Galvanised carbon steel.
    Galvanised,
    /// Corrosion-resistant steel.
    Stainless,
}

/// One size of aircraft cable: 7x19, and 7x7 below 3/32.
pub struct Size {
    /// Machine name, from the nominal diameter in inches.
    pub name: &'static str,
    /// Nominal diameter, m.
    pub diameter: f64,
    galvanised_lbf: f64,
    stainless_lbf: f64,
}

impl Size {
    /// Minimum breaking strength, N.
    pub fn breaking_strength(&self, material: Material) -> f64 {
        POUND_FORCE
            * match material {
                Material::Galvanised => self.galvanised_lbf,
                Material::Stainless => self.stainless_lbf,
            }
    }
}

const fn size(name: &'static str, inches: f64, galvanised_lbf: f64, stainless_lbf: f64) -> Size {
    Size {
        name,
        diameter: inches * 0.0254,
        galvanised_lbf,
        stainless_lbf,
    }
}

/// Minimum breaking strength of aircraft cable: MIL-DTL-83420, compositions A (galvanised) and B
/// (stainless), read in FAA AC 43.13-1B table 7-3. 7x19 from 3/32 up; 1/16 is made as 7x7 only.
pub static SIZES: [Size; 10] = [
    size("1/16", 1.0 / 16.0, 480.0, 480.0),
    size("3/32", 3.0 / 32.0, 1000.0, 920.0),
    size("1/8", 1.0 / 8.0, 2000.0, 1760.0),
    size("5/32", 5.0 / 32.0, 2800.0, 2400.0),
    size("3/16", 3.0 / 16.0, 4200.0, 3700.0),
    size("7/32", 7.0 / 32.0, 5600.0, 5000.0),
    size("1/4", 1.0 / 4.0, 7000.0, 6400.0),
    size("9/32", 9.0 / 32.0, 8000.0, 7800.0),
    size("5/16", 5.0 / 16.0, 9800.0, 9000.0),
    size("3/8", 3.0 / 8.0, 14400.0, 12000.0),
];

/// The size of that machine name.
pub fn find(name: &str) -> Option<&'static Size> {
    SIZES.iter().find(|size| size.name == name)
}

/// Share of strength that an end fitting keeps: US Army TM 5-3810-305-10 table 4, for rope with a wire
/// core; the lower end where the table gives a range.
pub fn termination_share(name: &str) -> Option<f64> {
    match name {
        "spelter_socket" => Some(1.0),
        "swaged_socket" | "swaged_sleeve" => Some(0.95),
        "hand_tucked" => Some(0.86),
        "clips" => Some(0.80),
        "wedge" => Some(0.75),
        _ => None,
    }
}

/// Clips on one end of a wire of this diameter in m: three for each inch and one more, rounded up (an army
/// constructor's manual). Fewer do not keep the share that [`termination_share`] gives for clips, and no
/// end has fewer than two.
pub fn clips_needed(diameter: f64) -> f64 {
    // A hair less, so that a size that comes out whole is not rounded up by its last bit.
    f64::ceil(3.0 * diameter / 0.0254 + 1.0 - 1e-9)
}

/// From one clip to the next, m: six diameters (the same manual).
pub fn clip_spacing(diameter: f64) -> f64 {
    6.0 * diameter
}

/// Share of strength kept over a sheave by the ratio of sheave to wire diameter: a wire-rope maker's
/// handbook table, read on a secondary page. Straight lines between its rows.
const BEND: [(f64, f64); 10] = [
    (1.0, 0.50),
    (2.0, 0.65),
    (4.0, 0.75),
    (6.0, 0.79),
    (8.0, 0.83),
    (10.0, 0.86),
    (15.0, 0.89),
    (20.0, 0.91),
    (30.0, 0.93),
    (40.0, 0.95),
];

/// Share of strength kept over a sheave; below the table its first row, above it its last.
pub fn bend_share(ratio: f64) -> f64 {
    let (mut below, mut kept) = BEND[0];
    if ratio <= below {
        return kept;
    }
    for (at, share) in BEND {
        if ratio <= at {
            return kept + (share - kept) * (ratio - below) / (at - below);
        }
        (below, kept) = (at, share);
    }
    kept
}

/// Strength of a wire as rigged, N: the weakest of its end and its bend, which sit at different places.
pub fn governing_strength(breaking: f64, termination: f64, bend: f64) -> f64 {
    breaking * termination.min(bend)
}

/// Strength of a wire as rigged, N, counting both losses at once: lower than what governs, for use
/// where end and bend may meet.
pub fn cautious_strength(breaking: f64, termination: f64, bend: f64) -> f64 {
    breaking * termination * bend
}

/// Share of a line's tension that passes one sheave (about two per cent are lost: a rope maker's
/// handbook, common practice).
pub const SHEAVE_SHARE: f64 = 0.98;
