import { draftOf } from './inside/opened.ts';
import type { Draft } from './inside/draft.ts';
import { pack, type Done } from './packed.ts';
import { inTurn, takeBack } from './steps/apply.ts';
import { faultOfTexts } from './texts.ts';
import type { Book, Change, Document, Effect, Listener, Transaction } from './types.ts';

/** So many gestures can be taken back as they are; those before them are kept as text. */
const recent = 100;

/**
 * Takes over a document and becomes the only way to change it. A step that cannot happen undoes the
 * whole transaction and gives the reason. Undo data is as large as the edit, never as the book.
 */
export function createBook(document: Document): Book {
  const draft = draftOf(document);
  const done: Done[] = [];
  const undone: Transaction[] = [];
  const listeners = new Set<Listener>();

  const tell = (kind: Change['kind'], transaction: Transaction, effects: readonly Effect[]) => {
    const change: Change = { kind, transaction, effects, structure: effects.some(isStructural) };
    for (const listener of [...listeners]) listener(change);
    return change;
  };

  const perform = (transaction: Transaction, kind: 'do' | 'redo') => {
    const result = inTurn(draft, transaction.steps);
    if (!result.ok) return result;
    done.push({ transaction, inverse: result.inverse });
    packOne(done);
    return { ok: true, change: tell(kind, transaction, result.effects) } as const;
  };

  return {
    document,
    run(transaction) {
      if (transaction.steps.length === 0) return { ok: true, change: null };
      const reason = faultOfTexts(transaction.steps);
      if (reason !== undefined) return { ok: false, reason };
      const redoable = undone.splice(0);
      const result = perform(transaction, 'do');
      if (!result.ok) undone.push(...redoable);
      return result;
    },
    follow(steps) {
      if (steps.length === 0) return { ok: true, change: null };
      const result = inTurn(draft, steps);
      if (!result.ok) return result;
      const last = done.pop();
      const { transaction, inverse } = last ?? {
        transaction: { label: '', steps: [] },
        inverse: [],
      };
      if (last)
        done.push({
          transaction: {
            label: transaction.label,
            go: transaction.go,
            steps: [...transaction.steps, ...steps],
          },
          inverse: [...result.inverse, ...inverse],
        });
      return {
        ok: true,
        change: tell('follow', { label: transaction.label, steps }, result.effects),
      };
    },
    undo: () => undoLast(draft, done, undone, tell),
    redo() {
      const transaction = undone.pop();
      if (!transaction) return null;
      const result = perform(transaction, 'redo');
      if (!result.ok) throw new Error(`Could not redo "${transaction.label}": ${result.reason}`);
      return result.change;
    },
    history: {
      get done() {
        return done.map(({ transaction }) => transaction);
      },
      get undone() {
        return [...undone];
      },
    },
    listen(listener) {
      listeners.add(listener);
      return () => {
        listeners.delete(listener);
      };
    },
  };
}

/** The one that is no longer recent; those before it are packed by then. */
function packOne(done: Done[]): void {
  const at = done.length - 1 - recent;
  const old = done[at];
  if (old) done[at] = pack(old);
}

function undoLast(
  draft: Draft,
  done: Done[],
  undone: Transaction[],
  tell: (kind: 'undo', transaction: Transaction, effects: readonly Effect[]) => Change,
): Change | null {
  const last = done.pop();
  if (!last) return null;
  const effects = takeBack(draft, last.inverse);
  undone.push(last.transaction);
  return tell('undo', last.transaction, effects);
}

const structural: ReadonlySet<Effect['kind']> = new Set<Effect['kind']>([
  'linesInserted',
  'linesRemoved',
  'sheetAdded',
  'sheetRemoved',
  'sheetMoved',
  'name',
]);

function isStructural(effect: Effect): boolean {
  if (effect.kind === 'sheetProperties') return effect.renamed;
  return structural.has(effect.kind) && !('tail' in effect && effect.tail);
}
