//! What a log says, in numbers for a page: totals, the run's end, stretches,
//! and the way of both into the plan.
//!
//! A log is too big for a plan, so this is no part of [`super::answer`]: the
//! page asks for it while a log is open. All of it is [`crate::physics::bench`]'s work.

mod into_plan;
mod invented;
mod meter;
mod night;
mod notes;
mod report;
mod stretch;

/// What reads a file, for a page that may not know the rooms behind an answer.
pub use crate::physics::bench::{
    import::{
        Column, Given, Importer, MOST_BYTES, Options, Ordered, Progress, Refusal, Role, Unit,
        headings,
    },
    log::Log,
};
pub use crate::study::logged::{
    Ahead, AheadPoint, Fitted, FittedFigure, FittedNight, LEAST_H, LoggedNight, LoggedNightWork,
    MOST_H, Miss, Untold, Used,
};
pub use into_plan::{to_bank, to_claims, to_mode};
pub use invented::{invented, invented_night};
pub use meter::LogMeter;
pub use night::night;
pub use notes::{NoNumber, Note, NoteField, NoteFigures, noted};
pub use report::{End, LogReport, Means, Summing, Sums, report, rested, resting_offset_a};
pub use stretch::{SHORTEST_MIN, StretchFigures, coarser, cut_in_two, found, move_edge, stretch};

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{
        physics::bench::{import::read_all, run_end::Cause},
        plan::Plan,
    };

    fn log() -> Log {
        let (log, _) = read_all(invented().as_bytes(), Options::default()).unwrap();
        log
    }

    fn reported(log: &Log, offset_a: f64) -> LogReport {
        let rested = rested(log, offset_a);
        let log = rested.as_ref().unwrap_or(log);
        report(
            &Summing::new(log).finish(log),
            offset_a,
            LogMeter::default(),
        )
    }

    #[test]
    fn the_invented_log_is_read_whole() {
        let log = log();
        let offset = resting_offset_a(&log).unwrap();
        assert!((offset - 0.1).abs() < 0.005, "{offset}");
        let report = reported(&log, offset);
        assert_eq!(report.gaps_h.len(), 1);
        let end = report.end.unwrap();
        assert_eq!(end.cause, Cause::BatteryCutOff, "{end:?}");
        let (wh, expanded) = report.wh.unwrap();
        assert!(
            (4500.0..5400.0).contains(&wh) && expanded.unwrap() > 0.0,
            "{wh}"
        );
        // A tenth of an ampere over the hours covered.
        assert!((report.offset_ah - offset * report.covered_h).abs() < 0.02);
    }

    #[test]
    fn its_stretches_are_the_modes_that_were_run() {
        let log = log();
        let log = log.less_amps(0.1);
        let edges = found(&log, 2.0);
        let watts: Vec<f64> = edges
            .iter()
            .filter_map(|&edge| stretch(&log, edge, LogMeter::default()))
            .map(|s| s.draw)
            .collect();
        for want in [690.0, 430.0, 265.0] {
            assert!(
                watts.iter().any(|w| (w / want - 1.0).abs() < 0.02),
                "{watts:?}"
            );
        }
        let mut plan = Plan::demo();
        let first = stretch(&log, edges[0], LogMeter::default()).unwrap();
        assert!(to_mode(&mut plan, 0, 0, &first));
        assert!(!to_mode(&mut plan, 0, 9, &first));
        let report = reported(&log, 0.0);
        assert!(to_bank(&mut plan, 0, &report));
        to_claims(&mut plan, 0, &report, "");
        assert_eq!((plan.claims.len(), plan.errors()), (2, Vec::new()));
        // What the gap may hold stands in the spread: a verdict must survive it.
        let (ah, expanded) = report.ah.unwrap();
        let spread = plan.claims[0].measured_ah.unwrap().spread_percent.unwrap();
        let want = 100.0 * (expanded.unwrap() + report.gap_ah.1) / ah;
        assert!((spread / want - 1.0).abs() < 1e-3, "{spread} {want}");
    }

    #[test]
    fn a_log_of_amps_alone_gives_a_draw_in_amps() {
        let rows: Vec<String> = (0..60).map(|k| format!("{k},{}", 16 + k % 2)).collect();
        let text = format!("elapsed min,draw A\n{}\n", rows.join("\n"));
        let (log, _) = read_all(text.as_bytes(), Options::default()).unwrap();
        let figures = stretch(&log, (0.0, 1.0), LogMeter::default()).unwrap();
        assert!(figures.is_amps && figures.volts.is_none());
        assert!((figures.draw - 16.5).abs() < 1e-9, "{figures:?}");
        let mut plan = Plan::demo();
        assert!(to_mode(&mut plan, 0, 0, &figures));
        assert_eq!(plan.errors(), Vec::new());
        let draw = plan.units[0].modes[0].draw;
        assert!(matches!(draw, crate::plan::Draw::Current { .. }));
    }

    #[test]
    fn a_cycling_compressor_is_one_stretch() {
        // Ten minutes on at 30 A, five off at 0.5 A, ten hours long: by hand a mean
        // of 20 1/6 A.
        let amps = |k: usize| if k % 15 < 10 { 30.0 } else { 0.5 };
        let rows: Vec<String> = (0..=600).map(|k| format!("{k},26,{}", amps(k))).collect();
        let text = format!("elapsed min,bank V,draw A\n{}\n", rows.join("\n"));
        let (log, _) = read_all(text.as_bytes(), Options::default()).unwrap();
        let mut shortest = SHORTEST_MIN[0];
        while let Some(longer) = coarser(found(&log, shortest).len(), shortest) {
            shortest = longer;
        }
        let edges = found(&log, shortest);
        assert!((1..=3).contains(&edges.len()), "{edges:?} at {shortest}");
        let whole = stretch(&log, (0.0, 10.0), LogMeter::default()).unwrap();
        assert!((whole.amps.unwrap() / (20.0 + 1.0 / 6.0) - 1.0).abs() < 0.01);
    }

    #[test]
    fn a_stretch_is_cut_in_its_middle() {
        let mut edges = vec![(0.0, 1.0), (2.0, 4.0)];
        cut_in_two(&mut edges, 1);
        assert_eq!(edges, [(0.0, 1.0), (2.0, 3.0), (3.0, 4.0)]);
    }

    #[test]
    fn edges_keep_their_order() {
        let mut edges = vec![(0.0, 1.0), (2.0, 3.0)];
        move_edge(&mut edges, 0, true, 9.0, 4.0);
        move_edge(&mut edges, 1, false, -1.0, 4.0);
        move_edge(&mut edges, 1, true, 99.0, 4.0);
        assert_eq!(edges, [(0.0, 2.0), (2.0, 4.0)]);
        move_edge(&mut edges, 0, false, 5.0, 4.0);
        assert!(edges[0].0 < edges[0].1);
    }
}
