import type { FunctionError } from '../../functions/values.ts';
import { layoutOf } from '../book/look.ts';
import type { Document, Formula, Name } from '../book/types.ts';
import type { Id, Layout, Reference } from '../formula/types.ts';
import type { WrittenReference } from '../formula/written.ts';
import { lost, placeCells, placeWrittenCells, type Placed } from './placed.ts';
import { nearestName } from './words.ts';
import { words } from '../words/words.ts';

/** Finds where references point now, names taken as what they stand for. */
export class Resolver {
  readonly #document: Document;
  readonly layout: Layout;

  constructor(document: Document) {
    this.#document = document;
    this.layout = layoutOf(document);
  }

  /** What a formula of the book refers to. */
  references({ references }: Formula): readonly Placed[] {
    return references.map((reference) => this.#place(reference, []));
  }

  /** What a text just typed refers to, seen from a sheet. Brings no line into use. */
  written(references: readonly WrittenReference[], own: Id): readonly Placed[] {
    const sheetNamed = (name: string) => this.#document.sheetNamed(name)?.id;
    return references.map((reference) =>
      reference.kind === 'name'
        ? this.#name(reference.name, [])
        : placeWrittenCells(reference, own, sheetNamed),
    );
  }

  /** `within` are the names being looked up, so that one that means itself is found out. */
  #place(reference: Reference, within: readonly Name[]): Placed {
    return reference.kind === 'name'
      ? this.#name(reference.name, within)
      : placeCells(reference, this.layout);
  }

  #name(text: string, within: readonly Name[]): Placed {
    const name = this.#document.named(text);
    if (name === undefined) return refused('#NAME?', this.#unknown(text));
    if (within.includes(name)) return refused('#CYCLE!', words.engine.nameMeansItself(name.name));
    const { shape, references } = name.formula;
    const placed = references.map((reference) =>
      absolute(this.#place(reference, [...within, name])),
    );
    return shape.tree.kind === 'reference'
      ? (placed[shape.tree.slot] ?? lost)
      : { kind: 'expression', tree: shape.tree, references: placed };
  }

  #unknown(text: string): string {
    const nearest = nearestName(
      text,
      this.#document.names.map(({ name }) => name),
    );
    return nearest === undefined
      ? words.engine.noName(text)
      : words.engine.noNameNear(text, nearest);
  }
}

function refused(code: FunctionError['code'], message: string): Placed {
  return { kind: 'refused', error: { code, message } };
}

/** Names mean the same cells from everywhere: HyperFormula then reads alike formulas once. */
function absolute(placed: Placed): Placed {
  if (placed.kind === 'expression' || placed.kind === 'refused') return placed;
  const fix = <End extends { readonly index: number }>({ index }: End) => ({ index, fixed: true });
  const fixCorner = ({ row, column }: { row: { index: number }; column: { index: number } }) => ({
    row: fix(row),
    column: fix(column),
  });
  if (placed.kind === 'cell') return { ...placed, at: fixCorner(placed.at) };
  if (placed.kind === 'range')
    return { ...placed, from: fixCorner(placed.from), to: fixCorner(placed.to) };
  return { ...placed, from: fix(placed.from), to: fix(placed.to) };
}
