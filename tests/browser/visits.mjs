// Visits as somebody feels them: a slowed line, a processor at a quarter of its speed.
// `make measure` and `make bench` count with these; no test does.

const BETWEEN_KEYS_MS = 120;
export const LINES = {
  'slow 4G (1.6 Mbps, 150 ms)': { downloadThroughput: 1_600_000 / 8, uploadThroughput: 750_000 / 8, latency: 150 },
  '400 kbps, 400 ms': { downloadThroughput: 400_000 / 8, uploadThroughput: 400_000 / 8, latency: 400 },
};
export const median = (values) => values.sort((a, b) => a - b)[values.length >> 1];

/** In the page: paint, long tasks, shifts and the delay of each key. */
function watch() {
  const seen = { tasks: [], shift: 0, keys: [] };
  globalThis.seen = seen;
  const on = (type, each, more = {}) => new PerformanceObserver((list) => list.getEntries().forEach(each)).observe({ type, buffered: true, ...more });
  on('longtask', (entry) => seen.tasks.push(entry.duration));
  on('layout-shift', (entry) => { if (!entry.hadRecentInput) seen.shift += entry.value; });
  on('event', (entry) => { if (entry.name.startsWith('key') || entry.name === 'input') seen.keys.push(entry.duration); }, { durationThreshold: 16 });
  new MutationObserver((_, me) => {
    if (globalThis.seen.ready === undefined && document.documentElement?.hasAttribute('data-ready')) { seen.ready = performance.now(); me.disconnect(); }
  }).observe(document, { subtree: true, attributes: true, childList: true });
}

/** One visit until the first answer, and what `act` does after it. */
export async function visit(browser, site, line, act = async () => {}) {
  const context = await browser.newContext({ locale: 'en-GB', viewport: { width: 390, height: 844 }, deviceScaleFactor: 2, isMobile: true, hasTouch: true });
  const page = await context.newPage();
  await page.addInitScript(watch);
  const tools = await context.newCDPSession(page);
  await tools.send('Network.enable');
  if (line) await tools.send('Network.emulateNetworkConditions', { offline: false, ...line });
  await tools.send('Emulation.setCPUThrottlingRate', { rate: 4 });
  await page.goto(site.url);
  await page.waitForSelector('html[data-ready]', { state: 'attached', timeout: 60_000 });
  const extra = await act(page);
  const figures = await page.evaluate(() => ({
    paint: performance.getEntriesByName('first-contentful-paint')[0]?.startTime,
    // What had come by then, as it was sent.
    bytes: [...performance.getEntriesByType('navigation'), ...performance.getEntriesByType('resource')]
      .filter((entry) => entry.responseEnd <= globalThis.seen.ready)
      .reduce((sum, entry) => sum + entry.encodedBodySize, 0),
    ...globalThis.seen,
  }));
  await context.close();
  return { ...figures, extra };
}

/**
 * 400 keys into the first number fields, as a quick thumb does it. The field is in the
 * middle of the screen: a key whose field is out of sight changes nothing to paint, and
 * the browser would count its delay until something else is painted.
 */
export async function type(page) {
  await page.evaluate(() => { globalThis.seen.tasks = []; globalThis.seen.keys = []; });
  const fields = await page.$$('input[inputmode=decimal]');
  for (let key = 0; key < 400; key += 1) {
    if (key % 40 === 0) {
      const field = fields[(key / 40) % Math.min(fields.length, 5)];
      await field.evaluate((input) => input.scrollIntoView({ block: 'center' }));
      await field.focus();
    }
    await page.keyboard.press(key % 8 < 4 ? String((key * 7) % 10) : 'Backspace');
    await page.waitForTimeout(BETWEEN_KEYS_MS);
  }
}

/** The hot day follows a key: how long until its band is drawn anew, one key at a time. */
export async function warm(page) {
  await page.waitForSelector('html:not([data-later])', { state: 'attached' });
  await page.locator('summary:has(#question-3)').click();
  const high = page.locator('#day-high-c').first();
  await high.evaluate((input) => input.scrollIntoView({ block: 'center' }));
  const rest = () => page.waitForFunction(() => !document.querySelector('.behind'), undefined, { polling: 200 });
  const bands = [];
  for (const value of ['37', '36', '38', '35', '39', '37']) {
    // Everything that the key before has set going is done, down to the last search.
    await rest();
    await page.waitForTimeout(2000);
    await page.evaluate(() => { globalThis.seen.tasks = []; });
    bands.push(await high.evaluate((input, text) => new Promise((done) => {
      const charts = document.querySelector('.day-charts');
      let since = 0;
      let was = false;
      new MutationObserver((_, me) => {
        const is = charts.matches('.behind');
        if (was && !is) { me.disconnect(); done(performance.now() - since); }
        was ||= is;
      }).observe(charts, { attributes: true });
      setTimeout(() => {
        since = performance.now();
        input.value = text;
        input.dispatchEvent(new Event('input', { bubbles: true }));
      });
    }), value));
  }
  return bands;
}

