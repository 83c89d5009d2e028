import { figuresOn } from '../book/figures.ts';
import type { Cell, Document, Id, Sheet } from '../book/types.ts';
import { callsIn } from '../formula/callsIn.ts';
import type { Call, Shape } from '../formula/types.ts';
import type { QuantityName } from '../../functions/quantities/names.ts';

/**
 * Functions that are held to the sheet's tolerance, and which of their arguments says
 * another one. Written out because the library comes later than what asks for it.
 */
export const heldTo: Readonly<Record<string, number>> = {
  VERDICT: 1,
  AGREES: 2,
  FAGREES: 2,
  HOLDSFROM: 5,
  HOLDSTO: 5,
  POINTHOLDS: 7,
};

/** Figures that show what lies within it. */
export const drawnWithin: ReadonlySet<string> = new Set([
  'ladder',
  'falloff',
  'plan',
  'section',
  'evenness',
  'cost',
]);

/** What is held to a target on a scale of its own, and not in stops. */
const colours: ReadonlySet<QuantityName | undefined> = new Set<QuantityName>([
  'colourTemperature',
  'mired',
  'duv',
]);

/** Whether a cell is judged by the tolerance of its sheet: by its formula, or against its target. */
export function isHeld(sheet: Sheet, column: Id, cell: Cell): boolean {
  if (cell.content.kind === 'formula' && isHeldShape(cell.content.formula.shape)) return true;
  if (cell.target === undefined || cell.tolerance !== undefined) return false;
  return !colours.has(cell.quantity ?? sheet.columns.properties(column)?.quantity);
}

/** Whether a figure under the sheet shows what lies within its tolerance. */
export const isDrawnWithin = (document: Document, sheet: Id): boolean =>
  figuresOn(document, sheet).some(({ kind }) => drawnWithin.has(kind));

const known = new WeakMap<Shape, boolean>();

/** Shapes are shared by all formulas of a column, so each is looked into once. */
function isHeldShape(shape: Shape): boolean {
  const found = known.get(shape) ?? [...callsIn(shape.tree)].some(leavesItOut);
  known.set(shape, found);
  return found;
}

function leavesItOut({ name, arguments: given }: Call): boolean {
  const index = heldTo[name];
  return index !== undefined && (given[index] ?? null) === null;
}
