import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { readBook } from '../../src/book/form/read.ts';
import { writeBook } from '../../src/book/form/write.ts';
import { enter } from '../../src/book/make/enter.ts';
import type { Book } from '../../src/book/types.ts';
import { connectEngine, valuesFor } from '../../src/engine/index.ts';
import { filesOf } from '../../src/files/out/forms.ts';
import type { Row } from './bench.ts';
import { bookOf, countingMeans, firstSheet, median, must, processorTime } from './books.ts';

export const name =
  'How cost grows with a book: half its cells are readings, half formulas of ours on them';

const sizes = [1_000, 10_000, 100_000, 200_000];
const rounds = 3;

const memory = 'hold the book and its engine';

setFlagsFromString('--expose_gc');
const collect = runInNewContext('gc') as () => void;

/** What is held on to, in megabytes. */
function heap(): number {
  collect();
  return process.memoryUsage().heapUsed / 1e6;
}

interface Work {
  readonly what: string;
  /** Whether a book of twice the cells may take twice as long; the hand waits for the others alike. */
  readonly grows: boolean;
  readonly run: (book: Book) => unknown;
}

const works: readonly Work[] = [
  { what: 'write the file', grows: true, run: ({ document }) => writeBook(document) },
  {
    what: 'read the file',
    grows: true,
    run: ({ document }) => {
      const read = readBook(textOf(document));
      if (!read.ok) throw new Error(read.reason);
    },
  },
  { what: 'build the engine', grows: true, run: (book) => connectEngine(book).dispose() },
  { what: 'type into a hundred cells', grows: false, run: typed },
  {
    what: 'export as xlsx',
    grows: true,
    async run(book) {
      const engine = connectEngine(book);
      await filesOf(book.document, valuesFor(book.document, engine), 'xlsx', { formulas: 'live' });
      engine.dispose();
    },
  },
];

const texts = new WeakMap<Book['document'], string>();

/** Written once: reading alone is timed. */
function textOf(document: Book['document']): string {
  const text = texts.get(document) ?? writeBook(document);
  texts.set(document, text);
  return text;
}

const means = countingMeans();
const engines = new WeakMap<Book, ReturnType<typeof connectEngine>>();
let count = 0;

/** With the engine that was there before: a hundred readings, each with its formula. */
function typed(book: Book): void {
  if (!engines.has(book)) engines.set(book, connectEngine(book));
  const sheet = firstSheet(book);
  for (let row = 0; row < 100; row += 1)
    must(
      book,
      enter(book.document, means, [{ sheet, row, column: 0, text: `${String((count += 1))} lx` }]),
    );
}

async function timeOf({ run }: Work, book: Book): Promise<number> {
  const times: number[] = [];
  for (let round = 0; round <= rounds; round += 1) {
    const before = process.cpuUsage();
    await run(book);
    if (round > 0) times.push(processorTime(before));
  }
  return median(times);
}

export async function run(): Promise<Row[]> {
  const found = new Map<string, number>();
  for (const size of sizes) {
    const before = heap();
    const book = bookOf(means, size / 2, (row) => [
      `${String(1 + (row % 1000))} lx`,
      `=STOPS(A${String(row + 1)},400)`,
    ]);
    const engine = connectEngine(book);
    found.set(`${memory} ${String(size)}`, heap() - before);
    engine.dispose();
    for (const work of works) found.set(`${work.what} ${String(size)}`, await timeOf(work, book));
  }
  return [...works, { what: memory, grows: true }].flatMap(({ what, grows }) =>
    sizes.slice(1).map((size, index): Row => {
      const smaller = sizes[index] ?? size;
      const times = grows ? size / smaller : 1;
      const took = found.get(`${what} ${String(size)}`) ?? Number.NaN;
      const before = found.get(`${what} ${String(smaller)}`) ?? Number.NaN;
      const cells = (number: number) => `${number.toLocaleString('en')} cells`;
      return {
        what: `${what}, ${cells(size)}`,
        took,
        against: grows ? `${String(times)} times ${cells(smaller)}` : cells(smaller),
        tookAgainst: before * times,
        // The smallest is over before the machine is warm.
        ...(smaller > 1_000 && { atMost: grows ? 2 : 3 }),
        ...(what === memory && { unit: 'MB' as const }),
      };
    }),
  );
}
