import {
  photometryOf,
  point,
  type Face,
  type Photometry,
} from '../../../functions/fixture/photometry.ts';
import { wholeTurn, type Symmetry } from '../../../functions/fixture/wholeTurn.ts';
import {
  ascending,
  boundedTable,
  counted,
  Fault,
  intensity,
  moreThanZero,
  numberFrom,
  type Stated,
} from './fault.ts';
import { linesOf, shortened } from './words.ts';

export interface Eulumdat {
  readonly photometry: Photometry;
  /** Symmetry indicator: 0 none, 1 round, 2 about C0, 3 about C90, 4 about both. */
  readonly symmetry: number;
  /** Direct ratios for the room indices of the form. */
  readonly directRatios: readonly number[];
  readonly notes: readonly string[];
}

/** The second and third lines are the two indicators: nothing else begins so. */
export function looksLikeEulumdat(text: string): boolean {
  const [, type = '', symmetry = ''] = linesOf(text);
  return /^\s*[0-3]\s*$/.test(type) && /^\s*[0-4]\s*$/.test(symmetry);
}

/**
 * Reads a EULUMDAT file (.ldt): one value a line, with a decimal point or comma. Intensities stand
 * there for 1000 lumens; they come out absolute, with the lamps’ flux and the conversion factor.
 * A number of lamps below zero says that the flux is the luminaire’s own.
 */
export function readEulumdat(text: string): Eulumdat {
  const lines = new Lines(linesOf(text));
  const notes: string[] = [];
  lines.text('the maker');
  lines.number('the type of luminaire');
  const indicator = lines.number('the symmetry indicator');
  const known = symmetries[indicator.value];
  if (!known)
    throw new Fault(
      indicator.line,
      `The symmetry indicator must be 0 to 4, not ${indicator.value}.`,
    );
  const planesStated = lines.number('the number of planes');
  const all = counted(planesStated, 'The number of planes', 1);
  lines.number('the distance between planes');
  const down = counted(
    lines.number('the number of intensities in a plane'),
    'The number of intensities in a plane',
    2,
  );
  lines.number('the distance between intensities');
  lines.text('the report number');
  const name = lines.text('the name of the luminaire');
  for (const what of ['the luminaire number', 'the file name', 'the date']) lines.text(what);
  const sizes = lines.sizes(9);
  lines.number('the downward flux');
  lines.number('the light output ratio');
  const conversion = moreThanZero(lines.number('the conversion factor'), 'The conversion factor');
  lines.number('the tilt in measurement');
  const lamps = lampsFrom(lines, notes);
  const directRatios = lines.numbers(10, 'a direct ratio').map(({ value }) => value);

  const planes = lines.numbers(all, 'an angle of a plane');
  const angles = ascending(planes, 'Angles of planes', [0, 360]);
  const gammas = ascending(
    lines.numbers(down, 'an angle of an intensity'),
    'Angles of intensities',
    [0, 180],
  );
  const stored = storedPlanes(known, planes, planesStated);
  boundedTable(planesStated.line, stored.length, down);
  const factor = (conversion * lamps.flux) / 1000;
  const rows = stored.map((_, plane) =>
    Float64Array.from(
      lines.numbers(down, `an intensity of plane ${plane + 1} of ${stored.length}`),
      (one) => intensity(one, factor),
    ),
  );
  lines.end();
  const photometry = photometryOf({
    name,
    ...wholeTurn(
      known.symmetry,
      stored.map((index) => angles[index]!),
      rows,
    ),
    gammas: Float64Array.from(gammas),
    watts: lamps.watts > 0 ? lamps.watts : undefined,
    face: faceFrom(sizes),
  });
  return { photometry, symmetry: indicator.value, directRatios, notes };
}

interface Kind {
  readonly symmetry: Symmetry;
  /** First and last of the planes that are stored; the rest is their mirror image. */
  readonly ends?: readonly [number, number];
}

const symmetries: Readonly<Record<number, Kind>> = {
  0: { symmetry: 'none' },
  1: { symmetry: 'round' },
  2: { symmetry: 'about C0', ends: [0, 180] },
  3: { symmetry: 'about C90', ends: [270, 90] },
  4: { symmetry: 'quarter', ends: [0, 90] },
};

/** Indices of the planes whose intensities follow, in their order; with indicator 3 from C270 over C0 to C90. */
function storedPlanes(
  { symmetry, ends }: Kind,
  planes: readonly Stated[],
  count: Stated,
): readonly number[] {
  if (symmetry === 'round') return [0];
  if (!ends) {
    if (planes[0]?.value === 0) return planes.map((_, index) => index);
    throw new Fault(
      planes[0]?.line ?? count.line,
      `The first plane must be C0, not C${planes[0]?.value}.`,
    );
  }
  const [from, to] = ends.map((angle) => planes.findIndex(({ value }) => value === angle));
  if (from! < 0 || to! < 0)
    throw new Fault(
      count.line,
      `With this symmetry there must be planes at C${ends[0]} and C${ends[1]}.`,
    );
  const length = ((to! - from! + planes.length) % planes.length) + 1;
  return Array.from({ length }, (_, index) => (from! + index) % planes.length);
}

/** Sets of lamps are alternatives: the first is what was measured. */
function lampsFrom(lines: Lines, notes: string[]): { flux: number; watts: number } {
  const sets = counted(lines.number('the number of lamp sets'), 'The number of lamp sets', 1);
  const read = Array.from({ length: sets }, () => {
    lines.number('the number of lamps');
    lines.text('the type of lamps');
    const flux = moreThanZero(lines.number('the flux of the lamps'), 'The flux of the lamps');
    lines.text('the light colour');
    lines.text('the colour rendering');
    const { value: watts, line } = lines.number('the watts');
    if (watts < 0) throw new Fault(line, `The watts are less than zero: ${watts}.`);
    return { flux, watts };
  });
  if (sets > 1) notes.push(`It states ${sets} sets of lamps; the first was taken.`);
  return read[0]!;
}

/** Metres of the lit opening; a width of zero means that it is round. */
function faceFrom(sizes: readonly number[]): Face {
  const [long = 0, wide = 0] = sizes.slice(3, 5).map((millimetres) => Math.abs(millimetres) / 1000);
  if (long === 0 && wide === 0) return point;
  if (wide === 0) return { width: long, height: long, round: true };
  return { width: wide, height: long, round: false };
}

class Lines {
  readonly #lines: readonly string[];
  #next = 0;

  constructor(lines: readonly string[]) {
    this.#lines = lines;
  }

  text(what: string): string {
    const line = this.#lines[this.#next];
    if (line === undefined) throw new Fault(this.#lines.length, `The file ends before ${what}.`);
    this.#next += 1;
    return line.trim();
  }

  number(what: string): Stated {
    const text = this.text(what);
    const value = numberFrom(text.replace(',', '.'));
    if (Number.isFinite(value)) return { value, line: this.#next };
    const given = text === '' ? 'The line is empty' : `“${shortened(text)}” is no number`;
    throw new Fault(this.#next, `${given}; ${what} should be here.`);
  }

  numbers(count: number, what: string): readonly Stated[] {
    const found: Stated[] = [];
    for (let index = 0; index < count; index += 1) found.push(this.number(what));
    return found;
  }

  /** Sizes in millimetres, which may be left empty. */
  sizes(count: number): readonly number[] {
    return Array.from({ length: count }, () => {
      if (this.#lines[this.#next]?.trim() !== '') return this.number('a size').value;
      this.#next += 1;
      return 0;
    });
  }

  /** Nothing may follow. */
  end(): void {
    const more = this.#lines.findIndex((line, index) => index >= this.#next && line.trim() !== '');
    if (more >= 0)
      throw new Fault(
        more + 1,
        `“${shortened(this.#lines[more]!.trim())}” follows where the file should end: it holds more values than it says.`,
      );
  }
}
