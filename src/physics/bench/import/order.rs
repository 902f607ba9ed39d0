//! Puts rows in the order of their times, or refuses.

use super::refusal::{Fault, Refusal};
use crate::physics::bench::log::{Log, Notes, Sample, Sense};
use crate::quantity::Time;

/// Rows in order of time, not yet a log: signs and watts are still to be seen to.
#[derive(Debug, Clone)]
pub struct Ordered {
    pub(super) samples: Vec<Sample>,
    pub(super) notes: Notes,
    pub(super) gap_after: Option<Time>,
    pub(super) sense: Sense,
    pub(super) last_line: usize,
}

impl Ordered {
    /// The log.
    ///
    /// # Errors
    ///
    /// [`Fault::TooFewRows`].
    pub fn log(self) -> Result<Log, Refusal> {
        let few = Refusal::at(self.last_line, 1, Fault::TooFewRows);
        Log::new(self.samples, self.gap_after, self.sense, self.notes).ok_or(few)
    }
}

/// Sorts by time, drops repeated rows, joins rows of one time.
///
/// # Errors
///
/// [`Fault::TimeOverlaps`] when the file goes back in time and covers a span
/// twice: sorting would weave two runs into one. Rows that merely came late,
/// in blocks or newest first, are sorted. A step back adds at most three
/// changes between its two sides when one row is misplaced; more is a weave.
pub fn put_in_order(
    mut samples: Vec<Sample>,
    headings_again: &[usize],
    time_column: usize,
    notes: &mut Notes,
) -> Result<Vec<Sample>, Refusal> {
    let overlap = |line| Refusal::at(line, time_column + 1, Fault::TimeOverlaps);
    let falls: Vec<usize> = (1..samples.len())
        .filter(|&at| samples[at].time_s < samples[at - 1].time_s)
        .collect();
    notes.newest_first = samples.len() > 2 && falls.len() + 1 == samples.len();
    notes.out_of_order_rows = if notes.newest_first { 0 } else { falls.len() };
    let began_anew = |at: usize| {
        let above = headings_again.partition_point(|&line| line < samples[at].line);
        above > 0 && headings_again[above - 1] > samples[at - 1].line
    };
    let anew = falls.iter().find(|&&at| began_anew(at));
    if let Some(&at) = anew {
        return Err(overlap(samples[at].line));
    }
    if falls.is_empty() {
        drop_repeated(&mut samples, notes);
        return Ok(samples);
    }
    let first_fall = samples[falls[0]].line;
    let mut piece = 0;
    let mut tagged: Vec<(usize, Sample)> = Vec::with_capacity(samples.len());
    for (at, sample) in samples.into_iter().enumerate() {
        piece += usize::from(falls.get(piece) == Some(&at));
        tagged.push((piece, sample));
    }
    // Stable: rows of one time stay in the order of the file.
    tagged.sort_by(|a, b| a.1.time_s.total_cmp(&b.1.time_s));
    tagged.dedup_by(|b, a| {
        is_repeat(&a.1, &b.1) && {
            notes.repeated_rows += 1;
            true
        }
    });
    let changes = tagged.windows(2).filter(|w| w[0].0 != w[1].0).count();
    if !notes.newest_first && changes > 3 * falls.len() {
        return Err(overlap(first_fall));
    }
    let mut samples: Vec<Sample> = tagged.into_iter().map(|(_, sample)| sample).collect();
    drop_repeated(&mut samples, notes);
    Ok(samples)
}

/// The same readings at the same time.
fn is_repeat(a: &Sample, b: &Sample) -> bool {
    a.time_s == b.time_s
        && (a.volts, a.amps, a.watts) == (b.volts, b.amps, b.watts)
        && (a.celsius, a.outdoor_c) == (b.celsius, b.outdoor_c)
}

/// Drops rows that say the same again and averages those that differ at one
/// time, as a clock without seconds gives.
fn drop_repeated(samples: &mut Vec<Sample>, notes: &mut Notes) {
    samples.dedup_by(|b, a| {
        is_repeat(a, b) && {
            notes.repeated_rows += 1;
            true
        }
    });
    if samples.windows(2).all(|w| w[0].time_s < w[1].time_s) {
        return;
    }
    let mut joined: Vec<Sample> = Vec::with_capacity(samples.len());
    for group in samples.chunk_by(|a, b| a.time_s == b.time_s) {
        notes.same_time_rows += group.len() - 1;
        joined.push(average(group));
    }
    *samples = joined;
}

/// One row for several of one time: the mean of what each holds. The first keeps
/// its line, so that a later refusal can name it.
fn average(group: &[Sample]) -> Sample {
    let mean = |part: fn(&Sample) -> Option<f64>| {
        let (sum, count) = group
            .iter()
            .filter_map(part)
            .fold((0.0, 0.0), |(sum, count), x| (sum + x, count + 1.0));
        (count > 0.0).then(|| sum / count)
    };
    Sample {
        volts: mean(|s| s.volts),
        amps: mean(|s| s.amps),
        watts: mean(|s| s.watts),
        celsius: mean(|s| s.celsius),
        outdoor_c: mean(|s| s.outdoor_c),
        ..group[0]
    }
}
