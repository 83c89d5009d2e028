import type { AnyCommand, Context, Outcome } from '../commands/command.ts';
import { words } from '../words/words.ts';

/** Something that can be done now, wherever it is asked for: a command, or what app adds to them. */
export interface Action {
  readonly id: string;
  readonly name: string;
  readonly group: string;
  readonly keys?: readonly string[];
  readonly search?: readonly string[];
  /** The browser itself acts on these keys, and tells: they are shown and left alone. */
  readonly native?: boolean;
  unavailable?(): string | undefined;
  run(args: unknown): Outcome | Promise<Outcome>;
}

/** A command as an action on the book in hand. */
export function actionOf(command: AnyCommand, context: () => Context | undefined): Action {
  const { id, name, group, keys, search, unavailable } = command;
  return {
    id,
    name,
    group,
    ...(keys && { keys }),
    ...(search && { search }),
    unavailable() {
      const now = context();
      return now ? unavailable?.(now) : words.app.openFirst;
    },
    run(args) {
      const now = context();
      if (!now) return { ok: false, reason: words.app.openFirst };
      // The border where arguments from dialogs meet commands: each verb's caller gives its own kind.
      return command.run(now, args as never);
    },
  };
}
