import { observer1931 } from '../../../functions/data/observer1931.ts';
import type { TableRow } from '../../../functions/values.ts';
import { Exact } from '../decimal.ts';
import type { Chance, References } from '../measure.ts';
import { nearest } from './colour.ts';
import { colourRendering, similarityOf, televisionOf } from './rendition.ts';

/** Every 5 nm from 380 to 780, with the observer’s row (its data is shared, the sums are not). */
export const rows = observer1931.filter(([nm]) => nm >= 380 && nm <= 780);

const cells = (values: readonly number[]): readonly TableRow[] =>
  values.map((value, index) => [{ value: 380 + 5 * index }, { value }]);

/** Some bells over a faint slope: what lamps are like, spiky or smooth. */
function lamp(chance: Chance): readonly number[] {
  const bells = Array.from({ length: 1 + Math.floor(5 * chance()) }, () => ({
    middle: 420 + 260 * chance(),
    width: 8 + 120 * chance(),
    height: 0.1 + chance(),
  }));
  const [floor, slope] = [0.02 + 0.3 * chance(), chance()];
  return rows.map(([nm]) =>
    bells.reduce(
      (sum, { middle, width, height }) => sum + height * Math.exp(-(((nm - middle) / width) ** 2)),
      floor + (slope * (nm - 380)) / 400,
    ),
  );
}

const filterOf = (chance: Chance): readonly number[] => {
  const [low, high, middle] = [chance(), chance(), 450 + 250 * chance()];
  return rows.map(([nm]) => 0.05 + 0.9 * (nm < middle ? low : high));
};

/** A lamp, and three times out of four a filter in the argument after `between`. */
const sampleWith =
  (...between: readonly ((chance: Chance) => unknown)[]) =>
  (chance: Chance): unknown[] => [
    cells(lamp(chance)),
    ...between.map((one) => one(chance)),
    chance() < 0.25 ? undefined : cells(filterOf(chance)),
  ];

type Rows = readonly TableRow[];

const valuesIn = (table: Rows): readonly number[] => table.map((row) => Number(row[1]?.value));

/** The lamp behind its filter, value for value. */
function behind(table: Rows, filter: Rows | undefined): readonly number[] {
  const passing = filter && valuesIn(filter);
  return valuesIn(table).map((value, index) => value * (passing?.[index] ?? 1));
}

const column = (powers: readonly number[], which: 1 | 2 | 3) =>
  powers.reduce(
    (sum, power, index) => sum.plus(new Exact(power).times(rows[index]![which])),
    new Exact(0),
  );

function xy(table: Rows, filter: Rows | undefined) {
  const powers = behind(table, filter);
  const [X, Y, Z] = [column(powers, 1), column(powers, 2), column(powers, 3)];
  const sum = X.plus(Y).plus(Z);
  return { x: X.div(sum), y: Y.div(sum) };
}

/** Colour temperature and Duv by the search on the summed locus; undefined where none is promised. */
function temperature(table: Rows, filter: Rows | undefined) {
  const { x, y } = xy(table, filter);
  const sum = x.times(-2).plus(y.times(12)).plus(3);
  const found = nearest({ u: x.times(4).div(sum).toNumber(), v: y.times(6).div(sum).toNumber() });
  const promised = found.kelvin > 1500 && found.kelvin < 10_000 && Math.abs(found.duv) <= 0.03;
  return promised ? found : undefined;
}

type Filtered = readonly [Rows, Rows | undefined];

const summed = { against: 'its sums with fifty digits', limit: 1e-12, sample: sampleWith() };
const searched = {
  against: 'its sums, then a search on the summed locus',
  oneIn: 10,
  sample: sampleWith(),
};

const index = (chance: Chance) => Math.floor(15 * chance());
const kelvinOrOwn = (chance: Chance) =>
  chance() < 0.5 ? undefined : [[{ value: 2000 + 8000 * chance() }]];

const lights = (chance: Chance): unknown[] => [
  Array.from({ length: 1 + Math.floor(6 * chance()) }, () =>
    [1000 * chance() + 1, 0.2 + 0.4 * chance(), 0.2 + 0.4 * chance()].map((value) => ({ value })),
  ),
];

/** Tristimulus values added up with fifty digits. */
function together(table: Rows) {
  let [X, Y, Z] = [new Exact(0), new Exact(0), new Exact(0)];
  for (const row of table) {
    const [level, x, y] = row.map(({ value }) => new Exact(Number(value)));
    X = X.plus(level!.times(x!).div(y!));
    Y = Y.plus(level!);
    Z = Z.plus(level!.times(new Exact(1).minus(x!).minus(y!)).div(y!));
  }
  const sum = X.plus(Y).plus(Z);
  return { x: X.div(sum), y: Y.div(sum) };
}

export const spectra: References = {
  SPECTRUMX: { ...summed, work: ([table, filter]: Filtered) => xy(table, filter).x },
  SPECTRUMY: { ...summed, work: ([table, filter]: Filtered) => xy(table, filter).y },
  SPECTRUMLUX: {
    ...summed,
    work: ([table, filter]: Filtered) => column(behind(table, filter), 2).times(683 * 5),
  },
  SPECTRUMLOSS: {
    ...summed,
    sample: (chance) => [cells(lamp(chance)), cells(filterOf(chance))],
    work: ([table, filter]: Filtered) =>
      column(valuesIn(table), 2)
        .div(column(behind(table, filter), 2))
        .log(2),
  },
  SPECTRUMPEAK: {
    against: 'all wavelengths sorted by power',
    limit: 0,
    sample: sampleWith(),
    work: ([table, filter]: Filtered) => {
      const powers = behind(table, filter).map((power, at) => ({ power, nm: 380 + 5 * at }));
      return powers.toSorted((one, other) => other.power - one.power || one.nm - other.nm)[0]?.nm;
    },
  },
  SPECTRUMCCT: {
    ...searched,
    unit: 'K',
    limit: 0.5,
    work: ([table, filter]: Filtered) => temperature(table, filter)?.kelvin,
  },
  SPECTRUMDUV: {
    ...searched,
    unit: '',
    limit: 1e-5,
    work: ([table, filter]: Filtered) => temperature(table, filter)?.duv,
  },
  SPECTRUMCRI: {
    against: 'CIE 13.3 written down once more, on the same grid',
    unit: '',
    limit: 0.1,
    oneIn: 5,
    sample: sampleWith(index),
    work: ([table, sample, filter]: readonly [Rows, number, Rows | undefined]) => {
      const found = temperature(table, filter);
      // At the very switch of the reference a hair of a kelvin is another reference.
      if (!found || Math.abs(found.kelvin - 5000) < 1) return undefined;
      return colourRendering(behind(table, filter), found.kelvin)[sample];
    },
  },
  SPECTRUMSSI: {
    against: 'thirty bands as one matrix product',
    unit: '',
    limit: 0.01,
    oneIn: 5,
    sample: sampleWith(kelvinOrOwn),
    work: ([table, reference, filter]: readonly [Rows, Rows | undefined, Rows | undefined]) => {
      const own = temperature(table, filter)?.kelvin;
      const given = reference?.[0]?.[0]?.value;
      if (given !== undefined) return similarityOf(behind(table, filter), Number(given), true);
      if (own === undefined || Math.abs(own - 4000) < 1) return undefined;
      const at = (kelvin: number) => similarityOf(behind(table, filter), kelvin, false);
      // CIE 15 rounds the shares of daylight to three places: the index goes in steps. Where one lies
      // within what the two temperatures may differ by, either side of it is right.
      const goodTo = 0.1;
      const step = own < 4000 ? 0 : Math.abs(at(own + goodTo) - at(own - goodTo));
      return step > 0.005 ? undefined : at(own);
    },
  },
  SPECTRUMTLCI: {
    against: 'EBU Tech 3355 written down once more, on the same grid',
    unit: '',
    limit: 0.1,
    oneIn: 5,
    sample: sampleWith(),
    work: ([table, filter]: Filtered) => {
      const found = temperature(table, filter);
      if (!found || Math.abs(found.kelvin - 5000) < 1) return undefined;
      return televisionOf(behind(table, filter), found.kelvin);
    },
  },
  MIXX: {
    against: 'tristimulus values with fifty digits',
    limit: 1e-12,
    sample: lights,
    work: ([table]: readonly [Rows]) => together(table).x,
  },
  MIXY: {
    against: 'tristimulus values with fifty digits',
    limit: 1e-12,
    sample: lights,
    work: ([table]: readonly [Rows]) => together(table).y,
  },
};
