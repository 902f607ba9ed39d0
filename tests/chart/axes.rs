//! Ticks and scales.

use super::wild;
use proptest::prelude::*;
use till_morning::view::chart::clock::clock_ticks;
use till_morning::view::chart::scale::{Domain, Scale};
use till_morning::view::chart::ticks::{NiceStep, intervals};

#[test]
fn heckberts_example() {
    // Heckbert, "Nice numbers for graph labels", Graphics Gems (1990), figure 1:
    // data from 105 to 543, five ticks wanted, loose labels 100, 200 ... 600.
    // From memory.
    let data = Domain::of([105.0, 543.0]);
    let step = NiceStep::of(data, 5);
    let loose = step.loosen(data);
    assert_eq!(step.size(), 100.0);
    assert_eq!((loose.low(), loose.high()), (100.0, 600.0));
    let expected = [100.0, 200.0, 300.0, 400.0, 500.0, 600.0];
    assert_eq!(step.ticks(loose), expected);
}

#[test]
fn loose_ticks_match_matplotlib() {
    // matplotlib 3.11.2, MaxNLocator(nbins=n, steps=[1, 2, 2.5, 5, 10],
    // min_n_ticks=1).tick_values(low, high): first tick, step, last tick.
    let rows = [
        ((0.0, 9.0, 4), (0.0, 2.5, 10.0)),
        ((11.8, 13.4, 6), (11.5, 0.5, 13.5)),
        ((-7.0, 41.0, 5), (-10.0, 10.0, 50.0)),
        ((0.0, 240.0, 6), (0.0, 50.0, 250.0)),
        ((0.02, 0.31, 4), (0.0, 0.1, 0.4)),
        ((0.0, 1.0, 5), (0.0, 0.2, 1.0)),
        ((18.0, 36.0, 4), (15.0, 5.0, 40.0)),
        ((18.0, 35.0, 4), (15.0, 5.0, 35.0)),
        ((-1234.0, 980.0, 8), (-1500.0, 500.0, 1000.0)),
        ((0.0, 100.0, 10), (0.0, 10.0, 100.0)),
        ((0.001, 0.008, 3), (0.0, 0.0025, 0.01)),
        ((0.0, 2600.0, 3), (0.0, 1000.0, 3000.0)),
    ];
    for ((low, high, count), expected) in rows {
        let data = Domain::of([low, high]);
        let step = NiceStep::of(data, count);
        let loose = step.loosen(data);
        assert_eq!((loose.low(), step.size(), loose.high()), expected);
    }
}

proptest! {
    #[test]
    fn number_ticks_rise_inside_the_domain(a in wild(), b in wild(), count in 1usize..60) {
        let domain = Domain::of([a, b]);
        let step = NiceStep::of(domain, count);
        let ticks = step.ticks(domain);
        prop_assert!(ticks.windows(2).all(|pair| pair[0] < pair[1]));
        prop_assert!(ticks.iter().all(|t| (domain.low()..=domain.high()).contains(t)));
        prop_assert!(ticks.len() <= count + 1, "{} {}", ticks.len(), count);
        let loose = step.loosen(domain);
        prop_assert!(loose.low() <= domain.low() && loose.high() >= domain.high());
    }

    #[test]
    fn labels_with_the_given_decimals_read_back(low in -1e4..1e4, span in 1e-3..1e4, count in 1usize..20) {
        let domain = Domain::of([low, low + span]);
        let step = NiceStep::of(domain, count);
        for tick in step.ticks(domain) {
            let text = format!("{tick:.*}", step.decimals());
            let read: f64 = text.parse().unwrap();
            prop_assert!((read - tick).abs() <= step.size() * 1e-6, "{} {}", text, tick);
        }
    }

    #[test]
    fn clock_ticks_are_whole_clock_times(
        start in wild(), from in -100.0..100.0, span in 0.1..400.0, count in 1usize..30,
    ) {
        let shown = Domain::of([from, from + span]);
        let ticks = clock_ticks(start, shown, count);
        prop_assert!(ticks.len() <= count + 1);
        prop_assert!(ticks.windows(2).all(|pair| pair[0].hours < pair[1].hours));
        // Not quite nothing below zero wraps to a whole day by rounding: that is 0 too.
        let start = if start.is_finite() { start.rem_euclid(1440.0) % 1440.0 } else { 0.0 };
        for tick in ticks {
            prop_assert!((shown.low()..=shown.high()).contains(&tick.hours));
            // The calendar: minutes since the first midnight, two ways.
            let by_axis = start + tick.hours * 60.0;
            let by_clock = f64::from(tick.day) * 1440.0 + f64::from(tick.minute);
            prop_assert!((by_axis - by_clock).abs() < 1e-6, "{} {}", by_axis, by_clock);
            prop_assert!(span < 3.0 || tick.minute % 60 == 0);
        }
    }

    #[test]
    fn scale_and_inverse_agree(
        a in -1e6..1e6, b in -1e6..1e6, left in 0.0..400.0, length in 1.0..1500.0, share in 0.0..1.0,
    ) {
        let domain = Domain::of([a, b]);
        let scale = Scale::new(domain, left, left + length);
        let value = domain.low() + share * domain.span();
        let back = scale.value(scale.px(value).unwrap());
        prop_assert!((back - value).abs() <= 1e-9 * domain.span().max(value.abs()));
    }

    #[test]
    fn scales_are_finite_on_anything(values in prop::collection::vec(wild(), 0..6), a in wild(), b in wild(), v in wild()) {
        let domain = Domain::of(values);
        let scale = Scale::new(domain, a, b);
        prop_assert!(domain.span() > 0.0 && domain.span().is_finite());
        prop_assert!(scale.px(v).is_none_or(f64::is_finite));
        prop_assert!(scale.value(v).is_finite());
        prop_assert!(intervals(a, b) >= 1);
    }
}
