import type { Book, Means } from '../book/types.ts';
import type { Engine } from '../engine/types.ts';
import type { Session } from '../session/session.ts';

/** What a command may reach: the book in hand, what it calculates, what is selected. */
export interface Context {
  readonly book: Book;
  readonly engine: Engine;
  readonly session: Session;
  /** New ids, how entries are read, which names are functions. */
  readonly means: Means;
}

/**
 * Done, with a sentence to say where one helps; or not done, with the reason as a sentence.
 * Either way the book is whole.
 */
export type Outcome =
  { readonly ok: true; readonly say?: string } | { readonly ok: false; readonly reason: string };

export const done: Outcome = { ok: true };

export function refused(reason: string): Outcome {
  return { ok: false, reason };
}

export type CommandGroup =
  | 'edit'
  | 'cells'
  | 'rows'
  | 'columns'
  | 'sheets'
  | 'figures'
  | 'names'
  | 'book'
  | 'units'
  | 'view';

/**
 * One action of the product, wherever it is asked for: a key, a menu, the finder.
 * `Args` are what a dialog or a gesture adds; a command without them acts on the selection.
 */
export interface Command<Args = undefined> {
  readonly id: string;
  /** A verb phrase in sentence case: "Insert rows above". */
  readonly name: string;
  readonly group: CommandGroup;
  /** Keys in the form `Ctrl+Shift+Z`; `Ctrl` is Cmd on a Mac. The first is shown. */
  readonly keys?: readonly string[];
  /** Further words by which people look for it. */
  readonly search?: readonly string[];
  /** Why it cannot run now, as a sentence; undefined when it can. */
  readonly unavailable?: (context: Context) => string | undefined;
  readonly run: (context: Context, args: Args) => Outcome | Promise<Outcome>;
}

/** A command whose arguments have been forgotten, as lists and the finder hold it. */
export type AnyCommand = Omit<Command, 'run'> & {
  readonly run: (context: Context, args: never) => Outcome | Promise<Outcome>;
  /** Which dialog asks for the arguments; without one it needs none. */
  readonly asks?: string;
};
