//! Open-circuit volts of one cell against charge (0 to 1), at 25 °C, at rest.

/// Lithium iron phosphate: the mean of measured C/30 discharge and charge.
///
/// From a 2.3 Ah cell on a laboratory cycler, data set `A123_OCV_P25` of the
/// ESC toolbox (G. Plett, UCCS; MIT licence). The branches lie ±20 mV apart:
/// a resting voltage says little about the charge.
pub const LFP: &[(f64, f64)] = &[
    (0.0, 2.16063),
    (0.01, 2.72518),
    (0.02, 2.85361),
    (0.03, 2.93326),
    (0.04, 2.9912),
    (0.05, 3.03731),
    (0.06, 3.07565),
    (0.07, 3.10829),
    (0.08, 3.13664),
    (0.09, 3.16166),
    (0.1, 3.18341),
    (0.12, 3.20907),
    (0.14, 3.21558),
    (0.16, 3.22285),
    (0.18, 3.23479),
    (0.2, 3.24498),
    (0.22, 3.25359),
    (0.24, 3.26094),
    (0.26, 3.26752),
    (0.28, 3.27409),
    (0.3, 3.2798),
    (0.32, 3.28444),
    (0.34, 3.28957),
    (0.36, 3.29376),
    (0.38, 3.29758),
    (0.4, 3.30163),
    (0.42, 3.30386),
    (0.44, 3.30511),
    (0.46, 3.30617),
    (0.48, 3.30704),
    (0.5, 3.30815),
    (0.52, 3.30922),
    (0.54, 3.31069),
    (0.56, 3.31238),
    (0.58, 3.31469),
    (0.6, 3.31681),
    (0.62, 3.31926),
    (0.64, 3.32163),
    (0.66, 3.324),
    (0.68, 3.32684),
    (0.7, 3.33034),
    (0.72, 3.33449),
    (0.74, 3.33914),
    (0.76, 3.34244),
    (0.78, 3.34438),
    (0.8, 3.34534),
    (0.82, 3.34641),
    (0.84, 3.34743),
    (0.86, 3.34851),
    (0.88, 3.34971),
    (0.9, 3.35177),
    (0.91, 3.35292),
    (0.92, 3.35484),
    (0.93, 3.3571),
    (0.94, 3.36062),
    (0.95, 3.3658),
    (0.96, 3.37419),
    (0.97, 3.38933),
    (0.98, 3.4182),
    (0.99, 3.4722),
    (1.0, 3.58999),
];

/// Nickel manganese cobalt oxide on graphite: a typical curve, from memory.
pub const NMC: &[(f64, f64)] = &[
    (0.0, 3.00),
    (0.05, 3.40),
    (0.1, 3.48),
    (0.2, 3.56),
    (0.3, 3.61),
    (0.4, 3.65),
    (0.5, 3.70),
    (0.6, 3.79),
    (0.7, 3.89),
    (0.8, 3.98),
    (0.9, 4.07),
    (1.0, 4.18),
];

/// Layered oxide on hard carbon: a typical curve, from memory.
pub const SODIUM_ION: &[(f64, f64)] = &[
    (0.0, 2.00),
    (0.05, 2.35),
    (0.1, 2.55),
    (0.2, 2.75),
    (0.3, 2.88),
    (0.4, 2.98),
    (0.5, 3.07),
    (0.6, 3.17),
    (0.7, 3.27),
    (0.8, 3.40),
    (0.9, 3.58),
    (1.0, 3.85),
];

// Lead-acid: open-circuit volts are the electrolyte's specific gravity plus
// about 0.845 (common practice, no source), and fall in step with the charge.
// Specific gravity of flooded cells at full and at a quarter: 1.280 and 1.160,
// in US Army TM 10-6140-200-14, table 1-1; sealed cells are filled stronger.

/// Flooded: 1.280 when full, 1.120 when empty.
pub const FLOODED: &[(f64, f64)] = &[(0.0, 1.965), (1.0, 2.125)];
/// Glass mat: about 1.300 when full.
pub const AGM: &[(f64, f64)] = &[(0.0, 1.965), (1.0, 2.145)];
/// Gel: about 1.295 when full.
pub const GEL: &[(f64, f64)] = &[(0.0, 1.965), (1.0, 2.140)];
