//! The bank as a store in time: what it gives and takes over a step.

use super::guess::Guess;
pub use super::{bus_loads::BusLoads, charging::Charging, source_currents::SourceCurrents};
use crate::{
    physics::battery::{Chemistry, Held, Pack, Store, TemperatureEffects, Timed},
    physics::circuit::{Inner, Point},
    simulate::{Stop, job::inner_of},
};

/// A bank and what it is made of.
#[derive(Clone, Debug, PartialEq)]
pub struct Bank {
    /// At 25 °C, as its resistance is stated.
    pub pack: Pack,
    /// The same bank's charge in time.
    pub store: Store,
    /// What chargers hold it to, and when.
    pub charging: Charging,
    /// By which warmth changes it.
    pub chemistry: Chemistry,
    /// Share of what it holds that the plan keeps back, 0 to 1; no more than it starts with.
    pub floor_share: f64,
}

/// What a step came to, means over it.
///
/// A quick step leaves `store_w` and `store_a` at 0 and charging's own loss out of `lost_w`:
/// its book does not close, and nobody who asks for it reads it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Flow {
    /// The bank after the step.
    pub held: Held,
    /// Out of the bank; negative while it is charged.
    pub bank_a: f64,
    /// At the bars, and so at the bank's terminals.
    pub bar_v: f64,
    /// From panels and chargers together, as far as it was taken.
    pub source_a: f64,
    /// The same at the bars' volts.
    pub source_w: f64,
    /// Everything on the bars but the unit.
    pub bus_w: f64,
    /// The unit with its feed and its cable, as the bars see it.
    pub unit_w: f64,
    /// Out of the bank's store, by its open-circuit volts.
    pub store_w: f64,
    /// In the bank's resistance and polarisation, and charge that does not stay.
    pub lost_w: f64,
    /// Out of the bank's store, charge: amps over the step.
    pub store_a: f64,
    /// Whether the charge was held back by the end of charging.
    pub is_held: bool,
}

/// Passes over a step until current and mean voltage agree.
const EXACT_PASSES: usize = 40;
/// The same for samples: the charge is out by under 1e-5 of the step's.
pub const QUICK_PASSES: usize = 2;
/// Passes through which the offer follows the volts.
const OFFER_PASSES: usize = 4;

impl Bank {
    /// Open-circuit volts of a bank that holds so much.
    #[must_use]
    pub fn ocv_v(&self, held: Held) -> f64 {
        self.pack.curve.at(self.store.charge(held))
    }

    /// Whether charging is allowed at a temperature, the ends included.
    #[must_use]
    pub fn may_charge(&self, bank_c: f64) -> bool {
        let (low_c, high_c) = self.charging.between_c;
        bank_c >= low_c && bank_c <= high_c
    }

    /// A step from what is held.
    ///
    /// - `offer`: the amps that sources hold out at bars of so many volts, of which no more
    ///   is taken than the bank may be charged with
    /// - `may_charge`: false, and nothing goes in; sources then carry no more than the loads
    /// - `timed`: the step's length ([`Self::lasting`])
    /// - `is_quick`: two passes and one state of the unit, for samples
    ///
    /// Nothing where no current carries the loads.
    ///
    /// The current is taken constant through the step and the open-circuit
    /// voltage as its exact mean over the charge passed through, so that the
    /// energy book closes whatever the step's length.
    pub fn step(
        &self,
        from: Held,
        hanging: &BusLoads,
        offer: impl Fn(f64) -> SourceCurrents,
        may_charge: bool,
        timed: &Lasting,
        is_quick: bool,
    ) -> Option<Flow> {
        let passes = if is_quick { QUICK_PASSES } else { EXACT_PASSES };
        let most_in_a = if may_charge {
            self.store.most_in_a(from, &timed.timed)
        } else {
            0.0
        };
        let blended;
        let hanging = if is_quick {
            blended = hanging.blended();
            &blended
        } else {
            hanging
        };
        let charge = self.store.charge(from);
        let mut guess = Guess::new(self.pack.curve.at(charge));
        let mut at_v = guess.ocv_v;
        let mut flow = None;
        for pass in 0..passes {
            let mut now = self.at(from, guess.ocv_v, hanging, &offer(at_v), most_in_a)?;
            now.held = self.store.after(from, &timed.timed, now.bank_a);
            // Then the offer stands, and one unknown is left.
            if pass < OFFER_PASSES {
                at_v = now.bar_v;
            }
            let after = self.store.charge(now.held);
            let mean_v = if is_quick {
                self.pack.curve.at(0.5 * (charge + after))
            } else {
                self.mean_emf_v(charge, after)
            };
            flow = Some(now);
            if guess.is_met(mean_v) {
                break;
            }
        }
        let mut flow = flow?;
        if !is_quick {
            self.close(charge, &mut flow);
        }
        Some(flow)
    }

    /// Mean open-circuit volts between two charges of the cells, whichever is the larger.
    fn mean_emf_v(&self, from: f64, to: f64) -> f64 {
        if (from - to).abs() < 1e-12 {
            self.pack.curve.at(from)
        } else {
            self.pack.curve.mean_between(from.min(to), from.max(to))
        }
    }

    /// The bars at one open-circuit voltage, sources held back as far as needed.
    ///
    /// Each source gives all it has below the volts it holds, and nothing above
    /// them: the one that holds least is the first to stand back.
    fn at(
        &self,
        from: Held,
        ocv_v: f64,
        hanging: &BusLoads,
        offers: &SourceCurrents,
        most_in_a: f64,
    ) -> Option<Flow> {
        let inner = self.inner(hanging);
        let ohm = inner.ohm;
        let mut above_v = f64::NEG_INFINITY;
        let (source_a, points, is_held) = loop {
            let Some(hold_v) = offers.next_hold_v(above_v) else {
                break (0.0, hanging.settle(ocv_v, inner, 0.0)?, false);
            };
            let by_volts_a = if ohm > 0.0 {
                // Below nothing once the bank stands above what is held: then it
                // carries the loads until it has come down.
                -inner.amps_between(ocv_v, hold_v)
            } else if ocv_v <= hold_v {
                f64::INFINITY
            } else {
                0.0
            };
            let most_a = most_in_a.min(by_volts_a);
            let met = held_to(ocv_v, inner, hanging, offers.above_a(above_v), most_a)?;
            // Those that hold more give no less than all they have.
            let more_a = offers.above_a(hold_v);
            if met.0 >= more_a || more_a <= 0.0 {
                break met;
            }
            above_v = hold_v;
        };
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
            lost_w: hanging.mean(&points, |point| (ocv_v - point.bar_v) * point.amps),
            store_w: 0.0,
            store_a: 0.0,
            held: from,
            is_held,
        })
    }

    /// The store's side of the book: what charging loses is lost.
    ///
    /// By the current, not by the charge before and after: of a large bank and a
    /// small draw these differ by no more than their rounding.
    fn close(&self, from: f64, flow: &mut Flow) {
        let to = self.store.charge(flow.held);
        flow.store_a = self.store.cell_a(flow.bank_a);
        let ocv_v = self.mean_emf_v(from, to);
        flow.store_w = flow.store_a * ocv_v;
        let into_a = (-flow.bank_a).max(0.0);
        flow.lost_w += into_a * (1.0 - self.store.charge_efficiency) * ocv_v;
    }

    /// What stops everything on the bank when it holds so much, if anything does: the heavier
    /// of the unit's states by the charge at the cells' surface, against cut-off and current
    /// limit. The charge that is kept back is not looked at here ([`Self::lasts`]).
    #[must_use]
    pub fn stop_at(&self, held: Held, hanging: &BusLoads, source_a: f64) -> Option<Stop> {
        let pack = &self.pack;
        let Some(point) = self.heavier(held, hanging, source_a) else {
            return Some(Stop::NoCurrentCarriesIt);
        };
        if point.bar_v < pack.cutoff_v - SLACK {
            return Some(Stop::OwnCutOff {
                cutoff_v: pack.cutoff_v,
            });
        }
        pack.limit_a
            .filter(|limit_a| point.amps > limit_a * (1.0 + SLACK))
            .map(|limit_a| Stop::CurrentLimit { limit_a })
    }

    /// Volts at the unit's end of its cable while it is on; nothing where no current carries it.
    #[must_use]
    pub fn unit_v(&self, held: Held, hanging: &BusLoads, source_a: f64) -> Option<f64> {
        let point = self.heavier(held, hanging, source_a)?;
        Some(hanging.on.taker_v(point.bar_v))
    }

    /// The operating point of the heavier state, by the charge at the cells' surface.
    fn heavier(&self, held: Held, hanging: &BusLoads, source_a: f64) -> Option<Point> {
        let inner = self.inner(hanging);
        let point = hanging.heavier(self.ocv_v(held), inner, source_a)?;
        let Some(polarisation) = self.pack.polarisation else {
            return Some(point);
        };
        let mean_a = if hanging.share > 0.0 {
            let points = hanging.settle(self.ocv_v(held), inner, source_a)?;
            hanging.mean(&points, |point| point.amps)
        } else {
            point.amps
        };
        let lag = polarisation.lag_per_a * hanging.warmth.ohm_ratio * mean_a.max(0.0);
        let ocv_v = self.pack.curve.at(self.store.charge(held) - lag);
        hanging.heavier(ocv_v, inner, source_a)
    }

    /// As warm as the bank is.
    fn inner(&self, hanging: &BusLoads) -> Inner {
        inner_of(&self.pack, hanging.warmth.ohm_ratio)
    }

    /// What warmth does while so much is drawn.
    ///
    /// `bank_a` out of the bank, of which only lead-acid's capacity takes notice; 0 or less is
    /// a discharge without end, the slowest there is.
    #[must_use]
    pub fn warmth(&self, bank_c: f64, bank_a: f64) -> TemperatureEffects {
        let hours = self.store.cells_ah / bank_a.max(1e-9);
        TemperatureEffects::of(self.chemistry, bank_c, hours)
    }

    /// Whether a current out of the bank lasts for so long.
    ///
    /// A cold bank is empty earlier: of what it holds when warm, some stays behind.
    /// What a hot one would give beyond that is not counted on.
    #[must_use]
    pub fn lasts(&self, from: Held, bank_a: f64, timed: &Lasting, bank_c: f64) -> bool {
        if bank_a <= 0.0 {
            return true;
        }
        let given = self.warmth(bank_c, bank_a).capacity_ratio.min(1.0);
        let floor_share = 1.0 - given * (1.0 - self.floor_share);
        self.store.most_out_a(from, &timed.timed, floor_share) >= bank_a * (1.0 - SLACK)
    }

    /// What is left after a steady current.
    #[must_use]
    pub fn after(&self, from: Held, timed: &Lasting, bank_a: f64) -> Held {
        self.store.after(from, &timed.timed, bank_a)
    }

    /// A length of time for [`Self::step`].
    /// Above 0 hours.
    #[must_use]
    pub fn lasting(&self, hours: f64) -> Lasting {
        Lasting {
            hours,
            timed: self.store.timed(hours),
        }
    }
}

/// The bars with sources held back until no more than `most_a` goes into the bank:
/// their current, the points, and whether they were.
fn held_to(
    ocv_v: f64,
    inner: Inner,
    hanging: &BusLoads,
    offered_a: f64,
    most_a: f64,
) -> Option<(f64, [Point; 2], bool)> {
    let mut source_a = offered_a.max(0.0);
    let mut points = hanging.settle(ocv_v, inner, source_a)?;
    let mut is_held = false;
    // A few rounds are plenty, as loads hardly change with the volts.
    for _ in 0..4 {
        if source_a <= 0.0 {
            break;
        }
        let in_a = -hanging.mean(&points, |point| point.amps);
        let over_a = in_a - most_a;
        if over_a <= 1e-12 * source_a.max(1.0) {
            break;
        }
        is_held = true;
        source_a = (source_a - over_a).max(0.0);
        points = hanging.settle(ocv_v, inner, source_a)?;
    }
    Some((source_a, points, is_held))
}

/// A step's length, worked out once for all that are as long.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Lasting {
    /// As it was asked for.
    pub hours: f64,
    timed: Timed,
}

/// Rounding that no limit should trip on.
const SLACK: f64 = 1e-9;
