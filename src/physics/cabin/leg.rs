//! One leg of a step: from where the unit is now to its next event, or to the
//! end of the step.

use super::curve::Curve;
use super::exact::{Mode, Phi};
use super::state::{Drive, Switch};
use super::step::{Stepper, Tally};
use super::stores::Network;
use super::thermostat::{HAIR_K, HAIR_W, Kind, Running};

/// Watts into each store from everything but the other store and the unit:
/// at the start of the step, and how they change a second.
#[derive(Debug, Clone, Copy)]
pub(super) struct Push {
    start_w: [f64; 2],
    rate_w_s: [f64; 2],
}

impl Push {
    pub(super) fn over(net: &Network, start: &Drive, end: &Drive, step_s: f64) -> Self {
        let at = |drive: &Drive| {
            [
                net.direct_w_k() * drive.outdoor_c + drive.air_w(),
                net.shell_out_w_k * drive.outdoor_c + drive.sun_shell_w,
            ]
        };
        let (start_w, end_w) = (at(start), at(end));
        Self {
            start_w,
            rate_w_s: [0, 1].map(|i| (end_w[i] - start_w[i]) / step_s),
        }
    }

    fn at(&self, t_s: f64) -> [f64; 2] {
        [0, 1].map(|i| self.start_w[i] + self.rate_w_s[i] * t_s)
    }
}

/// Where a step has got to.
#[derive(Debug, Clone, Copy)]
pub(super) struct Leg {
    pub air_c: f64,
    pub shell_c: f64,
    pub running: Running,
    pub at_s: f64,
    /// Full sensible capacity; `None` while the unit cannot run.
    pub capacity_w: Option<f64>,
}

impl Leg {
    pub(super) fn as_switch(&self) -> Switch {
        Switch {
            at_s: self.at_s,
            air_c: self.air_c,
            now: self.running,
        }
    }
}

/// The earlier of two events, each with what the unit does next.
fn earlier(a: Option<(f64, Running)>, b: Option<(f64, Running)>) -> Option<(f64, Running)> {
    match (a, b) {
        (Some(x), Some(y)) => Some(if y.0 < x.0 { y } else { x }),
        (x, y) => x.or(y),
    }
}

impl Stepper {
    /// Runs one leg. True if it ended in an event, false at the step's end.
    pub(super) fn run_leg(&self, leg: &mut Leg, push: &Push, tally: &mut Tally) -> bool {
        match (leg.running, self.rule.set_c) {
            (Running::Hold, Some(set_c)) => self.held_leg(leg, push, tally, set_c),
            _ => self.free_leg(leg, push, tally),
        }
    }

    /// The air floats; the unit is off or gives a constant flow.
    fn free_leg(&self, leg: &mut Leg, push: &Push, tally: &mut Tally) -> bool {
        let share = match leg.running {
            Running::Off | Running::Starting { .. } => 0.0,
            Running::Floor => self.rule.floor,
            Running::Full | Running::Hold => 1.0,
        };
        let unit_w = share * leg.capacity_w.unwrap_or(0.0);
        let [air_w, shell_w] = push.at(leg.at_s);
        let modes = self.modes.driven(
            leg.air_c,
            leg.shell_c,
            [air_w - unit_w, shell_w],
            push.rate_w_s,
        );
        let left_s = self.step_s - leg.at_s;
        let phi = if leg.at_s == 0.0 {
            self.whole
        } else {
            self.modes.lambda.map(|lambda| Phi::at(lambda * left_s))
        };
        let event = self.free_event(leg, &modes, left_s, &phi);
        let run_s = event.map_or(left_s, |(t, _)| t);
        let phi = match event {
            Some(_) => self.modes.lambda.map(|lambda| Phi::at(lambda * run_s)),
            None => phi,
        };
        let after = [0, 1].map(|i| modes[i].after(run_s, &phi[i]));
        let sums = [0, 1].map(|i| modes[i].integral(run_s, &phi[i]));
        tally.air_c_s += self.modes.air(sums);
        tally.shell_c_s += self.modes.shell(sums);
        tally.unit_j += unit_w * run_s;
        let is_starting = matches!(leg.running, Running::Starting { .. });
        tally.full_s += if is_starting { run_s } else { share * run_s };
        tally.starting_s += if is_starting { run_s } else { 0.0 };
        tally.running_s += if leg.running.is_on() { run_s } else { 0.0 };
        leg.air_c = self.modes.air(after);
        leg.shell_c = self.modes.shell(after);
        leg.at_s += run_s;
        if let (Running::Starting { left_ms }, None) = (leg.running, event) {
            let left_ms = left_ms
                .saturating_sub((1000.0 * run_s).round() as u32)
                .max(1);
            leg.running = Running::Starting { left_ms };
        }
        if let (Some((_, Running::Hold)), Some(set_c)) = (event, self.rule.set_c) {
            // Onto the set point itself; the hair between goes to the unit.
            tally.unit_j += self.net.air_j_k * (leg.air_c - set_c);
            leg.air_c = set_c;
        }
        self.handed_over(leg, event)
    }

    /// The next event while the air floats.
    fn free_event(
        &self,
        leg: &Leg,
        modes: &[Mode; 2],
        left_s: f64,
        phi: &[Phi; 2],
    ) -> Option<(f64, Running)> {
        let rule = &self.rule;
        if let Running::Starting { left_ms } = leg.running {
            let cools_s = 0.001 * f64::from(left_ms);
            return (cools_s < left_s).then_some((cools_s, Running::Full));
        }
        if leg.capacity_w.is_none() || rule.kind != Kind::ByAir {
            return None;
        }
        let crossing = |sign: f64, level_c: f64, next: Running| {
            let curve = Curve {
                modes: *modes,
                weight: self.modes.to_air.map(|part| sign * part),
                base: -sign * level_c,
                slope: 0.0,
            };
            curve.first_rise(left_s, phi).map(|t| (t, next))
        };
        match (leg.running, rule.set_c) {
            (Running::Off, _) => crossing(1.0, rule.on_c, Running::Full),
            (Running::Floor, Some(set_c)) => earlier(
                crossing(-1.0, rule.off_c, Running::Off),
                crossing(1.0, set_c + HAIR_K, Running::Hold),
            ),
            (_, Some(set_c)) => crossing(-1.0, set_c - HAIR_K, Running::Hold),
            (_, None) => crossing(-1.0, rule.off_c, Running::Off),
        }
    }

    /// The air is held; the unit takes exactly what comes in.
    fn held_leg(&self, leg: &mut Leg, push: &Push, tally: &mut Tally, set_c: f64) -> bool {
        let net = &self.net;
        let [air_w, shell_w] = push.at(leg.at_s);
        let [air_w_s, shell_w_s] = push.rate_w_s;
        let shell = Mode {
            y: leg.shell_c,
            lambda: self.held_lambda,
            u: (net.air_shell_w_k * set_c + shell_w) / net.shell_j_k,
            v: shell_w_s / net.shell_j_k,
        };
        let lost_w = (net.direct_w_k() + net.air_shell_w_k) * set_c;
        let left_s = self.step_s - leg.at_s;
        let phi = if leg.at_s == 0.0 {
            self.held_whole
        } else {
            Phi::at(self.held_lambda * left_s)
        };
        let capacity_w = leg.capacity_w.unwrap_or(0.0);
        let load = Curve {
            modes: [shell, Mode::default()],
            weight: [net.air_shell_w_k, 0.0],
            base: air_w - lost_w,
            slope: air_w_s,
        };
        let event = self.held_event(&load, capacity_w, left_s, &phi);
        let run_s = event.map_or(left_s, |(t, _)| t);
        let phi = event.map_or(phi, |_| Phi::at(self.held_lambda * run_s));
        let shell_c_s = shell.integral(run_s, &phi);
        let unit_j =
            net.air_shell_w_k * shell_c_s + run_s * (air_w + 0.5 * air_w_s * run_s - lost_w);
        tally.air_c_s += set_c * run_s;
        tally.shell_c_s += shell_c_s;
        // The hair the air stood off the set point.
        tally.unit_j += unit_j + net.air_j_k * (leg.air_c - set_c);
        tally.running_s += run_s;
        tally.full_s += if capacity_w > 0.0 {
            (unit_j / capacity_w).clamp(0.0, run_s)
        } else {
            run_s
        };
        leg.air_c = set_c;
        leg.shell_c = shell.after(run_s, &phi);
        leg.at_s += run_s;
        self.handed_over(leg, event)
    }

    /// The next event while the air is held: a load beyond what the unit can do.
    fn held_event(
        &self,
        load: &Curve,
        capacity_w: f64,
        left_s: f64,
        phi: &Phi,
    ) -> Option<(f64, Running)> {
        let passes = |sign: f64, level_w: f64, next: Running| {
            let beyond = Curve {
                weight: load.weight.map(|weight| sign * weight),
                base: sign * (load.base - level_w),
                slope: sign * load.slope,
                ..*load
            };
            let t = beyond.first_rise(left_s, &[*phi, Phi::at(0.0)]);
            t.map(|t| (t, next))
        };
        earlier(
            passes(1.0, capacity_w + HAIR_W, Running::Full),
            passes(-1.0, self.rule.floor * capacity_w - HAIR_W, Running::Floor),
        )
    }

    /// Takes the unit over to what an event asks for.
    fn handed_over(&self, leg: &mut Leg, event: Option<(f64, Running)>) -> bool {
        let Some((_, next)) = event else {
            leg.at_s = self.step_s;
            return false;
        };
        leg.running = match (leg.running, next) {
            (Running::Off, Running::Full) if self.start_ms > 0 => Running::Starting {
                left_ms: self.start_ms,
            },
            _ => next,
        };
        leg.at_s < self.step_s
    }
}
