//! Heat conduction through a stack of thin cells, one-dimensional, with water that boils away.
//!
//! Finite volumes, backward Euler in time, a tridiagonal solve a step (S. V. Patankar, Numerical Heat
//! Transfer and Fluid Flow, 1980, chapter 4). Water holds its cell at the boiling point until its
//! latent heat is spent; the steam is taken to leave outward. Every joule is booked in a [`Ledger`].

/// Latent heat of water at its boiling point, J/kg (steam tables, 2,257 kJ/kg at 100 C).
pub const LATENT_HEAT: f64 = 2.257e6;
/// Specific heat of liquid water, J/(kg K) (4.19 kJ/(kg K) between 20 C and 100 C).
pub const WATER_HEAT: f64 = 4190.0;
/// Boiling point, K.
pub const BOILING: f64 = 373.15;

/// One cell of the stack, from outside to inside.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Cell {
    /// Thickness, m.
    pub thickness: f64,
    /// Conductivity, W/(m K).
    pub conductivity: f64,
    /// Heat capacity by volume without its water, J/(m3 K); above nothing, or a cell that dries has no
    /// temperature.
    pub heat_capacity: f64,
    /// Water in it, kg/m2.
    pub water: f64,
    /// Conductivity once its water is gone; the same as `conductivity` for a cell with none.
    pub dry_conductivity: f64,
    /// Temperature, K.
    pub temperature: f64,
}

impl Cell {
    /// Heat capacity by area, water included, J/(m2 K).
    fn capacity(&self) -> f64 {
        self.heat_capacity * self.thickness + self.water * WATER_HEAT
    }

    fn half_resistance(&self) -> f64 {
        0.5 * self.thickness / self.conductivity
    }
}

/// What acts on the outer face: q = flux + exchange (surroundings - face temperature).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Outside {
    /// Flux that arrives whatever the face's temperature, W/m2.
    pub flux: f64,
    /// Heat exchange coefficient, W/(m2 K).
    pub exchange: f64,
    /// Temperature exchanged with, K.
    pub surroundings: f64,
}

/// What happens at the inner face.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Deep {
    /// Held at a temperature, K.
    Held(f64),
    /// No heat passes.
    Insulated,
}

/// Where the heat went, J/m2.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Ledger {
    /// Came in through the outer face.
    pub entered: f64,
    /// Left through the inner face.
    pub left_inward: f64,
    /// Spent on boiling water.
    pub boiled: f64,
    /// Carried off by the boiled water: what it held above 0 K at the boiling point.
    pub carried_off: f64,
}

/// The stack.
#[derive(Clone, Debug)]
pub struct Stack {
    cells: Vec<Cell>,
    deep: Deep,
    links: Vec<f64>,
    ledger: Ledger,
    scratch: Vec<(f64, f64)>,
    solved: Vec<f64>,
    boiling: Vec<bool>,
    /// From here on inward no cell ever changes what it conducts or holds.
    steady: usize,
    /// The elimination of those cells, from the deep side, for each step that was taken.
    factors: Vec<Factors>,
}

/// The steady cells' elimination for one length of step, outermost first: a cell's solved temperature is
/// own * (temperature before) + inner * (carried of the next cell in) + outer * (solved of the next cell out).
#[derive(Clone, Debug)]
struct Factors {
    step: f64,
    rows: Vec<Row>,
}

#[derive(Clone, Copy, Debug)]
struct Row {
    own: f64,
    inner: f64,
    outer: f64,
}

/// More lengths of step than any course has.
const MOST_FACTORS: usize = 64;

impl Stack {
    /// A stack of at least one cell, from outside to inside.
    pub fn new(cells: Vec<Cell>, deep: Deep) -> Stack {
        let count = cells.len();
        let dry = cells
            .iter()
            .rev()
            .take_while(|cell| cell.water <= 0.0)
            .count();
        let mut stack = Stack {
            // The outermost dry cell is still linked to one that changes.
            steady: (count - dry + 1).min(count),
            factors: Vec::new(),
            links: Vec::with_capacity(count),
            cells,
            deep,
            ledger: Ledger::default(),
            scratch: vec![(0.0, 0.0); count],
            solved: vec![0.0; count],
            boiling: vec![false; count],
        };
        stack.link();
        stack
    }

    /// The cells, from outside to inside.
    pub fn cells(&self) -> &[Cell] {
        &self.cells
    }

    /// Where the heat went so far.
    pub fn ledger(&self) -> Ledger {
        self.ledger
    }

    /// Heat held above 0 K, J/m2.
    pub fn held(&self) -> f64 {
        self.cells
            .iter()
            .map(|cell| cell.capacity() * cell.temperature)
            .sum()
    }

    /// Water left, kg/m2.
    pub fn water(&self) -> f64 {
        self.cells[..self.steady]
            .iter()
            .map(|cell| cell.water)
            .sum()
    }

    /// The highest temperature that anything can come to under `outside`, K: heat flows only downhill.
    pub fn highest(&self, outside: &Outside) -> f64 {
        let ends = match self.deep {
            Deep::Held(temperature) => temperature.max(outside.surroundings),
            Deep::Insulated => outside.surroundings,
        };
        self.cells
            .iter()
            .fold(ends, |most, cell| most.max(cell.temperature))
    }

    /// Takes the `count` outermost cells off, with all they hold.
    pub fn strip(&mut self, count: usize) {
        let count = count.min(self.cells.len() - 1);
        let kept = self.cells.len() - count;
        let steady = self.steady.saturating_sub(count).max(1);
        // The elimination comes from the deep side, so what is left of it still holds.
        for one in &mut self.factors {
            let gone = one.rows.len().saturating_sub(kept - steady);
            one.rows.drain(..gone);
        }
        self.steady = steady;
        self.cells.drain(..count);
        self.boiling.drain(..count);
        self.scratch.truncate(self.cells.len());
        self.solved.truncate(self.cells.len());
        self.link();
    }

    /// Temperature, K, on the face between cell `index` and the next.
    pub fn face_temperature(&self, index: usize) -> f64 {
        let (outer, inner) = (&self.cells[index], &self.cells[index + 1]);
        let (from_outer, from_inner) =
            (1.0 / outer.half_resistance(), 1.0 / inner.half_resistance());
        (outer.temperature * from_outer + inner.temperature * from_inner)
            / (from_outer + from_inner)
    }

    /// Temperature, K, of the outer face under `outside`.
    pub fn surface_temperature(&self, outside: &Outside) -> f64 {
        let first = &self.cells[0];
        let (constant, slope) = self.entering(outside);
        first.temperature + (constant - slope * first.temperature) * first.half_resistance()
    }

    /// Flux through the face between cell `index` and the next, W/m2, positive inward.
    pub fn flux_inward(&self, index: usize) -> f64 {
        self.links[index] * (self.cells[index].temperature - self.cells[index + 1].temperature)
    }

    /// Conductances between neighbours, W/(m2 K).
    fn link(&mut self) {
        self.links.clear();
        for pair in self.cells.windows(2) {
            self.links
                .push(1.0 / (pair[0].half_resistance() + pair[1].half_resistance()));
        }
    }

    /// The flux that enters, as constant - slope * (first cell's temperature).
    fn entering(&self, outside: &Outside) -> (f64, f64) {
        let spread = 1.0 + outside.exchange * self.cells[0].half_resistance();
        (
            (outside.flux + outside.exchange * outside.surroundings) / spread,
            outside.exchange / spread,
        )
    }

    /// Goes on by `step` seconds.
    ///
    /// Cells that boil are held at the boiling point while the rest is solved, so that they pass on no
    /// heat they never had; which cells boil is found by solving again until it no longer changes.
    pub fn advance(&mut self, step: f64, outside: &Outside) {
        let bounds = self.bounds(outside);
        let factors = self.factors_for(step, &bounds);
        let inward = self.carry(factors, &bounds);
        for _ in 0..MOST_SOLVES {
            self.solve(step, &bounds, inward);
            if !self.mark_boiling(step, &bounds) {
                break;
            }
        }
        self.solve_steady(factors);
        let count = self.cells.len();
        self.ledger.entered += step * (bounds.constant - bounds.slope * self.solved[0]);
        self.ledger.left_inward +=
            step * bounds.deep_link * (self.solved[count - 1] - bounds.deep_temperature);
        self.settle(step, &bounds);
    }

    fn bounds(&self, outside: &Outside) -> Bounds {
        let (constant, slope) = self.entering(outside);
        let (deep_link, deep_temperature) = match self.deep {
            Deep::Held(temperature) => (
                1.0 / self.cells[self.cells.len() - 1].half_resistance(),
                temperature,
            ),
            Deep::Insulated => (0.0, 0.0),
        };
        Bounds {
            constant,
            slope,
            deep_link,
            deep_temperature,
        }
    }

    /// Which kept factors are this step's; made when there are none yet.
    fn factors_for(&mut self, step: f64, bounds: &Bounds) -> usize {
        // The last used stand last, and a course keeps to its longest step.
        if let Some(at) = self.factors.iter().rposition(|one| one.step == step) {
            return at;
        }
        let count = self.cells.len();
        let mut rows = vec![
            Row {
                own: 0.0,
                inner: 0.0,
                outer: 0.0
            };
            count - self.steady
        ];
        let rate = 1.0 / step;
        let (mut inner, mut before) = (bounds.deep_link, 0.0);
        for i in (self.steady..count).rev() {
            let outer = self.links[i - 1];
            let inertia = self.cells[i].capacity() * rate;
            let inverse = 1.0 / (inertia + outer + inner - inner * before);
            before = outer * inverse;
            rows[i - self.steady] = Row {
                own: inertia * inverse,
                inner: inner * inverse,
                outer: before,
            };
            inner = outer;
        }
        if self.factors.len() >= MOST_FACTORS {
            self.factors.clear();
        }
        self.factors.push(Factors { step, rows });
        self.factors.len() - 1
    }

    /// Carries the steady cells' heat outward: how the next cell in depends on the last that is not steady, as
    /// constant and slope. None when no cell is steady.
    fn carry(&mut self, factors: usize, bounds: &Bounds) -> Option<(f64, f64)> {
        let mut carried = bounds.deep_temperature;
        let rows = &self.factors[factors].rows;
        let cells = &self.cells[self.steady..];
        let scratch = &mut self.scratch[self.steady..];
        for ((row, cell), kept) in rows.iter().zip(cells).zip(scratch).rev() {
            carried = row.own * cell.temperature + row.inner * carried;
            *kept = (row.outer, carried);
        }
        rows.first().map(|row| (carried, row.outer))
    }

    /// Solves the steady cells, once those outside them are.
    fn solve_steady(&mut self, factors: usize) {
        let rows = self.factors[factors].rows.len();
        let (outside, steady) = self.solved.split_at_mut(self.steady);
        let mut out = outside.last().copied().unwrap_or(0.0);
        for (solved, (slope, carried)) in steady
            .iter_mut()
            .zip(&self.scratch[self.steady..])
            .take(rows)
        {
            out = carried + slope * out;
            *solved = out;
        }
    }

    /// Solves for the temperatures at the end of the step, with boiling cells held, as far in as the first
    /// steady cell, which `inward` stands for.
    fn solve(&mut self, step: f64, bounds: &Bounds, inward: Option<(f64, f64)>) {
        let count = self.steady;
        // Forward sweep of the Thomas algorithm: each row is
        // (C/dt + links) T - outer link T_outer - inner link T_inner = C/dt T_old + sources.
        let rate = 1.0 / step;
        let (mut above, mut carried, mut outer) = (0.0, 0.0, 0.0);
        for i in 0..count {
            let inner = if i + 1 < self.cells.len() {
                self.links[i]
            } else {
                0.0
            };
            if self.boiling[i] {
                (above, carried, outer) = (0.0, BOILING, inner);
                self.scratch[i] = (above, carried);
                continue;
            }
            let cell = &self.cells[i];
            let inertia = cell.capacity() * rate;
            let mut diagonal = inertia + outer + inner - outer * above;
            let mut right = inertia * cell.temperature + outer * carried;
            if i == 0 {
                diagonal += bounds.slope;
                right += bounds.constant;
            }
            if i + 1 == count {
                match inward {
                    Some((constant, slope)) => {
                        diagonal -= inner * slope;
                        right += inner * constant;
                    }
                    None => {
                        diagonal += bounds.deep_link;
                        right += bounds.deep_link * bounds.deep_temperature;
                    }
                }
            }
            let inverse = 1.0 / diagonal;
            (above, carried, outer) = (inner * inverse, right * inverse, inner);
            self.scratch[i] = (above, carried);
        }
        let mut inside = 0.0;
        for i in (0..count).rev() {
            let (above, carried) = self.scratch[i];
            // The first steady cell is counted in already.
            inside = if i + 1 == count {
                carried
            } else {
                carried + above * inside
            };
            self.solved[i] = inside;
        }
        if let Some((constant, slope)) = inward {
            self.solved[count] = constant + slope * self.solved[count - 1];
        }
    }

    /// Heat that a cell gains over the step beyond what its solved temperature holds, J/m2. Nothing,
    /// to rounding, for a cell that was not held.
    fn surplus(&self, i: usize, step: f64, bounds: &Bounds) -> f64 {
        let count = self.cells.len();
        let mut flux = if i == 0 {
            bounds.constant - bounds.slope * self.solved[0]
        } else {
            self.links[i - 1] * (self.solved[i - 1] - self.solved[i])
        };
        flux -= if i + 1 == count {
            bounds.deep_link * (self.solved[i] - bounds.deep_temperature)
        } else {
            self.links[i] * (self.solved[i] - self.solved[i + 1])
        };
        let cell = &self.cells[i];
        step * flux - cell.capacity() * (self.solved[i] - cell.temperature)
    }

    /// Finds which cells boil, given a solution; true when that changed.
    fn mark_boiling(&mut self, step: f64, bounds: &Bounds) -> bool {
        let mut changed = false;
        for i in 0..self.steady {
            if self.boiling[i] {
                if self.surplus(i, step, bounds) < 0.0 {
                    self.boiling[i] = false;
                    changed = true;
                }
            } else if self.cells[i].water > 0.0 && self.solved[i] > BOILING {
                self.boiling[i] = true;
                changed = true;
            }
        }
        changed
    }

    /// Takes over the solved temperatures and spends each boiling cell's surplus on its water.
    fn settle(&mut self, step: f64, bounds: &Bounds) {
        let mut dried = false;
        for i in 0..self.steady {
            let temperature = self.solved[i];
            let wet = self.cells[i].water > 0.0;
            if !wet || (!self.boiling[i] && temperature <= BOILING) {
                self.cells[i].temperature = temperature;
                continue;
            }
            // What is above the boiling point: the surplus of a held cell, or the overshoot of one that
            // the solves left free.
            let above = self.cells[i].capacity() * (temperature - BOILING);
            let held = if self.boiling[i] {
                self.surplus(i, step, bounds)
            } else {
                0.0
            };
            let spare = above + held;
            let cell = &mut self.cells[i];
            let gone = (spare.max(0.0) / LATENT_HEAT).min(cell.water);
            self.ledger.boiled += gone * LATENT_HEAT;
            self.ledger.carried_off += gone * WATER_HEAT * BOILING;
            cell.water -= gone;
            if cell.water <= 0.0 {
                cell.water = 0.0;
                cell.conductivity = cell.dry_conductivity;
                self.boiling[i] = false;
                dried = true;
            }
            // Heat left after the last water warms the cell; heat that was short cools it.
            cell.temperature = BOILING + (spare - gone * LATENT_HEAT) / cell.capacity();
        }
        for (cell, solved) in self.cells[self.steady..]
            .iter_mut()
            .zip(&self.solved[self.steady..])
        {
            cell.temperature = *solved;
        }
        if dried {
            self.link();
        }
    }
}

/// Solves of one step after which the boiling cells are taken as found; what is still out then is
/// settled cell by cell, so that no heat is lost.
const MOST_SOLVES: usize = 8;

/// What acts on the two ends of the stack during a step.
struct Bounds {
    constant: f64,
    slope: f64,
    deep_link: f64,
    deep_temperature: f64,
}
