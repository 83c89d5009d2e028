import type { Book, Change, Place } from '../book/types.ts';
import type { Look } from '../panels/views/look.ts';
import { pointsOf, verdictPlaces } from '../panels/views/points.ts';
import type { Point } from '../panels/workbook.ts';

/**
 * The verdicts of each sheet. Which cells judge is looked up again only after formulas or lines
 * changed there; typing a reading changes what they say and not where they are.
 */
export function createPoints(book: Book): {
  of(look: Look, sheet: string): readonly Point[];
  stop(): void;
} {
  const places = new Map<string, readonly Place[]>();
  const stop = book.listen((change) => forget(book, change, places));
  return {
    stop,
    of(look, id) {
      const sheet = look.document.sheet(id);
      if (!sheet) return [];
      const known = places.get(id) ?? verdictPlaces(look.document, sheet);
      places.set(id, known);
      return pointsOf(look, known);
    },
  };
}

function forget(book: Book, change: Change, places: Map<string, readonly Place[]>): void {
  for (const effect of change.effects) {
    if (effect.kind === 'linesInserted' || effect.kind === 'linesRemoved') {
      places.delete(effect.sheet);
    } else if (effect.kind === 'cells') {
      const sheet = book.document.sheet(effect.sheet);
      const known = places.get(effect.sheet);
      if (!known) continue;
      const before = new Set(known.map(({ row, column }) => `${row} ${column}`));
      const matters = effect.cells.some(
        ({ row, column, content }) =>
          content &&
          (before.has(`${row} ${column}`) || sheet?.cell(row, column)?.content.kind === 'formula'),
      );
      if (matters) places.delete(effect.sheet);
    }
  }
}
