//! What a stretch of time would come to, nothing kept yet.

use super::{
    bank::{BusLoads, Flow},
    outdoors::Air,
    piece::{MOST_CHARGERS, Piece, Sources},
    record::Sink,
    run::Walk,
    state::{Keep, cycles_too_fast, stepper},
    timeline::Slot,
    unit::{OperatingPoint, cabin_air},
};
use crate::physics::cabin::{HeatBook, State, Step, WaterBook};

impl<S: Sink> Walk<'_, S> {
    /// What would happen from `from_h` to `to_h`, within `slot`, nothing kept yet.
    ///
    /// In the order of cause: the weather, what the unit does with the air as it stands, the
    /// cabin, what hangs on the bank, what the sources hold out, and the bank last. Total: a
    /// cabin beyond answering stays as it is, and a load that no current carries leaves
    /// [`Piece::flow`] empty.
    pub(super) fn try_piece(&self, slot: &Slot, from_h: f64, to_h: f64) -> Piece {
        let (start, end) = self.air(slot, from_h, to_h);
        let standing = &self.standing;
        let is_dark = standing.all_off.is_some();
        let rig = slot.rig.filter(|_| !is_dark && standing.unit_off.is_none());
        let doing = rig.and_then(|rig| self.doing(rig, start.outdoor_c));
        let step = self.cabin_step(slot, (from_h, to_h), (&start, &end), rig, doing.as_ref());
        let mut hanging = self.hanging(is_dark, rig, doing.as_ref(), &step, to_h - from_h);
        let sources = self.sources(slot, &start.towards(&end, 0.5), to_h - from_h);
        let bank_c = self.bank_c(step.mean_air_c, 0.5 * (start.outdoor_c + end.outdoor_c));
        hanging.warmth = self.inputs.bank.warmth(bank_c, 0.0);
        let flow = self.flow(&hanging, &sources, bank_c, to_h - from_h);
        Piece {
            from_h,
            to_h,
            rig,
            is_dark,
            step,
            hanging,
            sources,
            bank_c,
            flow,
            end,
        }
    }

    /// Weather at both ends of a stretch.
    /// On the straight line between the edges of the weather's step.
    pub(super) fn air(&self, slot: &Slot, from_h: f64, to_h: f64) -> (Air, Air) {
        let rows = &self.inputs.air;
        let (first, next) = (&rows[slot.step], &rows[slot.step + 1]);
        let share = |at_h: f64| at_h / self.inputs.timeline.step_h - slot.step as f64;
        (
            first.towards(next, share(from_h)),
            first.towards(next, share(to_h)),
        )
    }

    /// What the unit does with the cabin's air as it stands and this weather, held through the
    /// stretch. `rig` is a place among [`Inputs::rigs`]. Nothing where there is no such air.
    pub(super) fn doing(&self, rig: usize, outdoor_c: f64) -> Option<OperatingPoint> {
        let State {
            air_c,
            humidity_ratio,
            ..
        } = self.standing.cabin;
        let entering = cabin_air(self.pressure_pa, air_c, humidity_ratio)?;
        Some(self.inputs.rigs[rig].doing(&entering, outdoor_c))
    }

    /// The cabin over a stretch, by the stepper that was made beforehand where it is a whole
    /// step, else by one made for it.
    ///
    /// A unit that switches faster than is followed ([`cycles_too_fast`]) is taken as a steady
    /// share of its cooling. Where everything is off, appliances give no heat either.
    pub(super) fn cabin_step(
        &self,
        slot: &Slot,
        (from_h, to_h): (f64, f64),
        (start, end): (&Air, &Air),
        rig: Option<usize>,
        doing: Option<&OperatingPoint>,
    ) -> Step {
        let gains_w = if self.standing.all_off.is_some() {
            0.0
        } else {
            self.inputs.gains_w
        };
        let cabin = &self.standing.cabin;
        let people = self.inputs.people(slot, cabin.air_c);
        let (start, end) = (start.drive(people, gains_w), end.drive(people, gains_w));
        let step_h = to_h - from_h;
        let own;
        let keep = match rig {
            Some(rig) => Keep::Cooled(rig),
            None if slot.rig.is_some() => Keep::Closed,
            None => Keep::Aired,
        };
        let share = self.standing.on_share;
        let is_smooth = rig.zip(doing).is_some_and(|(rig, doing)| {
            cycles_too_fast(self.inputs, rig, doing.cooling.sensible_w, share)
        });
        let cooling = doing.map(|doing| doing.cooling);
        // Cycles that are not followed have their starts all the same.
        let smoothed = rig
            .zip(cooling)
            .map(|(rig, cooling)| cooling.times(self.inputs.rigs[rig].kept_smoothed(share)));
        let stepper = match self.steppers.whole(keep, step_h, is_smooth) {
            Some(stepper) => stepper,
            None => {
                own = stepper(self.inputs, keep, step_h, is_smooth);
                match &own {
                    Some(stepper) => stepper,
                    None => return still(cabin),
                }
            }
        };
        stepper
            .step(
                cabin,
                &start,
                &end,
                if is_smooth {
                    smoothed.as_ref()
                } else {
                    cooling.as_ref()
                },
            )
            // A unit far too large for its cabin and band, and not known to be.
            .or_else(|error| {
                self::stepper(self.inputs, keep, step_h, true)
                    .ok_or(error)?
                    .step(cabin, &start, &end, smoothed.as_ref())
            })
            .unwrap_or_else(|_| still(cabin))
    }

    /// What hangs on the bars, the unit by its share of the time at full.
    ///
    /// A modulating unit draws that share all the time; any other draws all of it for that
    /// share, and its off-time's draw for the rest.
    pub(super) fn hanging(
        &self,
        is_dark: bool,
        rig: Option<usize>,
        doing: Option<&OperatingPoint>,
        step: &Step,
        step_h: f64,
    ) -> BusLoads {
        let bus_w = if is_dark { 0.0 } else { self.inputs.bus_w };
        let mut hanging = BusLoads::bus(bus_w);
        if let (Some(rig), Some(doing)) = (rig, doing) {
            let rig = &self.inputs.rigs[rig];
            let share = (step.full_s / (3600.0 * step_h)).clamp(0.0, 1.0);
            if rig.modulating && share > 0.0 {
                hanging.on = doing.on.times(share);
                hanging.share = 1.0;
            } else {
                (hanging.on, hanging.share) = (doing.on, share);
            }
            hanging.off = rig.off();
        }
        hanging
    }

    /// What panels and chargers hold out over a stretch: chargers that the clock has on, less
    /// by the heat around them (they stand in the cabin) and by the fuel that is left.
    pub(super) fn sources(&self, slot: &Slot, air: &Air, step_h: f64) -> Sources {
        let mut chargers = [None; MOST_CHARGERS];
        let cabin_c = self.standing.cabin.air_c;
        let places = chargers.iter_mut().zip(&self.inputs.chargers).enumerate();
        for (at, (place, fuelled)) in places {
            if slot.chargers & (1 << at) == 0 {
                continue;
            }
            let mut charger = fuelled.charger.in_air(cabin_c);
            // Fuel for part of the step is fuel for part of the current.
            if let Some(left_l) = self.standing.fuel_l.get(at).copied().flatten() {
                let by_fuel_a = fuelled.amps_of_fuel(left_l, charger.hold_v, step_h);
                charger.most_a = charger.most_a.min(by_fuel_a);
            }
            *place = Some(charger);
        }
        Sources {
            offer: air.offer,
            controller: self.inputs.controller,
            hold_v: self.inputs.bank.charging.hold_v,
            chargers,
        }
    }

    pub(super) fn bank_c(&self, cabin_c: f64, outdoor_c: f64) -> f64 {
        self.inputs.bank_temperature_c(cabin_c, outdoor_c)
    }

    /// The bank over a stretch; nothing where no current carries what hangs on it.
    pub(super) fn flow(
        &self,
        hanging: &BusLoads,
        sources: &Sources,
        bank_c: f64,
        step_h: f64,
    ) -> Option<Flow> {
        let bank = &self.inputs.bank;
        let own;
        let lasting = match self.steppers.lasting(step_h) {
            Some(lasting) => lasting,
            None => {
                own = bank.lasting(step_h);
                &own
            }
        };
        bank.step(
            self.standing.held,
            hanging,
            |volts| sources.offers(volts),
            bank.may_charge(bank_c),
            lasting,
            self.is_quick,
        )
    }
}

/// A step through which the cabin stays as it is: for figures beyond answering.
fn still(cabin: &State) -> Step {
    Step {
        state: *cabin,
        running_s: 0.0,
        full_s: 0.0,
        starting_s: 0.0,
        mean_air_c: cabin.air_c,
        switches: 0,
        heat: HeatBook::default(),
        water: WaterBook::default(),
    }
}
