import { verdictShape } from '../../functions/stops/verdictWords.ts';
import { isError } from '../../functions/values.ts';
import { spotOf } from '../book/look.ts';
import type { Document, Id } from '../book/types.ts';
import type { CellPlace, Engine } from '../engine/types.ts';
import { verdictOf, type Verdict } from './verdicts.ts';

/** How many points of a sheet, or of the book, came out as wanted. */
export interface Agreement {
  readonly agree: number;
  readonly off: number;
  readonly waiting: number;
  /** "5 of 7 points agree, 1 is off, 1 waits"; empty where there are no points. */
  readonly words: string;
  /** Those that do not agree, in the order of sheets and rows. */
  readonly places: readonly CellPlace[];
}

interface Point {
  readonly place: CellPlace;
  readonly shape: Verdict['shape'];
}

/** Counts the points of one sheet, or of all. A row with a verdict of its own counts by that. */
export function agreementOf(document: Document, engine: Engine, sheet?: Id): Agreement {
  const points = document.sheets
    .filter(({ id }) => sheet === undefined || id === sheet)
    .flatMap(({ id }) => pointsOn(document, engine, id));
  const count = (isCounted: (shape: Verdict['shape']) => boolean) =>
    points.filter(({ shape }) => isCounted(shape)).length;
  const agree = count(isGood);
  const waiting = count((shape) => shape === 'waits');
  const off = points.length - agree - waiting;
  return {
    agree,
    off,
    waiting,
    words: inWords(points.length, agree, off, waiting),
    places: points.filter(({ shape }) => !isGood(shape)).map(({ place }) => place),
  };
}

const isGood = (shape: Verdict['shape']) => shape === 'agrees' || shape === 'in range';

function inWords(points: number, agree: number, off: number, waiting: number): string {
  if (points === 0) return '';
  const all = `${String(agree)} of ${String(points)} ${points === 1 ? 'point' : 'points'}`;
  return [
    `${all} ${agree === 1 ? 'agrees' : 'agree'}`,
    ...(off > 0 ? [`${String(off)} ${off === 1 ? 'is' : 'are'} off`] : []),
    ...(waiting > 0 ? [`${String(waiting)} ${waiting === 1 ? 'waits' : 'wait'}`] : []),
  ].join(', ');
}

function pointsOn(document: Document, engine: Engine, id: Id): readonly Point[] {
  const sheet = document.sheet(id);
  const said: Point[] = [];
  const aimed: Point[] = [];
  for (const { row, column, cell } of sheet?.cells() ?? []) {
    const place = spotOf(document, { sheet: id, row, column });
    if (!place) continue;
    const shape = cell.content.kind === 'formula' ? shapeAt(engine, place) : undefined;
    if (shape) said.push({ place, shape });
    else if (cell.target !== undefined) {
      const own = verdictOf(document, engine, place)?.shape;
      if (own) aimed.push({ place, shape: own });
    }
  }
  const rows = new Set(said.map(({ place }) => place.row));
  return [...said, ...aimed.filter(({ place }) => !rows.has(place.row))].sort(
    (a, b) => a.place.row - b.place.row || a.place.column - b.place.column,
  );
}

/** The shape of a cell whose formula comes to a verdict. */
function shapeAt(engine: Engine, place: CellPlace): Verdict['shape'] {
  if (engine.quantityOf(place) !== 'verdict') return undefined;
  const value = engine.valueOf(place);
  if (isError(value)) return value.waiting ? 'waits' : undefined;
  return typeof value === 'string' ? verdictShape(value) : undefined;
}
