import { verdictShape } from '../../functions/stops/verdictWords.ts';
import { isError } from '../../functions/values.ts';
import { spotOf } from '../book/look.ts';
import type { Cell, Document, Place, Sheet } from '../book/types.ts';
import type { CellPlace, CellValue, Engine } from '../engine/types.ts';
import type { Node, Shape } from '../formula/types.ts';
import { isHeld } from './tolerance.ts';
import { verdictOf, type Verdict } from './verdicts.ts';

/** A place in the set that is judged: by a verdict in its row, or by its reading's own target. */
export interface JudgedPoint {
  readonly place: CellPlace;
  readonly words: string;
  readonly shape: NonNullable<Verdict['shape']>;
}

/** Where a sheet judges, by ids: formulas that come to a verdict, and readings with a target. */
export interface JudgingPlaces {
  readonly said: readonly Place[];
  readonly aimed: readonly Place[];
  /** Formulas and targets that are held to the sheet's tolerance. */
  readonly held: readonly Place[];
}

export function judgingPlaces(sheet: Sheet): JudgingPlaces {
  const said: Place[] = [];
  const aimed: Place[] = [];
  const held: Place[] = [];
  for (const { row, column, cell } of sheet.cells()) {
    const place = { sheet: sheet.id, row, column };
    if (isHeld(sheet, column, cell)) held.push(place);
    if (cell.content.kind === 'formula' && judged(cell, cell.content.formula.shape))
      said.push(place);
    else if (cell.target !== undefined) aimed.push(place);
  }
  return { said, aimed, held };
}

/** The points of a sheet in its order. A row with a verdict of its own counts by that. */
export function pointsAmong(
  document: Document,
  engine: Engine,
  { said, aimed }: JudgingPlaces,
): readonly JudgedPoint[] {
  const found = (
    places: readonly Place[],
    judge: (place: CellPlace) => Omit<JudgedPoint, 'place'> | undefined,
  ) =>
    places.flatMap((ids): JudgedPoint[] => {
      const place = spotOf(document, ids);
      const judged = place && judge(place);
      return judged ? [{ place, ...judged }] : [];
    });
  const inWords = found(said, (place) => {
    const value = engine.valueOf(place);
    const shape = verdictShapeOf(value);
    return shape && { shape, words: isError(value) ? value.message : String(value) };
  });
  const rows = new Set(inWords.map(({ place }) => place.row));
  const held = found(aimed, (place) => {
    const { shape, words } = (!rows.has(place.row) && verdictOf(document, engine, place)) || {};
    return shape && words !== undefined ? { shape, words } : undefined;
  });
  return [...inWords, ...held].sort(
    (a, b) => a.place.row - b.place.row || a.place.column - b.place.column,
  );
}

/** The shape of a value that is a verdict, or waits to be one. */
export function verdictShapeOf(value: CellValue): Verdict['shape'] {
  if (isError(value)) return value.waiting ? 'waits' : undefined;
  return typeof value === 'string' ? verdictShape(value) : undefined;
}

const judging: ReadonlySet<string> = new Set(['VERDICT', 'PLACEMENT', 'COLOURVERDICT']);
const known = new WeakMap<Shape, boolean>();

/** What is declared a text tells of a verdict and is no point: a mixture, a setting, a sentence. */
const judged = ({ quantity }: Cell, shape: Shape) => quantity !== 'text' && isVerdict(shape);

/** Shapes are shared by all formulas of a column, so each is looked into once. */
function isVerdict(shape: Shape): boolean {
  const found = known.get(shape) ?? judges(shape.tree);
  known.set(shape, found);
  return found;
}

function judges(node: Node | null): boolean {
  if (node?.kind !== 'call') return false;
  return judging.has(node.name) || node.arguments.some(judges);
}
