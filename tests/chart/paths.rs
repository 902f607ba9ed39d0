//! Thinning, and paths read back.

use proptest::prelude::*;
use till_morning::view::chart::path::Path;
use till_morning::view::chart::series::Shape;
use till_morning::view::chart::thin::{thin, thin_band};

proptest! {
    #[test]
    fn thinning_keeps_extremes_and_ends(ys in prop::collection::vec(-1e3..1e3f64, 1..600), width in 1.0..200.0f64) {
        let n = ys.len() as f64;
        let points: Vec<(f64, f64)> = ys.iter().enumerate().map(|(i, y)| (i as f64 / n * width, *y)).collect();
        let kept = thin(&points);
        let most = |points: &[(f64, f64)]| points.iter().map(|p| p.1).fold(f64::NEG_INFINITY, f64::max);
        let least = |points: &[(f64, f64)]| points.iter().map(|p| p.1).fold(f64::INFINITY, f64::min);
        prop_assert_eq!((most(&kept), least(&kept)), (most(&points), least(&points)));
        prop_assert_eq!((kept.first(), kept.last()), (points.first(), points.last()));
        prop_assert!(kept.windows(2).all(|p| p[0].0 <= p[1].0));
        prop_assert!(kept.iter().all(|p| points.contains(p)));
        prop_assert!(kept.len() as f64 <= 2.0 * (width.floor() + 1.0) + 2.0);
    }

    #[test]
    fn thinned_bands_keep_their_reach(ys in prop::collection::vec((-1e3..0.0f64, 0.0..1e3f64), 1..600)) {
        let points: Vec<_> = ys.iter().enumerate().map(|(i, ends)| (i as f64 / 20.0, *ends)).collect();
        let kept = thin_band(&points);
        let reach = |points: &[(f64, (f64, f64))]| {
            points.iter().fold((0.0f64, 0.0f64), |(low, high), p| (low.min(p.1.0), high.max(p.1.1)))
        };
        prop_assert_eq!(reach(&kept), reach(&points));
        prop_assert_eq!(kept[0].0, points[0].0);
        prop_assert_eq!(kept[kept.len() - 1].0, points[points.len() - 1].0);
    }

    #[test]
    fn paths_read_back_to_a_twentieth_of_a_pixel(points in prop::collection::vec((0.0..2000.0f64, -500.0..2000.0f64), 2..40)) {
        let mut path = Path::default();
        path.run(&points, Shape::Line);
        let read = vertices(&path.finish());
        // Vertices that round onto the one before are dropped; each point must
        // still have a vertex, in order.
        let mut at = 0;
        for point in &points {
            let near = |v: &(f64, f64)| (v.0 - point.0).abs() <= 0.05 + 1e-9 && (v.1 - point.1).abs() <= 0.05 + 1e-9;
            if !near(&read[at]) {
                at += 1;
            }
            prop_assert!(near(&read[at]), "{:?} {:?}", point, read[at]);
        }
        prop_assert_eq!(at, read.len() - 1);
    }
}

#[test]
fn paths_mean_what_another_reader_says() {
    // svgelements 1.9.6: Path(d).length() and .bbox() of the same strings.
    let length = |d: &str| -> f64 {
        vertices(d)
            .windows(2)
            .map(|p| (p[1].0 - p[0].0).hypot(p[1].1 - p[0].1))
            .sum()
    };
    let mut line = Path::default();
    line.run(&[(0.0, 0.0), (1.3, -0.5), (1.3, -7.0)], Shape::Line);
    assert!((length(&line.finish()) - 7.892_838_827_718_412).abs() < 1e-9);
    let mut step = Path::default();
    step.run(&[(0.0, 1.0), (10.0, 5.0), (20.0, 5.0)], Shape::Step);
    assert!((length(&step.finish()) - 24.0).abs() < 1e-9);
    let mut band = Path::default();
    band.area(&[(0.0, (10.0, 4.0)), (8.0, (12.0, 2.0))], Shape::Line);
    assert!((length(&band.finish()) - 32.492_422_502_470_646).abs() < 1e-9);
}

/// Reads a path by the grammar of SVG 2, section 9.3.9 (from memory): commands
/// M L H V h Z, numbers split by a space, a sign or a second point.
pub fn vertices(d: &str) -> Vec<(f64, f64)> {
    let mut out: Vec<(f64, f64)> = Vec::new();
    let commands: Vec<usize> = d
        .char_indices()
        .filter(|(_, c)| c.is_ascii_alphabetic())
        .map(|(i, _)| i)
        .collect();
    for (n, at) in commands.iter().enumerate() {
        let until = commands.get(n + 1).copied().unwrap_or(d.len());
        let args = numbers(&d[at + 1..until]);
        let last = out.last().copied().unwrap_or((0.0, 0.0));
        match (&d[*at..=*at], args.as_slice()) {
            ("M" | "L", [x, y]) => out.push((*x, *y)),
            ("H", [x]) => out.push((*x, last.1)),
            ("V", [y]) => out.push((last.0, *y)),
            ("h", [x]) => out.push((last.0 + x, last.1)),
            ("Z", []) => out.push(out[0]),
            other => panic!("not in the grammar: {other:?} in {d}"),
        }
    }
    out
}

fn numbers(text: &str) -> Vec<f64> {
    text.replace('-', " -")
        .split_whitespace()
        .map(|n| n.parse().expect(n))
        .collect()
}
