import type { Outcome } from '../commands/command.ts';
import { words } from '../words/words.ts';
import type { Desk } from './desk.ts';

type Work = (desk: Desk, args: unknown) => Outcome | Promise<Outcome>;

/** For actions that need an open book: why they cannot be had without one, and their work on it. */
export function withOpenBook(desk: () => Desk | null) {
  return {
    unavailable: (): string | undefined => (desk() ? undefined : words.app.openFirst),
    withDesk: (work: Work) => (args?: unknown) => {
      const open = desk();
      return open ? work(open, args) : { ok: false as const, reason: words.app.openFirst };
    },
  };
}
