//! How well common kinds of meter read.

/// The limits of error of a meter, as its sheet states them: a share of the
/// reading, a share of full scale, and a number of last-digit counts.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Instrument {
    /// Share of the reading.
    pub of_reading: f64,
    /// Share of full scale.
    pub of_full_scale: f64,
    /// Full scale, in the unit of the reading.
    pub full_scale: f64,
    /// Counts of the last digit.
    pub counts: f64,
    /// What one count is, in the unit of the reading.
    pub count: f64,
}

impl Instrument {
    /// A meter good to a share of full scale, as class 0.5 is to 0.005
    /// (IEC 60051: the limit is fiducial, the same all over the scale).
    #[must_use]
    pub fn class(of_full_scale: f64, full_scale: f64) -> Self {
        Self {
            of_reading: 0.0,
            of_full_scale,
            full_scale,
            counts: 0.0,
            count: 0.0,
        }
    }

    /// A meter good to a share of its reading.
    #[must_use]
    pub fn of_reading(of_reading: f64) -> Self {
        Self {
            of_reading,
            of_full_scale: 0.0,
            full_scale: 0.0,
            counts: 0.0,
            count: 0.0,
        }
    }

    /// The limit of error at this reading, in its unit.
    ///
    /// ```
    /// use till_morning::physics::bench::instrument::Instrument;
    /// // A 500 A shunt of class 0.5 is good to 2.5 A, be it at 50 A.
    /// assert_eq!(Instrument::class(0.005, 500.0).limit(50.0), 2.5);
    /// ```
    #[must_use]
    pub fn limit(&self, reading: f64) -> f64 {
        (self.of_reading * reading).abs()
            + (self.of_full_scale * self.full_scale).abs()
            + (self.counts * self.count).abs()
    }

    /// Standard uncertainty at this reading: each value within the limit is as
    /// likely (JCGM 100:2008, 4.3.7).
    #[must_use]
    pub fn standard(&self, reading: f64) -> f64 {
        self.limit(reading) / 3f64.sqrt()
    }

    /// The same meter for a reading that is multiplied by an exact factor: a
    /// vane's speed by the free area gives a flow.
    #[must_use]
    pub fn times(&self, factor: f64) -> Self {
        Self {
            full_scale: self.full_scale * factor,
            count: self.count * factor,
            ..*self
        }
    }
}

/// Kinds of meter to pick from when the sheet is lost.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize, serde::Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Kind {
    /// Clamp for direct current, amperes.
    ClampMeter,
    /// Battery monitor with a shunt of class 0.5, amperes.
    ShuntMonitor,
    /// Handheld multimeter on volts.
    Multimeter,
    /// Plug-in meter for alternating current, watts.
    PlugInWattMeter,
    /// Handheld vane anemometer, metres per second.
    VaneMeter,
    /// Thermometer, kelvins.
    Thermometer,
    /// Hygrometer, per cent relative humidity.
    Hygrometer,
}

impl Kind {
    /// Every kind.
    pub const ALL: [Kind; 7] = [
        Kind::ClampMeter,
        Kind::ShuntMonitor,
        Kind::Multimeter,
        Kind::PlugInWattMeter,
        Kind::VaneMeter,
        Kind::Thermometer,
        Kind::Hygrometer,
    ];

    /// Limits that meters of this kind usually keep: common practice, no
    /// source. `full_scale` counts for the shunt alone; its rating in amperes.
    #[must_use]
    pub fn usual(self, full_scale: f64) -> Instrument {
        let meter = |of_reading, counts, count| Instrument {
            counts,
            count,
            ..Instrument::of_reading(of_reading)
        };
        match self {
            Kind::ClampMeter => meter(0.025, 5.0, 0.1),
            Kind::ShuntMonitor => Instrument::class(0.005, full_scale),
            Kind::Multimeter => meter(0.005, 2.0, 0.01),
            Kind::PlugInWattMeter => meter(0.02, 2.0, 1.0),
            Kind::VaneMeter => meter(0.03, 2.0, 0.1),
            Kind::Thermometer => meter(0.0, 10.0, 0.1),
            Kind::Hygrometer => meter(0.0, 30.0, 0.1),
        }
    }
}
