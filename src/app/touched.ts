import { spotOf } from '../book/look.ts';
import type { Change, Document } from '../book/types.ts';
import type { CellPlace } from '../engine/types.ts';

export interface Touched {
  readonly cells: readonly CellPlace[];
  /** Everything in view may look different: units, names of sheets. */
  readonly all: boolean;
  /** Counts, widths, labels or frozen lines changed. */
  readonly structure: boolean;
}

/** What of the screen a change of the book concerns, apart from what it makes the engine say. */
export function effectsTouch(document: Document, { effects, structure }: Change): Touched {
  const cells = effects.flatMap((effect) =>
    effect.kind === 'cells'
      ? effect.cells.flatMap(
          ({ row, column }) => spotOf(document, { sheet: effect.sheet, row, column }) ?? [],
        )
      : [],
  );
  const lines = effects.some(
    ({ kind }) =>
      kind === 'linesInserted' ||
      kind === 'linesRemoved' ||
      kind === 'lineProperties' ||
      kind === 'sheetProperties',
  );
  const all = effects.some(({ kind }) => kind === 'settings' || kind === 'areas');
  return { cells, all: all || structure, structure: lines || structure };
}
