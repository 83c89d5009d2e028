import { observer1931 } from '../../functions/data/observer1931.ts';
import { bell } from '../../functions/spectrum/exampleSpectra.ts';
import { lightOf } from '../../functions/spectrum/light.ts';
import { reportOf } from '../../functions/spectrum/report.ts';
import type { Spectrum } from '../../functions/spectrum/spectrum.ts';
import { isError } from '../../functions/values.ts';
import { colourRendering, similarityOf, televisionOf } from '../accuracy/references/rendition.ts';
import { medianTime, type Row } from './bench.ts';
import { bareNearest } from './nearest.ts';

export const name = 'All figures of a spectrum: x, y, CCT, Duv, Ra, R1 to R14, SSI, TLCI, peak';

const count = 200;
const rows = observer1931.filter(([nm]) => nm >= 380 && nm <= 780);
const nanometres = Float64Array.from(rows, ([nm]) => nm);

/** Blue under a phosphor, no two alike. */
const powers = Array.from({ length: count }, (_, at) => {
  const [blue, yellow] = [bell(445 + (at % 13), 24), bell(565 + (at % 29), 120)];
  const share = 0.4 + at / count;
  return nanometres.map((nm) => share * blue(nm) + yellow(nm));
});

/** What was worked out is remembered with its spectrum: each turn has spectra of its own. */
function reports(): number {
  let sum = 0;
  for (const values of powers) {
    const spectrum: Spectrum = { nanometres, values, measures: 'shape' };
    const { nearest, rendering, similarity, consistency, peak } = reportOf('', lightOf(spectrum));
    if (isError(nearest) || isError(rendering) || isError(similarity) || isError(consistency))
      throw new Error('A spectrum of the bench has no figures.');
    sum += nearest.kelvin + nearest.duv + rendering.general + similarity + consistency + peak;
  }
  return sum;
}

const nearestTo = bareNearest();

/** The same from plain arrays: the second implementation that accuracy is measured against. */
function bare(): number {
  let sum = 0;
  for (const values of powers) {
    const power = [...values];
    let [X, Y, Z] = [0, 0, 0];
    rows.forEach(([, x, y, z], at) => {
      const value = power[at]!;
      [X, Y, Z] = [X + value * x, Y + value * y, Z + value * z];
    });
    const { kelvin, duv } = nearestTo(X / (X + Y + Z), Y / (X + Y + Z));
    const [ra = 0] = colourRendering(power, kelvin);
    const peak = nanometres[power.indexOf(Math.max(...power))]!;
    sum +=
      kelvin + duv + ra + similarityOf(power, kelvin, false) + televisionOf(power, kelvin)! + peak;
  }
  return sum;
}

export async function run(): Promise<Row[]> {
  const apart = Math.abs(reports() - bare()) / bare();
  if (!(apart < 1e-3)) throw new Error(`The two are ${apart} apart.`);
  const took = await medianTime(reports);
  const tookAgainst = await medianTime(bare);
  const aSecond = (time: number) => Math.round((1000 * count) / time).toLocaleString('en');
  return [
    {
      what: `${aSecond(took)} reports a second, of 81 readings each`,
      took,
      against: `plain arrays, the second implementation of the accuracy table, ${aSecond(tookAgainst)} a second`,
      tookAgainst,
      atMost: 2,
    },
  ];
}
