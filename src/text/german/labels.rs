//! Names of fields, banks and modes.

use crate::{
    physics::battery::Chemistry,
    plan::{
        Path, Plan,
        path::{BankField as B, ModeField as M, NightField as N, UnitField as U},
    },
    text::{
        field_label,
        reader::{Own, own_label},
    },
};

/// A field's name on the reader's page.
pub(super) fn label(plan: &Plan, path: Path) -> String {
    match own_label(plan, path) {
        Own::Bank(B::BatteryRatedAh) => "Kapazität der Bank".into(),
        Own::Bank(B::BatteryNominalV) => "Spannung der Bank".into(),
        Own::Mode(unit, mode) => format!("{}: {}", mode_name(plan, unit, mode), name(path)),
        Own::Load(load) => format!("{load}: {}", name(path)),
        Own::Bank(_) | Own::None => name(path).into(),
    }
}

/// What a field is called. Fields that the reader's page never shows, nor any
/// finding on it, keep their English names.
pub(super) fn name(path: Path) -> &'static str {
    match path {
        Path::Bank(_, field) => of_bank(field),
        Path::Unit(_, field) => of_unit(field),
        Path::Mode(_, _, field) => match field {
            M::PowerW => "Leistung im Betrieb",
            M::CurrentA => "Strom im Betrieb",
            M::MeasuredAtV => "Gemessen bei",
            M::DutyPercent => "Anteil der Zeit im Betrieb",
            M::StandbyW => "Bereitschaftsleistung",
            M::CoolingW => "Kälteleistung im Betrieb",
        },
        Path::Night(field) => match field {
            N::StartClockMin => "Beginn",
            N::WantedH => "Gewünschte Stunden",
            N::AgeingPercent => "Rest der Kapazität im Alter",
            N::MarginPercent => "Reserve",
        },
        Path::Load(_) => "Leistung",
        Path::Banks => "Batteriebänke",
        Path::Chemistry(_) => "Zellchemie",
        Path::OpenCircuit(_) => "Tabelle der Ruhespannung",
        Path::Units => "Kühlgeräte",
        Path::Modes(_) => "Betriebsarten",
        Path::Loads => "Andere Verbraucher",
        _ => field_label(crate::text::Formatter::ENGLISH, path),
    }
}

const fn of_bank(field: B) -> &'static str {
    match field {
        B::BatteryNominalV => "Eine Batterie",
        B::BatteryRatedAh => "Kapazität einer Batterie",
        B::RatedHoursH => "Angegeben über",
        B::SeriesCount => "Blöcke in Reihe",
        B::ParallelCount => "Stränge parallel",
        B::HealthPercent => "Zustand (Restkapazität)",
        B::StartChargePercent => "Ladezustand zu Beginn",
        B::DepthPercent => "Entladetiefe",
        B::CutoffV => "Abschaltung der Batterie",
        B::BatteryCurrentLimitA => "Dauerstrom einer Batterie",
        B::BatteryResistanceMohm => "Widerstand einer Batterie",
        B::PeukertExponent => "Peukert-Exponent",
        B::ParasiticW => "Batterieelektronik und Anzeige",
        B::MeasuredAh => "Gemessene Ladung, ganze Bank",
        B::MeasuredWh => "Gemessene Energie, ganze Bank",
        B::MeasuredLoadW => "Last bei dieser Messung",
    }
}

const fn of_unit(field: U) -> &'static str {
    match field {
        U::SupplyV => "Spannung, die das Gerät braucht",
        U::CutoffV => "Abschaltung des Geräts",
        U::CableLengthM => "Kabel, einfache Länge",
        U::CableAreaMm2 => "Leiterquerschnitt",
        U::CableTemperatureC => "Leitertemperatur",
        U::ConnectionsMohm => "Sicherungen, Schalter und Kabelschuhe",
        U::OutputV => "Ausgang des Wandlers",
        U::EfficiencyPercent => "Wirkungsgrad des Wandlers",
        U::IdleW => "Leerlauf des Wandlers",
        U::LimitA => "Grenze des Wandlers",
        U::NoLoadW => "Leerlauf des Wechselrichters",
        U::ProportionalLossPercent => "Verlust des Wechselrichters, proportional",
        U::SquareLossPercentPerKw => "Verlust des Wechselrichters, quadratisch",
        U::LimitW => "Grenze des Wechselrichters",
        U::InverterCutoffV => "Abschaltung des Wechselrichters",
    }
}

/// A line under the field, where the label alone may be misread.
pub(super) const fn hint(path: Path) -> &'static str {
    match path {
        Path::Bank(_, B::BatteryRatedAh) => {
            "Wie aufgedruckt. „2x100“ und „1280 Wh“ werden verstanden."
        }
        Path::Bank(_, B::DepthPercent) => "Anteil des Vorrats, den Sie nutzen wollen.",
        Path::Bank(_, B::CutoffV) => "An den Klemmen der Bank.",
        Path::Mode(_, _, M::PowerW) => "Watt in das Gerät, solange es läuft.",
        Path::Mode(_, _, M::CurrentA) => "Ampere in das Gerät, solange es läuft.",
        _ => "",
    }
}

pub(super) const fn chemistry_name(chemistry: Chemistry) -> &'static str {
    match chemistry {
        Chemistry::Lfp => "LFP",
        Chemistry::Nmc => "NMC",
        Chemistry::SodiumIon => "Natrium-Ionen",
        Chemistry::Agm => "Blei, AGM",
        Chemistry::Gel => "Blei, Gel",
        Chemistry::Flooded => "Blei, nass",
    }
}

/// The author's own name of a mode.
pub(super) fn mode_name(plan: &Plan, unit: usize, mode: usize) -> String {
    let name = plan.mode(unit, mode).map_or("", |mode| mode.name.trim());
    named(name, "Betriebsart", mode)
}

pub(super) fn unit_name(plan: &Plan, unit: usize) -> String {
    let name = plan.units.get(unit).map_or("", |unit| unit.name.trim());
    named(name, "Gerät", unit)
}

fn named(name: &str, kind: &str, at: usize) -> String {
    if name.is_empty() {
        format!("{kind} {}", at + 1)
    } else {
        name.into()
    }
}

/// A bank's name: the author's own, or what it is made of.
pub(super) fn bank(plan: &Plan, at: usize) -> String {
    let Some(bank) = plan.banks.get(at) else {
        return String::new();
    };
    if !bank.name.trim().is_empty() {
        return bank.name.trim().into();
    }
    let ah = bank.battery_rated_ah.value * f64::from(bank.parallel_count);
    format!(
        "{} {}",
        super::with_unit(bank.nominal_v(), "V"),
        super::with_unit(ah, "Ah")
    )
}
