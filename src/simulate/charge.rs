//! Filling a bank: constant current, then constant voltage, what runs beside it
//! running on.
//!
//! Integrated in charge, as runs are. On a straight piece of the open-circuit
//! curve the held voltage makes the current fall straight with the charge, so
//! the hours are exact: ampere-hours over the logarithmic mean of the currents at
//! both ends. At constant current without loads they are exact as well; loads
//! bend the current a little as the volts rise, and three Gauss points a piece
//! follow that to 1e-9.
//!
//! Lead-acid has charge that must seep in ([`Store`]); it is stepped in time, one
//! to six minutes a step.

use crate::{
    physics::battery::{Pack, Store},
    physics::circuit::Branch,
    physics::solar::charger::Charger,
    search::bisect,
};
use serde::{Deserialize, Serialize};

/// Everything that a filling depends on.
#[derive(Clone, Debug, PartialEq)]
pub struct Filling<'a> {
    /// Its resistance is taken as it stands: warm it beforehand. Its polarisation plays no
    /// part, as that is of discharge.
    pub pack: &'a Pack,
    /// Of the same bank; its charge efficiency says how much of the Ah stays.
    pub store: &'a Store,
    /// All that charges, as one; derate it for heat beforehand.
    pub charger: Charger,
    /// What runs meanwhile: the share of the time that it does, 0 to 1, and what it draws
    /// from the bars.
    pub loads: &'a [(f64, Branch)],
}

/// What a filling came to.
///
/// The book closes: `charger_wh = stored_wh + lost_wh + loads_wh`.
#[derive(Clone, Debug, PartialEq)]
pub struct Filled {
    /// From the start until `end`; 0 where nothing was to be done or nothing could.
    pub hours: f64,
    /// Of which at constant current, or at all that the source gives.
    pub constant_current_h: f64,
    /// Why it ended.
    pub end: FillEnd,
    /// Share of what the bank holds at the end, 0 to 1.
    pub held: f64,
    /// Into the bank's terminals, Ah; less of it stays, by the charge efficiency.
    pub into_ah: f64,
    /// Out of the charger into the bars, Wh. (What it takes from its source is more:
    /// [`Charger::taken_wh`].)
    pub charger_wh: f64,
    /// What ran beside it, Wh at the bars.
    pub loads_wh: f64,
    /// In the bank's resistance, and charge that does not stay.
    pub lost_wh: f64,
    /// Kept by the cells, by their open-circuit volts.
    pub stored_wh: f64,
    /// In the order of time, the start first. Empty where nothing was to be done or nothing
    /// may be charged.
    pub marks: Vec<FillMark>,
}

/// How a filling ends.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum FillEnd {
    /// The charge that was asked for.
    Reached,
    /// The charger's own end of charging came first.
    CalledFull,
    /// What runs beside it takes all that the charger gives.
    TooWeak,
    /// Not within [`MOST_H`].
    TooLong,
    /// The bank is too cold, or too hot, to be charged at all.
    Refused,
}

/// The state at a moment of a filling.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FillMark {
    /// From the start of the filling.
    pub hours: f64,
    /// Share of what the bank holds, 0 to 1.
    pub held: f64,
    /// Volts at the bars; the bank's open-circuit volts where it takes no current.
    pub bar_v: f64,
    /// Into the bank, A; below 0 where the loads draw more than the charger gives.
    pub bank_a: f64,
    /// Out of the charger, A: into the bank and to the loads.
    pub charger_a: f64,
}

/// Longest filling that is answered, h.
/// Looked at before each piece, so the hours told may be a little more.
pub const MOST_H: f64 = 240.0;
/// Widest piece, as a share of the cells' charge.
const WIDEST: f64 = 0.02;
/// Three Gauss points on 0 to 1.
const NODES: [(f64, f64); 3] = [
    (0.112_701_665_379_258_31, 5.0 / 18.0),
    (0.5, 8.0 / 18.0),
    (0.887_298_334_620_741_7, 5.0 / 18.0),
];
/// Passes in which the volts usually settle: the bank's resistance is small beside
/// what the loads answer with.
const PASSES: usize = 12;
/// Net amps that count as nothing, as a share of the charger's.
const NOTHING: f64 = 1e-9;
/// Shortest and longest step of lead-acid, h, and how many it is to take.
const STEP_H: (f64, f64) = (1.0 / 60.0, 0.1);
const STEPS: f64 = 300.0;
/// Steps between two marks of lead-acid's curve.
const STEPS_A_MARK: usize = 6;

/// The bars at one moment.
#[derive(Clone, Copy)]
struct Bars {
    volts: f64,
    /// Into the bank.
    bank_a: f64,
    load_a: f64,
    is_held: bool,
}

impl Filling<'_> {
    /// Fills from one share of what the bank holds to another, 0 to 1.
    ///
    /// ```
    /// use till_morning::{plan::Plan, simulate::{assemble, charge::{FillEnd, Filling}}, physics::battery::Store};
    /// use till_morning::physics::solar::charger::Charger;
    ///
    /// let pack = assemble::pack(&Plan::demo(), 0).unwrap().pack;
    /// let store = Store::new(&pack, 5.0, 0.995);
    /// let charger = Charger { most_a: 30.0, hold_v: 28.4, end_a: 4.2, efficiency: 0.9, source_w: None };
    /// let filled = Filling { pack: &pack, store: &store, charger, loads: &[] }.run(0.3, 0.9);
    /// assert_eq!(filled.end, FillEnd::Reached);
    /// let gap_wh = filled.charger_wh - filled.stored_wh - filled.lost_wh;
    /// assert!(gap_wh.abs() < 1e-6);
    /// ```
    ///
    /// At once [`FillEnd::Reached`], with no hours and no marks, where `to` is not above
    /// `from`. `to` of 1 is met only where the charger does not end before it; most do.
    #[must_use]
    pub fn run(&self, from: f64, to: f64) -> Filled {
        let mut walk = Walk::new(self, self.pack.charge_at(from));
        let end = self.pack.charge_at(to);
        if end <= walk.charge {
            return walk.finish(FillEnd::Reached);
        }
        let how = if self.pack.capacity.exponent > 1.0 {
            walk.in_time(from, end)
        } else {
            walk.in_charge(end)
        };
        walk.finish(how)
    }

    /// Where the bank may not be charged at all.
    /// A filling of no length that ends as [`FillEnd::Refused`], `from` 0 to 1 held.
    #[must_use]
    pub fn refused(&self, from: f64) -> Filled {
        Walk::new(self, self.pack.charge_at(from)).finish(FillEnd::Refused)
    }

    /// Mean amps of what runs beside it at so many volts, by the shares of the time.
    fn load_a(&self, bar_v: f64) -> f64 {
        let each = self.loads.iter();
        each.map(|(share, load)| share * load.amps_at(bar_v)).sum()
    }

    /// Where the bars settle at an open-circuit voltage; no charging current where
    /// the loads take all, or the bank stands above what is held.
    fn bars(&self, ocv_v: f64) -> Bars {
        let (ohm, hold_v) = (self.pack.ohm, self.charger.hold_v);
        let net_a = |bar_v: f64| self.charger.most_a_at(bar_v) - self.load_a(bar_v);
        if ocv_v >= hold_v {
            return Bars {
                volts: ocv_v,
                bank_a: 0.0,
                load_a: self.load_a(ocv_v),
                is_held: true,
            };
        }
        let held_a = net_a(hold_v);
        if ohm > 0.0 && held_a * ohm >= hold_v - ocv_v {
            return Bars {
                volts: hold_v,
                bank_a: (hold_v - ocv_v) / ohm,
                load_a: self.load_a(hold_v),
                is_held: true,
            };
        }
        let volts = self.settled_v(ocv_v, net_a);
        Bars {
            volts,
            bank_a: net_a(volts),
            load_a: self.load_a(volts),
            is_held: false,
        }
    }

    /// Volts at the bars with so many net amps at each voltage, between the bank
    /// alone and what is held.
    fn settled_v(&self, ocv_v: f64, net_a: impl Fn(f64) -> f64) -> f64 {
        let ohm = self.pack.ohm;
        let hold_v = self.charger.hold_v;
        let mut at_v = ocv_v;
        for _ in 0..PASSES {
            let next_v = (ocv_v + ohm * net_a(at_v)).max(ocv_v).min(hold_v);
            let is_met = (next_v - at_v).abs() <= 1e-14 * hold_v;
            at_v = next_v;
            if is_met {
                return at_v;
            }
        }
        let is_below = |bar_v| ocv_v + ohm * net_a(bar_v) > bar_v;
        bisect(is_below, hold_v, ocv_v, 1e-15 * hold_v).1
    }

    /// Open-circuit volts at which something changes: the source becomes the
    /// limit, the volts are held, the charger ends.
    ///
    /// In that order; 0 where the source is never the limit. They need not lie on the
    /// curve: the caller keeps those that do.
    fn breaks_v(&self) -> [f64; 3] {
        let (ohm, charger) = (self.pack.ohm, &self.charger);
        let at = |bar_v: f64| bar_v - ohm * (charger.most_a_at(bar_v) - self.load_a(bar_v));
        [
            charger.source_limits_from_v().map_or(0.0, at),
            at(charger.hold_v),
            charger.hold_v - ohm * charger.end_a,
        ]
    }
}

/// A filling under way.
struct Walk<'a> {
    filling: &'a Filling<'a>,
    charge: f64,
    sums: Filled,
}

impl<'a> Walk<'a> {
    fn new(filling: &'a Filling<'a>, charge: f64) -> Self {
        let sums = Filled {
            hours: 0.0,
            constant_current_h: 0.0,
            end: FillEnd::Reached,
            held: 0.0,
            into_ah: 0.0,
            charger_wh: 0.0,
            loads_wh: 0.0,
            lost_wh: 0.0,
            stored_wh: 0.0,
            marks: Vec::new(),
        };
        Self {
            filling,
            charge,
            sums,
        }
    }

    fn ocv_v(&self, charge: f64) -> f64 {
        self.filling.pack.curve.at(charge)
    }

    /// Nothing where charging goes on at a charge; otherwise why not.
    ///
    /// The end is by the bank's own current while the volts are held, so a charger that is
    /// busy with loads alone calls it full too.
    fn stops(&self, bars: Bars) -> Option<FillEnd> {
        let charger = &self.filling.charger;
        if self.sums.hours > MOST_H {
            Some(FillEnd::TooLong)
        } else if bars.is_held && bars.bank_a <= charger.end_a * (1.0 + NOTHING) {
            Some(FillEnd::CalledFull)
        } else if bars.bank_a <= NOTHING * charger.most_a.max(NOTHING) {
            Some(FillEnd::TooWeak)
        } else {
            None
        }
    }

    /// Piece by piece in charge: on each the bars are held throughout or not at all, as the
    /// pieces end where that changes.
    fn in_charge(&mut self, end: f64) -> FillEnd {
        self.mark();
        for upper in self.uppers(end) {
            if upper - self.charge < 1e-13 {
                continue;
            }
            // Looked at a little way in: on its lower edge a piece may belong to
            // the one before.
            let inside = self.charge + 1e-6 * (upper - self.charge);
            if let Some(end) = self.stops(self.filling.bars(self.ocv_v(inside))) {
                return end;
            }
            let bars = self.filling.bars(self.ocv_v(0.5 * (self.charge + upper)));
            if bars.is_held {
                self.held_piece(upper, bars);
            } else if let Some(end) = self.current_piece(upper) {
                return end;
            }
            self.charge = upper;
            self.mark();
        }
        if self.sums.hours > MOST_H {
            FillEnd::TooLong
        } else {
            FillEnd::Reached
        }
    }

    /// Upper ends of the pieces up to a charge: knots of the curve, every fiftieth,
    /// and where the charger changes its ways.
    fn uppers(&self, end: f64) -> Vec<f64> {
        let curve = &self.filling.pack.curve;
        let mut ends: Vec<f64> = curve.knots_down(end, self.charge).collect();
        let count = (1.0 / WIDEST).round() as usize;
        ends.extend((1..count).map(|at| at as f64 * WIDEST));
        ends.push(end);
        ends.retain(|&charge| charge > self.charge && charge <= end);
        ends.sort_unstable_by(f64::total_cmp);
        let mut breaks = Vec::new();
        let mut low = self.charge;
        for &high in &ends {
            let (low_v, high_v) = (self.ocv_v(low), self.ocv_v(high));
            for volts in self.filling.breaks_v() {
                if volts > low_v && volts < high_v {
                    breaks.push(low + (volts - low_v) / (high_v - low_v) * (high - low));
                }
            }
            low = high;
        }
        ends.extend(breaks);
        ends.sort_unstable_by(f64::total_cmp);
        ends
    }

    /// A straight piece at the held voltage, exactly.
    fn held_piece(&mut self, upper: f64, bars: Bars) {
        let (pack, store) = (self.filling.pack, self.filling.store);
        let (low_v, high_v) = (self.ocv_v(self.charge), self.ocv_v(upper));
        let current = |ocv_v: f64| ((bars.volts - ocv_v) / pack.ohm).max(0.0);
        let (first_a, last_a) = (current(low_v), current(high_v));
        let stored_ah = (upper - self.charge) * pack.capacity.ah;
        let into_ah = stored_ah / store.charge_efficiency;
        let hours = into_ah / logarithmic_mean(first_a, last_a);
        // The current falls straight with the charge, so its mean over the charge
        // is the middle of its ends.
        let lost_wh = pack.ohm * 0.5 * (first_a + last_a) * into_ah;
        let stored_wh = stored_ah * 0.5 * (low_v + high_v);
        self.book(hours, into_ah, stored_wh, lost_wh, bars.volts * bars.load_a);
    }

    /// A piece at the charger's most, the loads bending it a little.
    fn current_piece(&mut self, upper: f64) -> Option<FillEnd> {
        let (pack, store) = (self.filling.pack, self.filling.store);
        for (node, weight) in NODES {
            let ocv_v = self.ocv_v(self.charge + node * (upper - self.charge));
            let bars = self.filling.bars(ocv_v);
            if bars.bank_a <= 0.0 {
                return Some(FillEnd::TooWeak);
            }
            let stored_ah = (upper - self.charge) * pack.capacity.ah * weight;
            let into_ah = stored_ah / store.charge_efficiency;
            let hours = into_ah / bars.bank_a;
            let lost_wh = pack.ohm * bars.bank_a * into_ah;
            self.sums.constant_current_h += hours;
            let load_w = bars.volts * bars.load_a;
            self.book(hours, into_ah, stored_ah * ocv_v, lost_wh, load_w);
        }
        None
    }

    /// Puts a stretch into the sums: `lost_wh` is that of the resistance, what charging
    /// itself loses is added here.
    fn book(&mut self, hours: f64, into_ah: f64, stored_wh: f64, lost_wh: f64, load_w: f64) {
        // Charge that does not stay was brought in at the cells' own volts.
        let gassed_wh = stored_wh * (1.0 / self.filling.store.charge_efficiency - 1.0);
        let sums = &mut self.sums;
        sums.hours += hours;
        sums.into_ah += into_ah;
        sums.stored_wh += stored_wh;
        sums.lost_wh += lost_wh + gassed_wh;
        sums.loads_wh += load_w * hours;
        sums.charger_wh += stored_wh + gassed_wh + lost_wh + load_w * hours;
    }

    /// Lead-acid, step by step: no more than seeps in. The current of a step is
    /// that of its middle.
    fn in_time(&mut self, from: f64, end: f64) -> FillEnd {
        let (pack, store) = (self.filling.pack, self.filling.store);
        let first_a = self.filling.bars(self.ocv_v(self.charge)).bank_a;
        let whole_h = (end - self.charge) * pack.capacity.ah / first_a.max(1e-9);
        let step_h = (whole_h / STEPS).max(STEP_H.0).min(STEP_H.1);
        let timed = store.timed(step_h);
        let mut held = store.rested(from);
        self.mark();
        for step in 1_usize.. {
            let seeps_a = store.most_in_a(held, &timed);
            let mut bars = self.filling.bars(self.ocv_v(self.charge));
            for _ in 0..2 {
                let ahead = 0.5 * bars.bank_a.min(seeps_a) * step_h * store.charge_efficiency;
                let middle = (self.charge + ahead / pack.capacity.ah).min(end);
                bars = self.filling.bars(self.ocv_v(middle));
            }
            if bars.bank_a > seeps_a {
                bars = self.filling.seeping(seeps_a, self.ocv_v(self.charge));
            }
            if let Some(end) = self.stops(bars) {
                return end;
            }
            let step_ah = bars.bank_a * step_h * store.charge_efficiency;
            let left_ah = (end - self.charge) * pack.capacity.ah;
            let share = (left_ah / step_ah).min(1.0);
            let (stored_ah, hours) = (step_ah * share, step_h * share);
            let into_ah = stored_ah / store.charge_efficiency;
            let next = self.charge + stored_ah / pack.capacity.ah;
            let stored_wh = stored_ah * pack.curve.mean_between(self.charge, next);
            let lost_wh = pack.ohm * bars.bank_a * into_ah;
            if !bars.is_held {
                self.sums.constant_current_h += hours;
            }
            self.book(hours, into_ah, stored_wh, lost_wh, bars.volts * bars.load_a);
            held = store.after(held, &timed, -bars.bank_a);
            self.charge = next;
            if step % STEPS_A_MARK == 0 {
                self.mark();
            }
            if share < 1.0 || end - next < 1e-12 {
                self.charge = end;
                self.mark();
                return FillEnd::Reached;
            }
        }
        FillEnd::TooLong
    }

    /// The state at the charge now, with the sums up to here.
    fn mark(&mut self) {
        let bars = self.filling.bars(self.ocv_v(self.charge));
        self.sums.marks.push(FillMark {
            hours: self.sums.hours,
            held: self.filling.pack.soc(self.charge),
            bar_v: bars.volts,
            bank_a: bars.bank_a,
            charger_a: bars.bank_a + bars.load_a,
        });
    }

    fn finish(self, end: FillEnd) -> Filled {
        Filled {
            end,
            held: self.filling.pack.soc(self.charge),
            ..self.sums
        }
    }
}

impl Filling<'_> {
    /// The bars where the bank takes no more than seeps in: the charger holds back.
    fn seeping(&self, bank_a: f64, ocv_v: f64) -> Bars {
        let volts = ocv_v + self.pack.ohm * bank_a;
        Bars {
            volts,
            bank_a,
            load_a: self.load_a(volts),
            is_held: true,
        }
    }
}

/// The mean of a current that falls straight with the charge, over its time.
fn logarithmic_mean(a: f64, b: f64) -> f64 {
    if b <= 0.0 {
        return 0.0;
    }
    // ln(1 + x) / x, without loss where both are near each other.
    let x = (a - b) / b;
    if x.abs() < 1e-12 {
        b
    } else {
        b * x / x.ln_1p()
    }
}
