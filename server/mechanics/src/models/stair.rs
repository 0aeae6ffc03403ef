//! A body going down a stair along the line of its nosings, sliding over them or tumbling.
//!
//! Energy along the slope: (1 + c) v dv = g (sin a - f cos a) ds, with a the pitch of the nosings, f Coulomb
//! friction on them, and c = (k / r)^2 for a body that turns as it goes, k its radius of gyration and 2 pi r the
//! way it makes in one turn (a hoop rolling down a slope, any text on mechanics). At every contact a share of the
//! energy goes. So the square of the speed just before the contacts is a geometric series with the limit
//! 2 a d / loss, d the way between contacts, and that is exact.

use super::GRAVITY;

/// A flight of stairs and how a body goes down it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tumble {
    /// Rise of one step, m.
    pub rise: f64,
    /// Going of one step, m.
    pub going: f64,
    /// Steps in the flight.
    pub steps: f64,
    /// Speed along the slope at the top, m/s.
    pub start_speed: f64,
    /// Way along the slope between contacts that cost energy, m.
    pub spacing: f64,
    /// Share of the energy that a contact takes, above 0 and below 1.
    pub loss: f64,
    /// Friction along the nosings.
    pub friction: f64,
    /// Energy in turning over energy in going, c.
    pub turning: f64,
}

/// A moment on the flight.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Moment {
    /// Time from the top, s.
    pub time: f64,
    /// Way along the slope, m.
    pub along: f64,
    /// Speed along the slope, m/s.
    pub speed: f64,
}

/// The most contacts that are followed; 60 steps with a contact every 5 cm have fewer.
const MOST_CONTACTS: usize = 2000;

/// A contact this near the foot, as a share of the way between two, comes at the foot.
const NEARLY: f64 = 1e-9;

impl Tumble {
    /// Pitch of the line of nosings, rad.
    pub fn pitch(&self) -> f64 {
        libm::atan2(self.rise, self.going)
    }

    /// Along the nosings from first to last edge and onto the landing, m.
    pub fn length(&self) -> f64 {
        self.steps * super::hypot(self.rise, self.going)
    }

    /// Speeding up between contacts, m/s2; negative where friction wins.
    pub fn acceleration(&self) -> f64 {
        let pitch = self.pitch();
        GRAVITY * (libm::sin(pitch) - self.friction * libm::cos(pitch)) / (1.0 + self.turning)
    }

    /// Contacts on the flight.
    pub fn contacts(&self) -> f64 {
        self.length() / self.spacing
    }

    /// Square of the speed that contacts tend to, just before each, m2/s2.
    pub fn settled_square(&self) -> f64 {
        2.0 * self.acceleration() * self.spacing / self.loss
    }

    /// Speed just before a contact at the foot of the flight, m/s; none when the body stops on the stairs.
    /// Between whole numbers of contacts the series is read as if one came at the foot, which is never less
    /// than what is left of a moving body's speed there, but hides a stop between two contacts.
    pub fn foot_speed(&self) -> Option<f64> {
        let square = self.square_before(self.contacts());
        if self.acceleration() >= 0.0 {
            return (square > 0.0).then(|| f64::sqrt(square));
        }
        // Where friction wins a body stops or reaches the foot by what is left after its last contact, and is
        // never faster than at the top.
        let whole = (f64::ceil(self.contacts() - NEARLY) - 1.0).max(0.0);
        let after = (1.0 - self.loss) * self.square_before(whole);
        let left = after + 2.0 * self.acceleration() * (self.length() - whole * self.spacing);
        (left > 0.0).then(|| f64::sqrt(square).min(self.start_speed))
    }

    /// Square of the speed just before so many contacts, m2/s2; before none, the one that would leave the start.
    fn square_before(&self, contacts: f64) -> f64 {
        let kept = 1.0 - self.loss;
        let before = self.start_speed * self.start_speed / kept;
        let settled = self.settled_square();
        settled + (before - settled) * libm::pow(kept, contacts)
    }

    /// Speed just before the first contact, or at the foot where none comes before it, m/s.
    pub fn first_speed(&self) -> f64 {
        let way = self.spacing.min(self.length());
        let square = self.start_speed * self.start_speed + 2.0 * self.acceleration() * way;
        f64::sqrt(square.max(0.0))
    }

    /// Goes down contact by contact, giving each moment before and after one to `watch`; the time taken, or
    /// none when the body stops on the stairs.
    pub fn go_down(&self, mut watch: impl FnMut(Moment)) -> Option<f64> {
        let (length, acceleration) = (self.length(), self.acceleration());
        let mut now = Moment {
            time: 0.0,
            along: 0.0,
            speed: self.start_speed,
        };
        watch(now);
        for contact in 1..=MOST_CONTACTS {
            let to = (contact as f64 * self.spacing).min(length);
            let way = to - now.along;
            let square = now.speed * now.speed + 2.0 * acceleration * way;
            if square <= 0.0 {
                return None;
            }
            let speed = f64::sqrt(square);
            now = Moment {
                time: now.time + 2.0 * way / (now.speed + speed),
                along: to,
                speed,
            };
            watch(now);
            if to >= length {
                return Some(now.time);
            }
            now.speed *= f64::sqrt(1.0 - self.loss);
            watch(now);
        }
        None
    }

    /// Speed left along the landing, m/s: the part of the speed into it is lost, and its friction takes the
    /// impulse's share of the rest (Coulomb).
    pub fn landing_speed(&self, foot_speed: f64, friction: f64) -> f64 {
        let pitch = self.pitch();
        (foot_speed * (libm::cos(pitch) - friction * libm::sin(pitch))).max(0.0)
    }

    /// Way along the landing to rest, m: friction takes up the going and, as if none of it were lost, the
    /// turning too.
    pub fn run_out(&self, foot_speed: f64, friction: f64) -> f64 {
        let speed = self.landing_speed(foot_speed, friction);
        (1.0 + self.turning) * super::dragging::slide(speed, friction)
    }

    /// Height of a fall that hits level ground as hard, m: (v sin a)^2 / 2 g (equivalent fall height,
    /// M. Hubbard and J. McNeil, Sports Engineering 15, 2012).
    pub fn landing_height(&self, foot_speed: f64) -> f64 {
        let down = foot_speed * libm::sin(self.pitch());
        down * down / (2.0 * GRAVITY)
    }

    /// Steps that a body thrown off level at that speed along the slope clears before it comes back to the
    /// line of nosings: x = 2 u^2 tan a / g over the going.
    pub fn cleared(&self, speed: f64) -> f64 {
        let level = speed * libm::cos(self.pitch());
        2.0 * level * level * self.rise / (self.going * self.going * GRAVITY)
    }
}
