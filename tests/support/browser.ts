import { type Browser, chromium as playwright } from 'playwright-core';

/** Nothing may call home, and the sandbox needs what a container doesn't give. */
const flags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** Starts Chromium, headless, on a profile of its own that goes with it. */
export function chromium(): Promise<Browser> {
  const executablePath = process.env['CHROMIUM_PATH'];
  if (!executablePath) throw new Error('CHROMIUM_PATH is not set: run the tests by "npm test -- browser"');
  return playwright.launch({ executablePath, headless: true, args: flags });
}
