import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';

const usual = {
  linux: [
    '/usr/bin/chromium',
    '/usr/bin/chromium-browser',
    '/usr/bin/google-chrome-stable',
    '/usr/bin/google-chrome',
    '/snap/bin/chromium',
  ],
  darwin: [
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  ],
  win32: [process.env.PROGRAMFILES, process.env['PROGRAMFILES(X86)'], process.env.LOCALAPPDATA]
    .filter(Boolean)
    .map((folder) => path.join(folder, 'Google/Chrome/Application/chrome.exe')),
};

const install = {
  linux: 'apt-get install -y chromium',
  darwin: 'brew install --cask chromium',
  win32: 'winget install Google.Chrome',
};

/** The browser for the browser tests: CHROMIUM_PATH, or one in the usual places; null when there is none. */
export function findChromium() {
  const places = process.env.CHROMIUM_PATH ? [process.env.CHROMIUM_PATH] : (usual[process.platform] ?? []);
  return places.find((file) => fs.existsSync(file)) ?? null;
}

/** What to type to get one on this machine. */
export const howToInstallChromium = () => install[os.platform()] ?? 'install Chromium and set CHROMIUM_PATH';
