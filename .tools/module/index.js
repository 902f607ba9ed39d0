// The module's door: starts the wasm, and takes plans as objects or as JSON.
// Every call answers with an object; none throws. The types are in index.d.ts.
import load, * as wasm from './glue.js';

const refusal = (kind, more = {}) => ({ ok: false, error: { kind, ...more } });

/** Told apart only in Node, where a module's file is read and not fetched. */
async function own(address) {
  if (address.protocol !== 'file:' || typeof process === 'undefined') return address;
  const { readFile } = await import('node:fs/promises');
  return readFile(address);
}

const NIGHT = new URL('./till-morning.wasm', import.meta.url);
/** The wasm of all six questions, for `start`: near three times the weight. */
export const WHOLE = new URL('./till-morning-whole.wasm', import.meta.url);

let state = 'not_started';

/** Loads the wasm of the first two questions, or what is given: WHOLE, an address, bytes, a compiled module. */
export async function start(source) {
  try {
    const wanted = source ?? NIGHT;
    const ours = wanted === WHOLE || wanted === NIGHT;
    await load({ module_or_path: ours ? await own(wanted) : wanted });
    state = 'started';
    return { ok: true };
  } catch (error) {
    return refusal('cannot_start', { detail: String(error) });
  }
}

function ask(call, input) {
  if (state !== 'started') return refusal(state);
  let text = input;
  try {
    if (typeof input !== 'string') text = JSON.stringify(input) ?? 'null';
  } catch (error) {
    return refusal('other_shape', { detail: String(error) });
  }
  try {
    return JSON.parse(call(text));
  } catch {
    // A fault of ours, and none is known. What is in its memory is not to be trusted.
    state = 'broken';
    return refusal(state);
  }
}

export const answer = (plan) => ask(wasm.answer, plan);
export const link_from_plan = (plan) => ask(wasm.link_from_plan, plan);
export const plan_from_link = (link) => ask(wasm.plan_from_link, typeof link === 'string' ? link : '');
