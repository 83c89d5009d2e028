import type { QuantityName } from '../../functions/quantities/names.ts';
import { cellAt, placeAt, quantityAt } from '../book/look.ts';
import type { Document } from '../book/types.ts';
import { inferQuantity } from './infer.ts';
import { agreed, type Kind } from './kinds.ts';
import { blockOf, type PlacedCells } from './placed.ts';
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
    return this.#known.has(key) && this.#known.get(key) !== this.#set(spot);
  }

  of(spot: CellPlace): QuantityName | undefined {
    const kind = this.#kind(spot);
    return kind === 'any' ? undefined : kind;
  }

  /** What a formula outside the cells comes to. */
  ofFormula(...[tree, references]: FormulaParts): QuantityName | undefined {
    return inferQuantity(tree, references, (cells) =>
      this.#cells(cells, (spot) => this.#kind(spot)),
    );
  }

  /**
   * A cell waits for the cells that its formula reads. The chain is a list and not a recursion: a
   * running total down a column is as deep as it is long. Who comes up again in its own chain is plain.
   */
  #kind(wanted: CellPlace): Kind {
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
    const set = this.#set(spot);
    if (set !== undefined) return set;
    const place = placeAt(this.#document, spot);
    const content = place && cellAt(this.#document, place)?.content;
    if (content?.kind !== 'formula') return undefined;
    const { formula } = content;
    return inferQuantity(formula.shape.tree, this.#resolver.references(formula), (cells) =>
      this.#cells(cells, ask),
    );
  }

  #set(spot: CellPlace): QuantityName | undefined {
    const place = placeAt(this.#document, spot);
    return place && quantityAt(this.#document, place);
  }

  #cells(placed: PlacedCells, ask: (spot: CellPlace) => Kind): Kind {
    if (placed.kind === 'cell')
      return ask({ sheet: placed.sheet, row: placed.at.row.index, column: placed.at.column.index });
    const block = blockOf(placed, this.#document);
    if (!block) return undefined;
    const kinds: Kind[] = [];
    for (const spot of spotsOf(block)) {
      const place = placeAt(this.#document, spot);
      const content = place && cellAt(this.#document, place)?.content;
      if (content && content.kind !== 'blank' && content.kind !== 'text') kinds.push(ask(spot));
    }
    return agreed(kinds);
  }
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
