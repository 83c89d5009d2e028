/*
 * The service worker: the whole app, kept in the browser. The build puts the list of its files in
 * front of this script (src/tools/offline.mjs), so that another build is another script.
 */

declare const offline: {
  readonly version: string;
  /** Paths beside this script with what their content must hash to. */
  readonly files: Readonly<Record<string, string>>;
};

/** The part of the worker's world that is used here; TypeScript's own types exclude those of pages. */
interface Scope {
  readonly registration: { readonly scope: string };
  readonly clients: { matchAll(options: object): Promise<readonly Tab[]> };
  skipWaiting(): Promise<void>;
  addEventListener<Kind extends keyof Events>(
    kind: Kind,
    hear: (event: Events[Kind]) => void,
  ): void;
}

interface Events {
  install: Lasting;
  activate: Lasting;
  fetch: Lasting & { readonly request: Request; respondWith(answer: Promise<Response>): void };
  message: Lasting & { readonly data: unknown; readonly ports: readonly MessagePort[] };
}

interface Lasting {
  waitUntil(work: Promise<unknown>): void;
}

interface Tab {
  postMessage(message: string, transfer: readonly MessagePort[]): void;
}

export {};

const scope = globalThis as unknown as Scope;
const prefix = 'halfstop ';
const own = prefix + offline.version;
/** How long a tab that is asleep may take to say that its work is kept. */
const patience = 3_000;

const addressOf = (path: string): string => new URL(path, scope.registration.scope).href;
const start = addressOf('index.html');

scope.addEventListener('install', (event) => event.waitUntil(fetchAll()));
scope.addEventListener('activate', (event) => event.waitUntil(forgetOld()));
scope.addEventListener('fetch', (event) => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  if (request.method !== 'GET' || origin !== new URL(scope.registration.scope).origin) return;
  const wanted = origin + pathname;
  event.respondWith(answer(request, wanted === scope.registration.scope ? start : wanted));
});
scope.addEventListener('message', (event) => {
  if (event.data === 'take over') event.waitUntil(takeOver(event.ports[0]));
});

/** All files or none: a file that is not the one of this build is refused by its hash. */
async function fetchAll(): Promise<void> {
  const cache = await caches.open(own);
  await Promise.all(
    Object.entries(offline.files).map(async ([path, integrity]) => {
      const address = addressOf(path);
      // Names under assets/ carry a hash of their content: what an older build had is the same.
      const known = path.startsWith('assets/') ? await caches.match(address) : undefined;
      const file = known ?? (await fetch(new Request(address, { integrity, cache: 'no-cache' })));
      if (!file.ok) throw new Error(`${path}: ${String(file.status)}`);
      await cache.put(address, file);
    }),
  );
}

/** The build before stays: a tab that was not reloaded may still want parts of it. */
async function forgetOld(): Promise<void> {
  const names = (await caches.keys()).filter((name) => name.startsWith(prefix) && name !== own);
  await Promise.all(names.slice(0, -1).map((name) => caches.delete(name)));
}

async function answer(request: Request, address: string): Promise<Response> {
  const cache = await caches.open(own);
  return (await cache.match(address)) ?? (await caches.match(address)) ?? fetch(request);
}

/** Only when somebody asks for it, and when each open tab has said that its work is kept. */
async function takeOver(port: MessagePort | undefined): Promise<void> {
  const tabs = await scope.clients.matchAll({ type: 'window', includeUncontrolled: true });
  const kept = await Promise.all(tabs.map(asked));
  const all = kept.every(Boolean);
  port?.postMessage(all ? 'taking over' : 'work not kept');
  if (all) await scope.skipWaiting();
}

function asked(tab: Tab): Promise<boolean> {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.addEventListener('message', ({ data }) => resolve(data === 'kept'));
    port1.start();
    tab.postMessage('keep your work', [port2]);
    // A tab that was put to sleep has kept its work when it went to the back.
    setTimeout(() => resolve(true), patience);
  });
}
