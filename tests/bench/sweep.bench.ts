import { enter } from '../../src/book/make/enter.ts';
import { writeBook } from '../../src/book/form/write.ts';
import type { Content } from '../../src/book/types.ts';
import { work } from '../../src/choose/work.ts';
import { connectEngine } from '../../src/engine/index.ts';
import { medianTime, type Row } from './bench.ts';
import { bookOf, countingMeans, firstSheet, must } from './books.ts';

export const name = 'A sweep of 10,000 cases over two inputs, against entering the values by hand';

const side = 100;
const [distances, losses] = [
  Array.from({ length: side }, (_, index) => 1 + index * 0.05),
  Array.from({ length: side }, (_, index) => index * 0.04),
];

const texts = ['3', '1', '=LEVELAT(INVERSESQUARE(800,2,A1),-A2)', '=INCIDENTF(A3,800,1/50)'];
const open = () => bookOf(countingMeans(), texts.length, (row) => [texts[row] ?? '']);

/** Each value is entered as a person would, and the result read: no paint, no disk. */
function byHand(): number[] {
  const [book, means] = [open(), countingMeans()];
  const engine = connectEngine(book);
  const sheet = firstSheet(book);
  const results: number[] = [];
  for (const distance of distances) {
    must(book, enter(book.document, means, [{ sheet, row: 0, column: 0, text: `${distance}` }]));
    for (const loss of losses) {
      must(book, enter(book.document, means, [{ sheet, row: 1, column: 0, text: `${loss}` }]));
      results.push(Number(engine.valueOf({ sheet, row: 3, column: 0 })));
    }
  }
  return results;
}

/** As the thread does it: the book read from its text, every case tried on it. */
function swept(): number[] {
  const book = open();
  const sheet = firstSheet(book);
  const values = (all: readonly number[]): Content[] =>
    all.map((value) => ({ kind: 'number', value }));
  const doing = work(
    {
      kind: 'sweep',
      book: writeBook(book.document),
      plan: {
        down: { spot: { sheet, row: 0, column: 0 }, values: values(distances) },
        across: { spot: { sheet, row: 1, column: 0 }, values: values(losses) },
        read: [{ sheet, row: 3, column: 0 }],
      },
    },
    {},
    { each: 0, second: 0, now: () => 0 },
  );
  for (;;) {
    const { done, value } = doing.next();
    if (!done) continue;
    if (value.kind !== 'swept') throw new Error(value.kind);
    return value.swept.flat().map(([result]) => Number(result));
  }
}

export async function run(): Promise<Row[]> {
  const [ours, theirs] = [swept(), byHand()];
  if (ours.length !== side * side || ours.some((value, index) => value !== theirs[index]))
    throw new Error('The sweep and the values entered by hand do not come to the same.');
  const took = await medianTime(swept, { runs: 3 });
  const tookAgainst = await medianTime(byHand, { runs: 3 });
  return [
    {
      what: '10,000 cases of two inputs, one result read each time',
      took,
      against: 'the same values entered one at a time in an open book',
      tookAgainst,
      atMost: 1.2,
    },
  ];
}
