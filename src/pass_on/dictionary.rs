//! What the text of most plans holds, known to both ends of a link.
//!
//! A link then carries only what differs: the demonstration plan takes 40 % of
//! the characters that it takes without (measured with zlib's own preset
//! dictionary). Nothing but length hangs on what is in here: a key that is
//! missing costs its letters once.

/// For packing 1. **Never to be changed, by so much as a space**: links already
/// given are unpacked with it (`tests/link` holds some). A better one is for
/// packing 2. Rare words stand first, the usual plan last, where it is nearest.
pub(super) const PACKING_1: &str = concat!(
    r#""measured_at_v":"current_a":{"value":"rated_hours_h":"peukert_exponent":"#,
    r#""block_open_circuit":[{"charge_percent":0.0,"open_circuit_v":12.0},{"charge_percent":"#,
    r#""limit_w":"square_loss_percent_per_kw":{"value":3.0,"from":"guess"},"#,
    r#""proportional_loss_percent":{"value":5.0,"from":"guess"},"#,
    r#""feed":{"kind":"inverter","no_load_w":{"value":12.0,"from":"guess"},"#,
    r#""kind":"dc_dc","output_v":13.0,"efficiency_percent":{"value":92.0,"from":"guess"},"#,
    r#""idle_w":{"value":2.0,"from":"guess"},"limit_a":"#,
    r#""show":{"us_units":true}"unknown":"hours","unknown":"draw","unknown":"depth","#,
    r#""from":"label","spread_percent":10.0}"nmc"sodium_ion"agm"gel"flooded""#,
    r#"{"version":1,"title":"","banks":[{"name":"","chemistry":"lfp","block_nominal_v":12.8,"#,
    r#""block_rated_ah":100.0,"series_count":1,"parallel_count":1,"health_percent":{"value":"#,
    r#""start_charge_percent":{"value":"depth_percent":80.0,"cutoff_v":"#,
    r#""block_current_limit_a":100.0,"block_resistance_mohm":{"value":"always_on_w":{"value":"#,
    r#""measured":{"measured_ah":{"value":"measured_wh":{"value":"load_w":{"value":"#,
    r#","from":"measured"}}}],"units":[{"name":"","supply_v":24.0,"cutoff_v":21.0,"#,
    r#""cable":{"length_m":2.5,"area_mm2":16.0,"temperature_c":40.0,"connections_mohm":0.0},"#,
    r#""modes":[{"name":"","power_w":{"value":,"from":"measured"},"duty_percent":{"value":"#,
    r#","from":"measured"},"standby_w":{"value":,"from":"guess"}},{"name":""}]}],"#,
    r#""loads":[{"name":"","power_w":{"value":0.0,"from":"guess"}},{"name":""}],"#,
    r#""night":{"start_clock_min":1260,"wanted_h":10.0,"asked_unit":1,"asked_mode":1,"#,
    r#""ageing_percent":80.0,"margin_percent":10.0}}"#,
);
