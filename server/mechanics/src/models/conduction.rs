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
    /// Heat capacity by volume without its water, J/(m3 K).
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
}

impl Stack {
    /// A stack of at least one cell, from outside to inside.
    pub fn new(cells: Vec<Cell>, deep: Deep) -> Stack {
        let scratch = vec![(0.0, 0.0); cells.len()];
        let mut stack = Stack {
            links: Vec::new(),
            cells,
            deep,
            ledger: Ledger::default(),
            scratch,
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
        self.cells.iter().map(|cell| cell.water).sum()
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
    pub fn advance(&mut self, step: f64, outside: &Outside) {
        let count = self.cells.len();
        let (constant, slope) = self.entering(outside);
        let (deep_link, deep_temperature) = match self.deep {
            Deep::Held(temperature) => (1.0 / self.cells[count - 1].half_resistance(), temperature),
            Deep::Insulated => (0.0, 0.0),
        };
        // Forward sweep of the Thomas algorithm: each row is
        // (C/dt + links) T - outer link T_outer - inner link T_inner = C/dt T_old + sources.
        let rate = 1.0 / step;
        let (mut above, mut carried, mut outer) = (0.0, 0.0, 0.0);
        for i in 0..count {
            let cell = &self.cells[i];
            let inertia = cell.capacity() * rate;
            let inner = if i + 1 < count { self.links[i] } else { 0.0 };
            let mut diagonal = inertia + outer + inner - outer * above;
            let mut right = inertia * cell.temperature + outer * carried;
            if i == 0 {
                diagonal += slope;
                right += constant;
            }
            if i + 1 == count {
                diagonal += deep_link;
                right += deep_link * deep_temperature;
            }
            let inverse = 1.0 / diagonal;
            (above, carried, outer) = (inner * inverse, right * inverse, inner);
            self.scratch[i] = (above, carried);
        }
        let mut inside = 0.0;
        for i in (0..count).rev() {
            let (above, carried) = self.scratch[i];
            inside = carried + above * inside;
            self.cells[i].temperature = inside;
        }
        self.ledger.entered += step * (constant - slope * self.cells[0].temperature);
        self.ledger.left_inward +=
            step * deep_link * (self.cells[count - 1].temperature - deep_temperature);
        self.boil();
    }

    /// Spends what cells hold above the boiling point on their water.
    fn boil(&mut self) {
        let mut dried = false;
        for cell in &mut self.cells {
            if cell.water <= 0.0 || cell.temperature <= BOILING {
                continue;
            }
            let spare = cell.capacity() * (cell.temperature - BOILING);
            let gone = (spare / LATENT_HEAT).min(cell.water);
            self.ledger.boiled += gone * LATENT_HEAT;
            self.ledger.carried_off += gone * WATER_HEAT * BOILING;
            cell.water -= gone;
            let left = (spare - gone * LATENT_HEAT).max(0.0);
            if cell.water <= 0.0 {
                cell.water = 0.0;
                cell.conductivity = cell.dry_conductivity;
                dried = true;
            }
            cell.temperature = BOILING + left / cell.capacity();
        }
        if dried {
            self.link();
        }
    }
}
