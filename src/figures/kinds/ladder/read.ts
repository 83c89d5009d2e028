import { lightQuantities, type QuantityName } from '../../../../functions/quantities/names.ts';
import {
  placementWords,
  verdictShape,
  verdictWords,
  type VerdictShape,
} from '../../../../functions/stops/verdictWords.ts';
import type { Datum, Given, Undrawn } from '../../figure.ts';
import { numberIn, numberOf, quantityIn } from '../cells.ts';
import { words } from '../../../words/words.ts';

/** One point on the ladder. Heights are in stops from its zero. */
export interface Rung {
  readonly name: string;
  /** Missing while the point waits for its reading. */
  readonly at?: number;
  readonly wanted?: number;
  /** "0.4 stop over", "clips by 1.1 stops", "waits"; empty where nothing was wanted. */
  readonly words: string;
  readonly shape: 'over' | 'under' | 'agrees' | 'clips' | 'waits' | 'dot';
  /** On the user's own scale. */
  readonly signal?: number;
}

export interface Ladder {
  readonly rungs: readonly Rung[];
  /** What zero is called: "key". */
  readonly zero: string;
  /** What zero measures, for the second row of figures: f/2.8, 250 lx. */
  readonly level?: { readonly quantity: QuantityName; readonly value: number };
  /** What the camera holds, as far as it was given. */
  readonly low?: number;
  readonly high?: number;
  /** The user's table: stops from zero, in order, and the signal there. */
  readonly signal?: {
    readonly quantity: QuantityName;
    readonly rows: readonly (readonly [at: number, level: number])[];
  };
}

export const zeroNames = [
  { value: 'key', words: words.ladder.key },
  { value: 'stop', words: words.ladder.stop },
  { value: 'grey', words: words.ladder.middleGrey },
] as const;

/** More would be no picture any more. */
const most = 200;
/** No light is a hundred stops from another on one set: such a number is a slip of the pen. */
const farthest = 40;

export function readLadder(given: Given): Ladder | Undrawn {
  const { inputs, options } = given;
  const level = levelOf(given);
  const shift = (numberIn(given, 'greySits') ?? 0) + (numberIn(given, 'zeroFromGrey') ?? 0);
  const [above, below] = [numberIn(given, 'above'), numberIn(given, 'below')];
  const high = above === undefined ? undefined : above - shift;
  const low = below === undefined ? undefined : -below - shift;
  const signal = signalOf(given);
  const scale = { level: level?.value, low, high, signal, tolerance: given.tolerance };
  const names = inputs['points'] ?? [];
  const rungs = (inputs['read'] ?? []).flatMap(([read], index) =>
    rungOf(names[index]?.[0], read, inputs['wanted']?.[index]?.[0], scale),
  );
  if (rungs.length === 0) return { reason: words.ladder.noReading };
  if (rungs.length > most) return { reason: words.ladder.tooMany(most, rungs.length) };
  const needsLevel = (inputs['read'] ?? []).flat().some((one) => isLevel(one.quantity));
  if (needsLevel && level === undefined) return { reason: words.ladder.needsZero };
  const sorted =
    options['order'] === 'brightest'
      ? rungs.toSorted((a, b) => (b.at ?? -Infinity) - (a.at ?? -Infinity))
      : rungs;
  return {
    rungs: sorted,
    zero: (zeroNames.find(({ value }) => value === options['zero']) ?? zeroNames[0]).words,
    ...(level && { level }),
    ...(low !== undefined && { low }),
    ...(high !== undefined && { high }),
    ...(signal && { signal }),
  };
}

const isLevel = (quantity: QuantityName | undefined): boolean =>
  quantity === 'fNumber' || lightQuantities.some((light) => light === quantity);

function levelOf({ inputs }: Given): Ladder['level'] {
  const quantity = quantityIn(inputs['level']);
  const value = numberOf(inputs['level']?.[0]?.[0]);
  return value !== undefined && value > 0 && quantity && isLevel(quantity)
    ? { quantity, value }
    : undefined;
}

interface Scale {
  readonly level: number | undefined;
  readonly low: number | undefined;
  readonly high: number | undefined;
  readonly signal: Ladder['signal'];
  readonly tolerance: number;
}

/** A row is a point if something is read there, or waits to be: captions and blank rows are none. */
function rungOf(
  name: Datum | undefined,
  read: Datum | undefined,
  wantedAt: Datum | undefined,
  scale: Scale,
): readonly Rung[] {
  const called = typeof name?.value === 'string' ? name.value.trim() : '';
  const wanted = stopsOf(wantedAt, scale.level);
  const at = stopsOf(read, scale.level);
  const kept = { name: called, ...(wanted !== undefined && { wanted }) };
  if (at === undefined) {
    const waits = read?.waits || (read?.value === null && !read.reason && wanted !== undefined);
    return waits && called !== '' ? [{ ...kept, words: 'waits', shape: 'waits' }] : [];
  }
  const words = judged(at, wanted, scale);
  const signal = scale.signal && between(scale.signal.rows, at);
  return [
    {
      ...kept,
      at,
      words,
      shape: shapes[verdictShape(words) ?? 'in range'],
      ...(signal !== undefined && { signal }),
    },
  ];
}

const shapes: Readonly<Record<VerdictShape, Rung['shape']>> = {
  over: 'over',
  under: 'under',
  agrees: 'agrees',
  clips: 'clips',
  lost: 'under',
  'in range': 'dot',
};

/** What the camera cannot hold matters more than what was wanted. */
function judged(
  at: number,
  wanted: number | undefined,
  { low = -Infinity, high = Infinity, tolerance }: Scale,
): string {
  const placed = placementWords(at, high, -low);
  if (placed !== 'in range') return placed;
  return wanted === undefined ? '' : verdictWords(at - wanted, tolerance);
}

/** Stops from zero: as they are, or worked out from an f-number or a level against that of zero. */
function stopsOf(datum: Datum | undefined, level: number | undefined): number | undefined {
  const value = numberOf(datum);
  if (value === undefined) return undefined;
  const stops = !isLevel(datum?.quantity)
    ? value
    : level === undefined || value <= 0
      ? undefined
      : (datum?.quantity === 'fNumber' ? 2 : 1) * Math.log2(value / level);
  return stops !== undefined && Math.abs(stops) <= farthest ? stops : undefined;
}

/** The table is in stops from middle grey; on the ladder it is counted from zero. */
function signalOf(given: Given): Ladder['signal'] {
  const block = given.inputs['signal'];
  if (!block) return undefined;
  const shift = numberIn(given, 'zeroFromGrey') ?? 0;
  const rows = block
    .flatMap(([stops, level]): (readonly [number, number])[] => {
      const [at, signal] = [numberOf(stops), numberOf(level)];
      return at === undefined || signal === undefined ? [] : [[at - shift, signal]];
    })
    .toSorted(([a], [b]) => a - b);
  const levels = block.map(([, level]) => (level ? [level] : []));
  return rows.length < 2 ? undefined : { quantity: quantityIn(levels) ?? 'number', rows };
}

/** Straight between the rows of the table; nothing beyond its ends. */
function between(rows: readonly (readonly [number, number])[], at: number): number | undefined {
  const index = rows.findIndex(([stops]) => stops >= at);
  const [upper, lower] = [rows[index], rows[index - 1]];
  if (!upper) return undefined;
  if (upper[0] === at || !lower) return upper[0] === at ? upper[1] : undefined;
  return lower[1] + ((at - lower[0]) / (upper[0] - lower[0])) * (upper[1] - lower[1]);
}
