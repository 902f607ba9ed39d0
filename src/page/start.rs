//! The numbers to start from: what one battery is, and what the unit draws. They stand on
//! the first screen beside the answer.

use super::{
    field::{Look, NumberField},
    kit::anew,
    locale::{formatter, say},
    state::State,
    taps::Taps,
    units::{feed_at, feed_place},
};
use crate::{
    physics::battery::Chemistry,
    plan::{
        Draw, DrawBasis, Feed, Mode, Plan,
        path::{BankField as B, ModeField as M, Path},
    },
    text::m,
};
use leptos::prelude::*;

/// System voltages that are a tap away; any other is typed.
const SYSTEMS_V: [f64; 3] = [12.0, 24.0, 48.0];

/// The first bank and the mode that is asked about.
#[component]
pub fn Start() -> impl IntoView {
    let state = State::here();
    let asked = move || state.with_plan(|plan| (plan.night.asked_unit, plan.night.asked_mode));
    let draw = |(unit, mode)| view! { <DrawStart unit=unit mode=mode /> }.into_any();
    view! {
        <div class="card start" id="start">
            <BankStart bank=0 />
            <div class="draw-start">{anew(asked, draw)}</div>
        </div>
    }
}

/// Capacity, chemistry and voltage of one battery of a bank.
#[component]
pub fn BankStart(bank: usize) -> impl IntoView {
    view! {
        <NumberField path=Path::Bank(bank, B::BatteryRatedAh) look=Look::Large />
        <ChemistryTaps bank=bank />
        <VoltageTaps bank=bank />
    }
}

/// What may be used of a battery differs nearly twofold between these.
#[component]
fn ChemistryTaps(bank: usize) -> impl IntoView {
    let state = State::here();
    let names = || {
        vec![
            say(m::TapLithium).to_owned(),
            say(m::TapLeadAcid).to_owned(),
        ]
    };
    let chosen = move || {
        state.with_plan(|plan| {
            let bank = plan.banks.get(bank)?;
            Some(usize::from(bank.chemistry.is_lead_acid()))
        })
    };
    let choose = move |place: usize| {
        state.edit(|plan| {
            let Some(bank) = plan.banks.get_mut(bank) else {
                return;
            };
            // The kinds of one family are chosen further down: they stay.
            let is_lead = place == 1;
            if bank.chemistry.is_lead_acid() != is_lead {
                bank.chemistry = if is_lead {
                    Chemistry::Agm
                } else {
                    Chemistry::Lfp
                };
            }
        });
    };
    view! {
        <Taps
            id=format!("chemistry-tap-{bank}")
            is_plain=true
            label=say(m::TapChemistry)
            names=names
            chosen=chosen
            choose=choose
        />
    }
}

/// Nominal volts of one battery: a tap for the usual three, and the field for any.
#[component]
fn VoltageTaps(bank: usize) -> impl IntoView {
    let state = State::here();
    let path = Path::Bank(bank, B::BatteryNominalV);
    let names = || {
        let volts = SYSTEMS_V.map(|volts| formatter().with_unit(volts, "V"));
        volts.to_vec()
    };
    let chosen = move || {
        let stated = state.with_plan(|plan| plan.stated(path))?;
        SYSTEMS_V.iter().position(|&volts| volts == stated.value)
    };
    let choose = move |place: usize| {
        if let Some(&volts) = SYSTEMS_V.get(place) {
            state.change(|draft| draft.choose(path, volts));
        }
    };
    view! {
        <div class="tap-row voltage-start">
            <Taps
                id=format!("voltage-tap-{bank}")
                is_plain=true
                label=say(m::TapVoltage)
                names=names
                chosen=chosen
                choose=choose
            />
            <NumberField path=path look=Look::Bare />
        </div>
    }
}

/// What the unit draws: watts or amps, of what, and on which side.
#[component]
fn DrawStart(unit: usize, mode: usize) -> impl IntoView {
    view! {
        <div class="tap-row amount">
            <NumberField path=Path::Mode(unit, mode, M::PowerW) at="start-" look=Look::Large />
            <UnitTaps unit=unit mode=mode />
        </div>
        <BasisTaps unit=unit mode=mode />
        <SideTaps unit=unit />
        <MainsVoltage unit=unit mode=mode />
    }
}

/// Amps on the AC side are watts only by the voltage there.
#[component]
fn MainsVoltage(unit: usize, mode: usize) -> impl IntoView {
    let state = State::here();
    let is_asked = move || {
        state.with_plan(|plan| {
            let is_ac = plan
                .units
                .get(unit)
                .is_some_and(|unit| matches!(unit.feed, Feed::Inverter { .. }));
            let mode = plan.mode(unit, mode);
            is_ac && mode.is_some_and(|mode| matches!(mode.draw, Draw::Current { .. }))
        })
    };
    let field = move |is_asked: bool| {
        is_asked
            .then(|| {
                view! { <NumberField path=Path::Mode(unit, mode, M::MeasuredAtV) at="start-" /> }
            })
            .into_any()
    };
    view! { <div>{anew(is_asked, field)}</div> }
}

fn mode_mut(plan: &mut Plan, unit: usize, mode: usize) -> Option<&mut Mode> {
    plan.units.get_mut(unit)?.modes.get_mut(mode)
}

/// Watts or amps.
#[component]
fn UnitTaps(unit: usize, mode: usize) -> impl IntoView {
    let state = State::here();
    let chosen = move || {
        state.with_plan(|plan| {
            let mode = plan.mode(unit, mode)?;
            Some(usize::from(matches!(mode.draw, Draw::Current { .. })))
        })
    };
    let choose = move |place: usize| {
        state.change(|draft| draft.draw_in((unit, mode), place == 1));
    };
    view! {
        <Taps
            id=format!("draw-unit-{unit}-{mode}")
            is_plain=true
            label=say(m::TapDrawUnit)
            names=|| vec!["W".to_owned(), "A".to_owned()]
            chosen=chosen
            choose=choose
        />
    }
}

/// While it runs or on average.
#[component]
fn BasisTaps(unit: usize, mode: usize) -> impl IntoView {
    let state = State::here();
    let names = || {
        vec![
            say(m::TapWhileRunning).to_owned(),
            say(m::TapOnAverage).to_owned(),
        ]
    };
    let chosen =
        move || state.with_plan(|plan| Some(usize::from(plan.mode(unit, mode)?.is_average())));
    let choose = move |place: usize| {
        state.edit(|plan| {
            if let Some(mode) = mode_mut(plan, unit, mode) {
                mode.basis = Some(if place == 1 {
                    DrawBasis::OnAverage
                } else {
                    DrawBasis::WhileRunning
                });
            }
        });
    };
    let duty = move |is_average: Option<usize>| {
        (is_average != Some(1))
            .then(|| {
                view! { <NumberField path=Path::Mode(unit, mode, M::DutyPercent) at="start-" /> }
            })
            .into_any()
    };
    view! {
        <div class="tap-row">
            <Taps
                id=format!("draw-basis-{unit}-{mode}")
                is_plain=true
                label=say(m::TapBasis)
                names=names
                chosen=chosen
                choose=choose
            />
            <div class="duty">{anew(chosen, duty)}</div>
        </div>
    }
}

/// On the battery itself, behind a converter, or on AC behind an inverter.
#[component]
fn SideTaps(unit: usize) -> impl IntoView {
    let state = State::here();
    let names = || {
        vec![
            say(m::TapBatterySide).to_owned(),
            say(m::TapConverter).to_owned(),
            say(m::TapAc).to_owned(),
        ]
    };
    let chosen = move || {
        state.with_plan(|plan| Some(feed_place(plan.units.get(unit).map(|unit| unit.feed))))
    };
    let choose = move |place: usize| {
        if untrack(chosen) != Some(place) {
            state.change(|draft| draft.feed(unit, feed_at(place)));
        }
    };
    view! {
        <Taps
            id=format!("feed-tap-{unit}")
            label=say(m::TapSide)
            names=names
            chosen=chosen
            choose=choose
        />
    }
}
