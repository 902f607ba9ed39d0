//! Claims to type: what is said, what was measured, and how.

use super::into;
use crate::{
    page::{
        dom::{El, button, h, named_fold, text_of},
        field::{choice, name_field, number_field},
        reactive::*,
        state::State,
    },
    plan::{
        Claim, Path, Plan, Show,
        claims::{ClaimField as C, Claimed, EndBy, FullBy, MOST_CLAIMS, MOST_RUNS, read_list},
        entry::show,
        part::Choice,
    },
    range::Range,
    wording::{
        self,
        claims::{self as say, words},
    },
};

/// All claims, each in a card.
pub fn editor(state: State) -> El {
    let count = move || state.with_plan(|plan| plan.claims.len());
    // Which fields a card has hangs on what the claim is about.
    let key = move || {
        state.with_plan(|plan| {
            let abouts = plan.claims.iter().map(|claim| claim.about_taken().key());
            abouts.collect::<Vec<_>>().join(" ")
        })
    };
    let cards = move || {
        let cards = (0..count()).map(|at| card(state, at));
        let add = (count() < MOST_CLAIMS).then(|| {
            button("quiet", words::ADD_CLAIM, move || {
                state.edit(|plan| plan.claims.push(Claim::of(Claimed::Energy)))
            })
        });
        cards.chain(add).collect()
    };
    h("div", "claim-cards")
        .child(h("h3", "").text(words::CLAIMS))
        .child(h("div", "").live_children(key, cards))
}

fn claim_mut(plan: &mut Plan, at: usize) -> Option<&mut Claim> {
    plan.claims.get_mut(at)
}

fn edit_bank(plan: &mut Plan, at: usize, bank: usize) {
    if let Some(claim) = claim_mut(plan, at) {
        claim.bank = bank;
    }
}

fn of<R: Default>(state: State, at: usize, read: impl FnOnce(&Claim) -> R) -> R {
    state.with_plan(|plan| plan.claims.get(at).map(read).unwrap_or_default())
}

fn card(state: State, at: usize) -> El {
    let about = of(state, at, |claim| claim.about).unwrap_or(Claimed::Energy);
    let fields = about.fields();
    let fields = fields.map(|field| number_field(state, Path::Claim(at, field)));
    let name = name_field(
        state,
        &format!("claim-name-{at}"),
        words::CLAIM_NAME,
        move |plan| claim_mut(plan, at).map(|claim| &mut claim.name),
    );
    let names = || {
        Claimed::ALL
            .iter()
            .map(|&one| say::about_name(one).to_owned())
    };
    let abouts = choice(
        &format!("claim-about-{at}"),
        words::ABOUT,
        move || names().collect(),
        move || of(state, at, |claim| place(claim.about_taken())),
        move |chosen| {
            state.edit(|plan| {
                if let Some(claim) = claim_mut(plan, at) {
                    claim.about = Claimed::ALL.get(chosen).copied();
                    claim.runs.clear();
                }
            });
        },
    );
    let which = matches!(about, Claimed::Charge | Claimed::Energy).then(|| {
        let set = move |bank| state.edit(|plan| edit_bank(plan, at, bank));
        let now = move || of(state, at, |claim| claim.bank);
        into::bank_choice(
            state,
            &format!("claim-bank-{at}"),
            words::CLAIM_BANK,
            now,
            set,
        )
    });
    let remove = button("quiet", words::REMOVE_CLAIM, move || {
        state.change(|draft| draft.remove(Path::Claims, at))
    });
    h("fieldset", "card claim")
        .child(h("legend", "").text(&say::claim_number(at)))
        .child(h("div", "grid").child(abouts).child(name).children(fields))
        .children(which)
        .child(h("div", "grid").child(maybe(
            state,
            at,
            ("claim-meter", words::METER, words::NO_METER),
            say::class_name,
            |claim| &mut claim.meter,
        )))
        .child(named_fold("fold small", words::MORE, move || {
            more(state, at)
        }))
        .child(remove)
}

fn place<T: Choice>(one: T) -> usize {
    T::ALL.iter().position(|&other| other == one).unwrap_or(0)
}

/// A choice that may be left open.
fn maybe<T: Choice + Send + Sync>(
    state: State,
    at: usize,
    (id, label, open): (&str, &str, &'static str),
    name: fn(T) -> &'static str,
    slot: fn(&mut Claim) -> &mut Option<T>,
) -> El {
    let names = move || {
        let all = T::ALL.iter().map(|&one| name(one).to_owned());
        std::iter::once(open.to_owned()).chain(all).collect()
    };
    let chosen = move || {
        let one = of(state, at, |claim| *slot(&mut claim.clone()));
        one.map_or(0, |one| place(one) + 1)
    };
    let choose = move |index: usize| {
        state.edit(|plan| {
            if let Some(claim) = claim_mut(plan, at) {
                *slot(claim) = index.checked_sub(1).and_then(|at| T::ALL.get(at).copied());
            }
        });
    };
    choice(&format!("{id}-{at}"), label, names, chosen, choose)
}

fn more(state: State, at: usize) -> Vec<El> {
    const REST: [C; 11] = [
        C::TolerancePercent,
        C::OfReadingPercent,
        C::OfFullScalePercent,
        C::FullScaleNumber,
        C::CountsNumber,
        C::OneCountNumber,
        C::MeasuredMin,
        C::RateA,
        C::TestC,
        C::RatedC,
        C::GrilleM2,
    ];
    let fields = REST.map(|field| number_field(state, Path::Claim(at, field)));
    let full = ("claim-full", words::FULL_BY, words::NOT_SAID);
    let end = ("claim-end", words::END_BY, words::NOT_SAID);
    let range = of(state, at, |claim| Some(claim.about_taken().range()));
    let runs = list_field(
        state,
        &format!("claim-runs-{at}"),
        (words::RUNS, words::RUNS_HINT),
        (range.unwrap_or(crate::range::CLAIM_WH), MOST_RUNS),
        move || of(state, at, |claim| claim.runs.clone()),
        move |runs| {
            state.edit(|plan| {
                if let Some(claim) = claim_mut(plan, at) {
                    claim.runs = runs;
                }
            });
        },
    );
    vec![
        h("div", "grid").children(fields),
        h("div", "grid")
            .child(maybe::<FullBy>(state, at, full, say::full_by_name, |c| {
                &mut c.full_by
            }))
            .child(maybe::<EndBy>(state, at, end, say::end_by_name, |c| {
                &mut c.end_by
            })),
        runs,
    ]
}

/// Several numbers in one text; what cannot be read stays, and says so.
pub fn list_field(
    state: State,
    id: &str,
    (label, hint): (&'static str, &'static str),
    (range, most): (Range, usize),
    now: impl Fn() -> Vec<f64> + Clone + 'static,
    set: impl Fn(Vec<f64>) + Clone + 'static,
) -> El {
    let id = id.to_owned();
    // In other units it is another text.
    let units = move || state.with_plan(|plan| plan.show);
    h("div", "").live_children(
        move || units().us_units.to_string(),
        move || {
            let asked = (range, most, untrack(units));
            vec![list_field_in(
                &id,
                (label, hint),
                asked,
                now.clone(),
                set.clone(),
            )]
        },
    )
}

fn list_field_in(
    id: &str,
    (label, hint): (&str, &str),
    (range, most, units): (Range, usize, Show),
    now: impl Fn() -> Vec<f64>,
    set: impl Fn(Vec<f64>) + 'static,
) -> El {
    let wrong = RwSignal::new(false);
    let numbers = untrack(now);
    let text: Vec<String> = numbers
        .iter()
        .map(|&number| show(number, range.unit, units))
        .collect();
    let sign = wording::unit_sign(range.unit, units);
    let (error_id, hint_id) = (format!("{id}-error"), format!("{id}-hint"));
    let input = h("input", "")
        .attr("id", id)
        .attr("type", "text")
        .attr("autocomplete", "off")
        .attr("value", &text.join(" "))
        .attr("aria-describedby", &format!("{error_id} {hint_id}"))
        .on("change", move |event| {
            let read = read_list(&text_of(&event), range, most, units);
            wrong.set(read.is_none());
            if let Some(numbers) = read {
                set(numbers);
            }
        });
    h("div", "field")
        .live_class("wrong", move || wrong.get())
        .child(
            h("label", "")
                .attr("for", id)
                .text(label)
                .child(h("span", "unit-in-label").text(&wording::unit_in_label(sign))),
        )
        .child(
            h("span", "entry")
                .child(input)
                .child(h("span", "unit").attr("aria-hidden", "true").text(sign)),
        )
        .child(h("p", "error").attr("id", &error_id).live_text(move || {
            if wrong.get() {
                say::list_bad(range, units)
            } else {
                String::new()
            }
        }))
        .child(h("p", "hint").attr("id", &hint_id).text(hint))
}
