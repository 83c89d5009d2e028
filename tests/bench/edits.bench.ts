import { connectEngine } from '../../src/engine/index.ts';
import { copyCells } from '../../src/book/make/copy.ts';
import { removeLines } from '../../src/book/make/lines.ts';
import type { Book } from '../../src/book/types.ts';
import type { Row } from './bench.ts';
import { bookOf, countingMeans, firstSheet, median, must, processorTime } from './books.ts';

export const name = 'Edits in a book of 100,000 cells, half of them formulas that share one input';

const count = 50_000;
const pasted = 10_000;
const against = 'one full build of the engine';

/** The book has done this already when the engine hears of it: only the engine's part is timed. */
function timeEngine(book: Book, work: () => void): number {
  let before = process.cpuUsage();
  const stop = book.listen(() => (before = process.cpuUsage()));
  const engine = connectEngine(book);
  work();
  const took = processorTime(before);
  engine.dispose();
  stop();
  return took;
}

const rounds = 3;

function timeOf(book: Book, prepare: () => void, work: () => void, after: () => void): number {
  const times: number[] = [];
  for (let round = 0; round < rounds; round++) {
    prepare();
    times.push(timeEngine(book, work));
    after();
  }
  return median(times);
}

function timeOfBuild(book: Book): number {
  const times = Array.from({ length: rounds + 1 }, () => {
    const before = process.cpuUsage();
    connectEngine(book).dispose();
    return processorTime(before);
  });
  return median(times.slice(1));
}

export function run(): Promise<Row[]> {
  return Promise.resolve(rowsOf());
}

function rowsOf(): Row[] {
  const means = countingMeans();
  const book = bookOf(means, count, (row) => [
    String(1 + (row % 1000)),
    `=STOPS(A${String(row + 1)},A$10)`,
  ]);
  const { document } = book;
  const sheet = firstSheet(book);
  const nothing = () => undefined;
  const undo = () => void book.undo();
  const remove = (row: number) => () => must(book, removeLines(document, sheet, 'rows', [row]));
  const paste = () =>
    must(
      book,
      copyCells(
        document,
        means,
        { sheet, top: 0, left: 1, height: pasted, width: 1 },
        { sheet, top: 0, left: 3, height: pasted, width: 1 },
      ),
    );
  const build = timeOfBuild(book);
  const row = (what: string, took: number): Row => ({
    what,
    took,
    against,
    tookAgainst: build,
    atMost: 2,
  });
  return [
    { what: 'build the engine', took: build, against, tookAgainst: build },
    row('delete a row among them', timeOf(book, nothing, remove(500), undo)),
    row('undo that', timeOf(book, remove(500), undo, nothing)),
    row('delete the row of the shared input', timeOf(book, nothing, remove(9), undo)),
    row('undo that as well', timeOf(book, remove(9), undo, nothing)),
    row('paste 10,000 formulas', timeOf(book, nothing, paste, undo)),
    row('undo the paste', timeOf(book, paste, undo, nothing)),
  ];
}
