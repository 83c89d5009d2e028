import { verdictShape } from '../../../functions/stops/verdictWords.ts';
import { isError } from '../../../functions/values.ts';
import { spotOf } from '../../book/look.ts';
import type { Document, Place, Sheet } from '../../book/types.ts';
import type { Node, Shape as FormulaShape } from '../../formula/types.ts';
import type { CellValue } from '../../engine/types.ts';
import type { Point, Shape } from '../workbook.ts';
import { rowCaption } from '../../check/captions.ts';
import type { Look } from './look.ts';

const judging: ReadonlySet<string> = new Set(['VERDICT', 'PLACEMENT']);
const known = new WeakMap<FormulaShape, boolean>();

function judges(node: Node | null): boolean {
  if (node?.kind !== 'call') return false;
  return judging.has(node.name) || node.arguments.some(judges);
}

/** Shapes are shared by all formulas of a column, so each is looked into once. */
function isVerdict(shape: FormulaShape): boolean {
  const found = known.get(shape) ?? judges(shape.tree);
  known.set(shape, found);
  return found;
}

/** The cells of a sheet that say how a reading stands, in reading order. */
export function verdictPlaces(document: Document, sheet: Sheet): readonly Place[] {
  const found: { place: Place; row: number; column: number }[] = [];
  for (const { row, column, cell } of sheet.cells()) {
    if (cell.content.kind !== 'formula' || !isVerdict(cell.content.formula.shape)) continue;
    const place = { sheet: sheet.id, row, column };
    const spot = spotOf(document, place);
    if (spot) found.push({ place, row: spot.row, column: spot.column });
  }
  return found.sort((a, b) => a.row - b.row || a.column - b.column).map(({ place }) => place);
}

const shapes = { 'in range': 'agrees', lost: 'under' } as const;

/** Which shape stands before a value that is a verdict, or waits to be one. */
export function shapeOf(value: CellValue): Shape | undefined {
  if (isError(value)) return value.waiting ? 'waits' : undefined;
  const shape = typeof value === 'string' ? verdictShape(value) : undefined;
  return shape === 'in range' || shape === 'lost' ? shapes[shape] : shape;
}

export function pointsOf({ document, engine }: Look, places: readonly Place[]): readonly Point[] {
  return places.flatMap((place): Point[] => {
    const spot = spotOf(document, place);
    if (!spot) return [];
    const value = engine.valueOf(spot);
    const shape = shapeOf(value);
    if (!shape) return [];
    const { sheet, row, column } = spot;
    return [
      {
        shape,
        label: rowCaption(document, sheet, row, column),
        words: isError(value) ? value.message : String(value),
        target: { sheet, from: { row, column } },
      },
    ];
  });
}

/** Beside a sheet in the contents: "4 off", "1 waits", or nothing when all is well. */
export function countOf(points: readonly Point[]): string | undefined {
  const off = points.filter(({ shape }) => shape !== 'agrees' && shape !== 'waits').length;
  const waits = points.filter(({ shape }) => shape === 'waits').length;
  if (off > 0) return `${off} off`;
  if (waits > 0) return waits === 1 ? '1 waits' : `${waits} wait`;
  return undefined;
}
