// The reader's page: by its link, and in a frame on a page that somebody else made.
import assert from 'node:assert/strict';
import { copyFileSync, writeFileSync } from 'node:fs';
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { deflateRawSync, deflateSync } from 'node:zlib';
import { AxeBuilder } from '@axe-core/playwright';
import { DIST, complete, expect, openAll, ready, test } from './harness.mjs';
import { STRICT_CSP } from './serve.mjs';

// Invented, like all gear here.
const plan = {
  version: 1,
  title: 'Two birdwatchers beside a salt lake (invented)',
  banks: [{ chemistry: 'lfp', battery_nominal_v: 25.6, battery_rated_ah: 105, parallel_count: 2, depth_percent: 90 }],
  units: [{
    name: 'Split cooler',
    supply_v: 24,
    cutoff_v: 21,
    modes: [{ name: 'Plunge', power_w: 690 }, { name: 'Hold', power_w: 430 }, { name: 'Hush', power_w: 265 }],
  }],
  night: { asked_mode: 1 },
  reader: { title: 'How long on your bank?', note: 'Ours ran until seven.', language: 'en' },
};
const reader = (changes) => ({ ...plan, reader: { ...plan.reader, ...changes } });

/** A link as zlib packs it, which knows nothing of our dictionary: packing 1 takes that too. */
function linkOf(what) {
  const json = Buffer.from(JSON.stringify(what));
  const sum = deflateSync(json).subarray(-4); // RFC 1950: Adler-32 comes last
  return `p1.${Buffer.concat([deflateRawSync(json, { level: 9 }), sum]).toString('base64url')}`;
}

const AH = '#banks-0--battery-rated-ah';
const V = '#banks-0--battery-nominal-v';
const text = (frame, selector) => frame.locator(selector).textContent();
const answer = (frame) => text(frame, '#answer');
const says = (frame, what) => expect(frame.locator('#answer')).toHaveText(what);
const holds = (frame, field, what) => expect(frame.locator(field)).toHaveValue(what);
/** The answer once it is another than before. */
const another = async (frame, before) => {
  await expect(frame.locator('#answer')).not.toHaveText(before);
  return answer(frame);
};
const minutes = (sentence) => {
  const [, hours = 0, min = 0] = sentence.match(/runs (?:(\d+)\shs?)?\s?(?:(\d+)\smin)?/);
  return 60 * Number(hours) + Number(min);
};

/**
 * A blog page in plain HTML under the strictest policy that lets it frame anything:
 * no script, no style, no picture; or, with `script`, that one script and no other.
 */
async function blog(page, open, scratch, { link, script = false, width = 360, sandbox = 'allow-scripts' }) {
  const files = scratch();
  for (const name of ['till-morning.html', 'embed.js']) copyFileSync(join(DIST, name), join(files, name));
  const host = await open({ root: files });
  const from = `http://pages.test:${host.port}`;
  const root = scratch();
  const policy = ["default-src 'none'", `frame-src ${from}`, ...(script ? [`script-src ${from}/embed.js`] : [])].join('; ');
  const site = await open({ root, csp: policy });
  const src = `${from}/till-morning.html#${link}`;
  writeFileSync(join(root, 'index.html'), `<!doctype html><html lang="en"><title>A post</title>
    ${script ? `<script src="${from}/embed.js" async></script>` : ''}
    <p>We slept till seven.
    <iframe src="${src}" title="hours" sandbox="${sandbox}" loading="lazy" width="${width}" height="500"></iframe>
    <p>Comments are closed.`);
  await page.goto(site.url.replace('localhost', 'blog.test'));
  const frame = await (await page.waitForSelector('iframe')).contentFrame();
  await ready(frame);
  return frame;
}

test('in a sandboxed frame of a strict blog it answers the reader', async ({ page, open, scratch, shot }) => {
  const frame = await blog(page, open, scratch, { link: linkOf(plan) });
  assert.equal(await frame.evaluate(() => window.origin), 'null');
  assert.equal(await frame.evaluate(() => { try { return typeof localStorage; } catch { return 'throws'; } }), 'throws');
  await expect(frame.locator('h1')).toHaveText('How long on your bank?');
  await expect(frame.locator('.strap')).toHaveText('Ours ran until seven.');
  // The bank is shown as one: two strings of 105 Ah.
  await expect(frame.locator('input')).toHaveCount(3);
  await holds(frame, AH, '210');
  await says(frame, /^Hold runs /);
  const before = await answer(frame);
  await frame.fill(AH, '105');
  const half = await another(frame, before);
  // Half the bank is a little less than half the time: by the Ah alone it would be half.
  const share = minutes(half) / minutes(before);
  assert(share > 0.44 && share < 0.51, `${half} ${before}`);
  // Storage is blocked, and nothing is said of it: a reader keeps nothing here.
  await expect(frame.locator('#notice')).toHaveCount(0);
  await shot();
});

test('a bad text stays, says what is wrong, and the last good answer stands', async ({ page, open, scratch, shot }) => {
  const frame = await blog(page, open, scratch, { link: linkOf(plan) });
  const before = await answer(frame);
  await frame.fill(AH, 'plenty');
  await expect(frame.locator(`${AH}-error`)).toHaveText(/^Capacity of the bank: enter a number from .*\sAh\.$/);
  await expect(frame.locator('.stale-mark')).toHaveText(/\w/);
  await says(frame, before);
  await shot();
  await frame.getByRole('button', { name: 'Back to the published numbers' }).click();
  await holds(frame, AH, '210');
  await expect(frame.locator('.stale-mark')).toHaveText('');
});

test('another voltage takes the unit along', async ({ page, open, scratch }) => {
  const beside = { ...plan, units: [{ ...plan.units[0], cable: { length_m: 0 } }] };
  const frame = await blog(page, open, scratch, { link: linkOf(beside) });
  const before = await answer(frame);
  await frame.fill(V, '12.8');
  await frame.fill(AH, '420');
  // As many Wh at half the volts, and no cable between: the same hours.
  await expect(frame.locator('.card')).toHaveText(/another voltage/);
  await says(frame, before);
});

for (const script of [false, true]) {
  test(`the height goes out as a message, ${script ? 'and the script sets it' : 'with nobody to hear it'}`, async ({ page, open, scratch, shot }) => {
    await page.addInitScript(() => {
      window.heard = [];
      window.addEventListener('message', ({ data }) => window.heard.push(data));
    });
    const frame = await blog(page, open, scratch, { link: linkOf(plan), script });
    const content = () => frame.evaluate(() => Math.ceil(document.documentElement.getBoundingClientRect().height));
    const last = () => page.evaluate(() => window.heard.slice(-2));
    // What comes last is there: it grows no more by itself.
    await frame.waitForSelector('html:not([data-later])', { state: 'attached' });
    await page.waitForFunction(() => window.heard.at(-1)?.height > 700);
    let height;
    await expect(async () => {
      height = await content();
      assert.deepEqual(await last(), [
        { type: 'till-morning:height', height },
        { sentinel: 'amp', type: 'embed-size', height },
      ]);
    }).toPass();
    const tall = () => page.evaluate(() => document.querySelector('iframe').clientHeight);
    await expect.poll(tall).toBe(script ? height : 500);
    // Taller by a sentence, and back.
    await frame.fill(AH, 'plenty');
    await page.waitForFunction((before) => window.heard.at(-1).height > before, height);
    await frame.fill(AH, '210');
    await page.waitForFunction((before) => window.heard.at(-1).height === before, height);
    height = await content();
    await expect.poll(tall).toBe(script ? height : 500);
    await shot();
  });
}

test('the script minds nobody else', async ({ page, open, scratch }) => {
  const frame = await blog(page, open, scratch, { link: linkOf(plan), script: true });
  const inside = () => frame.evaluate(() => Math.ceil(document.documentElement.getBoundingClientRect().height));
  const tall = () => page.evaluate(() => document.querySelector('iframe').clientHeight);
  let before;
  // What comes last is there: it grows no more by itself.
  await frame.waitForSelector('html:not([data-later])', { state: 'attached' });
  await expect(async () => {
    before = await tall();
    assert(before > 700);
    assert.equal(before, await inside());
  }).toPass();
  await page.evaluate(async () => {
    // From this very page, and in shapes of no meaning.
    for (const data of [{ type: 'till-morning:height', height: 1 }, null, 3, 'x', { type: 'till-morning:height', height: 'NaN' }]) window.postMessage(data, '*');
    await new Promise((done) => setTimeout(done, 50));
  });
  assert.equal(await tall(), before);
});

test('the hosted page too, in a sandbox, if its host shares the files', async ({ page, open, scratch }) => {
  const host = await open({ shared: true, csp: STRICT_CSP });
  const root = scratch();
  const site = await open({ root });
  writeFileSync(join(root, 'index.html'), `<!doctype html><title>A post</title><link rel="icon" href="data:,">
    <iframe title="hours" sandbox="allow-scripts" src="${host.url}#${linkOf(plan)}" width="360" height="500"></iframe>`);
  await page.goto(site.url);
  const frame = await (await page.waitForSelector('iframe')).contentFrame();
  await ready(frame);
  const before = await answer(frame);
  await frame.fill(AH, '105');
  await another(frame, before);
});

test('the one file holds itself to its own policy', { expectErrors: true }, async ({ page, open, site }) => {
  const elsewhere = await open();
  await page.goto(`${site.url}till-morning.html#${linkOf(plan)}`);
  await ready(page);
  const sent = await page.evaluate(async (url) => {
    const refused = new Promise((done) => document.addEventListener('securitypolicyviolation', () => done('refused'), { once: true }));
    const image = new Image();
    image.src = `${url}icons/mark.svg`;
    return [await fetch(url).then(() => 'fetched', () => 'refused'), await refused];
  }, elsewhere.url);
  assert.deepEqual(sent, ['refused', 'refused']);
  assert.deepEqual(elsewhere.requests, []);
});

test('it prints: the answer, the numbers and the line for paper, on white', async ({ page, open, scratch }) => {
  const site = await open();
  await page.goto(`${site.url}#${linkOf(reader({ theme: 'dark' }))}`);
  await complete(page);
  await page.waitForSelector('.pocket li');
  await page.emulateMedia({ media: 'print' });
  const looks = await page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
  assert.equal(looks, 'rgb(255, 255, 255)', 'in the dark looks too');
  for (const selector of ['#answer', AH, '.ribbon svg', '.pocket li']) await expect(page.locator(selector).first()).toBeVisible();
  await expect(page.getByRole('button').first()).toBeHidden();
  const pdf = await page.pdf({ format: 'A4' });
  const pages = pdf.toString('latin1').match(/\/Type\s*\/Page\b/g).length;
  assert(pages <= 2, `${pages} pages`);
  await page.emulateMedia({ media: null });
  // In a frame it is on the page around it that the browser prints.
  await blog(page, open, scratch, { link: linkOf(plan) });
  assert((await page.pdf()).length > 5000);
});

test('in full: the whole page with the reader’s numbers, and no reader’s page', async ({ page, open }) => {
  const site = await open();
  await page.goto(`${site.url}#${linkOf(plan)}`);
  await ready(page);
  const before = await answer(page);
  await page.fill(AH, '300');
  const hours = await another(page, before);
  await page.click('#in-full');
  await page.waitForSelector('#question-2');
  await complete(page);
  await holds(page, AH, '300');
  await says(page, hours);
  await holds(page, '#banks-0--parallel-count', '1');
});

test('in full, from a frame that may open nothing: in the frame', { expectErrors: true }, async ({ page, open, scratch }) => {
  const frame = await blog(page, open, scratch, { link: linkOf(plan) });
  await frame.fill(AH, '300');
  await frame.click('#in-full');
  await frame.waitForSelector('#question-2');
  await holds(frame, AH, '300');
});

test('in full, from a frame that may: in a window of its own', async ({ page, context, open, scratch }) => {
  const sandbox = 'allow-scripts allow-popups allow-popups-to-escape-sandbox';
  const frame = await blog(page, open, scratch, { link: linkOf(plan), sandbox });
  await frame.fill(AH, '300');
  const opened = context.waitForEvent('page');
  await frame.click('#in-full');
  const full = await opened;
  await full.waitForSelector('#question-2');
  await holds(full, AH, '300');
  await expect(frame.locator('#question-2')).toHaveCount(0);
});

test('the address follows the reader, and storage stays as it was', async ({ page, open }) => {
  const site = await open();
  await page.goto(`${site.url}#${linkOf(plan)}`);
  await ready(page);
  const link = page.url();
  await page.fill(AH, '300');
  await expect(page).not.toHaveURL(link);
  await page.reload();
  await ready(page);
  await holds(page, AH, '300');
  await expect(page.locator('h1')).toHaveText('How long on your bank?');
  assert.equal(await page.evaluate(() => localStorage.length), 0);
});

/** Node's `Intl` has CLDR's plural rule and number format for German. */
test('in German, with its plural and its decimal comma', async ({ page, open, scratch, shot }) => {
  const frame = await blog(page, open, scratch, { link: linkOf(reader({ language: 'de' })) });
  await expect(frame.locator('html')).toHaveAttribute('lang', 'de');
  await holds(frame, V, '25,6');
  const rule = new Intl.PluralRules('de');
  const format = new Intl.NumberFormat('de');
  const words = { Tag: ['Tag', 'Tage'] };
  const seen = new Set();
  let sentence = await answer(frame);
  for (const ah of ['2', '25', '26', '28', '210', '4200', '9000', '1 000', '43,5']) {
    await frame.fill(AH, ah);
    sentence = await another(frame, sentence);
    assert.match(sentence, /^Hold (läuft|startet nicht)/);
    for (const [, number, word] of sentence.matchAll(/([\d.,]+)\s(Tage?)\b/g)) {
      const value = Number(number.replaceAll('.', '').replace(',', '.'));
      assert.equal(number, format.format(value));
      const [one, other] = Object.values(words).find((forms) => forms.includes(word));
      assert.equal(word, rule.select(value) === 'one' ? one : other, sentence);
      seen.add(word);
    }
  }
  // Hours and minutes are signs; days are words, from three on.
  assert(seen.has('Tage'), [...seen].join());
  await frame.fill(AH, 'viel');
  await expect(frame.locator(`${AH}-error`)).toHaveText(/^Kapazität der Batteriebank: Geben Sie eine Zahl von /);
  await frame.fill(AH, '210');
  await another(frame, sentence);
  // Nothing of what a reader sees is left in English, but the cautions beside theirs.
  const all = await frame.evaluate(() => {
    document.querySelectorAll('.in-english').forEach((english) => english.remove());
    return document.querySelector('main').innerText + document.querySelector('footer').innerText;
  });
  assert.doesNotMatch(all, /\b(the|runs|until|bank of|hours|with|open in full)\b/i);
  await shot();
});

test('without a language it speaks the browser’s, or English', { context: { locale: 'de-AT' } }, async ({ page, open, browser }) => {
  const site = await open();
  const link = linkOf(reader({ language: undefined }));
  await page.goto(`${site.url}#${link}`);
  await ready(page);
  await says(page, /^Hold läuft/);
  const context = await browser.newContext({ locale: 'fr-FR' });
  const french = await context.newPage();
  await french.goto(`${site.url}#${link}`);
  await ready(french);
  await says(french, /^Hold runs/);
  await context.close();
});

test('an author makes one: fields, title, looks, link and frame', async ({ page, open, shot }) => {
  const site = await open();
  await page.goto(site.url);
  await ready(page);
  await page.click('#question-6');
  await page.locator('summary', { hasText: 'A page for readers' }).click();
  await page.fill('#reader-title', 'Ours & "yours"');
  await page.fill('#reader-note', 'Invented.');
  await page.check('#open-night-start-clock-min');
  const more = page.locator('.open-fields input:not(:checked)').first();
  await more.click();
  await expect(page.locator('fieldset:has(.open-fields) [role=status]')).toHaveText(/^At most/);
  await expect(page.locator('.open-fields input:checked'), 'a fifth is not taken').toHaveCount(4);
  const before = await text(page, '#reader-frame');
  await page.selectOption('#reader-theme', { label: 'dark' });
  await shot();
  await expect(page.locator('#reader-frame')).not.toHaveText(before);
  const frame = await text(page, '#reader-frame');
  const src = `${site.url}till-morning.html#`.replace(/[.]/g, '\\.');
  assert.match(frame, new RegExp(`^<iframe src="${src}p\\d\\.[\\w-]+" title="Ours &amp; &quot;yours&quot;" sandbox="allow-scripts" loading="lazy" `));
  await expect(page.locator('#reader-script')).toHaveText(`<script src="${site.url}embed.js" async></script>`);
  // What the frame's address opens is what was made.
  const there = frame.match(/src="([^"]+)"/)[1];
  const other = await page.context().newPage();
  await other.goto(there);
  await ready(other);
  await expect(other.locator('h1')).toHaveText('Ours & "yours"');
  await expect(other.locator('html')).toHaveAttribute('data-theme', 'dark');
  await expect(other.locator('.card input')).toHaveCount(4);
  // The author's own page stays the author's, also when it is opened again.
  await page.reload();
  await complete(page);
  await expect(page.locator('#question-6')).toHaveCount(1);
  await page.click('#question-6');
  await page.locator('summary', { hasText: 'A page for readers' }).click();
  await holds(page, '#reader-note', 'Invented.');
});

for (const theme of ['light', 'dark']) {
  test(`axe finds nothing on it: ${theme}, a bad text shown`, { context: { viewport: { width: 390, height: 844 } } }, async ({ page, url }) => {
    await page.goto(`${url}#${linkOf(reader({ theme, language: theme === 'dark' ? 'de' : 'en' }))}`);
    await ready(page);
    await page.fill(V, '12');
    await page.fill(AH, 'plenty');
    await page.waitForSelector('.outcome.stale');
    await openAll(page);
    const { violations } = await new AxeBuilder({ page })
      .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
      .options({ rules: { 'target-size': { enabled: true } } })
      .analyze();
    assert.deepEqual(violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.target.join(' ')).join(', ')}`), []);
  });
}

test('the Nu checker has nothing to say of it, nor of the frame', async ({ page, url, scratch }) => {
  const jar = fileURLToPath(new URL('./node_modules/vnu-jar/build/dist/vnu.jar', import.meta.url));
  await page.goto(`${url}#${linkOf(plan)}`);
  await ready(page);
  const dir = scratch();
  writeFileSync(join(dir, 'reader.html'), `<!doctype html>${await page.evaluate(() => document.documentElement.outerHTML)}`);
  await page.goto(url);
  await page.reload();
  await ready(page);
  await page.click('#question-6');
  await page.locator('summary', { hasText: 'A page for readers' }).click();
  await expect(page.locator('#reader-frame')).toHaveText(/<iframe/);
  const snippet = await text(page, '#reader-frame') + await text(page, '#reader-script');
  writeFileSync(join(dir, 'post.html'), `<!doctype html><html lang="en"><title>A post</title><p>${snippet}`);
  const { stderr } = spawnSync('java', ['-jar', jar, '--format', 'json', join(dir, 'reader.html'), join(dir, 'post.html')], { encoding: 'utf8' });
  const told = JSON.parse(stderr).messages.map(({ url: file, message }) => `${file.split('/').pop()}: ${message}`);
  // Per cent are not in the standard's width (HTML, 4.8.19), and in every browser; a style
  // instead would be refused by a strict policy.
  assert.deepEqual(told, ['post.html: Bad value “100%” for attribute “width” on element “iframe”: Expected a digit but saw “%” instead.']);
});
