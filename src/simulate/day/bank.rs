//! The bank as a store in time: what it gives and takes over a step.

use crate::{
    bank::Pack,
    circuit::{Branch, Point, settle},
    simulate::Stop,
};

/// What a bank may be charged with, by its chemistry.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Charging {
    /// Terminal volts that chargers hold at the end.
    pub hold_v: f64,
    /// Bank temperatures at which it may be charged at all.
    pub between_c: (f64, f64),
    /// Of the charge put in, what can be drawn again.
    pub kept: f64,
}

/// A bank at one moment and what it is made of.
#[derive(Clone, Debug, PartialEq)]
pub struct Bank {
    pub pack: Pack,
    pub charging: Charging,
    /// Charge of the cells that the plan keeps back.
    pub floor: f64,
}

/// What hangs on the bars over a step.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Hanging {
    /// Bus loads, and the unit on and in its off-time.
    pub bus: Branch,
    pub on: Branch,
    pub off: Branch,
    /// Share of the step that the unit is on.
    pub share: f64,
}

/// What a step came to, means over it.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Flow {
    /// Charge of the cells after the step.
    pub charge: f64,
    /// Out of the bank.
    pub bank_a: f64,
    pub bar_v: f64,
    /// From panels and chargers together.
    pub source_a: f64,
    pub source_w: f64,
    pub bus_w: f64,
    pub unit_w: f64,
    /// Out of the bank's store, by its open-circuit volts.
    pub store_w: f64,
    pub lost_w: f64,
    /// Out of the bank's store, charge: amps over the step.
    pub store_a: f64,
    /// Whether the charge was held back by the end of charging.
    pub is_held: bool,
}

impl Hanging {
    /// Amps of the loads at a voltage, both states by their share.
    fn settle(&self, emf_v: f64, ohm: f64, source_a: f64) -> Option<[Point; 2]> {
        let source = Branch::current(-source_a, 0.0);
        let on = || settle(emf_v, ohm, &[self.bus, self.on, source]);
        let off = || settle(emf_v, ohm, &[self.bus, self.off, source]);
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

    fn mean(&self, points: &[Point; 2], of: impl Fn(&Point) -> f64) -> f64 {
        self.share * of(&points[0]) + (1.0 - self.share) * of(&points[1])
    }
}

/// Passes over a step until current and mean voltage agree.
const EXACT_PASSES: usize = 12;
/// The same for samples: the charge is out by under 1e-5 of the step's.
pub const QUICK_PASSES: usize = 2;
/// Relative change of the mean open-circuit voltage that counts as none.
const AGREED: f64 = 1e-13;

impl Bank {
    /// Open-circuit volts at a charge.
    #[must_use]
    pub fn emf_v(&self, charge: f64) -> f64 {
        self.pack.curve.at(charge)
    }

    /// Share of what the bank holds that is left.
    #[must_use]
    pub fn held_share(&self, charge: f64) -> f64 {
        self.pack.held_share(charge)
    }

    /// Whether charging is allowed at a temperature.
    #[must_use]
    pub fn may_charge(&self, bank_c: f64) -> bool {
        let (low_c, high_c) = self.charging.between_c;
        bank_c >= low_c && bank_c <= high_c
    }

    /// A step of `step_h` from `charge`: sources offer up to `offer_a` amps at a
    /// bar voltage, of which no more is taken than the bank may be charged with.
    ///
    /// Nothing where no current carries the loads.
    ///
    /// The current is taken constant through the step and the open-circuit
    /// voltage as its exact mean over the charge passed through, so that the
    /// energy book closes whatever the step's length.
    pub fn step(
        &self,
        charge: f64,
        hanging: &Hanging,
        offer_a: impl Fn(f64) -> f64,
        may_charge: bool,
        step_h: f64,
        is_quick: bool,
    ) -> Option<Flow> {
        let passes = if is_quick { QUICK_PASSES } else { EXACT_PASSES };
        let mut emf_v = self.emf_v(charge);
        let mut flow = Flow::default();
        let mut at_v = emf_v;
        for _ in 0..passes {
            let most_in_a = if may_charge {
                self.most_in_a(charge, step_h)
            } else {
                0.0
            };
            flow = self.at(emf_v, hanging, offer_a(at_v), most_in_a)?;
            let gone = self.charge_passed(flow.bank_a, step_h);
            flow.charge = (charge - gone).min(1.0);
            at_v = flow.bar_v;
            let mean_v = self.mean_emf_v(charge, flow.charge);
            let agreed = (mean_v - emf_v).abs() <= AGREED * emf_v;
            if agreed {
                break;
            }
            emf_v = mean_v;
        }
        self.close(charge, &mut flow, step_h);
        Some(flow)
    }

    /// Most net amps into the bank that do not overfill it in a step.
    fn most_in_a(&self, charge: f64, step_h: f64) -> f64 {
        ((1.0 - charge) * self.pack.capacity.ah / (self.charging.kept * step_h)).max(0.0)
    }

    /// Share of the full charge that a current takes out of the cells in a time.
    fn charge_passed(&self, bank_a: f64, step_h: f64) -> f64 {
        let capacity = &self.pack.capacity;
        if bank_a >= 0.0 {
            bank_a * step_h / capacity.ah_at(bank_a)
        } else {
            bank_a * step_h * self.charging.kept / capacity.ah
        }
    }

    fn mean_emf_v(&self, from: f64, to: f64) -> f64 {
        if (from - to).abs() < 1e-12 {
            self.emf_v(from)
        } else {
            self.pack.curve.mean_between(from.min(to), from.max(to))
        }
    }

    /// The bars at one open-circuit voltage, sources held back as far as needed.
    fn at(
        &self,
        emf_v: f64,
        hanging: &Hanging,
        offered_a: f64,
        most_in_a: f64,
    ) -> Option<Flow> {
        let ohm = self.pack.ohm;
        let mut source_a = offered_a.max(0.0);
        let mut points = hanging.settle(emf_v, ohm, source_a)?;
        let mut is_held = false;
        // Each round meets the tighter of the two limits; three are plenty, as
        // loads hardly change with the volts.
        for _ in 0..4 {
            if source_a <= 0.0 {
                break;
            }
            let in_a = -hanging.mean(&points, |point| point.amps);
            let by_volts_a = if ohm > 0.0 {
                (self.charging.hold_v - emf_v).max(0.0) / ohm
            } else {
                f64::INFINITY
            };
            let over_a = in_a - most_in_a.min(by_volts_a);
            if over_a <= 1e-12 * source_a.max(1.0) {
                break;
            }
            is_held = true;
            source_a = (source_a - over_a).max(0.0);
            points = hanging.settle(emf_v, ohm, source_a)?;
        }
        Some(Flow {
            bank_a: hanging.mean(&points, |point| point.amps),
            bar_v: hanging.mean(&points, |point| point.bar_v),
            source_a,
            source_w: source_a * hanging.mean(&points, |point| point.bar_v),
            bus_w: hanging.mean(&points, |point| {
                point.bar_v * hanging.bus.amps_at(point.bar_v)
            }),
            unit_w: hanging.share * points[0].bar_v * hanging.on.amps_at(points[0].bar_v)
                + (1.0 - hanging.share) * points[1].bar_v * hanging.off.amps_at(points[1].bar_v),
            lost_w: ohm * hanging.mean(&points, |point| point.amps * point.amps),
            is_held,
            ..Flow::default()
        })
    }

    /// The store's side of the book: what Peukert and charging lose is lost.
    fn close(&self, from: f64, flow: &mut Flow, step_h: f64) {
        let gone_ah = (from - flow.charge) * self.pack.capacity.ah;
        flow.store_a = gone_ah / step_h;
        flow.store_w = flow.store_a * self.mean_emf_v(from, flow.charge);
        let at_terminals_w = flow.bus_w + flow.unit_w - flow.source_w;
        let beyond_ohm_w = flow.store_w - at_terminals_w - flow.lost_w;
        // With neither it is rounding, which is left for the book to show.
        if self.pack.capacity.exponent > 1.0 || self.charging.kept < 1.0 {
            flow.lost_w += beyond_ohm_w;
        }
    }

    /// What stops everything at a charge, if anything does.
    #[must_use]
    pub fn stop_at(&self, charge: f64, hanging: &Hanging, source_a: f64) -> Option<Stop> {
        let pack = &self.pack;
        let Some(points) = hanging.settle(self.emf_v(charge), pack.ohm, source_a) else {
            return Some(Stop::NoCurrentCarriesIt);
        };
        let low_v = points[0].bar_v.min(points[1].bar_v);
        if low_v < pack.cutoff_v - SLACK {
            return Some(Stop::OwnCutOff {
                cutoff_v: pack.cutoff_v,
            });
        }
        if let Some(limit_a) = pack.limit_a
            && points[0].amps.max(points[1].amps) > limit_a * (1.0 + SLACK)
        {
            return Some(Stop::CurrentLimit { limit_a });
        }
        let falls = points[0].amps.max(points[1].amps) > 0.0;
        (charge <= self.floor && falls).then(|| Stop::ChargeFloor {
            kept_percent: 100.0 * self.held_share(self.floor),
        })
    }

    /// Volts at the unit's end of its cable while it is on.
    #[must_use]
    pub fn unit_v(&self, charge: f64, hanging: &Hanging, source_a: f64) -> Option<f64> {
        let points = hanging.settle(self.emf_v(charge), self.pack.ohm, source_a)?;
        Some(hanging.on.taker_v(points[0].bar_v))
    }
}

/// Rounding that no limit should trip on.
const SLACK: f64 = 1e-9;

impl Charging {
    /// What is usual for a chemistry and so many cells in series: common
    /// practice, no source. Lithium is not charged below freezing.
    #[must_use]
    pub fn usual(chemistry: crate::bank::Chemistry, cells: f64) -> Self {
        use crate::bank::Chemistry as K;
        let (cell_v, between_c, kept) = match chemistry {
            K::Lfp => (3.55, (0.0, 55.0), 1.0),
            K::Nmc => (4.15, (0.0, 45.0), 1.0),
            K::SodiumIon => (3.9, (-10.0, 50.0), 1.0),
            K::Agm | K::Gel | K::Flooded => (2.40, (-20.0, 50.0), 0.9),
        };
        Self {
            hold_v: cell_v * cells,
            between_c,
            kept,
        }
    }
}
