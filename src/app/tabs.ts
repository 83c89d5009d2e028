/** Tabs of one browser ask each other for the book that one of them keeps. */
export interface Tabs {
  /** Asks whichever tab keeps the book to let go of it. */
  ask(id: string): void;
  /** Hears what another tab asks for. */
  hear(asked: (id: string) => void): void;
}

/** In a browser without such a channel nobody hears, and the book stays where it is kept. */
export function createTabs(): Tabs {
  const channel =
    'BroadcastChannel' in globalThis ? new BroadcastChannel('halfstop let go') : undefined;
  return {
    ask: (id) => channel?.postMessage(id),
    hear: (asked) =>
      channel?.addEventListener('message', ({ data }: MessageEvent<unknown>) => {
        if (typeof data === 'string') asked(data);
      }),
  };
}
