import { isError } from '../../../../functions/values.ts';
import type { Surroundings } from '../../figure.ts';
import { said as write, saidNumber } from '../../kit/words.ts';
import type { Reference, SpectrumRead } from './read.ts';
import { words } from '../../../words/words.ts';

const said = words.spectrumFigure;

export function describeSpectrum(read: SpectrumRead, { writing }: Surroundings): readonly string[] {
  const { report, reference, curve, most, madeUp } = read;
  const nm = (value: number) => saidNumber('number', Math.round(value), writing);
  const made = madeUp.map(({ kind, from, to }) => words.spectra.madeUp[kind](from, to));
  if (!report) {
    const least = Math.min(...curve.map(([, value]) => value));
    const percent = (value: number) => write('share', Math.round(value * 1000) / 1000, writing);
    return [said.passes(read.name, percent(least), percent(most)), ...made];
  }
  const { nearest, rendering, similarity, consistency, peak } = report;
  if (isError(nearest)) return [said.peaks(titleOf(read), nm(peak)), nearest.message, ...made];
  const index = (value: number) => saidNumber('number', Math.round(value), writing);
  return [
    said.lead(
      titleOf(read),
      write('colourTemperature', nearest.kelvin, writing),
      write('duv', nearest.duv, writing),
      nm(peak),
    ),
    ...(reference
      ? [said.against(nameOfReference(reference, writing)), ...lacking(read, reference, nm)]
      : []),
    ...(isError(rendering) || isError(similarity)
      ? []
      : [said.indices(index(rendering.general), index(similarity))]),
    ...(isError(consistency) ? [] : [said.television(index(consistency))]),
    ...made,
  ];
}

export const titleOf = ({ name, filterName }: Pick<SpectrumRead, 'name' | 'filterName'>): string =>
  filterName === undefined ? name : said.through(name, filterName);

export const nameOfReference = (
  { kind, kelvin }: Pick<Reference, 'kind' | 'kelvin'>,
  writing: Surroundings['writing'],
): string => said.reference[kind](write('colourTemperature', kelvin, writing));

/** Fewer nanometres than this in one go nobody misses. */
const wide = 10;

/** Where it has less than half of its reference. */
function lacking(
  { curve }: SpectrumRead,
  reference: Reference,
  nm: (value: number) => string,
): readonly string[] {
  const power = new Map(curve);
  const runs: [from: number, to: number][] = [];
  let last: number | undefined;
  for (const [at, wanted] of reference.curve) {
    const value = power.get(at);
    if (value === undefined || value >= wanted / 2) continue;
    const run = runs.at(-1);
    if (run && last !== undefined && at - last <= 5) run[1] = at;
    else runs.push([at, at]);
    last = at;
  }
  const long = runs.filter(([from, to]) => to - from >= wide);
  if (long.length === 0) return [said.lacksNothing];
  return [
    said.lacks(words.figures.listed(long.map(([from, to]) => said.fromTo(nm(from), nm(to))))),
  ];
}
