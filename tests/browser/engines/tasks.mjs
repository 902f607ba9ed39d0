// What a person at a campsite does, in words that every driver has.
import assert from 'node:assert/strict';
import { copyFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as rest } from 'node:timers/promises';
import { deflateRawSync, deflateSync } from 'node:zlib';
import { DIST } from '../harness.mjs';

const AH = '#banks-0--battery-rated-ah';
const DRAW = '#start-units-0--modes-0--power-w';
const question = (number) => `.questions a[href="#question-${number}"]`;

/** Looks again until it is so. The time is a stop for what hangs, not a measure. */
async function until(look, what) {
  for (let tries = 0; tries < 150; tries += 1) {
    const found = await look().catch(() => undefined);
    if (found) return found;
    await rest(200);
  }
  throw new Error(`never seen: ${what}`);
}
const textOf = (page, selector) => page.run((where) => document.querySelector(where)?.textContent ?? '', selector);
const says = (page, selector, pattern) => until(async () => {
  const text = await textOf(page, selector);
  return pattern.test(text) && text;
}, `${selector} as ${pattern}`);
const marked = () => document.documentElement.hasAttribute('data-ready') && !document.documentElement.hasAttribute('data-later');
const complete = (page) => until(() => page.run(marked), 'the whole page');
const valueOf = (page, selector) => page.run((where) => document.querySelector(where)?.value, selector);

/** Where there is a storage; a frame without an origin throws at the mere look. */
const forget = (page) => page.run(() => { try { localStorage.clear(); } catch { /* there is none */ } });

/** An author's page for readers. Invented, like all gear here. */
const published = {
  version: 1,
  banks: [{ chemistry: 'lfp', battery_nominal_v: 12.8, battery_rated_ah: 100 }],
  units: [{ modes: [{ name: 'Hold', power_w: 45 }] }],
  reader: { title: 'How long on your bank?', language: 'en', open: ['banks[0].battery_rated_ah'] },
};

/** A link as zlib packs it: JSON, and its Adler-32 behind (RFC 1950). */
function linkOf(plan) {
  const json = Buffer.from(JSON.stringify(plan));
  return `p1.${Buffer.concat([deflateRawSync(json), deflateSync(json).subarray(-4)]).toString('base64url')}`;
}

/** 320 Ah of lithium at 12 V and 45 W: an answer of one's own. */
async function own(page, url) {
  await page.goto(url);
  await complete(page);
  await page.type(AH, '320');
  await page.click('#voltage-tap-0 button');
  await page.type(DRAW, '45');
  // 320 Ah of 12.8 V, nine tenths of it, over 45 W: 82 h by hand, and a little less for
  // what is lost on the way.
  return says(page, '#answer', /runs 3\.[34] days|runs 3\.5 days/);
}

export const tasks = {
  'own numbers': async ({ page, open }) => {
    await own(page, (await open()).url);
    await page.reload();
    await complete(page);
    assert.equal(await valueOf(page, AH), '320');
    assert.equal(await valueOf(page, DRAW), '45');
    await says(page, '#answer', /days/);
  },

  'a number that cannot be': async ({ page, open }) => {
    const before = await own(page, (await open()).url);
    await page.type(DRAW, 'x');
    await says(page, `${DRAW}-error`, /\S/);
    assert.equal(await textOf(page, '#answer'), before);
    assert.equal(await valueOf(page, DRAW), '45x');
  },

  'hot day': async ({ page, open }) => {
    await own(page, (await open()).url);
    await page.click(question(3));
    const before = await says(page, '#day-answer', /\S/);
    await until(() => page.run(() => document.querySelectorAll('.day-charts figure svg').length === 3), 'the three charts');
    await page.run(() => { document.querySelector('#day-high-c').value = ''; });
    await page.type('#day-high-c', '46');
    await says(page, '.day-charts figcaption', /46\s°C/);
    assert.ok(before.length > 10);
  },

  'a log': async ({ page, open, scratch }) => {
    await own(page, (await open()).url);
    await page.click(question(5));
    await until(() => page.run(() => Boolean(document.querySelector('#log-file'))), 'the place for a log');
    const rows = Array.from({ length: 201 }, (_, k) => `${k},13.0,${k < 100 ? 20 : 10}`);
    const file = join(scratch(), 'log.csv');
    writeFileSync(file, `elapsed min,bank V,draw A\n${rows.join('\n')}\n`);
    await page.attach('#log-file', file);
    // 20 A for 100 min and 10 A for 100 min at 13 V are 650 Wh, by hand.
    await says(page, '.totals', /6(4[789]|5[0-3])/);
  },

  'link there and back': async ({ page, open }) => {
    const site = await open();
    const mine = await own(page, site.url);
    await page.run(() => [...document.querySelectorAll('button')].find((one) => one.textContent === 'Copy link').click());
    const link = await until(async () => /#p\d\./.test(await valueOf(page, '#link')) && valueOf(page, '#link'), 'the link');
    // A browser that never saw the plan: of these drivers one has room for a single page.
    await forget(page);
    await page.goto('about:blank');
    await page.goto(link);
    await complete(page);
    assert.equal(await textOf(page, '#answer'), mine);
    assert.equal(await valueOf(page, AH), '320');
    await forget(page);
  },

  'a reader’s page': async ({ page, open }) => {
    await page.goto(`${(await open()).url}#${linkOf(published)}`);
    await says(page, 'h1', /How long on your bank/);
    // 100 Ah of 12.8 V, nine tenths of it, over 45 W: 25.6 h by hand; of three times that 3.2 days.
    await says(page, '#answer', /^Hold runs 2[56]\sh/);
    await page.run((field) => { document.querySelector(field).value = ''; }, AH);
    await page.type(AH, '300');
    await says(page, '#answer', /^Hold runs 3\.[23]\sdays/);
  },

  'offline reload': async ({ page, open }) => {
    const site = await open({ store: false });
    await own(page, site.url);
    await until(() => page.run(() => navigator.serviceWorker?.controller !== null), 'the service worker in charge');
    await site.close();
    await page.reload();
    await complete(page);
    assert.equal(await valueOf(page, AH), '320');
  },

  'the one file in a frame without an origin': async ({ page, open, scratch }) => {
    const root = scratch();
    copyFileSync(join(DIST, 'till-morning.html'), join(root, 'till-morning.html'));
    writeFileSync(join(root, 'index.html'), '<!doctype html><title>A report</title><link rel="icon" href="data:,"><iframe title="hours" sandbox="allow-scripts" src="./till-morning.html" width="380" height="600"></iframe>');
    await page.goto((await open({ root })).url);
    await until(() => page.inFrame(marked), 'the page in its frame');
    await page.typeInFrame(AH, '320');
    await until(() => page.inFrame(() => document.querySelector('#answer').textContent.includes('runs 1')), 'an answer in the frame');
    assert.equal(await page.inFrame(() => window.origin), 'null');
  },
};
