// How the system's Chromium is started for tests and icons: as root in a
// container too, and without the connections that it makes of its own accord.
import { existsSync } from 'node:fs';

const places = [process.env.CHROMIUM, '/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

export const chromiumOptions = {
  executablePath: places.find((path) => path && existsSync(path)),
  headless: true,
  args: [
    '--no-sandbox',
    '--disable-gpu',
    '--disable-dev-shm-usage',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
    '--no-first-run',
    // Names for the tests: a host that is not localhost, and so not secure by plain http.
    '--host-resolver-rules=MAP *.test 127.0.0.1',
  ],
};
