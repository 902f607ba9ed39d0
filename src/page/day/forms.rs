//! Everything the day rests on: place and weather, cabin, unit, what feeds the bank.

use super::{El, State, h};
use crate::{
    page::{
        choose::{Chosen, choose},
        dom::named_fold,
        field::{large_field, number_field, number_field_at},
        supply::supply,
    },
    plan::{
        Path,
        cabin::{BodyKind, CabinField as C, Colour, Covers, Glazing, Insulation},
        cooling::{Control, CoolingField as K},
        day::DayField as D,
        path::{ModeField, NightField as N},
    },
    wording::{self, day_words as words},
};

pub(super) fn grid(fields: impl IntoIterator<Item = El>) -> El {
    h("div", "grid").children(fields)
}

/// The numbers to start from.
pub fn start(state: State) -> El {
    let large = |path| large_field(state, path);
    h("fieldset", "card")
        .child(h("legend", "").text(words::START))
        .child(
            h("div", "grid start")
                .child(large(Path::Day(D::HighC)))
                .child(large(Path::Day(D::LowC)))
                .child(large(Path::Cabin(C::SetPointC)))
                .child(large(Path::Day(D::DaysCount)))
                .child(number_field_at(
                    state,
                    Path::Night(N::StartClockMin),
                    "day-",
                ))
                .child(number_field_at(state, Path::Night(N::WantedH), "day-")),
        )
        .child(h("p", "facts").live_text(move || {
            let is_there = state.with_plan(|plan| !plan.day.imported.outdoor_c.is_empty());
            if is_there {
                words::FROM_FILE.into()
            } else {
                String::new()
            }
        }))
}

/// The folds with everything else.
pub fn forms(state: State) -> Vec<El> {
    vec![
        named_fold("fold", words::WEATHER, move || {
            super::weather::weather(state)
        }),
        named_fold("fold", words::THE_CABIN, move || cabin(state)),
        named_fold("fold", words::THE_UNIT, move || units(state)),
        named_fold("fold", words::MODE_PLAN, move || super::modes::modes(state)),
        named_fold("fold", words::SUPPLY, move || supply(state, "day-")),
        named_fold("fold", words::DRAWN, move || {
            vec![
                h("p", "hint").text(words::DRAWN_HINT),
                grid(
                    [D::SamplesCount, D::SeedNumber]
                        .map(|field| number_field(state, Path::Day(field))),
                ),
            ]
        }),
    ]
}

/// A handful of questions, then every figure that follows from them.
fn cabin(state: State) -> Vec<El> {
    let field = move |field| number_field(state, Path::Cabin(field));
    let kind = Chosen {
        label: words::BODY,
        name: words::body_name,
        assumed: BodyKind::Van,
    };
    let insulation = Chosen {
        label: words::INSULATION,
        name: words::insulation_name,
        assumed: Insulation::Partial,
    };
    let colour = Chosen {
        label: words::COLOUR,
        name: words::colour_name,
        assumed: Colour::Light,
    };
    let glazing = Chosen {
        label: words::GLAZING,
        name: words::glazing_name,
        assumed: Glazing::Double,
    };
    let covers = Chosen {
        label: words::COVERS,
        name: words::covers_name,
        assumed: Covers::InsideMats,
    };
    let questions = grid([
        choose(state, "body-kind", kind, |plan| Some(&mut plan.cabin.kind)),
        field(C::InsideLengthM),
        choose(state, "insulation", insulation, |plan| {
            Some(&mut plan.cabin.insulation)
        }),
        choose(state, "colour", colour, |plan| Some(&mut plan.cabin.colour)),
        choose(state, "glazing", glazing, |plan| {
            Some(&mut plan.cabin.glazing)
        }),
        choose(state, "covers", covers, |plan| Some(&mut plan.cabin.covers)),
    ]);
    let more = [
        C::ShadePercent,
        C::PeopleCount,
        C::AnimalsCount,
        C::AnimalKg,
        C::AwayFromClockMin,
        C::AwayUntilClockMin,
        C::DeadBandK,
        C::StartC,
    ];
    let derived = move || {
        const DERIVED: [C; 17] = [
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
        vec![
            h("p", "hint").text(words::DERIVED_HINT),
            grid(DERIVED.map(field)),
        ]
    };
    vec![
        questions,
        grid(more.map(field)),
        named_fold("fold small", words::DERIVED, derived),
    ]
}

/// What each unit gives, and each of its modes.
fn units(state: State) -> Vec<El> {
    let shape = move || {
        state.with_plan(|plan| {
            let units = plan.units.iter();
            units.map(|unit| unit.modes.len()).collect::<Vec<_>>()
        })
    };
    let build = move || {
        let shape = shape();
        let count = shape.len();
        let units = shape.into_iter().enumerate();
        units
            .map(|(unit, modes)| one_unit(state, (unit, count), modes))
            .collect()
    };
    vec![
        h("p", "hint").text(words::UNIT_HINT),
        h("div", "").live_children(move || format!("{:?}", shape()), build),
    ]
}

fn one_unit(state: State, (unit, count): (usize, usize), modes: usize) -> El {
    let control = Chosen {
        label: words::CONTROL,
        name: words::control_name,
        assumed: Control::Thermostat,
    };
    let fields = [
        K::CoolingW,
        K::Cop,
        K::AirflowM3H,
        K::SensiblePercent,
        K::IntakeRiseK,
        K::RatedOutdoorC,
        K::RatedWetBulbC,
        K::FloorPercent,
    ];
    let fields = fields.map(|field| number_field(state, Path::Cooling(unit, field)));
    let each_mode = (0..modes).map(move |mode| {
        let title = move || state.with_plan(|plan| wording::mode_name(plan, unit, mode));
        h("div", "mode-cooling")
            .child(h("p", "row-title").live_text(title))
            .child(number_field(
                state,
                Path::Mode(unit, mode, ModeField::CoolingW),
            ))
    });
    let slot = choose(state, &format!("control-{unit}"), control, move |plan| {
        plan.units.get_mut(unit).map(|one| &mut one.cooling.control)
    });
    h("fieldset", "card")
        .child(h("legend", "").text(&wording::numbered(crate::wording::words::UNIT, unit, count)))
        .child(grid([slot]))
        .child(grid(fields))
        .child(grid(each_mode))
}
