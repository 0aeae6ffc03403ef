//! One jump: the flight onto the landing, the window in speed, and how landings scatter.

use crate::{
    models::{
        self, GRAVITY, atmosphere,
        trajectory::{self, Landing, Throw, Watch},
    },
    reading::Values,
};

/// A ramp, a gap and a landing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Jump {
    pub throw: Throw,
    pub gap: f64,
    pub edge: f64,
    pub slope: f64,
    pub length: f64,
    pub ground_fall: f64,
}

/// A landing less steep than this is as good as the level ground that it runs into.
const LEVEL: f64 = 2.0 * core::f64::consts::PI / 180.0;

impl Jump {
    pub fn read(values: &Values) -> Option<Jump> {
        Some(Jump {
            throw: Throw {
                speed: values.number("takeoff_speed")?,
                angle: values.number("takeoff_angle")?,
                height: values.number("lip_height")?,
                mass: values.number("performer_mass")? + values.number("motorcycle_mass")?,
                drag_area: values.number("drag_area")?,
                density: atmosphere::density(0.0),
                wind: values.number("head_wind")?,
            },
            gap: values.number("gap")?,
            edge: values.number("landing_edge_height")?,
            slope: values.number("landing_angle")?,
            length: values.number("landing_length")?,
            ground_fall: values.number("ground_fall")?,
        })
    }

    /// Height of the landing's surface, taken as endless either way, or of the ground that it runs into.
    fn surface(&self, along: f64) -> f64 {
        (self.edge - (along - self.gap) * libm::tan(self.slope)).max(-self.ground_fall)
    }

    /// How far from the lip the slope meets the ground; none for a level landing.
    pub fn foot(&self) -> Option<f64> {
        let above = (self.edge + self.ground_fall).max(0.0);
        (self.slope > LEVEL).then(|| self.gap + above / libm::tan(self.slope))
    }

    /// How far from the lip the landing ends: where it is stated to, or at its foot where that comes first.
    pub fn end(&self) -> f64 {
        let stated = self.gap + self.length;
        self.foot().map_or(stated, |foot| foot.min(stated))
    }

    /// Flies until the landing's slope, its slope drawn on beyond its far end, or the ground past its foot; short of
    /// its near edge, until the ground or the face under that edge.
    pub fn fly(&self, watch: Watch) -> Option<Met> {
        // First to the plane of the near edge, so that no step can leap the face.
        let (at_plane, height) = reach(&self.throw, self.gap)?;
        let arrives = (at_plane.distance - self.gap).abs() < AT_PLANE;
        let struck = arrives && height < self.edge;
        let landing = if arrives && !struck {
            trajectory::fly_over(
                &self.throw,
                |along| {
                    if along < self.gap {
                        0.0
                    } else {
                        self.surface(along)
                    }
                },
                watch,
            )?
        } else {
            trajectory::fly_to_plane(&self.throw, self.gap, watch)?
        };
        let place = if struck {
            Place::Face {
                under: self.edge - height,
            }
        } else if arrives {
            let drawn = self.edge - (landing.distance - self.gap) * libm::tan(self.slope);
            if drawn < -self.ground_fall {
                Place::Beyond
            } else {
                Place::Slope
            }
        } else {
            Place::Ground
        };
        Some(Met { landing, place })
    }

    /// Speed square to what is met; what a rising slope would add is none here.
    pub fn across(&self, met: &Met) -> f64 {
        let landing = &met.landing;
        let across = match met.place {
            Place::Ground | Place::Beyond => landing.down,
            Place::Face { .. } => landing.along,
            Place::Slope => {
                landing.down * libm::cos(self.slope) - landing.along * libm::sin(self.slope)
            }
        };
        across.max(0.0)
    }

    /// Where landings scatter about.
    fn place(&self) -> Option<f64> {
        Some(self.placed(&self.fly(None)?))
    }

    /// Where a landing counts as being: a jump that comes short is placed where it sinks past the edge's height, for
    /// the face would hide how far short it is; and one that strikes the face before it would sink, as far short as it
    /// strikes low.
    pub fn placed(&self, met: &Met) -> f64 {
        if matches!(met.place, Place::Slope | Place::Beyond) {
            return met.landing.distance;
        }
        let level = trajectory::fly_over(&self.throw, |_| self.edge, None);
        let sinks = level.map_or(met.landing.distance, |level| level.distance);
        match met.place {
            Place::Face { under } if sinks >= self.gap => self.gap - under,
            _ => sinks,
        }
    }

    /// The slowest take-off that lands this far past the near edge and clears that edge on the way.
    pub fn slowest(&self, margin: f64) -> Option<f64> {
        let lands = self.speed_for(self.gap + margin)?;
        // Whoever is over the edge at that speed could clear it at a lower one.
        let mut throw = self.throw;
        throw.speed = lands;
        let clears = self.height_over(&throw, self.gap, self.edge);
        if clears.is_some_and(|height| height >= 0.0) {
            return Some(lands);
        }
        Some(lands.max(self.speed_for(self.gap)?))
    }

    /// The take-off speed that lands at a place on the slope: the closed form without drag, then secants on
    /// the height over that place.
    pub fn speed_for(&self, along: f64) -> Option<f64> {
        let target = self.surface(along);
        let (s, c) = (libm::sin(self.throw.angle), libm::cos(self.throw.angle));
        let room = 2.0 * c * c * (along * s / c + self.throw.height - target);
        if along <= 0.0 || room <= 0.0 {
            return None;
        }
        let over = |speed: f64| {
            let mut throw = self.throw;
            throw.speed = speed;
            self.height_over(&throw, along, target)
        };
        let mut before = f64::sqrt(GRAVITY * along * along / room);
        let mut at_before = over(before)?;
        // The first step by the slope without drag, the others by secants.
        let slope = GRAVITY * along * along / (c * c * before * before * before);
        let mut now = before - at_before / slope;
        if at_before == 0.0 {
            return Some(before);
        }
        for _ in 0..12 {
            if !(now.is_finite() && now > 0.0 && now < 200.0) {
                return None;
            }
            let at_now = over(now)?;
            if at_now == at_before {
                return Some(now);
            }
            let next = now - at_now * (now - before) / (at_now - at_before);
            if at_now.abs() < 1e-5 {
                return Some(next);
            }
            (before, at_before, now) = (now, at_now, next);
        }
        None
    }

    /// Height of a flight over a place along at a height; none when it never gets there. Up to there nothing is in
    /// the way.
    fn height_over(&self, throw: &Throw, along: f64, target: f64) -> Option<f64> {
        // A deep floor lets the flight go on to the place whatever its height.
        let deep = Throw {
            height: throw.height + DEEP,
            ..*throw
        };
        let (end, height) = reach(&deep, along)?;
        ((end.distance - along).abs() < AT_PLANE).then_some(height - DEEP - target)
    }
}

/// Further below the landing than any flight of these ranges falls before it reaches its place, m.
const DEEP: f64 = 400.0;

/// How near to a plane counts as at it, m.
const AT_PLANE: f64 = 1e-6;

/// Flies until level ground or an upright plane, with the height there.
fn reach(throw: &Throw, along: f64) -> Option<(Landing, f64)> {
    let landing = trajectory::fly_to_plane(throw, along, None)?;
    Some((landing, landing.height))
}

/// What a jump comes down on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Place {
    Ground,
    Face {
        under: f64,
    },
    Slope,
    /// The ground past the foot of the slope.
    Beyond,
}

/// A landing, and on what.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Met {
    pub landing: Landing,
    pub place: Place,
}

/// How landings scatter.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Scatter {
    pub along: f64,
    pub deviation: f64,
}

const SCATTERING: [&str; 4] = ["takeoff_speed", "takeoff_angle", "drag_area", "head_wind"];

/// Each tolerance counts as two standard deviations, taken from the stated inputs.
pub(super) fn scatter(stated: &Values) -> Option<Scatter> {
    let along = Jump::read(stated)?.place()?;
    let mut sum = 0.0;
    for name in SCATTERING {
        let Some((low, high)) = stated.index_of(name).and_then(|index| stated.ends(index)) else {
            continue;
        };
        let at = |end| {
            let mut moved = stated.clone();
            moved.set(stated.index_of(name)?, end);
            Jump::read(&moved)?.place()
        };
        let quarter = 0.25 * (at(high)? - at(low)?);
        sum += quarter * quarter;
    }
    Some(Scatter {
        along,
        deviation: f64::sqrt(sum),
    })
}

/// Sideways drift in a wind across: the air takes the wind's speed up as it does along the way, at the
/// speed through it, so y'' = k V (w - y') with k = rho CdA / 2 m. The speed is the take-off's, or what a headwind
/// makes of it.
pub(super) fn drift(throw: &Throw, side_area: f64, wind: f64, time: f64) -> f64 {
    let through = throw.speed * libm::cos(throw.angle) - throw.wind;
    let speed = models::hypot(throw.speed.max(through), wind);
    let rate = 0.5 * throw.density * side_area / throw.mass * speed;
    if rate * time < 1e-9 {
        return 0.0;
    }
    wind * (time - (1.0 - libm::exp(-rate * time)) / rate)
}
