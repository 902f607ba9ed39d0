// <till-morning>: a few numbers of a plan to type, and the hours they give. For pages
// that host the module themselves; the frame needs nothing of its host.
//
//   <script type="module" src="pkg/element.js"></script>
//   <till-morning link="p1.…" fields="banks[0].battery_rated_ah night.start_clock_min"></till-morning>
//
// `link` is what stands after `#` in a link of the page; the property `plan` takes an
// object instead. After each answer it sends `till-morning-answer` with the result.
import { answer, plan_from_link, start } from './index.js';

const USUAL = ['banks[0].battery_rated_ah', 'banks[0].battery_nominal_v', 'banks[0].depth_percent'];

// `one_…`: of a bank of several batteries. The page's maker of readers' links makes them one.
const WORDS = {
  en: {
    battery_rated_ah: 'Capacity of the bank (Ah)', one_battery_rated_ah: 'Capacity of one battery (Ah)',
    battery_nominal_v: 'Voltage of the bank (V)', one_battery_nominal_v: 'Nominal voltage of one battery (V)', depth_percent: 'Maximum depth of discharge (%)',
    series_count: 'Batteries in series', parallel_count: 'Strings in parallel', health_percent: 'State of health (%)',
    start_charge_percent: 'State of charge at the start (%)', cutoff_v: 'Battery cut-off voltage (V)', power_w: 'Draw (W)',
    current_a: 'Current (A)', duty_percent: 'Compressor duty cycle (%)', never: 'does not start', to: 'to',
    range: (low, high) => `from ${low} to ${high}`, number: 'a number', failed: 'This browser could not start the calculation.',
    note: 'Estimates are not guarantees.',
  },
  de: {
    battery_rated_ah: 'Kapazität der Bank (Ah)', one_battery_rated_ah: 'Kapazität einer Batterie (Ah)',
    battery_nominal_v: 'Spannung der Bank (V)', one_battery_nominal_v: 'Nennspannung einer Batterie (V)', depth_percent: 'Entladetiefe (%)',
    series_count: 'Batterien in Reihe', parallel_count: 'Stränge parallel', health_percent: 'Gesundheitszustand (%)',
    start_charge_percent: 'Ladezustand zu Beginn (%)', cutoff_v: 'Abschaltspannung der Batterie (V)', power_w: 'Leistung (W)',
    current_a: 'Strom (A)', duty_percent: 'Einschaltdauer des Kompressors (%)', never: 'startet nicht', to: 'bis',
    range: (low, high) => `von ${low} bis ${high}`, number: 'eine Zahl', failed: 'Dieser Browser konnte die Berechnung nicht starten.',
    note: 'Schätzungen sind keine Zusagen.',
  },
};

const STYLE = `
  :host { display: block; font: inherit; }
  form { display: grid; grid-template-columns: repeat(auto-fill, minmax(min(100%, 11rem), 1fr)); gap: .75rem 1rem; }
  label { display: block; font-size: .92em; }
  input { font: inherit; width: 100%; box-sizing: border-box; min-height: 44px; padding: .35rem .6rem; }
  input[aria-invalid] { outline: 2px solid #a3211b; }
  .error { margin: .2rem 0 0; font-size: .92em; font-weight: 600; }
  dl { display: grid; grid-template-columns: auto 1fr; gap: .25rem 1rem; font-variant-numeric: tabular-nums; }
  dt { font-weight: 600; } dd { margin: 0; }
`;

// Adopted and not written into the page: no content policy has to allow it.
let looks;
function sheet() {
  looks ??= new CSSStyleSheet();
  looks.replaceSync(STYLE);
  return looks;
}

const steps = (address) => address.split(/[.[\]]+/).filter(Boolean);

/** The place that an address names, `[object, key]`; nothing where the plan has no such place. */
function place(plan, address) {
  const way = steps(address);
  const key = way.pop();
  // Own keys alone: an address may come from anybody's link.
  const of = way.reduce((at, step) => (at && Object.hasOwn(at, step) ? at[step] : undefined), plan);
  return of && typeof of === 'object' && key !== '__proto__' ? [of, key] : undefined;
}

function read(plan, address) {
  const [of, key] = place(plan, address) ?? [];
  const value = of && Object.hasOwn(of, key) ? of[key] : undefined;
  return value !== null && typeof value === 'object' ? value.value : value;
}

function write(plan, address, number) {
  const [of, key] = place(plan, address) ?? [];
  if (!of) return;
  const before = Object.hasOwn(of, key) ? of[key] : undefined;
  if (number === undefined) delete of[key];
  else of[key] = before !== null && typeof before === 'object' ? { ...before, value: number } : number;
}

/** A text as people type it; NaN for what is none. */
function typed(text) {
  const plain = text.trim().replace(',', '.');
  return /^-?\d+(\.\d+)?$/.test(plain) ? Number(plain) : NaN;
}

function element(name, texts = {}, children = []) {
  const made = Object.assign(document.createElement(name), texts);
  made.append(...children);
  return made;
}

let started;

export class TillMorning extends (globalThis.HTMLElement ?? class {}) {
  static observedAttributes = ['link', 'fields', 'lang'];

  #plan = null;
  #result = null;
  #errors = new Map();
  #out;

  /** The plan as it stands, with what was typed; a copy. */
  get plan() { return this.#plan && structuredClone(this.#plan); }

  set plan(plan) {
    this.#plan = plan ? structuredClone(plan) : null;
    this.#build();
  }

  /** What the module said last. */
  get result() { return this.#result; }

  connectedCallback() {
    if (!this.shadowRoot) this.attachShadow({ mode: 'open' }).adoptedStyleSheets = [sheet()];
    started ??= start();
    started.then(({ ok }) => {
      if (!ok) return this.shadowRoot.replaceChildren(element('p', { textContent: this.#say.failed }));
      if (!this.#plan && this.hasAttribute('link')) this.#open();
      else this.#build();
    });
  }

  attributeChangedCallback(name, before, now) {
    if (before === now || !this.isConnected) return;
    started?.then(({ ok }) => ok && (name === 'link' ? this.#open() : this.#build()));
  }

  get #language() {
    const asked = this.lang || this.#plan?.reader?.language || this.closest('[lang]')?.lang || '';
    return /^de\b/i.test(asked) ? 'de' : 'en';
  }

  get #say() { return WORDS[this.#language]; }

  #open() {
    const found = plan_from_link(this.getAttribute('link') ?? '');
    this.plan = found.ok ? found.plan : null;
    if (!found.ok) this.#tell(found);
  }

  #fields() {
    const own = this.getAttribute('fields')?.split(/[\s,]+/).filter(Boolean);
    const wanted = own?.length ? own : this.#plan.reader?.open ?? USUAL;
    return wanted.filter((address) => place(this.#plan, address)).slice(0, 4);
  }

  #build() {
    if (!this.shadowRoot) return;
    this.#errors.clear();
    if (!this.#plan) return this.shadowRoot.replaceChildren();
    this.#out = element('div', { role: 'status' });
    const form = element('form', { onsubmit: (event) => event.preventDefault() }, this.#fields().map((address) => this.#field(address)));
    this.shadowRoot.replaceChildren(form, this.#out, element('p', { textContent: this.#say.note }));
    this.#ask();
  }

  #field(address) {
    const id = steps(address).join('-');
    const now = read(this.#plan, address);
    const input = element('input', { id, inputMode: 'decimal', autocomplete: 'off', value: now === undefined ? '' : this.#number(now) });
    const error = element('p', { className: 'error', id: `${id}-error`, hidden: true });
    input.setAttribute('aria-describedby', error.id);
    this.#errors.set(address, { input, error });
    input.addEventListener('input', () => {
      const empty = input.value.trim() === '';
      const number = empty ? undefined : typed(input.value);
      if (Number.isNaN(number)) return this.#mark(address, this.#say.number);
      write(this.#plan, address, number);
      this.#ask();
    });
    return element('div', {}, [element('label', { htmlFor: id, textContent: this.#label(address) }), input, error]);
  }

  /** The words for it, or else its key, which ends in its unit. */
  #label(address) {
    const way = steps(address);
    const bank = way[0] === 'banks' ? this.#plan.banks[way[1]] : undefined;
    const several = (bank?.series_count ?? 1) * (bank?.parallel_count ?? 1) > 1;
    const key = several && /^battery_/.test(way.at(-1)) ? `one_${way.at(-1)}` : way.at(-1);
    const words = Object.hasOwn(this.#say, key) && typeof this.#say[key] === 'string' ? this.#say[key] : way.at(-1);
    const mode = way[2] === 'modes' ? this.#plan.units?.[way[1]]?.modes?.[way[3]]?.name : undefined;
    return mode ? `${mode}: ${words}` : words;
  }

  #number(value) {
    return new Intl.NumberFormat(this.#language, { useGrouping: false, maximumFractionDigits: 4 }).format(value);
  }

  #hours(hours) {
    if (hours >= 72) return new Intl.NumberFormat(this.#language, { style: 'unit', unit: 'day', unitDisplay: 'long', maximumFractionDigits: 1 }).format(hours / 24);
    const step = hours >= 2 ? 10 : 1;
    const all = Math.round((hours * 60) / step) * step;
    const [whole, rest] = [Math.floor(all / 60), all % 60];
    return [whole ? `${whole} h` : '', rest || !whole ? `${rest} min` : ''].filter(Boolean).join(' ');
  }

  #mark(address, text) {
    const { input, error } = this.#errors.get(address);
    input.toggleAttribute('aria-invalid', Boolean(text));
    if (text) input.setAttribute('aria-invalid', 'true');
    error.hidden = !text;
    error.textContent = text ?? '';
  }

  #ask() {
    for (const address of this.#errors.keys()) this.#mark(address);
    const result = answer(this.#plan);
    if (result.ok) {
      for (const finding of result.answer.findings) {
        if (finding.severity === 'error' && this.#errors.has(finding.field)) {
          this.#mark(finding.field, this.#say.range(this.#number(finding.min), this.#number(finding.max)));
        }
      }
      // Where nothing can be answered, the last good answer stays.
      if (result.answer.runs.length) this.#out.replaceChildren(element('dl', {}, result.answer.runs.flatMap((run) => this.#run(run))));
    } else {
      const wrong = [...this.#errors.keys()].find((address) => result.error.detail?.startsWith(`${address}:`));
      if (wrong) this.#mark(wrong, this.#say.number);
    }
    this.#tell(result);
  }

  #run({ unit, mode, hours_h: { low, likely, high } }) {
    const name = this.#plan.units[unit].modes[mode].name;
    const { never, to } = this.#say;
    const said = likely > 0 ? `${this.#hours(likely)} (${this.#hours(low)} ${to} ${this.#hours(high)})` : never;
    return [element('dt', { textContent: name }), element('dd', { textContent: said })];
  }

  #tell(result) {
    this.#result = result;
    this.dispatchEvent(new CustomEvent('till-morning-answer', { detail: result, bubbles: true, composed: true }));
  }
}

if (globalThis.customElements && !customElements.get('till-morning')) customElements.define('till-morning', TillMorning);
