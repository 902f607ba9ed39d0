//! What hangs on the bars.

use crate::{
    physics::battery::TemperatureEffects,
    physics::circuit::{Branch, Inner, Load, Point, settle},
};

/// What hangs on the bars over a step.
///
/// Both states of the unit hang there for their part of the step; the bank sees their mean.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BusLoads {
    /// Everything but the unit, at the bars.
    pub bus: Branch,
    /// The unit behind its cable while it is on.
    pub on: Branch,
    /// The same in its off-time.
    pub off: Branch,
    /// Share of the step that the unit is on, 0 to 1.
    pub share: f64,
    /// How warm the bank is that it hangs on.
    pub warmth: TemperatureEffects,
}

impl BusLoads {
    /// The operating points with the unit on and off while sources push `source_a` into the
    /// bars. Only what occurs is solved: at a share of 0 or 1 both points are the same one.
    /// Nothing where no current carries the loads.
    pub(super) fn settle(&self, ocv_v: f64, inner: Inner, source_a: f64) -> Option<[Point; 2]> {
        let source = Branch::current(-source_a, 0.0);
        let on = || settle(ocv_v, inner, &[self.bus, self.on, source]);
        let off = || settle(ocv_v, inner, &[self.bus, self.off, source]);
        Some(if self.share <= 0.0 {
            let off = off()?;
            [off, off]
        } else if self.share >= 1.0 {
            let on = on()?;
            [on, on]
        } else {
            [on()?, off()?]
        })
    }

    /// Both states of the unit made one of their mean: what their difference
    /// loses in resistance is left out, a thousandth.
    pub(super) fn blended(&self) -> Self {
        use Load::Power;
        match (self.on.load, self.off.load) {
            (Power { w: on_w }, Power { w: off_w }) => Self {
                on: Branch::power(self.share * on_w + (1.0 - self.share) * off_w, self.on.ohm),
                share: 1.0,
                ..*self
            },
            _ => *self,
        }
    }

    /// The same with a share of what the unit takes.
    pub(super) fn with_unit_at(&self, share: f64) -> Self {
        Self {
            on: self.on.times(share),
            off: self.off.times(share),
            ..*self
        }
    }

    /// The operating point of the heavier state.
    /// The unit on, if it is so for any part of the step.
    pub(super) fn heavier(&self, ocv_v: f64, inner: Inner, source_a: f64) -> Option<Point> {
        let unit = if self.share > 0.0 { self.on } else { self.off };
        settle(
            ocv_v,
            inner,
            &[self.bus, unit, Branch::current(-source_a, 0.0)],
        )
    }

    /// The mean of something of both points, by the unit's share of the step.
    pub(super) fn mean(&self, points: &[Point; 2], of: impl Fn(&Point) -> f64) -> f64 {
        self.share * of(&points[0]) + (1.0 - self.share) * of(&points[1])
    }

    /// Loads on the bars and no unit.
    pub(super) fn bus(bus_w: f64) -> Self {
        let nothing = Branch::power(0.0, 0.0);
        Self {
            bus: Branch::power(bus_w, 0.0),
            on: nothing,
            off: nothing,
            share: 0.0,
            warmth: TemperatureEffects::NONE,
        }
    }
}

impl Branch {
    /// The same, taking a share of what it takes.
    pub(super) fn times(self, share: f64) -> Self {
        let load = match self.load {
            Load::Power { w } => Load::Power { w: w * share },
            Load::Current { a } => Load::Current { a: a * share },
            Load::Resistor { ohm } => Load::Resistor { ohm: ohm / share },
        };
        Self { load, ..self }
    }
}
