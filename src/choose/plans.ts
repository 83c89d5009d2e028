import { caption } from '../check/captions.ts';
import { addressAt, cellAtSpot, type Spot } from '../book/look.ts';
import type { Document, Means, Refusal } from '../book/types.ts';
import type { Engine } from '../engine/types.ts';
import { words } from '../words/words.ts';
import { cellsFrom } from './cells.ts';
import type { Search } from './solve.ts';
import { casesOf, type Sweep } from './sweep.ts';
import type { SweptCell, SweptCells } from './sweep-sheet.ts';
import { contentFrom, valuesFrom, type Reader, type WrittenValues } from './values.ts';

/** What plans are made from: the book as it is, what it calculates, and the sheet in view. */
export interface Ground {
  readonly document: Document;
  readonly engine: Pick<Engine, 'quantityOf'>;
  readonly means: Pick<Means, 'readEntry'>;
  readonly shown: string;
}

type Plan<Made> = ({ readonly ok: true } & Made) | Refusal;

const refused = (reason: string): Refusal => ({ ok: false, reason });

export interface WrittenSolve {
  readonly result: string;
  readonly wanted: string;
  readonly changing: string;
  readonly from: string;
  readonly to: string;
}

export interface SolvePlan {
  readonly changing: Spot;
  readonly result: Spot;
  readonly search: Search;
  readonly changed: Reader;
  readonly comes: Reader;
}

/** "Make this cell equal that by changing this one between these bounds", or what is amiss with it. */
export function solvePlan(ground: Ground, written: WrittenSolve): Plan<SolvePlan> {
  const result = formulaCell(ground, written.result, words.choose.make);
  if (!result.ok) return result;
  const changing = typedCell(ground, written.changing, words.choose.byChanging);
  if (!changing.ok) return changing;
  const [comes, changed] = [readerOf(ground, result.spot), readerOf(ground, changing.spot)];
  if (cellAtSpot(ground.document, changing.spot)?.content.kind !== 'number')
    return refused(words.choose.noNumber(addressAt(changing.spot)));
  const numbers = [
    numberFrom(written.wanted, comes),
    numberFrom(written.from, changed),
    numberFrom(written.to, changed),
  ];
  for (const number of numbers) if (typeof number !== 'number') return number;
  const [wanted, from, to] = numbers as [number, number, number];
  if (from === to) return refused(words.choose.sameBounds);
  const search = { wanted, from: Math.min(from, to), to: Math.max(from, to) };
  return { ok: true, changing: changing.spot, result: result.spot, search, changed, comes };
}

export interface WrittenAxis extends WrittenValues {
  readonly cell: string;
}

export interface WrittenSweep {
  readonly down: WrittenAxis;
  readonly across: WrittenAxis;
  readonly read: string;
  /** It follows the book by itself. */
  readonly live?: boolean;
}

export interface SweepPlan {
  readonly plan: Sweep;
  readonly cells: SweptCells;
}

/** Cases that take a minute or so; more would be a table that nobody reads. */
const mostCases = 20_000;

/** One or two cells over their values, and the cells to be read, or what is amiss. */
export function sweepPlan(ground: Ground, written: WrittenSweep): Plan<SweepPlan> {
  const down = axisFrom(ground, written.down, words.choose.vary);
  if (!down.ok) return down;
  const wantsSecond = written.across.cell.trim() !== '';
  const across = wantsSecond ? axisFrom(ground, written.across, words.choose.andVary) : undefined;
  if (across && !across.ok) return across;
  const read = cellsFrom(ground.document, ground.shown, written.read);
  if (!read.ok) return read;
  if (read.spots.length === 0) return refused(words.choose.needs(words.choose.read));
  const second = across?.ok ? across : undefined;
  const plan: Sweep = {
    down: down.axis,
    ...(second && { across: second.axis }),
    read: read.spots,
  };
  if (casesOf(plan) > mostCases) return refused(words.choose.tooMany(mostCases));
  return { ok: true, plan, cells: sweptCells(ground, plan) };
}

export function sweptCells(ground: Ground, { down, across, read }: Sweep): SweptCells {
  const known = (spot: Spot): SweptCell => ({
    spot,
    caption:
      caption(ground.document, spot.sheet, spot.row, spot.column) ||
      addressAt({ row: spot.row, column: spot.column }),
    quantity: ground.engine.quantityOf(spot),
  });
  return {
    down: known(down.spot),
    ...(across && { across: known(across.spot) }),
    read: read.map(known),
  };
}

function axisFrom(ground: Ground, { cell, ...values }: WrittenAxis, what: string) {
  const found = typedCell(ground, cell, what);
  if (!found.ok) return found;
  const read = valuesFrom(values, readerOf(ground, found.spot));
  return read.ok ? ({ ok: true, axis: { spot: found.spot, values: read.values } } as const) : read;
}

export const readerOf = ({ engine, means, document }: Ground, spot: Spot): Reader => ({
  quantity: engine.quantityOf(spot),
  means,
  settings: document.settings,
});

function numberFrom(text: string, reader: Reader): number | Refusal {
  const content = contentFrom(text, reader);
  if ('reason' in content) return content;
  return content.kind === 'number' ? content.value : refused(words.choose.noNumberIn(text.trim()));
}

type Found = Plan<{ readonly spot: Spot }>;

function oneCell({ document, shown }: Ground, written: string, what: string): Found {
  const found = cellsFrom(document, shown, written);
  if (!found.ok) return found;
  const [spot] = found.spots;
  return spot ? { ok: true, spot } : refused(words.choose.needs(what));
}

function typedCell(ground: Ground, written: string, what: string): Found {
  const found = oneCell(ground, written, what);
  if (!found.ok) return found;
  const kind = cellAtSpot(ground.document, found.spot)?.content.kind ?? 'blank';
  if (kind === 'formula') return refused(words.choose.isFormula(addressAt(found.spot)));
  return kind === 'blank' ? refused(words.choose.nothingThere) : found;
}

function formulaCell(ground: Ground, written: string, what: string): Found {
  const found = oneCell(ground, written, what);
  if (!found.ok) return found;
  const kind = cellAtSpot(ground.document, found.spot)?.content.kind;
  return kind === 'formula' ? found : refused(words.choose.notFormula(addressAt(found.spot)));
}
