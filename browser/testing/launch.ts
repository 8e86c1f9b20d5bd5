import { chromium, type Browser } from 'playwright-core';

/** Debian's Chromium, as a container's root may run it, with nothing of it reaching out. */
const FLAGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** Starts the browser of this machine; `CHROMIUM` names another. */
export const launch = (): Promise<Browser> =>
  chromium.launch({ executablePath: process.env['CHROMIUM'] ?? '/usr/bin/chromium', args: FLAGS });
