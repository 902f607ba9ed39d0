// WebKit, an iPhone's engine: WebKitGTK's small browser by its own WebDriver, on a
// display of its own.
import { spawn } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import { setTimeout as rest } from 'node:timers/promises';
import { Builder, By, Capabilities } from 'selenium-webdriver';

/** It lies in a folder that is named after the machine's kind. */
function small() {
  const kinds = readdirSync('/usr/lib').filter((name) => name.endsWith('-linux-gnu'));
  const places = kinds.flatMap((kind) => ['4.1', '4.0', '6.0'].map((abi) => `/usr/lib/${kind}/webkit${abi === '6.0' ? 'gtk' : '2gtk'}-${abi}/MiniBrowser`));
  return places.find((path) => existsSync(path));
}

export async function launch() {
  const port = 20_000 + (process.pid % 20_000);
  // A group of its own, so that display, bus and driver end together.
  const driver = spawn('dbus-run-session', ['xvfb-run', '-a', 'WebKitWebDriver', `--port=${port}`], { stdio: 'ignore', detached: true });
  const address = `http://127.0.0.1:${port}`;
  for (let tries = 0; ; tries += 1) {
    const up = await fetch(`${address}/status`).then((answer) => answer.ok, () => false);
    if (up) break;
    if (tries > 100) throw new Error('WebKitWebDriver does not answer');
    await rest(200);
  }
  const wanted = new Capabilities({ browserName: 'MiniBrowser', 'webkitgtk:browserOptions': { binary: small(), args: ['--automation'] } });
  const open = async () => {
    const page = await new Builder().usingServer(address).withCapabilities(wanted).build();
    await page.manage().setTimeouts({ script: 60_000 });
    const find = (selector) => page.findElement(By.css(selector));
    const run = (work, ...given) => page.executeScript(`return (${work})(...arguments);`, ...given);
    const framed = async (work) => {
      await page.switchTo().frame(0);
      try { return await work(); } finally { await page.switchTo().defaultContent(); }
    };
    return {
      goto: (url) => page.get(url),
      reload: () => page.navigate().refresh(),
      run,
      inFrame: (work, ...given) => framed(() => run(work, ...given)),
      click: (selector) => find(selector).click(),
      type: (selector, text) => find(selector).sendKeys(text),
      // This driver's keys do not reach a frame: the field is filled as keys would leave it.
      typeInFrame: (selector, text) => framed(() => run((where, what) => {
        const field = document.querySelector(where);
        field.focus();
        field.value = what;
        field.dispatchEvent(new InputEvent('input', { bubbles: true, data: what }));
      }, selector, text)),
      attach: (selector, file) => find(selector).sendKeys(file),
      close: () => page.quit(),
    };
  };
  return { open, close: async () => { process.kill(-driver.pid); } };
}
