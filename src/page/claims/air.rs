//! The cooler from its air side: readings, and the budget they make.

use super::{Answered, editor::NumbersField};
use crate::page::locale::{formatter, say};
use crate::text::m;
use crate::{
    page::{
        field::{Choice, NumberField},
        kit::Fold,
        state::State,
    },
    plan::{
        Path, Plan,
        claims::{AirBasis, AirField, MOST_POINTS},
    },
    range,
    text::claims::{self as say, words},
};
use leptos::prelude::*;

const BASES: [AirBasis; 3] = [AirBasis::AtOutlet, AirBasis::AtInlet, AirBasis::Standard];

/// The readings and what they make.
#[component]
pub fn Air(answer: Answered) -> impl IntoView {
    view! {
        <Fold title=|| say(m::ClaimsAir)>
            <AirForm answer=answer />
        </Fold>
    }
}

#[component]
fn AirForm(answer: Answered) -> impl IntoView {
    let state = State::here();
    let fields = AirField::ALL.iter();
    let fields = fields.map(|&field| view! { <NumberField path=Path::Air(field) /> });
    let basis = move || {
        let basis = state.with_plan(|plan| plan.air.basis);
        let place = BASES.iter().position(|&one| Some(one) == basis);
        place.unwrap_or(0)
    };
    let said = move || {
        answer.with(|answer| match (&answer.air, answer.air_refused) {
            (Some(air), _) => say::air_sentence(formatter(), air),
            (None, Some(refusal)) => say::air_refusal(formatter(), refusal).into(),
            (None, None) => String::new(),
        })
    };
    view! {
        <p class="hint">{say(m::ClaimsAirHint)}</p>
        <div class="grid">
            {fields.collect_view()}
            <Choice
                id="air-basis"
                label=say(m::ClaimsBasis)
                names=|| words::bases(formatter()).map(str::to_owned).to_vec()
                chosen=basis
                choose=move |at| state.edit(|plan| plan.air.basis = BASES.get(at).copied())
            />
        </div>
        <NumbersField
            id="air-vane"
            label=say(m::ClaimsVane)
            hint=say(m::ClaimsVaneHint)
            range=range::VANE_M_S
            most=MOST_POINTS
            now=|plan: &Plan| plan.air.vane_m_s.clone()
            set=move |points| state.edit(|plan| plan.air.vane_m_s = points)
        />
        <p class="detail" role="status">
            {said}
        </p>
        <Budget answer=answer />
    }
}

#[component]
fn Budget(answer: Answered) -> impl IntoView {
    let rows = Memo::new(move |_| {
        answer.with(|answer| {
            let budget = answer.air.as_ref().map(|air| air.budget.clone());
            budget.unwrap_or_default()
        })
    });
    let table = move || {
        let rows = rows.get();
        if rows.is_empty() {
            return None;
        }
        let heads =
            words::budget_heads(formatter()).map(|text| view! { <th scope="col">{text}</th> });
        let rows = rows.into_iter().map(|row| {
            view! {
                <tr>
                    <th scope="row">{say::budget_name(formatter(), row.by)}</th>
                    <td>{formatter().with_unit(row.standard_w, "W")}</td>
                    <td>{formatter().percent(row.share_percent)}</td>
                </tr>
            }
        });
        Some(view! {
            <table>
                <thead>
                    <tr>{heads.collect_view()}</tr>
                </thead>
                <tbody>{rows.collect_view()}</tbody>
            </table>
        })
    };
    view! { <div>{table}</div> }
}
