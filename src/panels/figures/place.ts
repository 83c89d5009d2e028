import { foot } from '../../../functions/quantities/units/space.ts';
import type { WritingSettings } from '../../../functions/quantities/settings.ts';
import { writeNumber } from '../../../functions/quantities/writing/number.ts';
import { figuresOf } from '../../book/figures.ts';
import { placeAt, quantityAt, type Spot } from '../../book/look.ts';
import type { Hand } from '../../figures/figure.ts';
import type { Look } from '../views/look.ts';
import { extentOfInput } from './gather.ts';
import type { PlacedHand } from './seam.ts';
import { words } from '../../words/words.ts';

/** Across and up, in metres. */
export type At = readonly [across: number, up: number];

export type Step = 'usual' | 'fine' | 'far';

const inch = foot / 12;

/** How far one step goes, in metres: round numbers of the book’s own unit. */
const steps = {
  m: { usual: 0.05, fine: 0.01, far: 0.5 },
  ft: { usual: 2 * inch, fine: inch / 2, far: 2 * foot },
} as const;

export const stepOf = ({ length }: WritingSettings, step: Step): number => steps[length][step];

/** Onto whole steps. What a formula works out stays where it is. */
export function snapped({ at, cells }: Hand, [across, up]: At, step: number): At {
  const on = (axis: 0 | 1, value: number) =>
    cells[axis].formula === undefined
      ? Number((Math.round(value / step) * step).toFixed(6))
      : at[axis];
  return [on(0, across), on(1, up)];
}

/** Why a hand does not go all the way: a formula works out where it is. */
export function heldBack({ name, cells }: Hand): string | undefined {
  const fixed = cells.filter(({ formula }) => formula !== undefined);
  const [first] = fixed;
  if (!first) return undefined;
  const where = fixed.map((cell) => `${cell.words} (${cell.formula ?? ''})`);
  return words.figures.byFormula(words.figures.listed(where), name);
}

/** What is typed into the cells of a hand that was moved: only what changed. */
export function placedHand(
  look: Look,
  id: string,
  { name, cells }: Hand,
  to: At,
): PlacedHand | undefined {
  const figure = figuresOf(look.document).find((one) => one.id === id);
  if (!figure) return undefined;
  const entries = cells.flatMap(({ input, row, column, formula }, axis) => {
    const extent = extentOfInput(look, figure, input);
    const value = to[axis as 0 | 1];
    if (!extent || formula !== undefined) return [];
    const spot = { sheet: extent.sheet, row: extent.top + row, column: extent.left + column };
    const now = look.engine.valueOf(spot);
    if (typeof now === 'number' && Math.abs(value - now) < 1e-9) return [];
    return [{ ...spot, text: typedLength(look, spot, value) }];
  });
  return { name, entries };
}

/** As a person would type it there: a plain number is metres, a length is in the book’s unit. */
function typedLength({ document, writing }: Look, spot: Spot, metres: number): string {
  const place = placeAt(document, spot);
  const measured = place ? quantityAt(document, place) : undefined;
  const text =
    measured === 'length' && writing.length === 'ft'
      ? `${writeNumber(Number((metres / inch).toFixed(4)), writing)} in`
      : writeNumber(Number(metres.toFixed(6)), writing);
  return text.replace('−', '-');
}
