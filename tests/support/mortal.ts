import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { createInterface } from 'node:readline';
import { chromium, type Page } from 'playwright-core';
import { launchOptions } from '../../src/tools/chromium.mjs';

/** A browser of our own that can be killed as a power cut would. */
export interface Mortal {
  readonly page: Page;
  /** Ends all its processes at once, with no time to write anything more. */
  kill(): Promise<void>;
}

/** Starts Chromium with what the profile kept from the last time, and opens a page. */
export async function startMortal(profile: string, url: string): Promise<Mortal> {
  const { executablePath, args } = await launchOptions();
  const child = spawn(
    executablePath,
    [
      ...args,
      '--headless',
      '--remote-debugging-port=0',
      `--user-data-dir=${profile}`,
      'about:blank',
    ],
    // A group of its own, so that killing it reaches its renderers and nobody else.
    { detached: true, stdio: ['ignore', 'ignore', 'pipe'] },
  );
  const gone = once(child, 'exit');
  const browser = await chromium.connectOverCDP(await addressIn(child.stderr));
  const [context] = browser.contexts();
  const page = context?.pages()[0] ?? (await context?.newPage());
  if (!page || child.pid === undefined) throw new Error('Chromium did not start.');
  const group = -child.pid;
  await page.goto(url);
  return {
    page,
    async kill() {
      process.kill(group, 'SIGKILL');
      await gone;
      await browser.close();
    },
  };
}

async function addressIn(output: NodeJS.ReadableStream): Promise<string> {
  for await (const line of createInterface(output)) {
    const [, address] = /DevTools listening on (ws:\S+)/.exec(line) ?? [];
    if (address !== undefined) {
      output.resume();
      return address;
    }
  }
  throw new Error('Chromium ended before it could be reached.');
}
