// How long a cooling unit runs on a battery bank: the engine as three calls.
import type { Plan } from './plan.js';
import type { Answer } from './answer.js';
export type { Plan, Answer };

/** Why there is no answer, plan or link. */
export type Refusal =
  /** `start()` has not been called, or has not come back yet. */
  | { kind: 'not_started' }
  /** A fault of ours: load the page again. */
  | { kind: 'broken' }
  /** The text is no link of ours, or there is none. */
  | { kind: 'no_link' }
  /** A part of the link is missing or changed. */
  | { kind: 'damaged' }
  /** Longer than is read or written, in bytes. */
  | { kind: 'too_long'; most: number }
  /** Made by a later (or no known) version. */
  | { kind: 'unknown_version'; version: number }
  /** Not JSON from this place on, counted from 1. */
  | { kind: 'malformed'; line: number; column: number }
  /** Of another shape than a plan's: which key, and what is expected there. */
  | { kind: 'other_shape'; detail: string };

export type Refused<Why> = { ok: false; error: Why };

/** For `start`: the wasm of all six questions, at near three times the weight. */
export const WHOLE: URL;

/**
 * Loads the wasm that lies beside this module, or the one given. Without an argument
 * answers have the first two questions, hours and bank; after `start(WHOLE)` they have
 * all six. Call it once and wait for it; a second call does no harm. The promise never
 * rejects.
 */
export function start(
  source?: string | URL | Request | Response | BufferSource | WebAssembly.Module,
): Promise<{ ok: true } | Refused<{ kind: 'cannot_start'; detail: string }>>;

/**
 * Answers a plan, given as an object or as JSON. A plan with a value outside its
 * range is answered as far as it can be: `answer.findings` names the field and the
 * accepted range. The same plan always gets the same answer. `day`, `refill`, `pocket`,
 * `claims` and `wiring` are there after `start(WHOLE)` alone.
 */
export function answer(plan: Plan | string): { ok: true; answer: Answer } | Refused<Refusal>;

/** The plan in a link: what stands after `#` in the page's address, with or without it. */
export function plan_from_link(link: string): { ok: true; plan: Plan } | Refused<Refusal>;

/** The text to put after `#` in the page's address. */
export function link_from_plan(plan: Plan | string): { ok: true; link: string } | Refused<Refusal>;
