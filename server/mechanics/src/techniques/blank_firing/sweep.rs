//! The sweep of the muzzle as geometry: where it points at sampled moments, and how near, how far off its line
//! and how loud that is for each person. Knows no check and no limit.

use crate::{models, reading::Values};

/// Shown for the nearest person ahead when nobody ever is, m: further than any two places here.
pub(super) const NOBODY: f64 = 300.0;

/// Samples: as many as keep the aim's steps under a cone's least half angle, and nobody's either, seen from
/// the muzzle, unless the step is too short to matter, m.
const FEWEST: usize = 32;
const MOST: usize = 2000;
const AIM_STEP: f64 = 0.04;
const MOVE_STEP: f64 = 0.1;

/// Nobody's ear is nearer to a muzzle than this, m; keeps levels finite.
const NEAREST: f64 = 0.05;

type Place = [f64; 2];

/// Who may be in the way, in the order of what is found about them.
pub(super) const PERFORMER: usize = 0;
pub(super) const CREW: usize = 1;
pub(super) const CAMERA: usize = 2;

#[derive(Clone, Copy, Debug)]
struct Person {
    from: Place,
    to: Place,
    stand_off: (f64, f64),
    open: bool,
}

/// Everything about the sweep. The firer starts at the origin.
#[derive(Clone, Debug)]
pub(super) struct Sweep {
    aim: (f64, f64),
    travel: Place,
    reach: f64,
    /// Cosine of the angle that counts as ahead, straying included.
    ahead: f64,
    /// Growth of the logarithm of pressure from the side to straight ahead.
    forward: f64,
    safe: Option<Place>,
    /// Side that cases go to, 1 the left, and how far.
    cases: Option<(f64, f64)>,
    people: [Option<Person>; 3],
    /// The moments that are looked at, as shares of the sweep.
    shares: Vec<f64>,
}

/// What the sweep finds.
#[derive(Clone, Copy, Debug)]
pub(super) struct Found {
    pub margin: f64,
    pub front: f64,
    pub off_axis: f64,
    pub distance: [f64; 3],
    /// Logarithm of the pressure at each person over that at 1 m to the side.
    pub loudness: [f64; 3],
    pub safe: f64,
    pub cases: f64,
}

/// One moment: each person's distance from the muzzle and angle off the line of fire.
pub(super) struct Moment {
    pub share: f64,
    pub distance: [f64; 3],
    pub off_axis: [f64; 3],
}

fn least(a: &mut f64, b: f64) {
    *a = a.min(b);
}

fn most(a: &mut f64, b: f64) {
    *a = a.max(b);
}

fn angle(cosine: f64) -> f64 {
    libm::acos(cosine.clamp(-1.0, 1.0))
}

impl Sweep {
    pub fn read(values: &Values, case_range: Option<f64>) -> Option<Sweep> {
        let number = |name: &str| values.number(name);
        let stand_off = (number("forward_stand_off")?, number("off_axis_stand_off")?);
        let fixed = |along: &str, across: &str| Some([number(along)?, number(across)?]);
        let crew = fixed("crew_along", "crew_across")?;
        let standing = |at| Person {
            from: at,
            to: at,
            stand_off,
            open: true,
        };
        let camera = match values.choice("camera_cover")? {
            "unmanned" => None,
            cover => {
                let at = standing(fixed("camera_along", "camera_across")?);
                Some(if cover == "shielded" {
                    let given = number("shielded_stand_off")?;
                    Person {
                        stand_off: (given, given),
                        open: false,
                        ..at
                    }
                } else {
                    at
                })
            }
        };
        let performer = Person {
            from: fixed("performer_start_along", "performer_start_across")?,
            to: fixed("performer_end_along", "performer_end_across")?,
            stand_off,
            open: true,
        };
        let side = match values.choice("ejection") {
            Some("left") => Some(1.0),
            Some("right") => Some(-1.0),
            _ => None,
        };
        let mut sweep = Sweep {
            aim: (number("sweep_start")?, number("sweep_end")?),
            travel: fixed("firer_travel_along", "firer_travel_across")?,
            reach: number("muzzle_reach")?,
            ahead: libm::cos(number("cone_half_angle")? + number("aim_error")?),
            forward: number("forward_gain")? * core::f64::consts::LN_10 / 20.0,
            safe: number("safe_direction").map(|safe| [libm::cos(safe), libm::sin(safe)]),
            cases: side.zip(case_range),
            people: [Some(performer), Some(standing(crew)), camera],
            shares: Vec::new(),
        };
        sweep.shares = sweep.sampled();
        Some(sweep)
    }

    fn sampled(&self) -> Vec<f64> {
        let turn = (self.aim.1 - self.aim.0).abs();
        let longest = 1.0 / f64::ceil(turn / AIM_STEP).max(FEWEST as f64);
        let mut shares = Vec::with_capacity(2 * FEWEST);
        let mut share = 0.0;
        // Less than one, so that rounding adds no last sample.
        while share < 1.0 - 1e-9 && shares.len() < MOST {
            shares.push(share);
            let muzzle = self.muzzle(share);
            let mut step = longest;
            for person in self.people.iter().flatten() {
                let moved = models::hypot(
                    person.to[0] - person.from[0] - self.travel[0],
                    person.to[1] - person.from[1] - self.travel[1],
                );
                if moved * longest <= MOVE_STEP {
                    continue;
                }
                let (_, distance) = apart(muzzle, person.at(share));
                least(&mut step, (AIM_STEP * distance).max(MOVE_STEP) / moved);
            }
            share += step;
        }
        shares.push(1.0);
        shares
    }

    /// Where the firer is and where the muzzle points, a share of the way through the sweep.
    fn at(&self, share: f64) -> (Place, Place) {
        let aim = self.aim.0 + (self.aim.1 - self.aim.0) * share;
        let (sin, cos) = libm::sincos(aim);
        ([self.travel[0] * share, self.travel[1] * share], [cos, sin])
    }

    pub fn muzzle(&self, share: f64) -> Place {
        let (firer, aim) = self.at(share);
        self.ahead_of(firer, aim)
    }

    fn ahead_of(&self, firer: Place, aim: Place) -> Place {
        [
            firer[0] + self.reach * aim[0],
            firer[1] + self.reach * aim[1],
        ]
    }

    /// Samples the sweep.
    pub fn find(&self) -> Found {
        let mut found = Found {
            margin: f64::INFINITY,
            front: NOBODY,
            off_axis: -1.0,
            distance: [f64::INFINITY; 3],
            loudness: [f64::NEG_INFINITY; 3],
            safe: -1.0,
            cases: f64::INFINITY,
        };
        let mut loudest = [(f64::INFINITY, f64::NEG_INFINITY); 3];
        for &share in &self.shares {
            let (firer, aim) = self.at(share);
            let muzzle = self.ahead_of(firer, aim);
            for (who, person) in self.people.iter().enumerate() {
                let Some(person) = person else { continue };
                let place = person.at(share);
                let (to, distance) = apart(muzzle, place);
                let along = (to[0] * aim[0] + to[1] * aim[1]) / distance;
                let ahead = along >= self.ahead;
                let stand_off = if ahead {
                    person.stand_off.0
                } else {
                    person.stand_off.1
                };
                least(&mut found.margin, distance - stand_off);
                least(&mut found.distance[who], distance);
                // Nothing that is further off and less ahead than what was heard is louder.
                let (near, ahead_of) = &mut loudest[who];
                if distance < *near || along > *ahead_of {
                    let loud = self.forward * along - libm::log(distance);
                    if loud > found.loudness[who] {
                        found.loudness[who] = loud;
                        (*near, *ahead_of) = (distance, along);
                    }
                }
                if let Some(safe) = self.safe {
                    let held = [
                        firer[0] + self.reach * safe[0],
                        firer[1] + self.reach * safe[1],
                    ];
                    let (to, distance) = apart(held, place);
                    most(
                        &mut found.safe,
                        (to[0] * safe[0] + to[1] * safe[1]) / distance,
                    );
                }
                if !person.open {
                    continue;
                }
                most(&mut found.off_axis, along);
                if ahead {
                    least(&mut found.front, distance);
                }
                if let Some((side, range)) = self.cases {
                    let way = [-side * aim[1], side * aim[0]];
                    let from = [place[0] - firer[0], place[1] - firer[1]];
                    let gone = (from[0] * way[0] + from[1] * way[1]).clamp(0.0, range);
                    least(
                        &mut found.cases,
                        length([from[0] - gone * way[0], from[1] - gone * way[1]]),
                    );
                }
            }
        }
        found.off_axis = angle(found.off_axis);
        found.safe = angle(found.safe);
        found
    }

    /// Each sampled moment, for plotting.
    pub fn moments(&self) -> impl Iterator<Item = Moment> {
        self.shares.iter().map(|&share| {
            let (_, aim) = self.at(share);
            let muzzle = self.muzzle(share);
            let mut moment = Moment {
                share,
                distance: [0.0; 3],
                off_axis: [0.0; 3],
            };
            for (who, person) in self.people.iter().enumerate() {
                if let Some(person) = person {
                    let (to, distance) = apart(muzzle, person.at(share));
                    moment.distance[who] = distance;
                    moment.off_axis[who] = angle((to[0] * aim[0] + to[1] * aim[1]) / distance);
                }
            }
            moment
        })
    }

    /// The box around all ground within a distance ahead of the muzzle: along, then across.
    pub fn swept(&self, distance: f64) -> [(f64, f64); 2] {
        let half = angle(self.ahead);
        let mut bounds = [(f64::INFINITY, f64::NEG_INFINITY); 2];
        let mut take = |place: Place| {
            for i in 0..2 {
                least(&mut bounds[i].0, place[i]);
                most(&mut bounds[i].1, place[i]);
            }
        };
        for &share in &self.shares {
            let aim = self.aim.0 + (self.aim.1 - self.aim.0) * share;
            let muzzle = self.muzzle(share);
            take(muzzle);
            for j in -4..=4 {
                let (sin, cos) = libm::sincos(aim + half * f64::from(j) / 4.0);
                take([muzzle[0] + distance * cos, muzzle[1] + distance * sin]);
            }
        }
        bounds
    }

    /// What a shield reaches past the people behind it, sideways and above, at every moment of the sweep, by
    /// similar triangles. It faces the muzzle at the middle of the sweep; a muzzle level with it or past it
    /// has it on edge, and sees everybody.
    pub fn shield_spare(&self, values: &Values) -> Option<f64> {
        let camera = self.people[CAMERA].filter(|person| !person.open)?.from;
        let before = values.number("shield_distance")?;
        let half = 0.5 * values.number("shield_width")?;
        let top = values.number("shield_height")?;
        let edge = 0.5 * values.number("group_width")?;
        let head = values.number("head_height")?;
        let weapon = values.number("port_height")?;
        let (to, distance) = apart(camera, self.muzzle(0.5));
        let facing = [to[0] / distance, to[1] / distance];
        let mut spare = f64::INFINITY;
        for &share in &self.shares {
            let (to, _) = apart(camera, self.muzzle(share));
            let away = to[0] * facing[0] + to[1] * facing[1];
            let aside = (to[1] * facing[0] - to[0] * facing[1]).abs();
            if away <= before {
                return Some(-half);
            }
            let share = before / away;
            // The edge on the muzzle's own side is the one that shows first.
            let near = edge + (aside - edge) * share;
            let far = edge - (aside + edge) * share;
            least(&mut spare, half - near.abs().max(far.abs()));
            least(&mut spare, top - (head + (weapon - head) * share));
        }
        Some(spare)
    }
}

impl Person {
    fn at(&self, share: f64) -> Place {
        [
            self.from[0] + (self.to[0] - self.from[0]) * share,
            self.from[1] + (self.to[1] - self.from[1]) * share,
        ]
    }
}

fn apart(from: Place, to: Place) -> (Place, f64) {
    let way = [to[0] - from[0], to[1] - from[1]];
    (way, length(way).max(NEAREST))
}

fn length(way: Place) -> f64 {
    models::hypot(way[0], way[1])
}
