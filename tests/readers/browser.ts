import { chromium, type Browser } from 'playwright-core';

/** Debian's Chromium; nothing is downloaded. */
const EXECUTABLE = '/usr/bin/chromium';

const ARGUMENTS = [
  '--no-sandbox',
  '--use-angle=swiftshader',
  '--enable-unsafe-swiftshader',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** Starts a headless Chromium; close it in `afterAll`. */
export const launchBrowser = (): Promise<Browser> =>
  chromium.launch({ executablePath: EXECUTABLE, args: ARGUMENTS });
