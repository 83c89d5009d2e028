import { chromium, type Browser, type BrowserContext, type Page } from 'playwright-core';
import { afterAll, afterEach, inject } from 'vitest';
import { launchOptions } from '../../src/tools/chromium.mjs';
import { watchFaults, type Faults } from './faults.ts';
import { pagePath } from './pages.ts';

export interface OpenOptions {
  /** In CSS pixels; 1280 × 800 when not said. */
  viewport?: { width: number; height: number };
  /** What the system asks for; dark when not said. */
  theme?: 'dark' | 'light';
  touch?: boolean;
  /** A device whose only pointer is a finger. */
  mobile?: boolean;
  /** Device pixels to a CSS pixel; 1 when not said. */
  ratio?: number;
  /** Cuts the network once the page has loaded. */
  offline?: boolean;
  /** A folder that keeps what the browser stores, for tests that close and reopen the browser. */
  profile?: string;
  locale?: string;
  reducedMotion?: boolean;
  /** Lets the app keep itself for when there is no network, which most tests can do without. */
  worker?: boolean;
  /** Where the app is served; the server of the whole run when not said. */
  at?: string;
  /** Added to the address, e.g. `#sheet`. */
  hash?: string;
  /** Runs in the page before any of its scripts. */
  before?: () => void;
  /** Opens it in the window of the test before, if that had the same settings: for pages that keep nothing. */
  again?: boolean;
}

export interface OpenApp {
  readonly page: Page;
  readonly context: BrowserContext;
  /** Console errors, refused content, uncaught errors and requests to elsewhere, as they happen. */
  readonly faults: Faults;
  close(): Promise<void>;
}

let browser: Browser | undefined;
const open = new Set<OpenApp>();

/** The window that stays for the next test, by its settings. */
let kept: { readonly settings: string; readonly app: OpenApp } | undefined;

/** Opens the built app. It is closed after the test, which fails if the page had any fault. */
export async function openApp(options: OpenOptions = {}): Promise<OpenApp> {
  return openAt(options.at ?? inject('app'), options);
}

/** Opens tests/browser/pages/NAME.html, bundled as the app is. */
export async function openTestPage(name: string, options: OpenOptions = {}): Promise<OpenApp> {
  const url = inject('pages') + pagePath(name);
  // The first request has all of them built, which may take longer than a browser waits for a page.
  await fetch(url);
  return openAt(url, options);
}

async function openAt(url: string, options: OpenOptions): Promise<OpenApp> {
  const app = options.again ? await openAgain(url, options) : await openNew(url, options);
  await app.page.goto(url + (options.hash ?? ''));
  if (options.offline) await app.context.setOffline(true);
  return app;
}

async function openAgain(url: string, options: OpenOptions): Promise<OpenApp> {
  const settings = JSON.stringify({ ...options, hash: '' });
  if (kept?.settings === settings) {
    // The address differs in its hash only, which would not load the page anew.
    await kept.app.page.goto('about:blank');
    await kept.app.page.mouse.move(0, 0);
  } else {
    await kept?.app.close();
    kept = { settings, app: await openNew(url, options) };
  }
  open.add(kept.app);
  return kept.app;
}

async function openNew(url: string, options: OpenOptions): Promise<OpenApp> {
  const context = await newContext(options);
  await context.addInitScript(withoutPicker);
  // Longer than a slow machine with two test files at once has been seen to take.
  context.setDefaultTimeout(180_000);
  if (options.before) await context.addInitScript(options.before);
  const page = context.pages()[0] ?? (await context.newPage());
  const faults = await watchFaults(context, new URL(url).origin);
  const app: OpenApp = {
    page,
    context,
    faults,
    close: async () => {
      open.delete(app);
      await context.close();
    },
  };
  open.add(app);
  return app;
}

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

/** Pages live for seconds here: making their code fast costs more than it ever brings in. */
async function launch(): ReturnType<typeof launchOptions> {
  const { args, ...rest } = await launchOptions();
  const spared = [
    `--disable-features=${withoutFeatures.join()}`,
    '--js-flags=--no-opt,--no-maglev',
  ];
  return { ...rest, args: [...args, ...spared] };
}

async function newContext(options: OpenOptions): Promise<BrowserContext> {
  const settings = {
    viewport: options.viewport ?? { width: 1280, height: 800 },
    colorScheme: options.theme ?? 'dark',
    hasTouch: options.touch ?? false,
    isMobile: options.mobile ?? false,
    deviceScaleFactor: options.ratio ?? 1,
    locale: options.locale ?? 'en-GB',
    reducedMotion: options.reducedMotion ? 'reduce' : 'no-preference',
    acceptDownloads: true,
    serviceWorkers: options.worker ? 'allow' : 'block',
  } as const;
  if (options.profile !== undefined) {
    return chromium.launchPersistentContext(options.profile, { ...(await launch()), ...settings });
  }
  browser ??= await chromium.launch(await launch());
  return browser.newContext(settings);
}

/** Closes what the test left open and fails it for any fault it did not expect. */
afterEach(async () => {
  const found: string[] = [];
  for (const app of open) {
    found.push(...(await app.faults.settle()));
    if (app === kept?.app) {
      app.faults.take(/^/);
      open.delete(app);
    } else {
      await app.close();
    }
  }
  if (found.length > 0) throw new Error(`The page was not quiet:\n${found.join('\n')}`);
});

afterAll(async () => {
  kept = undefined;
  await browser?.close();
  browser = undefined;
});

/** Runs in the page: the browser’s own picker cannot be worked from outside, a file field can. */
function withoutPicker(): void {
  Reflect.set(window, 'showOpenFilePicker', undefined);
}
