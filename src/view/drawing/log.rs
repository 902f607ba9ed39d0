//! A log as a curve.

use crate::{
    physics::bench::log::{Log, WattsFrom},
    view::chart::series::{Sample as Dot, Series},
};

/// Whether the draw is in watts; else it is in amperes.
#[must_use]
pub fn is_in_watts(log: &Log) -> bool {
    log.notes.watts_from != WattsFrom::Nowhere
}

/// The draw along the log for a chart: least and most of so many pieces, so that
/// no peak is lost; gaps stay gaps.
#[must_use]
pub fn drawn(log: &Log, pieces: usize) -> Series {
    let series = log.series(|s| s.watts.or(s.amps));
    let start_s = log.samples.first().map_or(0.0, |s| s.time_s);
    let mut dots = Vec::new();
    for piece in series.pieces().filter(|p| !p.is_empty()) {
        let size = piece.len().div_ceil(pieces.max(1)).max(1);
        for from in piece.clone().step_by(size) {
            let to = (from + size).min(piece.end);
            let hours = |k: usize| (series.t_s[k] - start_s) / 3600.0;
            let dot = |k: usize| Dot {
                x: hours(k),
                y: Some(series.x[k]),
            };
            let by = |a: &usize, b: &usize| series.x[*a].total_cmp(&series.x[*b]);
            let least = (from..to).min_by(by).unwrap_or(from);
            let most = (from..to).max_by(by).unwrap_or(from);
            dots.push(dot(least.min(most)));
            if least != most {
                dots.push(dot(least.max(most)));
            }
        }
        // A sample without a value is a gap in a chart.
        dots.push(Dot {
            x: dots.last().map_or(0.0, |d| d.x),
            y: None,
        });
    }
    Series {
        samples: dots,
        ..Series::default()
    }
}
