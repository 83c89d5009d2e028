import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { randomInt } from 'node:crypto';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { commit, machine, table } from './machine.mjs';
import { root } from './root.mjs';
import { run } from './run.mjs';

/** The test files that try more when there is time: those that ask tests/support/runs.ts. */
const files = readdirSync(join(root, 'tests'), { recursive: true, encoding: 'utf8' })
  .map((name) => `tests/${name.replaceAll('\\', '/')}`)
  .filter((name) => name.endsWith('.test.ts'))
  .filter((name) => readFileSync(join(root, name), 'utf8').includes('support/runs.ts'))
  .sort();
if (files.length === 0) {
  console.error('No test asks for long runs.');
  process.exit(2);
}

const seed = Number(process.argv[2] ?? randomInt(2 ** 31));
if (!Number.isInteger(seed)) {
  console.error(`The seed is a whole number, and not "${process.argv[2]}".`);
  process.exit(2);
}
console.log(`Seed ${seed}.`);

const folder = mkdtempSync(join(tmpdir(), 'halfstop-hard-'));
const report = join(folder, 'report.json');
const reporters = [
  '--reporter=default',
  '--reporter=src/tools/progress.mjs',
  '--reporter=json',
  `--outputFile.json=${report}`,
];
const code = await run('vitest', ['run', ...reporters, ...files], {
  env: { HARD: '1', SEED: String(seed) },
});

/**
 * @typedef {object} Report
 * @property {{ name: string, startTime: number, endTime: number, assertionResults: { status: string }[] }[]} testResults
 */
/** @type {Report} */
const { testResults } = JSON.parse(readFileSync(report, 'utf8'));
rmSync(folder, { recursive: true });

const rows = testResults
  .map(({ name, startTime, endTime, assertionResults }) => [
    name.slice(root.length),
    String(assertionResults.filter(({ status }) => status === 'passed').length),
    String(assertionResults.filter(({ status }) => status === 'failed').length),
    `${Math.round((endTime - startTime) / 1000)} s`,
  ])
  .sort();
const text = [
  '# Long runs',
  'Written by `npm run hard`: every random test with many times its usual cases.',
  `Commit ${commit()}. Seed ${seed}. ${machine()}.`,
  table(['tests', 'passed', 'failed', 'took'], rows),
].join('\n\n');
const { format } = await import('prettier');
writeFileSync(join(root, 'tests/bench/HARD.md'), await format(text, { parser: 'markdown' }));

console.log('Mutants.');
const mutants = await run('src/tools/mutate.mjs', []);
process.exitCode = code || mutants;
