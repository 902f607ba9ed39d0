//! How batteries in parallel share a current, by where the cables leave the bank.
//!
//! Batteries stand in a row, their positive posts joined by links, their negative
//! posts too. Taken off at one end, the near battery works hardest; taken off
//! across the corners, the end ones; on bus bars all work alike. With links of
//! a milliohm and batteries of few, the near battery of four can carry half more
//! than its share, and n batteries are not n times one.
//!
//! The network is solved exactly: Kirchhoff's voltage law around each pair of
//! neighbours, his current law once. By superposition the bank then looks from
//! outside like one source: an open-circuit voltage behind a resistance
//! (Thevenin's theorem).

use super::ladder::Ladder;
use super::limits::{Input, Refusal};
use crate::quantity::{
    ElectricCurrent, ElectricPotential, ElectricalResistance, amps, in_amps, ohms, volts,
};

/// A battery, or a string of them in series: a voltage behind a
/// resistance.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Battery {
    /// Open-circuit voltage, 1 to 1000 V.
    pub open_circuit: ElectricPotential,
    /// Inner resistance with its own leads and fuse, 0.00001 to 100 ohm.
    pub resistance: ElectricalResistance,
}

impl Battery {
    /// Batteries one behind the other as one: voltages and resistances add.
    /// `None` for none.
    #[must_use]
    pub fn in_series(batteries: &[Self]) -> Option<Self> {
        batteries.iter().copied().reduce(|string, next| Self {
            open_circuit: string.open_circuit + next.open_circuit,
            resistance: string.resistance + next.resistance,
        })
    }
}

/// Where the two cables leave a row of batteries in parallel.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum TakeOff {
    /// Both from the first battery.
    SameEnd,
    /// Positive from the first battery, negative from the last.
    Diagonal,
    /// Each battery by a pair of equal leads to bus bars; the link resistance is
    /// that of one lead.
    BusBar,
}

/// A row of batteries in parallel.
#[derive(Debug, Clone, PartialEq)]
pub struct Row {
    /// The batteries in order, 1 to 64; the positive cable leaves at the first.
    pub batteries: Vec<Battery>,
    /// Resistance of each link between neighbouring posts, 0 to 100 ohm.
    pub link: ElectricalResistance,
    /// Where the cables leave.
    pub take_off: TakeOff,
}

/// How a row of batteries shares a current.
#[derive(Debug, Clone, PartialEq)]
pub struct Sharing {
    /// Current of each battery, in order; positive out of it, 0 for one that has
    /// opened. With unequal voltages a battery may be charged by the others.
    pub currents: Vec<ElectricCurrent>,
    /// Voltage between the two cables at the bank.
    pub terminal: ElectricPotential,
    /// What that voltage is with no current taken.
    pub open_circuit: ElectricPotential,
    /// Resistance of the whole bank seen from its cables, links and all.
    pub resistance: ElectricalResistance,
    /// Greatest current of any battery, whichever way it flows.
    pub highest: ElectricCurrent,
    /// The same as a share of the current taken; `None` when none is taken.
    pub highest_share: Option<f64>,
}

impl Row {
    /// Share a current (-5000 to 5000 A, positive out of the bank).
    ///
    /// ```
    /// use till_morning::quantity::{amps, ohms, volts};
    /// use till_morning::physics::wiring::{Battery, Row, TakeOff};
    ///
    /// let battery = Battery { open_circuit: volts(13.2), resistance: ohms(0.008) };
    /// let row = Row { batteries: vec![battery; 4], link: ohms(0.001), take_off: TakeOff::SameEnd };
    /// let sharing = row.share(amps(100.0)).unwrap();
    /// assert!(sharing.highest > amps(35.0)); // not the 25 A of an even share
    /// ```
    ///
    /// # Errors
    /// [`Refusal::OutOfRange`] naming the input.
    pub fn share(&self, total: ElectricCurrent) -> Result<Sharing, Refusal> {
        self.share_among(total, None)
    }

    /// Share a current among what is left when the battery at `opened` (from 0)
    /// has switched itself off. Its links still conduct.
    ///
    /// # Errors
    /// [`Refusal::NoBatteryLeft`] when it was the only one;
    /// [`Refusal::OutOfRange`] when there is no such battery, or naming another
    /// input.
    pub fn share_with_one_open(
        &self,
        total: ElectricCurrent,
        opened: usize,
    ) -> Result<Sharing, Refusal> {
        Input::Batteries.check(self.batteries.len() as f64)?;
        if opened >= self.batteries.len() {
            let last = self.batteries.len() - 1;
            return Err(Refusal::OutOfRange {
                input: Input::BatteryIndex,
                low: 0.0,
                high: last as f64,
            });
        }
        self.share_among(total, Some(opened))
    }

    fn share_among(
        &self,
        total: ElectricCurrent,
        opened: Option<usize>,
    ) -> Result<Sharing, Refusal> {
        let total_a = Input::BankCurrent.check(in_amps(total))?;
        let ladder = Ladder::of(self, opened)?;
        let at_rest = ladder.flow(true, 0.0)?;
        // With the voltages silenced, one ampere shows the resistance alone.
        let one_ampere = ladder.flow(false, 1.0)?;
        let loaded = ladder.flow(true, total_a)?;
        let mut currents = vec![amps(0.0); self.batteries.len()];
        for (rung, current_a) in ladder.rungs.iter().zip(&loaded.currents_a) {
            currents[rung.place] = amps(*current_a);
        }
        let highest_a = loaded
            .currents_a
            .iter()
            .fold(0.0, |m: f64, i| m.max(i.abs()));
        Ok(Sharing {
            currents,
            terminal: volts(loaded.terminal_v),
            open_circuit: volts(at_rest.terminal_v),
            resistance: ohms(-one_ampere.terminal_v),
            highest: amps(highest_a),
            highest_share: (total_a != 0.0).then(|| highest_a / total_a.abs()),
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::in_ohms;

    fn row(count: usize, link: f64, take_off: TakeOff) -> Row {
        let battery = Battery {
            open_circuit: volts(13.2),
            resistance: ohms(0.01),
        };
        Row {
            batteries: vec![battery; count],
            link: ohms(link),
            take_off,
        }
    }

    #[test]
    fn two_batteries_from_one_end_match_the_sum_by_hand() {
        // R i0 = (R + 2 r) i1, i0 + i1 = 60: 12/22 and 10/22 of it at r = R/10.
        let sharing = row(2, 0.001, TakeOff::SameEnd).share(amps(60.0)).unwrap();
        assert!((in_amps(sharing.currents[0]) - 60.0 * 12.0 / 22.0).abs() < 1e-9);
        // Seen from the cables: R in parallel with R + 2 r.
        let by_hand = 0.01 * 0.012 / 0.022;
        assert!((in_ohms(sharing.resistance) - by_hand).abs() < 1e-12);
    }

    #[test]
    fn two_batteries_across_the_corners_share_alike() {
        let sharing = row(2, 0.001, TakeOff::Diagonal).share(amps(60.0)).unwrap();
        assert!((in_amps(sharing.currents[0]) - 30.0).abs() < 1e-9);
        // Each path holds one link: (R + r) / 2.
        assert!((in_ohms(sharing.resistance) - 0.0055).abs() < 1e-12);
    }

    #[test]
    fn an_opened_battery_at_the_cables_leaves_its_links_in_the_way() {
        let row = row(2, 0.001, TakeOff::SameEnd);
        let sharing = row.share_with_one_open(amps(10.0), 0).unwrap();
        assert_eq!(in_amps(sharing.currents[0]), 0.0);
        assert!((in_ohms(sharing.resistance) - 0.012).abs() < 1e-12);
        let across = Row {
            take_off: TakeOff::Diagonal,
            ..row
        };
        for opened in [0, 1] {
            let sharing = across.share_with_one_open(amps(10.0), opened).unwrap();
            assert!((in_ohms(sharing.resistance) - 0.011).abs() < 1e-12);
        }
    }

    #[test]
    fn what_cannot_be_shared_is_refused() {
        let one = row(1, 0.0, TakeOff::BusBar);
        assert_eq!(
            one.share_with_one_open(amps(1.0), 0),
            Err(Refusal::NoBatteryLeft)
        );
        assert!(one.share_with_one_open(amps(1.0), 1).is_err());
        assert!(row(0, 0.0, TakeOff::BusBar).share(amps(1.0)).is_err());
        assert!(one.share(amps(f64::NAN)).is_err());
        assert_eq!(one.share(amps(0.0)).unwrap().highest_share, None);
    }
}
