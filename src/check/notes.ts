import { cellAtSpot } from '../book/look.ts';
import type { Document } from '../book/types.ts';
import type { Shape } from '../formula/types.ts';
import { hasUsual, standardRemarks } from '../engine/index.ts';
import type { CellPlace, Engine } from '../engine/types.ts';
import { holdsReadings, receptorRemark } from './receptors.ts';
import type { Remark } from './remark.ts';

export type Note = Pick<Remark, 'about' | 'sentence'>;

/** What depends on values and not on quantities: constants out of the usual, unlike receptors. */
export function notesAt(engine: Engine, place: CellPlace): readonly Note[] {
  const meter = receptorRemark(engine, place);
  return [
    ...standardRemarks(engine, place).map((sentence) => ({ about: 'standard', sentence }) as const),
    ...(meter === undefined ? [] : [{ about: 'meter', sentence: meter } as const]),
  ];
}

/** Shapes are shared by all formulas of a column, so each is looked into once. */
const usual = new WeakMap<Shape, boolean>();

/** Whether any values could bring a note to a cell. */
export function mayHaveNotes(document: Document, engine: Engine, place: CellPlace): boolean {
  const content = cellAtSpot(document, place)?.content;
  if (content?.kind !== 'formula') return false;
  const { shape } = content.formula;
  const known = usual.get(shape) ?? hasUsual(shape.tree);
  usual.set(shape, known);
  return known || holdsReadings(engine, place);
}
