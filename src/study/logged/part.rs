//! All fits to one part of a log.

use super::{
    MeterSd,
    bank::BankFit,
    cabin::CabinFit,
    draw::DrawFit,
    factors::{Found, with_slope},
    figures::follows_load,
    ground::Ground,
};
use crate::{
    plan::{Plan, cabin::CabinField, path::Path},
    simulate::day::{DrivenBank, DrivenStep},
    study::{night::fit::TOLD, spread::least::Known},
};

/// Cabin, bank and draw, each by itself: what was measured stands between them.
#[derive(Clone, Debug)]
pub(super) struct PartFit {
    /// Absent without a thermometer.
    pub cabin: Option<CabinFit>,
    /// Absent without a bank.
    pub bank: Option<BankFit>,
    /// Absent where no step has the unit on throughout, and of units that follow the load.
    pub draw: Option<DrawFit>,
}

impl PartFit {
    /// Without a thermometer the bank is taken to stand in a cabin at its set point.
    pub(super) fn new(ground: &Ground, meter: MeterSd) -> Self {
        let steps = ground.bins.all.len();
        let set_c = ground.plan.number(Path::Cabin(CabinField::SetPointC));
        let cabin_c = ground
            .cabin_c
            .clone()
            .unwrap_or(vec![set_c.unwrap_or(25.0); steps]);
        Self {
            cabin: CabinFit::new(ground),
            bank: BankFit::new(ground, cabin_c, meter.charge),
            draw: DrawFit::new(ground, meter.draw).filter(|_| !follows_load(&ground.plan)),
        }
    }

    /// One step of one of them; whether all are done.
    pub(super) fn step(&mut self, ground: &Ground) -> bool {
        self.cabin.as_mut().is_none_or(|fit| fit.step(ground))
            && self.bank.as_mut().is_none_or(|fit| fit.step(ground))
            && self.draw.as_mut().is_none_or(DrawFit::step)
    }

    /// What the three found together.
    pub(super) fn found(&self) -> Found {
        let mut found = Found::default();
        if let Some(fit) = &self.cabin {
            fit.found(&mut found);
        }
        if let Some(fit) = &self.bank {
            fit.found(&mut found);
        }
        if let Some(fit) = &self.draw {
            fit.found(&mut found);
        }
        found
    }

    /// The slope of the draw, where the log narrows it by a good part.
    pub(super) fn slope(&self, ground: &Ground) -> Option<Known> {
        let slope = self.draw.as_ref()?.slope(ground)?;
        (slope.sd < TOLD * super::draw::SLOPE_SD).then_some(slope)
    }

    /// The plan with all that was found in it.
    pub(super) fn taken_into(&self, plan: &Plan, ground: &Ground) -> Plan {
        let taken = self.found().on(plan);
        let sloped = || {
            let (slope, fit) = (self.slope(ground)?, self.draw.as_ref()?);
            let (_, unit, mode) = *plan.mode_rows().iter().find(|(_, unit, mode)| {
                mode.is_some_and(|mode| plan.mode(*unit, mode).is_some())
            })?;
            let pressure_pa = ground.scene.pressure_pa();
            with_slope(&taken, unit, mode?, fit.ends_c, slope.value, pressure_pa)
        };
        sloped().unwrap_or(taken)
    }

    /// Nothing without a thermometer.
    pub(super) fn cabin_misfit(&self) -> Option<f64> {
        self.cabin.as_ref().map(CabinFit::misfit)
    }

    /// The cabin as fitted; nothing without a thermometer.
    pub(super) fn cabin_course(&self, ground: &Ground) -> Option<Vec<DrivenStep>> {
        self.cabin.as_ref()?.course(ground)
    }

    /// The bank as fitted, one for each step.
    pub(super) fn bank_course(&self, ground: &Ground) -> Option<Vec<DrivenBank>> {
        self.bank.as_ref()?.course(ground)
    }
}
