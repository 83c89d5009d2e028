import type { Action } from './actions.ts';
import type { Updates } from './offline/updates.ts';

export interface KeptHands {
  readonly updates: Updates;
}

/** Actions on what is kept on this device, beside the open book. */
export function keptActions({ updates }: KeptHands): readonly Action[] {
  return [
    {
      id: 'app.reload',
      name: 'Reload with the new version',
      group: 'view',
      async run() {
        const reason = await updates.take();
        return reason === undefined ? { ok: true } : { ok: false, reason };
      },
    },
    {
      id: 'app.notNow',
      name: 'Say no more of the new version',
      group: 'view',
      run: () => (updates.later(), { ok: true }),
    },
  ];
}
