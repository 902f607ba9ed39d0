//! Sentences on cables, fuses and blocks.

use crate::{
    answer::wiring::{
        AskedBy, BankLimits, Burden, FaultFrom, FuseFault, LegAnswer, LegNote, LoadedFigures,
        Needed, Position, Protection, RuleName, SizeFigures, SizeName, SizeSystem, SolarSide,
        Verdict, WiringAnswer,
    },
    plan::{Plan, wiring::Leg},
    range::Unit,
    wording::{
        carry::{fuse_kind_name, take_off_name},
        full_mode_name,
        hand_on::plan_value,
        number::{fixed, plain, with_unit},
        unit_name,
    },
};

/// A thin space before a unit.
const THIN: char = '\u{202f}';

/// Amps, from a thousand up as kiloamps.
#[must_use]
pub fn amps(value: f64) -> String {
    if value >= 1000.0 {
        with_unit(value / 1000.0, "kA")
    } else {
        with_unit(value, "A")
    }
}

pub(super) fn volts(value: f64) -> String {
    format!("{}{THIN}V", fixed(value, 2))
}

pub(super) fn percent(value: f64) -> String {
    let decimals = usize::from(value < 10.0);
    format!("{}{THIN}%", fixed(value, decimals))
}

pub(super) fn degrees(plan: &Plan, celsius: f64) -> String {
    plan_value(plan, Unit::Celsius, celsius.round())
}

/// A size as it is sold: `6 AWG` or `16 mm²`.
#[must_use]
pub fn size_text(size: &SizeName) -> String {
    match size.system {
        SizeSystem::Awg => format!("{}{THIN}AWG", size.gauge),
        SizeSystem::Metric => with_unit(size.area_mm2, "mm²"),
    }
}

/// Both smallest sizes: `8 AWG or 10 mm²`.
#[must_use]
pub fn both_sizes(needed: &[Needed]) -> String {
    let smallest = needed.iter().filter_map(|one| one.smallest.as_ref());
    let texts: Vec<String> = smallest.map(|one| size_text(&one.size)).collect();
    match texts.as_slice() {
        [] => "no size there is".into(),
        texts => texts.join(" or "),
    }
}

/// The cable of a leg within a sentence.
const fn the_cable(leg: Leg) -> &'static str {
    match leg {
        Leg::Distribution => "the cable to the distribution",
        Leg::Unit => "the cable to the unit",
        Leg::Charger => "the charger’s cable",
        Leg::Panel => "the panels’ cable",
    }
}

/// What is wrong with a leg, in a few words; nothing if it carries.
fn trouble(leg: &LegAnswer) -> Option<String> {
    let cable = the_cable(leg.leg);
    let have = leg.have.as_ref()?;
    let size = size_text(&have.size);
    if have.loaded.is_none() {
        return Some(format!("no current carries the power through {cable}"));
    }
    let hot = have.loaded?;
    if have.fails.contains(&RuleName::Ampacity) {
        return Some(format!(
            "{cable} ({size}) may not carry {} for hours",
            amps(hot.current_a)
        ));
    }
    if have.fails.contains(&RuleName::Drop) {
        return Some(format!("{cable} drops {}", percent(hot.hot_percent)));
    }
    if have.fails.contains(&RuleName::FuseFit) {
        return Some(format!(
            "no fuse that bears the load protects {cable} ({size})"
        ));
    }
    if have.fails.contains(&RuleName::MechanicalMinimum) {
        return Some(format!("{cable} is thinner than the law’s thinnest"));
    }
    let fault = leg.protection.as_ref()?.fitted_faults.first()?;
    Some(format!("{} in {cable} {}", "the fuse", fuse_fault(*fault)))
}

/// What the page answers, as a sentence.
#[must_use]
pub fn headline(answer: &WiringAnswer) -> String {
    let mut troubles: Vec<String> = answer.legs.iter().filter_map(trouble).collect();
    if let Some(bank) = &answer.bank {
        let burdens = [(bank.continuous, "for hours"), (bank.start, "at the start")];
        for (burden, when) in burdens {
            if burden.verdict == Verdict::Fails {
                troubles.push(format!(
                    "one block is to give {} {when} and may give {}",
                    amps(burden.worst_a),
                    amps(burden.limit_a.unwrap_or_default())
                ));
            }
        }
        if let Some(charge) = bank.charge.filter(|one| one.verdict == Verdict::Fails) {
            troubles.push(format!(
                "one block is charged with {} and bears {}",
                amps(charge.worst_a),
                amps(charge.limit_a.unwrap_or_default())
            ));
        }
    }
    if answer.solar.is_some_and(|side| side.within == Some(false)) {
        troubles.push("the panels exceed the controller on the coldest morning".into());
    }
    if !troubles.is_empty() {
        return format!("Not as it stands: {}.", listed(&troubles));
    }
    let unit = answer.legs.iter().find(|leg| leg.leg == Leg::Unit);
    let Some((leg, hot)) = unit.and_then(|leg| Some((leg, leg.have.as_ref()?.loaded?))) else {
        return "Say what conductor runs to the unit: until then only what it must be is known."
            .into();
    };
    format!(
        "Yes, as far as you said: the cable to the unit carries {} and drops {}{}.",
        amps(hot.current_a),
        percent(hot.hot_percent),
        open_ends(answer, leg)
    )
}

/// What was not said, after a yes.
fn open_ends(answer: &WiringAnswer, unit: &LegAnswer) -> String {
    let fused = unit
        .protection
        .as_ref()
        .is_some_and(|one| one.fitted_a.is_some());
    let legs = answer.legs.iter();
    let unsaid = legs.filter(|leg| leg.verdict == Verdict::NotSaid).count();
    match (fused, unsaid) {
        (false, _) => "; name its fuse to have that judged too".into(),
        (true, 0) => String::new(),
        (true, 1) => "; one more cable is not named yet".into(),
        (true, several) => format!("; {several} more cables are not named yet"),
    }
}

/// Two of them in full, the rest by number.
fn listed(troubles: &[String]) -> String {
    match troubles {
        [first, second, rest @ ..] if !rest.is_empty() => {
            format!("{first}; {second}; and {} more below", rest.len())
        }
        all => all.join("; and "),
    }
}

/// The blocks in one line under the answer.
#[must_use]
pub fn blocks_line(bank: &BankLimits) -> String {
    let running = bank.continuous;
    let who = if bank.parallel_count > 1 {
        "The block that works hardest gives"
    } else {
        "The bank gives"
    };
    let limit = match running.limit_a {
        Some(limit_a) => format!("of the {} it may", amps(limit_a)),
        None => "; how much it may was not said".into(),
    };
    let sep = if running.limit_a.is_some() { " " } else { "" };
    format!("{who} {}{sep}{limit}.", amps(running.worst_a))
}

/// A verdict on what is there.
#[must_use]
pub const fn verdict_name(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Carries => "carries it",
        Verdict::Fails => "does not",
        Verdict::NotSaid => "not said",
    }
}

/// A leg in one line: what is there and how it fares.
#[must_use]
pub fn leg_line(leg: &LegAnswer) -> String {
    match (&leg.have, leg.verdict) {
        (Some(have), Verdict::Carries) => format!("{} carries it", size_text(&have.size)),
        (Some(have), _) => match trouble_short(leg, have) {
            Some(short) => format!("{}: {short}", size_text(&have.size)),
            None => size_text(&have.size),
        },
        (None, _) => format!("needs {}", both_sizes(&leg.needed)),
    }
}

fn trouble_short(leg: &LegAnswer, have: &SizeFigures) -> Option<String> {
    let Some(hot) = have.loaded else {
        return Some("no current carries the power".into());
    };
    if let Some(rule) = have.fails.first() {
        return Some(match rule {
            RuleName::Ampacity => "too thin for the current".into(),
            RuleName::FuseFit => "no fuse fits it".into(),
            RuleName::Drop => format!("drops {}", percent(hot.hot_percent)),
            RuleName::MechanicalMinimum => "too thin to be laid".into(),
        });
    }
    let fault = leg.protection.as_ref()?.fitted_faults.first()?;
    Some(format!("its fuse {}", fuse_fault(*fault)))
}

/// The rule that decided, with both sizes.
#[must_use]
pub fn deciding(leg: &LegAnswer) -> String {
    let Some(rule) = leg.needed.iter().find_map(|one| one.decided_by) else {
        return "No size in either system passes: a shorter run, more volts, or two runs each with a fuse of its own.".into();
    };
    format!(
        "It must be {} at least. {}",
        both_sizes(&leg.needed),
        match rule {
            RuleName::Ampacity =>
                "What decides is the current that a conductor may carry for hours.",
            RuleName::FuseFit =>
                "What decides is the fuse: it must bear the load, and the conductor must bear the fuse.",
            RuleName::Drop => "What decides is the drop you allow.",
            RuleName::MechanicalMinimum => "What decides is the thinnest wire that may be laid.",
        }
    )
}

/// A rule as a row's name.
#[must_use]
pub const fn rule_name(rule: RuleName) -> &'static str {
    match rule {
        RuleName::Ampacity => "Current for hours",
        RuleName::FuseFit => "A fuse that fits",
        RuleName::Drop => "Drop, hot",
        RuleName::MechanicalMinimum => "Thinnest laid",
    }
}

/// Where a rule comes from.
#[must_use]
pub const fn rule_source(rule: RuleName) -> &'static str {
    match rule {
        RuleName::Ampacity => {
            "33 CFR 183.425 table 5 with its notes; heat by the equation of NFPA 70 section 310.15(B), from memory"
        }
        RuleName::FuseFit => {
            "NFPA 70 sections 210.20(A) and 240.6(A); small conductors in vehicles and cabins by its table 552.10(E)(1), from memory"
        }
        RuleName::Drop => {
            "Ohm’s law; copper by IEC 60028, strands by IEC 60228 and ASTM B8; the limit is yours (3 % is usual, no source)"
        }
        RuleName::MechanicalMinimum => "33 CFR 183.425(d) and (e)",
    }
}

/// Whose current a leg was sized for.
#[must_use]
pub fn asked_by(plan: &Plan, leg: &LegAnswer) -> String {
    let who = match leg.asked_by {
        AskedBy::Mode { unit, mode } => {
            format!(
                "Sized for {}, the strongest mode",
                full_mode_name(plan, unit, mode)
            )
        }
        AskedBy::Rating { unit } => format!(
            "Sized for all that {} is rated for: anything may be put on it",
            feed_of(plan, unit)
        ),
        AskedBy::Everything => "Sized for the unit and everything else that runs".into(),
        AskedBy::Charger { charger } => {
            format!("Sized for charger {}, the strongest", charger + 1)
        }
        AskedBy::Controller => "Sized for the panels’ controller".into(),
        AskedBy::Panels => {
            return format!(
                "Sized for {} of short-circuit current, times 1.25 for bright sun: {}. The fuse’s 125 % is the code’s second 1.25.",
                amps(leg.continuous_a),
                amps(leg.low_a)
            );
        }
    };
    let start = leg.start_a.map_or_else(String::new, |start_a| {
        format!("; about {} for a moment when it starts", amps(start_a))
    });
    let low = if leg.low_a > leg.continuous_a * 1.001 {
        format!(
            ": {} at nominal volts, {} when the source is down to {}, which counts",
            amps(leg.continuous_a),
            amps(leg.low_a),
            volts(leg.source_low_v)
        )
    } else {
        format!(": {}", amps(leg.low_a))
    };
    format!("{who}{low}{start}.")
}

fn feed_of(plan: &Plan, unit: usize) -> String {
    format!("the converter or inverter of {}", unit_name(plan, unit))
}

/// How the rating of a conductor came about.
#[must_use]
pub fn ampacity_text(plan: &Plan, leg: &LegAnswer, figures: &SizeFigures) -> String {
    let Some(ampacity) = &figures.ampacity else {
        return format!(
            "{} is thinner than the table: no rating.",
            size_text(&figures.size)
        );
    };
    let row = if ampacity.row == figures.size {
        String::new()
    } else {
        format!(
            ", read as {}, the next gauge down",
            size_text(&ampacity.row)
        )
    };
    let factor = |percent: f64, why: String| {
        (percent < 99.95).then(|| format!(" × {} for {why}", fixed(percent / 100.0, 2)))
    };
    let factors = [
        factor(
            ampacity.heat_percent,
            format!("air at {}", degrees(plan, leg.air_c)),
        ),
        factor(ampacity.bundle_percent, "the bundle".into()),
        factor(ampacity.enclosure_percent, "being shut in".into()),
    ];
    format!(
        "{}{row}: {} in the column for {}{} = {} for hours.",
        size_text(&figures.size),
        amps(ampacity.table_a),
        degrees(plan, ampacity.column_c),
        factors.into_iter().flatten().collect::<String>(),
        amps(ampacity.allowed_a)
    )
}

/// What a conductor drops, cold and hot.
#[must_use]
pub fn drop_text(plan: &Plan, leg: &LegAnswer, loaded: &LoadedFigures) -> String {
    format!(
        "{} each way: {} ({}) with the copper cold, {} ({}) as hot as it gets, {}. You allow {} of {}.",
        plan_value(plan, Unit::Meter, leg.length_m),
        volts(loaded.cold_v),
        percent(loaded.cold_percent),
        volts(loaded.hot_v),
        percent(loaded.hot_percent),
        degrees(plan, loaded.conductor_c),
        percent(leg.allowed_drop_percent),
        volts(leg.source_low_v)
    )
}

/// The fuse that is recommended.
#[must_use]
pub fn fuse_text(protection: &Protection) -> String {
    let conductor = size_text(&protection.conductor);
    let least = format!("125 % of the current is {}", amps(protection.least_a));
    let most = format!("{conductor} may be fused at {}", amps(protection.most_a));
    match protection.recommended_a {
        Some(rating_a) => {
            let list = if protection.vehicle_size {
                "a size made for vehicles (common practice)"
            } else {
                "the next standard size"
            };
            format!(
                "{}: {least}, and {list}; {most} at the most.",
                amps(rating_a)
            )
        }
        None => format!(
            "None: {least}, and {most} at the most. The conductor must be thicker; a smaller fuse would open in use."
        ),
    }
}

/// What the law for boats would allow, as that.
#[must_use]
pub fn marine_text(protection: &Protection) -> String {
    format!(
        "On boats the law would allow up to {} here (33 CFR 183.455(c)). It is shown, not recommended.",
        amps(protection.marine_most_a)
    )
}

/// The fuse that is there.
#[must_use]
pub fn fitted_text(protection: &Protection) -> Option<String> {
    let fitted = protection.fitted_a.map(amps);
    let faults: Vec<String> = protection
        .fitted_faults
        .iter()
        .map(|&fault| fuse_fault(fault))
        .collect();
    match (fitted, faults.is_empty()) {
        (Some(fitted), true) => Some(format!(
            "The {fitted} that is in it suits load and conductor."
        )),
        (Some(fitted), false) => Some(format!(
            "The {fitted} that is in it {}.",
            faults.join(", and ")
        )),
        (None, false) => Some(format!("The fuse {}.", faults.join(", and "))),
        (None, true) => None,
    }
}

fn fuse_fault(fault: FuseFault) -> String {
    match fault {
        FuseFault::AboveConductor { most_a } => {
            format!("is above what the conductor bears, {}", amps(most_a))
        }
        FuseFault::BelowLoad { least_a } => {
            format!("opens in use: it must be {} at least", amps(least_a))
        }
        FuseFault::TooFar { most_m } => format!(
            "sits too far from the source: within {} at the most",
            centimeters(most_m)
        ),
        FuseFault::WrongKind { kind } => format!(
            "is of a kind ({}) that does not break what may flow there",
            fuse_kind_name(kind)
        ),
    }
}

fn centimeters(meters: f64) -> String {
    format!(
        "{}{THIN}cm ({}{THIN}in)",
        fixed(meters * 100.0, 0),
        fixed(meters / 0.0254, 0)
    )
}

/// Where the fuse sits.
#[must_use]
pub fn place_text(protection: &Protection) -> String {
    let places = protection.positions.iter().map(|position| match position {
        Position::AtSource => "At the source itself".to_owned(),
        Position::Within { most_m } => {
            format!("where that cannot be, within {}", centimeters(*most_m))
        }
        Position::WithinIfEnclosed { most_m } => format!(
            "within {} if the conductor is sheathed or enclosed all the way",
            centimeters(*most_m)
        ),
        Position::AsCloseAsPracticable { most_m } => format!(
            "as close as can be, and no further than {}",
            centimeters(*most_m)
        ),
    });
    format!("{}.", places.collect::<Vec<_>>().join("; "))
}

/// What it must break.
#[must_use]
pub fn fault_text(protection: &Protection) -> String {
    let from = match protection.fault_from {
        FaultFrom::Maker => "by the maker’s short-circuit current, all blocks together",
        FaultFrom::Resistance => {
            "by the lowest likely resistance of the blocks, half of it where that is a guess; a maker’s figure is better"
        }
        FaultFrom::Panels => "panels give little more than they always do",
    };
    format!(
        "It must break {} at {} of direct voltage: {from}.",
        amps(protection.fault_a),
        volts(protection.charge_v)
    )
}

/// A kind of fuse at this place: what it breaks, and whether it will do.
#[must_use]
pub fn kind_text(kind: &crate::answer::wiring::KindFigures) -> (String, &'static str) {
    let breaks = kind
        .interrupts_a
        .map_or_else(|| "not at these volts".into(), amps);
    let suits = match (kind.bears_voltage && kind.breaks_fault, kind.made_in_rating) {
        (true, true) => "will do",
        (true, false) => "not made in that size",
        (false, _) => "no",
    };
    (breaks, suits)
}

/// A note on a leg.
#[must_use]
pub fn leg_note(plan: &Plan, note: &LegNote) -> String {
    match note {
        LegNote::NoRoomForHeat { air_c, rating_c } => format!(
            "The air, {}, is as hot as the cooler of insulation and lugs may be, {}: nothing may flow.",
            degrees(plan, *air_c),
            degrees(plan, *rating_c)
        ),
        LegNote::NoGaugePasses => "No gauge up to 4/0 passes.".into(),
        LegNote::NoMetricPasses => "No metric size up to 120 mm² passes.".into(),
        LegNote::NoCurrentCarries => {
            "No current carries that power from those volts, whatever the size.".into()
        }
        LegNote::SolidWire => {
            "Solid wire cracks where things shake, and is forbidden on boats (33 CFR 183.425(a))."
                .into()
        }
        LegNote::ReadAsThinner { stated_mm2 } => format!(
            "{} is between two sizes, and counts as the thinner.",
            with_unit(*stated_mm2, "mm²")
        ),
        LegNote::LengthTaken { taken_m } => format!(
            "No length is given: {} was taken.",
            plan_value(plan, Unit::Meter, *taken_m)
        ),
        LegNote::Connections { lost_v } => format!(
            "Lugs, switches and fuse holders lose {} more, which the cable may not.",
            volts(*lost_v)
        ),
        LegNote::ShutIn => {
            "Rated as shut in a wall or conduit: in a building nobody can see where it runs.".into()
        }
    }
}

/// A row of what the blocks are asked: the whole, the worst, the limit.
#[must_use]
pub fn burden_row(burden: &Burden) -> [String; 4] {
    [
        amps(burden.total_a),
        amps(burden.worst_a),
        burden.limit_a.map_or_else(|| "not said".into(), amps),
        verdict_name(burden.verdict).into(),
    ]
}

/// How the burden hangs on the take-off.
#[must_use]
pub fn take_off_line(bank: &BankLimits) -> Option<String> {
    if bank.by_take_off.is_empty() {
        return None;
    }
    let each = bank
        .by_take_off
        .iter()
        .map(|one| format!("{} with {}", amps(one.worst_a), take_off_name(one.take_off)));
    let even_a = bank.continuous.total_a / f64::from(bank.parallel_count);
    Some(format!(
        "An even share is {}. The block that works hardest gives {}. (Kirchhoff’s laws over blocks and links.)",
        amps(even_a),
        each.collect::<Vec<_>>().join(", ")
    ))
}

/// The fuse of each string of blocks.
#[must_use]
pub fn string_fuse_line(bank: &BankLimits) -> Option<String> {
    let rating_a = bank.string_fuse_a?;
    let fault = bank.string_fault_a.map_or_else(String::new, |fault_a| {
        let kinds = bank.string_kinds.iter().filter(|one| one.suits);
        let kinds: Vec<&str> = kinds.map(|one| fuse_kind_name(one.kind)).collect();
        let which = match kinds.as_slice() {
            [] => "no kind listed here breaks that: ask the maker".to_owned(),
            kinds => format!("{} will do", kinds.join(", ")),
        };
        format!(" It must break {}: {which}.", amps(fault_a))
    });
    Some(format!(
        "Each of the {} strings has its own fuse, {}, where its lead bears that.{fault}",
        bank.parallel_count,
        amps(rating_a)
    ))
}

/// How the start is held against the blocks.
#[must_use]
pub fn start_line(bank: &BankLimits) -> Option<String> {
    bank.start_by_continuous.then(|| {
        format!(
            "The surge of {}{THIN}ms is held against the continuous limit: no peak that lasts so long was said.",
            plain(bank.start_ms)
        )
    })
}

/// The panels’ side, sentence by sentence.
#[must_use]
pub fn solar_lines(plan: &Plan, side: &SolarSide) -> Vec<String> {
    let from = if side.short_circuit_stated {
        "by their label"
    } else {
        "worked out from their watts, 8 % above the best current (common practice)"
    };
    let mut lines = vec![format!(
        "{} in short circuit, {from}: wire and fuse for 1.25 × 1.25 times that, {} (NFPA 70 section 690.8, from memory).",
        amps(side.short_circuit_a),
        amps(side.design_a)
    )];
    let limit = match (side.controller_limit_v, side.within) {
        (Some(limit_v), Some(true)) => format!("the controller bears {}", volts(limit_v)),
        (Some(limit_v), _) => format!(
            "the controller bears {} only, and a moment above it can destroy it",
            volts(limit_v)
        ),
        (None, _) => "what the controller bears was not said".into(),
    };
    lines.push(format!(
        "On a morning of {} the longest string stands at {} with no current; {limit} (NFPA 70 section 690.7, from memory).",
        degrees(plan, side.coldest_c),
        volts(side.cold_open_v)
    ));
    lines.push(match side.string_fuse_a {
        Some(rating_a) => format!(
            "{} strings in parallel: each with its own fuse, {}.",
            side.strings_count,
            amps(rating_a)
        ),
        None => "Fewer than three strings in parallel: none needs a fuse of its own (NFPA 70 section 690.9, from memory).".into(),
    });
    lines
}
