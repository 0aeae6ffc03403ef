//! The car's pass and the performer's pass, each on its own clock.

use crate::{
    models::{atmosphere, slide, trajectory::Throw},
    reading::Values,
};

/// How far a body's own length reaches beyond its middle, m.
pub(super) const BODY: f64 = 1.0;

/// Time between the passes on the clock of the day, whichever is first; negative when they overlap.
pub(super) fn time_gap(values: &Values) -> Option<f64> {
    let start = values.number("performer_start")?;
    let car_first = start - values.number("car_pass_length")?;
    let performer_first = -start - values.number("performer_pass_length")?;
    Some(car_first.max(performer_first))
}

/// The car's pass: steady until the wheels lock, then sliding to rest.
pub(super) struct Car {
    pub speed: f64,
    pub run_in: f64,
    /// From the start mark to where the wheels lock.
    pub locks: f64,
    pub slowing: f64,
}

impl Car {
    pub fn read(values: &Values) -> Option<Car> {
        let run_in = values.number("run_in")?;
        Some(Car {
            speed: values.number("approach_speed")?,
            run_in,
            locks: (run_in - values.number("brake_before")?).max(0.0),
            slowing: slide::deceleration(values.number("friction")?, 0.0),
        })
    }

    /// None when the car rests before its mark.
    pub fn contact_speed(&self) -> Option<f64> {
        let braked = (self.run_in - self.locks).max(0.0);
        let square = self.speed * self.speed - 2.0 * self.slowing * braked;
        (square > 0.0).then(|| f64::sqrt(square))
    }

    pub fn contact_time(&self) -> Option<f64> {
        let speed = self.contact_speed()?;
        let steady = self.run_in.min(self.locks) / self.speed;
        Some(steady + (self.speed - speed) / self.slowing)
    }

    /// Way past the contact mark; negative when it rests before it.
    pub fn stop_past(&self) -> f64 {
        self.locks + self.speed * self.speed / (2.0 * self.slowing) - self.run_in
    }

    /// Time to rest.
    pub fn rest_time(&self) -> f64 {
        self.locks / self.speed + self.speed / self.slowing
    }

    /// Way of the nose from the contact mark at a time from the start mark.
    pub fn at(&self, time: f64) -> f64 {
        let steady = self.locks / self.speed;
        let braking = (time - steady).clamp(0.0, self.speed / self.slowing);
        self.speed * (time.min(steady) + braking)
            - 0.5 * self.slowing * braking * braking
            - self.run_in
    }
}

/// The performer's pass: an even pull, then a flight.
pub(super) struct Pull {
    /// Time of the pull.
    pub time: f64,
    /// Way along the ground during the pull.
    pub before: f64,
    pub throw: Throw,
}

impl Pull {
    pub fn read(values: &Values) -> Option<Pull> {
        let speed = values.number("release_speed")?;
        let travel = values.number("pull_travel")?;
        let angle = values.number("pull_angle")?;
        let height = values.number("pick_height")? + travel * libm::sin(angle);
        Some(Pull {
            time: 2.0 * travel / speed,
            before: travel * libm::cos(angle),
            throw: Throw {
                speed,
                angle,
                // The body's middle lies 0.3 m over the pads when it has landed.
                height: height - values.number("pad_height")? - 0.3,
                mass: values.number("performer_mass")?,
                drag_area: values.number("body_drag")?,
                density: atmosphere::density(0.0),
                wind: 0.0,
            },
        })
    }
}
