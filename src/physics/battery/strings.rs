//! Sources of unlike voltage and resistance, joined.
//!
//! Linear sources in series add; in parallel they act as one source (Thévenin's
//! theorem), and each gives its share at the common voltage.

/// A voltage behind a resistance.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Source {
    pub ocv_v: f64,
    pub ohm: f64,
}

impl Source {
    /// Sources end to end.
    #[must_use]
    pub fn in_series(sources: &[Self]) -> Self {
        Self {
            ocv_v: sources.iter().map(|source| source.ocv_v).sum(),
            ohm: sources.iter().map(|source| source.ohm).sum(),
        }
    }

    /// Sources side by side on common bars. Every resistance must be above zero;
    /// with none at all there is no source, and zero volts.
    #[must_use]
    pub fn in_parallel(sources: &[Self]) -> Self {
        let siemens: f64 = sources.iter().map(|source| 1.0 / source.ohm).sum();
        if siemens <= 0.0 {
            return Self {
                ocv_v: 0.0,
                ohm: 0.0,
            };
        }
        let amps: f64 = sources.iter().map(|source| source.ocv_v / source.ohm).sum();
        Self {
            ocv_v: amps / siemens,
            ohm: 1.0 / siemens,
        }
    }

    /// Amps given at a terminal voltage (negative: taken).
    #[must_use]
    pub fn amps_at(&self, terminal_v: f64) -> f64 {
        (self.ocv_v - terminal_v) / self.ohm
    }
}
