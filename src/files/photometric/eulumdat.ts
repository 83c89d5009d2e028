import { photometryOf, type Photometry } from '../../../functions/fixture/photometry.ts';
import { point, type Face } from '../../../functions/fixture/throw.ts';
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
import { words } from '../../words/words.ts';

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
  lines.text(words.photometric.maker);
  lines.number(words.photometric.luminaireType);
  const indicator = lines.number(words.photometric.symmetry);
  const known = symmetries[indicator.value];
  if (!known) throw new Fault(indicator.line, words.photometric.symmetryWrong(indicator.value));
  const planesStated = lines.number(words.photometric.planes);
  const all = counted(planesStated, words.photometric.thePlanes, 1);
  lines.number(words.photometric.planeDistance);
  const down = counted(
    lines.number(words.photometric.intensities),
    words.photometric.theIntensities,
    2,
  );
  lines.number(words.photometric.intensityDistance);
  lines.text(words.photometric.report);
  const name = lines.text(words.photometric.luminaireName);
  for (const what of [
    words.photometric.luminaireNumber,
    words.photometric.fileName,
    words.photometric.date,
  ])
    lines.text(what);
  const sizes = lines.sizes(9);
  lines.number(words.photometric.downwardFlux);
  lines.number(words.photometric.outputRatio);
  const conversion = moreThanZero(
    lines.number(words.photometric.conversion),
    words.photometric.theConversion,
  );
  lines.number(words.photometric.tiltInMeasurement);
  const lamps = lampsFrom(lines, notes);
  const directRatios = lines.numbers(10, words.photometric.directRatio).map(({ value }) => value);

  const planes = lines.numbers(all, words.photometric.planeAngle);
  const angles = ascending(planes, words.photometric.planeAngles, [0, 360]);
  const gammas = ascending(
    lines.numbers(down, words.photometric.intensityAngle),
    words.photometric.intensityAngles,
    [0, 180],
  );
  const stored = storedPlanes(known, planes, planesStated);
  boundedTable(planesStated.line, stored.length, down);
  const factor = (conversion * lamps.flux) / 1000;
  const rows = stored.map((_, plane) =>
    Float64Array.from(
      lines.numbers(down, words.photometric.intensityOf(plane + 1, stored.length)),
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
      words.photometric.firstPlane(String(planes[0]?.value)),
    );
  }
  const [from, to] = ends.map((angle) => planes.findIndex(({ value }) => value === angle));
  if (from! < 0 || to! < 0)
    throw new Fault(count.line, words.photometric.planesAt(ends[0], ends[1]));
  const length = ((to! - from! + planes.length) % planes.length) + 1;
  return Array.from({ length }, (_, index) => (from! + index) % planes.length);
}

/** Sets of lamps are alternatives: the first is what was measured. */
function lampsFrom(lines: Lines, notes: string[]): { flux: number; watts: number } {
  const sets = counted(lines.number(words.photometric.lampSets), words.photometric.theLampSets, 1);
  const read = Array.from({ length: sets }, () => {
    lines.number(words.photometric.lamps);
    lines.text(words.photometric.lampType);
    const flux = moreThanZero(
      lines.number(words.photometric.lampFlux),
      words.photometric.theLampFlux,
    );
    lines.text(words.photometric.colour);
    lines.text(words.photometric.rendering);
    const { value: watts, line } = lines.number(words.photometric.watts);
    if (watts < 0) throw new Fault(line, words.photometric.wattsBelow(watts));
    return { flux, watts };
  });
  if (sets > 1) notes.push(words.photometric.severalSets(sets));
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
    if (line === undefined) throw new Fault(this.#lines.length, words.photometric.endsBefore(what));
    this.#next += 1;
    return line.trim();
  }

  number(what: string): Stated {
    const text = this.text(what);
    const value = numberFrom(text.replace(',', '.'));
    if (Number.isFinite(value)) return { value, line: this.#next };
    const said =
      text === ''
        ? words.photometric.emptyLine(what)
        : words.photometric.noNumber(shortened(text), what);
    throw new Fault(this.#next, said);
  }

  numbers(count: number, what: string): readonly Stated[] {
    const found: Stated[] = [];
    for (let index = 0; index < count; index += 1) found.push(this.number(what));
    return found;
  }

  /** Sizes in millimetres, which may be left empty. */
  sizes(count: number): readonly number[] {
    return Array.from({ length: count }, () => {
      if (this.#lines[this.#next]?.trim() !== '') return this.number(words.photometric.size).value;
      this.#next += 1;
      return 0;
    });
  }

  /** Nothing may follow. */
  end(): void {
    const more = this.#lines.findIndex((line, index) => index >= this.#next && line.trim() !== '');
    if (more >= 0)
      throw new Fault(more + 1, words.photometric.holdsMore(shortened(this.#lines[more]!.trim())));
  }
}
