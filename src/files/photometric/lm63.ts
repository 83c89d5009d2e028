import { photometryOf, type Photometry } from '../../../functions/fixture/photometry.ts';
import { point, type Face, type Tilt } from '../../../functions/fixture/throw.ts';
import { wholeTurn, type Symmetry } from '../../../functions/fixture/wholeTurn.ts';
import {
  ascending,
  boundedTable,
  counted,
  Fault,
  intensity,
  moreThanZero,
  type Stated,
} from './fault.ts';
import { aimedTurn } from './aimed.ts';
import { linesOf, Words } from './words.ts';
import { words } from '../../words/words.ts';

/** The editions of ANSI/IES LM-63 that are read. */
export type Edition = 1986 | 1991 | 1995 | 2002 | 2019;

export interface Lm63 {
  readonly edition: Edition;
  readonly photometry: Photometry;
  /** Keywords of the head, such as LUMCAT, in capitals. */
  readonly keywords: ReadonlyMap<string, string>;
  /** The thirteen numbers after the tilt, as they stand. */
  readonly fields: readonly number[];
  /** What people should know about what was read. */
  readonly notes: readonly string[];
}

/** Gives the text of a file that another names, such as a tilt file; undefined where it is missing. */
export type Companion = (name: string) => string | undefined;

const metresAFoot = 0.3048;
const tiltLine = /^\s*TILT\s*=\s*(.*?)\s*$/i;

export const looksLikeLm63 = (text: string): boolean =>
  /^\uFEFF?\s*IES(?:NA)?[\s:]?/i.test(text) || /^\s*TILT\s*=/im.test(text);

/**
 * Reads a file of ANSI/IES LM-63. Lines may break anywhere between numbers; commas, spaces and tabs
 * part them. Candela come out absolute: multiplied by the candela multiplier and the ballast factor,
 * and up to 1995 by the ballast-lamp factor, which later editions replaced.
 */
export function readLm63(text: string, companion: Companion = () => undefined): Lm63 {
  const lines = linesOf(text);
  const at = lines.findIndex((line) => tiltLine.test(line));
  if (at < 0) throw new Fault(lines.length, words.photometric.noTilt);
  const head = lines.slice(0, at);
  const edition = editionOf(head[0] ?? '');
  const keywords = keywordsIn(head);
  const notes: string[] = [];
  const values = new Words(lines, at + 1);
  const tilt = tiltFrom(tiltLine.exec(lines[at]!)?.[1] ?? '', values, at + 1, companion, notes);

  const stated = values.numbers(10, (index) => firstLine[index]!);
  const factors = values.numbers(3, (index) => secondLine[index]!);
  const [lamps, , multiplier, verticals, horizontals, type, units] = stated as Ten;
  const down = counted(verticals, words.photometric.theVerticals, 2);
  const across = counted(horizontals, words.photometric.theHorizontals, 1);
  boundedTable(horizontals.line, across, down);
  if (!(lamps.value >= 0)) throw new Fault(lamps.line, words.photometric.lampsBelow(lamps.value));
  if (![1, 2, 3].includes(type.value))
    throw new Fault(type.line, words.photometric.typeWrong(type.value));
  if (![1, 2].includes(units.value))
    throw new Fault(units.line, words.photometric.unitsWrong(units.value));
  const [ballast, second, input] = factors as readonly [Stated, Stated, Stated];
  const watts = input.value;
  if (watts < 0) throw new Fault(input.line, words.photometric.wattsBelow(watts));
  const factor =
    moreThanZero(multiplier, words.photometric.theMultiplier) *
    moreThanZero(ballast, words.photometric.theBallast) *
    (edition <= 1995 ? moreThanZero(second, words.photometric.theBallastLamp) : 1);

  const limit: readonly [number, number] = type.value === 1 ? [0, 180] : [-180, 180];
  const gammas = ascending(
    values.numbers(down, () => words.photometric.vertical),
    words.photometric.verticals,
    limit,
  );
  const planes = values.numbers(across, () => words.photometric.horizontal);
  const angles = ascending(
    planes,
    words.photometric.horizontals,
    type.value === 1 ? [-90, 360] : limit,
  );
  const rows = planes.map((_, plane) =>
    Float64Array.from(
      values.numbers(down, (index) =>
        words.photometric.intensityInPlane(index + 1, down, plane + 1, across),
      ),
      (one) => intensity(one, factor),
    ),
  );
  values.end();

  const turn =
    type.value === 1
      ? {
          ...wholeTurn(symmetryOf(angles, planes), angles, rows),
          gammas: Float64Array.from(gammas),
        }
      : aimedTurn(type.value === 2 ? 'B' : 'A', gammas, angles, rows);
  if (type.value !== 1) notes.push(words.photometric.turned(type.value === 2 ? 'B' : 'A'));
  const photometry = photometryOf({
    name: nameFrom(keywords, head, edition),
    ...turn,
    watts: watts > 0 ? watts : undefined,
    face: faceFrom(stated),
    ...(tilt && { tilt }),
  });
  return {
    edition,
    photometry,
    keywords,
    fields: [...stated, ...factors].map(({ value }) => value),
    notes,
  };
}

type Ten = readonly [
  Stated,
  Stated,
  Stated,
  Stated,
  Stated,
  Stated,
  Stated,
  Stated,
  Stated,
  Stated,
];

const firstLine = [
  words.photometric.lamps,
  words.photometric.lumens,
  words.photometric.multiplier,
  words.photometric.verticalCount,
  words.photometric.horizontalCount,
  words.photometric.type,
  words.photometric.units,
  words.photometric.openingWidth,
  words.photometric.openingLength,
  words.photometric.openingHeight,
];
const secondLine = [
  words.photometric.ballast,
  words.photometric.secondFactor,
  words.photometric.watts,
];

function editionOf(line: string): Edition {
  const [, year] = /^\uFEFF?\s*IES(?:NA)?\s*:?\s*(?:LM-63-)?\s*(\d{2,4})/i.exec(line) ?? [];
  const editions: Readonly<Record<string, Edition>> = {
    '86': 1986,
    '1986': 1986,
    '91': 1991,
    '1991': 1991,
    '95': 1995,
    '1995': 1995,
    '02': 2002,
    '2002': 2002,
    '19': 2019,
    '2019': 2019,
  };
  return editions[year ?? ''] ?? 1986;
}

function keywordsIn(head: readonly string[]): ReadonlyMap<string, string> {
  const keywords = new Map<string, string>();
  let last = '';
  for (const line of head) {
    const [, word, rest = ''] = /^\s*\[([^\]]*)\]\s*(.*?)\s*$/.exec(line) ?? [];
    if (word === undefined) continue;
    const key = word.trim().toUpperCase();
    if (key === 'MORE') keywords.set(last, `${keywords.get(last) ?? ''} ${rest}`.trim());
    else {
      last = key;
      if (!keywords.has(key)) keywords.set(key, rest);
    }
  }
  return keywords;
}

/** Before 1991 there were no keywords: the first line that says something names it. */
function nameFrom(
  keywords: ReadonlyMap<string, string>,
  head: readonly string[],
  edition: Edition,
): string {
  const labels =
    edition === 1986 ? head.map((line) => line.trim()).filter((line) => line !== '') : [];
  return keywords.get('LUMINAIRE') || keywords.get('LUMCAT') || labels[0] || '';
}

function tiltFrom(
  what: string,
  values: Words,
  line: number,
  companion: Companion,
  notes: string[],
): Tilt | undefined {
  if (what === '') throw new Fault(line, words.photometric.tiltForm);
  if (what.toUpperCase() === 'NONE') return undefined;
  if (what.toUpperCase() === 'INCLUDE') return tiltTable(values);
  const text = companion(what);
  if (text !== undefined) {
    const other = new Words(linesOf(text), 0);
    try {
      return tiltTable(other);
    } catch (reason) {
      if (!(reason instanceof Fault)) throw reason;
      throw new Fault(line, words.photometric.tiltBroken(what, reason.line, reason.message));
    }
  }
  notes.push(words.photometric.tiltMissing(what));
  return undefined;
}

function tiltTable(values: Words): Tilt {
  const geometry = values.number(words.photometric.lampSits);
  if (![1, 2, 3].includes(geometry.value))
    throw new Fault(geometry.line, words.photometric.lampSitsWrong(geometry.value));
  const count = counted(
    values.number(words.photometric.tiltCount),
    words.photometric.theTiltCount,
    1,
  );
  const angles = ascending(
    values.numbers(count, () => words.photometric.tiltAngle),
    words.photometric.tiltAngles,
    [-180, 180],
  );
  const factors = values
    .numbers(count, () => words.photometric.tiltFactor)
    .map((one) => intensity(one, 1));
  return { angles, factors };
}

/** The last horizontal angle says how far the planes stand for the others. */
function symmetryOf(angles: readonly number[], stated: readonly Stated[]): Symmetry {
  const [first, last] = [angles[0]!, angles.at(-1)!];
  if (angles.length === 1) return 'round';
  if (first === 0 && last === 90) return 'quarter';
  if (first === 0 && last === 180) return 'about C0';
  if (first === 0 && last > 180) return 'none';
  if ((first === 90 && last === 270) || (first === -90 && last === 90)) return 'about C90';
  throw new Fault(stated.at(-1)!.line, words.photometric.horizontalsRun(first, last));
}

/** The opening: a negative size is the diameter of a round one. */
function faceFrom(stated: readonly Stated[]): Face {
  const unit = stated[6]!.value === 1 ? metresAFoot : 1;
  const [width, long] = [stated[7]!.value * unit, stated[8]!.value * unit];
  if (width === 0 && long === 0) return point;
  const round = width < 0 || long < 0;
  const [high, level] = [Math.abs(width), Math.abs(long)];
  return round
    ? { width: level || high, height: high || level, round }
    : { width: level, height: high, round };
}
