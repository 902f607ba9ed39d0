//! A bank that was measured: the model is made to give the same run back.
//!
//! Measured Ah set the capacity, measured Wh the level of the voltage: Wh over
//! Ah is the mean terminal voltage of that run, sag included, and the chemistry's
//! curve is moved up or down until its own run has the same mean. Measured
//! figures replace rated Ah and health; they never multiply them.

use super::{
    assemble::Assembled,
    job::{Job, Limits},
    steady::run_down,
};
use crate::{
    physics::battery::{Capacity, Pack},
    physics::circuit::Branch,
    plan::finding::{Finding, Matter},
    plan::{
        Measured,
        path::{BankField, Path},
    },
    search::{Search, search},
};

/// How far the curve may be moved, as a share of the nominal voltage. Beyond
/// that the numbers are not of this bank.
const MOST_SHIFT: f64 = 0.08;
/// How well the run found must have the measured mean, as a share of it.
const SAME: f64 = 1e-7;

/// The pack whose own run at the measured load gives the measured figures.
///
/// The run is taken from full until the battery's own cut-off or empty.
///
/// - `rated`: the bank by its label; what was not measured stays
/// - `nominal_v`: of the whole bank, for the load where none is stated
/// - `index`: the bank's place, for the findings
///
/// With Ah alone or Wh alone the curve stays where it is. Where no shift within 8 % of
/// the nominal voltage gives both, the Ah are kept and a caution says so. Nothing where
/// neither was measured.
pub fn calibrated(
    rated: Pack,
    measured: &Measured,
    nominal_v: f64,
    index: usize,
) -> Option<Assembled> {
    let mut findings = Vec::new();
    let ah = measured.measured_ah.map(|figure| figure.value);
    let wh = measured.measured_wh.map(|figure| figure.value);
    let load_w = measured
        .load_w
        .map(|figure| figure.value)
        .unwrap_or_else(|| {
            let load_w = rated.capacity.rated_a * nominal_v;
            let path = Some(Path::Bank(index, BankField::MeasuredLoadW));
            findings.push(Finding::note(path, Matter::MeasuredLoadTaken { load_w }));
            load_w
        });
    let shift_v = match (ah, wh) {
        (Some(ah), Some(wh)) => {
            let most_v = MOST_SHIFT * nominal_v;
            let mean_of = |shift_v: f64| bench_run(&rated, load_w, shift_v).mean_v;
            match search(mean_of, -most_v, most_v, wh / ah) {
                // A jump over the mean (a run that only just starts) is no match.
                Search::Found(shift_v) if (mean_of(shift_v) * ah / wh - 1.0).abs() < SAME => {
                    shift_v
                }
                _ => {
                    findings.push(implausible(index, wh / ah, mean_of(0.0)));
                    0.0
                }
            }
        }
        _ => 0.0,
    };
    let run = bench_run(&rated, load_w, shift_v);
    // The run of a bank of one Ah: the capacity is what makes it the measured one.
    let whole_ah = match (ah, wh) {
        (Some(ah), _) => ah / run.ah,
        (None, Some(wh)) => wh / (run.ah * run.mean_v),
        (None, None) => return None,
    };
    if !whole_ah.is_finite() || whole_ah <= 0.0 {
        return unlike_any_run(rated, (ah, wh), nominal_v, index, findings);
    }
    let capacity = Capacity {
        ah: whole_ah,
        ..rated.capacity
    };
    let pack = Pack {
        capacity,
        empty_charge: run.end_charge,
        ..shifted(&rated, shift_v)
    };
    Some(Assembled { pack, findings })
}

/// For a bank that does not even start under its measured load: what was measured
/// is taken for what it holds, without the shape of a run, and that is said.
fn unlike_any_run(
    rated: Pack,
    (ah, wh): (Option<f64>, Option<f64>),
    nominal_v: f64,
    index: usize,
    mut findings: Vec<Finding>,
) -> Option<Assembled> {
    let ah = ah.or(wh.map(|wh| wh / nominal_v))?;
    let mean_v = wh.map_or(nominal_v, |wh| wh / ah);
    // Said once, and not with the zero volts of a run that is none.
    findings.retain(|finding| !matches!(finding.matter, Matter::MeasuredImplausible { .. }));
    findings.push(implausible(
        index,
        mean_v,
        rated.curve.mean_between(0.0, 1.0),
    ));
    let capacity = Capacity {
        ah,
        ..rated.capacity
    };
    let pack = Pack { capacity, ..rated };
    Some(Assembled { pack, findings })
}

fn implausible(index: usize, mean_v: f64, expected_v: f64) -> Finding {
    let path = Some(Path::Bank(index, BankField::MeasuredWh));
    Finding::caution(path, Matter::MeasuredImplausible { mean_v, expected_v })
}

/// The measured run on a bank of one Ah.
struct BenchRun {
    /// Given until the cut-off, of the one Ah there is: 0 where the load cannot even start.
    ah: f64,
    /// Mean volts at the terminals, by charge; 0 where it gave none.
    mean_v: f64,
    /// Charge of the cells at its end, 0 to 1: what the cut-off left in them.
    end_charge: f64,
}

/// One Ah instead of the real one, because the shape of a run at a fixed load over a
/// fixed rated current changes with neither: it is scaled afterwards.
fn bench_run(rated: &Pack, load_w: f64, shift_v: f64) -> BenchRun {
    let pack = Pack {
        capacity: Capacity {
            ah: 1.0,
            ..rated.capacity
        },
        empty_charge: 0.0,
        // A limit on the label did not stop the run that was measured.
        limit_a: None,
        parasitic_w: 0.0,
        ..shifted(rated, shift_v)
    };
    let load = [Branch::power(0.0, 0.0), Branch::power(load_w, 0.0)];
    let job = Job {
        on: load,
        off: load,
        duty: 1.0,
        limits: Limits::default(),
    };
    let run = run_down(&pack, &job, 1.0, 0.0);
    let mean_v = if run.ah > 0.0 { run.wh / run.ah } else { 0.0 };
    let end_charge = run.knots.last().map_or(0.0, |knot| knot.held);
    BenchRun {
        ah: run.ah,
        mean_v,
        end_charge,
    }
}

/// The curve moved by so many volts of the whole bank.
fn shifted(rated: &Pack, shift_v: f64) -> Pack {
    Pack {
        curve: rated.curve.scaled(1.0, shift_v),
        ..rated.clone()
    }
}
