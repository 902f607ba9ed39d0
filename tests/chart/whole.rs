//! Figures, ribbons and reading, on a phone and a desk, on good input and bad.

use super::paths::vertices;
use super::wild;
use proptest::prelude::*;
use till_morning::view::chart::axis::TickLabel;
use till_morning::view::chart::figure::{Figure, figure};
use till_morning::view::chart::frame::{Frame, XKind, YRange};
use till_morning::view::chart::ribbon::{End, Window, ribbon};
use till_morning::view::chart::scrub::{Scrubber, Step};
use till_morning::view::chart::series::{Sample, Series, Shape, Spread};

fn any_series() -> impl Strategy<Value = Series> {
    let sample = (wild(), prop::option::of(wild())).prop_map(|(x, y)| Sample { x, y });
    let spread = (wild(), prop::option::of((wild(), wild())))
        .prop_map(|(x, low_high)| Spread { x, low_high });
    (
        prop::collection::vec(sample, 0..20),
        prop::collection::vec(spread, 0..20),
        prop::bool::ANY,
        0usize..40,
    )
        .prop_map(|(mut samples, spread, step, label_chars)| {
            // Half in order, so that real curves come up too.
            if step {
                samples.sort_by(|a, b| a.x.total_cmp(&b.x));
            }
            let shape = if step { Shape::Step } else { Shape::Line };
            Series {
                samples,
                spread,
                shape,
                label_chars,
            }
        })
}

fn any_frame() -> impl Strategy<Value = Frame> {
    let x_kind = prop_oneof![
        Just(XKind::Number),
        wild().prop_map(|start_min| XKind::Clock { start_min }),
    ];
    let y_range = prop_oneof![
        Just(YRange::Data),
        Just(YRange::WithZero),
        (wild(), wild()).prop_map(|(a, b)| YRange::Fixed(a, b)),
    ];
    let x_range = prop::option::of((wild(), wild()));
    (wild(), wild(), wild(), x_kind, x_range, y_range).prop_map(
        |(width, height, font_px, x_kind, x_range, y_range)| Frame {
            width,
            height,
            font_px,
            x_kind,
            x_range,
            y_range,
            least_chars: (0, 0),
        },
    )
}

/// Every number in a value, by its debug text: fields cannot be forgotten.
fn all_finite(value: &impl std::fmt::Debug) -> bool {
    let text = format!("{value:?}");
    let mut words = text.split(|c: char| !c.is_ascii_alphabetic());
    words.all(|word| word != "NaN" && word != "inf")
}

proptest! {
    #[test]
    fn figures_are_finite_on_anything(frame in any_frame(), series in prop::collection::vec(any_series(), 0..4)) {
        let drawn = figure(frame, &series);
        prop_assert!(all_finite(&drawn), "{:?}", drawn);
        prop_assert_eq!(drawn.curves.len(), series.len());
        prop_assert!(drawn.plot.width() > 0.0 && drawn.plot.height() > 0.0);
        for curve in &drawn.curves {
            // Panics on a path outside the grammar.
            vertices(&curve.line);
        }
        prop_assert_eq!(figure(frame, &series), drawn);
    }

    #[test]
    fn ribbons_are_finite_on_anything(
        rows in prop::collection::vec(prop::option::of((wild(), wild(), wild())), 0..5),
        start in wild(), dark in prop::option::of((wild(), wild())), left in wild(), right in wild(), font in wild(),
    ) {
        let ends: Vec<_> = rows
            .iter()
            .map(|row| row.map(|(likely_h, low_h, high_h)| End { likely_h, low_h, high_h }))
            .collect();
        let window = Window::for_ends(start, &ends);
        prop_assert!((6.0..=48.0).contains(&window.hours()) && window.hours().fract() == 0.0);
        let drawn = ribbon(window, &ends, dark, (left, right), font);
        prop_assert!(all_finite(&drawn), "{:?}", drawn);
    }

    #[test]
    fn a_window_shows_every_end_it_can(rows in prop::collection::vec((0.0..47.0f64, 0.0..1.0f64), 1..6)) {
        let ends: Vec<_> = rows
            .iter()
            .map(|(likely, share)| Some(End {
                likely_h: *likely,
                low_h: likely * (1.0 - share / 2.0),
                high_h: (likely * (1.0 + share / 2.0)).min(47.0),
            }))
            .collect();
        let drawn = ribbon(Window::for_ends(0.0, &ends), &ends, None, (0.0, 288.0), 14.0);
        for bar in drawn.bars.iter().flatten() {
            let likely = bar.likely.expect("in view");
            prop_assert!(!bar.clipped);
            prop_assert!(bar.x0 <= bar.solid_end && bar.solid_end <= likely && likely <= bar.fade_end);
            prop_assert!(bar.fade_end <= 288.0);
        }
    }

    #[test]
    fn keys_visit_every_stop_and_read_finite(series in prop::collection::vec(any_series(), 0..4)) {
        let scrubber = Scrubber::new(&series);
        let mut stop = scrubber.moved(usize::MAX, Step::First);
        let mut last_x = f64::NEG_INFINITY;
        for _ in 0..scrubber.len() {
            let reading = scrubber.read(stop).unwrap();
            prop_assert!(all_finite(&reading));
            prop_assert!(reading.x > last_x);
            // At a stop at least one series has a sample.
            prop_assert!(reading.values.iter().any(|value| value.y.is_some()));
            prop_assert_eq!(scrubber.nearest(reading.x), Some(stop));
            last_x = reading.x;
            stop = scrubber.moved(stop, Step::On);
        }
        prop_assert_eq!(stop, scrubber.moved(0, Step::Last));
    }
}

/// Two curves over a night from 20:00, with a spread about the first.
fn night(width: f64) -> Figure {
    let curve = |from: f64, fall: f64| {
        let at = |i: u32| f64::from(i) / 60.0;
        let y = move |x: f64| from - fall * x;
        (0..=600)
            .map(move |i| Sample {
                x: at(i),
                y: Some(y(at(i))),
            })
            .collect::<Vec<_>>()
    };
    let spread = curve(100.0, 8.0).into_iter().map(|s| Spread {
        x: s.x,
        low_high: s.y.map(|y| (y - s.x, y + s.x)),
    });
    let series = [
        Series {
            samples: curve(100.0, 8.0),
            spread: spread.collect(),
            label_chars: 6,
            ..Series::default()
        },
        Series {
            samples: curve(100.0, 8.2),
            label_chars: 4,
            ..Series::default()
        },
    ];
    let frame = Frame {
        width,
        height: 220.0,
        x_kind: XKind::Clock {
            start_min: 20.0 * 60.0,
        },
        y_range: YRange::WithZero,
        ..Frame::default()
    };
    figure(frame, &series)
}

#[track_caller]
fn check_usable(drawn: &Figure, least_ticks: usize) {
    assert!(drawn.plot.width() >= 0.6 * drawn.width, "{:?}", drawn.plot);
    assert!(drawn.x_ticks.len() >= least_ticks, "{:?}", drawn.x_ticks);
    // Five characters at 0.6 em and 14 px: 42 px a label.
    assert!(drawn.x_ticks.windows(2).all(|p| p[1].at - p[0].at >= 42.0));
    assert!(drawn.y_ticks.len() >= 3 && drawn.y_ticks.len() <= 6);
    let labels: Vec<_> = drawn
        .curves
        .iter()
        .map(|c| c.label.as_ref().unwrap())
        .collect();
    assert!((labels[0].y - labels[1].y).abs() >= 14.0);
    assert!(!drawn.crowded);
    assert_eq!(drawn.midnights.matches('M').count(), 1);
    // 601 samples over fewer than 301 columns are thinned; a path stays small.
    for curve in &drawn.curves {
        assert!(vertices(&curve.line).len() as f64 <= 2.0 * drawn.plot.width() + 4.0);
    }
    assert!(drawn.curves[0].band.ends_with('Z') && drawn.curves[1].band.is_empty());
}

#[test]
fn usable_on_a_phone_and_on_a_desk() {
    check_usable(&night(320.0), 3);
    check_usable(&night(1200.0), 6);
}

#[test]
fn midnight_lies_four_hours_after_eight_in_the_evening() {
    let drawn = night(320.0);
    let midnight = drawn
        .x_ticks
        .iter()
        .find(|tick| tick.is_midnight())
        .unwrap();
    assert_eq!(midnight.label, TickLabel::Clock { minute: 0, day: 1 });
    assert!((drawn.x.value(midnight.at) - 4.0).abs() < 0.01);
}

#[test]
fn a_gap_lifts_the_pen() {
    let sample = |x: f64, y| Sample { x, y };
    let samples = vec![
        sample(0.0, Some(0.0)),
        sample(1.0, Some(1.0)),
        sample(2.0, None),
        sample(3.0, Some(1.0)),
        sample(4.0, Some(f64::NAN)),
        sample(5.0, Some(0.0)),
    ];
    let drawn = figure(
        Frame::default(),
        &[Series {
            samples,
            ..Series::default()
        }],
    );
    assert_eq!(drawn.curves[0].line.matches('M').count(), 3);
}

#[test]
fn a_line_that_ends_early_is_named_where_it_ends() {
    let line = |until: f64, chars| Series {
        samples: vec![
            Sample {
                x: 0.0,
                y: Some(10.0),
            },
            Sample {
                x: until,
                y: Some(5.0),
            },
        ],
        label_chars: chars,
        ..Series::default()
    };
    // On a phone the long names have no room beside the plot: the early line's
    // starts after its end, the other's ends at the plot's right edge.
    let drawn = figure(Frame::default(), &[line(2.0, 14), line(10.0, 14)]);
    let [early, late] = [0, 1].map(|i| drawn.curves[i].label.clone().unwrap());
    let end_px = drawn.x.px(2.0).unwrap();
    assert!(!early.flush_right && early.x > end_px && early.x < end_px + 10.0);
    assert!(late.flush_right && (late.x - drawn.plot.right).abs() <= 0.05);
    assert!((early.y - late.y).abs() >= 14.0);
}
