import { randomInt } from 'node:crypto';
import { ensureInstalled } from './install.mjs';

ensureInstalled();
const { run } = await import('./run.mjs');

/** `npm run fuzz`, or again what it found: `npm run fuzz -- SEED`, with another number of inputs behind it. */
const [seed = String(randomInt(2 ** 31)), times = '100000'] = process.argv.slice(2);
console.log(`Seed ${seed}, ${times} inputs.`);
process.exitCode = await run('vitest', ['run', '--project', 'unit', 'tests/unit/fuzz'], {
  env: { SEED: seed, FUZZ: times },
});
