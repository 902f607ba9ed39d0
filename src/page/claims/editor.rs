//! Claims to type: what is said, what was measured, and how.

use super::into::BankChoice;
use crate::page::locale::{formatter, say};
use crate::page::rows::{AddRow, Row, of_place, place_of, rows};
use crate::text::Formatter;
use crate::text::m;
use crate::{
    page::{
        field::{Choice, NumberField, TextField},
        kit::{Fold, Press, anew},
        state::State,
    },
    plan::{
        Claim, Path, Plan, Show,
        claims::{ClaimField as C, Claimed, MOST_CLAIMS, MOST_RUNS, read_list},
        entry::show,
        part::{self, Choice as _},
    },
    range::Range,
    text::{
        self,
        claims::{self as say},
    },
};
use leptos::prelude::*;

/// All claims, each in a card.
#[component]
pub fn ClaimEditor() -> impl IntoView {
    let state = State::here();
    // Which fields a card has hangs on what the claim is about.
    let abouts = |plan: &Plan| {
        let claims = plan.claims.iter();
        claims.map(|claim| place_of(claim.about_taken())).collect()
    };
    let add = move || state.edit(|plan| plan.claims.push(Claim::of(Claimed::Energy)));
    let card = |row: Row| view! { <ClaimCard at=row.at about=of_place(row.kind) /> }.into_any();
    let has_room = |plan: &Plan| plan.claims.len() < MOST_CLAIMS;
    view! {
        <div class="claim-cards">
            <h3>{say(m::ClaimsClaims)}</h3>
            <div>{rows(Path::Claims, abouts, card)}</div>
            <AddRow words=say(m::ClaimsAddClaim) has_room=has_room press=add />
        </div>
    }
}

fn claim_mut(plan: &mut Plan, at: usize) -> Option<&mut Claim> {
    plan.claims.get_mut(at)
}

fn of<R: Default>(state: State, at: usize, read: impl FnOnce(&Claim) -> R) -> R {
    state.with_plan(|plan| plan.claims.get(at).map(read).unwrap_or_default())
}

#[component]
fn ClaimCard(at: usize, about: Claimed) -> impl IntoView {
    let state = State::here();
    let fields = about.fields();
    let fields = fields.map(|field| view! { <NumberField path=Path::Claim(at, field) /> });
    let set_about = move |chosen: usize| {
        state.edit(|plan| {
            if let Some(claim) = claim_mut(plan, at) {
                claim.about = Claimed::ALL.get(chosen).copied();
                claim.runs.clear();
            }
        });
    };
    let set_bank = move |bank| {
        state.edit(|plan| {
            if let Some(claim) = claim_mut(plan, at) {
                claim.bank = bank;
            }
        });
    };
    let bank = matches!(about, Claimed::Charge | Claimed::Energy).then(|| {
        view! {
            <BankChoice
                id=format!("claim-bank-{at}")
                label=say(m::ClaimsClaimBank)
                now=move || of(state, at, |claim| claim.bank)
                set=set_bank
            />
        }
    });
    let remove = move || state.remove_row(Path::Claims, at);
    view! {
        <fieldset class="card claim">
            <legend>{say::claim_number(formatter(), at)}</legend>
            <div class="grid">
                <Choice
                    id=format!("claim-about-{at}")
                    label=say(m::ClaimsAbout)
                    names=|| names(say::about_name)
                    chosen=move || of(state, at, |claim| position_of(claim.about_taken()))
                    choose=set_about
                />
                <TextField
                    id=format!("claim-name-{at}")
                    label=say(m::ClaimsClaimName)
                    place=move |plan| claim_mut(plan, at).map(|claim| &mut claim.name)
                />
                {fields.into_iter().collect_view()}
            </div>
            {bank}
            <div class="grid">
                <ClaimChoice
                    at=at
                    id="claim-meter"
                    label=say(m::ClaimsMeter)
                    open=say(m::ClaimsNotStated)
                    name=say::class_name
                    place=|claim| &mut claim.meter
                />
            </div>
            <Fold class="fold small" title=|| say(m::ClaimsMore)>
                <More at=at about=about />
            </Fold>
            <Press class="quiet" words=say(m::ClaimsRemoveClaim) press=remove />
        </fieldset>
    }
}

fn names<T: part::Choice>(name: fn(Formatter, T) -> &'static str) -> Vec<String> {
    T::ALL
        .iter()
        .map(|&one| name(formatter(), one).to_owned())
        .collect()
}

fn position_of<T: part::Choice>(one: T) -> usize {
    T::ALL.iter().position(|&other| other == one).unwrap_or(0)
}

/// A choice of a claim that may be left open; `open` is what that is called.
#[component]
fn ClaimChoice<T: part::Choice + Send + Sync>(
    at: usize,
    id: &'static str,
    label: &'static str,
    open: &'static str,
    name: fn(Formatter, T) -> &'static str,
    place: fn(&mut Claim) -> &mut Option<T>,
) -> impl IntoView {
    let state = State::here();
    let names = move || {
        let mut all = vec![open.to_owned()];
        all.extend(names(name));
        all
    };
    let chosen = move || {
        let one = of(state, at, |claim| *place(&mut claim.clone()));
        one.map_or(0, |one| position_of(one) + 1)
    };
    let choose = move |index: usize| {
        state.edit(|plan| {
            if let Some(claim) = claim_mut(plan, at) {
                *place(claim) = index.checked_sub(1).and_then(|at| T::ALL.get(at).copied());
            }
        });
    };
    view! {
        <Choice id=format!("{id}-{at}") label=label names=names chosen=chosen choose=choose />
    }
}

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

#[component]
fn More(at: usize, about: Claimed) -> impl IntoView {
    let state = State::here();
    let fields = REST.map(|field| view! { <NumberField path=Path::Claim(at, field) /> });
    let set_runs = move |runs| {
        state.edit(|plan| {
            if let Some(claim) = claim_mut(plan, at) {
                claim.runs = runs;
            }
        });
    };
    view! {
        <div class="grid">{fields.collect_view()}</div>
        <div class="grid">
            <ClaimChoice
                at=at
                id="claim-full"
                label=say(m::ClaimsFullBy)
                open=say(m::ClaimsNotStated)
                name=say::full_by_name
                place=|claim| &mut claim.full_by
            />
            <ClaimChoice
                at=at
                id="claim-end"
                label=say(m::ClaimsEndBy)
                open=say(m::ClaimsNotStated)
                name=say::end_by_name
                place=|claim| &mut claim.end_by
            />
        </div>
        <NumbersField
            id=format!("claim-runs-{at}")
            label=say(m::ClaimsRuns)
            hint=say(m::ClaimsRunsHint)
            range=about.range()
            most=MOST_RUNS
            now=move |plan: &Plan| {
                plan.claims.get(at).map(|claim| claim.runs.clone()).unwrap_or_default()
            }
            set=set_runs
        />
    }
}

/// Several numbers in one text; what cannot be read stays, and says so.
#[component]
pub fn NumbersField(
    #[prop(into)] id: String,
    label: &'static str,
    hint: &'static str,
    range: Range,
    /// So many numbers at the most.
    most: usize,
    now: impl Fn(&Plan) -> Vec<f64> + Copy + Send + Sync + 'static,
    set: impl Fn(Vec<f64>) + Copy + Send + Sync + 'static,
) -> impl IntoView {
    let state = State::here();
    // In other units it is another text.
    let units = move || state.with_plan(|plan| plan.show);
    let field = move |us_units: bool| {
        let units = Show { us_units };
        let (error_id, hint_id) = (format!("{id}-error"), format!("{id}-hint"));
        let numbers = state.plan_now(now).into_iter();
        let texts: Vec<String> = numbers.map(|one| show(one, range.unit, units)).collect();
        let sign = formatter().sign(range.unit);
        let wrong = RwSignal::new(false);
        let change = move |event| {
            let read = read_list(&event_target_value(&event), range, most, units);
            wrong.set(read.is_none());
            if let Some(numbers) = read {
                set(numbers);
            }
        };
        let error = move || {
            if wrong.get() {
                say::list_bad(formatter(), range)
            } else {
                String::new()
            }
        };
        view! {
            <div class="field" class:wrong=move || wrong.get()>
                <label for=id.clone()>
                    {label} <span class="unit-in-label">{text::unit_in_label(sign)}</span>
                </label>
                <span class="entry">
                    <input
                        id=id.clone()
                        type="text"
                        autocomplete="off"
                        value=texts.join(" ")
                        aria-describedby=format!("{error_id} {hint_id}")
                        on:change=change
                    />
                    <span class="unit" aria-hidden="true">
                        {sign}
                    </span>
                </span>
                <p class="error" id=error_id>
                    {error}
                </p>
                <p class="hint" id=hint_id>
                    {hint}
                </p>
            </div>
        }
        .into_any()
    };
    view! { <div>{anew(move || units().us_units, field)}</div> }
}
