//! What stands under which key of a plan, where a table does not say it all: what
//! must be there, what has other names among its numbers, what decides the rest.

use crate::{
    physics::battery::Chemistry,
    plan::{
        Bank, Cable, Draw, Feed, Figure, Load, Measured, Mode, Night, OpenCircuitPoint, Plan, Show,
        Unit, Unknown,
        part::{Choice, Chosen, HeldMut, Keyed, Stands, at_own_names},
        path::{BankField, ModeField, NightField, UnitField},
        slot::PlaceMut as P,
    },
};

use super::Object;

/// Not a number until read: what must be there is asked for before.
const NOT_READ: Figure = Figure::label(f64::NAN);

fn figure(to: &mut Figure) -> HeldMut<'_> {
    HeldMut::Number(P::Figure(to))
}
fn maybe_figure(to: &mut Option<Figure>) -> HeldMut<'_> {
    HeldMut::Number(P::MaybeFigure(to))
}
/// Takes the one that a name stood for; whether there was one.
fn take<T>(to: &mut T, known: Option<T>) -> bool {
    known.map(|one| *to = one).is_some()
}

fn maybe_number(to: &mut Option<f64>) -> HeldMut<'_> {
    HeldMut::Number(P::MaybeNumber(to))
}
fn number(to: &mut f64) -> HeldMut<'_> {
    HeldMut::Number(P::Number(to))
}

impl Keyed for Plan {
    fn unread() -> Self {
        Self::blank()
    }
    fn begin(&mut self, _: &Object) -> Result<&'static [&'static str], [&'static str; 2]> {
        Ok(&["version", "banks", "units"])
    }
    fn at(&mut self, key: &str) -> Option<HeldMut<'_>> {
        Some(match key {
            "version" => HeldMut::Number(P::Count(&mut self.version)),
            "title" => self.title.held_mut(),
            "banks" => HeldMut::Rows(&mut self.banks),
            "units" => HeldMut::Rows(&mut self.units),
            "loads" => HeldMut::Rows(&mut self.loads),
            "night" => HeldMut::Part(&mut self.night),
            "day" => self.day.held_mut(),
            "cabin" => self.cabin.held_mut(),
            "supply" => self.supply.held_mut(),
            "wiring" => self.wiring.held_mut(),
            "mode_plan" => self.mode_plan.held_mut(),
            "check_ins" => self.check_ins.held_mut(),
            "claims" => self.claims.held_mut(),
            "air" => self.air.held_mut(),
            "price" => self.price.held_mut(),
            "show" => HeldMut::Part(&mut self.show),
            "reader" => HeldMut::Reader(&mut self.reader),
            _ => return None,
        })
    }
}

impl Keyed for Bank {
    fn unread() -> Self {
        Self::of(Chemistry::Lfp, f64::NAN, f64::NAN)
    }
    fn begin(&mut self, _: &Object) -> Result<&'static [&'static str], [&'static str; 2]> {
        Ok(&["chemistry", "battery_nominal_v", "battery_rated_ah"])
    }
    fn at(&mut self, key: &str) -> Option<HeldMut<'_>> {
        Some(match key {
            "name" => self.name.held_mut(),
            "chemistry" => HeldMut::Choice(&mut self.chemistry),
            "battery_open_circuit" => HeldMut::Rows(&mut self.battery_open_circuit),
            "measured" => HeldMut::Part(&mut self.measured),
            key => HeldMut::Number(self.place_mut(BankField::of_key(key)?)?),
        })
    }
}

impl Chosen for Chemistry {
    fn choose(&mut self, name: &str) -> bool {
        take(self, Self::ALL.into_iter().find(|kind| kind.key() == name))
    }
}

impl Keyed for OpenCircuitPoint {
    fn unread() -> Self {
        Self {
            charge_percent: f64::NAN,
            open_circuit_v: f64::NAN,
        }
    }
    fn begin(&mut self, _: &Object) -> Result<&'static [&'static str], [&'static str; 2]> {
        Ok(&["charge_percent", "open_circuit_v"])
    }
    at_own_names! { charge_percent: number, open_circuit_v: number }
}

impl Keyed for Measured {
    fn unread() -> Self {
        Self::default()
    }
    at_own_names! { measured_ah: maybe_figure, measured_wh: maybe_figure, load_w: maybe_figure }
}

impl Keyed for Unit {
    fn unread() -> Self {
        Self::of(Vec::new())
    }
    fn begin(&mut self, _: &Object) -> Result<&'static [&'static str], [&'static str; 2]> {
        Ok(&["modes"])
    }
    fn at(&mut self, key: &str) -> Option<HeldMut<'_>> {
        Some(match key {
            "name" => self.name.held_mut(),
            "feed" => HeldMut::Part(&mut self.feed),
            "cable" => HeldMut::Part(&mut self.cable),
            "cooling" => self.cooling.held_mut(),
            "modes" => HeldMut::Rows(&mut self.modes),
            key => HeldMut::Number(self.place_mut(UnitField::of_key(key)?)?),
        })
    }
}

impl Keyed for Cable {
    fn unread() -> Self {
        Self::default()
    }
    fn begin(&mut self, _: &Object) -> Result<&'static [&'static str], [&'static str; 2]> {
        Ok(&["length_m"])
    }
    at_own_names! { length_m: number, area_mm2: maybe_number, temperature_c: number, connections_mohm: number }
}

impl Keyed for Feed {
    fn unread() -> Self {
        Self::Direct
    }
    fn begin(&mut self, said: &Object) -> Result<&'static [&'static str], [&'static str; 2]> {
        let (feed, required): (Self, &[&str]) =
            match said.get("kind").and_then(|kind| kind.as_str()) {
                Some("direct") => (Self::Direct, &[]),
                Some("dc_dc") => (
                    Self::DcDc {
                        output_v: f64::NAN,
                        efficiency_percent: NOT_READ,
                        idle_w: NOT_READ,
                        limit_a: None,
                    },
                    &["output_v", "efficiency_percent", "idle_w"],
                ),
                Some("inverter") => (
                    Self::Inverter {
                        no_load_w: NOT_READ,
                        proportional_loss_percent: NOT_READ,
                        square_loss_percent_per_kw: NOT_READ,
                        limit_w: None,
                        cutoff_v: None,
                    },
                    &[
                        "no_load_w",
                        "proportional_loss_percent",
                        "square_loss_percent_per_kw",
                    ],
                ),
                _ => return Err(["kind", "direct, dc_dc or inverter"]),
            };
        *self = feed;
        Ok(required)
    }
    fn at(&mut self, key: &str) -> Option<HeldMut<'_>> {
        Some(match (key, self) {
            ("kind", _) => HeldMut::Known,
            ("output_v", Self::DcDc { output_v, .. }) => number(output_v),
            (
                "efficiency_percent",
                Self::DcDc {
                    efficiency_percent: to,
                    ..
                },
            )
            | ("idle_w", Self::DcDc { idle_w: to, .. })
            | ("no_load_w", Self::Inverter { no_load_w: to, .. })
            | (
                "proportional_loss_percent",
                Self::Inverter {
                    proportional_loss_percent: to,
                    ..
                },
            )
            | (
                "square_loss_percent_per_kw",
                Self::Inverter {
                    square_loss_percent_per_kw: to,
                    ..
                },
            ) => figure(to),
            ("limit_a", Self::DcDc { limit_a: to, .. })
            | ("limit_w", Self::Inverter { limit_w: to, .. })
            | ("cutoff_v", Self::Inverter { cutoff_v: to, .. }) => maybe_figure(to),
            _ => return None,
        })
    }
}

impl Keyed for Mode {
    fn unread() -> Self {
        Self::of_power("", NOT_READ)
    }
    fn begin(&mut self, said: &Object) -> Result<&'static [&'static str], [&'static str; 2]> {
        if !said.contains_key("current_a") {
            return Ok(&["name", "power_w"]);
        }
        self.draw = Draw::Current {
            current_a: NOT_READ,
            measured_at_v: f64::NAN,
        };
        Ok(&["name", "measured_at_v"])
    }
    fn at(&mut self, key: &str) -> Option<HeldMut<'_>> {
        Some(match key {
            "name" => self.name.held_mut(),
            key => HeldMut::Number(self.place_mut(ModeField::of_key(key)?)?),
        })
    }
}

impl Keyed for Load {
    fn unread() -> Self {
        Self {
            name: String::new(),
            power_w: NOT_READ,
        }
    }
    fn begin(&mut self, _: &Object) -> Result<&'static [&'static str], [&'static str; 2]> {
        Ok(&["power_w"])
    }
    at_own_names! { name: Stands::held_mut, power_w: figure }
}

impl Keyed for Night {
    fn unread() -> Self {
        Self::default()
    }
    fn at(&mut self, key: &str) -> Option<HeldMut<'_>> {
        Some(match key {
            "unknown" => HeldMut::Choice(&mut self.unknown),
            "asked_unit" => self.asked_unit.held_mut(),
            "asked_mode" => self.asked_mode.held_mut(),
            key => HeldMut::Number(self.place_mut(NightField::of_key(key)?)?),
        })
    }
}

impl Chosen for Unknown {
    fn choose(&mut self, name: &str) -> bool {
        take(self, <Self as Choice>::of_key(name))
    }
}

impl Keyed for Show {
    fn unread() -> Self {
        Self::default()
    }
    fn at(&mut self, key: &str) -> Option<HeldMut<'_>> {
        (key == "us_units").then(|| self.us_units.held_mut())
    }
}
