//! What a reader says of the wiring: every number may be left to its default.

use crate::{
    page::{
        choose::{Chosen, choose},
        dom::{El, h, named_fold},
        field::{choice, number_field, number_field_at, tick},
        state::State,
    },
    plan::{
        Path,
        part::Choice,
        wiring::{FuseKind, LaidField, Leg, Place, Strands, TakeOff, Wiring, WiringField},
    },
    wording::carry::{self as say, words},
};

/// The cables, leg by leg.
pub fn cables(state: State) -> El {
    named_fold("fold", words::FIELDS, move || {
        let place = Chosen {
            label: words::WHERE,
            name: say::place_name,
            assumed: Place::Vehicle,
        };
        let place = choose(state, "wiring-place", place, |plan| {
            Some(&mut plan.wiring.place)
        });
        let legs = Leg::ALL.iter().map(|&leg| card(state, leg));
        std::iter::once(h("div", "grid").child(place))
            .chain(legs)
            .collect()
    })
}

/// What the blocks bear, and how they stand together.
pub fn blocks(state: State) -> El {
    use WiringField as W;
    const FIELDS: [W; 11] = [
        W::StartA,
        W::StartMs,
        W::InverterPeakW,
        W::BlockPeakA,
        W::BlockPeakMs,
        W::BlockChargeA,
        W::ChargeLeastC,
        W::BlockFaultA,
        W::LinkMohm,
        W::MostSeriesCount,
        W::ColdestC,
    ];
    named_fold("fold", words::BANK_LIMITS, move || {
        let take_off = Chosen {
            label: words::TAKE_OFF,
            name: say::take_off_name,
            assumed: TakeOff::SameEnd,
        };
        let take_off = choose(state, "wiring-take-off", take_off, |plan| {
            Some(&mut plan.wiring.take_off)
        });
        let kind = fuse_kind(state, "wiring-fuse-kind");
        vec![
            h("div", "grid").child(take_off).child(kind),
            h("div", "grid").children(FIELDS.map(|field| number_field(state, Path::Wiring(field)))),
            flag(state, "wiring-mixed", words::MIXED, |wiring| {
                &mut wiring.mixed_blocks
            }),
        ]
    })
}

/// The kind of the main fuse, which may be left open.
pub fn fuse_kind(state: State, id: &str) -> El {
    maybe::<FuseKind>(
        state,
        (id, words::FUSE_KIND),
        say::fuse_kind_name,
        |wiring| &mut wiring.fuse_kind,
    )
}

/// One leg: length and conductor, and behind a fold how it lies.
fn card(state: State, leg: Leg) -> El {
    let run = h("div", "grid").live_children(
        move || state.with_plan(|plan| plan.night.asked_unit.to_string()),
        move || {
            let unit = state.with_plan(|plan| plan.night.asked_unit);
            leg.run_paths(unit)
                .map(|path| number_field_at(state, path, "carry"))
                .to_vec()
        },
    );
    h("fieldset", "card")
        .child(h("legend", "").text(say::leg_name(leg)))
        .child(run)
        .child(named_fold("fold small", words::LAID, move || {
            laid(state, leg)
        }))
}

fn laid(state: State, leg: Leg) -> Vec<El> {
    let fields = LaidField::ALL.iter();
    let fields = fields.map(|&field| number_field(state, Path::Laid(leg, field)));
    let id = |what: &str| format!("{}-{what}", leg.key());
    let strands = Chosen {
        label: words::STRANDS,
        name: say::strands_name,
        assumed: Strands::Fine,
    };
    vec![
        h("div", "grid").children(fields),
        h("div", "grid").child(choose(state, &id("strands"), strands, move |plan| {
            Some(&mut plan.wiring.laid_mut(leg).strands)
        })),
        flag(state, &id("engine"), words::ENGINE_SPACE, move |wiring| {
            &mut wiring.laid_mut(leg).engine_space
        }),
        flag(state, &id("enclosed"), words::ENCLOSED, move |wiring| {
            &mut wiring.laid_mut(leg).enclosed
        }),
    ]
}

/// A choice that may be left open.
fn maybe<T: Choice + Send + Sync>(
    state: State,
    (id, label): (&str, &str),
    name: fn(T) -> &'static str,
    slot: impl Fn(&mut Wiring) -> &mut Option<T> + Copy + 'static,
) -> El {
    let names = move || {
        let all = T::ALL.iter().map(|&one| name(one).to_owned());
        std::iter::once(words::NOT_SAID.to_owned())
            .chain(all)
            .collect()
    };
    let chosen = move || {
        let one = state.with_plan(|plan| *slot(&mut plan.wiring.clone()));
        let place = |one: T| T::ALL.iter().position(|&other| other == one);
        one.and_then(place).map_or(0, |place| place + 1)
    };
    let choose = move |index: usize| {
        state.edit(|plan| {
            *slot(&mut plan.wiring) = index.checked_sub(1).and_then(|at| T::ALL.get(at).copied());
        });
    };
    choice(id, label, names, chosen, choose)
}

/// A box to tick.
fn flag(
    state: State,
    id: &str,
    label: &str,
    slot: impl Fn(&mut Wiring) -> &mut bool + Copy + 'static,
) -> El {
    let on = move || state.with_plan(|plan| *slot(&mut plan.wiring.clone()));
    tick(id, label, on, move || {
        state.edit(|plan| {
            let now = slot(&mut plan.wiring);
            *now = !*now;
        });
    })
}
