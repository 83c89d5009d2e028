import type { Reference } from '../../formula/types.ts';
import type { Cell, Id, Name } from '../types.ts';
import type { DraftSheet } from './sheet.ts';

/** What the index reads of a book. */
interface Used {
  readonly names: readonly Name[];
  everySheet(): Iterable<DraftSheet>;
}

/**
 * Whoever holds references, as words: `cell SHEET ROW COLUMN` (its formula), `target SHEET ROW
 * COLUMN`, `name ID`. Areas are few and are looked through as they are.
 */
export type HolderKey = string;

/**
 * Which formulas refer to a cell, range over a sheet, or use a name. Built when first asked for and
 * kept up from then on. Formulas in deleted lines and sheets stay listed: undo brings them back.
 */
export class UseIndex {
  readonly #draft: Used;
  #cells: Map<string, Set<HolderKey>> | undefined;
  readonly #ranges = new Map<Id, Set<HolderKey>>();
  readonly #names = new Map<string, Set<HolderKey>>();

  constructor(draft: Used) {
    this.#draft = draft;
  }

  /** Those that refer to this one cell by itself. */
  ofCell(sheet: Id, row: Id, column: Id): ReadonlySet<HolderKey> {
    return this.#built().get(cellKey(sheet, row, column)) ?? none;
  }

  /** Those with a range, whole columns or whole rows on the sheet. */
  rangingOver(sheet: Id): ReadonlySet<HolderKey> {
    this.#built();
    return this.#ranges.get(sheet) ?? none;
  }

  ofName(name: string): ReadonlySet<HolderKey> {
    this.#built();
    return this.#names.get(name.toLowerCase()) ?? none;
  }

  replaceCell(sheet: Id, row: Id, column: Id, before: Cell | undefined, after: Cell | undefined) {
    if (!this.#cells) return;
    for (const kind of ['cell', 'target'] as const) {
      const [old, now] = [before, after].map((cell) => cell && referencesIn(cell, kind));
      if (old === now) continue;
      const holder = `${kind} ${cellKey(sheet, row, column)}`;
      if (old) this.remove(holder, old);
      if (now) this.add(holder, now);
    }
  }

  add(holder: HolderKey, references: readonly Reference[]): void {
    if (!this.#cells) return;
    for (const reference of references) {
      const { map, key } = this.#shelfOf(reference, this.#cells);
      const holders = map.get(key);
      if (holders) holders.add(holder);
      else map.set(key, new Set([holder]));
    }
  }

  remove(holder: HolderKey, references: readonly Reference[]): void {
    if (!this.#cells) return;
    for (const reference of references) {
      const { map, key } = this.#shelfOf(reference, this.#cells);
      const holders = map.get(key);
      if (holders?.delete(holder) && holders.size === 0) map.delete(key);
    }
  }

  forget(): void {
    this.#cells = undefined;
  }

  #built(): Map<string, Set<HolderKey>> {
    if (this.#cells) return this.#cells;
    this.#cells = new Map();
    this.#ranges.clear();
    this.#names.clear();
    for (const sheet of this.#draft.everySheet())
      for (const { row, column, cell } of sheet.everyCell())
        this.replaceCell(sheet.id, row, column, undefined, cell);
    for (const name of this.#draft.names) this.add(`name ${name.id}`, referencesOfName(name));
    return this.#cells;
  }

  #shelfOf(reference: Reference, cells: Map<string, Set<HolderKey>>) {
    if (reference.kind === 'name') return { map: this.#names, key: reference.name.toLowerCase() };
    if (reference.kind === 'lost') return { map: new Map<string, Set<HolderKey>>(), key: '' };
    if (reference.kind !== 'cell') return { map: this.#ranges, key: reference.sheet };
    const { row, column } = reference.at;
    return { map: cells, key: cellKey(reference.sheet, row.id, column.id) };
  }
}

const none: ReadonlySet<HolderKey> = new Set();

export const cellKey = (sheet: Id, row: Id, column: Id) => `${sheet} ${row} ${column}`;

/** `undefined` where there is no formula; the same list for the same formula. */
function referencesIn(cell: Cell, kind: 'cell' | 'target'): readonly Reference[] | undefined {
  if (kind === 'cell')
    return cell.content.kind === 'formula' ? cell.content.formula.references : undefined;
  return typeof cell.target === 'object' ? cell.target.references : undefined;
}

export const referencesOfName = ({ formula }: Name): readonly Reference[] => formula.references;
