import { chromium } from 'playwright-core';
import { findBrowser } from './find-browser.mjs';

/**
 * What a window of the full browser does beside showing the page: it loads its search box as pages
 * of its own, which takes a third of what opening ours does. The last such switch counts, so what
 * the driver turns off, as far as it touches us, is said again.
 */
const withoutFeatures = [
  'WebUIOmniboxAimPopup',
  'WebUIOmniboxPopup',
  'AimEnabled',
  'AvoidUnnecessaryBeforeUnloadCheckSync',
  'DestroyProfileOnBrowserClose',
  'HttpsFirstBalancedModeAutoEnable',
  'HttpsUpgrades',
  'LensOverlay',
  'MediaRouter',
  'NetworkTimeServiceQuerying',
  'OptimizationHints',
  'PaintHolding',
  'PreconnectToSearch',
  'ThirdPartyStoragePartitioning',
];

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
      `--disable-features=${withoutFeatures.join()}`,
    ],
  };
}

export const launchChromium = async () => chromium.launch(await launchOptions());
