// A page of one's own on the module: one field, one answer, one link.
import { answer, link_from_plan, start } from '../../pkg/index.js';

const plan = {
  version: 1,
  banks: [{ chemistry: 'lfp', battery_nominal_v: 12.8, battery_rated_ah: 100, series_count: 2, depth_percent: 90 }],
  units: [{ supply_v: 25.6, modes: [{ name: 'Hold', power_w: { value: 430, from: 'measured' } }] }],
};

const field = document.getElementById('ah');
const out = document.getElementById('hours');
const link = document.getElementById('link');

function show() {
  plan.banks[0].battery_rated_ah = Number(field.value);
  const result = answer(plan);
  if (!result.ok) {
    out.textContent = `No answer: ${result.error.kind}`;
    return;
  }
  const [run] = result.answer.runs;
  const [finding] = result.answer.findings;
  out.textContent = run
    ? `${plan.units[0].modes[0].name}: ${run.hours_h.likely.toFixed(1)} h (${run.hours_h.low.toFixed(1)} to ${run.hours_h.high.toFixed(1)})`
    : `${finding.field}: ${finding.min} to ${finding.max} is accepted`;
  const made = link_from_plan(plan);
  if (made.ok) link.hash = made.link;
}

const started = await start();
if (started.ok) {
  field.addEventListener('input', show);
  show();
} else {
  out.textContent = `The module did not start: ${started.error.detail}`;
}
