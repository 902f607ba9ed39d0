// Walking a page with the Tab key, and what is to be seen of the focus at each stop.
import { expect, openAll } from './harness.mjs';

/** What of the page Tab should reach, in the order of the document. */
const REACHED = 'a[href], button, input, select, textarea, summary, [tabindex]';

/**
 * Marks what Tab should reach by its place in the document, and gives how much that is.
 * What is folded away or disabled is not reached.
 */
export const number = (page) => page.evaluate((selector) => {
  const all = [...document.querySelectorAll(selector)].filter((one) =>
    one.tabIndex >= 0 && !one.disabled && one.checkVisibility({ visibilityProperty: true }));
  window.stops = new Map(all.map((one, place) => [one, place]));
  return all.length;
}, REACHED);

/** Opens all there is and waits until nothing more comes: long work brings more folds. */
export async function allOpen(page) {
  await openAll(page);
  await expect(page.locator('.changes li').first()).toBeAttached();
  let before = -1;
  await expect.poll(async () => {
    await openAll(page);
    const now = await number(page);
    const same = now === before;
    before = now;
    return same;
  }, { intervals: [600] }).toBe(true);
  return before;
}

/** How it is called in a message of a test. */
const NAME = `(one) => one.id ? '#' + one.id : one.tagName.toLowerCase() + '.' + one.className + ' "' + (one.ariaLabel ?? one.textContent).trim().slice(0, 30) + '"'`;

/**
 * The element with the keyboard: its place, its name, and what is wrong with how it is
 * seen. Nothing where the keyboard is with no element.
 */
export async function focused(page) {
  const stop = await look(page);
  if (!stop?.wrong.length) return stop;
  // What comes into sight is laid out then, and the page scrolled to it: look again.
  await page.evaluate(() => new Promise((done) => { requestAnimationFrame(() => requestAnimationFrame(done)); }));
  return look(page);
}

const look = (page) => page.evaluate((name) => {
  const one = document.activeElement;
  if (!one || one === document.body) return null;
  const style = getComputedStyle(one);
  const box = one.getBoundingClientRect();
  const wide = Number.parseFloat(style.outlineWidth);
  const wrong = [];
  if (style.outlineStyle === 'none' || wide < 2) wrong.push('no outline');
  if (box.width < 10 || box.height < 10 || Number(style.opacity) < 0.5) wrong.push('too small to be seen');
  // Contrast of the outline on what is behind it (WCAG 2, 1.4.11: 3:1).
  const channels = (colour) => colour.match(/[\d.]+/g).map(Number);
  const light = (colour) => {
    const [r, g, b] = channels(colour).map((c) => (c / 255 <= 0.04045 ? c / 255 / 12.92 : ((c / 255 + 0.055) / 1.055) ** 2.4));
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  let behind = one.parentElement;
  while (behind && channels(getComputedStyle(behind).backgroundColor)[3] === 0) behind = behind.parentElement;
  const [low, high] = [light(style.outlineColor), light(getComputedStyle(behind ?? document.documentElement).backgroundColor)].sort((a, b) => a - b);
  if ((high + 0.05) / (low + 0.05) < 3) wrong.push(`outline too faint: ${style.outlineColor}`);
  // A line that what is around it cuts off is not seen.
  const out = Number.parseFloat(style.outlineOffset) + wide / 2;
  const lines = { top: box.top - out, bottom: box.bottom + out, left: box.left - out, right: box.right + out };
  const cut = new Set();
  for (let around = one.parentElement; around && around !== document.body; around = around.parentElement) {
    const its = getComputedStyle(around);
    const margin = its.contentVisibility === 'auto' ? Number.parseFloat(its.overflowClipMargin) || 0 : 0;
    if (its.overflowX === 'visible' && its.contentVisibility !== 'auto') continue;
    const edge = around.getBoundingClientRect();
    if (lines.top < edge.top - margin) cut.add('top');
    if (lines.bottom > edge.bottom + margin) cut.add('bottom');
    if (lines.left < edge.left - margin) cut.add('left');
    if (lines.right > edge.right + margin) cut.add('right');
    if (its.position === 'fixed') break;
  }
  // At the edge of a long table that scrolls one side may be cut; the other three show it.
  if (cut.size > 1) wrong.push(`outline cut off: ${[...cut].join(' ')}`);
  // In sight, and nothing that stays in its place covers it.
  const spots = [[0.5, 0.5], [0.1, 0.5], [0.9, 0.5], [0.5, 0.1], [0.5, 0.9]];
  const seen = spots.filter(([x, y]) => {
    const hit = document.elementFromPoint(box.left + x * box.width, box.top + y * box.height);
    return hit && (one.contains(hit) || hit.contains(one));
  });
  if (seen.length < 3) wrong.push(`covered or out of sight: ${seen.length} of 5 spots seen, from ${box.top | 0} to ${box.bottom | 0} of ${window.innerHeight}`);
  return { place: window.stops?.get(one), name: eval(name)(one), wrong };
}, NAME);

/** Presses Tab (or Shift+Tab) until an element has the keyboard; gives all on the way. */
export async function tabTo(page, selector, { key = 'Tab', most = 120 } = {}) {
  const way = [];
  for (let presses = 0; presses < most; presses += 1) {
    await page.keyboard.press(key);
    const stop = await focused(page);
    if (stop) way.push(stop);
    if (await page.evaluate((wanted) => document.activeElement?.matches(wanted), selector)) return way;
  }
  throw new Error(`${selector} is not reached in ${most} presses of ${key}: ${way.map(({ name }) => name).join(', ')}`);
}

/**
 * Presses Tab from where the keyboard is to the end of the page, or Shift+Tab to its
 * start; gives every stop.
 */
export async function walk(page, key = 'Tab') {
  const way = [];
  const seen = new Set();
  for (;;) {
    await page.keyboard.press(key);
    const stop = await focused(page);
    if (!stop || seen.has(stop.place)) return way;
    seen.add(stop.place);
    way.push(stop);
  }
}
