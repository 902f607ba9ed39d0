//! What a reader says of the wiring: every number may be left to its default.

use crate::page::locale::formatter;
use crate::page::locale::say;
use crate::text::m;
use crate::{
    page::{
        choose::{Chosen, OpenChoice},
        field::{Choice, NumberField, Tick},
        kit::{Fold, anew},
        state::State,
    },
    plan::{
        Path,
        part::Choice as _,
        wiring::{
            Circuit, FuseKind, InstallationField, Place, Strands, TakeOff, Wiring, WiringField as W,
        },
    },
    text::wiring::{self as say},
};
use leptos::prelude::*;

const PLACE: Chosen<Place> = Chosen {
    label: |f| f.say(m::WiringWhere),
    name: say::place_name,
    assumed: Place::Vehicle,
};
const TAKE_OFF: Chosen<TakeOff> = Chosen {
    label: |f| f.say(m::WiringTakeOff),
    name: say::take_off_name,
    assumed: TakeOff::SameEnd,
};
const STRANDS: Chosen<Strands> = Chosen {
    label: |f| f.say(m::WiringStrands),
    name: say::strands_name,
    assumed: Strands::Fine,
};

/// The cables, circuit by circuit.
#[component]
pub fn Cables() -> impl IntoView {
    let circuits = || {
        let circuits = Circuit::ALL
            .iter()
            .map(|&circuit| view! { <CircuitCard circuit=circuit /> });
        circuits.collect_view()
    };
    view! {
        <Fold title=|| say(m::WiringFields)>
            <div class="grid">
                <OpenChoice
                    id="wiring-place"
                    chosen=PLACE
                    place=|plan| Some(&mut plan.wiring.place)
                />
            </div>
            {circuits()}
        </Fold>
    }
}

const BANK_LIMITS: [W; 11] = [
    W::StartA,
    W::StartMs,
    W::InverterPeakW,
    W::BatteryPeakA,
    W::BatteryPeakMs,
    W::BatteryChargeA,
    W::ChargeLeastC,
    W::BatteryFaultA,
    W::LinkMohm,
    W::MostSeriesCount,
    W::ColdestC,
];

/// What the batteries bear, and how they stand together.
#[component]
pub fn BankLimits() -> impl IntoView {
    let field = |field| view! { <NumberField path=Path::Wiring(field) /> };
    let fields = move || BANK_LIMITS.map(field).collect_view();
    view! {
        <Fold title=|| say(m::WiringBankLimits)>
            <div class="grid">
                <OpenChoice
                    id="wiring-take-off"
                    chosen=TAKE_OFF
                    place=|plan| Some(&mut plan.wiring.take_off)
                />
                <FuseKindChoice id="wiring-fuse-kind" />
            </div>
            <div class="grid">{fields()}</div>
            <Flag
                id="wiring-mixed"
                label=say(m::WiringMixed)
                place=|wiring| &mut wiring.mixed_batteries
            />
        </Fold>
    }
}

/// One circuit: length and conductor, and behind a fold how it lies.
#[component]
fn CircuitCard(circuit: Circuit) -> impl IntoView {
    let state = State::here();
    let run = move |unit: usize| {
        let fields = circuit.run_paths(unit).into_iter();
        let field = |path| view! { <NumberField path=path at="carry" /> };
        fields.map(field).collect_view().into_any()
    };
    let unit = move || state.with_plan(|plan| plan.night.asked_unit);
    view! {
        <fieldset class="card">
            <legend>{say::circuit_name(formatter(), circuit)}</legend>
            <div class="grid">{anew(unit, run)}</div>
            <Fold class="fold small" title=|| say(m::WiringLaid)>
                <CableInstallation circuit=circuit />
            </Fold>
        </fieldset>
    }
}

#[component]
fn CableInstallation(circuit: Circuit) -> impl IntoView {
    let fields = InstallationField::ALL.iter();
    let fields =
        fields.map(|&field| view! { <NumberField path=Path::Installation(circuit, field) /> });
    let id = |what: &str| format!("{}-{what}", circuit.key());
    view! {
        <div class="grid">{fields.collect_view()}</div>
        <div class="grid">
            <OpenChoice
                id=id("strands")
                chosen=STRANDS
                place=move |plan| Some(&mut plan.wiring.installation_mut(circuit).strands)
            />
        </div>
        <Flag
            id=id("engine")
            label=say(m::WiringEngineSpace)
            place=move |wiring| &mut wiring.installation_mut(circuit).engine_space
        />
        <Flag
            id=id("enclosed")
            label=say(m::WiringEnclosed)
            place=move |wiring| &mut wiring.installation_mut(circuit).enclosed
        />
    }
}

/// The kind of fuse; it may be left open.
#[component]
pub fn FuseKindChoice(id: &'static str) -> impl IntoView {
    let state = State::here();
    let names = || {
        let all = FuseKind::ALL
            .iter()
            .map(|&one| say::fuse_kind_name(formatter(), one));
        let all = std::iter::once(say(m::WiringNotEntered)).chain(all);
        all.map(str::to_owned).collect()
    };
    let chosen = move || {
        let kind = state.with_plan(|plan| plan.wiring.fuse_kind);
        let place = |kind| FuseKind::ALL.iter().position(|&other| other == kind);
        kind.and_then(place).map_or(0, |place| place + 1)
    };
    let choose = move |index: usize| {
        let kind = index.checked_sub(1).and_then(|at| FuseKind::ALL.get(at));
        state.edit(|plan| plan.wiring.fuse_kind = kind.copied());
    };
    view! {
        <Choice
            id=id
            label=say(m::WiringFuseKind)
            names=names
            chosen=chosen
            choose=choose
        />
    }
}

/// A box to tick.
#[component]
fn Flag(
    #[prop(into)] id: String,
    label: &'static str,
    place: impl Fn(&mut Wiring) -> &mut bool + Copy + Send + Sync + 'static,
) -> impl IntoView {
    let state = State::here();
    // Read through the lens that writes: a copy is cheap beside an answer.
    let on = move || state.with_plan(|plan| *place(&mut plan.wiring.clone()));
    let toggle = move || {
        state.edit(|plan| {
            let now = place(&mut plan.wiring);
            *now = !*now;
        });
    };
    view! { <Tick id=id label=label on=on toggle=toggle /> }
}
