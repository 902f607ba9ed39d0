// The distribution's Firefox, by WebDriver BiDi: it speaks that without a driver.
import { existsSync } from 'node:fs';
import puppeteer from 'puppeteer-core';

const places = [process.env.FIREFOX, '/usr/bin/firefox-esr', '/usr/bin/firefox'];

export async function launch() {
  const browser = await puppeteer.launch({
    browser: 'firefox',
    executablePath: places.find((path) => path && existsSync(path)),
    headless: true,
    extraPrefsFirefox: { 'intl.accept_languages': 'en-GB, en' },
  });
  const open = async () => {
    const context = await browser.createBrowserContext();
    const page = await context.newPage();
    await page.setViewport({ width: 390, height: 844 });
    return {
      goto: (url) => page.goto(url),
      reload: () => page.reload(),
      run: (work, ...given) => page.evaluate(work, ...given),
      inFrame: (work, ...given) => page.frames()[1].evaluate(work, ...given),
      click: (selector) => page.locator(selector).click(),
      type: (selector, text) => page.type(selector, text),
      typeInFrame: async (selector, text) => { await page.frames()[1].click(selector, { count: 3 }); await page.keyboard.type(text); },
      attach: async (selector, file) => (await page.$(selector)).uploadFile(file),
      close: () => context.close(),
    };
  };
  return { open, close: () => browser.close() };
}
