import { connectEngine } from '../../src/engine/index.ts';
import { medianTime, type Row } from './bench.ts';
import { bookOf, countingMeans, firstSheet, median, must, processorTime } from './books.ts';
import { enter } from '../../src/book/make/enter.ts';

export const name = 'Recalculating 50,000 formulas that share one input';

const count = 50_000;

/** Readings from 1 to 1000 lx. */
const reading = (row: number) => 1 + ((row * 7919) % 1000);

const rounds = 9;

/** Milliseconds from another key until all is calculated; the formulas take turns. */
function timesOf(formulas: readonly ((row: number) => string)[]): readonly number[] {
  const sheets = formulas.map(openColumn);
  const times = sheets.map((): number[] => []);
  for (let round = 0; round < rounds; round++)
    sheets.forEach((typeKey, index) => {
      const before = process.cpuUsage();
      typeKey(101 + round);
      if (round > 1) times[index]?.push(processorTime(before));
    });
  return times.map(median);
}

function openColumn(formula: (row: number) => string): (key: number) => void {
  const means = countingMeans();
  const book = bookOf(means, count, (row) => [
    String(reading(row)),
    formula(row + 1),
    row === 0 ? '100' : '',
  ]);
  const engine = connectEngine(book);
  const sheet = firstSheet(book);
  return (key) => {
    must(book, enter(book.document, means, [{ sheet, row: 0, column: 2, text: String(key) }]));
    const last = engine.valueOf({ sheet, row: count - 1, column: 1 });
    if (typeof last !== 'number') throw new Error(`The last formula gave ${JSON.stringify(last)}.`);
  };
}

async function bareLoop(): Promise<number> {
  const readings = Float64Array.from({ length: count }, (_, row) => reading(row));
  const results = new Float64Array(count);
  let key = 100;
  return medianTime(
    () => {
      for (let row = 0; row < count; row++)
        results[row] = Math.log2((readings[row] ?? Number.NaN) / key);
    },
    { runs: 7, before: () => key++ },
  );
}

export async function run(): Promise<Row[]> {
  const [ours = Number.NaN, log = Number.NaN, bareLog = Number.NaN] = timesOf([
    (row) => `=STOPS(A${String(row)},C$1)`,
    (row) => `=LOG(A${String(row)}/C$1,2)`,
    (row) => `=LOG(A${String(row)},C$1)`,
  ]);
  const loop = await bareLoop();
  const what = '50,000 STOPS with one key';
  return [
    {
      what,
      took: ours,
      against: 'LOG(level / key, 2), the engine’s own',
      tookAgainst: log,
      atMost: 1.1,
    },
    {
      what,
      took: ours,
      against: 'LOG(level, key), the engine’s own',
      tookAgainst: bareLog,
      atMost: 1.1,
    },
    { what, took: ours, against: 'a bare loop over two arrays', tookAgainst: loop },
  ];
}
