import type { QuantityName } from '../../../functions/quantities/names.ts';
import { addressAt, formulaText, spotOf, type Spot } from '../../../src/book/look.ts';
import type { Cell, Document, Formula, Id, Place, Transaction } from '../../../src/book/types.ts';
import type { Engine } from '../../../src/engine/types.ts';
import type { CellReference, Node } from '../../../src/formula/types.ts';

/** Random numbers from 0 up to 1 that a seed brings back (mulberry32, in the public domain). */
export function randomFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

interface Swappable {
  readonly place: Place;
  readonly cell: Cell;
  readonly formula: Formula;
  readonly slot: number;
  readonly quantity: QuantityName;
}

interface Other {
  readonly place: Place;
  readonly spot: Spot;
  readonly quantity: QuantityName;
}

export interface Mutation {
  /** `Sail loft!E13 =FSTOPS(R13,$R$12): R13 (f-number) swapped for C20 (luminance)`. */
  readonly words: string;
  readonly transaction: Transaction;
}

/**
 * Swaps one reference of a formula for a cell of another quantity. A place where any quantity will
 * do is left out: what is only asked whether it is blank, written out as text, held against a bare
 * number, or counted off to choose among texts; and so is a plain number as the stand-in, because it
 * has no quantity.
 */
export class Mutations {
  readonly #document: Document;
  readonly #references: readonly Swappable[];
  readonly #others: readonly Other[];
  /** How many references there are to swap, and how many were left out. */
  readonly counts = { swappable: 0, anyWillDo: 0, noQuantity: 0 };

  constructor(document: Document, engine: Engine) {
    this.#document = document;
    const references: Swappable[] = [];
    const others: Other[] = [];
    for (const { sheet, row, column, cell } of everyCell(document)) {
      const place = { sheet, row, column };
      const spot = spotOf(document, place);
      const quantity = spot && engine.quantityOf(spot);
      if (spot && quantity !== undefined && quantity !== 'number')
        others.push({ place, spot, quantity });
      if (cell.content.kind !== 'formula') continue;
      const { formula } = cell.content;
      for (const { slot, anyWillDo } of slotsIn(formula.shape.tree)) {
        const measured = quantityBehind(document, engine, formula, slot);
        if (measured === undefined) this.counts.noQuantity++;
        else if (anyWillDo) this.counts.anyWillDo++;
        else references.push({ place, cell, formula, slot, quantity: measured });
      }
    }
    this.#references = references;
    this.#others = others;
    this.counts.swappable = references.length;
  }

  next(random: () => number): Mutation {
    const one = pick(this.#references, random);
    const other = pick(
      this.#others.filter(({ quantity }) => quantity !== one.quantity),
      random,
    );
    const { place, formula, slot } = one;
    const references = formula.references.map((reference, index) =>
      index === slot ? to(other.place) : reference,
    );
    const content = { kind: 'formula', formula: { shape: formula.shape, references } } as const;
    const { sheet, row, column } = place;
    return {
      words: `${this.#named(place)} ${formulaText(this.#document, formula, sheet)}: reference ${String(slot + 1)} (${one.quantity}) swapped for ${this.#named(other.place)} (${other.quantity})`,
      transaction: {
        label: 'Swap a reference',
        steps: [
          { kind: 'setCells', sheet, cells: [{ row, column, cell: { ...one.cell, content } }] },
        ],
      },
    };
  }

  #named(place: Place): string {
    const spot = spotOf(this.#document, place);
    const name = this.#document.sheet(place.sheet)?.properties.name ?? '';
    return spot ? `${name}!${addressAt(spot)}` : name;
  }
}

function* everyCell(document: Document): Iterable<Place & { readonly cell: Cell }> {
  for (const { id: sheet, ...rest } of document.sheets.map((each) => ({ id: each.id, each })))
    for (const at of rest.each.cells()) yield { sheet, ...at };
}

function to({ sheet, row, column }: Place): CellReference {
  const end = (id: Id) => ({ id, fixed: false });
  return { kind: 'cell', sheet, explicit: false, at: { row: end(row), column: end(column) } };
}

function pick<Item>(items: readonly Item[], random: () => number): Item {
  const item = items[Math.floor(random() * items.length)];
  if (item === undefined) throw new Error('There is nothing to choose from.');
  return item;
}

function quantityBehind(
  document: Document,
  engine: Engine,
  { references }: Formula,
  slot: number,
): QuantityName | undefined {
  const reference = references[slot];
  if (reference?.kind !== 'cell') return undefined;
  const { sheet, at } = reference;
  const spot = spotOf(document, { sheet, row: at.row.id, column: at.column.id });
  const quantity = spot && engine.quantityOf(spot);
  return quantity === 'number' ? undefined : quantity;
}

const asksOnly = /^(IS[A-Z]+|COUNTA|COUNTBLANK|TEXT|LEN|CONCATENATE|TEXTJOIN|ROW|COLUMN)$/;

/** Every reference in a formula, and whether it stands where a cell of any quantity will do. */
function* slotsIn(
  node: Node,
  anyWillDo = false,
): Iterable<{ readonly slot: number; readonly anyWillDo: boolean }> {
  if (node.kind === 'reference') yield { slot: node.slot, anyWillDo };
  else if (node.kind === 'sign' || node.kind === 'percent')
    yield* slotsIn(node.argument, anyWillDo);
  else if (node.kind === 'binary') {
    const { operator, left, right } = node;
    const bare = left.kind === 'number' || right.kind === 'number';
    const free = operator === '&' || (/[=<>]/.test(operator) && bare);
    yield* slotsIn(left, anyWillDo || free);
    yield* slotsIn(right, anyWillDo || free);
  } else if (node.kind === 'call') {
    for (const [index, argument] of node.arguments.entries()) {
      const isCount = node.name === 'CHOOSE' && index === 0;
      const free = anyWillDo || isCount || asksOnly.test(node.name);
      if (argument) yield* slotsIn(argument, free);
    }
  }
}
