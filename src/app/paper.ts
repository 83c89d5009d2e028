import type { Settings } from '../book/types.ts';

/** How a sheet's columns are put on paper. */
export interface Plan {
  /** CSS pixels, as the paper lies. */
  readonly paper: { readonly width: number; readonly height: number };
  /** What is left of the width between the margins. */
  readonly room: number;
  /** 1 is as on the screen. */
  readonly scale: number;
  /** Columns of each run of pages; every run after the first begins with the first column again. */
  readonly runs: readonly (readonly number[])[];
}

const millimetre = 96 / 25.4;
const inch = 96;

/** Width and height upright, in CSS pixels: ISO 216 and ANSI/ASME Y14.1. */
const papers: Readonly<Record<Settings['page'], readonly [width: number, height: number]>> = {
  A4: [210 * millimetre, 297 * millimetre],
  A3: [297 * millimetre, 420 * millimetre],
  Letter: [8.5 * inch, 11 * inch],
  Legal: [8.5 * inch, 14 * inch],
  Tabloid: [11 * inch, 17 * inch],
};

/** At each side; printers leave less than this white by themselves. */
export const margin = 12 * millimetre;

/** A little smaller is better than turning the paper. */
const uprightDownTo = 0.8;
/** Smaller than this, the words of a cell are no longer read at arm's length. */
const smallest = 0.6;
const step = 0.02;

/**
 * Upright if the columns fit, or nearly; else lying, smaller if need be; else on several runs of
 * pages, as few as the smallest size allows and then as large as that many allow; smaller still only
 * where a single column beside the first would not fit otherwise. `widths` are those
 * of the columns, `numbers` that of the row numbers beside them, in CSS pixels; what is said in a
 * column of `spills` goes on over the next one, so that no run ends with it if that takes no more runs.
 */
export function planPages(
  page: Settings['page'],
  widths: readonly number[],
  numbers: number,
  spills: ReadonlySet<number> = new Set(),
): Plan {
  const [short, long] = papers[page];
  const all = widths.map((_, column) => column);
  const whole = sum(widths) + numbers;
  const upright = short - 2 * margin;
  if (whole * uprightDownTo <= upright) {
    return {
      paper: { width: short, height: long },
      room: upright,
      scale: Math.min(1, upright / whole),
      runs: [all],
    };
  }
  const room = long - 2 * margin;
  const lying = { paper: { width: long, height: short }, room };
  if (whole * smallest <= room) {
    return { ...lying, scale: Math.min(1, room / whole), runs: [all] };
  }
  const fewest = split(widths, room / smallest - numbers).length;
  const together = split(widths, room / smallest - numbers, spills).length === fewest;
  const runsAt = (scale: number) =>
    split(widths, room / scale - numbers, together ? spills : undefined);
  let scale = 1;
  while (scale - step > smallest && runsAt(scale).length > fewest) scale -= step;
  if (runsAt(scale).length > fewest) scale = smallest;
  const runs = runsAt(scale);
  const widest = Math.max(...runs.map((run) => sum(run.map((column) => widths[column] ?? 0))));
  return { ...lying, scale: Math.min(scale, room / (widest + numbers)), runs };
}

/** As many columns to a run as fit, one beside the first at least. */
function split(
  widths: readonly number[],
  room: number,
  spills: ReadonlySet<number> = new Set(),
): readonly (readonly number[])[] {
  const [first = 0] = widths;
  const runs: number[][] = [[0]];
  let used = first;
  for (let column = 1; column < widths.length; column += 1) {
    const width = widths[column] ?? 0;
    const run = runs.at(-1) ?? [];
    if (used + width > room && run.length > 1) {
      const last = run.at(-1) ?? 0;
      const both = first + (widths[last] ?? 0) + width;
      const goes = spills.has(last) && run.length > 2 && both <= room ? run.splice(-1) : [];
      runs.push([0, ...goes, column]);
      used = goes.length > 0 ? both : first + width;
    } else {
      run.push(column);
      used += width;
    }
  }
  return runs;
}

const sum = (numbers: readonly number[]): number => numbers.reduce((all, one) => all + one, 0);
