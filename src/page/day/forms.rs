//! Everything the day rests on: place and weather, cabin, unit, what feeds the bank.

use super::{State, modes::ModePlan, unit_map::UnitMap, weather::Weather};
use crate::page::locale::formatter;
use crate::page::locale::say;
use crate::text::m;
use crate::{
    page::{
        choose::{Chosen, OpenChoice},
        field::{Look, NumberField},
        kit::{Fold, anew},
        supply::SupplyForm,
    },
    plan::{
        Path,
        cabin::{BodyKind, CabinField as C, Colour, Covers, Glazing, Insulation},
        cooling::{Control, CoolingField as K, UnitCurves},
        day::DayField as D,
        path::{ModeField, NightField as N},
    },
    text::{self, day_words as words},
};
use leptos::prelude::*;

/// The numbers to start from.
#[component]
pub fn Start() -> impl IntoView {
    let state = State::here();
    let from_file = move || {
        let is_there = state.with_plan(|plan| !plan.day.imported.outdoor_c.is_empty());
        if is_there { say(m::DayFromFile) } else { "" }
    };
    let large = [
        Path::Day(D::HighC),
        Path::Day(D::LowC),
        Path::Cabin(C::SetPointC),
        Path::Day(D::DaysCount),
    ];
    let large = large.map(|path| view! { <NumberField path=path look=Look::Large /> });
    view! {
        <fieldset class="card">
            <legend>{say(m::DayStart)}</legend>
            <div class="grid start">
                {large.collect_view()}
                <NumberField path=Path::Night(N::StartClockMin) at="day-" />
                <NumberField path=Path::Night(N::WantedH) at="day-" />
            </div>
            <p class="facts">{from_file}</p>
        </fieldset>
    }
}

/// The folds with everything else.
#[component]
pub fn Forms() -> impl IntoView {
    let drawn = [D::SamplesCount, D::SeedNumber];
    let day = |field| view! { <NumberField path=Path::Day(field) /> };
    view! {
        <Fold title=|| say(m::DayWeather)>
            <Weather />
        </Fold>
        <Fold title=|| say(m::DayTheCabin)>
            <CabinForm />
        </Fold>
        <Fold title=|| say(m::DayTheUnit)>
            <UnitForms />
        </Fold>
        <Fold title=|| say(m::DayModePlan)>
            <ModePlan />
        </Fold>
        <Fold title=|| say(m::DaySupply)>
            <SupplyForm at="day-" />
        </Fold>
        <Fold title=|| say(m::DayDrawn)>
            <p class="hint">{say(m::DayDrawnHint)}</p>
            <div class="grid">{drawn.map(day).collect_view()}</div>
        </Fold>
    }
}

const BODY: Chosen<BodyKind> = Chosen {
    label: |f| f.say(m::DayBody),
    name: words::body_name,
    assumed: BodyKind::Van,
};
const INSULATION: Chosen<Insulation> = Chosen {
    label: |f| f.say(m::DayInsulation),
    name: words::insulation_name,
    assumed: Insulation::Partial,
};
const COLOUR: Chosen<Colour> = Chosen {
    label: |f| f.say(m::DayColour),
    name: words::colour_name,
    assumed: Colour::Light,
};
const GLAZING: Chosen<Glazing> = Chosen {
    label: |f| f.say(m::DayGlazing),
    name: words::glazing_name,
    assumed: Glazing::Double,
};
const COVERS: Chosen<Covers> = Chosen {
    label: |f| f.say(m::DayCovers),
    name: words::covers_name,
    assumed: Covers::InsideMats,
};
const CURVES: Chosen<UnitCurves> = Chosen {
    label: |f| f.say(m::DayCurves),
    name: words::curves_name,
    assumed: UnitCurves::WindowUnit,
};
const CONTROL: Chosen<Control> = Chosen {
    label: |f| f.say(m::DayControl),
    name: words::control_name,
    assumed: Control::Thermostat,
};

/// What most know of their cabin without measuring.
const CABIN_MAIN: [C; 8] = [
    C::ShadePercent,
    C::PeopleCount,
    C::AnimalsCount,
    C::AnimalKg,
    C::AwayFromClockMin,
    C::AwayUntilClockMin,
    C::DeadBandK,
    C::StartC,
];
/// What follows from the questions unless it is said.
const CABIN_DERIVED: [C; 17] = [
    C::FloorM2,
    C::VolumeM3,
    C::RoofM2,
    C::WallsM2,
    C::WallGlassM2,
    C::RoofGlassM2,
    C::LitWallsPercent,
    C::ShellWM2K,
    C::GlassWM2K,
    C::GlassGainPercent,
    C::AbsorptancePercent,
    C::AirCapacityKjK,
    C::ShellCapacityKjK,
    C::AirChangesPerH,
    C::AiredChangesPerH,
    C::MoistureBuffer,
    C::GainsW,
];

/// A handful of questions, then every figure that follows from them.
#[component]
fn CabinForm() -> impl IntoView {
    let field = |field| view! { <NumberField path=Path::Cabin(field) /> };
    let derived = move || CABIN_DERIVED.map(field).collect_view();
    view! {
        <div class="grid">
            <OpenChoice id="body-kind" chosen=BODY place=|plan| Some(&mut plan.cabin.kind) />
            {field(C::InsideLengthM)}
            <OpenChoice
                id="insulation"
                chosen=INSULATION
                place=|plan| Some(&mut plan.cabin.insulation)
            />
            <OpenChoice id="colour" chosen=COLOUR place=|plan| Some(&mut plan.cabin.colour) />
            <OpenChoice id="glazing" chosen=GLAZING place=|plan| Some(&mut plan.cabin.glazing) />
            <OpenChoice id="covers" chosen=COVERS place=|plan| Some(&mut plan.cabin.covers) />
        </div>
        <div class="grid">{CABIN_MAIN.map(field).collect_view()}</div>
        <Fold class="fold small" title=|| say(m::DayDerived)>
            <p class="hint">{say(m::DayDerivedHint)}</p>
            <div class="grid">{derived()}</div>
        </Fold>
    }
}

/// What each unit gives, and each of its modes.
#[component]
fn UnitForms() -> impl IntoView {
    let state = State::here();
    let shape = move || {
        state.with_plan(|plan| {
            let units = plan.units.iter();
            units.map(|unit| unit.modes.len()).collect::<Vec<_>>()
        })
    };
    let build = |shape: Vec<usize>| {
        let count = shape.len();
        let units = shape.into_iter().enumerate();
        let one = |(unit, modes)| view! { <UnitForm unit=unit count=count modes=modes /> };
        units.map(one).collect_view().into_any()
    };
    view! {
        <p class="hint">{say(m::DayUnitHint)}</p>
        <div>{anew(shape, build)}</div>
    }
}

#[component]
fn UnitForm(unit: usize, count: usize, modes: usize) -> impl IntoView {
    let fields = [
        K::CoolingW,
        K::Cop,
        K::AirflowM3H,
        K::SensiblePercent,
        K::IntakeRiseK,
        K::RatedOutdoorC,
        K::RatedWetBulbC,
        K::FloorPercent,
        K::StartLossMin,
    ];
    let fields = fields.map(|field| view! { <NumberField path=Path::Cooling(unit, field) /> });
    let modes = (0..modes).map(|mode| view! { <ModeCooling unit=unit mode=mode /> });
    view! {
        <fieldset class="card">
            <legend>{text::numbered(say(m::Unit), unit, count)}</legend>
            <div class="grid">
                <OpenChoice
                    id=format!("control-{unit}")
                    chosen=CONTROL
                    place=move |plan| plan.units.get_mut(unit).map(|one| &mut one.cooling.control)
                />
                <OpenChoice
                    id=format!("curves-{unit}")
                    chosen=CURVES
                    place=move |plan| plan.units.get_mut(unit).map(|one| &mut one.cooling.curves)
                />
            </div>
            <div class="grid">{fields.collect_view()}</div>
            <div class="grid">{modes.collect_view()}</div>
            <UnitMap unit=unit />
        </fieldset>
    }
}

#[component]
fn ModeCooling(unit: usize, mode: usize) -> impl IntoView {
    let state = State::here();
    let title = move || state.with_plan(|plan| text::mode_name(formatter(), plan, unit, mode));
    view! {
        <div class="mode-cooling">
            <p class="row-title">{title}</p>
            <NumberField path=Path::Mode(unit, mode, ModeField::CoolingW) />
        </div>
    }
}
