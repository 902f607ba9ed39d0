// x
import assert from 'node:assert/strict';
import { allOpen } from './focus.mjs';
import { misfits } from './fit.mjs';
import { complete, expect, layOut, test, withExample } from './harness.mjs';

test('x big', { context: { viewport: { width: 320, height: 640 } } }, async ({ page, url, shot }) => {
  await page.goto(url);
  await withExample(page);
  await allOpen(page);
  await layOut(page);
  for (const size of ['100%', '200%']) {
    await page.addStyleTag({ content: `html { font-size: ${size} !important; }` });
    const m = await misfits(page);
    console.log(size, m.length, '\n' + m.slice(0, 120).join('\n'));
  }
});
