//! Heat and water accounts: what came in by which way, what the unit took,
//! what stayed.

/// Sensible heat over a time, joules; into the cabin is positive.
///
/// [`HeatBook::gap_j`] is zero but for rounding.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct HeatBook {
    /// Through glass, by conduction.
    pub glass_j: f64,
    /// Through the shell, by conduction.
    pub shell_j: f64,
    /// With the air change.
    pub air_change_j: f64,
    /// Sun through glass.
    pub sun_glass_j: f64,
    /// Sun on the shell, less what the roof radiates to the sky.
    pub sun_shell_j: f64,
    /// From people and animals, sensible.
    pub people_j: f64,
    /// From appliances and other waste heat.
    pub gains_j: f64,
    /// Taken out by the unit, sensible: counted positive.
    pub unit_j: f64,
    /// Stayed in air and contents.
    pub stored_air_j: f64,
    /// Stayed in the shell.
    pub stored_shell_j: f64,
}

impl HeatBook {
    /// What came in, less what the unit took, less what stayed.
    #[must_use]
    pub fn gap_j(&self) -> f64 {
        self.inflows().iter().sum::<f64>() - self.unit_j - self.stored_air_j - self.stored_shell_j
    }

    /// Everything that moved, whichever way: the measure for the gap.
    #[must_use]
    pub fn throughput_j(&self) -> f64 {
        let inflows: f64 = self.inflows().iter().map(|flow| flow.abs()).sum();
        inflows + self.unit_j.abs() + self.stored_air_j.abs() + self.stored_shell_j.abs()
    }

    /// Adds another stretch of time.
    pub fn add(&mut self, other: &Self) {
        self.glass_j += other.glass_j;
        self.shell_j += other.shell_j;
        self.air_change_j += other.air_change_j;
        self.sun_glass_j += other.sun_glass_j;
        self.sun_shell_j += other.sun_shell_j;
        self.people_j += other.people_j;
        self.gains_j += other.gains_j;
        self.unit_j += other.unit_j;
        self.stored_air_j += other.stored_air_j;
        self.stored_shell_j += other.stored_shell_j;
    }

    fn inflows(&self) -> [f64; 7] {
        [
            self.glass_j,
            self.shell_j,
            self.air_change_j,
            self.sun_glass_j,
            self.sun_shell_j,
            self.people_j,
            self.gains_j,
        ]
    }
}

/// Water over a time, kilograms; into the cabin air is positive.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct WaterBook {
    /// With the air change.
    pub air_change_kg: f64,
    /// From people and animals.
    pub people_kg: f64,
    /// Shed on the coil: counted positive.
    pub condensed_kg: f64,
    /// Stayed in the air and what buffers it.
    pub stored_kg: f64,
}

impl WaterBook {
    /// What came in, less what condensed, less what stayed.
    #[must_use]
    pub fn gap_kg(&self) -> f64 {
        self.air_change_kg + self.people_kg - self.condensed_kg - self.stored_kg
    }

    /// Adds another stretch of time.
    pub fn add(&mut self, other: &Self) {
        self.air_change_kg += other.air_change_kg;
        self.people_kg += other.people_kg;
        self.condensed_kg += other.condensed_kg;
        self.stored_kg += other.stored_kg;
    }
}
