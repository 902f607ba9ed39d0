use super::{sum_a, take_off};
use proptest::prelude::*;
use till_morning::physics::wiring::{Battery, Row, TakeOff};
use till_morning::quantity::{amps, in_amps, in_ohms, in_volts, ohms, volts};

fn row() -> impl Strategy<Value = Row> {
    let battery = (10.0..15.0, 0.001..0.05).prop_map(|(source_v, own_ohm)| Battery {
        open_circuit: volts(source_v),
        resistance: ohms(own_ohm),
    });
    (prop::collection::vec(battery, 1..9), 0.0..0.005, take_off()).prop_map(
        |(batteries, link_ohm, take_off)| Row {
            batteries,
            link: ohms(link_ohm),
            take_off,
        },
    )
}

proptest! {
    /// Currents add up, and seen from its cables any bank is one voltage behind
    /// one resistance.
    #[test]
    fn a_bank_is_linear_and_loses_no_current(row in row(), total_a in -200.0..200.0) {
        let sharing = row.share(amps(total_a)).unwrap();
        prop_assert!((sum_a(&sharing.currents) - total_a).abs() < 1e-9);
        let by_thevenin = in_volts(sharing.open_circuit) - in_ohms(sharing.resistance) * total_a;
        prop_assert!((in_volts(sharing.terminal) - by_thevenin).abs() < 1e-9);
        prop_assert!(in_ohms(sharing.resistance) > 0.0);
    }

    /// When one battery opens the rest carry everything and the bank resists more.
    #[test]
    fn an_opened_battery_burdens_the_others(
        row in row(),
        total_a in 1.0..200.0,
        which in any::<prop::sample::Index>(),
    ) {
        let mut row = row;
        row.batteries.push(row.batteries[0]);
        let which = which.index(row.batteries.len());
        let all = row.share(amps(total_a)).unwrap();
        let rest = row.share_with_one_open(amps(total_a), which).unwrap();
        prop_assert_eq!(rest.currents[which], amps(0.0));
        prop_assert!((sum_a(&rest.currents) - total_a).abs() < 1e-9);
        prop_assert!(in_ohms(rest.resistance) >= in_ohms(all.resistance) - 1e-12);
    }

    /// Like batteries: across the corners is its own mirror image; from one end
    /// the nearest works hardest and the farthest least; bars make all alike.
    #[test]
    fn take_offs_of_like_batteries(count in 2usize..9, own in 0.001..0.05, link in 1e-5..0.005) {
        let battery = Battery { open_circuit: volts(12.8), resistance: ohms(own) };
        let shares = |take_off| {
            let row = Row { batteries: vec![battery; count], link: ohms(link), take_off };
            let sharing = row.share(amps(100.0)).unwrap();
            sharing.currents.iter().map(|i| in_amps(*i)).collect::<Vec<_>>()
        };
        let one_end = shares(TakeOff::SameEnd);
        prop_assert!(one_end.is_sorted_by(|near, far| near >= far));
        let corners = shares(TakeOff::Diagonal);
        for (front, back) in corners.iter().zip(corners.iter().rev()) {
            prop_assert!((front - back).abs() < 1e-8);
        }
        prop_assert!(corners[0] <= one_end[0] + 1e-9);
        for share in shares(TakeOff::BusBar) {
            prop_assert!((share - 100.0 / count as f64).abs() < 1e-9);
        }
    }
}
