import type { QuantityName } from '../../functions/quantities/names.ts';
import { cellAtSpot, placeAt, quantityAt } from '../book/look.ts';
import type { Document, Formula } from '../book/types.ts';
import { shownAs } from './dimensions.ts';
import { inferQuantity, kindOf, type AskCells } from './infer.ts';
import type { Kind } from './kinds.ts';
import { blockOf, type PlacedCells } from './placed.ts';
import { readersOf } from './readers.ts';
import type { Resolver } from './resolver.ts';
import type { CellPlace } from './types.ts';

/** A range measures what its first cells measure: enough for a column, quick for a whole sheet. */
const looked = 50;

const keyOf = ({ sheet, row, column }: CellPlace) => `${sheet} ${row} ${column}`;

/** What cells measure: what was set, else what their formula comes to. */
export class Quantities {
  readonly #document: Document;
  readonly #resolver: Resolver;
  readonly #known = new Map<string, Kind>();

  constructor(document: Document, resolver: Resolver) {
    this.#document = document;
    this.#resolver = resolver;
  }

  /** Formulas, quantities or places are others now. */
  forget(): void {
    this.#known.clear();
  }

  /** Whether someone was told another quantity of a cell that holds no formula. */
  isOther(spot: CellPlace): boolean {
    const key = keyOf(spot);
    return this.#known.has(key) && this.#known.get(key) !== this.#own(spot);
  }

  /**
   * Cells hold something else now. Gives all whose formulas read them, however far down, after
   * looking anew at what they measure; undefined if these are so many that all was forgotten.
   */
  follow(touched: readonly CellPlace[]): Reread | undefined {
    const read = readersOf(this.#document, touched, (spot) => this.#set(spot) !== undefined);
    if (!read) {
      this.forget();
      return undefined;
    }
    const before = read.map((spot) => this.#known.get(keyOf(spot)));
    for (const spot of read) this.#known.delete(keyOf(spot));
    return { read, others: read.filter((spot, index) => this.kind(spot) !== before[index]) };
  }

  of(spot: CellPlace): QuantityName | undefined {
    return shownAs(this.kind(spot));
  }

  /** What a formula outside the cells comes to. */
  ofFormula(...[tree, references]: FormulaParts): QuantityName | undefined {
    return inferQuantity(tree, references, this.ask);
  }

  /** What the cells behind a reference measure. */
  readonly ask: AskCells = (cells) => this.#cells(cells, (spot) => this.kind(spot));

  /**
   * A cell waits for the cells that its formula reads. The chain is a list and not a recursion: a
   * running total down a column is as deep as it is long. Who comes up again in its own chain is plain.
   */
  kind(wanted: CellPlace): Kind {
    const chain = [wanted];
    const inChain = new Set([keyOf(wanted)]);
    for (let spot = chain.at(-1); spot !== undefined; spot = chain.at(-1)) {
      let missing: CellPlace | undefined;
      const kind = this.#look(spot, (cell) => {
        const key = keyOf(cell);
        if (!this.#known.has(key) && !inChain.has(key)) missing ??= cell;
        return this.#known.get(key);
      });
      if (missing) {
        chain.push(missing);
        inChain.add(keyOf(missing));
      } else {
        this.#known.set(keyOf(spot), kind);
        chain.pop();
      }
    }
    return this.#known.get(keyOf(wanted));
  }

  #look(spot: CellPlace, ask: (spot: CellPlace) => Kind): Kind {
    const known = this.#known.get(keyOf(spot));
    if (known !== undefined) return known;
    const own = this.#own(spot);
    const formula = own === undefined ? this.#formula(spot) : undefined;
    if (!formula) return own;
    return kindOf(formula.shape.tree, {
      references: this.#resolver.references(formula),
      ask: (cells) => this.#cells(cells, ask),
    });
  }

  /** What a cell measures by itself: what was set, else plain for a plain number. */
  #own(spot: CellPlace): Kind {
    const set = this.#set(spot);
    if (set !== undefined) return set;
    const content = cellAtSpot(this.#document, spot)?.content;
    if (content?.kind === 'number') return 'any';
    return content?.kind === 'truth' ? 'truth' : undefined;
  }

  #formula(spot: CellPlace): Formula | undefined {
    const content = cellAtSpot(this.#document, spot)?.content;
    return content?.kind === 'formula' ? content.formula : undefined;
  }

  #set(spot: CellPlace): QuantityName | undefined {
    const place = placeAt(this.#document, spot);
    return place && quantityAt(this.#document, place);
  }

  #cells(placed: PlacedCells, ask: (spot: CellPlace) => Kind): readonly Kind[] {
    if (placed.kind === 'cell')
      return [
        ask({ sheet: placed.sheet, row: placed.at.row.index, column: placed.at.column.index }),
      ];
    const block = blockOf(placed, this.#document);
    if (!block) return [undefined];
    const kinds = new Set<Kind>();
    let worded = false;
    for (const spot of spotsOf(block)) {
      const content = cellAtSpot(this.#document, spot)?.content;
      if (content?.kind === 'text') worded = true;
      else if (content && content.kind !== 'blank') kinds.add(ask(spot));
    }
    // Captions among numbers say nothing; a column of names is one.
    return kinds.size === 0 && worded ? ['text'] : [...kinds];
  }
}

/** What was read anew after a change. */
export interface Reread {
  readonly read: readonly CellPlace[];
  /** Those among them that measure something else than before. */
  readonly others: readonly CellPlace[];
}

type FormulaParts = [
  tree: Parameters<typeof inferQuantity>[0],
  references: Parameters<typeof inferQuantity>[1],
];

function* spotsOf({ sheet, from, to }: NonNullable<ReturnType<typeof blockOf>>) {
  let count = 0;
  for (let row = from.row; row <= to.row; row++)
    for (let column = from.column; column <= to.column; column++) {
      if (++count > looked) return;
      yield { sheet, row, column };
    }
}
