//! Filling a bank: books close, and nothing that ought to help ever hurts.

use proptest::prelude::*;
use till_morning::{
    physics::battery::{Capacity, Chemistry, Pack, Store},
    physics::circuit::Branch,
    physics::solar::charger::Charger,
    simulate::charge::{FillEnd, Filled, Filling},
};

/// A bank of a few cells, a charger, what runs beside it, and from where.
#[derive(Clone, Debug)]
struct Case {
    chemistry: Chemistry,
    cells: f64,
    ah: f64,
    milliohm: f64,
    rate: f64,
    source_w: Option<f64>,
    efficiency: f64,
    load_share: f64,
    from: f64,
}

fn cases() -> impl Strategy<Value = Case> {
    (
        prop::sample::select(Chemistry::ALL.to_vec()),
        4u32..=16,
        20.0..400.0,
        1.0..40.0,
        0.03..1.0,
        prop::option::of(50.0..3000.0),
        0.5..1.0,
        0.0..0.8,
        0.0..0.95,
    )
        .prop_map(
            |(chemistry, cells, ah, milliohm, rate, source_w, efficiency, load_share, from)| Case {
                chemistry,
                cells: f64::from(cells),
                ah,
                milliohm,
                rate,
                source_w,
                efficiency,
                load_share,
                from,
            },
        )
}

impl Case {
    fn charger(&self) -> Charger {
        let cell_v = match self.chemistry {
            Chemistry::Lfp => 3.55,
            Chemistry::Nmc => 4.15,
            Chemistry::SodiumIon => 3.9,
            _ => 2.4,
        };
        Charger {
            most_a: self.rate * self.ah,
            hold_v: cell_v * self.cells,
            end_a: 0.02 * self.ah,
            efficiency: self.efficiency,
            source_w: self.source_w,
        }
    }

    fn fill(&self, charger: Charger, to: f64) -> Filled {
        let kind = self.chemistry.data();
        let pack = Pack {
            curve: kind.curve(self.cells),
            polarisation: None,
            ohm: self.milliohm / 1000.0,
            capacity: Capacity {
                ah: self.ah,
                rated_a: self.ah / kind.rated_hours,
                exponent: kind.peukert_exponent,
            },
            empty_charge: 0.0,
            cutoff_v: 0.0,
            limit_a: None,
            parasitic_w: 0.0,
        };
        let store = Store::new(&pack, kind.rated_hours, 0.97);
        // The loads stay what they are when the charger is changed.
        let load_w = self.load_share * self.rate * self.ah * kind.cell_nominal_v * self.cells;
        Filling {
            pack: &pack,
            store: &store,
            charger,
            loads: &[
                (0.6, Branch::power(load_w, 0.002)),
                (0.4, Branch::power(load_w, 0.0)),
            ],
        }
        .run(self.from, to)
    }
}

proptest! {
    /// What the charger gives is in the cells, in the loads or lost.
    #[test]
    fn the_book_of_a_filling_closes(case in cases(), to in 0.1..1.0) {
        let filled = case.fill(case.charger(), to);
        let gap_wh = filled.charger_wh - filled.loads_wh - filled.stored_wh - filled.lost_wh;
        prop_assert!(gap_wh.abs() <= 1e-9 * filled.charger_wh.max(1.0), "{}", gap_wh);
        prop_assert!(filled.hours.is_finite() && filled.hours >= 0.0);
        let stored_ah = (filled.held - case.from).max(0.0) * case.ah;
        prop_assert!((filled.into_ah * 0.97 - stored_ah).abs() < 1e-6 * case.ah);
        // Marks follow one another, and no volts stand above what is held.
        for two in filled.marks.windows(2) {
            prop_assert!(two[0].hours <= two[1].hours && two[0].held <= two[1].held + 1e-12);
            let most_v = case.charger().hold_v.max(filled.marks[0].bar_v);
            prop_assert!(two[1].bar_v <= most_v + 1e-9);
        }
    }

    /// More amps are never slower, and get no less far.
    #[test]
    fn more_amps_are_never_slower(case in cases(), to in 0.1..1.0, more in 1.0..3.0) {
        let weak = case.charger();
        let strong = Charger { most_a: weak.most_a * more, ..weak };
        never_worse(&case, &case.fill(strong, to), &case.fill(weak, to))?;
    }

    /// What loses more on the way is never faster, where the source is the limit
    /// and where it is not.
    #[test]
    fn lower_efficiency_is_never_faster(case in cases(), to in 0.1..1.0, less in 0.3..1.0) {
        let good = case.charger();
        let poor = Charger { efficiency: good.efficiency * less, ..good };
        never_worse(&case, &case.fill(good, to), &case.fill(poor, to))?;
    }
}

/// The longest step of lead-acid: its end is known no better.
const STEP_H: f64 = 0.1;

fn never_worse(case: &Case, better: &Filled, worse: &Filled) -> Result<(), TestCaseError> {
    // Without charge that must seep in, nothing is stepped and nothing goes in late.
    if !case.chemistry.is_lead_acid() {
        // What gives less than the current at which charging ends is called full as soon
        // as its volts are reached, and these it reaches later: it makes less of a drop.
        let curve = case.chemistry.data().curve(case.cells);
        let least_v = case.charger().end_a * case.milliohm / 1000.0;
        let later_v = worse
            .marks
            .last()
            .map_or(0.0, |end| least_v - (end.bar_v - curve.at(end.held)));
        let is_as_far = if later_v > 1e-9 {
            curve.at(better.held) >= curve.at(worse.held) - later_v - 1e-9
        } else {
            better.held >= worse.held - 1e-6
        };
        prop_assert!(is_as_far, "{} {} {later_v}", better.held, worse.held);
        if worse.end == FillEnd::Reached && better.end == FillEnd::Reached {
            prop_assert!(better.hours <= worse.hours * (1.0 + 1e-6) + 1e-6);
        }
    }
    prop_assert!(better.held >= worse.held - 1e-9 || better.end == FillEnd::CalledFull);
    if worse.end == FillEnd::Reached {
        prop_assert_ne!(better.end, FillEnd::TooWeak);
        prop_assert_ne!(better.end, FillEnd::TooLong);
        if better.end == FillEnd::Reached {
            prop_assert!(
                better.hours <= worse.hours + STEP_H,
                "{} {}",
                better.hours,
                worse.hours
            );
        }
    }
    Ok(())
}
