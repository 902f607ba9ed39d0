// Chromium, as everywhere else in these tests.
import { chromium } from 'playwright-core';
import { chromiumOptions } from '../chromium.mjs';

export async function launch() {
  const browser = await chromium.launch(chromiumOptions);
  const open = async () => {
    const context = await browser.newContext({ locale: 'en-GB', viewport: { width: 390, height: 844 } });
    const page = await context.newPage();
    return {
      goto: (url) => page.goto(url),
      reload: () => page.reload(),
      run: (work, ...given) => page.evaluate(work, ...given),
      inFrame: async (work, ...given) => page.frames()[1].evaluate(work, ...given),
      click: (selector) => page.click(selector),
      type: async (selector, text) => { await page.click(selector); await page.keyboard.type(text); },
      typeInFrame: async (selector, text) => { await page.frames()[1].click(selector, { clickCount: 3 }); await page.keyboard.type(text); },
      attach: (selector, file) => page.setInputFiles(selector, file),
      close: () => context.close(),
    };
  };
  return { open, close: () => browser.close() };
}
