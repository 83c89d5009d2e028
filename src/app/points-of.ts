import type { Book, Change, Document } from '../book/types.ts';
import { judgingPlaces, type JudgingPlaces } from '../check/points.ts';
import type { Look } from '../panels/views/look.ts';
import { pointsOf } from '../panels/views/points.ts';
import type { Point } from '../panels/shown.ts';

/**
 * The points of each sheet. Which cells judge is looked up again only after formulas, targets or
 * lines changed there; typing a reading changes what they say and not where they are.
 */
export function createPoints(book: Book): {
  of(look: Look, sheet: string): readonly Point[];
  /** Of every sheet, in the order of the contents. */
  all(look: Look): readonly (readonly Point[])[];
  /** Whether anything on a sheet is held to its tolerance. */
  isHeld(look: Look, sheet: string): boolean;
  stop(): void;
} {
  const places = new Map<string, JudgingPlaces>();
  const stop = book.listen((change) => forget(book.document, change, places));
  const placesOn = ({ document }: Look, id: string): JudgingPlaces => {
    const sheet = document.sheet(id);
    if (!sheet) return { said: [], aimed: [], held: [] };
    const known = places.get(id) ?? judgingPlaces(sheet);
    places.set(id, known);
    return known;
  };
  const of = (look: Look, id: string) => pointsOf(look, placesOn(look, id));
  return {
    stop,
    of,
    all: (look) => look.document.sheets.map(({ id }) => of(look, id)),
    isHeld: (look, id) => placesOn(look, id).held.length > 0,
  };
}

function forget(document: Document, change: Change, places: Map<string, JudgingPlaces>): void {
  for (const effect of change.effects) {
    if (effect.kind === 'linesInserted' || effect.kind === 'linesRemoved') {
      places.delete(effect.sheet);
    } else if (effect.kind === 'cells') {
      const sheet = document.sheet(effect.sheet);
      const known = places.get(effect.sheet);
      if (!known) continue;
      const judging = [...known.said, ...known.held];
      const said = new Set(judging.map(({ row, column }) => `${row} ${column}`));
      const aimed = new Set(known.aimed.map(({ row, column }) => `${row} ${column}`));
      const matters = effect.cells.some(({ row, column, content }) => {
        if (!content) return false;
        const cell = sheet?.cell(row, column);
        const key = `${row} ${column}`;
        if (said.has(key) || cell?.content.kind === 'formula') return true;
        return aimed.has(key) !== (cell?.target !== undefined);
      });
      if (matters) places.delete(effect.sheet);
    }
  }
}
