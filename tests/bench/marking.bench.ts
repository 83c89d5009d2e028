import { handedOut, answered, exactly, file, marked } from '../unit/teach/class.ts';
import { readReturned } from '../../src/teach/returned.ts';
import { medianTime, type Row } from './bench.ts';

export const name = '200 returned books marked, against only reading them';

const count = 200;
const learners = Array.from({ length: count }, (_, index) => `Learner ${String(index + 1)}`);

export async function run(): Promise<Row[]> {
  const handed = handedOut('inverse-square', learners);
  const files = handed.files.map((one) => file(one.name, answered(handed, one, exactly(one))));
  const result = marked(handed, files);
  if (result.learners.some(({ points }) => points !== result.most))
    throw new Error('A perfect class has not got full marks.');
  const took = await medianTime(() => marked(handed, files), { runs: 3 });
  const tookAgainst = await medianTime(() => files.map(readReturned), { runs: 3 });
  return [
    {
      what: 'mark 200 books whose answers are formulas, numbers drawn anew for each',
      took,
      against: 'read the same books from their files',
      tookAgainst,
    },
  ];
}
