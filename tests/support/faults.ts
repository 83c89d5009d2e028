import type { BrowserContext, ConsoleMessage, Page } from 'playwright-core';

/** What a page did that a page of ours never should. */
export interface Faults {
  readonly all: readonly string[];
  /** Takes away the faults that match, which the test wanted, and says how many there were. */
  take(matching: RegExp): number;
  /** All faults, once what the pages have reported so far has arrived. */
  settle(): Promise<readonly string[]>;
}

/** Collects the faults of every page of a context, from before its first script runs. */
export async function watchFaults(context: BrowserContext, origin: string): Promise<Faults> {
  const all: string[] = [];
  await context.exposeBinding('reportRefusal', (_source, text: string) => {
    all.push(`policy: ${text}`);
  });
  await context.addInitScript(reportRefusals);
  context.on('request', (request) => {
    if (leaves(request.url(), origin)) all.push(`request: ${request.url()}`);
  });
  const watch = (page: Page): void => {
    page.on('console', (message) => {
      if (message.type() === 'error') all.push(consoleFault(message));
    });
    page.on('pageerror', (error) => all.push(`uncaught: ${error.stack ?? error.message}`));
    page.on('crash', () => all.push('crash: the page is gone'));
  };
  context.pages().forEach(watch);
  context.on('page', watch);
  return {
    all,
    take(matching) {
      const kept = all.filter((fault) => !matching.test(fault));
      const taken = all.length - kept.length;
      all.splice(0, all.length, ...kept);
      return taken;
    },
    async settle() {
      // A round trip to each page: events it sent before have then been handled.
      for (const page of context.pages()) {
        if (!page.isClosed()) await page.evaluate(() => true).catch(() => undefined);
      }
      return all;
    },
  };
}

/** A failed load says what failed only in its place. */
function consoleFault(message: ConsoleMessage): string {
  const failedLoad = message.text().startsWith('Failed to load resource');
  return `console: ${message.text()}${failedLoad ? ` ${message.location().url}` : ''}`;
}

function leaves(url: string, origin: string): boolean {
  const { protocol, origin: target } = new URL(url);
  return protocol !== 'data:' && protocol !== 'blob:' && target !== origin;
}

/** Runs in the page. */
function reportRefusals(): void {
  const report: unknown = Reflect.get(window, 'reportRefusal');
  document.addEventListener('securitypolicyviolation', (event) => {
    const what = `${event.effectiveDirective} refused ${event.blockedURI} (${event.sourceFile}:${event.lineNumber})`;
    if (typeof report === 'function') report(what);
  });
}
