import { figureItem, figuresOn, keepFigures, type Figure } from '../book/figures.ts';
import type { Document, Id, Means, Step } from '../book/types.ts';
import type { Reference } from '../formula/types.ts';
import { words } from '../words/words.ts';
import type { Sweep } from './sweep.ts';
import { firstCase, firstColumn, tableRows, type SweptCells } from './sweep-sheet.ts';

/** Beyond this, a table says more than a page of pictures. */
const most = 4;

interface Block {
  readonly top: number;
  readonly left: number;
  readonly height: number;
  readonly width: number;
}

interface Drawn {
  readonly title: string;
  readonly blocks: Readonly<Record<string, Block>>;
}

/** Ids of the lines of a sheet by their positions. */
export interface Lines {
  readonly rows: readonly Id[];
  readonly columns: readonly Id[];
}

/** The figures of a sweep: all that is read over one input, or a family of lines for each cell read. */
export function sweepFigures(
  means: Pick<Means, 'newId'>,
  sheet: Id,
  lines: Lines,
  plan: Sweep,
  cells: SweptCells,
): readonly Figure[] {
  return drawnOf(plan, cells).map(({ title, blocks }, place) => ({
    id: means.newId(),
    kind: 'over',
    sheet,
    place,
    title,
    ranges: rangesOf(sheet, lines, blocks),
    values: {},
    options: {},
  }));
}

/** The figures that a sweep still has, drawn from all of its rows; nothing where they are already. */
export function figuresAgain(
  document: Document,
  sheet: Id,
  lines: Lines,
  plan: Sweep,
  cells: SweptCells,
): readonly Step[] {
  const drawn = drawnOf(plan, cells);
  const changed = figuresOn(document, sheet)
    .filter(({ kind }) => kind === 'over')
    .flatMap((figure, index): Figure[] => {
      const blocks = drawn[index]?.blocks;
      const next = blocks && { ...figure, ranges: rangesOf(sheet, lines, blocks) };
      const same = !next || JSON.stringify(figureItem(next)) === JSON.stringify(figureItem(figure));
      return same ? [] : [next];
    });
  return changed.length > 0 ? [keepFigures(changed)] : [];
}

function drawnOf({ down, across }: Sweep, { down: first, across: second, read }: SweptCells) {
  const cases = down.values.length;
  const caption = { top: 0, left: firstColumn, height: 1, width: 1 };
  const now = { ...caption, top: 1 };
  if (!across || !second) {
    const results = { top: firstCase, left: firstColumn + 1, height: cases, width: read.length };
    const along = { ...results, left: firstColumn, width: 1 };
    const names = { ...results, top: 0, height: 1 };
    return [
      { title: words.choose.title(first.caption), blocks: { along, results, names, caption, now } },
    ];
  }
  return read.slice(0, most).map((one, index): Drawn => {
    const top = firstCase + index * tableRows(cases) + 2;
    const results = {
      ...{ top, left: firstColumn + 1 },
      ...{ height: cases, width: across.values.length },
    };
    return {
      title: words.choose.family(one.caption, first.caption, second.caption),
      blocks: {
        along: { ...results, left: firstColumn, width: 1 },
        results,
        names: { ...results, top: top - 1, height: 1 },
        ...{ caption, now },
      },
    };
  });
}

function rangesOf(
  sheet: Id,
  { rows, columns }: Lines,
  blocks: Drawn['blocks'],
): Record<string, Reference> {
  const corner = (row: number, column: number) => ({
    row: { id: rows[row] ?? '', fixed: false },
    column: { id: columns[column] ?? '', fixed: false },
  });
  const range = ({ top, left, height, width }: Block): Reference =>
    height === 1 && width === 1
      ? { kind: 'cell', sheet, explicit: false, at: corner(top, left) }
      : {
          ...{ kind: 'range', sheet, explicit: false, joint: ':' },
          from: corner(top, left),
          to: corner(top + height - 1, left + width - 1),
        };
  return Object.fromEntries(Object.entries(blocks).map(([name, block]) => [name, range(block)]));
}
