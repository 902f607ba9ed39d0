//! Series that stand on one another.

use super::series::{Sample, Series, Spread};

/// Stacks series upon a base line at zero: each becomes its own top, with the
/// layer down to the one below as its spread.
///
/// Samples must be at the same places in all of them (a trace's are); a gap in
/// one counts as nothing there. Values below zero stack downward from the base,
/// so what goes in and what goes out may share a chart.
///
/// ```
/// use till_morning::view::chart::{series::{Sample, Series}, stack::stacked};
/// let series = |y: f64| Series { samples: vec![Sample { x: 0.0, y: Some(y) }], ..Series::default() };
/// let layers = stacked(&[series(2.0), series(3.0), series(-1.0)]);
/// let tops: Vec<_> = layers.iter().map(|layer| layer.samples[0].y).collect();
/// assert_eq!(tops, [Some(2.0), Some(5.0), Some(-1.0)]);
/// assert_eq!(layers[1].spread[0].low_high, Some((2.0, 5.0)));
/// ```
#[must_use]
pub fn stacked(series: &[Series]) -> Vec<Series> {
    let places = series.iter().map(|s| s.samples.len()).max().unwrap_or(0);
    let (mut above, mut below) = (vec![0.0; places], vec![0.0; places]);
    series
        .iter()
        .map(|layer| {
            // A layer goes to one side as a whole: its edge must not jump.
            let down = layer.samples.iter().any(|s| s.y.is_some_and(|y| y < 0.0));
            let base = if down { &mut below } else { &mut above };
            let ends: Vec<(f64, f64, f64)> = layer
                .samples
                .iter()
                .zip(base.iter_mut())
                .map(|(sample, base)| {
                    let from = *base;
                    *base += sample.y.unwrap_or(0.0);
                    (sample.x, from, *base)
                })
                .collect();
            Series {
                samples: ends
                    .iter()
                    .map(|&(x, _, top)| Sample { x, y: Some(top) })
                    .collect(),
                spread: ends
                    .iter()
                    .map(|&(x, from, to)| Spread {
                        x,
                        low_high: Some((from, to)),
                    })
                    .collect(),
                shape: layer.shape,
                label_chars: layer.label_chars,
            }
        })
        .collect()
}
