import { signal, type ReadonlySignal } from '../../panels/kit/signals.ts';
import { words } from '../../words/words.ts';

/** A newer build of the app, fetched and waiting until somebody has a moment for it. */
export interface Updates {
  readonly ready: ReadonlySignal<boolean>;
  /**
   * Has every tab keep its work, lets the new build in and loads this page anew. A sentence where
   * work in some tab cannot be kept: then everything stays as it is.
   */
  take(): Promise<string | undefined>;
  /** Says no more of it for now; the next time the app is opened it is a new one anyway. */
  later(): void;
}

const notKept = words.app.unkeptElsewhere;

/** Looking for a new build is one small request. */
const lookAgain = 60 * 60 * 1_000;

/**
 * Keeps the app for when there is no network, and says when a newer one has been fetched.
 * `keepWork` writes what is not kept yet and resolves to whether all is.
 */
export function followUpdates(keepWork: () => Promise<boolean>): Updates {
  const ready = signal(false);
  // Not there on pages from elsewhere than localhost or https.
  const workers = import.meta.env.PROD ? navigator.serviceWorker : undefined;
  let waiting: () => ServiceWorker | null = () => null;

  workers?.addEventListener('message', ({ data, ports }) => {
    if (data === 'keep your work')
      void keepWork().then((kept) => ports[0]?.postMessage(kept ? 'kept' : 'not kept'));
  });
  workers?.startMessages();
  if (workers)
    void begin(workers, ready)
      .then((registration) => (waiting = () => registration.waiting))
      // Where it is forbidden the app needs the network, as any page does.
      .catch(() => undefined);

  return {
    ready,
    async take() {
      const worker = waiting();
      // Another tab has let it in already: this one need only be loaded anew.
      const taken = worker ? await takenOver(worker) : await keepWork();
      if (!taken) return notKept;
      location.reload();
      return undefined;
    },
    later: () => (ready.value = false),
  };
}

async function begin(workers: ServiceWorkerContainer, ready: { value: boolean }) {
  const before = workers.controller;
  const registration = await workers.register('./sw.js', { updateViaCache: 'none' });
  const look = (): void => {
    ready.value ||= registration.waiting !== null && registration.active !== null;
  };
  look();
  registration.addEventListener('updatefound', () => {
    const fetched = registration.installing;
    fetched?.addEventListener('statechange', look);
  });
  // Let in from another tab, while this one goes on with the build it began with.
  workers.addEventListener('controllerchange', () => (ready.value ||= before !== null));
  let looked = performance.now();
  document.addEventListener('visibilitychange', () => {
    if (document.hidden || performance.now() - looked < lookAgain) return;
    looked = performance.now();
    void registration.update().catch(() => undefined);
  });
  return registration;
}

/** Resolves once the new build serves this page; false if some tab could not keep its work. */
async function takenOver(worker: ServiceWorker): Promise<boolean> {
  const { port1, port2 } = new MessageChannel();
  const answer = new Promise<boolean>((resolve) => {
    port1.addEventListener('message', ({ data }) => resolve(data === 'taking over'));
    port1.start();
  });
  const serving = new Promise((resolve) => {
    worker.addEventListener('statechange', () => worker.state === 'activated' && resolve(true));
  });
  worker.postMessage('take over', [port2]);
  if (!(await answer)) return false;
  await serving;
  return true;
}
