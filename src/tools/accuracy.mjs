import { randomInt } from 'node:crypto';
import { tsImport } from 'tsx/esm/api';

/**
 * Prints the worst error of every function over random samples, held against high precision or a
 * search that tries everything: `npm run accuracy`, or `npm run accuracy -- SEED SAMPLES`.
 */
const [seed = randomInt(2 ** 31), samples = 500] = process.argv.slice(2).map(Number);
if (!Number.isInteger(seed) || !Number.isInteger(samples) || samples < 1) {
  console.error('Usage: npm run accuracy -- SEED SAMPLES, both whole numbers.');
  process.exit(2);
}
/** @type {typeof import('../../tests/accuracy/table.ts')} */
const { accuracies, words } = await tsImport('../../tests/accuracy/table.ts', import.meta.url);

console.log(`Seed ${seed}, ${samples} samples where each is quick.\n`);
/** @param {readonly string[]} cells */
const line = ([name = '', count = '', worst = '', limit = '', against = '']) =>
  console.log(
    [
      name.padEnd(20),
      count.padStart(6),
      worst.padStart(14),
      limit.padStart(12),
      ` ${against}`,
    ].join(' '),
  );

line(['function', 'tried', 'worst error', 'at most', 'against']);
const all = accuracies(samples, seed);
for (const { name, samples: count, worst, limit, unit, against } of all) {
  line([
    name,
    String(count),
    `${worst.toPrecision(2)} ${unit}`.trim(),
    `${limit} ${unit}`.trim(),
    against,
  ]);
}
for (const [name, why] of Object.entries(words)) line([name, '', '', '', why]);
console.log('\nWithout a unit an error is counted in the result’s own over max(1, |result|).');

const wrong = all.filter(({ worst, limit }) => !(worst <= limit));
for (const { name, worst, at } of wrong)
  console.error(`${name} is ${worst} off at ${JSON.stringify(at)}.`);
process.exitCode = wrong.length === 0 ? 0 : 1;
