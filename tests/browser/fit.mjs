// What does not fit: text and controls that are cut off, stick out or lie over one another.

/**
 * Gives a line for each fault of the page as it is laid out now. Everything must be laid
 * out (`layOut`); drawings are left out, as are places that scroll sideways by
 * themselves, once they are within the page.
 */
export const misfits = (page) => page.evaluate(() => {
  const faults = new Set();
  const name = (one) => `${one.id ? `#${one.id}` : `${one.tagName.toLowerCase()}.${one.className}`} "${(one.value || one.textContent || one.ariaLabel || '').trim().slice(0, 40)}"`;
  const style = new Map();
  const styleOf = (one) => { if (!style.has(one)) style.set(one, getComputedStyle(one)); return style.get(one); };
  /** The nearest element around that meets a test, itself included. */
  const around = (one, test) => { for (let at = one; at && at !== document.documentElement; at = at.parentElement) if (test(at, styleOf(at))) return at; return null; };
  const isHidden = (one, its) => its.clipPath !== 'none' || Number(its.opacity) === 0 || one.tagName === 'svg';
  const floats = (_, its) => its.position === 'sticky' || its.position === 'fixed';
  const scrolls = (_, its) => its.overflowX === 'auto' || its.overflowX === 'scroll';
  const cuts = (one, its) => one !== document.body && (its.overflowX === 'hidden' || its.overflowX === 'clip');
  const boxes = [];
  const add = (owner, rect) => {
    if (rect.width < 2 || rect.height < 2) return;
    const scroller = around(owner, scrolls);
    const shown = scroller ? scroller.getBoundingClientRect() : rect;
    if (shown.right > window.innerWidth + 1 || shown.left < -1) faults.add(`sticks out of the page: ${name(owner)}`);
    const cutter = around(owner.parentElement, cuts)?.getBoundingClientRect();
    if (cutter && (rect.right > cutter.right + 1 || rect.bottom > cutter.bottom + 1)) faults.add(`cut off: ${name(owner)}`);
    if (!scroller && !around(owner, floats)) boxes.push({ owner, left: rect.left, right: rect.right, top: rect.top + window.scrollY, bottom: rect.bottom + window.scrollY });
  };
  const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let text = texts.nextNode(); text; text = texts.nextNode()) {
    const owner = text.parentElement;
    if (!text.data.trim() || !owner.checkVisibility() || owner.closest('option, script, style, noscript') || around(owner, isHidden)) continue;
    const range = document.createRange();
    range.selectNodeContents(text);
    for (const rect of range.getClientRects()) add(owner, rect);
  }
  for (const one of document.querySelectorAll('input, select, button, summary')) {
    if (!one.checkVisibility() || around(one, isHidden) || one.matches('.picture-spot')) continue;
    add(one, one.getBoundingClientRect());
    if (one.matches('input[type=text]') && one.value.length <= 12 && one.scrollWidth > one.clientWidth + 1) faults.add(`its text is cut off: ${name(one)}`);
  }
  boxes.sort((one, other) => one.top - other.top);
  for (const [at, one] of boxes.entries()) {
    for (let next = at + 1; next < boxes.length && boxes[next].top < one.bottom; next += 1) {
      const other = boxes[next];
      const wide = Math.min(one.right, other.right) - Math.max(one.left, other.left);
      const high = Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top);
      // Lines of one text are set closer than their boxes are high.
      if (wide < 4 || high < 8) continue;
      if (one.owner.contains(other.owner) || other.owner.contains(one.owner)) continue;
      faults.add(`over one another: ${name(one.owner)} and ${name(other.owner)}`);
    }
  }
  const wide = document.documentElement.scrollWidth;
  if (wide > window.innerWidth) faults.add(`the page is ${wide} px wide`);
  return [...faults];
});
