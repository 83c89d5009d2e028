import { createBook } from '../../src/book/book.ts';
import { connectEngine } from '../../src/engine/index.ts';
import { handedOut, answered, exactly, file, marked } from '../unit/teach/class.ts';
import { readReturned, type ReturnedFile } from '../../src/teach/returned.ts';
import { medianTime, type Row } from './bench.ts';

export const name = '200 returned books marked, numbers drawn anew for each';

const count = 200;
const learners = Array.from({ length: count }, (_, index) => `Learner ${String(index + 1)}`);

/** The least that formulas as answers take: each book read and worked out once, nothing judged. */
function workedOut(one: ReturnedFile): void {
  const read = readReturned(one);
  if ('kind' in read) throw new Error(read.reason);
  connectEngine(createBook(read.document)).dispose();
}

export async function run(): Promise<Row[]> {
  const handed = handedOut('inverse-square', learners);
  const numbers = handed.files.map(({ name, variant, ...one }) => {
    const answers = variant.answers.map(({ value }) => String(value));
    return file(name, answered(handed, one, answers));
  });
  const formulas = handed.files.map((one) => file(one.name, answered(handed, one, exactly(one))));
  for (const files of [numbers, formulas]) {
    const { learners: all, most } = marked(handed, files);
    if (all.some(({ points }) => points !== most))
      throw new Error('A perfect class has not got full marks.');
  }
  const time = (work: () => unknown) => medianTime(work, { runs: 3 });
  return [
    {
      what: 'mark books whose answers are numbers',
      took: await time(() => marked(handed, numbers)),
      against: 'read the same books and work each out once',
      tookAgainst: await time(() => numbers.forEach(workedOut)),
      atMost: 2,
    },
    {
      what: 'mark books whose answers are formulas',
      took: await time(() => marked(handed, formulas)),
      against: 'read the same books and work each out once',
      tookAgainst: await time(() => formulas.forEach(workedOut)),
      atMost: 2,
    },
  ];
}
