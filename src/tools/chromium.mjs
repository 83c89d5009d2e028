import { chromium } from 'playwright-core';
import { findBrowser } from './find-browser.mjs';

/** How every Chromium of ours is started: alone, offline but for us, the same on any machine. */
export async function launchOptions() {
  return {
    executablePath: await findBrowser(),
    headless: true,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  };
}

export const launchChromium = async () => chromium.launch(await launchOptions());
