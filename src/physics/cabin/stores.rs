//! The cabin as two stores of heat and the paths between them.

use super::error::{CabinError, CabinInput, within};
use super::exact::Mode;
use super::state::Drive;
use crate::quantity::{
    HeatCapacity, MassRate, Power, ThermalConductance, ThermodynamicTemperature, in_celsius,
    in_joules_per_kelvin, in_kilograms_per_second, in_watts_per_kelvin, watts,
};

/// Heat capacities accepted, J/K.
const CAPACITY_J_K: (f64, f64) = (1e3, 1e9);
/// Conductances accepted, W/K.
const CONDUCTANCE_W_K: (f64, f64) = (0.0, 1e5);
/// Air changes accepted, kg/s.
const AIR_KG_S: (f64, f64) = (0.0, 50.0);
/// Specific heat of the air that is exchanged, J/(kg K): dry air; its vapour
/// adds up to 2 %.
pub const CP_AIR_J_KG_K: f64 = 1_006.0;

/// Two stores and four paths:
///
/// ```text
///   outdoors --- glass + air change --- AIR --- inside film --- SHELL --- insulation --- outdoors
/// ```
///
/// The air store holds air and contents; the shell store lining and frame,
/// inside most of the insulation. Set `air_to_shell` and `shell_to_outside` to
/// zero for a cabin of one store.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stores {
    /// Heat taken up by air and contents.
    pub air: HeatCapacity,
    /// Heat taken up by the shell.
    pub shell: HeatCapacity,
    /// Glass and whatever else conducts without storing.
    pub glass: ThermalConductance,
    /// Air that comes and goes.
    pub air_change: MassRate,
    /// Inside film.
    pub air_to_shell: ThermalConductance,
    /// Insulation and outside film.
    pub shell_to_outside: ThermalConductance,
}

/// The same, checked and in plain numbers: what the kernel works on.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Network {
    pub air_j_k: f64,
    pub shell_j_k: f64,
    pub glass_w_k: f64,
    pub air_change_w_k: f64,
    pub air_shell_w_k: f64,
    pub shell_out_w_k: f64,
}

impl Stores {
    /// Conductance from indoors to outdoors in steady state, every path together.
    #[must_use]
    pub fn overall(&self) -> ThermalConductance {
        let (inside, outside) = (self.air_to_shell, self.shell_to_outside);
        let through_shell = if in_watts_per_kelvin(inside + outside) > 0.0 {
            inside * (outside / (inside + outside))
        } else {
            inside
        };
        self.glass + self.air_change_conductance() + through_shell
    }

    /// What the air change conducts: its mass flow times 1 006 J/(kg K).
    #[must_use]
    pub fn air_change_conductance(&self) -> ThermalConductance {
        let kg_s = in_kilograms_per_second(self.air_change);
        crate::quantity::watts_per_kelvin(kg_s * CP_AIR_J_KG_K)
    }

    /// Sensible cooling that holds the air at `hold`, all stores settled.
    ///
    /// Negative where heat would be needed.
    ///
    /// # Errors
    /// [`CabinError::OutOfRange`] or [`CabinError::NotANumber`].
    pub fn steady_load(
        &self,
        drive: &Drive,
        hold: ThermodynamicTemperature,
    ) -> Result<Power, CabinError> {
        let net = self.network()?;
        let hold_c = within(
            CabinInput::Temperature,
            in_celsius(hold),
            super::state::RANGE_C,
        )?;
        drive.check()?;
        let through = net.air_shell_w_k + net.shell_out_w_k;
        let shell_c = if through > 0.0 {
            (net.air_shell_w_k * hold_c + net.shell_out_w_k * drive.outdoor_c + drive.sun_shell_w)
                / through
        } else {
            hold_c
        };
        Ok(watts(
            net.direct_w_k() * (drive.outdoor_c - hold_c)
                + drive.air_w()
                + net.air_shell_w_k * (shell_c - hold_c),
        ))
    }

    /// The network in plain numbers.
    ///
    /// Range: capacities 1 kJ/K to 1 GJ/K, conductances 0 to 100 kW/K, air
    /// change 0 to 50 kg/s.
    ///
    /// # Errors
    /// [`CabinError::OutOfRange`] or [`CabinError::NotANumber`].
    pub(super) fn network(&self) -> Result<Network, CabinError> {
        let capacity =
            |input, of: HeatCapacity| within(input, in_joules_per_kelvin(of), CAPACITY_J_K);
        let path = |of: ThermalConductance| {
            within(
                CabinInput::Conductance,
                in_watts_per_kelvin(of),
                CONDUCTANCE_W_K,
            )
        };
        let kg_s = in_kilograms_per_second(self.air_change);
        Ok(Network {
            air_j_k: capacity(CabinInput::AirCapacity, self.air)?,
            shell_j_k: capacity(CabinInput::ShellCapacity, self.shell)?,
            glass_w_k: path(self.glass)?,
            air_change_w_k: within(CabinInput::AirChange, kg_s, AIR_KG_S)? * CP_AIR_J_KG_K,
            air_shell_w_k: path(self.air_to_shell)?,
            shell_out_w_k: path(self.shell_to_outside)?,
        })
    }
}

impl Network {
    /// Outdoors straight to the air, W/K.
    pub(super) fn direct_w_k(&self) -> f64 {
        self.glass_w_k + self.air_change_w_k
    }
}

/// The two modes of a network: how fast they decay and how they are made of
/// the two temperatures.
///
/// Scaled by the root of the capacities the matrix is symmetric, so the modes
/// are a rotation: no defective case exists.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Modes {
    /// Decay rates, 1/s, never positive.
    pub lambda: [f64; 2],
    /// Air temperature made of the modes; also modal push of a watt on the air.
    pub to_air: [f64; 2],
    /// Shell temperature made of the modes; likewise for the shell.
    pub to_shell: [f64; 2],
    air_j_k: f64,
    shell_j_k: f64,
}

impl Modes {
    /// Modes of a network.
    pub(super) fn of(net: &Network) -> Self {
        let (root_air, root_shell) = (net.air_j_k.sqrt(), net.shell_j_k.sqrt());
        let a = -(net.direct_w_k() + net.air_shell_w_k) / net.air_j_k;
        let d = -(net.air_shell_w_k + net.shell_out_w_k) / net.shell_j_k;
        let b = net.air_shell_w_k / (root_air * root_shell);
        // Half the angle that makes the symmetric matrix diagonal.
        let (sin, cos) = if b == 0.0 {
            (0.0, 1.0)
        } else {
            (0.5 * (2.0 * b).atan2(a - d)).sin_cos()
        };
        let spread = |x: f64, y: f64| (a * x * x + 2.0 * b * x * y + d * y * y).min(0.0);
        Self {
            lambda: [spread(cos, sin), spread(-sin, cos)],
            to_air: [cos / root_air, -sin / root_air],
            to_shell: [sin / root_shell, cos / root_shell],
            air_j_k: net.air_j_k,
            shell_j_k: net.shell_j_k,
        }
    }

    /// Both modes over a segment: temperatures at its start, watts into each
    /// store from everything but the other store, and how those watts change.
    #[inline]
    pub(super) fn driven(
        &self,
        air_c: f64,
        shell_c: f64,
        push_w: [f64; 2],
        push_w_s: [f64; 2],
    ) -> [Mode; 2] {
        let mode = |i: usize| Mode {
            y: self.air_j_k * self.to_air[i] * air_c + self.shell_j_k * self.to_shell[i] * shell_c,
            lambda: self.lambda[i],
            u: self.to_air[i] * push_w[0] + self.to_shell[i] * push_w[1],
            v: self.to_air[i] * push_w_s[0] + self.to_shell[i] * push_w_s[1],
        };
        [mode(0), mode(1)]
    }

    /// Air quantity (temperature or its integral) from the modal ones.
    #[inline]
    pub(super) fn air(&self, modal: [f64; 2]) -> f64 {
        self.to_air[0] * modal[0] + self.to_air[1] * modal[1]
    }

    /// Shell quantity from the modal ones.
    #[inline]
    pub(super) fn shell(&self, modal: [f64; 2]) -> f64 {
        self.to_shell[0] * modal[0] + self.to_shell[1] * modal[1]
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The rotation undoes itself and the decay rates keep the trace.
    #[test]
    fn modes_are_a_rotation() {
        let net = Network {
            air_j_k: 6e4,
            shell_j_k: 9e5,
            glass_w_k: 20.0,
            air_change_w_k: 5.0,
            air_shell_w_k: 60.0,
            shell_out_w_k: 8.0,
        };
        let modes = Modes::of(&net);
        let there = modes.driven(26.0, 31.0, [0.0; 2], [0.0; 2]).map(|m| m.y);
        assert!((modes.air(there) - 26.0).abs() < 1e-12);
        assert!((modes.shell(there) - 31.0).abs() < 1e-12);
        let trace = -85.0 / 6e4 - 68.0 / 9e5;
        assert!((modes.lambda[0] + modes.lambda[1] - trace).abs() < 1e-18);
    }
}
