import type { QuantityName } from '../../functions/quantities/names.ts';
import { grace, type VerdictShape } from '../../functions/stops/verdictWords.ts';
import { isError } from '../../functions/values.ts';
import { cellAtSpot, formulaText } from '../book/look.ts';
import { writingSettings } from '../book/settings.ts';
import type { Cell, Document } from '../book/types.ts';
import type { CellPlace, CellValue, Engine } from '../engine/types.ts';
import { oneOf } from './kindWords.ts';
import { isCompared, offBy, type Off, type OffScale } from './offs.ts';
import { offWords } from './offWords.ts';
import { words } from '../words/words.ts';

/** How a reading stands against its target. */
export interface Verdict {
  /** "agrees", "0.7 stop under", "12 mired too warm", "waiting for this reading". */
  readonly words: string;
  /** Backs the words; none where reading and target cannot be held against each other. */
  readonly shape?: VerdictShape | 'waits';
  /** Reading minus wanted: over, warmer and greener are positive. */
  readonly off?: Off;
  /** Still agrees: in stops, mired or Duv. */
  readonly tolerance?: number;
  /** What is wanted, in the base unit of its quantity. */
  readonly target?: number;
}

/**
 * How far off a colour may be and still agree where its cell does not say; stops have the sheet's and
 * the book's. Common practice: 10 mired is less than the weakest correction shifts, and 0.003 is half
 * of what ANSI C78.377 lets the Duv of a lamp be off (quoted from memory).
 */
export const usualTolerance = { mired: 10, duv: 0.003 } as const;

/** What a cell's reading is held to: its own tolerance, else the sheet's, else the book's. */
export function toleranceOf(
  document: Document,
  { sheet }: CellPlace,
  cell: Cell,
  scale: OffScale,
): number {
  if (cell.tolerance !== undefined) return cell.tolerance;
  if (scale !== 'stops') return usualTolerance[scale];
  return document.sheet(sheet)?.properties.tolerance ?? document.settings.tolerance;
}

/** The verdict on a cell that has a target; undefined for every other cell. */
export function verdictOf(
  document: Document,
  engine: Engine,
  place: CellPlace,
): Verdict | undefined {
  const cell = cellAtSpot(document, place);
  if (cell?.target === undefined) return undefined;
  const quantity = engine.quantityOf(place);
  const wanted = wantedIn(document, engine, place, cell.target, quantity);
  const { value: target } = wanted;
  if (isError(target)) return { words: target.message, ...(target.waiting && { shape: 'waits' }) };
  if (typeof target !== 'number') return { words: words.check.targetNoNumber };
  const reading = engine.valueOf(place);
  if (reading === null) return { words: words.check.waiting, shape: 'waits', target };
  if (isError(reading))
    return { words: reading.message, target, ...(reading.waiting && { shape: 'waits' }) };
  if (typeof reading !== 'number') return { words: words.check.readingNoNumber, target };
  return compared(document, place, cell, { reading, target, quantity, wanted: wanted.quantity });
}

interface Pair {
  readonly reading: number;
  readonly target: number;
  readonly quantity: QuantityName | undefined;
  readonly wanted: QuantityName | undefined;
}

function compared(document: Document, place: CellPlace, cell: Cell, pair: Pair): Verdict {
  const { reading, target, quantity, wanted } = pair;
  const common = quantity ?? wanted;
  if (wanted !== undefined && quantity !== undefined && wanted !== quantity) {
    return { words: words.check.turnOne(oneOf(quantity), oneOf(wanted)), target };
  }
  const off = offBy(common, reading, target);
  if (!off) {
    const what = common === undefined ? words.check.aNumber : capital(oneOf(common));
    const said = isCompared(common) ? words.check.nothingToCompare : words.check.notHeld(what);
    return { words: said, target };
  }
  const tolerance = toleranceOf(document, place, cell, off.scale);
  const said = offWords(off, tolerance, writingSettings(document.settings));
  const agrees = Math.abs(off.by) <= tolerance + grace;
  const shape = agrees ? 'agrees' : off.by > 0 ? 'over' : 'under';
  return { words: said, shape, off, tolerance, target };
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

function wantedIn(
  document: Document,
  engine: Engine,
  { sheet }: CellPlace,
  target: NonNullable<Cell['target']>,
  quantity: QuantityName | undefined,
): { readonly value: CellValue; readonly quantity: QuantityName | undefined } {
  if (typeof target === 'number') return { value: target, quantity };
  const result = engine.evaluate(formulaText(document, target, sheet), sheet);
  // A target worked out as a plain number is meant in the cell's own quantity.
  return result.quantity === 'number' ? { value: result.value, quantity } : result;
}
