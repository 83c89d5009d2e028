import { columnLetters } from '../../formula/address.ts';
import { maxColumns, maxRows } from '../../book/types.ts';
import type { PlainBook, PlainCell, PlainName, PlainSheet } from '../plain/types.ts';
import { most, Refused } from './refused.ts';
import { words } from '../../words/words.ts';

/** A file of another program, read: what could not be taken is listed in sentences. */
export interface Foreign {
  readonly book: PlainBook;
  readonly leftOut: readonly string[];
}

/** A cell that came in; its formula may be one that nothing here reads. */
export type CellIn = PlainCell;

/** Counts cells over all sheets while they come in. */
export class Counter {
  #cells = 0;

  count(more = 1): void {
    this.#cells += more;
    if (this.#cells > most.cells) throw new Refused(words.files.tooManyCells(most.cells));
  }
}

/** A sheet while it is read. */
export class SheetIn {
  readonly cells: CellIn[] = [];
  readonly widths = new Map<number, number>();
  frozenRows = 0;
  frozenColumns = 0;
  protected = false;
  hidden = false;
  #beyond = 0;

  constructor(
    readonly name: string,
    readonly counter: Counter,
  ) {}

  put(cell: CellIn): void {
    if (cell.row >= maxRows || cell.column >= maxColumns) {
      this.#beyond += 1;
      return;
    }
    this.counter.count();
    this.cells.push(cell);
  }

  get faults(): readonly string[] {
    return this.#beyond === 0
      ? []
      : [words.files.beyond(this.name, this.#beyond, maxRows, columnLetters(maxColumns - 1))];
  }

  get sheet(): PlainSheet {
    const { name, widths, frozenRows, frozenColumns, cells } = this;
    return {
      ...{ name, widths, frozenRows, frozenColumns, cells },
      ...(this.protected && { protected: true as const }),
      ...(this.hidden && { hidden: true as const }),
    };
  }
}

export function foreign(
  title: string,
  sheets: readonly SheetIn[],
  names: readonly PlainName[],
  leftOut: readonly string[],
): Foreign {
  if (sheets.length === 0) throw new Refused(words.files.noSheets);
  return {
    book: { title, sheets: sheets.map(({ sheet }) => sheet), names },
    leftOut: [...leftOut, ...sheets.flatMap(({ faults }) => faults)],
  };
}

/** What files hold beside cells, by the names of their parts. */
const beside: readonly (readonly [RegExp, string])[] = [
  [/(?:^|\/)charts?\/chart|^Object \d+\/content\.xml$/i, 'charts'],
  [/(?:^|\/)(?:media|Pictures)\//i, 'pictures'],
  [/pivotTables\//i, words.files.pivots],
  [/vbaProject|^Basic\/|^Scripts\//i, 'macros'],
  [/externalLinks\//i, words.files.links],
  [/embeddings\//i, words.files.embedded],
];

/** A sentence for each kind of thing that stays behind. */
export function leftBehind(names: readonly string[]): readonly string[] {
  return beside.flatMap(([pattern, what]) =>
    names.some((name) => pattern.test(name)) ? [words.files.leftOut(what)] : [],
  );
}
