// <till-morning>: a few numbers of a plan to type, and the hours they give.
import type { Answer, Plan, Refusal, Refused } from './index.js';

/** What the module said of the plan as it stands. */
export type Result = { ok: true; answer: Answer } | Refused<Refusal>;

/**
 * Attributes: `link` (what stands after `#` in a link of the page), `fields` (one to four
 * addresses of the plan, apart by spaces; else those of `plan.reader`, else charge, voltage
 * and depth), `lang` (`en` or `de`).
 */
export class TillMorning extends HTMLElement {
  /** The plan with what was typed; a copy. To set it is to show another. */
  get plan(): Plan | null;
  set plan(plan: Plan | null);
  /** The last result; null before the first. */
  readonly result: Result | null;
}

declare global {
  interface HTMLElementTagNameMap { 'till-morning': TillMorning }
  interface HTMLElementEventMap {
    /** After each answer, bubbling: `detail` is the result. */
    'till-morning-answer': CustomEvent<Result>;
  }
}
