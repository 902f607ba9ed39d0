//! One stretch of a run: what happened in it, and how it is booked.

use super::{
    bank::Flow,
    bus_loads::BusLoads,
    inputs::{Fuelled, Inputs},
    outdoors::Air,
    record::{DayPoint, ModeAt},
    source_currents::SourceCurrents,
    state::EnergyBalance,
    timeline::Slot,
};
use crate::{
    physics::cabin::{Drive, Gains, Step, gains},
    physics::solar::{Offer, charger::Charger, controller::Controller},
    plan::supply::BankPlace,
    quantity::{
        celsius, in_amps, in_kilograms_per_second, in_watts, kilograms_per_second, volts, watts,
    },
    simulate::Stop,
};

/// Chargers followed; the plan's check allows no more.
pub(super) const MOST_CHARGERS: usize = crate::plan::check::MOST_CHARGERS;

/// A stretch that was tried.
pub(super) struct Piece {
    /// Hours from the plan's start.
    pub from_h: f64,
    /// Its end, as far as the slot goes at most.
    pub to_h: f64,
    /// The mode that is on, a place among the inputs' modes; none where it is off or stopped.
    pub rig: Option<usize>,
    /// Everything is off.
    pub is_dark: bool,
    /// What the cabin did.
    pub step: Step,
    /// What hung on the bank.
    pub hanging: BusLoads,
    /// What could have come in.
    pub sources: Sources,
    /// The bank's temperature, held through the piece.
    pub bank_c: f64,
    /// Nothing where no current carries it.
    pub flow: Option<Flow>,
    /// Weather at its end.
    pub end: Air,
}

/// What panels and chargers hold out.
#[derive(Clone, Copy, Debug)]
pub(super) struct Sources {
    /// Of the panels, in the middle of the piece.
    pub offer: Offer,
    /// Absent without panels.
    pub controller: Option<Controller>,
    /// Volts that the controller holds at the end of charging.
    pub hold_v: f64,
    /// As warm as they are, with the fuel that is left; those that are off give none.
    pub chargers: [Option<Charger>; MOST_CHARGERS],
}

/// What was taken of it, means over the stretch.
pub(super) struct Split {
    /// From the panels, past the controller.
    pub solar_w: f64,
    /// What the panels offered besides and nothing took.
    pub spilled_w: f64,
    /// From all chargers together.
    pub charger_w: f64,
    /// From each charger, in the plan's order.
    pub charger_a: [f64; MOST_CHARGERS],
}

impl Sources {
    /// The panels' amps past the controller at bars of so many volts; 0 without any.
    fn solar_a(&self, bar_v: f64) -> f64 {
        self.controller.map_or(0.0, |controller| {
            in_amps(controller.current(&self.offer, volts(bar_v)))
        })
    }

    /// All of it at bars of so many volts.
    pub(super) fn offers(&self, bar_v: f64) -> SourceCurrents {
        let of = |charger: Charger| (charger.hold_v, charger.most_a_at(bar_v));
        let chargers = self.chargers.map(|one| one.map_or((0.0, 0.0), of));
        SourceCurrents::new((self.hold_v, self.solar_a(bar_v)), chargers)
    }

    /// Amps of all sources together at bars of so many volts, before any stands back.
    pub(super) fn offered_a(&self, bar_v: f64) -> f64 {
        self.offers(bar_v).above_a(f64::NEG_INFINITY)
    }

    /// Who gave how much of what was taken.
    ///
    /// Without a charger on, all that was taken is the panels', to the last digit.
    pub(super) fn split(&self, flow: &Flow) -> Split {
        let offered_a = self.solar_a(flow.bar_v);
        let is_alone = self.chargers.iter().flatten().all(|one| one.most_a <= 0.0);
        let given = self.offers(flow.bar_v).split(flow.source_a);
        let solar_a = if is_alone { flow.source_a } else { given[0] };
        let mut charger_a = [0.0; MOST_CHARGERS];
        charger_a.copy_from_slice(&given[1..]);
        let solar_w = flow.bar_v * solar_a;
        Split {
            solar_w,
            spilled_w: flow.bar_v * (offered_a - solar_a).max(0.0),
            // What is left over is rounding, so that the parts make the whole.
            charger_w: flow.source_w - solar_w,
            charger_a,
        }
    }
}

impl Fuelled {
    /// Fuel for a current into bars of so many volts over a time, litres.
    pub(super) fn litres(&self, amps: f64, bar_v: f64, step_h: f64) -> f64 {
        self.charger.taken_wh(amps * bar_v * step_h) / 1000.0 * self.fuel_l_per_kwh
    }

    /// The current that so much fuel carries through a time; without end where none is burnt.
    pub(super) fn amps_of_fuel(&self, left_l: f64, bar_v: f64, step_h: f64) -> f64 {
        let by_amp_l = self.litres(1.0, bar_v, step_h);
        if by_amp_l > 0.0 {
            left_l / by_amp_l
        } else {
            f64::INFINITY
        }
    }
}

impl Air {
    /// What acts on the cabin, with people and other heat in it.
    pub(super) fn drive(&self, people: Gains, gains_w: f64) -> Drive {
        Drive {
            outdoor_c: self.outdoor_c,
            outdoor_ratio: self.outdoor_ratio,
            sun_glass_w: self.sun_glass_w,
            sun_shell_w: self.sun_shell_w,
            people_w: in_watts(people.sensible),
            people_kg_s: in_kilograms_per_second(people.water),
            gains_w,
        }
    }
}

impl Inputs {
    /// Heat and water of everyone aboard in a slot, by the air they are in; nothing from
    /// those who are away.
    pub(super) fn people(&self, slot: &Slot, air_c: f64) -> Gains {
        let aboard = match (slot.is_aboard, slot.is_asleep) {
            (false, _) => &[][..],
            (true, true) => &self.asleep[..],
            (true, false) => &self.awake[..],
        };
        gains(aboard, celsius(air_c.clamp(-50.0, 100.0))).unwrap_or(Gains {
            sensible: watts(0.0),
            latent: watts(0.0),
            water: kilograms_per_second(0.0),
        })
    }

    /// How warm the bank is, by where it stands.
    ///
    /// Celsius: the stated one where there is one; else in the cabin its air's, outside that
    /// of outdoors, and in a locker midway (ours).
    #[must_use]
    pub fn bank_temperature_c(&self, cabin_c: f64, outdoor_c: f64) -> f64 {
        self.bank_c.unwrap_or(match self.bank_place {
            BankPlace::Cabin => cabin_c,
            BankPlace::Locker => 0.5 * (cabin_c + outdoor_c),
            BankPlace::Outside => outdoor_c,
        })
    }

    /// Whether a stop stands at any charge, or already at the piece's start.
    pub(super) fn stops_at_once(&self, piece: &Piece, stop: Stop) -> bool {
        piece.flow.is_none()
            || matches!(
                stop,
                Stop::InverterLimit { .. } | Stop::ConverterLimit { .. }
            )
    }
}

impl EnergyBalance {
    /// Books a piece: into the whole, and into the day in which it starts.
    pub(super) fn enter(&mut self, inputs: &Inputs, piece: &Piece, flow: &Flow, split: &Split) {
        let step_h = piece.to_h - piece.from_h;
        let energy = &mut self.energy;
        energy.solar_wh += split.solar_w * step_h;
        energy.spilled_wh += split.spilled_w * step_h;
        energy.charger_wh += split.charger_w * step_h;
        energy.loads_wh += flow.bus_w * step_h;
        energy.unit_wh += flow.unit_w * step_h;
        energy.lost_wh += flow.lost_w * step_h;
        energy.from_store_wh += flow.store_w * step_h;
        energy.from_store_ah += flow.store_a * step_h;
        self.heat.add(&piece.step.heat);
        self.water.add(&piece.step.water);
        let share = inputs.bank.store.soc(flow.held);
        self.least_share = self.least_share.min(share);
        let Some(day) = self.day(piece.from_h) else {
            return;
        };
        day.solar_wh += split.solar_w * step_h;
        day.charger_wh += split.charger_w * step_h;
        day.loads_wh += flow.bus_w * step_h;
        day.unit_wh += flow.unit_w * step_h;
        day.end_charge_percent = 100.0 * share;
        day.least_charge_percent = day.least_charge_percent.min(100.0 * share);
        if piece.is_dark {
            day.dark_h += step_h;
        }
    }

    /// How warm it was, by a mean up to an hour, while it was to be cool.
    pub(super) fn due(&mut self, to_h: f64, mean_c: f64) {
        if to_h <= self.wanted_h + 1e-9 {
            self.warmest_c = self.warmest_c.max(mean_c);
        }
    }

    /// How warm it was while a mode was planned, and how long too warm.
    /// By the day in which the piece starts.
    pub(super) fn warmth(&mut self, piece: &Piece, is_lost: bool, is_planned: bool) {
        let mean_c = piece.step.mean_air_c;
        if let Some(day) = self.day(piece.from_h) {
            if is_planned {
                day.warmest_c = day.warmest_c.max(mean_c);
                if piece.rig.is_none() && !piece.is_dark {
                    day.unit_off_h += piece.to_h - piece.from_h;
                }
            }
            if is_lost {
                day.lost_h += piece.to_h - piece.from_h;
            }
        }
    }

    /// The day, from 0 on, in which an hour lies; nothing beyond the last.
    fn day(&mut self, at_h: f64) -> Option<&mut super::record::DaySum> {
        self.days.get_mut((at_h / 24.0) as usize)
    }
}

impl DayPoint {
    /// Everything at 0: what the first point of a run starts from.
    pub(super) const DARK: Self = Self {
        hours_h: 0.0,
        charge_percent: 0.0,
        terminal_v: 0.0,
        bank_a: 0.0,
        cabin_c: 0.0,
        outdoor_c: 0.0,
        humidity_percent: 0.0,
        solar_w: 0.0,
        charger_w: 0.0,
        loads_w: 0.0,
        unit_w: 0.0,
        cooling_w: 0.0,
        global_w_m2: 0.0,
        mode: None,
    };
}

impl Piece {
    /// The piece as a point of the curves, at its end. The humidity is left to the caller.
    pub(super) fn point(
        &self,
        inputs: &Inputs,
        flow: &Flow,
        split: &Split,
        mode: Option<ModeAt>,
    ) -> DayPoint {
        DayPoint {
            hours_h: self.to_h,
            charge_percent: 100.0 * inputs.bank.store.soc(flow.held),
            terminal_v: flow.bar_v,
            bank_a: flow.bank_a,
            cabin_c: self.step.mean_air_c,
            outdoor_c: self.end.outdoor_c,
            humidity_percent: 0.0,
            solar_w: split.solar_w,
            charger_w: split.charger_w,
            loads_w: flow.bus_w,
            unit_w: flow.unit_w,
            cooling_w: self.step.heat.unit_j / (3600.0 * (self.to_h - self.from_h)),
            global_w_m2: self.end.global_w_m2,
            mode,
        }
    }
}
